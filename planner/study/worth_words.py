"""Say in plain sentences whether a source is worth having."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from planner.assumptions.reader import option_scenario
from planner.money.quantities import unpriced
from planner.study.close_call import CLOSE_PERCENT
from planner.study.site import estimate_sentences
from planner.study.varied import Varied
from planner.study.words import money
from planner.study.worth import OptionSummary, Switching, Turn, Worth
from planner.text import source_name, text

_SAME_WORKS = {"borehole", "pump", "controller", "pipe"}
"""Things of the bill that are the same in every option."""
_SHOWN = 3
"""Changes that would turn the answer, named in the sentences."""


def worth_sentences(worth: Worth) -> list[str]:
    """Put the answer into three paragraphs: is it worth it, what would turn that, what would not."""
    return [verdict(worth), _would_turn(worth), _would_not_turn(worth), *estimate_sentences(worth.scenario)]


def verdict(worth: Worth) -> str:
    """Say whether the source is worth having; where what has no price could turn that, say that it cannot be said."""
    only_with, only_without, shared = _unpriced(worth)
    having, lacking = worth.with_best, worth.without_best
    slots = _slots(worth)
    if having.meets_service and lacking.meets_service:
        close = 100 * abs(worth.saving) < CLOSE_PERCENT * abs(min(having.present_cost, lacking.present_cost))
        could_turn = [*(only_with if close or worth.saving > 0 else ()),
                      *(only_without if close or worth.saving <= 0 else ())]  # fmt: skip
        if could_turn:
            return text("worth_answer.undecided", unpriced=", ".join(could_turn), **slots)
        words = _by_cost(worth, close=close, slots=slots)
    elif having.meets_service:
        change = "worth_answer.needed_dearer" if worth.saving < 0 else "worth_answer.needed_cheaper"
        words = f"{_needed(lacking, slots)} {text(change, **slots)}"
    elif lacking.meets_service:
        cost = money(lacking.present_cost, worth.scenario.currency)
        words = text("worth_answer.only_without", life_cycle_cost=cost, **slots)
    else:
        words = _neither(having, lacking, slots)
    if only_with or only_without:
        missing = dict.fromkeys([*shared, *only_with, *only_without])
        return f"{words} {text('worth_answer.incomplete', unpriced=', '.join(missing))}"
    return f"{words} {text('worth_answer.incomplete_alike', unpriced=', '.join(shared))}" if shared else words


def _unpriced(worth: Worth) -> tuple[list[str], list[str], list[str]]:
    """What has no price: of the best option with the source, of the best without it, and what is the same in both."""
    having, lacking = (
        unpriced(option_scenario(worth.scenario, option.name), option.design.sources)
        for option in (worth.with_best, worth.without_best)
    )
    same_tank = worth.with_best.design.tank_m3 == worth.without_best.design.tank_m3
    alike = {*_SAME_WORKS, "tank"} if same_tank else _SAME_WORKS
    shared = [thing for thing in having if thing in lacking and thing.key in alike]
    only_with, only_without = (
        [thing.label() for thing in things if thing not in shared] for things in (having, lacking)
    )
    return only_with, only_without, [thing.label() for thing in shared]


def _slots(worth: Worth) -> dict[str, Any]:
    having, lacking, currency = worth.with_best, worth.without_best, worth.scenario.currency
    return {
        "source": source_name(worth.source),
        "option": having.name,
        "without": lacking.name,
        "years": worth.scenario.finance.analysis_period_years,
        "target": worth.scenario.service.demand_met_percent,
        "delivered": 100 * having.delivered_share,
        "gap": money(abs(worth.saving), currency),
        "cost_with": money(having.present_cost, currency),
        "cost_without": money(lacking.present_cost, currency),
    }


def _by_cost(worth: Worth, *, close: bool, slots: dict[str, Any]) -> str:
    """Say what life-cycle costs make of it, where both meet the target."""
    having, lacking = worth.with_best, worth.without_best
    if close:
        key = "worth_answer.hardly_matters"
    else:
        key = "worth_answer.worth_having" if worth.saving > 0 else "worth_answer.not_worth_having"
    return text(
        key,
        yearly=money(abs(lacking.equivalent_yearly_cost - having.equivalent_yearly_cost), worth.scenario.currency),
        percent=100 * abs(worth.saving) / abs(min(having.present_cost, lacking.present_cost)),
        **slots,
    )


def _needed(lacking: OptionSummary, slots: dict[str, Any]) -> str:
    delivered = 100 * lacking.delivered_share
    if delivered >= slots["target"]:
        return text("worth_answer.needed_in_worst_year", lacking=100 * lacking.worst_year_share, **slots)
    return text("worth_answer.needed", lacking=delivered, **slots)


def _neither(having: OptionSummary, lacking: OptionSummary, slots: dict[str, Any]) -> str:
    points = 100 * (having.delivered_share - lacking.delivered_share)
    dearer = having.present_cost >= lacking.present_cost
    return " ".join(
        (
            text("worth_answer.neither", **slots),
            text(f"worth_answer.neither_{'more' if points >= 0 else 'less'}", points=abs(points), **slots),
            text(f"worth_answer.neither_{'dearer' if dearer else 'cheaper'}", **slots),
        )
    )


def turning_points(worth: Worth, found: Sequence[Switching]) -> list[tuple[Switching, str]]:
    """Say what would turn the answer by what was found of the inputs, the smallest relative change first."""
    points: list[tuple[float, Switching, str]] = []
    for switching in found:
        varied = switching.varied
        scale = abs(varied.base) or (varied.high - varied.low)
        for turn in switching.turns:
            points.append((abs(turn.value - varied.base) / scale, switching, _turn_words(worth, varied, turn)))
    return [(switching, says) for _, switching, says in sorted(points, key=lambda point: point[0])]


def _turn_words(worth: Worth, varied: Varied, turn: Turn) -> str:
    value = varied.with_unit(turn.value)
    if not varied.is_share:  # what it is now would go without saying
        value = text("worth_answer.from_now", value=value, base=varied.with_unit(varied.base))
    way = "above" if turn.value > varied.base else "below"
    outcome = "best" if not turn.by_service else "misses" if turn.meets else "none"
    return text(
        f"worth_answer.{way}_{outcome}", input=varied.phrase, value=value, best=turn.best, first=worth.options[0].name
    )


def _would_turn(worth: Worth) -> str:
    """Say what turns the answer with the works as they would be built, and with works chosen anew at each value."""
    as_built = _points(worth, worth.switching, "as_built")
    if worth.anew is None:
        return f"{as_built} {text('worth_answer.nothing_open')}"
    both = [[says for _, says in turning_points(worth, found)] for found in (worth.switching, worth.anew)]
    anew = text("worth_answer.anew_alike") if both[0] == both[1] else _points(worth, worth.anew, "anew")
    return f"{as_built} {anew}"


def _points(worth: Worth, found: Sequence[Switching], works: str) -> str:
    points = turning_points(worth, found)
    if not points:
        return text(f"worth_answer.nothing_turns_{works}")
    return " ".join((text(f"worth_answer.turns_{works}"), *(says for _, says in points[:_SHOWN])))


def _would_not_turn(worth: Worth) -> str:
    turned = {switching.varied.name for switching, _ in turning_points(worth, worth.switching)}
    steady = [switching.varied for switching in worth.switching if switching.varied.name not in turned]
    steady = [varied for varied in steady if not varied.without_effect]
    if not steady:
        return text("worth_answer.all_turn")
    ranges = (
        text(
            "worth_answer.range",
            input=each.phrase,
            low=each.with_unit(each.low),
            high=each.with_unit(each.high),
        )
        for each in steady
    )
    return text("worth_answer.steady", ranges=", ".join(ranges))
