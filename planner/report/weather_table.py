"""The weather that will be used, month by month, for the terminal."""

from __future__ import annotations

import numpy as np
from rich.console import Group
from rich.table import Table
from rich.text import Text

from planner.resource.years import WeatherYears

MONTH_NAMES = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")


def weather_report(weather: WeatherYears, place: str) -> Group:
    """Show the sun and temperature that will be used, month by month."""
    table = Table(title=f"{place}: weather used", title_justify="left")
    table.add_column("Month")
    for heading in (
        "Irradiation\nkWh/m2/day",
        "lowest year",
        "highest year",
        "Air mean\ndeg C",
        "lowest hour",
        "highest hour",
    ):
        table.add_column(heading, justify="right")
    months = weather.monthly_table()
    for month, name in enumerate(MONTH_NAMES):
        table.add_row(
            name,
            f"{months['ghi_kwh_m2_day'][month]:.2f}",
            f"{months['ghi_lowest_year_kwh_m2_day'][month]:.2f}",
            f"{months['ghi_highest_year_kwh_m2_day'][month]:.2f}",
            f"{months['temperature_mean_c'][month]:.1f}",
            f"{months['temperature_min_c'][month]:.1f}",
            f"{months['temperature_max_c'][month]:.1f}",
        )
    yearly = weather.ghi_w_m2.sum(axis=0) / 1000
    said = (
        f"{weather.source}\n{weather.ghi_w_m2.shape[1]} year(s); {np.mean(yearly):.0f} kWh/m2 a year on the horizontal"
    )
    if yearly.size > 1:
        said += f", from {yearly.min():.0f} to {yearly.max():.0f}"
    return Group(table, Text(said + "."), *(Text(f"! {note}") for note in weather.notes))
