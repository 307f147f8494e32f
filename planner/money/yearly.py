"""Tables of money by year, a column a definition: evaluated over arrays here, written as cells by the sheets.

A definition takes the figures of one year as attributes of `y`: what is given, the other columns, `y.year`, and
`y.start`, the columns in year 0. In NumPy they are arrays over the years, (..., n) in `later`, (..., n + 1) in `every`.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from types import SimpleNamespace
from typing import Any

import numpy as np

from planner.money.formula import Operand
from planner.money.rates import Array

Definition = Callable[[Any], Operand]


@dataclass(frozen=True)
class Column:
    """One column of a table by year.

    Attributes
    ----------
    key : str
        Its name.
    every : callable, optional
        Definition that holds in every year.
    first, later, last : callable, optional
        Definitions for year 0, for the years 1 to n, and for year n alone in place of `later`; nothing where absent.
    running : str
        Column of which it is the sum up to the year, in place of a definition.
    summed : bool
        Whether a sum over the years means something.
    """

    key: str
    every: Definition | None = None
    first: Definition | None = None
    later: Definition | None = None
    last: Definition | None = None
    running: str = ""
    summed: bool = True

    def in_year(self, year: int, life_years: int, y: Any) -> Operand:
        """Work out one year, by the figures of that year and, in `y.before`, of the one before."""
        if self.running:
            added = getattr(y, self.running)
            return getattr(y.before, self.key) + added if year > 0 else added
        definition = self.first if year == 0 else self.later
        if self.last and year == life_years:
            definition = self.last
        definition = self.every or definition
        return definition(y) if definition else 0.0


def by_year(columns: Iterable[Column], given: Mapping[str, Any], life_years: int) -> dict[str, Array]:
    """Work out a table over arrays.

    Parameters
    ----------
    columns : iterable of Column
        In an order in which each needs only those before it.
    given : mapping of str to number or ndarray
        Figures by name: (..., n) by year, (..., 1) by case, (..., n + 1) columns of an earlier table.
    life_years : int
        Years, n.

    Returns
    -------
    dict of str to ndarray
        Each column, broadcastable to (..., n + 1).
    """
    found: dict[str, Array] = {}
    start = SimpleNamespace(
        **{key: value[..., :1] for key, value in given.items() if isinstance(value, np.ndarray) and value.ndim}
    )
    every = SimpleNamespace(**{**given, "year": np.arange(life_years + 1.0), "start": start})
    later = SimpleNamespace(**{**given, "year": np.arange(1.0, life_years + 1), "start": start})
    for column in columns:
        if column.running:
            values = np.cumsum(getattr(every, column.running), axis=-1)
        elif column.every:
            amount = np.asarray(column.every(every), dtype=float)
            values = np.broadcast_to(amount, np.broadcast_shapes(amount.shape, (life_years + 1,)))
        else:
            parts = ((column.first, slice(0, 1)), (column.later, slice(1, None)), (column.last, slice(-1, None)))
            amounts = [(np.asarray(of(later), dtype=float), years) for of, years in parts if of]
            shape = np.broadcast_shapes(*(amount.shape[:-1] for amount, _ in amounts)) if amounts else ()
            values = np.zeros((*shape, life_years + 1))
            for amount, years in amounts:
                values[..., years] = amount
        found[column.key] = values
        setattr(every, column.key, values)
        setattr(start, column.key, values[..., :1])
    return found
