"""From a checked scenario to options ready to run: weather, demand, flow tables, array and availability."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Sequence
from dataclasses import dataclass, replace
from functools import partial
from pathlib import Path
from typing import Any, Protocol, TypeVar

import numpy as np
from numpy.typing import NDArray

from planner.resource.sun import Place
from planner.resource.years import WeatherYears
from planner.scenario.errors import InputError, Problem
from planner.scenario.scenario import Scenario
from planner.sources.base import SourceKind, Surroundings, TopUpSourceKind
from planner.sources.registry import SOURCES, option_name
from planner.study.cases import digest
from planner.study.site import place_of, weather_of
from planner.supply.array import ArrayPower
from planner.supply.cables import drop_loss_share, drop_loss_w
from planner.supply.run import Option
from planner.supply.series import TopUpSource
from planner.water.demand import hourly_demand_m3, users_share
from planner.water.duty import CannotDraw, CannotLift, CannotStart, FlowTable, flow_table
from planner.water.pump import ImplausiblePump

Array = NDArray[np.float64]

Kept = TypeVar("Kept")


class Keep(Protocol):
    """Returns what is kept under a key, or makes it."""

    def __call__(self, key: Hashable, make: Callable[[], Kept], /) -> Kept:
        """Return what is kept, made if need be."""


def _make_anew(_key: Hashable, make: Callable[[], Kept], /) -> Kept:
    return make()


@dataclass(frozen=True)
class Built:
    """One supply option as physics runs it, whatever its sizes.

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
        return next((source for source in self.sources if source.has_array), None)


@dataclass(frozen=True)
class SiteContext:
    """What all options share: place, weather and demand.

    `draw_m3` (hours, years) is the water drawn from the tank, leakage included; `band_count` the largest number of
    tariff bands that any source has. `weather_of_year` gives the weather of every year of the life, `life_years` which
    of these, from 0, are run; None where all are.
    """

    place: Place
    altitude_given: bool
    weather: WeatherYears
    weather_of_year: NDArray[np.int64]
    draw_m3: Array
    band_count: int
    life_years: NDArray[np.int64] | None = None

    @property
    def years_key(self) -> Hashable:
        """Equal for sites of which the same years are run."""
        return None if self.life_years is None else self.life_years.tobytes()

    @property
    def around(self) -> Surroundings:
        """What sources ask about the site."""
        return Surroundings(self.place.altitude_m, self.weather, self.weather_of_year)


def site_context_of(
    scenario: Scenario,
    folder: Path,
    keep: Keep = _make_anew,
    kinds: Sequence[SourceKind] = SOURCES,
    life_years: NDArray[np.int64] | None = None,
) -> SiteContext:
    """Work out what all options share; what can be kept of it is asked of `keep`.

    Parameters
    ----------
    scenario : Scenario
        The scenario.
    folder : pathlib.Path
        Folder to which paths in it are relative.
    keep : callable, optional
        Keeps parts by the values that they are made from; without it all is made anew.
    kinds : sequence of SourceKind
        The sources in order of priority.
    life_years : ndarray of int, optional
        Years of the life, from 0, that are to be run; all without it.
    """
    years = scenario.finance.analysis_period_years

    def located() -> tuple[Place, WeatherYears]:
        place = place_of(scenario)
        return place, weather_of(scenario, place, folder)

    place, weather = keep(("weather", digest(scenario, ("weather",))), located)
    top_ups = [kind for kind in kinds if isinstance(kind, TopUpSourceKind) and kind.described(scenario)]
    demand = (years, digest(scenario, ("weather", "run"), tables=("demand",)))
    site = SiteContext(
        place=place,
        altitude_given=scenario.site.altitude_m is not None,
        weather=weather,
        weather_of_year=np.arange(years) % weather.ghi_w_m2.shape[1],
        draw_m3=keep(demand, lambda: hourly_demand_m3(scenario.demand, years)),
        band_count=max((bands.band_count for kind in top_ups if (bands := kind.bands(scenario))), default=1),
    )
    if life_years is None:
        return site
    chosen = life_years.tobytes()
    weather, of_year = keep(
        ("weather", digest(scenario, ("weather",)), years, chosen),
        lambda: _weather_of(site.weather, site.weather_of_year, life_years),
    )
    draw_m3 = keep((*demand, chosen), lambda: site.draw_m3[:, life_years])
    return replace(site, weather=weather, weather_of_year=of_year, draw_m3=draw_m3, life_years=life_years)


