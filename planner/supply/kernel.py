"""The hour loop: sun first, then the top-up sources in turn, into a tank that is drawn on; every case is a column.

Cases lie on two axes. Columns (last axis) differ in what is worked out hour by hour before the loop: supply option,
life year, number of strings. Variants (first axis) differ in the tank alone: its volume and the float switches. An
array of columns broadcasts against an array of variants x columns, so the hourly series are stored once however many
tanks share them.

Columns that share their hourly series name the same one, so that a series is held and looked at once.

Within an hour the water balance is resolved, not rounded. With `level` at the start of the hour and `net` = what the
sun pumps less what is drawn, the level would end at `level + net`. A top-up that is already on may add water during
the whole hour; one whose start level is crossed on the way down may add water during the rest of the hour; neither
lifts the end of the hour above its stop level. What is left above the rim is sun not used, what is missing below the
floor is shortfall.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, fields
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from planner.supply.cells import DAY, Cells, Integers, hours_with_some, over_day
from planner.supply.daily_limit import DailyLimit
from planner.supply.quiet import QuietDays
from planner.supply.topup import FloatSwitch, TopUp, TopUpSeries, TopUpTotals
from planner.supply.topup_day import TopUpDay

Array = NDArray[np.float64]

_TINY = 1e-9
SHORT_DAY = 0.1
"""A day is short where more than this share of its water is missing: assumed, common practice, no source."""


@dataclass(frozen=True)
class State:
    """What one run hands to the next: all that the hours to come depend on.

    `level_m3` (variants, columns) is the tank's level and `short_days` the run of short days it stands in; `on`,
    `running` and `run_left_h` (sources, variants, columns) whether a top-up source is wanted, whether it runs, and what
    is left of its shortest run [h].
    """

    level_m3: Array
    short_days: Array
    on: Array
    running: Array
    run_left_h: Array

    def taken(self, columns: NDArray[np.int64]) -> State:
        """Return the state of other columns: column k becomes that of `columns[k]`."""
        return State(*(getattr(self, field.name)[..., columns] for field in fields(self)))


@dataclass(frozen=True)
class Totals:
    """What came of the year, by month: each array (months, variants, columns) unless said otherwise.

    `shortfall_m3` is demand not met, `idle_m3` and `idle_kwh` the sun's pumping that found no room, `sun_shift_kwh` the
    change of solar energy used through top-up. `top_ups` hold what each top-up source did in the columns it serves,
    in their order. `short_days` is the number of short days, `short_days_shortfall_m3` what users miss on them (all of
    the shortfall where their share of the draw was not given). `users_shortfall_m3` is the part of the shortfall that
    users miss, None where their share was not given. `days` is how many days were run. `start_m3` (variants, columns)
    is the tank's first level, `end` the state after the last hour, `longest_short_days` (variants, columns) the longest
    run of short days, `first_short_days` (variants, columns) the run that the hours begin with, without any before.
    """

    shortfall_m3: Array
    users_shortfall_m3: Array | None
    idle_m3: Array
    idle_kwh: Array
    sun_shift_kwh: Array
    top_ups: tuple[TopUpTotals, ...]
    start_m3: Array
    end: State
    short_days: Array
    short_days_shortfall_m3: Array
    longest_short_days: Array
    first_short_days: Array
    days: int

    @staticmethod
    def joined(parts: Sequence[Totals]) -> Totals:
        """Put parts of a year one after another, each run on from the end of the one before."""
        names = ("shortfall_m3", "idle_m3", "idle_kwh", "sun_shift_kwh", "short_days", "short_days_shortfall_m3")
        users = [part.users_shortfall_m3 for part in parts if part.users_shortfall_m3 is not None]
        days, first_short_days = 0, np.zeros_like(parts[0].first_short_days)
        for part in parts:
            first_short_days += (first_short_days == days) * part.first_short_days
            days += part.days
        return Totals(
            **{name: np.concatenate([getattr(part, name) for part in parts]) for name in names},
            users_shortfall_m3=np.concatenate(users) if len(users) == len(parts) else None,
            top_ups=tuple(TopUpTotals.joined(of_source) for of_source in zip(*(p.top_ups for p in parts), strict=True)),
            start_m3=parts[0].start_m3,
            end=parts[-1].end,
            longest_short_days=np.max([part.longest_short_days for part in parts], axis=0),
            first_short_days=first_short_days,
            days=days,
        )

    @property
    def end_m3(self) -> Array:
        """Level of the tank after the last hour, (variants, columns) [m³]."""
        return self.end.level_m3


@dataclass(frozen=True)
class Trace:
    """Hour-by-hour record, (hours, variants, columns): level at the end of the hour and flows [m³].

    `top_up_m3` is (sources, hours, variants, columns).
    """

    level_m3: Array
    shortfall_m3: Array
    idle_m3: Array
    top_up_m3: Array

    @staticmethod
    def joined(parts: Sequence[Trace]) -> Trace:
        """Put the records of parts of a year one after another."""
        flows = (("level_m3", 0), ("shortfall_m3", 0), ("idle_m3", 0), ("top_up_m3", 1))
        return Trace(*(np.concatenate([getattr(part, name) for part in parts], axis=axis) for name, axis in flows))

    def keep(self, day: slice, step: _Day) -> None:
        """Copy one day's flows of all cells."""
        index = step.cells.index
        for whole, flow in ((self.level_m3, step.level), (self.shortfall_m3, step.short), (self.idle_m3, step.idle)):
            whole[day].reshape(DAY, -1)[:, index] = flow
        for source, top_up in step.top_ups.items():
            self.top_up_m3[source][day].reshape(DAY, -1)[:, index[top_up.here]] = top_up.added


