"""`planner weather`."""

from __future__ import annotations

from enum import StrEnum
from pathlib import Path
from typing import Annotated, Any

import typer

from planner.commands.options import DONE, WRONG_INPUT, Seed, Verbose
from planner.commands.reading import located, read_with_seed
from planner.text import text


class Service(StrEnum):
    """Open-data services from which weather can be fetched."""

    PVGIS = "pvgis"
    NASA_POWER = "nasa-power"


def weather(
    scenario: Annotated[
        Path | None,
        typer.Argument(help="Scenario file (TOML, or a filled-in form), unless a place is given.", show_default=False),
    ] = None,
    latitude: Annotated[
        float | None,
        typer.Option("--latitude", help="In place of a scenario: degrees, north positive.", show_default=False),
    ] = None,
    longitude: Annotated[
        float | None,
        typer.Option("--longitude", help="In place of a scenario: degrees, east positive.", show_default=False),
    ] = None,
    seed: Seed = None,
    fetch: Annotated[
        Service | None,
        typer.Option("--fetch", help="Fetch weather for the site from an open-data service.", show_default=False),
    ] = None,
    save: Annotated[
        Path | None,
        typer.Option("--save", help="File for the fetched weather, to be named in the scenario.", show_default=False),
    ] = None,
    first_year: Annotated[
        int,
        typer.Option("--first-year", min=1984, max=2100, help="First year to fetch, where the service has real years."),
    ] = 2015,
    last_year: Annotated[int, typer.Option("--last-year", min=1984, max=2100, help="Last year to fetch.")] = 2019,
    service_url: Annotated[
        str | None,
        typer.Option("--service-url", help="Address of the service, if not the usual one.", show_default=False),
    ] = None,
    verbose: Verbose = False,
) -> int:
    """Show the sun and temperature that will be used, or an estimate for any place; or fetch them for either."""
    from planner.report.console import out_console
    from planner.report.pages.weather import weather_summary
    from planner.report.terminal_writer import terminal_blocks
    from planner.study.site import place_of, weather_of

    years = first_year, last_year
    if latitude is not None and longitude is not None and scenario is None:
        return _of_coordinates(latitude, longitude, fetch, save, years, service_url)
    if scenario is None or latitude is not None or longitude is not None:
        typer.echo(text("command.weather_of_what"), err=True)
        return WRONG_INPUT
    checked = read_with_seed(scenario, seed)
    with located(scenario):
        place = place_of(checked)
        if fetch is not None:
            return _fetch(fetch, place, save or scenario.with_suffix(".weather.csv"), years, service_url)
        used = weather_of(checked, place, scenario.parent)
    out_console().print(terminal_blocks(weather_summary(used, checked.site.place)))
    return DONE


def _of_coordinates(
    latitude: float, longitude: float, fetch: Service | None, save: Path | None, years: tuple[int, int], url: str | None
) -> int:
    from planner.report.console import out_console
    from planner.report.pages.weather import estimate_summary
    from planner.report.terminal_writer import terminal_blocks
    from planner.resource.climatology import NoClimatology, climatology_at
    from planner.resource.position import position_fault
    from planner.resource.sun import Place, altitude_from_grid, standard_utc_offset_h
    from planner.resource.zones import zone_at

    if fault := position_fault(latitude, longitude):
        typer.echo(fault, err=True)
        return WRONG_INPUT
    zone = zone_at(latitude, longitude)
    place = Place(latitude, longitude, altitude_from_grid(latitude, longitude), standard_utc_offset_h(zone))
    if fetch is not None:
        return _fetch(fetch, place, save or Path(f"weather_{latitude:g}_{longitude:g}.csv"), years, url)
    try:
        found = climatology_at(latitude, longitude, place.altitude_m)
    except NoClimatology as error:
        typer.echo(str(error), err=True)
        return WRONG_INPUT
    out_console().print(terminal_blocks(estimate_summary(found, place, zone)))
    return DONE


def _fetch(service: Service, place: Any, file: Path, years: tuple[int, int], url: str | None) -> int:
    from datetime import date

    from planner.report.files import check_folder, writing
    from planner.resource.fetch import FetchError, fetch_nasa_power, fetch_pvgis_tmy, save_as_csv

    check_folder(file.parent, [file.name])
    try:
        if service is Service.PVGIS:
            frame = fetch_pvgis_tmy(place, url=url)
        else:
            frame = fetch_nasa_power(place, years, url=url)
    except FetchError as error:
        typer.echo(text("command.weather_not_fetched", reason=error), err=True)
        return WRONG_INPUT
    with writing(file):
        save_as_csv(frame, file, fetched_on=date.today())
    typer.echo(text("command.wrote_weather", file=file, name=file.name))
    return DONE
