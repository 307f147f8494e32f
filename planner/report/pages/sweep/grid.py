"""The page of a grid: the cheapest option that serves in each combination."""

from __future__ import annotations

from planner.figures import figure
from planner.report.document import Axis, Block, Cell, Chart, Column, Page, Row, Series, Span, Table
from planner.report.document import Text as Words
from planner.report.pages.figure_cells import figure_heading
from planner.report.pages.sweep.common import CHART_ROWS, input_name, leading, said
from planner.study.sweep.run import Base, Results
from planner.study.sweep.summary import cheapest_of, judged
from planner.text import text

MOST_ROWS = 2000
"""Rows of a table in the workbook; the file of rows has all."""


def grid_page(base: Base, results: Results) -> Page:
    """Build the page of a grid."""
    plan, currency = results.plan, base.scenario.currency
    names = [input_name(key, currency) for key in plan.keys]
    best = cheapest_of(results)
    blocks: list[Block] = [_table(base, results, names, best)]
    if plan.size > MOST_ROWS:
        blocks.append(Words(text("sweep.more_combinations", count=plan.size - MOST_ROWS)))
    if len(names) == 1 and not results.problems:
        blocks.append(_chart(base, results, names[0]))
    elif len(names) == 2 and plan.size <= MOST_ROWS:
        blocks.append(_map(base, results, best, names))
    under = said(base, "sweep.grid_under", count=plan.size)
    return Page("sweep.grid", text("sweep.grid"), text("sweep.grid_title"), under, tuple(blocks))


def _table(base: Base, results: Results, names: list[str], best: list[int | None]) -> Table:
    by = judged(base)
    value, unit = by.factor * results.measure(by.measure), figure(by.figure).unit_in(base.scenario.currency)
    columns = [Column(f"input_{place}", name) for place, name in enumerate(names)]
    columns.append(Column("best", said(base, "sweep.cheapest")))
    columns += [Column(f"option_{place}", text("studies.option_cost", option=name, currency=unit))
                for place, name in enumerate(results.options)]  # fmt: skip
    rows = []
    for variant in range(min(results.plan.size, MOST_ROWS)):
        place = best[variant]
        none = text("sweep.failed" if variant in results.problems else "sweep.none")
        values = results.plan.values[variant]
        cells = {f"input_{column}": Cell(float(value), "general") for column, value in enumerate(values)}
        cells["best"] = Cell(none if place is None else results.options[place])
        for column in range(len(results.options)):
            cells[f"option_{column}"] = Cell(
                float(value[variant, column]),
                figure(by.figure).format,
                "best" if column == place else "plain",
                text("sweep.no_value"),
            )
        rows.append(Row(variant, cells))
    return Table("sweep.grid", tuple(columns), tuple(rows), freeze=len(names))


def _chart(base: Base, results: Results, name: str) -> Chart:
    last = min(results.plan.size, MOST_ROWS) - 1
    places = leading(base)
    series = [
        Series(
            results.options[place],
            Span("sweep.grid", 0, "input_0", last),
            Span("sweep.grid", 0, f"option_{place}", last),
            f"line {order}",
        )
        for order, place in enumerate(places)
    ]
    heading = figure_heading(judged(base).figure, base.scenario.currency)
    options = ", ".join(results.options[place] for place in places)
    alt = said(base, "sweep.grid_alt", input=name, options=options)
    return Chart("sweep.grid_chart", "lines", heading, alt, tuple(series), Axis(name, "general"), Axis(heading),
                 rows=CHART_ROWS)  # fmt: skip


def _map(base: Base, results: Results, best: list[int | None], names: list[str]) -> Table:
    """Lay the cheapest option out over two inputs."""
    values = results.plan.values
    down, across = (list(dict.fromkeys(values[:, place].tolist())) for place in (0, 1))
    found = {(row[0], row[1]): place for row, place in zip(values.tolist(), best, strict=True)}
    columns = [Column("down", names[0])]
    columns += [Column(f"{place}", f"{value:g}") for place, value in enumerate(across)]
    rows = []
    for value in down:
        cells = {"down": Cell(value, "general", "strong")}
        for place, other in enumerate(across):
            at = found.get((value, other))
            cells[f"{place}"] = Cell(text("sweep.none") if at is None else results.options[at])
        rows.append(Row(value, cells))
    heading = said(base, "sweep.map", down=names[0], across=names[1])
    return Table("sweep.map", tuple(columns), tuple(rows), heading=heading)
