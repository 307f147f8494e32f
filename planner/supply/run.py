"""Run every supply option through the hour loop at once and gather what each did, by month."""

from __future__ import annotations

from collections.abc import Hashable, Sequence
from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from planner.supply.cells import DAY, over_day
from planner.supply.columns import MONTH_HOURS, Shared, SourceColumns, in_order, per_column, side_by_side_order
from planner.supply.kernel import State, Totals, Trace, run_hours
from planner.supply.option import Months, Option, Outcome, outcome_of
from planner.supply.series import SunSeries, sun_series
from planner.supply.topup import FloatSwitch, TopUpSeries

__all__ = ["HOUR", "MONTH", "Option", "Outcome", "run_options"]

Array = NDArray[np.float64]

SPIN_UP_DAYS = 31
"""Days before New Year that are run first, from an empty tank, to find the level each life year begins with."""

MONTH_DAYS = np.array([31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31])
MONTH = np.repeat(np.arange(12), MONTH_DAYS * 24)
"""Month of each hour of the year, 0 to 11; (8760,)."""
_MONTHS = [
    slice(int(end) - int(days) * 24, int(end)) for days, end in zip(MONTH_DAYS, np.cumsum(MONTH_DAYS * 24), strict=True)
]
HOUR = np.tile(np.arange(24), 365)
"""Hour of the day of each hour of the year; (8760,)."""


def run_options(
    options: Sequence[Option],
    *,
    band_count: int = 1,
    trace: bool = False,
    free_variants: Sequence[int] | None = None,
) -> list[Outcome]:
    """Simulate every option, number of strings, tank and life year in one pass through the hours.

    Parameters
    ----------
    options : sequence of Option
        The options; all with the same number of life years.
    band_count : int
        Number of tariff bands in the nothing that an option has from a source it lacks, so that tables of several
        options agree.
    trace : bool
        Keep the hour-by-hour record of each option.
    free_variants : sequence of int, optional
        How many variants of each option, from its first, are also run without its daily limit, to find the shortfall
        that the limit causes; it is NaN of the others.

    Returns
    -------
    list of Outcome
        In the order of `options`.

    Raises
    ------
    ValueError
        When options put the same sources in different orders, or a source has different tariff bands in them.
    """
    if free_variants is not None:
        return _beside_free(options, free_variants, band_count, trace)
    names = in_order(options)
    order = side_by_side_order(options, names)
    ordered = [options[index] for index in order]
    years = ordered[0].draw_m3.shape[1]
    ends = np.cumsum([len(option.strings) * years for option in ordered])
    blocks = [
        slice(int(end) - len(option.strings) * years, int(end)) for end, option in zip(ends, ordered, strict=True)
    ]
    served = [SourceColumns.of(name, ordered, blocks) for name in names]
    life = _Life(ordered, blocks, served, years)
    totals, sums, record = life.run(_limits(ordered, blocks), trace)
    outcomes: list[Outcome | None] = [None] * len(options)
    for index, option, block in zip(order, ordered, blocks, strict=True):
        months = Months(*(sums[name][:, block] for name in _SUMS))
        did = {
            source.name: source.part(totals.top_ups[at], block, option.tank_m3.size)
            for at, source in enumerate(served)
            if block.start in source.inside
        }
        outcomes[index] = replace(outcome_of(option, months, block, totals, did, record), band_count=band_count)
    return [outcome for outcome in outcomes if outcome is not None]


def _beside_free(
    options: Sequence[Option], free_variants: Sequence[int], band_count: int, trace: bool
) -> list[Outcome]:
    """Run options, and beside them some of their variants without the daily limit."""
    freed = {
        index: options[index].first(count).without_limit()
        for index, count in enumerate(free_variants)
        if count and options[index].daily_limit_m3 is not None
    }
    found = run_options([*options, *freed.values()], band_count=band_count, trace=trace)
    free = dict(zip(freed, found[len(options) :], strict=True))
    result = []
    for index, (option, held) in enumerate(zip(options, found, strict=False)):
        short = np.full(held.level_end_m3.shape, 0.0 if option.daily_limit_m3 is None else np.nan)
        if index in free:
            gain = free[index].delivered_m3 - held.delivered_m3[: free_variants[index]]
            short[: free_variants[index]] = gain.sum(axis=-1)
        result.append(replace(held, limit_shortfall_m3=short))
    return result


_SUMS = ("demand_m3", "drawn_m3", "pumped_m3", "used_kwh", "offered_kwh")


@dataclass(frozen=True)
class _Part:
    """Some hours of all columns as the hour loop takes them, and what is known of them before it.

    `flows` are sun, draw and solar energy per m³, `users_share` (hours or 1, columns) the share of the draw that
    reaches users, `sums` what each of `_SUMS` comes to in each column.
    """

    flows: tuple[Array, Array, Array]
    users_share: Array
    sources: Sequence[tuple[TopUpSeries, FloatSwitch]]
    sums: dict[str, Array]


