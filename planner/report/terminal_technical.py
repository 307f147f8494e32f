"""The result of a run without prices for the terminal, on one screen: duty, pump, sizes, service, what it rests on."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from rich.console import Group, RenderableType
from rich.text import Text

from planner import figures
from planner.checks.verdict import Verdict, worst_first
from planner.report.checks_table import summary
from planner.report.document import Cell, Column, Row, Table
from planner.report.pages.answer import DASHED
from planner.report.pages.rests_on import IN_TERMINAL, more_words, rests_on_table
from planner.report.terminal import duty_words, failed_words, indented
from planner.report.terminal_writer import terminal_table
from planner.study.compare import OptionResult, Study
from planner.study.site import estimate_sentences
from planner.text import text

FIGURES = (
    "demand_met_percent", "demand_met_worst_month_percent", "short_days_per_year", "longest_short_days", "array_kwp",
    "tank_m3", "grid_kwh_per_year", "fuel_l_per_year",
)  # fmt: skip
"""Figures of the table of options."""
SHOWN_FAULTS = 3


def technical_table(study: Study) -> Table:
    """Lay the options out side by side, those that meet the target first."""
    keys = ("option", "meets_target", *FIGURES[:4], "modules", *FIGURES[4:])
    columns = tuple(Column(key, text(f"narrow.{key}")) for key in keys)
    rows = []
    for option in study.ranked:
        cells = {
            "option": Cell(option.name),
            "meets_target": Cell(text("answer.yes" if option.meets_service else "answer.no")),
            "modules": Cell(_modules(option)),
        }
        for key in FIGURES:
            value = float(figures.figure(key).read(option))
            nothing = key in DASHED and value == 0
            cells[key] = Cell(float("nan") if nothing else value, figures.figure(key).format)
        rows.append(Row(option.name, cells, "best" if option.name == study.best else "plain"))
    return Table("terminal.technical", columns, tuple(rows))


def _modules(option: OptionResult) -> str:
    if not option.strings:
        return text("answer.nothing")
    return text("narrow.series_by_strings", series=option.modules // option.strings, strings=option.strings)


def technical_report(
    study: Study,
    found: Sequence[str],
    sentences: Sequence[str],
    notes: Sequence[str],
    verdicts: Sequence[Verdict],
    remedied: Sequence[str] = (),
    *,
    verbose: bool,
) -> Group:
    """Put the answer without prices together.

    Parameters
    ----------
    study : Study
        The finished comparison.
    found : sequence of str
        Whether the pump fits, and if not, which would.
    sentences : sequence of str
        The answer in words.
    notes : sequence of str
        Limits of the figures.
    verdicts : sequence of Verdict
        What the site checks found.
    remedied : sequence of str
        What the answer becomes with the remedies.
    verbose : bool
        Whether the limits are shown, and not only counted.
    """
    return Group(*_parts(study, found, sentences, notes, verdicts, remedied, verbose=verbose))


def _parts(
    study: Study,
    found: Sequence[str],
    sentences: Sequence[str],
    notes: Sequence[str],
    verdicts: Sequence[Verdict],
    remedied: Sequence[str] = (),
    *,
    verbose: bool,
) -> Iterator[RenderableType]:
    yield Text(text("narrow.title_technical", name=study.scenario.name), style="bold")
    yield from (Text(sentence) for sentence in (duty_words(study.duty), *found))
    yield Text("")
    yield terminal_table(technical_table(study))
    yield Text("")
    yield from (Text(sentence) for sentence in sentences)
    faults = [verdict for verdict in worst_first(verdicts) if verdict.outcome == "fail"]
    yield Text(text("terminal.checks", summary=summary(verdicts)))
    yield from (indented(failed_words(verdict)) for verdict in faults[:SHOWN_FAULTS])
    if len(faults) > SHOWN_FAULTS:
        yield indented(text("terminal.more_faults", count=len(faults) - SHOWN_FAULTS))
    yield from (Text(sentence) for sentence in remedied)
    yield Text("")
    if study.effects:
        table = rests_on_table(study, IN_TERMINAL)
        if table.rows:
            yield terminal_table(table)
        yield Text(more_words(study))
    if verbose:
        yield Text(text("terminal.limits"))
        yield from (indented(f"! {note}") for note in notes)
    else:
        yield from (Text(sentence) for sentence in estimate_sentences(study.scenario)[:1])
    yield Text(text("terminal.safety"))
