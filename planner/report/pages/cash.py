"""The page 'Cash flow': money by year of every option, what the owner pays, and the saving against the reference."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import lru_cache
from types import SimpleNamespace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from planner.figures import COST_CATEGORIES, cost_categories
from planner.money.figures import FINANCED, SHOWN
from planner.money.flows import FLOWS
from planner.money.formula import Formula, Operand
from planner.money.functions import total
from planner.money.rates import real_rate
from planner.money.returns import COMPARED
from planner.money.terms import terms_of
from planner.money.yearly import Column as YearColumn
from planner.money.yearly import by_year
from planner.report.document import At, Cell, Column, Kind, Page, Row, Section, Span, Table
from planner.report.pages.bill import CAPITAL, MAINTENANCE, Bill, sum_cell
from planner.report.pages.inputs import Inputs
from planner.report.pages.renewals import LEFT, RENEWALS, year_key
from planner.report.pages.simulated import BILL, life_left_cell, simulated_cell, top_up_cells
from planner.study.compare import OptionResult, Study
from planner.text import text

Array = NDArray[np.float64]

CASH, RATES, YEAR, SUM = "cash", "cash.rates", "year", "sum"
_AFTER_COSTS = (
    "total_cost", "discount_factor", "present_value", "cumulated", "revenue", "grant_received",
    "loan_received", "loan_payment", "owner_cost", "owner_present_value", "price_level", "water_present_m3", "saving",
    "saved", "saving_present", "saved_present",
)  # fmt: skip
"""Columns of the table after those of the costs, in their order."""
_DEFINED = {column.key: column for column in (*FLOWS, *FINANCED, *SHOWN, *COMPARED)}
_OTHERS = frozenset(column.key for column in (*FINANCED, *SHOWN, *COMPARED))
"""Columns that follow from the flows, in the prices of each year."""
_FACTORS = ("discount_factor", "price_level")

DISCOUNT_RATE = Formula.leaf(At(RATES, "discount", "value")) / 100
REAL_DISCOUNT_RATE = Formula.leaf(At(RATES, "real", "value")) / 100
"""Cells of the discount rates [fraction per year] that all options share."""


@dataclass(frozen=True)
class Sources:
    """What the flows are worked out from: the rows of the inputs and those of the bill."""

    inputs: Inputs
    bill: Bill


def _columns(further: tuple[str, ...]) -> tuple[str, ...]:
    return *cost_categories(further), *_AFTER_COSTS


@lru_cache(maxsize=512)
def cash_cells(option: str, year: int, further: tuple[str, ...] = ()) -> Mapping[str, Formula]:
    """Cells of a year by column, year 0 being construction; `further` are kinds of cost beside the usual ones."""
    return {key: Formula.leaf(At(CASH, (option, year), key)) for key in _columns(further)}


def cash_span(study: Study, option: str, column: str) -> Span:
    """Cells of a column from year 0 to the last."""
    return Span(CASH, (option, 0), column, (option, study.scenario.finance.analysis_period_years))


@lru_cache(maxsize=64)
def _ranges(option: str, last_year: int, further: tuple[str, ...]) -> Mapping[str, Formula]:
    columns = {**{key: key for key in _columns(further)}, "years": YEAR}
    return {key: Formula.leaf(Span(CASH, (option, 0), column, (option, last_year))) for key, column in columns.items()}


def cash_ranges(study: Study, option: str) -> Mapping[str, Formula]:
    """Cells of the years 0 to n by column, and of the years themselves, as operands."""
    return _ranges(option, study.scenario.finance.analysis_period_years, study.further_costs)


def cash_page(study: Study, sources: Sources) -> Page:
    """Build the page 'Cash flow', every sum of money a formula with its value.

    Parameters
    ----------
    study : Study
        The finished comparison.
    sources : Sources
        Where inputs, quantities and bill stand.
    """
    currency, finance = study.scenario.currency, study.scenario.finance
    columns = (
        Column(YEAR, text("column.year"), 26),
        *(Column(key, _heading(study, key)) for key in _columns(study.further_costs)),
    )
    rows: list[Row | Section] = []
    for place, option in enumerate(study.ranked, start=1):
        name = "by_time.recommended" if option.name == study.best else "by_time.option"
        rows.append(Section(text(name, place=place, option=option.name)))
        rows += _rows(study, option, sources)
    table = Table(CASH, columns, tuple(rows), freeze=1)
    under = text("cash.under", currency=currency, prices=text(f"cash.prices_{finance.prices}"))
    return Page("cash", text("page.cash"), text("page.cash"), under, (_rates(study, sources.inputs), table), printed=0)


def _heading(study: Study, key: str) -> str:
    currency = study.scenario.currency
    if key in study.further_costs:
        return text("cash.further", category=key, currency=currency)
    return text(f"cash.{key}", currency=currency, reference=study.reference)


def _rates(study: Study, inputs: Inputs) -> Table:
    """Discount rate as given, and without inflation."""
    finance = study.scenario.finance
    inflation = inputs.cell("finance.inflation_percent") / 100
    real = 100 * float(terms_of(study.scenario, ()).real_discount_rate)
    nominal = finance.prices == "nominal"
    without = 100 * (real_rate(DISCOUNT_RATE, inflation) if nominal else DISCOUNT_RATE)
    given = inputs.cell("finance.discount_rate_percent")
    rows = tuple(
        Row(
            key,
            {"label": Cell(text(f"cash.{key}_rate"), "wrap"), "value": Cell.worked_out(value, "two", operand)},
            "strong",
        )
        for key, value, operand in (("discount", finance.discount_rate_percent, given), ("real", real, without))
    )
    return Table(RATES, (Column("label", ""), Column("value", "")), rows, header=False)


def _values(study: Study, option: OptionResult) -> dict[str, Array]:
    """The planner's own figures, by column."""
    columns, against = option.life.shown_columns(), study.option(study.reference).life.columns["total_cost"]
    nothing = np.zeros(study.scenario.finance.analysis_period_years + 1)
    columns = dict.fromkeys(study.further_costs, nothing) | columns
    return columns | by_year(
        COMPARED, {**columns, "reference_total_cost": against}, study.scenario.finance.analysis_period_years
    )


