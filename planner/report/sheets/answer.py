"""The sheet 'Answer': one page that stands alone."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from planner.checks.of_study import headline, holds
from planner.checks.verdict import Verdict
from planner.report.sheets.cash import COLUMN_OF, YEAR, CashCells
from planner.report.sheets.inputs import InputCells, plain_kind
from planner.report.sheets.labels import COMPONENT_LABELS, COST_LABELS, SUPPORT
from planner.report.sheets.options import verdict
from planner.report.sheets.page import Page
from planner.report.sheets.rows import OptionRows
from planner.report.style import COST_FILLS, INK, LINES, MARKERS, Kind, Look, axis, style_chart, value_axis
from planner.scenario.starter import statuses
from planner.scenario.walk import walk
from planner.study.compare import OptionResult, Study

LAST = 13
DASHED = range(5, 9)
"""Columns of the table in which nothing is shown by a dash."""
UNCHANGED = "The sentences above agree with the figures below."
OVERPAID = "! Grant and loan together exceed 100 percent of the build cost: put them right before this is used."
CHANGED = (
    "! Prices or rates were changed after the run: the figures below, the ranking and the recommendation follow them, "
    "the sentences above and the chosen sizes do not. Run the study again before it is used."
)
OTHER_FIRST = "! At the prices changed here another option costs least; run the study again to have it checked: "
CHART_FIRST, CHART_ROWS = 4, 17
SHOWN_LINES = 4

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
    page: Page,
    book: Any,
    study: Study,
    sentences: Sequence[str],
    rows: OptionRows,
    inputs: InputCells,
    cash: dict[str, CashCells],
    verdicts: Sequence[Verdict],
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
    rows : OptionRows
        Where the sheet 'Options' holds the figures.
    inputs : InputCells
        Where the inputs stand.
    cash : dict of str to CashCells
        Where the flows by year stand.
    verdicts : sequence of Verdict
        What the site checks found.
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
    best = f"INDEX({rows.range('option')},MATCH(1,{rows.range('rank')},0))"
    said = f"{'✓' if holds(study, verdicts) else '✗'} {headline(study, verdicts)}"
    page.paragraph(said, "verdict", formula=f'=IF({best}="{study.ranked[0].name}","{said}","{OTHER_FIRST}"&{best})')
    for sentence in sentences:
        page.paragraph(sentence.removeprefix(f"{headline(study, verdicts)}. "))
    total = sum(float(option.life.present_cost) for option in study.ranked)
    differ = f"ABS(SUM({rows.range('present_cost')})-({total!r}))"
    shares = "+".join(inputs.of_key[f"finance.{name}_percent"] for name in ("grant", "loan"))
    agree = f'IF({differ}<={1e-9 * abs(total)!r},"{UNCHANGED}","{CHANGED}")'
    page.paragraph(UNCHANGED, formula=f'=IF({shares}>100,"{OVERPAID}",{agree})')
    _table(page, study, rows)
    page.row += 1
    top = page.row
    _assumptions(page, study, inputs)
    _who_pays(page, study, rows)
    _components(page, study, rows)
    tall = max(CHART_ROWS, (page.row - top + 1) // 2)
    page.chart(_cost_chart(book, study, rows), top, CHART_FIRST, LAST, tall)
    page.chart(_time_chart(book, study, cash), top + tall, CHART_FIRST, LAST, tall)
    page.row = max(page.row, top + 2 * tall)
    page.paragraph(
        "Read the cautions on the sheet 'Method and cautions' before anything is bought or built; local codes and "
        "licensed practice come first."
    )


def _table(page: Page, study: Study, rows: OptionRows) -> None:
    currency = study.scenario.currency
    years = study.scenario.finance.life_years
    short = ", incomplete" if any(option.unpriced for option in study.options) else ""
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
            f"Build cost{short} ({currency})",
            f"Present cost{short} ({currency})",
            f"Yearly cost{short} ({currency}/year)",
            f"Cost of water{short} ({currency}/m3)",
            f"Per person{short} ({currency}/year)",
        ]
    )
    page.fix_width(0, 34)
    page.fix_width(1, 17)
    for place, option in enumerate(study.ranked, start=1):
        look: Look = "best" if option.name == study.best else "plain"
        match = f"MATCH({place},{rows.range('rank')},0)"
        for column, (value, kind, word, key) in enumerate(_figures(option, years)):
            found = f"INDEX({rows.range(key)},{match})"
            formula = f"={found}"
            if column in DASHED:
                formula = f'=IF(N({found})=0,"–",{found})'
            page.put(page.row, column, value, kind, look, word=word, formula=formula)
        page.row += 1


def _figures(option: OptionResult, years: int) -> Iterator[tuple[float | str, Kind, str | None, str]]:
    """Value, format, word for no value and key on the sheet 'Options' of each column."""
    life, quantities = option.life, option.quantities

    def dashed(value: float) -> float | str:
        return value or "–"

    yield option.name, "text", None, "option"
    yield verdict(option), "text", None, "verdict"
    yield 100 * option.delivered_share, "one", None, "delivered_share"
    yield 100 * option.worst_year_share, "one", None, "worst_year_share"
    yield option.tank_m3, "one", None, "tank_m3"
    yield dashed(option.modules), "whole", None, "modules"
    yield dashed(option.array_kw if option.modules else 0.0), "two", None, "array_kw"
    yield dashed(float(quantities.grid_kwh.sum()) / years), "whole", None, "grid_kwh"
    yield dashed(float(quantities.fuel_l.sum()) / years), "whole", None, "fuel_l"
    yield float(life.capital_cost), "money", None, "capital_cost"
    yield float(life.present_cost), "money", None, "present_cost"
    yield float(life.equivalent_yearly_cost), "money", None, "equivalent_yearly_cost"
    yield float(life.levelised_cost_per_m3), "price", "nothing delivered", "levelised_cost_per_m3"
    yield float(life.cost_per_person_year), "price", "no people", "cost_per_person_year"


def _assumptions(page: Page, study: Study, inputs: InputCells) -> None:
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
    known, status = {field.key: field for field in walk(study.scenario)}, statuses(study.scenario)
    for key, label in ASSUMPTIONS:
        entry = known.get(key)
        if entry is not None and isinstance(entry.value, int | float):
            words = label.format(currency=study.scenario.currency)
            _assumption(page, words, entry.value, plain_kind(entry.value), status[key], f"={inputs.of_key[key]}")


def _assumption(page: Page, label: str, value: float, kind: Kind, basis: str, formula: str | None = None) -> None:
    page.put(page.row, 0, label)
    page.put(page.row, 1, value, kind, formula=formula)
    page.put(page.row, 2, basis, "centre")
    page.row += 1


def _first(rows: OptionRows, key: str) -> str:
    """A figure of the option ranked first."""
    return f"INDEX({rows.range(key)},MATCH(1,{rows.range('rank')},0))"


def _who_pays(page: Page, study: Study, rows: OptionRows) -> None:
    """Write who pays for building the option ranked first."""
    figures = study.ranked[0].life.figures
    page.row += 1
    page.header(["Who pays for building the first", f"Year 0 ({study.scenario.currency})", "Share (%)"])
    labels = {
        "grant": "Grant",
        "loan": "Loan",
        "own_funds": "Own funds (community or owner)",
        "capital_cost": "Build cost",
    }
    _shares(page, rows, labels, figures)


def _shares(page: Page, rows: OptionRows, labels: dict[str, str], figures: dict[str, Any]) -> None:
    """Write figures of the option ranked first, each with its share of the last one, their sum."""
    *_, whole = labels
    total, all_of_it = float(figures[whole]), _first(rows, whole)
    for key, label in labels.items():
        found, value = _first(rows, key), float(figures[key])
        look: Look = "total" if key == whole else "plain"
        page.put(page.row, 0, label, "text", look)
        page.put(page.row, 1, value, "money", look, formula=f"={found}")
        share = 100 * value / total if total > 0 else 0.0
        page.put(page.row, 2, share, "one", look, formula=f"=IF({all_of_it}>0,100*{found}/{all_of_it},0)")
        page.row += 1


def _components(page: Page, study: Study, rows: OptionRows) -> None:
    """Write the life-cycle cost of the option ranked first by the components that funders use."""
    figures = study.ranked[0].life.figures
    page.row += 1
    page.header(["Life-cycle cost of the first", f"Present value ({study.scenario.currency})", "Share (%)"])
    _shares(page, rows, COMPONENT_LABELS | {"present_cost": "Present cost"}, figures)
    page.put(page.row, 0, "Cost of capital, on top", "text")
    capital = float(figures["cost_of_capital"])
    page.put(page.row, 1, capital, "money", formula=f"={_first(rows, 'cost_of_capital')}")
    page.put(page.row, 2, "loan", "centre")
    page.row += 1
    page.put(page.row, 0, SUPPORT)
    page.put(page.row, 1, "not entered", "word")
    page.put(page.row, 2, "–", "centre")
    page.row += 1


def _time_chart(book: Any, study: Study, cash: dict[str, CashCells]) -> Any:
    """Present cost cumulated by year of the options ranked first."""
    chart = book.add_chart({"type": "scatter", "subtype": "straight_with_markers"})
    for place, option in enumerate(study.ranked[:SHOWN_LINES]):
        cells, at = cash[option.name], COLUMN_OF["cumulated"]
        chart.add_series(
            {
                "name": option.name,
                "categories": cells.page.range_of(cells.first, YEAR, cells.last, YEAR),
                "values": cells.page.range_of(cells.first, at, cells.last, at),
                "line": LINES[place],
                "marker": {
                    "type": MARKERS[place],
                    "size": 5,
                    "fill": {"color": LINES[place]["color"]},
                    "border": {"color": INK},
                },
            }
        )
    chart.set_x_axis(axis("Year", "0", min=0, max=study.scenario.finance.life_years))
    chart.set_y_axis(value_axis(f"Cumulated present cost ({study.scenario.currency})"))
    return style_chart(chart, "Present cost cumulated by year", legend="right")


def _cost_chart(book: Any, study: Study, rows: OptionRows) -> Any:
    """Present cost of every option, stacked by category, the best at the top."""
    chart = book.add_chart({"type": "bar", "subtype": "stacked"})
    for category, label in COST_LABELS.items():
        if any(float(option.life.present_by_category[category]) != 0 for option in study.options):
            chart.add_series(
                {
                    "name": label,
                    "categories": rows.values("option"),
                    "values": rows.values(f"{category}_present"),
                    "gap": 45,
                    **COST_FILLS[category],
                }
            )
    chart.set_y_axis(axis("", reverse=True, label_position="low", crossing="max"))
    chart.set_x_axis(value_axis(f"Present cost ({study.scenario.currency})"))
    return style_chart(chart, "Present cost by category", legend="right")
