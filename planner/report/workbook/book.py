"""Write a report as a workbook, whole or not at all; the same report gives the same bytes."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import datetime
from functools import partial
from pathlib import Path
from typing import Any, BinaryIO

from xlsxwriter.utility import xl_rowcol_to_cell

from planner.money.formula import Formula
from planner.report.document import Chart, Heading, Page, Report, Section, Table, Text, Tiles
from planner.report.files import write_stream
from planner.report.review import with_review_note
from planner.report.style import FONT, SIZE, Styles
from planner.report.workbook.charts import book_chart
from planner.report.workbook.layout import (
    Addresses,
    Gap,
    Header,
    NoSuchCell,
    Placed,
    TableRow,
    Title,
    last_column,
    lay_out,
    rows_of,
)
from planner.report.workbook.sheet import NotFinite, Printing, Sheet, clean, fit_for_xml

CHART_COLUMNS, CHART_COLUMN_WIDTH, GAP_WIDTH = 8, 9.0, 2.0
"""A chart beside a table takes so many columns of its own, behind a narrow one."""
LEAST_COLUMNS = 6
"""A chart below tables of fewer columns takes more than they do."""
LEAST_CHART_COLUMNS = 5
"""A chart among the page's columns takes no fewer."""
_LONGEST_FOOTER, QUOTE = 100, chr(34)


More = Callable[[Any], Mapping[str, str] | None]


def write_book(report: Report, path: Path, more: More | None = None) -> None:
    """Write a report as a workbook.

    Parameters
    ----------
    report : Report
        What to show.
    path : pathlib.Path
        File to write.
    more : callable, optional
        Adds further sheets to XlsxWriter's workbook, behind the report's, and may give addresses of their cells by
        key: a formula with a `Foreign` leaf that has no address is left out, its value stands.

    Raises
    ------
    NotFinite
        When a figure has no value where it must have one; an earlier file is then left as it was.
    """
    noted = with_review_note(report)
    write_stream(path, lambda stream: _fill(noted, stream, more))


def _fill(report: Report, stream: BinaryIO, more: More | None) -> None:
    import xlsxwriter

    from planner.report.worksheet import PlainWorksheet

    plain = {"strings_to_formulas": False, "strings_to_urls": False, "strings_to_numbers": False}
    # Widths of columns are counted in digits of these letters.
    letters = {"font_name": FONT, "font_size": SIZE}
    book = xlsxwriter.Workbook(stream, {"in_memory": True, "default_format_properties": letters, **plain})
    book.set_properties({"title": clean(report.title), "created": datetime(1980, 1, 1)})
    styles = Styles(book)
    layouts = {page.key: lay_out(page) for page in report.pages}
    sheets = [book.add_worksheet(page.name, PlainWorksheet) for page in report.pages]
    foreign = more(book) if more is not None else None
    addresses = Addresses(report, layouts, foreign or {})
    footer = clean(report.title)[:_LONGEST_FOOTER].replace("&", "&&")
    for page, worksheet in zip(report.pages, sheets, strict=True):
        sheet = Sheet(worksheet, styles, last_column(page))
        _write(book, sheet, page, layouts[page.key], addresses)
        sheet.finish(footer, _printing(sheet, page, layouts[page.key]))
    book.worksheets()[0].activate()
    book.close()


def _printing(sheet: Sheet, page: Page, layout: list[Placed]) -> Printing:
    """What of a page belongs to the printed set, up to the end of its last block there and of its widest."""
    count = len(page.blocks) if page.printed is None else page.printed
    rows = []
    for placed in layout:
        if placed.block < count:
            rows.append(placed.row + rows_of(placed.item) - 1)
            item = placed.item
            if isinstance(item, TableRow) and item.row.key == item.table.last_printed:
                break
    charts = [block for block in page.blocks[:count] if isinstance(block, Chart) and block.series]
    end = max([sheet.last_column, *(_columns(chart, sheet)[1] for chart in charts)])
    return Printing(max(rows) if count else None, end, page.one_page, page.upright)


def _write(book: Any, sheet: Sheet, page: Page, layout: list[Placed], addresses: Addresses) -> None:
    for place, width in enumerate(page.widths):
        sheet.fix_width(place, width)
    for table in page.blocks:
        given = table.columns if isinstance(table, Table) else ()
        for place, column in enumerate(given):
            if column.width is not None:
                sheet.fix_width(place, column.width)
    if any(isinstance(block, Chart) and block.beside and block.column is None for block in page.blocks):
        sheet.fix_width(sheet.last_column + 1, GAP_WIDTH)
        for place in range(CHART_COLUMNS):
            sheet.fix_width(sheet.last_column + 2 + place, CHART_COLUMN_WIDTH)
    for placed in layout:
        row, item = placed.row, placed.item
        if isinstance(item, Title):
            sheet.title(row, item.text)
        elif isinstance(item, Heading | Section):
            sheet.heading(row, item.text)
        elif isinstance(item, Text):
            formula = _formula(item.formula, page, addresses, (row, 0))
            sheet.text(row, item.text, item.style, formula)
        elif isinstance(item, Header):
            _header(sheet, row, item.table, repeated=page.printed != 0 and not page.one_page)
        elif isinstance(item, TableRow):
            _row(sheet, row, item, page, addresses)
        elif isinstance(item, Gap):
            sheet.gap(row)
        elif isinstance(item, Tiles):
            formulas = [
                (
                    _formula(tile.cell.formula, page, addresses, (row, 0)),
                    _formula(tile.note.formula, page, addresses, (row, 0)),
                )
                for tile in item.tiles
            ]
            sheet.tiles(row, item.tiles, formulas)
        else:
            _chart(book, sheet, row, item, addresses)


def _header(sheet: Sheet, row: int, table: Table, *, repeated: bool) -> None:
    for place, column in enumerate(table.columns):
        sheet.header(row, place, column.heading)
    if table.freeze is not None:
        sheet.sheet.freeze_panes(row + 1, table.freeze)
        if repeated:
            sheet.sheet.repeat_rows(row)


def _row(sheet: Sheet, row: int, item: TableRow, page: Page, addresses: Addresses) -> None:
    for place, column in enumerate(item.table.columns):
        cell = item.row.cells.get(column.key)
        if cell is not None:
            formula = _formula(cell.formula, page, addresses, (row, place))
            sheet.put(row, place, cell, cell.look or item.row.look, formula)


def _formula(formula: Formula | None, page: Page, addresses: Addresses, where: tuple[int, int]) -> str | None:
    if formula is None:
        return None
    try:
        written = formula.text(partial(addresses.text, sheet=page.name))
        return f"={fit_for_xml(written) if QUOTE in written else written}"
    except NoSuchCell:
        return None
    except ValueError as error:
        raise NotFinite(f"'{page.name}' {xl_rowcol_to_cell(*where)}: {error}") from error


def _chart(book: Any, sheet: Sheet, row: int, chart: Chart, addresses: Addresses) -> None:
    if not chart.series:
        return  # as of costs where nothing has a price
    first, last = _columns(chart, sheet)
    sheet.chart(book_chart(book, chart, addresses), chart.alt_text, (row, first), last, chart.rows)


def _columns(chart: Chart, sheet: Sheet) -> tuple[int, int]:
    """First and last column of a chart."""
    if chart.beside is None:
        return 0, sheet.last_column if sheet.last_column >= LEAST_COLUMNS - 1 else CHART_COLUMNS
    if chart.column is None:
        return sheet.last_column + 2, sheet.last_column + 1 + CHART_COLUMNS
    return chart.column, max(sheet.last_column, chart.column + LEAST_CHART_COLUMNS - 1)