def _rows(study: Study, option: OptionResult, sources: Sources) -> list[Row]:
    values, given = _values(study, option), _given(study, option, sources)
    life_years = study.scenario.finance.analysis_period_years
    defined = {key: YearColumn(key) for key in study.further_costs} | _DEFINED
    defined |= {column.key: column for column in given["running"]}
    rows = []
    for year in range(life_years + 1):
        y = _of_year(study, option, given, year)
        cells = {YEAR: Cell(year, "year")}
        for key in _columns(study.further_costs):
            operand: Operand = defined[key].in_year(year, life_years, y)
            if key not in _OTHERS and year > 0 and given["nominal"]:
                operand = operand * y.price_level
            kind: Kind = "three" if key in _FACTORS else "money"
            cells[key] = Cell.worked_out(float(values[key][..., year]), kind, operand)
        rows.append(Row((option.name, year), cells))
    sums = {YEAR: Cell(text("cash.sum"))}
    ranges = cash_ranges(study, option.name)
    for key in _columns(study.further_costs):
        shown = float(np.sum(values[key])) if defined[key].summed else None
        sums[key] = Cell.worked_out(shown, "money", total(ranges[key]))
    return [*rows, Row((option.name, SUM), sums, "total")]


def _given(study: Study, option: OptionResult, sources: Sources) -> dict[str, Any]:
    """What the definitions are told of an option, the same in every year."""
    terms = terms_of(sources.inputs.scenario_of(option), option.sources)
    terms = replace(terms, discount_rate=DISCOUNT_RATE)
    bill, worn = sources.bill, sources.bill.worn_by_hours(option)
    return vars(terms) | {
        "nominal": terms.nominal,
        "real_discount_rate": REAL_DISCOUNT_RATE,
        "start": SimpleNamespace(**cash_cells(option.name, 0, study.further_costs)),
        "build": sum_cell(CAPITAL, option.name),
        "yearly_upkeep": sum_cell(MAINTENANCE, option.name),
        "line_costs": bill.run(option.name),
        "shares_left": bill.run(LEFT, RENEWALS),
        "renewals_of": lambda year: bill.run(year_key(year), RENEWALS),
        "worn_costs": worn,
        "left_by_hours": [life_left_cell(option.name)] * len(worn),
    }


def _of_year(study: Study, option: OptionResult, given: dict[str, Any], year: int) -> SimpleNamespace:
    """What the definitions are told of a year: its quantities and, as cells of its row, the columns."""
    costs = Span(CASH, (option.name, year), COST_CATEGORIES[0], None, COST_CATEGORIES[-1])
    told = {**cash_cells(option.name, year, study.further_costs), **given}
    told |= {
        "year": Formula.leaf(At(CASH, (option.name, year), YEAR)),
        "before": SimpleNamespace(**cash_cells(option.name, max(year - 1, 0), study.further_costs)),
        "costs": Formula.leaf(costs),
        "reference_total_cost": cash_cells(study.reference, year)["total_cost"],
    }
    if year > 0:

        def quantity(key: str) -> Formula:
            return simulated_cell(option.name, year, key)

        told |= {
            "delivered_m3": quantity("delivered_m3"),
            "top_ups": {
                source: top_up_cells(study, option, year, source)
                if source in study.further_sources
                else SimpleNamespace(fuel_l=quantity("fuel_l"))
                for source in option.sources
            },
            "grid_bill": quantity(BILL),
            "services": quantity("services"),
            "overhauls": quantity("overhauls"),
            "renewals": given["renewals_of"](year),
            "bought_by_hours": [quantity("bought")] * len(given["worn_costs"]),
        }
    return SimpleNamespace(**told)
