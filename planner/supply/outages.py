"""Random outages of the grid: alike all year, or more in some months and hours of the day."""

from __future__ import annotations

from functools import lru_cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from planner.scenario.sources import Outages
from planner.water.demand import MONTH_OF_HOUR

Array = NDArray[np.float64]

HOURS = 8760
_LEAST_HOURS = 1e-3
"""Fewer hours off in a year than this count as none."""
_OUTAGE_STREAM = 7919
"""Keeps the outages' random numbers apart from the weather's under the same seed."""
_MOST_STARTS_PER_H = 1e4
"""Outages that begin this often leave no time between them."""


class TooManyOutages(ValueError):
    """Outages that begin in the hours given cannot add up to the hours without grid."""


def outages_of(outages: Outages, years: int, seed: int) -> Array:
    """Share of each hour without grid, drawn anew for each year, (8760, years)."""
    if outages.month_weights is None and outages.start_weights is None:
        return outage_share(outages.hours_per_day, outages.mean_duration_h, years, seed)
    rates, first = start_rates(outages.month_hours(), outages.mean_duration_h, outages.start_weights or [1.0] * 24)
    hourly = rates[MONTH_OF_HOUR, np.arange(HOURS) % 24]
    randoms = [np.random.default_rng([seed, _OUTAGE_STREAM, year]) for year in range(years)]
    return np.stack([_drawn_year(hourly, outages.mean_duration_h, first, random) for random in randoms], axis=1)


@lru_cache(maxsize=8)
def outage_share(hours_per_day: float, mean_duration_h: float, years: int, seed: int) -> Array:
    """Share of each hour without grid, drawn anew for each year, (8760, years); read-only, as it is kept.

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
        return _read_only(np.zeros((HOURS, years)))
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
    return _read_only(np.clip(result, 0.0, 1.0))


def _read_only(array: Array) -> Array:
    array.flags.writeable = False
    return array


def start_rates(month_hours: ArrayLike, mean_duration_h: float, start_weights: ArrayLike) -> tuple[Array, float]:
    """How often outages must begin, while the grid is on, to give the wanted hours in each month.

    Parameters
    ----------
    month_hours : array_like, (12,)
        Mean time off in each month [h/day].
    mean_duration_h : float
        Mean duration of one outage [h].
    start_weights : array_like, (24,)
        How often outages begin in each hour of the day, against each other.

    Returns
    -------
    rates : ndarray, (12, 24)
        Outages that begin per hour with grid [1/h].
    first : float
        Chance that the grid is off at the first hour of the year.

    Raises
    ------
    TooManyOutages
        When outages that begin in these hours cannot last as long.

    Notes
    -----
    The chance p to be off follows dp/dt = rate (1 - p) - p / duration, whose cycle over the day is solved hour by hour;
    the rate of each month is then found by bisection.
    """
    wanted = np.asarray(month_hours, dtype=float) / 24
    weights = np.asarray(start_weights, dtype=float)
    weights = weights / weights.mean()
    low, high = np.zeros(12), np.full(12, _MOST_STARTS_PER_H)
    short = np.flatnonzero(_day_cycle(high[:, None] * weights, mean_duration_h)[0] < wanted)
    if short.size:
        raise TooManyOutages(
            f"outages of {mean_duration_h:g} h that begin only in these hours cannot add up to "
            f"{24 * wanted[short[0]]:.3g} h a day; give more hours a weight, longer outages or fewer hours without grid"
        )
    for _ in range(100):
        middle = (low + high) / 2
        enough = _day_cycle(middle[:, None] * weights, mean_duration_h)[0] >= wanted
        low, high = np.where(enough, low, middle), np.where(enough, middle, high)
    rates = high[:, None] * weights * (wanted > 0)[:, None]
    return rates, float(_day_cycle(rates, mean_duration_h)[1][0])


def _day_cycle(rates: Array, mean_duration_h: float) -> tuple[Array, Array]:
    """Mean share of the day without grid, and the share at midnight, for days all alike; rates (months, 24)."""
    ends = 1 / mean_duration_h
    total = rates + ends
    settled, kept = rates / total, np.exp(-total)
    offset, slope = np.zeros(rates.shape[0]), np.ones(rates.shape[0])  # share after some hours = offset + slope x first
    for hour in range(24):
        offset, slope = settled[:, hour] + (offset - settled[:, hour]) * kept[:, hour], slope * kept[:, hour]
    midnight = offset / (1 - slope)
    share, mean = midnight, np.zeros(rates.shape[0])
    for hour in range(24):
        above = share - settled[:, hour]
        mean += (settled[:, hour] + above * (1 - kept[:, hour]) / total[:, hour]) / 24
        share = settled[:, hour] + above * kept[:, hour]
    return mean, midnight


def _drawn_year(rates: Array, mean_duration_h: float, first: float, random: np.random.Generator) -> Array:
    """Draw one year's share of each hour without grid, (8760,), from the outages that begin per hour with grid."""
    edges = np.arange(HOURS + 1.0)
    expected = np.concatenate([[0.0], np.cumsum(rates)])
    off = random.random() < first
    time_h, off_h = 0.0, 0.0
    knots_h, offs_h = [0.0], [0.0]
    while time_h < HOURS:
        if off:
            lasts_h = random.exponential(mean_duration_h)
            time_h, off_h = time_h + lasts_h, off_h + lasts_h
        else:
            due = np.interp(time_h, edges, expected) + random.exponential()
            time_h = float(np.interp(due, expected, edges, right=HOURS + 1.0))
        knots_h.append(time_h)
        offs_h.append(off_h)
        off = not off
    return np.asarray(np.clip(np.diff(np.interp(edges, knots_h, offs_h)), 0.0, 1.0))
