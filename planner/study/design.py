"""From a checked scenario to options ready to run: weather, flow tables, availability and the candidates to try."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from planner.money.tariff import band_count, band_of_hour
from planner.resource.sun import Place
from planner.resource.years import WeatherYears
from planner.scenario.errors import InputError, Problem
from planner.scenario.reader import option_scenario
from planner.scenario.scenario import SOURCE_ORDER, Scenario
from planner.scenario.solar import Solar
from planner.scenario.sources import Generator, Grid
from planner.study.site import place_of, weather_of
from planner.supply.array import ArrayPower, ageing, array_power
from planner.supply.availability import generator_availability, grid_availability
from planner.supply.cables import ac_loss_share, dc_loss_share, drop_loss_share, drop_loss_w
from planner.supply.generator import derated_rating_kw
from planner.supply.outages import HOURS, TooManyOutages
from planner.supply.run import HOUR, MONTH, FuelUse, Option
from planner.supply.series import Sun, TopUpSource
from planner.water.demand import hourly_demand_m3, users_share
from planner.water.duty import CannotDraw, CannotLift, CannotStart, FlowTable, flow_table
from planner.water.pump import ImplausiblePump

Array = NDArray[np.float64]

UNLIMITED_W = 1e12


@dataclass(frozen=True)
class Design:
    """One supply option as designed: its own scenario and what physics needs to run it.

    `array` is None without sun; `outage_share` is the mean share of the hours without grid.
    """

    name: str
    sources: tuple[str, ...]
    scenario: Scenario
    pump: FlowTable
    array: ArrayPower | None
    grid: TopUpSource | None
    generator: TopUpSource | None

    def strings_to_try(self) -> tuple[int, ...]:
        """Numbers of strings to try; (0,) without sun."""
        if "solar" not in self.sources or self.scenario.sources.solar is None:
            return (0,)
        given = self.scenario.sources.solar.strings
        return tuple(range(1, self.scenario.sources.solar.strings_max + 1)) if given == "auto" else (given,)

    def tanks_to_try(self) -> tuple[float, ...]:
        """Tank volumes to try [m³]."""
        given = self.scenario.tank.volume_m3
        return tuple(size.volume_m3 for size in self.scenario.tank.sizes) if given == "auto" else (given,)


@dataclass(frozen=True)
class Ground:
    """What all options share: place, weather, demand and tariff bands.

    `draw_m3` (hours, years) is the water drawn from the tank, leakage included.
    """

    scenario: Scenario
    place: Place
    altitude_given: bool
    weather: WeatherYears
    weather_of_year: NDArray[np.int64]
    draw_m3: Array
    bands: NDArray[np.int64] | None
    band_count: int


def ground_of(scenario: Scenario, folder: Path) -> Ground:
    """Work out what all options share."""
    years = scenario.finance.life_years
    place = place_of(scenario)
    weather = weather_of(scenario, place, folder)
    grid = scenario.sources.grid
    return Ground(
        scenario=scenario,
        place=place,
        altitude_given=scenario.site.altitude_m is not None,
        weather=weather,
        weather_of_year=np.arange(years) % weather.ghi_w_m2.shape[1],
        draw_m3=hourly_demand_m3(scenario.demand, years),
        bands=None if grid is None else band_of_hour(grid.tariff, MONTH, HOUR),
        band_count=1 if grid is None else band_count(grid.tariff),
    )


def designs_of(ground: Ground) -> list[Design]:
    """Prepare every supply option; options that share a pump or an array share its working-out."""
    scenario = ground.scenario
    tables: dict[str, FlowTable] = {}
    arrays: dict[str, ArrayPower] = {}
    designs = []
    for name in scenario.option_names:
        own = option_scenario(scenario, name)
        sources = tuple(source for source in SOURCE_ORDER if source in name.split(" + "))
        _check_tank(own, ground.draw_m3)
        _check_bands(own, scenario)
        hydraulics = own.model_dump_json(include={"borehole", "pipeline", "pump", "controller", "cables"})
        if hydraulics not in tables:
            tables[hydraulics] = pump_table(own, ground.draw_m3.shape[1])
        array = None
        if "solar" in sources and own.sources.solar is not None:
            electrics = own.sources.solar.model_dump_json(exclude={"strings"}) + own.controller.model_dump_json()
            if electrics not in arrays:
                apart = own.cables is not None and own.cables.dc is not None
                arrays[electrics] = array_power(own.sources.solar, own.controller, ground.weather, cable_apart=apart)
            array = arrays[electrics]
        designs.append(
            Design(
                name=name,
                sources=sources,
                scenario=own,
                pump=tables[hydraulics],
                array=array,
                grid=_grid_source(own, own.sources.grid) if "grid" in sources and own.sources.grid else None,
                generator=(
                    _generator_source(own, own.sources.generator, ground)
                    if "generator" in sources and own.sources.generator
                    else None
                ),
            )
        )
    return designs


def option_of(
    design: Design,
    ground: Ground,
    strings: Sequence[int],
    tank_m3: Sequence[float],
    start_percent: Sequence[float],
    stop_percent: Sequence[float],
) -> Option:
    """Bind candidates of strings, tanks and levels to a design, for the hour loop."""
    own = design.scenario
    solar, generator = own.sources.solar, own.sources.generator
    years = ground.draw_m3.shape[1]
    sun = None
    if design.array is not None and solar is not None:
        sun = Sun(
            string_w=design.array.string_w,
            weather_of_year=ground.weather_of_year,
            ageing=ageing(solar, years),
            strings=tuple(strings),
            efficiency=own.controller.efficiency_percent / 100,
            cable_loss_per_w=_dc_loss_per_w(own, solar),
        )
    fuel = None
    if design.generator is not None and generator is not None:
        fuel = FuelUse(
            generator.rating_kw, generator.idle_l_per_h_per_kw, generator.marginal_l_per_kwh, generator.minimum_run_h
        )
    return Option(
        name=design.name,
        sources=design.sources,
        pump=design.pump,
        draw_m3=ground.draw_m3,
        users_share=users_share(own.demand, ground.draw_m3),
        sun=sun,
        grid=design.grid,
        generator=design.generator,
        fuel=fuel,
        tank_m3=np.asarray(tank_m3, dtype=float),
        start_share=np.asarray(start_percent, dtype=float) / 100,
        stop_share=np.asarray(stop_percent, dtype=float) / 100,
        daily_limit_m3=own.borehole.daily_limit_m3,
    )


def pump_table(scenario: Scenario, years: int) -> FlowTable:
    """Solve what flow the controller's output gives, the drop cable's loss taken off, by life year and month.

    Parameters
    ----------
    scenario : Scenario
        The option's own scenario.
    years : int
        Life years.

    Raises
    ------
    InputError
        If pump, borehole, pipeline or drop cable cannot work as given.
    """
    limit_w = scenario.controller.power_limit_w
    try:
        table = flow_table(scenario.borehole, scenario.pipeline, scenario.pump, limit_w, years)
        return _through_drop_cable(table, scenario)
    except CannotDraw as error:
        raise InputError("", [Problem("borehole.pump_depth_m", str(error))]) from error
    except CannotLift as error:
        raise InputError("", [Problem("pump.max_head_m", str(error))]) from error
    except CannotStart as error:
        if limit_w is None:
            text = f"{error} (the pump's rated power, as controller.power_limit_w was not given)"
            raise InputError("", [Problem("pump.rated_power_w", text)]) from error
        raise InputError("", [Problem("controller.power_limit_w", str(error))]) from error
    except ImplausiblePump as error:
        raise InputError("", [Problem("pump", str(error))]) from error
    except ValueError as error:
        raise InputError("", [Problem("pipeline.segments", str(error))]) from error


def _through_drop_cable(table: FlowTable, scenario: Scenario) -> FlowTable:
    """Put what the drop cable loses on top of the motor's input."""
    run = scenario.cables.drop if scenario.cables else None
    if run is None:
        return table
    rated_w = scenario.pump.rated_power_w
    share = drop_loss_share(run, rated_w)
    if share >= 1:
        text = f"the drop cable would lose more than the motor's {rated_w:g} W; take a larger section"
        raise InputError("", [Problem("cables.drop.section_mm2", text)])
    return table.with_loss(drop_loss_w(run, rated_w, table.power_w, table.torque))


