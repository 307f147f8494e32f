"""A workbook of a study other than the ordinary run: named sheets, written whole or not at all."""

from __future__ import annotations

import json
import math
from collections.abc import Callable, Sequence
from datetime import datetime
from pathlib import Path
from typing import Any, BinaryIO

from planner.report.files import write_stream, write_text
from planner.report.sheets.page import Page, clean
from planner.report.style import Kind, Look, Styles

_LONGEST_FOOTER = 100

Fill = Callable[[Any, dict[str, Page]], None]


def write_study_book(title: str, sheets: Sequence[str], fill: Fill, path: Path, one_page: Sequence[str] = ()) -> None:
    """Write a workbook; the same study gives the same bytes.

    Parameters
    ----------
    title : str
        Name of the project, for the footer.
    sheets : sequence of str
        Names of the sheets, in order.
    fill : callable
        Called with XlsxWriter's workbook and the pages by name.
    path : pathlib.Path
        File to write.
    one_page : sequence of str
        Sheets that print on one page.
    """

    def write(stream: BinaryIO) -> None:
        import xlsxwriter

        plain = {"strings_to_formulas": False, "strings_to_urls": False, "strings_to_numbers": False}
        book = xlsxwriter.Workbook(stream, {"in_memory": True, **plain})
        book.set_properties({"title": clean(title), "created": datetime(1980, 1, 1)})
        styles = Styles(book)
        pages = {name: Page(book.add_worksheet(name), styles, name) for name in sheets}
        fill(book, pages)
        footer = clean(title)[:_LONGEST_FOOTER].replace("&", "&&")
        for name, page in pages.items():
            page.finish(footer, one_page=name in one_page)
        pages[sheets[0]].sheet.activate()
        book.close()

    write_stream(path, write)


def put_row(page: Page, values: Sequence[tuple[str | float | None, Kind]], look: Look = "plain") -> None:
    """Write one row of a table and go to the next."""
    for column, (value, kind) in enumerate(values):
        page.put(page.row, column, value, kind, look, word="–")
    page.row += 1


def write_study_json(data: dict[str, Any], path: Path) -> None:
    """Write plain data as JSON, whole or not at all; numbers without a value become null."""
    text = json.dumps(finite(data), indent=2, ensure_ascii=False, allow_nan=False)
    write_text(path, text + "\n")


def finite(value: Any) -> Any:
    """Put None in place of numbers without a value, at any depth."""
    if isinstance(value, float) and not math.isfinite(value):
        return None
    if isinstance(value, dict):
        return {key: finite(inner) for key, inner in value.items()}
    if isinstance(value, list | tuple):
        return [finite(inner) for inner in value]
    return value
