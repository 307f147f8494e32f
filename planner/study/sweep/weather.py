"""The spread between weather years: what each option delivers in each of them, and in the worst year in ten."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from planner.assumptions.reader import option_scenario
from planner.money.simulated import quantities_of
from planner.resource.years import WeatherYears
from planner.scenario.errors import InputError, Problem
from planner.scenario.scenario import Scenario
from planner.scenario.sweep import WeatherSweep
from planner.study.cases import Design
from planner.study.context import Context
from planner.study.design import Built, built_of, option_of, pump_table
from planner.supply.array import ageing
from planner.supply.run import run_options
from planner.supply.worst_year import worst_year_in_ten
from planner.water.demand import hourly_demand_m3

Array = NDArray[np.float64]


@dataclass(frozen=True)
class WeatherSpread:
    """What each option does in many weather years, its design, demand and ageing held.

    Attributes
    ----------
    options : tuple of str
        Supply options.
    life_year : int
        Life year whose demand and ageing of the array hold.
    measured : bool
        Whether the years come from a weather file.
    irradiation_kwh_m2 : ndarray, (years,)
        Global horizontal irradiation of each year.
    delivered_share, grid_kwh, fuel_l : ndarray, (options, years)
        What each option delivers and uses in each year.
    worst_in_ten : ndarray, (options,)
        Delivered share that nine years in ten reach or exceed.
    """

    options: tuple[str, ...]
    life_year: int
    measured: bool
    irradiation_kwh_m2: Array
    delivered_share: Array
    grid_kwh: Array
    fuel_l: Array
    worst_in_ten: Array

    @property
    def years(self) -> int:
        """Number of weather years."""
        return self.irradiation_kwh_m2.size


def weather_spread(
    scenario: Scenario, context: Context, designs: Sequence[Design], asked: WeatherSweep
) -> WeatherSpread:
    """Run the designs of the base case through many weather years, each from what the one before leaves.

    Parameters
    ----------
    scenario : Scenario
        The scenario.
    context : Context
        Folder of the weather file, and the sources.
    designs : sequence of Design
        The designs, one for each option.
    asked : WeatherSweep
        How many years, and which life year's demand.

    Returns
    -------
    WeatherSpread
        Outages of the grid, too, are drawn anew for each year.

    Raises
    ------
    InputError
        When the life year lies beyond the life.
    """
    life = scenario.finance.analysis_period_years
    if asked.life_year > life:
        text = f"{asked.life_year} was given; the life counted has {life} years"
        raise InputError("", [Problem("sweep.weather.life_year", text)])
    measured = scenario.weather.kind == "file"
    site = context.site(_lasting(scenario, asked.years))
    years = site.weather.years
    drawn_m3 = hourly_demand_m3(scenario.demand, life)[:, asked.life_year - 1]
    site = replace(site, weather_of_year=np.arange(years), draw_m3=np.repeat(drawn_m3[:, None], years, axis=1))
    found = []
    for design in designs:
        merged = _lasting(option_scenario(scenario, design.name), years)
        aged = _aged(built_of(merged, design.sources, site), asked.life_year, life)
        option = option_of(aged, site, [design.strings], [design.tank_m3], [design.levels[0]], [design.levels[1]])
        outcome = run_options([option], band_count=site.band_count)[0].at(0, 0)
        found.append((quantities_of(outcome), outcome))
    share = np.array([o.delivered_m3.sum(axis=-1) / o.demand_m3.sum(axis=-1) for _, o in found])
    return WeatherSpread(
        options=tuple(design.name for design in designs),
        life_year=asked.life_year,
        measured=measured,
        irradiation_kwh_m2=_yearly(site.weather),
        delivered_share=share,
        grid_kwh=np.array([q.grid_kwh.sum(axis=(-1, -2)) for q, _ in found]),
        fuel_l=np.array([q.fuel_l for q, _ in found]),
        worst_in_ten=worst_year_in_ten(share),
    )


def _lasting(scenario: Scenario, years: int) -> Scenario:
    return scenario.model_copy(update={"finance": scenario.finance.model_copy(update={"analysis_period_years": years})})


def _aged(design: Built, life_year: int, life: int) -> Built:
    """Give every year the array and the works of one life year."""
    solar = design.scenario.sources.solar
    design = replace(design, pump=pump_table(design.scenario, life_year).in_year(life_year - 1))
    if design.array is None or solar is None:
        return design
    left = float(ageing(solar, life)[life_year - 1])
    steady = solar.model_copy(update={"degradation_percent_per_year": 0.0})
    sources = design.scenario.sources.model_copy(update={"solar": steady})
    return replace(
        design,
        scenario=design.scenario.model_copy(update={"sources": sources}),
        array=replace(design.array, string_w=design.array.string_w * left),
    )


def _yearly(weather: WeatherYears) -> Array:
    return np.asarray(weather.ghi_w_m2.sum(axis=0) / 1000)
