"""At which value of an input another option comes first, the works of every option held as they were chosen.

Costs and what is left to the service target are known at some values of the input; between them they are taken along
monotone cubics (Fritsch and Carlson 1980, as in `scipy.interpolate.PchipInterpolator`), which are straight lines where
two values are known: costs are straight lines of prices.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray
from scipy.interpolate import PchipInterpolator

from planner.study.varied import Varied

Array = NDArray[np.float64]

SHOWN = 3
"""So many inputs are shown, those that matter most."""
MOST_OPTIONS = 3
"""Options that are looked at where the hours run anew: the first two, and the cheapest of the others."""
_SMALL_CHANGE = 0.2
"""Change, as a share of the value, by which inputs that turn nothing are compared."""
_NOTHING_MOVES = 1e-6
"""Share by which an input must move what decides to be shown where it turns nothing."""
_STEPS = 200
"""Places looked at between the base and an end; and again between the two where the first option differs."""
_FAR = -100.0
"""What is left to the target of an option that cannot run [%]."""


@dataclass(frozen=True)
class Turn:
    """A value of an input beyond which another option comes first, or the first one does or does not meet the target.

    Attributes
    ----------
    value : float
        The value.
    first : str
        The option that comes first beyond it.
    meets : bool
        Whether that one meets the target there.
    misses : bool
        Whether the option that was first has ceased to meet it there.
    """

    value: float
    first: str
    meets: bool
    misses: bool


@dataclass(frozen=True)
class SwitchingValue:
    """What an input would have to become for the answer to turn.

    Attributes
    ----------
    varied : Varied
        The input, with its value and those between which it was tried.
    below, above : Turn or None
        The nearest turns on either side of its value; None where nothing turns there.
    moves : float
        How far a change of a fifth moves what decides: the lead in cost over the second as a share of the cost, or
        without prices the share of the demand met.
    """

    varied: Varied
    below: Turn | None
    above: Turn | None
    moves: float

    @property
    def nearest(self) -> Turn | None:
        """The turn that needs the smaller change."""
        turns = [turn for turn in (self.below, self.above) if turn is not None]
        return min(turns, key=lambda turn: abs(turn.value - self.varied.base), default=None)

    @property
    def distance(self) -> float:
        """Change that turns the answer, as a share of the value; infinite where nothing turns."""
        nearest, varied = self.nearest, self.varied
        if nearest is None:
            return np.inf
        return abs(nearest.value - varied.base) / (abs(varied.base) or varied.values[-1])


@dataclass(frozen=True)
class Course:
    """What options do at the tried values of an input: arrays (values, options), options in the order of the scenario.

    `margin` is what is left to the target (see `Tried.margin`), `share` what is delivered, `cost` the life-cycle cost.
    """

    names: tuple[str, ...]
    margin: Array
    share: Array
    cost: Array

    def known(self, base: int) -> Course:
        """Let an option miss the target by far at its cost of row `base` where it cannot run."""
        lost = ~np.isfinite(self.cost) | ~np.isfinite(self.margin)
        return replace(
            self,
            margin=np.where(lost, _FAR, self.margin),
            share=np.where(lost, 0.0, self.share),
            cost=np.where(lost, self.cost[base], self.cost),
        )


def switching_value(varied: Varied, course: Course, base: int, second: int | None, *, priced: bool) -> SwitchingValue:
    """Find where the answer turns on either side of an input's value.

    Parameters
    ----------
    varied : Varied
        The input.
    course : Course
        What options do at its values.
    base : int
        Place of the option that stands first.
    second : int or None
        Place of the one that stands second.
    priced : bool
        Whether there are prices.
    """
    at = _Between(varied, course.known(varied.values.index(varied.base)))
    sides = {
        end: at.turn(base, np.linspace(varied.base, end, _STEPS + 1)) for end in (varied.values[0], varied.values[-1])
    }
    below, above = sides[varied.values[0]], sides[varied.values[-1]]
    return SwitchingValue(varied, below, above, at.moves(base, second, priced=priced))


class _Between:
    """What options do between the tried values of an input."""

    def __init__(self, varied: Varied, course: Course) -> None:
        self.varied, self.names = varied, course.names
        self.margin, self.share, self.cost = (
            PchipInterpolator(varied.values, each, axis=0) for each in (course.margin, course.share, course.cost)
        )

    def first(self, values: Array) -> tuple[NDArray[np.int64], NDArray[np.bool_]]:
        """Option ranked first at each value, and whether it meets the target; see `ranking.rank_of`."""
        meets = self.margin(values) >= -1e-7
        cheapest = np.where(meets, self.cost(values), np.inf).argmin(axis=1)
        served = meets.any(axis=1)
        return np.where(served, cheapest, self.share(values).argmax(axis=1)), served

    def turn(self, base: int, values: Array) -> Turn | None:
        """The first turn on the way from the base to an end; None where nothing turns."""
        if values[0] == values[-1]:
            return None
        for _ in range(2):  # the second time between the two values between which it turns
            option, served = self.first(values)
            turned = np.flatnonzero((option != option[0]) | (served != served[0]))
            if turned.size == 0:
                return None
            index = int(turned[0])
            found = float(values[index]), int(option[index]), bool(served[index])
            values = np.linspace(values[index - 1], values[index], _STEPS + 1)
        value, option_there, meets = found
        misses = bool(self.margin(self.varied.base)[base] >= -1e-7 and self.margin(value)[base] < -1e-7)
        return Turn(value, self.names[option_there], meets, misses)

    def moves(self, base: int, second: int | None, *, priced: bool) -> float:
        """See `SwitchingValue.moves`."""
        varied = self.varied
        change = _SMALL_CHANGE * (abs(varied.base) or varied.values[-1])
        ends = np.clip([varied.base - change, varied.base, varied.base + change], varied.values[0], varied.values[-1])
        if not priced:
            share = self.share(ends)[:, base]
            return float(np.abs(share - share[1]).max())
        if second is None:
            return 0.0
        cost = self.cost(ends)
        lead = (cost[:, second] - cost[:, base]) / cost[1, base]
        return float(np.abs(lead - lead[1]).max())


def matter_most(found: Sequence[SwitchingValue]) -> tuple[SwitchingValue, ...]:
    """Pick the inputs that turn the answer by the smallest change, then those that move most what decides."""
    moved = [each for each in found if each.nearest is not None or each.moves > _NOTHING_MOVES]
    order = sorted(moved, key=lambda each: (each.distance, -each.moves))
    return tuple(order[:SHOWN])


__all__ = ["MOST_OPTIONS", "Course", "SwitchingValue", "Turn", "matter_most", "switching_value"]
