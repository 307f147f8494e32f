"""Sheets of the sweep's workbook, one for each kind of sweep."""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import NDArray

from planner.report.sheets.page import Page
from planner.report.style import LINES, MARKERS, Kind, axis, hatched, solid, style_chart, value_axis
from planner.study.sweep.run import Base, Results
from planner.study.sweep.statistics import PERCENTS, percentiles, rank_correlations, sensitivity_indicator
from planner.study.sweep.summary import Tornado, chances_of, cheapest_of, ends_of, first_words, firsts_of, tornadoes
from planner.study.sweep.weather import WeatherSpread

Array = NDArray[np.float64]

MOST_ROWS = 2000
"""Rows of a table in the workbook; the file of rows has all."""
SHOWN_OPTIONS, SHOWN_INPUTS = 5, 15
CHART_ROWS = 20
NO_VALUE = "no value"
LOW, HIGH = solid("#6F9AA0"), hatched("wide_upward_diagonal", "#B5651D")


def write_tornado(page: Page, book: Any, base: Base, results: Results) -> None:
    """Fill the sheet of a sweep one at a time: a table and a tornado chart for each result."""
    currency = base.scenario.currency
    page.title(
        "One input at a time",
        "Each input goes to its low and its high value while all others stay; inputs are in order of swing. The best "
        "option there is the cheapest that meets the target, or, where none does, the one that delivers most. The "
        "indicator is the percentage change of the result for each per cent of change of the input, larger end (ADB).",
    )
    page.fix_width(0, 44)
    for column in range(1, 10):
        page.fix_width(column, 13)
    firsts = firsts_of(results)
    for column in (10, 11):
        page.fix_width(column, 26)
    for number, tornado in enumerate(tornadoes(base, results)):
        unit = f"{currency}/m3" if number == 1 else currency
        kind: Kind = "three" if number == 1 else "money"
        page.heading(
            f"{tornado.title} ({unit}); as the scenario stands: {tornado.base:,.{3 if number == 1 else 0}f}", 9
        )
        page.header(
            ["Input", "Low value", "As it stands", "High value", "At low", "At high", "Swing", "Low less base",
             "High less base", "Indicator", "Best at low", "Best at high"]
        )  # fmt: skip
        first = page.row
        for swing in tornado.swings:
            key = results.plan.keys[swing.place]
            low, high = ends_of(results, swing.place)
            page.put(page.row, 0, f"{key.text} ({_unit(key.unit, currency)})" if key.unit else key.text)
            page.put(page.row, 1, low, "general")
            page.put(page.row, 2, np.nan if key.base is None else key.base, "general", word="chosen by tool")
            page.put(page.row, 3, high, "general")
            for column, value in enumerate((swing.low, swing.high, swing.swing), start=4):
                page.put(page.row, column, value, kind, word=NO_VALUE)
            for column, value in ((7, swing.low - tornado.base), (8, swing.high - tornado.base)):
                page.put(page.row, column, value, kind, word=NO_VALUE)
            page.put(page.row, 9, _indicator(tornado, key.base, (low, swing.low), (high, swing.high)), "two", word="–")
            for column, first_there in zip((10, 11), firsts[1 + 2 * swing.place : 3 + 2 * swing.place], strict=True):
                page.put(page.row, column, first_words(first_there, results.options), "wrap")
            page.row += 1
        shown = min(len(tornado.swings), SHOWN_INPUTS)
        chart = book.add_chart({"type": "bar", "subtype": "stacked"})
        for column, name, fill in ((7, "Input low", LOW), (8, "Input high", HIGH)):
            chart.add_series(
                {
                    "name": name,
                    "categories": page.range_of(first, 0, first + shown - 1, 0),
                    "values": page.range_of(first, column, first + shown - 1, column),
                    "gap": 40,
                    **fill,
                }
            )
        chart.set_y_axis(axis("", reverse=True, label_position="low"))
        chart.set_x_axis(value_axis(f"Change ({unit})", "#,##0.00" if number == 1 else "#,##0"))
        rows = max(6 + shown, 10)
        page.chart(style_chart(chart, f"Change of: {tornado.title}"), page.row + 1, 0, 9, rows)
        page.row += rows + 2


def _indicator(tornado: Tornado, base: float | None, *ends: tuple[float, float]) -> float:
    found = [sensitivity_indicator(tornado.base, result, base or 0.0, given) for given, result in ends]
    known = [value for value in found if np.isfinite(value)]
    return max(known) if known else float("nan")


