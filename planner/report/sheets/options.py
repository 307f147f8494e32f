"""The sheet 'Options': every figure of every supply option side by side."""

from __future__ import annotations

from collections.abc import Callable, Sequence

import numpy as np

from planner.money.formula import cell_text
from planner.report.sheets.option_money import (
    Figures,
    MoneyCells,
    comparison_rows,
    component_rows,
    money_rows,
    rank_row,
)
from planner.report.sheets.page import Page
from planner.report.sheets.rows import FIRST_OPTION, OptionRows, Row, Value
from planner.report.style import Kind, Look
from planner.study.compare import OptionResult, Study


def verdict(option: OptionResult) -> str:
    """Say with a sign and words whether an option meets the service target."""
    return "✓ meets target" if option.meets_service else "✗ misses target"


def write_options(page: Page, study: Study, money: MoneyCells) -> OptionRows:
    """Fill the sheet 'Options'.

    Parameters
    ----------
    page : Page
        The sheet.
    study : Study
        The finished comparison.
    money : MoneyCells
        Where the sums of money come from.

    Returns
    -------
    OptionRows
        Where the figures stand.
    """
    finance = study.scenario.finance
    prices = "constant prices of year 0" if finance.prices == "constant" else "nominal prices"
    page.title(
        "Supply options side by side",
        f"In the order of the run. Money in {study.scenario.currency}, {prices}, over {finance.life_years} years at "
        "the discount rate of the sheet 'Inputs'; energy and hours are means of the life years.",
    )
    options = study.ranked
    last = FIRST_OPTION + len(options) - 1
    places = {"option": page.row}
    page.header(["Figure", "Unit", *(option.name for option in options)])
    page.freeze(FIRST_OPTION)
    page.fix_width(0, 38)
    for column in range(FIRST_OPTION, last + 1):
        page.fix_width(column, 19)
    found = OptionRows(page, places, {option.name: column for column, option in enumerate(options, start=FIRST_OPTION)})
    sections = _sections(study, money, found)
    row = page.row - 2
    for _, rows in sections:  # formulas may lead to figures further down
        row += 3
        places |= {figure.key: row + place for place, figure in enumerate(rows)}
        row += len(rows) - 1
    for heading, rows in sections:
        page.heading(heading, last)
        for figure in rows:
            if page.row != places[figure.key]:
                raise ValueError(f"'{figure.key}' stands in row {page.row}, not {places[figure.key]}")
            _write(page, figure, options, study.best)
    return found


def _write(page: Page, row: Row, options: Sequence[OptionResult], best: str | None) -> None:
    page.put(page.row, 0, row.label)
    page.put(page.row, 1, row.unit)
    for column, option in enumerate(options, start=FIRST_OPTION):
        value = row.of(option)
        kind: Kind = row.kind
        if isinstance(value, str) and kind not in ("wrap", "word"):
            kind = "word"
        formula = None if row.formula is None else cell_text(row.formula(option))
        look: Look = "best" if option.name == best else "plain"
        page.put(page.row, column, value, kind, look, word=row.word, formula=formula)
    page.row += 1


def _sections(study: Study, money: MoneyCells, cells: OptionRows) -> list[tuple[str, list[Row]]]:
    currency, years = study.scenario.currency, study.scenario.finance.life_years
    figures = Figures(money, cells)
    return [
        ("Design", _design()),
        ("Service", _service(study)),
        ("Energy, mean of the life years", _energy(years)),
        ("Money", [rank_row(study, cells), *money_rows(currency, figures)]),
        ("Life-cycle cost components, present value", component_rows(currency, figures)),
        ("Carbon dioxide of fuel and grid (what was built is not counted)", _carbon(years)),
        (f"Compared with {study.reference}, before grant and loan", comparison_rows(currency, money, cells)),
        ("Delivered share by life year", [_share_of_year(year) for year in range(years)]),
    ]


def _design() -> list[Row]:
    return [
        Row("tank_m3", "Tank", "m3", "one", lambda option: option.tank_m3),
        Row("modules", "PV modules", "", "whole", lambda option: option.modules or "none"),
        Row("strings", "Strings in parallel", "", "whole", lambda option: option.strings or "none"),
        Row("array_kw", "PV array, rated", "kW", "two", lambda option: option.array_kw if option.modules else "none"),
        Row("generator_kw", "Generator, rated", "kW", "one", _rating_kw),
        Row(
            "start_level",
            "Start level of the float switch",
            "% of tank",
            "whole",
            lambda o: o.levels[0] if o.levels else "none",
        ),
        Row(
            "stop_level",
            "Stop level of the float switch",
            "% of tank",
            "whole",
            lambda o: o.levels[1] if o.levels else "none",
        ),
        Row("controller", "Controller", "", "word", lambda option: option.scenario.controller.mode),
        Row("pump", "Pump", "", "wrap", lambda option: option.scenario.pump.name),
        Row("duty_flow_m3h", "Flow at the duty point", "m3/h", "two", lambda option: option.duty.flow_m3h),
        Row("duty_head_m", "Total dynamic head", "m", "one", lambda option: option.duty.total_head_m),
    ]


def _rating_kw(option: OptionResult) -> Value:
    generator = option.scenario.sources.generator
    return generator.rating_kw if generator and "generator" in option.sources else "none"


