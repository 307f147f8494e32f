"""Interest arithmetic: Fisher's relation, growth, present worth, capital recovery.

Year-end flows; year 0 is construction. Rates are fractions per year. Formulas as in Fuller and Petersen, NIST Handbook
135 (1995). What is an `Operand` may be a number, an array or a cell; what is a `Number` may be an array of cases (...).
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from planner.money.formula import Operand
from planner.money.functions import level_payment, weighted_total

Array = NDArray[np.float64]
Number = float | Array
"""A number, or an array of it over the cases (...)."""

__all__ = [
    "Array", "Number", "by_case", "capital_recovery_factor", "discount_factor", "growth_factor", "level_payment",
    "present_value", "present_worth_factor", "real_rate",
]  # fmt: skip


def real_rate(nominal_rate: Operand, inflation: Operand) -> Operand:
    """Real rate from a nominal rate and inflation: Fisher, (1 + nominal) / (1 + inflation) - 1."""
    return (1 + nominal_rate) / (1 + inflation) - 1


def growth_factor(rate: Operand, years: Operand) -> Operand:
    """Growth over some years: (1 + rate) ^ years."""
    return (1 + rate) ** years


def present_worth_factor(rate: Operand, year: Operand) -> Operand:
    """Present value of one unit of money at the end of a year: 1 / (1 + rate) ^ year."""
    return 1 / growth_factor(rate, year)


def by_case(value: Operand) -> Operand:
    """Give an array of cases (...) an axis for the years, (..., 1); leave a single number as it is."""
    return value[..., None] if isinstance(value, np.ndarray) else value


def discount_factor(rate: Number, life_years: int) -> Array:
    """Present value of one unit of money in each of the years 0 to n: (..., n + 1)."""
    return np.asarray(present_worth_factor(by_case(rate), np.arange(life_years + 1.0)))


def present_value(flows: ArrayLike, factor: Array) -> Array:
    """Sum of flows (..., n + 1) times discount factors (..., n + 1): (...)."""
    return np.asarray(weighted_total(np.asarray(flows, dtype=float), factor))


def capital_recovery_factor(rate: Number, life_years: int) -> Array:
    """Level yearly sum that repays one unit of money over the life; 1 / n at no interest."""
    return np.asarray(level_payment(rate, life_years, 1.0))
