"""Work out units of a sweep: hours where they change, then money."""

from __future__ import annotations

import pickle
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

import numpy as np
from numpy.typing import NDArray

from planner.assumptions.completed import completed
from planner.assumptions.reader import option_scenario, scenario_of
from planner.money.simulated import Quantities, quantities_of
from planner.scenario.operands import with_arrays
from planner.scenario.scenario import Scenario
from planner.study.cases import Case, as_chosen
from planner.study.changes import derived_prices
from planner.study.context import Context, Store
from planner.study.evaluate import run_cases
from planner.study.results import Result, Results, life_of, serves
from planner.study.sweep.prices import PriceLine, price_line
from planner.study.sweep.reasons import Reason, reason_of
from planner.study.sweep.variants import Core, Row, Variants
from planner.study.trials import number_at
from planner.supply.run import Outcome

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
    problems: dict[int, Reason]


def engine_of(core: Core) -> Engine:
    """Return this process's engine for a sweep, so that weather and hours are made once per process."""
    # By all that it holds: sources of one name are equal, whatever they cost.
    return engine_from(pickle.dumps(core))


@lru_cache(maxsize=2)
def engine_from(packed: bytes) -> Engine:
    """Return the engine of a core as it is sent to workers."""
    return Engine(pickle.loads(packed))


@dataclass(frozen=True)
class Ran:
    """Hour cases of a batch that have the same life and tariff bands, and what they did.

    `members` are their places in the batch, `rows` their scenarios; `cases` and `outcomes` are by option, the outcomes
    with the hour cases as leading axis.
    """

    members: Integers
    rows: list[Row]
    cases: list[list[Case]]
    outcomes: list[Outcome]
    quantities: list[Quantities]

    def sizes(self, option: int, at: Integers) -> tuple[Array, Array]:
        """Strings and tank volumes of one option in some of the hour cases."""
        designs = [self.cases[option][index].design for index in at]
        return np.array([d.strings for d in designs]), np.array([d.tank_m3 for d in designs])


