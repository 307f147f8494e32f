"""What the commands have in common: reading a scenario, showing progress."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import typer

from planner.text import go_on_in, text


def read_with_seed(file: Path, seed: int | None, language: str | None = None) -> Any:
    """Read a scenario from TOML or from a filled-in form, and go on in its language.

    Another seed and another language are put in place of its own.
    """
    if is_form(file):
        from planner.report.form.reading import check_form

        scenario = check_form(file, language)
    else:
        from planner.assumptions.reader import read_scenario

        scenario = read_scenario(file, language)
    go_on_in(scenario.language)
    return scenario if seed is None else scenario.model_copy(update={"seed": seed})


def rows_kind(*, parquet: bool) -> str:
    """Kind of a file of rows: CSV where Parquet is not wanted, or cannot be written, which is said."""
    if not parquet:
        return "csv"
    from planner.report.rows import has_parquet

    if has_parquet():
        return "parquet"
    typer.echo(text("command.no_parquet"), err=True)
    return "csv"


def as_toml(file: Path) -> str:
    """Text of a scenario file; a filled-in form as TOML."""
    if is_form(file):
        from planner.report.form.reading import read_form
        from planner.scenario.writer import toml_text

        return toml_text(read_form(file))
    from planner.scenario.reader import text_of

    return text_of(file)


def is_form(file: Path) -> bool:
    """Tell a workbook from a TOML file by its name."""
    return file.suffix.lower() in (".xlsx", ".xlsm", ".xls", ".ods")


def located(file: Path) -> Any:
    """Name file and line, or sheet and cell, of problems that show only when the scenario is worked out."""
    if is_form(file):
        from planner.report.form.reading import located_in_form

        return located_in_form(file)
    from planner.scenario.reader import located as located_in_toml

    return located_in_toml(file)


@contextmanager
def shown_progress(quiet: bool) -> Iterator[Callable[[int, int, str], None]]:
    """Show a bar with the time left, on a terminal only: called with done, total and what is at work."""
    if quiet or not sys.stderr.isatty():
        yield lambda done, total, name: None
        return
    from rich.console import Console
    from rich.progress import BarColumn, Progress, TextColumn, TimeRemainingColumn

    columns = (TextColumn("{task.description}"), BarColumn(), TextColumn("{task.completed}/{task.total}"))
    with Progress(*columns, TimeRemainingColumn(), console=Console(stderr=True), transient=True) as bar:
        task = bar.add_task("", total=None)
        yield lambda done, total, name: bar.update(task, completed=done, total=total, description=name)
