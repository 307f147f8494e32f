"""The sheet 'Renewals': in which years each line of the bill of quantities is replaced, and what is left at the end."""

from __future__ import annotations

from dataclasses import dataclass

from planner.money.fuel import whole_years
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
    for row, line in bill.lines.items():
        page.put(row, LINE, line.name, "wrap", formula=f"={bill.page.at(row, NAME)}")
        if line.by_hours:
            page.put(row, WHOLE_LIFE, "by hours", "word")
            continue
        life = whole_years(line.life_years)
        page.put(row, WHOLE_LIFE, life, "whole", formula=f"=MAX(1,INT({bill.page.at(row, LIFE)}+0.5))")
        whole = reference(row, WHOLE_LIFE, fixed_column=True)
        left = 1 - (years - (years - 1) // life * life) / life
        formula = f"=1-({simulated.years}-INT(({simulated.years}-1)/{whole})*{whole})/{whole}"
        page.put(row, LEFT, left, "three", formula=formula)
        for year in range(1, years + 1):
            due = float(year < years and year % life == 0)
            column = FIRST_YEAR + year - 1
            if year == years:
                page.put(row, column, 0.0, "money")
            else:
                page.put(row, column, due, "money", formula=f"=IF(MOD({year},{whole})=0,1,0)")
    page.row = max(bill.lines) + 1
    return RenewalCells(page, min(bill.lines), max(bill.lines))
