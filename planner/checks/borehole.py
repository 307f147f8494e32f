"""Borehole: yield, levels and clearances; what cools the motor is judged in `cooling`."""

from __future__ import annotations

from math import ceil, floor
from typing import Any

from planner.checks.basis import YIELD_USED, Basis
from planner.checks.cooling import TOPIC, cooling, look_for_diameters, outer_diameter_mm
from planner.checks.specific_capacity import specific_capacity
from planner.checks.verdict import (
    Outcome,
    Remedy,
    Verdict,
    amount,
    at_least,
    at_most,
    figure,
    highest,
    lowest,
    missing,
    reserve,
    room,
)
from planner.text import text
from planner.water.ageing import ageing_of
from planner.water.working_range import ASSUMED_SUBMERGENCE_M

TIGHT_MM = 12.0
BELOW_MOTOR_M = 1.0


def verdicts(basis: Basis) -> list[Verdict]:
    """Judge the borehole."""
    return [
        *specific_capacity(basis),
        _safe_yield(basis),
        _intake(basis),
        _submergence(basis),
        _level_through_life(basis),
        _screen(basis),
        _casing(basis),
        _below_motor(basis),
        cooling(basis),
        _daily_limit(basis),
    ]


def _safe_yield(basis: Basis) -> Verdict:
    borehole, pump, duty = basis.scenario.borehole, basis.scenario.pump, basis.free_duty
    limit = borehole.safe_yield_m3h
    if duty is None or basis.too_short:
        value, compared = pump.rated_flow_m3h, text("check.safe_yield.compared_rated")
    else:
        value, compared = duty.flow_m3h, text("check.safe_yield.compared")
    outcome: Outcome = "pass"
    remedy = ""
    throttled = basis.duty is not None and basis.duty.limited_by == "safe yield" and basis.duty.other_head_m > 1e-6
    if not at_most(value, limit):
        outcome = "caution"
        speed = 100.0 if basis.duty is None else floor(basis.duty.speed_percent)
        remedy = text("check.safe_yield.remedy_speed", speed=f"{speed:.0f}")
        if throttled or not at_most(pump.rated_flow_m3h, limit):
            outcome, value = "fail", max(value, pump.rated_flow_m3h)
            remedy = text(
                "check.safe_yield.remedy_pump",
                flow=figure(min(YIELD_USED * limit, basis.design_flow_m3h)),
                head=basis.better_head_m,
                limit=figure(limit),
            )
    return Verdict(
        TOPIC,
        "safe_yield",
        compared,
        outcome,
        value,
        limit,
        "m3/h",
        room(value, limit, "m3/h"),
        text("check.safe_yield.why"),
        remedy,
        text("check.safe_yield.source"),
    )


def _drawn_flow(basis: Basis) -> tuple[float, str]:
    """Flow that the pump would draw whether its intake stays covered or not [m3/h], and the same in words."""
    duty, drawing = basis.duty, basis.drawing_duty
    if duty is None or drawing is None or basis.too_short or duty.limited_by != "intake level":
        return basis.flow_m3h, basis.flow_words
    return drawing.flow_m3h, text("basis.drawn_flow", flow=f"{drawing.flow_m3h:.2f}")


def _drawn_level_m(basis: Basis) -> float:
    return basis.static_level_m + float(basis.system.drawdown.at(_drawn_flow(basis)[0]))


def _intake(basis: Basis) -> Verdict:
    borehole, level = basis.scenario.borehole, _drawn_level_m(basis)
    cover_m = basis.scenario.pump.plate.minimum_submergence_m or ASSUMED_SUBMERGENCE_M
    remedy, changes = _deeper(basis, level + cover_m - borehole.pump_depth_m)
    return highest(
        TOPIC,
        "pumping_level",
        text("check.pumping_level.compared", month=basis.month_name, flow=_drawn_flow(basis)[1]),
        level,
        borehole.pump_depth_m,
        "m",
        why=text("check.pumping_level.why"),
        remedy=remedy,
        source=text("check.pumping_level.source"),
        changes=changes,
    )


def _hung_at(basis: Basis, depth_m: float) -> dict[str, Any]:
    """Changes that hang the pump at another depth: the rising pipe follows, and a drop cable that is too short."""
    scenario = basis.scenario
    deeper = depth_m - scenario.borehole.pump_depth_m
    changes: dict[str, Any] = {"borehole.pump_depth_m": depth_m}
    changes["pipeline.segments[1].length_m"] = scenario.pipeline.segments[0].length_m + deeper
    drop = None if scenario.cables is None else scenario.cables.drop
    if drop is not None and drop.length_m < depth_m:
        changes["cables.drop.length_m"] = drop.length_m + max(deeper, 0.0)
    return changes


