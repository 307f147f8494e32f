"""Work out units of a sweep: hours where they change, then money."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

import numpy as np
from numpy.typing import NDArray

from planner.money.lifecycle import life_cycle
from planner.money.quantities import bill_of_quantities
from planner.scenario.operands import value_at, with_arrays
from planner.scenario.reader import check_scenario, option_scenario
from planner.scenario.scenario import Scenario
from planner.study.design import Ground
from planner.study.search import serves
from planner.study.sweep.hours import Core, HourStage, Row, said
from planner.study.sweep.prices import PriceLine, price_line

Array = NDArray[np.float64]
Integers = NDArray[np.int64]

PRICED = (
    "capital_cost", "present_cost", "equivalent_yearly_cost", "levelised_cost_per_m3", "owner_present_cost", "npv",
)  # fmt: skip
"""Results that follow the prices, by their names in `LifeCycle`."""
MEASURES = (
    *PRICED, "meets_service", "delivered_share", "worst_year_share", "grid_kwh_per_year", "fuel_l_per_year",
    "tank_m3", "strings", "start_level_percent", "stop_level_percent",
)  # fmt: skip
"""Every result of a variant and option; `meets_service` is 1 or 0, levels are NaN without a float switch."""


@dataclass(frozen=True)
class Task:
    """One unit as it is sent to a worker: its batch's cases and rows, and its variants' cases and values."""

    cases: Array
    rows: Integers
    case: Integers
    values: Array


@dataclass(frozen=True)
class Found:
    """Results of a unit: `numbers` (variants, options, measures), and what went wrong by place in the unit."""

    numbers: Array
    problems: dict[int, str]


@lru_cache(maxsize=2)
def engine_of(core: Core) -> Engine:
    """Return this process's engine for a sweep, so that weather and hours are made once per process."""
    return Engine(core)


class Engine:
    """Works out units, keeping the weather, the designs and the hours that it made last."""

    def __init__(self, core: Core) -> None:
        self._core = core
        self._stage = HourStage(core)
        self._options = [pinned.name for pinned in core.pinned]
        self._prices = [place for place, key in enumerate(core.keys) if key.is_price] if core.by_line else []
        self._money = [
            place
            for place, key in enumerate(core.keys)
            if place not in core.hour_keys and place not in self._prices and not key.is_size
        ]

    def stand_on(self, ground: Ground) -> None:
        """Take over the ground of the scenario as it is, so that it need not be made again."""
        self._stage.stand_on(ground)

    def work(self, task: Task) -> Found:
        """Work out one unit; whatever goes wrong with a variant is told, not raised."""
        hours = self._stage.hours_of(task.cases, task.rows)
        numbers = np.full((len(task.case), len(self._options), len(MEASURES)), np.nan)
        problems: dict[int, str] = {}
        known = [place for place, case in enumerate(task.case) if hours.problems[int(case)] is None]
        for place in sorted(set(range(len(task.case))) - set(known)):
            problems[place] = str(hours.problems[int(task.case[place])])
        rows = np.array([[hours.row_of[int(task.case[place])]] for place in known], dtype=float).reshape(-1, 1)
        # The same keys are held throughout a group; what they are held at varies, but where lines are drawn.
        money = task.values[known][:, self._money]
        for shared, group in _groups(np.hstack([rows, money if self._prices else np.isnan(money)])):
            chosen = np.array(known)[group]
            row, at = hours.rows[int(shared[0])], hours.place[task.case[chosen]]
            try:
                if self._prices:
                    numbers[chosen] = self._along_lines(row, at, shared[1:], task.values[chosen][:, self._prices])
                    continue
                owns, wrong = self._stacked(row, task.values[chosen][:, self._money])
                good = [place for place in range(len(chosen)) if place not in wrong]
                problems |= {int(chosen[place]): text for place, text in wrong.items()}
                if good:
                    numbers[chosen[good]] = _measured(row, at[good], owns)
            except Exception as error:
                problems |= dict.fromkeys(chosen.tolist(), said(error))
        return Found(numbers, problems)

    def _stacked(self, row: Row, money: Array) -> tuple[list[Scenario], dict[int, str]]:
        """Scenario of each option, with the money of the sound variants in arrays; and what is wrong with others."""
        keys = [self._core.keys[place] for place in self._money]
        paths = [key.path[2:] if key.path[0] == "overrides" else key.path for key in keys]
        first: list[Scenario] = []
        wrong: dict[int, str] = {}
        numbers = np.empty((len(self._options), len(paths), len(money)))
        for values, group in _groups(money):
            try:
                owns = self._owns(self._stage.changed(self._held(self._money, values), row.raw))
            except Exception as error:
                wrong |= dict.fromkeys(group.tolist(), said(error))
                continue
            # Only the numbers are kept; a key that holds none does so in every variant, and stays as in the first.
            held = [[_number(value_at(own, path)) for path in paths] for own in owns]
            numbers[..., group] = np.reshape(held, (len(owns), len(paths), 1))
            first = first or owns
        sound = [place for place in range(len(money)) if place not in wrong]
        arrays = (dict(zip(paths, own, strict=True)) for own in numbers[..., sound])
        return [with_arrays(own, each) for own, each in zip(first, arrays, strict=False)], wrong

    @staticmethod
    def _held(places: Sequence[int], values: Array) -> list[tuple[int, float]]:
        return [(place, float(value)) for place, value in zip(places, values, strict=True) if not np.isnan(value)]

    def _along_lines(self, row: Row, at: Integers, others: Array, prices: Array) -> Array:
        """Measures (variants, options, measures) of some cases of a row at some prices, all else the same."""
        raw = self._stage.changed(self._held(self._money, others), row.raw)
        owns = self._owns(raw)
        found = np.empty((at.size, len(owns), len(MEASURES)))
        found[:, :, len(PRICED) :] = _served(row, at, owns)
        for case, group in _groups(at[:, None].astype(float)):
            line = self._line(row, case.astype(np.int64), raw)
            found[group, :, : len(PRICED)] = line.at(prices[group]).reshape(-1, len(owns), len(PRICED))
        return found

    def _line(self, row: Row, case: Integers, raw: dict[str, Any]) -> PriceLine:
        def priced(prices: Array) -> Array:
            held = list(zip(self._prices, prices.tolist(), strict=True))
            return _costs(row, case, self._owns(self._stage.changed(held, raw))).ravel()

        ends = np.array(self._core.price_ends, dtype=float)
        return price_line(priced, ends[:, 0], ends[:, 1])

    def _owns(self, raw: dict[str, Any]) -> list[Scenario]:
        """Scenario of each option."""
        scenario = check_scenario(raw, "")
        return [option_scenario(scenario, name) for name in self._options]


