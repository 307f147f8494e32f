"""What a report holds, apart from any file format: pages of tables, charts and sentences.

A writer (workbook, terminal, HTML) takes a `Report` and renders it. A cell holds its value; where that follows from
other cells it holds a formula too, whose leaves are `At`, `Span` and `Foreign`: a writer that knows formulas puts
addresses in their place, any other passes over them.
"""

from __future__ import annotations

from collections.abc import Collection, Hashable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Literal, NamedTuple

from planner.money.formula import Formula, Operand

Kind = Literal[
    "text", "wrap", "centre", "word", "general", "whole", "one", "two", "three", "money", "price", "year", "yes"
]
"""How a cell's content is shown: words, or numbers with so many decimals."""
Look = Literal["plain", "best", "total", "sub", "strong"]
"""How a cell or row stands out."""
TextStyle = Literal["paragraph", "verdict", "condition", "note", "item", "open"]
"""How a paragraph stands out; 'item' is one of a list, 'open' a line that somebody has yet to complete."""
ChartKind = Literal["stacked bars", "columns", "stacked columns", "lines", "points"]
Value = str | float | None
HEADER = "header"
"""Row that stands, in references, for the headings of a table's columns."""


class At(NamedTuple):
    """One cell: table, row and column by their keys."""

    table: str
    row: Hashable
    column: str


class Span(NamedTuple):
    """A run of cells of one table: a column from one row to another, or a row from one column to another.

    `last_row` and `last_column` None stand for the first ones.
    """

    table: str
    row: Hashable
    column: str
    last_row: Hashable | None = None
    last_column: str | None = None


class Foreign(NamedTuple):
    """One cell of a sheet that is not of the report, by a key for which that sheet's writer knows the address."""

    key: str


class Cell(NamedTuple):
    """One cell of a table.

    Attributes
    ----------
    value : str, float or None
        None leaves the cell empty. A number without a value (NaN) is shown as `word`.
    kind : str
        How it is shown.
    look : str or None
        How it stands out; None follows the row.
    word : str or None
        What stands there when the number has no value; without it such a number is refused by the writer.
    formula : Formula or None
        How the value follows from other cells.
    """

    value: Value
    kind: Kind = "text"
    look: Look | None = None
    word: str | None = None
    formula: Formula | None = None

    @classmethod
    def worked_out(
        cls, value: Value, kind: Kind, operand: Operand, look: Look | None = None, word: str | None = None
    ) -> Cell:
        """Make a cell that follows from an operand of the money's arithmetic; a plain number is no formula."""
        return cls(value, kind, look, word, operand if isinstance(operand, Formula) else None)


@dataclass(frozen=True)
class Column:
    """One column of a table: its key, its heading (unit included) and, where it is given, its width in digits.

    `printed` is False for the last columns of a table that stay in the workbook.
    """

    key: str
    heading: str
    width: float | None = None
    printed: bool = True


@dataclass(frozen=True)
class Row:
    """One row of a table: its key, its cells by column key (a column left out is empty), and how it stands out."""

    key: Hashable
    cells: Mapping[str, Cell]
    look: Look = "plain"


@dataclass(frozen=True)
class Section:
    """A heading between the rows of a table."""

    text: str


@dataclass(frozen=True)
class Table:
    """A table.

    Attributes
    ----------
    key : str
        By which references name it; unique in a report.
    columns : tuple of Column
        From left to right.
    rows : tuple of Row or Section
        From top to bottom; row keys are unique in the table.
    heading : str
        Heading above it; none where empty.
    header : bool
        Whether the columns' headings are shown.
    freeze : int or None
        So many columns, and all above the first row, stay in sight; None for a table that scrolls with its page.
    last_printed : hashable or None
        Key of the last row that belongs to the printed set, of the last table there; None for all rows.
    """

    key: str
    columns: tuple[Column, ...]
    rows: tuple[Row | Section, ...]
    heading: str = ""
    header: bool = True
    freeze: int | None = None
    last_printed: Hashable | None = None

    def cell(self, row: Hashable, column: str) -> Cell:
        """One cell by the keys of its row and column."""
        return self.row(row).cells[column]

    def row(self, key: Hashable) -> Row:
        """One row by its key."""
        return next(row for row in self.data_rows() if row.key == key)

    def only(self, columns: Sequence[str], rows: Collection[Hashable] | None = None) -> Table:
        """The same table with some of its columns, in the order given, and some of its rows (None: all)."""
        by_key = {column.key: column for column in self.columns}
        kept = self.rows if rows is None else tuple(row for row in self.data_rows() if row.key in rows)
        return replace(self, columns=tuple(by_key[key] for key in columns), rows=kept)

    def data_rows(self) -> Iterator[Row]:
        """The rows without the headings between them."""
        return (row for row in self.rows if isinstance(row, Row))


