"""Designs held fixed in changed scenarios: what each costs and delivers there, and which of them is best."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from planner.scenario.scenario import Scenario
from planner.study.design import Ground
from planner.study.inputs import VariedInput
from planner.study.pinned import Operated, Pinned, price_pinned, run_pinned
from planner.study.ranking import ranked

_VALUES_AT_ONCE = 3
"""Values whose hours run in one pass: bounds the memory."""


@dataclass(frozen=True)
class Standing:
    """One option in the base case, its design and its money."""

    pinned: Pinned
    modules: int
    delivered_share: float
    worst_year_share: float
    meets_service: bool
    capital_cost: float
    present_cost: float
    equivalent_yearly_cost: float
    levelised_cost_per_m3: float

    @property
    def name(self) -> str:
        """Name of the option."""
        return self.pinned.name


def best_first(standings: Sequence[Standing]) -> list[Standing]:
    """Order options as the comparison does: those that meet the target by cost, the others by what they deliver."""
    columns = zip(*((each.meets_service, each.delivered_share, each.present_cost) for each in standings), strict=True)
    return [standings[place] for place in ranked(*map(list, columns))]


def standing_of(scenario: Scenario, operated: Operated) -> Standing:
    """Price one operated design in a scenario."""
    pinned, life = operated.pinned, price_pinned(scenario, operated)
    solar = scenario.sources.solar
    return Standing(
        pinned=pinned,
        modules=pinned.strings * solar.modules_in_series if solar and "solar" in pinned.sources else 0,
        delivered_share=operated.delivered_share,
        worst_year_share=operated.worst_year_share,
        meets_service=operated.meets_service,
        capital_cost=float(life.capital_cost),
        present_cost=float(life.present_cost),
        equivalent_yearly_cost=float(life.equivalent_yearly_cost),
        levelised_cost_per_m3=float(life.levelised_cost_per_m3),
    )


class Reruns:
    """Pinned designs in changed scenarios; hours are run anew only where an input changes them, and once a value."""

    def __init__(self, scenario: Scenario, ground: Ground, base: Sequence[Operated]) -> None:
        self.scenario, self.ground, self.base = scenario, ground, base
        self.pinned = [operated.pinned for operated in base]
        self._known: dict[tuple[str, float, str], Operated] = {}

    def at(self, varied: VariedInput, value: float, names: Sequence[str] | None = None) -> list[Operated]:
        """Run some options (all, where none are named) at a value of an input, in the order of the names.

        The base case is taken where the hours are the same.
        """
        by_name = {operated.pinned.name: operated for operated in self.base}
        wanted = list(by_name) if names is None else list(names)
        if varied.kind != "hours" or value == varied.base:
            return [by_name[name] for name in wanted]
        keys = [(varied.name, value, name) for name in wanted]
        if any(key not in self._known for key in keys):
            self._run(varied, [value], [pinned for pinned in self.pinned if pinned.name in wanted])
        return [self._known[key] for key in keys]

    def ahead(self, varied: VariedInput, values: Sequence[float]) -> None:
        """Run every option at several values, a few of them in one pass, so that they are known when asked for."""
        if varied.kind != "hours":
            return
        missing = [
            value
            for value in values
            if value != varied.base and any((varied.name, value, each.name) not in self._known for each in self.pinned)
        ]
        for first in range(0, len(missing), _VALUES_AT_ONCE):
            self._run(varied, missing[first : first + _VALUES_AT_ONCE], self.pinned)

    def _run(self, varied: VariedInput, values: Sequence[float], designs: Sequence[Pinned]) -> None:
        changed = [varied.change(self.scenario, value) for value in values]
        for value, operated in zip(values, run_pinned(changed, self.ground, designs), strict=True):
            self._known |= {(varied.name, value, each.pinned.name): each for each in operated}

    def costs(self, scenario: Scenario, operated: Sequence[Operated]) -> list[float]:
        """Price options in a scenario."""
        return [float(price_pinned(scenario, each).present_cost) for each in operated]

    def ranked(self, scenario: Scenario, operated: Sequence[Operated]) -> list[Standing]:
        """Rank options in a scenario."""
        return best_first([standing_of(scenario, each) for each in operated])
