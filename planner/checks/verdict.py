"""What a check says, and how a value is held against its limit."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from typing import Any, Literal

from planner.text import known, model_words, number, text

Outcome = Literal["pass", "caution", "fail", "not given"]

SYMBOL: dict[Outcome, str] = {"pass": "✓", "caution": "!", "fail": "✗", "not given": "?"}
ORDER: tuple[Outcome, ...] = ("fail", "caution", "not given", "pass")
TOPICS = ("site", "nameplate", "head", "borehole", "pipeline", "array", "ac", "cables", "tank", "water")


Remedy = tuple[str, dict[str, Any]]
"""What to do, in words and as changes of the scenario (see `Verdict`)."""

_TOUCH = 1e-9
"""Relative difference within which a value counts as standing at its limit, which passes."""


@dataclass(frozen=True)
class Verdict:
    """One finding.

    Attributes
    ----------
    topic : str
        One of TOPICS; `topic_label` is what it is called.
    key : str
        Short name that stays the same, for machines.
    compared : str
        What was compared, in plain words.
    outcome : str
        'pass', 'caution', 'fail' or 'not given'.
    value, limit : float, str or None
        The figures compared, both in `unit`.
    unit : str
        Their unit; '' for none.
    margin : str
        What is to spare or missing, with number and unit; '' where there is nothing to say.
    why : str
        Why it matters.
    remedy : str
        What to do; '' when it passes. For 'not given', what to look for and where.
    source : str
        Where the limit comes from.
    changes : dict
        The remedy as keys of the scenario (dotted, list entries from 1 as in 'pipeline.segments[2].pipe') and their
        new values, None for a key to take away; empty where the remedy is not a matter of figures, or where none that
        was tried out passes.
    supplies : tuple of str
        Topics of the sources of power, 'array' and 'ac', of which some are the cause; empty where any source is judged
        alike, or the topic itself tells.
    """

    topic: str
    key: str
    compared: str
    outcome: Outcome
    value: float | str | None
    limit: float | str | None
    unit: str
    margin: str
    why: str
    remedy: str
    source: str
    changes: dict[str, Any] = field(default_factory=dict)
    supplies: tuple[str, ...] = ()

    @property
    def symbol(self) -> str:
        """Sign of the outcome, so that it is not told by colour alone."""
        return SYMBOL[self.outcome]

    @property
    def topic_label(self) -> str:
        """What the topic is called."""
        return text(f"topic.{self.topic}")

    @property
    def what(self) -> str:
        """What the check is of, in a few words inside a sentence; the whole comparison where it has no such words."""
        key = f"check.{self.key}.what"
        return text(key) if known(key) else self.compared


def worst_first(verdicts: Iterable[Verdict]) -> tuple[Verdict, ...]:
    """Order verdicts: failed, caution, not given, pass; within each as the topics come."""
    return tuple(sorted(verdicts, key=lambda verdict: (ORDER.index(verdict.outcome), TOPICS.index(verdict.topic))))


def failed(verdicts: Iterable[Verdict]) -> tuple[Verdict, ...]:
    """Pick the failed ones."""
    return tuple(verdict for verdict in verdicts if verdict.outcome == "fail")


def of_supplies(verdicts: Iterable[Verdict], *supplies: str) -> list[Verdict]:
    """Give verdicts the topics of the sources of power of which alone they are."""
    return [replace(verdict, supplies=supplies) for verdict in verdicts]


def figure(value: float) -> str:
    """Write a number with about three digits, without an exponent."""
    size = abs(value)
    if size >= 99.95 or value == round(value):
        return number(value, ".0f")
    return number(value, ".1f" if size >= 9.995 else ".2f")


def amount(value: float, unit: str) -> str:
    """Write a number with its unit."""
    return f"{figure(value)} {model_words(unit)}".strip()


def at_most(value: float, limit: float) -> bool:
    """Tell whether a value does not exceed a limit; at the limit it does not."""
    return value <= limit + _TOUCH * max(abs(value), abs(limit))


def at_least(value: float, limit: float) -> bool:
    """Tell whether a value does not fall short of a limit; at the limit it does not."""
    return at_most(limit, value)


def _gap_unit(unit: str) -> str:
    return text("unit.percentage_points") if unit == "%" else unit


def room(value: float, limit: float, unit: str) -> str:
    """Say how far a value stays below a limit, or exceeds it."""
    gap, unit = limit - value, _gap_unit(unit)
    if at_most(value, limit):
        return text("margin.at_limit") if at_most(limit, value) else text("margin.below", gap=amount(gap, unit))
    return text("margin.above", gap=amount(-gap, unit))


def reserve(value: float, limit: float, unit: str) -> str:
    """Say how far a value exceeds what is needed, or falls short."""
    gap, unit = value - limit, _gap_unit(unit)
    if at_least(value, limit):
        return text("margin.at_limit") if at_least(limit, value) else text("margin.spare", gap=amount(gap, unit))
    return text("margin.short", gap=amount(-gap, unit))


def highest(
    topic: str,
    key: str,
    compared: str,
    value: float,
    limit: float,
    unit: str,
    *,
    why: str,
    remedy: str,
    source: str,
    beyond: Outcome = "fail",
    changes: dict[str, Any] | None = None,
) -> Verdict:
    """Judge a value that must not exceed a limit; `beyond` is the outcome where it does."""
    good = at_most(value, limit)
    margin = room(value, limit, unit)
    return _judged(
        Verdict(topic, key, compared, beyond, value, limit, unit, margin, why, remedy, source, changes or {}), good=good
    )


def lowest(
    topic: str,
    key: str,
    compared: str,
    value: float,
    limit: float,
    unit: str,
    *,
    why: str,
    remedy: str,
    source: str,
    beyond: Outcome = "fail",
    changes: dict[str, Any] | None = None,
) -> Verdict:
    """Judge a value that must not fall short of a limit; `beyond` is the outcome where it does."""
    good = at_least(value, limit)
    margin = reserve(value, limit, unit)
    return _judged(
        Verdict(topic, key, compared, beyond, value, limit, unit, margin, why, remedy, source, changes or {}), good=good
    )


def _judged(beyond: Verdict, *, good: bool) -> Verdict:
    return replace(beyond, outcome="pass", remedy="", changes={}) if good else beyond


def missing(
    topic: str,
    key: str,
    compared: str,
    look_for: str,
    *,
    why: str,
    source: str,
    value: float | str | None = None,
    limit: float | str | None = None,
    unit: str = "",
) -> Verdict:
    """Report what was not given; `look_for` says what to look for and where."""
    return Verdict(topic, key, compared, "not given", value, limit, unit, "", why, look_for, source)
