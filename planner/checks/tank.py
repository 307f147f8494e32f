"""Tank: what it holds, how long it takes to fill, and the height of its inlet and outlet."""

from __future__ import annotations

from math import ceil, floor

from planner.checks.basis import Basis
from planner.checks.verdict import (
    PRACTICE,
    SITE_DATA,
    Outcome,
    Verdict,
    at_least,
    figure,
    highest,
    lowest,
    missing,
    reserve,
)
from planner.water.demand import hourly_demand_m3

TOPIC = "Tank"
DAYS_HELD = 1.0
FULL_HEAD_M, LEAST_HEAD_M = 7.0, 2.0
REFILL_H = 24.0


def verdicts(basis: Basis) -> list[Verdict]:
    """Judge the tank."""
    return [_held(basis), _busiest_hour(basis), _refill(basis), _inlet(basis), _outlet(basis)]


def volumes_m3(basis: Basis) -> tuple[float, float]:
    """Smallest and largest volume that the design may have [m3]."""
    if basis.tank_m3 is not None:
        return basis.tank_m3, basis.tank_m3
    sizes = [size.volume_m3 for size in basis.scenario.tank.sizes]
    return min(sizes), max(sizes)


def _held(basis: Basis) -> Verdict:
    small, large = volumes_m3(basis)
    daily = float(basis.daily_m3[0].max())
    value, bigger = small / daily, ceil(10 * DAYS_HELD * daily - 1e-6) / 10
    left_open = "" if small == large else f" (the volume is open, {figure(small)} to {figure(large)} m3: the smallest)"
    outcome: Outcome = "pass" if at_least(value, DAYS_HELD) else "caution"
    return Verdict(
        TOPIC,
        "days_held",
        f"Demand of the first year's busiest month that {figure(small)} m3{left_open} hold: {24 * value:.0f} hours",
        outcome,
        value,
        DAYS_HELD,
        "days",
        reserve(value, DAYS_HELD, "days"),
        "The tank carries the users over cloud, outage and repair.",
        "" if outcome == "pass" else f"a tank of {bigger:.1f} m3, or less where a second source stands by",
        "one day's demand: Recommended Standards for Water Works 7.0.1, from memory; the hourly run says what suffices",
        {} if outcome == "pass" else {"tank.volume_m3": bigger},
    )


def _busiest_hour(basis: Basis) -> Verdict:
    draw = float(hourly_demand_m3(basis.scenario.demand, 1).max())
    bigger = ceil(100 * draw - 1e-6) / 100
    return lowest(
        TOPIC,
        "busiest_hour",
        "Largest volume that the tank may have, against the water drawn in the busiest hour of the first year",
        volumes_m3(basis)[1],
        draw,
        "m3",
        why="A tank that one hour empties leaves the users dry each day.",
        remedy=f"a tank of at least {bigger:g} m3",
        source=SITE_DATA,
        changes={"tank.volume_m3": bigger},
    )


def _refill(basis: Basis) -> Verdict:
    volume = volumes_m3(basis)[0]
    hours, fills = volume / basis.flow_m3h, floor(10 * REFILL_H * basis.flow_m3h + 1e-6) / 10
    # a tank that holds less than a day's demand is no remedy for one that fills slowly
    enough = at_least(fills, DAYS_HELD * float(basis.daily_m3[0].max()))
    smaller = f"a tank of at most {fills:g} m3, or " if enough else ""
    return highest(
        TOPIC,
        "refill_time",
        f"Hours of pumping that fill {figure(volume)} m3 at {basis.flow_words}, nothing being drawn",
        hours,
        REFILL_H,
        "h",
        why="A tank that takes long to fill stays low after every outage.",
        remedy=f"{smaller}a flow of at least {ceil(100 * volume / REFILL_H - 1e-6) / 100:g} m3/h",
        source=PRACTICE,
        beyond="caution",
        changes={"tank.volume_m3": fills} if smaller else {},
    )


def _inlet(basis: Basis) -> Verdict:
    pipeline = basis.scenario.pipeline
    rise, compared = pipeline.rise_to_tank_inlet_m, "Tank inlet used in the head, against the ground at the route's end"
    why = "An inlet taken too low in the head leaves the pump short at the last metre."
    if not pipeline.profile:
        return missing(
            TOPIC,
            "inlet_height",
            compared,
            "survey the tank's site against the borehole, and give the route's profile",
            why=why,
            source=SITE_DATA,
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
        remedy=f"survey again: the inlet stands at {figure(ground)} m or more above the ground at the borehole, by the "
        "height of the tank itself",
        source=SITE_DATA,
    )


def _outlet(basis: Basis) -> Verdict:
    head = basis.scenario.tank.outlet_height_m
    compared = "Height of the tank's outlet above the taps, before any loss in the pipes to them"
    why = "Taps without head give a trickle, and the far ones nothing."
    source = "7 m for one storey: CPHEEO manual on water supply; 2 m is " + PRACTICE
    if head is None:
        return missing(
            TOPIC,
            "outlet_head",
            compared,
            "survey the outlet against the highest tap",
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
        remedy=f"raise the tank by {ceil(100 * higher - 1e-6) / 100:g} m, which the pump must then lift as well",
        source=source,
        changes={
            "tank.outlet_height_m": FULL_HEAD_M,
            "pipeline.rise_to_tank_inlet_m": basis.scenario.pipeline.rise_to_tank_inlet_m + higher,
        },
        beyond="caution" if at_least(head, LEAST_HEAD_M) else "fail",
    )
