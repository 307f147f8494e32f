"""The one way from cases to figures: hours in wide passes, then money.

Cases that share their hourly series become variants of the same columns of the hour loop, others stand beside them;
what is alike in all that the loop sees is run once. How wide the passes are changes memory and speed, not the results.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from typing import Any

import numpy as np

from planner.money.simulated import quantities_of
from planner.study.cases import Case
from planner.study.context import Context, Prepared
from planner.study.design import option_of
from planner.study.results import Results, laid_out, money_of, with_sources
from planner.supply.run import Outcome, run_options
from planner.supply.series import TopUpSource

COLUMNS_AT_ONCE = 4000
"""Hourly series (strings x life years) in one pass, of which a month at a time is held."""
CELLS_AT_ONCE = 60_000
"""Columns times variants of a pass, whose results by month take some 2 kB each."""
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
    limit_cost: bool | Sequence[bool] = False,
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
    limit_cost : bool or sequence of bool
        In which cases the shortfall that a daily limit causes is also found; it is NaN in others.
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
    limit_cost: bool | Sequence[bool] = False,
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
    if len({(each.site.draw_m3.shape[1], each.site.band_count) for each in prepared}) > 1:
        raise ValueError("cases evaluated together must have the same life and number of tariff bands")
    index_of: dict[Any, int] = {}
    index = np.array([index_of.setdefault(_key(*each), len(index_of)) for each in zip(prepared, cases, strict=True)])
    first = np.unique(index, return_index=True)[1]
    asked = np.zeros(len(index_of), dtype=bool)
    np.logical_or.at(asked, index, limit_cost)
    keys = [(*key, bool(cost)) for key, cost in zip(index_of, asked, strict=True)]
    known = {at: found for at, key in enumerate(keys) if (found := context.hours.get(key)) is not None}
    blocks: dict[Any, _Block] = {}
    for at in np.argsort(~asked, kind="stable").tolist():
        case = first[at]
        if at not in known:
            block = blocks.setdefault(keys[at][:2], _Block(prepared[case], cases[case].design.strings))
            block.add(at, cases[case], bool(asked[at]))

    def done() -> Iterator[tuple[Sequence[int], Outcome]]:
        yield from (([at], found) for at, found in known.items())
        for some in _passes(list(blocks.values()), columns_at_once, cells_at_once):
            for block, outcome in zip(some, _run(some, bool(asked.any())), strict=True):
                yield block.indices, outcome.taken((slice(None), 0))
            if progress is not None:
                progress(sum(len(block.indices) for block in some))

    outcome = laid_out(done(), len(keys))
    if len(keys) <= context.hours.most:
        for at, key in enumerate(keys):
            if at not in known:
                context.hours.put(key, with_sources(outcome.taken([at]), cases[first[at]]))
    return outcome if np.array_equal(index, np.arange(len(keys))) else outcome.taken(index)


def _key(prepared: Prepared, case: Case) -> tuple[Any, ...]:
    """Equal for cases that the hour loop cannot tell apart; levels are nothing to the sun alone."""
    design = case.design
    levels = design.levels if design.has_switch else (0.0, 0.0)
    return prepared.key, design.strings, design.tank_m3, *levels


class _Block:
    """Cases that share their hourly series, and their places among the distinct ones.

    `limit_costs` tells of which the shortfall that the daily limit causes is asked, those first.
    """

    def __init__(self, prepared: Prepared, strings: int) -> None:
        self.prepared, self.strings = prepared, strings
        self.indices: list[int] = []
        self.sizes: list[Sizes] = []
        self.limit_costs: list[bool] = []

    def add(self, index: int, case: Case, limit_cost: bool) -> None:
        self.indices.append(index)
        self.limit_costs.append(limit_cost)
        self.sizes.append((case.design.tank_m3, *case.design.levels))

    def cut(self, most: int) -> Iterator[_Block]:
        """Cut it into blocks of at most so many cases."""
        for begin in range(0, len(self.indices), most):
            block = _Block(self.prepared, self.strings)
            some = slice(begin, begin + most)
            block.indices, block.sizes, block.limit_costs = self.indices[some], self.sizes[some], self.limit_costs[some]
            yield block


def _passes(blocks: list[_Block], columns_at_once: int, cells_at_once: int) -> Iterator[list[_Block]]:
    """Gather blocks into passes, those with as many cases and the same sources side by side."""
    if not blocks:
        return
    years = blocks[0].prepared.site.draw_m3.shape[1]
    most = max(cells_at_once // years, 1)
    pieces = [piece for block in blocks for piece in block.cut(most)]
    pieces.sort(key=lambda block: (-len(block.indices), block.prepared.built.sources))
    together: list[_Block] = []
    held: dict[str, TopUpSource] = {}
    idle = 0
    for block in pieces:
        deepest = len(together[0].indices) if together else len(block.indices)
        columns = (len(together) + 1) * years
        idle += (deepest - len(block.indices)) * years
        full = columns > columns_at_once or columns * deepest > cells_at_once or idle > _PASS_CELLS
        if together and (full or not _alike(held, block)):
            yield together
            together, held, idle = [], {}, 0
        together.append(block)
        held |= {each.name: each for each in block.prepared.built.top_ups}
    yield together


def _alike(held: Mapping[str, TopUpSource], block: _Block) -> bool:
    """Whether the energy of each source is counted by the same hours as before in the pass."""
    return all(held.get(each.name, each).shares_bands(each) for each in block.prepared.built.top_ups)


def _run(blocks: Sequence[_Block], limit_cost: bool) -> list[Outcome]:
    options = [
        option_of(block.prepared.built, block.prepared.site, [block.strings], *zip(*block.sizes, strict=True))
        for block in blocks
    ]
    free = [sum(block.limit_costs) for block in blocks] if limit_cost else None
    return run_options(options, band_count=blocks[0].prepared.site.band_count, free_variants=free)


__all__ = ["CELLS_AT_ONCE", "COLUMNS_AT_ONCE", "evaluate", "run_cases"]
