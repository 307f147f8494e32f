"""What the pages of a sweep share: names of inputs, and the options that a chart shows."""

from __future__ import annotations

from planner.report.document import Cell, Kind
from planner.study.keys import Key
from planner.study.sweep.run import Base
from planner.text import model_words, text

CHART_OPTIONS, CHART_ROWS = 5, 20


def input_name(key: Key, currency: str) -> str:
    """Name an input with its unit."""
    unit = model_words(key.unit).replace("money", currency)
    return text("figure.heading", label=key.label, unit=unit) if unit else key.label


def said(base: Base, key: str, **slots: object) -> str:
    """Words about costs, or about water where there are no prices."""
    return text(key if base.scenario.priced else f"{key}_technical", **slots)


def leading(base: Base) -> list[int]:
    """Places of the options shown in a chart, best first."""
    return base.ranking()[:CHART_OPTIONS]


def number(value: float, kind: Kind) -> Cell:
    """Cell of a result, or of the words for none."""
    return Cell(float(value), kind, word=text("sweep.no_value"))
