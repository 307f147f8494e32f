"""Choose what the user left to the tool: tank, number of strings and float-switch levels.

The rules. Where the tank alone is open: the smallest that meets the service target. Where the number of strings is
open: the design of least present cost that meets it, over the tanks too where they are open. Then, for that design, the
levels that meet the target at least present cost. Each candidate is simulated over every life year. A design that must
miss the target is the one that misses it by least.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from planner.money.lifecycle import LifeCycle, life_cycle
from planner.money.quantities import bill_of_quantities
from planner.money.simulated import quantities_of
from planner.scenario.finance import Service
from planner.scenario.scenario import Scenario
from planner.study.design import Design, Ground, option_of
from planner.supply.run import Outcome, run_options

Array = NDArray[np.float64]

DEFAULT_LEVELS = (20.0, 40.0)
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
    """What one setting of the float switch gives over the life."""

    start_percent: float
    stop_percent: float
    delivered_share: float
    meets_service: bool
    grid_kwh_per_year: float
    fuel_l_per_year: float
    present_cost: float
    equivalent_yearly_cost: float


@dataclass(frozen=True)
class Choice:
    """The design chosen for one option and what it does.

    `outcome` arrays are (years, 12[, bands]). `levels` is None where the option has no float switch; `trials` lists the
    settings tried where sun and top-up share the tank, the chosen one first.
    """

    design: Design
    strings: int
    tank_m3: float
    levels: tuple[float, float] | None
    outcome: Outcome
    tank_curve: TankCurve
    trials: tuple[LevelTrial, ...]


def meets(outcome: Outcome, scenario: Scenario) -> NDArray[np.bool_]:
    """Tell which cases meet the service target."""
    return serves(
        scenario.service, outcome.delivered_share, outcome.worst_year_share, outcome.longest_short_days.max(axis=-1)
    )


def serves(service: Service, share: Array, worst_year_share: Array, longest_short_days: Array) -> NDArray[np.bool_]:
    """Tell in which cases (...) shares and short days meet a service target, whose numbers may be arrays of cases."""
    enough = share >= service.delivered_share_percent / 100 - _ROUNDING
    if service.worst_year_share_percent is not None:
        enough &= worst_year_share >= service.worst_year_share_percent / 100 - _ROUNDING
    if service.longest_short_days is not None:
        enough &= longest_short_days <= service.longest_short_days
    return np.asarray(enough)


def choose_all(designs: Sequence[Design], ground: Ground) -> list[Choice]:
    """Choose tank, strings and levels of every option and simulate the chosen designs.

    Parameters
    ----------
    designs : sequence of Design
        The options.
    ground : Ground
        What they share.

    Returns
    -------
    list of Choice
        In the order of `designs`.
    """
    choices = _choose_round(designs, ground, [given_levels(design) for design in designs])
    # Sizes were chosen at the default levels; where the levels chosen since differ, look once more at the sizes.
    again = [
        index
        for index, (design, choice) in enumerate(zip(designs, choices, strict=True))
        if _leaves_levels_open(design) and _leaves_sizes_open(design) and choice.levels != given_levels(design)
    ]
    if again:
        levels = [choices[index].levels or DEFAULT_LEVELS for index in again]
        second = _choose_round([designs[index] for index in again], ground, levels)
        for index, choice in zip(again, second, strict=True):
            if _trial_rank(choice.trials[0]) < _trial_rank(choices[index].trials[0]):
                choices[index] = choice
    return choices


Levels = tuple[float, float]


def _choose_round(designs: Sequence[Design], ground: Ground, levels: Sequence[Levels]) -> list[Choice]:
    """Choose sizes at some levels, then levels at those sizes."""
    chosen = _choose_sizes(designs, ground, levels)
    curves = [_curve_tanks(design.scenario, tank) for design, (_, tank) in zip(designs, chosen, strict=True)]
    depth = max(len(curve) for curve in curves)
    options = []
    for design, (strings, tank), curve, pair in zip(designs, chosen, curves, levels, strict=True):
        padded = [*curve, *[tank] * (depth - len(curve))]
        tanks = [tank, *padded, *[tank] * len(LEVELS)]
        pairs = [pair] * (1 + depth) + (list(LEVELS) if _is_mixed(design) else [pair] * len(LEVELS))
        starts, stops = zip(*pairs, strict=True)
        options.append(option_of(design, ground, [strings], tanks, starts, stops))
    outcomes = run_options(options, bands=ground.bands, band_count=ground.band_count, limit_cost=True)
    return [
        _choice(design, strings, tank, pair, curve, depth, outcome)
        for design, (strings, tank), pair, curve, outcome in zip(designs, chosen, levels, curves, outcomes, strict=True)
    ]


def _leaves_levels_open(design: Design) -> bool:
    return _is_mixed(design) and design.scenario.topup.start_level_percent == "auto"


def _leaves_sizes_open(design: Design) -> bool:
    return len(design.strings_to_try()) * len(design.tanks_to_try()) > 1


def _is_mixed(design: Design) -> bool:
    return "solar" in design.sources and len(design.sources) > 1


def given_levels(design: Design) -> tuple[float, float]:
    """Levels given for the option, or the low default where they are to be chosen."""
    top_up = design.scenario.topup
    if "solar" not in design.sources:
        return top_up.start_level_without_sun_percent, top_up.stop_level_without_sun_percent
    if top_up.start_level_percent == "auto" or top_up.stop_level_percent == "auto":
        return DEFAULT_LEVELS
    return top_up.start_level_percent, top_up.stop_level_percent


def _choose_sizes(designs: Sequence[Design], ground: Ground, levels: Sequence[Levels]) -> list[tuple[int, float]]:
    """Choose (strings, tank) of every option; only options with something to choose are simulated."""
    tries = {
        index: (design.strings_to_try(), design.tanks_to_try())
        for index, design in enumerate(designs)
        if _leaves_sizes_open(design)
    }
    chosen = [(design.strings_to_try()[0], design.tanks_to_try()[0]) for design in designs]
    if not tries:
        return chosen
    depth = max(len(tanks) for _, tanks in tries.values())
    options = []
    for index, (strings, tanks) in tries.items():
        start, stop = levels[index]
        padded = [*tanks, *[tanks[-1]] * (depth - len(tanks))]
        options.append(option_of(designs[index], ground, strings, padded, [start] * depth, [stop] * depth))
    outcomes = run_options(options, bands=ground.bands, band_count=ground.band_count)
    for (index, (strings, tanks)), outcome in zip(tries.items(), outcomes, strict=True):
        tank, string = _least_cost(designs[index], strings, tanks, outcome)
        chosen[index] = (strings[string], tanks[tank])
    return chosen


def _least_cost(design: Design, strings: Sequence[int], tanks: Sequence[float], outcome: Outcome) -> tuple[int, int]:
    """Pick (tank, strings) by the rules of this module."""
    scenario = design.scenario
    enough = meets(outcome, scenario)[: len(tanks)]
    if not enough.any():
        share = outcome.delivered_share[: len(tanks)]
        best = np.argwhere(share >= share.max() - _ROUNDING)
        return int(best[0, 0]), int(best[0, 1])
    if len(strings) == 1:
        return int(enough[:, 0].argmax()), 0
    lines = bill_of_quantities(
        scenario, design.sources, strings=np.asarray(strings)[None, :], tank_m3=np.asarray(tanks, dtype=float)[:, None]
    )
    quantities = quantities_of(outcome.taken(slice(len(tanks))))
    cost = np.broadcast_to(life_cycle(scenario, design.sources, lines, quantities).present_cost, enough.shape)
    tank, string = np.unravel_index(np.where(enough, cost, np.inf).argmin(), enough.shape)
    return int(tank), int(string)


def _curve_tanks(scenario: Scenario, tank_m3: float) -> list[float]:
    """Tank sizes of the curve, the chosen one among them."""
    sizes = {size.volume_m3 for size in scenario.tank.sizes} or {step * tank_m3 for step in TANK_STEPS}
    return sorted(sizes | {tank_m3})


def _life(design: Design, strings: int, tank_m3: float, outcome: Outcome) -> LifeCycle:
    lines = bill_of_quantities(design.scenario, design.sources, strings=strings, tank_m3=tank_m3)
    return life_cycle(design.scenario, design.sources, lines, quantities_of(outcome))


def _choice(
    design: Design,
    strings: int,
    tank_m3: float,
    first_levels: Levels,
    curve: Sequence[float],
    depth: int,
    outcome: Outcome,
) -> Choice:
    best = 0
    levels = first_levels if len(design.sources) > 1 or "solar" not in design.sources else None
    trials: list[LevelTrial] = []
    if _is_mixed(design):
        assert levels is not None
        rows = [(0, levels)] + [(1 + depth + place, pair) for place, pair in enumerate(LEVELS) if pair != levels]
        trials = [_trial(design, strings, tank_m3, pair, outcome.at(row, 0)) for row, pair in rows]
        if design.scenario.topup.start_level_percent == "auto":
            order = sorted(range(len(rows)), key=lambda place: _trial_rank(trials[place]))
            best, levels = rows[order[0]]
            trials = [trials[order[0]], *[trial for place, trial in enumerate(trials) if place != order[0]]]
    at_curve = slice(1, 1 + len(curve))
    return Choice(
        design=design,
        strings=strings,
        tank_m3=tank_m3,
        levels=levels,
        outcome=outcome.at(best, 0),
        tank_curve=TankCurve(np.asarray(curve, dtype=float), outcome.delivered_share[at_curve, 0]),
        trials=tuple(trials),
    )


def _trial(design: Design, strings: int, tank_m3: float, levels: tuple[float, float], outcome: Outcome) -> LevelTrial:
    life = _life(design, strings, tank_m3, outcome)
    years = outcome.demand_m3.shape[0]
    return LevelTrial(
        start_percent=levels[0],
        stop_percent=levels[1],
        delivered_share=float(outcome.delivered_share),
        meets_service=bool(meets(outcome, design.scenario)),
        grid_kwh_per_year=float(outcome.grid_kwh.sum() / years),
        fuel_l_per_year=float(outcome.fuel_l.sum() / years),
        present_cost=float(life.present_cost),
        equivalent_yearly_cost=float(life.equivalent_yearly_cost),
    )


def _trial_rank(trial: LevelTrial) -> tuple[bool, float, float]:
    """Order settings: those that serve first, by cost; the others by how much they deliver."""
    if trial.meets_service:
        return (False, trial.present_cost, trial.start_percent)
    return (True, -trial.delivered_share, trial.present_cost)


def best_trial(trials: Sequence[LevelTrial]) -> LevelTrial:
    """Return the setting that meets the target at least cost, or else delivers most."""
    return min(trials, key=_trial_rank)
