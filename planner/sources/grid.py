"""The grid: a connection with a timetable, outages and a tariff."""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import ArrayLike

from planner.money.formula import Operand
from planner.money.quantities import Group, Line, Priced, Thing, bought
from planner.money.rates import growth_factor
from planner.money.tariff import band_count, band_of_hour
from planner.money.yearly import Column, Definition
from planner.scenario.errors import InputError, Problem
from planner.scenario.scenario import Scenario
from planner.scenario.sources import Grid
from planner.sources.base import AcSupply, Array, Bands, DescribedTopUp, Surroundings, through_ac_cable
from planner.supply.availability import grid_availability
from planner.supply.outages import TooManyOutages
from planner.supply.run import HOUR, MONTH
from planner.text import text

UNLIMITED_W = 1e12


def _bill_of_year(y: Any) -> Operand:
    """Electricity bill of a year: that of the first year's prices, which grow from year 2."""
    return y.grid_bill * (y.grid_price_factor * growth_factor(y.grid_price_growth, y.year - 1))


def _emission_kg(y: Any) -> Operand:
    if y.grid_co2_kg_per_kwh is None:
        return 0.0
    return y.top_ups[GridKind.key].kwh * y.grid_co2_kg_per_kwh


class GridKind(DescribedTopUp):
    """The grid; the first to top up."""

    key = "grid"

    @property
    def running(self) -> tuple[Column, ...]:
        """Its bills."""
        return (Column("grid", later=_bill_of_year),)

    @property
    def emission(self) -> Definition:
        """Carbon dioxide of its energy, where the scenario has a figure."""
        return _emission_kg

    def emission_known(self, scenario: Scenario) -> bool:
        """Whether the scenario has a figure."""
        return _grid(scenario).co2_kg_per_kwh is not None

    @property
    def cautions(self) -> tuple[str, ...]:
        """Its voltage, and its current through an electronic drive."""
        return text("caution.grid"), text("caution.residual_current")

    @property
    def supply_name(self) -> str:
        """The connection."""
        return text("caution.source.grid")

    @property
    def emission_name(self) -> str:
        """Its energy."""
        return text("emission.grid")

    def available(self, scenario: Scenario) -> Array:
        """Its timetable less its outages, drawn anew for each life year."""
        try:
            return grid_availability(_grid(scenario), scenario.finance.analysis_period_years, scenario.seed)
        except TooManyOutages as error:
            raise InputError("", [Problem("sources.grid.outages.start_weights", str(error))]) from error

    def power_w(self, scenario: Scenario, around: Surroundings) -> Array:
        """Largest power of the connection."""
        return np.full((1, scenario.finance.analysis_period_years), _grid(scenario).power_limit_w or UNLIMITED_W)

    def efficiency(self, scenario: Scenario) -> float:
        """Efficiency of the controller, the AC cable's loss taken off."""
        grid = _grid(scenario)
        return through_ac_cable(scenario, grid.voltage_v, grid.phases)

    def bands(self, scenario: Scenario) -> Bands:
        """Bands of the tariff."""
        tariff = _grid(scenario).tariff
        return Bands(band_of_hour(tariff, MONTH, HOUR), band_count(tariff))

    def supply(self, scenario: Scenario) -> AcSupply:
        """Its nominal values."""
        grid = _grid(scenario)
        return AcSupply(self.key, grid.voltage_v, grid.phases, grid.frequency_hz, grid.voltage_tolerance_percent)

    def lines(self, scenario: Scenario, strings: ArrayLike) -> list[Line]:
        """Connection and line."""
        grid = _grid(scenario)
        length_m, price = grid.line_length_m, grid.line_price_per_m
        group: Group = "grid_connection"
        return [
            bought(Thing("connection"), group, self.key, grid),
            bought(Thing("power_line"), group, self.key, grid, quantity=length_m, unit="m", unit_price=price),
        ]

    def priced(self, scenario: Scenario, running_hours: float) -> list[Priced]:
        """Connection, and the line where one is built."""
        grid = _grid(scenario)
        line = [Priced(Thing("power_line"), grid, "line_price_per_m")] if grid.line_length_m > 0 else []
        return [Priced(Thing("connection"), grid, "price"), *line, Priced(Thing("grid_energy"), grid, "tariff")]

    def prices(self, scenario: Scenario) -> dict[str, Any]:
        """Its tariff and carbon dioxide."""
        grid = _grid(scenario)
        return {
            "tariff": grid.tariff,
            "grid_price_growth": grid.tariff.price_growth_percent_per_year / 100,
            "grid_co2_kg_per_kwh": grid.co2_kg_per_kwh,
        }


def _grid(scenario: Scenario) -> Grid:
    grid = scenario.sources.grid
    assert grid is not None
    return grid
