"""Is a source worth having? Options with and without it, the values that would turn the answer, and a map of them.

Every option keeps the design chosen in the base case (strings, tank, float-switch levels) while an input changes.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from planner.scenario.errors import InputError, Problem
from planner.scenario.scenario import SOURCE_ORDER, Scenario, option_name
from planner.study.design import designs_of, ground_of
from planner.study.inputs import VariedInput, inputs_of
from planner.study.pinned import operated_of, pinned_of, run_pinned
from planner.study.reruns import Reruns, Standing, best_first, standing_of
from planner.study.search import choose_all
from planner.study.switching import Crossing, crossing, limit_between, linear_crossing

Array = NDArray[np.float64]

AGREE = 0.001
"""At a switching value the two present costs agree to this share."""
_OUTAGES_H = (0.0, 2.0, 4.0, 8.0, 12.0, 16.0, 20.0)
_DEMAND_PERCENT = (25.0, 50.0, 75.0, 100.0, 125.0, 150.0, 200.0)
_PRICE_STEPS = (0.25, 0.5, 0.75, 1.0, 1.5, 2.0, 3.0)
_SCAN_STEPS = 41
_LIMIT_WIDTH, _FINE_WIDTH = 0.01, 1e-6
"""Width, as a share of the range, to which turning points are found: where hours run anew, and where they do not."""
_MAPS = {
    "grid": (("outage hours", "tariff"), ("demand", "tariff"), ("demand", "discount rate")),
    "generator": (("outage hours", "fuel price"), ("demand", "fuel price"), ("demand", "discount rate")),
    "solar": (("fuel price", "panel price"), ("tariff", "panel price"), ("demand", "discount rate")),
}


@dataclass(frozen=True)
class Pair:
    """An option without the source and the same with it; `saving` is what adding it saves in present cost."""

    without: Standing
    with_source: Standing
    saving: float


@dataclass(frozen=True)
class Turn:
    """A value of an input, nearest to its base, beyond which the answer is the opposite.

    `best` is the best of all options just beyond it, `meets` whether that one meets the target, and `by_service`
    whether the option that is best in the base case has ceased to meet the target there.
    """

    value: float
    best: str
    meets: bool
    by_service: bool


@dataclass(frozen=True)
class Switching:
    """The switching value of one input between the best option with the source and the best without.

    Attributes
    ----------
    varied : VariedInput
        The input.
    value : float or None
        Where the two present costs are equal; None where they are not within the range.
    others : tuple of float
        Roughly, further such values in the range.
    beyond : float or None
        Where they would be equal outside the range, for straight lines.
    changes : bool
        Whether the input changes the difference at all.
    cost_with, cost_without : float or None
        Both present costs at the value, from the scenario run again there.
    agrees : bool or None
        Whether they agree to 0.1 percent; they may not where a machine's replacement makes the cost jump.
    serve_there : bool or None
        Whether both options serve there as they do in the base case.
    cheapest_there : str or None
        Which of all options is the cheapest there of those that meet the target.
    turns : tuple of Turn
        Where the best of all options becomes one with the source instead of one without it, or the other way round,
        be it by cost or because an option begins or ceases to meet the target: the nearest value on either side.
    """

    varied: VariedInput
    value: float | None
    others: tuple[float, ...] = ()
    beyond: float | None = None
    changes: bool = True
    cost_with: float | None = None
    cost_without: float | None = None
    agrees: bool | None = None
    serve_there: bool | None = None
    cheapest_there: str | None = None
    turns: tuple[Turn, ...] = ()


@dataclass(frozen=True)
class CheapestMap:
    """Which option is best over two inputs: `best`, `meets` and `present_cost` are (down, across)."""

    down: VariedInput
    across: VariedInput
    down_values: tuple[float, ...]
    across_values: tuple[float, ...]
    best: tuple[tuple[str, ...], ...]
    meets: tuple[tuple[bool, ...], ...]
    present_cost: Array


@dataclass(frozen=True)
class Worth:
    """Whether a source is worth having.

    `with_best` and `without_best` are the best options with and without it: those that meet the target by present
    cost, else the one that delivers most. `options` is best first.
    """

    scenario: Scenario
    source: str
    options: tuple[Standing, ...]
    with_best: Standing
    without_best: Standing
    pairs: tuple[Pair, ...]
    switching: tuple[Switching, ...]
    map: CheapestMap | None

    @property
    def saving(self) -> float:
        """What the source saves in present cost over the life: the best without it less the best with it."""
        return self.without_best.present_cost - self.with_best.present_cost


def worth_of(scenario: Scenario, source: str, folder: Path, progress: Callable[[str], None] | None = None) -> Worth:
    """Find out whether a source is worth having.

    Parameters
    ----------
    scenario : Scenario
        The checked scenario.
    source : str
        'solar', 'grid' or 'generator'.
    folder : pathlib.Path
        Folder to which paths in the scenario are relative.
    progress : callable, optional
        Called with the name of each step.

    Returns
    -------
    Worth

    Raises
    ------
    InputError
        When the source is not described, or the options compared do not leave one with and one without it.
    """
    _check(scenario, source)
    tell = progress or (lambda step: None)
    tell("base case")
    ground = ground_of(scenario, folder)
    choices = choose_all(designs_of(ground), ground)
    base = [operated_of(pinned_of(choice), choice.outcome, choice.design.scenario) for choice in choices]
    standings = best_first([standing_of(scenario, operated) for operated in base])
    with_best = next(option for option in standings if source in option.pinned.sources)
    without_best = next(option for option in standings if source not in option.pinned.sources)
    runs = Reruns(scenario, ground, base)
    everything = [name for name in SOURCE_ORDER if any(name in option.pinned.sources for option in standings)]
    used = [name for name in SOURCE_ORDER if name in with_best.pinned.sources + without_best.pinned.sources]
    largest_percent = 100 * min(operated.pinned.tank_m3 for operated in base) / float(ground.draw_m3[:, 0].max())
    inputs = inputs_of(scenario, used, largest_percent)
    tell("map")
    # The map first: it runs every option at the values that the switching values are then sought between.
    cheapest = _map(source, inputs, runs) or _map(source, inputs_of(scenario, everything, largest_percent), runs)
    switching = []
    for varied in inputs:
        tell(varied.name)
        switching.append(_switching(varied, runs, source, (with_best, without_best)))
    return Worth(
        scenario=scenario,
        source=source,
        options=tuple(standings),
        with_best=with_best,
        without_best=without_best,
        pairs=_pairs(source, standings),
        switching=tuple(switching),
        map=cheapest,
    )


def _check(scenario: Scenario, source: str) -> None:
    if source not in SOURCE_ORDER:
        raise InputError("", [Problem("", f"{source!r} is no source; allowed: {', '.join(SOURCE_ORDER)}")])
    if source not in scenario.sources.names:
        raise InputError(
            "", [Problem(f"sources.{source}", f"is not described, so there is no option with the {source}")]
        )
    names = scenario.option_names
    having = [name for name in names if source in name.split(" + ")]
    if not having or len(having) == len(names):
        missing = "with" if not having else "without"
        key = "service.options" if scenario.service.options else "sources"
        text = f"leaves no option {missing} the {source} to compare (options: {'; '.join(names)})"
        raise InputError("", [Problem(key, text)])


def _pairs(source: str, standings: Sequence[Standing]) -> tuple[Pair, ...]:
    by_name = {option.name: option for option in standings}
    pairs = []
    for option in standings:
        added = option_name((*option.pinned.sources, source))
        if source not in option.pinned.sources and added in by_name:
            other = by_name[added]
            pairs.append(Pair(option, other, option.present_cost - other.present_cost))
    return tuple(pairs)


def _switching(varied: VariedInput, runs: Reruns, source: str, pair: tuple[Standing, Standing]) -> Switching:
    if varied.without_effect:
        return Switching(varied, None, changes=False)
    names = [option.name for option in pair]
    scale = max(abs(option.present_cost) for option in pair)

    def gap(value: float) -> float:
        changed = varied.change(runs.scenario, value)
        having, lacking = runs.costs(changed, runs.at(varied, value, names))
        return having - lacking

    # The turns first: they run every option at the values between which a crossing is then sought.
    turns = _turns(varied, runs, source)
    if varied.kind == "linear":
        found = linear_crossing(gap, varied.base, varied.low, varied.high, scale)
    else:
        values = _values(varied)
        enough = AGREE / 10 * scale if varied.kind == "hours" else 0.0
        found = crossing(gap, varied.base, values, [gap(value) for value in values], scale, enough)
    return _verified(varied, found, turns, runs, pair)


def _values(varied: VariedInput) -> tuple[float, ...]:
    """Values of an input that are tried, its base among them."""
    if varied.kind == "linear":
        return tuple(varied.base * step for step in _PRICE_STEPS)
    if varied.name == "outage hours":
        return _with_base(_OUTAGES_H, varied)
    if varied.name == "demand":
        return _with_base(_DEMAND_PERCENT, varied)
    return _scan(varied)


def _with_base(values: Sequence[float], varied: VariedInput) -> tuple[float, ...]:
    """Put the base in the place of the nearest value, and keep within the range."""
    nearest = min(values, key=lambda value: abs(value - varied.base))
    kept = {varied.base if value == nearest else value for value in values}
    return tuple(sorted({min(value, varied.high) for value in kept}))


def _verified(
    varied: VariedInput,
    found: Crossing,
    turns: tuple[Turn, ...],
    runs: Reruns,
    pair: tuple[Standing, Standing],
) -> Switching:
    """Run the changed scenario at the switching value, hours included, and compare the two present costs."""
    if found.value is None:
        return Switching(varied, None, beyond=found.beyond, changes=found.changes, turns=turns)
    changed = varied.change(runs.scenario, found.value)
    # Where only prices change the hours of all options are known; the pair's are run again all the same.
    verified = runs.pinned if varied.kind == "hours" else [option.pinned for option in pair]
    again = run_pinned([changed], runs.ground, verified)[0]
    costs = dict(zip((each.pinned.name for each in again), runs.costs(changed, again), strict=True))
    having, lacking = (costs[option.name] for option in pair)
    serve = {each.pinned.name: each.meets_service for each in again}
    ranked = runs.ranked(changed, again if varied.kind == "hours" else runs.base)
    return Switching(
        varied=varied,
        value=found.value,
        others=found.others,
        changes=True,
        cost_with=having,
        cost_without=lacking,
        agrees=abs(having - lacking) <= AGREE * max(abs(having), abs(lacking)),
        serve_there=all(serve[option.name] == option.meets_service for option in pair),
        cheapest_there=ranked[0].name if ranked[0].meets_service else None,
        turns=turns,
    )


def _turns(varied: VariedInput, runs: Reruns, source: str) -> tuple[Turn, ...]:
    """Find where the answer turns, going up and going down, over all options."""

    def ranked(value: float) -> list[Standing]:
        return runs.ranked(varied.change(runs.scenario, value), runs.at(varied, value))

    first = ranked(varied.base)[0]
    having = source in first.pinned.sources

    def same(value: float) -> bool:
        return (source in ranked(value)[0].pinned.sources) == having

    fine = varied.kind != "hours"
    values = _scan(varied) if fine else _values(varied)
    runs.ahead(varied, values)
    width = (_FINE_WIDTH if fine else _LIMIT_WIDTH) * (varied.high - varied.low)
    up = [value for value in values if value >= varied.base]
    down = [value for value in reversed(values) if value <= varied.base]
    turns = []
    for way in (up, down):
        for inside, outside in pairwise(way):
            if not same(outside):
                value = limit_between(same, inside, outside, width)
                there = ranked(value)
                still = next(option.meets_service for option in there if option.name == first.name)
                by_service = first.meets_service and not still
                turns.append(Turn(value, there[0].name, there[0].meets_service, by_service))
                break
    return tuple(turns)


def _scan(varied: VariedInput) -> tuple[float, ...]:
    """Values over the range of an input that changes prices only."""
    return tuple(sorted({*np.linspace(varied.low, varied.high, _SCAN_STEPS).tolist(), varied.base}))


def _map(source: str, inputs: Sequence[VariedInput], runs: Reruns) -> CheapestMap | None:
    known = {varied.name: varied for varied in inputs if not varied.without_effect}
    chosen = next((pair for pair in _MAPS[source] if pair[0] in known and pair[1] in known), None)
    if chosen is None:
        return None
    down, across = (known[name] for name in chosen)
    down_values, across_values = _values(down), _map_values(across)
    best: list[tuple[str, ...]] = []
    meeting: list[tuple[bool, ...]] = []
    cost = np.empty((len(down_values), len(across_values)))
    runs.ahead(down, down_values)
    for row, first in enumerate(down_values):
        operated = runs.at(down, first)
        here = down.change(runs.scenario, first)
        ranked = [runs.ranked(across.change(here, second), operated)[0] for second in across_values]
        best.append(tuple(option.name for option in ranked))
        meeting.append(tuple(option.meets_service for option in ranked))
        cost[row] = [option.present_cost for option in ranked]
    return CheapestMap(down, across, down_values, across_values, tuple(best), tuple(meeting), cost)


def _map_values(varied: VariedInput) -> tuple[float, ...]:
    values = _values(varied)
    if varied.kind != "money":
        return values
    return _with_base(np.linspace(varied.low, varied.high, 7).tolist(), varied)
