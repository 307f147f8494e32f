"""The sheet 'Returns': how many rates balance outlay and savings, and when the outlay is recovered."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from planner.report.sheets.cash import SAVED, SAVED_PRESENT, SAVING, SAVING_PRESENT, YEAR, CashCells
from planner.report.sheets.page import Page, reference
from planner.report.style import Kind
from planner.study.compare import OptionResult, Study

Array = NDArray[np.float64]

RATES = np.round(
    np.concatenate([np.linspace(-0.98, -0.52, 24), np.arange(-0.5, 0.6, 0.02), np.geomspace(0.61, 1000.0, 25)]), 6
)
"""Rates at which the net present value of the savings is worked out; a sign changed between two is one rate."""
LABELS = (
    "Saving in year 0",
    "Rounding, taken as nothing",
    "Rounding, discounted",
    "Years that save",
    "Rates that balance",
    "Rate below the first",
    "Ever behind (1: yes)",
    "Last year end behind",
    "Ever behind, discounted",
    "Last year end behind, discounted",
)
OUTLAY, SLACK, SLACK_PRESENT, SAVERS, CHANGES, GUESS, EVER, LAST, EVER_PRESENT, LAST_PRESENT = range(len(LABELS))


@dataclass(frozen=True)
class ReturnCells:
    """Where the steps stand: row of the first and column of each option."""

    page: Page
    first: int
    columns: dict[str, int]

    def of(self, option: str, step: int) -> str:
        """Absolute address of a step of an option."""
        return self.page.at(self.first + step, self.columns[option])


def write_returns(page: Page, study: Study, cash: dict[str, CashCells]) -> ReturnCells:
    """Fill the sheet 'Returns'.

    Parameters
    ----------
    page : Page
        The sheet.
    study : Study
        The finished comparison.
    cash : dict of str to CashCells
        Where the flows stand.

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
    for step, label in enumerate(LABELS):
        page.put(first + step, 0, label)
    page.row = first + len(LABELS)
    page.heading(
        "Worth of the savings by rate (fraction per year): in year 0, at negative rates in the last year",
        max(len(names), 1),
    )
    grid = page.row
    for place, rate in enumerate(RATES):
        page.put(grid + place, 0, float(rate), "general")
    for name, column in columns.items():
        _column(page, study.option(name), study, cash[name], column, first, grid)
    page.row = grid + len(RATES)
    return ReturnCells(page, first, columns)


def _column(
    page: Page, option: OptionResult, study: Study, cash: CashCells, column: int, first: int, grid: int
) -> None:
    saving = study.option(study.reference).life.flows.total_cost() - option.life.flows.total_cost()
    present = saving * option.life.discount_factor
    when = np.arange(len(saving))
    last_year = len(when) - 1
    # At negative rates present values grow beyond all bounds; the sign of the worth in the last year is the same.
    npv = (saving * (1 + RATES[:, None]) ** (np.where(RATES < 0, last_year, 0)[:, None] - when)).sum(axis=1)
    signs = np.sign(npv)
    changed = np.flatnonzero(signs[1:] != signs[:-1])
    slack, slack_present = 1e-9 * np.abs(saving).sum(), 1e-9 * np.abs(present).sum()
    years = cash.range(YEAR)

    def own(step: int) -> str:
        return reference(first + step, column)

    def behind(flows: Array, least: float) -> tuple[float, float]:
        late = np.flatnonzero(np.cumsum(flows) < -least)
        return float(len(late) > 0), float(late[-1]) if len(late) else 0.0

    here = [reference(row, column) for row in (grid, grid + len(RATES) - 2, grid + 1, grid + len(RATES) - 1)]
    rates = f"{reference(grid, 0, fixed_column=True)}:{reference(grid + len(RATES) - 2, 0, fixed_column=True)}"
    differ = f"(SIGN({here[0]}:{here[1]})<>SIGN({here[2]}:{here[3]}))"
    steps: dict[int, tuple[float, Kind, str]] = {
        OUTLAY: (float(saving[0]), "money", f"={cash.start(SAVING)}"),
        SLACK: (slack, "general", f"=0.000000001*SUMPRODUCT(ABS({cash.range(SAVING)}))"),
        SLACK_PRESENT: (slack_present, "general", f"=0.000000001*SUMPRODUCT(ABS({cash.range(SAVING_PRESENT)}))"),
        SAVERS: (
            float((saving > slack).sum()),
            "whole",
            f"=SUMPRODUCT(({cash.range(SAVING)}>{own(SLACK)})*1)",
        ),
        CHANGES: (float(len(changed)), "whole", f"=SUMPRODUCT({differ}*1)"),
        # Where the sign changes once, the sum picks the rate before the change.
        GUESS: (float(RATES[changed].sum()), "general", f"=SUMPRODUCT({differ}*{rates})"),
    }
    for ever, last, flows, least, saved, slack_step in (
        (EVER, LAST, saving, slack, SAVED, SLACK),
        (EVER_PRESENT, LAST_PRESENT, present, slack_present, SAVED_PRESENT, SLACK_PRESENT),
    ):
        was, year = behind(flows, least)
        late = f"({cash.range(saved)}<-{own(slack_step)})"
        steps[ever] = (was, "whole", f"=IF(SUMPRODUCT({late}*1)>0,1,0)")
        steps[last] = (year, "whole", f"=SUMPRODUCT(MAX({late}*{years}))")
    for step, (value, kind, formula) in steps.items():
        page.put(first + step, column, value, kind, formula=formula)
    for place, value in enumerate(npv):
        rate = reference(grid + place, 0, fixed_column=True)
        base = last_year if RATES[place] < 0 else 0
        formula = f"=SUMPRODUCT({cash.range(SAVING)}*(1+{rate})^({base}-{years}))"
        page.put(grid + place, column, float(value), "money", formula=formula)
