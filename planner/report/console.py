"""The console on which results are printed."""

from __future__ import annotations

from rich.console import Console


def out_console() -> Console:
    """Console of results, on standard output; plain text wide enough for the table when it is not a terminal."""
    console = Console()
    return console if console.is_terminal else Console(width=160)
