"""The next step up, what more water costs and what would turn the answer, in sentences."""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import Any

from planner.scenario.scenario import Scenario
from planner.study.compare import Study
from planner.study.next_step import NextSteps, Point, Step
from planner.study.words import money
from planner.text import listed, source_name, sum_of_money, text

CLOSE_POINTS = 1.0
"""Percentage points above the target within which an option is said to meet it closely. Common practice, no source."""
_NONE = 0.05
"""Percentage points that the sentences would not show."""
_SAVES = 0.005
"""Share of the life-cycle cost below which a saving is not spoken of."""


def next_step_sentences(study: Study) -> list[str]:
    """Say what the next step up would bring, what more water costs, and at which target the answer turns.

    Parameters
    ----------
    study : Study
        The finished comparison.

    Returns
    -------
    list of str
        Empty where next steps were not worked out.
    """
    return [] if study.next_steps is None else sentences_of(study.next_steps, study.scenario)


def sentences_of(steps: NextSteps, scenario: Scenario) -> list[str]:
    """Say the same of next steps that were worked out for a scenario."""
    return [*_of_steps(steps, scenario), *(_of_money(steps, scenario) if scenario.priced else ())]


def step_words(step: Step) -> str:
    """Name a step."""
    before = step.before.design
    name = source_name(step.name) if step.kind == "source" else step.name
    return text(
        f"next_step.kind.{step.kind}",
        name=name,
        strings=step.strings,
        strings_before=before.strings,
        tank=step.tank_m3,
        tank_before=before.tank_m3,
    )


def failed_words(step: Step) -> str:
    """Name the checks that would fail after a step."""
    return listed([text(f"check.{key}.what") for key in step.failed])


def _of_steps(steps: NextSteps, scenario: Scenario) -> Iterator[str]:
    for point in steps.points:
        of_point = [step for step in steps.steps_of(point.option) if step.kind != "source"]
        if not point.meets_target:
            yield from _missing(scenario, steps.points[0], of_point)
        elif point is steps.points[0]:
            yield from _meeting(scenario, point, of_point)


def _missing(scenario: Scenario, first: Point, steps: list[Step]) -> Iterator[str]:
    """Whether a next step makes an option meet the target that it misses."""
    built = [(step, step.after) for step in steps if step.after is not None]
    meeting = [each for each in built if each[1].meets_target]
    if meeting:
        step, after = min(meeting, key=lambda each: (each[1].life_cycle_cost, each[1].capital_cost))
        key = "technical" if not step.before.cost_known else _against(step.before, after, first)
        yield text(f"next_step.would_meet_{key}", best=first.option, **_slots(scenario, step, after),
                   gap=money(abs(after.life_cycle_cost - first.life_cycle_cost), scenario.currency))  # fmt: skip
        return
    more = [each for each in built if each[1].demand_met_percent > each[0].before.demand_met_percent + _NONE]
    if more:
        step, after = max(more, key=lambda each: each[1].demand_met_percent)
        known = step.before.cost_known
        key = "next_step.would_not" if known else "next_step.would_not_technical"
        yield text(key, **_slots(scenario, step, after))
    failing = next((step for step in steps if step.failed), None)
    if failing is not None:
        option = failing.before.option
        yield text("next_step.would_fail", option=option, step=step_words(failing), checks=failed_words(failing))


def _against(before: Point, after: Point, first: Point) -> str:
    if before.option == first.option:
        return "first"
    return "cheaper" if after.life_cycle_cost < first.life_cycle_cost else "dearer"


def _meeting(scenario: Scenario, first: Point, steps: list[Step]) -> Iterator[str]:
    """What the answer would save by a next step, or have in hand where it meets the target closely."""
    built = [(step, step.after) for step in steps if step.after is not None and step.after.meets_target]
    known = first.cost_known
    cheaper = [each for each in built if each[1].life_cycle_cost < first.life_cycle_cost * (1 - _SAVES)]
    if known and cheaper:
        step, after = min(cheaper, key=lambda each: each[1].life_cycle_cost)
        yield text("next_step.saves", **_slots(scenario, step, after))
        return
    points = first.demand_met_percent - scenario.service.demand_met_percent
    more = [each for each in built if each[1].demand_met_percent > first.demand_met_percent + _NONE]
    if points < CLOSE_POINTS and more:
        step, after = min(more, key=lambda each: (each[1].life_cycle_cost, -each[1].demand_met_percent))
        key = "next_step.close" if known else "next_step.close_technical"
        yield text(key, points=points, **_slots(scenario, step, after))


def _of_money(steps: NextSteps, scenario: Scenario) -> Iterator[str]:
    """What more water costs, where the target turns the answer, and what a value of unserved water makes of it."""
    currency, service = scenario.currency, scenario.service
    first = steps.points[0]
    lower = _neighbour(steps)
    if lower is not None and first.cost_known and lower.cost_known:
        extra = (first.life_cycle_cost - lower.life_cycle_cost) / (first.water_m3 - lower.water_m3)
        yield text(
            "next_step.incremental",
            option=first.option,
            other=lower.option,
            extra=per_m3(extra, currency),
            average=per_m3(first.life_cycle_cost / first.water_m3, currency),
        )
    below, above = steps.below, steps.above
    if below is not None and first.cost_known and steps.point(below.option).cost_known:
        yield text(
            "next_step.below",
            percent=math.floor(10 * below.percent) / 10,
            target=service.demand_met_percent,
            other=below.option,
            gap=money(below.saving, currency),
            share=100 * below.saving / first.life_cycle_cost,
        )
    is_near = above is not None and above.percent - service.demand_met_percent < CLOSE_POINTS
    if above is not None and is_near and first.cost_known and steps.point(above.option).cost_known:
        yield text("next_step.above", percent=math.ceil(10 * above.percent) / 10, other=above.option,
                   gap=money(-above.saving, currency))  # fmt: skip
    if steps.at_value and service.unserved_water_value_per_m3 is not None:
        best, same = steps.at_value[0], next(each for each in steps.at_value if each.option == first.option)
        yield text(
            "next_step.valued_same" if best is same else "next_step.valued_other",
            value=per_m3(service.unserved_water_value_per_m3, currency),
            option=first.option,
            other=best.option,
            total=money(best.cost_with_unserved, currency),
            total_first=money(same.cost_with_unserved, currency),
        )


def per_m3(value: float, currency: str) -> str:
    """Write a cost per m3 for people."""
    return sum_of_money(value, currency, ",.2f" if abs(value) < 100 else ",.0f")


def _neighbour(steps: NextSteps) -> Point | None:
    """The option that serves most of those that serve and cost less than the first."""
    first = steps.points[0]
    less = [
        point
        for point in steps.points
        if point.water_m3 < first.water_m3 and point.life_cycle_cost < first.life_cycle_cost and point.water_m3 > 0
    ]
    return max(less, key=lambda point: point.water_m3, default=None)


def _slots(scenario: Scenario, step: Step, after: Point) -> dict[str, Any]:
    before, currency = step.before, scenario.currency
    return {
        "option": before.option,
        "step": step_words(step),
        "before": before.demand_met_percent,
        "after": _short_of_all(after.demand_met_percent),
        "days_before": before.short_days_per_year,
        "days_after": after.short_days_per_year,
        "capital": money(after.capital_cost - before.capital_cost, currency),
        "total": money(after.life_cycle_cost, currency),
        "now": money(before.life_cycle_cost, currency),
    }


def _short_of_all(percent: float) -> float:
    """What is to be written of a share of the water, so that one just short of all of it does not read as all."""
    return 99.9 if 99.95 <= percent < 100 * (1 - 1e-9) else percent
