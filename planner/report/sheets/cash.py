"""The sheet 'Cash flow': money by year of every option, what the owner pays, and the saving against the reference."""

from __future__ import annotations

from dataclasses import dataclass, replace
from types import SimpleNamespace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from planner.money.figures import FINANCED, SHOWN
from planner.money.flows import CATEGORIES, FLOWS
from planner.money.formula import Formula, Operand, cell_text
from planner.money.functions import total
from planner.money.rates import real_rate
from planner.money.returns import COMPARED
from planner.money.terms import terms_of
from planner.money.yearly import by_year
from planner.report.sheets.bill import BillCells
from planner.report.sheets.cells import cell_scenario
from planner.report.sheets.inputs import InputCells
from planner.report.sheets.labels import COLUMN_LABELS
from planner.report.sheets.page import Page, reference
from planner.report.sheets.renewals import RenewalCells
from planner.report.sheets.simulated import Simulated
from planner.report.style import Kind
from planner.study.compare import OptionResult, Study

Array = NDArray[np.float64]

YEAR = 0
COLUMN_OF = {key: place for place, key in enumerate(COLUMN_LABELS, start=1)}
_COLUMNS = {column.key: column for column in (*FLOWS, *FINANCED, *SHOWN, *COMPARED)}
_FLOWS = frozenset(column.key for column in FLOWS)
_FACTORS = ("discount_factor", "price_level")


@dataclass(frozen=True)
class CashCells:
    """Where the flows of one option stand: rows of year 0, of the last year and, below it, of the sums."""

    page: Page
    first: int
    last: int

    def start(self) -> SimpleNamespace:
        """Cells of year 0, by column."""
        return SimpleNamespace(**{key: Formula.leaf(self.page.at(self.first, at)) for key, at in COLUMN_OF.items()})

    def ranges(self) -> dict[str, Formula]:
        """Ranges of the years 0 to n by column, and of the years themselves."""
        columns = COLUMN_OF | {"years": YEAR}
        return {key: Formula.leaf(self.page.at(self.first, at, self.last)) for key, at in columns.items()}


@dataclass(frozen=True)
class Cash:
    """Cells of every option, and the discount rates [fraction per year] that all share."""

    options: dict[str, CashCells]
    discount_rate: Formula
    real_discount_rate: Formula


@dataclass(frozen=True)
class Sources:
    """The sheets that the flows are worked out from."""

    inputs: InputCells
    simulated: Simulated
    bill: BillCells
    renewals: RenewalCells


def write_cash(page: Page, study: Study, sources: Sources) -> Cash:
    """Fill the sheet 'Cash flow'.

    Every sum of money is a formula with its value.

    Parameters
    ----------
    page : Page
        The sheet.
    study : Study
        The finished comparison.
    sources : Sources
        Where inputs, quantities and bill stand.

    Returns
    -------
    Cash
    """
    currency, finance = study.scenario.currency, study.scenario.finance
    nominal = finance.prices == "nominal"
    prices = "nominal prices, inflation as on the sheet 'Inputs'" if nominal else "constant prices of year 0"
    page.title(
        "Cash flow",
        f"Money in {currency}, {prices}. Year 0 is construction; all else falls at year ends. Costs are positive, the "
        "residual value is negative. What users pay is shown but not taken off the costs. Options stand in the order "
        "of the run.",
    )
    given = {key: Formula.leaf(cell) for key, cell in sources.inputs.of_key.items()}
    rate = given["finance.discount_rate_percent"]
    discount = _rate(page, "Discount rate (%/year)", finance.discount_rate_percent, rate)
    inflation = given["finance.inflation_percent"] / 100
    real = 100 * float(terms_of(study.scenario, ()).real_discount_rate)
    without = real_rate(discount, inflation) * 100 if nominal else discount * 100
    real_discount = _rate(page, "Without inflation (%/year)", real, without)
    labels = (label.format(currency=currency, reference=study.reference) for label in COLUMN_LABELS.values())
    page.header(["Year", *labels])
    page.freeze()
    page.fix_width(YEAR, 15)
    blocks: dict[str, CashCells] = {}
    row = page.row
    years = finance.life_years + 1
    # A block is a heading, below an empty row but for the first, the years and their sum.
    for place, option in enumerate(study.ranked):
        first = row + 1 if place == 0 else row + 2
        blocks[option.name] = CashCells(page, first, first + years - 1)
        row = first + years + 1
    cash = Cash(blocks, discount, real_discount)
    for place, option in enumerate(study.ranked, start=1):
        recommended = ", recommended" if option.name == study.best else ""
        page.heading(f"{place}. {option.name}{recommended}", len(COLUMN_OF))
        if page.row != blocks[option.name].first:
            raise ValueError(f"the block of {option.name} begins in row {page.row}, not {blocks[option.name].first}")
        _block(page, study, option, cash, sources)
    return cash


