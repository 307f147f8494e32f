"""The most that may be pumped in a day, and the sun's right of way under it."""

from __future__ import annotations

from typing import Protocol

import numpy as np
from numpy.typing import NDArray

from planner.supply.cells import Cells, Columns, over_day

Array = NDArray[np.float64]


class OpenDay(Protocol):
    """One day of some cells: sun and draw (24, cells), the level at its beginning and the tank (cells,) [m³].

    `top_up_level` and `top_up_m3` (cells,) are the highest level to which top-up fills and the most that it could add.
    """

    sun: Array
    draw: Array
    net: Array
    first: Array
    volume: Array
    ahead: Array
    top_up_level: Array
    top_up_m3: Array


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

    def open_day(self, cells: Cells, day: OpenDay) -> None:
        """Begin a day of some cells."""
        self.volume, self.left = day.volume, self.limit_m3[cells.column]
        self.left[self.spared(day)] = np.inf
        held = np.flatnonzero(np.isfinite(self.left))
        self.binds = held.size > 0
        if not self.binds:
            return
        self.barred, self.allowed, self.zeros = (np.zeros_like(self.left) for _ in range(3))
        self.more = np.zeros(self.left.shape, dtype=bool)
        sun, draw = day.sun[:, held], day.draw[:, held]
        sun_to_come, room_to_come = np.empty_like(sun), np.empty_like(sun)
        sun_to_come[-1], room_to_come[-1] = 0.0, day.volume[held]
        for hour in range(len(sun) - 1, 0, -1):
            np.add(sun_to_come[hour], sun[hour], out=sun_to_come[hour - 1])
            np.multiply(draw[hour], sun_to_come[hour - 1] > 0, out=room_to_come[hour - 1])
            room_to_come[hour - 1] += room_to_come[hour]
        self.sun_to_come, self.room_to_come = np.zeros_like(day.sun), np.zeros_like(day.sun)
        self.sun_to_come[:, held], self.room_to_come[:, held] = sun_to_come, room_to_come

    def spared(self, day: OpenDay) -> NDArray[np.bool_]:
        """Cells that the limit cannot hold back in a day.

        Top-up adds no more than to its highest level, nor the sun than to the rim: where even that is within the limit.
        """
        sun, draw = over_day(day.sun), over_day(day.draw)
        top_up = np.minimum(np.maximum(day.top_up_level - day.first + draw, 0.0), day.top_up_m3)
        most: Array = np.minimum(day.volume - day.first + draw, sun + top_up)
        return most <= self.left

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
