"""Tables and sentences of a report for the terminal."""

from __future__ import annotations

from rich.box import SIMPLE
from rich.table import Table as RichTable
from rich.text import Text as RichText

from planner.report.document import Section, Table
from planner.report.shown import is_number, shown

_STYLES = {"best": "bold", "total": "bold", "strong": "bold", "sub": "italic", "plain": ""}


def terminal_table(table: Table) -> RichTable:
    """Lay a table out for the terminal; every text stands as it is, whatever marks it holds."""
    made = RichTable(title=RichText(table.heading, style="italic") if table.heading else None, title_justify="left",
                     show_header=table.header, box=SIMPLE, padding=(0, 0, 0, 1), show_edge=False)  # fmt: skip
    numbers = {
        key for row in table.data_rows() for key, cell in row.cells.items() if is_number(cell)
    }  # fmt: skip
    for column in table.columns:
        made.add_column(RichText(column.heading), justify="right" if column.key in numbers else "left",
                        no_wrap=column.key in numbers)  # fmt: skip
    for row in table.rows:
        if isinstance(row, Section):
            made.add_section()
            made.add_row(RichText(row.text, style="bold"))
            continue
        cells = (row.cells.get(column.key) for column in table.columns)
        made.add_row(*(RichText("" if cell is None else shown(cell)) for cell in cells), style=_STYLES[row.look])
    return made
