"""Next steps and incremental costs as plain data."""

from __future__ import annotations

from math import isfinite, isnan

from planner.answers.next_step import sentences_of
from planner.scenario.scenario import Scenario
from planner.study.next_step import NextSteps, Step


def next_steps_as_data(steps: NextSteps, scenario: Scenario) -> dict[str, object]:
    """Return next steps as plain data; costs are null where there are no prices."""
    priced = scenario.priced

    def number(value: float | None) -> float | None:
        return None if value is None or isnan(value) or not priced else value

    turns = {"turns_below": steps.below, "turns_above": steps.above}
    return {
        "sentences": sentences_of(steps, scenario),
        "steps": [_step_data(step, priced=priced) for step in steps.steps],
        "incremental": [
            {
                "option": point.option,
                "water_present_m3": point.water_m3,
                "standing": increment.standing,
                "against": None if increment.against is None else steps.points[increment.against].option,
                "cost_per_m3": number(increment.per_unit),
            }
            for point, increment in zip(steps.points, steps.increments or (), strict=bool(steps.increments))
        ],
        **{
            key: None if turn is None else {
                "demand_met_percent": turn.percent, "option": turn.option, "saving_present": turn.saving,
            }
            for key, turn in turns.items()
        },
        "worth_from_per_m3": number(steps.worth_from),
        "worth_to_per_m3": number(steps.worth_to) if isfinite(steps.worth_to) else None,
        "at_unserved_water_value": [
            {
                "option": each.option, "unserved_water_cost": each.unserved_cost,
                "life_cycle_cost_with_unserved_water": each.cost_with_unserved,
            }
            for each in steps.at_value
        ],
    }  # fmt: skip


def _step_data(step: Step, *, priced: bool) -> dict[str, object]:
    before, after = step.before, step.after
    data: dict[str, object] = {
        "option": before.option, "step": step.kind, "name": step.name or None, "strings": step.strings,
        "tank_m3": step.tank_m3, "failing": list(step.failed),
    }  # fmt: skip
    if after is None:
        return data
    data |= {
        "meets_target": after.meets_target,
        "demand_met_percent": after.demand_met_percent,
        "demand_met_worst_year_percent": after.demand_met_worst_year_percent,
        "short_days_per_year": after.short_days_per_year,
        "longest_short_days": after.longest_short_days,
        "further_capital_cost": after.capital_cost - before.capital_cost if priced else None,
        "further_life_cycle_cost": after.life_cycle_cost - before.life_cycle_cost if priced else None,
        "cost_per_m3": None if isnan(step.cost_per_m3) or not priced else step.cost_per_m3,
    }
    return data
