"""The sums of money on the sheet 'Options', each a formula with its value."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import partial
from types import SimpleNamespace

from planner.money.figures import FIGURES
from planner.money.formula import Formula, Operand
from planner.money.returns import NO_REMARK, no_payback, no_rate
from planner.report.sheets.cash import Cash
from planner.report.sheets.labels import COMPONENT_LABELS, COST_LABELS, COST_OF_CAPITAL, OWN_FUNDS, SUPPORT
from planner.report.sheets.returns import ReturnCells
from planner.report.sheets.rows import OptionRows, Row, Value
from planner.report.sheets.simulated import Simulated
from planner.report.style import Kind
from planner.study.compare import OptionResult, Study
from planner.study.ranking import Standing, rank_of

REFERENCE = "reference"


@dataclass(frozen=True)
class MoneyCells:
    """Where the sums of money come from: flows and quantities by option, and the steps of the returns."""

    simulated: Simulated
    cash: Cash
    returns: ReturnCells


def rank_row(study: Study, cells: OptionRows) -> Row:
    """Row of the rank: as `study.ranking` has it, in the order of the run."""
    names = [option.name for option in study.ranked]

    def standing(cell: Callable[[str], Formula]) -> Standing:
        place = Formula("COLUMN", cell("meets"))
        return Standing(cell("meets"), cell("delivered_share"), cell("present_cost"), place)

    def formula(option: OptionResult) -> Operand:
        every = standing(lambda key: Formula.leaf(cells.range(key)))
        return rank_of(standing(lambda key: cells.cell(key, option.name)), every)

    return Row("rank", "Rank", "", "whole", lambda option: float(names.index(option.name) + 1), formula=formula)


@dataclass(frozen=True)
class Figures:
    """Rows of figures of `money.figures.FIGURES`."""

    money: MoneyCells
    cells: OptionRows

    def row(self, key: str, label: str, unit: str, kind: Kind = "money", word: str | None = None) -> Row:
        """Row of a figure."""
        return Row(key, label, unit, kind, lambda option: float(option.life.figures[key]), word, partial(self.of, key))

    def of(self, key: str, option: OptionResult) -> Operand:
        """Formula of a figure; figures that it needs are cells of the sheet 'Options'."""
        cash, simulated = self.money.cash, self.money.simulated
        flows = cash.options[option.name]
        figures = {name: self.cells.cell(name, option.name) for name in FIGURES if name in self.cells.rows}
        o = SimpleNamespace(
            **flows.ranges() | figures,
            start=flows.start(),
            real_discount_rate=cash.real_discount_rate,
            life_years=Formula.leaf(simulated.years),
            people=Formula.leaf(simulated.people),
        )
        return FIGURES[key](o)


def money_rows(currency: str, figures: Figures) -> list[Row]:
    """Rows of costs, worth and financing."""
    row, yearly = figures.row, f"{currency}/year"
    return [
        row("capital_cost", "Build cost", currency),
        row("present_cost", "Present cost", currency),
        *(row(f"{key}_present", f"  {label}", currency) for key, label in COST_LABELS.items()),
        row("equivalent_yearly_cost", "Equivalent yearly cost", yearly),
        row("levelised_cost_per_m3", "Levelised cost of water", f"{currency}/m3", "price", "nothing delivered"),
        row(
            "cost_per_person_year",
            "Yearly cost per person of the first year",
            f"{currency}/person/year",
            "price",
            "no people",
        ),
        row("revenue_present", "Present value of what users pay", currency),
        row("npv", "Net present value", currency),
        row("grant", "Grant", currency),
        row("loan", "Loan", currency),
        row("own_funds", OWN_FUNDS, currency),
        row("owner_present_cost", "Present cost to the owner", currency),
    ]


def component_rows(currency: str, figures: Figures) -> list[Row]:
    """Rows of the components of life-cycle cost, as funders count them."""
    return [
        *(figures.row(key, label, currency) for key, label in COMPONENT_LABELS.items()),
        figures.row("cost_of_capital", COST_OF_CAPITAL, currency),
        Row("support", SUPPORT, "", "word", lambda option: "not entered"),
    ]


def comparison_rows(currency: str, money: MoneyCells, cells: OptionRows) -> list[Row]:
    """Rows of saving, rate and payback against the reference, and of why there is none."""

    def formula(key: str, nothing: str, option: OptionResult) -> Operand:
        if option.comparison is None:
            return Formula.leaf(f'"{nothing}"')
        return money.returns.of(option.name, key, lambda name: cells.cell("present_cost", name))

    def row(key: str, label: str, unit: str, kind: Kind, word: str | None = None) -> Row:
        def of(option: OptionResult) -> Value:
            return REFERENCE if option.comparison is None else float(getattr(option.comparison, key))

        # The savings by year have that name, too.
        own = "saving_present_cost" if key == "saving_present" else key
        return Row(own, label, unit, kind, of, word, partial(formula, key, REFERENCE))

    def remark(key: str, label: str) -> Row:
        def of(option: OptionResult) -> Value:
            return NO_REMARK if option.comparison is None else str(getattr(option.comparison, key)) or NO_REMARK

        return Row(key, label, "", "wrap", of, formula=partial(formula, key, NO_REMARK))

    return [
        row("saving_present", "Saving in present cost (negative: costs more)", currency, "money"),
        row("internal_rate_of_return_percent", "Internal rate of return", "%/year", "one", no_rate()),
        remark("irr_reason", "  why there is none"),
        row("simple_payback_years", "Payback, simple", "years", "one", no_payback()),
        remark("payback_reason", "  remark"),
        row("discounted_payback_years", "Payback, discounted", "years", "one", no_payback()),
        remark("discounted_payback_reason", "  remark"),
    ]
