"""The one way from cases to figures: hours in wide passes, then money.

Cases that share their hourly series become variants of the same columns of the hour loop, others stand beside them;
what is alike in all that the loop sees is run once. How wide the passes are changes memory and speed, not the results.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, fields
from typing import Any

import numpy as np

from planner.study.cases import Case
from planner.study.context import Context, Prepared
from planner.study.design import option_of
from planner.study.results import Results, money_of, quantities_of
from planner.supply.run import Outcome, run_options

COLUMNS_AT_ONCE = 2000
"""Hourly series (strings x life years) in one pass, of which a month at a time is held."""
CELLS_AT_ONCE = 12_000
"""Columns times variants of a pass: few enough for the processor's memory."""
_PASS_CELLS = 1600
"""What a pass costs whatever its width, in cells: so many may be idle before another pass is cheaper."""

Progress = Callable[[int], None]
"""Called after each pass with the number of cases that it ran."""
Sizes = tuple[float, float, float]


def evaluate(
    context: Context,
    cases: Sequence[Case],
    *,
    columns_at_once: int = COLUMNS_AT_ONCE,
    cells_at_once: int = CELLS_AT_ONCE,
    limit_cost: bool = False,
    progress: Progress | None = None,
) -> Results:
    """Simulate and price cases.

    Parameters
    ----------
    context : Context
        What they share.
    cases : sequence of Case
        Designs in scenarios; all of the same life and number of tariff bands.
    columns_at_once, cells_at_once : int
        Bounds of a pass through the hours.
    limit_cost : bool
        Also find the shortfall that a daily limit causes.
    progress : callable, optional
        Told after each pass.

    Returns
    -------
    Results

    Raises
    ------
    InputError
        When a case cannot work at the site.
    """
    outcome = run_cases(
        context,
        cases,
        columns_at_once=columns_at_once,
        cells_at_once=cells_at_once,
        limit_cost=limit_cost,
        progress=progress,
    )
    quantities = quantities_of(outcome)
    return Results(tuple(cases), outcome, quantities, money_of(cases, quantities))


def run_cases(
    context: Context,
    cases: Sequence[Case],
    *,
    columns_at_once: int = COLUMNS_AT_ONCE,
    cells_at_once: int = CELLS_AT_ONCE,
    limit_cost: bool = False,
    progress: Progress | None = None,
) -> Outcome:
    """Simulate cases, each through every hour of its life; as `evaluate`, without the money.

    Returns
    -------
    Outcome
        Arrays with the cases as leading axis, in the place of variants and strings.
    """
    made: dict[Any, Prepared] = {}
    for case in cases:
        if (id(case.scenario), case.design.sources) not in made:
            made[id(case.scenario), case.design.sources] = context.prepared(case)
    prepared = [made[id(case.scenario), case.design.sources] for case in cases]
    if len({(each.ground.draw_m3.shape[1], each.ground.band_count) for each in prepared}) > 1:
        raise ValueError("cases evaluated together must have the same life and number of tariff bands")
    place_of: dict[Any, int] = {}
    place = np.array([place_of.setdefault(_key(*each), len(place_of)) for each in zip(prepared, cases, strict=True)])
    first = np.unique(place, return_index=True)[1]
    keys = [(*key, limit_cost) for key in place_of]
    known = {at: found for at, key in enumerate(keys) if (found := context.hours.get(key)) is not None}
    gathered = _Gathered(len(keys))
    for at, found in known.items():
        gathered.put([at], found, 0)
    blocks: dict[Any, _Block] = {}
    for at, case in enumerate(first):
        if at not in known:
            blocks.setdefault(keys[at][:2], _Block(prepared[case], cases[case].design.strings)).add(at, cases[case])
    for some in _passes(list(blocks.values()), columns_at_once, cells_at_once):
        done = _run(some, limit_cost)
        for block, outcome in zip(some, done, strict=True):
            gathered.put(block.places, outcome, 0)
        if progress is not None:
            progress(sum(len(block.places) for block in some))
    if len(keys) <= context.hours.most:
        for at, key in enumerate(keys):
            if at not in known:
                context.hours.put(key, gathered.alone(at))
    return gathered.outcome(place)


