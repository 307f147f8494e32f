"""One worksheet, filled from top to bottom, that keeps widths, heights and print area fitting to what is on it."""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from typing import Any

from xlsxwriter.utility import xl_rowcol_to_cell

from planner.report.style import (
    FONT,
    Kind,
    Look,
    Styles,
    column_pixels,
    line_count,
    longest_word,
    shown_length,
    text_width,
    total_width,
)

LONGEST_TEXT = 32_000
"""A cell holds 32,767 characters; longer texts are cut, visibly."""
ROW_POINTS, LINE_POINTS, ROW_PIXELS = 15.0, 12.75, 20
_NOT_FOR_XML = re.compile("[\x00-\x1f\x7f\ud800-\udfff\ufffe\uffff]")


class NotFinite(ValueError):
    """A number without a value was about to be written."""


def clean(text: str) -> str:
    """Make any text fit for a cell: no control characters, not longer than a cell holds."""
    one_line = _NOT_FOR_XML.sub(" ", text)
    return one_line if len(one_line) <= LONGEST_TEXT else one_line[: LONGEST_TEXT - 1] + "…"


def reference(row: int, column: int, *, fixed_row: bool = False, fixed_column: bool = False) -> str:
    """Address of a cell for a formula, such as B7 or $B$7."""
    return str(xl_rowcol_to_cell(row, column, row_abs=fixed_row, col_abs=fixed_column))