def run_hours(
    sun_m3: Array,
    draw_m3: Array,
    sun_kwh_per_m3: Array,
    volume_m3: Array,
    start: Array | State,
    months: NDArray[np.int64],
    *,
    of_column: Integers | None = None,
    sources: Sequence[tuple[TopUpSeries, FloatSwitch]] = (),
    daily_limit_m3: float | Array | None = None,
    users_share: Array | None = None,
    needed: NDArray[np.bool_] | None = None,
    month_count: int = 12,
    trace: bool = False,
) -> tuple[Totals, Trace | None]:
    """Step once through the hours with every case at once.

    Parameters
    ----------
    sun_m3 : ndarray, (hours, series)
        Water the sun alone would pump in each hour, were there room [m³]. Whole days of hours.
    draw_m3 : ndarray, (hours, series)
        Water drawn from the tank [m³].
    sun_kwh_per_m3 : ndarray, (hours, series)
        Solar energy per m³ the sun pumps [kWh/m³].
    volume_m3 : ndarray, (variants, columns) or (variants, 1)
        Tank volume [m³].
    start : ndarray, (variants, columns) or (variants, 1), or State
        Level at the first hour [m³], with a top-up source on where the level is not above its start level; or the state
        that another run of the same sources ended in.
    months : ndarray of int, (hours,)
        Month of each hour, from 0; the same throughout a day.
    of_column : ndarray of int, (columns,), optional
        The series that holds in each column; each has its own when left out.
    sources : sequence of pairs of TopUpSeries and FloatSwitch
        The top-up sources, the first to serve first. Where a column has several, each may use only the part of the hour
        that those before it leave.
    daily_limit_m3 : float or ndarray, (columns,), optional
        Most that may be pumped in a day [m³]; infinite where there is no limit.
    users_share : ndarray, (hours, columns), optional
        Share of the draw that reaches users, the rest being leakage; the shortfall is then also summed for users alone.
    needed : ndarray of bool, (variants, columns), optional
        The cases to work out, all by default; what is returned of the others means nothing.
    month_count : int
        Number of months in the totals.
    trace : bool
        Also return the hour-by-hour record; every hour is then stepped through.

    Returns
    -------
    Totals, Trace or None

    Notes
    -----
    Nothing is created or lost: in every column, end level - start level = sun - idle + top-ups - (draw - shortfall),
    to rounding.
    """
    hours = sun_m3.shape[0]
    of_column = np.arange(sun_m3.shape[1]) if of_column is None else of_column
    columns = of_column.size
    shape = (volume_m3.shape[0], columns)
    volume = np.array(np.broadcast_to(volume_m3, shape), order="C")
    level = np.array(np.broadcast_to(start.level_m3 if isinstance(start, State) else start, shape), order="C")
    first = level.copy()
    needed = np.ones(shape, dtype=bool) if needed is None else needed
    sums = {name: np.zeros((month_count, *shape)) for name in ("shortfall_m3", "idle_m3", "idle_kwh", "sun_shift_kwh")}
    users_sum = None if users_share is None else np.zeros((month_count, *shape))
    top_ups: list[TopUp] = []
    for index, (series, switch) in enumerate(sources):
        top_ups.append(TopUp(series, switch, shape, month_count))
        if isinstance(start, State):
            top_ups[-1].resume(start.on[index], start.running[index], start.run_left_h[index])
        else:
            top_ups[-1].begin(level)
    limit = None if daily_limit_m3 is None else DailyLimit(np.broadcast_to(daily_limit_m3, columns))
    run = start.short_days if isinstance(start, State) else np.zeros(shape)
    short_days = _ShortDays(draw_m3, run, month_count)
    record = _blank_trace(len(top_ups), hours, shape) if trace else None
    quiet_days = QuietDays(volume, top_ups, limit, of_column, sun_m3, draw_m3)

    for begin in range(0, hours, DAY):
        day, month = slice(begin, begin + DAY), months[begin]
        sun, draw = sun_m3[day], draw_m3[day]
        quiet = quiet_days.of(begin // DAY, level)
        settled = needed & quiet.holds & (not trace)
        cells = Cells.where(needed & ~settled, of_column)
        level_then = level.reshape(-1)[cells.index]
        np.copyto(level, quiet.end_m3)
        quiet.add_idle(settled, sun_kwh_per_m3[day], sums["idle_m3"][month], sums["idle_kwh"][month])
        missing = users_missing = np.zeros(0)
        if cells.count:
            step = _Day.of(day, sun, draw, cells, level_then, volume, top_ups)
            step.run(None)
            if limit is not None and (held := limit.might_hold(cells, step)).size:
                again = _Day.of(day, sun, draw, cells.some(held), level_then[held], volume, top_ups)
                limit.open_day(again.cells, again)
                again.run(limit)
                step.replace(held, again)
            level.reshape(-1)[cells.index] = step.level[-1]
            missing = users_missing = over_day(step.short)
            cells.add(sums["shortfall_m3"][month], missing)
            if users_share is not None and users_sum is not None:
                users_missing = over_day(step.short * np.take(users_share[day], cells.column, axis=1))
                cells.add(users_sum[month], users_missing)
            cells.add(sums["idle_m3"][month], over_day(step.idle))
            cells.add(sums["idle_kwh"][month], over_day(step.idle * cells.of(sun_kwh_per_m3[day])))
            for top_up_day in step.top_ups.values():
                top_up_day.close(month, sums["sun_shift_kwh"][month])
            if record is not None:
                record.keep(day, step)
        short_days.count(begin // DAY, month, cells, missing, users_missing)

    totals = Totals(
        **sums,
        users_shortfall_m3=users_sum,
        top_ups=tuple(top_up.sums for top_up in top_ups),
        start_m3=first,
        end=State(level, short_days.run, *_switches(top_ups, shape)),
        short_days=short_days.number,
        short_days_shortfall_m3=short_days.shortfall_m3,
        longest_short_days=short_days.longest,
        first_short_days=short_days.first,
        days=hours // DAY,
    )
    return totals, record


class _Day:
    """One day of some cells, stepped through hour by hour: flows (24, cells) [m³].

    `level` is that at the end of each hour, `short` the shortfall, `idle` the sun's water that found no room; `net` is
    sun less draw, `per_fall` one over draw less sun, `drawn` (cells,) the draw of the day, `ahead` (cells,) the level
    to which the hour at work leads before rim and floor; `of_series` are sun and draw of all series. `top_ups` are the
    sources that serve any of the cells, by their place in the order.
    """

    def __init__(self, sun: Array, draw: Array, cells: Cells, level: Array, volume: Array) -> None:
        net = sun - draw  # of the series, which are fewer than the cells
        self.of_series, self.drawn = (sun, draw), over_day(draw)[cells.series]
        self.net, self.per_fall = cells.of(net), cells.of(1 / np.maximum(-net, _TINY))
        self.cells, self.first, self.volume = cells, level, volume.reshape(-1)[cells.index]
        self.ahead = np.empty_like(level)
        self.level, self.short, self.idle = (np.zeros_like(self.net) for _ in range(3))
        self.top_ups: dict[int, TopUpDay] = {}

    @staticmethod
    def of(
        day: slice, sun: Array, draw: Array, cells: Cells, level: Array, volume: Array, top_ups: Sequence[TopUp]
    ) -> _Day:
        """Begin a day of some cells, whose level is (cells,); sun and draw are of all series."""
        step = _Day(sun, draw, cells, level, volume)
        for index, top_up in enumerate(top_ups):
            seat = TopUpDay(top_up, day, cells, step, tuple(step.top_ups.values()))
            if seat.cells.count:
                step.top_ups[index] = seat
        return step

    @cached_property
    def sun(self) -> Array:
        """Water that the sun pumps, were there room [m³]."""
        return self.cells.of(self.of_series[0])

    @cached_property
    def draw(self) -> Array:
        """Water drawn [m³]."""
        return self.cells.of(self.of_series[1])

    def run(self, limit: DailyLimit | None) -> None:
        """Step through the hours."""
        volume, ahead, level = self.volume, self.ahead, self.first
        held = np.empty_like(ahead)
        working = tuple(self.top_ups.values())
        zeros = np.zeros_like(ahead)  # whole arrays are faster here than numbers
        sun = self.of_series[0]
        sun = sun[:, np.bincount(self.cells.series, minlength=sun.shape[1]) > 0]
        for hour, shines in enumerate(hours_with_some(sun)):
            np.add(level, self.net[hour], out=ahead)
            if limit is not None and shines:
                limit.hold_sun(self.sun[hour], ahead)
            for top_up in working:
                top_up.step(hour, limit)
            level, short = self.level[hour], self.short[hour]
            if not shines:  # nothing is left above the rim
                np.maximum(ahead, zeros, out=level)
                np.subtract(level, ahead, out=short)
                continue
            idle = self.idle[hour]
            np.minimum(ahead, volume, out=held)
            np.maximum(held, zeros, out=level)
            np.subtract(level, held, out=short)
            np.subtract(ahead, held, out=idle)
            if limit is not None:
                limit.release(idle)

    def replace(self, cells: Integers, other: _Day) -> None:
        """Take over what `other` did in some of the cells, which are all of its own."""
        for name in ("level", "short", "idle"):
            getattr(self, name)[:, cells] = getattr(other, name)
        for index, top_up in other.top_ups.items():
            self.top_ups[index].replace(cells, self.cells.count, top_up)


def _blank_trace(sources: int, hours: int, shape: tuple[int, ...]) -> Trace:
    level, short, idle = (np.zeros((hours, *shape)) for _ in range(3))
    return Trace(level, short, idle, np.zeros((sources, hours, *shape)))


def _switches(top_ups: Sequence[TopUp], shape: tuple[int, ...]) -> tuple[Array, Array, Array]:
    """Lay the sources' switches out over all columns, each (sources, variants, columns)."""
    result = tuple(np.zeros((len(top_ups), *shape)) for _ in range(3))
    for index, top_up in enumerate(top_ups):
        for whole, part in zip(result, (top_up.on, top_up.running, top_up.run_left_h), strict=True):
            whole[index][:, top_up.columns] = part
    on, running, run_left_h = result
    return on, running, run_left_h


class _ShortDays:
    """Short days of each case, what users miss on them, and the runs that they make."""

    def __init__(self, draw_m3: Array, run: Array, month_count: int) -> None:
        by_day = draw_m3.reshape(-1, DAY, draw_m3.shape[1]).sum(axis=1)
        self.bearable_m3 = SHORT_DAY * by_day + _TINY
        self.run, self.longest, self.first = run.copy(), np.zeros(run.shape), np.zeros(run.shape)
        self.number, self.shortfall_m3 = (np.zeros((month_count, *run.shape)) for _ in range(2))

    def count(self, day: int, month: int, cells: Cells, missing_m3: Array, users_missing_m3: Array) -> None:
        """Lengthen or end the runs with one day on which some cells miss water."""
        short = missing_m3 > self.bearable_m3[day][cells.series]
        if not short.any():
            self.run.fill(0.0)
            return
        cells.add(self.number[month], short)
        cells.add(self.shortfall_m3[month], users_missing_m3 * short)
        run = (self.run.reshape(-1)[cells.index] + 1) * short
        self.run.fill(0.0)
        self.run.reshape(-1)[cells.index] = run
        longest, first = self.longest.reshape(-1), self.first.reshape(-1)
        longest[cells.index] = np.maximum(longest[cells.index], run)
        first[cells.index] += short & (first[cells.index] == day)
