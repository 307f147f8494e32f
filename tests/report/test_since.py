"""A workbook in which an input was changed since its run: the first sheet follows, or says that it does not.

Worked out by the small spreadsheet of the tests; `test_alive.py` asks LibreOffice.
"""

from __future__ import annotations

from typing import Any

import pytest

from planner.report.form.parts import KEY_COLUMN
from tests.report.conftest import Written
from tests.report.spreadsheet import Spreadsheet

TYPED: dict[str, tuple[str, Any, str]] = {
    "nothing": ("", None, "! Recommended on the conditions below: "),
    "target": ("service.demand_met_percent", 90.0, "! Run the study again"),
    "years": ("finance.analysis_period_years", 10.0, "! Run the study again"),
    "prices": ("finance.prices", "nominal", "! Run the study again"),
    "name of a pump": ("pump.name", "Another", "! Run the study again"),
    "text in a rate": ("finance.discount_rate_percent", "five", "! Run the study again"),
    "rate beyond its bounds": ("finance.grant_percent", 170.0, "! Run the study again"),
    "more than the whole": ("finance.loan_percent", 90.0, "! Grant and loan together exceed"),
    "price": ("borehole.price", 20_000.0, "! Prices or rates were changed since the run"),
}


@pytest.mark.parametrize("case", TYPED)
def test_the_first_sheet_follows_or_says_that_it_does_not(case: str, plain: Written) -> None:
    key, value, verdict = TYPED[case]
    cells = {
        sheet.title: {(cell.row, cell.column): cell.value for row in sheet.iter_rows() for cell in row}
        for sheet in plain.formulas
    }
    if key:
        form = cells["Form"]
        row = next(row for (row, column), said in form.items() if column == KEY_COLUMN + 1 and said == key)
        form[row, 2] = value
    book = Spreadsheet(cells)
    shown = [book.value("Answer", row, column) for row, column in cells["Answer"]]
    words = [each for each in shown if isinstance(each, str)]
    assert sum(each.startswith(verdict) for each in words) == 1
    said = [each for each in words if each.startswith(("The next best is", "It is the only option", "With "))]
    numbers = [each for each in shown if isinstance(each, int | float)]
    if case == "nothing":
        assert said
    else:
        assert not said, "what only the run can say has to give way"
        assert bool(numbers) == (case == "price"), "a figure stands beside an input that it does not follow"
