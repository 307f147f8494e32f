"""Where everything on a page stands on its sheet: rows from top to bottom, and addresses for formulas and charts."""

from __future__ import annotations

from collections.abc import Hashable, Iterator, Mapping
from dataclasses import dataclass, field

from xlsxwriter.utility import xl_col_to_name

from planner.report.document import (
    HEADER,
    At,
    Block,
    Chart,
    Foreign,
    Heading,
    Page,
    Report,
    Row,
    Section,
    Span,
    Table,
    Text,
    Tiles,
)


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


@dataclass(frozen=True)
class Gap:
    """A low empty row above a heading between the rows of a table."""


Item = Title | Header | TableRow | Heading | Section | Text | Chart | Tiles | Gap
TILE_ROWS = 3
"""Label, number and note."""


@dataclass(frozen=True)
class Placed:
    """One thing on a sheet, the row, from 0, where it stands (for a chart, its top), and the place of its block."""

    row: int
    item: Item
    block: int = 0


@dataclass(frozen=True)
class TablePlace:
    """Where a table stands: sheet, row of its header, row of each of its rows, column of each of its columns."""

    sheet: str
    header_row: int
    rows: dict[Hashable, int]
    columns: dict[str, int]
    quoted: str = field(init=False)
    letters: dict[str, str] = field(init=False)

    def __post_init__(self) -> None:
        """Spell its sheet and columns as formulas do."""
        quoted = self.sheet.replace("'", "''")
        object.__setattr__(self, "quoted", f"'{quoted}'")
        object.__setattr__(self, "letters", {key: xl_col_to_name(place) for key, place in self.columns.items()})

    def row(self, key: Hashable) -> int:
        """Where a row, or the header, stands."""
        return self.header_row if key == HEADER else self.rows[key]


def last_column(page: Page) -> int:
    """Last column of what is printed of a page's tables, over which texts and headings reach; at least the second."""
    printed = page.blocks[: page.printed or None]
    widths = (sum(column.printed for column in block.columns) for block in printed if isinstance(block, Table))
    found = [max(width - 1, 1) for width in widths]
    return max(*found, len(page.widths) - 1, 1) if found else 7


def rows_of(item: Item) -> int:
    """Rows that a thing takes on its sheet."""
    return item.rows + 1 if isinstance(item, Chart) else TILE_ROWS if isinstance(item, Tiles) else 1


def lay_out(page: Page) -> list[Placed]:
    """Place everything on a page from top to bottom; a heading keeps an empty row above it."""
    return list(_placed(page))


def _placed(page: Page) -> Iterator[Placed]:
    yield Placed(0, Title(page.title))
    row = 1
    charts: dict[int, int] = {}
    if page.under:
        yield Placed(row, Text(page.under, "note"))
        row += 1
    tops: dict[str, int] = {}
    below_header = False
    for number, block in enumerate(page.blocks):
        if isinstance(block, Chart) and block.beside is not None:
            yield Placed(tops[block.beside], block, number)
            tops[block.beside] += block.rows
            if block.column is not None:
                charts[block.column] = max(charts.get(block.column, 0), tops[block.beside])
            continue
        reach = len(block.columns) - 1 if isinstance(block, Table) else last_column(page)
        row = max([row, *(end for column, end in charts.items() if column <= reach)])
        if isinstance(block, Chart):
            yield Placed(row + 1, block, number)
            row += block.rows + 2
            continue
        if isinstance(block, Tiles):
            yield Placed(row + 1, block, number)
            row += TILE_ROWS + 1
            below_header = False
            continue
        if isinstance(block, Table):
            tops[block.key] = row + (1 if block.heading or block.header else 0)
        for item, gap in _items(block, below_header=below_header):
            if gap and isinstance(item, Section):
                yield Placed(row, Gap(), number)
            row += gap
            yield Placed(row, item, number)
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


class NoSuchCell(LookupError):
    """A formula refers to a cell of another writer's sheet that is not there."""


class Addresses:
    """Addresses of the cells of a report, once every page is laid out, and those of other sheets by their keys."""

    def __init__(self, report: Report, layouts: dict[str, list[Placed]], foreign: Mapping[str, str]) -> None:
        self.tables: dict[str, TablePlace] = {}
        self.foreign = foreign
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

    def text(self, reference: At | Span | Foreign, sheet: str) -> str:
        """Write a reference for a formula on some sheet: plain on its own sheet, with the sheet's name elsewhere.

        Raises
        ------
        NoSuchCell
            When there is no cell of a foreign key.
        """
        if isinstance(reference, Foreign):
            if reference.key not in self.foreign:
                raise NoSuchCell(reference.key)
            return self.foreign[reference.key]
        place = self.tables[reference.table]
        here = place.sheet == sheet
        fixed = "" if here else "$"
        first = f"{fixed}{place.letters[reference.column]}{fixed}{place.row(reference.row) + 1}"
        address = first
        if isinstance(reference, Span):
            last_row = reference.row if reference.last_row is None else reference.last_row
            letter = place.letters[reference.column if reference.last_column is None else reference.last_column]
            address = f"{first}:{fixed}{letter}{fixed}{place.row(last_row) + 1}"
        return address if here else f"{place.quoted}!{address}"

    def corners(self, reference: At | Span) -> tuple[str, int, int, int, int]:
        """Sheet, first row, first column, last row and last column, as a chart wants them."""
        place = self.tables[reference.table]
        row, column = place.row(reference.row), place.columns[reference.column]
        last_row, last_column = row, column
        if isinstance(reference, Span):
            last_row = row if reference.last_row is None else place.rows[reference.last_row]
            last_column = column if reference.last_column is None else place.columns[reference.last_column]
        return place.sheet, row, column, last_row, last_column
