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
from planner.text import listed, model_words, text

_CHECK_COLUMNS = ("verdict", "compared", "value", "limit", "source")
_NOT_SHOWN = ("seed", "language", "include", "currency", "size", "sweep", "overrides")
_NAMES = ("name", "place", "kind", "time_zone")
_LISTS = ("pipeline.profile", "tank.sizes")
"""Keys that say nothing of the works, and lists of points and sizes."""


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
    yield Text(text("caution.local"))
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
    for topic in dict.fromkeys(verdict.topic for verdict in open_ones):
        names = dict.fromkeys(verdict.what for verdict in open_ones if verdict.topic == topic)
        yield to_complete("checks", topic=text(f"topic.{topic}"), names=listed(list(names)))


def _assumptions(scenario: Scenario) -> Table:
    """Every number and choice that was not given, by the part of the scheme it belongs to, with its source."""
    parts: dict[str, dict[Hashable, Row]] = {}
    for field in walk(scenario):
        if _is_assumption(field, priced=scenario.priced):
            number = isinstance(field.value, int | float)
            said = str(field.value).replace("_", " ")
            rounded = float(f"{field.value:.4g}") if number else 0.0
            cells = {
                "label": Cell(model_words(field.short), "wrap"),
                "value": Cell(rounded, plain_kind(rounded)) if number else Cell(model_words(said), "word"),
                "unit": Cell(model_words(field.unit), "wrap"),
                "source": Cell(model_words(field.source), "wrap"),
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
    """Whether a value was not given and bears on the figures; prices stand in the budget."""
    if field.status not in ("default", ASSUMED) or (field.is_of_money and not priced):
        return False
    if field.path[0] in _NOT_SHOWN or field.name in _NAMES or field.key.startswith(_LISTS):
        return False
    if field.value == "auto" or field.source in field.model.model_fields or "price" in field.name.split("_"):
        return False  # chosen by the study, printed on the plate, or a price
    return isinstance(field.value, int | float | str) and not isinstance(field.value, bool)


def _part_words(field: Field) -> str:
    """What the part is in which a key stands: the first clause of what is said of its table."""
    return model_words(re.split(r"[;:,.]", first_line(field.model), maxsplit=1)[0])