class Engine:
    """Works out units, keeping the scenarios and the hours that it made last."""

    def __init__(self, core: Core) -> None:
        self._core = core
        self._variants = Variants(core)
        self._hours: Store[tuple[list[Ran], dict[int, Reason]]] = Store(2)
        self._options = [design.name for design in core.designs]
        self._prices = [index for index, key in enumerate(core.keys) if key.is_price] if core.by_line else []
        self._money = [
            index
            for index, key in enumerate(core.keys)
            if index not in core.hour_keys and index not in self._prices and not key.is_size
        ]
        # where something is worked out, any key may move what the bill counts, such as the riser's length by the depth
        every = core.redesign or bool(completed(self._variants.raw)[1])
        self._counted = [at for at, index in enumerate(core.hour_keys) if core.keys[index].is_counted or every]

    def reuse(self, context: Context) -> None:
        """Take over what was made for the scenario as it is, so that it need not be made again."""
        self._variants.context = context.without_hours()

    def work(self, task: Task) -> Found:
        """Work out one unit; whatever goes wrong with a variant is told, not raised."""
        numbers = np.full((len(task.case), len(self._options), len(MEASURES)), np.nan)
        key = task.cases.tobytes(), task.rows.tobytes(), task.cases.shape
        ran, wrong = self._hours.keep(key, lambda: self._run(task.cases))
        problems = {index: wrong[int(case)] for index, case in enumerate(task.case) if int(case) in wrong}
        index_of = {int(member): index for each in ran for index, member in enumerate(each.members)}
        for each in ran:
            mine = np.flatnonzero(np.isin(task.case, each.members))
            at = np.array([index_of[int(case)] for case in task.case[mine]], dtype=np.int64)
            money = task.values[mine][:, self._money]
            # The same keys are held throughout a group, and what else the bill counts is the same.
            alike = np.hstack([task.cases[task.case[mine]][:, self._counted], np.isnan(money)])
            if self._prices:
                alike = np.hstack([at[:, None], money])
            for _, group in _groups(alike):
                chosen = mine[group]
                try:
                    found, faults = self._priced(each, at[group], task.values[chosen])
                    numbers[chosen] = found
                    problems |= {int(chosen[index]): reason for index, reason in faults.items()}
                except Exception as error:
                    problems |= dict.fromkeys(chosen.tolist(), reason_of(error))
        return Found(numbers, problems)

    def _priced(self, ran: Ran, at: Integers, values: Array) -> tuple[Array, dict[int, Reason]]:
        """Measures (variants, options, measures) of some variants, NaN of those with which something is wrong."""
        money, found = values[:, self._money], np.full((len(at), len(self._options), len(MEASURES)), np.nan)
        if self._prices:
            raw = self._variants.changed(self._held(self._money, money[0]), ran.rows[at[0]].raw)
            found[:, :, len(PRICED) :] = _served(ran, at, self._scenarios(raw, ran, at[0]))
            line = self._line(ran, at[:1], raw)
            found[:, :, : len(PRICED)] = line.at(values[:, self._prices]).reshape(len(at), -1, len(PRICED))
            return found, {}
        scenarios, wrong = self._stacked(ran, at, money)
        good = np.array([index for index in range(len(at)) if index not in wrong], dtype=np.int64)
        if good.size:
            found[good] = np.concatenate([_costs(ran, at[good], scenarios), _served(ran, at[good], scenarios)], axis=-1)
        return found, wrong

    def _run(self, values: Array) -> tuple[list[Ran], dict[int, Reason]]:
        """Hours of a batch by life and tariff bands, and what went wrong with its cases."""
        made: dict[int, list[Case] | list[Result]] = {}
        wrong: dict[int, Reason] = {}
        for index, case in enumerate(values):
            try:
                made[index] = self._variants.chosen(case) if self._core.redesign else self._variants.cases(case)
            except Exception as error:
                wrong[index] = reason_of(error)
        together: dict[tuple[int, int], list[int]] = {}
        for index in made:
            site = self._variants.context.site(self._variants.row(values[index]).scenario)
            together.setdefault((site.draw_m3.shape[1], site.band_count), []).append(index)
        ran = []
        for members in together.values():
            ran += self._ran(members, values, made, wrong)
        return ran, wrong

    def _ran(self, members: list[int], values: Array, made: dict[int, Any], wrong: dict[int, Reason]) -> list[Ran]:
        """Run hour cases together; should that fail, one by one, so that only the faulty one is lost."""
        every = [each for member in members for each in made[member]]
        try:
            if self._core.redesign:
                chosen = Results.of(every)
                outcome, cases = chosen.outcome, list(chosen.cases)
            else:
                outcome, cases = run_cases(self._variants.context, every), every
        except Exception as error:
            if len(members) > 1:
                return [ran for member in members for ran in self._ran([member], values, made, wrong)]
            wrong[members[0]] = reason_of(error)
            return []
        options = range(len(self._options))
        outcomes = [outcome.taken(slice(option, None, len(options))) for option in options]
        return [
            Ran(
                np.array(members, dtype=np.int64),
                [self._variants.row(values[member]) for member in members],
                [cases[option :: len(options)] for option in options],
                outcomes,
                [quantities_of(outcome) for outcome in outcomes],
            )
        ]

    def _stacked(self, ran: Ran, at: Integers, money: Array) -> tuple[list[Scenario], dict[int, Reason]]:
        """Scenario of each option, with the money of the sound variants in arrays; and what is wrong with others."""
        rows = [ran.rows[index] for index in at]
        keys = [self._core.keys[index] for index in self._money]
        paths = [key.path[2:] if key.path[0] == "overrides" else key.path for key in keys]
        paths = list(dict.fromkeys([*paths, *derived_prices(rows[0].scenario)]))
        first: list[Scenario] = []
        wrong: dict[int, Reason] = {}
        numbers = np.empty((len(self._options), len(paths), len(money)))
        known: dict[int, int] = {}
        which = np.array([known.setdefault(id(row), len(known)) for row in rows], dtype=float)
        for values, group in _groups(np.column_stack([which, money])):
            row = rows[group[0]]
            try:
                held = self._held(self._money, values[1:])
                if held:
                    scenarios = self._scenarios(self._variants.changed(held, row.raw), ran, at[group[0]])
                else:
                    scenarios = _as_chosen([supply.scenario for supply in row.supplies], ran, at[group[0]])
            except Exception as error:
                wrong |= dict.fromkeys(group.tolist(), reason_of(error))
                continue
            # Only the numbers are kept; a key that holds none does so in every variant, and stays as in the first.
            kept = [[number_at(scenario, path) for path in paths] for scenario in scenarios]
            numbers[..., group] = np.reshape(kept, (len(scenarios), len(paths), 1))
            first = first or scenarios
        sound = [index for index in range(len(money)) if index not in wrong]
        arrays = (dict(zip(paths, row, strict=True)) for row in numbers[..., sound])
        return [with_arrays(scenario, each) for scenario, each in zip(first, arrays, strict=False)], wrong

    @staticmethod
    def _held(indices: Sequence[int], values: Array) -> list[tuple[int, float]]:
        return [(index, float(value)) for index, value in zip(indices, values, strict=True) if not np.isnan(value)]

    def _line(self, ran: Ran, case: Integers, raw: dict[str, Any]) -> PriceLine:
        def priced(prices: Array) -> Array:
            held = list(zip(self._prices, prices.tolist(), strict=True))
            return _costs(ran, case, self._scenarios(self._variants.changed(held, raw), ran, case[0])).ravel()

        ends = np.array(self._core.price_ends, dtype=float)
        return price_line(priced, ends[:, 0], ends[:, 1])

    def _scenarios(self, raw: dict[str, Any], ran: Ran, index: int) -> list[Scenario]:
        """Scenario of each option, with what its design in an hour case chose."""
        scenario = scenario_of(raw)
        return _as_chosen([option_scenario(scenario, name) for name in self._options], ran, index)


