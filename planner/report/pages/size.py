"""The report of `planner size`: the best design of each option, its rivals, and what more service costs."""

from __future__ import annotations

from collections.abc import Hashable, Iterator, Sequence
from dataclasses import replace
from math import isnan, nan

from planner.answers.cautions import weather_first
from planner.figures import shown
from planner.report.document import Axis, Block, Cell, Chart, Column, Heading, Page, Report, Row, Series, Span, Table
from planner.report.document import Text as Words
from planner.report.pages.figure_cells import (
    ARRAY,
    COSTS,
    LEVELS,
    figure_cell,
    figure_column,
    figure_heading,
    figure_value,
    yes_no,
)
from planner.report.shown import NOTHING
from planner.report.shown import shown as shown_cell
from planner.study.sizing import CLOSE, OptionSizing, SizedDesign, Sizing
from planner.study.sizing_words import hours_words, misses_words, switch_sentence
from planner.text import text

RUNNERS_IN_TERMINAL, MOST_RUNNERS = 5, 1000
CHART_ROWS = 21
ANSWER_WIDTHS = (14.0,) * 8
OPTION_WIDTH = 24.0

SERVICE = ("demand_met_percent", "demand_met_worst_year_percent", "longest_short_days")
FIGURES = (*ARRAY, "tank_m3", *LEVELS, *SERVICE, "grid_kwh_per_year", "fuel_l_per_year", *COSTS)
"""Figures of a design, by their keys in the catalogue."""
WEIGHT = "weight"
"""Column of the objective, in the place of costs where there are no prices."""
SWITCH = "switch"
"""Column of both levels of the float switch, for the terminal."""
_IN_TERMINAL = (
    "array_kwp", "tank_m3", SWITCH, "hours", "longest_short_days", "demand_met_percent", "capital_cost",
    "life_cycle_cost",
)  # fmt: skip


def design_figures(design: SizedDesign, *, priced: bool) -> dict[str, float]:
    """Figures of a design by their keys in the catalogue; NaN for what it does not have, as costs without prices."""
    start, stop = design.levels or (nan, nan)
    known = shown(FIGURES, priced=priced)
    found = {key: figure_value(design, key) if key in known else nan for key in FIGURES if key not in LEVELS}
    return found | {"start_level_percent": start, "stop_level_percent": stop}


def _said(sizing: Sizing, key: str, **slots: object) -> str:
    """Words about costs, or about weights where there are no prices."""
    return text(key if sizing.scenario.priced else f"{key}_technical", **slots)


def _cost(sizing: Sizing) -> str:
    """Column by which designs are compared."""
    return "life_cycle_cost" if sizing.scenario.priced else WEIGHT


def _cost_heading(sizing: Sizing) -> str:
    priced, currency = sizing.scenario.priced, sizing.scenario.currency
    return figure_heading("life_cycle_cost", currency) if priced else text("size.weight")


def size_report(sizing: Sizing, sentences: Sequence[str]) -> Report:
    """Build the report of a finished sizing.

    Parameters
    ----------
    sizing : Sizing
        The finished sizing.
    sentences : sequence of str
        The answer in words.
    """
    pages = (_answer(sizing, sentences), _best_page(sizing), _runners_page(sizing), _front_page(sizing),
             _service_page(sizing))  # fmt: skip
    return Report(sizing.scenario.name, pages)


def size_summary(sizing: Sizing, sentences: Sequence[str], *, verbose: bool = False) -> Iterator[Block]:
    """Give what the terminal shows of a sizing; `verbose` adds the candidates that were left out."""
    table, runners = best_table(sizing), runners_table(sizing)
    first = sizing.ranked[0]
    if first.runners_up:
        keys = [(first.name, place) for place in range(min(RUNNERS_IN_TERMINAL, len(first.runners_up)))]
        slots = {"option": first.name, "count": len(keys), "all": len(first.runners_up), "percent": f"{100 * CLOSE:g}"}
        chosen = _there(_with_switch(runners), [*_IN_TERMINAL, WEIGHT])
        yield replace(_with_switch(runners).only(chosen, keys), heading=text("size.first_runners", **slots))
    heading = _said(sizing, "size.service_heading", currency=sizing.scenario.currency)
    service = service_table(sizing)
    yield replace(service.only([column.key for column in service.columns], _steps(service)), heading=heading)
    if verbose:
        yield from map(Words, _left_out(sizing))
    yield Words(text("caution.where_listed"), "note")
    heading = _said(sizing, "size.best_of", scenario=sizing.scenario.name)
    table = _with_switch(table)
    wanted = ["option", "meets_target", *(key for key in _IN_TERMINAL if key != "hours"), WEIGHT]
    yield replace(table.only(_there(table, wanted)), heading=heading)
    yield from map(Words, _unmet(sizing))
    yield from map(Words, weather_first(sentences, sizing.scenario))


