"""From a checked scenario to options ready to run: weather, demand, flow tables, array and availability."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Protocol, TypeVar

import numpy as np
from numpy.typing import NDArray

from planner.money.tariff import band_count, band_of_hour
from planner.resource.sun import Place
from planner.resource.years import WeatherYears
from planner.scenario.errors import InputError, Problem
from planner.scenario.scenario import Scenario
from planner.scenario.solar import Solar
from planner.scenario.sources import Generator, Grid
from planner.study.cases import digest
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


Kept = TypeVar("Kept")


class Keep(Protocol):
    """Returns what is kept under a key, or makes it."""

    def __call__(self, key: Hashable, make: Callable[[], Kept], /) -> Kept:
        """Return what is kept, made if need be."""


def _make_anew(_key: Hashable, make: Callable[[], Kept], /) -> Kept:
    return make()


@dataclass(frozen=True)
class Built:
    """One supply option as physics runs it, whatever its sizes; `array` is None without sun."""

    name: str
    sources: tuple[str, ...]
    scenario: Scenario
    pump: FlowTable
    array: ArrayPower | None
    grid: TopUpSource | None
    generator: TopUpSource | None


@dataclass(frozen=True)
class Ground:
    """What all options share: place, weather, demand and tariff bands.

    `draw_m3` (hours, years) is the water drawn from the tank, leakage included.
    """

    place: Place
    altitude_given: bool
    weather: WeatherYears
    weather_of_year: NDArray[np.int64]
    draw_m3: Array
    bands: NDArray[np.int64] | None
    band_count: int


def ground_of(scenario: Scenario, folder: Path, keep: Keep = _make_anew) -> Ground:
    """Work out what all options share; what can be kept of it is asked of `keep`."""
    years = scenario.finance.life_years

    def located() -> tuple[Place, WeatherYears]:
        place = place_of(scenario)
        return place, weather_of(scenario, place, folder)

    place, weather = keep(("weather", digest(scenario, ("weather",))), located)
    grid = scenario.sources.grid
    demand = (years, digest(scenario, ("weather", "run"), tables=("demand",)))
    return Ground(
        place=place,
        altitude_given=scenario.site.altitude_m is not None,
        weather=weather,
        weather_of_year=np.arange(years) % weather.ghi_w_m2.shape[1],
        draw_m3=keep(demand, lambda: hourly_demand_m3(scenario.demand, years)),
        bands=None if grid is None else band_of_hour(grid.tariff, MONTH, HOUR),
        band_count=1 if grid is None else band_count(grid.tariff),
    )


def built_of(own: Scenario, sources: tuple[str, ...], ground: Ground, keep: Keep = _make_anew) -> Built:
    """Build one supply option; options that share a pump, an array or a source share its working-out by `keep`.

    Parameters
    ----------
    own : Scenario
        The scenario as it holds for the option.
    sources : tuple of str
        The option's sources.
    ground : Ground
        What the options share.
    keep : callable, optional
        Keeps parts by the values that they are made from; without it all is made anew.

    Raises
    ------
    InputError
        When hydraulics or outages show the scenario to be unworkable.
    """
    years = ground.draw_m3.shape[1]

    weather = digest(own, ("weather",))

    def key(name: str, *tables: str) -> Hashable:
        return name, weather, digest(own, ("weather", "run"), tables=tables, sources=(name,))

    works = ("borehole", "pipeline", "pump", "controller", "cables")
    pump = keep((years, digest(own, ("weather", "run"), tables=works)), lambda: pump_table(own, years))
    array, grid, generator = None, None, None
    solar = own.sources.solar
    if "solar" in sources and solar is not None:
        apart = own.cables is not None and own.cables.dc is not None
        array = keep(
            (apart, key("solar", "sources", "controller")),
            lambda: array_power(solar, own.controller, ground.weather, cable_apart=apart),
        )
    by_grid, by_generator = own.sources.grid, own.sources.generator
    served = ("sources", "controller", "cables", "pump")
    if "grid" in sources and by_grid is not None:
        grid = keep(key("grid", *served), lambda: _grid_source(own, by_grid))
    if "generator" in sources and by_generator is not None:
        generator = keep(key("generator", *served), lambda: _generator_source(own, by_generator, ground))
    return Built(" + ".join(sources), sources, own, pump, array, grid, generator)


def option_of(
    design: Built,
    ground: Ground,
    strings: Sequence[int],
    tank_m3: Sequence[float],
    start_percent: Sequence[float],
    stop_percent: Sequence[float],
) -> Option:
    """Give a built option strings, tanks and levels to try, for the hour loop."""
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


def check_tank(scenario: Scenario, draw_m3: Array) -> None:
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
