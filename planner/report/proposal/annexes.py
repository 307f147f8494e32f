"""The annexes: site checks, what was assumed and on what authority, cautions, and the papers to be attached."""

from __future__ import annotations

import re
from collections.abc import Hashable, Iterator

from planner.checks.verdict import SYMBOL, worst_first
from planner.report.checks_table import figure, summary
from planner.report.document import Block, Cell, Column, Heading, Row, Section, Table, Text
from planner.report.pages.inputs import plain_kind
from planner.report.pages.method import cautions_table
from planner.report.proposal.material import Material, asked, to_complete
from planner.scenario.scenario import Scenario
from planner.scenario.walk import ASSUMED, Field, first_line, walk
from planner.text import listed, text

_CHECK_COLUMNS = ("verdict", "compared", "value", "limit", "source")
_NOT_SHOWN = ("seed", "name", "include", "currency", "size", "sweep", "overrides")
"""Keys that say nothing of the works."""
_ROUTE = "pipeline.profile"
"""Points of which little but their level is ever given."""


def annex_blocks(material: Material) -> Iterator[Block]:
    """Build the annexes one after the other."""
    yield Heading(text("proposal.annex.checks"))
    yield from _checks(material)
    yield Heading(text("proposal.annex.assumptions"))
    yield Text(text("proposal.assumptions"))
    yield _assumptions(material.scenario)
    yield Text(text("proposal.weather", source=material.study.weather.source))
    yield from (Text(note, "note") for note in material.study.weather.notes)
    yield Heading(text("proposal.annex.cautions"))
    yield cautions_table(material.cautions)
    yield Heading(text("proposal.annex.papers"))
    yield from asked("papers")


def _checks(material: Material) -> Iterator[Block]:
    made = [verdict for verdict in worst_first(material.verdicts) if verdict.outcome != "not given"]
    open_ones = [verdict for verdict in material.verdicts if verdict.outcome == "not given"]
    yield Text(text("checks.under", summary=summary(material.verdicts)))
    rows = []
    for number, verdict in enumerate(made):
        words = {
            "verdict": f"{SYMBOL[verdict.outcome]} {text(f'checks.{verdict.outcome}')}",
            "compared": verdict.compared,
            "value": figure(verdict.value, verdict.unit),
            "limit": figure(verdict.limit, verdict.unit),
            "source": verdict.source,
        }
        cells = {key: Cell(said, "wrap") for key, said in words.items()}
        rows.append(Row(number, cells, "strong" if verdict.outcome == "fail" else "plain"))
    columns = tuple(Column(key, text(f"checks.{key}")) for key in _CHECK_COLUMNS)
    yield Table("proposal.checks", columns, tuple(rows))
    if open_ones:
        names = dict.fromkeys(verdict.what for verdict in open_ones)
        yield to_complete("checks", count=str(len(open_ones)), names=listed(list(names)))


def _assumptions(scenario: Scenario) -> Table:
    """Every number and choice that was not given, by the part of the scheme it belongs to, with its source."""
    parts: dict[str, dict[Hashable, Row]] = {}
    for field in walk(scenario):
        if _is_assumption(field, priced=scenario.priced):
            number = isinstance(field.value, int | float)
            said = str(field.value).replace("_", " ")
            cells = {
                "label": Cell(field.short, "wrap"),
                "value": Cell(field.value, plain_kind(field.value)) if number else Cell(said, "word"),
                "unit": Cell(field.unit, "wrap"),
                "source": Cell(field.source, "wrap"),
            }
            # Tables of a list mostly share what was not given.
            same = (field.name, field.value, field.source)
            parts.setdefault(_part_words(field), {}).setdefault(same, Row(field.key, cells))
    rows: list[Row | Section] = []
    for part, found in parts.items():
        rows += [Section(part), *found.values()]
    columns = tuple(Column(key, text(f"proposal.column.{key}")) for key in ("label", "value", "unit", "source"))
    return Table("proposal.assumptions", columns, tuple(rows))


def _is_assumption(field: Field, *, priced: bool) -> bool:
    if field.path[0] in _NOT_SHOWN or field.key.startswith(_ROUTE) or field.status not in ("default", ASSUMED):
        return False
    plain = isinstance(field.value, int | float | str) and not isinstance(field.value, bool)
    return plain and (priced or not field.is_of_money)


def _part_words(field: Field) -> str:
    """What the part is in which a key stands: the first clause of what is said of its table."""
    return re.split(r"[;:,.]", first_line(field.model), maxsplit=1)[0]