def _weather_of(
    weather: WeatherYears, of_year: NDArray[np.int64], life_years: NDArray[np.int64]
) -> tuple[WeatherYears, NDArray[np.int64]]:
    """Keep the weather of some life years alone; the other years are given that of one of them."""
    used = np.unique(of_year[life_years])
    columns: dict[str, Any] = {
        name: each[..., used] for name, each in vars(weather).items() if isinstance(each, np.ndarray)
    }
    return replace(weather, **columns), np.minimum(np.searchsorted(used, of_year), used.size - 1)


def built_of(scenario: Scenario, sources: tuple[SourceKind, ...], site: SiteContext, keep: Keep = _make_anew) -> Built:
    """Build one supply option; options that share a pump, an array or a source share its working-out by `keep`.

    Parameters
    ----------
    scenario : Scenario
        The scenario as it holds for the option.
    sources : tuple of SourceKind
        The option's sources.
    site : SiteContext
        What the options share.
    keep : callable, optional
        Keeps parts by the values that they are made from; without it all is made anew.

    Raises
    ------
    InputError
        When hydraulics or outages show the scenario to be unworkable.
    """
    years, run = site.weather_of_year.size, site.life_years
    weather = digest(scenario, ("weather",))

    def key(name: str, *tables: str) -> Hashable:
        return name, weather, site.years_key, digest(scenario, ("weather", "run"), tables=tables, sources=(name,))

    works = digest(scenario, ("weather", "run"), tables=("borehole", "pipeline", "pump", "cables"))
    state = years, site.years_key, scenario.controller.power_limit_w, works
    pump = keep(state, lambda: pump_table(scenario, years, run))
    array, top_ups = None, []
    for source in sources:
        if source.has_array:
            array = keep(key(source, "sources", "controller", "cables"), partial(source.array, scenario, site.weather))
        if isinstance(source, TopUpSourceKind):
            made = partial(_top_up, source, scenario, site)
            top_ups.append(keep(key(source, "sources", "controller", "cables", "pump"), made))
    return Built(option_name(sources), sources, scenario, pump, array, tuple(top_ups))


def _top_up(source: TopUpSourceKind, scenario: Scenario, site: SiteContext) -> TopUpSource:
    made = source.top_up(scenario, site.around)
    return made if site.life_years is None else made.in_years(site.life_years)


def option_of(
    design: Built,
    site: SiteContext,
    strings: Sequence[int],
    tank_m3: Sequence[float],
    start_percent: Sequence[float],
    stop_percent: Sequence[float],
) -> Option:
    """Give a built option strings, tanks and levels to try, for the hour loop."""
    scenario = design.scenario
    sun = None
    if design.array is not None and design.sunny is not None:
        sun = design.sunny.sun(scenario, design.array, site.weather_of_year, tuple(strings))
        sun = sun if site.life_years is None else sun.in_years(site.life_years)
    return Option(
        name=design.name,
        sources=design.sources,
        pump=design.pump,
        draw_m3=site.draw_m3,
        users_share=users_share(scenario.demand, site.draw_m3),
        sun=sun,
        top_ups=design.top_ups,
        tank_m3=np.asarray(tank_m3, dtype=float),
        start_share=np.asarray(start_percent, dtype=float) / 100,
        stop_share=np.asarray(stop_percent, dtype=float) / 100,
        daily_limit_m3=scenario.borehole.daily_limit_m3,
    )


def pump_table(scenario: Scenario, years: int, run: NDArray[np.int64] | None = None) -> FlowTable:
    """Solve what flow the controller's output gives, the drop cable's loss taken off, by life year and month.

    Parameters
    ----------
    scenario : Scenario
        The option's own scenario.
    years : int
        Life years.
    run : ndarray of int, optional
        Those of them, from 0 and rising, for which it is solved; all without it.

    Raises
    ------
    InputError
        If pump, borehole, pipeline or drop cable cannot work as given.
    """
    limit_w = scenario.controller.power_limit_w
    try:
        table = flow_table(scenario.borehole, scenario.pipeline, scenario.pump, limit_w, years, run)
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
