"""Run every supply option through the hour loop at once and gather what each did, by month."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from planner.supply.generator import fuel_l
from planner.supply.kernel import FloatSwitch, TopUpSeries, TopUpTotals, Totals, Trace, run_hours
from planner.supply.series import Extra, Sun, TopUpSource, extra_series, sun_series
from planner.water.duty import FlowTable

Array = NDArray[np.float64]

FIRST_LEVEL = 0.5
"""Share of the tank that holds water at the first hour of every life year."""

STANDBY_START, STANDBY_STOP = 0.5, 1.0
"""A generator beside the grid starts at half the grid's start level and stops at the grid's start level."""

# Sources in the columns' order: options with grid stand side by side, and so do options with generator.
_COLUMN_ORDER = (
    ("solar",),
    ("solar", "grid"),
    ("grid",),
    ("grid", "generator"),
    ("solar", "grid", "generator"),
    ("solar", "generator"),
    ("generator",),
)

MONTH_DAYS = np.array([31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31])
MONTH = np.repeat(np.arange(12), MONTH_DAYS * 24)
"""Month of each hour of the year, 0 to 11; (8760,)."""
HOUR = np.tile(np.arange(24), 365)
"""Hour of the day of each hour of the year; (8760,)."""


@dataclass(frozen=True)
class FuelUse:
    """Rating of a set [kW] and its fuel at no load [L/h/kW] and per kWh [L/kWh]."""

    rating_kw: float
    idle_l_per_h_per_kw: float
    marginal_l_per_kwh: float
    minimum_run_h: float


@dataclass(frozen=True)
class Option:
    """One supply option, ready to run.

    Attributes
    ----------
    name : str
        Its name.
    sources : tuple of str
        Its sources, in their fixed order.
    pump : FlowTable
        Motor power to flow at the site.
    draw_m3 : ndarray, (hours, years)
        Water drawn from the tank [m³].
    sun, grid, generator : optional
        Its sources.
    fuel : FuelUse or None
        Fuel of the generator.
    tank_m3, start_share, stop_share : ndarray, (variants,)
        Tanks and float-switch levels to try, as shares of the tank.
    daily_limit_m3 : float or None
        Most that may be pumped in a day.
    """

    name: str
    sources: tuple[str, ...]
    pump: FlowTable
    draw_m3: Array
    sun: Sun | None
    grid: TopUpSource | None
    generator: TopUpSource | None
    fuel: FuelUse | None
    tank_m3: Array
    start_share: Array
    stop_share: Array
    daily_limit_m3: float | None = None

    @property
    def strings(self) -> tuple[int, ...]:
        """Numbers of strings to try; (0,) without sun."""
        return self.sun.strings if self.sun else (0,)


@dataclass(frozen=True)
class Outcome:
    """What one option did: arrays (variants, strings, years, 12), the grid's energy with bands as last axis.

    `solar_m3` is water pumped by the sun, `grid_m3` and `generator_m3` water those added, `delivered_m3` = demand less
    shortfall (leakage included in both), `solar_kwh` DC energy used, `idle_kwh` DC energy not used. `level_start_m3`,
    `level_end_m3` and `longest_short_days` (the longest run of short days) are (variants, strings, years).
    """

    name: str
    demand_m3: Array
    delivered_m3: Array
    solar_m3: Array
    solar_kwh: Array
    idle_kwh: Array
    grid_m3: Array
    grid_kwh: Array
    grid_hours: Array
    grid_peak_kw: Array
    generator_m3: Array
    generator_kwh: Array
    generator_hours: Array
    fuel_l: Array
    level_start_m3: Array
    level_end_m3: Array
    longest_short_days: Array
    trace: Trace | None = None

    def at(self, variant: int, string: int) -> Outcome:
        """Return one variant and number of strings, every array without those two axes."""
        picked = {name: value[variant, string] for name, value in vars(self).items() if isinstance(value, np.ndarray)}
        return replace(self, **picked)

    @property
    def delivered_share(self) -> Array:
        """Share of the life's demand delivered, over the last two axes (years, months)."""
        share: Array = self.delivered_m3.sum(axis=(-1, -2)) / self.demand_m3.sum(axis=(-1, -2))
        return share

    @property
    def worst_year_share(self) -> Array:
        """Share of demand delivered in the worst year."""
        share: Array = (self.delivered_m3.sum(axis=-1) / self.demand_m3.sum(axis=-1)).min(axis=-1)
        return share


