"""The sheet 'Options': every figure of every supply option side by side."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import numpy as np

from planner.money.rates import present_value
from planner.report.sheets.page import Page, reference
from planner.report.style import Kind, Look
from planner.study.compare import OptionResult, Study

if TYPE_CHECKING:
    from planner.report.sheets.money_formulas import MoneyFormulas

COST_LABELS = {
    "construction": "Construction",
    "replacement": "Replacement",
    "upkeep": "Upkeep",
    "grid": "Grid bills",
    "fuel": "Fuel",
    "generator_service": "Generator service",
    "yearly_costs": "Yearly costs",
    "residual": "Residual value",
}
COMPONENTS: dict[str, tuple[str, ...]] = {
    "Capital expenditure": ("construction",),
    "Operation and minor maintenance": ("upkeep", "grid", "fuel", "generator_service", "yearly_costs"),
    "Capital maintenance (replacement)": ("replacement",),
    "Residual value, taken off": ("residual",),
}
COST_OF_CAPITAL = "Cost of capital (loan payments less loan)"
SUPPORT = "Direct and indirect support"
OWN_FUNDS = "Own funds in year 0 (community or owner)"
FIRST_OPTION = 2
SEVERAL = "several rates balance outlay and savings, so none is the answer"
RANK, MEETS = "Rank", "Meets the target (1: yes)"
Value = float | str | None
Formula = Callable[[OptionResult], str]


@dataclass(frozen=True)
class Row:
    """One figure: label, unit, format, its value for an option, and the word for no value."""

    label: str
    unit: str
    kind: Kind
    of: Callable[[OptionResult], Value]
    word: str | None = None
    formula: Formula | None = None


@dataclass(frozen=True)
class OptionRows:
    """Where the figures stand: header row, row of each label, columns of the options in the order of the run."""

    page: Page
    header_row: int
    rows: dict[str, int]
    first_column: int
    last_column: int
    verdict: str

    def range(self, label: str) -> str:
        """Range of a figure of all options."""
        row = self.header_row if label == "Figure" else self.rows[label]
        return self.page.at(row, self.first_column, row, self.last_column)

    def values(self, label: str) -> list[Any]:
        """The same as a chart wants it."""
        row = self.header_row if label == "Figure" else self.rows[label]
        return self.page.range_of(row, self.first_column, row, self.last_column)


def verdict(option: OptionResult) -> str:
    """Say with a sign and words whether an option meets the service target."""
    return "✓ meets target" if option.meets_service else "✗ misses target"


def write_options(page: Page, study: Study, money: MoneyFormulas) -> OptionRows:
    """Fill the sheet 'Options'.

    Parameters
    ----------
    page : Page
        The sheet.
    study : Study
        The finished comparison.
    money : MoneyFormulas
        Formulas of the sums of money.

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
    header_row = page.row
    page.header(["Figure", "Unit", *(option.name for option in options)])
    page.freeze(FIRST_OPTION)
    page.fix_width(0, 38)
    for column in range(FIRST_OPTION, last + 1):
        page.fix_width(column, 19)
    places: dict[str, int] = {}
    for heading, rows in _sections(study, money, places, page):
        page.heading(heading, last)
        for row in rows:
            places.setdefault(row.label, page.row)
            _write(page, row, options, study.best)
    return OptionRows(page, header_row, places, FIRST_OPTION, last, _service(study)[0].label)


def _write(page: Page, row: Row, options: Sequence[OptionResult], best: str | None) -> None:
    page.put(page.row, 0, row.label)
    page.put(page.row, 1, row.unit)
    for column, option in enumerate(options, start=FIRST_OPTION):
        value = row.of(option)
        kind: Kind = row.kind
        if isinstance(value, str) and kind not in ("wrap", "word"):
            kind = "word"
        formula = None if row.formula is None else row.formula(option)
        look: Look = "best" if option.name == best else "plain"
        page.put(page.row, column, value, kind, look, word=row.word, formula=formula)
    page.row += 1


def _sections(study: Study, money: MoneyFormulas, places: dict[str, int], page: Page) -> list[tuple[str, list[Row]]]:
    currency, years = study.scenario.currency, study.scenario.finance.life_years
    return [
        ("Design", _design()),
        ("Service", _service(study)),
        ("Energy, mean of the life years", _energy(years)),
        ("Money", [_rank(study, places, page), *_money(study, currency, money)]),
        ("Life-cycle cost components, present value", _components(currency, money)),
        ("Carbon dioxide of fuel and grid (what was built is not counted)", _carbon(years)),
        (f"Compared with {study.reference}, before grant and loan", _comparison(currency, money)),
        ("Delivered share by life year", [_share_of_year(year) for year in range(years)]),
    ]


