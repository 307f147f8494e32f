"""One top-up source in the hour loop: what it could add, its float switch, its shortest run, and what it did."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from planner.supply.cells import DAY, Cells, Columns, Integers, hours_with_some, over_day, side_by_side
from planner.supply.daily_limit import DailyLimit, OpenDay

Array = NDArray[np.float64]

_TINY = 1e-9


@dataclass(frozen=True)
class TopUpSeries:
    """What one top-up source could add, hour by hour, to the columns it serves.

    Attributes
    ----------
    columns : slice or ndarray of int
        The columns it serves, each once; a slice, which is faster, where they stand side by side.
    extra_m3 : ndarray, (hours, series)
        Water it could add to the sun's in the hour, availability included [m³].
    hours_per_m3 : ndarray, (hours, series)
        Running time per m³ added [h/m³].
    kwh_per_m3 : ndarray, (hours, series)
        Energy taken from the source per m³ added [kWh/m³].
    sun_kwh_per_m3 : ndarray, (hours, series)
        Change of the solar energy used per m³ added [kWh/m³]: positive where a parallel drive also uses sun too weak to
        start the pump alone, negative where a changeover drive leaves the sun aside.
    available : ndarray, (hours, series), optional
        Share of the hour in which it may run; needed where it has a shortest run.
    bands : ndarray of int, (hours,), optional
        Tariff band of each hour, by which its energy is split and its demand found; one band when left out.
    of_column : ndarray of int, (columns served,), optional
        The series that holds in each of the columns; each has its own when left out.
    """

    columns: Columns
    extra_m3: Array
    hours_per_m3: Array
    kwh_per_m3: Array
    sun_kwh_per_m3: Array
    available: Array | None = None
    bands: NDArray[np.int64] | None = None
    of_column: Integers | None = None

    def last(self, hours: int) -> TopUpSeries:
        """Return its last hours alone."""
        series = {
            name: value[-hours:]
            for name, value in vars(self).items()
            if name not in ("columns", "of_column") and isinstance(value, np.ndarray)
        }
        return replace(self, **series)


@dataclass(frozen=True)
class FloatSwitch:
    """When a top-up source runs.

    `start_m3` and `stop_m3` (variants, columns served) are the levels at which it starts and stops [m³],
    `minimum_run_h` its shortest run, one for all or (columns served,) [h].
    """

    start_m3: Array
    stop_m3: Array
    minimum_run_h: float | Array = 0.0


@dataclass(frozen=True)
class TopUpTotals:
    """What one top-up source did in the columns it serves, by month.

    `added_m3`, `run_hours` and `peak_kw` (highest half-hourly demand) are (months, variants, columns served), `kwh` is
    (months, bands, variants, columns served).
    """

    columns: Columns
    added_m3: Array
    kwh: Array
    run_hours: Array
    peak_kw: Array

    @staticmethod
    def joined(parts: Sequence[TopUpTotals]) -> TopUpTotals:
        """Put other months one after another; those in which a tariff band never holds may lack it."""
        bands = max(part.kwh.shape[1] for part in parts)
        kwh = [np.pad(p.kwh, ((0, 0), (0, bands - p.kwh.shape[1]), (0, 0), (0, 0))) for p in parts]
        names = ("added_m3", "run_hours", "peak_kw")
        whole = {name: np.concatenate([getattr(part, name) for part in parts]) for name in names}
        return TopUpTotals(columns=parts[0].columns, kwh=np.concatenate(kwh), **whole)


class TopUp:
    """State of one top-up source during the loop, and its day in the cells that are stepped through.

    `here` are the places, among today's cells, of those that it serves; `added` (24, cells served) is what it adds.

    Parameters
    ----------
    series, switch : TopUpSeries, FloatSwitch
        The source.
    shape : (int, int)
        Variants and columns.
    month_count : int
        Number of months in the totals.
    earlier : sequence of TopUp
        The sources that go first: in cells they share, this one uses what they leave of each hour.
    """

    def __init__(
        self,
        series: TopUpSeries,
        switch: FloatSwitch,
        shape: tuple[int, int],
        month_count: int,
        earlier: Sequence[TopUp],
    ) -> None:
        self.series, self.columns, self.earlier = series, series.columns, tuple(earlier)
        served = np.arange(shape[1])[self.columns]
        self.place_of = np.full(shape[1], -1)
        self.place_of[served] = np.arange(served.size)
        self.of_column = np.arange(served.size) if series.of_column is None else series.of_column
        shape = shape[0], served.size
        self.start = np.array(np.broadcast_to(switch.start_m3, shape), order="C")
        self.width = np.subtract(switch.stop_m3, self.start, order="C")
        self.minimum_run_h = np.broadcast_to(switch.minimum_run_h, served.size)
        self.on, self.running, self.run_left_h = np.zeros(shape), np.zeros(shape, dtype=bool), np.zeros(shape)
        self.has_minimum_run = bool(np.any(switch.minimum_run_h))
        self.shifts_sun = bool(np.any(series.sun_kwh_per_m3))
        band_count = 1 if series.bands is None else int(series.bands.max()) + 1
        self.sums = TopUpTotals(
            self.columns,
            np.zeros((month_count, *shape)),
            np.zeros((month_count, band_count, *shape)),
            np.zeros((month_count, *shape)),
            np.zeros((month_count, *shape)),
        )

    def begin(self, level: Array) -> None:
        """Begin from levels alone: on where the level is not above the start level."""
        self.on[:] = level[:, self.columns] <= self.start

    def resume(self, on: Array, running: Array, run_left_h: Array) -> None:
        """Go on from the switches of another run, given over all columns."""
        self.on[:], self.run_left_h[:] = on[:, self.columns], run_left_h[:, self.columns]
        self.running[:] = running[:, self.columns] > 0

    @property
    def rests(self) -> NDArray[np.bool_]:
        """Where it is neither wanted nor running, (variants, columns served)."""
        rests: NDArray[np.bool_] = (self.on <= 0) & (self.run_left_h <= 0) & ~self.running
        return rests

    def open_day(self, day: slice, cells: Cells, step: OpenDay) -> None:
        """Take its seat in a day of some cells."""
        place = self.place_of[cells.column]
        here = np.flatnonzero(place >= 0)
        self.serves = here.size > 0
        self.here = side_by_side(here)
        variant, place = cells.variant[here], place[here]
        self.cells = Cells(variant, place, variant * self.on.shape[1] + place, self.of_column[place])
        self.column = cells.column[here]
        if not self.serves:
            return
        self.ahead_of_all = step.ahead
        self.volume = step.volume[self.here]
        own = self.cells.place
        self.day_start = self.start.reshape(-1)[own]
        self.day_on, self.day_running = self.on.reshape(-1)[own], self.running.reshape(-1)[own].astype(float)
        self.day_left_h = self.run_left_h.reshape(-1)[own]
        self.extra = self.cells.of(self.series.extra_m3[day])
        self.hours_per_m3 = self.cells.of(self.series.hours_per_m3[day])
        # share of the hour left when the start level is crossed on the way down = (start - ahead) / fall
        self.day_width = self.width.reshape(-1)[own]
        fills = self.day_start + self.day_width
        if self.has_minimum_run:
            self.shortest_h = self.minimum_run_h[self.cells.column]
            fills = np.where(self.shortest_h > 0, self.volume, fills)
        step.top_up_level[self.here] = np.maximum(step.top_up_level[self.here], fills)
        step.top_up_m3[self.here] += over_day(self.extra)
        self.per_fall = -step.net[:, self.here]
        np.maximum(self.per_fall, _TINY, out=self.per_fall)
        np.divide(1.0, self.per_fall, out=self.per_fall)
        self.added = np.zeros_like(self.extra)
        self.share, self.gap, self.left = (np.empty_like(self.day_start) for _ in range(3))
        self.ones, self.zeros = np.ones_like(self.gap), np.zeros_like(self.gap)  # faster here than numbers
        self.shared = [
            (first, *shared) for first in self.earlier if (shared := _shared(first.here, self.here, cells.count))
        ]
        can_add = self.extra
        if self.has_minimum_run:
            assert self.series.available is not None
            self.available = can_add = self.cells.of(self.series.available[day])
            self.permitted = (self.available > 0).astype(float)
            self.per_hour = np.zeros_like(self.extra)
            np.divide(1.0, self.hours_per_m3, out=self.per_hour, where=self.hours_per_m3 > 0)
            self.forced_h, self.forced = np.zeros_like(self.extra), np.empty_like(self.gap)
        self.can_add = hours_with_some(can_add)

    def step(self, hour: int, limit: DailyLimit | None) -> None:
        """Work out the water added in this hour and the state of the switch after it."""
        share, gap = self.share, self.gap
        self.ahead = self.ahead_of_all[self.here]
        np.subtract(self.day_start, self.ahead, out=share)
        np.add(share, self.day_width, out=gap)
        share *= self.per_fall[hour]
        np.minimum(share, self.ones, out=share)
        np.maximum(share, self.day_on, out=share)
        if self.can_add[hour]:
            self._add(hour, limit)
        elif self.has_minimum_run:
            self.day_left_h.fill(0.0)
            self.day_running.fill(0.0)
        # stays on (1) where it was wanted and has not reached its stop level, else off (0 or below)
        np.minimum(share, gap, out=self.day_on)
        np.ceil(self.day_on, out=self.day_on)

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
        self.ahead_of_all[self.here] += added
        if limit is not None:
            limit.left[self.here] -= added

    def _find_left(self, hour: int, extra: Array) -> None:
        """Work out the water it could add in what the sources before it leave of the hour."""
        self.left.fill(1.0)
        for first, there, here in self.shared:
            self.left[here] -= first.added[hour, there] * first.hours_per_m3[hour, there]
        np.multiply(self.left, extra, out=self.left)

    def _run_on(self, hour: int, allowed: Array | None) -> None:
        """Keep a started set running for its shortest run, pumping while there is room, then idling.

        A set starts in the hour in which it first adds water: where its start level is crossed outside its hours, that
        is when they begin. The end of its hours ends its run.
        """
        added, left_h, running = self.added[hour], self.day_left_h, self.day_running
        forced_h, forced = self.forced_h[hour], self.forced
        np.multiply(self.shortest_h, added > _TINY, out=forced)
        forced *= 1 - running
        np.maximum(left_h, forced, out=left_h)  # that of a set which starts is nil
        left_h *= self.permitted[hour]
        np.maximum(self.share, running, out=forced_h)
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
        np.copyto(running, (left_h > self.zeros) | ((added > _TINY) & (added < self.gap)))

    def close_day(self, day: slice, month: int, sun_shift_kwh: Array) -> None:
        """Add the day to the sums and leave its seat."""
        if not self.serves:
            return
        sums, series, cells = self.sums, self.series, self.cells
        for whole, own in (
            (self.on, self.day_on), (self.running, self.day_running), (self.run_left_h, self.day_left_h)
        ):  # fmt: skip
            whole.reshape(-1)[cells.place] = own
        cells.add(sums.added_m3[month], over_day(self.added))
        hours = self.added * self.hours_per_m3
        if self.has_minimum_run:
            np.maximum(hours, self.forced_h, out=hours)
        cells.add(sums.run_hours[month], over_day(hours))
        if self.shifts_sun:
            shift = over_day(self.added * cells.of(series.sun_kwh_per_m3[day]))
            sun_shift_kwh[cells.variant, self.column] += shift
        kwh_per_m3 = cells.of(series.kwh_per_m3[day])
        kwh = np.multiply(self.added, kwh_per_m3, out=hours)
        if series.bands is None:
            cells.add(sums.kwh[month, 0], over_day(kwh))
            return
        bands = series.bands[day]
        edges = np.flatnonzero(np.diff(bands, prepend=-1))
        for begin, end in zip(edges, [*edges[1:], DAY], strict=True):
            cells.add(sums.kwh[month, bands[begin]], over_day(kwh[begin:end]))
        # The hour's energy falls in one run: its busiest half hour holds all of it, or half an hour at running power.
        running_kw = np.divide(kwh_per_m3, self.hours_per_m3, out=kwh_per_m3, where=self.hours_per_m3 > 0)
        np.multiply(kwh, 2.0, out=kwh)
        np.minimum(kwh, running_kw, out=kwh)
        peak = sums.peak_kw[month].reshape(-1)
        peak[cells.place] = np.maximum(peak[cells.place], kwh.max(axis=0))


def _shared(first: Columns, second: Columns, count: int) -> tuple[Columns, Columns] | None:
    """Places, in each of two sets among so many cells, of the cells they share; None where they share none."""
    place = np.full(count, -1)
    place[first] = np.arange(place[first].size)
    there = place[second]
    here = np.flatnonzero(there >= 0)
    return (side_by_side(there[here]), side_by_side(here)) if here.size else None
