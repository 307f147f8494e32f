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
from planner.scenario.scenario import Scenario
from planner.sources.base import SourceKind, Surroundings, TopUpSourceKind
from planner.sources.registry import SOURCES, option_name, options_of
from planner.study.site import place_of, weather_of
from planner.supply.array import ArrayPower
from planner.supply.cables import drop_loss_share, drop_loss_w
from planner.supply.run import HOUR, MONTH, Option
from planner.supply.series import TopUpSource
from planner.water.demand import hourly_demand_m3, users_share
from planner.water.duty import CannotDraw, CannotLift, CannotStart, FlowTable, flow_table
from planner.water.pump import ImplausiblePump

Array = NDArray[np.float64]


@dataclass(frozen=True)
class Design:
    """One supply option as designed: its own scenario and what physics needs to run it.

    `array` is None without sun; `top_ups` are its top-up sources, the first to serve first.
    """

    name: str
    sources: tuple[SourceKind, ...]
    scenario: Scenario
    pump: FlowTable
    array: ArrayPower | None
    top_ups: tuple[TopUpSource, ...]

    @property
    def sunny(self) -> SourceKind | None:
        """The source with the array, None without."""
        return next((source for source in self.sources if source.array_key(self.scenario) is not None), None)

    def strings_to_try(self) -> tuple[int, ...]:
        """Numbers of strings to try; (0,) without sun."""
        return self.sunny.strings_to_try(self.scenario) if self.sunny else (0,)

    def modules(self, strings: int) -> int:
        """Modules in so many strings; 0 without sun."""
        return self.sunny.modules(self.scenario, strings) if self.sunny else 0

    def tanks_to_try(self) -> tuple[float, ...]:
        """Tank volumes to try [m³]."""
        given = self.scenario.tank.volume_m3
        return tuple(size.volume_m3 for size in self.scenario.tank.sizes) if given == "auto" else (given,)


@dataclass(frozen=True)
class Ground:
    """What all options share: place, weather, demand and the kinds of sources.

    `draw_m3` (hours, years) is the water drawn from the tank, leakage included; `bands` and `band_count` are those of
    the grid's tariff.
    """

    scenario: Scenario
    place: Place
    altitude_given: bool
    weather: WeatherYears
    weather_of_year: NDArray[np.int64]
    draw_m3: Array
    bands: NDArray[np.int64] | None
    band_count: int
    kinds: tuple[SourceKind, ...] = SOURCES

    @property
    def around(self) -> Surroundings:
        """What sources ask about the site."""
        return Surroundings(self.place.altitude_m, self.weather, self.weather_of_year)


def ground_of(scenario: Scenario, folder: Path, kinds: tuple[SourceKind, ...] = SOURCES) -> Ground:
    """Work out what all options share; `kinds` are the sources in order of priority."""
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
        kinds=kinds,
    )


def designs_of(ground: Ground) -> list[Design]:
    """Prepare every supply option; options that share a pump or an array share its working-out."""
    scenario = ground.scenario
    tables: dict[str, FlowTable] = {}
    arrays: dict[str, ArrayPower] = {}
    designs = []
    for sources in options_of(scenario, ground.kinds):
        name = option_name(sources)
        own = option_scenario(scenario, name)
        _check_tank(own, ground.draw_m3)
        if own is not scenario:
            _check_bands(own, scenario, ground.kinds)
        hydraulics = own.model_dump_json(include={"borehole", "pipeline", "pump", "controller", "cables"})
        if hydraulics not in tables:
            tables[hydraulics] = pump_table(own, ground.draw_m3.shape[1])
        array = None
        for source in sources:
            electrics = source.array_key(own)
            if electrics is not None:
                if electrics not in arrays:
                    arrays[electrics] = source.array(own, ground.weather)
                array = arrays[electrics]
        top_ups = tuple(source.top_up(own, ground.around) for source in sources if isinstance(source, TopUpSourceKind))
        designs.append(Design(name, sources, own, tables[hydraulics], array, top_ups))
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
    sun = None
    if design.array is not None and design.sunny is not None:
        sun = design.sunny.sun(own, design.array, ground.weather_of_year, tuple(strings))
    return Option(
        name=design.name,
        sources=design.sources,
        pump=design.pump,
        draw_m3=ground.draw_m3,
        users_share=users_share(own.demand, ground.draw_m3),
        sun=sun,
        top_ups=design.top_ups,
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


def _check_bands(own: Scenario, base: Scenario, kinds: Sequence[SourceKind]) -> None:
    """Refuse an override that moves a tariff's hours: energy is counted once by the base scenario's bands."""
    for kind in kinds:
        if not isinstance(kind, TopUpSourceKind) or not (kind.described(own) and kind.described(base)):
            continue
        here, there = kind.bands(own), kind.bands(base)
        alike = here is there or (
            here is not None
            and there is not None
            and here.band_count == there.band_count
            and np.array_equal(here.of_hour, there.of_hour)
        )
        if not alike:
            text = "an override may change the prices of the tariff's bands, but not their number, hours or months"
            raise InputError("", [Problem("overrides", text)])
