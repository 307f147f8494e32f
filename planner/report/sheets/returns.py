"""The sheet 'Returns': how many rates balance outlay and savings, and when the outlay is recovered."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from types import SimpleNamespace

from planner.money.formula import Formula, Operand, cell_text
from planner.money.returns import RATES, RETURNS, STEPS, base_year, worth_at
from planner.report.sheets.cash import CashCells
from planner.report.sheets.labels import STEP_LABELS
from planner.report.sheets.page import Page, reference
from planner.report.style import Kind
from planner.study.compare import OptionResult, Study

_KINDS: dict[str, Kind] = {
    "outlay": "money", "savers": "whole", "changes": "whole", "ever_behind": "whole", "last_behind": "whole",
    "ever_behind_present": "whole", "last_behind_present": "whole",
}  # fmt: skip
_ROW_OF = {key: place for place, key in enumerate(STEP_LABELS)}


@dataclass(frozen=True)
class ReturnCells:
    """Where the steps stand: row of the first and column of each option, and the flows that they come from."""

    page: Page
    first: int
    columns: dict[str, int]
    cash: dict[str, CashCells]
    years: str
    reference: str

    def of(self, option: str, name: str, figure: Callable[[str], Operand]) -> Operand:
        """Formula of a figure of `money.returns.RETURNS`.

        Parameters
        ----------
        option, name : str
            Option and key of the figure.
        figure : callable
            Gives the cell of the present cost of an option.
        """
        column = self.columns[option]
        steps = {key: Formula.leaf(self.page.at(self.first + row, column)) for key, row in _ROW_OF.items()}
        c = SimpleNamespace(
            **self.cash[option].ranges() | steps,
            life_years=Formula.leaf(self.years),
            present_cost=figure(option),
            reference=SimpleNamespace(present_cost=figure(self.reference)),
        )
        return RETURNS[name](c)


def write_returns(page: Page, study: Study, cash: dict[str, CashCells], years: str) -> ReturnCells:
    """Fill the sheet 'Returns'.

    Parameters
    ----------
    page : Page
        The sheet.
    study : Study
        The finished comparison.
    cash : dict of str to CashCells
        Where the flows stand.
    years : str
        Cell of the years counted.

    Returns
    -------
    ReturnCells
    """
    page.title(
        "Returns",
        f"Steps towards the internal rate of return and the payback against {study.reference}. The savings can have "
        "several rates of no present value; a rate is given only where the table below changes its sign once.",
    )
    names = [option.name for option in study.ranked if option.name != study.reference]
    page.header(["Step", *names])
    page.freeze()
    page.fix_width(0, 34)
    for column in range(1, len(names) + 1):
        page.fix_width(column, 19)
    columns = {name: 1 + place for place, name in enumerate(names)}
    first = page.row
    for key, label in STEP_LABELS.items():
        page.put(first + _ROW_OF[key], 0, label)
    page.row = first + len(STEP_LABELS)
    page.heading(
        "Worth of the savings by rate (fraction per year): in year 0, at negative rates in the last year",
        max(len(names), 1),
    )
    grid = page.row
    for place, rate in enumerate(RATES):
        page.put(grid + place, 0, float(rate), "general")
    for name, column in columns.items():
        _column(page, study.option(name), cash[name], column, first, grid)
    page.row = grid + len(RATES)
    return ReturnCells(page, first, columns, cash, years, study.reference)


def _column(page: Page, option: OptionResult, cash: CashCells, column: int, first: int, grid: int) -> None:
    assert option.comparison is not None
    values, ranges, last = option.comparison.steps, cash.ranges(), grid + len(RATES) - 1

    def part(from_row: int, to_row: int, column: int) -> Formula:
        fixed = column == 0
        ends = (reference(row, column, fixed_column=fixed) for row in (from_row, to_row))
        return Formula.leaf(":".join(ends))

    c = SimpleNamespace(
        **ranges | {key: Formula.leaf(reference(first + row, column)) for key, row in _ROW_OF.items()},
        worth_below=part(grid, last - 1, column),
        worth_above=part(grid + 1, last, column),
        rates_below=part(grid, last - 1, 0),
        rates_above=part(grid + 1, last, 0),
    )
    for key, row in _ROW_OF.items():
        formula = cell_text(STEPS[key](c))
        page.put(first + row, column, float(values[key]), _KINDS.get(key, "general"), formula=formula)
    last_year = cash.last - cash.first
    for place, rate in enumerate(RATES):
        at = Formula.leaf(reference(grid + place, 0, fixed_column=True))
        worth = worth_at(ranges["saving"], at, ranges["years"], base_year(rate, last_year))
        page.put(grid + place, column, float(values["worth"][place]), "money", formula=cell_text(worth))
