"""Water: what each person gets, and whether the borehole suffices as demand grows."""

from __future__ import annotations

from planner.checks.basis import Basis
from planner.checks.verdict import (
    PRACTICE,
    SITE_DATA,
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

TOPIC = "Water"
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


def _level(litres: float) -> str:
    if litres >= INTERMEDIATE_L:
        return "intermediate service and more"
    return "basic service" if litres >= BASIC_L else "less than basic service"


def _per_person(people: list[People]) -> Verdict:
    user = min(people, key=lambda user: user.litres_per_person_day / least_l(user))
    litres, least = user.litres_per_person_day, least_l(user)
    pupils = least == SCHOOL_L
    outcome: Outcome = "pass" if at_least(litres, SCHOOL_L if pupils else BASIC_L) else "caution"
    if not at_least(litres, least):
        outcome = "fail"
    limit = least if pupils or outcome == "fail" else BASIC_L
    level = "" if pupils else f" ({_level(litres)})"
    return Verdict(
        TOPIC,
        "per_person",
        f"Water per person and day of {user.name}{level}, the user with the least for its kind",
        outcome,
        litres,
        limit,
        "L/person/day",
        reserve(litres, limit, "L/person/day"),
        "With too little water people fetch the rest from unsafe places.",
        ""
        if outcome == "pass"
        else f"give {amount(limit, 'L/person/day')}, or show that they have another safe source",
        "Sphere Handbook: 15 L, school 3 L per pupil (from memory); WHO domestic water quantity: 20 L basic, 50 L "
        "intermediate",
    )


def _yield_through_life(basis: Basis) -> Verdict:
    borehole = basis.scenario.borehole
    limit = PUMPING_HOURS * borehole.safe_yield_m3h
    binding = "the safe yield in 20 hours"
    if borehole.daily_limit_m3 is not None and borehole.daily_limit_m3 < limit:
        limit, binding = borehole.daily_limit_m3, "the daily limit"
    peak = basis.daily_m3.max(axis=1)
    year = next((number + 1 for number, volume in enumerate(peak) if not at_most(float(volume), limit)), None)
    outcome: Outcome = "pass" if year is None else "fail" if year == 1 else "caution"
    most = float(peak.max())
    when = "suffices through the life" if year is None else f"no longer suffices from year {year} on"
    return Verdict(
        TOPIC,
        "yield_through_life",
        f"Demand of the busiest month at its largest, against {binding}: it {when}",
        outcome,
        most,
        limit,
        "m3/day",
        room(most, limit, "m3/day"),
        "A borehole that cannot keep up with growth leaves the users short, or is over-pumped.",
        ""
        if outcome == "pass"
        else f"a second borehole or source by year {year}, or hold the demand to {figure(limit)} m3/day",
        f"{SITE_DATA}; 20 hours a day, to let the level recover, is {PRACTICE}",
    )
