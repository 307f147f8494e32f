"""What all checks of one site share: levels, duty, temperatures and the pump that would do."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property
from math import ceil
from typing import Any

import numpy as np
from numpy.typing import NDArray

from planner.resource.sun import Place
from planner.resource.years import WeatherYears
from planner.scenario.errors import InputError, Problem
from planner.scenario.scenario import Scenario
from planner.supply.array import ArrayPower, array_power
from planner.text import text
from planner.water.demand import daily_demand_m3
from planner.water.duty import LIMITS, CannotDraw, CannotLift, CannotStart, Duty, Limit, duty_point
from planner.water.head import SystemHead, system_head
from planner.water.pump import ImplausiblePump, PumpModel, hydraulic_power_w, pump_model

Array = NDArray[np.float64]

TOO_SHORT = 0.9
"""Share of the head needed below which a pump counts as the wrong one: common practice, no source."""
WIRE_TO_WATER = 0.45
"""Share of the motor's input that the water gets in a pump that is only proposed: assumed, common practice."""
YIELD_USED = 0.95
"""Share of the safe yield to plan on, so that the pump that is bought stays below it: common practice, no source."""
COLD_ALLOWANCE_K = 5.0
"""How much colder than the weather's coldest hour it may become where no temperature was given: common practice."""


@dataclass(frozen=True, eq=False)
class Basis:
    """The site as the checks see it, in the month of the deepest water.

    Attributes
    ----------
    scenario, place, weather
        What was given.
    strings, tank_m3 : int or None, float or None
        The chosen design, where there is one; numbers of the scenario where it gives them; else None.
    likely_strings, likely_tank_m3 : int, float
        What the checks count with where that is open, see `design.with_likely_design`.
    system : SystemHead
        What borehole and pipeline ask.
    month : int
        Month of the deepest water, 0 to 11.
    model : PumpModel or None
        The pump; None where its figures contradict one another, as `pump_fault` says.
    duty : Duty or None
        Duty at the flow that safe yield, power limit and intake allow; None where there is none.
    free_duty : Duty or None
        Duty at full speed with nothing held back.
    drawing_duty : Duty or None
        Duty at the flow that safe yield and power limit allow, whether the intake stays covered or not.
    cannot : CannotLift, CannotStart, CannotDraw or None
        Why there is no duty.
    daily_m3 : (years, 12) array
        Water drawn per day.
    """

    scenario: Scenario
    place: Place
    weather: WeatherYears
    strings: int | None
    tank_m3: float | None
    system: SystemHead
    month: int
    model: PumpModel | None
    pump_fault: str
    duty: Duty | None
    free_duty: Duty | None
    drawing_duty: Duty | None
    cannot: CannotLift | CannotStart | CannotDraw | None
    daily_m3: Array
    likely_strings: int = 1
    likely_tank_m3: float = 0.0

    @cached_property
    def month_name(self) -> str:
        """Name of the month of the deepest water."""
        return text(f"month_name.{self.month + 1}")

    @cached_property
    def static_level_m(self) -> float:
        """Deepest water at rest, below ground at the borehole [m]."""
        return float(self.system.static_level_m[self.month])

    @cached_property
    def design_flow_m3h(self) -> float:
        """Flow to plan on: the rated one, or a little less than the safe yield where the rated is more [m3/h]."""
        rated, safe = self.scenario.pump.rated_flow_m3h, self.scenario.borehole.safe_yield_m3h
        return rated if rated <= safe else YIELD_USED * safe

    @cached_property
    def needed_head_m(self) -> float:
        """Head that the site asks at the flow to plan on [m]."""
        static = self.static_level_m + self.system.rise_m
        return float(self.system.required_m(self.design_flow_m3h, static))

    @cached_property
    def better_head_m(self) -> int:
        """Head to ask of another pump, whole metres [m]."""
        return ceil(self.needed_head_m)

    @cached_property
    def better_power_w(self) -> float:
        """Input to expect of a motor that suits that pump [W]."""
        return float(hydraulic_power_w(self.design_flow_m3h, self.better_head_m)) / WIRE_TO_WATER

    @cached_property
    def given_head_m(self) -> float:
        """Head that the pump gives at the flow to plan on, full speed [m]; nil where the pump is not understood."""
        return 0.0 if self.model is None else float(self.model.head_m(self.design_flow_m3h, 1.0))

    @cached_property
    def too_short(self) -> bool:
        """Whether another pump is needed for the head."""
        return self.duty is None or self.given_head_m < TOO_SHORT * self.needed_head_m * (1 - 1e-9)

    @cached_property
    def flow_m3h(self) -> float:
        """Flow that the checks count with [m3/h]."""
        return self.design_flow_m3h if self.duty is None or self.too_short else self.duty.flow_m3h

    @cached_property
    def flow_words(self) -> str:
        """The same in words."""
        if self.duty is None or self.too_short:
            return text("basis.planned_flow", flow=f"{self.flow_m3h:.2f}")
        return text("basis.duty_flow", flow=f"{self.flow_m3h:.2f}")

    @cached_property
    def drawdown_m(self) -> float:
        """Drawdown at that flow [m]."""
        return float(self.system.drawdown.at(self.flow_m3h))

    @cached_property
    def full_duty(self) -> Duty:
        """Duty with no limit to the motor's power.

        Raises
        ------
        CannotLift, CannotDraw
            Where there is no duty.
        """
        own = self.scenario
        return duty_point(own.borehole, own.pipeline, own.pump, month=self.month, without=["power limit"])

    @cached_property
    def pump_level_m(self) -> float:
        """Level, above ground at the borehole, to which the water would rise just above the running pump [m]."""
        head = self.needed_head_m if self.duty is None or self.too_short else self.duty.total_head_m
        return head - self.drawdown_m - self.static_level_m

    @cached_property
    def shut_off_head_m(self) -> float:
        """Head against a closed valve, of the given pump or of the one that would do, whichever is more [m]."""
        pump = self.scenario.pump
        given = pump.max_head_m if self.model is None else self.model.max_head_m
        if not self.too_short:
            return given
        return max(given, self.better_head_m * pump.max_head_m / pump.rated_head_m)

    @cached_property
    def motor_input_w(self) -> float:
        """Rated input of the motor, of the given pump or of the one that would do [W]."""
        return self.better_power_w if self.too_short else self.scenario.pump.rated_power_w

    @cached_property
    def coldest_c(self) -> float:
        """Lowest air temperature to reckon with [deg C]."""
        given = self.scenario.site.temperature_lowest_c
        return float(self.weather.temperature_c.min()) - COLD_ALLOWANCE_K if given is None else given

    @cached_property
    def coldest_words(self) -> str:
        """The same in words."""
        if self.scenario.site.temperature_lowest_c is not None:
            return text("basis.coldest_given", temperature=f"{self.coldest_c:.1f}")
        allowance = f"{COLD_ALLOWANCE_K:g}"
        return text("basis.coldest_of_weather", temperature=f"{self.coldest_c:.1f}", allowance=allowance)

    @cached_property
    def hottest_c(self) -> float:
        """Highest air temperature to reckon with [deg C]."""
        given = self.scenario.site.temperature_highest_c
        return float(self.weather.temperature_c.max()) if given is None else given

    @cached_property
    def ground_c(self) -> float:
        """Temperature of the ground at the depth of a cable, the mean of the warmest month [deg C]."""
        means = [self.weather.temperature_c[self.weather.sun.month == month].mean() for month in range(12)]
        return float(max(means))

    @cached_property
    def strings_counted(self) -> int:
        """Strings that the checks count with; 0 without an array."""
        if self.scenario.sources.solar is None:
            return 0
        return self.likely_strings if self.strings is None else self.strings

    @cached_property
    def tank_counted_m3(self) -> float:
        """Tank that the checks count with [m3]."""
        return self.likely_tank_m3 if self.tank_m3 is None else self.tank_m3

    @cached_property
    def first_year_array(self) -> ArrayPower:
        """Power of one string in the first year of the weather.

        Raises
        ------
        AssertionError
            Where the scenario has no array.
        """
        solar = self.scenario.sources.solar
        assert solar is not None
        hourly = ("ghi_w_m2", "dni_w_m2", "dhi_w_m2", "temperature_c", "wind_m_s")
        first = {name: getattr(self.weather, name)[:, :1] for name in hourly}
        return array_power(solar, self.scenario.controller, replace(self.weather, **first))


