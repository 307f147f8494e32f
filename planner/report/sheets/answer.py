"""The sheet 'Answer': one page that stands alone."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from planner.report.sheets.inputs import entries, plain_kind
from planner.report.sheets.options import COST_LABELS, CostCells, verdict
from planner.report.sheets.page import Page
from planner.report.style import COST_FILLS, Kind, Look, axis, dressed, value_axis
from planner.study.compare import OptionResult, Study

LAST = 13
CHART_FIRST, CHART_ROWS = 4, 24

# What the answer hangs on, by key; those that the scenario does not use are passed over.
ASSUMPTIONS: tuple[tuple[str, str], ...] = (
    ("demand.growth_percent_per_year", "Growth of demand (%/year)"),
    ("service.delivered_share_percent", "Service target (% of demand delivered)"),
    ("finance.life_years", "Years counted"),
    ("finance.discount_rate_percent", "Discount rate (%/year)"),
    ("sources.solar.module.price", "Price of a PV module ({currency})"),
    ("sources.grid.tariff.price_per_kwh", "Grid energy ({currency}/kWh)"),
    ("sources.grid.tariff.price_growth_percent_per_year", "Growth of the tariff (%/year)"),
    ("sources.grid.outages.hours_per_day", "Grid outages, mean (h/day)"),
    ("sources.generator.fuel_price_per_l", "Fuel at the pump ({currency}/L)"),
    ("sources.generator.fuel_delivery_per_l", "Bringing the fuel to the site ({currency}/L)"),
    ("sources.generator.fuel_price_growth_percent_per_year", "Growth of the fuel price (%/year)"),
)


def write_answer(
    page: Page, book: Any, study: Study, sentences: Sequence[str], costs: CostCells, options: Page
) -> None:
    """Fill the sheet 'Answer'.

    Parameters
    ----------
    page : Page
        The sheet.
    book
        XlsxWriter's workbook, for the chart.
    study : Study
        The finished comparison.
    sentences : sequence of str
        The answer in words.
    costs : CostCells
        Where the sheet 'Options' holds the present cost by category.
    options : Page
        That sheet.
    """
    scenario = study.scenario
    currency = scenario.currency
    page.title(scenario.name, scenario.site.place)
    if scenario.question:
        page.paragraph(f"Question: {scenario.question}")
    prices = "constant prices of year 0" if scenario.finance.prices == "constant" else "nominal prices"
    people = "" if scenario.people is None else f"Serves {scenario.people:,.0f} people in the first year. "
    page.paragraph(
        f"{people}Money in {currency}, {prices}. Every option was simulated hour by hour through "
        f"{scenario.finance.life_years} years."
    )
    first = study.ranked[0]
    target = f"{scenario.service.delivered_share_percent:g} %"
    if study.best is None:
        page.paragraph(f"✗ No option meets the service target of {target}; {first.name} comes nearest.", "verdict")
    else:
        page.paragraph(f"✓ Recommended: {first.name}", "verdict")
    for sentence in sentences:
        page.paragraph(sentence)
    _table(page, study)
    page.row += 1
    top = page.row
    _assumptions(page, study)
    page.chart(_cost_chart(book, study, costs, options), top, CHART_FIRST, LAST, max(CHART_ROWS, page.row - top))
    page.row = max(page.row, top + CHART_ROWS)
    page.paragraph(
        "Read the cautions on the sheet 'Method and cautions' before anything is bought or built; local codes and "
        "licensed practice come first."
    )


def _table(page: Page, study: Study) -> None:
    currency = study.scenario.currency
    years = study.scenario.finance.life_years
    page.row += 1
    page.header(
        [
            "Supply option, best first",
            "Service",
            "Delivered (%)",
            "Worst year (%)",
            "Tank (m3)",
            "PV modules",
            "PV array (kW)",
            "Grid (kWh/year)",
            "Fuel (L/year)",
            f"Build cost ({currency})",
            f"Present cost ({currency})",
            f"Yearly cost ({currency}/year)",
            f"Cost of water ({currency}/m3)",
            f"Per person ({currency}/year)",
        ]
    )
    page.fix_width(0, 34)
    page.fix_width(1, 17)
    for option in study.ranked:
        look: Look = "best" if option.name == study.best else "plain"
        for column, (value, kind, word) in enumerate(_figures(option, years)):
            page.put(page.row, column, value, kind, look, word=word)
        page.row += 1


def _figures(option: OptionResult, years: int) -> Iterator[tuple[float | str, Kind, str | None]]:
    life, quantities = option.life, option.quantities
    yield option.name, "text", None
    yield verdict(option), "text", None
    yield 100 * option.delivered_share, "one", None
    yield 100 * option.worst_year_share, "one", None
    yield option.tank_m3, "one", None
    yield (option.modules, "whole", None) if option.modules else ("–", "word", None)
    yield (option.array_kw, "two", None) if option.modules else ("–", "word", None)
    yield (float(quantities.grid_kwh.sum()) / years, "whole", None) if "grid" in option.sources else ("–", "word", None)
    fuel_l = float(quantities.fuel_l.sum()) / years
    yield (fuel_l, "whole", None) if "generator" in option.sources else ("–", "word", None)
    yield float(life.capital_cost), "money", None
    yield float(life.present_cost), "money", None
    yield float(life.equivalent_yearly_cost), "money", None
    yield float(life.levelised_cost_per_m3), "price", "no water"
    yield float(life.cost_per_person_year), "price", "no people"


def _assumptions(page: Page, study: Study) -> None:
    """Write what the answer depends on, in the columns left of the chart."""
    page.header(["What it depends on", "Value", "Basis"])
    duty, quantities = study.ranked[0].duty, study.ranked[0].quantities
    worked_out: tuple[tuple[str, float, Kind], ...] = (
        ("Demand in the first year (m3/day)", float(quantities.demand_m3[0]) / 365, "one"),
        ("Total dynamic head (m)", duty.total_head_m, "one"),
        ("Flow at that head (m3/h)", duty.flow_m3h, "two"),
        ("Sun on the horizontal, mean (kWh/m2/day)", float(study.weather.monthly_ghi_kwh_m2_day().mean()), "two"),
    )
    for label, value, kind in worked_out:
        _assumption(page, label, value, kind, "worked out")
    known = {entry.key: entry for entry in entries(study.scenario)}
    for key, label in ASSUMPTIONS:
        entry = known.get(key)
        if entry is not None and isinstance(entry.value, int | float):
            _assumption(
                page, label.format(currency=study.scenario.currency), entry.value, plain_kind(entry.value), entry.status
            )


def _assumption(page: Page, label: str, value: float, kind: Kind, basis: str) -> None:
    page.put(page.row, 0, label)
    page.put(page.row, 1, value, kind)
    page.put(page.row, 2, basis, "centre")
    page.row += 1


def _cost_chart(book: Any, study: Study, costs: CostCells, options: Page) -> Any:
    """Present cost of every option, stacked by category, the best at the top."""
    chart = book.add_chart({"type": "bar", "subtype": "stacked"})
    names = options.range_of(costs.header_row, costs.first_column, costs.header_row, costs.last_column)
    for category, row in costs.rows.items():
        chart.add_series(
            {
                "name": COST_LABELS[category],
                "categories": names,
                "values": options.range_of(row, costs.first_column, row, costs.last_column),
                "gap": 45,
                **COST_FILLS[category],
            }
        )
    chart.set_y_axis(axis("", reverse=True, label_position="low", crossing="max"))
    chart.set_x_axis(value_axis(f"Present cost ({study.scenario.currency})"))
    return dressed(chart, "Present cost by category", legend="right")
