"""The sheet 'Cash flow': money by year of every option, what the owner pays, and the saving against the reference."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from planner.money.quantities import belongs
from planner.money.rates import discount_factor
from planner.money.terms import terms_of
from planner.report.sheets.bill import BillCells
from planner.report.sheets.inputs import InputCells
from planner.report.sheets.options import COST_LABELS
from planner.report.sheets.page import Page, reference
from planner.report.sheets.renewals import RenewalCells
from planner.report.sheets.simulated import BOUGHT, DELIVERED, FUEL, OVERHAULS, SERVICES, Simulated
from planner.report.style import Kind, Look
from planner.study.compare import OptionResult, Study

Array = NDArray[np.float64]
_At = Callable[[int], str]

YEAR, FIRST_COST = 0, 1
CATEGORIES = tuple(COST_LABELS)
COLUMN_OF = {name: FIRST_COST + place for place, name in enumerate(CATEGORIES)}
LAST_COST = FIRST_COST + len(CATEGORIES) - 1
TOTAL, FACTOR, PRESENT, CUMULATED, REVENUE, GRANT, LOAN, PAYMENT, OWNER, OWNER_PRESENT = range(
    LAST_COST + 1, LAST_COST + 11
)
LEVEL, WATER, SAVING, SAVED, SAVING_PRESENT, SAVED_PRESENT = range(OWNER_PRESENT + 1, OWNER_PRESENT + 7)
UNSUMMED = (FACTOR, CUMULATED, LEVEL, SAVED, SAVED_PRESENT)


@dataclass(frozen=True)
class CashCells:
    """Where the flows of one option stand: rows of year 0, of the last year and, below it, of the sums."""

    page: Page
    first: int
    last: int
    real_rate: str

    def sum(self, column: int) -> str:
        """Address of a column's sum."""
        return self.page.at(self.last + 1, column)

    def start(self, column: int) -> str:
        """Address of a column's figure of year 0."""
        return self.page.at(self.first, column)

    def range(self, column: int) -> str:
        """A column's figures of the years 0 to n."""
        return self.page.at(self.first, column, self.last)


@dataclass(frozen=True)
class Sources:
    """The sheets that the flows are worked out from."""

    inputs: InputCells
    simulated: Simulated
    bill: BillCells
    renewals: RenewalCells


def write_cash(page: Page, study: Study, sources: Sources) -> dict[str, CashCells]:
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
    dict of str to CashCells
        By name of option.
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
    given = sources.inputs.of_key
    page.put(page.row, 0, "Discount rate (%/year)", "wrap", "strong")
    rate_cell = given["finance.discount_rate_percent"]
    page.put(page.row, 1, finance.discount_rate_percent, "two", "strong", formula=f"={rate_cell}")
    rate = reference(page.row, 1, fixed_row=True, fixed_column=True)
    page.row += 1
    page.put(page.row, 0, "Without inflation (%/year)", "wrap", "strong")
    real = 100 * float(terms_of(study.scenario, ()).real_discount_rate)
    formula = f"=((1+{rate}/100)/(1+{given['finance.inflation_percent']}/100)-1)*100" if nominal else f"={rate}"
    page.put(page.row, 1, real, "two", "strong", formula=formula)
    real_rate = page.at(page.row, 1)
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
            "Price level",
            "Water, present (m3)",
            f"Saving against {study.reference} ({currency})",
            f"Saving, cumulated ({currency})",
            f"Saving, present ({currency})",
            f"Saving, present, cumulated ({currency})",
        ]
    )
    page.freeze()
    page.fix_width(YEAR, 15)
    blocks: dict[str, CashCells] = {}
    row = page.row
    years = finance.life_years + 1
    # A block is a heading, below an empty row but for the first, the years and their sum.
    for place, option in enumerate(study.ranked):
        first = row + 1 if place == 0 else row + 2
        blocks[option.name] = CashCells(page, first, first + years - 1, real_rate)
        row = first + years + 1
    for place, option in enumerate(study.ranked, start=1):
        page.heading(f"{place}. {option.name}{', recommended' if option.name == study.best else ''}", SAVED_PRESENT)
        cells = blocks[option.name]
        if page.row != cells.first:
            raise ValueError(f"the block of {option.name} begins in row {page.row}, not {cells.first}")
        _block(page, study, option, cells, blocks[study.reference], _Flows(study, option, sources, rate, cells))
    return blocks


