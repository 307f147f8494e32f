"""What an answer rests on: numbers that were not given, by what they change of the option that stands first."""

from __future__ import annotations

from math import isnan

from planner.report.document import Cell, Column, Kind, Row, Table
from planner.report.pages.inputs import plain_kind
from planner.report.shown import NOTHING
from planner.study.compare import Study
from planner.study.rests_on import Effect, Pair
from planner.text import text

RESTS_ON = "rests_on"
SHOWN = 5
"""So many are named where the answer stands; the page 'Inputs' has all."""
IN_TERMINAL = ("key", "value", "unit", "tried", "met", "cost")


def rests_on_table(study: Study, *, all_of_them: bool = False) -> Table:
    """Lay out the numbers that were not given, what matters most first, with what is met where each is off.

    Parameters
    ----------
    study : Study
        The finished comparison; nothing stands in the table where effects were not tried.
    all_of_them : bool
        Whether all are shown; else the first few.
    """
    currency, priced = study.scenario.currency, study.scenario.priced
    keys = ("key", "value", "unit", "tried", "met", *(("cost",) if priced else ()), "source")
    widths = {"key": 42, "source": 60} if all_of_them else {}
    columns = tuple(Column(key, text(f"rests_on.{key}", currency=currency), widths.get(key)) for key in keys)
    shown = study.effects if all_of_them else study.effects[:SHOWN]
    heading = text("rests_on.heading", option=study.ranked[0].name)
    return Table(f"{RESTS_ON}.{'all' if all_of_them else 'first'}", columns, tuple(map(_row, shown)), heading=heading)


def more_words(study: Study) -> str:
    """Say how many more were tried, and where all that was not given stands."""
    return text("rests_on.more", count=max(len(study.effects) - SHOWN, 0))


def _row(effect: Effect) -> Row:
    value = float(f"{effect.value:.4g}")
    kind: Kind = plain_kind(value)
    cells = {
        "key": Cell(effect.key, "wrap"),
        "value": Cell(value, kind),
        "unit": Cell(effect.unit),
        "tried": Cell(_pair(effect.tried, ".3g")),
        "met": Cell(_pair(effect.demand_met_percent, ".2f")),
        "cost": Cell(_pair(effect.life_cycle_cost, ",.0f")),
        "source": Cell(effect.how, "wrap"),
    }
    return Row(effect.key, cells)


def _pair(ends: Pair, kind: str) -> str:
    low, high = (NOTHING if isnan(end) else format(end, kind) for end in ends)
    return text("rests_on.pair", low=low, high=high)
