"""Designs held fixed while an input changes: run them again, price them again."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from planner.money.lifecycle import LifeCycle, life_cycle
from planner.money.quantities import bill_of_quantities
from planner.money.simulated import Quantities, quantities_of
from planner.scenario.reader import option_scenario
from planner.scenario.scenario import Scenario
from planner.sources.base import SourceKind
from planner.study.design import Design, Ground, designs_of, option_of
from planner.study.search import Choice, given_levels, meets
from planner.supply.run import Option, Outcome, run_options
from planner.water.demand import hourly_demand_m3


@dataclass(frozen=True)
class Pinned:
    """A design held fixed: strings, tank [m³] and float-switch levels (start, stop) [%]."""

    name: str
    sources: tuple[SourceKind, ...]
    strings: int
    tank_m3: float
    levels: tuple[float, float]


@dataclass(frozen=True)
class Operated:
    """What a pinned design did over the life."""

    pinned: Pinned
    quantities: Quantities
    delivered_share: float
    worst_year_share: float
    meets_service: bool


def pinned_of(choice: Choice) -> Pinned:
    """Hold the design chosen for an option."""
    levels = choice.levels if choice.levels is not None else given_levels(choice.design)
    return Pinned(choice.design.name, choice.design.sources, choice.strings, choice.tank_m3, levels)


def operated_of(pinned: Pinned, outcome: Outcome, own: Scenario) -> Operated:
    """Sum up what a pinned design did; `outcome` is of a single case, `own` the option's scenario."""
    return Operated(
        pinned=pinned,
        quantities=quantities_of(outcome),
        delivered_share=float(outcome.delivered_share),
        worst_year_share=float(outcome.worst_year_share),
        meets_service=bool(meets(outcome, own)),
    )


def run_pinned(scenarios: Sequence[Scenario], ground: Ground, designs: Sequence[Pinned]) -> list[list[Operated]]:
    """Run the hours of pinned designs again in changed scenarios of the same site and weather, in one pass.

    Parameters
    ----------
    scenarios : sequence of Scenario
        The changed scenarios; their site, weather, seed, life years and hours of tariff bands are those of `ground`.
    ground : Ground
        Place and weather, not worked out again.
    designs : sequence of Pinned
        The designs.

    Returns
    -------
    list of list of Operated
        By scenario and design.

    Raises
    ------
    InputError
        When hydraulics or tank show a changed scenario to be unworkable.
    """
    names = {"options": [pinned.name for pinned in designs], "reference": None}
    built: list[Design] = []
    options: list[Option] = []
    for scenario in scenarios:
        changed = scenario.model_copy(update={"service": scenario.service.model_copy(update=names)})
        draw_m3 = hourly_demand_m3(scenario.demand, scenario.finance.life_years)
        here = replace(ground, scenario=changed, draw_m3=draw_m3)
        for design, pinned in zip(designs_of(here), designs, strict=True):
            start, stop = pinned.levels
            built.append(design)
            options.append(option_of(design, here, [pinned.strings], [pinned.tank_m3], [start], [stop]))
    outcomes = run_options(options, bands=ground.bands, band_count=ground.band_count)
    operated = [
        operated_of(pinned, outcome.at(0, 0), design.scenario)
        for pinned, outcome, design in zip([*designs] * len(scenarios), outcomes, built, strict=True)
    ]
    return [operated[first : first + len(designs)] for first in range(0, len(operated), len(designs))]


def price_pinned(scenario: Scenario, operated: Operated) -> LifeCycle:
    """Price what a pinned design did by a scenario's prices; no hour is run again."""
    pinned = operated.pinned
    own = option_scenario(scenario, pinned.name)
    lines = bill_of_quantities(own, pinned.sources, strings=pinned.strings, tank_m3=pinned.tank_m3)
    return life_cycle(own, pinned.sources, lines, operated.quantities)
