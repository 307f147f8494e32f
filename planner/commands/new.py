"""`planner new`."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from planner.commands.options import DONE
from planner.text import text


def new(
    file: Annotated[Path, typer.Argument(help="Scenario file to write.", show_default=False)],
    force: Annotated[bool, typer.Option("--force", help="Replace a file that is there.")] = False,
) -> int:
    """Write a commented starter scenario that runs as it is."""
    from planner.report.files import write_text, writing
    from planner.scenario.errors import InputError, Problem
    from planner.scenario.writer import starter_text

    if file.exists() and not force:
        raise InputError(str(file), [Problem("", "is already there; give another name, or --force to replace it")])
    with writing(file):
        write_text(file, starter_text())
    typer.echo(text("command.wrote_starter", file=file))
    return DONE
