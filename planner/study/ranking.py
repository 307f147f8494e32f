"""What is best: the sum that the choice of sizes keeps small, and the one rule by which options are ranked.

Sizes of an option, in every study, are those of least `objective` that meet the target: life-cycle cost where there
are prices, else a weight of what is built and bought. Options are ranked by cost alone (`rank_of`), for arrays and for
cells: without prices every cost is 0, so that those which meet the target stand in their given order.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Protocol, TypeVar

import numpy as np
from numpy.typing import ArrayLike, NDArray

from planner.money.formula import Operand
from planner.money.functions import both, count, either, equals, total, where
from planner.scenario.scenario import Scenario

TANK_KWP_PER_M3 = 0.25
GRID_KWP_PER_KWH_A_YEAR = 0.002
FUEL_KWP_PER_L_A_YEAR = 0.02
"""What a m3 of tank, a kWh a year from the grid and a litre a year of fuel weigh against a kWp of array with its stand
where there are no prices: near what they usually cost in proportion to it over some twenty years. Assumed, common
practice, no source."""


def objective(
    scenario: Scenario,
    life_cycle_cost: ArrayLike,
    array_kwp: ArrayLike,
    tank_m3: ArrayLike,
    grid_kwh_per_year: ArrayLike,
    fuel_l_per_year: ArrayLike,
) -> NDArray[np.float64]:
    """What the choice of sizes keeps as small as may be among designs that meet the target.

    Parameters
    ----------
    scenario : Scenario
        Tells whether there are prices.
    life_cycle_cost : array_like, (...)
        Present cost [money].
    array_kwp, tank_m3, grid_kwh_per_year, fuel_l_per_year : array_like, (...)
        What is built, and bought in a mean year.

    Returns
    -------
    ndarray, (...)
        The life-cycle cost where there are prices [money], else the weight of all the rest [kWp].
    """
    if scenario.priced:
        return np.asarray(life_cycle_cost, dtype=float)
    tank, grid, fuel = (np.asarray(each, dtype=float) for each in (tank_m3, grid_kwh_per_year, fuel_l_per_year))
    bought = GRID_KWP_PER_KWH_A_YEAR * grid + FUEL_KWP_PER_L_A_YEAR * fuel
    return np.asarray(array_kwp, dtype=float) + TANK_KWP_PER_M3 * tank + bought


class Ranked(Protocol):
    """What can be ranked as an option: whether it meets the target, what it delivers and what it costs."""

    @property
    def meets_service(self) -> bool:
        """Whether it meets the target."""

    @property
    def delivered_share(self) -> float:
        """Share of the demand that it delivers."""

    @property
    def present_cost(self) -> float:
        """Present cost."""


AnyRanked = TypeVar("AnyRanked", bound=Ranked)


@dataclass(frozen=True)
class RankTerms:
    """What decides a rank, of one option or, as ranges, of all.

    Attributes
    ----------
    meets : operand
        1 where the option meets the service target, else 0.
    share : operand
        Share of the demand that it delivers.
    cost : operand
        Present cost.
    index : operand
        Its place in a given order, which decides between equals.
    """

    meets: Operand
    share: Operand
    cost: Operand
    index: Operand


def rank_of(option: RankTerms, every: RankTerms) -> Operand:
    """Rank an option: those that meet the target by present cost, then the others by what they deliver, then by cost.

    Parameters
    ----------
    option, every : RankTerms
        Of the option, and of all options together.

    Returns
    -------
    operand
        1 for the best.
    """
    cheaper = either(every.cost < option.cost, both(equals(every.cost, option.cost), every.index < option.index))
    ahead = either(every.share > option.share, both(equals(every.share, option.share), cheaper))
    return where(
        equals(option.meets, 1),
        1 + count(both(equals(every.meets, 1), cheaper)),
        1 + total(every.meets) + count(both(equals(every.meets, 0), ahead)),
    )


def ranked(meets: ArrayLike, share: ArrayLike, cost: ArrayLike, index: ArrayLike | None = None) -> list[int]:
    """Indices of options in the order of their rank.

    Parameters
    ----------
    meets, share, cost, index : array_like, (options,)
        As in `RankTerms`; by default the order of the list decides between equals.
    """
    served, shares, costs = (np.asarray(values, dtype=float) for values in (meets, share, cost))
    indices = np.arange(served.size) if index is None else np.asarray(index, dtype=float)
    every = RankTerms(served, shares, costs, indices)
    ranks = [float(rank_of(RankTerms(*option), every)) for option in zip(served, shares, costs, indices, strict=True)]
    return [int(index) for index in np.argsort(ranks, kind="stable")]


def best_first(options: Sequence[AnyRanked]) -> list[AnyRanked]:
    """Order options by their rank."""
    columns = (
        [getattr(each, name) for each in options] for name in ("meets_service", "delivered_share", "present_cost")
    )
    return [options[index] for index in ranked(*columns)]
