"""The most that may be pumped in a day, and the sun's right of way under it."""

from __future__ import annotations

from typing import Protocol

import numpy as np
from numpy.typing import NDArray

from planner.supply.cells import Cells, Columns, Integers, over_day

Array = NDArray[np.float64]

_TINY = 1e-9


class OpenDay(Protocol):
    """One day of some cells: sun and draw (24, cells), the level at its beginning and the tank (cells,) [m³].

    `of_series` are sun and draw of all hourly series, (24, series), `drawn` (cells,) is the draw of the day.
    Once it is over, `level` is that at the end of each hour, `short` the shortfall and `idle` the sun's water that
    found no room, each (24, cells).
    """

    of_series: tuple[Array, Array]
    drawn: Array
    first: Array
    volume: Array
    level: Array
    short: Array
    idle: Array

    @property
    def sun(self) -> Array:
        """Sun of the cells."""

    @property
    def draw(self) -> Array:
        """Draw of the cells."""


class DailyLimit:
    """What may still be pumped today in each case.

    The sun pumps as long as anything is left. A top-up may use only what is left after the sun still to come that day,
    as a supplier who can read a weather forecast would run it; in the evening it may use all the sun has not taken. The
    day's water is the same, but users may go short of an hour before sunrise for it. Top-up is not held back where the
    limit cannot be reached any more: where room in the tank and draw until the sun's last hour together are no more
    than what is left.

    Parameters
    ----------
    limit_m3 : ndarray, (columns,)
        Most that may be pumped in a day [m³]; infinite where there is no limit.
    """

    def __init__(self, limit_m3: Array) -> None:
        self.limit_m3 = limit_m3

    def might_hold(self, cells: Cells, day: OpenDay) -> Integers:
        """Find, of a day that was worked out without the limit, the cells in which it might have held something back.

        With P the water pumped until the end of an hour, nothing is held back where P, the sun that found no room in
        the hour and, if a top-up added to it, the sun still to come are together within the limit in every hour.
        """
        limit = self.limit_m3[cells.column] - _TINY
        most = day.level[-1] - day.first + day.drawn - over_day(day.short) + over_day(day.idle)
        near = np.flatnonzero(most > limit)
        if not near.size:
            return near
        sun, draw = (cells.some(near).of(flow) for flow in day.of_series)
        idle = day.idle[:, near]
        pumped = day.level[:, near] - day.first[near] + np.cumsum(draw - day.short[:, near], axis=0)
        topped_up = np.diff(pumped, axis=0, prepend=0.0) - sun + idle > _TINY
        booked = pumped + idle + _to_come(sun) * topped_up
        return near[(booked > limit[near]).any(axis=0)]

    def open_day(self, cells: Cells, day: OpenDay) -> None:
        """Begin a day of some cells."""
        self.left = self.limit_m3[cells.column]
        self.barred, self.allowed, self.zeros = (np.zeros_like(self.left) for _ in range(3))
        self.more = np.zeros(self.left.shape, dtype=bool)
        self.sun_to_come = _to_come(day.sun)
        self.room_to_come = day.volume + _to_come(day.draw * (self.sun_to_come + day.sun > 0))

    def hold_sun(self, sun_m3: Array, ahead: Array) -> None:
        """Take off the sun's water beyond today's allowance, which is `barred`, nil or below."""
        self.left -= sun_m3
        np.minimum(self.left, self.zeros, out=self.barred)
        ahead += self.barred
        self.left -= self.barred

    def allowance(self, hour: int, here: Columns, ahead: Array) -> Array:
        """Most that a top-up may add in some cells, what is left after the sun to come; nothing where below nil."""
        left, allowed, more = self.left[here], self.allowed[here], self.more[here]
        np.subtract(self.room_to_come[hour, here], ahead, out=allowed)
        np.greater(allowed, left, out=more)
        np.multiply(self.sun_to_come[hour, here], more, out=allowed)
        np.subtract(left, allowed, out=allowed)
        return allowed

    def release(self, idle_m3: Array) -> None:
        """Give back what the sun was booked for but found no room, and count barred water as idle sun."""
        self.left += idle_m3
        idle_m3 -= self.barred


def _to_come(flow: Array) -> Array:
    """Sum what is still to come after each hour, (24, cells)."""
    result = np.zeros_like(flow)
    np.cumsum(flow[:0:-1], axis=0, out=result[-2::-1])
    return result
