"""Borehole: yield, levels and clearances; what cools the motor is judged in `cooling`."""

from __future__ import annotations

from math import ceil, floor
from typing import Any

from planner.checks.basis import YIELD_USED, Basis
from planner.checks.cooling import TOPIC, cooling, outer_diameter_mm
from planner.checks.verdict import (
    PLATE,
    PRACTICE,
    SITE_DATA,
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
from planner.water.ageing import ageing_of
from planner.water.working_range import ASSUMED_SUBMERGENCE_M

TIGHT_MM = 12.0
BELOW_MOTOR_M = 1.0


def verdicts(basis: Basis) -> list[Verdict]:
    """Judge the borehole."""
    return [
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
    value = pump.rated_flow_m3h if duty is None or basis.too_short else duty.flow_m3h
    what = (
        "Rated flow of the pump" if duty is None or basis.too_short else "Flow that the pump gives here at full speed"
    )
    outcome: Outcome = "pass"
    remedy = ""
    throttled = basis.duty is not None and basis.duty.limited_by == "safe yield" and basis.duty.other_head_m > 1e-6
    if not at_most(value, limit):
        outcome = "caution"
        speed = 100.0 if basis.duty is None else floor(basis.duty.speed_percent)
        remedy = f"set the drive's highest speed to {speed:.0f} %, or a pump of less flow"
        if throttled or not at_most(pump.rated_flow_m3h, limit):
            outcome, value = "fail", max(value, pump.rated_flow_m3h)
            remedy = (
                f"a pump rated at no more than {figure(min(YIELD_USED * limit, basis.design_flow_m3h))} m3/h, at about "
                f"{basis.better_head_m} m; until then a drive or valve that holds it to {figure(limit)} m3/h"
            )
    return Verdict(
        TOPIC,
        "safe_yield",
        f"{what}, against the borehole's safe yield",
        outcome,
        value,
        limit,
        "m3/h",
        room(value, limit, "m3/h"),
        "Over-pumping draws in sand, lets the pump run dry and can ruin the borehole for good.",
        remedy,
        f"{SITE_DATA} (pumping test); a pump rated above the yield fails, one that can be held by its speed does not",
    )


def _drawn_flow(basis: Basis) -> tuple[float, str]:
    """Flow that the pump would draw whether its intake stays covered or not [m3/h], and the same in words."""
    duty, drawing = basis.duty, basis.drawing_duty
    if duty is None or drawing is None or basis.too_short or duty.limited_by != "intake level":
        return basis.flow_m3h, basis.flow_words
    return drawing.flow_m3h, f"the {drawing.flow_m3h:.2f} m3/h that the pump would draw"


def _drawn_level_m(basis: Basis) -> float:
    return basis.static_level_m + float(basis.system.drawdown.at(_drawn_flow(basis)[0]))


def _intake(basis: Basis) -> Verdict:
    borehole, level = basis.scenario.borehole, _drawn_level_m(basis)
    cover_m = basis.scenario.pump.plate.minimum_submergence_m or ASSUMED_SUBMERGENCE_M
    remedy, changes = _deeper(basis, level + cover_m - borehole.pump_depth_m)
    return highest(
        TOPIC,
        "pumping_level",
        f"Depth of the water in {basis.month_name} at {_drawn_flow(basis)[1]}, against the pump's intake",
        level,
        borehole.pump_depth_m,
        "m",
        why="A pump that takes air loses its prime, runs dry and burns.",
        remedy=remedy,
        source=SITE_DATA,
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
        return f"{less}: the borehole is not deep enough to hang the pump deeper", {}
    if borehole.screen_top_m is not None and foot_m > borehole.screen_top_m:
        return f"{less}: any deeper the pump would hang in the screen, which draws sand and leaves the motor hot", {}
    unknown = [
        what for what, depth in (("bottom", borehole.depth_m), ("screen", borehole.screen_top_m)) if depth is None
    ]
    provided = f", once the driller's log shows that {' and '.join(unknown)} lie deeper" if unknown else ""
    words = f"set the pump {figure(by)} m deeper, with pipe and cable to match{provided}, or {less}"
    return words, {} if unknown else _hung_at(basis, borehole.pump_depth_m + by)


def _pump_less(basis: Basis) -> str:
    """Say that the pump must draw less, and how a drive can hold it where the hourly run does so."""
    if basis.duty is None or basis.duty.limited_by != "intake level":
        return "pump less"
    speed = floor(basis.duty.speed_percent)
    held = f"the hourly run holds it to {basis.duty.flow_m3h:.2f} m3/h: a drive set to at most {speed} % speed"
    return f"pump less ({held} and a low-water cut-out)"


def _submergence(basis: Basis) -> Verdict:
    borehole, plate = basis.scenario.borehole, basis.scenario.pump.plate
    cover = borehole.pump_depth_m - _drawn_level_m(basis)
    compared = f"Water above the intake in {basis.month_name} at {_drawn_flow(basis)[1]}, against what the pump asks"
    why = "Too little water above the intake draws in air and lets the pump cavitate."
    if plate.minimum_submergence_m is None:
        return missing(
            TOPIC,
            "submergence",
            compared,
            "look for 'minimum submergence' or NPSH in the pump's datasheet",
            why=why,
            source=PLATE,
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
        source=PLATE,
        changes=changes,
    )


def _level_through_life(basis: Basis) -> Verdict:
    borehole, pump = basis.scenario.borehole, basis.scenario.pump
    aged = ageing_of(borehole, pump, basis.daily_m3.shape[0])
    flow, words = _drawn_flow(basis)
    level = basis.static_level_m + aged.level_fall_m + aged.drawdown_growth * float(basis.system.drawdown.at(flow))
    limit = borehole.pump_depth_m - (pump.plate.minimum_submergence_m or ASSUMED_SUBMERGENCE_M)
    dry = level > limit * (1 + 1e-9)
    year = f"; too deep from year {int(dry.argmax()) + 1} on" if dry.any() else ""
    remedy, changes = _deeper(basis, float(level[-1]) - limit)
    return highest(
        TOPIC,
        "level_through_life",
        f"Depth of the water in {basis.month_name} of the last year at {words}, the water at rest falling "
        f"{borehole.level_decline_m_per_year:g} m and the specific capacity "
        f"{borehole.specific_capacity_decline_percent_per_year:g} % a year, against the intake less what must stay "
        f"above it{year}",
        float(level[-1]),
        limit,
        "m",
        why="A pump hung for today's water runs dry in later years, and the hourly run lets it pump less and less.",
        remedy=remedy,
        source="declines as entered or assumed; a borehole cleaned in time falls less",
        beyond="caution",
        changes=changes,
    )


def _screen(basis: Basis) -> Verdict:
    top, level = basis.scenario.borehole.screen_top_m, basis.static_level_m + basis.drawdown_m
    compared = f"Depth of the water in {basis.month_name} at {basis.flow_words}, against the top of the screen"
    why = "A screen that falls dry clogs and lets air into the water."
    if top is None:
        return missing(
            TOPIC,
            "screen",
            compared,
            "look for the screen's depth in the driller's log",
            why=why,
            source="the driller's log",
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
        remedy="pump less, so that the water stays above the screen",
        source=f"{SITE_DATA}; to keep it wet is {PRACTICE}",
        beyond="caution",
    )


def _casing(basis: Basis) -> Verdict:
    casing, plate = basis.scenario.borehole.casing_inner_diameter_mm, basis.scenario.pump.plate
    outer = outer_diameter_mm(plate)
    compared = "Inside diameter of the casing, against the pump's outside diameter"
    why = "A pump that sticks cannot be lifted again and may cost the borehole."
    if casing is None or outer is None:
        lacking = "the casing's inside diameter in the driller's log" if casing is None else ""
        asked = "the outside diameter or the frame in inches on the plate" if outer is None else ""
        return missing(
            TOPIC,
            "casing_clearance",
            compared,
            f"look for {' and '.join(part for part in (lacking, asked) if part)}",
            why=why,
            source=f"{PLATE} and {SITE_DATA}",
            value=casing,
            limit=outer,
            unit="mm",
        )
    clearance = casing - outer
    outcome: Outcome = "pass" if at_least(clearance, TIGHT_MM) else "caution" if clearance > 1e-9 * casing else "fail"
    return Verdict(
        TOPIC,
        "casing_clearance",
        f"{compared} of {figure(outer)} mm and {TIGHT_MM:g} mm of room",
        outcome,
        casing,
        outer + TIGHT_MM,
        "mm",
        reserve(casing, outer + TIGHT_MM, "mm"),
        why,
        "" if outcome == "pass" else f"a pump of at most {floor(casing - TIGHT_MM)} mm outside diameter",
        f"{PLATE} (frame: NEMA MG 1 part 18); the room is {PRACTICE}",
    )


def _below_motor(basis: Basis) -> Verdict:
    borehole, plate = basis.scenario.borehole, basis.scenario.pump.plate
    compared = "Borehole left below the motor"
    why = "Sand gathers at the bottom; a motor that stands in it overheats and sticks."
    if borehole.depth_m is None:
        return missing(
            TOPIC,
            "below_motor",
            compared,
            "look for the borehole's depth in the driller's log, or sound it",
            why=why,
            source="the driller's log",
            unit="m",
        )
    left = borehole.depth_m - borehole.pump_depth_m
    if plate.length_below_intake_m is None and left > BELOW_MOTOR_M:
        return missing(
            TOPIC,
            "below_motor",
            "Borehole left below the intake, from which the motor's length is to be taken",
            "look for the motor's length on the datasheet's drawing",
            why=why,
            source=PLATE,
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
        "" if outcome == "pass" else f"set the pump {figure(higher)} m higher",
        f"{SITE_DATA}; {BELOW_MOTOR_M:g} m of sump is {PRACTICE}",
        {} if outcome == "pass" else _hung_at(basis, borehole.pump_depth_m - higher),
    )


def _daily_limit(basis: Basis) -> Verdict:
    limit, peak = basis.scenario.borehole.daily_limit_m3, basis.daily_m3.max(axis=1)
    first, most = float(peak[0]), float(peak.max())
    compared = f"Water drawn in the busiest month, {figure(first)} m3/day in the first year and {figure(most)} at most"
    why = "A permit that is overdrawn can be withdrawn, and the aquifer with it."
    if limit is None:
        return missing(
            TOPIC,
            "daily_limit",
            f"{compared}, against the permit",
            "look for the daily volume in the abstraction permit or the pumping test's report",
            why=why,
            source="the abstraction permit",
            value=most,
            unit="m3/day",
        )
    outcome: Outcome = "pass" if at_most(most, limit) else "caution"
    if not at_most(first, limit):
        outcome = "fail"
    year = next((number + 1 for number, volume in enumerate(peak) if not at_most(float(volume), limit)), None)
    return Verdict(
        TOPIC,
        "daily_limit",
        f"{compared}, against the daily limit" + ("" if year is None else f"; too much from year {year} on"),
        outcome,
        most,
        limit,
        "m3/day",
        room(most, limit, "m3/day"),
        why,
        "" if outcome == "pass" else f"a permit for {amount(most, 'm3/day')}, or less demand",
        f"{SITE_DATA} (permit or test)",
    )
