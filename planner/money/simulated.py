"""What an option does in each life year: the simulated quantities that its money rests on."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from planner.money.rates import Array
from planner.supply.option import Outcome


@dataclass(frozen=True)
class TopUpYears:
    """What one top-up source does in each life year; leading axes are cases.

    Attributes
    ----------
    kwh : ndarray, (..., n)
        Energy taken from it [kWh].
    hours : ndarray, (..., n)
        Running time [h].
    fuel_l : ndarray, (..., n)
        Fuel burnt [L].
    band_kwh : ndarray, (..., n, 12, bands)
        Energy by month and tariff band [kWh].
    peak_kw : ndarray, (..., n, 12)
        Highest half-hourly demand of each month [kW].
    """

    kwh: Array
    hours: Array
    fuel_l: Array
    band_kwh: Array
    peak_kw: Array

    @property
    def parts_kwh(self) -> list[Array]:
        """Energy of each tariff band, each (..., n) [kWh]."""
        return list(np.moveaxis(self.band_kwh.sum(axis=-2), -1, 0))


@dataclass(frozen=True)
class Quantities:
    """What one option does in each life year; leading axes are cases.

    Attributes
    ----------
    demand_m3, delivered_m3 : ndarray, (..., n)
        Water wanted and delivered [m³].
    solar_kwh : ndarray, (..., n)
        PV energy used [kWh].
    top_ups : mapping of str to TopUpYears
        What each top-up source of the option does, by name.
    """

    demand_m3: Array
    delivered_m3: Array
    solar_kwh: Array
    top_ups: Mapping[str, TopUpYears]

    def top_up(self, name: str) -> TopUpYears:
        """What a top-up source does; nothing, in one band, where the option has none of that name."""
        if name in self.top_ups:
            return self.top_ups[name]
        nothing = np.zeros_like(self.demand_m3)
        months = np.zeros((*nothing.shape, 12))
        return TopUpYears(nothing, nothing, nothing, months[..., None], months)

    def taken(self, cases: Any) -> Quantities:
        """Return the quantities of some cases: every array indexed alike."""
        return replace(
            self,
            demand_m3=self.demand_m3[cases],
            delivered_m3=self.delivered_m3[cases],
            solar_kwh=self.solar_kwh[cases],
            top_ups={
                name: TopUpYears(*(values[cases] for values in vars(source).values()))
                for name, source in self.top_ups.items()
            },
        )

    @property
    def fuel_l(self) -> Array:
        """Fuel burnt by all sources, (..., n) [L]."""
        return sum((source.fuel_l for source in self.top_ups.values()), np.zeros_like(self.demand_m3))

    # The pages of a report ask for the usual sources by these names.

    @property
    def grid_kwh(self) -> Array:
        """Energy from the grid by month and tariff band, (..., n, 12, bands) [kWh]."""
        return self.top_up("grid").band_kwh

    @property
    def grid_peak_kw(self) -> Array:
        """Highest half-hourly demand on the grid in each month, (..., n, 12) [kW]."""
        return self.top_up("grid").peak_kw

    @property
    def generator_kwh(self) -> Array:
        """Energy from the generator, (..., n) [kWh]."""
        return self.top_up("generator").kwh

    @property
    def generator_hours(self) -> Array:
        """Running time of the generator, (..., n) [h]."""
        return self.top_up("generator").hours


def quantities_of(outcome: Outcome) -> Quantities:
    """Sum an outcome's months into the yearly quantities that money needs; any leading axes stay."""
    return Quantities(
        demand_m3=outcome.demand_m3.sum(axis=-1),
        delivered_m3=outcome.delivered_m3.sum(axis=-1),
        solar_kwh=outcome.solar_kwh.sum(axis=-1),
        top_ups={
            name: TopUpYears(
                kwh=source.kwh.sum(axis=(-1, -2)),
                hours=source.hours.sum(axis=-1),
                fuel_l=source.fuel_l.sum(axis=-1),
                band_kwh=source.kwh,
                peak_kw=source.peak_kw,
            )
            for name, source in outcome.top_ups.items()
        },
    )
