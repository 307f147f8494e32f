"""Write a report as a workbook, whole or not at all; the same report gives the same bytes."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from pathlib import Path
from typing import Any, BinaryIO

from planner.report.document import Chart, Heading, Page, Report, Section, Table, Text
from planner.report.files import write_stream
from planner.report.style import Styles
from planner.report.workbook.charts import book_chart
from planner.report.workbook.layout import Addresses, Header, Placed, TableRow, Title, lay_out
from planner.report.workbook.sheet import Sheet, clean

CHART_COLUMNS, CHART_COLUMN_WIDTH, GAP_WIDTH = 8, 9.0, 2.0
"""A chart beside a table takes so many columns of its own, behind a narrow one."""
_LONGEST_FOOTER = 100


def write_book(report: Report, path: Path, more: Callable[[Any], None] | None = None) -> None:
    """Write a report as a workbook.

    Parameters
    ----------
    report : Report
        What to show.
    path : pathlib.Path
        File to write.
    more : callable, optional
        Adds further sheets to XlsxWriter's workbook, behind the report's.

    Raises
    ------
    NotFinite
        When a figure has no value where it must have one; an earlier file is then left as it was.
    """
    write_stream(path, lambda stream: _fill(report, stream, more))


def _fill(report: Report, stream: BinaryIO, more: Callable[[Any], None] | None) -> None:
    import xlsxwriter

    from planner.report.worksheet import PlainWorksheet

    plain = {"strings_to_formulas": False, "strings_to_urls": False, "strings_to_numbers": False}
    book = xlsxwriter.Workbook(stream, {"in_memory": True, **plain})
    book.set_properties({"title": clean(report.title), "created": datetime(1980, 1, 1)})
    styles = Styles(book)
    layouts = {page.key: lay_out(page) for page in report.pages}
    addresses = Addresses(report, layouts)
    footer = clean(report.title)[:_LONGEST_FOOTER].replace("&", "&&")
    for page in report.pages:
        sheet = Sheet(book.add_worksheet(page.name, PlainWorksheet), styles, _last_column(page))
        _write(book, sheet, page, layouts[page.key], addresses)
        sheet.finish(footer, one_page=page.one_page)
    if more is not None:
        more(book)
    book.worksheets()[0].activate()
    book.close()


def _last_column(page: Page) -> int:
    return max((len(block.columns) - 1 for block in page.blocks if isinstance(block, Table)), default=7)


def _write(book: Any, sheet: Sheet, page: Page, layout: list[Placed], addresses: Addresses) -> None:
    for column, width in enumerate(page.widths):
        sheet.fix_width(column, width)
    if any(isinstance(block, Chart) and block.beside for block in page.blocks):
        sheet.fix_width(sheet.last_column + 1, GAP_WIDTH)
        for column in range(CHART_COLUMNS):
            sheet.fix_width(sheet.last_column + 2 + column, CHART_COLUMN_WIDTH)
    for placed in layout:
        row, item = placed.row, placed.item
        if isinstance(item, Title):
            sheet.title(row, item.text)
        elif isinstance(item, Heading | Section):
            sheet.heading(row, item.text)
        elif isinstance(item, Text):
            formula = None if item.formula is None else _formula(item.formula, page, addresses)
            sheet.text(row, item.text, item.style, formula)
        elif isinstance(item, Header):
            _header(sheet, row, item.table)
        elif isinstance(item, TableRow):
            _row(sheet, row, item, page, addresses)
        else:
            _chart(book, sheet, row, item, addresses)


def _header(sheet: Sheet, row: int, table: Table) -> None:
    for place, column in enumerate(table.columns):
        sheet.header(row, place, column.heading)
        if column.width is not None:
            sheet.fix_width(place, column.width)
    if table.freeze is not None:
        sheet.sheet.freeze_panes(row + 1, table.freeze)
        sheet.sheet.repeat_rows(row)


def _row(sheet: Sheet, row: int, item: TableRow, page: Page, addresses: Addresses) -> None:
    for place, column in enumerate(item.table.columns):
        cell = item.row.cells.get(column.key)
        if cell is not None:
            formula = None if cell.formula is None else _formula(cell.formula, page, addresses)
            sheet.put(row, place, cell, cell.look or item.row.look, formula)


def _formula(formula: Any, page: Page, addresses: Addresses) -> str:
    return f"={formula.text(lambda reference: addresses.text(reference, page.name))}"


def _chart(book: Any, sheet: Sheet, row: int, chart: Chart, addresses: Addresses) -> None:
    made = book_chart(book, chart, addresses)
    first = sheet.last_column + 2 if chart.beside else 0
    last = sheet.last_column + 1 + CHART_COLUMNS if chart.beside else max(sheet.last_column, CHART_COLUMNS)
    sheet.chart(made, chart.alt_text, (row, first), last, chart.rows)
