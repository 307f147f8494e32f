"""One arithmetic for numbers and for spreadsheet cells.

A sum of money is defined once, as a plain function of operands. Given numbers or NumPy arrays it gives the value; given
`Formula` operands it gives a cell's formula. Operators work on both; what they cannot say is in `functions`.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable
from math import isfinite
from typing import Any

import numpy as np

Operand = Any
"""A number, an array of cases, or a `Formula`."""

_RANK = {"=": 1, "<>": 1, "<": 1, ">": 1, "<=": 1, ">=": 1, "+": 2, "-": 2, "*": 3, "/": 3, "^": 4}
_ATOM = 9
_LONGEST_WORD = 255
"""A spreadsheet takes no longer text in one piece."""


def _combined(symbol: str, left: Operand, right: Operand) -> Operand:
    """Join two operands; what adds nothing, multiplies by one or gives nothing is left out."""
    if symbol in "+-" and _is(right, 0):
        return left
    if symbol in "+-" and _is(left, 0):
        return right if symbol == "+" else -right
    if symbol in "*/^" and _is(right, 1):
        return left
    if symbol == "*" and _is(left, 1):
        return right
    if (symbol in "*/" and _is(left, 0)) or (symbol == "*" and _is(right, 0)):
        return 0.0
    return Formula(symbol, left, right)


def _operator(symbol: str) -> tuple[Callable[..., Any], Callable[..., Any]]:
    """An operator, and the same with its operands changed about."""

    def operator(self: Formula, other: Operand) -> Operand:
        return _combined(symbol, self, other)

    def reflected(self: Formula, other: Operand) -> Operand:
        return _combined(symbol, other, self)

    return operator, reflected


class Formula:
    """An operand that stands for cells: a tree of operators and functions over references.

    Parameters
    ----------
    symbol : str
        Operator, name of a spreadsheet function, or '' for a reference.
    parts : tuple
        Operands, or the reference alone; it may be anything hashable, `text` is told how to write it.
    """

    __slots__ = ("parts", "symbol")
    __array_ufunc__ = None

    def __init__(self, symbol: str, *parts: Any) -> None:
        self.symbol, self.parts = symbol, parts

    @classmethod
    def leaf(cls, reference: Hashable) -> Formula:
        """Stand for one cell or one range of cells."""
        return cls("", reference)

    def text(self, address_of: Callable[[Any], str] = str) -> str:
        """Write the expression, without '='.

        Parameters
        ----------
        address_of : callable
            Gives the address of a reference; references that are addresses need none.
        """
        return self._write(address_of)[0]

    def _write(self, address_of: Callable[[Any], str]) -> tuple[str, int]:
        if not self.symbol:
            return address_of(self.parts[0]), _ATOM
        written = [part._write(address_of) if type(part) is Formula else _written(part) for part in self.parts]
        rank = _RANK.get(self.symbol)
        if rank is None:
            return f"{self.symbol}({','.join(text for text, _ in written)})", _ATOM
        if len(written) == 1:
            text, inner = written[0]
            # A spreadsheet binds the sign closer than a power.
            return f"-{text if inner == _ATOM else f'({text})'}", rank
        (left, left_rank), (right, right_rank) = written
        # A power of a power is bracketed on either side: programs differ in which comes first.
        left = f"({left})" if left_rank < rank or left_rank == rank == _RANK["^"] else left
        right = f"({right})" if right_rank <= rank else right
        return f"{left}{self.symbol}{right}", rank

    def __repr__(self) -> str:
        """Write the expression for a developer."""
        return f"Formula({self.text(repr)})"

    def __bool__(self) -> bool:
        """Refuse: no branch of a definition may hang on cells."""
        raise TypeError("a formula is neither true nor false before its cells hold numbers; use `where`")

    __add__, __radd__ = _operator("+")
    __sub__, __rsub__ = _operator("-")
    __mul__, __rmul__ = _operator("*")
    __truediv__, __rtruediv__ = _operator("/")
    __pow__, __rpow__ = _operator("^")
    __lt__, __gt__ = _operator("<")[0], _operator(">")[0]
    __le__, __ge__ = _operator("<=")[0], _operator(">=")[0]

    def __neg__(self) -> Formula:
        """Change the sign."""
        return Formula("-", self)


class Word(str):
    """What a cell shows where there is no number, and the value that NumPy holds in its place."""

    value: float | str

    def __new__(cls, shown: str, value: float | str = np.nan) -> Word:
        """Make a word of what is shown."""
        word = super().__new__(cls, shown)
        word.value = value
        return word


def is_formula(*operands: Operand) -> bool:
    """Whether any of some operands stands for cells."""
    # Plain, as it is asked at every step of the arithmetic.
    for operand in operands:  # noqa: SIM110
        if type(operand) is Formula:
            return True
    return False


def _is(operand: Operand, number: int) -> bool:
    return isinstance(operand, int | float) and operand == number


def _written(part: Any) -> tuple[str, int]:
    """Text of a word or a number, and how closely it binds."""
    if isinstance(part, str):
        if len(part) > _LONGEST_WORD:
            pieces = [part[start : start + _LONGEST_WORD] for start in range(0, len(part), _LONGEST_WORD)]
            return f"CONCATENATE({','.join(_written(piece)[0] for piece in pieces)})", _ATOM
        return '"' + part.replace('"', '""') + '"', _ATOM
    number = float(part)
    if not isfinite(number):
        raise ValueError(f"{number} cannot stand in a formula")
    text = repr(int(number)) if number.is_integer() and abs(number) < 1e15 else repr(number).upper()
    return text, _RANK["-"] if number < 0 else _ATOM
