"""A spreadsheet in small: works out formulas from their text alone, to judge workbooks without a spreadsheet program.

It knows nothing of how the formulas were made. As in a spreadsheet the sign binds closer than a power, powers count
from the left, a comparison gives a truth that SUMPRODUCT takes for a number only after arithmetic, and texts in a range
count as nothing.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Any

import numpy as np
import numpy_financial as npf
from openpyxl.utils import range_boundaries

_TOKEN = re.compile(
    r"""\s*(?:(?P<text>"(?:[^"]|"")*")|(?P<ref>(?:'[^']+'!)?\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?)"""
    r"""|(?P<number>\d+(?:\.\d*)?(?:E[+-]?\d+)?)|(?P<name>[A-Z]+)(?=\()|(?P<sign><>|<=|>=|[-+*/^=<>(),&]))"""
)
_LEVELS = (("=", "<>", "<", ">", "<=", ">="), ("&",), ("+", "-"), ("*", "/"), ("^",))
_APPLY: dict[str, Callable[[Any, Any], Any]] = {
    "=": np.equal,
    "<>": np.not_equal,
    "<": np.less,
    ">": np.greater,
    "<=": np.less_equal,
    ">=": np.greater_equal,
    "+": np.add,
    "-": np.subtract,
    "*": np.multiply,
    "/": np.divide,
    "^": np.power,
}


class Spreadsheet:
    """Cells of a workbook by sheet and (row, column); a text that begins with '=' is a formula."""

    def __init__(self, cells: dict[str, dict[tuple[int, int], Any]]) -> None:
        self._cells = cells
        self._known: dict[tuple[str, int, int], Any] = {}

    def value(self, sheet: str, row: int, column: int) -> Any:
        """Value of a cell; None where it is empty."""
        key = sheet, row, column
        if key not in self._known:
            content = self._cells[sheet].get((row, column))
            formula = isinstance(content, str) and content.startswith("=")
            self._known[key] = self.work_out(content[1:], sheet) if formula else content
        return self._known[key]

    def work_out(self, formula: str, sheet: str) -> Any:
        """Value of a formula that stands on a sheet."""
        with np.errstate(all="ignore"):  # an error in a branch that IF does not take is none
            return _Reader(self, formula, sheet).whole()

    def block(self, reference: str, sheet: str) -> np.ndarray:
        """Values of a range, (rows, columns)."""
        if "!" in reference:
            sheet, reference = reference.rsplit("!", 1)
            sheet = sheet.strip("'")
        left, top, right, bottom = range_boundaries(reference.replace("$", ""))
        rows = [[self.value(sheet, row, at) for at in range(left, right + 1)] for row in range(top, bottom + 1)]
        found = np.empty((bottom - top + 1, right - left + 1), dtype=object)
        found[:] = rows
        return found


class _Reader:
    def __init__(self, book: Spreadsheet, formula: str, sheet: str) -> None:
        self._book, self._sheet, self._place = book, sheet, 0
        self._tokens: list[tuple[str, str]] = []
        place = 0
        while place < len(formula):
            match = _TOKEN.match(formula, place)
            assert match is not None, f"cannot read {formula[place:]!r}"
            self._tokens.append((str(match.lastgroup), match[str(match.lastgroup)]))
            place = match.end()

    def whole(self) -> Any:
        found = self._level(0)
        assert self._place == len(self._tokens), self._tokens[self._place :]
        return _single(found)

    def _peek(self) -> str:
        return self._tokens[self._place][1] if self._place < len(self._tokens) else ""

    def _next(self) -> tuple[str, str]:
        self._place += 1
        return self._tokens[self._place - 1]

    def _level(self, level: int) -> Any:
        if level == len(_LEVELS):
            return self._operand()
        found = self._level(level + 1)
        while self._peek() in _LEVELS[level]:
            sign = self._next()[1]
            right = self._level(level + 1)
            if sign == "&":
                found = f"{_single(found)}{_single(right)}"
            else:
                found = _APPLY[sign](*(_numbers(each) if sign in "+-*/^" else each for each in (found, right)))
        return found

    def _operand(self) -> Any:
        kind, token = self._next()
        if token == "-":
            return -_numbers(self._operand())
        if token == "(":
            found = self._level(0)
            assert self._next()[1] == ")"
            return found
        if kind == "text":
            return token[1:-1].replace('""', '"')
        if kind == "number":
            return float(token)
        if kind == "ref":
            return self._book.block(token, self._sheet)
        return self._function(token)

    def _function(self, name: str) -> Any:
        assert self._next()[1] == "("
        first = self._tokens[self._place][1]
        arguments = [self._level(0)]
        while self._next()[1] == ",":
            arguments.append(self._level(0))
        if name == "IF":
            return arguments[1] if _single(arguments[0]) else arguments[2]
        if name == "COLUMN":
            left, _, right, _ = range_boundaries(first.rsplit("!", 1)[-1].replace("$", ""))
            return np.arange(left, right + 1)[None, :]
        return _FUNCTIONS[name](*arguments)


