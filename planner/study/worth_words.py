"""Say in three plain sentences whether a source is worth having."""

from __future__ import annotations

from planner.money.quantities import unpriced
from planner.scenario.reader import option_scenario
from planner.study.words import CLOSE_PERCENT, incomplete, money
from planner.study.worth import Standing, Switching, Turn, Worth

NAMES = {"solar": "the sun", "grid": "the grid", "generator": "the generator"}


def worth_sentences(worth: Worth) -> list[str]:
    """Put the answer into three sentences: is it worth it, what would turn that, and what would not."""
    return [verdict(worth), _would_turn(worth), _would_not_turn(worth)]


def verdict(worth: Worth) -> str:
    """Say whether the source is worth having, and where the costs compared leave something out."""
    missing = [
        name
        for option in (worth.with_best, worth.without_best)
        for name in unpriced(option_scenario(worth.scenario, option.name), option.pinned.sources)
    ]
    if not missing:
        return _worth_having(worth)
    return f"{_worth_having(worth)} The costs are {incomplete(tuple(dict.fromkeys(missing)))}."


def _worth_having(worth: Worth) -> str:
    having, lacking = worth.with_best, worth.without_best
    name, currency = NAMES[worth.source], worth.scenario.currency
    years, target = worth.scenario.finance.life_years, worth.scenario.service.delivered_share_percent
    if having.meets_service and not lacking.meets_service:
        more = (
            f"costs {money(-worth.saving, currency)} more" if worth.saving < 0
            else f"even costs {money(worth.saving, currency)} less"
        )  # fmt: skip
        return (
            f"Yes, {name} is needed: without it the best supply, {lacking.name}, {_misses(lacking, worth)}, while "
            f"{having.name} delivers {_share(having)} and {more} over {years} years."
        )
    if lacking.meets_service and not having.meets_service:
        return (
            f"No, {name} is not worth having: {lacking.name} meets the target of {target:g} percent without it, for "
            f"{money(lacking.present_cost, currency)} over {years} years, and nothing with it does."
        )
    if not having.meets_service:
        gains = 100 * (having.delivered_share - lacking.delivered_share)
        change = f"{abs(gains):.1f} percentage points {'more' if gains >= 0 else 'less'}"
        return (
            f"Neither with nor without {name} does any design meet the target of {target:g} percent; with it the best, "
            f"{having.name}, delivers {_share(having)}, {change} than {lacking.name}, and costs "
            f"{_dearer(having, lacking, currency)} over {years} years."
        )
    percent = 100 * abs(worth.saving) / abs(min(having.present_cost, lacking.present_cost))
    both = (
        f"the cheapest supply with it, {having.name}, costs {money(having.present_cost, currency)} over {years} years, "
        f"the cheapest without it, {lacking.name}, {money(lacking.present_cost, currency)}"
    )
    yearly = money(abs(lacking.equivalent_yearly_cost - having.equivalent_yearly_cost), currency)
    if percent < CLOSE_PERCENT:
        return f"It hardly matters whether you have {name}: {both}, a difference of {percent:.1f} percent."
    if worth.saving > 0:
        return f"Yes, {name} is worth having: {both}, so it saves {yearly} a year."
    return f"No, {name} is not worth having: {both}, so it would cost {yearly} more a year."


def _share(option: Standing) -> str:
    return f"{100 * option.delivered_share:.1f} percent of the water"


def _misses(option: Standing, worth: Worth) -> str:
    target = worth.scenario.service.delivered_share_percent
    if 100 * option.delivered_share >= target:
        return f"falls short in its worst year ({100 * option.worst_year_share:.1f} percent)"
    return f"delivers {100 * option.delivered_share:.1f} percent of the water instead of the wanted {target:g}"


def _dearer(one: Standing, other: Standing, currency: str) -> str:
    gap = one.present_cost - other.present_cost
    return f"{money(abs(gap), currency)} {'more' if gap >= 0 else 'less'}"


def turning_points(worth: Worth) -> list[tuple[Switching, str]]:
    """Name what would turn the answer, the smallest relative change first."""
    points: list[tuple[float, Switching, str]] = []
    for switching in worth.switching:
        varied = switching.varied
        scale = abs(varied.base) or (varied.high - varied.low)
        for turn in switching.turns:
            says = f"{_moved(switching, turn.value)} ({_turn_words(worth, turn)})"
            points.append((abs(turn.value - varied.base) / scale, switching, says))
    return [(switching, says) for _, switching, says in sorted(points, key=lambda point: point[0])]


def _turn_words(worth: Worth, turn: Turn) -> str:
    if turn.by_service:
        misses = f"{worth.options[0].name} then misses the target"
        return f"{misses} and {turn.best} is best" if turn.meets else f"{misses}, and so does every other"
    return f"{turn.best} is then best"


def _moved(switching: Switching, value: float) -> str:
    varied = switching.varied
    way = "rose above" if value > varied.base else "fell below"
    now = "" if varied.unit.startswith("percent of today") else f" (now {varied.text(varied.base)})"
    return f"{varied.label} {way} {varied.text(value)}{now}"


def _would_turn(worth: Worth) -> str:
    points = turning_points(worth)
    if not points:
        return "Within the ranges looked at, no input changed by itself turns this answer."
    said = "; or if ".join(says for _, says in points[:3])
    return f"The answer would turn if {said}."


def _would_not_turn(worth: Worth) -> str:
    turned = {switching.varied.name for switching, _ in turning_points(worth)}
    steady = [switching.varied for switching in worth.switching if switching.varied.name not in turned]
    steady = [varied for varied in steady if not varied.without_effect]
    if not steady:
        return "Each of the inputs looked at could turn the answer if it changed far enough."
    ranges = ", ".join(
        f"{varied.name} ({varied.text(varied.low).removesuffix(varied.unit).strip()} to {varied.text(varied.high)})"
        for varied in steady
    )
    return f"It stays the same, the designs as they are and all else as given, over the whole range of: {ranges}."
