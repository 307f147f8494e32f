"""One supply option ready to run, and what it did: what goes into the hour loop and what comes out of it."""

from __future__ import annotations

from collections.abc import Hashable, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from planner.supply.kernel import Totals, Trace
from planner.supply.series import Sun, TopUpSource
from planner.supply.topup import TopUpTotals
from planner.water.duty import FlowTable

Array = NDArray[np.float64]


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
    sun : Sun or None
        Its array.
    top_ups : tuple of TopUpSource
        Its top-up sources, the first to serve first.
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
    top_ups: tuple[TopUpSource, ...]
    tank_m3: Array
    start_share: Array
    stop_share: Array
    daily_limit_m3: float | None = None

    @property
    def strings(self) -> tuple[int, ...]:
        """Numbers of strings to try; (0,) without sun."""
        return self.sun.strings if self.sun else (0,)

    def first(self, variants: int) -> Option:
        """Return it with its first variants alone."""
        names = ("tank_m3", "start_share", "stop_share")
        return replace(self, **{name: getattr(self, name)[:variants] for name in names})

    def without_limit(self) -> Option:
        """Return it without its daily limit."""
        return replace(self, daily_limit_m3=None)

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
class TopUpOutcome:
    """What one top-up source of an option did, by month: arrays (variants, strings, years, 12), `kwh` (..., 12, bands).

    `m3` is the water it added, `kwh` the energy taken from it by tariff band, `hours` its running time, `peak_kw` the
    highest half-hourly demand (nil where it has no bands), `fuel_l` the fuel it burnt.
    """

    m3: Array
    kwh: Array
    hours: Array
    peak_kw: Array
    fuel_l: Array


@dataclass(frozen=True)
class Outcome:
    """What one option did: arrays (variants, strings, years, 12).

    `demand_m3` and `delivered_m3` are what users want and get, `leakage_m3` what is lost on the way to them, `solar_m3`
    water pumped by the sun, `solar_kwh` DC energy used, `idle_kwh` DC energy not used, `top_ups` what each top-up
    source of the option did, by name, in the order in which they serve. `month_short_days` is the number of short days,
    `short_days_shortfall_m3` what users miss on them. `level_start_m3`, `level_end_m3`, `longest_short_days` (see
    `runs_in_life`) and `limit_shortfall_m3` (how much less users get for the daily limit; None where it was not asked
    for) are (variants, strings, years). `band_count` is the number of tariff bands in the nothing that comes from a
    source which the option lacks.
    """

    name: str
    demand_m3: Array
    delivered_m3: Array
    leakage_m3: Array
    solar_m3: Array
    solar_kwh: Array
    idle_kwh: Array
    top_ups: Mapping[str, TopUpOutcome]
    level_start_m3: Array
    level_end_m3: Array
    month_short_days: Array
    short_days_shortfall_m3: Array
    longest_short_days: Array
    limit_shortfall_m3: Array | None = None
    trace: Trace | None = None
    band_count: int = 1

    def top_up(self, name: str) -> TopUpOutcome:
        """What a top-up source did; nothing where the option has none of that name."""
        if name in self.top_ups:
            return self.top_ups[name]
        nothing = np.zeros_like(self.demand_m3)
        by_band = np.zeros((*nothing.shape, self.band_count))
        return TopUpOutcome(nothing, by_band, nothing, nothing, nothing)

    @property
    def fuel_l(self) -> Array:
        """Fuel burnt by all sources, (..., years, 12) [L]."""
        return sum((source.fuel_l for source in self.top_ups.values()), np.zeros_like(self.demand_m3))

    # The pages of a report ask for the usual sources by these names.

    @property
    def grid_m3(self) -> Array:
        """Water the grid added [m³]."""
        return self.top_up("grid").m3

    @property
    def grid_kwh(self) -> Array:
        """Energy from the grid, with its tariff bands as last axis [kWh]."""
        return self.top_up("grid").kwh

    @property
    def grid_hours(self) -> Array:
        """Running time on the grid [h]."""
        return self.top_up("grid").hours

    @property
    def grid_peak_kw(self) -> Array:
        """Highest half-hourly demand on the grid [kW]."""
        return self.top_up("grid").peak_kw

    @property
    def generator_m3(self) -> Array:
        """Water the generator added [m³]."""
        return self.top_up("generator").m3

    @property
    def generator_kwh(self) -> Array:
        """Energy from the generator [kWh]."""
        return np.asarray(self.top_up("generator").kwh.sum(axis=-1))

    @property
    def generator_hours(self) -> Array:
        """Running time of the generator [h]."""
        return self.top_up("generator").hours

    @property
    def new_year_loss_m3(self) -> Array:
        """Water left at the end of each year that the next does not begin with, (..., years - 1) [m³].

        Nil where the tank was full or empty in the days before; see `SPIN_UP_DAYS`.
        """
        return self.level_end_m3[..., :-1] - self.level_start_m3[..., 1:]

    def at(self, variant: int, string: int) -> Outcome:
        """Return one variant and number of strings, every array without those two axes."""
        return self.taken((variant, string))

    def taken(self, index: Any) -> Outcome:
        """Return the outcome with every array indexed alike."""
        return replace(
            self,
            **_indexed(self, index),
            top_ups={name: replace(source, **_indexed(source, index)) for name, source in self.top_ups.items()},
        )

    def arrays(self, names: Sequence[str]) -> dict[str, Array]:
        """Every array by its name, those of the named top-up sources as 'source.name', nil where it lacks them."""
        found = {name: value for name, value in vars(self).items() if isinstance(value, np.ndarray)}
        return found | {f"{name}.{part}": value for name in names for part, value in vars(self.top_up(name)).items()}

    @classmethod
    def of_arrays(cls, name: str, arrays: Mapping[str, Array]) -> Outcome:
        """Put an outcome together from `arrays`, of one case or of many laid side by side."""
        plain: dict[str, Any] = {key: value for key, value in arrays.items() if "." not in key}
        top_ups: dict[str, dict[str, Array]] = {}
        for key, value in arrays.items():
            source, dot, part = key.partition(".")
            if dot:
                top_ups.setdefault(source, {})[part] = value
        return cls(name=name, **plain, top_ups={source: TopUpOutcome(**parts) for source, parts in top_ups.items()})

    @property
    def delivered_share(self) -> Array:
        """Share of the life's demand delivered, over the last two axes (years, months)."""
        share: Array = self.delivered_m3.sum(axis=(-1, -2)) / self.demand_m3.sum(axis=(-1, -2))
        return share

    @property
    def month_share(self) -> Array:
        """Share of demand delivered in each calendar month, all years together; NaN where none is asked for."""
        delivered, demand = self.delivered_m3.sum(axis=-2), self.demand_m3.sum(axis=-2)
        share: Array = np.divide(delivered, demand, out=np.full(demand.shape, np.nan), where=demand > 0)
        return share

    @property
    def short_days(self) -> Array:
        """Number of short days in each year, (..., years)."""
        number: Array = self.month_short_days.sum(axis=-1)
        return number

    @property
    def worst_year_share(self) -> Array:
        """Share of demand delivered in the worst year."""
        share: Array = (self.delivered_m3.sum(axis=-1) / self.demand_m3.sum(axis=-1)).min(axis=-1)
        return share


