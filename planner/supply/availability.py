"""When grid and generator may run: timetables, allowed hours and random outages."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from planner.scenario.sources import Generator, Grid

Array = NDArray[np.float64]

HOURS = 8760
_LEAST_HOURS = 1e-3
"""Fewer hours off in a year than this count as none."""
_OUTAGE_STREAM = 7919
"""Keeps the outages' random numbers apart from the weather's under the same seed."""


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


def outage_share(hours_per_day: float, mean_duration_h: float, years: int, seed: int) -> Array:
    """Share of each hour without grid, drawn anew for each year, (8760, years).

    The grid is on and off in turn for exponentially distributed times whose means give the wanted hours per day; the
    exact time off within each hour is taken. Year k draws the same outages however many years are asked for.

    Parameters
    ----------
    hours_per_day : float
        Mean time off [h/day].
    mean_duration_h : float
        Mean duration of one outage [h].
    years, seed : int
        How many years, and the seed.
    """
    if hours_per_day * 365 < _LEAST_HOURS:
        return np.zeros((HOURS, years))
    off_share = hours_per_day / 24
    mean_on_h = mean_duration_h * (1 - off_share) / off_share
    edges = np.arange(HOURS + 1.0)
    result = np.empty((HOURS, years))
    for year in range(years):
        random = np.random.default_rng([seed, _OUTAGE_STREAM, year])
        begins_off = random.random() < off_share
        count = int(1.3 * HOURS / (mean_on_h + mean_duration_h)) + 60
        time_h, off_h = 0.0, 0.0
        knots_h, offs_h = [np.array([0.0])], [np.array([0.0])]
        while time_h < HOURS:
            on, off = random.exponential(mean_on_h, count), random.exponential(mean_duration_h, count)
            pairs = np.stack([off, on] if begins_off else [on, off], axis=1).ravel()
            is_off = np.tile([begins_off, not begins_off], count)
            knots_h.append(time_h + np.cumsum(pairs))
            offs_h.append(off_h + np.cumsum(pairs * is_off))
            time_h, off_h = knots_h[-1][-1], offs_h[-1][-1]
        result[:, year] = np.diff(np.interp(edges, np.concatenate(knots_h), np.concatenate(offs_h)))
    return np.clip(result, 0.0, 1.0)


def grid_availability(grid: Grid, years: int, seed: int) -> Array:
    """Share of each hour in which the grid can be used, (8760, years)."""
    on = np.tile(share_of_hours(grid.hours), HOURS // 24)[:, None]
    if grid.outages is None:
        return np.repeat(on, years, axis=1)
    off = outage_share(grid.outages.hours_per_day, grid.outages.mean_duration_h, years, seed)
    available: Array = on * (1 - off)
    return available


def generator_availability(generator: Generator) -> Array:
    """Share of each hour in which the generator may run, (8760,)."""
    return np.tile(share_of_hours(generator.hours), HOURS // 24)
