"""The cheapest of some candidates, and those that no other beats."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]
Integers = NDArray[np.int64]

_ROUNDING = 1e-9


def cheapest(cost: Array, allowed: NDArray[np.bool_], cautions: Integers | None = None) -> int | None:
    """Index of the least cost among those allowed, the first of equals; None where none is allowed.

    Where `cautions` are given, among those with the fewest.
    """
    if not allowed.any():
        return None
    if cautions is not None:
        allowed = allowed & (cautions == cautions[allowed].min())
    least = cost[allowed].min()
    return int(np.flatnonzero(allowed & (cost <= least + abs(least) * _ROUNDING))[0])


def pareto_front(cost: Array, share: Array) -> Integers:
    """Indices of the candidates that no other beats in both cost and share, by falling share and cost."""
    rounded = np.round(share, 9)
    order = np.lexsort((np.arange(cost.size), cost, -rounded))
    before = np.minimum.accumulate(cost[order])[:-1]
    remaining = np.concatenate([[True], cost[order][1:] < before - np.abs(before) * _ROUNDING])
    return np.asarray(order[remaining], dtype=np.int64)
