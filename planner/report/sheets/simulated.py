"""The sheet 'Simulated': what each option does by year, the quantities that the sums of money rest on."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from planner.money.fuel import overhauls_due, replacement_by_hours, times_due
from planner.money.tariff import yearly_bill
from planner.report.sheets.inputs import InputCells
from planner.report.sheets.page import Page, reference
from planner.report.style import Kind
from planner.scenario.sources import Tariff
from planner.study.compare import OptionResult, Study

Array = NDArray[np.float64]

YEAR, DEMAND, DELIVERED, HOURS, FUEL, SERVICES, OVERHAULS, BOUGHT, GRID, PEAKS, FIRST_PART = range(11)


@dataclass(frozen=True)
class SimulatedCells:
    """Where the quantities of one option stand: the row of year 1, the bill's column, the generator's life left."""

    page: Page
    first: int
    bill: int
    left: str

    def of(self, year: int, column: int) -> str:
        """Absolute address of a quantity of a life year, counted from 1."""
        return self.page.at(self.first + year - 1, column)


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
        Where the tariff's prices stand.

    Returns
    -------
    Simulated
    """
    currency = study.scenario.currency
    page.title(
        "Simulated quantities",
        "Values from the hourly simulation, not formulas: they change only with a new run. The last column prices the "
        "grid's energy by the tariff on the sheet 'Inputs', at the prices of the first year.",
    )
    page.put(page.row, 0, "Years counted", "wrap")
    page.put(page.row, 1, study.scenario.finance.life_years, "whole")
    years = page.at(page.row, 1)
    page.row += 1
    page.put(page.row, 0, "People, first year", "wrap")
    page.put(page.row, 1, "none" if study.scenario.people is None else study.scenario.people, "whole")
    people = page.at(page.row, 1)
    page.row += 1
    parts = max((len(_parts(option)) for option in study.options), default=0)
    names = next((_parts(option) for option in study.ranked if len(_parts(option)) == parts), [])
    page.header(
        [
            "Year",
            "Demand (m3)",
            "Delivered (m3)",
            "Generator (h)",
            "Fuel (L)",
            "Services",
            "Overhauls",
            "Generators replaced",
            "Grid (kWh)",
            "Sum of monthly peaks (kW)",
            *names,
            f"Grid bill ({currency})",
        ]
    )
    page.freeze()
    page.fix_width(YEAR, 16)
    bill = FIRST_PART + parts
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


def _part_kwh(tariff: Tariff, kwh: Array) -> Array:
    """Yearly energy by band or block, (n, parts), of energy by month and band, (n, 12, bands)."""
    if not tariff.blocks:
        return np.asarray(kwh.sum(axis=1))
    monthly, low, parts = kwh.sum(axis=-1), 0.0, []
    for block in tariff.blocks:
        high = np.inf if block.up_to_kwh_month is None else block.up_to_kwh_month
        parts.append(np.clip(monthly - low, 0.0, high - low).sum(axis=-1))
        low = high
    return np.stack(parts, axis=-1)


def _block(page: Page, option: OptionResult, inputs: InputCells, bill: int) -> SimulatedCells:
    page.heading(option.name, bill)
    quantities, tariff = option.quantities, _tariff(option)
    hours = quantities.generator_hours
    none = np.zeros(len(hours))
    columns: dict[int, Array] = {
        DEMAND: quantities.demand_m3,
        DELIVERED: quantities.delivered_m3,
        HOURS: hours,
        FUEL: quantities.fuel_l,
        SERVICES: none,
        OVERHAULS: none,
        BOUGHT: none,
        GRID: quantities.grid_kwh.sum(axis=(1, 2)),
        PEAKS: quantities.grid_peak_kw.sum(axis=1),
    }
    left = 0.0
    generator = option.scenario.sources.generator
    if generator is not None and "generator" in option.sources:
        counts, share = replacement_by_hours(hours, generator.life_hours, generator.life_years)
        left = float(share)
        columns |= {
            SERVICES: times_due(hours, generator.service_interval_h),
            OVERHAULS: overhauls_due(hours, generator.overhaul_interval_h, generator.life_hours, generator.life_years),
            BOUGHT: counts,
        }
    bills = none
    if tariff is not None:
        bills = yearly_bill(tariff, quantities.grid_kwh, quantities.grid_peak_kw).total
        parts = _part_kwh(tariff, quantities.grid_kwh)
        columns |= {FIRST_PART + place: parts[:, place] for place in range(parts.shape[1])}
    first = page.row
    for year in range(len(hours)):
        page.put(page.row, YEAR, year + 1, "year")
        for column, values in columns.items():
            kind: Kind = "whole" if column in (SERVICES, OVERHAULS, BOUGHT) else "one"
            page.put(page.row, column, float(values[year]), kind)
        if tariff is not None:
            formula = _bill_formula(tariff, option.name, inputs, page.row)
            page.put(page.row, bill, float(bills[year]), "money", formula=formula)
        page.row += 1
    page.put(page.row, YEAR, "Generator's life left at the end (share)", "wrap")
    page.put(page.row, BOUGHT, left, "three")
    cells = SimulatedCells(page, first, bill, page.at(page.row, BOUGHT))
    page.row += 1
    return cells


def _bill_formula(tariff: Tariff, option: str, inputs: InputCells, row: int) -> str:
    """As `tariff.yearly_bill`: fixed, energy, demand and levy, and the tax on all of them."""

    def cell(key: str) -> str:
        return inputs.of(option, f"sources.grid.tariff.{key}")

    if tariff.blocks:
        prices = [cell(f"blocks[{number}].price_per_kwh") for number in range(1, len(tariff.blocks) + 1)]
    else:
        bands = range(1, len(tariff.bands) + 1)
        prices = [cell("price_per_kwh"), *(cell(f"bands[{number}].price_per_kwh") for number in bands)]
    energy = "+".join(f"{reference(row, FIRST_PART + place)}*{price}" for place, price in enumerate(prices))
    demand = f"{cell('demand_charge_per_kw_month')}*{reference(row, PEAKS)}"
    levy = f"{cell('levy_per_kwh')}*{reference(row, GRID)}"
    return f"=(12*{cell('fixed_charge_per_month')}+{energy}+{demand}+{levy})*(1+{cell('tax_percent')}/100)"
