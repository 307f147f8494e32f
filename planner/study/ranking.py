"""The one rule by which options are ranked, for arrays and for cells."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from planner.money.formula import Operand
from planner.money.functions import both, count, either, equals, total, where


@dataclass(frozen=True)
class Standing:
    """What decides a rank, of one option or, as ranges, of all.

    Attributes
    ----------
    meets : operand
        1 where the option meets the service target, else 0.
    share : operand
        Share of the demand that it delivers.
    cost : operand
        Present cost.
    place : operand
        Its place in a given order, which decides between equals.
    """

    meets: Operand
    share: Operand
    cost: Operand
    place: Operand


def rank_of(own: Standing, every: Standing) -> Operand:
    """Rank an option: those that meet the target by present cost, then the others by what they deliver, then by cost.

    Parameters
    ----------
    own, every : Standing
        Of the option, and of all options together.

    Returns
    -------
    operand
        1 for the best.
    """
    cheaper = either(every.cost < own.cost, both(equals(every.cost, own.cost), every.place < own.place))
    ahead = either(every.share > own.share, both(equals(every.share, own.share), cheaper))
    return where(
        equals(own.meets, 1),
        1 + count(both(equals(every.meets, 1), cheaper)),
        1 + total(every.meets) + count(both(equals(every.meets, 0), ahead)),
    )


def ranked(meets: ArrayLike, share: ArrayLike, cost: ArrayLike, place: ArrayLike | None = None) -> list[int]:
    """Places of options in the order of their rank.

    Parameters
    ----------
    meets, share, cost, place : array_like, (options,)
        As in `Standing`; by default the place in the list decides between equals.
    """
    served, shares, costs = (np.asarray(values, dtype=float) for values in (meets, share, cost))
    places = np.arange(served.size) if place is None else np.asarray(place, dtype=float)
    every = Standing(served, shares, costs, places)
    ranks = [float(rank_of(Standing(*own), every)) for own in zip(served, shares, costs, places, strict=True)]
    return [int(place) for place in np.argsort(ranks, kind="stable")]
