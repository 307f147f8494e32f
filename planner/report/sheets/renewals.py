"""The sheet 'Renewals': in which years each line of the bill of quantities is replaced, and what is left at the end."""

from __future__ import annotations

from dataclasses import dataclass

from planner.money.flows import renewals, share_left, whole_years
from planner.money.formula import Formula, cell_text
from planner.report.sheets.bill import LIFE, NAME, BillCells
from planner.report.sheets.page import Page, reference
from planner.report.sheets.simulated import Simulated
from planner.study.compare import Study

LINE, WHOLE_LIFE, LEFT, FIRST_YEAR = range(4)


@dataclass(frozen=True)
class RenewalCells:
    """Where renewals stand, in the same rows as the lines of the bill."""

    page: Page
    first: int
    last: int

    def of(self, year: int) -> str:
        """Range of the renewals of a year, counted from 1."""
        return self.page.at(self.first, FIRST_YEAR + year - 1, self.last)

    @property
    def left(self) -> str:
        """Range of the shares of life left at the end."""
        return self.page.at(self.first, LEFT, self.last)


def write_renewals(page: Page, study: Study, bill: BillCells, simulated: Simulated) -> RenewalCells:
    """Fill the sheet 'Renewals', in the rows of the bill of quantities.

    Parameters
    ----------
    page : Page
        The sheet.
    study : Study
        The finished comparison.
    bill : BillCells
        Where the lines and their lives stand.
    simulated : Simulated
        Where the years counted stand.

    Returns
    -------
    RenewalCells
    """
    years = study.scenario.finance.life_years
    page.title(
        "Renewals",
        "1 where a line is replaced at the end of a year: at each multiple of its life in whole years, before the last "
        "year. What running hours wear out is counted on the sheet 'Simulated'.",
    )
    page.row = min(bill.lines) - 1
    page.header(
        ["Line", "Life in whole years", "Share of life left", *(f"Year {year}" for year in range(1, years + 1))]
    )
    page.freeze()
    page.fix_width(LINE, 34)
    counted = Formula.leaf(simulated.years)
    for row, line in bill.lines.items():
        page.put(row, LINE, line.name, "wrap", formula=f"={bill.page.at(row, NAME)}")
        if line.by_hours:
            page.put(row, WHOLE_LIFE, "by hours", "word")
            continue
        life, given = whole_years(line.life_years), Formula.leaf(bill.page.at(row, LIFE))
        whole = Formula.leaf(reference(row, WHOLE_LIFE, fixed_column=True))
        page.put(row, WHOLE_LIFE, life, "whole", formula=cell_text(whole_years(given)))
        page.put(row, LEFT, share_left(life, years), "three", formula=cell_text(share_left(whole, counted)))
        for year in range(1, years + 1):
            due, formula = float(renewals(life, year, years)), cell_text(renewals(whole, year, counted))
            page.put(row, FIRST_YEAR + year - 1, due, "money", formula=formula)
    page.row = max(bill.lines) + 1
    return RenewalCells(page, min(bill.lines), max(bill.lines))
