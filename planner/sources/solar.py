"""The sun: an array of PV modules."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import ArrayLike, NDArray

from planner.money.quantities import Line, Priced, Thing, bought, one_or_many
from planner.resource.years import WeatherYears
from planner.scenario.scenario import Scenario
from planner.scenario.solar import Solar
from planner.sources.base import SourceKind
from planner.supply.array import ArrayPower, ageing, array_power
from planner.supply.cables import dc_loss_share
from planner.supply.series import Sun
from planner.text import text

MODULES, STAND = Thing("modules"), Thing("structure")


class SolarKind(SourceKind):
    """The sun; it pumps first, whenever there is power and room."""

    key = "solar"
    check_topic = "array"
    has_array = True

    @property
    def cautions(self) -> tuple[str, ...]:
        """Its voltage by day, and the arc of a direct current."""
        return text("caution.daylight"), text("caution.dc_arc")

    @property
    def supply_name(self) -> str:
        """The array."""
        return text("caution.source.solar")

    def described(self, scenario: Scenario) -> bool:
        """Whether the scenario has an array."""
        return scenario.sources.solar is not None

    def lines(self, scenario: Scenario, strings: ArrayLike) -> list[Line]:
        """Modules and what carries them."""
        solar = _solar(scenario)
        modules = one_or_many(np.asarray(strings, dtype=float) * solar.modules_in_series)
        stand_price, stand_life = solar.structure_price_per_module, solar.structure_life_years
        return [
            bought(MODULES, "solar_array", self.key, solar.module, quantity=modules, unit="module"),
            # The scenario gives no upkeep of the stand; the modules' own covers cleaning and tightening.
            Line(STAND, "solar_array", self.key, modules, "module", stand_price, stand_life, 0.0),
        ]

    def priced(self, scenario: Scenario, running_hours: float) -> list[Priced]:
        """Modules and stand."""
        solar = _solar(scenario)
        return [Priced(MODULES, solar.module, "price"), Priced(STAND, solar, "structure_price_per_module")]

    def array(self, scenario: Scenario, weather: WeatherYears) -> ArrayPower:
        """Hourly power of one new string."""
        apart = scenario.cables is not None and scenario.cables.dc is not None
        return array_power(_solar(scenario), scenario.controller, weather, cable_apart=apart)

    def sun(
        self, scenario: Scenario, array: ArrayPower, weather_of_year: NDArray[np.int64], strings: tuple[int, ...]
    ) -> Sun:
        """Power of the strings over the life, the DC cable's loss told apart."""
        solar = _solar(scenario)
        run = scenario.cables.dc if scenario.cables else None
        string_w = solar.modules_in_series * solar.module.power_w
        return Sun(
            string_w=array.string_w,
            weather_of_year=weather_of_year,
            ageing=ageing(solar, weather_of_year.size),
            strings=strings,
            efficiency=scenario.controller.efficiency_percent / 100,
            cable_loss_per_w=0.0 if run is None else dc_loss_share(run, solar, 1) / string_w,
        )

    def strings_to_try(self, scenario: Scenario) -> tuple[int, ...]:
        """The number given, or all up to the largest."""
        solar = _solar(scenario)
        return tuple(range(1, solar.strings_max + 1)) if solar.strings == "auto" else (solar.strings,)

    def strings_to_size(self, scenario: Scenario, listed: Sequence[int]) -> tuple[int, ...]:
        """Those listed, else all up to the largest, and the number given."""
        solar = _solar(scenario)
        tried = set(listed or range(1, solar.strings_max + 1))
        return tuple(sorted(tried | (set() if solar.strings == "auto" else {solar.strings})))

    def modules(self, scenario: Scenario, strings: int) -> int:
        """Modules in so many strings."""
        return strings * _solar(scenario).modules_in_series

    def array_kw(self, scenario: Scenario, strings: int) -> float:
        """Rated power of so many strings [kW]."""
        return self.modules(scenario, strings) * _solar(scenario).module.power_w / 1000


def _solar(scenario: Scenario) -> Solar:
    solar = scenario.sources.solar
    assert solar is not None
    return solar
