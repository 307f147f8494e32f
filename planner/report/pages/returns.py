"""The page 'Returns': how many rates balance outlay and savings, and when the outlay is recovered."""

from __future__ import annotations

from types import SimpleNamespace

from planner.money.formula import Formula, Operand
from planner.money.returns import RATES, RETURNS, STEPS, base_year, worth_at
from planner.report.document import At, Cell, Column, Kind, Page, Row, Span, Table
from planner.report.pages.cash import cash_ranges
from planner.report.pages.simulated import LIFE_YEARS
from planner.study.compare import Study
from planner.text import text

STEP_TABLE, WORTH = "returns.steps", "returns.worth"
_KINDS: dict[str, Kind] = {
    "outlay": "money", "savers": "whole", "changes": "whole", "ever_behind": "whole", "last_behind": "whole",
    "ever_behind_present": "whole", "last_behind_present": "whole", "slack": "money", "slack_present": "money",
}  # fmt: skip
_LAST = len(RATES) - 1


def return_formula(study: Study, option: str, name: str, own: Formula, of_reference: Formula) -> Operand:
    """Work a figure of `money.returns.RETURNS` out from the cells of this page.

    Parameters
    ----------
    study : Study
        The finished comparison.
    option, name : str
        Option and name of the definition.
    own, of_reference : Formula
        Cells of the life-cycle cost of the option and of the reference.
    """
    c = SimpleNamespace(
        **cash_ranges(study, option),
        **_steps(option),
        life_years=LIFE_YEARS,
        present_cost=own,
        reference=SimpleNamespace(present_cost=of_reference),
    )
    return RETURNS[name](c)


def returns_page(study: Study) -> Page:
    """Build the page 'Returns' from a finished comparison."""
    options = [option for option in study.ranked if option.name != study.reference]
    steps: dict[str, dict[str, Cell]] = {key: {"step": Cell(text(f"returns.{key}"))} for key in STEPS}
    worth = [{"step": Cell(float(rate), "three")} for rate in RATES]
    last_year = study.scenario.finance.analysis_period_years
    for option in options:
        assert option.comparison is not None
        name, values, ranges = option.name, option.comparison.steps, cash_ranges(study, option.name)
        c = SimpleNamespace(
            **ranges,
            **_steps(name),
            worth_below=_part(name, 0, _LAST - 1),
            worth_above=_part(name, 1, _LAST),
            rates_below=_part("step", 0, _LAST - 1),
            rates_above=_part("step", 1, _LAST),
        )
        for key, definition in STEPS.items():
            steps[key][name] = Cell.worked_out(float(values[key]), _KINDS.get(key, "three"), definition(c))
        for place, rate in enumerate(RATES):
            at = Formula.leaf(At(WORTH, place, "step"))
            made = worth_at(ranges["saving"], at, ranges["years"], base_year(rate, last_year))
            worth[place][name] = Cell.worked_out(float(values["worth"][place]), "money", made)
    columns = (Column("step", text("returns.step"), 34), *(Column(option.name, option.name, 19) for option in options))
    blocks = (
        Table(STEP_TABLE, columns, tuple(Row(key, cells) for key, cells in steps.items()), freeze=1),
        Table(
            WORTH,
            columns,
            tuple(Row(place, cells) for place, cells in enumerate(worth)),
            heading=text("returns.worth"),
            header=False,
        ),
    )
    under = text("returns.under", reference=study.reference)
    return Page("returns", text("page.returns"), text("page.returns"), under, blocks, printed=0)


def _steps(option: str) -> dict[str, Formula]:
    return {key: Formula.leaf(At(STEP_TABLE, key, option)) for key in STEPS}


def _part(column: str, first: int, last: int) -> Formula:
    return Formula.leaf(Span(WORTH, first, column, last))