def _rate(page: Page, label: str, value: float, formula: Operand) -> Formula:
    """Write a rate in percent per year; return it as a fraction."""
    page.put(page.row, 0, label, "wrap", "strong")
    page.put(page.row, 1, value, "two", "strong", formula=cell_text(formula))
    page.row += 1
    fraction: Formula = Formula.leaf(page.at(page.row - 1, 1)) / 100
    return fraction


def _values(study: Study, option: OptionResult) -> dict[str, Array]:
    """The planner's own figures, by column."""
    columns, against = option.life.shown_columns(), study.option(study.reference).life.columns["total_cost"]
    return columns | by_year(COMPARED, {**columns, "reference_total_cost": against}, study.scenario.finance.life_years)


def _block(page: Page, study: Study, option: OptionResult, cash: Cash, sources: Sources) -> None:
    values, cells = _values(study, option), cash.options[option.name]
    life_years, given = study.scenario.finance.life_years, _given(option, cash, sources)
    for year in range(life_years + 1):
        row = cells.first + year
        page.put(row, YEAR, year, "year")
        y = _of_year(study, option, cash, sources, given, year)
        for key, at in COLUMN_OF.items():
            formula = _COLUMNS[key].in_year(year, life_years, y)
            if key in _FLOWS and year > 0 and given["nominal"]:
                formula = formula * y.price_level
            kind: Kind = "three" if key in _FACTORS else "money"
            page.put(row, at, float(values[key][..., year]), kind, formula=cell_text(formula))
    row = cells.last + 1
    page.put(row, YEAR, "Sum", "text", "total")
    for key, at in COLUMN_OF.items():
        shown = float(np.sum(values[key])) if _COLUMNS[key].summed else None
        summed = Formula.leaf(f"{reference(cells.first, at)}:{reference(cells.last, at)}")
        page.put(row, at, shown, "money", "total", formula=cell_text(total(summed)))
    page.row = row + 1


def _given(option: OptionResult, cash: Cash, sources: Sources) -> dict[str, Any]:
    """What the definitions are told of an option, the same in every year."""
    terms = terms_of(cell_scenario(option, sources.inputs), option.sources)
    terms = replace(terms, discount_rate=cash.discount_rate)
    bill, worn = sources.bill, [Formula.leaf(cell) for cell in sources.bill.worn_by_hours(option)]
    return vars(terms) | {
        "nominal": terms.nominal,
        "real_discount_rate": cash.real_discount_rate,
        "start": cash.options[option.name].start(),
        "build": Formula.leaf(bill.build(option.name)),
        "yearly_upkeep": Formula.leaf(bill.upkeep(option.name)),
        "line_costs": Formula.leaf(bill.costs(option.name)),
        "shares_left": Formula.leaf(sources.renewals.left),
        "worn_costs": worn,
        "left_by_hours": [Formula.leaf(sources.simulated.options[option.name].left)] * len(worn),
    }


def _of_year(
    study: Study, option: OptionResult, cash: Cash, sources: Sources, given: dict[str, Any], year: int
) -> SimpleNamespace:
    """What the definitions are told of a year: its quantities and, as cells of its row, the columns."""
    cells, against = cash.options[option.name], cash.options[study.reference]
    row = cells.first + year

    def of_row(row: int) -> dict[str, Formula]:
        return {key: Formula.leaf(reference(row, at)) for key, at in COLUMN_OF.items()}

    costs = [COLUMN_OF[name] for name in CATEGORIES]
    told = of_row(row) | given
    told |= {
        "year": Formula.leaf(reference(row, YEAR)),
        "before": SimpleNamespace(**of_row(row - 1)),
        "costs": Formula.leaf(f"{reference(row, min(costs))}:{reference(row, max(costs))}"),
        "reference_total_cost": Formula.leaf(reference(against.first + year, COLUMN_OF["total_cost"])),
    }
    if year > 0:
        quantities = sources.simulated.options[option.name]
        burns, takes = "generator" in option.sources, "grid" in option.sources
        told |= {
            "delivered_m3": quantities.of(year, "delivered_m3"),
            "grid_bill": quantities.of(year, "bill") if takes else 0.0,
            "renewals": Formula.leaf(sources.renewals.of(year)),
            "bought_by_hours": [quantities.of(year, "bought")] * len(given["worn_costs"]),
        }
        told |= {key: quantities.of(year, key) if burns else 0.0 for key in ("fuel_l", "services", "overhauls")}
    return SimpleNamespace(**told)
