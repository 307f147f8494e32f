"""A table of a report as a table of a Word document: headings that repeat on each page, numbers to the right."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from typing import Any
from xml.sax.saxutils import escape

from docx.oxml import parse_xml
from docx.oxml.ns import nsdecls

from planner.report.document import Cell, Column, Look, Row, Section, Table
from planner.report.shown import is_number, shown
from planner.report.style import HAIR, MIST, RULE, SLATE, STRAW, longest_word, text_width
from planner.report.word.styles import TABLE_HEADING, TABLE_NUMBER, TABLE_POINTS, TABLE_TEXT, TEXT_WIDTH_MM
from planner.report.word.words import clean
from planner.text import option_label

TWIPS_PER_MM, DIGIT_POINTS, MARGIN_TWIPS = 56.693, 0.556, 70
"""Twips are the unit of lengths in the format; width of a digit of Arial over the size of its letters."""
WIDEST, BREAKS_AT, SHORT = 60.0, 24.0, 16.0
"""Digits beyond which no column asks for more, beyond which a word is broken, and up to which no text is broken."""
NARROWEST, SLACK = 4.0, 1.12
"""Least width of a column [digits], and what is added for letters that are wider than those counted with."""
STRETCHED, KEPT_ROWS = 0.6, 14
"""Share of the text's width from which a table is stretched to all of it, and rows up to which it stays on a page."""
_BOLD: tuple[Look, ...] = ("best", "total", "strong")
_RIGHT = ("word",)
_KEEP = "<w:keepNext/>"
_STYLE_IDS = {name: name.replace(" ", "") for name in (TABLE_TEXT, TABLE_NUMBER, TABLE_HEADING)}


def table_element(table: Table) -> Any:
    """Make the element of a table, as wide as the text or narrower."""
    widths = _twips(_widths(table))
    grid = "".join(f'<w:gridCol w:w="{width}"/>' for width in widths)
    edges = "".join(
        f'<w:{side} w:val="single" w:sz="4" w:space="0" w:color="{colour[1:]}"/>'
        for side, colour in (("top", SLATE), ("bottom", SLATE), ("insideH", HAIR))
    )
    margins = "".join(f'<w:{side} w:w="{MARGIN_TWIPS}" w:type="dxa"/>' for side in ("left", "right"))
    caption = f'<w:tblCaption w:val="{_attribute(table.heading)}"/>' if table.heading else ""
    properties = (
        f'<w:tblPr><w:tblW w:w="{sum(widths)}" w:type="dxa"/><w:tblBorders>{edges}</w:tblBorders>'
        f'<w:tblLayout w:type="fixed"/><w:tblCellMar>{margins}</w:tblCellMar>'
        f'<w:tblLook w:val="0020" w:firstRow="{int(table.header)}" w:lastRow="0" w:firstColumn="0" w:lastColumn="0" '
        f'w:noHBand="1" w:noVBand="1"/>{caption}</w:tblPr>'
    )
    rows = "".join(_rows(table, widths))
    return parse_xml(f"<w:tbl {nsdecls('w')}>{properties}<w:tblGrid>{grid}</w:tblGrid>{rows}</w:tbl>")


def _rows(table: Table, widths: Sequence[int]) -> Iterator[str]:
    small = len(table.rows) <= KEPT_ROWS
    if table.header:
        yield _row("<w:tblHeader/>", _header_cells(table, widths, _KEEP if small else ""))
    for place, row in enumerate(table.rows, start=1):
        keep = _KEEP if small and place < len(table.rows) else ""
        if isinstance(row, Section):
            keep = _KEEP if place > 1 else keep  # in the first row it would hold the whole table
            yield _row("", [_cell(row.text, sum(widths), TABLE_HEADING, keep, fill=HAIR, span=len(widths))])
        else:
            cells = zip(table.columns, widths, strict=True)
            yield _row("", [_row_cell(row, column, width, keep) for column, width in cells])


def _row(properties: str, cells: Iterable[str]) -> str:
    return f"<w:tr><w:trPr><w:cantSplit/>{properties}</w:trPr>{''.join(cells)}</w:tr>"


def _header_cells(table: Table, widths: Sequence[int], keep: str) -> Iterator[str]:
    for column, width in zip(table.columns, widths, strict=True):
        right = '<w:jc w:val="right"/>' if _stands_right(table, column) else ""
        yield _cell(option_label(column.heading), width, TABLE_HEADING, keep + right, fill=MIST)


