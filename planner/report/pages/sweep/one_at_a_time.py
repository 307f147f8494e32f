"""The page of a sweep one at a time: a table and a tornado chart for each result."""

from __future__ import annotations

from math import nan

import numpy as np

from planner.report.document import Axis, Block, Cell, Chart, Column, Kind, Page, Row, Series, Span, Table
from planner.report.pages.figure_cells import figure_heading
from planner.report.pages.sweep.common import input_name, number, said
from planner.study.sweep.run import Base, Results
from planner.study.sweep.statistics import sensitivity_indicator
from planner.study.sweep.summary import Tornado, best_two, ends_of, first_words, firsts_of, tornadoes
from planner.text import text

SHOWN_INPUTS, LEAST_CHART_ROWS = 15, 10
WIDTHS = {"input": 44.0, "best_at_low": 26.0, "best_at_high": 26.0}
NUMBER_WIDTH = 11.0
_COLUMNS = (
    "input", "low_value", "base", "high_value", "at_low", "at_high", "swing", "low_less_base", "high_less_base",
    "indicator", "best_at_low", "best_at_high",
)  # fmt: skip
_FIGURES: tuple[tuple[str, str, Kind], ...] = (
    ("cost", "life_cycle_cost", "money"),
    ("levelised", "levelised_cost_per_m3", "three"),
    ("lead", "life_cycle_cost", "money"),
)
"""Name in texts, figure and format of each tornado; swings of the levelised cost show only with three decimals."""
_TECHNICAL_FIGURES: tuple[tuple[str, str, Kind], ...] = (("met", "demand_met_percent", "two"),)
"""The same where there are no prices."""
_DECIMALS = {"two": 2, "three": 3}


def one_at_a_time_page(base: Base, results: Results) -> Page:
    """Build the page of a sweep one at a time."""
    blocks: list[Block] = []
    for place in range(len(tornadoes(base, results))):
        table = tornado_table(base, results, place)
        blocks += [table, _chart(table, base, results, place)]
    name = text("sweep.one_at_a_time")
    under = said(base, "sweep.one_at_a_time_under")
    return Page("sweep.one_at_a_time", name, text("sweep.one_at_a_time_title"), under, tuple(blocks))


def _title(base: Base, place: int) -> str:
    """Name the result of a tornado and its unit."""
    first, second = best_two(base)
    name, key, _ = _figure(base, place)
    slots = {"option": base.options[first], "figure": figure_heading(key, base.scenario.currency)}
    if second is not None:
        slots["second"] = base.options[second]
    return text(f"sweep.tornado_{name}", **slots)


def _figure(base: Base, place: int) -> tuple[str, str, Kind]:
    return (_FIGURES if base.scenario.priced else _TECHNICAL_FIGURES)[place]


def tornado_table(base: Base, results: Results, place: int) -> Table:
    """One tornado as a table: 0 life-cycle cost (or demand met), 1 levelised cost, 2 lead over the second best."""
    tornado, firsts, kind = tornadoes(base, results)[place], firsts_of(results), _figure(base, place)[2]
    rows = []
    for swing in tornado.swings:
        key = results.plan.keys[swing.index]
        low, high = ends_of(results, swing.index)
        there = [first_words(firsts[1 + 2 * swing.index + end], results.options) for end in (0, 1)]
        indicator = _indicator(tornado, key.base, (low, swing.low), (high, swing.high))
        cells = {
            "input": Cell(input_name(key, base.scenario.currency)),
            "low_value": Cell(low, "general"),
            "base": Cell(nan if key.base is None else key.base, "general", word=text("sweep.chosen")),
            "high_value": Cell(high, "general"),
            "at_low": number(swing.low, kind),
            "at_high": number(swing.high, kind),
            "swing": number(swing.swing, kind),
            "low_less_base": number(swing.low - tornado.base, kind),
            "high_less_base": number(swing.high - tornado.base, kind),
            "indicator": Cell(indicator, "two", word=text("sweep.no_value")),
            "best_at_low": Cell(there[0], "wrap"),
            "best_at_high": Cell(there[1], "wrap"),
        }
        rows.append(Row(swing.index, cells))
    columns = tuple(Column(key, text(f"sweep.{key}"), WIDTHS.get(key, NUMBER_WIDTH)) for key in _COLUMNS)
    shown = f"{tornado.base:,.{_DECIMALS.get(kind, 0)}f}"
    heading = text("sweep.tornado_heading", title=_title(base, place), value=shown)
    return Table(f"sweep.tornado_{place}", columns, tuple(rows), heading=heading)


def _chart(table: Table, base: Base, results: Results, place: int) -> Chart:
    keys = [row.key for row in table.data_rows()][:SHOWN_INPUTS]
    series = [
        Series(
            text(f"sweep.input_{end}"),
            Span(table.key, keys[0], "input", keys[-1]),
            Span(table.key, keys[0], f"{end}_less_base", keys[-1]),
            end,
        )
        for end in ("low", "high")
    ]
    title = _title(base, place)
    largest = results.plan.keys[tornadoes(base, results)[place].swings[0].index].label
    return Chart(
        f"{table.key}_chart",
        "stacked bars",
        text("sweep.tornado_chart", title=title),
        text("sweep.tornado_alt", title=title, largest=largest),
        tuple(series),
        Axis(kind="text"),
        Axis(text("sweep.change"), "two" if _figure(base, place)[2] in _DECIMALS else "whole"),
        rows=max(6 + len(keys), LEAST_CHART_ROWS),
    )


def _indicator(tornado: Tornado, base: float | None, *ends: tuple[float, float]) -> float:
    found = [sensitivity_indicator(tornado.base, result, base or 0.0, given) for given, result in ends]
    return max((value for value in found if np.isfinite(value)), default=nan)