def _values(study: Study, option: OptionResult) -> dict[int, Array]:
    """The planner's own figures, by column."""
    life, finance = option.life, study.scenario.finance
    years = finance.life_years + 1
    categories = life.flows.costs_by_category()
    costs = np.stack([np.broadcast_to(categories[name], years) for name in CATEGORIES])
    total = costs.sum(axis=0)
    at_start = np.eye(years)[0]
    terms = terms_of(option.scenario, option.sources)
    saving = study.option(study.reference).life.flows.total_cost() - life.flows.total_cost()
    water = np.concatenate([[0.0], option.quantities.delivered_m3])
    return {
        **{FIRST_COST + index: costs[index] for index in range(len(CATEGORIES))},
        TOTAL: total,
        FACTOR: life.discount_factor,
        PRESENT: total * life.discount_factor,
        CUMULATED: np.cumsum(total * life.discount_factor),
        REVENUE: np.broadcast_to(life.flows.revenue, years),
        GRANT: float(life.grant) * at_start,
        LOAN: float(life.loan) * at_start,
        PAYMENT: np.broadcast_to(life.loan_payment, years),
        OWNER: np.broadcast_to(life.owner_flows, years),
        OWNER_PRESENT: life.owner_flows * life.discount_factor,
        LEVEL: terms.price_level if finance.prices == "nominal" else np.ones(years),
        WATER: water * discount_factor(terms.real_discount_rate, finance.life_years),
        SAVING: np.broadcast_to(saving, years),
        SAVED: np.cumsum(np.broadcast_to(saving, years)),
        SAVING_PRESENT: saving * life.discount_factor,
        SAVED_PRESENT: np.cumsum(saving * life.discount_factor),
    }


def _block(
    page: Page, study: Study, option: OptionResult, cells: CashCells, reference_cells: CashCells, flows: _Flows
) -> None:
    columns = _values(study, option)
    for year in range(cells.last - cells.first + 1):
        row = cells.first + year
        page.put(row, YEAR, year, "year")
        formulas = flows.formulas(row, year, reference_cells.first + year)
        for column, values in columns.items():
            kind: Kind = "three" if column in (FACTOR, LEVEL) else "money"
            page.put(row, column, float(values[year]), kind, formula=formulas.get(column))
    look: Look = "total"
    page.put(cells.last + 1, YEAR, "Sum", "text", look)
    for column, values in columns.items():
        if column in UNSUMMED:
            page.put(cells.last + 1, column, None, "money", look)
            continue
        formula = f"=SUM({reference(cells.first, column)}:{reference(cells.last, column)})"
        page.put(cells.last + 1, column, float(values.sum()), "money", look, formula=formula)
    page.row = cells.last + 2