def measures_of(results: Sequence[Result]) -> Array:
    """Measures (options, measures) of the options of one case, each as it was worked out."""
    first = np.zeros(1, dtype=np.int64)
    ran = Ran(
        members=first,
        rows=[],
        cases=[[each.case] for each in results],
        outcomes=[each.outcome.taken(None) for each in results],
        quantities=[each.quantities.taken(None) for each in results],
    )
    scenarios = [each.case.scenario for each in results]
    found: Array = np.concatenate([_costs(ran, first, scenarios), _served(ran, first, scenarios)], axis=-1)[0]
    return found


def _as_chosen(scenarios: Sequence[Scenario], ran: Ran, index: int) -> list[Scenario]:
    """Put the modules in series and the cable of an hour case's designs into the scenarios that are priced."""
    designs = [cases[index].design for cases in ran.cases]
    return [
        as_chosen(scenario, each.series, each.section_mm2) for scenario, each in zip(scenarios, designs, strict=True)
    ]


def _costs(ran: Ran, at: Integers, scenarios: Sequence[Scenario]) -> Array:
    """Priced measures of some hour cases, (cases, options, priced)."""
    found = np.empty((at.size, len(scenarios), len(PRICED)))
    for option, scenario in enumerate(scenarios):
        sources = ran.cases[option][0].design.sources
        life = life_of(scenario, sources, *ran.sizes(option, at), ran.quantities[option].taken(at))
        for number, name in enumerate(PRICED):
            found[:, option, number] = getattr(life, name)
    return found


def _served(ran: Ran, at: Integers, scenarios: Sequence[Scenario]) -> Array:
    """Measures of some hour cases that hold no price, (cases, options, measures)."""
    found = np.full((at.size, len(scenarios), len(MEASURES) - len(PRICED)), np.nan)
    for option, scenario in enumerate(scenarios):
        outcome = ran.outcomes[option].taken(at)
        years = outcome.demand_m3.shape[1]
        share, worst = outcome.delivered_share, outcome.worst_year_share
        found[:, option, 0] = serves(scenario.service, share, worst, outcome.longest_short_days.max(axis=-1))
        found[:, option, 1], found[:, option, 2] = share, worst
        found[:, option, 3] = outcome.grid_kwh.sum(axis=(1, 2, 3)) / years
        found[:, option, 4] = outcome.fuel_l.sum(axis=(1, 2)) / years
        found[:, option, 6], found[:, option, 5] = ran.sizes(option, at)
        designs = [ran.cases[option][index].design for index in at]
        if designs[0].has_switch:
            found[:, option, 7:9] = [design.levels for design in designs]
    return found


def _groups(values: Array) -> list[tuple[Array, Integers]]:
    """Gather equal rows, in order of appearance: each with the places where it stands."""
    indices: dict[bytes, list[int]] = {}
    for index, row in enumerate(np.ascontiguousarray(values)):
        indices.setdefault(row.tobytes(), []).append(index)
    return [(values[found[0]], np.array(found, dtype=np.int64)) for found in indices.values()]
