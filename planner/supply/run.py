"""Run every supply option through the hour loop at once and gather what each did, by month."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from graphlib import TopologicalSorter

import numpy as np
from numpy.typing import NDArray

from planner.supply.kernel import State, Totals, Trace, run_hours
from planner.supply.option import Months, Option, Outcome, outcome_of
from planner.supply.series import SunSeries, TopUpSource, extra_series, sun_series
from planner.supply.topup import DAY, FloatSwitch, TopUpSeries, TopUpTotals, side_by_side

__all__ = ["HOUR", "MONTH", "Option", "Outcome", "run_options"]

Array = NDArray[np.float64]

SPIN_UP_DAYS = 31
"""Days before New Year that are run first, from an empty tank, to find the level each life year begins with."""

STANDBY_START = 0.5
"""A top-up source that stands by behind another starts at this share of its start level, and stops at its start
level."""

MONTH_DAYS = np.array([31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31])
MONTH = np.repeat(np.arange(12), MONTH_DAYS * 24)
"""Month of each hour of the year, 0 to 11; (8760,)."""
HOUR = np.tile(np.arange(24), 365)
"""Hour of the day of each hour of the year; (8760,)."""


def run_options(
    options: Sequence[Option],
    *,
    bands: NDArray[np.int64] | None = None,
    band_count: int = 1,
    trace: bool = False,
    limit_cost: bool = False,
) -> list[Outcome]:
    """Simulate every option, number of strings, tank and life year in one pass through the hours.

    Parameters
    ----------
    options : sequence of Option
        The options; all with the same number of variants and life years.
    bands : ndarray of int, optional
        Not used: each top-up source brings its own bands. Callers may still name them.
    band_count : int
        Number of tariff bands in the nothing that an option has from a source it lacks, so that tables of several
        options agree.
    trace : bool
        Keep the hour-by-hour record of each option.
    limit_cost : bool
        Also find the shortfall that the daily limit causes: where it holds anything back, all is run again without it.

    Returns
    -------
    list of Outcome
        In the order of `options`.

    Raises
    ------
    ValueError
        When options put the same sources in different orders, or a source has different tariff bands in them.
    """
    names = _in_order(options)
    order = _side_by_side(options, names)
    ordered = [options[place] for place in order]
    years = ordered[0].draw_m3.shape[1]
    ends = np.cumsum([len(option.strings) * years for option in ordered])
    blocks = [
        slice(int(end) - len(option.strings) * years, int(end)) for end, option in zip(ends, ordered, strict=True)
    ]
    served = [_Source.of(name, ordered, blocks) for name in names]
    pumped, kwh_per_m3 = np.zeros((MONTH.size, int(ends[-1]))), np.zeros((MONTH.size, int(ends[-1])))
    sun_months = []
    for option, block in zip(ordered, blocks, strict=True):
        # One option at a time, so that its hourly working arrays are gone before the next one's are made.
        sun = sun_series(option.sun, option.pump, MONTH, years)
        pumped[:, block], kwh_per_m3[:, block] = sun.pumped_m3, sun.kwh_per_m3
        sun_months.append([_by_month(flow) for flow in (sun.pumped_m3, sun.used_kwh, sun.offered_kwh)])
        for source in served:
            source.fill(option, block, sun)
    draw = np.concatenate([np.tile(option.draw_m3, (1, len(option.strings))) for option in ordered], axis=1)
    users_share = np.concatenate(_users_shares(ordered, years), axis=1)
    tank = _per_column([option.tank_m3 for option in ordered], blocks)
    sources = [(source.series, source.switch) for source in served]
    life = _Life((pumped, draw, kwh_per_m3), users_share, tank, sources, years)
    totals, record = life.run(_limits(ordered, blocks), trace)
    freed = life.run(None)[0] if limit_cost and totals.limit_reached else totals
    drawn = _by_month(draw)
    demand = drawn * users_share if users_share.shape[0] == 1 else _by_month(draw * users_share)
    outcomes: list[Outcome | None] = [None] * len(options)
    for place, option, of_sun, block in zip(order, ordered, sun_months, blocks, strict=True):
        months = Months(demand[:, block], drawn[:, block], *of_sun)
        did = {
            source.name: source.part(totals.top_ups[at], block)
            for at, source in enumerate(served)
            if block.start in source.inside
        }
        outcome = replace(outcome_of(option, months, block, totals, did, record), band_count=band_count)
        if limit_cost:
            missing = (_users_shortfall(totals) - _users_shortfall(freed)).sum(axis=0)[:, block]
            outcome = replace(outcome, limit_shortfall_m3=missing.reshape(outcome.level_end_m3.shape))
        outcomes[place] = outcome
    return [outcome for outcome in outcomes if outcome is not None]


@dataclass(frozen=True)
class _Life:
    """Everything the hour loop needs to run the life years side by side.

    `flows` are its sun, draw and solar energy per m³, `users_share` (hours or 1, columns) the share of the draw that
    reaches users, `sources` its top-up sources.
    """

    flows: tuple[Array, Array, Array]
    users_share: Array
    tank_m3: Array
    sources: Sequence[tuple[TopUpSeries, FloatSwitch]]
    years: int

    def run(self, daily_limit_m3: Array | None, trace: bool = False) -> tuple[Totals, Trace | None]:
        """Run every life year from the state in which the year before ends."""
        by_hour = self.users_share.shape[0] > 1
        totals, record = run_hours(
            *self.flows,
            self.tank_m3,
            self._new_year(daily_limit_m3),
            MONTH,
            sources=self.sources,
            daily_limit_m3=daily_limit_m3,
            users_share=self.users_share if by_hour else None,
            trace=trace,
        )
        if not by_hour:
            totals = replace(totals, users_shortfall_m3=totals.shortfall_m3 * self.users_share[0])
        return totals, record

    def _new_year(self, daily_limit_m3: Array | None) -> State:
        """Find the state each life year begins in: that in which the last days of the year before end.

        The years run side by side, so the last days of each are run first, from an empty tank. It has forgotten where
        it began once it was full, or was empty again; where it never was, the year begins with less than the year
        before left, not with more. The first year follows upon itself, so that no tank is given water to begin with.
        """
        hours = SPIN_UP_DAYS * DAY
        sun, draw, kwh_per_m3 = (flow[-hours:] for flow in self.flows)
        totals, _ = run_hours(
            sun,
            draw,
            kwh_per_m3,
            self.tank_m3,
            np.zeros_like(self.tank_m3),
            MONTH[-hours:],
            sources=[(series.last(hours), switch) for series, switch in self.sources],
            daily_limit_m3=daily_limit_m3,
        )
        column = np.arange(self.tank_m3.shape[1])
        return totals.end.taken(np.where(column % self.years == 0, column, column - 1))


@dataclass(frozen=True)
class _Source:
    """One top-up source over all options that use it.

    `inside` gives the place among the columns served of each of those options, by its own first column.
    """

    name: str
    series: TopUpSeries
    switch: FloatSwitch
    inside: dict[int, slice] = field(default_factory=dict)

    @staticmethod
    def of(name: str, options: Sequence[Option], blocks: Sequence[slice]) -> _Source:
        """Make room for the series of a source, and set its float switches."""
        served = [
            (option, place, block)
            for option, block in zip(options, blocks, strict=True)
            if (place := _place(option, name)) is not None
        ]
        own = [block for _, _, block in served]
        widths = np.array([block.stop - block.start for block in own])
        ends = np.cumsum(widths)
        levels = [_levels(option, place) for option, place, _ in served]
        found = [option.top_ups[place] for option, place, _ in served]
        runs = [source.minimum_run_h for source in found]
        start, stop = (_per_column([pair[at] for pair in levels], own) for at in (0, 1))
        extra, hours, kwh, sun_kwh, available = (np.empty((MONTH.size, int(ends[-1]))) for _ in range(5))
        return _Source(
            name,
            TopUpSeries(
                side_by_side(np.concatenate([np.arange(block.start, block.stop) for block in own])),
                extra,
                hours,
                kwh,
                sun_kwh,
                available=available if any(runs) else None,
                bands=_bands(found),
            ),
            FloatSwitch(start, stop, np.repeat(runs, widths)),
            {
                block.start: slice(int(end - width), int(end))
                for block, width, end in zip(own, widths, ends, strict=True)
            },
        )

    def fill(self, option: Option, block: slice, sun: SunSeries) -> None:
        """Put one option's part into the series, should the option use the source."""
        place = _place(option, self.name)
        if place is None:
            return
        top_up = option.top_ups[place]
        inside = self.inside[block.start]
        extra = extra_series(top_up, sun, option.sun.efficiency if option.sun else 1.0, option.pump, MONTH)
        for name, values in vars(extra).items():
            getattr(self.series, name)[:, inside] = values
        if self.series.available is not None:
            self.series.available[:, inside] = np.tile(top_up.available, (1, len(option.strings)))

    def part(self, totals: TopUpTotals, block: slice) -> TopUpTotals:
        """Return what the source did for one option, by its columns."""
        inside = self.inside[block.start]
        sums = {name: value[..., inside] for name, value in vars(totals).items() if name != "columns"}
        return TopUpTotals(inside, **sums)


