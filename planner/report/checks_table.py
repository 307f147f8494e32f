"""The site checks in words: what was compared, and for the terminal each verdict with its remedy, the worst first."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence

from planner.checks.verdict import ORDER, SYMBOL, Verdict, worst_first
from planner.report.document import Block, Heading, Text
from planner.text import text


def summary(verdicts: Sequence[Verdict]) -> str:
    """Count the verdicts in words, such as '2 failed, 3 with caution, 4 not given, 31 passed'."""
    counts = Counter(verdict.outcome for verdict in verdicts)
    return ", ".join(text(f"check.count_{key}", count=counts[key]) for key in ORDER if counts[key])


def figure(value: float | str | None, unit: str) -> str:
    """Write a compared figure with its unit, a number to four significant figures."""
    if value is None:
        return "-"
    if isinstance(value, str):
        return value
    shown = f"{value:,.0f}" if abs(value) >= 1000 else f"{value:.4g}"
    return f"{shown} {unit}".strip()


def check_summary(name: str, verdicts: Sequence[Verdict], *, verbose: bool) -> Iterator[Block]:
    """Show every verdict that does not pass, with why and its remedy; `verbose` shows the passed ones too."""
    yield Heading(text("check.title", scenario=name))
    yield Text(summary(verdicts))
    for verdict in worst_first(verdicts):
        if verdict.outcome == "pass" and not verbose:
            continue
        slots = {
            "outcome": text(f"check.{verdict.outcome}"),
            "topic": verdict.topic_label,
            "compared": verdict.compared,
        }
        yield Heading(text("check.head", symbol=SYMBOL[verdict.outcome], **slots))
        yield from (Text(line, "note") for line in _lines(verdict))
    listed = text("caution.where_listed")
    yield Text(listed if verbose else f"{text('check.more')} {listed}")


def _lines(verdict: Verdict) -> Iterator[str]:
    if verdict.value is not None or verdict.limit is not None:
        slots = {"value": figure(verdict.value, verdict.unit), "limit": figure(verdict.limit, verdict.unit)}
        key = "check.against_with_margin" if verdict.margin else "check.against"
        yield text(key, margin=verdict.margin, **slots)
    yield verdict.why
    if verdict.remedy:
        remedy = verdict.remedy
        sought = remedy[:1].upper() + remedy[1:]
        yield sought if verdict.outcome == "not given" else text("check.remedy", remedy=remedy)
    yield text("check.source", source=verdict.source)
