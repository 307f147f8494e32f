"""One worksheet: cells, merged texts and charts, and at the end widths, heights and print settings that fit them."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass, replace
from typing import Any

from xlsxwriter.utility import xl_rowcol_to_cell

from planner.report.document import Cell, Kind, Look, Tile
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
from planner.text import text as sentence

LONGEST_TEXT = 32_000
"""A cell holds 32,767 characters; longer texts are cut, visibly."""
LINE_POINTS, ROW_PIXELS, TALLEST_POINTS = 12.75, 17, 400
TITLE_POINTS, HEADING_POINTS, TILE_POINTS, GAP_POINTS = 24, 18, 30, 5
WIDEST_CHART_PIXELS = 1100
LEAST_CHART_ROWS = 10
"""A chart at the foot of a single page is made so low, where it must, and not printed where it would be lower."""
PAPER_POINTS, MARGIN_POINTS, MARGIN_ENDS_POINTS = (595.3, 841.9), 57.6, 79.2
"""A4, and what the margins left and right, above and below take of it."""
LEAST_SCALE = 0.8
"""At which letters of 10 points are printed with 8."""
END_OF_PAGE = 0.97
"""Part of a page that rows fill, as none is divided."""
NOWHERE = 300
"""A column in which nothing stands: a sheet whose print area is there prints nothing."""
BOLD_WIDTH = 1.1
"""Width of bold letters over that of plain ones, roughly."""
_BOLD: tuple[Look, ...] = ("best", "total", "strong")
_NOT_FOR_XML = re.compile("[\x00-\x1f\x7f\ud800-\udfff\ufffe\uffff]")


class NotFinite(ValueError):
    """A number without a value was about to be written."""


def fit_for_xml(text: str) -> str:
    """Put a space in the place of each control character."""
    return _NOT_FOR_XML.sub(" ", text)


def clean(text: str) -> str:
    """Make any text fit for a cell: no control characters, not longer than a cell holds."""
    one_line = fit_for_xml(text)
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


@dataclass(frozen=True)
class Printing:
    """What of a sheet is printed: up to a row and a column (None: nothing of it), and on what paper."""

    last_row: int | None
    last_column: int
    one_page: bool
    upright: bool


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
        self._titles: list[int] = []
        self._headings: list[int] = []
        self._gaps: list[int] = []
        self._tiles: list[tuple[int, tuple[Tile, ...], list[tuple[str | None, str | None]]]] = []

    def fix_width(self, column: int, width: float) -> None:
        """Give a column a width of its own, in digits; its texts are expected to wrap or to be short."""
        self._fixed[column] = max(width, self._fixed.get(column, 0.0))

    def title(self, row: int, text: str) -> None:
        """Write the sheet's title."""
        self.sheet.write_string(row, 0, clean(text), self.styles.named("title"))
        self._titles.append(row)

    def heading(self, row: int, text: str) -> None:
        """Write the heading of a part, ruled over the sheet's tables."""
        style = self.styles.named("heading")
        self.sheet.write_string(row, 0, clean(text), style)
        for column in range(1, self.last_column + 1):
            self.sheet.write_blank(row, column, None, style)
        self._headings.append(row)

    def gap(self, row: int) -> None:
        """Leave a low row empty."""
        self._gaps.append(row)

    def text(self, row: int, text: str, style: str, formula: str | None = None) -> None:
        """Write running text, or a formula that gives it, over the sheet's tables."""
        self._texts.append((row, clean(text), style, formula))

    def tiles(self, row: int, tiles: tuple[Tile, ...], formulas: list[tuple[str | None, str | None]]) -> None:
        """Write large numbers over the sheet's tables, with the formulas of their numbers and of their notes."""
        self._tiles.append((row, tiles, formulas))

    def header(self, row: int, column: int, text: str) -> None:
        """Write the heading of a column."""
        text = option_label(text)
        style = "header left" if column == 0 else "header"
        self.sheet.write_string(row, column, clean(text), self.styles.named(style))
        self._need(column, longest_word(text) + 2)
        self._wrapped.append((row, column, text, BOLD_WIDTH))

    def put(self, row: int, column: int, cell: Cell, look: Look, formula: str | None = None) -> None:
        """Write one cell of a table, its value stored beside the formula if it has one.

        Raises
        ------
        NotFinite
            When a number has no value and no word was given for that.
        """
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

    def finish(self, footer: str, printing: Printing) -> None:
        """Set widths, heights, merged texts, charts and printing; to be called once, at the end."""
        end = max([self.last_column, *self._widths, *self._fixed, *(placed.last_column for placed in self._charts)])
        widths = [self._width(column) for column in range(end + 1)]
        for column, width in enumerate(widths):
            self.sheet.set_column(column, column, width)
        self.sheet.set_default_row(LINE_POINTS)
        heights = self._heights(widths)
        for row, points in heights.items():
            self.sheet.set_row(row, points)
        for placed in self._charts:
            rows = placed.rows
            if printing.one_page and placed.row + placed.rows == printing.last_row:
                rows = _rows_left(placed, heights, widths[: printing.last_column + 1], upright=printing.upright)
                shown = placed.row + rows if rows >= LEAST_CHART_ROWS else placed.row - 1
                printing = replace(printing, last_row=shown)
            pixels = sum(column_pixels(width) for width in widths[placed.column : placed.last_column + 1])
            height = max(rows, LEAST_CHART_ROWS) * ROW_PIXELS - 4
            placed.chart.set_size({"width": min(pixels, WIDEST_CHART_PIXELS) - 6, "height": height})
            place = {"x_offset": 3, "y_offset": 2, "object_position": 2, "description": placed.alt_text}
            self.sheet.insert_chart(placed.row, placed.column, placed.chart, place)
        pages = 1
        if not printing.one_page and printing.last_row is not None:
            high = sum(heights.get(row, LINE_POINTS) for row in range(printing.last_row + 1))
            pages = _fewest_pages(high, widths[: printing.last_column + 1], upright=printing.upright)
        self._print(footer, printing, pages)

    def _heights(self, widths: list[float]) -> dict[int, float]:
        """Write what reaches over several columns, and give the heights of all rows that need one [points]."""
        lines: dict[int, int] = {}
        points: dict[int, float] = {}
        for row, column, text, size in self._wrapped:
            lines[row] = max(lines.get(row, 1), line_count(text, widths[column], size))
        room = total_width(widths[: self.last_column + 1])
        for row, text, style, formula in self._texts:
            self._merge(row, 0, self.last_column, text, self.styles.named(style), formula)
            count = line_count(text, room, 1.35 if style == "verdict" else 1.0)
            if style == "verdict":
                points[row] = HEADING_POINTS * count + 6
            else:
                lines[row] = max(lines.get(row, 1), count)
        for row, tiles, formulas in self._tiles:
            self._put_tiles(row, tiles, formulas, widths, lines)
            points[row + 1] = TILE_POINTS
        for row, count in lines.items():
            if count > 1:
                points[row] = min(LINE_POINTS * count + 3, TALLEST_POINTS)
        low = dict.fromkeys(self._gaps, GAP_POINTS)
        return {
            **low,
            **dict.fromkeys(self._titles, TITLE_POINTS),
            **dict.fromkeys(self._headings, HEADING_POINTS),
            **points,
        }

    def _put_tiles(
        self,
        row: int,
        tiles: tuple[Tile, ...],
        formulas: list[tuple[str | None, str | None]],
        widths: list[float],
        lines: dict[int, int],
    ) -> None:
        for tile, (number, note), (first, last) in zip(tiles, formulas, self._parts(len(tiles), widths), strict=True):
            self._merge(row, first, last, clean(tile.label), self.styles.named("tile"), None)
            large = self.styles.large(tile.before, tile.after, tile.decimals)
            value = clean(tile.cell.value) if isinstance(tile.cell.value, str) else tile.cell.value
            self._merge(row + 1, first, last, value, large, number)
            said = clean(tile.note.text)
            self._merge(row + 2, first, last, said, self.styles.named("tile note"), note)
            count = line_count(said, total_width(widths[first : last + 1]))
            lines[row + 2] = max(lines.get(row + 2, 1), count)

    def _parts(self, count: int, widths: list[float]) -> list[tuple[int, int]]:
        """First and last column of each of some parts, about equally wide, of the columns of the sheet's tables."""
        ends = [sum(widths[: column + 1]) for column in range(self.last_column + 1)]
        cuts = [0]
        for part in range(1, count):
            wanted = ends[-1] * part / count
            nearest = min(range(len(ends)), key=lambda column: abs(ends[column] - wanted))
            cuts.append(max(nearest + 1, cuts[-1] + 1))
        return list(zip(cuts, [*(cut - 1 for cut in cuts[1:]), max(self.last_column, cuts[-1])], strict=True))

    def _merge(
        self, row: int, first: int, last: int, value: str | float | None, form: Any, formula: str | None
    ) -> None:
        if last > first:
            self.sheet.merge_range(row, first, row, last, "", form)
        if formula is not None:
            self.sheet.write_formula(row, first, formula, form, value)
        elif isinstance(value, str):
            self.sheet.write_string(row, first, value, form)
        elif value is not None:
            self.sheet.write_number(row, first, value, form)

    def _print(self, footer: str, printing: Printing, pages: int) -> None:
        sheet = self.sheet
        sheet.hide_gridlines(2)
        if not printing.upright:
            sheet.set_landscape()
        sheet.set_paper(9)
        sheet.set_margins(left=0.4, right=0.4, top=0.5, bottom=0.6)
        sheet.fit_to_pages(1, pages)
        if printing.last_row is None:
            leave_unprinted(sheet)
        else:
            sheet.print_area(0, 0, printing.last_row, printing.last_column)
        letters = f'&"{FONT},Regular"&9'
        sheet.set_footer(
            f"&L{letters}{footer}&C{letters}&A&R{letters}{sentence('proposal.page', page='&P', pages='&N')}"
        )

    def _width(self, column: int) -> float:
        return self._fixed.get(column, min(max(self._widths.get(column, 8.0), 6.0), 60.0))

    def _need(self, column: int, width: float) -> None:
        self._widths[column] = max(width, self._widths.get(column, 0.0))


