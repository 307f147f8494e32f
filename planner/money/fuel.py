"""What running hours cost a generating set: services, overhauls and replacement; its fuel comes from `supply`."""

from __future__ import annotations

import math
from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from planner.scenario.equipment import whole_years
from planner.supply.generator import derated_rating_kw, fuel_l

Array = NDArray[np.float64]

__all__ = ["derated_rating_kw", "fuel_l", "overhauls_due", "replacement_by_hours", "times_due", "whole_years"]

_ROUNDING = 1e-9
"""Share of an interval by which summed hours may miss its multiple and still count as having reached it."""


def times_due(hours: ArrayLike, interval_h: float) -> Array:
    """Count how often something due at every interval of running hours falls in each year.

    Parameters
    ----------
    hours : array_like, (..., n)
        Running hours of each year [h].
    interval_h : float
        Running hours from one time to the next [h]; the first falls after one interval.

    Returns
    -------
    ndarray, (..., n)
        Times in each year.
    """
    reached = _times(np.cumsum(np.asarray(hours, dtype=float), axis=-1), interval_h)
    return np.diff(reached, axis=-1, prepend=0.0)


def replacement_by_hours(hours: ArrayLike, life_hours: float, life_years: float) -> tuple[Array, Array]:
    """Replace a machine when its running hours or its years are used up, whichever comes first.

    Parameters
    ----------
    hours : array_like, (..., n)
        Running hours of each year [h].
    life_hours : float
        Running hours that one machine lasts [h].
    life_years : float
        Most years that one machine lasts, rounded to whole years.

    Returns
    -------
    counts : ndarray, (..., n)
        Machines bought in each year to replace a worn one.
    left : ndarray, (...)
        Share of its life that the last machine has left, by hours or by years, whichever is less.

    Notes
    -----
    A machine worn by hours is replaced in that same year and the new one runs for the rest of it; age counts from the
    year's end. A machine that would be due at the very end of year n is not replaced.
    """
    wear = _wear(hours, life_hours, life_years)
    return wear.counts, wear.left


def overhauls_due(hours: ArrayLike, interval_h: float, life_hours: float, life_years: float) -> Array:
    """Count the overhauls of each year: as `times_due`, but counted anew for each machine, and none at its end.

    Parameters
    ----------
    hours : array_like, (..., n)
        Running hours of each year [h].
    interval_h : float
        Running hours between overhauls [h].
    life_hours, life_years : float
        Life of one machine [h, years], as in `replacement_by_hours`.

    Returns
    -------
    ndarray, (..., n)
        Overhauls in each year.
    """
    used = _wear(hours, life_hours, life_years).used_before
    most = math.ceil(life_hours / interval_h - _ROUNDING) - 1

    def overhauls_in(run_h: Array) -> Array:
        machines = _times(run_h, life_hours)
        rest: Array = np.maximum(run_h - machines * life_hours, 0.0)
        return machines * most + np.minimum(_times(rest, interval_h), most)

    return overhauls_in(used + np.asarray(hours, dtype=float)) - overhauls_in(used)


class _Wear(NamedTuple):
    """Machines bought (..., n), hours on the machine as each year begins (..., n), share of life left at the end."""

    counts: Array
    used_before: Array
    left: Array


def _wear(hours: ArrayLike, life_hours: float, life_years: float) -> _Wear:
    run_h = np.asarray(hours, dtype=float)
    last, years = run_h.shape[-1] - 1, whole_years(life_years)
    used, age = np.zeros(run_h.shape[:-1]), np.zeros(run_h.shape[:-1])
    counts, used_before = np.zeros(run_h.shape), np.zeros(run_h.shape)
    for year in range(last + 1):
        used_before[..., year] = used
        used = used + run_h[..., year]
        age = age + 1
        worn = _times(used, life_hours)
        if year == last:
            # A machine that wears out exactly at the end is kept, worn, not replaced.
            worn = np.clip(np.ceil(used / life_hours - _ROUNDING) - 1, 0.0, worn)
            old = np.zeros(worn.shape, dtype=bool)
        else:
            old = (worn == 0) & (age >= years)
        used = np.where(old, 0.0, np.maximum(used - worn * life_hours, 0.0))
        counts[..., year] = np.where(old, 1.0, worn)
        age = np.where(counts[..., year] > 0, 0.0, age)
    left = np.clip(1 - np.maximum(used / life_hours, age / years), 0.0, 1.0)
    return _Wear(counts, used_before, left)


def _times(run_h: Array, interval_h: float) -> Array:
    """Whole intervals that some running hours hold."""
    times: Array = np.floor(run_h / interval_h + _ROUNDING)
    return times
