"""Generator: whether it is large enough to run and to start the motor here, and not too large."""

from __future__ import annotations

from math import ceil

from planner.checks.alternating import TOPIC, ac_need_w
from planner.checks.basis import Basis
from planner.checks.connection import connection_of
from planner.checks.verdict import PRACTICE, Outcome, Remedy, Verdict, at_least, at_most, figure, lowest, reserve, room
from planner.scenario.sources import Generator
from planner.supply.generator import derated_rating_kw, locked_rotor_kva, rating_for_dip_kw, usual_locked_rotor_code

SOFT_LEAST, SOFT_GOOD = 1.25, 1.5
"""Rating over running need for a motor on a drive: common practice, no source."""
DIP_GOOD, DIP_MOST = 0.25, 0.35
"""Voltage dip while the motor starts: class G1 of ISO 8528-5 (from memory), and what a motor just starts with, at 42 %
of its torque: common practice, no source."""
LIGHT_LOAD, HEAVY_LOAD = 0.30, 0.70
"""Least load: NFPA 110 practice; mean load of a prime-power set: ISO 8528-1."""
STEP_KW = 0.5


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


def _derating(basis: Basis, generator: Generator) -> str:
    left = 100 * site_rating_kw(basis, generator) / generator.rating_kw
    where = f"{basis.place.altitude_m:.0f} m and {basis.hottest_c:.0f} deg C"
    one = " and on one of three phases" if connection_of(generator, basis.scenario.pump.plate).power_share < 1 else ""
    return f"{generator.rating_kw:g} kW, of which {left:.0f} % are left at {where}{one}"


def _another(basis: Basis, generator: Generator) -> Remedy:
    """Name the smallest rating that runs and starts the motor and is not loaded too high."""
    need_kw = max(starting_need_kw(basis, generator)[1], ac_need_w(basis) / 1000 / HEAVY_LOAD)
    left = site_rating_kw(basis, generator) / generator.rating_kw
    if left < 1e-6:
        return "no generator of this derating gives power here: look at altitude and derating again", {}
    rating = STEP_KW * ceil(need_kw / left / STEP_KW - 1e-9)
    return (
        f"a generator rated at {rating:g} kW or a little more, with its cable and protective device to match",
        {"sources.generator.rating_kw": rating},
    )


def _running(basis: Basis, generator: Generator) -> Verdict:
    words, changes = _another(basis, generator)
    return lowest(
        TOPIC,
        "generator_running",
        f"Generator ({_derating(basis, generator)}), against what the controller takes at the rated power",
        site_rating_kw(basis, generator),
        ac_need_w(basis) / 1000,
        "kW",
        why="An overloaded generator slows down, stalls and burns its winding.",
        remedy=words,
        source="rating by the user, derating as entered",
        changes=changes,
    )


def _starting(basis: Basis, generator: Generator) -> Verdict:
    least, good = starting_need_kw(basis, generator)
    value = site_rating_kw(basis, generator)
    outcome: Outcome = "pass" if at_least(value, good) else "caution" if at_least(value, least) else "fail"
    if basis.scenario.controller.starting == "soft":
        how, source = "softly by a drive, 1.5 times the running need (1.25 at least)", PRACTICE
    else:
        kva = locked_rotor_kva(_shaft_kw(basis), _code(basis))
        assumed = "" if basis.scenario.pump.plate.locked_rotor_code else ", assumed"
        how = (
            f"direct on line with {figure(kva)} kVA (code letter {_code(basis)}{assumed}) and a dip of "
            f"{100 * DIP_GOOD:.0f} % ({figure(least)} kW for {100 * DIP_MOST:.0f} %)"
        )
        source = (
            "locked-rotor kVA by code letter, NEMA MG 1 (from memory); dip across the alternator's transient reactance;"
            f" dip of 25 %: ISO 8528-5, class G1 (from memory); 35 % is {PRACTICE}"
        )
    words, changes = _another(basis, generator)
    good_now = outcome == "pass"
    return Verdict(
        TOPIC,
        "generator_starting",
        f"Generator as derated, against what starts the motor {how}",
        outcome,
        value,
        good,
        "kW",
        reserve(value, good, "kW"),
        "A generator that cannot start the motor lets its voltage collapse; the motor hums and heats.",
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
        words, changes = "other loads beside the pump: a smaller generator would not start it", {}
    elif light:
        words += ", or other loads beside the pump"
    return Verdict(
        TOPIC,
        "generator_loading",
        "Load of the generator with the motor at rated power, against 30 to 70 % of its rating as derated",
        "pass" if good else "caution",
        value,
        low if light else high,
        "%",
        reserve(value, low, "%") if light else room(value, high, "%"),
        "A lightly loaded diesel builds up carbon; one loaded above its prime rating for hours wears out early.",
        "" if good else words,
        "30 %: NFPA 110 practice; 70 % mean load of prime power: ISO 8528-1",
        {} if good else changes,
    )
