"""Size every supply option: the candidate of least objective that meets the service target, by trying them all.

The objective (`ranking.objective`) is the present cost, and a weight of what is built and bought where there are no
prices; 'cost' below stands for it.
Every candidate is simulated hour by hour over every life year and costed; nothing is skipped by rules of thumb. Where
two candidates cost the same to rounding, the one with fewer strings, then the smaller tank, then the lower levels is
taken, and what the scenario gives before other pumps, pipes or hours.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray

from planner.scenario.scenario import Scenario
from planner.sources.base import SourceKind
from planner.study.candidates import CandidateGrid, Levels, candidate_grid
from planner.study.context import Context
from planner.study.evaluate import COLUMNS_AT_ONCE, evaluate
from planner.study.pareto import cheapest, pareto_front
from planner.study.ranking import best_first
from planner.study.results import Results, missed, nearest
from planner.study.search import Choice, choose_all

Array = NDArray[np.float64]
Integers = NDArray[np.int64]
Progress = Callable[[int, int, str], None]
"""Called with candidates done, candidates in all and the option at work."""

CLOSE = 0.02
"""Runners-up cost at most this share more than the best."""
TARGETS = (50.0, 60.0, 70.0, 80.0, 85.0, 90.0, 95.0, 97.0, 98.0, 99.0, 99.5, 99.9, 100.0)
"""Delivered shares at which the least present cost is reported, per cent."""
CASES_AT_ONCE = 4000
"""Candidates whose results are held by year and month at once."""
_ROUNDING = 1e-9


@dataclass(frozen=True)
class Candidates:
    """Every candidate of one option and what it gives, arrays (candidates,).

    `setup`, `string`, `tank` and `level` are positions in the lists of the candidate grid, `meets_service` whether the
    target is met, `meets_rest` whether every part of it but the delivered share is. Shares are fractions, energy and
    fuel means over the life.
    """

    setup: Integers
    string: Integers
    tank: Integers
    level: Integers
    delivered_share: Array
    worst_year_share: Array
    longest_short_days: Array
    meets_service: NDArray[np.bool_]
    meets_rest: NDArray[np.bool_]
    capital_cost: Array
    present_cost: Array
    equivalent_yearly_cost: Array
    levelised_cost_per_m3: Array
    grid_kwh_per_year: Array
    fuel_l_per_year: Array
    objective: Array


@dataclass(frozen=True)
class SizedDesign:
    """One candidate spelt out; `levels` is None where there is no float switch, `index` its position among all."""

    index: int
    option: str
    strings: int
    modules: int
    array_kw: float
    tank_m3: float
    levels: Levels | None
    pump: str
    pipes: tuple[str, ...]
    hours: str
    delivered_share: float
    worst_year_share: float
    longest_short_days: float
    meets_service: bool
    capital_cost: float
    present_cost: float
    equivalent_yearly_cost: float
    levelised_cost_per_m3: float
    grid_kwh_per_year: float
    fuel_l_per_year: float
    objective: float

    @property
    def switch_m3(self) -> tuple[float, float] | None:
        """Water in the tank, from its bottom, at which the float switch starts and stops the top-up [m³]."""
        return (
            None if self.levels is None else (self.levels[0] * self.tank_m3 / 100, self.levels[1] * self.tank_m3 / 100)
        )


@dataclass(frozen=True)
class OptionSizing:
    """What sizing found for one supply option.

    Attributes
    ----------
    grid : CandidateGrid
        What was tried.
    candidates : Candidates
        Every candidate.
    best : SizedDesign or None
        Least objective among those that meet the service target; None where none does.
    nearest : SizedDesign
        The best, or else the one that misses the target by least (the cheapest of these).
    misses_by_percent : float
        By how many percentage points `nearest` misses the share that it misses most; 0 where it misses none.
    misses_by_days : float
        By how many days in a row it goes beyond the longest run of short days allowed; 0 where it does not.
    runners_up : tuple of SizedDesign
        Others that meet the target at no more than 2 percent above the best, cheapest first.
    front : tuple of SizedDesign
        The trade-off: designs that no other beats in both objective and delivered share, by falling share. Only
        the delivered share is asked of them.
    least_cost_at : tuple of (float, SizedDesign or None)
        Cheapest design that delivers at least so many per cent, or None where none does.
    next_percent : tuple of (float, float or None)
        A target one percentage point higher (100 at most), and what that adds to the objective; None where
        no candidate reaches it or none meets the target as it is.
    steady_start_percent : tuple of float or None
        Lowest and highest start level that serve within 2 percent of the best's cost, all else as in it.
    by_run : Choice
        What the ordinary run chooses for the option.
    by_run_cost : float
        Objective of that.
    by_run_meets : bool
        Whether it meets the target.
    """

    name: str
    grid: CandidateGrid
    candidates: Candidates
    best: SizedDesign | None
    nearest: SizedDesign
    misses_by_percent: float
    misses_by_days: float
    runners_up: tuple[SizedDesign, ...]
    front: tuple[SizedDesign, ...]
    least_cost_at: tuple[tuple[float, SizedDesign | None], ...]
    next_percent: tuple[float, float | None]
    steady_start_percent: tuple[float, float] | None
    by_run: Choice
    by_run_cost: float
    by_run_meets: bool


@dataclass(frozen=True)
class Sizing:
    """The sizing of every option; `ranking` holds names in the order of `study.ranking`, by each option's `nearest`.

    `kinds` are the sources known to it, in order of priority.
    """

    scenario: Scenario
    options: tuple[OptionSizing, ...]
    ranking: tuple[str, ...]
    kinds: tuple[SourceKind, ...]

    def option(self, name: str) -> OptionSizing:
        """Return one option by its name."""
        return next(option for option in self.options if option.name == name)

    @property
    def ranked(self) -> tuple[OptionSizing, ...]:
        """The options, best first."""
        return tuple(self.option(name) for name in self.ranking)

    @property
    def candidate_count(self) -> int:
        """Candidates tried in all."""
        return sum(option.grid.count for option in self.options)


def size_scenario(
    scenario: Scenario, folder: Path, progress: Progress | None = None, *, columns_at_once: int = COLUMNS_AT_ONCE
) -> Sizing:
    """Size every supply option of a scenario by trying every candidate.

    Parameters
    ----------
    scenario : Scenario
        The checked scenario; its `size` table lists candidates.
    folder : pathlib.Path
        Folder to which paths in the scenario are relative.
    progress : callable, optional
        Called after each pass through the hours.
    columns_at_once : int
        Hourly series in one pass; changes memory and speed, not the result.

    Returns
    -------
    Sizing

    Raises
    ------
    InputError
        When weather, hydraulics, tank or candidates show the scenario to be unworkable.
    """
    context = Context(folder)
    supplies = context.supplies(scenario)
    grids = [candidate_grid(context, supply) for supply in supplies]
    by_run = choose_all(context, supplies)
    total, done = sum(grid.count for grid in grids), 0

    def tell(count: int) -> None:
        nonlocal done
        done += count
        if progress is not None:
            progress(min(done, total), total, grid.name)

    options = []
    for grid, choice in zip(grids, by_run, strict=True):
        before = done
        options.append(_option(grid, _tried(context, grid, tell, columns_at_once), choice))
        # What the ordinary run has tried already needs no pass and is told of by none.
        tell(before + grid.count - done)
    ranking = tuple(design.option for design in best_first([option.nearest for option in options]))
    return Sizing(scenario, tuple(options), ranking, context.kinds)


def _tried(context: Context, grid: CandidateGrid, tell: Callable[[int], None], columns_at_once: int) -> Candidates:
    """Evaluate every candidate of one option, by setup, strings, tank and level."""
    setup, string, tank, level = grid.indices.T
    cases = [grid.case(index) for index in range(grid.count)]
    parts = []
    for begin in range(0, len(cases), CASES_AT_ONCE):
        some = cases[begin : begin + CASES_AT_ONCE]
        found = evaluate(context, some, columns_at_once=columns_at_once, progress=tell)
        parts.append(_figures(found))
    figures = {name: np.concatenate([part[name] for part in parts]) for name in parts[0]}
    return Candidates(setup=setup, string=string, tank=tank, level=level, **figures)


def _figures(found: Results) -> dict[str, Any]:
    years = found.outcome.demand_m3.shape[-2]
    money = ("capital_cost", "present_cost", "equivalent_yearly_cost", "levelised_cost_per_m3")
    return {
        "delivered_share": found.delivered_share,
        "worst_year_share": found.worst_year_share,
        "longest_short_days": found.longest_short_days,
        "meets_service": found.meets_service,
        "meets_rest": found.serve(demand_met_percent=0.0),
        "grid_kwh_per_year": found.outcome.grid_kwh.sum(axis=(-1, -2, -3)) / years,
        "fuel_l_per_year": found.outcome.fuel_l.sum(axis=(-1, -2)) / years,
        "objective": found.objective,
        **{name: found.money[name] for name in money},
    }


def _option(grid: CandidateGrid, candidates: Candidates, choice: Choice) -> OptionSizing:
    service = grid.setups[0].supply.scenario.service
    target = service.demand_met_percent
    cost, share = candidates.objective, candidates.delivered_share
    best = cheapest(cost, candidates.meets_service, grid.cautions)
    parts = candidates.delivered_share, candidates.worst_year_share, candidates.longest_short_days
    misses, over = missed(service, *parts)
    near = best if best is not None else cheapest(cost, nearest(service, *parts), grid.cautions)
    assert near is not None
    reaches = [(percent, cheapest(cost, share >= percent / 100 - _ROUNDING)) for percent in sorted({*TARGETS, target})]
    shown = _Shown(grid, candidates)
    return OptionSizing(
        name=grid.name,
        grid=grid,
        candidates=candidates,
        best=None if best is None else shown.design(best),
        nearest=shown.design(near),
        misses_by_percent=float(misses[near]) if best is None else 0.0,
        misses_by_days=float(over[near]),
        runners_up=()
        if best is None
        else shown.designs(_within(candidates, best, grid.cautions <= grid.cautions[best])),
        front=shown.designs(pareto_front(cost, share)),
        least_cost_at=tuple((percent, None if at is None else shown.design(at)) for percent, at in reaches),
        next_percent=_next_percent(candidates, best, target),
        steady_start_percent=None if best is None or not grid.has_switch else _steady(grid, candidates, best),
        by_run=choice,
        by_run_cost=choice.result.objective,
        by_run_meets=choice.result.meets_service,
    )


def _within(candidates: Candidates, best: int, also: NDArray[np.bool_]) -> Integers:
    """Places of those that serve at no more than 2 percent above the best, cheapest first, the best left out."""
    cost = candidates.objective
    near = np.flatnonzero(candidates.meets_service & also & (cost <= cost[best] + CLOSE * abs(cost[best])))
    near = near[near != best]
    return np.asarray(near[np.argsort(cost[near], kind="stable")], dtype=np.int64)


def _next_percent(candidates: Candidates, best: int | None, target_percent: float) -> tuple[float, float | None]:
    higher = min(target_percent + 1, 100.0)
    if best is None:
        return higher, None
    enough = candidates.meets_rest & (candidates.delivered_share >= higher / 100 - _ROUNDING)
    at = cheapest(candidates.objective, enough)
    return higher, None if at is None else float(candidates.objective[at] - candidates.objective[best])


def _steady(grid: CandidateGrid, candidates: Candidates, best: int) -> tuple[float, float]:
    same = np.ones(candidates.setup.size, dtype=bool)
    for name in ("setup", "string", "tank"):
        column = getattr(candidates, name)
        same &= column == column[best]
    indices = [best, *_within(candidates, best, same)]
    starts = [grid.levels[candidates.level[index]][0] for index in indices]
    return min(starts), max(starts)


@dataclass(frozen=True)
class _Shown:
    grid: CandidateGrid
    candidates: Candidates

    def design(self, index: int) -> SizedDesign:
        grid, found = self.grid, self.candidates
        setup, case = grid.setups[found.setup[index]], grid.case(index)
        design = case.design
        return SizedDesign(
            index=index,
            option=grid.name,
            strings=design.strings,
            modules=case.modules,
            array_kw=case.array_kw,
            tank_m3=design.tank_m3,
            levels=design.levels if grid.has_switch else None,
            pump=setup.pump,
            pipes=setup.pipes,
            hours=setup.hours,
            meets_service=bool(found.meets_service[index]),
            **{
                name: float(getattr(found, name)[index])
                for name in (
                    "delivered_share",
                    "worst_year_share",
                    "longest_short_days",
                    "capital_cost",
                    "present_cost",
                    "equivalent_yearly_cost",
                    "levelised_cost_per_m3",
                    "grid_kwh_per_year",
                    "fuel_l_per_year",
                    "objective",
                )
            },
        )

    def designs(self, indices: Sequence[int] | Integers) -> tuple[SizedDesign, ...]:
        return tuple(self.design(int(index)) for index in indices)


__all__ = ["Candidates", "OptionSizing", "SizedDesign", "Sizing", "size_scenario"]
