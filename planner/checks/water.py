"""Water: what each person gets, and whether the borehole suffices as demand grows."""

from __future__ import annotations

from planner.checks.basis import Basis
from planner.checks.verdict import (
    Outcome,
    Verdict,
    amount,
    at_least,
    at_most,
    figure,
    reserve,
    room,
)
from planner.scenario.place import People
from planner.text import text

TOPIC = "water"
SURVIVAL_L, BASIC_L, INTERMEDIATE_L = 15.0, 20.0, 50.0
SCHOOL_L = 3.0
PUMPING_HOURS = 20.0


def verdicts(basis: Basis) -> list[Verdict]:
    """Judge the water."""
    people = [user for user in basis.scenario.demand.users if user.kind == "people"]
    return [*([_per_person(people)] if people else []), _yield_through_life(basis)]


def least_l(user: People) -> float:
    """Least water per person and day: of a school's pupils where the draw is a school's, else Sphere's domestic one."""
    return SCHOOL_L if user.draw_profile == "school" else SURVIVAL_L


def _level(user: People) -> str:
    """Level of service, as the sentence of `per_person` names it."""
    if least_l(user) == SCHOOL_L:
        return "pupils"
    if user.litres_per_person_day >= INTERMEDIATE_L:
        return "intermediate"
    return "basic" if user.litres_per_person_day >= BASIC_L else "below_basic"


def _per_person(people: list[People]) -> Verdict:
    user = min(people, key=lambda user: user.litres_per_person_day / least_l(user))
    litres, least = user.litres_per_person_day, least_l(user)
    pupils = least == SCHOOL_L
    outcome: Outcome = "pass" if at_least(litres, SCHOOL_L if pupils else BASIC_L) else "caution"
    if not at_least(litres, least):
        outcome = "fail"
    limit = least if pupils or outcome == "fail" else BASIC_L
    unit = text("unit.litres_per_person_day")
    return Verdict(
        TOPIC,
        "per_person",
        text(f"check.per_person.compared_{_level(user)}", user=user.name),
        outcome,
        litres,
        limit,
        unit,
        reserve(litres, limit, unit),
        text("check.per_person.why"),
        "" if outcome == "pass" else text("check.per_person.remedy", volume=amount(limit, unit)),
        text("check.per_person.source"),
    )


def _yield_through_life(basis: Basis) -> Verdict:
    borehole = basis.scenario.borehole
    limit = PUMPING_HOURS * borehole.safe_yield_m3h
    key = "check.yield_through_life.compared"
    if borehole.daily_limit_m3 is not None and borehole.daily_limit_m3 < limit:
        limit, key = borehole.daily_limit_m3, "check.yield_through_life.compared_limit"
    peak = basis.daily_m3.max(axis=1)
    year = next((number + 1 for number, volume in enumerate(peak) if not at_most(float(volume), limit)), None)
    outcome: Outcome = "pass" if year is None else "fail" if year == 1 else "caution"
    most = float(peak.max())
    unit = text("unit.m3_a_day")
    return Verdict(
        TOPIC,
        "yield_through_life",
        text(key) if year is None else text(f"{key}_short", year=year),
        outcome,
        most,
        limit,
        unit,
        room(most, limit, unit),
        text("check.yield_through_life.why"),
        "" if year is None else text("check.yield_through_life.remedy", year=year, volume=figure(limit)),
        text("check.yield_through_life.source"),
    )
