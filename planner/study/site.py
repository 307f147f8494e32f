"""Place and weather of a scenario."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path

from planner.resource.climatology import Array, climatology_at, estimate_note, estimate_source
from planner.resource.files import WeatherFileError, read_weather_file
from planner.resource.position import position_fault
from planner.resource.sun import Place, altitude_from_grid, standard_utc_offset_h, sun_of
from planner.resource.synthetic import synthetic_years
from planner.resource.years import WeatherYears
from planner.scenario.errors import InputError, Problem
from planner.scenario.place import EstimatedWeather, MonthlyWeather
from planner.scenario.scenario import Scenario
from planner.text import text

Months = Sequence[float] | Array

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
    fault = position_fault(site.latitude_deg, site.longitude_deg)
    problems = [Problem("site.latitude_deg", fault)] if fault else []
    if apart_h > FURTHEST_CLOCK_H:
        words = (
            f"{site.time_zone!r} stands {apart_h:.1f} hours from the sun at longitude {site.longitude_deg:g}; at most "
            f"{FURTHEST_CLOCK_H:g} hours are allowed: look at the zone, and at the longitude's sign"
        )
        problems.append(Problem("site.time_zone", words))
    if problems:
        raise InputError("", problems)
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
    estimated = weather.kind == "estimate"
    try:
        ghi, temperature, temperature_range = _means(weather, place)
        years = synthetic_years(
            place,
            sun_of(place),
            ghi,
            temperature,
            temperature_range,
            years=scenario.finance.analysis_period_years,
            seed=scenario.seed,
            annual_spread_percent=weather.annual_spread_percent,
            monthly_spread_percent=weather.monthly_spread_percent,
            daily_law=weather.daily_law,
            clearness_maximum=weather.clearness_maximum,
        )
    except ValueError as error:
        raise InputError("", [Problem(f"weather.{'kind' if estimated else 'ghi_kwh_m2_day'}", str(error))]) from error
    if not estimated:
        return years
    source = f"{estimate_source()}; {years.source}"
    asks = text("weather_note.temperature_range")  # for more months to be given, where none are
    return replace(years, source=source, notes=(estimate_note(), *(note for note in years.notes if note != asks)))


def estimate_sentences(scenario: Scenario) -> list[str]:
    """Say that the weather is an estimate, for answers that stand without the notes on the weather; else nothing."""
    if scenario.weather.kind != "estimate":
        return []
    return [text("weather.note", note=estimate_note()), text("terminal.weather", source=estimate_source())]


def _means(weather: MonthlyWeather | EstimatedWeather, place: Place) -> tuple[Months, Months, Months | None]:
    """Monthly irradiation, temperature and, where it is known, daily range of temperature."""
    if weather.kind == "monthly":
        return weather.ghi_kwh_m2_day, weather.temperature_c, weather.temperature_range_k
    found = climatology_at(place.latitude_deg, place.longitude_deg, place.altitude_m)
    return found.ghi_kwh_m2_day, found.temperature_c, None
