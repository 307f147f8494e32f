"""Recalculating a workbook with an independent spreadsheet program, and finding its formulas."""

from __future__ import annotations

import html
import re
import shutil
import subprocess
import zipfile
from collections.abc import Iterator, Mapping, Sequence
from contextlib import closing
from functools import cache
from pathlib import Path
from typing import Any

import openpyxl

from planner.report.form.parts import KEY_COLUMN

OFFICE = shutil.which("soffice")
LONGEST_S = 120.0
_CELL = re.compile(r"<c ([^>]*[^/])>(.*?)</c>", re.DOTALL)
_FORMULA = re.compile(r"<f[^>]*>([^<]*)</f>")
_VALUE = re.compile(r"<v>([^<]*)</v>")
_ADDRESS = re.compile(r'\br="([A-Z]+[0-9]+)"')
_FORM_CELL = re.compile(r"'Form'!\$([A-Z]+)\$(\d+)")
_KIND = re.compile(r'\bt="(\w+)"')


def formula_cells(book: Any) -> Iterator[tuple[str, Any]]:
    """Yield (sheet name, cell) of every formula."""
    for sheet in book:
        for row in sheet.iter_rows():
            for cell in row:
                if cell.data_type == "f":
                    yield sheet.title, cell


def cells_with_formulas(path: Path) -> dict[tuple[str, str], tuple[str, float | str | None]]:
    """Formula and stored value of every cell that has a formula, by sheet and address; read from the bare file."""
    found: dict[tuple[str, str], tuple[str, float | str | None]] = {}
    with zipfile.ZipFile(path) as book:
        for name, part in _sheets(book).items():
            for attributes, inner in _CELL.findall(book.read(part).decode()):
                formula = _FORMULA.search(inner)
                if formula is None:
                    continue
                address, kind = _ADDRESS.search(attributes), _KIND.search(attributes)
                assert address is not None
                value = _VALUE.search(inner)
                text = None if value is None else html.unescape(value.group(1))
                number = text is not None and (kind is None or kind.group(1) == "n")
                found[name, address.group(1)] = (html.unescape(formula.group(1)), float(text) if number else text)
    return found


def _sheets(book: zipfile.ZipFile) -> dict[str, str]:
    """Files of a workbook's sheets by their names, which stand in the same order."""
    names = re.findall(r'<sheet name="([^"]*)"', book.read("xl/workbook.xml").decode())
    return {html.unescape(name): f"xl/worksheets/sheet{number}.xml" for number, name in enumerate(names, start=1)}


def without_values(
    path: Path, folder: Path, changes: Mapping[str, float | str] | None = None, name: str | None = None
) -> Path:
    """Save a copy of a workbook without stored values, so that all must be worked out; type other inputs by key."""
    folder.mkdir(parents=True, exist_ok=True)
    copy = folder / (name or path.name)
    typed = {_form_cell(path, key): value for key, value in (changes or {}).items()} if changes else {}
    with zipfile.ZipFile(path) as book, zipfile.ZipFile(copy, "w", zipfile.ZIP_DEFLATED) as bare:
        form = _sheets(book).get("Form")
        for part in book.namelist():
            data = book.read(part)
            if part.startswith("xl/worksheets/sheet"):
                text = re.sub(r"(</f>)<v>[^<]*</v>", r"\1", data.decode())
                for cell, value in typed.items() if part == form else ():
                    text, count = re.subn(
                        rf'<c r="{cell}"( s="\d+")?(?: t="s")?(/>|><v>[^<]*</v></c>)',
                        rf'<c r="{cell}"\1{_typed(value)}</c>',
                        text,
                    )
                    assert count == 1, cell
                data = text.encode()
            bare.writestr(part, data)
    return copy


def _typed(value: float | str) -> str:
    """What is in a cell with some content, from the end of its own attributes."""
    return f' t="inlineStr"><is><t>{value}</t></is>' if isinstance(value, str) else f"><v>{value!r}</v>"


def _form_cell(path: Path, key: str) -> str:
    """Address on the sheet 'Form' that the sheet 'Inputs' takes a key from, or that stands beside the key there."""
    return _form_cells(path)[key]


@cache
def _form_cells(path: Path) -> dict[str, str]:
    with closing(openpyxl.load_workbook(path, read_only=True)) as book:
        rows = list(book["Inputs"].iter_rows(max_col=2, values_only=True))
        keys = [row[KEY_COLUMN] for row in book["Form"].iter_rows(max_col=KEY_COLUMN + 1, values_only=True)]
    found = ((str(key), _FORM_CELL.search(str(formula))) for key, formula in rows)
    beside = {str(key): f"B{row}" for row, key in enumerate(keys, start=1) if key}
    return beside | {key: match.group(1) + match.group(2) for key, match in found if match}


def recalculated(files: Sequence[Path], folder: Path) -> dict[str, Path]:
    """Work out workbooks with LibreOffice; give the new files by name."""
    assert OFFICE is not None
    profile = f"-env:UserInstallation={(folder / 'profile').resolve().as_uri()}"
    out = folder / "recalculated"
    command = [OFFICE, profile, "--headless", "--convert-to", "xlsx", "--outdir", str(out), *map(str, files)]
    subprocess.run(command, check=True, capture_output=True, timeout=LONGEST_S)
    return {file.name: out / file.name for file in files}
