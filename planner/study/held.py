"""Designs held fixed while inputs change: what each costs and delivers in a changed scenario, and which is best."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from planner.assumptions.reader import option_scenario
from planner.scenario.scenario import Scenario
from planner.study.cases import Case, Design
from planner.study.context import Context
from planner.study.evaluate import evaluate
from planner.study.ranking import ranked
from planner.study.results import Results


@dataclass(frozen=True)
class Standing:
    """One option in a scenario, its design and its money."""

    pinned: Design
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


@dataclass(frozen=True)
class Held:
    """Designs held fixed; the hours of a scenario are run once, and only where it changes them."""

    context: Context
    designs: tuple[Design, ...]

    def standings(self, scenario: Scenario, names: Sequence[str] | None = None) -> list[Standing]:
        """What some options (all, where none are named) do in a scenario, in the order of the designs."""
        return self.each([scenario], names)[0]

    def each(self, scenarios: Sequence[Scenario], names: Sequence[str] | None = None) -> list[list[Standing]]:
        """What options do in each of some scenarios, whose hours go through the same passes."""
        designs = [design for design in self.designs if names is None or design.name in names]
        cases = [Case(option_scenario(scenario, design.name), design) for scenario in scenarios for design in designs]
        found = evaluate(self.context, cases)
        width = len(designs)
        return [
            [_standing(found, place) for place in range(begin, begin + width)]
            for begin in range(0, len(cases), width)
        ]  # fmt: skip


def best_first(standings: Sequence[Standing]) -> list[Standing]:
    """Order options as the comparison does: those that meet the target by cost, the others by what they deliver."""
    columns = zip(*((each.meets_service, each.delivered_share, each.present_cost) for each in standings), strict=True)
    return [standings[place] for place in ranked(*map(list, columns))]


def _standing(found: Results, place: int) -> Standing:
    case = found.cases[place]
    names = ("capital_cost", "present_cost", "equivalent_yearly_cost", "levelised_cost_per_m3")
    return Standing(
        pinned=case.design,
        modules=case.modules,
        delivered_share=float(found.delivered_share[place]),
        worst_year_share=float(found.worst_year_share[place]),
        meets_service=bool(found.meets_service[place]),
        **{name: float(found.money[name][place]) for name in names},
    )