def _number(value: float | None) -> float:
    return np.nan if value is None else value


def _measured(row: Row, at: Integers, owns: Sequence[Scenario]) -> Array:
    """Measures (cases, options, measures) of some cases of a row."""
    return np.concatenate([_costs(row, at, owns), _served(row, at, owns)], axis=-1)


def _costs(row: Row, at: Integers, owns: Sequence[Scenario]) -> Array:
    """Priced measures of some cases of a row, (cases, options, priced)."""
    found = np.empty((at.size, len(owns), len(PRICED)))
    for place, (own, size) in enumerate(zip(owns, row.sizes, strict=True)):
        quantities = row.quantities[place].taken(at)
        lines = bill_of_quantities(own, size.sources, strings=size.strings, tank_m3=size.tank_m3[at])
        life = life_cycle(own, size.sources, lines, quantities)
        for number, name in enumerate(PRICED):
            found[:, place, number] = getattr(life, name)
    return found


def _served(row: Row, at: Integers, owns: Sequence[Scenario]) -> Array:
    """Measures of some cases of a row that hold no price, (cases, options, measures)."""
    found = np.full((at.size, len(owns), len(MEASURES) - len(PRICED)), np.nan)
    for place, (own, size) in enumerate(zip(owns, row.sizes, strict=True)):
        outcome, quantities = row.outcomes[place], row.quantities[place]
        years = outcome.demand_m3.shape[1]
        worst, short = outcome.worst_year_share[at], outcome.longest_short_days.max(axis=-1)[at]
        found[:, place, 0] = serves(own.service, outcome.delivered_share[at], worst, short)
        found[:, place, 1] = outcome.delivered_share[at]
        found[:, place, 2] = outcome.worst_year_share[at]
        found[:, place, 3] = quantities.grid_kwh[at].sum(axis=(1, 2, 3)) / years
        found[:, place, 4] = quantities.fuel_l[at].sum(axis=1) / years
        found[:, place, 5] = size.tank_m3[at]
        found[:, place, 6] = size.strings
        if size.has_switch:
            found[:, place, 7], found[:, place, 8] = size.start_percent[at], size.stop_percent[at]
    return found


def _groups(values: Array) -> list[tuple[Array, Integers]]:
    """Gather equal rows, in order of appearance: each with the places where it stands."""
    places: dict[bytes, list[int]] = {}
    for place, row in enumerate(np.ascontiguousarray(values)):
        places.setdefault(row.tobytes(), []).append(place)
    return [(values[found[0]], np.array(found, dtype=np.int64)) for found in places.values()]