def basis_of(
    scenario: Scenario,
    place: Place,
    weather: WeatherYears,
    strings: int | None = None,
    tank_m3: float | None = None,
) -> Basis:
    """Work out what the checks share.

    Parameters
    ----------
    scenario, place, weather
        The site.
    strings, tank_m3 : int or None, float or None
        The chosen design, where the scenario leaves it open.

    Raises
    ------
    InputError
        If a segment names a pipe that the tables do not have.
    """
    solar, tank = scenario.sources.solar, scenario.tank
    if strings is None and solar is not None and solar.strings != "auto":
        strings = solar.strings
    if tank_m3 is None and tank.volume_m3 != "auto":
        tank_m3 = tank.volume_m3
    try:
        system = system_head(scenario.borehole, scenario.pipeline)
    except ValueError as error:
        raise InputError("", [Problem("pipeline.segments", str(error))]) from error
    month = int(system.static_level_m.argmax())
    basis = Basis(
        scenario=scenario,
        place=place,
        weather=weather,
        strings=strings,
        tank_m3=tank_m3,
        system=system,
        month=month,
        model=None,
        pump_fault="",
        duty=None,
        free_duty=None,
        drawing_duty=None,
        cannot=None,
        daily_m3=daily_demand_m3(scenario.demand, scenario.finance.analysis_period_years),
    )
    try:
        basis = replace(basis, model=pump_model(scenario.pump))
    except ImplausiblePump as error:
        return replace(basis, pump_fault=str(error))

    def duty(*without: Limit) -> Duty:
        limit_w = scenario.controller.power_limit_w
        return duty_point(scenario.borehole, scenario.pipeline, scenario.pump, limit_w, month, without=without)

    try:
        basis = replace(basis, free_duty=duty(*LIMITS))
        basis = replace(basis, drawing_duty=duty("intake level"))
        return replace(basis, duty=duty())
    except (CannotLift, CannotStart, CannotDraw) as error:
        return replace(basis, cannot=error)


def changed(basis: Basis, scenario: Scenario) -> Basis:
    """Work out the basis of the same site with something changed."""
    return basis_of(scenario, basis.place, basis.weather, basis.strings, basis.tank_m3)


def with_design(basis: Basis, **design: Any) -> Basis:
    """Return the same site with another design; what was worked out of the site itself is kept.

    Parameters
    ----------
    basis : Basis
        The site.
    **design
        Fields of `Basis` that hold the design: `scenario` (where it differs in modules in series alone), `strings`,
        `tank_m3`, `likely_strings`, `likely_tank_m3`.
    """
    other = replace(basis, **design)
    own = {"strings_counted", "tank_counted_m3", *(["first_year_array"] if "scenario" in design else [])}
    vars(other).update(
        {name: value for name, value in vars(basis).items() if name not in vars(other) and name not in own}
    )
    return other
