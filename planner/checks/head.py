"""Head: what the site asks, what the pump gives, and how far the duty is from the rated one."""

from __future__ import annotations

from math import ceil
from typing import Any

import numpy as np

from planner.checks.basis import TOO_SHORT, WIRE_TO_WATER, Basis
from planner.checks.verdict import (
    PLATE,
    PRACTICE,
    SITE_DATA,
    Outcome,
    Verdict,
    at_least,
    at_most,
    figure,
    lowest,
    reserve,
    room,
)
from planner.water.duty import CannotDraw, CannotStart
from planner.water.friction import velocity_m_s
from planner.water.head import SystemHead
from planner.water.pipes import Pipe, next_larger
from planner.water.pump import hydraulic_power_w

TOPIC = "Head"

MOST_SURPLUS = 4 / 3
NEAR_RATED_FLOW = (0.7, 1.2)
KEPT_EFFICIENCY = 0.85
MOST_HOURS = 20.0
SLOWEST_M_S, FASTEST_M_S, TOO_FAST_M_S = 0.5, 2.0, 3.0


def verdicts(basis: Basis) -> list[Verdict]:
    """Judge the head."""
    found = [_lift(basis), _rated_head(basis), _pipe_length(basis), _velocity(basis)]
    limit_w = basis.scenario.controller.power_limit_w
    if limit_w is not None and basis.free_duty is not None and not isinstance(basis.cannot, CannotDraw):
        found.append(_power_limit(basis, limit_w))
    if basis.duty is not None:
        found += [_duty_flow(basis), _speed(basis), _efficiency(basis)]
    return [*found, _hours(basis)]


def head_parts(system: SystemHead, flow_m3h: float, month: int) -> list[tuple[str, float]]:
    """Build up the head that the site asks at a flow in a month (0 to 11).

    Returns
    -------
    list of (str, float)
        Part and head [m]; together the total dynamic head.
    """
    level = float(system.static_level_m.mean())
    pipe_m, fittings_m = system.segment_friction_m(flow_m3h)
    static = float(system.static_level_m[month]) + system.rise_m
    parts = [
        ("water at rest, mean of the year", level),
        ("lower in the deepest month", float(system.static_level_m[month]) - level),
        ("drawdown", float(system.drawdown.at(flow_m3h))),
        ("rise to the tank inlet", system.rise_m),
        *((f"friction in {name}", float(lost)) for name, lost in zip(system.segment_names, pipe_m, strict=True)),
        ("fittings", float(fittings_m.sum())),
        ("residual head at the inlet", system.residual_m),
    ]
    over = float(system.required_m(flow_m3h, static)) - sum(head for _, head in parts)
    if over > 1e-6:
        parts.append(("to clear the high point of the route", over))
    return parts


def better_pump(basis: Basis) -> str:
    """Say which pump would do; the same words for every fault that asks for another pump."""
    return (
        f"a pump rated at about {basis.better_head_m} m at {figure(basis.design_flow_m3h)} m3/h "
        f"(about {basis.better_power_w / 1000:.1f} kW if {100 * WIRE_TO_WATER:.0f} % of it reach the water)"
    )


def _lift(basis: Basis) -> Verdict:
    system, pump = basis.system, basis.scenario.pump
    most = pump.max_head_m if basis.model is None else basis.model.max_head_m
    needed = float(system.required_m(0.0, basis.static_level_m + system.rise_m))
    good = not at_least(needed, most)
    return Verdict(
        TOPIC,
        "lift",
        f"Head needed before any water flows in {basis.month_name}, against the pump's head with no flow",
        "pass" if good else "fail",
        needed,
        most,
        "m",
        reserve(most, needed, "m"),
        "Below this head not a drop reaches the tank.",
        "" if good else better_pump(basis),
        f"{PLATE} (largest head)",
    )