def _single(value: Any) -> Any:
    return value.ravel()[0] if isinstance(value, np.ndarray) and value.size == 1 else value


def _numbers(value: Any) -> Any:
    """Numbers for arithmetic: truths are 1 and 0, an empty cell is 0; a text makes an error."""
    if isinstance(value, np.ndarray):
        return np.array([0.0 if each is None else float(each) for each in value.ravel()]).reshape(value.shape)
    return float(value)


def _counted(value: Any) -> np.ndarray:
    """Numbers of a range as SUM takes them: neither texts nor truths."""
    flat = np.atleast_1d(np.asarray(value, dtype=object)).ravel()
    return np.array([float(each) if isinstance(each, int | float) and not isinstance(each, bool | np.bool_) else 0.0
                     for each in flat])  # fmt: skip


def _exact(one: Any, other: Any) -> Any:
    """Whether two values, or those of two ranges place by place, are the same as texts; nothing is the empty text."""
    first, second = (np.atleast_1d(np.asarray(each, dtype=object)) for each in (one, other))
    same = [
        str("" if a is None else a) == str("" if b is None else b) for a, b in zip(first.flat, second.flat, strict=True)
    ]
    return np.array(same, dtype=object).reshape(first.shape)


def _index(block: np.ndarray, place: Any) -> Any:
    # Beyond the range is an error, which only matters where IF takes it.
    number = int(_single(place)) - 1
    return block.ravel()[number] if 0 <= number < block.size else np.nan


_FUNCTIONS: dict[str, Callable[..., Any]] = {
    "SUM": lambda *parts: sum(_counted(part).sum() for part in parts),
    "SUMPRODUCT": lambda *parts: float(np.prod([_counted(part) for part in parts], axis=0).sum()),
    "MAX": lambda *parts: max(float(np.max(_numbers(part))) for part in parts),
    "MIN": lambda *parts: min(float(np.min(_numbers(part))) for part in parts),
    "INT": lambda number: np.floor(_numbers(_single(number))),
    "ABS": lambda number: np.abs(_numbers(number)),
    "MOD": lambda number, divisor: np.mod(_numbers(_single(number)), _numbers(_single(divisor))),
    "INDEX": _index,
    "PMT": lambda *terms: float(npf.pmt(*(float(_single(each)) for each in terms))),
    "IRR": lambda flows, guess: float(npf.irr(_counted(flows))),
    "N": lambda value: float(_single(value)) if isinstance(_single(value), int | float) else 0.0,
    "ISBLANK": lambda value: np.array([each is None for each in np.atleast_1d(value).ravel()]).reshape(np.shape(value)),
    "ISNUMBER": lambda value: isinstance(_single(value), int | float),
    "EXACT": lambda one, other: _exact(one, other),
    "COUNTIF": lambda block, word: float(sum(each == word for each in np.atleast_1d(block).ravel())),
    "AND": lambda *conditions: all(bool(_single(each)) for each in conditions),
    "OR": lambda *conditions: any(bool(_single(each)) for each in conditions),
    "CONCATENATE": lambda *parts: "".join(str(_single(each)) for each in parts),
    "SUBSTITUTE": lambda words, old, new: str(_single(words)).replace(old, str(_single(new))),
    "MATCH": lambda wanted, block, _: float(list(np.atleast_1d(block).ravel()).index(_single(wanted)) + 1),
}
