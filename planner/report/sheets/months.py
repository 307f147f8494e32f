"""The sheets 'Water' and 'Energy': each option month by month in the first life year, and year by year."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Any, Literal

import numpy as np
from numpy.typing import NDArray

from planner.report.sheets.page import Page, reference
from planner.report.style import MONTHS, SOURCE_FILLS, Kind, axis, hatched, solid, style_chart, value_axis
from planner.study.compare import OptionResult, Study

Array = NDArray[np.float64]

CHART_COLUMNS, CHART_ROWS = 7, 18


@dataclass(frozen=True)
class Column:
    """One column of a block: twelve months and their total (13,), the life years and theirs (n + 1,).

    `total` says how the last value follows from those above it; `formula` gives the formula of a computed cell from its
    row; `word` stands where there is no value.
    """

    heading: str
    kind: Kind
    months: Array
    years: Array
    total: Literal["SUM", "MAX", ""] = "SUM"
    formula: Callable[[int], str] | None = None
    word: str = ""


def write_water(page: Page, book: Any, study: Study) -> None:
    """Fill the sheet 'Water'.

    Parameters
    ----------
    page : Page
        The sheet.
    book
        XlsxWriter's workbook, for charts.
    study : Study
        The finished comparison.
    """
    demand = study.scenario.demand
    lost = f" Of the water leaving the tank, {demand.leakage_percent:g} % is lost to leakage." * bool(
        demand.leakage_percent
    )
    lost += f" Leakage by the clock is {demand.leakage_m3_per_day:g} m3 a day." * bool(demand.leakage_m3_per_day)
    page.title(
        "Water",
        "First life year by month, then every life year. Demand and delivered are what users want and get; the rise of "
        f"the tank is what was pumped less what left it.{lost}",
    )
    first = _blocks(page, study, _water_columns)
    chart = book.add_chart({"type": "column"})
    for column, fill in ((1, solid("#C8DCDA")), (2, solid("#2C4A56"))):
        chart.add_series(_by_month(page, first, column) | fill | {"gap": 60})
    chart.set_x_axis(axis("Month of the first life year"))
    chart.set_y_axis(value_axis("Water (m3/month)"))
    name = study.ranked[0].name
    _beside(page, style_chart(chart, f"Demand and delivered: {name}"), first)


def write_energy(page: Page, book: Any, study: Study) -> None:
    """Fill the sheet 'Energy'; parameters as for `write_water`."""
    grid = study.scenario.sources.grid
    bands = [band.name for band in grid.tariff.bands] if grid else []
    said = (
        f" The grid's energy is split by the tariff's bands: {', '.join(bands)} and the hours outside them."
        if bands
        else ""
    )
    page.title(
        "Energy",
        "First life year by month, then every life year. Energy of the sun is DC from the array, that of grid and "
        f"generator AC at the controller; idle sun could have been used but was not needed or not usable.{said}",
    )
    first = _blocks(page, study, lambda option: _energy_columns(option, bands))
    option = study.ranked[0]
    columns = {column.heading: number for number, column in enumerate(_energy_columns(option, bands), start=1)}
    chart = book.add_chart({"type": "column", "subtype": "stacked"})
    shown = [(SUN, SOURCE_FILLS["solar"], "solar"), (GRID, SOURCE_FILLS["grid"], "grid")]
    shown += [(GENERATOR, SOURCE_FILLS["generator"], "generator"), (IDLE, hatched("dotted_grid", "#B08D2E"), "solar")]
    for heading, fill, source in shown:
        if source in option.sources:
            chart.add_series(_by_month(page, first, columns[heading]) | fill | {"gap": 50})
    chart.set_x_axis(axis("Month of the first life year"))
    chart.set_y_axis(value_axis("Energy (kWh/month)"))
    _beside(page, style_chart(chart, f"Energy by source: {option.name}"), first)


SUN, IDLE, GRID, GENERATOR = "Sun used (kWh)", "Idle sun (kWh)", "Grid (kWh)", "Generator (kWh)"


def _water_columns(option: OptionResult) -> list[Column]:
    outcome = option.outcome
    demand, delivered = _sums(outcome.demand_m3), _sums(outcome.delivered_m3)
    sun, grid, generator = _sums(outcome.solar_m3), _sums(outcome.grid_m3), _sums(outcome.generator_m3)
    lost = _sums(outcome.leakage_m3)
    pumped = _both(lambda a, b, c: a + b + c, sun, grid, generator)
    rise = _both(lambda a, b, c: a - b - c, pumped, delivered, lost)
    rise_of_years = outcome.level_end_m3 - outcome.level_start_m3
    return [
        Column("Demand (m3)", "one", *demand),
        Column("Delivered (m3)", "one", *delivered),
        Column(
            "Shortfall (m3)",
            "one",
            *_both(np.subtract, demand, delivered),
            "",
            lambda row: f"={_at(row, 1)}-{_at(row, 2)}",
        ),
        Column(
            "Delivered share (%)",
            "two",
            *_both(lambda part, whole: 100 * _ratio(part, whole), delivered, demand),
            "",
            lambda row: f"=100*{_at(row, 2)}/{_at(row, 1)}",
            "no demand",
        ),
        Column("Pumped by the sun (m3)", "one", *sun),
        Column("Added by the grid (m3)", "one", *grid),
        Column("Added by the generator (m3)", "one", *generator),
        Column("Pumped in all (m3)", "one", *pumped, "", lambda row: f"=SUM({_at(row, 5)}:{_at(row, 7)})"),
        Column("Lost to leakage (m3)", "one", *lost),
        Column("Rise of the tank (m3)", "one", rise[0], _with(np.sum, rise_of_years)),
    ]


def _energy_columns(option: OptionResult, bands: Sequence[str]) -> list[Column]:
    outcome = option.outcome
    sun, idle = _sums(outcome.solar_kwh), _sums(outcome.idle_kwh)
    generator, fuel = _sums(outcome.generator_kwh), _sums(outcome.fuel_l)
    by_band = [_sums(outcome.grid_kwh[..., band]) for band in range(outcome.grid_kwh.shape[-1])]
    grid = _sums(outcome.grid_kwh.sum(axis=-1))
    pumped = _sums(outcome.solar_m3 + outcome.grid_m3 + outcome.generator_m3)
    used = _both(lambda a, b, c: a + b + c, sun, grid, generator)
    split = len(by_band) > 1
    first, last = 4, 3 + len(by_band)
    columns = [Column(SUN, "whole", *sun), Column(IDLE, "whole", *idle)]
    if split:
        columns.append(Column(GRID, "whole", *grid, "", lambda row: f"=SUM({_at(row, first)}:{_at(row, last)})"))
        names = ["outside the bands", *bands]
        columns += [Column(f"Grid, {name} (kWh)", "whole", *part) for name, part in zip(names, by_band, strict=True)]
    else:
        columns.append(Column(GRID, "whole", *grid))
    peak = _with(np.max, outcome.grid_peak_kw[0]), _with(np.max, outcome.grid_peak_kw.max(axis=1))
    columns += [
        Column("Running on the grid (h)", "one", *_sums(outcome.grid_hours)),
        Column("Highest half-hour demand on the grid (kW)", "two", *peak, "MAX"),
        Column(GENERATOR, "whole", *generator),
        Column("Running of the generator (h)", "one", *_sums(outcome.generator_hours)),
        Column("Fuel (L)", "one", *fuel),
        Column("Water pumped (m3)", "one", *pumped),
    ]
    at = {column.heading: number for number, column in enumerate(columns, start=1)}
    columns.append(
        Column(
            "Energy used per m3 (kWh/m3)",
            "two",
            *_both(_ratio, used, pumped),
            "",
            lambda row: (
                f"=({_at(row, at[SUN])}+{_at(row, at[GRID])}+{_at(row, at[GENERATOR])})"
                f"/{_at(row, at['Water pumped (m3)'])}"
            ),
            "none pumped",
        )
    )
    return columns


def _blocks(page: Page, study: Study, columns_of: Callable[[OptionResult], list[Column]]) -> int:
    """Write header and a block for each option, best first; return the row of the first block's first month."""
    page.header(["Month or life year", *(column.heading for column in columns_of(study.ranked[0]))])
    page.freeze()
    page.fix_width(0, 18)
    starts = []
    for place, option in enumerate(study.ranked, start=1):
        columns = columns_of(option)
        page.heading(f"{place}. {option.name}{', recommended' if option.name == study.best else ''}", len(columns))
        starts.append(page.row)
        _rows(page, MONTHS, "First year", columns, [column.months for column in columns])
        years = option.outcome.demand_m3.shape[0]
        page.row += 1
        _rows(page, [f"Year {year + 1}" for year in range(years)], "Whole life", columns, [c.years for c in columns])
    return starts[0]


