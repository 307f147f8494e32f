"""From options to the columns of the hour loop: series that options share, top-up sources, tanks and levels."""

from __future__ import annotations

from collections.abc import Hashable, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from graphlib import TopologicalSorter

import numpy as np
from numpy.typing import NDArray

from planner.supply.cells import DAY, Columns, Integers, side_by_side
from planner.supply.option import Option
from planner.supply.series import SunSeries, TopUpSource, extra_series
from planner.supply.topup import FloatSwitch, TopUpSeries, TopUpTotals
from planner.water.demand import MONTH_OF_HOUR

Array = NDArray[np.float64]

MONTH_HOURS = 31 * DAY
"""Hours of the longest month."""
STANDBY_START = 0.5
"""A top-up source that stands by behind another starts at this share of its start level, and stops at its start
level."""


@dataclass(frozen=True)
class Shared:
    """Hourly series that options share, each held once.

    `blocks` are the places of the options that bring one, with its columns among the `count` that are held;
    `of_column` is where each of all columns finds its own.
    """

    blocks: dict[int, slice]
    of_column: Integers
    count: int

    @staticmethod
    def of(keys: Sequence[Hashable], blocks: Sequence[slice]) -> Shared:
        """Find what options, of some columns, share: that of which their keys are equal."""
        begins: dict[Hashable, int] = {}
        held: dict[int, slice] = {}
        found, end = [], 0
        for index, (key, block) in enumerate(zip(keys, blocks, strict=True)):
            width = block.stop - block.start
            if key not in begins:
                begins[key], held[index] = end, slice(end, end + width)
                end += width
            found.append(begins[key] + np.arange(width))
        return Shared(held, np.concatenate(found), end)


@dataclass(frozen=True)
class SourceColumns:
    """One top-up source over all options that use it.

    `used` are the options with the source as each has it, `shared` what they share of it, `columns` their columns;
    `inside` gives the place among these of each of the options, by its own first column. `has_minimum_run` tells
    whether any of them has a shortest run, `bands` is the tariff band of each hour.
    """

    used: Sequence[tuple[Option, TopUpSource]]
    shared: Shared
    name: str
    columns: Columns
    switch: FloatSwitch
    has_minimum_run: bool
    bands: Integers | None
    inside: dict[int, slice] = field(default_factory=dict)

    @cached_property
    def room(self) -> Array:
        """Room for a month of series, made once."""
        return np.empty((5 if self.has_minimum_run else 4, MONTH_HOURS, self.shared.count))

    @staticmethod
    def of(name: str, options: Sequence[Option], blocks: Sequence[slice]) -> SourceColumns:
        """Find the columns of a source, and set its float switches."""
        served = [
            (option, index, block)
            for option, block in zip(options, blocks, strict=True)
            if (index := index_of(option, name)) is not None
        ]
        their_blocks = [block for _, _, block in served]
        widths = np.array([block.stop - block.start for block in their_blocks])
        ends = np.cumsum(widths)
        insides = [slice(int(end - width), int(end)) for width, end in zip(widths, ends, strict=True)]
        levels = [_levels(option, index) for option, index, _ in served]
        found = [option.top_ups[index] for option, index, _ in served]
        runs = [source.minimum_run_h for source in found]
        most = max(option.tank_m3.size for option in options)
        start, stop = (per_column([pair[at] for pair in levels], their_blocks, most) for at in (0, 1))
        used = [(option, source) for (option, _, _), source in zip(served, found, strict=True)]
        return SourceColumns(
            used,
            Shared.of([(id(source), option.sun_key) for option, source in used], insides),
            name,
            side_by_side(np.concatenate([np.arange(block.start, block.stop) for block in their_blocks])),
            FloatSwitch(start, stop, np.repeat(runs, widths)),
            any(runs),
            _bands(found),
            {block.start: inside for block, inside in zip(their_blocks, insides, strict=True)},
        )

    def series(self, suns: Mapping[Hashable, SunSeries], hours: slice) -> TopUpSeries:
        """Make its series of some hours, in which the sun does what `suns` say by the options' keys."""
        extra, per_m3, kwh, sun_kwh, *available = (flow[: hours.stop - hours.start] for flow in self.room)
        series = TopUpSeries(
            self.columns,
            extra,
            per_m3,
            kwh,
            sun_kwh,
            available=available[0] if available else None,
            bands=None if self.bands is None else self.bands[hours],
            of_column=self.shared.of_column,
        )
        for index, block in self.shared.blocks.items():
            option, source = self.used[index]
            top_up, efficiency = source.within(hours), option.sun.efficiency if option.sun else 1.0
            could = extra_series(top_up, suns[option.sun_key], efficiency, option.pump, MONTH_OF_HOUR[hours])
            for name, values in vars(could).items():
                getattr(series, name)[:, block] = values
            if series.available is not None:
                series.available[:, block] = np.tile(top_up.available, (1, len(option.strings)))
        return series

    def part(self, totals: TopUpTotals, block: slice, variants: int) -> TopUpTotals:
        """Return what the source did for one option, by its columns."""
        inside = self.inside[block.start]
        sums = {name: value[..., :variants, inside] for name, value in vars(totals).items() if name != "columns"}
        return TopUpTotals(inside, **sums)


def index_of(option: Option, name: str) -> int | None:
    """Place of a source among an option's top-up sources, None where it is not there."""
    return next((index for index, source in enumerate(option.top_ups) if source.name == name), None)


def in_order(options: Sequence[Option]) -> tuple[str, ...]:
    """Names of all top-up sources, in an order that keeps each option's own."""
    sorter: TopologicalSorter[str] = TopologicalSorter()
    for option in options:
        names = [source.name for source in option.top_ups]
        for index, name in enumerate(names):
            sorter.add(name, *names[:index])
    return tuple(sorter.static_order())


def side_by_side_order(options: Sequence[Option], names: Sequence[str]) -> list[int]:
    """Order options so that those with the same source stand side by side where they can.

    Whole slices are faster in the loop than lists of columns. In the order of the Gray code, whose digits are the
    sources, neighbours differ in one source.
    """

    def rank(option: Option) -> int:
        code = sum(1 << digit for digit, name in enumerate(names) if index_of(option, name) is not None)
        found = code
        while code := code >> 1:
            found ^= code
        return found

    return sorted(range(len(options)), key=lambda index: rank(options[index]))


def _bands(sources: Sequence[TopUpSource]) -> NDArray[np.int64] | None:
    """Tariff bands of one source, the same in every option."""
    for source in sources[1:]:
        if not source.shares_bands(sources[0]):
            raise ValueError(f"the tariff bands of '{source.name}' differ between options of one pass")
    return sources[0].bands


def _levels(option: Option, index: int) -> tuple[Array, Array]:
    """Start and stop level in each variant of an option of its top-up source at an index [m³]."""
    start, stop = option.tank_m3 * option.start_share, option.tank_m3 * option.stop_share
    for _ in range(index):
        start, stop = start * STANDBY_START, start
    return start, stop


def per_column(values: Sequence[Array], blocks: Sequence[slice], variants: int) -> Array:
    """Lay values per variant of each option out over its columns, the last for those it lacks: (variants, columns)."""
    return np.concatenate(
        [
            np.repeat(np.pad(value, (0, variants - value.size), mode="edge")[:, None], block.stop - block.start, axis=1)
            for value, block in zip(values, blocks, strict=True)
        ],
        axis=1,
    )
