"""The sheet 'Cash flow': money by year of every option, and what the owner pays."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from planner.report.sheets.options import COST_LABELS
from planner.report.sheets.page import Page, reference
from planner.report.style import Look
from planner.study.compare import OptionResult, Study

Array = NDArray[np.float64]

YEAR, FIRST_COST = 0, 1
CATEGORIES = tuple(COST_LABELS)
LAST_COST = FIRST_COST + len(CATEGORIES) - 1
TOTAL, FACTOR, PRESENT, CUMULATED, REVENUE, GRANT, LOAN, PAYMENT, OWNER, OWNER_PRESENT = range(
    LAST_COST + 1, LAST_COST + 11
)


@dataclass(frozen=True)
class _Cells:
    """Addresses in one row."""

    row: int

    def at(self, column: int) -> str:
        return reference(self.row, column)


def write_cash(page: Page, study: Study) -> None:
    """Fill the sheet 'Cash flow'.

    Totals, discount factors, present values and the owner's cost are formulas with their values.

    Parameters
    ----------
    page : Page
        The sheet.
    study : Study
        The finished comparison.
    """
    currency, finance = study.scenario.currency, study.scenario.finance
    prices = (
        "constant prices of year 0"
        if finance.prices == "constant"
        else f"nominal prices with inflation of {finance.inflation_percent:g} % a year"
    )
    page.title(
        "Cash flow",
        f"Money in {currency}, {prices}. Year 0 is construction; all else falls at year ends. Costs are positive, the "
        "residual value is negative. What users pay is shown but not taken off the costs.",
    )
    page.put(page.row, 0, "Discount rate (%/year)", "wrap", "strong")
    page.put(page.row, 1, finance.discount_rate_percent, "two", "strong")
    rate = reference(page.row, 1, fixed_row=True, fixed_column=True)
    page.row += 1
    page.header(
        [
            "Year",
            *(f"{label} ({currency})" for label in COST_LABELS.values()),
            f"Total cost ({currency})",
            "Discount factor",
            f"Present value ({currency})",
            f"Cumulated ({currency})",
            f"Paid by users ({currency})",
            f"Grant ({currency})",
            f"Loan ({currency})",
            f"Loan payment ({currency})",
            f"Owner's cost ({currency})",
            f"Owner's present value ({currency})",
        ]
    )
    page.freeze()
    page.fix_width(YEAR, 15)
    for place, option in enumerate(study.ranked, start=1):
        page.heading(f"{place}. {option.name}{', recommended' if option.name == study.best else ''}", OWNER_PRESENT)
        _block(page, option, rate)


def _block(page: Page, option: OptionResult, rate: str) -> None:
    life = option.life
    years = life.discount_factor.shape[-1]
    categories = life.flows.costs_by_category()
    costs = np.stack([np.broadcast_to(categories[name], years) for name in CATEGORIES])
    total = costs.sum(axis=0)
    present = total * life.discount_factor
    at_start = np.eye(years)[0]
    columns: dict[int, Array] = {
        **{FIRST_COST + index: costs[index] for index in range(len(CATEGORIES))},
        TOTAL: total,
        FACTOR: life.discount_factor,
        PRESENT: present,
        CUMULATED: np.cumsum(present),
        REVENUE: np.broadcast_to(life.flows.revenue, years),
        GRANT: float(life.grant) * at_start,
        LOAN: float(life.loan) * at_start,
        PAYMENT: np.broadcast_to(life.loan_payment, years),
        OWNER: np.broadcast_to(life.owner_flows, years),
        OWNER_PRESENT: life.owner_flows * life.discount_factor,
    }
    first, last = page.row, page.row + years - 1
    for year in range(years):
        row = first + year
        page.put(row, YEAR, year, "year")
        formulas = _formulas(_Cells(row), row == first, rate)
        for column, values in columns.items():
            kind = "three" if column == FACTOR else "money"
            page.put(row, column, float(values[year]), kind, formula=formulas.get(column))  # type: ignore[arg-type]
    look: Look = "total"
    page.put(last + 1, YEAR, "Sum", "text", look)
    for column, values in columns.items():
        if column in (FACTOR, CUMULATED):
            page.put(last + 1, column, None, "money", look)
            continue
        formula = f"=SUM({reference(first, column)}:{reference(last, column)})"
        page.put(last + 1, column, float(values.sum()), "money", look, formula=formula)
    page.row = last + 2


def _formulas(cells: _Cells, is_first: bool, rate: str) -> dict[int, str]:
    before = reference(cells.row - 1, CUMULATED)
    return {
        TOTAL: f"=SUM({cells.at(FIRST_COST)}:{cells.at(LAST_COST)})",
        FACTOR: f"=1/(1+{rate}/100)^{cells.at(YEAR)}",
        PRESENT: f"={cells.at(TOTAL)}*{cells.at(FACTOR)}",
        CUMULATED: f"={cells.at(PRESENT)}" if is_first else f"={before}+{cells.at(PRESENT)}",
        OWNER: f"={cells.at(TOTAL)}-{cells.at(GRANT)}-{cells.at(LOAN)}+{cells.at(PAYMENT)}",
        OWNER_PRESENT: f"={cells.at(OWNER)}*{cells.at(FACTOR)}",
    }
