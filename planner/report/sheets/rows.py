"""Rows of the sheet 'Options': one figure of every option each."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from planner.money.formula import Formula, Operand
from planner.report.sheets.page import Page
from planner.report.style import Kind
from planner.study.compare import OptionResult

FIRST_OPTION = 2
Value = float | str | None


@dataclass(frozen=True)
class Row:
    """One figure: key, label, unit, format, its value for an option, the word for no value, and its formula."""

    key: str
    label: str
    unit: str
    kind: Kind
    of: Callable[[OptionResult], Value]
    word: str | None = None
    formula: Callable[[OptionResult], Operand] | None = None


@dataclass(frozen=True)
class OptionRows:
    """Where the figures stand: row of each key, 'option' being the header, and the columns in the order of the run."""

    page: Page
    rows: dict[str, int]
    columns: dict[str, int]

    def range(self, key: str) -> str:
        """Range of a figure of all options."""
        row = self.rows[key]
        return self.page.at(row, FIRST_OPTION, row, FIRST_OPTION + len(self.columns) - 1)

    def values(self, key: str) -> list[Any]:
        """The same as a chart wants it."""
        row = self.rows[key]
        return self.page.range_of(row, FIRST_OPTION, row, FIRST_OPTION + len(self.columns) - 1)

    def cell(self, key: str, option: str) -> Formula:
        """Cell of a figure of an option."""
        return Formula.leaf(self.page.at(self.rows[key], self.columns[option]))
