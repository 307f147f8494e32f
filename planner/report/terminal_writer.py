"""Tables and sentences of a report for the terminal."""

from __future__ import annotations

from collections.abc import Iterable
from textwrap import wrap

from rich.box import SIMPLE
from rich.console import Group, RenderableType
from rich.padding import Padding
from rich.table import Table as RichTable
from rich.text import Text as RichText

from planner.report.document import Block, Chart, Column, Heading, Section, Table, Text, Tiles
from planner.report.shown import is_number, shown

INDENT, HEADING_LINES, LONGEST_WORD = 4, 5, 20
_STYLES = {"best": "bold", "total": "bold", "strong": "bold", "sub": "italic", "plain": ""}


def terminal_blocks(blocks: Iterable[Block]) -> Group:
    """Put blocks of a page below one another; notes stand indented, charts and large numbers are left out."""
    parts: list[RenderableType] = []
    before: Block | None = None
    for block in blocks:
        if isinstance(block, Chart | Tiles):
            continue
        if before is not None and _apart(before, block):
            parts.append(RichText(""))
        parts.append(_block(block))
        before = block
    return Group(*parts)


def _apart(before: Block, block: Block) -> bool:
    """Whether an empty line stands between two blocks."""
    if isinstance(block, Heading):
        return True
    if isinstance(block, Text):
        return isinstance(before, Table) or (isinstance(before, Text) and before.style != block.style)
    return not isinstance(before, Heading)


def _block(block: Table | Text | Heading) -> RenderableType:
    if isinstance(block, Table):
        return terminal_table(block)
    if isinstance(block, Heading):
        return RichText(block.text, style="bold")
    text = RichText(block.text, style="bold" if block.style == "verdict" else "")
    return Padding(text, (0, 0, 0, INDENT)) if block.style == "note" else text


def terminal_table(table: Table) -> RichTable:
    """Lay a table out for the terminal; every text stands as it is, whatever marks it holds."""
    made = RichTable(title=RichText(table.heading, style="italic") if table.heading else None, title_justify="left",
                     show_header=table.header, box=SIMPLE, padding=(0, 0, 0, 1), show_edge=False)  # fmt: skip
    numbers = {key for row in table.data_rows() for key, cell in row.cells.items() if is_number(cell)}
    for column in table.columns:
        right = column.key in numbers
        made.add_column(RichText(_heading(table, column)), justify="right" if right else "left", no_wrap=right,
                        overflow="fold", min_width=min(_longest_word(table, column), LONGEST_WORD))  # fmt: skip
    for row in table.rows:
        if isinstance(row, Section):
            made.add_section()
            made.add_row(RichText(row.text, style="bold"))
            continue
        cells = (row.cells.get(column.key) for column in table.columns)
        made.add_row(*(RichText("" if cell is None else shown(cell)) for cell in cells), style=_STYLES[row.look])
    return made


def _longest_word(table: Table, column: Column) -> int:
    """Length of the longest word of a column's cells, below which it must not be pressed."""
    cells = [shown(row.cells[column.key]) for row in table.data_rows() if column.key in row.cells]
    return max((len(word) for cell in cells for word in cell.split()), default=1)


def _heading(table: Table, column: Column) -> str:
    """Break a column's heading into lines as narrow as its cells and its longest word, but into few."""
    cells = [shown(row.cells[column.key]) for row in table.data_rows() if column.key in row.cells]
    width = max(map(len, [*cells, *column.heading.split()]), default=1)
    while len(lines := wrap(column.heading, width, break_long_words=False, break_on_hyphens=False)) > HEADING_LINES:
        width += 1
    return "\n".join(lines)