class _Flows:
    """Formulas of one option's flows, mirroring `money.flows` and `money.lifecycle`."""

    def __init__(self, study: Study, option: OptionResult, sources: Sources, rate: str, cells: CashCells) -> None:
        self._option, self._sources = option, sources
        self._rate, self._real, self._first = rate, cells.real_rate, cells.first
        self._years = study.scenario.finance.life_years
        self._nominal = study.scenario.finance.prices == "nominal"
        self._worn = "+".join(sources.bill.worn_by_hours(option))
        self._quantities = sources.simulated.options[option.name]
        costs = enumerate(option.scenario.costs.yearly, start=1)
        self._yearly = "+".join(
            self._cell(f"costs.yearly[{number}].per_year")
            for number, cost in costs
            if belongs(cost.sources, option.sources)
        )

    def _cell(self, key: str) -> str:
        return self._sources.inputs.of(self._option.name, key)

    def formulas(self, row: int, year: int, reference_row: int) -> dict[int, str]:
        """Formulas of one year, by column; those that are nothing by definition are left out."""

        def at(column: int) -> str:
            return reference(row, column)

        first = year == 0

        def cumulated(column: int, of: int) -> str:
            return f"={at(of)}" if first else f"={reference(row - 1, column)}+{at(of)}"

        found = self._start(at) if first else self._later(at, year)
        found |= {
            TOTAL: f"=SUM({at(FIRST_COST)}:{at(LAST_COST)})",
            FACTOR: f"=1/(1+{self._rate}/100)^{at(YEAR)}",
            PRESENT: f"={at(TOTAL)}*{at(FACTOR)}",
            CUMULATED: cumulated(CUMULATED, PRESENT),
            OWNER: f"={at(TOTAL)}-{at(GRANT)}-{at(LOAN)}+{at(PAYMENT)}",
            OWNER_PRESENT: f"={at(OWNER)}*{at(FACTOR)}",
            SAVING: f"={reference(reference_row, TOTAL)}-{at(TOTAL)}",
            SAVED: cumulated(SAVED, SAVING),
            SAVING_PRESENT: f"={at(SAVING)}*{at(FACTOR)}",
            SAVED_PRESENT: cumulated(SAVED_PRESENT, SAVING_PRESENT),
        }
        if self._nominal:
            found[LEVEL] = f"=(1+{self._cell('finance.inflation_percent')}/100)^{at(YEAR)}"
        return found

    def _start(self, at: _At) -> dict[int, str]:
        build = at(COLUMN_OF["construction"])
        return {
            COLUMN_OF["construction"]: f"={self._sources.bill.build(self._option.name)}",
            GRANT: f"={build}*{self._cell('finance.grant_percent')}/100",
            LOAN: f"={build}*{self._cell('finance.loan_percent')}/100",
        }

    def _later(self, at: _At, year: int) -> dict[int, str]:
        name, bill, renewals, quantities = (
            self._option.name,
            self._sources.bill,
            self._sources.renewals,
            self._quantities,
        )
        level = at(LEVEL)
        worn = f"+({self._worn})*{quantities.of(year, BOUGHT)}" if self._worn else ""
        found = {
            COLUMN_OF["replacement"]: f"=(SUMPRODUCT({bill.costs(name)},{renewals.of(year)}){worn})*{level}",
            COLUMN_OF["upkeep"]: f"={bill.upkeep(name)}*{level}",
            REVENUE: f"={quantities.of(year, DELIVERED)}*{self._cell('finance.water_price_per_m3')}*{level}",
            WATER: f"={quantities.of(year, DELIVERED)}/(1+{self._real}/100)^{at(YEAR)}",
            PAYMENT: self._payment(at),
        }
        if self._yearly:
            found[COLUMN_OF["yearly_costs"]] = f"=({self._yearly})*{level}"
        if "grid" in self._option.sources:
            growth = self._cell("sources.grid.tariff.price_growth_percent_per_year")
            bills = quantities.of(year, quantities.bill)
            found[COLUMN_OF["grid"]] = f"={bills}*(1+{growth}/100)^({at(YEAR)}-1)*{level}"
        if "generator" in self._option.sources:
            generator = "sources.generator."
            price = f"({self._cell(generator + 'fuel_price_per_l')}+{self._cell(generator + 'fuel_delivery_per_l')})"
            growth = self._cell(generator + "fuel_price_growth_percent_per_year")
            found[COLUMN_OF["fuel"]] = f"={quantities.of(year, FUEL)}*{price}*(1+{growth}/100)^({at(YEAR)}-1)*{level}"
            found[COLUMN_OF["generator_service"]] = (
                f"=({quantities.of(year, SERVICES)}*{self._cell(generator + 'service_price')}"
                f"+{quantities.of(year, OVERHAULS)}*{self._cell(generator + 'overhaul_price')})*{level}"
            )
        if year == self._years:
            worn = f"+({self._worn})*{quantities.left}" if self._worn else ""
            found[COLUMN_OF["residual"]] = f"=-(SUMPRODUCT({bill.costs(name)},{renewals.left}){worn})*{level}"
        return found

    def _payment(self, at: _At) -> str:
        rate, years = self._cell("finance.loan_rate_percent"), self._cell("finance.loan_years")
        start = reference(self._first, LOAN, fixed_row=True)
        level = f"IF({rate}=0,{start}/{years},-PMT({rate}/100,{years},{start}))"
        deflated = "" if self._nominal else f"/(1+{self._cell('finance.inflation_percent')}/100)^{at(YEAR)}"
        return f"=IF({at(YEAR)}<={years},{level}{deflated},0)"