def _rated_head(basis: Basis) -> Verdict:
    needed, given, flow = basis.needed_head_m, basis.given_head_m, basis.design_flow_m3h
    parts = ", ".join(f"{name} {head:.1f}" for name, head in head_parts(basis.system, flow, basis.month))
    rated = flow >= basis.scenario.pump.rated_flow_m3h
    which = "the rated flow" if rated else "95 % of the borehole's safe yield, as the rated flow is more,"
    outcome: Outcome = "pass"
    remedy = ""
    if not at_least(given, TOO_SHORT * needed):
        outcome, remedy = "fail", better_pump(basis)
    elif not at_least(given, needed):
        outcome = "caution"
        remedy = f"plan on the smaller flow of the duty point, or {better_pump(basis)}"
    elif not at_most(given, MOST_SURPLUS * needed):
        outcome = "caution"
        remedy = f"{better_pump(basis)}; this one must be held down in speed"
    return Verdict(
        TOPIC,
        "rated_head",
        f"Head of the pump at {which} {figure(flow)} m3/h, against the head needed there in {basis.month_name} "
        f"[m]: {parts}",
        outcome,
        given,
        needed,
        "m",
        reserve(given, needed, "m"),
        "A pump works best near its rated head; short of it the flow falls away, far above it power is wasted.",
        remedy,
        f"computed from {SITE_DATA}; more than a tenth short fails, more than a third above is a caution: {PRACTICE}",
    )


def _power_limit(basis: Basis, limit_w: float) -> Verdict:
    full = basis.full_duty
    return lowest(
        TOPIC,
        "power_limit",
        f"The controller's largest output against what the pump takes at {full.flow_m3h:.2f} m3/h",
        limit_w,
        full.input_power_w,
        "W",
        why="With less power the pump stays below its flow, and with much less no water arrives at all.",
        remedy=f"a controller of at least {ceil(full.input_power_w)} W that suits the motor",
        source="the controller's datasheet; so little that no water arrives fails",
        changes={"controller.power_limit_w": float(ceil(full.input_power_w))},
        beyond="fail" if isinstance(basis.cannot, CannotStart) else "caution",
    )


def _duty_flow(basis: Basis) -> Verdict:
    duty, rated = basis.duty, basis.scenario.pump.rated_flow_m3h
    assert duty is not None
    low, high = (share * rated for share in NEAR_RATED_FLOW)
    short = not at_least(duty.flow_m3h, low)
    good = not short and at_most(duty.flow_m3h, high)
    return Verdict(
        TOPIC,
        "duty_flow",
        f"Duty in {basis.month_name}, {duty.flow_m3h:.2f} m3/h at {duty.total_head_m:.1f} m (held by {duty.limited_by})"
        f", against 70 to 120 % of the rated {figure(rated)} m3/h",
        "pass" if good else "caution",
        duty.flow_m3h,
        low if short or duty.flow_m3h < rated else high,
        "m3/h",
        reserve(duty.flow_m3h, low, "m3/h") if short or duty.flow_m3h < rated else room(duty.flow_m3h, high, "m3/h"),
        "Far from its rated duty a pump wastes power and wears; plan on the rated flow, not on the largest.",
        "" if good else better_pump(basis),
        f"{PLATE} (rated flow); the range is {PRACTICE}",
    )


def _speed(basis: Basis) -> Verdict:
    duty, least = basis.duty, basis.scenario.pump.speed_min_percent
    assert duty is not None
    assert basis.model is not None
    needed = 100 * float(basis.model.speed_for(duty.flow_m3h, duty.total_head_m - max(duty.other_head_m, 0.0)))
    return lowest(
        TOPIC,
        "speed",
        f"Speed needed for {duty.flow_m3h:.2f} m3/h, against the pump's lowest speed",
        needed,
        least,
        "% of rated speed",
        why="Below its lowest speed the pump cannot be slowed; a valve must then destroy the head that is too much.",
        remedy=better_pump(basis),
        source=f"{PLATE} (speed range)",
        beyond="caution",
    )


def _efficiency(basis: Basis) -> Verdict:
    duty, pump = basis.duty, basis.scenario.pump
    assert duty is not None
    rated = 100 * float(hydraulic_power_w(pump.rated_flow_m3h, pump.rated_head_m)) / pump.rated_power_w
    return lowest(
        TOPIC,
        "wire_to_water",
        f"Wire-to-water efficiency at the duty, against {100 * KEPT_EFFICIENCY:.0f} % of that at the rated duty "
        f"({rated:.0f} %)",
        duty.efficiency_percent,
        KEPT_EFFICIENCY * rated,
        "%",
        why="Every point lost here is paid for in panels, energy or fuel through the whole life.",
        remedy=better_pump(basis),
        source=f"{PLATE} (rated duty); the share is {PRACTICE}",
        beyond="caution",
    )


