"""Incremental cost of what one option gives beyond the next: dominance, extended dominance and the frontier.

Method as in Tan-Torres Edejer et al. (eds), Making choices in health: WHO guide to cost-effectiveness analysis, World
Health Organization, 2003, with water served in the place of health.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import ArrayLike, NDArray

Array = NDArray[np.float64]
Standing = Literal["frontier", "dominated", "extended"]

_ROUNDING = 1e-9


@dataclass(frozen=True)
class Increment:
    """How one option stands against the others.

    Attributes
    ----------
    standing : str
        'dominated': another costs no more and gives as much or more; 'extended': what it gives beyond its neighbour
        costs more a unit than what the next one gives beyond it; 'frontier': neither.
    against : int or None
        Index of the option that dominates it, else of its lower neighbour on the frontier; None for the lowest there.
    cost, effect : float
        What it costs and gives beyond that neighbour; NaN where it is dominated or has none.
    """

    standing: Standing
    against: int | None
    cost: float = np.nan
    effect: float = np.nan

    @property
    def per_unit(self) -> float:
        """Incremental cost of a unit of effect."""
        return self.cost / self.effect


def increments(cost: ArrayLike, effect: ArrayLike) -> list[Increment]:
    """Hold options against one another by what they cost and what they give.

    Parameters
    ----------
    cost, effect : array_like, (options,)
        Both over the same life and discounted alike; of equals the first is kept.

    Returns
    -------
    list of Increment
        In the order given.
    """
    costs, effects = np.asarray(cost, dtype=float), np.asarray(effect, dtype=float)
    found: dict[int, Increment] = {}
    kept: list[int] = []
    for index in np.lexsort((np.arange(costs.size), costs, -effects)).tolist():  # by falling effect, then rising cost
        beaten_by = kept[-1] if kept else None
        if beaten_by is not None and costs[index] >= costs[beaten_by] - _ROUNDING * abs(costs[beaten_by]):
            found[index] = Increment("dominated", beaten_by)
        else:
            kept.append(index)
    kept.reverse()

    def slope(lower: int, higher: int) -> float:
        return float((costs[higher] - costs[lower]) / (effects[higher] - effects[lower]))

    frontier: list[int] = []
    for index in kept:
        while len(frontier) > 1 and slope(frontier[-2], frontier[-1]) > slope(frontier[-1], index):
            frontier.pop()
        frontier.append(index)
    for index in kept:
        lower = max((other for other in frontier if effects[other] < effects[index]), key=effects.__getitem__,
                    default=None)  # fmt: skip
        extra = (np.nan, np.nan) if lower is None else (costs[index] - costs[lower], effects[index] - effects[lower])
        standing: Standing = "frontier" if index in frontier else "extended"
        found[index] = Increment(standing, lower, *map(float, extra))
    return [found[index] for index in range(costs.size)]


def worth_between(cost: ArrayLike, effect: ArrayLike, chosen: int) -> tuple[float, float]:
    """Find between which values of a unit of effect one option is the best of some.

    Parameters
    ----------
    cost, effect : array_like, (options,)
        What each costs and gives.
    chosen : int
        Index of the option.

    Returns
    -------
    tuple of float
        The least and the largest value at which no other has a lower cost less the value of its effect; the first is
        above the second where there is none.
    """
    more = np.asarray(effect, dtype=float) - np.asarray(effect, dtype=float)[chosen]
    dearer = np.asarray(cost, dtype=float) - np.asarray(cost, dtype=float)[chosen]
    slopes = np.divide(dearer, more, out=np.full(more.shape, np.nan), where=more != 0)
    low = max((float(slope) for slope in slopes[more < 0]), default=0.0)
    high = min((float(slope) for slope in slopes[more > 0]), default=np.inf)
    if np.any((more == 0) & (dearer < 0)):
        return np.inf, -np.inf
    return max(low, 0.0), high
