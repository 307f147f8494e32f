"""From a sweep's table to variants, and from variants to the fixed units in which they are worked out.

A unit is the smallest piece of work that is ever done, and its result depends on nothing but itself. Hour cases
(variants that differ in prices alone share one) are gathered into batches that are always run through the hour loop
together; the variants of a batch are cut at fixed places. However many units make a chunk, and whichever worker takes
it, every number comes out the same to the last bit.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import product
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from planner.scenario.errors import InputError, Problem
from planner.scenario.scenario import Scenario
from planner.scenario.sweep import Discrete, SteppedInput, Sweep
from planner.study.keys import READY_CHANGE_PERCENT, READY_ENDS, STAGES, Key, key_of, numeric_keys
from planner.study.sweep.draws import draw

Array = NDArray[np.float64]
Integers = NDArray[np.int64]
Mode = Literal["one_at_a_time", "grid", "random"]

COLUMNS = 3920
"""Columns (options x life years x rows of cases) run together: few enough for memory, enough for speed."""
CASE_YEARS = 40_000
"""Options x life years x cases whose results by month are held together, each of 2 kB."""
INNER = 128
"""Most cases that differ in tank and float switch alone and share their hourly series."""
SLICE, PRICE_SLICE = 512, 8192
"""Variants of a batch in one unit: each checked and all priced together, and priced by a straight line."""
MOST_VARIANTS = 1_000_000
_READY = (
    "finance.discount_rate_percent", "sources.solar.module.price", "sources.grid.tariff.price_per_kwh",
    "sources.grid.outages.hours_per_day", "sources.grid.price", "sources.grid.line_length_m",
    "sources.generator.fuel_price_per_l", "sources.generator.price", "pump.price", "tank.price", "borehole.price",
    "borehole.static_level_m", "demand.leakage_percent", "sources.solar.soiling_percent",
)  # fmt: skip
_READY_USER = ("count", "area_m2")


@dataclass(frozen=True)
class Plan:
    """The variants of one kind of sweep.

    Attributes
    ----------
    mode : str
        'one_at_a_time', 'grid' or 'random'.
    keys : tuple of Key
        Inputs varied.
    values : ndarray, (variants, keys)
        Their values; NaN leaves the scenario's. One at a time, variant 0 is the scenario, then come low and high of
        each input in turn.
    """

    mode: Mode
    keys: tuple[Key, ...]
    values: Array

    @property
    def size(self) -> int:
        """Number of variants."""
        return len(self.values)


@dataclass(frozen=True)
class Batch:
    """Hour cases that are run together.

    Attributes
    ----------
    cases : ndarray, (cases, hour keys)
        Values of the keys that touch the hours, one row for each case.
    rows : ndarray, (cases,)
        Cases of the same row share their hourly series.
    """

    cases: Array
    rows: Integers


@dataclass(frozen=True)
class Unit:
    """Variants that are always worked out together: their places in the plan, and of their cases in their batch."""

    batch: int
    variants: Integers
    case: Integers


@dataclass(frozen=True)
class Layout:
    """A plan cut into units."""

    batches: tuple[Batch, ...]
    units: tuple[Unit, ...]
    by_line: bool


def plans_of(scenario: Scenario) -> list[Plan]:
    """Lay out the variants of every kind of sweep that a scenario describes.

    Parameters
    ----------
    scenario : Scenario
        The scenario; without a [sweep] table, or with one that varies nothing, a ready list of inputs is moved one at
        a time.

    Raises
    ------
    InputError
        When a key is unknown or no number, a value does not suit it, or there are too many variants.
    """
    sweep = scenario.sweep or Sweep()
    plans: list[Plan] = []
    steps = sweep.one_at_a_time
    if not (steps or sweep.grid or sweep.random or sweep.weather):
        steps = ready_inputs(scenario)
    if steps:
        plans.append(_one_at_a_time(scenario, steps))
    if sweep.grid:
        plans.append(_grid(scenario, sweep))
    if sweep.random is not None:
        plans.append(_random(scenario, sweep))
    return plans


def ready_inputs(scenario: Scenario, keys: Mapping[str, Key] | None = None) -> list[SteppedInput]:
    """List the inputs that most often matter, where the scenario has them.

    They are moved down and up by a fifth, but the ageing of the works between ends of its own, or to the scenario's
    value where that lies outside. `keys` are the numeric keys of the scenario, where they are known.
    """
    known = numeric_keys(scenario) if keys is None else keys
    texts = [text for text in known if text.startswith("demand.users[") and text.endswith(_READY_USER)]
    by_share = [
        SteppedInput(key=text, change_percent=READY_CHANGE_PERCENT)
        for text in (*texts, *_READY)
        if text in known and (known[text].base or 0.0) > 0 and (scenario.priced or not known[text].is_of_money)
    ]
    by_ends = [
        SteppedInput(key=text, low=min(low, known[text].base or 0.0), high=max(high, known[text].base or 0.0))
        for text, (low, high) in READY_ENDS.items()
    ]
    return by_share + by_ends


def ready_plan(scenario: Scenario, keys: Mapping[str, Key]) -> Plan | None:
    """Lay out the ready list of inputs, each moved alone; None where the scenario has none of them.

    Parameters
    ----------
    scenario : Scenario
        The scenario.
    keys : mapping of str to Key
        Its numeric keys.
    """
    steps = ready_inputs(scenario, keys)
    return _one_at_a_time(scenario, steps, keys) if steps else None


def _one_at_a_time(scenario: Scenario, steps: Sequence[SteppedInput], known: Mapping[str, Key] | None = None) -> Plan:
    keys = _keys(scenario, [step.key for step in steps], "sweep.one_at_a_time[{}].key", known)
    values = np.full((1 + 2 * len(keys), len(keys)), np.nan)
    for index, (key, step) in enumerate(zip(keys, steps, strict=True)):
        low, high = step.low, step.high
        if step.change_percent is not None:
            if not key.base:
                text = f"'{key.text}' has no value of its own to change by per cent; give low and high"
                raise InputError("", [Problem(f"sweep.one_at_a_time[{index + 1}]", text)])
            change = abs(key.base) * step.change_percent / 100
            low, high = _fitting(key, key.base - change), _fitting(key, key.base + change)
        assert low is not None
        assert high is not None
        where = f"sweep.one_at_a_time[{index + 1}]"
        values[1 + 2 * index, index] = _checked(key, low, where)
        values[2 + 2 * index, index] = _checked(key, high, where)
    return Plan("one_at_a_time", keys, values)


def _grid(scenario: Scenario, sweep: Sweep) -> Plan:
    keys = _keys(scenario, [given.key for given in sweep.grid], "sweep.grid[{}].key")
    count = int(np.prod([float(len(given.values)) for given in sweep.grid]))
    if count > MOST_VARIANTS:
        text = f"the grid has {count:,} combinations; at most {MOST_VARIANTS:,} can be swept"
        raise InputError("", [Problem("sweep.grid", text)])
    lists = [
        [_checked(key, value, f"sweep.grid[{index + 1}].values") for value in given.values]
        for index, (key, given) in enumerate(zip(keys, sweep.grid, strict=True))
    ]
    return Plan("grid", keys, np.array(list(product(*lists)), dtype=float))


def _random(scenario: Scenario, sweep: Sweep) -> Plan:
    random = sweep.random
    assert random is not None
    keys = _keys(scenario, [given.key for given in random.inputs], "sweep.random.inputs[{}].key")
    values = draw(random, scenario.seed)
    for index, (key, given) in enumerate(zip(keys, random.inputs, strict=True)):
        if key.whole and isinstance(given, Discrete):
            for value in given.values:
                _checked(key, value, f"sweep.random.inputs[{index + 1}].values")
        if key.whole:
            values[:, index] = np.round(values[:, index])
    return Plan("random", keys, values)


def _keys(
    scenario: Scenario, texts: Sequence[str], where: str, known: Mapping[str, Key] | None = None
) -> tuple[Key, ...]:
    there = numeric_keys(scenario) if known is None else known
    keys = tuple(key_of(scenario, text, where.format(index + 1), there) for index, text in enumerate(texts))
    for index, key in enumerate(keys):
        if key.is_of_money and not scenario.priced:
            text = f"'{key.text}' changes costs alone, and without a currency there are none"
            raise InputError("", [Problem(where.format(index + 1), text)])
        if key in keys[:index]:
            raise InputError("", [Problem(where.format(index + 1), f"'{key.text}' is varied twice in one sweep")])
    return keys


def _fitting(key: Key, value: float) -> float:
    return float(round(value)) if key.whole else value


def _checked(key: Key, value: float, where: str) -> float:
    if key.whole and not float(value).is_integer():
        raise InputError("", [Problem(where, f"{value:g} was given; '{key.text}' takes whole numbers only")])
    return float(value)


def hour_keys(plan: Plan, redesign: bool) -> list[int]:
    """Places of the keys that touch the hours, weather first; all of them where designs are chosen anew."""
    indices = [index for index, key in enumerate(plan.keys) if redesign or key.touches_hours]
    return sorted(indices, key=lambda index: _rank(plan.keys[index]))


def _rank(key: Key) -> tuple[int, bool]:
    return STAGES.index(key.changes), key.is_size


def cut(plan: Plan, *, option_years: int, redesign: bool) -> Layout:
    """Cut a plan into batches of hour cases and units of variants; the same plan is always cut alike.

    Parameters
    ----------
    plan : Plan
        The variants.
    option_years : int
        Supply options times life years: columns of one hour case.
    redesign : bool
        Whether designs are chosen anew in each variant.
    """
    indices = hour_keys(plan, redesign)
    hours = np.ascontiguousarray(plan.values[:, indices])
    weather = [index for index, at in enumerate(indices) if plan.keys[at].changes == "weather"]
    shared = [
        index
        for index, at in enumerate(indices)
        if redesign or not plan.keys[at].is_size or plan.keys[at].text == "sources.solar.strings"
    ]
    case_of, first = _distinct(hours)
    cases = hours[first]
    weather_of, _ = _distinct(cases[:, weather])
    row_of, _ = _distinct(cases[:, shared])
    order = np.lexsort((np.arange(len(cases)), row_of, weather_of))
    pieces = _pieces(row_of[order], 1 if redesign else INNER)
    by_line = _by_line(plan, len(cases), redesign)
    batches: list[Batch] = []
    batch_of = np.empty(len(cases), dtype=np.int64)
    for together in [[piece] for piece in pieces] if redesign else _gathered(pieces, option_years):
        chosen = np.concatenate([order[piece] for piece in together])
        rows = np.repeat(np.arange(len(together)), [piece.stop - piece.start for piece in together])
        batch_of[chosen] = len(batches)
        batches.append(Batch(cases[chosen], rows))
    inside = _place_in_group(batch_of, order)
    units = _units(batch_of[case_of], inside[case_of], PRICE_SLICE if by_line else SLICE)
    return Layout(tuple(batches), tuple(units), by_line)


def _gathered(pieces: Sequence[slice], option_years: int) -> list[list[slice]]:
    """Gather pieces into batches, as many as their columns and cases allow."""
    batches: list[list[slice]] = []
    cases = 0
    for piece in pieces:
        cases += piece.stop - piece.start
        full = not batches or (len(batches[-1]) + 1) * option_years > COLUMNS or cases * option_years > CASE_YEARS
        if full:
            batches.append([])
            cases = piece.stop - piece.start
        batches[-1].append(piece)
    return batches


def _place_in_group(group: Integers, order: Integers) -> Integers:
    """Count each member's place within its group, members taken in some order in which groups stand together."""
    sorted_groups = group[order]
    starts = np.flatnonzero(np.diff(sorted_groups, prepend=-1))
    sizes = np.diff(np.append(starts, sorted_groups.size))
    inside = np.empty_like(group)
    inside[order] = np.arange(group.size) - np.repeat(starts, sizes)
    return inside


