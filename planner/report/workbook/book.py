"""Write a report as a workbook, whole or not at all; the same report gives the same bytes."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import datetime
from pathlib import Path
from typing import Any, BinaryIO

from xlsxwriter.utility import xl_rowcol_to_cell

from planner.money.formula import Formula
from planner.report.document import Chart, Heading, Page, Report, Section, Table, Text
from planner.report.files import write_stream
from planner.report.review import with_review_note
from planner.report.style import Styles
from planner.report.workbook.charts import book_chart
from planner.report.workbook.layout import (
    Addresses,
    Header,
    NoSuchCell,
    Placed,
    TableRow,
    Title,
    last_column,
    lay_out,
)
from planner.report.workbook.sheet import NotFinite, Sheet, clean

CHART_COLUMNS, CHART_COLUMN_WIDTH, GAP_WIDTH = 8, 9.0, 2.0
"""A chart beside a table takes so many columns of its own, behind a narrow one."""
LEAST_CHART_COLUMNS = 5
"""A chart among the page's columns takes no fewer."""
_LONGEST_FOOTER = 100


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
    book = xlsxwriter.Workbook(stream, {"in_memory": True, **plain})
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
        sheet.finish(footer, one_page=page.one_page)
    book.worksheets()[0].activate()
    book.close()


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
            _header(sheet, row, item.table)
        elif isinstance(item, TableRow):
            _row(sheet, row, item, page, addresses)
        else:
            _chart(book, sheet, row, item, addresses)


def _header(sheet: Sheet, row: int, table: Table) -> None:
    for place, column in enumerate(table.columns):
        sheet.header(row, place, column.heading)
    if table.freeze is not None:
        sheet.sheet.freeze_panes(row + 1, table.freeze)
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
        return f"={formula.text(lambda reference: addresses.text(reference, page.name))}"
    except NoSuchCell:
        return None
    except ValueError as error:
        raise NotFinite(f"'{page.name}' {xl_rowcol_to_cell(*where)}: {error}") from error


def _chart(book: Any, sheet: Sheet, row: int, chart: Chart, addresses: Addresses) -> None:
    if not chart.series:
        return  # as of costs where nothing has a price
    made = book_chart(book, chart, addresses)
    if chart.beside is None:
        first, last = 0, max(sheet.last_column, CHART_COLUMNS)
    elif chart.column is None:
        first, last = sheet.last_column + 2, sheet.last_column + 1 + CHART_COLUMNS
    else:
        first, last = chart.column, max(sheet.last_column, chart.column + LEAST_CHART_COLUMNS - 1)
    sheet.chart(made, chart.alt_text, (row, first), last, chart.rows)
