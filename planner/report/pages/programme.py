"""The page 'Programme' of a comparison: one row a site, what all together come to, and one chart."""

from __future__ import annotations

from collections.abc import Sequence
from math import isfinite, nan

from planner.answers.of_study import failed_of_first, study_verdicts
from planner.figures import figure
from planner.money.formula import Formula
from planner.money.functions import ratio, total
from planner.report.document import At, Axis, Block, Cell, Chart, Column, Page, Row, Series, Span, Table, Text
from planner.report.pages.figure_cells import figure_heading, yes_no
from planner.scenario.errors import InputError, Problem
from planner.study.compare import Study
from planner.text import text

PROGRAMME, TOTAL = "compare.programme", "total"
LEAST_ROWS = 14
_SUMMED = ("failing", "people", "capital_cost", "grant", "life_cycle_cost")
_FIGURES = (
    "capital_cost", "grant", "life_cycle_cost", "capital_cost_per_person", "grant_per_person",
    "tariff_operation_and_renewals",
)  # fmt: skip
_SERVICE = ("demand_met_worst_year_percent", "short_days_per_year")


def programme_currency(studies: Sequence[Study], file: str) -> str:
    """Currency in which all scenarios can be compared; '' where none has prices.

    Raises
    ------
    InputError
        When they have different ones and do not all give a rate of exchange to one.
    """
    currencies = {study.scenario.currency for study in studies}
    if len(currencies) == 1:
        return currencies.pop()
    common = {study.scenario.finance.programme_currency for study in studies} - {None}
    if len(common) == 1:
        wanted = str(common.pop())
        if all(wanted in (study.scenario.currency, study.scenario.finance.programme_currency) for study in studies):
            return wanted
    listed = (
        text("compare.in_currency", scenario=study.scenario.name, currency=study.scenario.currency) for study in studies
    )
    raise InputError(file, [Problem("currency", text("compare.currencies", listed=", ".join(listed)))])


def exchanged(study: Study, currency: str) -> float:
    """Units of a currency for one of a scenario's own: as `programme_currency` found it."""
    scenario = study.scenario
    if scenario.currency == currency:
        return 1.0
    assert scenario.finance.exchange_rate is not None
    return 1 / scenario.finance.exchange_rate


def programme_page(studies: Sequence[Study], names: Sequence[str], currency: str) -> Page:
    """Build the page from finished comparisons.

    Parameters
    ----------
    studies : sequence of Study
        At least two.
    names : sequence of str
        What each is called.
    currency : str
        Currency of every sum.
    """
    priced = studies[0].scenario.priced
    technical = "" if priced else "_technical"
    money = _FIGURES if priced else ()
    widths = {"scenario": 30.0, "option": 22.0, "meets": 10.0, "failing": 9.0, "people": 10.0}
    columns = (
        *(Column(key, text(f"compare.{key}{technical if key == 'option' else ''}"), w) for key, w in widths.items()),
        *(Column(key, _heading(key, currency), 12.0) for key in (*money, *_SERVICE)),
    )
    rows = [
        Row(place, _cells(study, name, money, place, exchanged(study, currency) if priced else 1.0))
        for place, (study, name) in enumerate(zip(studies, names, strict=True))
    ]
    rows.append(Row(TOTAL, _totals([dict(row.cells) for row in rows], money), "total"))
    table = Table(PROGRAMME, columns, tuple(rows), freeze=1)
    shown = "capital_cost_per_person" if priced and studies[0].scenario.people else "short_days_per_year"

    def sites(key: str) -> Span:
        return Span(PROGRAMME, 0, key, len(rows) - 2)

    chart = Chart(
        "compare.chart",
        "stacked bars",
        _heading(shown, currency),
        text("compare.chart_alt", figure=_heading(shown, currency), scenarios=", ".join(names)),
        (Series(_heading(shown, currency), sites("scenario"), sites(shown), "dark"),),
        Axis(kind="text"),
        Axis(_heading(shown, currency), low=0),
        rows=max(LEAST_ROWS, len(rows) + 8),
    )
    rates = [
        text("compare.rate", scenario=name, rate=study.scenario.finance.exchange_rate, own=study.scenario.currency,
             currency=currency)
        for study, name in zip(studies, names, strict=True)
        if priced and study.scenario.currency != currency
    ]  # fmt: skip
    under = text(f"compare.side_under{technical}", currency=currency)
    blocks: tuple[Block, ...] = (table, *(Text(rate, "note") for rate in rates), chart)
    return Page(PROGRAMME, text("compare.programme"), text("compare.programme"), under, blocks, one_page=True)


def _heading(key: str, currency: str) -> str:
    if key == "grant_per_person":
        return text("compare.grant_per_person", currency=currency)
    return figure_heading(key, currency)


def _cells(study: Study, name: str, money: Sequence[str], place: int, factor: float) -> dict[str, Cell]:
    """One site: sums in the programme's currency."""
    scenario, option = study.scenario, study.ranked[0]
    people = float(scenario.people or nan)
    cells = {
        "scenario": Cell(name, "wrap"),
        "option": Cell(option.name, "wrap"),
        "meets": yes_no(option.meets_service),
        "failing": Cell(float(len(failed_of_first(study, study_verdicts(study)))), "whole"),
        "people": Cell(people, "whole", word=text("compare.no_people")),
    }
    for key in money:
        if key == "grant_per_person":
            own = {each: Formula.leaf(At(PROGRAMME, place, each)) for each in ("grant", "people")}
            value = factor * float(figure("grant").read(option)) / people
            formula = ratio(own["grant"], own["people"]) if isfinite(people) else 0.0
            cells[key] = Cell.worked_out(value, "price", formula, word=text("compare.no_people"))
        else:
            value = factor * float(figure(key).read(option))
            cells[key] = Cell(value, figure(key).format, word=figure(key).words_for(option))
    for key in _SERVICE:
        cells[key] = Cell(float(figure(key).read(option)), figure(key).format, word=figure(key).words_for(option))
    return cells


def _totals(sites: Sequence[dict[str, Cell]], money: Sequence[str]) -> dict[str, Cell]:
    """What all sites come to: sums, and sums for each person of those that serve people."""
    cells = {key: Cell(None) for key in sites[0]} | {"scenario": Cell(text("compare.all_sites", count=len(sites)))}
    last = len(sites) - 1

    def span(key: str) -> Formula:
        return Formula.leaf(Span(PROGRAMME, 0, key, last))

    def numbers(key: str) -> list[float]:
        found = (site[key].value for site in sites)
        return [float(value) if isinstance(value, int | float) and isfinite(value) else 0.0 for value in found]

    for key in _SUMMED:
        if key in sites[0]:
            cells[key] = Cell.worked_out(sum(numbers(key)), "whole" if key in ("failing", "people") else "money",
                                         total(span(key)))  # fmt: skip
    serving = [1.0 if each else 0.0 for each in numbers("people")]
    people, served = sum(numbers("people")), total(span("people"))
    for key, of in (("capital_cost_per_person", "capital_cost"), ("grant_per_person", "grant")):
        if key in money and people:
            value = sum(each * counts for each, counts in zip(numbers(of), serving, strict=True)) / people
            weighted = Formula("SUMPRODUCT", Formula("*", span(of), Formula("ISNUMBER", span("people"))))
            cells[key] = Cell.worked_out(value, "price", ratio(weighted, served))
    worst = "demand_met_worst_year_percent"
    cells[worst] = Cell.worked_out(min(numbers(worst)), "two", Formula("MIN", span(worst)))
    return cells