def write_grid(page: Page, book: Any, base: Base, results: Results) -> None:
    """Fill the sheet of a grid: the cheapest option that serves in each combination."""
    currency, plan = base.scenario.currency, results.plan
    cost, best = results.measure("present_cost"), cheapest_of(results)
    page.title(
        "All combinations",
        f"{plan.size} combinations; the cheapest option that meets the service target in each, and the present cost of "
        "every option.",
    )
    names = [f"{key.text} ({_unit(key.unit, currency)})" if key.unit else key.text for key in plan.keys]
    page.header([*names, "Cheapest that serves", *(f"{name} ({currency})" for name in results.options)])
    page.freeze(len(names))
    first, last = page.row, page.row + min(plan.size, MOST_ROWS) - 1
    for variant in range(last - first + 1):
        for column, value in enumerate(plan.values[variant]):
            page.put(page.row, column, float(value), "general")
        place = best[variant]
        failed = variant in results.problems
        page.put(page.row, len(names), results.options[place] if place is not None else "failed" if failed else "none")
        for column in range(len(results.options)):
            look = "best" if column == place else "plain"
            page.put(page.row, len(names) + 1 + column, float(cost[variant, column]), "money", look, word=NO_VALUE)  # type: ignore[arg-type]
        page.row += 1
    if plan.size > MOST_ROWS:
        page.paragraph(f"The other {plan.size - MOST_ROWS} combinations are in the file of rows.")
    if len(names) == 1 and not results.problems:
        chart = book.add_chart({"type": "scatter", "subtype": "straight_with_markers"})
        for number, place in enumerate(_leading(base)):
            chart.add_series(
                {
                    "name": results.options[place],
                    "categories": page.range_of(first, 0, last, 0),
                    "values": page.range_of(first, 2 + place, last, 2 + place),
                    "line": LINES[number],
                    "marker": _marker(number, 6),
                }
            )
        chart.set_x_axis(axis(names[0], "General"))
        chart.set_y_axis(value_axis(f"Present cost ({currency})"))
        page.chart(style_chart(chart, "Present cost"), page.row + 1, 0, None, CHART_ROWS)
    elif len(names) == 2 and plan.size <= MOST_ROWS:
        _write_map(page, results, best, names)


def _write_map(page: Page, results: Results, best: list[int | None], names: list[str]) -> None:
    """Write the two-way map of the cheapest option."""
    values = results.plan.values
    down, across = (list(dict.fromkeys(values[:, place])) for place in (0, 1))
    page.heading(f"Cheapest that serves: {names[0]} down, {names[1]} across")
    page.header(["", *(f"{value:g}" for value in across)])
    found = {(row[0], row[1]): place for row, place in zip(values.tolist(), best, strict=True)}
    for value in down:
        page.put(page.row, 0, float(value), "general", "strong")
        for column, other in enumerate(across, start=1):
            place = found.get((value, other))
            page.put(page.row, column, "none" if place is None else results.options[place])
        page.row += 1


def write_random(page: Page, book: Any, base: Base, results: Results) -> None:
    """Fill the sheet of random draws: chances, percentiles with their meaning, and rank correlations."""
    found = chances_of(results)
    page.title(
        "Random draws",
        f"{results.plan.size} draws by Latin hypercube, {found.cases} worked out. Chances are counts of the draws; "
        "give or take twice the standard error of independent draws.",
    )
    page.fix_width(0, 44)
    page.heading("Chances (of 100 cases)", 3)
    page.header(["Supply option", "Cheapest that serves", "Give or take", "Meets the target"])
    first = page.row
    for place, name in enumerate(results.options):
        page.put(page.row, 0, name)
        page.put(page.row, 1, 100 * float(found.cheapest[place]), "one", word=NO_VALUE)
        page.put(page.row, 2, 200 * found.standard_error(float(found.cheapest[place])), "one", word=NO_VALUE)
        page.put(page.row, 3, 100 * float(found.meets_target[place]), "one", word=NO_VALUE)
        page.row += 1
    page.put(page.row, 0, "none meets the target", "text", "sub")
    page.put(page.row, 1, 100 * found.none_meets, "one", "sub", word=NO_VALUE)
    page.row += 1
    chart = book.add_chart({"type": "column"})
    for column, label, fill in ((1, "Cheapest that serves", LOW), (3, "Meets the target", HIGH)):
        chart.add_series(
            {
                "name": label,
                "categories": page.range_of(first, 0, first + len(results.options) - 1, 0),
                "values": page.range_of(first, column, first + len(results.options) - 1, column),
                **fill,
            }
        )
    chart.set_x_axis(axis(""))
    chart.set_y_axis(value_axis("Of 100 cases", "0", min=0, max=100))
    page.chart(
        style_chart(chart, "How often each option is best, and serves"), page.row + 1, 0, len(PERCENTS), CHART_ROWS
    )
    page.row += CHART_ROWS + 2
    _write_percentiles(page, book, base, results)
    _write_correlations(page, results)


