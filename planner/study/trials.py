"""Works as chosen tried in changed scenarios: their hours in the same passes, their money over arrays of trials.

The hours of a change are run in some years of the life. What they change in these is added to what the comparison found
for every year, between them in proportion to the distance from the years on either side: a trial that changes nothing
gives exactly what the comparison gave.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from planner.money.simulated import Quantities, quantities_of
from planner.scenario.errors import InputError
from planner.scenario.finance import Service
from planner.scenario.operands import value_at, with_arrays
from planner.scenario.paths import Path
from planner.scenario.scenario import Scenario
from planner.study.cases import Case
from planner.study.context import Context
from planner.study.evaluate import run_cases
from planner.study.results import Result, laid_out, life_of, money_of, serves
from planner.supply.run import Outcome

YEARS_RUN = 5
"""So many years of the life are run of each change."""
_SHORTFALL = "shortfall_m3"
Array = NDArray[np.float64]
Integers = NDArray[np.int64]


@dataclass(frozen=True)
class Trial:
    """The works of one option in a changed scenario.

    Attributes
    ----------
    option : str
        Name of the option.
    scenario : Scenario or None
        As it holds for the option, where its hours run anew; None where they are those of the comparison.
    numbers : mapping of path to float, or None
        What differs in the money, by the paths of the option's scenario; None where it is priced in `scenario`.
    """

    option: str
    scenario: Scenario | None
    numbers: Mapping[Path, float] | None


@dataclass(frozen=True)
class Tried:
    """What came of trials: arrays (trials,).

    `runs` tells which can run at all; where one cannot, it gives no water and its cost is NaN.
    """

    service: Service
    runs: NDArray[np.bool_]
    delivered_share: Array
    worst_year_share: Array
    longest_short_days: Array
    present_cost: Array

    @cached_property
    def meets_service(self) -> NDArray[np.bool_]:
        """Which meet the service target."""
        return serves(self.service, self.delivered_share, self.worst_year_share, self.longest_short_days)

    @cached_property
    def margin(self) -> Array:
        """What is left to the service target, the least of its parts: per cent of the demand, or days in a row."""
        left = 100 * self.delivered_share - self.service.demand_met_percent
        if self.service.demand_met_worst_year_percent is not None:
            left = np.minimum(left, 100 * self.worst_year_share - self.service.demand_met_worst_year_percent)
        if self.service.longest_short_days is not None:
            left = np.minimum(left, self.service.longest_short_days - self.longest_short_days)
        return np.asarray(left)


def try_all(context: Context, chosen: Mapping[str, Result], trials: Sequence[Trial]) -> Tried:
    """Run and price trials.

    Parameters
    ----------
    context : Context
        What they share.
    chosen : mapping of str to Result
        What every option comes to as it was chosen, by its name.
    trials : sequence of Trial
        All of the same life and number of tariff bands.

    Returns
    -------
    Tried
        In the order of the trials.
    """
    index_of = {name: index for index, name in enumerate(chosen)}
    at = np.array([index_of[trial.option] for trial in trials], dtype=np.int64)
    runs = np.ones(len(trials), dtype=bool)
    years = next(iter(chosen.values())).outcome.demand_m3.shape[0]
    some = context.in_years(years_run(years))
    cases: list[Case] = []
    for index, trial in enumerate(trials):
        if trial.scenario is None:
            continue
        case = Case.of(trial.scenario, chosen[trial.option].case.design)
        runs[index] = _can_run(some, case)
        if runs[index]:
            at[index] = len(chosen) + len(cases)
            cases.append(case)
    every = [result.case for result in chosen.values()] + cases
    found: list[tuple[Sequence[int], Outcome]] = [
        ([index], result.outcome.taken(None)) for index, result in enumerate(chosen.values())
    ]
    if cases:
        found.append((range(len(chosen), len(every)), _run(some, chosen, cases, years)))
    outcome = laid_out(found, len(every))
    share, worst, longest = (
        outcome.delivered_share,
        outcome.worst_year_share,
        outcome.longest_short_days.max(axis=-1),
    )
    return Tried(
        service=next(iter(chosen.values())).case.scenario.service,
        runs=runs,
        delivered_share=np.where(runs, share[at], 0.0),
        worst_year_share=np.where(runs, worst[at], 0.0),
        longest_short_days=np.where(runs, longest[at], np.inf),
        present_cost=np.where(runs, _costs(chosen, trials, every, at, quantities_of(outcome)), np.nan),
    )


def years_run(years: int) -> Integers:
    """Years of a life of so many, from 0, in which changes are run: the first, the last and some between."""
    return np.unique(np.round(np.linspace(0, years - 1, YEARS_RUN)).astype(np.int64))


def _run(some: Context, chosen: Mapping[str, Result], cases: Sequence[Case], years: int) -> Outcome:
    """Run cases in some years, and carry what they change over to all years of what was found without the change."""
    unchanged = {case.design.name: chosen[case.design.name] for case in cases}
    if years <= YEARS_RUN:
        return run_cases(some, cases)
    outcome = run_cases(some, [*(result.case for result in unchanged.values()), *cases])
    names = tuple(outcome.top_ups)
    index_of = {name: at for at, name in enumerate(unchanged)}
    base = np.array([index_of[case.design.name] for case in cases])
    whole = laid_out(
        (([at], result.outcome.taken(None)) for at, result in enumerate(unchanged.values())), len(unchanged)
    )
    known, ran = _with_shortfall(whole.arrays(names)), _with_shortfall(outcome.arrays(names))
    weights = _weights(years)
    carried = {
        name: _carried_over(known[name][base], values[base], values[len(unchanged) :], weights)
        for name, values in ran.items()
    }
    carried["delivered_m3"] = carried["demand_m3"] - carried.pop(_SHORTFALL)
    return replace(Outcome.of_arrays("", carried), band_count=outcome.band_count)


def _with_shortfall(arrays: dict[str, Array]) -> dict[str, Array]:
    """Put what users miss in the place of what they get."""
    delivered = arrays.pop("delivered_m3")
    return arrays | {_SHORTFALL: np.maximum(arrays["demand_m3"] - delivered, 0.0)}


def _carried_over(known: Array, base: Array, changed: Array, weights: Array) -> Array:
    """Carry what a change does in the years run over to all years.

    Parameters
    ----------
    known : ndarray, (cases, years, ...)
        What was found for every year without the change.
    base, changed : ndarray, (cases, years run, ...)
        The same in the years run, and what is found there with the change.
    weights : ndarray, (years, years run)
        See `_weights`.

    Returns
    -------
    ndarray, (cases, years, ...)
        What becomes less is taken to do so in proportion, what becomes more by as much, so that nothing falls below 0.
    """
    less = np.divide(np.minimum(changed, base), base, out=np.ones_like(base), where=base > 0)
    more = np.maximum(changed - base, 0.0)
    less, more = (np.moveaxis(np.tensordot(weights, each, (1, 1)), 0, 1) for each in (less, more))
    return np.asarray(known * less + more)


def _weights(years: int) -> Array:
    """Weight of each year that is run in each year of the life, (years, years run): the two on either side."""
    run = years_run(years)
    return np.array([np.interp(np.arange(years), run, unit) for unit in np.eye(run.size)]).T


def _costs(
    chosen: Mapping[str, Result], trials: Sequence[Trial], cases: Sequence[Case], at: Integers, quantities: Quantities
) -> Array:
    """Life-cycle cost of each trial: those of an option that differ in numbers alone at once, others by themselves."""
    cost = np.zeros(len(trials))
    if not next(iter(chosen.values())).case.scenario.priced:
        return cost
    apart = [index for index, trial in enumerate(trials) if trial.numbers is None]
    if apart:
        their_cases = [cases[at[index]] for index in apart]
        cost[apart] = money_of(their_cases, quantities.taken(at[apart]))["present_cost"]
    for name, result in chosen.items():
        alike = [index for index, trial in enumerate(trials) if trial.numbers is not None and trial.option == name]
        if alike:
            numbers = [trials[index].numbers or {} for index in alike]
            cost[alike] = _priced_together(result.case, numbers, quantities.taken(at[alike]))
    return cost


def _priced_together(case: Case, numbers: Sequence[Mapping[Path, float]], quantities: Quantities) -> Array:
    """Price one design with each of some sets of numbers in its scenario."""
    paths = dict.fromkeys(path for each in numbers for path in each)
    scenario = with_arrays(case.scenario, {path: _column(case.scenario, path, numbers) for path in paths})
    count, design = len(numbers), case.design
    life = life_of(scenario, design.sources, np.full(count, design.strings), np.full(count, design.tank_m3), quantities)
    return np.broadcast_to(life.present_cost, count)


def _column(scenario: Scenario, path: Path, numbers: Sequence[Mapping[Path, float]]) -> Array:
    base = number_at(scenario, path)
    return np.array([each.get(path, base) for each in numbers])


def number_at(scenario: Scenario, path: Path) -> float:
    """Number at a path of a scenario; NaN where it has no such entry or none is given."""
    try:
        value = value_at(scenario, path)
    except (AttributeError, IndexError):
        return np.nan
    return np.nan if value is None else float(value)


def _can_run(context: Context, case: Case) -> bool:
    try:
        context.prepared(case)
    except InputError:
        return False
    return True


__all__ = ["Trial", "Tried", "number_at", "try_all"]