def _place(option: Option, name: str) -> int | None:
    """Place of a source among an option's top-up sources, None where it is not there."""
    return next((place for place, source in enumerate(option.top_ups) if source.name == name), None)


def _in_order(options: Sequence[Option]) -> tuple[str, ...]:
    """Names of all top-up sources, in an order that keeps each option's own."""
    sorter: TopologicalSorter[str] = TopologicalSorter()
    for option in options:
        names = [source.name for source in option.top_ups]
        for place, name in enumerate(names):
            sorter.add(name, *names[:place])
    return tuple(sorter.static_order())


def _side_by_side(options: Sequence[Option], names: Sequence[str]) -> list[int]:
    """Order options so that those with the same source stand side by side where they can.

    Whole slices are faster in the loop than lists of columns. In the order of the Gray code, whose digits are the
    sources, neighbours differ in one source.
    """

    def rank(option: Option) -> int:
        code = sum(1 << digit for digit, name in enumerate(names) if _place(option, name) is not None)
        found = code
        while code := code >> 1:
            found ^= code
        return found

    return sorted(range(len(options)), key=lambda place: rank(options[place]))


def _bands(sources: Sequence[TopUpSource]) -> NDArray[np.int64] | None:
    """Tariff bands of one source, the same in every option."""
    first = sources[0].bands
    for source in sources[1:]:
        alike = source.bands is first or (
            first is not None and source.bands is not None and np.array_equal(source.bands, first)
        )
        if not alike or source.band_count != sources[0].band_count:
            raise ValueError(f"the tariff bands of '{source.name}' differ between options of one pass")
    return first


