"""Find, fill and break cells of a form the way a person or a careless program would."""

from __future__ import annotations

import zipfile
from collections.abc import Callable
from pathlib import Path
from typing import Any

import openpyxl

from planner.report.form.parts import KEY_COLUMN
from planner.report.form.sheets import write_form

EXAMPLES = sorted(Path("scenarios").glob("*.toml"))


def cell_of_key(book: Any, key: str) -> tuple[Any, int]:
    """Sheet and row on which a key stands in the key column."""
    for sheet in book.worksheets:
        for row in range(1, sheet.max_row + 1):
            if sheet.cell(row, KEY_COLUMN + 1).value == key:
                return sheet, row
    raise AssertionError(f"{key} has no row")


def edited(path: Path, changes: dict[str, Any]) -> Path:
    """Set value cells by their key, as one would by hand; a list fills the cells to the right."""
    book = openpyxl.load_workbook(path)
    for key, value in changes.items():
        sheet, row = cell_of_key(book, key)
        for offset, each in enumerate(value if isinstance(value, list) else [value]):
            sheet.cell(row, 2 + offset).value = each
    book.save(path)
    return path


def fill_row(path: Path, table: str, place: int, values: dict[str, Any]) -> Path:
    """Fill one row of a table by its column keys; the first row below the header and its examples is 1."""
    book = openpyxl.load_workbook(path)
    sheet, header = cell_of_key(book, table)
    row = header + place
    while sheet.cell(row - place + 1, KEY_COLUMN + 1).value == "example":
        row += 1
    columns = {sheet.cell(header, column).value: column for column in range(1, KEY_COLUMN)}
    for key, value in values.items():
        sheet.cell(row, columns[key]).value = value
    book.save(path)
    return path


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
