"""`planner reference`."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated, Any

import typer

from planner.commands.options import DONE
from planner.text import text


def reference(
    context: typer.Context,
    file: Annotated[
        Path | None, typer.Argument(help="Markdown file to write; printed where it is left out.", show_default=False)
    ] = None,
) -> int:
    """Print every command, every key of a scenario and every figure, each with what it means."""
    from planner.report.files import write_text, writing
    from planner.report.reference import reference_text

    words = reference_text(commands_of(context.find_root().command))
    if file is None:
        typer.echo(words, nl=False)
        return DONE
    with writing(file):
        write_text(file, words)
    typer.echo(text("command.wrote", file=file))
    return DONE


def commands_of(app: Any) -> list[Any]:
    """List the commands of the command line, with their arguments and options.

    Returns
    -------
    list of planner.report.reference.Command
    """
    from planner.report.reference import Command

    found = []
    for name, command in app.commands.items():
        options = []
        for parameter in command.params:
            names = ", ".join([*parameter.opts, *parameter.secondary_opts])
            options.append((f"`{names}`", parameter.help or ""))
        found.append(Command(name, " ".join((command.help or "").split()), tuple(options)))
    return found