def _deeper(basis: Basis, short_m: float) -> Remedy:
    """Say that the pump must hang so much deeper as the water is short, if borehole and screen let it."""
    borehole, below_m = basis.scenario.borehole, basis.scenario.pump.plate.length_below_intake_m or 0.0
    by = ceil(100 * short_m - 1e-6) / 100
    less = _pump_less(basis)
    foot_m = borehole.pump_depth_m + by + below_m
    if borehole.depth_m is not None and foot_m + BELOW_MOTOR_M > borehole.depth_m:
        return text("check.deeper.remedy_shallow", less=less), {}
    if borehole.screen_top_m is not None and foot_m > borehole.screen_top_m:
        return text("check.deeper.remedy_in_screen", less=less), {}
    bottom, screen = borehole.depth_m is None, borehole.screen_top_m is None
    unknown = "_if_both" if bottom and screen else "_if_bottom" if bottom else "_if_screen" if screen else ""
    words = text(f"check.deeper.remedy{unknown}", by=figure(by), less=less)
    return words, {} if unknown else _hung_at(basis, borehole.pump_depth_m + by)


def _pump_less(basis: Basis) -> str:
    """Say that the pump must draw less, and how a drive can hold it where the hourly run does so."""
    if basis.duty is None or basis.duty.limited_by != "intake level":
        return text("check.deeper.less")
    speed = floor(basis.duty.speed_percent)
    return text("check.deeper.less_held", flow=f"{basis.duty.flow_m3h:.2f}", speed=speed)


def _submergence(basis: Basis) -> Verdict:
    borehole, plate = basis.scenario.borehole, basis.scenario.pump.plate
    cover = borehole.pump_depth_m - _drawn_level_m(basis)
    compared = text("check.submergence.compared", month=basis.month_name, flow=_drawn_flow(basis)[1])
    why, source = text("check.submergence.why"), text("check.submergence.source")
    if plate.minimum_submergence_m is None:
        return missing(
            TOPIC,
            "submergence",
            compared,
            text("check.submergence.look_for"),
            why=why,
            source=source,
            value=cover,
            unit="m",
        )
    remedy, changes = _deeper(basis, plate.minimum_submergence_m - cover)
    return lowest(
        TOPIC,
        "submergence",
        compared,
        cover,
        plate.minimum_submergence_m,
        "m",
        why=why,
        remedy=remedy,
        source=source,
        changes=changes,
    )


def _level_through_life(basis: Basis) -> Verdict:
    borehole, pump = basis.scenario.borehole, basis.scenario.pump
    aged = ageing_of(borehole, pump, basis.daily_m3.shape[0])
    flow, words = _drawn_flow(basis)
    level = basis.static_level_m + aged.level_fall_m + aged.drawdown_growth * float(basis.system.drawdown.at(flow))
    limit = borehole.pump_depth_m - (pump.plate.minimum_submergence_m or ASSUMED_SUBMERGENCE_M)
    dry = level > limit * (1 + 1e-9)
    compared = text(
        "check.level_through_life.compared_dry" if dry.any() else "check.level_through_life.compared",
        month=basis.month_name,
        flow=words,
        decline=f"{borehole.level_decline_m_per_year:g}",
        loss=f"{borehole.specific_capacity_decline_percent_per_year:g}",
        year=int(dry.argmax()) + 1,
    )
    remedy, changes = _deeper(basis, float(level[-1]) - limit)
    return highest(
        TOPIC,
        "level_through_life",
        compared,
        float(level[-1]),
        limit,
        "m",
        why=text("check.level_through_life.why"),
        remedy=remedy,
        source=text("check.level_through_life.source"),
        beyond="caution",
        changes=changes,
    )


def _screen(basis: Basis) -> Verdict:
    top, level = basis.scenario.borehole.screen_top_m, basis.static_level_m + basis.drawdown_m
    compared = text("check.screen.compared", month=basis.month_name, flow=basis.flow_words)
    why = text("check.screen.why")
    if top is None:
        return missing(
            TOPIC,
            "screen",
            compared,
            text("check.screen.look_for"),
            why=why,
            source=text("check.screen.source_log"),
            value=level,
            unit="m",
        )
    return highest(
        TOPIC,
        "screen",
        compared,
        level,
        top,
        "m",
        why=why,
        remedy=text("check.screen.remedy"),
        source=text("check.screen.source"),
        beyond="caution",
    )