def leave_unprinted(sheet: Any) -> None:
    """Keep a sheet out of the printed set: its print area is a cell in which nothing stands."""
    sheet.repeat_row_range = ""
    sheet.print_area(0, NOWHERE, 0, NOWHERE)


def _paper(widths: list[float], *, upright: bool) -> tuple[float, float]:
    """Scale at which columns fill the paper, never above 1, and height of the paper between the margins [points]."""
    across, down = PAPER_POINTS if upright else PAPER_POINTS[::-1]
    wide = sum(map(column_pixels, widths)) * 0.75
    return min((across - MARGIN_POINTS) / wide, 1.0), down - MARGIN_ENDS_POINTS


def _rows_left(placed: _PlacedChart, heights: dict[int, float], widths: list[float], *, upright: bool) -> int:
    """Rows that a chart at the foot of a single page may take, so that the page is not printed smaller than it may."""
    scale, down = _paper(widths, upright=upright)
    above = sum(heights.get(row, LINE_POINTS) for row in range(placed.row))
    return min(placed.rows, int((down / max(scale, LEAST_SCALE) - above) / LINE_POINTS))


def _fewest_pages(high: float, widths: list[float], *, upright: bool) -> int:
    """Pages for rows of some height together, no smaller than they may be printed; some room is lost at their ends."""
    scale, down = _paper(widths, upright=upright)
    smallest = high * min(scale, LEAST_SCALE)
    return 1 if smallest <= down else math.ceil(smallest / (END_OF_PAGE * down))
