"""Days on which no top-up is wanted and the tank does not run dry, worked out without stepping through their hours.

Let C(h) be what a column's sun less its draw comes to from the beginning of the day to the end of hour h, and M(h) the
highest that C has been until then. Of a tank V that begins the day at level L and loses no water but over its rim, the
sun finds no room for I(h) = max(0, L + M(h) - V) until then, and the level is L + C(h) - I(h), the smaller of L + C(h)
and V + C(h) - M(h) (a sum reflected at a barrier: Skorokhod 1961). C and M are the columns' alone, so the lowest level
of the day and the last are found for every tank at once from a few numbers for each column. A day in which the lowest
level stays above every start level, and above the floor, is quiet.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from planner.supply.cells import DAY, Integers
from planner.supply.daily_limit import DailyLimit
from planner.supply.topup import TopUp

Array = NDArray[np.float64]

_TINY = 1e-9


@dataclass(frozen=True)
class Quiet:
    """One day, were it quiet: arrays (variants, columns).

    `holds` tells where it is, `end_m3` is the level at its end; `below_rim_m3` is how far the tank was from full at its
    beginning, below nil. `rise_m3` (24, series) is M, `grows` where it is more than an hour before, `of_column`
    (columns,) the series of each column.
    """

    holds: NDArray[np.bool_]
    end_m3: Array
    below_rim_m3: Array
    rise_m3: Array
    grows: NDArray[np.bool_]
    of_column: Integers

    def add_idle(self, settled: NDArray[np.bool_], kwh_per_m3: Array, idle_m3: Array, idle_kwh: Array) -> None:
        """Add the sun that found no room where the day is settled so, water and energy at `kwh_per_m3` (24, series)."""
        begins = np.where(settled, self.below_rim_m3, -np.inf)
        highest = begins.max(axis=0)
        fills = np.flatnonzero(highest + self.rise_m3[-1, self.of_column] > 0)
        if not fills.size:
            return
        begins, series = begins[:, fills], self.of_column[fills]
        rise, kwh_per_m3 = self.rise_m3[:, series], kwh_per_m3[:, series]
        before, now, kwh = np.zeros_like(begins), np.empty_like(begins), np.zeros_like(begins)
        grows = self.grows[:, series] & (rise + highest[fills] > 0)
        for hour in np.flatnonzero(grows.any(axis=1)):
            np.add(begins, rise[hour], out=now)
            np.maximum(now, 0.0, out=now)
            np.subtract(now, before, out=before)
            before *= kwh_per_m3[hour]
            kwh += before
            before, now = now, before
        idle_kwh[:, fills] += kwh
        idle_m3[:, fills] += before


class QuietDays:
    """Finds the quiet days of (variants, columns) with tanks `volume_m3`, sources `top_ups` and maybe a daily limit.

    `of_column` is the hourly series of each column, whose sun and draw are (hours, series); all that does not depend on
    the tank is found for all days at once.
    """

    def __init__(
        self,
        volume_m3: Array,
        top_ups: Sequence[TopUp],
        limit: DailyLimit | None,
        of_column: Integers,
        sun_m3: Array,
        draw_m3: Array,
    ) -> None:
        self.volume, self.top_ups, self.of_column = volume_m3, top_ups, of_column
        self.limit_m3 = None if limit is None else limit.limit_m3 - _TINY
        self.lowest = np.full(volume_m3.shape, _TINY)
        for top_up in top_ups:
            lowest = self.lowest[:, top_up.columns]
            self.lowest[:, top_up.columns] = np.maximum(lowest, top_up.start + _TINY)
        by_day = (-1, DAY, sun_m3.shape[1])
        sums = (sun_m3 - draw_m3).reshape(by_day)
        self.rise, self.grows = np.empty_like(sums), np.ones(sums.shape, dtype=bool)
        self.rise[:, 0] = sums[:, 0]
        for hour in range(1, DAY):  # several times faster than accumulating over the hours
            sums[:, hour] += sums[:, hour - 1]
            np.maximum(self.rise[:, hour - 1], sums[:, hour], out=self.rise[:, hour])
            np.greater(sums[:, hour], self.rise[:, hour - 1], out=self.grows[:, hour])
        self.fall, self.end = sums.min(axis=1), sums[:, -1].copy()
        sums -= self.rise
        self.fall_from_rim, self.end_from_rim = sums.min(axis=1), sums[:, -1].copy()
        self.sun = sun_m3.reshape(by_day).sum(axis=1)

    def of(self, day: int, level: Array) -> Quiet:
        """Look at one day from the levels at its beginning."""
        column = self.of_column
        rise, below_rim = self.rise[day], level - self.volume
        holds = level + self.fall[day][column] > self.lowest
        holds &= self.volume + self.fall_from_rim[day][column] > self.lowest
        for top_up in self.top_ups:
            holds[:, top_up.columns] &= top_up.rests
        if self.limit_m3 is not None:
            pumped = self.sun[day][column] - np.maximum(below_rim + rise[-1, column], 0.0)
            holds &= pumped < self.limit_m3
        end = np.minimum(level + self.end[day][column], self.volume + self.end_from_rim[day][column])
        return Quiet(holds, end, below_rim, rise, self.grows[day], column)