def _design() -> list[Row]:
    return [
        Row("Tank", "m3", "one", lambda option: option.tank_m3),
        Row("PV modules", "", "whole", lambda option: option.modules or "none"),
        Row("Strings in parallel", "", "whole", lambda option: option.strings or "none"),
        Row("PV array, rated", "kW", "two", lambda option: option.array_kw if option.modules else "none"),
        Row("Generator, rated", "kW", "one", _rating_kw),
        Row("Start level of the float switch", "% of tank", "whole", lambda o: o.levels[0] if o.levels else "none"),
        Row("Stop level of the float switch", "% of tank", "whole", lambda o: o.levels[1] if o.levels else "none"),
        Row("Controller", "", "word", lambda option: option.scenario.controller.mode),
        Row("Pump", "", "wrap", lambda option: option.scenario.pump.name),
        Row("Flow at the duty point", "m3/h", "two", lambda option: option.duty.flow_m3h),
        Row("Total dynamic head", "m", "one", lambda option: option.duty.total_head_m),
    ]


def _rating_kw(option: OptionResult) -> Value:
    generator = option.scenario.sources.generator
    return generator.rating_kw if generator and "generator" in option.sources else "none"


def _service(study: Study) -> list[Row]:
    service = study.scenario.service
    rows = [
        Row(f"Delivers at least {service.delivered_share_percent:g} % of the demand", "", "word", verdict),
        Row(MEETS, "", "whole", lambda option: float(option.meets_service)),
        Row("Delivered over the life", "% of demand", "two", lambda option: 100 * option.delivered_share),
        Row("Delivered in the worst year", "% of demand", "two", lambda option: 100 * option.worst_year_share),
        Row("Demand in the first year", "m3", "whole", lambda option: option.quantities.demand_m3[0]),
        Row("Delivered in the first year", "m3", "whole", lambda option: option.quantities.delivered_m3[0]),
        Row("Demand in the last year", "m3", "whole", lambda option: option.quantities.demand_m3[-1]),
        Row("Delivered in the last year", "m3", "whole", lambda option: option.quantities.delivered_m3[-1]),
        Row("Shortfall, mean", "m3/year", "one", _shortfall_m3),
        Row("Pumped by the sun", "% of pumped", "one", lambda option: _pumped_percent(option, "solar"), "none"),
        Row("Added by the grid", "% of pumped", "one", lambda option: _pumped_percent(option, "grid"), "none"),
        Row(
            "Added by the generator", "% of pumped", "one", lambda option: _pumped_percent(option, "generator"), "none"
        ),
    ]
    worst = service.worst_year_share_percent
    if worst is not None:
        rows[0] = Row(
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
        Row("Sun used (DC)", "kWh/year", "whole", mean("solar_kwh")),
        Row("Idle sun (DC)", "kWh/year", "whole", mean("idle_kwh")),
        Row("Grid", "kWh/year", "whole", mean("grid_kwh")),
        Row("Running on the grid", "h/year", "whole", mean("grid_hours")),
        Row(
            "Highest half-hour demand on the grid", "kW", "two", lambda option: float(option.outcome.grid_peak_kw.max())
        ),
        Row("Generator", "kWh/year", "whole", mean("generator_kwh")),
        Row("Running of the generator", "h/year", "whole", mean("generator_hours")),
        Row("Fuel", "L/year", "whole", mean("fuel_l")),
    ]


def _rank(study: Study, places: dict[str, int], page: Page) -> Row:
    """Rank as `study.compare.rank`: those that meet the target by cost, then the others by what they deliver."""
    names = [option.name for option in study.ranked]
    last = FIRST_OPTION + len(names) - 1

    def line(label: str) -> str:
        row = places[label] if label in places else places[RANK] + 2
        return page.at(row, FIRST_OPTION, row, last)

    def formula(option: OptionResult) -> str:
        column = FIRST_OPTION + names.index(option.name)

        def own(label: str) -> str:
            row = places[label] if label in places else places[RANK] + 2
            return reference(row, column)

        meets, share, cost = line(MEETS), line("Delivered over the life"), line("Present cost")
        mine, my_share, my_cost = own(MEETS), own("Delivered over the life"), own("Present cost")
        cheaper = f"({cost}<{my_cost})+({cost}={my_cost})*(COLUMN({cost})<{column + 1})"
        return (
            f"=IF({mine}=1,1+SUMPRODUCT(({meets}=1)*({cheaper})),"
            f"1+SUM({meets})+SUMPRODUCT(({meets}=0)*(({share}>{my_share})+({share}={my_share})*({cheaper}))))"
        )

    return Row(RANK, "", "whole", lambda option: float(names.index(option.name) + 1), formula=formula)


