"""The console on which results are printed."""

from __future__ import annotations

from collections.abc import Iterable

from rich.console import Console, ConsoleOptions, RenderableType
from rich.segment import Segment

from planner.scenario.errors import printable


class LiteralConsole(Console):
    """A console that shows every text as it is: nothing in a name is markup, a picture or a command to the terminal."""

    def render(self, renderable: RenderableType, options: ConsoleOptions | None = None) -> Iterable[Segment]:
        """Yield segments without the characters that steer a terminal; line ends stay."""
        for segment in super().render(renderable, options):
            if segment.control or segment.text.isprintable():
                yield segment
            else:
                text = "\n".join(printable(line) for line in segment.text.split("\n"))
                yield Segment(text, segment.style)


def out_console() -> Console:
    """Console of results, on standard output; plain text wide enough for the table when it is not a terminal."""
    console = LiteralConsole(markup=False, emoji=False)
    return console if console.is_terminal else LiteralConsole(width=160, markup=False, emoji=False)
