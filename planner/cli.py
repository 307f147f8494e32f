"""Command line: the commands put together. Heavy libraries are imported only by the command that needs them."""

from __future__ import annotations

import functools
import gc
import os
import sys
from collections.abc import Callable
from contextvars import copy_context
from typing import Annotated, ParamSpec

import typer

from planner.commands.check import check
from planner.commands.ending import say_fault, say_wrong
from planner.commands.form import form
from planner.commands.new import new
from planner.commands.options import DONE
from planner.commands.proposal import proposal
from planner.commands.reference import reference
from planner.commands.run import run
from planner.commands.schema import schema
from planner.commands.size import size
from planner.commands.sweep import sweep
from planner.commands.weather import weather
from planner.commands.worth import worth
from planner.text import review_note
from planner.version import __version__

app = typer.Typer(
    name="planner",
    no_args_is_help=True,
    pretty_exceptions_enable=False,
    # help is plain text: rich would take the [tables] it names for markup and leave them out
    rich_markup_mode=None,
    help="Size, simulate and cost the supply of a borehole pump: sun, grid, generator and their mixes.",
)

OBJECTS_BETWEEN_COLLECTIONS = 500_000

P = ParamSpec("P")


def _guarded(command: Callable[P, int | None]) -> Callable[P, None]:
    """Turn wrong input into exit code 2 with one clear message each, and internal errors into exit code 1."""

    @functools.wraps(command)
    def wrapped(*args: P.args, **kwargs: P.kwargs) -> None:
        from planner.scenario.errors import InputError

        context = copy_context()  # of its own: the language that a scenario asks for ends with the command
        try:
            code = context.run(command, *args, **kwargs)
        except InputError as error:
            raise typer.Exit(say_wrong(error)) from error
        except (typer.Exit, typer.Abort, KeyboardInterrupt, BrokenPipeError):
            raise
        except Exception as error:
            if kwargs.get("verbose"):
                raise
            raise typer.Exit(say_fault(error)) from error
        note = "" if kwargs.get("quiet") else context.run(review_note)
        if note:
            typer.echo(note)
        if code:
            raise typer.Exit(code)

    return wrapped


def _show_version(value: bool) -> None:
    if value:
        typer.echo(f"planner {__version__}")
        raise typer.Exit


@app.callback()
def _options(
    version: Annotated[
        bool, typer.Option("--version", callback=_show_version, is_eager=True, help="Show the version and stop.")
    ] = False,
) -> None:
    pass


for _command in (new, form, weather, check, run, size, sweep, worth, proposal, schema, reference):
    app.command(short_help=_command.__doc__)(_guarded(_command))


def main() -> None:
    """Run the command line."""
    # Imports, models and tables make some hundred thousand objects that all stay: looking through them for circles as
    # often as Python does by itself costs a tenth of a run. A long sweep still gets its collections.
    gc.set_threshold(OBJECTS_BETWEEN_COLLECTIONS)
    try:
        app()
    except BrokenPipeError:
        # the reader of our output went away, as `head` does; nothing is wrong
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        sys.exit(DONE)
    finally:
        # the process ends here: its memory goes back whole, and looking through it once more costs a tenth of a run
        gc.freeze()


if __name__ == "__main__":
    main()