def _rows(page: Page, labels: Sequence[str], total: str, columns: Sequence[Column], values: Sequence[Array]) -> None:
    first, last = page.row, page.row + len(labels) - 1
    for offset, label in enumerate([*labels, total]):
        row = first + offset
        is_total = row > last
        look: Literal["total", "plain"] = "total" if is_total else "plain"
        page.put(row, 0, label, "text", look)
        for number, (column, column_values) in enumerate(zip(columns, values, strict=True), start=1):
            formula = column.formula(row) if column.formula else None
            if is_total and column.total:
                formula = f"={column.total}({_at(first, number)}:{_at(last, number)})"
            page.put(row, number, float(column_values[offset]), column.kind, look, word=column.word, formula=formula)
    page.row = last + 2


def _by_month(page: Page, first: int, column: int) -> dict[str, Any]:
    """Chart series of the months of the first block."""
    return {
        "name": page.range_of(first - 2, column, first - 2, column),
        "categories": page.range_of(first, 0, first + 11, 0),
        "values": page.range_of(first, column, first + 11, column),
    }


def _beside(page: Page, chart: Any, first: int) -> None:
    """Place a chart to the right of the first block."""
    column = page.next_free_column() + 1
    page.fix_width(column - 1, 2)
    for extra in range(CHART_COLUMNS):
        page.fix_width(column + extra, 9)
    page.chart(chart, first, column, column + CHART_COLUMNS - 1, CHART_ROWS)


def _at(row: int, column: int) -> str:
    return reference(row, column)


def _with(total: Callable[[Array], Any], values: Array) -> Array:
    return np.append(values, total(values))


def _sums(monthly: Array) -> tuple[Array, Array]:
    """From (years, 12): the first year's months with their sum, and the years with theirs."""
    return _with(np.sum, monthly[0]), _with(np.sum, monthly.sum(axis=1))


def _both(function: Callable[..., Array], *pairs: tuple[Array, Array]) -> tuple[Array, Array]:
    """Apply a function to the months and to the years."""
    return function(*(pair[0] for pair in pairs)), function(*(pair[1] for pair in pairs))


def _ratio(part: Array, whole: Array) -> Array:
    return np.asarray(np.divide(part, whole, out=np.full(part.shape, np.nan), where=whole > 0))
