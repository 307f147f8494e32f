"""Say in plain sentences whether a source is worth having."""

from __future__ import annotations

from typing import Any

from planner.assumptions.reader import option_scenario
from planner.money.quantities import unpriced
from planner.study.close_call import CLOSE_PERCENT
from planner.study.inputs import VariedInput
from planner.study.site import estimate_sentences
from planner.study.words import money
from planner.study.worth import OptionSummary, Switching, Turn, Worth
from planner.text import source_name, text

_SHOWN = 3
"""Changes that would turn the answer, named in the sentences."""


def worth_sentences(worth: Worth) -> list[str]:
    """Put the answer into three paragraphs: is it worth it, what would turn that, what would not."""
    return [verdict(worth), _would_turn(worth), _would_not_turn(worth), *estimate_sentences(worth.scenario)]


def verdict(worth: Worth) -> str:
    """Say whether the source is worth having, and where the costs compared leave something out."""
    missing = [
        thing.label()
        for option in (worth.with_best, worth.without_best)
        for thing in unpriced(option_scenario(worth.scenario, option.name), option.design.sources)
    ]
    if not missing:
        return _worth_having(worth)
    return f"{_worth_having(worth)} {text('worth_answer.incomplete', unpriced=', '.join(dict.fromkeys(missing)))}"


def _worth_having(worth: Worth) -> str:
    having, lacking, currency = worth.with_best, worth.without_best, worth.scenario.currency
    slots = {
        "source": source_name(worth.source),
        "option": having.name,
        "without": lacking.name,
        "years": worth.scenario.finance.analysis_period_years,
        "target": worth.scenario.service.demand_met_percent,
        "delivered": 100 * having.delivered_share,
        "gap": money(abs(worth.saving), currency),
    }
    if having.meets_service and not lacking.meets_service:
        change = "worth_answer.needed_dearer" if worth.saving < 0 else "worth_answer.needed_cheaper"
        return f"{_needed(lacking, slots)} {text(change, **slots)}"
    if lacking.meets_service and not having.meets_service:
        return text("worth_answer.only_without", life_cycle_cost=money(lacking.present_cost, currency), **slots)
    if not having.meets_service:
        return _neither(having, lacking, slots)
    percent = 100 * abs(worth.saving) / abs(min(having.present_cost, lacking.present_cost))
    if percent < CLOSE_PERCENT:
        key = "worth_answer.hardly_matters"
    else:
        key = "worth_answer.worth_having" if worth.saving > 0 else "worth_answer.not_worth_having"
    return text(
        key,
        cost_with=money(having.present_cost, currency),
        cost_without=money(lacking.present_cost, currency),
        yearly=money(abs(lacking.equivalent_yearly_cost - having.equivalent_yearly_cost), currency),
        percent=percent,
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


def turning_points(worth: Worth) -> list[tuple[Switching, str]]:
    """Say what would turn the answer, the smallest relative change first."""
    points: list[tuple[float, Switching, str]] = []
    for switching in worth.switching:
        varied = switching.varied
        scale = abs(varied.base) or (varied.high - varied.low)
        for turn in switching.turns:
            points.append((abs(turn.value - varied.base) / scale, switching, _turn_words(worth, varied, turn)))
    return [(switching, says) for _, switching, says in sorted(points, key=lambda point: point[0])]


def _turn_words(worth: Worth, varied: VariedInput, turn: Turn) -> str:
    value = varied.with_unit(turn.value)
    if not varied.of_today:  # what it is now would go without saying
        value = text("worth_answer.from_now", value=value, base=varied.with_unit(varied.base))
    way = "above" if turn.value > varied.base else "below"
    outcome = "best" if not turn.by_service else "misses" if turn.meets else "none"
    return text(
        f"worth_answer.{way}_{outcome}", input=varied.phrase, value=value, best=turn.best, first=worth.options[0].name
    )


def _would_turn(worth: Worth) -> str:
    points = turning_points(worth)
    if not points:
        return text("worth_answer.nothing_turns")
    return " ".join((text("worth_answer.what_turns"), *(says for _, says in points[:_SHOWN])))


def _would_not_turn(worth: Worth) -> str:
    turned = {switching.varied.name for switching, _ in turning_points(worth)}
    steady = [switching.varied for switching in worth.switching if switching.varied.name not in turned]
    steady = [varied for varied in steady if not varied.without_effect]
    if not steady:
        return text("worth_answer.all_turn")
    ranges = (
        text(
            "worth_answer.range",
            input=each.label,
            low=each.with_unit(each.low),
            high=each.with_unit(each.high),
        )
        for each in steady
    )
    return text("worth_answer.steady", ranges=", ".join(ranges))