def _hours(basis: Basis) -> Verdict:
    peak = basis.daily_m3.max(axis=1)
    first, last = float(peak[0] / basis.flow_m3h), float(peak.max() / basis.flow_m3h)
    outcome: Outcome = "pass" if at_most(last, MOST_HOURS) else "caution"
    if not at_most(first, 24.0):
        outcome = "fail"
    flow = float(peak.max()) / MOST_HOURS
    return Verdict(
        TOPIC,
        "hours_a_day",
        f"Hours a day at {basis.flow_words} in the busiest month: {first:.1f} in the first year, {last:.1f} at most",
        outcome,
        last,
        MOST_HOURS,
        "h/day",
        room(last, MOST_HOURS, "h/day"),
        "A pump that must run day and night has no reserve, and the borehole no time to recover.",
        "" if outcome == "pass" else f"a flow of at least {figure(flow)} m3/h, or less demand in the late years",
        f"20 hours a day is {PRACTICE}; more than 24 in the first year fails",
    )


def _pipe_length(basis: Basis) -> Verdict:
    pipeline, depth = basis.scenario.pipeline, basis.scenario.borehole.pump_depth_m
    laid = sum(segment.length_m for segment in pipeline.segments)
    route = [(0.0, 0.0), *((point.chainage_m, point.level_m) for point in pipeline.profile)]
    least = depth + max(route[-1][0], abs(pipeline.rise_to_tank_inlet_m))
    return lowest(
        TOPIC,
        "pipe_length",
        "Length of all pipe, against the pump's depth and the way to the tank",
        laid,
        least,
        "m",
        why="Pipe that is not counted is friction that is not counted.",
        remedy=f"add {ceil(10 * (least - laid)) / 10:g} m to the lengths of pipe",
        source=SITE_DATA,
    )


def _velocity(basis: Basis) -> Verdict:
    pipes, flow = basis.system.pipes, basis.flow_m3h
    speeds = np.array([float(velocity_m_s(flow / 3600, pipe.inner_diameter_m)) for pipe in pipes])
    names = basis.system.segment_names
    listed = ", ".join(f"{name} {speed:.2f}" for name, speed in zip(names, speeds, strict=True))
    fast, slow = int(speeds.argmax()), int(speeds.argmin())
    outcome: Outcome = "pass"
    worst, limit, remedy = float(speeds[fast]), FASTEST_M_S, ""
    changes: dict[str, Any] = {}
    margin = room(worst, limit, "m/s")
    if not at_most(worst, FASTEST_M_S):
        outcome = "caution" if at_most(worst, TOO_FAST_M_S) else "fail"
        over = [number for number, speed in enumerate(speeds) if not at_most(float(speed), FASTEST_M_S)]
        remedy = "; ".join(f"for {names[number]} {_slower(pipes[number], flow)[0]}" for number in over)
        sizes = {number: _slower(pipes[number], flow)[1] for number in over}
        if all(sizes.values()):
            changes = {f"pipeline.segments[{number + 1}].pipe": pipe for number, pipe in sizes.items()}
    elif not at_least(float(speeds[slow]), SLOWEST_M_S):
        outcome, worst, limit = "caution", float(speeds[slow]), SLOWEST_M_S
        margin = reserve(worst, limit, "m/s")
        bore = _bore_m(flow, SLOWEST_M_S)
        remedy = f"nothing, where the friction must be low; else {names[slow]} of at most {1000 * bore:.0f} mm inside"
    return Verdict(
        TOPIC,
        "velocity",
        f"Velocity at {basis.flow_words} [m/s]: {listed}; against 0.5 to 2 m/s",
        outcome,
        worst,
        limit,
        "m/s",
        margin,
        "Fast water costs head and makes surges; slow water lets sand and air settle.",
        remedy,
        "EN 805:2000 annex A, from memory; 3 m/s: Crane TP-410, general service, from memory",
        changes,
    )


def _bore_m(flow_m3h: float, velocity: float) -> float:
    return float(np.sqrt(4 * flow_m3h / 3600 / (np.pi * velocity)))


def _slower(pipe: Pipe, flow_m3h: float) -> tuple[str, str]:
    """Name the next pipe of the series in which the water is slow enough, or else the inside diameter and no pipe."""
    bore = _bore_m(flow_m3h, FASTEST_M_S)
    larger: Pipe | None = pipe
    while larger is not None and larger.inner_diameter_m < bore:
        larger = next_larger(larger)
    if larger is None or larger is pipe:
        return f"an inside diameter of at least {ceil(1000 * bore)} mm", ""
    return f"the next pipe size, {larger.name}", larger.name