def _casing(basis: Basis) -> Verdict:
    casing, plate = basis.scenario.borehole.casing_inner_diameter_mm, basis.scenario.pump.plate
    outer = outer_diameter_mm(plate)
    why = text("check.casing_clearance.why")
    if casing is None or outer is None:
        return missing(
            TOPIC,
            "casing_clearance",
            text("check.casing_clearance.compared_open"),
            look_for_diameters(casing=casing is None, motor=outer is None),
            why=why,
            source=text("check.casing_clearance.source_open"),
            value=casing,
            limit=outer,
            unit="mm",
        )
    clearance = casing - outer
    outcome: Outcome = "pass" if at_least(clearance, TIGHT_MM) else "caution" if clearance > 1e-9 * casing else "fail"
    return Verdict(
        TOPIC,
        "casing_clearance",
        text("check.casing_clearance.compared", outer=figure(outer), room=f"{TIGHT_MM:g}"),
        outcome,
        casing,
        outer + TIGHT_MM,
        "mm",
        reserve(casing, outer + TIGHT_MM, "mm"),
        why,
        "" if outcome == "pass" else text("check.casing_clearance.remedy", outer=floor(casing - TIGHT_MM)),
        text("check.casing_clearance.source"),
    )


def _below_motor(basis: Basis) -> Verdict:
    borehole, plate = basis.scenario.borehole, basis.scenario.pump.plate
    compared, why = text("check.below_motor.compared"), text("check.below_motor.why")
    if borehole.depth_m is None:
        return missing(
            TOPIC,
            "below_motor",
            compared,
            text("check.below_motor.look_for"),
            why=why,
            source=text("check.below_motor.source_log"),
            unit="m",
        )
    left = borehole.depth_m - borehole.pump_depth_m
    if plate.length_below_intake_m is None and left > BELOW_MOTOR_M:
        return missing(
            TOPIC,
            "below_motor",
            text("check.below_motor.compared_intake"),
            text("check.below_motor.look_for_length"),
            why=why,
            source=text("check.below_motor.source_plate"),
            value=left,
            unit="m",
        )
    left -= plate.length_below_intake_m or 0.0
    outcome: Outcome = "pass" if at_least(left, BELOW_MOTOR_M) else "caution" if left > 0 else "fail"
    higher = ceil(100 * (BELOW_MOTOR_M - left) - 1e-6) / 100
    return Verdict(
        TOPIC,
        "below_motor",
        compared,
        outcome,
        left,
        BELOW_MOTOR_M,
        "m",
        reserve(left, BELOW_MOTOR_M, "m"),
        why,
        "" if outcome == "pass" else text("check.below_motor.remedy", by=figure(higher)),
        text("check.below_motor.source", sump=f"{BELOW_MOTOR_M:g}"),
        {} if outcome == "pass" else _hung_at(basis, borehole.pump_depth_m - higher),
    )


def _daily_limit(basis: Basis) -> Verdict:
    limit, peak = basis.scenario.borehole.daily_limit_m3, basis.daily_m3.max(axis=1)
    first, most = float(peak[0]), float(peak.max())
    slots = {"first": figure(first), "most": figure(most)}
    why, unit = text("check.daily_limit.why"), text("unit.m3_a_day")
    if limit is None:
        return missing(
            TOPIC,
            "daily_limit",
            text("check.daily_limit.compared_open", **slots),
            text("check.daily_limit.look_for"),
            why=why,
            source=text("check.daily_limit.source_permit"),
            value=most,
            unit=unit,
        )
    outcome: Outcome = "pass" if at_most(most, limit) else "caution"
    if not at_most(first, limit):
        outcome = "fail"
    year = next((number + 1 for number, volume in enumerate(peak) if not at_most(float(volume), limit)), None)
    return Verdict(
        TOPIC,
        "daily_limit",
        text("check.daily_limit.compared" if year is None else "check.daily_limit.compared_over", year=year, **slots),
        outcome,
        most,
        limit,
        unit,
        room(most, limit, unit),
        why,
        "" if outcome == "pass" else text("check.daily_limit.remedy", volume=amount(most, unit)),
        text("check.daily_limit.source"),
    )
