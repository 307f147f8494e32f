"""What an answer rests on: numbers that were not given, by what they change of the option that stands first."""

from __future__ import annotations

from collections.abc import Sequence
from math import isnan

from planner.report.document import Cell, Column, Kind, Row, Table
from planner.report.pages.inputs import plain_kind
from planner.report.shown import NOTHING
from planner.study.compare import Study
from planner.study.rests_on import Effect, Pair
from planner.text import model_words, number, text

RESTS_ON = "rests_on"
SHOWN = 5
"""So many are named, if they change anything."""
NOTABLE = 0.01
"""Change of the share met, or of the cost in proportion to itself, from which a number is named."""
_FIGURES = ("value", "unit", "tried", "met", "cost")
IN_TERMINAL, IN_WORKBOOK, IN_BRIEF = ("key", *_FIGURES), ("label", *_FIGURES), ("label", *_FIGURES, "source")
"""Columns by writer: keys where they can be typed; on a sheet a reason would stand in a column of figures."""


def rests_on_table(study: Study, columns: Sequence[str]) -> Table:
    """Lay out the numbers that were not given and matter most, with what is met where each is off.

    Parameters
    ----------
    study : Study
        The finished comparison; nothing stands in the table where effects were not tried.
    columns : sequence of str
        Keys of the columns; that of costs is left out where there are no prices.
    """
    currency, priced = study.scenario.currency, study.scenario.priced
    shown = [key for key in columns if priced or key != "cost"]
    headings = tuple(Column(key, text(f"rests_on.{key}", currency=currency)) for key in shown)
    heading = text("rests_on.heading", option=study.ranked[0].name)
    return Table(RESTS_ON, headings, tuple(map(_row, _shown(study))), heading=heading)


def more_words(study: Study) -> str:
    """Say how many more were tried, and where all that was not given stands."""
    shown = len(_shown(study))
    return text("rests_on.more" if shown else "rests_on.none", count=len(study.effects) - shown)


def _shown(study: Study) -> list[Effect]:
    return [effect for effect in study.effects if effect.weight >= NOTABLE or _turns(effect, study)][:SHOWN]


def _turns(effect: Effect, study: Study) -> bool:
    """Whether the option that stands first reaches the share wanted at one end and not as it stands, or the reverse."""
    target = study.scenario.service.demand_met_percent
    reached = 100 * study.ranked[0].delivered_share >= target
    return any((met >= target) != reached for met in effect.demand_met_percent if not isnan(met))


def _row(effect: Effect) -> Row:
    value = float(f"{effect.value:.4g}")
    kind: Kind = plain_kind(value)
    cells = {
        "key": Cell(effect.key, "wrap"),
        "label": Cell(effect.label, "wrap"),
        "value": Cell(value, kind),
        "unit": Cell(model_words(effect.unit)),
        "tried": Cell(_pair(effect.tried, ".3g")),
        "met": Cell(_pair(effect.demand_met_percent, ".2f")),
        "cost": Cell(_pair(effect.life_cycle_cost, ",.0f")),
        "source": Cell(model_words(effect.how), "wrap"),
    }
    return Row(effect.key, cells)


def _pair(ends: Pair, kind: str) -> str:
    low, high = (NOTHING if isnan(end) else number(end, kind) for end in ends)
    return text("rests_on.pair", low=low, high=high)
