"""The result of a run for the terminal, on one screen: what it rests on and its limits first, the answer last."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from rich.console import Group, RenderableType
from rich.padding import Padding
from rich.text import Text

from planner.answers.days import days_words
from planner.checks.verdict import ORDER, SYMBOL, Outcome, Verdict, worst_first
from planner.report.checks_table import figure
from planner.report.pages.rests_on import IN_TERMINAL, more_words, rests_on_table
from planner.report.shown import shown
from planner.report.terminal_options import INCOMPLETE, days_table, options_table
from planner.report.terminal_writer import terminal_table
from planner.study.compare import Study
from planner.text import model_words, text
from planner.water.duty import Duty

SHOWN_FAULTS, SHOWN_NAMES = 3, 4
NAMED: tuple[Outcome, ...] = ("fail", "caution")
"""Outcomes of which the checks are named, and not only counted."""


@dataclass(frozen=True)
class Answer:
    """What there is to say of a finished study.

    Attributes
    ----------
    found : sequence of str
        Whether the pump fits, and if not, which would.
    sentences : sequence of str
        The answer.
    turns : sequence of str
        What would turn it, and how sure it is.
    remedied : sequence of str
        What the answer becomes with the remedies of failed checks.
    verdicts : sequence of Verdict
        What the site checks found.
    limits : sequence of str
        Limits of the figures.
    dangers : sequence of str
        What can hurt at the works, or the cautions themselves, that the call has not said before.
    """

    found: Sequence[str]
    sentences: Sequence[str]
    turns: Sequence[str]
    remedied: Sequence[str]
    verdicts: Sequence[Verdict]
    limits: Sequence[str]
    dangers: Sequence[str]


def run_report(study: Study, answer: Answer, *, verbose: bool) -> Group:
    """Put the answer of a run together; `verbose` adds the duty, the weather and the days without water in full."""
    return Group(*_parts(study, answer, verbose=verbose))


def _parts(study: Study, answer: Answer, *, verbose: bool) -> Iterator[RenderableType]:
    priced = study.scenario.priced
    slots = {"name": study.scenario.name, "years": study.scenario.finance.analysis_period_years}
    yield Text(text("narrow.title" if priced else "narrow.title_technical", **slots), style="bold")
    if verbose or not priced:
        yield Text(duty_words(study.duty))
    if verbose:
        yield Text(text("terminal.weather", source=study.weather.source))
    yield from map(Text, () if priced else answer.found)
    if study.effects:
        yield Text("")
        yield from _rests_on(study)
    yield Text("")
    yield Text(text("terminal.checks", summary=named_summary(answer.verdicts)))
    yield from _faults(answer.verdicts)
    yield from (Text(text("terminal.beware", caution=limit)) for limit in answer.limits)
    yield from (Text(danger) for danger in answer.dangers)
    yield Text("")
    if verbose:
        yield terminal_table(days_table(study))
        yield Text("")
    yield terminal_table(options_table(study))
    missing = dict.fromkeys(thing.label() for option in study.ranked for thing in option.unpriced)
    if missing and priced:
        yield Text(text("terminal.incomplete", mark=INCOMPLETE, names=", ".join(missing)))
    yield Text("")
    yield from _answer(study, answer)


def _rests_on(study: Study) -> Iterator[RenderableType]:
    table = rests_on_table(study, IN_TERMINAL)
    rows = list(table.data_rows())
    if len(rows) == 1:
        words = {key: shown(cell) for key, cell in rows[0].cells.items()}
        slots = {"option": study.ranked[0].name, "currency": study.scenario.currency}
        yield Text(text("rests_on.one" if study.scenario.priced else "rests_on.one_technical", **words, **slots))
    elif rows:
        yield terminal_table(table)
    yield Text(more_words(study))


def _answer(study: Study, answer: Answer) -> Iterator[Text]:
    first, *others = answer.sentences
    yield Text(first, style="bold")
    if study.scenario.priced:  # without prices the first sentence says it
        yield Text(days_words(study.ranked[0]))
    yield from map(Text, [*others, *answer.turns, *answer.remedied])


def _faults(verdicts: Sequence[Verdict]) -> Iterator[RenderableType]:
    faults = [verdict for verdict in worst_first(verdicts) if verdict.outcome == "fail"]
    yield from (indented(failed_words(verdict)) for verdict in faults[:SHOWN_FAULTS])
    if len(faults) > SHOWN_FAULTS:
        yield indented(text("terminal.more_faults", count=len(faults) - SHOWN_FAULTS))


def named_summary(verdicts: Iterable[Verdict]) -> str:
    """Count the verdicts in words and name those that did not pass, such as '1 with caution (surge), 31 passed'."""
    found: dict[Outcome, list[str]] = {}
    for verdict in worst_first(verdicts):
        found.setdefault(verdict.outcome, []).append(verdict.what)
    return ", ".join(_counted(outcome, found[outcome]) for outcome in ORDER if outcome in found)


def _counted(outcome: Outcome, names: Sequence[str]) -> str:
    if outcome not in NAMED:
        return text(f"check.count_{outcome}", count=len(names))
    key = f"check.named_{outcome}" if len(names) <= SHOWN_NAMES else f"check.named_first_{outcome}"
    return text(key, count=len(names), names="; ".join(names[:SHOWN_NAMES]))


def duty_words(duty: Duty) -> str:
    """Say what the pump must do, and with what power."""
    return text(
        "terminal.duty",
        flow=f"{duty.flow_m3h:.2f}",
        head=f"{duty.total_head_m:.1f}",
        static=f"{duty.static_head_m:.1f}",
        drawdown=f"{duty.drawdown_m:.1f}",
        friction=f"{duty.friction_m:.1f}",
        residual=f"{duty.residual_head_m:.1f}",
        input_w=f"{duty.input_power_w:.0f}",
        limit=model_words(duty.limited_by),
    )


def failed_words(verdict: Verdict) -> str:
    """Say what a failed check compared, and its remedy."""
    return text(
        "terminal.failed",
        sign=SYMBOL["fail"],
        topic=verdict.topic_label,
        compared=verdict.compared,
        value=figure(verdict.value, verdict.unit),
        limit=figure(verdict.limit, verdict.unit),
        remedy=verdict.remedy,
    )


def indented(words: str) -> Padding:
    """Set words in from the left."""
    return Padding(Text(words), (0, 0, 0, 2))
