"""Choose what the user left to the tool: modules in series, strings, tank and float-switch levels.

The rule, over all that is open at once: of the designs that fail the fewest checks the one of least objective that
meets the service target; where there are no prices, of those that pass with the fewest cautions. Each candidate is
simulated over every life year. Where all miss the target, the same among those that miss it least (`results.nearest`).
The objective (`ranking.objective`) is the present cost, and a weight of what is built and bought where there are no
prices.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import product

import numpy as np
from numpy.typing import NDArray

from planner.scenario.scenario import Scenario
from planner.study.cases import Case, Design, Supply
from planner.study.context import Context
from planner.study.evaluate import evaluate
from planner.study.pareto import cheapest
from planner.study.passing import Sizes, passing
from planner.study.ranking import ranked
from planner.study.results import Result, Results, nearest

Array = NDArray[np.float64]
Levels = tuple[float, float]

LEVELS = ((10.0, 20.0), (10.0, 30.0), (20.0, 30.0), (20.0, 40.0), (30.0, 50.0), (50.0, 70.0), (70.0, 90.0))
"""Start and stop levels tried, per cent of the tank; lower ones would leave no reserve for an outage."""
TANK_STEPS = (0.25, 0.5, 0.75, 1.5, 2.0, 3.0)
"""Multiples of a given tank shown on the tank curve where no sizes are listed."""


@dataclass(frozen=True)
class TankCurve:
    """Delivered share of each tank size, everything else as chosen: arrays (sizes,)."""

    volume_m3: Array
    delivered_share: Array


@dataclass(frozen=True)
class LevelTrial:
    """What one setting of the float switch gives over the life; `objective` as of `Results`."""

    start_percent: float
    stop_percent: float
    delivered_share: float
    meets_service: bool
    grid_kwh_per_year: float
    fuel_l_per_year: float
    present_cost: float
    equivalent_yearly_cost: float
    objective: float


@dataclass(frozen=True)
class Choice:
    """The design chosen for one option, and what it does.

    `trials` lists the float-switch settings tried where sun and top-up share the tank, the chosen one first.
    """

    supply: Supply
    result: Result
    tank_curve: TankCurve
    trials: tuple[LevelTrial, ...]

    @property
    def design(self) -> Design:
        """The design."""
        return self.result.case.design

    @property
    def levels(self) -> Levels | None:
        """Float-switch levels; None where the option has no float switch."""
        return self.design.levels if self.design.has_switch else None


def choose_all(context: Context, supplies: Sequence[Supply]) -> list[Choice]:
    """Choose modules in series, strings, tank and levels of every option and simulate the chosen designs.

    Parameters
    ----------
    context : Context
        What the options share.
    supplies : sequence of Supply
        The options.

    Returns
    -------
    list of Choice
        In the order of `supplies`.
    """
    asked = [_Asked.of(*each) for each in _chosen(context, supplies)]
    first = [index == 0 for each in asked for index in range(len(each.cases))]  # the chosen one
    found = evaluate(context, [case for each in asked for case in each.cases], limit_cost=first)
    begin, choices = 0, []
    for each in asked:
        choices.append(each.choice(found, begin))
        begin += len(each.cases)
    return choices


def levels_to_try(supply: Supply) -> tuple[Levels, ...]:
    """Float-switch levels to try, in rising order; those given where they are given."""
    return LEVELS if supply.leaves_levels_open else (supply.given_levels,)


def _chosen(context: Context, supplies: Sequence[Supply]) -> list[tuple[Sizes, Levels]]:
    """Choose sizes and levels of every option; only options with something to choose are simulated."""
    tried = [
        list(product(passing(context, each, each.strings_to_try, each.tanks_to_try), levels_to_try(each)))
        for each in supplies
    ]
    cases = [sizes.case(levels) for some in tried if len(some) > 1 for sizes, levels in some]
    found = evaluate(context, cases) if cases else None
    begin, chosen = 0, []
    for some in tried:
        at = 0
        if found is not None and len(some) > 1:
            cautions = np.array([sizes.cautions for sizes, _ in some])
            at = _best(found, slice(begin, begin + len(some)), cautions)
            begin += len(some)
        chosen.append(some[at])
    return chosen


def _best(found: Results, tried: slice, cautions: NDArray[np.int64]) -> int:
    """Pick among candidates by the rule of this module, the first of equals."""
    cost, served = found.objective[tried], found.meets_service[tried]
    if not served.any():
        service = found.cases[tried.start].scenario.service
        shares = found.delivered_share[tried], found.worst_year_share[tried]
        served = nearest(service, *shares, found.longest_short_days[tried])
    best = cheapest(cost, served, cautions)
    assert best is not None
    return best


def _curve_tanks(scenario: Scenario, tank_m3: float) -> list[float]:
    """Tank sizes of the curve, the chosen one among them."""
    sizes = {size.volume_m3 for size in scenario.tank.sizes} or {step * tank_m3 for step in TANK_STEPS}
    return sorted(sizes | {tank_m3})


@dataclass(frozen=True)
class _Asked:
    """What is asked of one option once its design is chosen: settings of the float switch, and a curve of tanks."""

    supply: Supply
    settings: list[Levels]
    tanks: list[float]
    cases: list[Case]

    @staticmethod
    def of(sizes: Sizes, levels: Levels) -> _Asked:
        supply = sizes.supply
        settings = [levels, *(pair for pair in LEVELS if supply.is_mixed and pair != levels)]
        tanks = _curve_tanks(supply.scenario, sizes.tank_m3)
        curve = [supply.case(sizes.strings, each, levels) for each in tanks]
        return _Asked(supply, settings, tanks, [*map(sizes.case, settings), *curve])

    def choice(self, found: Results, begin: int) -> Choice:
        """Read the answer off the results, in which its cases begin at some place."""
        settings = [found.at(begin + index) for index in range(len(self.settings))]
        trials = [_trial(result) for result in settings] if self.supply.is_mixed else []
        curve = slice(begin + len(self.settings), begin + len(self.cases))
        return Choice(
            self.supply,
            settings[0],
            TankCurve(np.asarray(self.tanks, dtype=float), found.delivered_share[curve]),
            tuple(trials),
        )


def _trial(result: Result) -> LevelTrial:
    outcome, design = result.outcome, result.case.design
    years = outcome.demand_m3.shape[0]
    return LevelTrial(
        start_percent=design.levels[0],
        stop_percent=design.levels[1],
        delivered_share=float(outcome.delivered_share),
        meets_service=result.meets_service,
        grid_kwh_per_year=float(outcome.grid_kwh.sum() / years),
        fuel_l_per_year=float(outcome.fuel_l.sum() / years),
        present_cost=float(result.life.present_cost),
        equivalent_yearly_cost=float(result.life.equivalent_yearly_cost),
        objective=result.objective,
    )


def _ranked(trials: Sequence[LevelTrial]) -> list[int]:
    """Places of settings by their rank, lower start levels first among equals."""
    names = ("meets_service", "delivered_share", "objective", "start_percent")
    return ranked(*([getattr(trial, name) for trial in trials] for name in names))


def best_trial(trials: Sequence[LevelTrial]) -> LevelTrial:
    """Return the setting that meets the target at least objective, or else delivers most."""
    return trials[_ranked(trials)[0]]
