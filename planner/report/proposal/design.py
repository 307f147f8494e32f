"""The design that is proposed, the head that it must lift to, and the options that it was compared with."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

from planner.answers.decision import OptionRow
from planner.answers.uncertainty import switching_sentences
from planner.figures import figure, figures_of
from planner.report.document import Block, Cell, Column, Kind, Row, Table, Text
from planner.report.pages.head import PARTS, RUNS
from planner.report.pages.options import OPTIONS
from planner.report.proposal.material import OWN, Material, asked, to_complete, value_cell
from planner.study.words import sentences
from planner.text import text

DUTY_POINT = "head.figures"
_ACCEPTANCE = ("pump", "flow", "array", "works")
"""Tests at hand-over, in the order in which they are named."""
_WORDS: dict[str, Kind] = {"option": "wrap", "meets_target": "centre"}
"""Columns of the options that hold no numbers."""


def design_blocks(material: Material) -> Iterator[Block]:
    """Describe the works, their head and duty point, and the tests at hand-over."""
    first = material.first
    if material.given("pump.name"):
        yield Text(text("proposal.design", option=first.name, pump=first.scenario.pump.name))
    else:
        yield Text(text("proposal.design_unnamed", option=first.name))
        yield to_complete("pump")
    yield _works(material)
    head = {key: material.table(key) for key in (PARTS, DUTY_POINT, RUNS)}
    yield from (_with_values(table) if key == DUTY_POINT else table for key, table in head.items() if table is not None)
    if not first.scenario.pipeline.profile:
        yield to_complete("profile")
    yield from asked("drawings")
    if first.has_array:
        yield from asked("array_place")
    yield from asked("tank_structure")
    yield _acceptance(material)


def _with_values(table: Table) -> Table:
    """Set the words among the values of a table as its numbers are set."""
    rows = tuple(
        replace(row, cells={**row.cells, "value": value_cell(row.cells["value"])}) for row in table.data_rows()
    )
    return replace(table, rows=rows)


def _works(material: Material) -> Table:
    """Figures of the design that the option has."""
    rows = [
        each.key
        for each in figures_of("design")
        if each.key not in ("duty_flow_m3h", "total_dynamic_head_m") and material.value(each.key) > 0
    ]
    given = ["pump"] if material.given("pump.name") else []
    return material.of_first(OPTIONS, ("figure", OWN, "unit"), [*given, "controller", *rows], text("proposal.works"))


def _acceptance(material: Material) -> Table:
    keys = [key for key in _ACCEPTANCE if key != "array" or material.first.has_array]
    rows = tuple(
        Row(key, {part: Cell(text(f"proposal.acceptance.{key}.{part}"), "wrap") for part in ("what", "test", "source")})
        for key in keys
    )
    columns = tuple(Column(part, text(f"proposal.column.{part}")) for part in ("what", "test", "source"))
    return Table("proposal.acceptance", columns, rows, heading=text("proposal.acceptance"))


def options_blocks(material: Material) -> Iterator[Block]:
    """Hold the options against each other, and say why this one is proposed and what would turn that."""
    if material.scenario.question:
        yield Text(text("answer.question", question=material.scenario.question))
    compared = material.decision.options
    rows = tuple(
        Row(option.name, {key: _compared(option, key) for key in compared.headings}, "best" if option.best else "plain")
        for option in compared.rows
    )
    columns = tuple(Column(key, heading) for key, heading in compared.headings.items())
    yield Table("proposal.options", columns, rows)
    among_risks = switching_sentences(material.study)
    said = dict.fromkeys([*sentences(material.study), *material.decision.turns])
    yield from (Text(sentence) for sentence in said if sentence not in among_risks)
    yield from asked("other_ways")


def _compared(option: OptionRow, key: str) -> Cell:
    said, value = option.texts[key], option.values.get(key, math.nan)
    if key in _WORDS or not math.isfinite(value) or said == text("answer.nothing"):
        return Cell(said, _WORDS.get(key, "word"))
    return Cell(value, figure(key).format)
