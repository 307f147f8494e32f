"""The page 'Simulated': what each option does by year, the quantities that the sums of money rest on."""

from __future__ import annotations

from functools import lru_cache
from types import SimpleNamespace

import numpy as np
from numpy.typing import NDArray

from planner.money.flows import whole_years
from planner.money.formula import Formula, Operand
from planner.money.fuel import AGEING, SERVICED, life_left, wear
from planner.money.tariff import bill_of, part_kwh, yearly_bill
from planner.money.terms import Terms, terms_of
from planner.report.document import At, Cell, Column, Kind, Page, Row, Section, Table
from planner.report.pages.inputs import Inputs
from planner.scenario.sources import Generator, Tariff
from planner.sources.base import SourceKind
from planner.study.compare import OptionResult, Study
from planner.text import source_name, text

Array = NDArray[np.float64]

SHARED, SIMULATED, BILL, LEFT = "simulated.shared", "simulated", "grid_bill", "left"
QUANTITIES = (
    "demand_m3", "delivered_m3", "fuel_l", "grid_kwh", "grid_peaks_kw", "hours", "run_h", "services", "used_h",
    "age_years", "overhauls", "worn", "bought", "kept_h", "kept_years",
)  # fmt: skip
_WEAR = (*SERVICED, *AGEING)
_COUNTS = frozenset(("services", "overhauls", "worn", "bought", "age_years", "kept_years"))

LIFE_YEARS = Formula.leaf(At(SHARED, "years", "value"))
"""Cell of the years of the analysis period."""
PEOPLE = Formula.leaf(At(SHARED, "people", "value"))
"""Cell of the people served in the first year."""


def _further_keys(study: Study, source: SourceKind) -> dict[str, str]:
    """Columns of a source of one's own by key, with headings: energy, running time, fuel, energy by band."""
    name = source_name(source)
    keys = {f"{source}.{key}": text(f"simulated.further_{key}", source=name) for key in ("kwh", "hours", "fuel_l")}
    count = max(len(option.quantities.top_up(source).parts_kwh) for option in study.options)
    bands = range(count if count > 1 else 0)
    return keys | {f"{source}.{place}": text("simulated.further_band", source=name, band=place + 1) for place in bands}


def _further_values(study: Study, option: OptionResult) -> dict[str, Array]:
    found: dict[str, Array] = {}
    for source in study.further_sources:
        did = option.quantities.top_up(source)
        values = {f"{source}.kwh": did.kwh, f"{source}.hours": did.hours, f"{source}.fuel_l": did.fuel_l}
        values |= {f"{source}.{place}": part for place, part in enumerate(did.parts_kwh)}
        found |= {key: values.get(key, np.zeros_like(did.kwh)) for key in _further_keys(study, source)}
    return found


def top_up_cells(study: Study, option: OptionResult, year: int, source: SourceKind) -> SimpleNamespace:
    """Cells of what such a source does in a life year, as its definitions of money ask for them."""
    cells = {key.split(".")[-1]: simulated_cell(option.name, year, key) for key in _further_keys(study, source)}
    bands = [cell for key, cell in cells.items() if key.isdigit()]
    return SimpleNamespace(
        kwh=cells["kwh"], hours=cells["hours"], fuel_l=cells["fuel_l"], parts_kwh=bands or [cells["kwh"]]
    )


@lru_cache(maxsize=8192)
def simulated_cell(option: str, year: int, key: str) -> Formula:
    """Cell of a quantity, or of the grid's bill, of a life year, counted from 1."""
    return Formula.leaf(At(SIMULATED, (option, year), key))


def life_left_cell(option: str) -> Formula:
    """Cell of the share of the generator's life left at the end."""
    return Formula.leaf(At(SIMULATED, (option, LEFT), "bought"))


def simulated_page(study: Study, inputs: Inputs) -> Page:
    """Build the page 'Simulated'.

    Parameters
    ----------
    study : Study
        The finished comparison.
    inputs : Inputs
        Where the tariff's prices and the generator's lives stand.
    """
    shared = Table(
        SHARED,
        (Column("label", ""), Column("value", "")),
        tuple(
            Row(key, {"label": Cell(text(f"simulated.{key}"), "wrap"), "value": Cell(value, "whole")})
            for key, value in (
                ("years", study.scenario.finance.analysis_period_years),
                ("people", study.scenario.people or 0),
            )
        ),
        header=False,
    )
    names = max((_parts(option) for option in study.ranked), key=len, default=[])
    columns = (
        Column("year", text("column.year"), 26),
        *(Column(key, text(f"simulated.{key}")) for key in QUANTITIES),
        *(Column(f"part_{place}", name) for place, name in enumerate(names)),
        Column(BILL, text("simulated.grid_bill", currency=study.scenario.currency)),
        *(Column(*each) for source in study.further_sources for each in _further_keys(study, source).items()),
    )
    rows: list[Row | Section] = []
    for option in study.ranked:
        rows += [Section(option.name), *_rows(study, option, inputs)]
    blocks = (shared, Table(SIMULATED, columns, tuple(rows), freeze=1))
    return Page(
        "simulated", text("page.simulated"), text("simulated.title"), text("simulated.under"), blocks, printed=0
    )


