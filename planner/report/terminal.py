"""The result for the terminal: a table a farmer can read, the sentences, the cautions."""

from __future__ import annotations

from collections.abc import Sequence

from rich.console import Group, RenderableType
from rich.padding import Padding
from rich.text import Text

from planner import figures
from planner.checks.verdict import SYMBOL, Verdict, worst_first
from planner.report.checks_table import figure, summary
from planner.report.document import Cell, Column, Row, Table
from planner.report.pages.answer import DASHED
from planner.report.pages.rests_on import IN_TERMINAL, more_words, rests_on_table
from planner.report.terminal_writer import terminal_table
from planner.study.compare import Study
from planner.text import model_words, text
from planner.water.duty import Duty

FIGURES = (
    "demand_met_percent", "tank_m3", "array_kwp", "grid_kwh_per_year", "fuel_l_per_year", "capital_cost",
    "life_cycle_cost", "levelised_cost_per_m3",
)  # fmt: skip
"""Figures of the table of options."""
INCOMPLETE = "*"
"""Marks an option whose costs leave out what has no price."""


def options_table(study: Study) -> Table:
    """Lay the options out side by side, best first, by figures of the catalogue."""
    scenario = study.scenario
    headings = [text("narrow.option"), text("narrow.meets_target")]
    headings += [text(f"narrow.{key}", currency=scenario.currency) for key in FIGURES]
    columns = tuple(Column(key, name) for key, name in zip(("option", "meets", *FIGURES), headings, strict=True))
    rows = []
    for option in study.ranked:
        cells = {
            "option": Cell(f"{option.name} {INCOMPLETE}" if option.unpriced else option.name),
            "meets": Cell(text("answer.yes" if option.meets_service else "answer.no")),
        }
        for key in FIGURES:
            value = float(figures.figure(key).read(option))
            nothing = key in DASHED and value == 0
            cells[key] = Cell(float("nan") if nothing else value, figures.figure(key).format)
        rows.append(Row(option.name, cells, "best" if option.name == study.best else "plain"))
    title = text("narrow.title", name=scenario.name, years=scenario.finance.analysis_period_years)
    return Table("terminal", columns, tuple(rows), heading=title)


def study_report(
    study: Study,
    sentences: Sequence[str],
    notes: Sequence[str],
    verdicts: Sequence[Verdict],
    remedied: Sequence[str] = (),
    *,
    verbose: bool,
) -> Group:
    """Put table, sentences, failed checks with their remedies and limits together; `verbose` adds duty and weather."""
    parts: list[RenderableType] = [terminal_table(options_table(study))]
    if verbose:
        parts += [Text(duty_words(study.duty)), Text(text("terminal.weather", source=study.weather.source))]
    missing = dict.fromkeys(thing.label() for option in study.ranked for thing in option.unpriced)
    if missing:
        parts.append(Text(text("terminal.incomplete", mark=INCOMPLETE, names=", ".join(missing))))
    parts.append(Text(""))
    parts += [Text(sentence) for sentence in sentences]
    parts += [Text(""), Text(text("terminal.checks", summary=summary(verdicts)))]
    parts += [indented(failed_words(verdict)) for verdict in worst_first(verdicts) if verdict.outcome == "fail"]
    parts += [Text(sentence) for sentence in remedied]
    if study.effects:
        table = rests_on_table(study, IN_TERMINAL)
        parts += [Text(""), *([terminal_table(table)] if table.rows else []), Text(more_words(study))]
    parts += [Text(""), Text(text("terminal.limits"))]
    parts += [indented(f"! {note}") for note in notes]
    return Group(*parts)


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


def cautions_report(cautions: Sequence[str]) -> Group:
    """List the cautions of the work itself, and once that local codes come first."""
    shown = [indented(f"! {caution}") for caution in cautions]
    return Group(Text(""), Text(text("brief.cautions")), *shown, indented(text("caution.local")))
