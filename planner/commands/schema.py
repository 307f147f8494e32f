"""`planner schema`."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from planner.commands.options import DONE
from planner.text import text


def schema(
    file: Annotated[
        Path | None, typer.Argument(help="JSON file to write; printed where it is left out.", show_default=False)
    ] = None,
) -> int:
    """Print the JSON Schema of a scenario, by which an editor completes keys and marks wrong ones."""
    from planner.report.files import write_text, writing
    from planner.scenario.schema import schema_text

    if file is None:
        typer.echo(schema_text(), nl=False)
        return DONE
    with writing(file):
        write_text(file, schema_text())
    typer.echo(text("command.wrote", file=file))
    return DONE