def _key(prepared: Prepared, case: Case) -> tuple[Any, ...]:
    """Equal for cases that the hour loop cannot tell apart; levels are nothing to the sun alone."""
    design = case.design
    levels = design.levels if design.has_switch else (0.0, 0.0)
    return prepared.key, design.strings, design.tank_m3, *levels


class _Block:
    """Cases that share their hourly series, and their places among the distinct ones."""

    def __init__(self, prepared: Prepared, strings: int) -> None:
        self.prepared, self.strings = prepared, strings
        self.places: list[int] = []
        self.sizes: list[Sizes] = []

    def add(self, place: int, case: Case) -> None:
        self.places.append(place)
        self.sizes.append((case.design.tank_m3, *case.design.levels))

    def cut(self, most: int) -> Iterator[_Block]:
        """Cut it into blocks of at most so many cases."""
        for begin in range(0, len(self.places), most):
            block = _Block(self.prepared, self.strings)
            block.places, block.sizes = self.places[begin : begin + most], self.sizes[begin : begin + most]
            yield block


def _passes(blocks: list[_Block], columns_at_once: int, cells_at_once: int) -> Iterator[list[_Block]]:
    """Gather blocks into passes, those with as many cases and the same sources side by side."""
    if not blocks:
        return
    years = blocks[0].prepared.ground.draw_m3.shape[1]
    most = max(cells_at_once // years, 1)
    pieces = [piece for block in blocks for piece in block.cut(most)]
    pieces.sort(key=lambda block: (-len(block.places), block.prepared.built.sources))
    together: list[_Block] = []
    idle = 0
    for block in pieces:
        deepest = len(together[0].places) if together else len(block.places)
        columns = (len(together) + 1) * years
        idle += (deepest - len(block.places)) * years
        full = columns > columns_at_once or columns * deepest > cells_at_once or idle > _PASS_CELLS
        if together and (full or not _alike(together[0], block)):
            yield together
            together, idle = [], 0
        together.append(block)
    yield together


def _alike(one: _Block, other: _Block) -> bool:
    """Whether their energy is counted by the same hours."""
    first, second = one.prepared.ground.bands, other.prepared.ground.bands
    return first is second or (first is not None and second is not None and np.array_equal(first, second))


def _run(blocks: Sequence[_Block], limit_cost: bool) -> list[Outcome]:
    depth = max(len(block.places) for block in blocks)
    options = []
    for block in blocks:
        tanks, starts, stops = zip(*block.sizes, *[block.sizes[-1]] * (depth - len(block.sizes)), strict=True)
        prepared = block.prepared
        options.append(option_of(prepared.built, prepared.ground, [block.strings], tanks, starts, stops))
    ground = blocks[0].prepared.ground
    return run_options(options, bands=ground.bands, band_count=ground.band_count, limit_cost=limit_cost)


@dataclass
class _Gathered:
    """Outcomes of distinct cases while they come in, arrays with them as leading axis."""

    count: int
    arrays: dict[str, Any] | None = None

    def put(self, places: Sequence[int], outcome: Outcome, string: int) -> None:
        """Enter what some cases did: the first variants of an outcome."""
        found = {f.name: v for f in fields(outcome) if isinstance(v := getattr(outcome, f.name), np.ndarray)}
        if self.arrays is None:
            self.arrays = {name: np.empty((self.count, *value.shape[2:])) for name, value in found.items()}
        for name, value in found.items():
            self.arrays[name][places] = value[: len(places), string]

    def alone(self, place: int) -> Outcome:
        """One case, with axes of one variant and one number of strings."""
        assert self.arrays is not None
        return _outcome({name: value[place][None, None].copy() for name, value in self.arrays.items()})

    def outcome(self, place: Any) -> Outcome:
        """Lay the outcomes out by case."""
        assert self.arrays is not None
        distinct = np.array_equal(place, np.arange(self.count))
        return _outcome(self.arrays if distinct else {name: value[place] for name, value in self.arrays.items()})


def _outcome(arrays: dict[str, Any]) -> Outcome:
    return Outcome("", **arrays)


__all__ = ["CELLS_AT_ONCE", "COLUMNS_AT_ONCE", "evaluate", "run_cases"]
