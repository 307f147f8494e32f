"""Choose what the user left to the tool: tank, number of strings and float-switch levels.

The rules. Where the tank alone is open: the smallest that meets the service target. Where the number of strings is
open: the design of least objective that meets it, over the tanks too where they are open. Then, for that design, the
levels that meet the target at least objective. Each candidate is simulated over every life year. A design that must
miss the target is the one that misses it by least. The objective (`ranking.objective`) is the present cost, and a
weight of what is built and bought where there are no prices.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import product

import numpy as np
from numpy.typing import NDArray

from planner.scenario.scenario import Scenario
from planner.study.cases import DEFAULT_LEVELS, Case, Design, Supply
from planner.study.context import Context
from planner.study.evaluate import evaluate
from planner.study.ranking import ranked
from planner.study.results import Result, Results

Array = NDArray[np.float64]
Levels = tuple[float, float]

LEVELS = ((10.0, 20.0), (10.0, 30.0), (20.0, 30.0), (20.0, 40.0), (30.0, 50.0), (50.0, 70.0), (70.0, 90.0))
"""Start and stop levels tried, per cent of the tank; lower ones would leave no reserve for an outage."""
TANK_STEPS = (0.25, 0.5, 0.75, 1.5, 2.0, 3.0)
"""Multiples of a given tank shown on the tank curve where no sizes are listed."""
_ROUNDING = 1e-9


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
    """Choose tank, strings and levels of every option and simulate the chosen designs.

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
    choices = _choose_round(context, supplies, [supply.given_levels for supply in supplies])
    # Sizes were chosen at the default levels; where the levels chosen since differ, look once more at the sizes.
    again = [
        place
        for place, (supply, choice) in enumerate(zip(supplies, choices, strict=True))
        if supply.leaves_levels_open and _leaves_sizes_open(supply) and choice.levels != supply.given_levels
    ]
    if again:
        levels = [choices[place].levels or DEFAULT_LEVELS for place in again]
        second = _choose_round(context, [supplies[place] for place in again], levels)
        for place, choice in zip(again, second, strict=True):
            if best_trial((choices[place].trials[0], choice.trials[0])) is choice.trials[0]:
                choices[place] = choice
    return choices


def _choose_round(context: Context, supplies: Sequence[Supply], levels: Sequence[Levels]) -> list[Choice]:
    """Choose sizes at some levels, then levels at those sizes."""
    sizes = _choose_sizes(context, supplies, levels)
    asked = [_Asked.of(*each) for each in zip(supplies, sizes, levels, strict=True)]
    may_be_chosen = [may for each in asked for may in each.may_be_chosen]
    found = evaluate(context, [case for each in asked for case in each.cases], limit_cost=may_be_chosen)
    begin, choices = 0, []
    for each in asked:
        choices.append(each.choice(found, begin))
        begin += len(each.cases)
    return choices


def _leaves_sizes_open(supply: Supply) -> bool:
    return len(supply.strings_to_try) * len(supply.tanks_to_try) > 1


def _choose_sizes(context: Context, supplies: Sequence[Supply], levels: Sequence[Levels]) -> list[tuple[int, float]]:
    """Choose (strings, tank) of every option; only options with something to choose are simulated."""
    tries = [list(product(supply.tanks_to_try, supply.strings_to_try)) for supply in supplies]
    cases = [
        supply.case(strings, tank, pair)
        for supply, pair, sizes in zip(supplies, levels, tries, strict=True)
        if len(sizes) > 1
        for tank, strings in sizes
    ]
    found = evaluate(context, cases) if cases else None
    begin, chosen = 0, []
    for sizes in tries:
        best = 0
        if found is not None and len(sizes) > 1:
            best = _best(found, slice(begin, begin + len(sizes)))
            begin += len(sizes)
        tank, strings = sizes[best]
        chosen.append((strings, tank))
    return chosen


def _best(found: Results, tried: slice) -> int:
    """Pick among sizes, tanks outer and rising, by the rules of this module."""
    enough, share = found.meets_service[tried], found.delivered_share[tried]
    if not enough.any():
        return int(np.argmax(share >= share.max() - _ROUNDING))
    if len({case.design.strings for case in found.cases[tried]}) == 1:
        return int(enough.argmax())
    return int(np.where(enough, found.objective[tried], np.inf).argmin())


def _curve_tanks(scenario: Scenario, tank_m3: float) -> list[float]:
    """Tank sizes of the curve, the chosen one among them."""
    sizes = {size.volume_m3 for size in scenario.tank.sizes} or {step * tank_m3 for step in TANK_STEPS}
    return sorted(sizes | {tank_m3})


@dataclass(frozen=True)
class _Asked:
    """What is asked of one option once its sizes are chosen: settings of the float switch, and a curve of tanks."""

    supply: Supply
    settings: list[Levels]
    tanks: list[float]
    cases: list[Case]

    @staticmethod
    def of(supply: Supply, sizes: tuple[int, float], levels: Levels) -> _Asked:
        strings, tank = sizes
        settings = [levels, *(pair for pair in LEVELS if supply.is_mixed and pair != levels)]
        tanks = _curve_tanks(supply.scenario, tank)
        cases = [supply.case(strings, tank, pair) for pair in settings]
        return _Asked(supply, settings, tanks, [*cases, *(supply.case(strings, each, levels) for each in tanks)])

    @property
    def may_be_chosen(self) -> list[bool]:
        """Which of its cases may turn out to be the chosen one."""
        settings = len(self.settings) if self.supply.leaves_levels_open else 1
        return [place < settings for place in range(len(self.cases))]

    def choice(self, found: Results, begin: int) -> Choice:
        """Read the answer off the results, in which its cases begin at some place."""
        settings = [found.at(begin + place) for place in range(len(self.settings))]
        trials = [_trial(result) for result in settings] if self.supply.is_mixed else []
        best = _ranked(trials)[0] if self.supply.leaves_levels_open else 0
        curve = slice(begin + len(self.settings), begin + len(self.cases))
        return Choice(
            self.supply,
            settings[best],
            TankCurve(np.asarray(self.tanks, dtype=float), found.delivered_share[curve]),
            (*trials[best : best + 1], *trials[:best], *trials[best + 1 :]),
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
