"""The page 'What it rests on': main inputs, who pays, what the life-cycle cost is made of, and what was not given."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from dataclasses import replace

from planner.figures import figure
from planner.money.functions import ratio, where
from planner.report.document import Axis, Block, Cell, Chart, Column, Kind, Page, Row, Series, Table, Text
from planner.report.pages.answer import figure_of
from planner.report.pages.cash import YEAR, cash_span
from planner.report.pages.inputs import Inputs, plain_kind
from planner.report.pages.rests_on import IN_WORKBOOK, uncertainty_blocks
from planner.report.pages.since import while_unchanged
from planner.scenario.starter import statuses
from planner.scenario.walk import walk
from planner.study.compare import Study
from planner.text import text

BASIS = "answer.basis"
CHART_ROWS, SHOWN_LINES = 19, 4
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
_WIDTHS = (44.0, 14.0, 14.0, 13.0, 17.0, 23.0)


def basis_page(study: Study, inputs: Inputs, sentences: Sequence[str], already: Collection[str] = ()) -> Page:
    """Build the page 'What it rests on'.

    Parameters
    ----------
    study : Study
        The finished comparison.
    inputs : Inputs
        Where the inputs stand.
    sentences : sequence of str
        The answer in words, at length.
    already : collection of str
        Sentences that stand on the first page.
    """
    found: list[Block] = [Text(sentence) for sentence in sentences if sentence not in already]
    found.append(_basis(study, inputs))
    if study.scenario.priced:
        found += [_who_pays(study), _components(study)]
    uncertain = uncertainty_blocks(study, IN_WORKBOOK)
    found += [block for block in uncertain if not (isinstance(block, Text) and block.text in already)]
    blocks = [
        replace(block, formula=while_unchanged(block.text)) if isinstance(block, Text) else block for block in found
    ]
    if study.scenario.priced:
        blocks.append(_chart(study))
    name = text("page.basis")
    return Page("basis", name, name, study.scenario.name, tuple(blocks), _WIDTHS, one_page=True, upright=True)


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
    all_of_it, whole = figure_of(study, keys[-1], 1), float(figure(keys[-1]).read(first))
    for key in keys:
        found, value = figure_of(study, key, 1), float(figure(key).read(first))
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
            "value": Cell.worked_out(capital, "money", figure_of(study, "cost_of_capital", 1)),
            "more": Cell(text("answer.loan"), "centre"),
        }),
        Row("support", {
            "label": Cell(text("options.support")),
            "value": Cell(text("options.not_entered"), "word"),
            "more": Cell(text("answer.nothing"), "centre"),
        }),
    )  # fmt: skip
    return Table("answer.components", columns, rows)


def _chart(study: Study) -> Chart:
    currency, first = study.scenario.currency, study.ranked[0].name
    return Chart(
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
        rows=CHART_ROWS,
    )