def _pieces(groups: Integers, most: int) -> list[slice]:
    """Cut a run of group numbers where the group changes, and after so many of one group."""
    pieces = []
    starts = np.flatnonzero(np.diff(groups, prepend=-1))
    for start, stop in zip(starts, [*starts[1:], groups.size], strict=True):
        pieces += [slice(begin, min(begin + most, int(stop))) for begin in range(int(start), int(stop), most)]
    return pieces


def _units(batch: Integers, case: Integers, most: int) -> list[Unit]:
    order = np.argsort(batch, kind="stable")
    return [
        Unit(int(batch[order[piece.start]]), order[piece], case[order[piece]]) for piece in _pieces(batch[order], most)
    ]


def _distinct(values: Array) -> tuple[Integers, Integers]:
    """Number the distinct rows in order of appearance: (rows,) numbers, and where each first stands."""
    if values.shape[1] == 0:
        return np.zeros(values.shape[0], dtype=np.int64), np.zeros(1, dtype=np.int64)
    plain = np.ascontiguousarray(values + 0.0)
    whole_rows = plain.view(np.dtype((np.void, plain.dtype.itemsize * plain.shape[1]))).ravel()
    _, first, inverse = np.unique(whole_rows, return_index=True, return_inverse=True)
    order = np.argsort(first)
    number = np.empty_like(order)
    number[order] = np.arange(order.size)
    return number[inverse.ravel()], first[order]


def _by_line(plan: Plan, cases: int, redesign: bool) -> bool:
    """Tell whether a straight line through the prices pays: many prices for each set of everything else."""
    prices = [index for index, key in enumerate(plan.keys) if key.is_price]
    if redesign or not prices or plan.mode == "one_at_a_time":
        return False
    others = [index for index, key in enumerate(plan.keys) if not key.is_price]
    sets = max(len(_distinct(plan.values[:, others])[1]), cases)
    return plan.size > 4 * sets * (len(prices) + 1)
