"""One top-up source in the hour loop: what it could add, its float switch, its shortest run, and what it did."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from planner.supply.daily_limit import Columns, DailyLimit

Array = NDArray[np.float64]

DAY = 24
_TINY = 1e-9


@dataclass(frozen=True)
class TopUpSeries:
    """What one top-up source could add, hour by hour, to the columns it serves.

    Attributes
    ----------
    columns : slice or ndarray of int
        The columns it serves, each once; a slice, which is faster, where they stand side by side.
    extra_m3 : ndarray, (hours, columns served)
        Water it could add to the sun's in the hour, availability included [m³].
    hours_per_m3 : ndarray, (hours, columns served)
        Running time per m³ added [h/m³].
    kwh_per_m3 : ndarray, (hours, columns served)
        Energy taken from the source per m³ added [kWh/m³].
    sun_kwh_per_m3 : ndarray, (hours, columns served)
        Change of the solar energy used per m³ added [kWh/m³]: positive where a parallel drive also uses sun too weak to
        start the pump alone, negative where a changeover drive leaves the sun aside.
    available : ndarray, (hours, columns served), optional
        Share of the hour in which it may run; needed where it has a shortest run.
    bands : ndarray of int, (hours,), optional
        Tariff band of each hour, by which its energy is split and its demand found; one band when left out.
    """

    columns: Columns
    extra_m3: Array
    hours_per_m3: Array
    kwh_per_m3: Array
    sun_kwh_per_m3: Array
    available: Array | None = None
    bands: NDArray[np.int64] | None = None

    def last(self, hours: int) -> TopUpSeries:
        """Return its last hours alone."""
        series = {
            name: value[-hours:]
            for name, value in vars(self).items()
            if name != "columns" and isinstance(value, np.ndarray)
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

    def plus(self, later: TopUpTotals) -> TopUpTotals:
        """Add what it did in other months of the same year; those in which a tariff band never holds may lack it."""
        bands = max(self.kwh.shape[1], later.kwh.shape[1])
        kwh = np.zeros((self.kwh.shape[0], bands, *self.kwh.shape[2:]))
        for part in (self.kwh, later.kwh):
            kwh[:, : part.shape[1]] += part
        return TopUpTotals(
            self.columns,
            self.added_m3 + later.added_m3,
            kwh,
            self.run_hours + later.run_hours,
            self.peak_kw + later.peak_kw,
        )


class TopUp:
    """State of one top-up source during the loop.

    Parameters
    ----------
    source : pair of TopUpSeries and FloatSwitch
        The source.
    ahead, volume : ndarray, (variants, columns)
        The loop's level at the end of the hour, which the source raises, and the tanks [m³].
    earlier : sequence of TopUp
        The sources that go first: in columns they share, this one uses what they leave of each hour.
    """

    def __init__(
        self, source: tuple[TopUpSeries, FloatSwitch], ahead: Array, volume: Array, earlier: Sequence[TopUp]
    ) -> None:
        self.series, self.switch = source
        self.columns = self.series.columns
        self.whole_ahead = ahead
        self.ahead, self.volume = ahead[:, self.columns], volume[:, self.columns]
        shape = self.ahead.shape
        self.start = np.array(np.broadcast_to(self.switch.start_m3, shape))
        self.width = np.broadcast_to(self.switch.stop_m3, shape) - self.start
        self.per_fall = np.empty((DAY, shape[1]))
        self.on, self.running, self.run_left_h = np.zeros(shape), np.zeros(shape, dtype=bool), np.zeros(shape)
        self.share, self.gap = np.empty(shape), np.empty(shape)
        self.ones, self.zeros = np.ones(shape), np.zeros(shape)  # whole arrays are faster here than numbers
        self.day_added, self.day_forced_h = np.zeros((DAY, *shape)), np.zeros((DAY, *shape))
        self.day_kwh = np.empty((DAY, *shape))
        self.earlier = [
            (first, *shared)
            for first in earlier
            if (shared := _shared(first.columns, self.columns, ahead.shape[1])) is not None
        ]
        self.left = np.empty(shape)
        self.has_minimum_run = bool(np.any(self.switch.minimum_run_h))
        self.shifts_sun = bool(np.any(self.series.sun_kwh_per_m3))
        bands = self.series.bands
        band_count = 1 if bands is None else int(bands.max()) + 1
        self.sums = TopUpTotals(
            self.columns,
            np.zeros((12, *shape)),
            np.zeros((12, band_count, *shape)),
            np.zeros((12, *shape)),
            np.zeros((12, *shape)),
        )

    def begin(self, level: Array) -> None:
        """Begin from levels alone: on where the level is not above the start level."""
        self.on = (level[:, self.columns] <= self.start).astype(float)

    def resume(self, on: Array, running: Array, run_left_h: Array) -> None:
        """Go on from the switches of another run, given over all columns."""
        self.on, self.running = on[:, self.columns].copy(), running[:, self.columns] > 0
        self.run_left_h = run_left_h[:, self.columns].copy()

    def open_day(self, day_net: Array) -> None:
        """Make ready for a day whose sun less draw is given, (24, columns)."""
        # share of the hour left when the start level is crossed on the way down = (start - ahead) / fall
        np.negative(day_net[:, self.columns], out=self.per_fall)
        np.maximum(self.per_fall, _TINY, out=self.per_fall)
        np.divide(1.0, self.per_fall, out=self.per_fall)

    def step(self, hour: int, of_day: int, limit: DailyLimit | None) -> None:
        """Work out the water added in this hour and the state of the switch after it."""
        share, gap, added, extra = self.share, self.gap, self.day_added[of_day], self.series.extra_m3[hour]
        self.ahead = self.whole_ahead[:, self.columns]
        np.subtract(self.start, self.ahead, out=share)
        np.add(share, self.width, out=gap)
        share *= self.per_fall[of_day]
        np.minimum(share, self.ones, out=share)
        np.maximum(share, self.on, out=share)
        np.multiply(share, extra, out=added)
        if self.earlier:
            self._find_left(hour, of_day, extra)
            np.minimum(added, self.left, out=added)
        if limit is not None:
            limit.hold_top_up(of_day, self.columns, self.ahead, added)
        np.minimum(added, gap, out=added)
        np.maximum(added, self.zeros, out=added)
        if self.has_minimum_run:
            self._run_on(hour, of_day, limit)
        # stays on (1) where it was wanted and has not reached its stop level, else off (0 or below)
        np.subtract(gap, added, out=gap)
        np.minimum(share, gap, out=self.on)
        np.ceil(self.on, out=self.on)
        self.whole_ahead[:, self.columns] += added
        if limit is not None:
            limit.left[:, self.columns] -= added

    def _find_left(self, hour: int, of_day: int, extra: Array) -> None:
        """Work out the water it could add in what the sources before it leave of the hour."""
        self.left.fill(1.0)
        for first, there, here in self.earlier:
            self.left[:, here] -= first.day_added[of_day][:, there] * first.series.hours_per_m3[hour, there]
        np.multiply(self.left, extra, out=self.left)

    def _run_on(self, hour: int, of_day: int, limit: DailyLimit | None) -> None:
        """Keep a started set running for its shortest run, pumping while there is room, then idling.

        A set starts in the hour in which it first adds water: where its start level is crossed outside its hours, that
        is when they begin. The end of its hours ends its run.
        """
        assert self.series.available is not None
        added, available = self.day_added[of_day], self.series.available[hour]
        starts = (added > _TINY) & ~self.running
        np.copyto(self.run_left_h, self.switch.minimum_run_h, where=starts)
        self.run_left_h *= available > 0
        forced_h = self.day_forced_h[of_day]
        np.multiply(np.where(starts, self.share, self.ones), available, out=forced_h)
        np.minimum(self.run_left_h, forced_h, out=forced_h)
        hours_per_m3 = self.series.hours_per_m3[hour]
        per_hour = np.divide(1.0, hours_per_m3, out=np.zeros_like(hours_per_m3), where=hours_per_m3 > 0)
        forced = forced_h * per_hour
        if self.earlier:
            np.minimum(forced, self.left, out=forced)
        if limit is not None:
            limit.hold_top_up(of_day, self.columns, self.ahead, forced)
        np.minimum(forced, self.volume - self.ahead, out=forced)
        np.maximum(added, forced, out=added)
        self.run_left_h -= np.maximum(added * hours_per_m3, forced_h)
        np.maximum(self.run_left_h, 0.0, out=self.run_left_h)
        self.running = (self.run_left_h > 0) | ((added > _TINY) & (added < self.gap))

    def close_day(self, day: slice, month: int, sun_shift_kwh: Array) -> None:
        """Add the day to the sums."""
        sums, series = self.sums, self.series
        sums.added_m3[month] += self.day_added.sum(axis=0)
        if self.has_minimum_run:
            ran_h = np.maximum(self.day_added * series.hours_per_m3[day][:, None, :], self.day_forced_h)
            sums.run_hours[month] += ran_h.sum(axis=0)
        else:
            sums.run_hours[month] += weighted(self.day_added, series.hours_per_m3[day])
        if self.shifts_sun:
            sun_shift_kwh[:, self.columns] += weighted(self.day_added, series.sun_kwh_per_m3[day])
        if series.bands is None:
            sums.kwh[month, 0] += weighted(self.day_added, series.kwh_per_m3[day])
            return
        kwh = np.multiply(self.day_added, series.kwh_per_m3[day][:, None, :], out=self.day_kwh)
        bands = series.bands[day]
        edges = np.flatnonzero(np.diff(bands, prepend=-1))
        for band, run_kwh in zip(bands[edges], np.add.reduceat(kwh, edges, axis=0), strict=True):
            sums.kwh[month, band] += run_kwh
        # The hour's energy falls in one run: its busiest half hour holds all of it, or half an hour at running power.
        hours_per_m3 = series.hours_per_m3[day]
        running_kw = np.divide(
            series.kwh_per_m3[day], hours_per_m3, out=np.zeros_like(hours_per_m3), where=hours_per_m3 > 0
        )
        np.multiply(kwh, 2.0, out=kwh)
        np.minimum(kwh, running_kw[:, None, :], out=kwh)
        np.maximum(sums.peak_kw[month], kwh.max(axis=0), out=sums.peak_kw[month])


def _shared(first: Columns, second: Columns, columns: int) -> tuple[Columns, Columns] | None:
    """Places, in each of two sets of columns, of the columns they share; None where they share none."""
    every = np.arange(columns)
    _, there, here = np.intersect1d(every[first], every[second], assume_unique=True, return_indices=True)
    return (side_by_side(there), side_by_side(here)) if here.size else None


def side_by_side(columns: NDArray[np.int64]) -> Columns:
    """Return a slice in place of columns that stand side by side in rising order, which is faster."""
    if columns.size and np.array_equal(columns, np.arange(columns[0], columns[0] + columns.size)):
        return slice(int(columns[0]), int(columns[-1]) + 1)
    return columns


def weighted(day: Array, weights: Array) -> Array:
    """Sum (hours, variants, columns) over the hours, each weighted by (hours, columns)."""
    result: Array = np.einsum("hvk,hk->vk", day, weights)
    return result
