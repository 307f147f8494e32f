"""Laws of the daily and hourly clearness index, and the bend that keeps their sums."""

from __future__ import annotations

import functools
from typing import Literal

import numpy as np
from scipy.special import ndtr

from planner.resource.sun import Array
from planner.text import text

DailyLaw = Literal["by_latitude", "saunier", "bendt"]
Maximum = Literal["clear_sky", "general"]

LOWEST_CLEARNESS = 0.05
"""Least daily clearness index of the laws (Bendt, Collares-Pereira and Rabl 1981, Solar Energy 27:1-5)."""
DAY_CORRELATION = 0.38
"""Day-to-day coefficient. Graham, Hollands and Huget 1988 (Solar Energy 40:83-92) give 0.29, from memory; inside
months of 30 days that leaves a lag-1 correlation of only 0.17, while 0.38 gives the 0.25-0.30 seen in typical years."""
SAUNIER_UP_TO_DEG, BENDT_FROM_DEG = 28.0, 35.0
"""Latitudes between which the law by latitude passes from the one to the other."""
ABOVE_CLEAR_SKY = 1.15
"""Bound of the highest day over the clear sky of Ineichen and Perez."""
HOUR_CORRELATION = 0.54
"""Hour-to-hour coefficient (Graham and Hollands 1990, Solar Energy 44:333-341: 0.54 +- 0.14 everywhere)."""


def law_exponent(law: DailyLaw, latitude_deg: float) -> float:
    """Exponent a of the law of daily clearness p(z) ~ (z (1 - z))^a exp(g z).

    Parameters
    ----------
    law : {'by_latitude', 'saunier', 'bendt'}
        1 is the law of Saunier, Reddy and Kumar 1987 (Solar Energy 38:169-177; form from memory), which has few very
        dull days; 0 that of Bendt, Collares-Pereira and Rabl 1981 (Solar Energy 27:1-5), which has many. By latitude:
        1 in the tropics, 0 in the temperate zone, between them in proportion.
    latitude_deg : float
        Where.

    Returns
    -------
    float
        0 to 1.

    Notes
    -----
    That Saunier's law fits the tropics and wider laws the temperate zone is published (Saunier et al. 1987); the
    latitudes and the bound of the brightest day (`highest_clearness`) are this project's choice. It was judged by the
    share of the water that years made from the means of a typical year deliver, less what that year itself does, with
    arrays that serve 80 to 98 % and tanks of half to three days. Points, least to most over these designs:

    ================== ==================== ==================== ====================
    law, maximum       Miami, 26 N          Greensboro, 36 N     Sand Point, 55 N
    ================== ==================== ==================== ====================
    the year:
    Saunier, clear sky -0.6 to +1.2         -0.6 to +4.4         -3.5 to +3.0
    Saunier, general   -1.3 to +1.1         -0.7 to +4.2         -2.8 to +2.4
    Bendt, clear sky   -5.0 to +1.4         -1.2 to +0.4         -2.5 to -0.5
    Bendt, general     -6.0 to +1.2         -1.4 to +0.3         -3.2 to -0.3
    the worst month:
    Saunier, clear sky -0.6 to +1.0         -4.5 to +9.5         -12.1 to +2.0
    Saunier, general   -1.4 to +0.9         -4.4 to +9.3         -7.6 to -0.2
    Bendt, clear sky   -5.4 to +2.2         -1.4 to +2.8         -2.9 to -0.8
    Bendt, general     -6.7 to +2.2         -1.4 to +2.6         -4.7 to +3.3
    ================== ==================== ==================== ====================

    Three sites, and the choice was made on them; `tests/published/test_daily_law.py` makes the table. Sunny dry places
    beyond 35 degrees have fewer dull days than Bendt's law gives them: the default is careful there.
    """
    if law != "by_latitude":
        return 1.0 if law == "saunier" else 0.0
    return float(np.interp(abs(latitude_deg), (SAUNIER_UP_TO_DEG, BENDT_FROM_DEG), (1.0, 0.0)))


def law_in_words(law: DailyLaw, maximum: Maximum, latitude_deg: float) -> str:
    """Name the law of daily clearness and its highest day, for people."""
    share = law_exponent(law, latitude_deg)
    name = {1.0: "saunier", 0.0: "bendt"}.get(share, "between")
    chosen = "_by_latitude" if law == "by_latitude" else ""
    return text(
        "weather_source.law",
        law=text(f"weather_source.{name}{chosen}", percent=100 * share, latitude=abs(latitude_deg)),
        brightest=text(f"weather_source.brightest_{maximum}", times=ABOVE_CLEAR_SKY),
    )


def law_warning(law: DailyLaw, latitude_deg: float) -> str | None:
    """Say what a law does at a latitude that is not its own; None where it is."""
    chosen, fitting = law_exponent(law, latitude_deg), law_exponent("by_latitude", latitude_deg)
    if abs(chosen - fitting) <= 0.5:
        return None
    key = "weather_note.too_few_dull_days" if chosen > fitting else "weather_note.too_many_dull_days"
    return text(key, law=law, latitude=abs(latitude_deg))


def highest_clearness(mean: Array, clear_sky: Array, maximum: Maximum = "clear_sky") -> Array:
    """Highest daily clearness index of a month.

    Parameters
    ----------
    mean, clear_sky : ndarray
        Clearness index of the month's mean day and of its clear-sky day; any shapes that broadcast.
    maximum : {'clear_sky', 'general'}
        'general' is that of Hollands and Huget 1983 (Solar Energy 30:195-209), the same at every place; 'clear_sky'
        lowers it to 1.15 times the month's clear sky where that is less.

    Returns
    -------
    ndarray
        Always well above the mean, because turbidity grids can be too hazy. That, and the 1.15, are this project's
        own choice, no source: a tighter bound leaves too few bright days, and so too few dull ones.
    """
    general = 0.6313 + 0.267 * mean - 11.9 * (mean - 0.75) ** 8
    highest = np.minimum(general, ABOVE_CLEAR_SKY * clear_sky) if maximum == "clear_sky" else general
    return np.maximum(highest, mean + 0.5 * np.maximum(general - mean, 0.08))


def _density(slope: Array, exponent: float) -> tuple[Array, Array]:
    z = (np.arange(1000) + 0.5) / 1000
    return z, (z * (1 - z)) ** exponent * np.exp(slope[:, None] * (z - (slope[:, None] > 0)))


@functools.cache
def _mean_by_slope(exponent: float) -> tuple[Array, Array]:
    slopes = np.sinh(np.linspace(-7, 7, 401))  # within 550, dense about 0
    z, density = _density(slopes, exponent)
    return slopes, density @ z / density.sum(axis=1)


def daily_quantiles(mean: Array, highest: Array, days: int, exponent: float) -> Array:
    """Daily clearness indices at equally spaced probabilities, rising.

    Parameters
    ----------
    mean, highest : ndarray, shape (n,)
        Mean and highest clearness index.
    days : int
        Number of days.
    exponent : float
        Of the law p(z) ~ (z (1 - z))^exponent exp(g z) on z from the lowest to the highest index, see `law_exponent`;
        g follows from the mean.

    Returns
    -------
    ndarray, shape (n, days)
        Following Knight, Klein and Duffie 1991 (Solar Energy 46:109-120) one year carries the long-term law.
    """
    slopes, means = _mean_by_slope(exponent)
    wanted = np.clip((mean - LOWEST_CLEARNESS) / (highest - LOWEST_CLEARNESS), 0.02, 0.98)
    z, chosen = _density(np.interp(wanted, means, slopes), exponent)
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
