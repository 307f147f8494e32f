"""Some of the cases of the hour loop, side by side: a day of theirs is worked out without the others."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]
Integers = NDArray[np.int64]
Columns = slice | Integers

DAY = 24


@dataclass(frozen=True)
class Cells:
    """Some cells of (variants, columns), in the order of their columns, in which those of a source lie side by side.

    `variant` and `column` are theirs, `index` is where they lie in the flattened array, `series` which hourly series
    holds in their column; each (cells,).
    """

    variant: Integers
    column: Integers
    index: Integers
    series: Integers

    @staticmethod
    def where(chosen: NDArray[np.bool_], of_column: Integers) -> Cells:
        """Find the cells where (variants, columns) is true; `of_column` is the hourly series of each column."""
        variants, columns = chosen.shape
        column, variant = np.divmod(np.flatnonzero(chosen.T), variants)
        return Cells(variant, column, variant * columns + column, of_column[column])

    def some(self, which: Integers) -> Cells:
        """Return some of them, by their places among these."""
        return Cells(self.variant[which], self.column[which], self.index[which], self.series[which])

    @property
    def count(self) -> int:
        """Number of cells."""
        return self.index.size

    def of(self, series: Array) -> Array:
        """Lay hourly series (hours, series) out over the cells, (hours, cells)."""
        return np.take(series, self.series, axis=1)

    def add(self, sums: Array, values: Array) -> None:
        """Add the cells' values to sums (variants, columns)."""
        sums.reshape(-1)[self.index] += values


def over_day(flow: Array) -> Array:
    """Sum (hours, cells) over the hours, one after the other however many cells there are.

    NumPy sums a single column in another order, and the last bit must not depend on how many cells stand together.
    """
    result: Array = np.add.reduce(flow, axis=0) if flow.shape[1] > 1 else flow.cumsum(axis=0)[-1]
    return result


def hours_with_some(flow: Array) -> list[bool]:
    """Tell of each hour whether any of (hours, cells) is above nil."""
    return [bool(highest > 0) for highest in flow.max(axis=1)]


def side_by_side(columns: Integers) -> Columns:
    """Return a slice in place of columns, each once and in rising order, that stand side by side: it is faster."""
    if columns.size and columns[-1] - columns[0] == columns.size - 1:
        return slice(int(columns[0]), int(columns[-1]) + 1)
    return columns
