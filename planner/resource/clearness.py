"""Laws of the daily and hourly clearness index, and the bend that keeps their sums."""

from __future__ import annotations

import functools
from typing import Literal

import numpy as np
from scipy.special import ndtr

from planner.resource.sun import Array

DailyLaw = Literal["saunier", "bendt"]

LOWEST_CLEARNESS = 0.05
"""Least daily clearness index of the laws (Bendt, Collares-Pereira and Rabl 1981, Solar Energy 27:1-5)."""
DAY_CORRELATION = 0.38
"""Day-to-day coefficient. Graham, Hollands and Huget 1988 (Solar Energy 40:83-92) give 0.29, from memory; inside
months of 30 days that leaves a lag-1 correlation of only 0.17, while 0.38 gives the 0.25-0.30 seen in typical years."""
HOUR_CORRELATION = 0.54
"""Hour-to-hour coefficient (Graham and Hollands 1990, Solar Energy 44:333-341: 0.54 +- 0.14 everywhere)."""


def highest_clearness(mean: Array, clear_sky: Array) -> Array:
    """Highest daily clearness index of a month.

    Parameters
    ----------
    mean, clear_sky : ndarray
        Clearness index of the month's mean day and of its clear-sky day; any shapes that broadcast.

    Returns
    -------
    ndarray
        Hollands and Huget 1983 (Solar Energy 30:195-209), lowered to 1.10 times the clear sky where that is less,
        but always well above the mean. The last two are this project's own choice, no source.
    """
    general = 0.6313 + 0.267 * mean - 11.9 * (mean - 0.75) ** 8
    return np.maximum(np.minimum(general, 1.10 * clear_sky), mean + 0.5 * np.maximum(general - mean, 0.08))


def _density(slope: Array, law: DailyLaw) -> tuple[Array, Array]:
    z = (np.arange(1000) + 0.5) / 1000
    weight = z * (1 - z) if law == "saunier" else np.ones_like(z)
    return z, weight * np.exp(slope[:, None] * (z - (slope[:, None] > 0)))


@functools.cache
def _mean_by_slope(law: DailyLaw) -> tuple[Array, Array]:
    slopes = np.sinh(np.linspace(-7, 7, 401))  # within 550, dense about 0
    z, density = _density(slopes, law)
    return slopes, density @ z / density.sum(axis=1)


def daily_quantiles(mean: Array, highest: Array, days: int, law: DailyLaw) -> Array:
    """Daily clearness indices at equally spaced probabilities, rising.

    Parameters
    ----------
    mean, highest : ndarray, shape (n,)
        Mean and highest clearness index.
    days : int
        Number of days.
    law : {'saunier', 'bendt'}
        p(z) ~ z (1 - z) exp(g z) of Saunier, Reddy and Kumar 1987 (Solar Energy 38:169-177; form from memory), or
        p(z) ~ exp(g z) of Bendt et al. 1981, on z from the lowest to the highest index; g follows from the mean.

    Returns
    -------
    ndarray, shape (n, days)
        Following Knight, Klein and Duffie 1991 (Solar Energy 46:109-120) one year carries the long-term law.
    """
    slopes, means = _mean_by_slope(law)
    wanted = np.clip((mean - LOWEST_CLEARNESS) / (highest - LOWEST_CLEARNESS), 0.02, 0.98)
    z, chosen = _density(np.interp(wanted, means, slopes), law)
    cumulated = np.cumsum(chosen, axis=1)
    below = (cumulated - 0.5 * chosen) / cumulated[:, -1:]
    probabilities = (np.arange(days) + 0.5) / days
    position = np.stack([np.interp(probabilities, row, z) for row in below])
    return LOWEST_CLEARNESS + (highest - LOWEST_CLEARNESS)[:, None] * position


def bend(fraction: Array, cap: Array, total: Array) -> Array:
    """Bend values so that they keep a sum: cap * fraction**p, with one p > 0 for each row.

    The order of values is kept and none passes its cap.

    Parameters
    ----------
    fraction : ndarray, shape (..., n)
        Wanted share of the cap; held within 0.001..0.98.
    cap : ndarray, shape (..., n)
        Highest values, >= 0.
    total : ndarray, shape (...)
        Wanted sums, 0 <= total <= cap.sum(-1).

    Returns
    -------
    ndarray, shape (..., n)
        Rows that add up to `total`.

    Notes
    -----
    log(sum(cap * fraction**p)) falls and is convex in p, so Newton's steps from p = 0 rise to the root without
    overshooting it.
    """
    logs = np.log(np.clip(fraction, 1e-3, 0.98))
    wanted = (total > 0) & (cap.sum(axis=-1) > 0)
    log_total = np.log(np.where(wanted, total, 1.0))
    power = np.zeros(total.shape)
    for _ in range(50):
        values = cap * np.exp(logs * power[..., None])
        sums = np.where(wanted, values.sum(axis=-1), 1.0)
        slope = np.where(wanted, (values * logs).sum(axis=-1) / sums, -1.0)
        step = np.where(wanted, (log_total - np.log(sums)) / slope, 0.0)
        power += step
        if np.all(np.abs(step) <= 1e-9 * (1 + power)):
            break
    values = cap * np.exp(logs * power[..., None])
    sums = np.where(wanted, values.sum(axis=-1), 1.0)
    return np.asarray(values * np.where(wanted, total / sums, 0.0)[..., None])  # the last rounding


def autoregressive(noise: Array, coefficient: float) -> Array:
    """Turn independent standard normal values into a first-order autoregressive series along the last axis."""
    series = noise.copy()
    fresh = np.sqrt(1 - coefficient**2)
    for step in range(1, noise.shape[-1]):
        series[..., step] = coefficient * series[..., step - 1] + fresh * noise[..., step]
    return series


def hourly_clearness(daily: Array, sun_height: Array, normal: Array) -> Array:
    """Clearness index of the hours of a day.

    Parameters
    ----------
    daily : ndarray, shape (..., 1)
        Clearness index of the day.
    sun_height : ndarray
        Sine of the sun's elevation.
    normal : ndarray
        Correlated standard normal values; shapes broadcast.

    Returns
    -------
    ndarray
        Trend of Graham and Hollands 1990 with the logistic scatter of Knight, Klein and Duffie 1991; not bounded.
    """
    air_mass = 1 / np.clip(sun_height, 0.02, 1.0)
    positive = np.maximum(daily, 1e-3)
    decay = 1.141 * (1 - positive) / positive
    trend = daily - 1.167 * daily**3 * (1 - daily) + 0.979 * (1 - daily) * np.exp(-decay * air_mass)
    chance = np.clip(ndtr(normal), 1e-4, 1 - 1e-4)
    scatter = 0.1557 * np.sin(np.pi * daily / 0.933)
    return np.asarray(trend + scatter / 1.58 * np.log(chance / (1 - chance)))
