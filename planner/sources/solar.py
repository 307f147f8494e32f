"""The sun: an array of PV modules."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from planner.money.quantities import Line, Priced, bought, one_or_many
from planner.resource.years import WeatherYears
from planner.scenario.scenario import Scenario
from planner.scenario.solar import Solar
from planner.sources.base import SourceKind
from planner.supply.array import ArrayPower, ageing, array_power
from planner.supply.cables import dc_loss_share
from planner.supply.series import Sun

STRUCTURE = "Stand, wiring and fixing"


class SolarKind(SourceKind):
    """The sun; it pumps first, whenever there is power and room."""

    key = "solar"
    check_topic = "array"

    def described(self, scenario: Scenario) -> bool:
        """Whether the scenario has an array."""
        return scenario.sources.solar is not None

    def lines(self, scenario: Scenario, strings: ArrayLike) -> list[Line]:
        """Modules and what carries them."""
        solar = _solar(scenario)
        modules = one_or_many(np.asarray(strings, dtype=float) * solar.modules_in_series)
        stand_price, stand_life = solar.structure_price_per_module, solar.structure_life_years
        return [
            bought("PV modules", "Solar array", self.key, solar.module, quantity=modules, unit="module"),
            # The scenario gives no upkeep of the stand; the modules' own covers cleaning and tightening.
            Line(STRUCTURE, "Solar array", self.key, modules, "module", stand_price, stand_life, 0.0),
        ]

    def priced(self, scenario: Scenario, running_hours: float) -> list[Priced]:
        """Modules and stand."""
        solar = _solar(scenario)
        return [("PV modules", solar.module, "price"), (STRUCTURE, solar, "structure_price_per_module")]

    def array_key(self, scenario: Scenario) -> str:
        """Modules, planes and the controller's window; the number of strings multiplies the power."""
        return _solar(scenario).model_dump_json(exclude={"strings"}) + scenario.controller.model_dump_json()

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

    def modules(self, scenario: Scenario, strings: int) -> int:
        """Modules in so many strings."""
        return strings * _solar(scenario).modules_in_series


def _solar(scenario: Scenario) -> Solar:
    solar = scenario.sources.solar
    assert solar is not None
    return solar
