"""The result for the terminal: a table a farmer can read, the sentences, the cautions."""

from __future__ import annotations

from collections.abc import Sequence

from rich.console import Group, RenderableType
from rich.padding import Padding
from rich.table import Table
from rich.text import Text

from planner.checks.verdict import SYMBOL, Verdict, worst_first
from planner.report.checks_table import figure, summary
from planner.study.compare import OptionResult, Study
from planner.text import text

INCOMPLETE = "*"
"""Marks a cost that leaves out what has no price."""


def options_table(study: Study) -> Table:
    """Lay the options out side by side, best first."""
    currency = study.scenario.currency
    years = study.scenario.finance.life_years
    table = Table(title=f"{study.scenario.name}: supply options over {years} years", title_justify="left")
    table.add_column("Supply option")
    table.add_column("Serves")
    for heading in ("Delivered\n%", "Tank\nm3", "PV\nkW", "Grid\nkWh/yr", "Fuel\nL/yr"):
        table.add_column(heading, justify="right")
    for heading in ("To build", "Present cost", "Yearly", "Per m3"):
        table.add_column(f"{heading}\n{currency}", justify="right")
    for option in study.ranked:
        table.add_row(*_row(option, years), style="bold" if option.name == study.best else "")
    return table


def _row(option: OptionResult, years: int) -> list[str]:
    life, quantities = option.life, option.quantities
    grid_kwh = float(quantities.grid_kwh.sum()) / years
    fuel_l = float(quantities.fuel_l.sum()) / years
    mark = f" {INCOMPLETE}" if option.unpriced else ""
    return [
        option.name,
        "✓ yes" if option.meets_service else "✗ no",
        f"{100 * option.delivered_share:.1f}",
        f"{option.tank_m3:g}",
        f"{option.array_kw:.1f}" if option.modules else "-",
        f"{grid_kwh:,.0f}" if "grid" in option.sources else "-",
        f"{fuel_l:,.0f}" if "generator" in option.sources else "-",
        f"{float(life.capital_cost):,.0f}{mark}",
        f"{float(life.present_cost):,.0f}{mark}",
        f"{float(life.equivalent_yearly_cost):,.0f}{mark}",
        f"{float(life.levelised_cost_per_m3):.2f}{mark}",
    ]


def study_report(
    study: Study, sentences: Sequence[str], notes: Sequence[str], verdicts: Sequence[Verdict], *, verbose: bool
) -> Group:
    """Put table, sentences, failed checks and limits together; `verbose` adds duty point and weather."""
    parts: list[RenderableType] = [options_table(study)]
    duty = study.duty
    if verbose:
        parts.append(
            Text(
                f"Duty: {duty.flow_m3h:.2f} m3/h at {duty.total_head_m:.1f} m (static {duty.static_head_m:.1f}, "
                f"drawdown {duty.drawdown_m:.1f}, "
                f"friction {duty.friction_m:.1f}, residual {duty.residual_head_m:.1f}), "
                f"motor input {duty.input_power_w:.0f} W, held by {duty.limited_by}.\nWeather: {study.weather.source}"
            )
        )
    missing = dict.fromkeys(name for option in study.ranked for name in option.unpriced)
    if missing:
        parts.append(Text(f"{INCOMPLETE} incomplete: no price was entered for {', '.join(missing)}"))
    parts.append(Text(""))
    parts += [Text(sentence) for sentence in sentences]
    parts.append(Text(f"\nSite checks: {summary(verdicts)}"))
    for verdict in worst_first(verdicts):
        if verdict.outcome == "fail":
            compared = f"{figure(verdict.value, verdict.unit)} against {figure(verdict.limit, verdict.unit)}"
            line = f"{SYMBOL['fail']} {verdict.topic_label}: {verdict.compared}: {compared}. {verdict.remedy}"
            parts.append(Padding(Text(line), (0, 0, 0, 2)))
    parts.append(Text("\nLimits of these figures"))
    parts += [Padding(Text(f"! {note}"), (0, 0, 0, 2)) for note in notes]
    return Group(*parts)


def cautions_report(cautions: Sequence[str]) -> Group:
    """List the cautions of the work itself, and once that local codes come first."""
    shown = [Padding(Text(f"! {caution}"), (0, 0, 0, 2)) for caution in cautions]
    return Group(Text("\nCautions"), *shown, Padding(Text(text("caution.local")), (0, 0, 0, 2)))
