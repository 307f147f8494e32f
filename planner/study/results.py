"""What came of cases: arrays with the case as leading axis, and one case at a time."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from typing import Any, TypeVar

import numpy as np
from numpy.typing import NDArray

from planner.money.lifecycle import LifeCycle, life_cycle
from planner.money.quantities import Line, bill_of_quantities
from planner.money.simulated import Quantities, quantities_of
from planner.scenario.finance import Service
from planner.scenario.scenario import Scenario
from planner.sources.base import SourceKind
from planner.study.cases import Case
from planner.study.ranking import objective
from planner.supply.run import Outcome

Array = NDArray[np.float64]
Did = TypeVar("Did", Outcome, Quantities)

MISSED_ALIKE_POINTS = 0.1
"""Designs that miss a share by so many percentage points more are as near to the target: answers show no finer."""
_ROUNDING = 1e-9


@dataclass(frozen=True)
class Result:
    """One case: what it did, what it is built of and what it costs; `objective` as of `Results`."""

    case: Case
    outcome: Outcome
    quantities: Quantities
    meets_service: bool
    objective: float

    @cached_property
    def lines(self) -> tuple[Line, ...]:
        """Bill of quantities."""
        design = self.case.design
        return bill_of_quantities(self.case.scenario, design.sources, strings=design.strings, tank_m3=design.tank_m3)

    @cached_property
    def life(self) -> LifeCycle:
        """Life-cycle figures."""
        return life_cycle(self.case.scenario, self.case.design.sources, self.lines, self.quantities)


@dataclass(frozen=True)
class Results:
    """What came of cases.

    Attributes
    ----------
    cases : tuple of Case
        The cases.
    outcome : Outcome
        What each did: arrays (cases, years, 12[, bands]).
    quantities : Quantities
        The same by year: arrays (cases, years[, 12, bands]).
    money : dict of str to ndarray, (cases,)
        Every figure of `money.figures.FIGURES`.
    """

    cases: tuple[Case, ...]
    outcome: Outcome
    quantities: Quantities
    money: dict[str, Array]

    @staticmethod
    def of(results: Sequence[Result]) -> Results:
        """Put single cases side by side."""
        cases = tuple(each.case for each in results)
        outcome = laid_out((([index], each.outcome.taken(None)) for index, each in enumerate(results)), len(cases))
        quantities = quantities_of(outcome)
        return Results(cases, outcome, quantities, money_of(cases, quantities))

    @cached_property
    def delivered_share(self) -> Array:
        """Delivered / demanded over the life, (cases,)."""
        return self.outcome.delivered_share

    @cached_property
    def worst_year_share(self) -> Array:
        """Delivered / demanded in the worst year, (cases,)."""
        return self.outcome.worst_year_share

    @cached_property
    def longest_short_days(self) -> Array:
        """Longest run of short days in the life, (cases,)."""
        longest: Array = self.outcome.longest_short_days.max(axis=-1)
        return longest

    @cached_property
    def meets_service(self) -> NDArray[np.bool_]:
        """Which cases meet the service target, (cases,)."""
        return self.serve()

    def serve(self, **changed: Any) -> NDArray[np.bool_]:
        """Tell which cases meet the service target, some of its keys changed."""
        found = np.empty(len(self.cases), dtype=bool)
        for scenario, indices in _by_scenario(self.cases):
            service = scenario.service.model_copy(update=changed)
            shares = self.delivered_share[indices], self.worst_year_share[indices]
            found[indices] = serves(service, *shares, self.longest_short_days[indices])
        return found

    @property
    def present_cost(self) -> Array:
        """Life-cycle cost, (cases,)."""
        return self.money["present_cost"]

    @cached_property
    def objective(self) -> Array:
        """What the choice of sizes keeps as small as may be, see `ranking.objective`, (cases,)."""
        outcome = self.outcome
        return objective(
            self.cases[0].scenario,
            self.present_cost,
            [case.array_kw for case in self.cases],
            [case.design.tank_m3 for case in self.cases],
            outcome.grid_kwh.sum(axis=(-1, -2)).mean(axis=-1),
            outcome.fuel_l.sum(axis=-1).mean(axis=-1),
        )

    def at(self, index: int) -> Result:
        """One case."""
        case = self.cases[index]
        outcome = replace(with_sources(self.outcome.taken(index), case), name=case.design.name)
        quantities = with_sources(self.quantities.taken(index), case)
        return Result(case, outcome, quantities, bool(self.meets_service[index]), float(self.objective[index]))


def with_sources(did: Did, case: Case) -> Did:
    """Leave what a case's own sources did alone: side by side, cases have the sources of all."""
    return replace(did, top_ups={each.key: did.top_ups[each] for each in case.design.sources if each in did.top_ups})


