"""The page 'Test and quality': the pumping test on record, and the water's analysis against guideline values."""

from __future__ import annotations

from collections.abc import Iterator

from planner.checks.quality import GUIDELINES, Guideline, outcome_of, result_of
from planner.checks.safety import people_drink
from planner.checks.verdict import SYMBOL
from planner.report.document import Block, Cell, Column, Heading, Page, Row, Table, Text
from planner.report.pages.inputs import plain_kind
from planner.scenario.scenario import Scenario
from planner.scenario.walk import walk
from planner.text import model_words, text

TEST, STEPS, QUALITY = "records.test", "records.steps", "records.quality"


def records_page(scenario: Scenario) -> Page:
    """Build the page 'Test and quality' from a scenario."""
    blocks = (Heading(text("records.test")), *_test(scenario), Heading(text("records.quality")), *_quality(scenario))
    return Page(
        "records",
        text("page.records"),
        text("page.records"),
        text("records.under"),
        blocks,
        upright=True,
        one_page=True,
    )


def _test(scenario: Scenario) -> Iterator[Block]:
    given = [field for field in walk(scenario) if field.path[0] == "pumping_test" and field.value is not None]
    if not given:
        yield Text(text("records.no_test"))
    else:
        rows = tuple(
            Row(field.key, {
                "label": Cell(model_words(field.short)),
                "value": Cell(field.value, "text" if isinstance(field.value, str) else plain_kind(field.value)),
                "unit": Cell(model_words(field.unit)),
            })
            for field in given
        )  # fmt: skip
        headings = {"label": text("records.item"), "value": text("records.value"), "unit": text("column.unit")}
        yield Table(TEST, tuple(Column(key, name) for key, name in headings.items()), rows)
    if scenario.borehole.step_test:
        keys = ("step", "step_flow", "step_drawdown", "step_specific")
        steps = tuple(
            Row(place, {
                "step": Cell(place, "whole"),
                "step_flow": Cell(step.flow_m3h, "two"),
                "step_drawdown": Cell(step.drawdown_m, "two"),
                "step_specific": Cell(step.flow_m3h / step.drawdown_m, "three"),
            })
            for place, step in enumerate(scenario.borehole.step_test, start=1)
        )  # fmt: skip
        columns = tuple(Column(key, text(f"records.{key}")) for key in keys)
        yield Table(STEPS, columns, steps, heading=text("records.steps"))


def _quality(scenario: Scenario) -> Iterator[Block]:
    found = scenario.water_quality
    drunk = people_drink(scenario)
    if not drunk:
        yield Text(text("records.not_drunk"))
    if found is None:
        yield Text(text("records.no_quality"))
        if not drunk:
            return
    elif found.date or found.laboratory:
        nothing = text("answer.nothing")
        yield Text(text("records.analysed", date=found.date or nothing, laboratory=found.laboratory or nothing))
    keys = {"parameter": 25, "result": 11, "unit": 10, "limit": 13, "kind": 17, "verdict": 15, "source": 29}
    columns = tuple(
        Column(key, text("column.unit" if key == "unit" else f"records.{key}"), width) for key, width in keys.items()
    )
    rows = tuple(_row(scenario, guideline, drunk=drunk) for guideline in GUIDELINES)
    yield Table(QUALITY, columns, rows)
    yield Text(text("records.national"), "note")


def _row(scenario: Scenario, guideline: Guideline, *, drunk: bool) -> Row:
    value = result_of(scenario.water_quality, guideline.key)
    outcome = outcome_of(guideline, value)
    said = text("records.not_tested") if value is None else text(f"checks.{outcome}")
    return Row(
        guideline.key,
        {
            "parameter": Cell(model_words(guideline.name), "wrap"),
            "result": Cell(text("answer.nothing"), "word") if value is None else Cell(value, "general"),
            "unit": Cell(model_words(guideline.unit)),
            "limit": Cell(guideline.range, "word") if guideline.range else Cell(guideline.limit, "general"),
            "kind": Cell(text(f"records.kind_{guideline.kind}"), "centre"),
            "verdict": Cell(f"{SYMBOL[outcome]} {said}" if drunk else text("answer.nothing"), "centre"),
            "source": Cell(text("records.from_memory" if guideline.from_memory else "records.second_hand")),
        },
        "strong" if drunk and outcome == "fail" else "plain",
    )
