"""The page 'What users pay': tariffs and bills, the burden of each year, savings for replacements, published ranges."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from types import SimpleNamespace
from typing import Any

from planner.figures import Figure, catalogue, figure, figures_of
from planner.money.benchmarks import DOLLAR, benchmarks_for, units_per_dollar
from planner.money.figures import figures_with
from planner.money.formula import Formula, Operand
from planner.money.functions import where
from planner.money.terms import Payers, terms_of
from planner.money.users import FUND, INCOMES, burden_columns, users_definitions
from planner.report.document import At, Block, Cell, Column, Heading, Page, Row, Section, Span, Table, Text
from planner.report.pages.cash import REAL_DISCOUNT_RATE, YEAR, cash_cells, cash_ranges
from planner.report.pages.inputs import Inputs
from planner.report.pages.options import option_cell
from planner.report.pages.simulated import LIFE_YEARS, PEOPLE
from planner.study.compare import OptionResult, Study
from planner.text import text

USERS, BY_YEAR, RANGES, PROGRAMME = "users", "users.years", "users.ranges", "users.programme"
LOW_PERCENT, HIGH_PERCENT = 3.0, 5.0
"""Shares of an income to which water bills are commonly held: 3 % in UNDP, Human Development Report 2006, 3 and 5 % as
tests after Fankhauser and Tepic 2005, at second hand; no threshold is agreed (AQUA 72(8), 2023, a review)."""
_JUDGED = tuple(f"{share}_operation_and_renewals" for share in INCOMES)
_FROM_CASH = ("direct_support", "replacement", "loan_payment")
_SHOWN = (
    "operation_cost", *_FROM_CASH, "burden", "renewals", "renewals_present", "renewals_due", "saving_needed",
    "fund_balance",
)  # fmt: skip
_IN_PROGRAMME = ("capital_cost", "grant", "own_funds", "life_cycle_cost", "renewal_saving")


def users_page(study: Study, inputs: Inputs) -> Page:
    """Build the page 'What users pay', every sum of money a formula with its value.

    Parameters
    ----------
    study : Study
        The finished comparison.
    inputs : Inputs
        Where the inputs stand.
    """
    finance, currency = study.scenario.finance, study.scenario.currency
    under = text("users.under", currency=currency, prices=text(f"cash.prices_{finance.prices}"))
    blocks = (
        _figures(study, inputs),
        *(Text(text(f"users.{note}"), "note") for note in _notes(study)),
        *_ranges(study, inputs),
        *_programme(study, inputs),
        _by_year(study, inputs),
    )
    return Page("users", text("page.users"), text("page.users"), under, blocks, printed=len(blocks) - 1)


def _notes(study: Study) -> Iterator[str]:
    """Keys of what there is to say of the figures."""
    homes = study.scenario.households
    yield "tariffs"
    if homes is None or study.scenario.litres_per_person_day is None:
        yield "no_households" if homes is None else "nobody_at_home"
    else:
        yield "income"
    yield "fund"


def users_cell(key: str, option: str) -> Formula:
    """Cell of a figure of the group 'users' of an option."""
    return Formula.leaf(At(USERS, key, option))


def _payers(option: OptionResult, inputs: Inputs) -> Payers:
    return terms_of(inputs.scenario_of(option), option.sources).payers


def _columns(study: Study, first: str) -> tuple[Column, ...]:
    names = (option.name for option in study.ranked)
    return Column("figure", first, 40), Column("unit", text("column.unit"), 16), *(Column(n, n, 13) for n in names)


def _figures(study: Study, inputs: Inputs) -> Table:
    rows: list[Row | Section] = []
    for shown in figures_of("users"):
        known = [option for option in study.ranked if shown.known(option)]
        if shown.key in _PARTS and known:
            rows.append(Section(text(f"users.part.{_PARTS[shown.key]}")))
        if known:
            rows.append(_row(study, shown, {option.name: _cell(study, option, shown, inputs) for option in known}))
        if shown.key in _JUDGED and known:
            rows.append(_judgement(study, shown))
    return Table(USERS, _columns(study, text("options.figure")), tuple(rows), freeze=2)


_PARTS = {
    "tariff_operation": "tariff",
    "household_m3_per_month": "household",
    "burden_mean": "burden",
    "renewal_saving": "fund",
    "capital_cost_per_person": "person",
}
"""The first figure of each part of the table."""


def _row(study: Study, shown: Figure, cells: Mapping[str, Cell]) -> Row:
    lead = {"figure": Cell(shown.label, "wrap"), "unit": Cell(shown.unit_in(study.scenario.currency))}
    return Row(shown.key, lead | dict(cells))


def _cell(study: Study, option: OptionResult, shown: Figure, inputs: Inputs) -> Cell:
    formula = users_definitions()[shown.money](_operands(study, option, inputs))
    return Cell.worked_out(float(shown.read(option)), shown.format, formula, word=shown.words_for(option))


def _operands(study: Study, option: OptionResult, inputs: Inputs) -> Any:
    """What the definitions are told of an option: columns, figures of money, figures above, and who pays."""
    name, further = option.name, study.further_costs
    definitions = figures_with(further)
    money = {each.money: option_cell(each.key, name) for each in catalogue(further) if each.money in definitions}
    last = study.scenario.finance.analysis_period_years
    own = {key: Formula.leaf(Span(BY_YEAR, (name, 0), key, (name, last))) for key in _SHOWN}
    return SimpleNamespace(
        **{**cash_ranges(study, name), **money, **own, **vars(_payers(option, inputs))},
        **{key: users_cell(key, name) for key in users_definitions()},
        life_years=LIFE_YEARS,
        people=PEOPLE,
        real_discount_rate=REAL_DISCOUNT_RATE,
    )


def _judgement(study: Study, shown: Figure) -> Row:
    """Say where a bill stands against the shares of an income that are commonly held to."""
    words = [text(f"users.income_{key}", low=f"{LOW_PERCENT:g}", high=f"{HIGH_PERCENT:g}") for key in _INCOME_WORDS]

    def judged(share: Operand) -> Operand:
        return where(share <= LOW_PERCENT, words[0], where(share <= HIGH_PERCENT, words[1], words[2]))

    cells = {
        option.name: Cell.worked_out(
            str(judged(float(shown.read(option)))), "wrap", judged(users_cell(shown.key, option.name))
        )
        for option in study.ranked
    }
    return Row(f"{shown.key}.judged", {"figure": Cell(text("users.income_judged")), "unit": Cell("")} | cells)


_INCOME_WORDS = ("below", "between", "above")


def _ranges(study: Study, inputs: Inputs) -> Iterator[Block]:
    """Hold costs per person against the published ranges, in the scenario's currency."""
    scenario = study.scenario
    if not scenario.people:
        return
    yield Heading(text("users.ranges"))
    found, per_dollar = benchmarks_for(scenario.people), units_per_dollar(scenario)
    if per_dollar is None:
        (capital, recurrent) = ((f"{each.low_usd:g}", f"{each.high_usd:g}") for each in found)
        slots = {"low": capital[0], "high": capital[1], "low_yearly": recurrent[0], "high_yearly": recurrent[1]}
        yield Text(text("users.ranges_not_compared", currency=scenario.currency, **slots))
        return
    rate = 1.0 if scenario.currency == DOLLAR else inputs.cell("finance.exchange_rate")
    since = scenario.finance.usd_prices_since_2011
    level = 1.0 if since is None else inputs.cell("finance.usd_prices_since_2011")
    columns = _columns(study, text("options.figure"))
    columns = (
        *columns[:2],
        *(Column(end, text(f"users.{end}", currency=scenario.currency), 9) for end in ("low", "high")),
        *columns[2:],
    )
    rows = []
    for each in found:
        shown, ends = figure(each.figure), {"low": each.low_usd, "high": each.high_usd}
        cells = {
            end: Cell.worked_out(usd * float(per_dollar) * (since or 1.0), "price", usd * rate * level)
            for end, usd in ends.items()
        }
        numbers = [float(cells[end].value or 0.0) for end in ends]
        limits = [Formula.leaf(At(RANGES, each.figure, end)) for end in ends]
        for option in study.ranked:
            value = float(shown.read(option))
            cells[option.name] = Cell.worked_out(
                str(_against(value, *numbers)), "wrap", _against(users_cell(each.figure, option.name), *limits)
            )
        rows.append(_row(study, shown, cells))
    yield Table(RANGES, columns, tuple(rows))
    yield Text(text("users.ranges_source" if since else "users.ranges_source_2011"), "note")