def _indexed(record: Outcome | TopUpOutcome, index: Any) -> dict[str, Any]:
    return {name: value[index] for name, value in vars(record).items() if isinstance(value, np.ndarray)}


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

    Returns
    -------
    Outcome
    """
    assert totals.users_shortfall_m3 is not None
    strings, years, variants = len(option.strings), option.draw_m3.shape[1], option.tank_m3.size

    def of_option(flow: Array) -> Array:
        """Its variants and columns of an array of those of all."""
        return flow[..., :variants, block]

    def shaped(monthly: Array) -> Array:
        """(12, [bands,] variants, columns) to (variants, strings, years, 12[, bands])."""
        split = monthly.reshape(*monthly.shape[:-1], strings, years)
        axes = (1, 2, 3, 0) if split.ndim == 4 else (2, 3, 4, 0, 1)
        return np.ascontiguousarray(split.transpose(axes))

    def whole(monthly: Array) -> Array:
        """(12, columns) to (variants, strings, years, 12)."""
        return shaped(np.broadcast_to(monthly[:, None, :], (12, variants, strings * years)))

    demand, short = whole(months.demand_m3), shaped(of_option(totals.shortfall_m3))
    delivered = demand - shaped(of_option(totals.users_shortfall_m3))
    idle_m3, idle_kwh = shaped(of_option(totals.idle_m3)), shaped(of_option(totals.idle_kwh))
    shift_kwh = shaped(of_option(totals.sun_shift_kwh))
    solar_kwh = whole(months.used_kwh) - idle_kwh + shift_kwh

    def did(source: TopUpSource) -> TopUpOutcome:
        sums = top_ups[source.name]
        kwh, hours = shaped(sums.kwh), shaped(sums.run_hours)
        if unused := source.band_count - kwh.shape[-1]:
            # the loop counts bands up to the last that holds in any hour
            kwh = np.concatenate([kwh, np.zeros((*kwh.shape[:-1], unused))], axis=-1)
        fuel = source.fuel.litres(hours, kwh.sum(axis=-1)) if source.fuel else np.zeros_like(hours)
        return TopUpOutcome(shaped(sums.added_m3), kwh, hours, shaped(sums.peak_kw), fuel)

    shape = (variants, strings, years)
    longest, first, last = (
        of_option(run).reshape(shape)
        for run in (totals.longest_short_days, totals.first_short_days, totals.end.short_days)
    )
    return Outcome(
        name=option.name,
        demand_m3=demand,
        delivered_m3=delivered,
        leakage_m3=whole(months.drawn_m3) - short - delivered,
        solar_m3=whole(months.pumped_m3) - idle_m3,
        solar_kwh=solar_kwh,
        idle_kwh=np.maximum(whole(months.offered_kwh) - solar_kwh, 0.0),
        top_ups={source.name: did(source) for source in option.top_ups},
        level_start_m3=of_option(totals.start_m3).reshape(shape),
        level_end_m3=of_option(totals.end_m3).reshape(shape),
        month_short_days=shaped(of_option(totals.short_days)),
        short_days_shortfall_m3=shaped(of_option(totals.short_days_shortfall_m3)),
        longest_short_days=runs_in_life(longest, first, last, totals.days),
        trace=None if record is None else Trace(*(of_option(flow) for flow in vars(record).values())),
    )


def runs_in_life(longest: Array, first: Array, last: Array, days: int) -> Array:
    """Join the runs of short days of years that were run side by side.

    Parameters
    ----------
    longest, first, last : ndarray, (..., years)
        Longest run of each year alone, the run that it begins with and the one that it ends in [days].
    days : int
        Days of a year.

    Returns
    -------
    ndarray, (..., years)
        Longest run that ends in each year or goes on at its end, with its days in the years before [days]; nothing
        before the first year counts.
    """
    joined, going_on = longest.copy(), np.zeros(longest.shape[:-1])
    for year in range(longest.shape[-1]):
        begun = np.where(first[..., year] > 0, going_on + first[..., year], 0.0)
        joined[..., year] = np.maximum(longest[..., year], begun)
        going_on = np.where(first[..., year] == days, begun, last[..., year])
    return joined
