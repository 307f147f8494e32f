"""Switching values and sensitivity indicators: at which value of an input the better of two options changes."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from scipy.optimize import brentq

Gap = Callable[[float], float]

_NO_EFFECT = 1e-9
"""Change of the gap over the whole range, as a share of the costs, below which an input changes nothing."""
_NARROW = 1e-5
"""Width to which a root is found, as a share of the range."""


@dataclass(frozen=True)
class Crossing:
    """Where a gap changes sign.

    Attributes
    ----------
    value : float or None
        The place in the range nearest to the base; None where there is none.
    others : tuple of float
        Further places in the range.
    beyond : float or None
        Where a straight line changes sign outside the range; None where it does not, or the gap is no straight line.
    changes : bool
        Whether the input changes the gap at all.
    """

    value: float | None
    others: tuple[float, ...] = ()
    beyond: float | None = None
    changes: bool = True


def linear_crossing(gap: Gap, base: float, low: float, high: float, scale: float = 1.0) -> Crossing:
    """Find where a straight line changes sign, from two of its points.

    Parameters
    ----------
    gap : callable
        Difference of the two options by the input's value.
    base : float
        The input's value in the scenario.
    low, high : float
        The range looked at.
    scale : float
        Size of what is subtracted, to tell no change from rounding.

    Returns
    -------
    Crossing
    """
    other = low if abs(base - low) > abs(high - base) else high
    here, there = gap(base), gap(other)
    slope = (there - here) / (other - base)
    if abs(slope) * (high - low) <= _NO_EFFECT * abs(scale):
        return Crossing(None, changes=False)
    place = base - here / slope
    if low <= place <= high:
        return Crossing(place)
    return Crossing(None, beyond=place)


def crossing(
    gap: Gap, base: float, values: Sequence[float], gaps: Sequence[float], scale: float = 1.0, enough: float = 0.0
) -> Crossing:
    """Find where a gap changes sign by looking between some of its values and closing in on the nearest place.

    Parameters
    ----------
    gap : callable
        Difference of the two options by the input's value.
    base : float
        The input's value in the scenario.
    values, gaps : sequence of float
        Values tried, rising, and the gap at each.
    scale : float
        Size of what is subtracted, to tell no change from rounding.
    enough : float
        Gap at which the search is content.

    Returns
    -------
    Crossing

    Notes
    -----
    A gap that touches zero between two of the values and comes back is not seen. The root is Brent's (scipy); where
    the gap jumps over zero, the place of the jump.
    """
    across, table = np.asarray(values, dtype=float), np.asarray(gaps, dtype=float)
    if np.ptp(table) <= _NO_EFFECT * abs(scale):
        return Crossing(None, changes=False)
    at = np.flatnonzero(np.signbit(table[:-1]) != np.signbit(table[1:]))
    if at.size == 0:
        return Crossing(None)

    def content(value: float) -> float:
        found = gap(value)
        return 0.0 if abs(found) <= enough else found

    guesses = across[at] - table[at] * (across[at + 1] - across[at]) / (table[at + 1] - table[at])
    order = np.argsort(np.abs(guesses - base), kind="stable")
    first = at[order[0]]
    root = brentq(content, across[first], across[first + 1], xtol=_NARROW * (across[-1] - across[0]), maxiter=60)
    return Crossing(float(root), others=tuple(float(value) for value in guesses[order[1:]]))


def sensitivity_indicator(change_of_result: float, change_of_input: float) -> float:
    """Relative change of a result by the relative change of an input that causes it (both as fractions or both %).

    ADB, Financial Management and Analysis of Projects, 7.11.2.
    """
    return abs(change_of_result / change_of_input)


def switching_change_percent(base_result: float, changed_result: float, change_of_input_percent: float) -> float:
    """Change of an input [%] that brings a result to zero, on the straight line through two results.

    ADB, Financial Management and Analysis of Projects, 7.11.3: 100 / sensitivity indicator.
    """
    return base_result / (base_result - changed_result) * change_of_input_percent


def limit_between(serves: Callable[[float], bool], inside: float, outside: float, width: float) -> float:
    """Close in, by halving, on the value between two at which an option no longer serves."""
    while abs(outside - inside) > width:
        middle = (inside + outside) / 2
        if serves(middle):
            inside = middle
        else:
            outside = middle
    return outside
