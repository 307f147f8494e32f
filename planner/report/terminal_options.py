"""The table of options for the terminal: what a farmer and a funder ask first, in a hundred columns."""

from __future__ import annotations

from collections.abc import Sequence
from math import nan

from planner.figures import DAYS, figure
from planner.report.document import Cell, Column, Row, Table
from planner.report.pages.answer import DASHED
from planner.study.compare import OptionResult, Study
from planner.text import text

PRICED = (
    "short_days_per_year", "longest_short_days", "demand_met_percent", "tank_m3", "array_kwp", "grid_kwh_per_year",
    "fuel_l_per_year", "capital_cost", "life_cycle_cost", "levelised_cost_per_m3",
)  # fmt: skip
"""Figures of the table of options."""
TECHNICAL = (
    "short_days_per_year", "longest_short_days", "demand_met_percent", "demand_met_worst_month_percent", "modules",
    "array_kwp", "tank_m3", "grid_kwh_per_year", "fuel_l_per_year",
)  # fmt: skip
"""The same where there are no prices."""
INCOMPLETE = "*"
"""Marks an option whose costs leave out what has no price."""


def options_table(study: Study) -> Table:
    """Lay the options out side by side, best first; what none of them has, such as fuel, has no column."""
    wanted = PRICED if study.scenario.priced else TECHNICAL
    keys = [key for key in wanted if key not in DASHED or any(_value(option, key) for option in study.ranked)]
    return _table(study, "terminal.options", ("meets_target", *keys))


def days_table(study: Study) -> Table:
    """Show the days without water of every option: how many, in which month, how many in a row, what is missing."""
    return _table(study, "terminal.days", DAYS, heading=text("days.heading"))


def _table(study: Study, name: str, keys: Sequence[str], heading: str = "") -> Table:
    columns = [Column(key, text(f"narrow.{key}", currency=study.scenario.currency)) for key in ("option", *keys)]
    rows = []
    for option in study.ranked:
        incomplete = option.unpriced and "capital_cost" in keys
        cells = {"option": Cell(f"{option.name} {INCOMPLETE}" if incomplete else option.name)}
        cells |= {key: option_cell(option, key) for key in keys}
        rows.append(Row(option.name, cells, "best" if option.name == study.best else "plain"))
    return Table(name, tuple(columns), tuple(rows), heading=heading)


def _value(option: OptionResult, key: str) -> float:
    return float(figure(key).read(option))


def option_cell(option: OptionResult, key: str) -> Cell:
    """Cell of a figure of an option: words for yes, months and strings, a dash for what it does not have."""
    value = _value(option, key)
    if key == "meets_target":
        return Cell(text("answer.yes" if value else "answer.no"))
    if key == "modules":
        return Cell(_modules(option))
    if key == "worst_month" and value == value:
        return Cell(text(f"month_name.{value:.0f}"))
    return Cell(nan if key in DASHED and value == 0 else value, figure(key).format)


def _modules(option: OptionResult) -> str:
    if not option.strings:
        return text("answer.nothing")
    return text("narrow.series_by_strings", series=option.modules // option.strings, strings=option.strings)