def _tariff(option: OptionResult) -> Tariff | None:
    return terms_of(option.scenario, option.sources).tariff


def _parts(option: OptionResult) -> list[str]:
    """Names of the parts of the grid's energy that have a price of their own."""
    tariff = _tariff(option)
    if tariff is None:
        return []
    if tariff.blocks:
        return [text("simulated.block_kwh", number=number) for number in range(1, len(tariff.blocks) + 1)]
    names = [text("energy.outside_bands"), *(band.name for band in tariff.bands)]
    return [text("energy.grid_band_kwh", band=name) for name in names]


def _values(option: OptionResult, terms: Terms) -> tuple[dict[str, Array], float]:
    """The planner's own figures by column, and the share of the generator's life left at the end."""
    quantities = option.quantities
    hours = quantities.generator_hours
    columns = dict.fromkeys(QUANTITIES, np.zeros(len(hours))) | {
        "demand_m3": quantities.demand_m3,
        "delivered_m3": quantities.delivered_m3,
        "fuel_l": quantities.fuel_l,
        "grid_kwh": quantities.grid_kwh.sum(axis=(1, 2)),
        "grid_peaks_kw": quantities.grid_peak_kw.sum(axis=1),
        "hours": hours,
    }
    machine = terms.generator
    if machine is None:
        return columns, 0.0
    intervals = machine.service_interval_h, machine.overhaul_interval_h
    worn = wear(hours, machine.life_hours, whole_years(machine.life_years), *intervals)
    return columns | worn.columns, float(worn.left)


def _rows(study: Study, option: OptionResult, inputs: Inputs) -> list[Row]:
    quantities, tariff = option.quantities, _tariff(option)
    cells_of = terms_of(inputs.scenario_of(option), option.sources)
    columns, left = _values(option, terms_of(option.scenario, option.sources))
    further = _further_values(study, option)
    of_further = [values for key, values in further.items() if key.endswith(".fuel_l")]
    columns["fuel_l"] = columns["fuel_l"] - sum(of_further, 0.0)
    years = len(quantities.generator_hours)
    parts, bills = np.zeros((years, 0)), np.zeros(years)
    if tariff is not None:
        parts = part_kwh(tariff, quantities.grid_kwh)
        bills = yearly_bill(tariff, quantities.grid_kwh, quantities.grid_peak_kw).total
    rows, life_formula = [], None
    for year in range(1, years + 1):
        found: dict[str, Operand] = {}
        if cells_of.generator is not None:
            y = _wear_of_year(cells_of.generator, option.name, year)
            found = {column.key: column.in_year(year, years, y) for column in _WEAR}
            life_formula = life_left(y)
        cells = {"year": Cell(year, "year")}
        for key, values in columns.items():
            kind: Kind = "whole" if key in _COUNTS else "one"
            cells[key] = Cell.worked_out(float(values[year - 1]), kind, found.get(key))
        cells |= {key: Cell(float(values[year - 1]), "one") for key, values in further.items()}
        for place, value in enumerate(parts[year - 1]):
            cells[f"part_{place}"] = Cell(float(value), "one")
        if cells_of.tariff is not None:
            kwh = [simulated_cell(option.name, year, f"part_{place}") for place in range(parts.shape[1])]
            energy, peaks = (simulated_cell(option.name, year, key) for key in ("grid_kwh", "grid_peaks_kw"))
            due = bill_of(cells_of.tariff, kwh, energy, peaks).total
            cells[BILL] = Cell.worked_out(float(bills[year - 1]), "money", due)
        rows.append(Row((option.name, year), cells))
    last = {"year": Cell(text("simulated.left"), "wrap"), "bought": Cell.worked_out(left, "three", life_formula)}
    return [*rows, Row((option.name, LEFT), last)]


def _wear_of_year(generator: Generator, option: str, year: int) -> SimpleNamespace:
    """What the definitions of wear are told of one year: cells of its row, and of the row before but in year 1."""

    def of_year(year: int) -> dict[str, Operand]:
        return {key: simulated_cell(option, year, key) for key in QUANTITIES}

    before = of_year(year - 1) if year > 1 else dict.fromkeys(QUANTITIES, 0.0)
    return SimpleNamespace(
        **of_year(year),
        before=SimpleNamespace(**before),
        life_hours=generator.life_hours,
        whole_life_years=whole_years(generator.life_years),
        service_interval_h=generator.service_interval_h,
        overhaul_interval_h=generator.overhaul_interval_h,
    )