@dataclass(frozen=True)
class Text:
    """A paragraph; where its words follow from other cells, the formula that gives them."""

    text: str
    style: TextStyle = "paragraph"
    formula: Formula | None = None


@dataclass(frozen=True)
class Heading:
    """A heading between blocks."""

    text: str


@dataclass(frozen=True)
class Axis:
    """One axis of a chart: its name with unit, how its numbers are shown, and its ends where they are given."""

    name: str = ""
    kind: Kind = "whole"
    low: float | None = None
    high: float | None = None


@dataclass(frozen=True)
class Series:
    """One series of a chart: its name, the cells of its places and values, and the name of its style.

    `points` holds a style for each of its values where they differ.
    """

    name: str
    x: Span
    y: Span
    style: str
    points: tuple[str, ...] = ()


@dataclass(frozen=True)
class Chart:
    """A chart over cells of tables of the same report.

    Attributes
    ----------
    key : str
        Unique in a report.
    kind : str
        Bars lie, columns stand; 'lines' and 'points' have numbers on both axes.
    title : str
        What it shows.
    alt_text : str
        The same for people who cannot see it: what it shows and what it says.
    series : tuple of Series
    x, y : Axis
        Axis of places and axis of values.
    beside : str or None
        Key of the table to whose right it stands, below charts already there; None for below what precedes it.
    column : int or None
        Where it stands beside a table, its first column, from 0; it ends with the page's last one. None for columns of
        its own, to the right of the page's tables.
    rows : int
        Height in rows of a table.
    """

    key: str
    kind: ChartKind
    title: str
    alt_text: str
    series: tuple[Series, ...]
    x: Axis
    y: Axis
    beside: str | None = None
    column: int | None = None
    rows: int = 21


@dataclass(frozen=True)
class Tile:
    """One number that stands large: what it is, the number as it is written, and what there is to add.

    `cell` holds it; `before` and `after` are written around a number, with `decimals`.
    """

    label: str
    cell: Cell
    note: Text
    before: str = ""
    after: str = ""
    decimals: int = 0


@dataclass(frozen=True)
class Tiles:
    """Large numbers side by side."""

    key: str
    tiles: tuple[Tile, ...]


Block = Table | Text | Heading | Chart | Tiles


@dataclass(frozen=True)
class Page:
    """One page: a sheet of a workbook, a section of an HTML file.

    Attributes
    ----------
    key, name : str
        Stable key, and the name that people see.
    title, under : str
        Title, and a line under it.
    blocks : tuple of Block
        From top to bottom.
    widths : tuple of float
        Least widths of the columns, in digits, from the left.
    one_page : bool
        Whether it prints on one page.
    upright : bool
        Whether its paper stands upright.
    printed : int or None
        So many of its blocks, from the top, belong to the printed set; None for all. The rest stays in the workbook.
    """

    key: str
    name: str
    title: str
    under: str = ""
    blocks: tuple[Block, ...] = ()
    widths: tuple[float, ...] = ()
    one_page: bool = False
    upright: bool = False
    printed: int | None = None


@dataclass(frozen=True)
class Report:
    """Everything to be shown: title and pages, each table and chart with a key of its own."""

    title: str
    pages: tuple[Page, ...]
    _tables: dict[str, Table] = field(init=False, repr=False, compare=False, default_factory=dict)

    def __post_init__(self) -> None:
        """Index the tables and refuse keys that stand twice."""
        for page in self.pages:
            for block in page.blocks:
                if isinstance(block, Table):
                    if block.key in self._tables:
                        raise ValueError(f"two tables have the key {block.key!r}")
                    self._tables[block.key] = block

    def table(self, key: str) -> Table:
        """One table by its key."""
        return self._tables[key]

    def values(self, span: Span) -> list[Value]:
        """Values of a run of cells, as a writer that draws charts by itself needs them."""
        table = self.table(span.table)
        if span.last_column is not None:
            keys = [column.key for column in table.columns]
            first, last = keys.index(span.column), keys.index(span.last_column)
            if span.row == HEADER:
                return [column.heading for column in table.columns[first : last + 1]]
            row = table.row(span.row)
            return [row.cells[key].value if key in row.cells else None for key in keys[first : last + 1]]
        rows = list(table.data_rows())
        places = [row.key for row in rows]
        first = places.index(span.row)
        last = first if span.last_row is None else places.index(span.last_row)
        return [row.cells[span.column].value if span.column in row.cells else None for row in rows[first : last + 1]]
