"""The page 'Options': every figure of every supply option side by side, the sums of money alive."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from types import SimpleNamespace

import numpy as np

from planner.figures import Figure, Group, catalogue, figures_of
from planner.money.figures import figures_with
from planner.money.formula import Formula, Operand
from planner.money.returns import NO_REMARK
from planner.report.document import At, Cell, Column, Kind, Look, Page, Row, Section, Span, Table, Value
from planner.report.pages.cash import REAL_DISCOUNT_RATE, cash_cells, cash_ranges
from planner.report.pages.returns import return_formula
from planner.report.pages.simulated import LIFE_YEARS, PEOPLE
from planner.study.compare import OptionResult, Study
from planner.study.ranking import RankTerms, rank_of
from planner.text import text

OPTIONS, RANK, MEETS = "options", "rank", "meets_target"
LAST_PRINTED = "owner_life_cycle_cost"
"""Last figure of the printed set: components, carbon dioxide and the comparison with the reference follow it."""
REMARKS = {
    "internal_rate_of_return_percent": "irr_reason",
    "payback_years": "payback_reason",
    "discounted_payback_years": "discounted_payback_reason",
}
"""Definitions in `money.returns.RETURNS` that say why there is no such figure."""


def option_cell(key: str, option: str) -> Formula:
    """Cell of a figure of an option."""
    return Formula.leaf(At(OPTIONS, key, option))


def option_span(study: Study, key: str) -> Span:
    """Cells of a figure of all options, in the order of the run."""
    return Span(OPTIONS, key, study.ranking[0], None, study.ranking[-1])


def service_words(option: OptionResult) -> str:
    """Say with a sign and words whether an option meets the service target."""
    return text("option.meets" if option.meets_service else "option.misses")


def options_page(study: Study) -> Page:
    """Build the page 'Options' from a finished comparison."""
    finance = study.scenario.finance
    names = [option.name for option in study.ranked]
    columns = (
        Column("figure", text("options.figure"), 38),
        Column("unit", text("column.unit")),
        *(Column(name, name, 15) for name in names),
    )
    rows = tuple(row for part in _parts(study) for row in part)
    years = Table("options.years", columns, tuple(_by_year(study)), header=False)
    under = text(
        "options.under" if study.scenario.priced else "options.under_technical",
        currency=study.scenario.currency,
        prices=text(f"cash.prices_{finance.prices}"),
        years=finance.analysis_period_years,
    )
    last = LAST_PRINTED if study.scenario.priced else None
    table = Table(OPTIONS, columns, rows, freeze=2, last_printed=last)
    return Page("options", text("page.options"), text("options.title"), under, (table, years), printed=1)


def _parts(study: Study) -> Iterator[Iterator[Row | Section]]:
    yield _part(study, "design", after=_design_words(study))
    priced = study.scenario.priced
    yield _part(study, "service", [*_service(study), *([] if priced else [_rank(study)])])
    yield _part(study, "energy")
    if priced:
        yield _part(study, "money", [_rank(study)])
        yield _part(study, "components", after=[_words(study, "support", lambda _: text("options.not_entered"))])
    yield _part(study, "carbon", after=[_words(study, "co2_covers", _covers, "wrap")])
    if priced:
        yield _comparison(study)


def _heading(study: Study, group: str) -> Section:
    return Section(text(f"options.{group}", reference=study.reference))


def _part(study: Study, group: Group, before: Iterable[Row] = (), after: Iterable[Row] = ()) -> Iterator[Row | Section]:
    yield _heading(study, group)
    yield from before
    yield from (_figure(study, figure) for figure in figures_of(group, study.further_costs) if figure.key != MEETS)
    yield from after


def _row(study: Study, key: str, label: str, unit: str, cell: Callable[[OptionResult], Cell]) -> Row:
    cells = {"figure": Cell(label), "unit": Cell(unit)}
    for option in study.ranked:
        made = cell(option)
        look: Look = "best" if option.name == study.best else "plain"
        cells[option.name] = Cell(made.value, made.kind, look, made.word, made.formula)
    return Row(key, cells)


def _words(study: Study, key: str, of: Callable[[OptionResult], str], kind: Kind = "word") -> Row:
    return _row(study, key, text(f"options.{key}"), "", lambda option: Cell(of(option), kind))


def _figure(study: Study, figure: Figure) -> Row:
    def cell(option: OptionResult) -> Cell:
        formula = _formula(study, option, figure) if figure.money and figure.known(option) else 0.0
        return Cell.worked_out(float(figure.read(option)), figure.format, formula, word=figure.words_for(option))

    return _row(study, figure.key, figure.label, figure.unit_in(study.scenario.currency), cell)


def _formula(study: Study, option: OptionResult, figure: Figure) -> Operand:
    """Work a figure of money out from the flows and from other cells of this page."""
    name = option.name
    if figure.group == "comparison":
        costs = (option_cell("life_cycle_cost", each) for each in (name, study.reference))
        return return_formula(study, name, figure.money, *costs)
    further = study.further_costs
    definitions = figures_with(further)
    figures = {each.money: option_cell(each.key, name) for each in catalogue(further) if each.money in definitions}
    o = SimpleNamespace(
        **{**cash_ranges(study, name), **figures},
        start=SimpleNamespace(**cash_cells(name, 0, further)),
        real_discount_rate=REAL_DISCOUNT_RATE,
        life_years=LIFE_YEARS,
        people=PEOPLE,
    )
    return definitions[figure.money](o)


def _rank(study: Study) -> Row:
    """Rank as `study.ranking` has it, in the order of the run."""

    def rank_terms(cell: Callable[[str], Formula]) -> RankTerms:
        meets = cell("meets_target")
        place = Formula("COLUMN", meets)
        # Without prices the place decides, as it does between equal costs.
        cost = cell("life_cycle_cost") if study.scenario.priced else place
        return RankTerms(meets, cell("demand_met_percent"), cost, place)

    every = rank_terms(lambda key: Formula.leaf(option_span(study, key)))

    def cell(option: OptionResult) -> Cell:
        rank = rank_of(rank_terms(lambda key: option_cell(key, option.name)), every)
        return Cell.worked_out(float(study.ranking.index(option.name) + 1), "whole", rank)

    return _row(study, RANK, text("options.rank"), "", cell)


def _design_words(study: Study) -> Iterator[Row]:
    yield _words(study, "controller", lambda option: text(f"controller.{option.scenario.controller.mode}"), "wrap")
    yield _words(study, "pump", lambda option: option.scenario.pump.name, "wrap")


def _service(study: Study) -> Iterator[Row]:
    service = study.scenario.service
    target, worst = f"{service.demand_met_percent:g}", service.demand_met_worst_year_percent
    label = text("options.target", percent=target)
    if worst is not None:
        label = text("options.target_worst_year", percent=target, worst=f"{worst:g}")
    yield _row(study, MEETS, label, "", lambda option: Cell(float(option.meets_service), "yes"))


def _covers(option: OptionResult) -> str:
    parts = [
        source.emission_name
        if source.emission_known(option.scenario)
        else text("emission.not_counted", what=source.emission_name)
        for source in option.sources
        if source.emission is not None
    ]
    return "; ".join(parts) or text("emission.none")


def _comparison(study: Study) -> Iterator[Row | Section]:
    yield _heading(study, "comparison")
    for figure in figures_of("comparison"):
        yield _figure(study, figure)
        if figure.key in REMARKS:
            yield _remark(study, REMARKS[figure.key])


def _remark(study: Study, name: str) -> Row:
    def cell(option: OptionResult) -> Cell:
        if option.comparison is None:
            return Cell(str(NO_REMARK), "wrap")
        costs = (option_cell("life_cycle_cost", each) for each in (option.name, study.reference))
        value: Value = str(getattr(option.comparison, name)) or str(NO_REMARK)
        return Cell.worked_out(value, "wrap", return_formula(study, option.name, name, *costs))

    return _row(study, name, text(f"options.{name}"), "", cell)


def _by_year(study: Study) -> Iterator[Row | Section]:
    """Demand met, year by year."""
    yield _heading(study, "by_year")
    for year in range(study.scenario.finance.analysis_period_years):

        def cell(option: OptionResult, year: int = year) -> Cell:
            demand = float(option.quantities.demand_m3[year])
            share = 100 * float(option.quantities.delivered_m3[year]) / demand if demand > 0 else np.nan
            return Cell(share, "two", word=text("by_time.no_demand"))

        unit = text("options.of_demand")
        yield _row(study, f"demand_met_year_{year + 1}", text("by_time.year", year=year + 1), unit, cell)
