"""The most that may be pumped in a day, and the sun's right of way under it."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]
Columns = slice | NDArray[np.int64]


class DailyLimit:
    """What may still be pumped today in each case.

    The sun pumps as long as anything is left. A top-up may use only what is left after the sun still to come that day,
    as a supplier who can read a weather forecast would run it; in the evening it may use all the sun has not taken. The
    day's water is the same, but users may go short of an hour before sunrise for it. Top-up is not held back where the
    limit cannot be reached any more: where room in the tank and draw until the sun's last hour together are no more
    than what is left.

    Parameters
    ----------
    limit_m3 : float or ndarray, (columns,)
        Most that may be pumped in a day [m³]; infinite where there is no limit.
    volume : ndarray, (variants, columns)
        The tanks [m³].
    """

    def __init__(self, limit_m3: float | Array, volume: Array) -> None:
        self.limit_m3 = limit_m3
        self.volume = volume
        self.left = np.empty(volume.shape)
        self.barred = np.zeros(volume.shape)
        self.bites = False

    def open_day(self, sun_m3: Array, draw_m3: Array) -> None:
        """Begin a day whose sun and draw are given, (24, columns)."""
        self.left[:] = self.limit_m3
        from_here = np.cumsum(sun_m3[::-1], axis=0)[::-1]
        self.sun_to_come = from_here - sun_m3
        by_sunset = draw_m3 * (from_here > 0)
        self.draw_to_come = np.cumsum(by_sunset[::-1], axis=0)[::-1] - by_sunset

    def hold_sun(self, sun_m3: Array, ahead: Array) -> None:
        """Take off the sun's water beyond today's allowance."""
        np.subtract(sun_m3, self.left, out=self.barred)
        np.maximum(self.barred, 0.0, out=self.barred)
        ahead -= self.barred
        self.left -= sun_m3
        self.left += self.barred
        self.bites = self.bites or bool(self.barred.any())

    def hold_top_up(self, of_day: int, columns: Columns, ahead: Array, added: Array) -> None:
        """Cut the water a top-up adds in some columns to what is left after the sun still to come."""
        left = self.left[:, columns]
        takes = self.volume[:, columns] - ahead + self.draw_to_come[of_day, columns]
        allowed = np.maximum(left - self.sun_to_come[of_day, columns] * (takes > left), 0.0)
        self.bites = self.bites or bool((added > allowed).any())
        np.minimum(added, allowed, out=added)

    def release(self, idle_m3: Array) -> None:
        """Give back what the sun was booked for but found no room, and count barred water as idle sun."""
        self.left += idle_m3
        idle_m3 += self.barred
