"""Works as chosen tried in changed scenarios: their hours in the same passes, their money over arrays of trials."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
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
    place_of = {name: place for place, name in enumerate(chosen)}
    at = np.array([place_of[trial.option] for trial in trials], dtype=np.int64)
    runs = np.ones(len(trials), dtype=bool)
    cases: list[Case] = []
    for place, trial in enumerate(trials):
        if trial.scenario is None:
            continue
        case = Case.of(trial.scenario, chosen[trial.option].case.design)
        runs[place] = _can_run(context, case)
        if runs[place]:
            at[place] = len(chosen) + len(cases)
            cases.append(case)
    every = [result.case for result in chosen.values()] + cases
    done = [([place], result.outcome.taken(None)) for place, result in enumerate(chosen.values())]
    if cases:
        done.append((list(range(len(chosen), len(every))), run_cases(context, cases)))
    outcome = laid_out(done, len(every))
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


def _costs(
    chosen: Mapping[str, Result], trials: Sequence[Trial], cases: Sequence[Case], at: Integers, quantities: Quantities
) -> Array:
    """Life-cycle cost of each trial: those of an option that differ in numbers alone at once, others by themselves."""
    cost = np.zeros(len(trials))
    if not next(iter(chosen.values())).case.scenario.priced:
        return cost
    apart = [place for place, trial in enumerate(trials) if trial.numbers is None]
    if apart:
        own = [cases[at[place]] for place in apart]
        cost[apart] = money_of(own, quantities.taken(at[apart]))["present_cost"]
    for name, result in chosen.items():
        alike = [place for place, trial in enumerate(trials) if trial.numbers is not None and trial.option == name]
        if alike:
            numbers = [trials[place].numbers or {} for place in alike]
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
