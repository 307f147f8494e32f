"""When grid and generator may run: timetables and allowed hours; random outages are drawn in `outages`."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from planner.scenario.sources import Generator, Grid
from planner.supply.outages import HOURS, outages_of

Array = NDArray[np.float64]


def share_of_hours(ranges: Sequence[Sequence[float]]) -> Array:
    """Share of each hour of the day that some [from, to] ranges cover, (24,); no range covers the whole day.

    A range whose end is not after its beginning runs over midnight.
    """
    if not ranges:
        return np.ones(24)
    edges = np.arange(25.0)
    covered = np.zeros(24)
    for begin, end in ranges:
        pieces = [(begin, end)] if end > begin else [(begin, 24.0), (0.0, end)]
        for low, high in pieces:
            covered += np.clip(np.minimum(edges[1:], high) - np.maximum(edges[:-1], low), 0, None)
    return np.minimum(covered, 1.0)


def grid_availability(grid: Grid, years: int, seed: int) -> Array:
    """Share of each hour in which the grid can be used, (8760, years)."""
    on = np.tile(share_of_hours(grid.hours), HOURS // 24)[:, None]
    if grid.outages is None:
        return np.repeat(on, years, axis=1)
    off = outages_of(grid.outages, years, seed)
    available: Array = on * (1 - off)
    return available


def generator_availability(generator: Generator) -> Array:
    """Share of each hour in which the generator may run, (8760,)."""
    return np.tile(share_of_hours(generator.hours), HOURS // 24)