def run_options(
    options: Sequence[Option],
    *,
    bands: NDArray[np.int64] | None = None,
    band_count: int = 1,
    trace: bool = False,
) -> list[Outcome]:
    """Simulate every option, number of strings, tank and life year in one pass through the hours.

    Parameters
    ----------
    options : sequence of Option
        The options; all with the same number of variants and life years.
    bands : ndarray of int, (hours,), optional
        Tariff band of each hour.
    band_count : int
        Number of tariff bands.
    trace : bool
        Keep the hour-by-hour record of each option.

    Returns
    -------
    list of Outcome
        In the order of `options`.
    """
    order = sorted(range(len(options)), key=lambda index: _COLUMN_ORDER.index(options[index].sources))
    ordered = [options[index] for index in order]
    years = ordered[0].draw_m3.shape[1]
    ends = np.cumsum([len(option.strings) * years for option in ordered])
    blocks = [
        slice(int(end) - len(option.strings) * years, int(end)) for end, option in zip(ends, ordered, strict=True)
    ]
    pumped, kwh_per_m3 = np.zeros((MONTH.size, int(ends[-1]))), np.zeros((MONTH.size, int(ends[-1])))
    slots = {source: _slot(source, ordered, blocks) for source in ("grid", "generator")}
    months = []
    for option, block in zip(ordered, blocks, strict=True):
        # One option at a time, so that its hourly working arrays are gone before the next one's are made.
        sun = sun_series(option.sun, option.pump, MONTH, years)
        pumped[:, block], kwh_per_m3[:, block] = sun.pumped_m3, sun.kwh_per_m3
        months.append(_SunMonths(*map(_by_month, (sun.pumped_m3, sun.used_kwh, sun.offered_kwh))))
        for source, top_up in (("grid", option.grid), ("generator", option.generator)):
            slot = slots[source]
            if top_up is not None and slot is not None:
                efficiency = option.sun.efficiency if option.sun else 1.0
                _fill(slot[0], block, extra_series(top_up, sun, efficiency, option.pump, MONTH))
    draw = np.concatenate([np.tile(option.draw_m3, (1, len(option.strings))) for option in ordered], axis=1)
    tank = _per_column([option.tank_m3 for option in ordered], blocks)
    totals, record = run_hours(
        pumped,
        draw,
        kwh_per_m3,
        tank,
        tank * FIRST_LEVEL,
        MONTH,
        grid=slots["grid"],
        generator=slots["generator"],
        bands=bands,
        daily_limit_m3=ordered[0].daily_limit_m3,
        trace=trace,
    )
    outcomes: list[Outcome | None] = [None] * len(options)
    for place, option, sun_months, block in zip(order, ordered, months, blocks, strict=True):
        demand = np.tile(_by_month(option.draw_m3), (1, len(option.strings)))
        outcomes[place] = _outcome(option, sun_months, block, totals, record, demand, band_count)
    return [outcome for outcome in outcomes if outcome is not None]


@dataclass(frozen=True)
class _SunMonths:
    """What the sun alone would do, summed by month: arrays (12, columns of one option)."""

    pumped_m3: Array
    used_kwh: Array
    offered_kwh: Array


def _per_column(values: Sequence[Array], blocks: Sequence[slice]) -> Array:
    """Lay values per variant of each option out over its columns: (variants, columns)."""
    return np.concatenate(
        [
            np.repeat(value[:, None], block.stop - block.start, axis=1)
            for value, block in zip(values, blocks, strict=True)
        ],
        axis=1,
    )


def _slot(source: str, options: Sequence[Option], blocks: Sequence[slice]) -> tuple[TopUpSeries, FloatSwitch] | None:
    """Make room for the series of one top-up source, and set its float switches."""
    served = [index for index, option in enumerate(options) if source in option.sources]
    if not served:
        return None
    starts, stops = [], []
    minimum_run_h = 0.0
    for option in (options[index] for index in served):
        start, stop = option.tank_m3 * option.start_share, option.tank_m3 * option.stop_share
        if source == "generator" and option.grid is not None:
            start, stop = start * STANDBY_START, start * STANDBY_STOP
        starts.append(start)
        stops.append(stop)
        if source == "generator" and option.fuel is not None:
            minimum_run_h = max(minimum_run_h, option.fuel.minimum_run_h)
    blocks_ = [blocks[index] for index in served]
    columns = slice(blocks_[0].start, blocks_[-1].stop)
    shape = (MONTH.size, columns.stop - columns.start)
    switch = FloatSwitch(_per_column(starts, blocks_), _per_column(stops, blocks_), minimum_run_h)
    return TopUpSeries(columns, *(np.empty(shape) for _ in range(4))), switch


