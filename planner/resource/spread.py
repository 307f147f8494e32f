"""How years, and months beside their year, spread about their means."""

from __future__ import annotations

import numpy as np
from scipy.special import ndtri

from planner.resource.sun import Array

LAG_1_CORRELATION = 0.28
"""Lag-1 correlation of daily clearness in the typical years of Miami, Greensboro and Sand Point: 0.30, 0.30, 0.24."""


def chance_spread(daily: Array) -> Array:
    """Spread of a month's mean that comes of its days alone, relative to the mean.

    Parameters
    ----------
    daily : ndarray, shape (n, days)
        Clearness of the days of a month.

    Returns
    -------
    ndarray, shape (n,)
        Standard deviation of the mean of that many days with the lag-1 correlation r seen in typical years:
        sqrt((1 + r) / (1 - r) / days) times that of one day (large-sample formula of a first-order series).
    """
    correlated = (1 + LAG_1_CORRELATION) / (1 - LAG_1_CORRELATION) / daily.shape[1]
    return np.asarray(daily.std(axis=1) / daily.mean(axis=1) * np.sqrt(correlated))


def _normals(years: int) -> Array:
    """Stratified normal quantiles, so that few years have their fair share of each kind."""
    return np.asarray(ndtri((np.arange(years) + 0.5) / years))


def year_factors(years: int, seed: int, spread: float) -> Array:
    """Irradiation of each year over the mean, shape (years, 1), of standard deviation `spread`."""
    order = np.random.default_rng(np.random.SeedSequence(seed, spawn_key=(0,)))
    return 1 + spread * order.permutation(_normals(years))[:, None]


def month_anomalies(years: int, seed: int, spread: Array, weight: Array) -> Array:
    """What each month has beside its year's factor, shape (years, 12).

    Of `spread` (12,), each month's adds up to nothing over the years, and each year's over its months by `weight`
    (12,), so that neither the month's mean nor the year's factor changes.
    """
    if not (spread * weight).any():
        return np.zeros((years, 12))
    order = np.random.default_rng(np.random.SeedSequence(seed, spawn_key=(0, 1)))
    free = spread * np.stack([order.permutation(_normals(years)) for _ in range(12)], axis=1)
    # What is over in a year goes to its months by their shares of its variance; that takes part of the spread.
    give = spread**2 * weight / (spread * weight).dot(spread * weight)
    closed = free - (free @ weight)[:, None] * give
    return np.asarray(closed / np.sqrt(np.maximum(1 - give * weight, 0.0)).mean())