def _money(study: Study, currency: str, money: MoneyFormulas) -> list[Row]:
    def row(label: str, unit: str, kind: Kind, name: str, formula: Formula, word: str | None = None) -> Row:
        return Row(label, unit, kind, lambda option: float(getattr(option.life, name)), word, formula)

    def category(name: str) -> Row:
        return Row(
            f"  {COST_LABELS[name]}",
            currency,
            "money",
            lambda option: float(option.life.present_by_category[name]),
            formula=lambda option: money.category(option, name),
        )

    yearly = f"{currency}/year"
    per_person = f"{currency}/person/year"
    return [
        row("Build cost", currency, "money", "capital_cost", money.build),
        row("Present cost", currency, "money", "present_cost", money.present),
        *(category(name) for name in COST_LABELS),
        row("Equivalent yearly cost", yearly, "money", "equivalent_yearly_cost", money.yearly),
        row(
            "Levelised cost of water",
            f"{currency}/m3",
            "price",
            "levelised_cost_per_m3",
            money.levelised,
            "nothing delivered",
        ),
        row(
            "Yearly cost per person of the first year",
            per_person,
            "price",
            "cost_per_person_year",
            money.per_person,
            "no people",
        ),
        row("Present value of what users pay", currency, "money", "revenue_present", money.revenue),
        row("Net present value", currency, "money", "npv", money.net),
        row("Grant", currency, "money", "grant", money.grant),
        row("Loan", currency, "money", "loan", money.loan),
        Row(OWN_FUNDS, currency, "money", _own_funds, formula=money.own_funds),
        row("Present cost to the owner", currency, "money", "owner_present_cost", money.owner),
    ]


def _own_funds(option: OptionResult) -> Value:
    return float(option.life.capital_cost) - float(option.life.grant) - float(option.life.loan)


def _components(currency: str, money: MoneyFormulas) -> list[Row]:
    """Components of life-cycle cost as funders count them; the generator's overhauls go with its services."""

    def row(label: str, names: Sequence[str]) -> Row:
        return Row(
            label,
            currency,
            "money",
            lambda option: sum(float(option.life.present_by_category[name]) for name in names),
            formula=lambda option: money.group(option, names),
        )

    def capital(option: OptionResult) -> Value:
        return float(present_value(option.life.loan_payment, option.life.discount_factor)) - float(option.life.loan)

    return [
        *(row(label, names) for label, names in COMPONENTS.items()),
        Row(COST_OF_CAPITAL, currency, "money", capital, formula=money.capital),
        Row(SUPPORT, "", "word", lambda option: "not entered"),
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
        Row("Carbon dioxide over the life", "kg", "whole", total),
        Row("Carbon dioxide, mean", "kg/year", "whole", mean),
        Row("Carbon dioxide per m3 delivered", "kg/m3", "three", per_m3),
        Row("What it covers", "", "wrap", _covers),
    ]


def _covers(option: OptionResult) -> str:
    grid = option.scenario.sources.grid
    parts = ["fuel"] if "generator" in option.sources else []
    if "grid" in option.sources:
        parts.append("grid" if grid is not None and grid.co2_kg_per_kwh is not None else "grid not counted")
    return "; ".join(parts) or "none burnt or bought"


def _comparison(currency: str, money: MoneyFormulas) -> list[Row]:
    def row(label: str, unit: str, kind: Kind, name: str, word: str | None = None, factor: float = 1.0) -> Row:
        def of(option: OptionResult) -> Value:
            if option.comparison is None:
                return "reference"
            return factor * float(getattr(option.comparison, name))

        return Row(label, unit, kind, of, word, lambda option: money.comparison(option, name))

    def remark(label: str, name: str) -> Row:
        def of(option: OptionResult) -> Value:
            if option.comparison is None:
                return "–"
            words = str(getattr(option.comparison, name))
            return SEVERAL if words.startswith("several") else words or "–"

        return Row(label, "", "wrap", of, formula=lambda option: money.comparison(option, name))

    return [
        row("Saving in present cost (negative: costs more)", currency, "money", "saving_present"),
        row("Internal rate of return", "%/year", "one", "internal_rate_of_return", "none", 100),
        remark("  why there is none", "irr_reason"),
        row("Payback, simple", "years", "one", "simple_payback_years", "never"),
        remark("  remark", "payback_reason"),
        row("Payback, discounted", "years", "one", "discounted_payback_years", "never"),
        remark("  remark", "discounted_payback_reason"),
    ]


def _share_of_year(year: int) -> Row:
    def share(option: OptionResult) -> Value:
        demand = float(option.quantities.demand_m3[year])
        return 100 * float(option.quantities.delivered_m3[year]) / demand if demand > 0 else np.nan

    return Row(f"Year {year + 1}", "% of demand", "two", share, "no demand")
