"""The sheet 'Options': every figure of every supply option side by side."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import partial
from types import SimpleNamespace
from typing import Any

import numpy as np

from planner.money.figures import FIGURES
from planner.money.formula import Formula, Operand, cell_text
from planner.money.returns import NEVER, NO_REMARK, NONE
from planner.report.sheets.cash import Cash
from planner.report.sheets.labels import COMPONENT_LABELS, COST_LABELS, COST_OF_CAPITAL, OWN_FUNDS, SUPPORT
from planner.report.sheets.page import Page
from planner.report.sheets.returns import ReturnCells
from planner.report.sheets.simulated import Simulated
from planner.report.style import Kind, Look
from planner.study.compare import OptionResult, Study
from planner.study.ranking import Standing, rank_of

FIRST_OPTION = 2
REFERENCE = "reference"
Value = float | str | None


@dataclass(frozen=True)
class Row:
    """One figure: key, label, unit, format, its value for an option, the word for no value, and its formula."""

    key: str
    label: str
    unit: str
    kind: Kind
    of: Callable[[OptionResult], Value]
    word: str | None = None
    formula: Callable[[OptionResult], Operand] | None = None


@dataclass(frozen=True)
class OptionRows:
    """Where the figures stand: row of each key, 'option' being the header, and the columns in the order of the run."""

    page: Page
    rows: dict[str, int]
    columns: dict[str, int]

    def range(self, key: str) -> str:
        """Range of a figure of all options."""
        row = self.rows[key]
        return self.page.at(row, FIRST_OPTION, row, FIRST_OPTION + len(self.columns) - 1)

    def values(self, key: str) -> list[Any]:
        """The same as a chart wants it."""
        row = self.rows[key]
        return self.page.range_of(row, FIRST_OPTION, row, FIRST_OPTION + len(self.columns) - 1)

    def cell(self, key: str, option: str) -> Formula:
        """Cell of a figure of an option."""
        return Formula.leaf(self.page.at(self.rows[key], self.columns[option]))


@dataclass(frozen=True)
class MoneyCells:
    """Where the sums of money come from: flows and quantities by option, and the steps of the returns."""

    simulated: Simulated
    cash: Cash
    returns: ReturnCells


def verdict(option: OptionResult) -> str:
    """Say with a sign and words whether an option meets the service target."""
    return "✓ meets target" if option.meets_service else "✗ misses target"


def write_options(page: Page, study: Study, money: MoneyCells) -> OptionRows:
    """Fill the sheet 'Options'.

    Parameters
    ----------
    page : Page
        The sheet.
    study : Study
        The finished comparison.
    money : MoneyCells
        Where the sums of money come from.

    Returns
    -------
    OptionRows
        Where the figures stand.
    """
    finance = study.scenario.finance
    prices = "constant prices of year 0" if finance.prices == "constant" else "nominal prices"
    page.title(
        "Supply options side by side",
        f"In the order of the run. Money in {study.scenario.currency}, {prices}, over {finance.life_years} years at "
        "the discount rate of the sheet 'Inputs'; energy and hours are means of the life years.",
    )
    options = study.ranked
    last = FIRST_OPTION + len(options) - 1
    places = {"option": page.row}
    page.header(["Figure", "Unit", *(option.name for option in options)])
    page.freeze(FIRST_OPTION)
    page.fix_width(0, 38)
    for column in range(FIRST_OPTION, last + 1):
        page.fix_width(column, 19)
    found = OptionRows(page, places, {option.name: column for column, option in enumerate(options, start=FIRST_OPTION)})
    sections = _sections(study, money, found)
    row = page.row - 2
    for _, rows in sections:  # formulas may lead to figures further down
        row += 3
        places |= {figure.key: row + place for place, figure in enumerate(rows)}
        row += len(rows) - 1
    for heading, rows in sections:
        page.heading(heading, last)
        for figure in rows:
            if page.row != places[figure.key]:
                raise ValueError(f"'{figure.key}' stands in row {page.row}, not {places[figure.key]}")
            _write(page, figure, options, study.best)
    return found


def _write(page: Page, row: Row, options: Sequence[OptionResult], best: str | None) -> None:
    page.put(page.row, 0, row.label)
    page.put(page.row, 1, row.unit)
    for column, option in enumerate(options, start=FIRST_OPTION):
        value = row.of(option)
        kind: Kind = row.kind
        if isinstance(value, str) and kind not in ("wrap", "word"):
            kind = "word"
        formula = None if row.formula is None else cell_text(row.formula(option))
        look: Look = "best" if option.name == best else "plain"
        page.put(page.row, column, value, kind, look, word=row.word, formula=formula)
    page.row += 1


def _sections(study: Study, money: MoneyCells, cells: OptionRows) -> list[tuple[str, list[Row]]]:
    currency, years = study.scenario.currency, study.scenario.finance.life_years
    figures = _Figures(money, cells)
    return [
        ("Design", _design()),
        ("Service", _service(study)),
        ("Energy, mean of the life years", _energy(years)),
        ("Money", [_rank(study, cells), *_money(currency, figures)]),
        ("Life-cycle cost components, present value", _components(currency, figures)),
        ("Carbon dioxide of fuel and grid (what was built is not counted)", _carbon(years)),
        (f"Compared with {study.reference}, before grant and loan", _comparison(currency, money, cells)),
        ("Delivered share by life year", [_share_of_year(year) for year in range(years)]),
    ]


def _design() -> list[Row]:
    return [
        Row("tank_m3", "Tank", "m3", "one", lambda option: option.tank_m3),
        Row("modules", "PV modules", "", "whole", lambda option: option.modules or "none"),
        Row("strings", "Strings in parallel", "", "whole", lambda option: option.strings or "none"),
        Row("array_kw", "PV array, rated", "kW", "two", lambda option: option.array_kw if option.modules else "none"),
        Row("generator_kw", "Generator, rated", "kW", "one", _rating_kw),
        Row(
            "start_level",
            "Start level of the float switch",
            "% of tank",
            "whole",
            lambda o: o.levels[0] if o.levels else "none",
        ),
        Row(
            "stop_level",
            "Stop level of the float switch",
            "% of tank",
            "whole",
            lambda o: o.levels[1] if o.levels else "none",
        ),
        Row("controller", "Controller", "", "word", lambda option: option.scenario.controller.mode),
        Row("pump", "Pump", "", "wrap", lambda option: option.scenario.pump.name),
        Row("duty_flow_m3h", "Flow at the duty point", "m3/h", "two", lambda option: option.duty.flow_m3h),
        Row("duty_head_m", "Total dynamic head", "m", "one", lambda option: option.duty.total_head_m),
    ]


def _rating_kw(option: OptionResult) -> Value:
    generator = option.scenario.sources.generator
    return generator.rating_kw if generator and "generator" in option.sources else "none"


def _service(study: Study) -> list[Row]:
    service = study.scenario.service
    rows = [
        Row("verdict", f"Delivers at least {service.delivered_share_percent:g} % of the demand", "", "word", verdict),
        Row("meets", "Meets the target (1: yes)", "", "whole", lambda option: float(option.meets_service)),
        Row(
            "delivered_share",
            "Delivered over the life",
            "% of demand",
            "two",
            lambda option: 100 * option.delivered_share,
        ),
        Row(
            "worst_year_share",
            "Delivered in the worst year",
            "% of demand",
            "two",
            lambda option: 100 * option.worst_year_share,
        ),
        Row(
            "demand_first_m3", "Demand in the first year", "m3", "whole", lambda option: option.quantities.demand_m3[0]
        ),
        Row(
            "delivered_first_m3",
            "Delivered in the first year",
            "m3",
            "whole",
            lambda option: option.quantities.delivered_m3[0],
        ),
        Row("demand_last_m3", "Demand in the last year", "m3", "whole", lambda option: option.quantities.demand_m3[-1]),
        Row(
            "delivered_last_m3",
            "Delivered in the last year",
            "m3",
            "whole",
            lambda option: option.quantities.delivered_m3[-1],
        ),
        Row("shortfall_m3", "Shortfall, mean", "m3/year", "one", _shortfall_m3),
        Row(
            "pumped_solar",
            "Pumped by the sun",
            "% of pumped",
            "one",
            lambda option: _pumped_percent(option, "solar"),
            "none",
        ),
        Row(
            "pumped_grid",
            "Added by the grid",
            "% of pumped",
            "one",
            lambda option: _pumped_percent(option, "grid"),
            "none",
        ),
        Row(
            "pumped_generator",
            "Added by the generator",
            "% of pumped",
            "one",
            lambda option: _pumped_percent(option, "generator"),
            "none",
        ),
    ]
    worst = service.worst_year_share_percent
    if worst is not None:
        rows[0] = Row(
            "verdict",
            f"Delivers {service.delivered_share_percent:g} % over the life, {worst:g} % in the worst year",
            "",
            "word",
            verdict,
        )
    return rows


def _shortfall_m3(option: OptionResult) -> Value:
    return float((option.quantities.demand_m3 - option.quantities.delivered_m3).mean())


def _pumped_percent(option: OptionResult, source: str) -> float:
    pumped = {name: float(getattr(option.outcome, f"{name}_m3").sum()) for name in ("solar", "grid", "generator")}
    total = sum(pumped.values())
    return 100 * pumped[source] / total if total > 0 else np.nan


def _energy(years: int) -> list[Row]:
    def mean(name: str) -> Callable[[OptionResult], Value]:
        return lambda option: float(getattr(option.outcome, name).sum()) / years

    return [
        Row("solar_kwh", "Sun used (DC)", "kWh/year", "whole", mean("solar_kwh")),
        Row("idle_kwh", "Idle sun (DC)", "kWh/year", "whole", mean("idle_kwh")),
        Row("grid_kwh", "Grid", "kWh/year", "whole", mean("grid_kwh")),
        Row("grid_hours", "Running on the grid", "h/year", "whole", mean("grid_hours")),
        Row(
            "grid_peak_kw",
            "Highest half-hour demand on the grid",
            "kW",
            "two",
            lambda option: float(option.outcome.grid_peak_kw.max()),
        ),
        Row("generator_kwh", "Generator", "kWh/year", "whole", mean("generator_kwh")),
        Row("generator_hours", "Running of the generator", "h/year", "whole", mean("generator_hours")),
        Row("fuel_l", "Fuel", "L/year", "whole", mean("fuel_l")),
    ]


def _rank(study: Study, cells: OptionRows) -> Row:
    names = [option.name for option in study.ranked]

    def standing(cell: Callable[[str], Formula]) -> Standing:
        place = Formula("COLUMN", cell("meets"))
        return Standing(cell("meets"), cell("delivered_share"), cell("present_cost"), place)

    def formula(option: OptionResult) -> Operand:
        every = standing(lambda key: Formula.leaf(cells.range(key)))
        return rank_of(standing(lambda key: cells.cell(key, option.name)), every)

    return Row("rank", "Rank", "", "whole", lambda option: float(names.index(option.name) + 1), formula=formula)


@dataclass(frozen=True)
class _Figures:
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


def _money(currency: str, figures: _Figures) -> list[Row]:
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


def _components(currency: str, figures: _Figures) -> list[Row]:
    return [
        *(figures.row(key, label, currency) for key, label in COMPONENT_LABELS.items()),
        figures.row("cost_of_capital", COST_OF_CAPITAL, currency),
        Row("support", SUPPORT, "", "word", lambda option: "not entered"),
    ]


def _carbon(years: int) -> list[Row]:
    def total(option: OptionResult) -> Value:
        return "not counted" if _covers(option) == "grid not counted" else float(option.life.co2_kg.sum())

    def mean(option: OptionResult) -> Value:
        value = total(option)
        return value if isinstance(value, str) or value is None else value / years

    def per_m3(option: OptionResult) -> Value:
        value, delivered = total(option), float(option.quantities.delivered_m3.sum())
        if isinstance(value, str) or value is None:
            return value
        return value / delivered if delivered > 0 else "nothing delivered"

    return [
        Row("co2_kg", "Carbon dioxide over the life", "kg", "whole", total),
        Row("co2_kg_per_year", "Carbon dioxide, mean", "kg/year", "whole", mean),
        Row("co2_kg_per_m3", "Carbon dioxide per m3 delivered", "kg/m3", "three", per_m3),
        Row("co2_covers", "What it covers", "", "wrap", _covers),
    ]


def _covers(option: OptionResult) -> str:
    grid = option.scenario.sources.grid
    parts = ["fuel"] if "generator" in option.sources else []
    if "grid" in option.sources:
        parts.append("grid" if grid is not None and grid.co2_kg_per_kwh is not None else "grid not counted")
    return "; ".join(parts) or "none burnt or bought"


def _comparison(currency: str, money: MoneyCells, cells: OptionRows) -> list[Row]:
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
        row("internal_rate_of_return_percent", "Internal rate of return", "%/year", "one", NONE),
        remark("irr_reason", "  why there is none"),
        row("simple_payback_years", "Payback, simple", "years", "one", NEVER),
        remark("payback_reason", "  remark"),
        row("discounted_payback_years", "Payback, discounted", "years", "one", NEVER),
        remark("discounted_payback_reason", "  remark"),
    ]


def _share_of_year(year: int) -> Row:
    def share(option: OptionResult) -> Value:
        demand = float(option.quantities.demand_m3[year])
        return 100 * float(option.quantities.delivered_m3[year]) / demand if demand > 0 else np.nan

    return Row(f"share_of_year_{year + 1}", f"Year {year + 1}", "% of demand", "two", share, "no demand")
