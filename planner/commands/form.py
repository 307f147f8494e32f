"""`planner form`."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from planner.commands.options import DONE
from planner.text import text


def form(
    file: Annotated[Path, typer.Argument(help="Form to write (.xlsx).", show_default=False)],
    source: Annotated[
        Path | None, typer.Option("--from", help="Scenario to fill the form with.", show_default=False)
    ] = None,
    force: Annotated[bool, typer.Option("--force", help="Replace a file that is there.")] = False,
) -> int:
    """Write a fill-in form: a workbook that 'planner run' reads like a scenario file."""
    from planner.assumptions.reader import read_scenario
    from planner.report.files import writing
    from planner.report.form.reading import read_form
    from planner.report.form.sheets import write_form
    from planner.scenario.errors import InputError, Problem
    from planner.scenario.reader import read_raw

    if file.suffix.lower() != ".xlsx":
        raise InputError(str(file), [Problem("", "a form is a workbook; give a name that ends in .xlsx")])
    if file.exists() and not force:
        raise InputError(str(file), [Problem("", "is already there; give another name, or --force to replace it")])
    data = None
    if source is not None and source.suffix.lower() == ".xlsx":
        data = read_form(source)
    elif source is not None:
        read_scenario(source)
        data = read_raw(source)
    with writing(file):
        write_form(file, data)
    typer.echo(text("command.wrote_form", file=file))
    return DONE
