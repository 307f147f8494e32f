"""The page of weather years: the worst year in ten, and each year, the dullest first."""

from __future__ import annotations

import numpy as np

from planner.report.document import Axis, Cell, Chart, Column, Page, Row, Series, Span, Table
from planner.report.pages.sweep.common import CHART_OPTIONS, CHART_ROWS
from planner.study.sweep.weather import WeatherSpread
from planner.text import text

LABEL_WIDTH = 24.0
MOST_ON_A_PAGE = 40
"""So many years are printed on one page with their chart."""
_STEP_KWH_M2 = 50.0
"""The chart's axis of irradiation begins and ends at a multiple of it."""


def weather_page(spread: WeatherSpread) -> Page:
    """Build the page of weather years."""
    kind = text("sweep.measured" if spread.measured else "sweep.synthetic")
    under = text("sweep.weather_under", years=spread.years, kind=kind, life_year=spread.life_year)
    name = text("sweep.weather")
    years = _years(spread)
    blocks = (_worst(spread), years, _chart(spread, years))
    return Page("sweep.weather", name, name, under, blocks, (LABEL_WIDTH,), one_page=spread.years <= MOST_ON_A_PAGE)


def _columns(spread: WeatherSpread, key: str, heading: str) -> tuple[Column, ...]:
    return (Column(key, heading), *(Column(f"option_{place}", name) for place, name in enumerate(spread.options)))


def _percents(shares: np.ndarray) -> dict[str, Cell]:
    return {f"option_{place}": Cell(100 * float(share), "two") for place, share in enumerate(shares)}


def _worst(spread: WeatherSpread) -> Table:
    shares = spread.delivered_share
    summed = (
        ("worst_in_ten", spread.worst_in_ten),
        ("mean", shares.mean(axis=1)),
        ("lowest_year", shares.min(axis=1)),
        ("highest_year", shares.max(axis=1)),
    )
    rows = tuple(Row(key, {"which": Cell(text(f"sweep.{key}")), **_percents(values)}) for key, values in summed)
    return Table("sweep.worst", _columns(spread, "which", ""), rows, heading=text("sweep.worst"))


def _years(spread: WeatherSpread) -> Table:
    rows = tuple(
        Row(
            place,
            {
                "irradiation": Cell(float(spread.irradiation_kwh_m2[year]), "whole"),
                **_percents(spread.delivered_share[:, year]),
            },
        )
        for place, year in enumerate(np.argsort(spread.irradiation_kwh_m2))
    )
    columns = _columns(spread, "irradiation", text("sweep.irradiation"))
    return Table("sweep.years", columns, rows, heading=text("sweep.years"))


def _chart(spread: WeatherSpread, table: Table) -> Chart:
    places = np.argsort(spread.worst_in_ten, kind="stable")[:CHART_OPTIONS].tolist()
    last = spread.years - 1
    series = [
        Series(
            spread.options[place],
            Span(table.key, 0, "irradiation", last),
            Span(table.key, 0, f"option_{place}", last),
            f"line {order}",
        )
        for order, place in enumerate(places)
    ]
    years = spread.irradiation_kwh_m2
    low = float(np.floor(years.min() / _STEP_KWH_M2) * _STEP_KWH_M2)
    high = float(np.ceil(years.max() / _STEP_KWH_M2 + 0.01) * _STEP_KWH_M2)
    title = text("sweep.weather_chart")
    alt = text("sweep.weather_alt", options=", ".join(spread.options[place] for place in places))
    axes = Axis(text("sweep.irradiation"), low=low, high=high), Axis(text("sweep.demand_met"), high=100)
    return Chart("sweep.weather_chart", "points", title, alt, tuple(series), *axes, rows=CHART_ROWS)
