"""How a command ends that could not do what was asked: what is said, and the exit code."""

from __future__ import annotations

import errno
from pathlib import Path
from typing import TYPE_CHECKING

import typer

from planner.commands.options import OUR_FAULT, WRONG_INPUT
from planner.text import text

if TYPE_CHECKING:
    from planner.scenario.errors import InputError

_NO_ROOM = (errno.ENOSPC, errno.EDQUOT, errno.EROFS)


def say_wrong(error: InputError) -> int:
    """Say each problem of the input in a line; the exit code for it."""
    for line in error.lines():
        typer.echo(line, err=True)
    return WRONG_INPUT


def say_fault(error: Exception, file: Path | None = None) -> int:
    """Say that the program failed, or that the disk has no room for what it prints; the exit code for it."""
    from planner.scenario.errors import LONGEST_MESSAGE, printable, shown

    if isinstance(error, OSError) and error.errno in _NO_ROOM:
        file_name = printable(str(error.filename or "output"))
        typer.echo(text("command.cannot_write", file=file_name, reason=error.strerror), err=True)
        return WRONG_INPUT
    words = shown(" ".join(f"{type(error).__name__}: {error}".split()), LONGEST_MESSAGE, quoted=False)
    if file is None:
        typer.echo(text("command.internal_error", error=words), err=True)
    else:
        typer.echo(text("command.internal_error_at", file=printable(str(file)), error=words), err=True)
    return OUR_FAULT
