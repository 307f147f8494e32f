"""The reference as Markdown: every command, every key of a scenario and every figure of an option."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from planner.figures import FIGURES
from planner.report.form.cells import allowed
from planner.scenario.scenario import Scenario
from planner.scenario.walk import Field, walk_models
from planner.scenario.writer import toml_value
from planner.text import text


@dataclass(frozen=True)
class Command:
    """One command: its name, what it does, and its arguments and options with what they mean."""

    name: str
    what: str
    options: tuple[tuple[str, str], ...]


def reference_text(commands: Sequence[Command]) -> str:
    """Write the reference.

    Parameters
    ----------
    commands : sequence of Command
        The commands, in the order in which they stand.

    Returns
    -------
    str
        Markdown: a section for the commands, one for each table of the scenario, one for the figures.
    """
    return "\n".join([*_head(), *_commands(commands), *_keys(), *_figures()]) + "\n"


def _head() -> Iterator[str]:
    yield f"# {text('reference.title')}"
    yield ""
    yield text("reference.head")


def _commands(commands: Sequence[Command]) -> Iterator[str]:
    yield from ("", f"## {text('reference.commands')}")
    for command in commands:
        yield from ("", f"### planner {command.name}", "", command.what, "")
        yield from _table(("option", "what"), command.options)


def _keys() -> Iterator[str]:
    yield from ("", f"## {text('reference.keys')}", "", text("reference.keys_note"))
    fields = [field for field in walk_models(Scenario) if not field.tables]
    tables = dict.fromkeys(".".join(_parts(field)[:-1]) for field in fields)
    for table in tables:
        yield from ("", f"### {f'[{table}]' if table else text('reference.top')}", "")
        rows = dict.fromkeys(_row(field) for field in fields if ".".join(_parts(field)[:-1]) == table)
        yield from _table(("key", "what", "unit", "takes", "left_out"), rows)


def _row(field: Field) -> tuple[str, str, str, str, str]:
    return f"`{field.name}`", field.meaning, field.unit, allowed(field.takes), _left_out(field)


def _left_out(field: Field) -> str:
    if field.how:
        return field.how
    if field.has_default:
        return f"`{toml_value(field.default)}` ({field.default_source})" if field.default_source else ""
    return text("reference.needed") if field.is_needed else field.absent


def _parts(field: Field) -> list[str]:
    return [str(part) for part in field.path]


def _figures() -> Iterator[str]:
    yield from ("", f"## {text('reference.figures')}", "", text("reference.figures_note"), "")
    rows = ((f"`{figure.key}`", figure.label, figure.unit, figure.definition) for figure in FIGURES)
    yield from _table(("key", "what", "unit", "definition"), rows)


def _table(columns: Sequence[str], rows: Iterable[Sequence[str]]) -> Iterator[str]:
    yield _line([text(f"reference.column_{column}") for column in columns])
    yield _line(["---"] * len(columns))
    yield from (_line(row) for row in rows)


def _line(cells: Sequence[str]) -> str:
    return "| " + " | ".join(" ".join(cell.split()).replace("|", r"\|") for cell in cells) + " |"
