"""How a cell's content is written where no spreadsheet program formats it: terminal and HTML."""

from __future__ import annotations

import math

from planner.report.document import Cell
from planner.text import option_label, restyled

DECIMALS = {"whole": 0, "one": 1, "two": 2, "three": 3, "money": 0, "price": 2, "year": 0}
NOTHING = "–"


def shown(cell: Cell) -> str:
    """Write a cell's content: a text as it is, a number with the decimals of its kind, or the word for no value."""
    value = cell.value
    if value is None:
        return ""
    if isinstance(value, str):
        return option_label(value)
    number = float(value)
    if not math.isfinite(number):
        return NOTHING if cell.word is None else cell.word
    if cell.kind == "general":
        return restyled(f"{number:.10g}")
    if cell.kind == "year":
        return f"{number:.0f}"
    text = f"{number:,.{DECIMALS.get(cell.kind, 0)}f}"
    return restyled(text.removeprefix("-") if float(text.replace(",", "")) == 0 else text)


def is_number(cell: Cell) -> bool:
    """Tell whether a cell stands to the right, as numbers do."""
    return not isinstance(cell.value, str) and cell.value is not None
