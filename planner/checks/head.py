"""Head: what the site asks, what the pump gives, and how far the duty is from the rated one."""

from __future__ import annotations

from math import ceil
from typing import Any

import numpy as np

from planner.checks.basis import TOO_SHORT, WIRE_TO_WATER, YIELD_USED, Basis
from planner.checks.verdict import (
    Outcome,
    Verdict,
    at_least,
    at_most,
    figure,
    lowest,
    reserve,
    room,
)
from planner.text import listed, text
from planner.water.duty import CannotDraw, CannotStart
from planner.water.friction import velocity_m_s
from planner.water.head import SystemHead
from planner.water.pipes import Pipe, next_larger
from planner.water.pump import hydraulic_power_w

TOPIC = "head"

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
        (text("head_part.static"), level),
        (text("head_part.deepest"), float(system.static_level_m[month]) - level),
        (text("head_part.drawdown"), float(system.drawdown.at(flow_m3h))),
        (text("head_part.rise"), system.rise_m),
        *(
            (text("head_part.friction", segment=name), float(lost))
            for name, lost in zip(system.segment_names, pipe_m, strict=True)
        ),
        (text("head_part.fittings"), float(fittings_m.sum())),
        (text("head_part.residual"), system.residual_m),
    ]
    over = float(system.required_m(flow_m3h, static)) - sum(head for _, head in parts)
    if over > 1e-6:
        parts.append((text("head_part.high_point"), over))
    return parts


def better_pump(basis: Basis, key: str = "basis.better_pump") -> str:
    """Say which pump would do; the same words for every fault that asks for another pump.

    `key` is another sentence that names the same pump.
    """
    return text(
        key,
        head=basis.better_head_m,
        flow=figure(basis.design_flow_m3h),
        power=f"{basis.better_power_w / 1000:.1f}",
        share=f"{100 * WIRE_TO_WATER:.0f}",
    )


def _lift(basis: Basis) -> Verdict:
    system, pump = basis.system, basis.scenario.pump
    most = pump.max_head_m if basis.model is None else basis.model.max_head_m
    needed = float(system.required_m(0.0, basis.static_level_m + system.rise_m))
    good = not at_least(needed, most)
    return Verdict(
        TOPIC,
        "lift",
        text("check.lift.compared", month=basis.month_name),
        "pass" if good else "fail",
        needed,
        most,
        "m",
        reserve(most, needed, "m"),
        text("check.lift.why"),
        "" if good else better_pump(basis),
        text("check.lift.source"),
    )


def _rated_head(basis: Basis) -> Verdict:
    needed, given, flow = basis.needed_head_m, basis.given_head_m, basis.design_flow_m3h
    parts = [
        text("head_part.part", name=name, head=f"{head:.1f}")
        for name, head in head_parts(basis.system, flow, basis.month)
    ]
    rated = flow >= basis.scenario.pump.rated_flow_m3h
    outcome: Outcome = "pass"
    remedy = ""
    if not at_least(given, TOO_SHORT * needed):
        outcome, remedy = "fail", better_pump(basis)
    elif not at_least(given, needed):
        outcome = "caution"
        remedy = better_pump(basis, "check.rated_head.remedy_short")
    elif not at_most(given, MOST_SURPLUS * needed):
        outcome = "caution"
        remedy = better_pump(basis, "check.rated_head.remedy_over")
    return Verdict(
        TOPIC,
        "rated_head",
        text(
            "check.rated_head.compared" if rated else "check.rated_head.compared_yield",
            share=f"{100 * YIELD_USED:.0f}",
            flow=figure(flow),
            month=basis.month_name,
            parts=listed(parts),
        ),
        outcome,
        given,
        needed,
        "m",
        reserve(given, needed, "m"),
        text("check.rated_head.why"),
        remedy,
        text("check.rated_head.source"),
    )


def _power_limit(basis: Basis, limit_w: float) -> Verdict:
    full = basis.full_duty
    return lowest(
        TOPIC,
        "power_limit",
        text("check.power_limit.compared", flow=f"{full.flow_m3h:.2f}"),
        limit_w,
        full.input_power_w,
        "W",
        why=text("check.power_limit.why"),
        remedy=text("check.power_limit.remedy", power=ceil(full.input_power_w)),
        source=text("check.power_limit.source"),
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
        text(
            "check.duty_flow.compared",
            month=basis.month_name,
            flow=f"{duty.flow_m3h:.2f}",
            head=f"{duty.total_head_m:.1f}",
            limited=text(f"limited_by.{duty.limited_by}"),
            low=f"{100 * NEAR_RATED_FLOW[0]:.0f}",
            high=f"{100 * NEAR_RATED_FLOW[1]:.0f}",
            rated=figure(rated),
        ),
        "pass" if good else "caution",
        duty.flow_m3h,
        low if short or duty.flow_m3h < rated else high,
        "m3/h",
        reserve(duty.flow_m3h, low, "m3/h") if short or duty.flow_m3h < rated else room(duty.flow_m3h, high, "m3/h"),
        text("check.duty_flow.why"),
        "" if good else better_pump(basis),
        text("check.duty_flow.source"),
    )


def _speed(basis: Basis) -> Verdict:
    duty, least = basis.duty, basis.scenario.pump.speed_min_percent
    assert duty is not None
    assert basis.model is not None
    needed = 100 * float(basis.model.speed_for(duty.flow_m3h, duty.total_head_m - max(duty.other_head_m, 0.0)))
    return lowest(
        TOPIC,
        "speed",
        text("check.speed.compared", flow=f"{duty.flow_m3h:.2f}"),
        needed,
        least,
        text("unit.percent_of_rated_speed"),
        why=text("check.speed.why"),
        remedy=better_pump(basis),
        source=text("check.speed.source"),
        beyond="caution",
    )


