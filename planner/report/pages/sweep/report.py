"""The report of `planner sweep`: the answer, a page for each kind of sweep, and what could not be worked out."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from math import nan

import numpy as np

from planner.answers.cautions import weather_first
from planner.figures import shown
from planner.report.document import Block, Cell, Column, Page, Report, Row, Table
from planner.report.document import Text as Words
from planner.report.pages.figure_cells import figure_cell, figure_column, measure_of, yes_no
from planner.report.pages.sweep.grid import MOST_ROWS, grid_page
from planner.report.pages.sweep.one_at_a_time import one_at_a_time_page, tornado_table
from planner.report.pages.sweep.random_draws import random_page
from planner.report.pages.sweep.weather_years import weather_page
from planner.study.sweep.run import SweepResult
from planner.study.sweep.summary import changes_of, of_base
from planner.text import model_words, text

SHOWN_INPUTS = 8
INPUT_WIDTH = 46.0
_PAGES = {"one_at_a_time": one_at_a_time_page, "grid": grid_page, "random": random_page}
_FIGURES = ("demand_met_percent", "tank_m3", "strings", "life_cycle_cost", "levelised_cost_per_m3")
_IN_TERMINAL = ["input", "low_value", "high_value", "at_low", "at_high", "swing", "best_at_low", "best_at_high"]


def sweep_report(swept: SweepResult, sentences: Sequence[str]) -> Report:
    """Build the report of a finished sweep.

    Parameters
    ----------
    swept : SweepResult
        The finished sweep.
    sentences : sequence of str
        What it says in plain sentences.
    """
    pages = [_answer(swept, sentences)]
    pages += [_PAGES[results.plan.mode](swept.base, results) for results in swept.results]
    if swept.weather is not None:
        pages.append(weather_page(swept.weather))
    if any(results.problems for results in swept.results):
        pages.append(_left_out(swept))
    return Report(swept.base.scenario.name, tuple(pages))


def sweep_summary(swept: SweepResult, sentences: Sequence[str]) -> Iterator[Block]:
    """Give what the terminal shows: the tornado of the best option's life-cycle cost, or the options as they stand."""
    moved = [results for results in swept.results if results.plan.mode == "one_at_a_time"]
    for results in moved:
        table = tornado_table(swept.base, results, 0)
        changing = {place for place, _ in changes_of(results)}
        rows = list(table.data_rows())
        moving = [row.key for row in rows if (row.cells["swing"].value or 0) != 0][:SHOWN_INPUTS]
        keys = [row.key for row in rows if row.key in moving or row.key in changing]
        heading = text("sweep.tornado_of", scenario=swept.base.scenario.name, tornado=table.heading)
        columns = _IN_TERMINAL if changing else [key for key in _IN_TERMINAL if not key.startswith("best")]
        if keys:
            yield replace(table.only(columns, keys), heading=heading)
        if len(keys) < len(rows):
            yield Words(text("sweep.change_less", count=len(rows) - len(keys)))
    yield Words(text("caution.where_listed"), "note")
    if not moved:
        yield replace(_options_table(swept), heading=text("sweep.options_of", scenario=swept.base.scenario.name))
    yield from map(Words, weather_first(sentences, swept.base.scenario))


def _answer(swept: SweepResult, sentences: Sequence[str]) -> Page:
    scenario = swept.base.scenario
    blocks: list[Block] = [
        *map(Words, [*sentences, text("caution.where_listed")]),
        _options_table(swept),
        _inputs_table(swept),
    ]
    title = text("sweep.title", scenario=scenario.name)
    return Page("sweep.answer", text("studies.answer"), title, scenario.question or "", tuple(blocks), (INPUT_WIDTH,),
                one_page=True)  # fmt: skip


def _options_table(swept: SweepResult) -> Table:
    """Options of the scenario as it stands, best first."""
    base = swept.base
    keys = shown(_FIGURES, priced=base.scenario.priced)
    columns = (
        Column("option", text("studies.option")),
        Column("meets_target", text("studies.meets_target")),
        *(figure_column(key, base.scenario.currency) for key in keys),
    )
    values = {key: measure_of(key)[1] * of_base(base, measure_of(key)[0]) for key in keys}
    serves = of_base(base, "meets_service") > 0.5
    rows = [
        Row(
            place,
            {
                "option": Cell(base.options[place]),
                "meets_target": yes_no(bool(serves[place])),
                **{key: figure_cell(key, values[key][place]) for key in keys},
            },
        )
        for place in base.ranking()
    ]
    return Table("sweep.options", columns, tuple(rows), heading=text("sweep.options"))


def _inputs_table(swept: SweepResult) -> Table:
    currency = swept.base.scenario.currency
    keys = ("input", "mode", "base", "lowest", "highest", "unit", "changes", "key")
    columns = tuple(Column(key, text(f"sweep.{key}")) for key in keys)
    rows = []
    for results in swept.results:
        for place, key in enumerate(results.plan.keys):
            values = results.plan.values[:, place]
            cells = {
                "input": Cell(key.label),
                "mode": Cell(text(f"sweep.mode_{results.plan.mode}")),
                "base": Cell(nan if key.base is None else key.base, "general", word=text("sweep.chosen")),
                "lowest": Cell(_short(np.nanmin(values)), "general"),
                "highest": Cell(_short(np.nanmax(values)), "general"),
                "unit": Cell(model_words(key.unit).replace("money", currency)),
                "changes": Cell(text(f"sweep.changes_{key.changes}")),
                "key": Cell(key.text),
            }
            rows.append(Row((results.plan.mode, key.text), cells))
    return Table("sweep.inputs", columns, tuple(rows), heading=text("sweep.inputs"))


def _short(value: float) -> float:
    """Round to four figures, for people."""
    return float(f"{value:.4g}")


def _left_out(swept: SweepResult) -> Page:
    rows: list[Row] = []
    for results in swept.results:
        plan = results.plan
        for variant, why in list(results.problems.items())[: MOST_ROWS - len(rows)]:
            given = [
                f"{key.text} = {value:g}"
                for key, value in zip(plan.keys, plan.values[variant], strict=True)
                if not np.isnan(value)
            ]
            cells = {
                "mode": Cell(text(f"sweep.mode_{plan.mode}")),
                "variant": Cell(float(variant + 1), "whole"),
                "given": Cell(", ".join(given), "wrap"),
                "why": Cell(why.words, "wrap"),
            }
            rows.append(Row((plan.mode, variant), cells))
    widths = {"given": 60.0, "why": 90.0}
    columns = tuple(Column(key, text(f"sweep.{key}"), widths.get(key)) for key in ("mode", "variant", "given", "why"))
    table = Table("sweep.left_out", columns, tuple(rows), freeze=1)
    under = text("sweep.left_out_under")
    return Page(table.key, text("sweep.left_out"), text("sweep.left_out_title"), under, (table,))
