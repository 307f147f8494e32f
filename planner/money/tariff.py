"""The grid's bill: time bands, rising blocks, fixed and demand charges, levies and tax."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from planner.scenario.sources import Tariff

Array = NDArray[np.float64]
Integers = NDArray[np.int64]


def band_count(tariff: Tariff | None) -> int:
    """Count the time bands of a tariff, the hours outside all of them counting as one."""
    return 1 if tariff is None else 1 + len(tariff.bands)


def band_of_hour(tariff: Tariff | None, month: ArrayLike, hour: ArrayLike) -> Integers:
    """Tell the time band of each hour.

    Parameters
    ----------
    tariff : Tariff or None
        The tariff; None puts every hour outside the bands.
    month : array_like of int, (hours,)
        Month of each hour, 0 to 11.
    hour : array_like of int, (hours,)
        Hour of the day at which each hour begins, 0 to 23, local standard time.

    Returns
    -------
    ndarray of int, (hours,)
        0 outside all bands, i in the i-th band; where bands overlap, the first counts.

    Notes
    -----
    An hour belongs whole to the band that covers its midpoint. A range whose end is not after its beginning runs over
    midnight; its early hours count by the month in which they themselves lie.
    """
    months, middle = np.broadcast_arrays(np.asarray(month, dtype=np.int64), np.asarray(hour, dtype=float) + 0.5)
    band_of = np.zeros(middle.shape, dtype=np.int64)
    for number, band in reversed(list(enumerate(tariff.bands if tariff else [], start=1))):
        covered = np.zeros(middle.shape, dtype=bool)
        for begin, end in band.hours:
            after, before = middle >= begin, middle < end
            covered |= (after & before) if end > begin else (after | before)
        if band.months:
            covered &= np.isin(months + 1, band.months)
        band_of[covered] = number
    return band_of


@dataclass(frozen=True)
class Bill:
    """A year's electricity bill by its parts, each (...) [money/year]."""

    fixed: Array
    energy: Array
    demand: Array
    levy: Array
    tax: Array

    @property
    def total(self) -> Array:
        """The whole bill [money/year]."""
        return self.fixed + self.energy + self.demand + self.levy + self.tax


def yearly_bill(tariff: Tariff, kwh: ArrayLike, peak_kw: ArrayLike) -> Bill:
    """Bill a year's electricity at the prices of the first year.

    Parameters
    ----------
    tariff : Tariff
        The tariff.
    kwh : array_like, (..., 12, bands)
        Energy taken by month and time band (band 0 first, see `band_of_hour`) [kWh].
    peak_kw : array_like, (..., 12)
        Highest hourly demand of each month [kW].

    Returns
    -------
    Bill
        Its parts, each of shape (...).

    Raises
    ------
    ValueError
        When the bands of `kwh` are not those of the tariff, or an axis is not of twelve months.

    Notes
    -----
    Blocks are applied to each month's energy on its own. The tax is on everything, levies included.
    """
    energy_kwh, peaks_kw = np.asarray(kwh, dtype=float), np.asarray(peak_kw, dtype=float)
    if energy_kwh.shape[-2:] != (12, band_count(tariff)) or peaks_kw.shape[-1:] != (12,):
        raise ValueError(
            f"the tariff wants energy (..., 12, {band_count(tariff)}) and peaks (..., 12), "
            f"not {energy_kwh.shape} and {peaks_kw.shape}"
        )
    used_kwh = energy_kwh.sum(axis=(-1, -2))
    energy = _energy_charge(tariff, energy_kwh)
    fixed = np.full_like(energy, 12 * tariff.fixed_charge_per_month)
    demand = tariff.demand_charge_per_kw_month * peaks_kw.sum(axis=-1)
    levy = tariff.levy_per_kwh * used_kwh
    tax = tariff.tax_percent / 100 * (fixed + energy + demand + levy)
    return Bill(fixed=fixed, energy=energy, demand=demand, levy=levy, tax=tax)


def _energy_charge(tariff: Tariff, kwh: Array) -> Array:
    if tariff.price_per_kwh is not None:
        prices = np.array([tariff.price_per_kwh, *(band.price_per_kwh for band in tariff.bands)])
        by_band: Array = np.asarray((kwh.sum(axis=-2) * prices).sum(axis=-1))
        return by_band
    monthly_kwh = kwh.sum(axis=-1)
    charge = np.zeros_like(monthly_kwh)
    low = 0.0
    for block in tariff.blocks:
        high = np.inf if block.up_to_kwh_month is None else block.up_to_kwh_month
        charge += block.price_per_kwh * np.clip(monthly_kwh - low, 0.0, high - low)
        low = high
    by_block: Array = np.asarray(charge.sum(axis=-1))
    return by_block
