"""The hour loop: sun first, then the top-up sources in turn, into a tank that is drawn on; every case is a column.

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

from collections.abc import Sequence
from dataclasses import dataclass, fields

import numpy as np
from numpy.typing import NDArray

from planner.supply.daily_limit import DailyLimit
from planner.supply.topup import DAY, FloatSwitch, TopUp, TopUpSeries, TopUpTotals, weighted

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
    in their order. `start_m3` (variants, columns) is the tank's first level, `end` the state after the last hour,
    `short_days` (variants, columns) the number of short days, `longest_short_days` the longest run of them.
    `users_shortfall_m3` is the part of the shortfall that users miss, None where their share of the draw was not given;
    `limit_reached` tells whether the daily limit held anything back.
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
    longest_short_days: Array
    limit_reached: bool

    def then(self, later: Totals) -> Totals:
        """Add what came of other months of the same year, that were run on from the end of these."""
        names = ("shortfall_m3", "idle_m3", "idle_kwh", "sun_shift_kwh", "short_days")
        users = self.users_shortfall_m3, later.users_shortfall_m3
        return Totals(
            **{name: getattr(self, name) + getattr(later, name) for name in names},
            users_shortfall_m3=None if users[0] is None or users[1] is None else users[0] + users[1],
            top_ups=tuple(one.plus(other) for one, other in zip(self.top_ups, later.top_ups, strict=True)),
            start_m3=self.start_m3,
            end=later.end,
            longest_short_days=np.maximum(self.longest_short_days, later.longest_short_days),
            limit_reached=self.limit_reached or later.limit_reached,
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

    def keep(self, day: slice, short: Array, idle: Array, top_ups: Sequence[TopUp]) -> None:
        """Copy one day's flows from the loop's buffers."""
        self.shortfall_m3[day], self.idle_m3[day] = short, idle
        for place, top_up in enumerate(top_ups):
            self.top_up_m3[place, day][..., top_up.columns] = top_up.day_added


def run_hours(
    sun_m3: Array,
    draw_m3: Array,
    sun_kwh_per_m3: Array,
    volume_m3: Array,
    start: Array | State,
    months: NDArray[np.int64],
    *,
    sources: Sequence[tuple[TopUpSeries, FloatSwitch]] = (),
    daily_limit_m3: float | Array | None = None,
    users_share: Array | None = None,
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
    volume_m3 : ndarray, (variants, columns) or (variants, 1)
        Tank volume [m³].
    start : ndarray, (variants, columns) or (variants, 1), or State
        Level at the first hour [m³], with a top-up source on where the level is not above its start level; or the state
        that another run of the same sources ended in.
    months : ndarray of int, (hours,)
        Month of each hour, 0 to 11; the same throughout a day.
    sources : sequence of pairs of TopUpSeries and FloatSwitch
        The top-up sources, the first to serve first. Where a column has several, each may use only the part of the hour
        that those before it leave.
    daily_limit_m3 : float or ndarray, (columns,), optional
        Most that may be pumped in a day [m³]; infinite where there is no limit.
    users_share : ndarray, (hours, columns), optional
        Share of the draw that reaches users, the rest being leakage; the shortfall is then also summed for users alone.
    trace : bool
        Also return the hour-by-hour record.

    Returns
    -------
    Totals, Trace or None

    Notes
    -----
    Nothing is created or lost: in every column, end level - start level = sun - idle + top-ups - (draw - shortfall),
    to rounding.
    """
    hours, columns = sun_m3.shape
    shape = (volume_m3.shape[0], columns)
    volume = np.array(np.broadcast_to(volume_m3, shape))
    level = np.array(np.broadcast_to(start.level_m3 if isinstance(start, State) else start, shape))
    first = level.copy()
    ahead, spare = np.empty(shape), np.empty(shape)
    day_net = np.empty((DAY, columns))
    day_short, day_idle = np.empty((DAY, *shape)), np.empty((DAY, *shape))
    sums = {name: np.zeros((12, *shape)) for name in ("shortfall_m3", "idle_m3", "idle_kwh", "sun_shift_kwh")}
    users_sum = None if users_share is None else np.zeros((12, *shape))
    top_ups: list[TopUp] = []
    for source in sources:
        top_ups.append(TopUp(source, ahead, volume, top_ups))
    for place, top_up in enumerate(top_ups):
        if isinstance(start, State):
            top_up.resume(start.on[place], start.running[place], start.run_left_h[place])
        else:
            top_up.begin(level)
    limit = DailyLimit(daily_limit_m3, volume) if daily_limit_m3 is not None else None
    short_days = _ShortDays(draw_m3, start.short_days if isinstance(start, State) else np.zeros(shape))
    record = _blank_trace(len(top_ups), hours, shape) if trace else None

    for hour in range(hours):
        of_day = hour % DAY
        if of_day == 0:
            day = slice(hour, hour + DAY)
            np.subtract(sun_m3[day], draw_m3[day], out=day_net)
            if limit is not None:
                limit.open_day(sun_m3[day], draw_m3[day])
            for top_up in top_ups:
                top_up.open_day(day_net)
        np.add(level, day_net[of_day], out=ahead)
        if limit is not None:
            limit.hold_sun(sun_m3[hour], ahead)
        for top_up in top_ups:
            top_up.step(hour, of_day, limit)
        short, idle = day_short[of_day], day_idle[of_day]
        np.minimum(ahead, volume, out=spare)
        np.maximum(spare, 0.0, out=level)
        np.subtract(level, spare, out=short)
        np.subtract(ahead, spare, out=idle)
        if limit is not None:
            limit.release(idle)
        if record is not None:
            record.level_m3[hour] = level
        if of_day == DAY - 1:
            month = months[hour]
            missing = day_short.sum(axis=0)
            sums["shortfall_m3"][month] += missing
            short_days.count(hour // DAY, missing)
            if users_share is not None and users_sum is not None:
                users_sum[month] += weighted(day_short, users_share[day])
            sums["idle_m3"][month] += day_idle.sum(axis=0)
            sums["idle_kwh"][month] += weighted(day_idle, sun_kwh_per_m3[day])
            for top_up in top_ups:
                top_up.close_day(day, month, sums["sun_shift_kwh"][month])
            if record is not None:
                record.keep(day, day_short, day_idle, top_ups)

    totals = Totals(
        **sums,
        users_shortfall_m3=users_sum,
        top_ups=tuple(top_up.sums for top_up in top_ups),
        start_m3=first,
        end=State(level, short_days.run, *_switches(top_ups, shape)),
        short_days=short_days.number,
        longest_short_days=short_days.longest,
        limit_reached=limit is not None and limit.bites,
    )
    return totals, record


def _blank_trace(sources: int, hours: int, shape: tuple[int, ...]) -> Trace:
    level, short, idle = (np.zeros((hours, *shape)) for _ in range(3))
    return Trace(level, short, idle, np.zeros((sources, hours, *shape)))


def _switches(top_ups: Sequence[TopUp], shape: tuple[int, ...]) -> tuple[Array, Array, Array]:
    """Lay the sources' switches out over all columns, each (sources, variants, columns)."""
    result = tuple(np.zeros((len(top_ups), *shape)) for _ in range(3))
    for place, top_up in enumerate(top_ups):
        for whole, own in zip(result, (top_up.on, top_up.running, top_up.run_left_h), strict=True):
            whole[place][:, top_up.columns] = own
    on, running, run_left_h = result
    return on, running, run_left_h


class _ShortDays:
    """Short days of each case, and the runs that they make."""

    def __init__(self, draw_m3: Array, run: Array) -> None:
        by_day = draw_m3.reshape(-1, DAY, draw_m3.shape[1]).sum(axis=1)
        self.bearable_m3 = SHORT_DAY * by_day + _TINY
        self.run, self.longest, self.number = run.copy(), np.zeros(run.shape), np.zeros(run.shape)

    def count(self, day: int, missing_m3: Array) -> None:
        """Lengthen or end the runs with one day."""
        short = missing_m3 > self.bearable_m3[day]
        self.number += short
        self.run += 1
        self.run *= short
        np.maximum(self.longest, self.run, out=self.longest)
