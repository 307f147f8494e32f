"""The page 'Next step': what the next string, tank, pump or source brings, and what more water costs."""

from __future__ import annotations

from collections.abc import Iterator
from math import nan

import numpy as np

from planner.answers.next_step import failed_words, step_words
from planner.report.document import Block, Cell, Column, Heading, Page, Row, Table, Text
from planner.report.pages.figure_cells import figure_column, yes_no
from planner.report.shown import NOTHING
from planner.scenario.scenario import Scenario
from planner.study.next_step import NextSteps, Point, Step
from planner.text import text

STEPS, FRONTIER = "next_step.steps", "next_step.frontier"
NUMBER_WIDTH = 13.0
_SERVED = ("demand_met_percent", "short_days_per_year", "longest_short_days")


def next_step_page(steps: NextSteps, scenario: Scenario) -> Page:
    """Build the page from what was worked out for a scenario."""
    if scenario.priced:
        title, under = text("next_step.title"), text("next_step.under", currency=scenario.currency)
    else:
        title, under = text("next_step.title_technical"), text("next_step.under_technical")
    return Page("next_step", text("page.next_step"), title, under, tuple(_blocks(steps, scenario)))


def _blocks(steps: NextSteps, scenario: Scenario) -> Iterator[Block]:
    yield Heading(text("next_step.steps"))
    yield steps_table(steps, scenario)
    if steps.increments:
        yield Heading(text("next_step.frontier"))
        yield frontier_table(steps, scenario)
        yield Text(text("next_step.method"), "note")
    if steps.at_value:
        yield Text(text("next_step.value_method"), "note")


def steps_table(steps: NextSteps, scenario: Scenario) -> Table:
    """What each step brings and costs, below its option as it stands."""
    currency = scenario.currency
    money = ("more_capital", "more_cost", "per_m3") if scenario.priced else ()
    columns = (
        Column("option", text("next_step.option"), 20.0),
        Column("step", text("next_step.step"), 28.0),
        Column("meets_target", text("studies.meets_target")),
        *(figure_column(key, currency, NUMBER_WIDTH) for key in _SERVED),
        *(Column(key, text(f"next_step.{key}", currency=currency), NUMBER_WIDTH) for key in money),
        *([Column("why_not", text("next_step.why_not"), 40.0)] if any(step.failed for step in steps.steps) else []),
    )
    rows = []
    for point in steps.points:
        own = steps.steps_of(point.option)
        if own:
            cells = {"option": Cell(point.option), **_served(point)}
            rows.append(Row(point.option, cells, "strong"))
        rows += [Row((point.option, place), _step_cells(step)) for place, step in enumerate(own)]
    return Table(STEPS, columns, tuple(rows), freeze=1)


def _served(point: Point) -> dict[str, Cell]:
    return {
        "meets_target": yes_no(point.meets_target),
        "demand_met_percent": Cell(point.demand_met_percent, "two"),
        "short_days_per_year": Cell(point.short_days_per_year, "one"),
        "longest_short_days": Cell(point.longest_short_days, "whole"),
    }


def _step_cells(step: Step) -> dict[str, Cell]:
    if step.after is None:
        return {"step": Cell(step_words(step), "wrap"), "why_not": Cell(failed_words(step), "wrap")}
    return {
        "step": Cell(step_words(step), "wrap"),
        **_served(step.after),
        "more_capital": Cell(step.after.capital_cost - step.before.capital_cost, "money"),
        "more_cost": Cell(step.after.life_cycle_cost - step.before.life_cycle_cost, "money"),
        "per_m3": Cell(
            step.cost_per_m3, "price", word=text(f"next_step.{'no_dearer' if step.adds_water else 'no_more'}")
        ),
    }


def frontier_table(steps: NextSteps, scenario: Scenario) -> Table:
    """What each option's water costs beyond that of its neighbour, by the water served."""
    currency = scenario.currency
    columns = [
        Column("option", text("next_step.option"), 20.0),
        Column("standing", text("next_step.standing"), 40.0),
        Column("water", text("next_step.water"), NUMBER_WIDTH),
        figure_column("life_cycle_cost", currency, NUMBER_WIDTH),
        Column("average", text("next_step.average", currency=currency), NUMBER_WIDTH),
        Column("increment", text("next_step.increment", currency=currency), NUMBER_WIDTH),
    ]
    valued = {each.option: each for each in steps.at_value}
    if valued:
        columns += [
            Column(key, text(f"next_step.{key}", currency=currency)) for key in ("unserved", "cost_with_unserved")
        ]
    rows = []
    for place in np.argsort([point.water_m3 for point in steps.points], kind="stable").tolist():
        point, increment = steps.points[place], steps.increments[place]
        against = "" if increment.against is None else steps.points[increment.against].option
        standing = increment.standing if against else "lowest"
        cells = {
            "option": Cell(point.option),
            "water": Cell(point.water_m3, "whole"),
            "life_cycle_cost": Cell(point.life_cycle_cost, "money"),
            "average": Cell(
                point.life_cycle_cost / point.water_m3 if point.water_m3 > 0 else nan, "price", word=NOTHING
            ),
            "increment": Cell(increment.per_unit, "price", word=NOTHING),
            "standing": Cell(text(f"next_step.standing.{standing}", against=against), "wrap"),
        }
        if point.option in valued:
            own = valued[point.option]
            cells |= {"unserved": Cell(own.unserved_cost, "money"),
                      "cost_with_unserved": Cell(own.cost_with_unserved, "money")}  # fmt: skip
        rows.append(Row(point.option, cells, "best" if place == 0 else "plain"))
    return Table(FRONTIER, tuple(columns), tuple(rows), freeze=1)
