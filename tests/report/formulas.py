"""Recalculating a workbook with an independent spreadsheet program, and finding its formulas."""

from __future__ import annotations

import shutil
import subprocess
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any

import openpyxl

OFFICE = shutil.which("soffice")
LONGEST_S = 80.0


def formula_cells(book: Any) -> Iterator[tuple[str, Any]]:
    """Yield (sheet name, cell) of every formula."""
    for sheet in book:
        for row in sheet.iter_rows():
            for cell in row:
                if cell.data_type == "f":
                    yield sheet.title, cell


def without_values(path: Path, folder: Path, changes: dict[str, float] | None = None) -> Path:
    """Save a copy of a workbook without stored values, so that all must be worked out; change inputs by their key."""
    book = openpyxl.load_workbook(path)
    sheet = book["Inputs"]
    rows = {row[0].value: row[1] for row in sheet.iter_rows(max_col=2)}
    for key, value in (changes or {}).items():
        rows[key].value = value
    folder.mkdir(parents=True, exist_ok=True)
    copy = folder / path.name
    book.save(copy)
    return copy


def recalculated(files: Sequence[Path], folder: Path) -> dict[str, Any]:
    """Work out workbooks with LibreOffice and read their values back, by name of file."""
    assert OFFICE is not None
    profile = f"-env:UserInstallation={(folder / 'profile').resolve().as_uri()}"
    out = folder / "recalculated"
    command = [OFFICE, profile, "--headless", "--convert-to", "xlsx", "--outdir", str(out), *map(str, files)]
    subprocess.run(command, check=True, capture_output=True, timeout=LONGEST_S)
    return {file.name: openpyxl.load_workbook(out / file.name, data_only=True) for file in files}
