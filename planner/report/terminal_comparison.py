"""Several sites side by side for the terminal: a row for each, and what they come to together."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from planner.answers.programme import programme_sentences
from planner.figures import figure
from planner.report.document import Block, Cell, Column, Row, Table, Text
from planner.report.terminal_options import INCOMPLETE, option_cell
from planner.study.compare import Study
from planner.text import text

PRICED = (
    "meets_target", "short_days_per_year", "longest_short_days", "array_kwp", "tank_m3", "capital_cost",
    "life_cycle_cost", "levelised_cost_per_m3",
)  # fmt: skip
"""Figures of the option ranked first at each site."""


def comparison_summary(studies: Sequence[Study]) -> Iterator[Block]:
    """Give what the terminal shows of several sites, the sums of all last."""
    currency, priced = studies[0].scenario.currency, studies[0].scenario.priced
    keys = [key for key in PRICED if priced or not figure(key).is_money]
    columns = [Column("site", text("programme.site")), Column("option", text("narrow.option"))]
    columns += [Column(key, text(f"narrow.{key}", currency=currency)) for key in keys]
    rows = []
    for place, study in enumerate(studies):
        first = study.ranked[0]
        name = f"{first.name} {INCOMPLETE}" if priced and first.unpriced else first.name
        cells = {"site": Cell(study.scenario.name), "option": Cell(name)}
        rows.append(Row(place, cells | {key: option_cell(first, key) for key in keys}))
    yield Table("terminal.comparison", tuple(columns), tuple(rows), heading=text("programme.heading"))
    if any(priced and study.ranked[0].unpriced for study in studies):
        yield Text(text("programme.incomplete", mark=INCOMPLETE))
    yield from map(Text, programme_sentences(studies))