def _with_switch(table: Table) -> Table:
    """Add a column that has both levels of the float switch."""
    rows = []
    for row in table.data_rows():
        levels = text("size.levels", start=row.cells[LEVELS[0]].value, stop=row.cells[LEVELS[1]].value)
        has_switch = not isnan(float(row.cells[LEVELS[0]].value or nan))
        rows.append(replace(row, cells={**row.cells, SWITCH: Cell(levels if has_switch else NOTHING)}))
    return replace(table, columns=(*table.columns, Column(SWITCH, text("size.switch"))), rows=tuple(rows))


def _steps(service: Table) -> list[Hashable]:
    """Rows of the table of service from which the next differs, and that of the target."""
    rows = list(service.data_rows())
    costs = [[shown_cell(cell) for key, cell in row.cells.items() if key != "share"] for row in rows]
    return [
        row.key
        for place, row in enumerate(rows)
        if row.look == "strong" or place + 1 == len(rows) or costs[place] != costs[place + 1]
    ]


def _there(table: Table, keys: Sequence[str]) -> list[str]:
    """Those of some columns that a table has."""
    known = {column.key for column in table.columns}
    return [key for key in keys if key in known]


def _unmet(sizing: Sizing) -> list[str]:
    return [
        text("size.unmet", option=option.name, why=misses_words(option))
        for option in sizing.ranked
        if option.best is None
    ]


def _left_out(sizing: Sizing) -> list[str]:
    return [
        text("size.left_out", option=option.name, what=what)
        for option in sizing.options
        for what in option.grid.left_out
    ]


def _answer(sizing: Sizing, sentences: Sequence[str]) -> Page:
    blocks: list[Block] = [Words(sentences[0], "verdict"), *map(Words, sentences[1:])]
    switches = [switch_sentence(option) for option in sizing.ranked if option.best and option.grid.has_switch]
    if switches:
        blocks += [Heading(text("size.switches")), *map(Words, switches)]
    blocks += [
        Heading(text("studies.how_found")),
        Words(f"{_said(sizing, 'size.note')} {text('caution.where_listed')}"),
    ]
    blocks += map(Words, [*_unmet(sizing), *_left_out(sizing)])
    under = _said(sizing, "size.answer_under", currency=sizing.scenario.currency)
    return Page("size.answer", text("studies.answer"), sizing.scenario.name, under, tuple(blocks), ANSWER_WIDTHS,
                one_page=True)  # fmt: skip


def _columns(sizing: Sizing) -> tuple[Column, ...]:
    currency, priced = sizing.scenario.currency, sizing.scenario.priced

    def of(*keys: str) -> list[Column]:
        return [figure_column(key, currency) for key in keys]

    return (
        Column("option", text("studies.option"), OPTION_WIDTH),
        *of(*ARRAY, "tank_m3", *LEVELS),
        *(Column(key, text(f"size.{key}")) for key in ("starts_at_m3", "stops_at_m3", "hours")),
        Column("pump_and_pipes", text("size.pump_and_pipes"), OPTION_WIDTH),
        *of(*SERVICE),
        Column("meets_target", text("studies.meets_target")),
        *of("grid_kwh_per_year", "fuel_l_per_year"),
        *(of(*COSTS) if priced else [Column(WEIGHT, text("size.weight"))]),
    )


def _cells(design: SizedDesign) -> dict[str, Cell]:
    starts, stops = design.switch_m3 or (nan, nan)
    none = text("figure.none")
    return {
        "option": Cell(design.option),
        "starts_at_m3": Cell(starts, "two", word=none),
        "stops_at_m3": Cell(stops, "two", word=none),
        "hours": Cell(hours_words(design) if design.levels else none),
        "pump_and_pipes": Cell("; ".join([design.pump, *design.pipes]), "wrap"),
        "meets_target": yes_no(design.meets_service),
        WEIGHT: Cell(design.objective, "two"),
        **{key: figure_cell(key, value) for key, value in design_figures(design, priced=True).items()},
    }


def best_table(sizing: Sizing) -> Table:
    """Best design of each option, best option first; where none meets the target, the one that misses it by least."""
    currency = sizing.scenario.currency
    more = (
        Column("tried", text("size.tried")),
        Column("by_run", _said(sizing, "size.by_run", currency=currency)),
        Column("misses_by", text("size.misses_by")),
    )
    rows = [
        Row(
            option.name,
            {
                **_cells(option.nearest),
                "tried": Cell(float(option.grid.count), "whole"),
                "by_run": Cell(option.by_run_cost, "money" if sizing.scenario.priced else "two"),
                "misses_by": Cell(option.misses_by_percent, "two"),
            },
            "best" if place == 0 and option.best else "plain",
        )
        for place, option in enumerate(sizing.ranked)
    ]
    return Table("size.best", (*_columns(sizing), *more), tuple(rows), freeze=1)


