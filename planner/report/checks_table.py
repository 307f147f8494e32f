"""The site checks for the terminal: the failed ones first, each with its remedy."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from rich.console import Group, RenderableType
from rich.padding import Padding
from rich.text import Text

from planner.checks.safety import WHERE_LISTED
from planner.checks.verdict import ORDER, SYMBOL, Verdict, worst_first

_WORDS = {"fail": "failed", "caution": "with caution", "not given": "not given", "pass": "passed"}


def summary(verdicts: Sequence[Verdict]) -> str:
    """Count the verdicts in words, such as '2 failed, 3 with caution, 4 not given, 31 passed'."""
    counts = Counter(verdict.outcome for verdict in verdicts)
    return ", ".join(f"{counts[outcome]} {_WORDS[outcome]}" for outcome in ORDER if counts[outcome])


def figure(value: float | str | None, unit: str) -> str:
    """Write a compared figure with its unit, a number to four significant figures."""
    if value is None:
        return "-"
    if isinstance(value, str):
        return value
    shown = f"{value:,.0f}" if abs(value) >= 1000 else f"{value:.4g}"
    return f"{shown} {unit}".strip()


def verdicts_report(name: str, verdicts: Sequence[Verdict], *, verbose: bool) -> Group:
    """Show every verdict that does not pass, with why and its remedy; `verbose` shows the passed ones too."""
    parts: list[RenderableType] = [Text(f"{name}: site checks", style="bold"), Text(summary(verdicts))]
    for verdict in worst_first(verdicts):
        if verdict.outcome == "pass" and not verbose:
            continue
        parts.append(Text(""))
        head = f"{SYMBOL[verdict.outcome]} {verdict.outcome}: {verdict.topic_label} - {verdict.compared}"
        parts.append(Text(head, style="bold" if verdict.outcome == "fail" else ""))
        parts += [Padding(Text(line), (0, 0, 0, 4)) for line in _lines(verdict)]
    more = "" if verbose else "--verbose shows the checks that passed as well. "
    parts.append(Text(f"\n{more}{WHERE_LISTED}"))
    return Group(*parts)


def _lines(verdict: Verdict) -> list[str]:
    lines = []
    if verdict.value is not None or verdict.limit is not None:
        against = f"{figure(verdict.value, verdict.unit)} against {figure(verdict.limit, verdict.unit)}"
        lines.append(f"{against}{'; ' + verdict.margin if verdict.margin else ''}")
    lines.append(verdict.why)
    if verdict.remedy:
        lines.append(_sentence(verdict.remedy) if verdict.outcome == "not given" else f"Remedy: {verdict.remedy}")
    lines.append(f"Limit from: {verdict.source}")
    return lines


def _sentence(text: str) -> str:
    return text[:1].upper() + text[1:]
