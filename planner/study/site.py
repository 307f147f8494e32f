"""Place and weather of a scenario."""

from __future__ import annotations

from pathlib import Path

from planner.resource.files import WeatherFileError, read_weather_file
from planner.resource.sun import Place, altitude_from_grid, standard_utc_offset_h, sun_of
from planner.resource.synthetic import synthetic_years
from planner.resource.years import WeatherYears
from planner.scenario.errors import InputError, Problem
from planner.scenario.scenario import Scenario

FURTHEST_CLOCK_H = 4.0
"""The furthest that a clock may stand from the sun; no country's standard time is further off."""


def place_of(scenario: Scenario) -> Place:
    """Locate the site: its fixed offset from UTC and its altitude."""
    site = scenario.site
    try:
        offset_h = standard_utc_offset_h(site.time_zone)
    except ValueError as error:
        raise InputError("", [Problem("site.time_zone", str(error))]) from error
    apart_h = abs((offset_h - site.longitude_deg / 15 + 12) % 24 - 12)
    if apart_h > FURTHEST_CLOCK_H:
        text = (
            f"{site.time_zone!r} stands {apart_h:.1f} hours from the sun at longitude {site.longitude_deg:g}; at most "
            f"{FURTHEST_CLOCK_H:g} hours are allowed: look at the zone, and at the longitude's sign"
        )
        raise InputError("", [Problem("site.time_zone", text)])
    altitude_m = site.altitude_m
    if altitude_m is None:
        altitude_m = altitude_from_grid(site.latitude_deg, site.longitude_deg)
    return Place(site.latitude_deg, site.longitude_deg, altitude_m, offset_h)


def weather_of(scenario: Scenario, place: Place, folder: Path) -> WeatherYears:
    """Make or read the weather of the life years.

    Parameters
    ----------
    scenario : Scenario
        Its weather table says how.
    place : Place
        The site.
    folder : pathlib.Path
        Folder of the scenario file, to which the weather file's path is relative.

    Raises
    ------
    InputError
        When the months are not physical or the file cannot be used.
    """
    weather = scenario.weather
    if weather.kind == "file":
        path = folder / weather.file
        try:
            return read_weather_file(path, place, file_format=weather.file_format)
        except WeatherFileError as error:
            raise InputError("", [Problem("weather.file", f"{weather.file!r} was given; {error}")]) from error
    try:
        return synthetic_years(
            place,
            sun_of(place),
            weather.ghi_kwh_m2_day,
            weather.temperature_c,
            weather.temperature_range_k,
            years=scenario.finance.analysis_period_years,
            seed=scenario.seed,
            annual_spread_percent=weather.annual_spread_percent,
            monthly_spread_percent=weather.monthly_spread_percent,
            daily_law=weather.daily_law,
            clearness_maximum=weather.clearness_maximum,
        )
    except ValueError as error:
        raise InputError("", [Problem("weather.ghi_kwh_m2_day", str(error))]) from error
