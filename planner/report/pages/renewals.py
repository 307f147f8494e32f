"""The page 'Renewals': in which years each line of the bill of quantities is replaced, and what is left at the end."""

from __future__ import annotations

from planner.money.flows import renewals, share_left, whole_years
from planner.money.formula import Formula
from planner.report.document import At, Cell, Column, Page, Row, Section, Table
from planner.report.pages.bill import BILL, Bill, Entry, group_label, subtotal_key
from planner.report.pages.simulated import LIFE_YEARS
from planner.study.compare import Study
from planner.text import text

RENEWALS, LEFT = "renewals", "left"


def renewals_page(study: Study, bill: Bill) -> Page:
    """Build the page 'Renewals', in the rows of the bill of quantities.

    Parameters
    ----------
    study : Study
        The finished comparison.
    bill : Bill
        The rows of the bill.
    """
    years = study.scenario.finance.analysis_period_years
    columns = (
        Column("line", text("bill.line"), 34),
        Column("life", text("renewals.life")),
        Column(LEFT, text("renewals.left")),
        *(Column(year_key(year), text("by_time.year", year=year)) for year in range(1, years + 1)),
    )
    rows: list[Row | Section] = []
    for group, entries in bill.groups.items():
        # An empty row stands in the place of the bill's subtotal, so that runs of cells of both are alike.
        rows += [Section(group_label(group)), *(_row(entry, years) for entry in entries), Row(subtotal_key(group), {})]
    table = Table(RENEWALS, columns, tuple(rows[:-1]), freeze=1)
    return Page("renewals", text("page.renewals"), text("page.renewals"), text("renewals.under"), (table,), printed=0)


def year_key(year: int) -> str:
    """Key of the column of a life year, counted from 1."""
    return f"year_{year}"


def _row(entry: Entry, years: int) -> Row:
    line, row = entry.line, entry.number
    cells = {"line": Cell(line.label, "wrap", formula=Formula.leaf(At(BILL, row, "line")))}
    if line.by_hours:
        cells["life"] = Cell(text("renewals.by_hours"), "word")
        return Row(row, cells)
    life, whole = whole_years(line.life_years), Formula.leaf(At(RENEWALS, row, "life"))
    cells["life"] = Cell.worked_out(float(life), "whole", whole_years(Formula.leaf(At(BILL, row, "life"))))
    cells[LEFT] = Cell.worked_out(float(share_left(life, years)), "three", share_left(whole, LIFE_YEARS))
    for year in range(1, years + 1):
        due = float(renewals(life, year, years))
        cells[year_key(year)] = Cell.worked_out(due, "money", renewals(whole, year, LIFE_YEARS))
    return Row(row, cells)
