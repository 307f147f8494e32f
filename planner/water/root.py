"""Roots of rising functions, many at once."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from numpy.typing import ArrayLike, NDArray

Array = NDArray[np.float64]

_CLOSE = 4 * np.finfo(float).eps
"""Width of a bracket, as a share of its place, at which a root is found."""
_NOTHING = 4 * np.finfo(float).tiny
"""The same for a root beside nought."""


def rising_root(function: Callable[..., Array], low: ArrayLike, high: ArrayLike, *args: ArrayLike) -> Array:
    """Root of a rising elementwise function, or the nearer end where there is none between low and high.

    Parameters
    ----------
    function : callable
        function(x, *args), elementwise.
    low, high, *args : array_like
        Ends and further arguments; all broadcast.

    Returns
    -------
    ndarray
        Of the shape to which they broadcast.

    Notes
    -----
    Chandrupatla 1997, Advances in Engineering Software 28:145-149: bisection, or inverse quadratic interpolation where
    the three last points allow it. `scipy.optimize.elementwise.find_root` does the same; on the short arrays of a pump
    most of its time goes into what it prepares.
    """
    first, last, *rest = np.broadcast_arrays(*(np.asarray(value, dtype=float) for value in (low, high, *args)))
    shape, left, right, given = first.shape, first.ravel(), last.ravel(), [each.ravel() for each in rest]
    at_left, at_right = function(left, *given), function(right, *given)
    root = np.where(at_right <= 0, right, left)
    within = np.flatnonzero((at_left < 0) & (at_right > 0))
    state = np.stack([left, right, at_left, at_right])[:, within]
    given, part = [each[within] for each in given], np.full(within.size, 0.5)
    while within.size:
        a, b, at_a, at_b = state
        x = a + part * (b - a)
        at_x = function(x, *given)
        same = np.signbit(at_x) == np.signbit(at_a)
        c, at_c = np.where(same, a, b), np.where(same, at_a, at_b)
        b, at_b = np.where(same, b, a), np.where(same, at_b, at_a)
        best = np.where(np.abs(at_x) < np.abs(at_b), x, b)
        least = (_CLOSE * np.abs(best) + _NOTHING) / np.maximum(np.abs(b - x), np.finfo(float).tiny)
        done = ~(least <= 0.5) | (at_x == 0) | (at_b == 0)  # so that no number at all ends it, too
        root[within[done]] = best[done]
        go_on = ~done
        within, given = within[go_on], [each[go_on] for each in given]
        x, b, c, at_x, at_b, at_c, least = (each[go_on] for each in (x, b, c, at_x, at_b, at_c, least))
        part = np.clip(_next_part(x, b, c, at_x, at_b, at_c), least, 1 - least)
        state = np.stack([x, b, at_x, at_b])
    return root.reshape(shape)


def _next_part(x: Array, b: Array, c: Array, at_x: Array, at_b: Array, at_c: Array) -> Array:
    """Place of the next point between x and b, as a share: by inverse quadratic interpolation, or the middle."""
    part = np.full(x.size, 0.5)
    along, up = (x - b) / (c - b), (at_x - at_b) / (at_c - at_b)
    fits = np.flatnonzero((up**2 < along) & ((1 - up) ** 2 < 1 - along))
    x, b, c, at_x, at_b, at_c = (each[fits] for each in (x, b, c, at_x, at_b, at_c))
    part[fits] = at_x / (at_b - at_x) * at_c / (at_b - at_c) + (c - x) / (b - x) * at_x / (at_c - at_x) * at_b / (
        at_c - at_b
    )
    return part
