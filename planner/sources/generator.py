"""The generator: a set that burns fuel, is worn by running hours and loses power in thin and hot air."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import numpy as np
from numpy.typing import ArrayLike

from planner.money.formula import Operand
from planner.money.quantities import Line, Priced, Thing, bought
from planner.money.rates import growth_factor
from planner.money.yearly import Column, Definition
from planner.scenario.scenario import Scenario
from planner.scenario.sources import Generator
from planner.sources.base import AcSupply, Array, DescribedTopUp, Surroundings, through_ac_cable
from planner.supply.availability import generator_availability
from planner.supply.generator import FuelUse, derated_rating_kw
from planner.supply.outages import HOURS
from planner.text import text

VOLTAGE_TOLERANCE_PERCENT = 5.0
"""Variation of a generating set's voltage: ISO 8528-5, from memory."""


def _fuel_of_year(y: Any) -> Operand:
    """Fuel of a year, at a price that grows from year 2."""
    return y.top_ups[GeneratorKind.key].fuel_l * (y.fuel_price_per_l * growth_factor(y.fuel_price_growth, y.year - 1))


def _service_of_year(y: Any) -> Operand:
    """Services and overhauls of a year."""
    return y.services * y.service_price + y.overhauls * y.overhaul_price


def _emission_kg(y: Any) -> Operand:
    return y.top_ups[GeneratorKind.key].fuel_l * y.generator.co2_kg_per_l


class GeneratorKind(DescribedTopUp):
    """The generator; it tops up after the grid."""

    key = "generator"

    @property
    def running(self) -> tuple[Column, ...]:
        """Fuel, services and overhauls."""
        return Column("fuel", later=_fuel_of_year), Column("generator_service", later=_service_of_year)

    @property
    def emission(self) -> Definition:
        """Carbon dioxide of its fuel."""
        return _emission_kg

    @property
    def cautions(self) -> tuple[str, ...]:
        """Its current, its exhaust and fuel, and what it could feed back into."""
        return text("caution.residual_current"), text("caution.exhaust"), text("caution.backfeed")

    @property
    def supply_name(self) -> str:
        """The set."""
        return text("caution.source.generator")

    @property
    def emission_name(self) -> str:
        """Its fuel."""
        return text("emission.fuel")

    def rating_kw(self, scenario: Scenario) -> float:
        """Rated power at the reference conditions [kW]."""
        return _generator(scenario).rating_kw

    def available(self, scenario: Scenario) -> Array:
        """Its allowed hours."""
        hours = generator_availability(_generator(scenario))[:, None]
        return np.broadcast_to(hours, (HOURS, scenario.finance.analysis_period_years))

    def power_w(self, scenario: Scenario, around: Surroundings) -> Array:
        """Rating left at the site's altitude and the hour's air temperature."""
        rating_kw = derated_rating_kw(_generator(scenario), around.altitude_m, around.weather.temperature_c)
        return (1000 * rating_kw)[:, around.weather_of_year]

    def efficiency(self, scenario: Scenario) -> float:
        """Efficiency of the controller, the AC cable's loss taken off."""
        generator = _generator(scenario)
        return through_ac_cable(scenario, generator.voltage_v, generator.phases)

    def minimum_run_h(self, scenario: Scenario) -> float:
        """Shortest run once started [h]."""
        return _generator(scenario).minimum_run_h

    def fuel(self, scenario: Scenario) -> FuelUse:
        """Its fuel at no load and per kWh."""
        generator = _generator(scenario)
        return FuelUse(generator.rating_kw, generator.idle_l_per_h_per_kw, generator.marginal_l_per_kwh)

    def supply(self, scenario: Scenario) -> AcSupply:
        """Its nominal values."""
        generator = _generator(scenario)
        return AcSupply(
            self.key,
            generator.voltage_v,
            generator.phases,
            generator.frequency_hz,
            VOLTAGE_TOLERANCE_PERCENT,
        )

    def lines(self, scenario: Scenario, strings: ArrayLike) -> list[Line]:
        """The set."""
        generator = _generator(scenario)
        line = bought(Thing("generator"), "generator", self.key, generator)
        return [replace(line, by_hours=True, size=f"{generator.rating_kw:g}")]

    def priced(self, scenario: Scenario, running_hours: float) -> list[Priced]:
        """The set, its services, and its overhauls where one falls due."""
        generator = _generator(scenario)
        things = [
            Priced(Thing("generator"), generator, "price"),
            Priced(Thing("fuel"), generator, "fuel_price_per_l"),
            Priced(Thing("services"), generator, "service_price"),
        ]
        if running_hours >= generator.overhaul_interval_h:
            things.append(Priced(Thing("overhauls"), generator, "overhaul_price"))
        return things

    def prices(self, scenario: Scenario) -> dict[str, Any]:
        """Fuel, services and overhauls."""
        generator = _generator(scenario)
        return {
            "generator": generator,
            "fuel_price_per_l": generator.fuel_price_per_l + generator.fuel_delivery_per_l,
            "fuel_price_growth": generator.fuel_price_growth_percent_per_year / 100,
            "service_price": generator.service_price,
            "overhaul_price": generator.overhaul_price,
        }


def _generator(scenario: Scenario) -> Generator:
    generator = scenario.sources.generator
    assert generator is not None
    return generator
