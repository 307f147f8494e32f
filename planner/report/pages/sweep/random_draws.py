"""The page of random draws: chances, percentiles with their meaning, and rank correlations."""

from __future__ import annotations

from planner.figures import shown
from planner.report.document import Axis, Block, Cell, Chart, Column, Heading, Kind, Page, Row, Series, Span, Table
from planner.report.document import Text as Words
from planner.report.pages.figure_cells import figure_heading, measure_of
from planner.report.pages.sweep.common import CHART_ROWS, leading, number, said
from planner.study.sweep.run import Base, Results
from planner.study.sweep.statistics import PERCENTS, percentiles, rank_correlations
from planner.study.sweep.summary import chances_of, judged
from planner.text import text

LABEL_WIDTH = 44.0
FIGURES: tuple[tuple[str, Kind], ...] = (
    ("life_cycle_cost", "money"),
    ("levelised_cost_per_m3", "three"),
    ("demand_met_percent", "two"),
)
"""Figures shown by percentile, with their formats; those of the levelised cost differ in the third decimal."""


def random_page(base: Base, results: Results) -> Page:
    """Build the page of random draws."""
    chances = _chances(base, results)
    blocks: list[Block] = [chances, _chances_chart(base, results)]
    for key, kind in FIGURES:
        if key in shown([key], priced=base.scenario.priced):
            blocks.append(_percentiles(base, results, key, kind))
        if key == judged(base).figure:
            blocks.append(_exceeded_chart(base, results))
    blocks += [Heading(said(base, "sweep.correlations")), Words(said(base, "sweep.correlation_note"))]
    blocks.append(_correlations(base, results))
    under = text("sweep.random_under", draws=results.plan.size, worked=chances_of(results).cases)
    name = text("sweep.random")
    return Page("sweep.random", name, text("sweep.random_title"), under, tuple(blocks), (LABEL_WIDTH,))


def _chances(base: Base, results: Results) -> Table:
    found = chances_of(results)
    columns = (Column("option", text("studies.option")), Column("cheapest", said(base, "sweep.cheapest")),
               Column("error", text("sweep.error")), Column("meets_target", text("studies.meets_target")))  # fmt: skip
    rows = [
        Row(
            place,
            {
                "option": Cell(name),
                "cheapest": number(100 * found.cheapest[place], "one"),
                "error": number(200 * found.standard_error(float(found.cheapest[place])), "one"),
                "meets_target": number(100 * found.meets_target[place], "one"),
            },
        )
        for place, name in enumerate(results.options)
    ]
    none = {"option": Cell(text("sweep.none_meets")), "cheapest": number(100 * found.none_meets, "one")}
    return Table("sweep.chances", columns, (*rows, Row("none", none, "sub")), heading=text("sweep.chances"))


def _chances_chart(base: Base, results: Results) -> Chart:
    last = len(results.options) - 1
    bars = (("cheapest", said(base, "sweep.cheapest"), "low"), ("meets_target", text("studies.meets_target"), "high"))
    series = [
        Series(name, Span("sweep.chances", 0, "option", last), Span("sweep.chances", 0, key, last), style)
        for key, name, style in bars
    ]
    title, alt = text("sweep.chances_chart"), said(base, "sweep.chances_alt", options=", ".join(results.options))
    axes = Axis(kind="text"), Axis(text("sweep.of_100"), low=0, high=100)
    return Chart("sweep.chances_chart", "columns", title, alt, tuple(series), *axes, rows=CHART_ROWS)


def _percentiles(base: Base, results: Results, key: str, kind: Kind) -> Table:
    name, factor = measure_of(key)
    found = [percentiles(factor * column) for column in results.measure(name).T]
    keys = [f"p{percent:g}" for percent in PERCENTS]
    columns = [Column("option", text("studies.option"))]
    columns += [
        Column(column, text("sweep.percentile", percent=f"{each.percent:g}", meaning=each.meaning))
        for column, each in zip(keys, found[0], strict=True)
    ]
    rows = []
    for place, (option, values) in enumerate(zip(results.options, found, strict=True)):
        cells = {column: number(each.value, kind) for column, each in zip(keys, values, strict=True)}
        rows.append(Row(place, {"option": Cell(option), **cells}))
    if key == judged(base).figure:
        exceeded = {column: Cell(float(100 - percent), "whole") for column, percent in zip(keys, PERCENTS, strict=True)}
        rows.append(Row("exceeded", {"option": Cell(text("sweep.exceeded")), **exceeded}, "sub"))
    heading = text("sweep.percentiles", figure=figure_heading(key, base.scenario.currency))
    return Table(f"sweep.percentiles_{key}", tuple(columns), tuple(rows), heading=heading)


def _exceeded_chart(base: Base, results: Results) -> Chart:
    key = judged(base).figure
    table, first, last = f"sweep.percentiles_{key}", f"p{PERCENTS[0]:g}", f"p{PERCENTS[-1]:g}"
    places = leading(base)
    series = [
        Series(
            results.options[place],
            Span(table, place, first, last_column=last),
            Span(table, "exceeded", first, last_column=last),
            f"line {order}",
        )
        for order, place in enumerate(places)
    ]
    title = said(base, "sweep.exceeded_chart")
    alt = said(base, "sweep.exceeded_alt", options=", ".join(results.options[place] for place in places))
    axes = Axis(figure_heading(key, base.scenario.currency)), Axis(text("sweep.exceeded_axis"), low=0, high=100)
    return Chart("sweep.exceeded_chart", "lines", title, alt, tuple(series), *axes, rows=CHART_ROWS)


def _correlations(base: Base, results: Results) -> Table:
    columns = [Column("input", text("sweep.input"))]
    columns += [Column(f"option_{place}", name) for place, name in enumerate(results.options)]
    found = [rank_correlations(results.plan.values, column) for column in results.measure(judged(base).measure).T]
    rows = []
    for place, key in enumerate(results.plan.keys):
        cells = {
            f"option_{column}": Cell(float(values[place]), "two", word=text("sweep.does_not_vary"))
            for column, values in enumerate(found)
        }
        rows.append(Row(key.text, {"input": Cell(key.label), **cells}))
    return Table("sweep.correlations", tuple(columns), tuple(rows))
