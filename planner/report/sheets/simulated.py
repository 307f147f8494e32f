"""The sheet 'Simulated': what each option does by year, the quantities that the sums of money rest on."""

from __future__ import annotations

from dataclasses import dataclass
from types import SimpleNamespace

import numpy as np
from numpy.typing import NDArray

from planner.money.flows import whole_years
from planner.money.formula import Formula, Operand, cell_text
from planner.money.fuel import AGEING, SERVICED, life_left, wear
from planner.money.tariff import bill_of, part_kwh, yearly_bill
from planner.money.terms import terms_of
from planner.report.sheets.cells import cell_scenario
from planner.report.sheets.inputs import InputCells
from planner.report.sheets.labels import SIMULATED_LABELS
from planner.report.sheets.page import Page, reference
from planner.report.style import Kind
from planner.scenario.sources import Generator, Tariff
from planner.study.compare import OptionResult, Study

Array = NDArray[np.float64]

YEAR = 0
COLUMN_OF = {key: place for place, key in enumerate(SIMULATED_LABELS, start=1)}
FIRST_PART = 1 + len(COLUMN_OF)
_WEAR = (*SERVICED, *AGEING)
_COUNTS = frozenset(("services", "overhauls", "worn", "bought", "age_years", "kept_years"))


@dataclass(frozen=True)
class SimulatedCells:
    """Where the quantities of one option stand: the row of year 1, the bill's column, the generator's life left."""

    page: Page
    first: int
    bill: int
    left: str

    def of(self, year: int, key: str) -> Formula:
        """Cell of a quantity, or of the 'bill', of a life year, counted from 1."""
        column = self.bill if key == "bill" else COLUMN_OF[key]
        return Formula.leaf(self.page.at(self.first + year - 1, column))


@dataclass(frozen=True)
class Simulated:
    """Cells of every option, and of what all share: the years counted and the people served."""

    options: dict[str, SimulatedCells]
    years: str
    people: str


def write_simulated(page: Page, study: Study, inputs: InputCells) -> Simulated:
    """Fill the sheet 'Simulated'.

    Parameters
    ----------
    page : Page
        The sheet.
    study : Study
        The finished comparison.
    inputs : InputCells
        Where the tariff's prices and the generator's lives stand.

    Returns
    -------
    Simulated
    """
    page.title(
        "Simulated quantities",
        "Water, energy, fuel and hours are values of the hourly simulation: they change only with a new run. What the "
        "hours ask of the generator and the grid's bill, at the prices of the first year, are formulas on the sheet "
        "'Inputs'.",
    )
    page.put(page.row, 0, "Years counted", "wrap")
    page.put(page.row, 1, study.scenario.finance.life_years, "whole")
    years = page.at(page.row, 1)
    page.row += 1
    page.put(page.row, 0, "People, first year (0: none)", "wrap")
    page.put(page.row, 1, study.scenario.people or 0, "whole")
    people = page.at(page.row, 1)
    page.row += 1
    names = max((_parts(option) for option in study.ranked), key=len, default=[])
    page.header(["Year", *SIMULATED_LABELS.values(), *names, f"Grid bill ({study.scenario.currency})"])
    page.freeze()
    page.fix_width(YEAR, 16)
    bill = FIRST_PART + len(names)
    return Simulated({option.name: _block(page, option, inputs, bill) for option in study.ranked}, years, people)


def _tariff(option: OptionResult) -> Tariff | None:
    grid = option.scenario.sources.grid
    return grid.tariff if grid is not None and "grid" in option.sources else None


def _parts(option: OptionResult) -> list[str]:
    """Names of the parts of the grid's energy that have a price of their own."""
    tariff = _tariff(option)
    if tariff is None:
        return []
    if tariff.blocks:
        return [f"Grid, block {number} (kWh)" for number in range(1, len(tariff.blocks) + 1)]
    return ["Grid, outside the bands (kWh)", *(f"Grid, {band.name} (kWh)" for band in tariff.bands)]


def _block(page: Page, option: OptionResult, inputs: InputCells, bill: int) -> SimulatedCells:
    page.heading(option.name, bill)
    quantities, tariff = option.quantities, _tariff(option)
    hours = quantities.generator_hours
    terms, cells = (terms_of(own, option.sources) for own in (option.scenario, cell_scenario(option, inputs)))
    columns: dict[str, Array] = dict.fromkeys(COLUMN_OF, np.zeros(len(hours))) | {
        "demand_m3": quantities.demand_m3,
        "delivered_m3": quantities.delivered_m3,
        "fuel_l": quantities.fuel_l,
        "grid_kwh": quantities.grid_kwh.sum(axis=(1, 2)),
        "grid_peaks_kw": quantities.grid_peak_kw.sum(axis=1),
        "hours": hours,
    }
    left = 0.0
    machine = terms.generator
    if machine is not None:
        intervals = machine.service_interval_h, machine.overhaul_interval_h
        worn = wear(hours, machine.life_hours, whole_years(machine.life_years), *intervals)
        columns, left = columns | worn.columns, float(worn.left)
    parts, bills = np.zeros((len(hours), 0)), np.zeros(len(hours))
    if tariff is not None:
        parts = part_kwh(tariff, quantities.grid_kwh)
        bills = yearly_bill(tariff, quantities.grid_kwh, quantities.grid_peak_kw).total
    first, life_formula = page.row, None
    for year in range(1, len(hours) + 1):
        row = page.row
        page.put(row, YEAR, year, "year")
        found: dict[str, Operand] = {}
        if cells.generator is not None:
            y = _wear_of_year(cells.generator, row, year)
            found = {column.key: column.in_year(year, len(hours), y) for column in _WEAR}
            life_formula = cell_text(life_left(y))
        for key, values in columns.items():
            kind: Kind = "whole" if key in _COUNTS else "one"
            page.put(row, COLUMN_OF[key], float(values[year - 1]), kind, formula=cell_text(found.get(key)))
        for place, value in enumerate(parts[year - 1]):
            page.put(row, FIRST_PART + place, float(value), "one")
        if cells.tariff is not None:
            kwh = [Formula.leaf(reference(row, FIRST_PART + place)) for place in range(parts.shape[1])]
            energy, peaks = (Formula.leaf(reference(row, COLUMN_OF[key])) for key in ("grid_kwh", "grid_peaks_kw"))
            due = cell_text(bill_of(cells.tariff, kwh, energy, peaks).total)
            page.put(row, bill, float(bills[year - 1]), "money", formula=due)
        page.row += 1
    page.put(page.row, YEAR, "Generator's life left at the end (share)", "wrap")
    page.put(page.row, COLUMN_OF["bought"], left, "three", formula=life_formula)
    found_cells = SimulatedCells(page, first, bill, page.at(page.row, COLUMN_OF["bought"]))
    page.row += 1
    return found_cells


def _wear_of_year(generator: Generator, row: int, year: int) -> SimpleNamespace:
    """What the definitions of wear are told of one year: cells of its row, and of the row before but in year 1."""

    def of_row(row: int) -> dict[str, Formula]:
        return {key: Formula.leaf(reference(row, column)) for key, column in COLUMN_OF.items()}

    before = of_row(row - 1) if year > 1 else dict.fromkeys(COLUMN_OF, 0.0)
    return SimpleNamespace(
        **of_row(row),
        before=SimpleNamespace(**before),
        life_hours=generator.life_hours,
        whole_life_years=whole_years(generator.life_years),
        service_interval_h=generator.service_interval_h,
        overhaul_interval_h=generator.overhaul_interval_h,
    )
