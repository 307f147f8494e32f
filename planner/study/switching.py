"""Switching values: at which value of an input the better of two options changes."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

Array = NDArray[np.float64]
Gap = Callable[[Array], Array]
"""Difference of two options at each of some values of an input."""

_NO_EFFECT = 1e-9
"""Change of the gap over the whole range, as a share of the costs, below which an input changes nothing."""
_NARROW = 1e-5
"""Width to which a root is found, as a share of the range."""
_SPREAD = np.array([-0.02, -0.0005, 0.0, 0.0005, 0.02])
"""Places beside a guess at a root, as shares of the width within which it lies."""
_EVEN = np.arange(1, 8) / 8
"""Places tried within that width whatever the guess, so that it is at most an eighth after a pass."""
_HALVINGS_AT_ONCE = 3
"""Halvings of a bracket in one pass: seven values cost about as much time as two passes of one."""


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
    here, there = (float(found) for found in gap(np.array([base, other])))
    slope = (there - here) / (other - base)
    if abs(slope) * (high - low) <= _NO_EFFECT * abs(scale):
        return Crossing(None, changes=False)
    value = base - here / slope
    if low <= value <= high:
        return Crossing(value)
    return Crossing(None, beyond=value)


def crossing(gap: Gap, base: float, values: ArrayLike, scale: float = 1.0, enough: float = 0.0) -> Crossing:
    """Find where a gap changes sign by looking between some of its values and closing in on the nearest place.

    Parameters
    ----------
    gap : callable
        Difference of the two options by the input's value.
    base : float
        The input's value in the scenario.
    values : array_like
        Values between which to look, rising.
    scale : float
        Size of what is subtracted, to tell no change from rounding.
    enough : float
        Gap at which the search is content.

    Returns
    -------
    Crossing

    Notes
    -----
    A gap that touches zero between two of the values and comes back is not seen. Where the gap jumps over zero, the
    place of the jump is found.
    """
    across = np.asarray(values, dtype=float)
    table = gap(across)
    if np.ptp(table) <= _NO_EFFECT * abs(scale):
        return Crossing(None, changes=False)
    at, guesses = _sign_changes(across, table)
    if at.size == 0:
        return Crossing(None)
    order = np.argsort(np.abs(guesses - base), kind="stable")
    first = at[order[0]]
    ends = slice(first, first + 2)
    root = _root(gap, base, across[ends], table[ends], _NARROW * (across[-1] - across[0]), enough)
    return Crossing(root, others=tuple(float(value) for value in guesses[order[1:]]))


def _sign_changes(values: Array, gaps: Array) -> tuple[NDArray[np.int64], Array]:
    """Where a gap changes sign between neighbours, and the place on the straight line between them."""
    at = np.flatnonzero(np.signbit(gaps[:-1]) != np.signbit(gaps[1:]))
    return at, values[at] - gaps[at] * (values[at + 1] - values[at]) / (gaps[at + 1] - gaps[at])


def _root(gap: Gap, base: float, ends: Array, gaps: Array, width: float, enough: float) -> float:
    """Close in on a change of sign between two values, several in a pass: about the straight line's guess, and evenly.

    Of several changes of sign the one nearest to the base is followed.
    """
    while True:
        at, guesses = _sign_changes(ends, gaps)
        nearest = int(np.argmin(np.abs(guesses - base)))
        guess, first = float(guesses[nearest]), int(at[nearest])
        ends, gaps = ends[first : first + 2], gaps[first : first + 2]
        across = float(ends[1] - ends[0])
        if across <= width:
            return guess
        tried = np.unique(np.concatenate([ends[0] + across * _EVEN, guess + across * _SPREAD]))
        tried = tried[(tried > ends[0]) & (tried < ends[1])]
        found = gap(tried)
        smallest = int(np.argmin(np.abs(found)))
        if abs(found[smallest]) <= enough:
            return float(tried[smallest])
        ends = np.concatenate([ends[:1], tried, ends[1:]])
        gaps = np.concatenate([gaps[:1], found, gaps[1:]])


def limit_between(serves: Callable[[Array], NDArray[np.bool_]], inside: float, outside: float, width: float) -> float:
    """Close in on the value between two at which an option no longer serves, several halvings in a pass.

    Parameters
    ----------
    serves : callable
        Tells at which of some values it serves.
    inside, outside : float
        A value at which it does, and one at which it does not.
    width : float
        Distance from the limit that is close enough.

    Returns
    -------
    float
        A value, at most so far outside the limit, at which it does not serve.
    """
    while abs(outside - inside) > width:
        needed = int(np.ceil(np.log2(abs(outside - inside) / width)))
        at_once = -(-needed // -(-needed // _HALVINGS_AT_ONCE))
        tried = np.linspace(inside, outside, 2**at_once + 1)
        first = int(np.argmin(np.append(serves(tried[1:-1]), False)))
        inside, outside = float(tried[first]), float(tried[first + 1])
    return outside
