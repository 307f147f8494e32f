"""The hour loop: sun first, then grid, then generator, into a tank that is drawn on; every case is a column.

Cases lie on two axes. Columns (last axis) differ in what is worked out hour by hour before the loop: supply option,
life year, number of strings. Variants (first axis) differ in the tank alone: its volume and the float switches. An
array of columns broadcasts against an array of variants x columns, so the hourly series are stored once however many
tanks share them.

Within an hour the water balance is resolved, not rounded. With `level` at the start of the hour and `net` = what the
sun pumps less what is drawn, the level would end at `level + net`. A top-up that is already on may add water during
the whole hour; one whose start level is crossed on the way down may add water during the rest of the hour; neither
lifts the end of the hour above its stop level. What is left above the rim is sun not used, what is missing below the
floor is shortfall.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]

_TINY = 1e-9
_DAY = 24
SHORT_DAY = 0.1
"""A day is short where more than this share of its water is missing: assumed, common practice, no source."""


@dataclass(frozen=True)
class TopUpSeries:
    """What one top-up source could add, hour by hour, to the columns it serves.

    Attributes
    ----------
    columns : slice
        The columns it serves, side by side.
    extra_m3 : ndarray, (hours, columns served)
        Water it could add to the sun's in the hour, availability included [m³].
    hours_per_m3 : ndarray, (hours, columns served)
        Running time per m³ added [h/m³].
    kwh_per_m3 : ndarray, (hours, columns served)
        Energy taken from the source per m³ added [kWh/m³].
    sun_kwh_per_m3 : ndarray, (hours, columns served)
        Change of the solar energy used per m³ added [kWh/m³]: positive where a blending drive also uses sun too weak to
        start the pump alone, negative where a changeover drive leaves the sun aside.
    """

    columns: slice
    extra_m3: Array
    hours_per_m3: Array
    kwh_per_m3: Array
    sun_kwh_per_m3: Array


@dataclass(frozen=True)
class FloatSwitch:
    """Levels at which a top-up source starts and stops, (variants, columns served) [m³], and its shortest run [h]."""

    start_m3: Array
    stop_m3: Array
    minimum_run_h: float = 0.0


@dataclass(frozen=True)
class TopUpTotals:
    """What one top-up source did in the columns it serves, by month.

    `added_m3`, `run_hours` and `peak_kw` (highest half-hourly demand) are (months, variants, columns served), `kwh` is
    (months, bands, variants, columns served).
    """

    columns: slice
    added_m3: Array
    kwh: Array
    run_hours: Array
    peak_kw: Array


@dataclass(frozen=True)
class Totals:
    """What came of the year, by month: each array (months, variants, columns) unless said otherwise.

    `shortfall_m3` is demand not met, `idle_m3` and `idle_kwh` the sun's pumping that found no room, `sun_shift_kwh` the
    change of solar energy used through top-up. `grid` and `generator` hold what those sources did in the columns they
    serve, or None. `start_m3` and `end_m3` (variants, columns) are the tank's first and last levels,
    `longest_short_days` (variants, columns) the longest run of short days.
    """

    shortfall_m3: Array
    idle_m3: Array
    idle_kwh: Array
    sun_shift_kwh: Array
    grid: TopUpTotals | None
    generator: TopUpTotals | None
    start_m3: Array
    end_m3: Array
    longest_short_days: Array


@dataclass(frozen=True)
class Trace:
    """Hour-by-hour record, each array (hours, variants, columns): level at the end of the hour and flows [m³]."""

    level_m3: Array
    shortfall_m3: Array
    idle_m3: Array
    grid_m3: Array
    generator_m3: Array

    def keep(self, day: slice, short: Array, idle: Array, slots: list[_Slot], has_grid: bool) -> None:
        """Copy one day's flows from the loop's buffers."""
        self.shortfall_m3[day], self.idle_m3[day] = short, idle
        for index, slot in enumerate(slots):
            flows = self.grid_m3 if index == 0 and has_grid else self.generator_m3
            flows[day, :, slot.columns] = slot.day_added


def run_hours(
    sun_m3: Array,
    draw_m3: Array,
    sun_kwh_per_m3: Array,
    volume_m3: Array,
    start_m3: Array,
    months: NDArray[np.int64],
    *,
    grid: tuple[TopUpSeries, FloatSwitch] | None = None,
    generator: tuple[TopUpSeries, FloatSwitch] | None = None,
    bands: NDArray[np.int64] | None = None,
    daily_limit_m3: float | None = None,
    trace: bool = False,
) -> tuple[Totals, Trace | None]:
    """Step once through the hours with every case at once.

    Parameters
    ----------
    sun_m3 : ndarray, (hours, columns)
        Water the sun alone would pump in each hour, were there room [m³]. Whole days of hours.
    draw_m3 : ndarray, (hours, columns)
        Water drawn from the tank [m³].
    sun_kwh_per_m3 : ndarray, (hours, columns)
        Solar energy per m³ the sun pumps [kWh/m³].
    volume_m3, start_m3 : ndarray, (variants, columns) or (variants, 1)
        Tank volume and level at the first hour [m³].
    months : ndarray of int, (hours,)
        Month of each hour, 0 to 11; the same throughout a day.
    grid, generator : pair of TopUpSeries and FloatSwitch, optional
        The top-up sources. Where a column has both, the generator may use only the part of the hour the grid leaves.
    bands : ndarray of int, (hours,), optional
        Tariff band of each hour, by which the grid's energy is split; one band when left out.
    daily_limit_m3 : float, optional
        Most that may be pumped in a day [m³].
    trace : bool
        Also return the hour-by-hour record.

    Returns
    -------
    Totals, Trace or None

    Notes
    -----
    Nothing is created or lost: in every column, end level - start level = sun - idle + grid + generator - (draw -
    shortfall), to rounding.
    """
    hours, columns = sun_m3.shape
    shape = (volume_m3.shape[0], columns)
    volume = np.array(np.broadcast_to(volume_m3, shape))
    level = np.array(np.broadcast_to(start_m3, shape))
    first = level.copy()
    ahead, spare = np.empty(shape), np.empty(shape)
    day_net = np.empty((_DAY, columns))
    day_short, day_idle = np.empty((_DAY, *shape)), np.empty((_DAY, *shape))
    sums = {name: np.zeros((12, *shape)) for name in ("shortfall_m3", "idle_m3", "idle_kwh", "sun_shift_kwh")}
    slots = [
        _Slot(source, day_net, level, ahead, volume, bands if source is grid else None)
        for source in (grid, generator)
        if source is not None
    ]
    if grid is not None and generator is not None:
        slots[1].after(slots[0])
    limit = _DailyLimit(daily_limit_m3, shape) if daily_limit_m3 is not None else None
    short_days = _ShortDays(draw_m3, shape)
    record = Trace(*(np.zeros((hours, *shape)) for _ in range(5))) if trace else None

    for hour in range(hours):
        of_day = hour % _DAY
        if of_day == 0:
            np.subtract(sun_m3[hour : hour + _DAY], draw_m3[hour : hour + _DAY], out=day_net)
            for slot in slots:
                slot.open_day()
        np.add(level, day_net[of_day], out=ahead)
        if limit is not None:
            limit.hold_sun(of_day, sun_m3[hour], ahead)
        for slot in slots:
            slot.step(hour, of_day, limit)
        short, idle = day_short[of_day], day_idle[of_day]
        np.minimum(ahead, volume, out=spare)
        np.maximum(spare, 0.0, out=level)
        np.subtract(level, spare, out=short)
        np.subtract(ahead, spare, out=idle)
        if limit is not None:
            limit.release(idle)
        if record is not None:
            record.level_m3[hour] = level
        if of_day == _DAY - 1:
            day = slice(hour + 1 - _DAY, hour + 1)
            month = months[hour]
            missing = day_short.sum(axis=0)
            sums["shortfall_m3"][month] += missing
            short_days.count(hour // _DAY, missing)
            sums["idle_m3"][month] += day_idle.sum(axis=0)
            sums["idle_kwh"][month] += _weighted(day_idle, sun_kwh_per_m3[day])
            for slot in slots:
                slot.close_day(day, month, sums["sun_shift_kwh"][month])
            if record is not None:
                record.keep(day, day_short, day_idle, slots, grid is not None)

    served = [slot.totals() for slot in slots]
    totals = Totals(
        **sums,
        grid=served[0] if grid is not None else None,
        generator=served[-1] if generator is not None else None,
        start_m3=first,
        end_m3=level,
        longest_short_days=short_days.longest,
    )
    return totals, record


def _weighted(day: Array, weights: Array) -> Array:
    """Sum (hours, variants, columns) over the hours, each weighted by (hours, columns)."""
    result: Array = np.einsum("hvk,hk->vk", day, weights)
    return result


class _ShortDays:
    """Runs of short days in each case."""

    def __init__(self, draw_m3: Array, shape: tuple[int, ...]) -> None:
        by_day = draw_m3.reshape(-1, _DAY, draw_m3.shape[1]).sum(axis=1)
        self.bearable_m3 = SHORT_DAY * by_day + _TINY
        self.run, self.longest = np.zeros(shape), np.zeros(shape)

    def count(self, day: int, missing_m3: Array) -> None:
        """Lengthen or end the runs with one day."""
        self.run += 1
        self.run *= missing_m3 > self.bearable_m3[day]
        np.maximum(self.longest, self.run, out=self.longest)


class _Slot:
    """State of one top-up source during the loop; `ahead` is a view of the level at the end of the hour."""

    def __init__(
        self,
        source: tuple[TopUpSeries, FloatSwitch],
        day_net: Array,
        level: Array,
        ahead: Array,
        volume: Array,
        bands: NDArray[np.int64] | None,
    ) -> None:
        self.series, self.switch = source
        self.columns = self.series.columns
        self.ahead, self.volume = ahead[:, self.columns], volume[:, self.columns]
        shape = self.ahead.shape
        self.start = np.array(np.broadcast_to(self.switch.start_m3, shape))
        self.width = np.broadcast_to(self.switch.stop_m3, shape) - self.start
        self.day_net = day_net[:, self.columns]
        self.per_fall = np.empty(self.day_net.shape)
        self.on = (level[:, self.columns] <= self.start).astype(float)
        self.share, self.gap = np.empty(shape), np.empty(shape)
        self.ones, self.zeros = np.ones(shape), np.zeros(shape)  # whole arrays are faster here than numbers
        self.day_added, self.day_forced_h = np.zeros((_DAY, *shape)), np.zeros((_DAY, *shape))
        self.day_kwh = np.empty((_DAY, *shape))
        self.run_left_h = np.zeros(shape)
        self.first: _Slot | None = None
        self.shifts_sun = bool(np.any(self.series.sun_kwh_per_m3))
        self.bands = bands
        band_count = 1 if bands is None else int(bands.max()) + 1
        self.sums = TopUpTotals(
            self.columns,
            np.zeros((12, *shape)),
            np.zeros((12, band_count, *shape)),
            np.zeros((12, *shape)),
            np.zeros((12, *shape)),
        )

    def after(self, first: _Slot) -> None:
        """Let this source use only what another leaves of each hour, in the columns that have both."""
        begin, end = max(first.columns.start, self.columns.start), min(first.columns.stop, self.columns.stop)
        if begin < end:
            self.first = first
            self.shared_here = slice(begin - self.columns.start, end - self.columns.start)
            self.shared_first = slice(begin - first.columns.start, end - first.columns.start)
            self.left = np.empty((self.ahead.shape[0], end - begin))

    def open_day(self) -> None:
        """Make ready for a day whose net flow stands in the loop's buffer."""
        # share of the hour left when the start level is crossed on the way down = (start - ahead) / fall
        np.negative(self.day_net, out=self.per_fall)
        np.maximum(self.per_fall, _TINY, out=self.per_fall)
        np.divide(1.0, self.per_fall, out=self.per_fall)

    def step(self, hour: int, of_day: int, limit: _DailyLimit | None) -> None:
        """Work out the water added in this hour and the state of the switch after it."""
        share, gap, added, extra = self.share, self.gap, self.day_added[of_day], self.series.extra_m3[hour]
        np.subtract(self.start, self.ahead, out=share)
        np.add(share, self.width, out=gap)
        share *= self.per_fall[of_day]
        np.minimum(share, self.ones, out=share)
        starts = (share > 0) & (self.on <= 0) & (extra > 0) if self.switch.minimum_run_h else None
        np.maximum(share, self.on, out=share)
        np.multiply(share, extra, out=added)
        if self.first is not None:
            self._leave_to_first(hour, of_day, added, extra)
        if limit is not None:
            np.minimum(added, limit.left[:, self.columns], out=added)
        np.minimum(added, gap, out=added)
        np.maximum(added, self.zeros, out=added)
        # stays on (1) where it was wanted and has not reached its stop level, else off (0 or below)
        np.subtract(gap, added, out=gap)
        np.minimum(share, gap, out=self.on)
        np.ceil(self.on, out=self.on)
        if starts is not None:
            self._run_on(hour, of_day, starts, limit)
        self.ahead += added
        if limit is not None:
            limit.left[:, self.columns] -= added

    def _leave_to_first(self, hour: int, of_day: int, added: Array, extra: Array) -> None:
        assert self.first is not None
        np.multiply(
            self.first.day_added[of_day][:, self.shared_first],
            self.first.series.hours_per_m3[hour, self.shared_first],
            out=self.left,
        )
        np.subtract(1.0, self.left, out=self.left)
        np.multiply(self.left, extra[self.shared_here], out=self.left)
        shared = added[:, self.shared_here]
        np.minimum(shared, self.left, out=shared)

    def _run_on(self, hour: int, of_day: int, starts: NDArray[np.bool_], limit: _DailyLimit | None) -> None:
        """Keep a started set running for its shortest run, pumping while there is room, then idling."""
        added, extra, hours_per_m3 = (
            self.day_added[of_day],
            self.series.extra_m3[hour],
            self.series.hours_per_m3[hour],
        )
        self.run_left_h[starts] = self.switch.minimum_run_h
        forced_h = self.day_forced_h[of_day]
        np.minimum(self.run_left_h, extra * hours_per_m3, out=forced_h)
        room = np.maximum(self.volume - self.ahead, 0.0)
        if limit is not None:
            room = np.minimum(room, limit.left[:, self.columns])
        per_hour = np.divide(1.0, hours_per_m3, out=np.zeros_like(hours_per_m3), where=hours_per_m3 > 0)
        np.maximum(added, np.minimum(forced_h * per_hour, room), out=added)
        self.run_left_h -= np.maximum(added * hours_per_m3, forced_h)
        np.maximum(self.run_left_h, 0.0, out=self.run_left_h)

    def close_day(self, day: slice, month: int, sun_shift_kwh: Array) -> None:
        """Add the day to the sums."""
        sums, series = self.sums, self.series
        sums.added_m3[month] += self.day_added.sum(axis=0)
        if self.switch.minimum_run_h:
            ran_h = np.maximum(self.day_added * series.hours_per_m3[day][:, None, :], self.day_forced_h)
            sums.run_hours[month] += ran_h.sum(axis=0)
        else:
            sums.run_hours[month] += _weighted(self.day_added, series.hours_per_m3[day])
        if self.shifts_sun:
            sun_shift_kwh[:, self.columns] += _weighted(self.day_added, series.sun_kwh_per_m3[day])
        if self.bands is None:
            sums.kwh[month, 0] += _weighted(self.day_added, series.kwh_per_m3[day])
            return
        kwh = np.multiply(self.day_added, series.kwh_per_m3[day][:, None, :], out=self.day_kwh)
        bands = self.bands[day]
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

    def totals(self) -> TopUpTotals:
        """Return the sums."""
        return self.sums


class _DailyLimit:
    """What may still be pumped today in each case."""

    def __init__(self, limit_m3: float, shape: tuple[int, ...]) -> None:
        self.limit_m3 = limit_m3
        self.left = np.full(shape, limit_m3)
        self.barred = np.zeros(shape)

    def hold_sun(self, of_day: int, sun_m3: Array, ahead: Array) -> None:
        """Take off the sun's water beyond today's allowance."""
        if of_day == 0:
            self.left.fill(self.limit_m3)
        np.subtract(sun_m3, self.left, out=self.barred)
        np.maximum(self.barred, 0.0, out=self.barred)
        ahead -= self.barred
        self.left -= sun_m3
        self.left += self.barred

    def release(self, idle_m3: Array) -> None:
        """Give back what the sun was booked for but found no room, and count barred water as idle sun."""
        self.left += idle_m3
        idle_m3 += self.barred