@dataclass(frozen=True)
class _Life:
    """Runs the life years side by side, month by month, so that only a month of hourly series is held at once."""

    options: Sequence[Option]
    blocks: Sequence[slice]
    served: Sequence[SourceColumns]
    years: int

    @cached_property
    def shared(self) -> Shared:
        """What the options share of sun and draw."""
        return Shared.of([(option.sun_key, id(option.draw_m3)) for option in self.options], self.blocks)

    @cached_property
    def room(self) -> Array:
        """Room for a month of flows, made once: fresh memory for each month costs more than what is put into it."""
        return np.empty((3, MONTH_HOURS, self.shared.count))

    def run(self, daily_limit_m3: Array | None, trace: bool = False) -> tuple[Totals, dict[str, Array], Trace | None]:
        """Run every life year from the state in which the year before ends; sums are (12, columns)."""
        variants = [option.tank_m3.size for option in self.options]
        tank_m3 = per_column([option.tank_m3 for option in self.options], self.blocks, max(variants))
        widths = [block.stop - block.start for block in self.blocks]
        needed = np.arange(max(variants))[:, None] < np.repeat(variants, widths)
        state = self._new_year(tank_m3, needed, daily_limit_m3)
        sums: dict[str, list[Array]] = {name: [] for name in _SUMS}
        parts: list[Totals] = []
        records: list[Trace] = []
        for hours in _MONTHS:
            part = self._part(hours)
            by_hour = part.users_share.shape[0] > 1
            totals, record = run_hours(
                *part.flows,
                tank_m3,
                state,
                np.zeros(hours.stop - hours.start, dtype=np.int64),
                month_count=1,
                of_column=self.shared.of_column,
                sources=part.sources,
                daily_limit_m3=daily_limit_m3,
                users_share=part.users_share if by_hour else None,
                needed=needed,
                trace=trace,
            )
            if not by_hour:
                share = part.users_share[0]
                totals = replace(
                    totals,
                    users_shortfall_m3=totals.shortfall_m3 * share,
                    short_days_shortfall_m3=totals.short_days_shortfall_m3 * share,
                )
            state = totals.end
            parts.append(totals)
            records += [] if record is None else [record]
            for name, value in part.sums.items():
                sums[name].append(value)
        by_month = {name: np.array(values) for name, values in sums.items()}
        return Totals.joined(parts), by_month, Trace.joined(records) if records else None

    def _new_year(self, tank_m3: Array, needed: NDArray[np.bool_], daily_limit_m3: Array | None) -> State:
        """Find the state each life year begins in: that in which the last days of the year before end.

        The years run side by side, so the last days of each are run first, from an empty tank. It has forgotten where
        it began once it was full, or was empty again; where it never was, the year begins with less than the year
        before left, not with more. The first year follows upon itself, so that no tank is given water to begin with.
        A run of short days begins anew: those of the year before are joined to it afterwards, see `runs_in_life`.
        """
        hours = slice(MONTH.size - SPIN_UP_DAYS * DAY, MONTH.size)
        last = self._part(hours)
        empty = np.zeros_like(tank_m3)
        one_month = np.zeros(hours.stop - hours.start, dtype=np.int64)
        totals, _ = run_hours(
            *last.flows,
            tank_m3,
            empty,
            one_month,
            month_count=1,
            of_column=self.shared.of_column,
            sources=last.sources,
            daily_limit_m3=daily_limit_m3,
            needed=needed,
        )
        column = np.arange(tank_m3.shape[1])
        begun = totals.end.taken(np.where(column % self.years == 0, column, column - 1))
        return replace(begun, short_days=np.zeros_like(begun.short_days))

    def _part(self, hours: slice) -> _Part:
        """Make the series of some hours; options that share an array, a pump and a source share their working-out."""
        count = hours.stop - hours.start
        pumped, kwh_per_m3, draw = (flow[:count] for flow in self.room)
        sums = {name: np.zeros(self.shared.count) for name in _SUMS}
        suns: dict[Hashable, SunSeries] = {}
        for index, block in self.shared.blocks.items():
            option = self.options[index]
            key = option.sun_key
            if key not in suns:
                suns[key] = sun_series(option.sun_within(hours), option.pump, MONTH[hours], self.years)
            sun = suns[key]
            pumped[:, block], kwh_per_m3[:, block] = sun.pumped_m3, sun.kwh_per_m3
            draw[:, block] = np.tile(option.draw_m3[hours], (1, len(option.strings)))
            for name in ("pumped_m3", "used_kwh", "offered_kwh"):
                sums[name][block] = over_day(getattr(sun, name))
        sums["drawn_m3"] = over_day(draw)
        sums = {name: value[self.shared.of_column] for name, value in sums.items()}
        users_share = np.concatenate(_users_shares(self.options, self.years, hours), axis=1)
        by_hour = users_share.shape[0] > 1
        sums["demand_m3"] = (
            over_day(draw[:, self.shared.of_column] * users_share) if by_hour else sums["drawn_m3"] * users_share[0]
        )
        sources = [(source.series(suns, hours), source.switch) for source in self.served]
        return _Part((pumped, draw, kwh_per_m3), users_share, sources, sums)


def _limits(options: Sequence[Option], blocks: Sequence[slice]) -> Array | None:
    """Daily limit of every column, None where no option has one [m³]."""
    limits = [np.inf if option.daily_limit_m3 is None else option.daily_limit_m3 for option in options]
    if np.isinf(limits).all():
        return None
    return np.repeat(limits, [block.stop - block.start for block in blocks])


def _users_shares(options: Sequence[Option], years: int, hours: slice) -> list[Array]:
    """Share of the draw that reaches users, over each option's columns: by the hour where any needs it."""
    shares = [o.users_share[hours] if o.users_share.shape[0] > 1 else o.users_share for o in options]
    rows = max(share.shape[0] for share in shares)
    return [
        np.tile(np.broadcast_to(share, (rows, years)), (1, len(option.strings)))
        for share, option in zip(shares, options, strict=True)
    ]