def _efficiency(basis: Basis) -> Verdict:
    duty, pump = basis.duty, basis.scenario.pump
    assert duty is not None
    rated = 100 * float(hydraulic_power_w(pump.rated_flow_m3h, pump.rated_head_m)) / pump.rated_power_w
    return lowest(
        TOPIC,
        "wire_to_water",
        text("check.wire_to_water.compared", share=f"{100 * KEPT_EFFICIENCY:.0f}", rated=f"{rated:.0f}"),
        duty.efficiency_percent,
        KEPT_EFFICIENCY * rated,
        "%",
        why=text("check.wire_to_water.why"),
        remedy=better_pump(basis),
        source=text("check.wire_to_water.source"),
        beyond="caution",
    )


def _hours(basis: Basis) -> Verdict:
    peak = basis.daily_m3.max(axis=1)
    first, last = float(peak[0] / basis.flow_m3h), float(peak.max() / basis.flow_m3h)
    outcome: Outcome = "pass" if at_most(last, MOST_HOURS) else "caution"
    if not at_most(first, 24.0):
        outcome = "fail"
    flow, unit = float(peak.max()) / MOST_HOURS, text("unit.hours_a_day")
    safe = basis.scenario.borehole.safe_yield_m3h
    # a larger flow than the borehole bears would ruin it
    key = "check.hours_a_day.remedy" if at_most(flow, safe) else "check.hours_a_day.remedy_less"
    return Verdict(
        TOPIC,
        "hours_a_day",
        text("check.hours_a_day.compared", flow=basis.flow_words, first=f"{first:.1f}", last=f"{last:.1f}"),
        outcome,
        last,
        MOST_HOURS,
        unit,
        room(last, MOST_HOURS, unit),
        text("check.hours_a_day.why"),
        "" if outcome == "pass" else text(key, flow=figure(flow), safe=figure(safe)),
        text("check.hours_a_day.source"),
    )


def _pipe_length(basis: Basis) -> Verdict:
    pipeline, depth = basis.scenario.pipeline, basis.scenario.borehole.pump_depth_m
    laid = sum(segment.length_m for segment in pipeline.segments)
    route = [(0.0, 0.0), *((point.chainage_m, point.level_m) for point in pipeline.profile)]
    least = depth + max(route[-1][0], abs(pipeline.rise_to_tank_inlet_m))
    return lowest(
        TOPIC,
        "pipe_length",
        text("check.pipe_length.compared"),
        laid,
        least,
        "m",
        why=text("check.pipe_length.why"),
        remedy=text("check.pipe_length.remedy", length=f"{ceil(10 * (least - laid)) / 10:g}"),
        source=text("check.pipe_length.source"),
    )


def _velocity(basis: Basis) -> Verdict:
    pipes, flow = basis.system.pipes, basis.flow_m3h
    speeds = np.array([float(velocity_m_s(flow / 3600, pipe.inner_diameter_m)) for pipe in pipes])
    names = basis.system.segment_names
    segments = [
        text("check.velocity.segment", segment=name, velocity=f"{speed:.2f}")
        for name, speed in zip(names, speeds, strict=True)
    ]
    fast, slow = int(speeds.argmax()), int(speeds.argmin())
    outcome: Outcome = "pass"
    worst, limit, remedy = float(speeds[fast]), FASTEST_M_S, ""
    changes: dict[str, Any] = {}
    margin = room(worst, limit, "m/s")
    if not at_most(worst, FASTEST_M_S):
        outcome = "caution" if at_most(worst, TOO_FAST_M_S) else "fail"
        over = [number for number, speed in enumerate(speeds) if not at_most(float(speed), FASTEST_M_S)]
        sizes = {number: _slower(pipes[number], flow) for number in over}
        least_mm = ceil(1000 * _bore_m(flow, FASTEST_M_S))
        remedy = "; ".join(
            text("check.velocity.remedy_size", segment=names[number], pipe=pipe.name)
            if pipe is not None
            else text("check.velocity.remedy_diameter", segment=names[number], diameter=least_mm)
            for number, pipe in sizes.items()
        )
        named = {f"pipeline.segments[{number + 1}].pipe": pipe.name for number, pipe in sizes.items() if pipe}
        changes = dict(named) if len(named) == len(sizes) else {}
    elif not at_least(float(speeds[slow]), SLOWEST_M_S):
        outcome, worst, limit = "caution", float(speeds[slow]), SLOWEST_M_S
        margin = reserve(worst, limit, "m/s")
        diameter = f"{1000 * _bore_m(flow, SLOWEST_M_S):.0f}"
        remedy = text("check.velocity.remedy_slow", segment=names[slow], diameter=diameter)
    return Verdict(
        TOPIC,
        "velocity",
        text(
            "check.velocity.compared",
            flow=basis.flow_words,
            segments=listed(segments),
            slowest=f"{SLOWEST_M_S:g}",
            fastest=f"{FASTEST_M_S:g}",
        ),
        outcome,
        worst,
        limit,
        "m/s",
        margin,
        text("check.velocity.why"),
        remedy,
        text("check.velocity.source"),
        changes,
    )


def _bore_m(flow_m3h: float, velocity: float) -> float:
    return float(np.sqrt(4 * flow_m3h / 3600 / (np.pi * velocity)))


def _slower(pipe: Pipe, flow_m3h: float) -> Pipe | None:
    """Find the next pipe of the series in which the water is slow enough; None where there is none."""
    bore = _bore_m(flow_m3h, FASTEST_M_S)
    larger: Pipe | None = pipe
    while larger is not None and larger.inner_diameter_m < bore:
        larger = next_larger(larger)
    return None if larger is pipe else larger
