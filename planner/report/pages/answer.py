"""The page 'Answer': one page that stands alone."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from planner.answers.of_study import headline, holds
from planner.checks.verdict import SYMBOL, Verdict
from planner.figures import COST_CATEGORIES, Figure, cost_categories, cost_figure, figure
from planner.money.formula import Formula, Operand
from planner.money.functions import absolute, equals, ratio, total, where
from planner.report.document import (
    HEADER,
    Axis,
    Block,
    Cell,
    Chart,
    Column,
    Kind,
    Page,
    Row,
    Series,
    Table,
    Text,
)
from planner.report.pages.cash import YEAR, cash_span
from planner.report.pages.inputs import Inputs, plain_kind
from planner.report.pages.options import RANK, SERVICE, option_span, service_words
from planner.report.pages.rests_on import IN_BRIEF, IN_WORKBOOK, uncertainty_blocks
from planner.scenario.starter import statuses
from planner.scenario.walk import walk
from planner.study.compare import OptionResult, Study
from planner.text import text

MAIN, BASIS = "answer", "answer.basis"
CHART_COLUMN, CHART_ROWS, SHOWN_LINES = 4, 17, 4
FIGURES = (
    "demand_met_percent", "demand_met_worst_year_percent", "tank_m3", "modules", "array_kwp", "grid_kwh_per_year",
    "fuel_l_per_year", "capital_cost", "life_cycle_cost", "annualised_cost", "levelised_cost_per_m3",
    "annualised_cost_per_person",
)  # fmt: skip
"""Figures of the table of options."""
TECHNICAL_FIGURES = (
    "demand_met_percent", "demand_met_worst_month_percent", "short_days_per_year", "longest_short_days", "tank_m3",
    "modules", "array_kwp", "grid_kwh_per_year", "fuel_l_per_year",
)  # fmt: skip
"""The same where there are no prices."""
DASHED = frozenset(("modules", "array_kwp", "grid_kwh_per_year", "fuel_l_per_year"))
"""Figures of which nothing is shown by a dash."""
RECORD = ("prepared_by", "visit_date", "price_date", "revision")
"""Keys that say who made the study, on what visit and prices."""
WHO_PAYS = ("grant", "loan", "own_funds", "capital_cost")
COMPONENTS = (
    "capital_expenditure", "operation_and_minor_maintenance", "capital_maintenance",
    "expenditure_on_direct_support", "residual_taken_off", "life_cycle_cost",
)  # fmt: skip
ASSUMPTIONS = (
    "demand.growth_percent_per_year",
    "service.demand_met_percent",
    "finance.analysis_period_years",
    "finance.discount_rate_percent",
    "sources.solar.module.price",
    "sources.grid.tariff.price_per_kwh",
    "sources.grid.tariff.price_growth_percent_per_year",
    "sources.grid.outages.hours_per_day",
    "sources.generator.fuel_price_per_l",
    "sources.generator.fuel_delivery_per_l",
    "sources.generator.fuel_price_growth_percent_per_year",
)
"""What the answer depends on, by key; those that the scenario does not use are passed over."""


def answer_page(
    study: Study, sentences: Sequence[str], inputs: Inputs, verdicts: Sequence[Verdict], *, alive: bool = True
) -> Page:
    """Build the page 'Answer'.

    Parameters
    ----------
    study : Study
        The finished comparison.
    sentences : sequence of str
        What there is to say below the headline.
    inputs : Inputs
        Where the inputs stand.
    verdicts : sequence of Verdict
        What the site checks found.
    alive : bool
        Whether it stands in a workbook: with the charts of its cells, and with what there is to say of changed ones.
    """
    scenario = study.scenario
    blocks: list[Block] = list(_words(study, sentences, verdicts))
    if alive and scenario.priced:
        blocks.append(Text(text("answer.unchanged"), formula=_agreement(study, inputs)))
    blocks.append(_options(study))
    blocks += _money(study, inputs, alive=alive) if scenario.priced else [_basis(study, inputs)]
    blocks += uncertainty_blocks(study, IN_WORKBOOK if alive else IN_BRIEF)
    if alive:
        blocks.append(Text(text("answer.cautions")))
    return Page("answer", text("page.answer"), scenario.name, scenario.site.place, tuple(blocks), one_page=True)


def _money(study: Study, inputs: Inputs, *, alive: bool) -> Iterator[Block]:
    """What the answer depends on beside the charts, who pays and what the life-cycle cost is made of."""
    basis, who_pays, components = _basis(study, inputs), _who_pays(study), _components(study)
    left = sum(2 + len(table.rows) for table in (basis, who_pays, components))
    yield basis
    if alive:
        yield from _charts(study, max(CHART_ROWS, (left + 1) // 2))
    yield from (who_pays, components)


def _words(study: Study, sentences: Sequence[str], verdicts: Sequence[Verdict]) -> Iterator[Text]:
    scenario = study.scenario
    if scenario.question:
        yield Text(text("answer.question", question=scenario.question))
    setting = text(
        "answer.setting" if scenario.priced else "answer.setting_technical",
        currency=scenario.currency,
        prices=text(f"cash.prices_{scenario.finance.prices}"),
        years=scenario.finance.analysis_period_years,
    )
    if scenario.people is not None:
        setting = f"{text('answer.people', people=f'{scenario.people:,.0f}')} {setting}"
    yield Text(setting)
    record = {key: getattr(scenario, key) for key in RECORD}
    if any(record.values()):
        yield Text(text("answer.record", **{key: said or text("figure.not_given") for key, said in record.items()}))
    sign = SYMBOL["pass" if holds(study, verdicts) else "fail"]
    verdict = f"{sign} {headline(study, verdicts)}"
    if not scenario.priced:
        yield Text(verdict, "verdict")
        yield from (Text(sentence) for sentence in sentences)
        return
    names = Formula.leaf(option_span(study, HEADER))
    first = _found(study, names, 1)
    other = Formula("CONCATENATE", text("answer.other_first"), first)
    yield Text(verdict, "verdict", where(equals(first, study.ranked[0].name), verdict, other))
    yield from (Text(sentence) for sentence in sentences)


def _agreement(study: Study, inputs: Inputs) -> Formula:
    """Say whether the figures are still those of the run."""
    costs = Formula.leaf(option_span(study, "life_cycle_cost"))
    of_run = float(sum(option.life.figures["present_cost"] for option in study.ranked))
    # Added to the sum: a difference of exactly 0 would be left out as nothing.
    differs = absolute(total(costs) - of_run)
    agree = where(differs <= 1e-9 * abs(of_run), text("answer.unchanged"), text("answer.changed"))
    shares = inputs.cell("finance.grant_percent") + inputs.cell("finance.loan_percent")
    formula = where(shares > 100, text("answer.overpaid"), agree)
    assert isinstance(formula, Formula)
    return formula


def _found(study: Study, values: Operand, place: int) -> Formula:
    """Value of the option of a rank."""
    ranks = Formula.leaf(option_span(study, RANK))
    return Formula("INDEX", values, Formula("MATCH", place, ranks, 0))


def _figure_of(study: Study, key: str, place: int) -> Formula:
    return _found(study, Formula.leaf(option_span(study, key)), place)


def _options(study: Study) -> Table:
    """Lay the options out side by side, best first."""
    priced = study.scenario.priced
    figures = FIGURES if priced else TECHNICAL_FIGURES
    columns = (
        Column("option", text("answer.option" if priced else "answer.option_technical"), 38),
        Column(SERVICE, text("answer.service"), 17),
        *(Column(key, _heading(study, figure(key))) for key in figures),
    )
    rows = []
    for place, option in enumerate(study.ranked, start=1):
        names = Formula.leaf(option_span(study, HEADER))
        cells = {
            "option": Cell.worked_out(option.name, "text", _found(study, names, place)),
            SERVICE: Cell.worked_out(service_words(option), "text", _figure_of(study, SERVICE, place)),
        }
        cells |= {key: _cell(study, option, figure(key), place) for key in figures}
        rows.append(Row(option.name, cells, "best" if option.name == study.best else "plain"))
    return Table(MAIN, columns, tuple(rows))


def _heading(study: Study, of: Figure) -> str:
    unpriced = study.scenario.priced and any(option.unpriced for option in study.options)
    incomplete = text("answer.incomplete") if unpriced else ""
    return text(f"short.{of.key}", unit=of.unit_in(study.scenario.currency), incomplete=incomplete)


def _cell(study: Study, option: OptionResult, of: Figure, place: int) -> Cell:
    found, value = _figure_of(study, of.key, place), float(of.read(option))
    if of.key not in DASHED:
        return Cell.worked_out(value, of.format, found, word=text(of.absent))
    nothing = text("answer.nothing")
    formula = where(equals(Formula("N", found), 0), nothing, found)
    return Cell.worked_out(value or nothing, of.format if value else "word", formula)


def _basis(study: Study, inputs: Inputs) -> Table:
    """What the answer depends on."""
    scenario = study.scenario
    duty, quantities = study.ranked[0].duty, study.ranked[0].quantities
    worked_out: tuple[tuple[str, float, Kind], ...] = (
        ("demand", float(quantities.demand_m3[0]) / 365, "one"),
        ("head", duty.total_head_m, "one"),
        ("flow", duty.flow_m3h, "two"),
        ("ghi", float(study.weather.monthly_ghi_kwh_m2_day().mean()), "two"),
    )
    rows = [
        _basis_row(key, text(f"answer.{key}"), Cell(value, kind), text("answer.worked_out"))
        for key, value, kind in worked_out
    ]
    known, status = {field.key: field for field in walk(scenario)}, statuses(scenario)
    for key in ASSUMPTIONS:
        entry = known.get(key)
        if entry is not None and isinstance(entry.value, int | float) and (scenario.priced or not entry.is_of_money):
            label = text(f"answer.{key}", currency=scenario.currency)
            cell = Cell.worked_out(entry.value, plain_kind(entry.value), inputs.cell(key))
            rows.append(_basis_row(key, label, cell, text(f"inputs.status_{status[key]}")))
    return Table(BASIS, _left_columns("basis", text("answer.value"), text("answer.status")), tuple(rows))


def _left_columns(key: str, value: str, more: str) -> tuple[Column, ...]:
    return Column("label", text(f"answer.{key}")), Column("value", value), Column("more", more)


def _basis_row(key: str, label: str, value: Cell, status: str) -> Row:
    return Row(key, {"label": Cell(label), "value": value, "more": Cell(status, "centre")})


def _who_pays(study: Study) -> Table:
    """Who pays for building the option ranked first."""
    columns = _left_columns("who_pays", text("answer.year_0", currency=study.scenario.currency), text("answer.share"))
    return Table("answer.who_pays", columns, tuple(_shares(study, WHO_PAYS)))


def _shares(study: Study, keys: Sequence[str]) -> Iterator[Row]:
    """Figures of the option ranked first, each with its share of the last one, their sum."""
    first = study.ranked[0]
    all_of_it, whole = _figure_of(study, keys[-1], 1), float(figure(keys[-1]).read(first))
    for key in keys:
        found, value = _figure_of(study, key, 1), float(figure(key).read(first))
        cells = {
            "label": Cell(figure(key).label),
            "value": Cell.worked_out(value, "money", found),
            "more": Cell.worked_out(
                100 * value / whole if whole > 0 else 0.0,
                "one",
                where(all_of_it > 0, 100 * ratio(found, all_of_it), 0),
            ),
        }
        yield Row(key, cells, "total" if key == keys[-1] else "plain")


def _components(study: Study) -> Table:
    """Life-cycle cost of the option ranked first by the components that funders use."""
    currency = study.scenario.currency
    columns = _left_columns("components", text("answer.present_value", currency=currency), text("answer.share"))
    capital = float(figure("cost_of_capital").read(study.ranked[0]))
    rows = (
        *_shares(study, COMPONENTS),
        Row("cost_of_capital", {
            "label": Cell(text("answer.cost_of_capital")),
            "value": Cell.worked_out(capital, "money", _figure_of(study, "cost_of_capital", 1)),
            "more": Cell(text("answer.loan"), "centre"),
        }),
        Row("support", {
            "label": Cell(text("options.support")),
            "value": Cell(text("options.not_entered"), "word"),
            "more": Cell(text("answer.nothing"), "centre"),
        }),
    )  # fmt: skip
    return Table("answer.components", columns, rows)


def _charts(study: Study, rows: int) -> Iterator[Block]:
    currency, first = study.scenario.currency, study.ranked[0].name
    spent = [
        name
        for name in cost_categories(study.further_costs)
        if any(float(option.life.present_by_category.get(name, 0.0)) != 0 for option in study.options)
    ]
    yield Chart(
        "answer.costs",
        "stacked bars",
        text("answer.costs"),
        text("answer.costs_alt", option=first),
        tuple(
            Series(
                cost_figure(name).label.strip(),
                option_span(study, HEADER),
                option_span(study, f"life_cycle_{name}"),
                f"cost {name}" if name in COST_CATEGORIES else f"cost {study.further_costs.index(name)}",
            )
            for name in spent
        ),
        Axis(kind="text"),
        Axis(text("answer.costs_axis", currency=currency)),
        beside=BASIS,
        column=CHART_COLUMN,
        rows=rows,
    )
    yield Chart(
        "answer.time",
        "lines",
        text("answer.time"),
        text("answer.time_alt", option=first),
        tuple(
            Series(
                option.name,
                cash_span(study, option.name, YEAR),
                cash_span(study, option.name, "cumulated"),
                f"line {place}",
            )
            for place, option in enumerate(study.ranked[:SHOWN_LINES])
        ),
        Axis(text("column.year"), "year", 0, study.scenario.finance.analysis_period_years),
        Axis(text("answer.time_axis", currency=currency)),
        beside=BASIS,
        column=CHART_COLUMN,
        rows=rows,
    )