def _levels(option: Option, place: int) -> tuple[Array, Array]:
    """Start and stop level in each variant of an option of its top-up source at some place [m³]."""
    start, stop = option.tank_m3 * option.start_share, option.tank_m3 * option.stop_share
    for _ in range(place):
        start, stop = start * STANDBY_START, start
    return start, stop


def _limits(options: Sequence[Option], blocks: Sequence[slice]) -> Array | None:
    """Daily limit of every column, None where no option has one [m³]."""
    limits = [np.inf if option.daily_limit_m3 is None else option.daily_limit_m3 for option in options]
    if np.isinf(limits).all():
        return None
    return np.repeat(limits, [block.stop - block.start for block in blocks])


def _users_shares(options: Sequence[Option], years: int) -> list[Array]:
    """Share of the draw that reaches users, over each option's columns: by the hour where any needs it."""
    rows = max(option.users_share.shape[0] for option in options)
    return [np.tile(np.broadcast_to(option.users_share, (rows, years)), (1, len(option.strings))) for option in options]


def _users_shortfall(totals: Totals) -> Array:
    assert totals.users_shortfall_m3 is not None
    return totals.users_shortfall_m3


def _per_column(values: Sequence[Array], blocks: Sequence[slice]) -> Array:
    """Lay values per variant of each option out over its columns: (variants, columns)."""
    return np.concatenate(
        [
            np.repeat(value[:, None], block.stop - block.start, axis=1)
            for value, block in zip(values, blocks, strict=True)
        ],
        axis=1,
    )


def _by_month(hourly: Array) -> Array:
    """Sum hours (hours, columns) into months (12, columns)."""
    edges = np.concatenate([[0], np.cumsum(MONTH_DAYS[:-1] * 24)])
    sums: Array = np.add.reduceat(hourly, edges, axis=0)
    return sums