def _against(value: Operand, low: Operand, high: Operand) -> Operand:
    words = (text(f"users.range_{key}") for key in ("below", "above", "within"))
    below, above, within = words
    return where(value < low, below, where(value > high, above, within))


def _programme(study: Study, inputs: Inputs) -> Iterator[Block]:
    """Bring the main sums into the currency of the programme."""
    finance = study.scenario.finance
    if finance.programme_currency is None or finance.exchange_rate is None:
        return
    rate = inputs.cell("finance.exchange_rate")
    rows = []
    for key in _IN_PROGRAMME:
        shown = figure(key)
        cells = {"figure": Cell(shown.label), "unit": Cell(shown.unit_in(finance.programme_currency))}
        for option in study.ranked:
            own = users_cell(key, option.name) if shown.group == "users" else option_cell(key, option.name)
            value = float(shown.read(option)) / finance.exchange_rate
            cells[option.name] = Cell.worked_out(value, shown.format, own / rate)
        rows.append(Row(key, cells))
    heading = text("users.programme", programme=finance.programme_currency)
    yield Table(PROGRAMME, _columns(study, text("options.figure")), tuple(rows), heading=heading)


def _by_year(study: Study, inputs: Inputs) -> Table:
    currency = study.scenario.currency
    headings = {key: text(f"{'cash' if key in _FROM_CASH else 'users'}.{key}", currency=currency) for key in _SHOWN}
    columns = (Column(YEAR, text("column.year"), 26), *(Column(key, name) for key, name in headings.items()))
    rows: list[Row | Section] = []
    for option in study.ranked:
        rows += [Section(option.name), *_years(study, option, inputs)]
    return Table(BY_YEAR, columns, tuple(rows), heading=text("users.by_year"))


def _years(study: Study, option: OptionResult, inputs: Inputs) -> Iterator[Row]:
    name, further, last = option.name, study.further_costs, study.scenario.finance.analysis_period_years
    values = {**option.life.columns, **option.life.users}
    defined = {column.key: column for column in (*burden_columns(further), *FUND)}
    given = {
        "fund_interest": _payers(option, inputs).fund_interest,
        "renewal_saving": users_cell("renewal_saving", name),
    }

    def cells(year: int) -> dict[str, Formula]:
        own = {key: Formula.leaf(At(BY_YEAR, (name, year), key)) for key in defined}
        return {**cash_cells(name, year, further), **own, "year": Formula.leaf(At(BY_YEAR, (name, year), YEAR))}

    for year in range(last + 1):
        y = SimpleNamespace(**cells(year), **given, before=SimpleNamespace(**cells(max(year - 1, 0))))
        shown = {YEAR: Cell(year, "year")}
        for key in _SHOWN:
            operand = defined[key].in_year(year, last, y) if key in defined else getattr(y, key)
            shown[key] = Cell.worked_out(float(values[key][..., year]), "money", operand)
        yield Row((name, year), shown)
