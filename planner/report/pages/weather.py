"""What `planner weather` shows: the sun and temperature that will be used, month by month."""

from __future__ import annotations

from collections.abc import Iterator

from planner.report.document import Block, Cell, Column, Kind, Row, Table
from planner.report.document import Text as Words
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
