"""What may go wrong and what will be measured: environment, risks and indicators."""

from __future__ import annotations

import math
from collections.abc import Iterator

from planner.answers.uncertainty import switching_sentences, worst_year_sentences
from planner.checks.safety import people_drink
from planner.checks.verdict import Verdict
from planner.figures import figure
from planner.report.checks_table import figure as compared_figure
from planner.report.document import Block, Cell, Column, Heading, Kind, Row, Table, Text
from planner.report.pages.rests_on import IN_WORKBOOK, rests_on_table
from planner.report.proposal.material import Material, asked, to_complete
from planner.sources.registry import GRID
from planner.text import model_words, text

_CARBON = ("co2_kg_per_year", "co2_kg_per_m3")


def environment_blocks(material: Material) -> Iterator[Block]:
    """Count carbon dioxide by option, and ask for what a screening must say."""
    yield _carbon(material)
    yield Text(text("proposal.carbon"), "note")
    grid = material.scenario.sources.grid
    if grid is not None and GRID in material.study.sources:
        if grid.co2_kg_per_kwh is None:
            yield to_complete("grid_factor")
        else:
            yield to_complete("grid_factor_source", factor=f"{grid.co2_kg_per_kwh:g}")
    wanted, given = (float(values[0]) for values in (material.first.quantities.demand_m3, _delivered(material)))
    yield Text(text("proposal.taken", given=f"{given:,.0f}", wanted=f"{wanted:,.0f}"))
    yield from asked("screening", "protection", "waste_water", "end_of_life", "safeguards")


def _delivered(material: Material) -> list[float]:
    return [float(each) for each in material.first.quantities.delivered_m3]


def _carbon(material: Material) -> Table:
    shown = [figure(key) for key in _CARBON]
    rows = []
    for option in material.study.ranked:
        cells = {"option": Cell(option.name, "wrap")}
        for each in shown:
            cells[each.key] = Cell(float(each.read(option)), each.format, word=each.words_for(option))
        rows.append(Row(option.name, cells, "best" if option is material.first else "plain"))
    headings = (text("figure.heading", label=each.label, unit=model_words(each.unit)) for each in shown)
    columns = (
        Column("option", text("proposal.column.option")),
        *(Column(each.key, heading) for each, heading in zip(shown, headings, strict=True)),
    )
    return Table("proposal.carbon", columns, tuple(rows), heading=text("proposal.carbon.heading"))


def risk_blocks(material: Material) -> Iterator[Block]:
    """Put before the reader what the checks and the studies found, and ask for the risks that no study sees."""
    found = [verdict for verdict in material.verdicts if verdict.outcome in ("fail", "caution")]
    if found:
        yield _checks(found)
    else:
        yield Text(text("proposal.no_check_warns"))
    turns = (*switching_sentences(material.study), *worst_year_sentences(material.study))
    said = [sentence for sentence in turns if sentence not in material.decision.days]
    if said:
        yield Heading(text("proposal.risks.turns"))
        yield from (Text(sentence, "item") for sentence in said)
    if material.study.effects:
        table = rests_on_table(material.study, IN_WORKBOOK)
        yield from [table] if table.rows else []
        left = len(material.study.effects) - len(table.rows)
        yield Text(text("proposal.rests_more", count=left), "note")
    yield from asked("other_risks")


def _checks(found: list[Verdict]) -> Table:
    ordered = sorted(found, key=lambda verdict: verdict.outcome != "fail")
    rows = tuple(
        Row(place, {
            "risk": Cell(verdict.compared, "wrap"),
            "found": Cell(_held_against(verdict), "wrap"),
            "why": Cell(verdict.why, "wrap"),
            "remedy": Cell(verdict.remedy, "wrap"),
        }, "strong" if verdict.outcome == "fail" else "plain")
        for place, verdict in enumerate(ordered)
    )  # fmt: skip
    columns = tuple(Column(key, text(f"proposal.risks.{key}")) for key in ("risk", "found", "why", "remedy"))
    return Table("proposal.risks", columns, rows, heading=text("proposal.risks.heading"))


def _held_against(verdict: Verdict) -> str:
    value, limit = (compared_figure(each, verdict.unit) for each in (verdict.value, verdict.limit))
    key = "check.against_with_margin" if verdict.margin else "check.against"
    said = text(key, value=value, limit=limit, margin=verdict.margin)
    return f"{verdict.symbol} {said}" if verdict.value is not None else verdict.symbol


def indicator_blocks(material: Material) -> Iterator[Block]:
    """List what will be measured, with what the study expects of it where it says anything."""
    yield _indicators(material)
    if people_drink(material.scenario):
        yield Text(text("proposal.service_ladder"), "note")
    yield from asked("targets", "monitoring", "logframe", "exit")


def _indicators(material: Material) -> Table:
    days = material.scenario.people, material.value("delivered_first_year_m3") / 365
    expected: list[tuple[str, float | None, Kind]] = [
        ("people", days[0], "whole"),
        ("m3_a_day", days[1], "one"),
        ("demand_met", material.value("demand_met_percent"), "one"),
        ("short_days", material.value("short_days_per_year"), "one"),
        ("longest_short_days", material.value("longest_short_days"), "whole"),
        ("functionality", None, "one"),
        ("repair", None, "one"),
    ]
    if material.priced:
        saving = None if material.unpriced else material.value("renewal_saving")
        expected += [("collected", None, "one"), ("saving", saving, "money")]
    if people_drink(material.scenario):
        expected.append(("samples", 0.0, "whole"))
    expected += [("women", None, "one"), ("operators", None, "one")]
    if material.value("fuel_l_per_year") > 0:
        expected.append(("fuel", material.value("fuel_l_per_year"), "whole"))
    if not math.isnan(material.value("co2_kg_per_year")):
        expected.append(("carbon", material.value("co2_kg_per_year"), "whole"))
    rows = tuple(_indicator(material, *each) for each in expected if each[0] != "people" or each[1])
    columns = tuple(Column(key, text(f"proposal.indicators.{key}")) for key in ("what", "expected", "unit", "measured"))
    return Table("proposal.indicators", columns, rows, heading=text("proposal.indicators.heading"))


def _indicator(material: Material, key: str, value: float | None, kind: Kind) -> Row:
    cell = Cell(text("proposal.indicators.to_agree"), "word") if value is None else Cell(value, kind)
    cells = {
        "what": Cell(text(f"proposal.indicator.{key}"), "wrap"),
        "expected": cell,
        "unit": Cell(text(f"proposal.indicator.{key}.unit", currency=material.scenario.currency), "wrap"),
        "measured": Cell(text(f"proposal.indicator.{key}.measured"), "wrap"),
    }
    return Row(key, cells)
