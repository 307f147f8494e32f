"""The worst year in ten: what the years of a life promise in nine years of ten."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

Array = NDArray[np.float64]

YEAR_IN_TEN = 10
"""Per cent of the years that are worse than 'the worst year in ten' promises."""


def worst_year_in_ten(yearly: ArrayLike, *, worst: str = "low") -> Array:
    """Value that nine years in ten keep or better: the 10th percentile of the years, the 90th where more is worse.

    Parameters
    ----------
    yearly : array_like, (..., years)
        A figure of each year, such as the share of demand delivered, short days or water missing.
    worst : str
        'low' where the lowest year is the worst, 'high' where the highest is.

    Returns
    -------
    ndarray, (...)

    Notes
    -----
    Linear between the ordered years (Hyndman and Fan 1996, The American Statistician 50, definition 7): of n years in
    rising order, numbered from 0, the value at place (n - 1) / 10. Of 20 years it lies nine tenths of the way from the
    second worst to the third worst; of ten or fewer between the worst and the second worst. Each figure is ranked by
    itself, so that a share and the days may belong to different years.
    """
    percent = YEAR_IN_TEN if worst == "low" else 100 - YEAR_IN_TEN
    return np.asarray(np.percentile(np.asarray(yearly, dtype=float), percent, axis=-1))


def demand_met_worst_year_in_ten(demand_m3: Array, delivered_m3: Array) -> Array:
    """Share of demand delivered in the worst year in ten, from yearly volumes (..., years)."""
    return worst_year_in_ten(delivered_m3 / demand_m3)


def missing_l_per_day_worst_year_in_ten(demand_m3: Array, delivered_m3: Array) -> Array:
    """Water missing in the worst year in ten, mean of all its days [L/day], from yearly volumes (..., years)."""
    return worst_year_in_ten(demand_m3 - delivered_m3, worst="high") * 1000 / 365
