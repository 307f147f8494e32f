"""How sure an answer is: what would turn it, and the numbers that were not given, by what they change."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import isnan

from planner.answers.uncertainty import uncertainty_sentences
from planner.report.document import Block, Cell, Column, Kind, Row, Table, Text
from planner.report.pages.inputs import plain_kind
from planner.report.shown import NOTHING
from planner.study.compare import Study
from planner.study.rests_on import Effect, Pair
from planner.study.switching_values import SwitchingValue, Turn
from planner.study.varied import Varied
from planner.text import model_words, number, text

RESTS_ON, SWITCHING = "rests_on", "uncertainty"
SHOWN = 5
"""So many are named, if they change anything."""
NOTABLE = 0.005
"""Change of the share met, or of the cost in proportion to itself, from which a number is named."""
_FIGURES = ("value", "unit", "tried", "met", "cost")
IN_TERMINAL, IN_WORKBOOK, IN_BRIEF = ("key", *_FIGURES), ("label", *_FIGURES), ("label", *_FIGURES, "source")
"""Columns by writer: keys where they can be typed; on a sheet a reason would stand in a column of figures."""
_SWITCHING = ("input", "base", "unit", "tried", "below", "above")


def uncertainty_blocks(study: Study, columns: Sequence[str]) -> Iterator[Block]:
    """Lay out how sure an answer is, as sentences and tables; nothing where it was not asked for.

    Parameters
    ----------
    study : Study
        The finished comparison.
    columns : sequence of str
        Keys of the columns of the table of numbers that were not given.
    """
    if study.uncertainty is None:
        return
    yield from (Text(sentence) for sentence in uncertainty_sentences(study))
    if study.uncertainty.switching:
        yield switching_table(study)
    table = rests_on_table(study, columns)
    if table.rows:
        yield table
    yield Text(more_words(study))


def switching_table(study: Study) -> Table:
    """Lay the inputs that matter most out with the values at which the answer turns."""
    found = study.uncertainty.switching if study.uncertainty else ()
    headings = tuple(Column(key, text(f"uncertainty.{key}")) for key in _SWITCHING)
    return Table(SWITCHING, headings, tuple(map(_switching_row, found)), heading=text("uncertainty.heading"))


def _switching_row(found: SwitchingValue) -> Row:
    varied = found.varied
    value, low, high = map(varied.rounded, (varied.base, varied.values[0], varied.values[-1]))
    cells = {
        "input": Cell(varied.label, "wrap"),
        "base": Cell(value, plain_kind(value)),
        "unit": Cell(varied.unit),
        "tried": Cell(text("uncertainty.range", low=low, high=high)),
        "below": Cell(_turn_words(varied, found.below), "wrap"),
        "above": Cell(_turn_words(varied, found.above), "wrap"),
    }
    return Row(varied.name, cells)


def _turn_words(varied: Varied, turn: Turn | None) -> str:
    if turn is None:
        return text("uncertainty.no_turn")
    key = "first_there" if turn.meets else "nearest_there"
    return text(f"uncertainty.{key}", value=varied.rounded(turn.value), option=turn.first)


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
    """Whether the option that stands first reaches the share wanted at an end and not as it stands, or the reverse."""
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