def laid_out(outcomes: Iterable[tuple[Sequence[int], Outcome]], count: int) -> Outcome:
    """Put outcomes, arrays with cases as leading axis, into their indices among some cases.

    Parameters
    ----------
    outcomes : iterable of (indices, Outcome)
        Some cases' indices among all of them, and what they did.
    count : int
        Cases in all.

    Returns
    -------
    Outcome
        With every source that any of them has; what a case lacks does nothing.
    """
    arrays: dict[str, Array] = {}
    band_count = 1
    for indices, outcome in outcomes:
        band_count = max(band_count, outcome.band_count)
        for name, value in outcome.arrays(tuple(outcome.top_ups)).items():
            arrays.setdefault(name, np.zeros((count, *value.shape[1:])))[list(indices)] = value
    return replace(Outcome.of_arrays("", arrays), band_count=band_count)


def serves(service: Service, share: Array, worst_year_share: Array, longest_short_days: Array) -> NDArray[np.bool_]:
    """Tell in which cases (...) shares and short days meet a service target, whose numbers may be arrays of cases."""
    enough = share >= service.demand_met_percent / 100 - _ROUNDING
    if service.demand_met_worst_year_percent is not None:
        enough &= worst_year_share >= service.demand_met_worst_year_percent / 100 - _ROUNDING
    if service.longest_short_days is not None:
        enough &= longest_short_days <= service.longest_short_days
    return np.asarray(enough)


def missed(service: Service, share: Array, worst_year_share: Array, longest_short_days: Array) -> tuple[Array, Array]:
    """Tell by how much cases (...) miss a service target.

    Returns
    -------
    tuple of ndarray, (...)
        The share that is missed most [percentage points], and the short days in a row beyond those allowed [days].
    """
    points = np.maximum(service.demand_met_percent - 100 * share, 0.0)
    if service.demand_met_worst_year_percent is not None:
        points = np.maximum(points, service.demand_met_worst_year_percent - 100 * worst_year_share)
    allowed = np.inf if service.longest_short_days is None else service.longest_short_days
    return points, np.maximum(longest_short_days - allowed, 0.0)


def nearest(service: Service, share: Array, worst_year_share: Array, longest_short_days: Array) -> NDArray[np.bool_]:
    """Tell which cases (cases,) miss a target least: of those that miss the shares alike, those by the fewest days."""
    points, days = missed(service, share, worst_year_share, longest_short_days)
    near = points <= points.min() + MISSED_ALIKE_POINTS
    return np.asarray(near & (days <= days[near].min()))


def money_of(cases: Sequence[Case], quantities: Quantities) -> dict[str, Array]:
    """Every life-cycle figure of some cases, (cases,); those of one scenario and the same sources are priced at once.

    Parameters
    ----------
    cases : sequence of Case
        The cases.
    quantities : Quantities
        What each does, the case as leading axis.
    """
    found: dict[str, Array] = {}
    for (scenario, sources), indices in _by_scenario_and_sources(cases):
        designs = [cases[index].design for index in indices]
        life = life_of(
            scenario,
            sources,
            np.array([design.strings for design in designs]),
            np.array([design.tank_m3 for design in designs]),
            quantities.taken(indices),
        )
        for name, values in life.figures.items():
            found.setdefault(name, np.empty(len(cases)))[indices] = values
    return found


def life_of(
    scenario: Scenario, sources: tuple[SourceKind, ...], strings: Any, tank_m3: Array, quantities: Quantities
) -> LifeCycle:
    """Price designs (cases,) in a scenario whose prices may be arrays of cases."""
    lines = bill_of_quantities(scenario, sources, strings=strings, tank_m3=tank_m3)
    return life_cycle(scenario, sources, lines, quantities)


def _by_scenario(cases: Sequence[Case]) -> list[tuple[Scenario, list[int]]]:
    groups: dict[int, tuple[Scenario, list[int]]] = {}
    for index, case in enumerate(cases):
        groups.setdefault(id(case.scenario), (case.scenario, []))[1].append(index)
    return list(groups.values())


def _by_scenario_and_sources(cases: Sequence[Case]) -> list[tuple[tuple[Scenario, tuple[SourceKind, ...]], list[int]]]:
    groups: dict[tuple[int, tuple[SourceKind, ...]], tuple[tuple[Scenario, tuple[SourceKind, ...]], list[int]]] = {}
    for index, case in enumerate(cases):
        sources = case.design.sources
        groups.setdefault((id(case.scenario), sources), ((case.scenario, sources), []))[1].append(index)
    return list(groups.values())
