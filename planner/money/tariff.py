"""The grid's bill: time bands, rising blocks, fixed and demand charges, levies and tax."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from planner.money.formula import Operand
from planner.money.functions import weighted_total
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


def part_kwh(tariff: Tariff, kwh: Array) -> Array:
    """Part a year's energy by what it is priced at.

    Parameters
    ----------
    tariff : Tariff
        The tariff.
    kwh : ndarray, (..., 12, bands)
        Energy by month and time band [kWh].

    Returns
    -------
    ndarray, (..., parts)
        Energy by block, of each month's energy on its own, or by band, the hours outside all bands first [kWh].
    """
    if not tariff.blocks:
        return np.asarray(kwh.sum(axis=-2))
    monthly_kwh, low, parts = kwh.sum(axis=-1), 0.0, []
    for block in tariff.blocks:
        high = np.inf if block.up_to_kwh_month is None else block.up_to_kwh_month
        parts.append(np.clip(monthly_kwh - low, 0.0, high - low).sum(axis=-1))
        low = high
    return np.stack(parts, axis=-1)


def part_prices(tariff: Tariff) -> list[Operand]:
    """Price of each part of `part_kwh` [money/kWh]."""
    if tariff.blocks:
        return [block.price_per_kwh for block in tariff.blocks]
    return [tariff.price_per_kwh, *(band.price_per_kwh for band in tariff.bands)]


@dataclass(frozen=True)
class Bill:
    """A year's electricity bill by its parts, each (...) or a formula [money/year]; the tax is on everything else."""

    fixed: Operand
    energy: Operand
    demand: Operand
    levy: Operand
    tax_share: Operand

    @property
    def before_tax(self) -> Operand:
        """Everything but the tax [money/year]."""
        return self.fixed + self.energy + self.demand + self.levy

    @property
    def tax(self) -> Operand:
        """The tax [money/year]."""
        return self.before_tax * self.tax_share

    @property
    def total(self) -> Operand:
        """The whole bill [money/year]."""
        return self.before_tax * (1 + self.tax_share)


def bill_of(tariff: Tariff, parts_kwh: Sequence[Operand], kwh: Operand, peaks_kw: Operand) -> Bill:
    """Bill a year at the prices of the first year.

    Parameters
    ----------
    tariff : Tariff
        The tariff; its prices may be arrays of cases with an axis for the years, or cells.
    parts_kwh : sequence of operand
        Energy of each part of `part_kwh` [kWh].
    kwh, peaks_kw : operand
        Energy in all [kWh], and the sum of the monthly peaks [kW].
    """
    return Bill(
        fixed=12 * tariff.fixed_charge_per_month,
        energy=weighted_total(list(parts_kwh), part_prices(tariff)),
        demand=peaks_kw * tariff.demand_charge_per_kw_month,
        levy=kwh * tariff.levy_per_kwh,
        tax_share=tariff.tax_percent / 100,
    )


def yearly_bill(tariff: Tariff, kwh: ArrayLike, peak_kw: ArrayLike) -> Bill:
    """Bill years of electricity at the prices of the first year.

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
        Its parts, each broadcastable to (...).

    Raises
    ------
    ValueError
        When the bands of `kwh` are not those of the tariff, or an axis is not of twelve months.
    """
    energy_kwh, peaks_kw = np.asarray(kwh, dtype=float), np.asarray(peak_kw, dtype=float)
    if energy_kwh.shape[-2:] != (12, band_count(tariff)) or peaks_kw.shape[-1:] != (12,):
        raise ValueError(
            f"the tariff wants energy (..., 12, {band_count(tariff)}) and peaks (..., 12), "
            f"not {energy_kwh.shape} and {peaks_kw.shape}"
        )
    parts = np.moveaxis(part_kwh(tariff, energy_kwh), -1, 0)
    return bill_of(tariff, list(parts), energy_kwh.sum(axis=(-1, -2)), peaks_kw.sum(axis=-1))
