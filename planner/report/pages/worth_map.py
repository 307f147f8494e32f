"""The map of `planner worth`: which option is best over two inputs, and what it costs."""

from __future__ import annotations

from planner.report.document import Axis, Cell, Chart, Column, Page, Row, Series, Span, Table
from planner.report.pages.figure_cells import figure_heading
from planner.report.shown import NOTHING
from planner.study.worth import CheapestMap
from planner.text import text

CORNER_WIDTH, OPTION_WIDTH = 34.0, 15.0
CHART_ROWS = 20


def map_slots(cheapest: CheapestMap) -> dict[str, str]:
    """Names of the two inputs with their units, for sentences."""
    down, across = cheapest.down, cheapest.across
    named = {"down": down, "across": across}
    return {place: text("figure.heading", label=varied.label, unit=varied.unit) for place, varied in named.items()}


def has_several(cheapest: CheapestMap) -> bool:
    """Whether more than one answer stands on the map."""
    return len({(name, meets) for names, row in zip(cheapest.best, cheapest.meets, strict=True)
                for name, meets in zip(names, row, strict=True)}) > 1  # fmt: skip


def one_map_words(cheapest: CheapestMap) -> str:
    """Say what stands all over a map."""
    key = "worth.map_one" if cheapest.meets[0][0] else "worth.map_one_misses"
    return text(key, option=cheapest.best[0][0], **map_slots(cheapest))


def map_table(cheapest: CheapestMap) -> Table:
    """Best option by two inputs."""
    columns = [Column("down", text("worth.map_corner", **map_slots(cheapest)), CORNER_WIDTH)]
    columns += [Column(f"{place}", f"{value:.4g}", OPTION_WIDTH) for place, value in enumerate(cheapest.across_values)]
    rows = []
    lines = zip(cheapest.down_values, cheapest.best, cheapest.meets, strict=True)
    for number, (value, names, meets) in enumerate(lines):
        cells = {"down": Cell(value, "general")}
        for place, (name, serves) in enumerate(zip(names, meets, strict=True)):
            cells[f"{place}"] = Cell(name if serves else text("worth.misses", option=name), "wrap")
        rows.append(Row(number, cells))
    return Table("worth.map", tuple(columns), tuple(rows))


def map_page(cheapest: CheapestMap, currency: str) -> Page:
    """Build the page of the map; the values across stand in the first row of the costs, as the chart needs numbers."""
    key, count = "worth.map_costs", len(cheapest.across_values)
    names = map_table(cheapest)
    places = [f"{place}" for place in range(count)]
    top = {"down": Cell(names.columns[0].heading, "wrap")}
    top |= {place: Cell(value, "general") for place, value in zip(places, cheapest.across_values, strict=True)}
    rows = [Row("across", top, "total")]
    for number, (value, costs) in enumerate(zip(cheapest.down_values, cheapest.present_cost.tolist(), strict=True)):
        cells = {place: Cell(cost, "money", word=NOTHING) for place, cost in zip(places, costs, strict=True)}
        rows.append(Row(number, {"down": Cell(value, "general"), **cells}))
    heading = figure_heading("life_cycle_cost", currency)
    table = Table(key, names.columns, tuple(rows), heading=text("worth.map_cost", cost=heading), header=False)
    series = [
        Series(
            f"{cheapest.down.label} {value:.4g}",
            Span(key, "across", places[0], last_column=places[-1]),
            Span(key, number, places[0], last_column=places[-1]),
            f"line {number}",
        )
        for number, value in enumerate(cheapest.down_values)
    ]
    slots = map_slots(cheapest)
    chart = Chart(
        "worth.map_chart",
        "lines",
        text("worth.map_chart"),
        text("worth.map_alt", **slots),
        tuple(series),
        Axis(slots["across"], "general"),
        Axis(heading),
        rows=CHART_ROWS,
    )
    under = text("worth.map_under", **slots)
    return Page("worth.map", text("worth.map"), text("worth.map"), under, (names, table, chart), one_page=True)
