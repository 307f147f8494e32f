"""Blocks of a report as the terminal shows them."""

from __future__ import annotations

import io
from collections.abc import Iterable

from planner.report.console import LiteralConsole
from planner.report.document import Block
from planner.report.terminal_writer import terminal_blocks


def on_terminal(blocks: Iterable[Block], width: int = 160) -> str:
    """Return the text that a terminal of some width shows."""
    stream = io.StringIO()
    LiteralConsole(file=stream, width=width, markup=False, emoji=False).print(terminal_blocks(blocks))
    return stream.getvalue()
