"""`planner new`."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from planner.commands.options import DONE
from planner.text import text


def new(
    file: Annotated[Path, typer.Argument(help="Scenario file to write.", show_default=False)],
    full: Annotated[bool, typer.Option("--full", help="Write every key there is, each explained.")] = False,
    example: Annotated[
        str | None, typer.Option("--example", help="Write one of the examples, by its name.", show_default=False)
    ] = None,
    force: Annotated[bool, typer.Option("--force", help="Replace a file that is there.")] = False,
) -> int:
    """Write a short scenario, the notes of one visit, that runs as it is; or a full one, or an example."""
    from planner.report.files import write_text, writing
    from planner.scenario.errors import InputError, Problem
    from planner.scenario.schema import SCHEMA_FILE, schema_text
    from planner.scenario.starter import short_text
    from planner.scenario.writer import starter_text

    if full and example is not None:
        raise InputError("--full", [Problem("", "cannot be given together with --example")])
    words, beside = (starter_text() if full else short_text(), {}) if example is None else _example(example)
    for path in (file, *(file.parent / name for name in beside)):
        if path.exists() and not force:
            raise InputError(str(path), [Problem("", "is already there; give another name, or --force to replace it")])
    for name, content in beside.items():
        with writing(file.parent / name):
            (file.parent / name).write_bytes(content)
        typer.echo(text("command.wrote", file=file.parent / name))
    if example is None and (force or not (file.parent / SCHEMA_FILE).exists()):
        with writing(file.parent / SCHEMA_FILE):
            write_text(file.parent / SCHEMA_FILE, schema_text())
        typer.echo(text("command.wrote_schema", file=file.parent / SCHEMA_FILE))
    with writing(file):
        write_text(file, words)
    typer.echo(text("command.wrote_starter", file=file))
    return DONE


def _example(name: str) -> tuple[str, dict[str, bytes]]:
    """Text of an example and of what it reads; a name that is not known is refused with those that are."""
    import difflib

    from planner.scenario.errors import InputError, Problem
    from planner.scenario.examples import example_files, example_names

    names = example_names()
    if name not in names:
        near = difflib.get_close_matches(name, names, n=1)
        hint = f"did you mean '{near[0]}'?" if near else f"there are: {', '.join(names)}"
        raise InputError("--example", [Problem("", f"{name!r} was given; there is no such example; {hint}")])
    return example_files(name)
