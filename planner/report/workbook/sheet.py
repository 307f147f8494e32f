"""One worksheet: cells, merged texts and charts, and at the end widths, heights and print settings that fit them."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from typing import Any

from xlsxwriter.utility import xl_rowcol_to_cell

from planner.report.document import Cell, Kind, Look
from planner.report.style import (
    FONT,
    Styles,
    column_pixels,
    line_count,
    longest_word,
    shown_length,
    text_width,
    total_width,
)
from planner.text import option_label

LONGEST_TEXT = 32_000
"""A cell holds 32,767 characters; longer texts are cut, visibly."""
LINE_POINTS, ROW_PIXELS, TALLEST_POINTS = 12.75, 20, 400
TITLE_POINTS, HEADING_POINTS = 24, 18
WIDEST_CHART_PIXELS = 1100
BOLD_WIDTH = 1.1
"""Width of bold letters over that of plain ones, roughly."""
_BOLD: tuple[Look, ...] = ("best", "total", "strong")
_NOT_FOR_XML = re.compile("[\x00-\x1f\x7f\ud800-\udfff\ufffe\uffff]")


class NotFinite(ValueError):
    """A number without a value was about to be written."""


def clean(text: str) -> str:
    """Make any text fit for a cell: no control characters, not longer than a cell holds."""
    one_line = _NOT_FOR_XML.sub(" ", text)
    return one_line if len(one_line) <= LONGEST_TEXT else one_line[: LONGEST_TEXT - 1] + "…"


@dataclass(frozen=True)
class _PlacedChart:
    """A chart, what it says in words, its corner, its last column and its height in rows."""

    chart: Any
    alt_text: str
    row: int
    column: int
    last_column: int
    rows: int


class Sheet:
    """A worksheet being filled.

    Parameters
    ----------
    sheet
        XlsxWriter's worksheet.
    styles : Styles
        Formats of the workbook.
    last_column : int
        Last column of the page's tables, over which texts and headings reach.
    """

    def __init__(self, sheet: Any, styles: Styles, last_column: int) -> None:
        self.sheet = sheet
        self.styles = styles
        self.last_column = last_column
        self._fixed: dict[int, float] = {}
        self._widths: dict[int, float] = {}
        self._wrapped: list[tuple[int, int, str, float]] = []
        self._texts: list[tuple[int, str, str, str | None]] = []
        self._charts: list[_PlacedChart] = []
        self._last_row = 0

    def fix_width(self, column: int, width: float) -> None:
        """Give a column a width of its own, in digits; its texts are expected to wrap or to be short."""
        self._fixed[column] = max(width, self._fixed.get(column, 0.0))

    def title(self, row: int, text: str) -> None:
        """Write the sheet's title."""
        self.sheet.write_string(row, 0, clean(text), self.styles.named("title"))
        self.sheet.set_row(row, TITLE_POINTS)
        self._reach(row)

    def heading(self, row: int, text: str) -> None:
        """Write the heading of a part, ruled over the sheet's tables."""
        style = self.styles.named("heading")
        self.sheet.write_string(row, 0, clean(text), style)
        for column in range(1, self.last_column + 1):
            self.sheet.write_blank(row, column, None, style)
        self.sheet.set_row(row, HEADING_POINTS)
        self._reach(row)

    def text(self, row: int, text: str, style: str, formula: str | None = None) -> None:
        """Write running text, or a formula that gives it, over the sheet's tables."""
        self._texts.append((row, clean(text), style, formula))
        self._reach(row)

    def header(self, row: int, column: int, text: str) -> None:
        """Write the heading of a column."""
        text = option_label(text)
        style = "header left" if column == 0 else "header"
        self.sheet.write_string(row, column, clean(text), self.styles.named(style))
        self._need(column, longest_word(text) + 2)
        self._wrapped.append((row, column, text, BOLD_WIDTH))
        self._reach(row)

    def put(self, row: int, column: int, cell: Cell, look: Look, formula: str | None = None) -> None:
        """Write one cell of a table, its value stored beside the formula if it has one.

        Raises
        ------
        NotFinite
            When a number has no value and no word was given for that.
        """
        self._reach(row)
        value, kind = cell.value, cell.kind
        if value is None or value == "":
            self.sheet.write_blank(row, column, None, self.styles.cell(kind, look))
            return
        if not isinstance(value, str):
            number = float(value)
            if math.isfinite(number):
                self._number(row, column, number, kind, look, formula)
                return
            if cell.word is None:
                where = xl_rowcol_to_cell(row, column)
                raise NotFinite(f"'{self.sheet.get_name()}' {where}: {number} cannot be written as a number")
            value, kind = cell.word, "word"
        self._word(row, column, clean(option_label(value)), kind, look, formula)

    def _number(self, row: int, column: int, number: float, kind: Kind, look: Look, formula: str | None) -> None:
        style = self.styles.cell(kind, look)
        if formula is None:
            self.sheet.write_number(row, column, number, style)
        else:
            self.sheet.write_formula(row, column, formula, style, number)
        self._need(column, shown_length(number, kind) + (2.5 if look in ("best", "total") else 2))

    def _word(self, row: int, column: int, text: str, kind: Kind, look: Look, formula: str | None) -> None:
        indented = column > 0 and kind in ("text", "wrap")
        style = self.styles.cell(kind, look, indented=indented)
        if formula is None:
            self.sheet.write_string(row, column, text, style)
        else:
            self.sheet.write_formula(row, column, formula, style, text)
        size = BOLD_WIDTH if look in _BOLD else 1.0
        if kind == "wrap":
            self._wrapped.append((row, column, text, size))
            self._need(column, min(longest_word(text) + 2, 30))
        else:
            self._need(column, text_width(text) * size + (2.5 if indented else 1.5))

    def chart(self, chart: Any, alt_text: str, corner: tuple[int, int], last_column: int, rows: int) -> None:
        """Place a chart from a corner (row, column) to the right end of a column, so many rows high."""
        self._charts.append(_PlacedChart(chart, clean(alt_text), *corner, last_column, rows))
        self._reach(corner[0] + rows)

    def finish(self, footer: str, *, one_page: bool) -> None:
        """Set widths, heights, merged texts, charts and printing; to be called once, at the end."""
        end = max([self.last_column, *(placed.last_column for placed in self._charts)])
        widths = [self._width(column) for column in range(end + 1)]
        for column, width in enumerate(widths):
            self.sheet.set_column(column, column, width)
        heights: dict[int, int] = {}
        for row, column, text, size in self._wrapped:
            heights[row] = max(heights.get(row, 1), line_count(text, widths[column], size))
        for row, text, style, formula in self._texts:
            self._merge(row, text, style, formula)
            lines = line_count(text, total_width(widths[: self.last_column + 1]), 1.35 if style == "verdict" else 1.0)
            if style == "verdict":
                self.sheet.set_row(row, HEADING_POINTS * lines + 6)
            else:
                heights[row] = max(heights.get(row, 1), lines)
        for row, lines in heights.items():
            if lines > 1:
                self.sheet.set_row(row, min(LINE_POINTS * lines + 3, TALLEST_POINTS))
        for placed in self._charts:
            pixels = sum(column_pixels(width) for width in widths[placed.column : placed.last_column + 1])
            placed.chart.set_size(
                {"width": min(pixels, WIDEST_CHART_PIXELS) - 6, "height": placed.rows * ROW_PIXELS - 4}
            )
            place = {"x_offset": 3, "y_offset": 2, "object_position": 2, "description": placed.alt_text}
            self.sheet.insert_chart(placed.row, placed.column, placed.chart, place)
        self._print(footer, one_page=one_page, last_column=end)

    def _merge(self, row: int, text: str, style: str, formula: str | None) -> None:
        form = self.styles.named(style)
        if self.last_column > 0:
            self.sheet.merge_range(row, 0, row, self.last_column, "", form)
        if formula is None:
            self.sheet.write_string(row, 0, text, form)
        else:
            self.sheet.write_formula(row, 0, formula, form, text)

    def _print(self, footer: str, *, one_page: bool, last_column: int) -> None:
        sheet = self.sheet
        sheet.hide_gridlines(2)
        sheet.set_landscape()
        sheet.set_paper(9)
        sheet.set_margins(left=0.4, right=0.4, top=0.5, bottom=0.6)
        sheet.fit_to_pages(1, 1 if one_page else 0)
        sheet.print_area(0, 0, self._last_row, last_column)
        letters = f'&"{FONT},Regular"&9'
        sheet.set_footer(f"&L{letters}{footer}&C{letters}&A&R{letters}Page &P of &N")

    def _width(self, column: int) -> float:
        return self._fixed.get(column, min(max(self._widths.get(column, 8.0), 6.0), 60.0))

    def _need(self, column: int, width: float) -> None:
        self._widths[column] = max(width, self._widths.get(column, 0.0))

    def _reach(self, row: int) -> None:
        self._last_row = max(self._last_row, row)
