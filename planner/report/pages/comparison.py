"""The report of `planner run --compare`: several sites or designs side by side."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from math import nan

from planner.answers.of_study import failed_of_first, study_verdicts
from planner.figures import DAYS, figure, shown
from planner.report.document import (
    Block,
    Cell,
    Column,
    Kind,
    Page,
    Report,
    Row,
    Table,
)
from planner.report.document import Text as Words
from planner.report.pages.figure_cells import figure_cell, figure_column
from planner.report.pages.options import service_words
from planner.report.pages.programme import exchanged, programme_currency, programme_page
from planner.report.shown import NOTHING
from planner.scenario.errors import InputError, Problem
from planner.study.compare import OptionResult, Study
from planner.text import text

LABEL_WIDTH, SCENARIO_WIDTH, OPTION_WIDTH = 38.0, 24.0, 34.0
CHART_ROWS = 18
DAYS_PER_YEAR = 365

_SERVICE = (*DAYS, "demand_met_percent")
_DESIGN = ("total_dynamic_head_m", "duty_flow_m3h", "tank_m3", "array_kwp", "grid_kwh_per_year", "fuel_l_per_year")
_MONEY = (
    "capital_cost", "grant", "loan", "own_funds", "life_cycle_cost", "annualised_cost", "levelised_cost_per_m3",
    "annualised_cost_per_person",
)  # fmt: skip
_OF_OPTIONS = (
    *DAYS, "demand_met_percent", "tank_m3", "array_kwp", "capital_cost", "life_cycle_cost", "annualised_cost",
    "levelised_cost_per_m3",
)  # fmt: skip
_BASES: dict[str, Callable[[Study], object]] = {
    "analysis_period": lambda study: study.scenario.finance.analysis_period_years,
    "discount_rate": lambda study: study.scenario.finance.discount_rate_percent,
    "prices": lambda study: study.scenario.finance.prices,
    "inflation": lambda study: study.scenario.finance.inflation_percent,
    "target": lambda study: study.scenario.service.demand_met_percent,
}
"""What must be alike for costs to be compared."""
_TECHNICAL_BASES = ("analysis_period", "target")
"""The same where there are no prices."""


def comparison_report(studies: Sequence[Study], file: str) -> Report:
    """Build the report of several finished scenarios.

    Parameters
    ----------
    studies : sequence of Study
        At least two, in the order to be shown.
    file : str
        File to which the report will be written, for messages.

    Raises
    ------
    InputError
        When there are fewer than two, or their currencies differ and no rate of exchange brings them to one.
    """
    if len(studies) < 2:
        raise InputError(file, [Problem("", text("compare.too_few"))])
    unpriced = [study.scenario.name for study in studies if not study.scenario.priced]
    if unpriced and len(unpriced) < len(studies):
        raise InputError(file, [Problem("currency", text("compare.some_unpriced", listed=", ".join(unpriced)))])
    currency, names = programme_currency(studies, file), _names(studies)
    pages = (page(studies, names, currency) for page in (programme_page, _side_page, _options_page))
    return Report(" / ".join(names), tuple(pages))


def _names(studies: Sequence[Study]) -> list[str]:
    """Names of the scenarios; equal ones are told apart by a number."""
    plain = [study.scenario.name for study in studies]
    return [
        name if plain.count(name) == 1 else text("compare.numbered", name=name, number=place)
        for place, name in enumerate(plain, start=1)
    ]


def _side_page(studies: Sequence[Study], names: Sequence[str], currency: str) -> Page:
    priced = studies[0].scenario.priced
    technical = "" if priced else "_technical"
    blocks: list[Block] = []
    bases = [key for key in _BASES if priced or key in _TECHNICAL_BASES]
    differing = [key for key in bases if len({_BASES[key](study) for study in studies}) > 1]
    if differing:
        what = ", ".join(text(f"compare.differ_{key}") for key in differing)
        blocks.append(Words(text(f"compare.differ{technical}", what=what), "verdict"))
    places = [f"{place}" for place in range(len(studies))]
    columns = (
        Column("figure", text("compare.figure"), LABEL_WIDTH),
        Column("unit", text("compare.unit")),
        *(Column(place, name, SCENARIO_WIDTH) for place, name in zip(places, names, strict=True)),
    )
    lines = [dict(_lines(study, currency)) for study in studies]
    rows = []
    for key in lines[0]:
        label, unit = _label(f"{key}{technical}" if key == "first" else key, currency)
        cells = {place: line[key] for place, line in zip(places, lines, strict=True)}
        rows.append(Row(key, {"figure": Cell(label), "unit": Cell(unit), **cells}))
    table = Table("compare.side", columns, tuple(rows), freeze=2)
    under = text(f"compare.side_under{technical}", currency=currency)
    return Page(table.key, text("compare.side"), text("compare.side_title"), under, (*blocks, table))


def _label(key: str, currency: str) -> tuple[str, str]:
    """Label and unit of a line: a figure of the catalogue, or one that belongs to the scenario."""
    if key in (*_SERVICE, *_DESIGN, *_MONEY):
        return figure(key).label.strip(), figure(key).unit_in(currency)
    units = {name: text(f"compare.{name}_unit") for name in ("demand", "delivered", "analysis_period", "discount_rate")}
    return text(f"compare.{key}"), units.get(key, "")


def _lines(study: Study, currency: str) -> Iterator[tuple[str, Cell]]:
    """Give the cells of one scenario from top to bottom, by key, sums of money in one currency."""
    scenario, option = study.scenario, study.ranked[0]
    priced = scenario.priced

    def words(value: str) -> Cell:
        return Cell(value or NOTHING, "wrap")

    def figures(*keys: str) -> Iterator[tuple[str, Cell]]:
        return ((key, _figure_cell(study, option, key, currency)) for key in keys)

    def number(value: float | None, kind: Kind) -> Cell:
        return Cell(nan if value is None else float(value), kind, word=text("compare.no_people"))

    yield "place", words(scenario.site.place)
    yield "first", words(option.name)
    yield "service", words(service_words(option))
    yield "failing", number(len(failed_of_first(study, study_verdicts(study))), "whole")
    if priced:
        yield "unpriced", words(", ".join(thing.label() for thing in option.unpriced))
    yield from figures(*_SERVICE)
    yield "people", number(scenario.people, "whole")
    yield "demand", number(option.quantities.demand_m3[0] / DAYS_PER_YEAR, "one")
    yield "delivered", number(option.quantities.delivered_m3.mean(), "whole")
    yield from figures(*_DESIGN)
    yield "analysis_period", number(scenario.finance.analysis_period_years, "whole")
    if priced:
        yield "discount_rate", number(scenario.finance.discount_rate_percent, "two")
        yield "prices", words(scenario.finance.prices)
        yield from figures(*_MONEY)


def _figure_cell(study: Study, option: OptionResult, key: str, currency: str) -> Cell:
    factor = exchanged(study, currency) if figure(key).is_money else 1.0
    return figure_cell(key, factor * float(figure(key).read(option)))


def _options_page(studies: Sequence[Study], names: Sequence[str], currency: str) -> Page:
    priced = studies[0].scenario.priced
    keys = shown(_OF_OPTIONS, priced=priced)
    columns = (
        Column("scenario", text("compare.scenario"), OPTION_WIDTH),
        Column("option", text("studies.option")),
        Column("service", text("compare.service")),
        *(figure_column(key, currency) for key in keys),
    )
    rows = []
    for place, (name, study) in enumerate(zip(names, studies, strict=True)):
        for option in study.ranked:
            incomplete = priced and option.unpriced
            cells = {
                "scenario": Cell(name, "wrap"),
                "option": Cell(text("compare.incomplete", option=option.name) if incomplete else option.name),
                "service": Cell(service_words(option)),
                **{key: _figure_cell(study, option, key, currency) for key in keys},
            }
            rows.append(Row((place, option.name), cells, "best" if option.name == study.best else "plain"))
    table = Table("compare.all", columns, tuple(rows), freeze=1)
    return Page(table.key, text("compare.all"), text("compare.all_title"), text("compare.all_under"), (table,))
