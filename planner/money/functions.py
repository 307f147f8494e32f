"""Functions of the one arithmetic: on numbers and arrays they give values, on `Formula` operands formulas.

Leading axes of arrays are cases; the last one holds years, lines or options where a function speaks of a range. Only
functions that every spreadsheet program knows are written, in the same order of operations as in NumPy.
"""

from __future__ import annotations

import numpy as np

from planner.money.formula import Formula, Operand, Word, is_formula

_NO_INTEREST = 1e-12
"""A rate so small that Fisher's relation can leave it where there is none."""
_MOST_STEPS, _CLOSE = 100, 4e-16
"""Steps towards a rate, and how small the last may be; an interval halved so often is no wider than rounding."""


def may_be(condition: Operand) -> bool:
    """Whether a condition holds in any case; always of a formula, whose cells may change."""
    return is_formula(condition) or bool(np.any(condition))


def where(condition: Operand, yes: Operand, no: Operand) -> Operand:
    """One of two operands by a condition."""
    if is_formula(condition, yes, no):
        return Formula("IF", condition, yes, no)
    if isinstance(condition, bool | np.bool_) and not isinstance(yes, np.ndarray) and not isinstance(no, np.ndarray):
        chosen = yes if condition else no
        return chosen.value if isinstance(chosen, Word) else chosen
    return np.where(condition, *(choice.value if isinstance(choice, Word) else choice for choice in (yes, no)))


def both(first: Operand, second: Operand) -> Operand:
    """Whether two conditions hold, in each place of a range too."""
    return Formula("*", first, second) if is_formula(first, second) else np.logical_and(first, second)


def either(first: Operand, second: Operand) -> Operand:
    """Whether one of two conditions that exclude each other holds, in each place of a range too."""
    return Formula("+", first, second) if is_formula(first, second) else np.logical_or(first, second)


def equals(first: Operand, second: Operand) -> Operand:
    """Whether two operands are the same."""
    return Formula("=", first, second) if is_formula(first, second) else np.equal(first, second)


def differs(first: Operand, second: Operand) -> Operand:
    """Whether two operands are not the same."""
    return Formula("<>", first, second) if is_formula(first, second) else np.not_equal(first, second)


def minimum(first: Operand, second: Operand) -> Operand:
    """Return the lesser of two operands (not place by place of a range)."""
    return Formula("MIN", first, second) if is_formula(first, second) else np.minimum(first, second)


def maximum(first: Operand, second: Operand) -> Operand:
    """Return the greater of two operands (not place by place of a range)."""
    return Formula("MAX", first, second) if is_formula(first, second) else np.maximum(first, second)


def floor(number: Operand) -> Operand:
    """Largest whole number not above an operand."""
    return Formula("INT", number) if is_formula(number) else np.floor(number)


def ceiling(number: Operand) -> Operand:
    """Smallest whole number not below an operand."""
    return -floor(-number)


def remainder(number: Operand, divisor: Operand) -> Operand:
    """What a division leaves, of the divisor's sign."""
    return Formula("MOD", number, divisor) if is_formula(number, divisor) else np.mod(number, divisor)


def absolute(number: Operand) -> Operand:
    """Magnitude of an operand, in each place of a range too."""
    return Formula("ABS", number) if is_formula(number) else np.abs(number)


def ratio(above: Operand, below: Operand) -> Operand:
    """One operand by another; NaN, in NumPy, where that is nothing."""
    if is_formula(above, below):
        return above / below
    shape = np.broadcast_shapes(np.shape(above), np.shape(below))
    divisor = np.broadcast_to(np.asarray(below, dtype=float), shape)
    return np.divide(above, divisor, out=np.full(shape, np.nan), where=divisor != 0)


def total(values: Operand) -> Operand:
    """Sum of a range, of the last axis of an array, or place by place of a list of arrays."""
    if is_formula(values):
        return Formula("SUMPRODUCT" if values.symbol else "SUM", values)
    if isinstance(values, list | tuple):
        # The smallest arrays first, so that those with many cases are passed over least often.
        return sum(sorted(values, key=np.size), 0.0)
    return np.asarray(values).sum(axis=-1)


def weighted_total(values: Operand, weights: Operand) -> Operand:
    """Sum of products of two ranges, of the last axes of two arrays, or place by place of two lists."""
    if is_formula(values, weights):
        return Formula("SUMPRODUCT", values, weights)
    if isinstance(values, list | tuple):
        return sum((value * weight for value, weight in zip(values, weights, strict=True)), 0.0)
    return np.asarray(np.vecdot(values, weights))


def as_number(condition: Operand) -> Operand:
    """1 where a condition holds, else 0; sums of ranges take no truth for a number."""
    if is_formula(condition):
        return condition if condition.symbol in "*+" else Formula("*", condition, 1)
    return np.asarray(condition, dtype=float)


def count(condition: Operand) -> Operand:
    """In how many places of a range, or of the last axis, a condition holds."""
    return total(as_number(condition))


def largest(values: Operand) -> Operand:
    """Greatest of a range or of the last axis."""
    if is_formula(values):
        return Formula("SUMPRODUCT", Formula("MAX", values))
    return np.max(values, axis=-1)


def item(values: Operand, index: Operand) -> Operand:
    """Figure at an index of a range or of the last axis, counted from 0; the last one beyond its end."""
    if is_formula(values, index):
        return Formula("INDEX", values, index + 1)
    table = np.asarray(values)
    indices = np.clip(np.asarray(index, dtype=np.int64), 0, table.shape[-1] - 1)
    return np.take_along_axis(table, np.broadcast_to(indices, table.shape[:-1])[..., None], axis=-1)[..., 0]


def level_payment(rate: Operand, years: Operand, amount: Operand) -> Operand:
    """Level yearly payment that repays an amount with interest (positive); equal parts where there is no interest."""
    if is_formula(rate, years, amount):
        return where(absolute(rate) < _NO_INTEREST, amount / years, -Formula("PMT", rate, years, amount))
    interest = np.asarray(rate, dtype=float)
    none = np.abs(interest) < _NO_INTEREST
    repaid = -np.expm1(-years * np.log1p(interest))
    return np.where(none, 1 / np.asarray(years), interest / np.where(none, 1.0, repaid)) * np.asarray(amount)


def rate_between(flows: Operand, low: Operand, high: Operand) -> Operand:
    """Rate, between two at which the present value of flows has unlike signs, at which it is nothing."""
    if is_formula(flows, low, high):
        return Formula("IRR", flows, low)
    table = np.asarray(flows, dtype=float)
    powers = np.arange(table.shape[-1])
    # Sought in the discount factor of one year, of which the present value is a polynomial: by Newton's steps, or by
    # halves where one leads out of the interval.
    left, right = 1 / (1 + np.asarray(high)), 1 / (1 + np.asarray(low))
    rising = np.vecdot(table, right[..., None] ** powers) > 0
    factor = (left + right) / 2
    for _ in range(_MOST_STEPS):
        terms = table * factor[..., None] ** powers
        worth, slope = terms.sum(axis=-1), (terms * powers).sum(axis=-1) / factor
        beyond = (worth > 0) == rising
        left, right = np.where(beyond, left, factor), np.where(beyond, factor, right)
        step = factor - worth / np.where(slope == 0, 1.0, slope)
        inside = (step > left) & (step < right) & (slope != 0)
        step = np.where(inside, step, (left + right) / 2)
        settled = np.abs(step - factor) <= _CLOSE * factor
        if settled.all():
            break
        factor = np.where(settled, factor, step)
    return 1 / factor - 1
