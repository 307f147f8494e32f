"""Where everything on a page stands on its sheet: rows from top to bottom, and addresses for formulas and charts."""

from __future__ import annotations

from collections.abc import Hashable, Iterator
from dataclasses import dataclass

from xlsxwriter.utility import xl_rowcol_to_cell

from planner.report.document import HEADER, At, Block, Chart, Heading, Page, Report, Row, Section, Span, Table, Text


@dataclass(frozen=True)
class Title:
    """The page's title."""

    text: str


@dataclass(frozen=True)
class Header:
    """The headings of a table's columns."""

    table: Table


@dataclass(frozen=True)
class TableRow:
    """One row of a table."""

    table: Table
    row: Row


Item = Title | Header | TableRow | Heading | Section | Text | Chart


@dataclass(frozen=True)
class Placed:
    """One thing on a sheet and the row, from 0, where it stands (for a chart, its top)."""

    row: int
    item: Item


@dataclass(frozen=True)
class TablePlace:
    """Where a table stands: sheet, row of its header, row of each of its rows, column of each of its columns."""

    sheet: str
    header_row: int
    rows: dict[Hashable, int]
    columns: dict[str, int]

    @property
    def last_row(self) -> int:
        """Its last row."""
        return max(self.rows.values(), default=self.header_row)


def lay_out(page: Page) -> list[Placed]:
    """Place everything on a page from top to bottom; a heading keeps an empty row above it."""
    return list(_placed(page))


def _placed(page: Page) -> Iterator[Placed]:
    yield Placed(0, Title(page.title))
    row = 1
    if page.under:
        yield Placed(row, Text(page.under, "note"))
        row += 1
    tops: dict[str, int] = {}
    below_header = False
    for block in page.blocks:
        if isinstance(block, Chart) and block.beside is not None:
            yield Placed(tops[block.beside], block)
            continue
        if isinstance(block, Chart):
            yield Placed(row + 1, block)
            row += block.rows + 2
            continue
        if isinstance(block, Table):
            tops[block.key] = row + (1 if block.heading else 0)
        for item, gap in _items(block, below_header=below_header):
            row += gap
            yield Placed(row, item)
            row += 1
            below_header = isinstance(item, Header)


def _items(block: Block, *, below_header: bool) -> Iterator[tuple[Item, int]]:
    """Things of a block with the empty rows above each."""
    if isinstance(block, Heading | Text):
        yield block, 1 if isinstance(block, Heading) and not below_header else 0
        return
    assert isinstance(block, Table)
    if block.heading:
        yield Heading(block.heading), 0 if below_header else 1
    if block.header:
        yield Header(block), 0 if block.heading else 1
        below_header = True
    for row in block.rows:
        if isinstance(row, Section):
            yield row, 0 if below_header else 1
        else:
            yield TableRow(block, row), 0
        below_header = False


class Addresses:
    """Addresses of the cells of a report, once every page is laid out."""

    def __init__(self, report: Report, layouts: dict[str, list[Placed]]) -> None:
        self.tables: dict[str, TablePlace] = {}
        for page in report.pages:
            for placed in layouts[page.key]:
                self._note(page.name, placed)

    def _note(self, sheet: str, placed: Placed) -> None:
        item = placed.item
        if not isinstance(item, Header | TableRow):
            return
        table = item.table
        if table.key not in self.tables:
            columns = {column.key: place for place, column in enumerate(table.columns)}
            self.tables[table.key] = TablePlace(
                sheet, placed.row, {HEADER: placed.row} if table.header else {}, columns
            )
        if isinstance(item, TableRow):
            rows = self.tables[table.key].rows
            if item.row.key in rows:
                raise ValueError(f"table {table.key!r} has two rows {item.row.key!r}")
            rows[item.row.key] = placed.row

    def text(self, reference: At | Span, sheet: str) -> str:
        """Write a reference for a formula on some sheet: plain on its own sheet, with the sheet's name elsewhere."""
        name, first_row, first_column, last_row, last_column = self.corners(reference)
        here = name == sheet
        first = xl_rowcol_to_cell(first_row, first_column, row_abs=not here, col_abs=not here)
        address = first
        if isinstance(reference, Span):
            address = f"{first}:{xl_rowcol_to_cell(last_row, last_column, row_abs=not here, col_abs=not here)}"
        quoted = name.replace("'", "''")
        return address if here else f"'{quoted}'!{address}"

    def corners(self, reference: At | Span) -> tuple[str, int, int, int, int]:
        """Sheet, first row, first column, last row and last column, as a chart wants them."""
        place = self.tables[reference.table]
        row, column = place.rows[reference.row], place.columns[reference.column]
        last_row, last_column = row, column
        if isinstance(reference, Span):
            last_row = row if reference.last_row is None else place.rows[reference.last_row]
            last_column = column if reference.last_column is None else place.columns[reference.last_column]
        return place.sheet, row, column, last_row, last_column
