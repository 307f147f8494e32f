"""Interest arithmetic: Fisher's relation, discount factors, capital recovery, level payments.

Year-end flows; index 0 of the last axis is construction, 1 to n are year ends. A rate may be a number or an array of
cases (...): results then have the shape (..., n + 1). Formulas as in Fuller and Petersen, NIST Handbook 135 (1995).
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

Array = NDArray[np.float64]
Number = float | Array
"""A number, or an array of it over the cases (...)."""


def real_rate(nominal_rate: Number, inflation: Number) -> Array:
    """Real rate from a nominal rate and inflation (fractions per year): Fisher, (1 + nominal) / (1 + inflation) - 1."""
    rate: Array = (1 + np.asarray(nominal_rate, dtype=float)) / (1 + np.asarray(inflation, dtype=float)) - 1
    return rate


def growth_factor(rate: Number, years: ArrayLike) -> Array:
    """(1 + rate) ** years for rates (...) and years (m,): shape (..., m)."""
    factor: Array = (1 + np.asarray(rate, dtype=float))[..., None] ** np.asarray(years, dtype=float)
    return factor


def discount_factor(rate: Number, life_years: int) -> Array:
    """Present value of one unit of money in each of the years 0 to n: (..., n + 1)."""
    return growth_factor(rate, -np.arange(life_years + 1))


def present_value(flows: ArrayLike, factor: Array) -> Array:
    """Sum of flows (..., n + 1) times discount factors (..., n + 1): (...)."""
    value: Array = np.asarray(np.vecdot(np.asarray(flows, dtype=float), factor))
    return value


def capital_recovery_factor(rate: Number, life_years: int) -> Array:
    """Level yearly sum that repays one unit of money over the life; 1 / n at no interest."""
    return level_payment(rate, life_years, 1.0)


def level_payment(rate: Number, years: int, amount: Number) -> Array:
    """Level yearly payment that repays an amount with interest (positive).

    The same as numpy_financial's `pmt`, which divides by zero where a rate is so small that 1 + rate rounds to 1, as
    Fisher's relation can leave it.
    """
    interest = np.asarray(rate, dtype=float)
    none = interest == 0
    repaid = -np.expm1(-years * np.log1p(interest))
    factor = np.where(none, 1 / years, interest / np.where(none, 1.0, repaid))
    payment: Array = factor * np.asarray(amount, dtype=float)
    return payment