def _row_cell(row: Row, column: Column, width: int, keep: str) -> str:
    cell = row.cells.get(column.key, Cell(None))
    look = cell.look or row.look
    style = TABLE_NUMBER if _is_right(cell) else TABLE_TEXT
    run = f"{'<w:b/>' if look in _BOLD else ''}{'<w:i/>' if look == 'sub' else ''}"
    edge = f'<w:top w:val="single" w:sz="6" w:space="0" w:color="{RULE[1:]}"/>' if look == "total" else ""
    return _cell(shown(cell), width, style, keep, fill=STRAW if look == "best" else "", edge=edge, run=run)


def _cell(
    content: str,
    width: int,
    style: str,
    paragraph: str,
    *,
    fill: str = "",
    span: int = 1,
    edge: str = "",
    run: str = "",
) -> str:
    """Write a cell; `paragraph`, `edge` and `run` are properties in the format's own words."""
    spanned = f'<w:gridSpan w:val="{span}"/>' if span > 1 else ""
    borders = f"<w:tcBorders>{edge}</w:tcBorders>" if edge else ""
    shading = f'<w:shd w:val="clear" w:color="auto" w:fill="{fill[1:]}"/>' if fill else ""
    words = f'<w:t xml:space="preserve">{escape(clean(content))}</w:t>'
    return (
        f'<w:tc><w:tcPr><w:tcW w:w="{width}" w:type="dxa"/>{spanned}{borders}{shading}</w:tcPr>'
        f'<w:p><w:pPr><w:pStyle w:val="{_STYLE_IDS[style]}"/>{paragraph}</w:pPr>'
        f"<w:r><w:rPr>{run}</w:rPr>{words}</w:r></w:p></w:tc>"
    )


def _is_right(cell: Cell) -> bool:
    return is_number(cell) or cell.kind in _RIGHT


def _stands_right(table: Table, column: Column) -> bool:
    """Whether a column holds numbers, so that its heading stands above them."""
    cells = [row.cells[column.key] for row in table.data_rows() if column.key in row.cells]
    filled = [cell for cell in cells if cell.value is not None]
    return bool(filled) and all(map(_is_right, filled))


def _widths(table: Table) -> list[float]:
    """Widths of the columns, in digits of the table's letters.

    Each gets what it asks for, or where there is no room for all of it, its longest word and a share of the rest by
    how long its texts mostly are.
    """
    least, wanted, usual = [], [], []
    for column in table.columns:
        heading = column.heading if table.header else ""
        cells = [row.cells[column.key] for row in table.data_rows() if column.key in row.cells]
        words = [shown(cell) for cell in cells]
        # A heading may take two lines.
        whole = [SLACK * text_width(said) for said in words] + [SLACK * text_width(heading) / 2]
        numbers = [width for cell, width in zip(cells, whole, strict=False) if is_number(cell)]
        longest = SLACK * max(map(longest_word, [heading, *words]))
        low = max(min(longest, BREAKS_AT), *numbers, NARROWEST) + 1.0
        asked = max(low, min(max(whole) + 1.0, WIDEST))
        least.append(asked if asked <= SHORT else low)
        usual.append(math.sqrt(sum(each**2 for each in whole) / len(whole)))
        wanted.append(asked)
    points = DIGIT_POINTS * TABLE_POINTS
    room = TEXT_WIDTH_MM * 72 / 25.4 / points - len(wanted) * 2 * MARGIN_TWIPS / 20 / points
    if sum(wanted) <= STRETCHED * room:
        return wanted
    if sum(wanted) <= room:
        return [each + (room - sum(wanted)) * each / sum(wanted) for each in wanted]
    spare = room - sum(least)
    if spare <= 0:
        return [room * each / sum(least) for each in least]
    more = [max(each - low, 0.0) for low, each in zip(least, usual, strict=True)]
    return [low + spare * each / (sum(more) or 1.0) for low, each in zip(least, more, strict=True)]


def _twips(widths: Sequence[float]) -> list[int]:
    return [round(20 * width * DIGIT_POINTS * TABLE_POINTS) + 2 * MARGIN_TWIPS for width in widths]


def _attribute(content: str) -> str:
    return escape(clean(content), {'"': "&quot;"})