def _dc_loss_per_w(scenario: Scenario, solar: Solar) -> float:
    run = scenario.cables.dc if scenario.cables else None
    if run is None:
        return 0.0
    return dc_loss_share(run, solar, 1) / (solar.modules_in_series * solar.module.power_w)


def _ac_efficiency(scenario: Scenario, source: Grid | Generator) -> float:
    """Efficiency from the AC supply to the controller's output, the AC cable's loss at rated power taken off."""
    efficiency = scenario.controller.ac_efficiency_percent / 100
    run = scenario.cables.ac if scenario.cables else None
    if run is None or source.voltage_v is None:
        return efficiency
    share = ac_loss_share(run, scenario.pump.rated_power_w / efficiency, source.voltage_v, source.phases or 1)
    if share >= 1:
        text = "the cable would lose all that grid or generator give; take a larger section"
        raise InputError("", [Problem("cables.ac.section_mm2", text)])
    return efficiency * (1 - share)


def _check_tank(scenario: Scenario, draw_m3: Array) -> None:
    """Refuse a tank that an hour's draw of the first year would empty."""
    tank = scenario.tank
    largest = max(size.volume_m3 for size in tank.sizes) if tank.volume_m3 == "auto" else tank.volume_m3
    draw = float(draw_m3[:, 0].max())
    if largest < draw:
        key = "tank.sizes" if tank.volume_m3 == "auto" else "tank.volume_m3"
        text = (
            f"{largest:g} m3 is less than the {draw:.2f} m3 drawn in the busiest hour of the first year; "
            f"give at least {draw:.2f} m3"
        )
        raise InputError("", [Problem(key, text)])


