"""One supply option ready to run, and what it did: what goes into the hour loop and what comes out of it."""

from __future__ import annotations

from collections.abc import Hashable, Mapping
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from planner.supply.generator import fuel_l
from planner.supply.kernel import Totals, Trace
from planner.supply.series import Sun, TopUpSource
from planner.supply.topup import TopUpTotals
from planner.water.duty import FlowTable

Array = NDArray[np.float64]


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
    users_share : ndarray, (hours, years) or (1, 1)
        Share of it that reaches users, the rest being leakage.
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
    users_share: Array
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

    @property
    def sun_key(self) -> Hashable:
        """Equal for options of one call for which the sun pumps the same."""
        sun = self.sun
        if sun is None:
            return id(self.pump)
        shares = sun.weather_of_year.tobytes(), sun.ageing.tobytes()
        return id(self.pump), id(sun.string_w), sun.strings, sun.efficiency, sun.cable_loss_per_w, *shares

    def sun_within(self, hours: slice) -> Sun | None:
        """Some hours of its array alone."""
        return None if self.sun is None else replace(self.sun, string_w=self.sun.string_w[hours])


@dataclass(frozen=True)
class Outcome:
    """What one option did: arrays (variants, strings, years, 12), the grid's energy with bands as last axis.

    `demand_m3` and `delivered_m3` are what users want and get, `leakage_m3` what is lost on the way to them, `solar_m3`
    water pumped by the sun, `grid_m3` and `generator_m3` water those added, `solar_kwh` DC energy used, `idle_kwh` DC
    energy not used. `level_start_m3`, `level_end_m3`, `longest_short_days` (the longest run of short days) and
    `limit_shortfall_m3` (how much less users get for the daily limit; None where it was not asked for) are (variants,
    strings, years).
    """

    name: str
    demand_m3: Array
    delivered_m3: Array
    leakage_m3: Array
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
    limit_shortfall_m3: Array | None = None
    trace: Trace | None = None

    @property
    def new_year_loss_m3(self) -> Array:
        """Water left at the end of each year that the next does not begin with, (..., years - 1) [m³].

        Nil where the tank was full or empty in the days before; see `SPIN_UP_DAYS`.
        """
        return self.level_end_m3[..., :-1] - self.level_start_m3[..., 1:]

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


@dataclass(frozen=True)
class Months:
    """What is known of one option before the loop, summed by month: arrays (12, columns of the option).

    `demand_m3` is what users want, `drawn_m3` what is drawn for it; `pumped_m3`, `used_kwh` and `offered_kwh` what the
    sun alone would pump and use, and what the array offers.
    """

    demand_m3: Array
    drawn_m3: Array
    pumped_m3: Array
    used_kwh: Array
    offered_kwh: Array


def outcome_of(
    option: Option,
    months: Months,
    block: slice,
    totals: Totals,
    top_ups: Mapping[str, TopUpTotals],
    record: Trace | None,
    band_count: int,
) -> Outcome:
    """Gather what one option did from the loop's totals.

    Parameters
    ----------
    option : Option
        The option.
    months : Months
        What is known of it before the loop.
    block : slice
        Its columns.
    totals : Totals
        The loop's totals, with the users' shortfall.
    top_ups : mapping of str to TopUpTotals
        What its top-up sources did, by name, its own columns alone.
    record : Trace or None
        The loop's hour-by-hour record.
    band_count : int
        Number of tariff bands.

    Returns
    -------
    Outcome
    """
    assert totals.users_shortfall_m3 is not None
    strings, years, variants = len(option.strings), option.draw_m3.shape[1], option.tank_m3.size

    def shaped(monthly: Array) -> Array:
        """(12, [bands,] variants, columns) to (variants, strings, years, 12[, bands])."""
        split = monthly.reshape(*monthly.shape[:-1], strings, years)
        axes = (1, 2, 3, 0) if split.ndim == 4 else (2, 3, 4, 0, 1)
        return np.ascontiguousarray(split.transpose(axes))

    def whole(monthly: Array) -> Array:
        """(12, columns) to (variants, strings, years, 12)."""
        return shaped(np.broadcast_to(monthly[:, None, :], (12, variants, strings * years)))

    demand, short = whole(months.demand_m3), shaped(totals.shortfall_m3[..., block])
    delivered = demand - shaped(totals.users_shortfall_m3[..., block])
    idle_m3, idle_kwh = shaped(totals.idle_m3[..., block]), shaped(totals.idle_kwh[..., block])
    shift_kwh = shaped(totals.sun_shift_kwh[..., block])
    solar_kwh = whole(months.used_kwh) - idle_kwh + shift_kwh
    grid, generator = top_ups.get("grid"), top_ups.get("generator")
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
        delivered_m3=delivered,
        leakage_m3=whole(months.drawn_m3) - short - delivered,
        solar_m3=whole(months.pumped_m3) - idle_m3,
        solar_kwh=solar_kwh,
        idle_kwh=np.maximum(whole(months.offered_kwh) - solar_kwh, 0.0),
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
        trace=None if record is None else Trace(*(flow[..., block] for flow in vars(record).values())),
    )