def _service(study: Study) -> list[Row]:
    service = study.scenario.service
    rows = [
        Row("verdict", f"Delivers at least {service.delivered_share_percent:g} % of the demand", "", "word", verdict),
        Row("meets", "Meets the target (1: yes)", "", "whole", lambda option: float(option.meets_service)),
        Row(
            "delivered_share",
            "Delivered over the life",
            "% of demand",
            "two",
            lambda option: 100 * option.delivered_share,
        ),
        Row(
            "worst_year_share",
            "Delivered in the worst year",
            "% of demand",
            "two",
            lambda option: 100 * option.worst_year_share,
        ),
        Row(
            "demand_first_m3", "Demand in the first year", "m3", "whole", lambda option: option.quantities.demand_m3[0]
        ),
        Row(
            "delivered_first_m3",
            "Delivered in the first year",
            "m3",
            "whole",
            lambda option: option.quantities.delivered_m3[0],
        ),
        Row("demand_last_m3", "Demand in the last year", "m3", "whole", lambda option: option.quantities.demand_m3[-1]),
        Row(
            "delivered_last_m3",
            "Delivered in the last year",
            "m3",
            "whole",
            lambda option: option.quantities.delivered_m3[-1],
        ),
        Row("shortfall_m3", "Shortfall, mean", "m3/year", "one", _shortfall_m3),
        Row(
            "pumped_solar",
            "Pumped by the sun",
            "% of pumped",
            "one",
            lambda option: _pumped_percent(option, "solar"),
            "none",
        ),
        Row(
            "pumped_grid",
            "Added by the grid",
            "% of pumped",
            "one",
            lambda option: _pumped_percent(option, "grid"),
            "none",
        ),
        Row(
            "pumped_generator",
            "Added by the generator",
            "% of pumped",
            "one",
            lambda option: _pumped_percent(option, "generator"),
            "none",
        ),
    ]
    worst = service.worst_year_share_percent
    if worst is not None:
        rows[0] = Row(
            "verdict",
            f"Delivers {service.delivered_share_percent:g} % over the life, {worst:g} % in the worst year",
            "",
            "word",
            verdict,
        )
    return rows


def _shortfall_m3(option: OptionResult) -> Value:
    return float((option.quantities.demand_m3 - option.quantities.delivered_m3).mean())


def _pumped_percent(option: OptionResult, source: str) -> float:
    pumped = {name: float(getattr(option.outcome, f"{name}_m3").sum()) for name in ("solar", "grid", "generator")}
    total = sum(pumped.values())
    return 100 * pumped[source] / total if total > 0 else np.nan


def _energy(years: int) -> list[Row]:
    def mean(name: str) -> Callable[[OptionResult], Value]:
        return lambda option: float(getattr(option.outcome, name).sum()) / years

    return [
        Row("solar_kwh", "Sun used (DC)", "kWh/year", "whole", mean("solar_kwh")),
        Row("idle_kwh", "Idle sun (DC)", "kWh/year", "whole", mean("idle_kwh")),
        Row("grid_kwh", "Grid", "kWh/year", "whole", mean("grid_kwh")),
        Row("grid_hours", "Running on the grid", "h/year", "whole", mean("grid_hours")),
        Row(
            "grid_peak_kw",
            "Highest half-hour demand on the grid",
            "kW",
            "two",
            lambda option: float(option.outcome.grid_peak_kw.max()),
        ),
        Row("generator_kwh", "Generator", "kWh/year", "whole", mean("generator_kwh")),
        Row("generator_hours", "Running of the generator", "h/year", "whole", mean("generator_hours")),
        Row("fuel_l", "Fuel", "L/year", "whole", mean("fuel_l")),
    ]


def _carbon(years: int) -> list[Row]:
    def total(option: OptionResult) -> Value:
        return "not counted" if _covers(option) == "grid not counted" else float(option.life.co2_kg.sum())

    def mean(option: OptionResult) -> Value:
        value = total(option)
        return value if isinstance(value, str) or value is None else value / years

    def per_m3(option: OptionResult) -> Value:
        value, delivered = total(option), float(option.quantities.delivered_m3.sum())
        if isinstance(value, str) or value is None:
            return value
        return value / delivered if delivered > 0 else "nothing delivered"

    return [
        Row("co2_kg", "Carbon dioxide over the life", "kg", "whole", total),
        Row("co2_kg_per_year", "Carbon dioxide, mean", "kg/year", "whole", mean),
        Row("co2_kg_per_m3", "Carbon dioxide per m3 delivered", "kg/m3", "three", per_m3),
        Row("co2_covers", "What it covers", "", "wrap", _covers),
    ]


def _covers(option: OptionResult) -> str:
    grid = option.scenario.sources.grid
    parts = ["fuel"] if "generator" in option.sources else []
    if "grid" in option.sources:
        parts.append("grid" if grid is not None and grid.co2_kg_per_kwh is not None else "grid not counted")
    return "; ".join(parts) or "none burnt or bought"


def _share_of_year(year: int) -> Row:
    def share(option: OptionResult) -> Value:
        demand = float(option.quantities.demand_m3[year])
        return 100 * float(option.quantities.delivered_m3[year]) / demand if demand > 0 else np.nan

    return Row(f"share_of_year_{year + 1}", f"Year {year + 1}", "% of demand", "two", share, "no demand")