def _best_page(sizing: Sizing) -> Page:
    under = _said(sizing, "size.best_under")
    return Page("size.best", text("size.best"), text("size.best"), under, (best_table(sizing),), one_page=True)


def runners_table(sizing: Sizing) -> Table:
    """Others that meet the target and cost little more than the best of their option, cheapest first."""
    columns = (*_columns(sizing), Column("above_best", text("size.above_best")))
    return Table("size.runners", columns, tuple(row for option in sizing.ranked for row in _runners(option)), freeze=1)


def _runners(option: OptionSizing) -> Iterator[Row]:
    if option.best is None:
        return
    for place, design in enumerate(option.runners_up[:MOST_RUNNERS]):
        above = 100 * (design.objective / option.best.objective - 1)
        yield Row((option.name, place), {**_cells(design), "above_best": Cell(above, "two")})


def _runners_page(sizing: Sizing) -> Page:
    under = text("size.runners_under", percent=f"{100 * CLOSE:g}")
    return Page("size.runners", text("size.runners"), text("size.runners"), under, (runners_table(sizing),))


def _front_page(sizing: Sizing) -> Page:
    """Build the page of the trade-off: its chart first, as the table is long."""
    key = "size.front"
    rows = [
        Row((option.name, place), _cells(design))
        for option in sizing.ranked
        for place, design in enumerate(option.front)
    ]
    series = []
    for number, option in enumerate(sizing.ranked):
        last = (option.name, len(option.front) - 1)
        x, y = (Span(key, (option.name, 0), column, last) for column in ("demand_met_percent", _cost(sizing)))
        series.append(Series(option.name, x, y, f"line {number}"))
    chart = Chart(
        "size.front_chart",
        "lines",
        _said(sizing, "size.front_chart"),
        _said(sizing, "size.front_alt", options=", ".join(sizing.ranking)),
        tuple(series),
        Axis(figure_heading("demand_met_percent", sizing.scenario.currency), high=100),
        Axis(_cost_heading(sizing)),
        rows=CHART_ROWS,
    )
    table = Table(key, _columns(sizing), tuple(rows))
    return Page(key, text("size.front"), text("size.front"), _said(sizing, "size.front_under"), (chart, table))


def service_table(sizing: Sizing) -> Table:
    """Least life-cycle cost, or weight, of each option by the share of the demand that is met at least."""
    priced, target = sizing.scenario.priced, sizing.scenario.service.demand_met_percent
    unit = sizing.scenario.currency if priced else "kWp"
    columns = [Column("share", text("size.share"), OPTION_WIDTH)]
    columns += [Column(option.name, text("studies.option_cost", option=option.name, currency=unit))
                for option in sizing.ranked]  # fmt: skip
    rows = []
    for place, (share, _) in enumerate(sizing.ranked[0].least_cost_at):
        label = text("size.at_least_target" if share == target else "size.at_least", percent=f"{share:g}")
        cells = {"share": Cell(label)}
        for option in sizing.ranked:
            design = option.least_cost_at[place][1]
            cost = nan if design is None else design.objective
            cells[option.name] = Cell(cost, "money" if priced else "two", word=text("size.not_reached"))
        rows.append(Row(share, cells, "strong" if share == target else "plain"))
    return Table("size.service", tuple(columns), tuple(rows))


def _service_page(sizing: Sizing) -> Page:
    table = service_table(sizing)
    shares = [share for share, _ in sizing.ranked[0].least_cost_at]
    first, last = shares[0], shares[-1]
    series = [
        Series(
            option.name,
            Span(table.key, first, "share", last),
            Span(table.key, first, option.name, last),
            f"line {number}",
        )
        for number, option in enumerate(sizing.ranked)
    ]
    chart = Chart(
        "size.service_chart",
        "columns",
        _said(sizing, "size.service_chart"),
        _said(sizing, "size.service_alt", options=", ".join(sizing.ranking)),
        tuple(series),
        Axis(figure_heading("demand_met_percent", sizing.scenario.currency), "text"),
        Axis(_cost_heading(sizing)),
        rows=CHART_ROWS,
    )
    title, under = _said(sizing, "size.service"), _said(sizing, "size.service_under")
    return Page(table.key, title, title, under, (table, chart), one_page=True)
