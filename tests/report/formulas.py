"""A small evaluator of the workbook's formulas, so that each stored value can be checked against its formula."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from typing import Any

from openpyxl.utils import range_boundaries

_RANGE = re.compile(r"\$?([A-Z]+)\$?(\d+):\$?([A-Z]+)\$?(\d+)")
_CELL = re.compile(r"\$?([A-Z]+)\$?(\d+)(?![\d(])")


def numbers(cells: list[Any]) -> list[float]:
    """Take the numbers among some values, as SUM and MAX do."""
    return [value for value in cells if isinstance(value, int | float)]


def product(first: list[Any], second: list[Any]) -> float:
    """SUMPRODUCT: texts and empty cells count as nothing."""
    pairs = zip(first, second, strict=True)
    return sum(a * b for a, b in pairs if isinstance(a, int | float) and isinstance(b, int | float))


FUNCTIONS: dict[str, Callable[..., float]] = {
    "SUM": lambda cells: sum(numbers(cells)),
    "MAX": lambda cells: max(numbers(cells)),
    "SUMPRODUCT": product,
}


def evaluate(formula: str, sheet: Any) -> float:
    """Work a formula out from the stored values of its sheet."""
    names: dict[str, Any] = dict(FUNCTIONS)

    def keep(value: Any) -> str:
        name = f"v{len(names)}"
        names[name] = value
        return name

    def cells(match: re.Match[str]) -> str:
        left, top, right, bottom = range_boundaries(match.group(0).replace("$", ""))
        rows = sheet.iter_rows(min_row=top, max_row=bottom, min_col=left, max_col=right, values_only=True)
        return keep([value for row in rows for value in row])

    def cell(match: re.Match[str]) -> str:
        return keep(sheet[f"{match.group(1)}{match.group(2)}"].value)

    text = _RANGE.sub(cells, formula.removeprefix("="))
    text = _CELL.sub(cell, text).replace("^", "**")
    return float(eval(text, {"__builtins__": {}}, names))


def formula_cells(book: Any) -> Iterator[tuple[str, Any]]:
    """Yield (sheet name, cell) of every formula."""
    for sheet in book:
        for row in sheet.iter_rows():
            for cell in row:
                if cell.data_type == "f":
                    yield sheet.title, cell
