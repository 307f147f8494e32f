"""What came of cases: arrays with the case as leading axis, and one case at a time."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from typing import Any

import numpy as np
from numpy.typing import NDArray

from planner.money.lifecycle import LifeCycle, Quantities, life_cycle
from planner.money.quantities import Line, bill_of_quantities
from planner.scenario.finance import Service
from planner.scenario.scenario import Scenario
from planner.study.cases import Case
from planner.supply.run import Outcome

Array = NDArray[np.float64]

_ROUNDING = 1e-9


@dataclass(frozen=True)
class Result:
    """One case: what it did, what it is built of and what it costs."""

    case: Case
    outcome: Outcome
    quantities: Quantities
    meets_service: bool

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
        for scenario, places in _by_scenario(self.cases):
            service = scenario.service.model_copy(update=changed)
            shares = self.delivered_share[places], self.worst_year_share[places]
            found[places] = serves(service, *shares, self.longest_short_days[places])
        return found

    @property
    def present_cost(self) -> Array:
        """Life-cycle cost, (cases,)."""
        return self.money["present_cost"]

    def at(self, place: int) -> Result:
        """One case."""
        outcome: Outcome = _at(self.outcome, place)
        named = replace(outcome, name=self.cases[place].design.name)
        return Result(self.cases[place], named, _at(self.quantities, place), bool(self.meets_service[place]))


def _at(arrays: Any, place: int) -> Any:
    return replace(arrays, **{n: value[place] for n, value in vars(arrays).items() if isinstance(value, np.ndarray)})


def taken(arrays: Any, places: Any) -> Any:
    """Take some cases of an `Outcome` or of `Quantities`, in some order."""
    return _at(arrays, places)


def stacked(outcomes: Sequence[Outcome]) -> Outcome:
    """Put outcomes of single cases side by side, the case as leading axis."""
    names = [name for name, value in vars(outcomes[0]).items() if isinstance(value, np.ndarray)]
    arrays: dict[str, Any] = {name: np.stack([getattr(each, name) for each in outcomes]) for name in names}
    return replace(outcomes[0], name="", **arrays)


def quantities_of(outcome: Outcome) -> Quantities:
    """Sum an outcome's months into the yearly quantities that money needs; any leading axes stay."""
    return Quantities(
        demand_m3=outcome.demand_m3.sum(axis=-1),
        delivered_m3=outcome.delivered_m3.sum(axis=-1),
        solar_kwh=outcome.solar_kwh.sum(axis=-1),
        grid_kwh=outcome.grid_kwh,
        grid_peak_kw=outcome.grid_peak_kw,
        generator_kwh=outcome.generator_kwh.sum(axis=-1),
        generator_hours=outcome.generator_hours.sum(axis=-1),
        fuel_l=outcome.fuel_l.sum(axis=-1),
    )


def serves(service: Service, share: Array, worst_year_share: Array, longest_short_days: Array) -> NDArray[np.bool_]:
    """Tell in which cases (...) shares and short days meet a service target, whose numbers may be arrays of cases."""
    enough = share >= service.delivered_share_percent / 100 - _ROUNDING
    if service.worst_year_share_percent is not None:
        enough &= worst_year_share >= service.worst_year_share_percent / 100 - _ROUNDING
    if service.longest_short_days is not None:
        enough &= longest_short_days <= service.longest_short_days
    return np.asarray(enough)


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
    for (scenario, sources), places in _by_scenario_and_sources(cases):
        designs = [cases[place].design for place in places]
        life = life_of(
            scenario,
            sources,
            np.array([design.strings for design in designs]),
            np.array([design.tank_m3 for design in designs]),
            taken(quantities, places),
        )
        for name, values in life.figures.items():
            found.setdefault(name, np.empty(len(cases)))[places] = values
    return found


def life_of(
    scenario: Scenario, sources: tuple[str, ...], strings: Any, tank_m3: Array, quantities: Quantities
) -> LifeCycle:
    """Price designs (cases,) in a scenario whose prices may be arrays of cases."""
    lines = bill_of_quantities(scenario, sources, strings=strings, tank_m3=tank_m3)
    return life_cycle(scenario, sources, lines, quantities)


def _by_scenario(cases: Sequence[Case]) -> list[tuple[Scenario, list[int]]]:
    groups: dict[int, tuple[Scenario, list[int]]] = {}
    for place, case in enumerate(cases):
        groups.setdefault(id(case.scenario), (case.scenario, []))[1].append(place)
    return list(groups.values())


def _by_scenario_and_sources(cases: Sequence[Case]) -> list[tuple[tuple[Scenario, tuple[str, ...]], list[int]]]:
    groups: dict[tuple[int, tuple[str, ...]], tuple[tuple[Scenario, tuple[str, ...]], list[int]]] = {}
    for place, case in enumerate(cases):
        sources = case.design.sources
        groups.setdefault((id(case.scenario), sources), ((case.scenario, sources), []))[1].append(place)
    return list(groups.values())
