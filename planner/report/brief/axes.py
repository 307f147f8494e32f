"""Axes of a drawn chart: ends, ticks and their numbers, and how many names of places have room."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from planner.report.document import Axis, Cell, Kind
from planner.report.shown import shown
from planner.report.style import text_width

STEPS = (1.0, 2.0, 2.5, 5.0, 10.0)
DIGIT = 0.62
"""Width of a digit over the size of its letters: 0.556 in Arial, more in what stands in for it where it is missing."""
_BY_DECIMALS: tuple[Kind, ...] = ("whole", "one", "two", "three")


@dataclass(frozen=True)
class Scale:
    """From values to places along a line.

    `low` and `high` are the values at its ends, which lie at `begin` and `end`; `ticks` are the values that are
    marked, `kind` is how they are written.
    """

    low: float
    high: float
    begin: float
    end: float
    ticks: tuple[float, ...]
    kind: Kind

    def __call__(self, value: float) -> float:
        """Place of a value."""
        return self.begin + (value - self.low) / (self.high - self.low) * (self.end - self.begin)

    def label(self, tick: float) -> str:
        """How the value of a tick is written."""
        return shown(Cell(tick, self.kind))

    def between(self, begin: float, end: float) -> Scale:
        """The same along another line."""
        return replace(self, begin=begin, end=end)


def scale_of(axis: Axis, values: Iterable[float], most: int = 5, *, round_ends: bool = True) -> Scale:
    """Find ends and ticks for some values.

    Parameters
    ----------
    axis : Axis
        Its ends, where they are given, are kept; others take in nil.
    values : iterable of float
        What is to be shown; what is no number does not count.
    most : int
        About as many ticks are wanted at most.
    round_ends : bool
        Whether ends that are not given lie at a tick.

    Returns
    -------
    Scale
        From 0 to 1.
    """
    some = [value for value in values if math.isfinite(value)]
    low = min([0.0, *some]) if axis.low is None else axis.low
    high = max([0.0, *some]) if axis.high is None else axis.high
    if not high > low:
        high = low + 1.0
    step = _step((high - low) / most, axis.kind)
    if axis.low is None and round_ends:
        low = math.floor(low / step + 1e-9) * step
    if axis.high is None and round_ends:
        high = math.ceil(high / step - 1e-9) * step
    first = math.ceil(low / step - 1e-9)
    ticks = tuple(number * step for number in range(first, math.floor(high / step + 1e-9) + 1))
    return Scale(low, high, 0.0, 1.0, ticks, _kind(axis.kind, step))


def _step(least: float, kind: Kind) -> float:
    """The least round step that is no smaller; years are counted whole."""
    power = 10.0 ** math.floor(math.log10(least))
    steps = (step * power for step in STEPS if step * power >= least * (1 - 1e-9))
    return next(step for step in steps if step == int(step)) if kind == "year" and least > 1 else next(steps)


def _kind(asked: Kind, step: float) -> Kind:
    """How numbers a step apart are written: with as few decimals as tell them apart."""
    if asked == "year":
        return asked
    exact = (place for place, _ in enumerate(_BY_DECIMALS) if math.isclose(step * 10**place % 1, 0, abs_tol=1e-9))
    return _BY_DECIMALS[next(exact, len(_BY_DECIMALS) - 1)]


def width_of(text: str, size: float) -> float:
    """About the width of a text in letters of some size."""
    return text_width(text) * DIGIT * size


def every(labels: Sequence[str], size: float, room: float) -> int:
    """Of how many labels one is to be shown, that they do not touch in so much room each."""
    widest = max((width_of(label, size) for label in labels), default=0.0) + size / 3
    return max(1, math.ceil(widest / room))