class Page:
    """A worksheet being filled.

    Parameters
    ----------
    sheet
        XlsxWriter's worksheet.
    styles : Styles
        Formats of the workbook.
    name : str
        Name of the sheet.
    """

    def __init__(self, sheet: Any, styles: Styles, name: str) -> None:
        self.sheet = sheet
        self.styles = styles
        self.name = name
        self.row = 0
        self._widths: dict[int, float] = {}
        self._fixed: dict[int, float] = {}
        self._wrapped: list[tuple[int, int, int, str, float]] = []
        self._paragraphs: list[tuple[int, str, str, int | None, str | None]] = []
        self._charts: list[tuple[Any, int, int, int | None, int]] = []
        self._below_header = -1
        self._last_row = 0
        self._last_column = 0

    def at(self, row: int, column: int, last_row: int | None = None, last_column: int | None = None) -> str:
        """Absolute address of a cell, or of a range, for formulas of any sheet."""
        first = reference(row, column, fixed_row=True, fixed_column=True)
        if last_row is None:
            return f"'{self.name}'!{first}"
        end = reference(last_row, column if last_column is None else last_column, fixed_row=True, fixed_column=True)
        return f"'{self.name}'!{first}:{end}"

    def range_of(self, first_row: int, first_column: int, last_row: int, last_column: int) -> list[Any]:
        """Cells of this sheet as a chart wants them."""
        return [self.name, first_row, first_column, last_row, last_column]

    def fix_width(self, column: int, width: float) -> None:
        """Give a column a width of its own, in digits; its texts are expected to wrap or to be short."""
        self._fixed[column] = width

    def title(self, text: str, under: str = "") -> None:
        """Write the sheet's title, and a line under it."""
        self.sheet.write_string(self.row, 0, clean(text), self.styles.named("title"))
        self.sheet.set_row(self.row, 24)
        self._extend(self.row, 0)
        self.row += 1
        if under:
            self.paragraph(under, "note")

    def heading(self, text: str, last_column: int | None = None) -> None:
        """Write the heading of a part, ruled over the columns up to `last_column`, below an empty row."""
        if self.row != self._below_header:
            self.row += 1
        style = self.styles.named("heading")
        self.sheet.write_string(self.row, 0, clean(text), style)
        for column in range(1, (last_column or 0) + 1):
            self.sheet.write_blank(self.row, column, None, style)
        self.sheet.set_row(self.row, 18)
        self._extend(self.row, last_column or 0)
        self.row += 1

    def paragraph(
        self, text: str, style: str = "paragraph", last_column: int | None = None, *, formula: str | None = None
    ) -> None:
        """Write running text, or a formula that gives it, over the sheet's width (or up to a column)."""
        self._paragraphs.append((self.row, clean(text), style, last_column, formula))
        self._extend(self.row, 0)
        self.row += 1

    def header(self, texts: Sequence[str], first_column: int = 0) -> None:
        """Write the header of a table in the current row."""
        for column, text in enumerate(texts, start=first_column):
            style = "header left" if column == first_column else "header"
            self.sheet.write_string(self.row, column, clean(text), self.styles.named(style))
            self._need(column, longest_word(text) + 2)
            self._wrapped.append((self.row, column, column, text, 1.1))
            self._extend(self.row, column)
        self.row += 1
        self._below_header = self.row

    def freeze(self, columns: int = 1) -> None:
        """Keep everything above the current row, and some columns, in sight; repeat the row above on each page."""
        self.sheet.freeze_panes(self.row, columns)
        self.sheet.repeat_rows(self.row - 1)

    def put(
        self,
        row: int,
        column: int,
        value: str | float | None,
        kind: Kind = "text",
        look: Look = "plain",
        *,
        word: str | None = None,
        formula: str | None = None,
    ) -> None:
        """Write one cell of a table.

        Parameters
        ----------
        row, column : int
            From 0.
        value : str, float or None
            A text is written as text whatever it begins with; None leaves the cell empty.
        kind, look : str
            Format.
        word : str, optional
            What stands there when the number has no value.
        formula : str, optional
            Formula that gives the value, number or text, which is stored beside it.

        Raises
        ------
        NotFinite
            When a number has no value and no word was given for that.
        """
        self._extend(row, column)
        if value is None or value == "":
            self.sheet.write_blank(row, column, None, self.styles.cell(kind, look))
            return
        if not isinstance(value, str):
            number = float(value)
            if math.isfinite(number):
                style = self.styles.cell(kind, look)
                if formula is None:
                    self.sheet.write_number(row, column, number, style)
                else:
                    self.sheet.write_formula(row, column, formula, style, number)
                self._need(column, shown_length(number, kind) + (2.5 if look in ("best", "total") else 2))
                return
            if word is None:
                raise NotFinite(f"'{self.name}' {reference(row, column)}: {number} cannot be written as a number")
            value, kind = word, "word"
        text = clean(value)
        indented = column > 0 and kind in ("text", "wrap")
        style = self.styles.cell(kind, look, indented=indented)
        if formula is None:
            self.sheet.write_string(row, column, text, style)
        else:
            self.sheet.write_formula(row, column, formula, style, text)
        if kind == "wrap":
            self._wrapped.append((row, column, column, text, 1.1 if look in ("best", "total", "strong") else 1.0))
            self._need(column, min(longest_word(text) + 2, 30))
        else:
            self._need(
                column,
                text_width(text) * (1.1 if look in ("best", "total", "strong") else 1.0) + (2.5 if indented else 1.5),
            )

    def chart(self, chart: Any, row: int, column: int, last_column: int | None, rows: int) -> None:
        """Place a chart from a cell to the right end of a column, so many rows high; None: of the sheet."""
        self._charts.append((chart, row, column, last_column, rows))
        self._extend(row + rows, column if last_column is None else last_column)

    def next_free_column(self) -> int:
        """First column to the right of everything written so far."""
        return self._last_column + 1

    def finish(self, footer: str, *, one_page: bool = False) -> None:
        """Set widths, heights, merged texts, charts and printing; to be called once, at the end."""
        widths = [self._width(column) for column in range(self._last_column + 1)]
        for column, width in enumerate(widths):
            self.sheet.set_column(column, column, width)
        heights: dict[int, int] = {}
        for row, first, last, text, size in self._wrapped:
            heights[row] = max(heights.get(row, 1), line_count(text, total_width(widths[first : last + 1]), size))
        for row, text, style, last_column, formula in self._paragraphs:
            last = self._last_column if last_column is None else last_column
            form = self.styles.named(style)
            if last > 0:
                self.sheet.merge_range(row, 0, row, last, "", form)
            if formula is None:
                self.sheet.write_string(row, 0, text, form)
            else:
                self.sheet.write_formula(row, 0, formula, form, text)
            size = 1.35 if style == "verdict" else 1.0
            heights[row] = max(heights.get(row, 1), line_count(text, total_width(widths[: last + 1]), size))
            if style == "verdict":
                self.sheet.set_row(row, 18.0 * heights.pop(row) + 6)
        for row, lines in heights.items():
            if lines > 1:
                self.sheet.set_row(row, min(LINE_POINTS * lines + 3, 400))
        for chart, row, column, last_column, rows in self._charts:
            last = self._last_column if last_column is None else last_column
            pixels = sum(column_pixels(width) for width in widths[column : last + 1])
            chart.set_size({"width": pixels - 6, "height": rows * ROW_PIXELS - 4})
            self.sheet.insert_chart(row, column, chart, {"x_offset": 3, "y_offset": 2, "object_position": 2})
        self._print(footer, one_page)

    def _print(self, footer: str, one_page: bool) -> None:
        sheet = self.sheet
        sheet.hide_gridlines(2)
        sheet.set_landscape()
        sheet.set_paper(9)
        sheet.set_margins(left=0.4, right=0.4, top=0.5, bottom=0.6)
        sheet.fit_to_pages(1, 1 if one_page else 0)
        sheet.print_area(0, 0, self._last_row, self._last_column)
        letters = f'&"{FONT},Regular"&9'
        sheet.set_footer(f"&L{letters}{footer}&C{letters}&A&R{letters}Page &P of &N")

    def _width(self, column: int) -> float:
        return self._fixed.get(column, min(max(self._widths.get(column, 8.0), 6.0), 60.0))

    def _need(self, column: int, width: float) -> None:
        if width > self._widths.get(column, 0.0):
            self._widths[column] = width

    def _extend(self, row: int, column: int) -> None:
        self._last_row = max(self._last_row, row)
        self._last_column = max(self._last_column, column)