def _check_bands(own: Scenario, base: Scenario) -> None:
    """Refuse an override that moves the tariff's hours: energy is counted once by the base scenario's bands."""
    grids = (own.sources.grid, base.sources.grid)
    if grids[0] is None or grids[1] is None:
        return
    hours = [[(band.hours, band.months) for band in grid.tariff.bands] for grid in grids if grid is not None]
    if hours[0] != hours[1]:
        text = "an override may change the prices of the tariff's bands, but not their number, hours or months"
        raise InputError("", [Problem("overrides", text)])


def _grid_source(scenario: Scenario, grid: Grid) -> TopUpSource:
    years = scenario.finance.life_years
    try:
        available = grid_availability(grid, years, scenario.seed)
    except TooManyOutages as error:
        raise InputError("", [Problem("sources.grid.outages.start_weights", str(error))]) from error
    return TopUpSource(
        available=available,
        power_w=np.full((1, years), grid.power_limit_w or UNLIMITED_W),
        efficiency=_ac_efficiency(scenario, grid),
        blending=scenario.controller.mode == "blending",
    )


def _generator_source(scenario: Scenario, generator: Generator, ground: Ground) -> TopUpSource:
    years = scenario.finance.life_years
    rating_w = 1000 * derated_rating_kw(generator, ground.place.altitude_m, ground.weather.temperature_c)
    return TopUpSource(
        available=np.broadcast_to(generator_availability(generator)[:, None], (HOURS, years)),
        power_w=rating_w[:, ground.weather_of_year],
        efficiency=_ac_efficiency(scenario, generator),
        blending=scenario.controller.mode == "blending",
    )
