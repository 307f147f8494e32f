"""One day of a top-up source in some cells of the hour loop: hour by hour what it adds, and its switch after it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Protocol

import numpy as np
from numpy.typing import NDArray

from planner.supply.cells import DAY, Cells, Columns, Integers, over_day, side_by_side
from planner.supply.daily_limit import DailyLimit
from planner.supply.topup import TopUp

Array = NDArray[np.float64]

_TINY = 1e-9


class OpenDay(Protocol):
    """A day of some cells: tank and the level to which the hour at work leads (cells,) [m³], one over the fall.

    `per_fall` (24, cells) is the reciprocal of draw less sun [1/m³].
    """

    volume: Array
    ahead: Array
    per_fall: Array


class TopUpDay:
    """A source's day in those of some cells that it serves.

    `here` are their places among the cells; `added` (24, cells served) is what it adds.

    Parameters
    ----------
    top_up : TopUp
        The source, whose switches are read; `close` writes them and its sums.
    day : slice
        The hours.
    cells : Cells
        The cells of the day.
    step : OpenDay
        Their day.
    earlier : sequence of TopUpDay
        The sources that go first: in cells they share, this one uses what they leave of each hour.
    """

    def __init__(self, top_up: TopUp, day: slice, cells: Cells, step: OpenDay, earlier: Sequence[TopUpDay]) -> None:
        series = top_up.series
        self.top_up, self.day = top_up, day
        index = top_up.index_of[cells.column]
        self.here = side_by_side(np.flatnonzero(index >= 0))
        variant, index = cells.variant[self.here], index[self.here]
        self.cells = Cells(variant, index, variant * top_up.on.shape[1] + index, top_up.of_column[index])
        self.column = cells.column[self.here]
        # of cells that stand side by side this is a view; of others it is fetched and put back every hour
        self.ahead_of_all, self.ahead = step.ahead, step.ahead[self.here]
        self.apart = not isinstance(self.here, slice)
        flat = self.cells.index
        self.start, self.width = top_up.start.reshape(-1)[flat], top_up.width.reshape(-1)[flat]
        self.on = top_up.on.reshape(-1)[flat]
        self.extra, self.hours_per_m3 = self.cells.of(series.extra_m3[day]), self.cells.of(series.hours_per_m3[day])
        # share of the hour left when the start level is crossed on the way down = (start - ahead) / fall
        self.per_fall = step.per_fall[:, self.here]
        self.adds_in = top_up.adds_in[day]
        self.added = np.zeros_like(self.extra)
        self.share, self.gap, self.left = (np.empty_like(self.start) for _ in range(3))
        self.ones, self.zeros = np.ones_like(self.gap), np.zeros_like(self.gap)  # faster here than numbers
        self.shared = [
            (first, there, first.hours_per_m3[:, there] * self.extra[:, here], here)
            for first in earlier
            for there, here in _shared(first.here, self.here, cells.count)
        ]
        self.has_minimum_run = top_up.has_minimum_run
        if self.has_minimum_run:
            assert series.available is not None
            self.volume, self.tiny = step.volume[self.here], np.full_like(self.gap, _TINY)
            self.running = top_up.running.reshape(-1)[flat]
            self.run_left_h = top_up.run_left_h.reshape(-1)[flat]
            self.shortest_h = top_up.minimum_run_h[self.cells.column]
            available = series.available[day]
            self.available, self.per_hour = self.cells.of(available), self.cells.of(_inverse(series.hours_per_m3[day]))
            self.always_on = (available.min(axis=1) > 0).tolist()
            self.forced_h, self.forced = np.zeros_like(self.extra), np.empty_like(self.gap)
            self.adds, self.some = (np.empty(self.gap.shape, dtype=bool) for _ in range(2))

    def step(self, hour: int, limit: DailyLimit | None) -> None:
        """Work out the water added in this hour and the state of the switch after it."""
        share, gap = self.share, self.gap
        if self.apart:
            self.ahead = self.ahead_of_all[self.here]
        np.subtract(self.start, self.ahead, out=share)
        np.add(share, self.width, out=gap)
        share *= self.per_fall[hour]
        np.minimum(share, self.ones, out=share)
        np.maximum(share, self.on, out=share)
        if self.adds_in[hour]:
            self._add(hour, limit)
        elif self.has_minimum_run:
            self.run_left_h.fill(0.0)
            self.running.fill(False)
        # stays on (1) where it was wanted and has not reached its stop level, else off (0 or below)
        np.minimum(share, gap, out=self.on)
        np.ceil(self.on, out=self.on)

    def _add(self, hour: int, limit: DailyLimit | None) -> None:
        """Work out the water added, and take it off the gap to the stop level."""
        gap, added, extra = self.gap, self.added[hour], self.extra[hour]
        np.multiply(self.share, extra, out=added)
        if self.shared:
            self._find_left(hour, extra)
            np.minimum(added, self.left, out=added)
        allowed = None if limit is None else limit.allowance(hour, self.here, self.ahead)
        if allowed is not None:
            np.minimum(added, allowed, out=added)
        np.minimum(added, gap, out=added)
        np.maximum(added, self.zeros, out=added)
        if self.has_minimum_run:
            self._run_on(hour, allowed)
        np.subtract(gap, added, out=gap)
        np.add(self.ahead, added, out=self.ahead)
        if self.apart:
            self.ahead_of_all[self.here] = self.ahead
        if limit is not None:
            limit.left[self.here] -= added

    def _find_left(self, hour: int, extra: Array) -> None:
        """Work out the water it could add in what the sources before it leave of the hour."""
        np.copyto(self.left, extra)
        for first, there, lost, here in self.shared:
            self.left[here] -= first.added[hour, there] * lost[hour]

    def _run_on(self, hour: int, allowed: Array | None) -> None:
        """Keep a started set running for its shortest run, pumping while there is room, then idling.

        A set starts in the hour in which it first adds water: where its start level is crossed outside its hours, that
        is when they begin. The end of its hours ends its run.
        """
        added, left_h, running = self.added[hour], self.run_left_h, self.running
        adds, some, forced_h, forced = self.adds, self.some, self.forced_h[hour], self.forced
        np.greater(added, self.tiny, out=adds)
        np.greater(adds, running, out=some)  # those that start
        np.copyto(left_h, self.shortest_h, where=some)
        if not self.always_on[hour]:
            left_h *= self.available[hour] > 0
        np.copyto(forced_h, running)
        np.maximum(forced_h, self.share, out=forced_h)
        forced_h *= self.available[hour]
        np.minimum(left_h, forced_h, out=forced_h)
        np.multiply(forced_h, self.per_hour[hour], out=forced)
        if self.shared:
            np.minimum(forced, self.left, out=forced)
        if allowed is not None:
            np.minimum(forced, allowed, out=forced)
        np.minimum(forced, self.volume - self.ahead, out=forced)
        np.maximum(added, forced, out=added)
        np.multiply(added, self.hours_per_m3[hour], out=forced)
        np.maximum(forced, forced_h, out=forced)
        left_h -= forced
        np.maximum(left_h, self.zeros, out=left_h)
        np.greater(added, self.tiny, out=adds)
        np.less(added, self.gap, out=some)
        np.logical_and(adds, some, out=adds)
        np.greater(left_h, self.zeros, out=some)
        np.logical_or(adds, some, out=running)

    def replace(self, cells: Integers, count: int, other: TopUpDay) -> None:
        """Take over what `other` did in some of the `count` cells of the day, which are all of its own."""
        which = np.zeros(count, dtype=bool)
        which[cells] = True
        mine = np.flatnonzero(which[self.here])
        self.added[:, mine], self.on[mine] = other.added, other.on
        if self.has_minimum_run:
            self.forced_h[:, mine], self.running[mine], self.run_left_h[mine] = (
                other.forced_h,
                other.running,
                other.run_left_h,
            )

    def close(self, month: int, sun_shift_kwh: Array) -> None:
        """Leave the switches to the next day, and add to the sums of a month."""
        top_up, day, cells = self.top_up, self.day, self.cells
        sums, series = top_up.sums, top_up.series
        top_up.on.reshape(-1)[cells.index] = self.on
        if self.has_minimum_run:
            top_up.running.reshape(-1)[cells.index] = self.running
            top_up.run_left_h.reshape(-1)[cells.index] = self.run_left_h
        cells.add(sums.added_m3[month], over_day(self.added))
        hours = self.added * self.hours_per_m3
        if self.has_minimum_run:
            np.maximum(hours, self.forced_h, out=hours)
        cells.add(sums.run_hours[month], over_day(hours))
        if top_up.shifts_sun:
            shift = over_day(self.added * cells.of(series.sun_kwh_per_m3[day]))
            sun_shift_kwh[cells.variant, self.column] += shift
        kwh = np.multiply(self.added, cells.of(series.kwh_per_m3[day]), out=hours)
        if series.bands is None:
            cells.add(sums.kwh[month, 0], over_day(kwh))
            return
        bands = series.bands[day]
        edges = np.flatnonzero(np.diff(bands, prepend=-1))
        for begin, end in zip(edges, [*edges[1:], DAY], strict=True):
            cells.add(sums.kwh[month, bands[begin]], over_day(kwh[begin:end]))
        # The hour's energy falls in one run: its busiest half hour holds all of it, or half an hour at running power.
        running_kw = series.kwh_per_m3[day] * _inverse(series.hours_per_m3[day])
        np.multiply(kwh, 2.0, out=kwh)
        np.minimum(kwh, cells.of(running_kw), out=kwh)
        peak = sums.peak_kw[month].reshape(-1)
        peak[cells.index] = np.maximum(peak[cells.index], kwh.max(axis=0))


def _inverse(values: Array) -> Array:
    """One over values; nil where they are nil."""
    return np.divide(1.0, values, out=np.zeros_like(values), where=values > 0)


def _shared(first: Columns, second: Columns, count: int) -> list[tuple[Columns, Columns]]:
    """Places, in each of two sets among so many cells, of the cells they share; nothing where they share none."""
    if isinstance(first, slice) and isinstance(second, slice):
        begin, end = max(first.start, second.start), min(first.stop, second.stop)
        there, here = (slice(begin - each.start, end - each.start) for each in (first, second))
        return [(there, here)] if begin < end else []
    index = np.full(count, -1)
    index[first] = np.arange(index[first].size)
    found = index[second]
    mine = np.flatnonzero(found >= 0)
    return [(side_by_side(found[mine]), side_by_side(mine))] if mine.size else []
