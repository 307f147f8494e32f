"""Find, fill and break cells of a form the way a person or a careless program would."""

from __future__ import annotations

import datetime
import re
import zipfile
from collections.abc import Callable, Mapping
from pathlib import Path
from typing import Any
from xml.sax.saxutils import escape

import openpyxl
import pytest
from openpyxl.cell.cell import ERROR_CODES
from openpyxl.utils import get_column_letter

from planner.report.form.parts import KEY_COLUMN
from planner.report.form.sheets import write_form

EXAMPLES = sorted(Path("scenarios").glob("*.toml"))
FEW = [
    pytest.param(file, marks=[] if file.stem in ("visit", "hill-school") else [pytest.mark.slow]) for file in EXAMPLES
]
"""The examples as cases of a test: the shortest and a full one by default, the others in the slow run."""


def cell_of_key(book: Any, key: str) -> tuple[Any, int]:
    """Sheet and row on which a key stands in the key column."""
    for sheet in book.worksheets:
        for row in range(1, sheet.max_row + 1):
            if sheet.cell(row, KEY_COLUMN + 1).value == key:
                return sheet, row
    raise AssertionError(f"{key} has no row")


def edited(path: Path, changes: dict[str, Any]) -> Path:
    """Set value cells by their key, as one would by hand; a list fills the cells to the right."""
    book = _book(path)
    cells = {}
    for key, value in changes.items():
        sheet, row = cell_of_key(book, key)
        for offset, each in enumerate(value if isinstance(value, list) else [value]):
            cells[sheet.title, f"{get_column_letter(2 + offset)}{row}"] = each
    return typed(path, cells)


def fill_row(path: Path, table: str, place: int, values: dict[str, Any]) -> Path:
    """Fill one row of a table by its column keys; the first row below the header and its examples is 1."""
    sheet, header = cell_of_key(_book(path), table)
    row = header + place
    while sheet.cell(row - place + 1, KEY_COLUMN + 1).value == "example":
        row += 1
    columns = {sheet.cell(header, column).value: get_column_letter(column) for column in range(1, KEY_COLUMN)}
    return typed(path, {(sheet.title, f"{columns[key]}{row}"): value for key, value in values.items()})


_BOOKS: dict[bytes, Any] = {}


def _book(path: Path) -> Any:
    """The form in which to look up where a key stands: typing does not move it, so each is parsed once."""
    content = path.read_bytes()
    if content not in _BOOKS:
        _BOOKS[content] = openpyxl.load_workbook(path)
    return _BOOKS[content]


def typed(path: Path, cells: Mapping[tuple[str, str], Any]) -> Path:
    """Type into cells by sheet and address, straight in the file's parts: parsing and writing it takes 0.7 s."""
    book = _book(path)
    parts = {f"xl/worksheets/sheet{place}.xml": name for place, name in enumerate(book.sheetnames, 1)}

    def change(name: str, content: bytes) -> bytes:
        text = content.decode()
        for (sheet, address), value in cells.items():
            if sheet == parts.get(name):
                pattern = rf'<c r="{address}"( s="\d+")?(?: t="\w+")?(?:/>|>.*?</c>)'
                found = re.search(pattern, text)
                assert found, f"{sheet}!{address} is no cell of the form"
                text = text[: found.start()] + _cell(address, found[1], value) + text[found.end() :]
        return text.encode()

    repacked(path, change)
    _BOOKS[path.read_bytes()] = book
    return path


def _cell(address: str, style: str | None, value: Any) -> str:
    start = f'<c r="{address}"{style or ""}'
    if isinstance(value, str) and value.startswith("="):
        return f"{start}><f>{escape(value[1:])}</f></c>"
    if isinstance(value, str) and value in ERROR_CODES:
        return f'{start} t="e"><v>{value}</v></c>'
    if isinstance(value, str):
        return f'{start} t="inlineStr"><is><t xml:space="preserve">{escape(value)}</t></is></c>'
    if isinstance(value, bool):
        return f'{start} t="b"><v>{int(value)}</v></c>'
    if isinstance(value, int | float):
        return f"{start}><v>{value!r}</v></c>"
    if isinstance(value, datetime.date | datetime.time):
        return f'{start} t="d"><v>{value.isoformat()}</v></c>'
    assert value is None
    return f"{start}/>"


_FORMS: dict[str, bytes] = {}


def form(folder: Path, data: dict[str, Any] | None = None) -> Path:
    """A form of some data, or a blank one; each is written once and then copied."""
    path, key = folder / "site.xlsx", repr(data)
    if key not in _FORMS:
        write_form(path, data)
        _FORMS[key] = path.read_bytes()
    path.write_bytes(_FORMS[key])
    return path


def repacked(path: Path, change: Callable[[str, bytes], bytes] = lambda _, text: text, **added: bytes) -> Path:
    """Rewrite a workbook's parts; `added` parts have their slashes written as two underscores."""
    with zipfile.ZipFile(path) as archive:
        parts = {name: change(name, archive.read(name)) for name in archive.namelist()}
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, text in parts.items():
            archive.writestr(name, text)
        for name, text in added.items():
            archive.writestr(name.replace("__", "/"), text)
    return path
