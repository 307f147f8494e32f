"""Generator: whether it is large enough to run and to start the motor here, and not too large."""

from __future__ import annotations

from math import ceil

from planner.checks.alternating import TOPIC, ac_need_w
from planner.checks.basis import Basis
from planner.checks.connection import connection_of
from planner.checks.verdict import Outcome, Remedy, Verdict, at_least, at_most, figure, lowest, reserve, room
from planner.scenario.sources import Generator
from planner.supply.generator import (
    DIP_GOOD,
    DIP_MOST,
    HEAVY_LOAD,
    LIGHT_LOAD,
    RATING_STEP_KW,
    SOFT_GOOD,
    SOFT_LEAST,
    derated_rating_kw,
    locked_rotor_kva,
    rating_for_dip_kw,
    usual_locked_rotor_code,
)
from planner.text import text


def verdicts(basis: Basis) -> list[Verdict]:
    """Judge the size of the generator; nothing without one."""
    generator = basis.scenario.sources.generator
    if generator is None:
        return []
    return [_running(basis, generator), _starting(basis, generator), _loading(basis, generator)]


def site_rating_kw(basis: Basis, generator: Generator) -> float:
    """Rating that the pump can draw on at the site's altitude on the hottest day [kW]."""
    share = connection_of(generator, basis.scenario.pump.plate).power_share
    return share * float(derated_rating_kw(generator, basis.place.altitude_m, basis.hottest_c))


def starting_need_kw(basis: Basis, generator: Generator) -> tuple[float, float]:
    """Rating needed to start the motor, the least and the good one [kW]."""
    need_kw = ac_need_w(basis) / 1000
    if basis.scenario.controller.starting == "soft":
        return SOFT_LEAST * need_kw, SOFT_GOOD * need_kw
    start_kva = locked_rotor_kva(_shaft_kw(basis), _code(basis))
    reactance = generator.transient_reactance_percent / 100
    return tuple(  # type: ignore[return-value]
        max(need_kw, rating_for_dip_kw(start_kva, reactance, dip)) for dip in (DIP_MOST, DIP_GOOD)
    )


def _shaft_kw(basis: Basis) -> float:
    return basis.motor_input_w / 1000 * basis.scenario.pump.motor_efficiency_percent / 100


def _code(basis: Basis) -> str:
    return basis.scenario.pump.plate.locked_rotor_code or usual_locked_rotor_code(_shaft_kw(basis))


def _another(basis: Basis, generator: Generator) -> Remedy:
    """Name the smallest rating that runs and starts the motor and is not loaded too high."""
    need_kw = max(starting_need_kw(basis, generator)[1], ac_need_w(basis) / 1000 / HEAVY_LOAD)
    left = site_rating_kw(basis, generator) / generator.rating_kw
    if left < 1e-6:
        return text("check.generator.remedy_nothing_left"), {}
    rating = RATING_STEP_KW * ceil(need_kw / left / RATING_STEP_KW - 1e-9)
    return text("check.generator.remedy", rating_kw=rating), {"sources.generator.rating_kw": rating}


def _running(basis: Basis, generator: Generator) -> Verdict:
    words, changes = _another(basis, generator)
    left_kw = site_rating_kw(basis, generator)
    one_phase = connection_of(generator, basis.scenario.pump.plate).power_share < 1
    return lowest(
        TOPIC,
        "generator_running",
        text(
            "check.generator_running.compared_one_phase" if one_phase else "check.generator_running.compared",
            rating_kw=generator.rating_kw,
            percent=100 * left_kw / generator.rating_kw,
            altitude_m=basis.place.altitude_m,
            hottest_c=basis.hottest_c,
        ),
        left_kw,
        ac_need_w(basis) / 1000,
        "kW",
        why=text("check.generator_running.why"),
        remedy=words,
        source=text("check.generator_running.source"),
        changes=changes,
    )


def _starting(basis: Basis, generator: Generator) -> Verdict:
    least, good = starting_need_kw(basis, generator)
    value = site_rating_kw(basis, generator)
    outcome: Outcome = "pass" if at_least(value, good) else "caution" if at_least(value, least) else "fail"
    if basis.scenario.controller.starting == "soft":
        compared = text("check.generator_starting.compared_soft", good=SOFT_GOOD, least=SOFT_LEAST)
        source = text("source.practice")
    else:
        assumed = basis.scenario.pump.plate.locked_rotor_code is None
        compared = text(
            "check.generator_starting.compared_assumed" if assumed else "check.generator_starting.compared",
            kva=figure(locked_rotor_kva(_shaft_kw(basis), _code(basis))),
            code=_code(basis),
            good_dip=100 * DIP_GOOD,
            least_kw=figure(least),
            most_dip=100 * DIP_MOST,
        )
        source = text("check.generator_starting.source_direct", good_dip=100 * DIP_GOOD, most_dip=100 * DIP_MOST)
    words, changes = _another(basis, generator)
    good_now = outcome == "pass"
    return Verdict(
        TOPIC,
        "generator_starting",
        compared,
        outcome,
        value,
        good,
        "kW",
        reserve(value, good, "kW"),
        text("check.generator_starting.why"),
        "" if good_now else words,
        source,
        {} if good_now else changes,
    )


def _loading(basis: Basis, generator: Generator) -> Verdict:
    share = ac_need_w(basis) / 1000 / max(site_rating_kw(basis, generator), 1e-9)
    light = share < (LIGHT_LOAD + HEAVY_LOAD) / 2
    good = at_least(share, LIGHT_LOAD) and at_most(share, HEAVY_LOAD)
    value, low, high = 100 * share, 100 * LIGHT_LOAD, 100 * HEAVY_LOAD
    words, changes = _another(basis, generator)
    if light and changes.get("sources.generator.rating_kw", 0.0) >= generator.rating_kw:
        words, changes = text("check.generator_loading.remedy_other_loads"), {}
    elif light:
        words = text("check.generator_loading.remedy_light", remedy=words)
    return Verdict(
        TOPIC,
        "generator_loading",
        text("check.generator_loading.compared", low=low, high=high),
        "pass" if good else "caution",
        value,
        low if light else high,
        "%",
        reserve(value, low, "%") if light else room(value, high, "%"),
        text("check.generator_loading.why"),
        "" if good else words,
        text("check.generator_loading.source", low=low, high=high),
        {} if good else changes,
    )
