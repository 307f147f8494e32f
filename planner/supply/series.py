"""From a designed supply option to the hourly series the hour loop needs: one block of columns per option."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from planner.supply.generator import FuelUse
from planner.water.duty import FlowTable

Array = NDArray[np.float64]

_SMALL_M3 = 1e-9


@dataclass(frozen=True)
class Sun:
    """The array of one option.

    `string_w` (hours, weather years) is the DC power of one new string, `weather_of_year` (years,) the weather column
    of each life year, `ageing` (years,) the share of power left, `strings` the numbers of strings to try, `efficiency`
    that of the controller, `cable_loss_per_w` the share of the array's power that its cable loses, per watt: the loss
    grows with the square of the current. The controller's largest output binds in the pump's flow table.
    """

    string_w: Array
    weather_of_year: NDArray[np.int64]
    ageing: Array
    strings: tuple[int, ...]
    efficiency: float
    cable_loss_per_w: float = 0.0

    def in_years(self, years: NDArray[np.int64]) -> Sun:
        """Some years of the life alone, from 0."""
        return replace(self, weather_of_year=self.weather_of_year[years], ageing=self.ageing[years])


@dataclass(frozen=True)
class TopUpSource:
    """One top-up source of an option.

    Attributes
    ----------
    name : str
        Its name; in one pass through the hours, sources of one name are the same source.
    available : ndarray, (hours, years)
        Share of each hour in which it can be used.
    power_w : ndarray, (hours, years) or (1, years)
        Its largest AC power [W].
    efficiency : float
        From the AC supply to the motor.
    parallel : bool
        Whether it adds to the sun in the same hour.
    minimum_run_h : float
        Shortest run once started [h].
    bands : ndarray of int, (hours,), optional
        Tariff band of each hour; one band when left out.
    band_count : int
        Number of its tariff bands.
    fuel : FuelUse or None
        Fuel that it burns.
    """

    name: str
    available: Array
    power_w: Array
    efficiency: float
    parallel: bool
    minimum_run_h: float = 0.0
    bands: NDArray[np.int64] | None = None
    band_count: int = 1
    fuel: FuelUse | None = None

    def shares_bands(self, other: TopUpSource) -> bool:
        """Whether its energy is counted by the same tariff bands as that of another."""
        mine, theirs = self.bands, other.bands
        alike = mine is theirs or (mine is not None and theirs is not None and np.array_equal(mine, theirs))
        return alike and self.band_count == other.band_count

    def in_years(self, years: NDArray[np.int64]) -> TopUpSource:
        """Some years of the life alone, from 0."""
        return replace(self, available=self.available[:, years], power_w=self.power_w[:, years])

    def within(self, hours: slice) -> TopUpSource:
        """Some hours of it alone."""
        power_w = self.power_w if self.power_w.shape[0] == 1 else self.power_w[hours]
        return replace(self, available=self.available[hours], power_w=power_w)


@dataclass(frozen=True)
class SunSeries:
    """The sun's hours for the columns of one option (strings outer, life years inner).

    `pumped_m3` and `used_kwh` are what the sun alone would pump and use were there room, `offered_kwh` the DC energy at
    hand, each (hours, columns); `motor_w` (hours, columns) the power it offers the motor. Without sun one row of
    nothing stands for all hours.
    """

    pumped_m3: Array
    used_kwh: Array
    offered_kwh: Array
    motor_w: Array

    @cached_property
    def kwh_per_m3(self) -> Array:
        """Solar energy per m³ pumped, (hours, columns) [kWh/m³]."""
        return self.used_kwh * _inverse(self.pumped_m3)


@dataclass(frozen=True)
class Extra:
    """What a top-up source can add to the sun's hour, (hours, columns), or one row for all: see TopUpSeries."""

    extra_m3: Array
    hours_per_m3: Array
    kwh_per_m3: Array
    sun_kwh_per_m3: Array


def sun_series(sun: Sun | None, pump: FlowTable, month: NDArray[np.int64], years: int) -> SunSeries:
    """Work out what the sun alone would pump, for every number of strings and life year.

    Parameters
    ----------
    sun : Sun or None
        The array; None where the option has no sun.
    pump : FlowTable
        Motor power to flow at this site, by life year and month.
    month : ndarray of int, (hours,)
        Month of each hour.
    years : int
        Life years.
    """
    if sun is None:
        none = np.zeros((1, years))
        return SunSeries(none, none, none, none)
    scale = np.outer(sun.strings, sun.ageing).ravel()
    weather = np.tile(sun.weather_of_year, len(sun.strings))
    offered_w = sun.string_w[:, weather] * scale
    if sun.cable_loss_per_w:
        # a cable passes on at most a quarter of 1 / loss; the controller does not draw more than gives it that
        offered_w = np.minimum(offered_w, 0.5 / sun.cable_loss_per_w)
        offered_w *= 1 - sun.cable_loss_per_w * offered_w
    motor_w = offered_w * sun.efficiency
    year = np.tile(np.arange(years), len(sun.strings))
    pumped = pump.flow_at(motor_w, month, year)
    used_w = pump.power_used(motor_w, month, year)
    return SunSeries(pumped, used_w / (1000 * sun.efficiency), offered_w / 1000, motor_w)


def extra_series(
    source: TopUpSource, sun: SunSeries, sun_efficiency: float, pump: FlowTable, month: NDArray[np.int64]
) -> Extra:
    """Work out what a top-up source could add to the sun in each hour, and at what energy.

    A parallel drive runs the pump at full power, or as near as the source's power allows, and takes from the source
    what the sun lacks. A changeover drive runs the pump on the source alone and leaves the sun aside meanwhile.

    Parameters
    ----------
    source : TopUpSource
        Availability, power and efficiency, (hours, years); years repeat over the numbers of strings.
    sun : SunSeries
        What the sun does alone, (hours, columns).
    sun_efficiency : float
        Efficiency from the array to the motor.
    pump : FlowTable
        Motor power to flow, by life year and month.
    month : ndarray of int, (hours,)
        Month of each hour.
    """
    years = source.available.shape[1]
    repeat = sun.pumped_m3.shape[1] // years
    year = np.tile(np.arange(years), repeat)
    limit_w = np.tile(source.power_w, (1, repeat)) * source.efficiency
    full_w = pump.by_hour(pump.full_power_w, month, year)
    parallel = source.parallel and bool(sun.motor_w.any())
    sun_motor_w = np.minimum(sun.motor_w, full_w) if parallel else np.zeros((1, year.size))
    total_w = np.minimum(full_w, sun_motor_w + limit_w)
    if np.all(limit_w >= full_w):
        flow_m3 = pump.by_hour(pump.full_flow_m3h, month, year)
    else:
        flow_m3 = pump.flow_at(np.broadcast_to(total_w, (month.size, year.size)), month, year)
    extra = np.maximum(flow_m3 - sun.pumped_m3, 0.0)
    extra *= extra >= _SMALL_M3
    per_m3 = _inverse(extra)
    source_kwh = (total_w - sun_motor_w) * (per_m3 / (1000 * source.efficiency))
    sun_shift_kwh = (sun_motor_w / (1000 * sun_efficiency) - sun.used_kwh) * per_m3
    return Extra(extra * np.tile(source.available, (1, repeat)), per_m3, source_kwh, sun_shift_kwh)


def _inverse(volume_m3: Array) -> Array:
    """Invert volumes, giving 0 where there is none."""
    some = volume_m3 > _SMALL_M3
    result: Array = some / np.where(some, volume_m3, 1.0)
    return result