def _write_percentiles(page: Page, book: Any, base: Base, results: Results) -> None:
    currency = base.scenario.currency
    tables: tuple[tuple[str, str, Kind, float], ...] = (
        (f"Present cost ({currency})", "present_cost", "money", 1.0),
        (f"Levelised cost ({currency}/m3)", "levelised_cost_per_m3", "three", 1.0),
        ("Delivered share (%)", "delivered_share", "two", 100.0),
    )
    for label, measure, kind, scale in tables:
        page.heading(f"{label}: value by how many of 100 cases exceed it", len(PERCENTS))
        columns = [percentiles(scale * column) for column in results.measure(measure).T]
        page.header(["Supply option", *(f"P{p.percent:g}: {p.meaning}" for p in columns[0])])
        first = page.row
        for name, found in zip(results.options, columns, strict=True):
            page.put(page.row, 0, name)
            for column, percentile in enumerate(found, start=1):
                page.put(page.row, column, percentile.value, kind, word=NO_VALUE)
            page.row += 1
        if measure != "present_cost":
            continue
        page.put(page.row, 0, "cases that exceed it, of 100", "text", "sub")
        for column, percent in enumerate(PERCENTS, start=1):
            page.put(page.row, column, float(100 - percent), "whole", "sub")
        page.row += 1
        chart = book.add_chart({"type": "scatter", "subtype": "straight_with_markers"})
        for number, place in enumerate(_leading(base)):
            chart.add_series(
                {
                    "name": results.options[place],
                    "categories": page.range_of(first + place, 1, first + place, len(PERCENTS)),
                    "values": page.range_of(page.row - 1, 1, page.row - 1, len(PERCENTS)),
                    "line": LINES[number],
                    "marker": _marker(number, 6),
                }
            )
        chart.set_x_axis(axis(label))
        chart.set_y_axis(value_axis("Cases that exceed it, of 100", "0", min=0, max=100))
        page.chart(
            style_chart(chart, "Present cost and how often it is exceeded"), page.row + 1, 0, len(PERCENTS), CHART_ROWS
        )
        page.row += CHART_ROWS + 2


def _write_correlations(page: Page, results: Results) -> None:
    page.heading("Rank correlation of each input with the present cost (Spearman)", len(PERCENTS))
    page.paragraph("1: the cost always rises with the input; -1: it always falls; near 0: the input hardly matters.")
    page.header(["Input", *results.options])
    cost = results.measure("present_cost")
    columns = [rank_correlations(results.plan.values, column) for column in cost.T]
    for place, key in enumerate(results.plan.keys):
        page.put(page.row, 0, key.text)
        for number, column in enumerate(columns, start=1):
            page.put(page.row, number, float(column[place]), "two", word="does not vary")
        page.row += 1


def write_weather(page: Page, book: Any, spread: WeatherSpread) -> None:
    """Fill the sheet of weather years: the worst year in ten, and each year, the dullest first."""
    kind = "measured, from the weather file" if spread.measured else "synthetic"
    page.title(
        "Weather years",
        f"{spread.years} years ({kind}), each with the demand of life year {spread.life_year} and the array as aged by "
        "then, from what the year before leaves in the tank; outages of the grid are drawn anew for each year.",
    )
    page.fix_width(0, 24)
    page.heading("Worst year in ten: delivered share that nine years in ten reach or exceed (%)", len(spread.options))
    page.header(["", *spread.options])
    for label, values in (
        ("Worst year in ten", spread.worst_in_ten),
        ("Mean of the years", spread.delivered_share.mean(axis=1)),
        ("Lowest of the years", spread.delivered_share.min(axis=1)),
        ("Highest of the years", spread.delivered_share.max(axis=1)),
    ):
        page.put(page.row, 0, label)
        for column, value in enumerate(values, start=1):
            page.put(page.row, column, 100 * float(value), "two")
        page.row += 1
    page.heading("Delivered share by year (%), the dullest year first", len(spread.options) + 1)
    page.header(["Irradiation (kWh/m2)", *spread.options])
    first = page.row
    for year in np.argsort(spread.irradiation_kwh_m2):
        page.put(page.row, 0, float(spread.irradiation_kwh_m2[year]), "whole")
        for column, share in enumerate(spread.delivered_share[:, year], start=1):
            page.put(page.row, column, 100 * float(share), "two")
        page.row += 1
    chart = book.add_chart({"type": "scatter"})
    order = np.argsort(spread.worst_in_ten, kind="stable")[:SHOWN_OPTIONS]
    for number, place in enumerate(order):
        chart.add_series(
            {
                "name": spread.options[place],
                "categories": page.range_of(first, 0, page.row - 1, 0),
                "values": page.range_of(first, 1 + int(place), page.row - 1, 1 + int(place)),
                "marker": _marker(number, 7),
            }
        )
    years = spread.irradiation_kwh_m2
    chart.set_x_axis(
        axis("Irradiation of the year (kWh/m2)", min=float(np.floor(years.min() / 50) * 50),
             max=float(np.ceil(years.max() / 50 + 0.01) * 50))
    )  # fmt: skip
    chart.set_y_axis(value_axis("Delivered share (%)", "0", max=100))
    page.chart(style_chart(chart, "Delivered share and irradiation of the year"), page.row + 1, 0, None, CHART_ROWS)


def _leading(base: Base) -> list[int]:
    """Places of the options shown in a chart, best first."""
    return base.ranking()[:SHOWN_OPTIONS]


def _marker(number: int, size: int) -> dict[str, Any]:
    colour = LINES[number]["color"]
    return {"type": MARKERS[number], "size": size, "fill": {"color": colour}, "border": {"color": colour}}


def _unit(unit: str, currency: str) -> str:
    return unit.replace("money", currency)
