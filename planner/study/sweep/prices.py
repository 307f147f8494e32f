"""Costs as straight lines of prices: found once from the full life-cycle arithmetic, then a matrix product.

Every cost is a price times a quantity times factors that hold no price, so present cost and its kin are straight lines
of all prices together. The line is found by pricing once with all prices low and once with each of them high.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]

_TILE = 200_000
"""Multiplications in one call of the matrix product: it stays in the cache and on one thread, so that its rounding
does not depend on how many threads the machine has."""


@dataclass(frozen=True)
class PriceLine:
    """Results as a straight line of prices.

    Attributes
    ----------
    constant : ndarray, (results,)
        Value with all prices nil.
    slope : ndarray, (prices, results)
        Change for one unit of each price.
    """

    constant: Array
    slope: Array

    def at(self, prices: Array) -> Array:
        """Results at prices (cases, prices): (cases, results)."""
        count, results = prices.shape[0], self.constant.size
        rows = max(_TILE // max(self.slope.size, 1), 1)
        found = np.empty((count, results))
        for begin in range(0, count, rows):
            tile = found[begin : begin + rows]
            np.matmul(prices[begin : begin + rows], self.slope, out=tile)
            tile += self.constant
        return found


def price_line(priced: Callable[[Array], Array], low: Array, high: Array) -> PriceLine:
    """Find the straight line of some results.

    Parameters
    ----------
    priced : callable
        Gives the results (results,) at prices (prices,).
    low, high : ndarray, (prices,)
        Prices at which to look; where the two are equal the price does not vary.
    """
    base = priced(low)
    slope = np.zeros((low.size, base.size))
    for index in np.flatnonzero(high != low):
        prices = low.copy()
        prices[index] = high[index]
        slope[index] = (priced(prices) - base) / (high[index] - low[index])
    return PriceLine(base - low @ slope, slope)
