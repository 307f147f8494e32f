"""What `planner weather` shows: the sun and temperature that will be used, month by month."""

from __future__ import annotations

from collections.abc import Iterator

from planner.report.document import Block, Cell, Column, Kind, Row, Table
from planner.report.document import Text as Words
from planner.resource.climatology import Climatology, estimate_note, estimate_source
from planner.resource.sun import Place
from planner.resource.years import WeatherYears
from planner.text import text

MONTHS = 12
WATT_HOURS = 1000
_KINDS: dict[str, Kind] = {
    "ghi_kwh_m2_day": "two",
    "ghi_lowest_year_kwh_m2_day": "two",
    "ghi_highest_year_kwh_m2_day": "two",
    "temperature_mean_c": "one",
    "temperature_min_c": "one",
    "temperature_max_c": "one",
}


def estimate_summary(found: Climatology, place: Place, zone: str) -> Iterator[Block]:
    """Show what the climatology has for a place of which nothing else is known.

    Parameters
    ----------
    found : Climatology
        Its twelve means.
    place : Place
        Where.
    zone : str
        Name of its time zone.
    """
    kinds: dict[str, Kind] = {"ghi_kwh_m2_day": "two", "ghi_as_tabled_kwh_m2_day": "two", "temperature_c": "one"}
    rows = tuple(
        Row(
            month,
            {
                "month": Cell(text(f"month.{month + 1}")),
                **{key: Cell(float(getattr(found, key)[month]), kind) for key, kind in kinds.items()},
            },
        )
        for month in range(MONTHS)
    )
    columns = tuple(Column(key, text(f"weather.column_{key}")) for key in ("month", *kinds))
    heading = text("weather.estimate_title", latitude=place.latitude_deg, longitude=place.longitude_deg)
    yield Table("weather.months", columns, rows, heading=heading)
    yield Words(text("weather.estimate_clock", zone=zone, altitude=place.altitude_m))
    yield Words(text("weather.note", note=estimate_note()))
    yield Words(estimate_source())
    yield Words(text("weather.estimate_use"))


def weather_summary(weather: WeatherYears, place: str) -> Iterator[Block]:
    """Show the weather that will be used.

    Parameters
    ----------
    weather : WeatherYears
        The years that the hours run through.
    place : str
        Name of the site.
    """
    months = weather.monthly_table()
    rows = tuple(
        Row(
            month,
            {
                "month": Cell(text(f"month.{month + 1}")),
                **{key: Cell(float(months[key][month]), kind) for key, kind in _KINDS.items()},
            },
        )
        for month in range(MONTHS)
    )
    columns = tuple(Column(key, text(f"weather.column_{key}")) for key in ("month", *_KINDS))
    yield Table("weather.months", columns, rows, heading=text("weather.title", place=place))
    yield Words(weather.source)
    yearly = weather.ghi_w_m2.sum(axis=0) / WATT_HOURS
    key = "weather.years" if yearly.size > 1 else "weather.one_year"
    yield Words(text(key, count=yearly.size, mean=yearly.mean(), low=yearly.min(), high=yearly.max()))
    yield from (Words(text("weather.note", note=note)) for note in weather.notes)
