"""Tank: what it holds, how long it takes to fill, and the height of its inlet and outlet."""

from __future__ import annotations

from math import ceil, floor

from planner.checks.basis import Basis
from planner.checks.verdict import (
    Outcome,
    Verdict,
    at_least,
    at_most,
    figure,
    highest,
    lowest,
    missing,
    reserve,
)
from planner.text import text
from planner.water.demand import hourly_demand_m3

TOPIC = "tank"
DAYS_HELD = 1.0
FULL_HEAD_M, LEAST_HEAD_M = 7.0, 2.0
REFILL_H = 24.0


def verdicts(basis: Basis) -> list[Verdict]:
    """Judge the tank."""
    return [_held(basis), _busiest_hour(basis), _refill(basis), _inlet(basis), _outlet(basis)]


def _held(basis: Basis) -> Verdict:
    volume, daily = basis.tank_counted_m3, float(basis.daily_m3[0].max())
    value, bigger = volume / daily, ceil(10 * DAYS_HELD * daily - 1e-6) / 10
    key = "check.days_held.compared" if basis.tank_m3 is not None else "check.days_held.compared_open"
    unit = text("unit.days")
    outcome: Outcome = "pass" if at_least(value, DAYS_HELD) else "caution"
    return Verdict(
        TOPIC,
        "days_held",
        text(key, volume=figure(volume), hours=f"{24 * value:.0f}"),
        outcome,
        value,
        DAYS_HELD,
        unit,
        reserve(value, DAYS_HELD, unit),
        text("check.days_held.why"),
        "" if outcome == "pass" else text("check.days_held.remedy", volume=f"{bigger:.1f}"),
        text("check.days_held.source"),
        {} if outcome == "pass" else {"tank.volume_m3": bigger},
    )


def _busiest_hour(basis: Basis) -> Verdict:
    draw = float(hourly_demand_m3(basis.scenario.demand, 1).max())
    bigger = ceil(100 * draw - 1e-6) / 100
    return lowest(
        TOPIC,
        "busiest_hour",
        text("check.busiest_hour.compared"),
        basis.tank_counted_m3,
        draw,
        "m3",
        why=text("check.busiest_hour.why"),
        remedy=text("check.busiest_hour.remedy", volume=f"{bigger:g}"),
        source=text("check.busiest_hour.source"),
        changes={"tank.volume_m3": bigger},
    )


def _refill(basis: Basis) -> Verdict:
    volume = basis.tank_counted_m3
    hours, fills = volume / basis.flow_m3h, floor(10 * REFILL_H * basis.flow_m3h + 1e-6) / 10
    # a tank that holds less than a day's demand is no remedy for one that fills slowly
    enough = at_least(fills, DAYS_HELD * float(basis.daily_m3[0].max()))
    flow = ceil(100 * volume / REFILL_H - 1e-6) / 100
    if at_most(flow, basis.scenario.borehole.safe_yield_m3h):
        key = "check.refill_time.remedy_smaller" if enough else "check.refill_time.remedy"
    else:  # a larger flow than the borehole bears would ruin it
        key = "check.refill_time.remedy_only_smaller" if enough else "check.refill_time.remedy_second"
    return highest(
        TOPIC,
        "refill_time",
        text("check.refill_time.compared", volume=figure(volume), flow=basis.flow_words),
        hours,
        REFILL_H,
        "h",
        why=text("check.refill_time.why"),
        remedy=text(key, volume=f"{fills:g}", flow=f"{flow:g}"),
        source=text("check.refill_time.source"),
        beyond="caution",
        changes={"tank.volume_m3": fills} if enough else {},
    )


def _inlet(basis: Basis) -> Verdict:
    pipeline = basis.scenario.pipeline
    rise, compared = pipeline.rise_to_tank_inlet_m, text("check.inlet_height.compared")
    why, source = text("check.inlet_height.why"), text("check.inlet_height.source")
    if not pipeline.profile:
        return missing(
            TOPIC,
            "inlet_height",
            compared,
            text("check.inlet_height.look_for"),
            why=why,
            source=source,
            value=rise,
            unit="m",
        )
    ground = pipeline.profile[-1].level_m
    return lowest(
        TOPIC,
        "inlet_height",
        compared,
        rise,
        ground,
        "m",
        why=why,
        remedy=text("check.inlet_height.remedy", ground=figure(ground)),
        source=source,
    )


def _outlet(basis: Basis) -> Verdict:
    head = basis.scenario.tank.outlet_height_m
    compared = text("check.outlet_head.compared")
    why, source = text("check.outlet_head.why"), text("check.outlet_head.source")
    if head is None:
        return missing(
            TOPIC,
            "outlet_head",
            compared,
            text("check.outlet_head.look_for"),
            why=why,
            source=source,
            unit="m",
        )
    higher = FULL_HEAD_M - head
    return lowest(
        TOPIC,
        "outlet_head",
        compared,
        head,
        FULL_HEAD_M,
        "m",
        why=why,
        remedy=text("check.outlet_head.remedy", by=f"{ceil(100 * higher - 1e-6) / 100:g}"),
        source=source,
        changes={
            "tank.outlet_height_m": FULL_HEAD_M,
            "pipeline.rise_to_tank_inlet_m": basis.scenario.pipeline.rise_to_tank_inlet_m + higher,
        },
        beyond="caution" if at_least(head, LEAST_HEAD_M) else "fail",
    )