def _fill(series: TopUpSeries, block: slice, extra: Extra) -> None:
    """Put one option's part into the series of a top-up source."""
    inside = slice(block.start - series.columns.start, block.stop - series.columns.start)
    for name in ("extra_m3", "hours_per_m3", "kwh_per_m3", "sun_kwh_per_m3"):
        getattr(series, name)[:, inside] = getattr(extra, name)


def _by_month(hourly: Array) -> Array:
    """Sum hours (hours, columns) into months (12, columns)."""
    edges = np.concatenate([[0], np.cumsum(MONTH_DAYS[:-1] * 24)])
    sums: Array = np.add.reduceat(hourly, edges, axis=0)
    return sums


def _outcome(
    option: Option,
    sun: _SunMonths,
    block: slice,
    totals: Totals,
    record: Trace | None,
    demand_m3: Array,
    band_count: int,
) -> Outcome:
    strings, years, variants = len(option.strings), option.draw_m3.shape[1], option.tank_m3.size

    def shaped(monthly: Array) -> Array:
        """(12, [bands,] variants, columns) to (variants, strings, years, 12[, bands])."""
        split = monthly.reshape(*monthly.shape[:-1], strings, years)
        axes = (1, 2, 3, 0) if split.ndim == 4 else (2, 3, 4, 0, 1)
        return np.ascontiguousarray(split.transpose(axes))

    def whole(monthly: Array) -> Array:
        """(12, columns) to (variants, strings, years, 12)."""
        return shaped(np.broadcast_to(monthly[:, None, :], (12, variants, strings * years)))

    demand = whole(demand_m3)
    idle_m3, idle_kwh = shaped(totals.idle_m3[..., block]), shaped(totals.idle_kwh[..., block])
    shift_kwh = shaped(totals.sun_shift_kwh[..., block])
    solar_kwh = whole(sun.used_kwh) - idle_kwh + shift_kwh
    grid = _served(totals.grid, block, "grid" in option.sources)
    generator = _served(totals.generator, block, "generator" in option.sources)
    nothing = np.zeros_like(demand)
    generator_kwh = shaped(generator.kwh[:, 0]) if generator else nothing
    generator_hours = shaped(generator.run_hours) if generator else nothing
    fuel = (
        fuel_l(
            generator_hours,
            generator_kwh,
            option.fuel.rating_kw,
            option.fuel.idle_l_per_h_per_kw,
            option.fuel.marginal_l_per_kwh,
        )
        if option.fuel
        else nothing
    )
    shape = (variants, strings, years)
    return Outcome(
        name=option.name,
        demand_m3=demand,
        delivered_m3=demand - shaped(totals.shortfall_m3[..., block]),
        solar_m3=whole(sun.pumped_m3) - idle_m3,
        solar_kwh=solar_kwh,
        idle_kwh=whole(sun.offered_kwh) - solar_kwh,
        grid_m3=shaped(grid.added_m3) if grid else nothing,
        grid_kwh=shaped(grid.kwh) if grid else np.zeros((*demand.shape, band_count)),
        grid_hours=shaped(grid.run_hours) if grid else nothing,
        grid_peak_kw=shaped(grid.peak_kw) if grid else nothing,
        generator_m3=shaped(generator.added_m3) if generator else nothing,
        generator_kwh=generator_kwh,
        generator_hours=generator_hours,
        fuel_l=fuel,
        level_start_m3=totals.start_m3[:, block].reshape(shape),
        level_end_m3=totals.end_m3[:, block].reshape(shape),
        longest_short_days=totals.longest_short_days[:, block].reshape(shape),
        trace=_trace_of(record, block),
    )


def _served(totals: TopUpTotals | None, block: slice, used: bool) -> TopUpTotals | None:
    if totals is None or not used:
        return None
    inside = slice(block.start - totals.columns.start, block.stop - totals.columns.start)
    return TopUpTotals(
        block,
        totals.added_m3[..., inside],
        totals.kwh[..., inside],
        totals.run_hours[..., inside],
        totals.peak_kw[..., inside],
    )


def _trace_of(record: Trace | None, block: slice) -> Trace | None:
    if record is None:
        return None
    return Trace(*(getattr(record, name)[..., block] for name in Trace.__dataclass_fields__))
