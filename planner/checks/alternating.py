"""AC side: voltage, phases and frequency of grid and generator, and whether the generating set is large enough."""

from __future__ import annotations

from math import ceil

import numpy as np

from planner.checks.basis import Basis
from planner.checks.verdict import (
    PLATE,
    PRACTICE,
    SITE_DATA,
    Outcome,
    Verdict,
    at_least,
    at_most,
    figure,
    highest,
    lowest,
    missing,
    reserve,
    room,
)
from planner.scenario.sources import Generator, Grid
from planner.supply.cables import current_of_power_a, drop_share
from planner.supply.generator import derated_rating_kw

TOPIC = "AC side"

GENERATOR_TOLERANCE_PERCENT = 5.0
"""Swing of a generating set's voltage: ISO 8528-5, from memory."""
FREQUENCY_USUAL_PERCENT = 2.0
FREQUENCY_WIDE_PERCENT = (5.0, 3.0)
"""Zones A and B of IEC 60034-1: 2 % either way for good; 5 % below and 3 % above for a while."""
SOFT_LEAST, SOFT_GOOD = 1.25, 1.5
"""Rating over running need for a motor on a drive: common practice, no source."""
DIRECT_MOTOR_KW = (0.37, 0.75, 1.12, 1.49, 2.24, 3.73, 5.59, 7.46, 11.2, 14.9, 22.4, 29.8, 37.3, 44.7)
DIRECT_EXTERNAL_KW = (2.0, 4.0, 5.0, 7.5, 10, 15, 20, 30, 40, 60, 100, 100, 150, 175)
DIRECT_INTERNAL_KW = (1.5, 2.5, 3.0, 4.0, 5, 7.5, 10, 15, 20, 25, 40, 50, 60, 75)
"""Generating set by motor started direct on line, externally and internally regulated: table of a motor handbook."""
LIGHT_LOAD, HEAVY_LOAD = 0.30, 0.70
"""Least load: NFPA 110 practice; mean load of a prime-power set: ISO 8528-1."""


def verdicts(basis: Basis) -> list[Verdict]:
    """Judge the AC side; nothing without grid and generator."""
    grid, generator = basis.scenario.sources.grid, basis.scenario.sources.generator
    found = []
    if grid is not None:
        found += [_voltage(basis, "grid", grid), _phases(basis, "grid", grid), _frequency(basis, "grid", grid)]
        if grid.power_limit_w is not None:
            found.append(_connection(basis, grid.power_limit_w))
    if generator is not None:
        found += [
            _voltage(basis, "generator", generator),
            _phases(basis, "generator", generator),
            _frequency(basis, "generator", generator),
            _running(basis, generator),
            _starting(basis, generator),
            _loading(basis, generator),
        ]
    return found


def ac_need_w(basis: Basis) -> float:
    """Power that grid or generator must give with the motor at its rated power [W]."""
    return basis.motor_input_w / (basis.scenario.controller.ac_efficiency_percent / 100)


def cable_drop_share(basis: Basis, source: Grid | Generator) -> float | None:
    """Share of the voltage lost in the AC cable at the rated power; None where cable or voltage were not given."""
    cables = basis.scenario.cables
    if cables is None or cables.ac is None or source.voltage_v is None:
        return None
    supply = "3-phase" if source.phases == 3 else "1-phase"
    current = current_of_power_a(ac_need_w(basis), source.voltage_v, supply, cables.ac.power_factor)
    return drop_share(cables.ac, supply, current, source.voltage_v)


def _voltage(basis: Basis, name: str, source: Grid | Generator) -> Verdict:
    plate = basis.scenario.pump.plate
    swing = source.voltage_tolerance_percent if isinstance(source, Grid) else GENERATOR_TOLERANCE_PERCENT
    compared = f"Voltage of the {name} at the controller"
    why = "With too little voltage the motor draws more current and stops; with too much its insulation suffers."
    source_words = f"{PLATE}; swing of {figure(swing)} %: " + (
        SITE_DATA if isinstance(source, Grid) else "ISO 8528-5, from memory"
    )
    if source.voltage_v is None or plate.ac_voltage_min_v is None or plate.ac_voltage_max_v is None:
        asked = [f"the voltage of the {name}"] if source.voltage_v is None else []
        if plate.ac_voltage_min_v is None or plate.ac_voltage_max_v is None:
            asked.append("'AC' or '~' with volts on the plate of pump or controller")
        return missing(
            TOPIC,
            f"{name}_voltage",
            f"{compared}, against the plate's AC limits",
            f"look for {' and '.join(asked)}",
            why=why,
            source=source_words,
            value=source.voltage_v,
            unit="V",
        )
    drop = cable_drop_share(basis, source)
    low = source.voltage_v * (1 - swing / 100) * (1 - (drop or 0.0))
    high = source.voltage_v * (1 + swing / 100)
    lost = "drop in the cable not given and not counted" if drop is None else f"{100 * drop:.1f} % in the cable"
    compared = (
        f"{compared}, {low:.0f} to {high:.0f} V ({source.voltage_v:g} V, swing {figure(swing)} %, {lost}), against "
        f"{plate.ac_voltage_min_v:g} to {plate.ac_voltage_max_v:g} V"
    )
    if plate.ac_voltage_min_v - low > high - plate.ac_voltage_max_v:
        return lowest(
            TOPIC,
            f"{name}_voltage",
            compared,
            low,
            plate.ac_voltage_min_v,
            "V",
            why=why,
            remedy="a thicker cable, a voltage regulator, or a pump that takes less voltage",
            source=source_words,
        )
    return highest(
        TOPIC,
        f"{name}_voltage",
        compared,
        high,
        plate.ac_voltage_max_v,
        "V",
        why=why,
        remedy="a voltage regulator or transformer, or a pump that takes more voltage",
        source=source_words,
    )


def _phases(basis: Basis, name: str, source: Grid | Generator) -> Verdict:
    wanted, given = basis.scenario.pump.plate.phases, source.phases
    compared = f"Phases of the {name}, against the plate's"
    why = "A three-phase motor does not start on one phase, and burns trying."
    if wanted is None or given is None:
        asked = [f"the phases of the {name}"] if given is None else []
        asked += ["'1~' or '3~' on the plate of pump or controller"] if wanted is None else []
        return missing(
            TOPIC,
            f"{name}_phases",
            compared,
            f"look for {' and '.join(asked)}",
            why=why,
            source=PLATE,
            value=given,
            limit=wanted,
            unit="phases",
        )
    good = given == wanted
    return Verdict(
        TOPIC,
        f"{name}_phases",
        compared,
        "pass" if good else "fail",
        given,
        wanted,
        "phases",
        "",
        why,
        "" if good else f"a {name} of {wanted} phase(s), or a drive made for {given}",
        PLATE,
    )


def _frequency(basis: Basis, name: str, source: Grid | Generator) -> Verdict:
    wanted, given = basis.scenario.pump.plate.frequency_hz, source.frequency_hz
    compared = f"Frequency of the {name}, against the plate's"
    why = "Speed goes with frequency: with less the head falls by the square, with more the power rises by the cube."
    if wanted is None or given is None:
        asked = [f"the frequency of the {name}"] if given is None else []
        asked += ["'Hz' on the plate of pump or controller"] if wanted is None else []
        return missing(
            TOPIC,
            f"{name}_frequency",
            compared,
            f"look for {' and '.join(asked)}",
            why=why,
            source=PLATE,
            value=given,
            limit=wanted,
            unit="Hz",
        )
    off = 100 * (given / wanted - 1)
    below, above = FREQUENCY_WIDE_PERCENT
    outcome: Outcome = "fail"
    if at_most(abs(off), FREQUENCY_USUAL_PERCENT):
        outcome = "pass"
    elif at_least(off, -below) and at_most(off, above):
        outcome = "caution"
    return Verdict(
        TOPIC,
        f"{name}_frequency",
        f"{compared} {wanted:g} Hz, 2 % either way",
        outcome,
        given,
        wanted * (1 + (FREQUENCY_USUAL_PERCENT if off > 0 else -FREQUENCY_USUAL_PERCENT) / 100),
        "Hz",
        f"{abs(off):.1f} % {'above' if off > 0 else 'below'} the plate" if off else "equal",
        why,
        "" if outcome == "pass" else f"a {name} of {wanted:g} Hz, or a drive that makes its own frequency",
        "IEC 60034-1, zone A; zone B is a caution",
    )


def _connection(basis: Basis, limit_w: float) -> Verdict:
    return lowest(
        TOPIC,
        "grid_power",
        "Power that the grid's connection gives, against what the controller takes with the motor at rated power",
        limit_w,
        ac_need_w(basis),
        "W",
        why="A connection too small trips as soon as the pump runs at full speed.",
        remedy=f"a connection of at least {ceil(ac_need_w(basis) / 100) * 100} W",
        source=SITE_DATA,
    )


def site_rating_kw(basis: Basis, generator: Generator) -> float:
    """Rating of the set left at the site's altitude on the hottest day [kW]."""
    return float(derated_rating_kw(generator, basis.place.altitude_m, basis.hottest_c))


def _derating(basis: Basis, generator: Generator) -> str:
    left = 100 * site_rating_kw(basis, generator) / generator.rating_kw
    where = f"{basis.place.altitude_m:.0f} m and {basis.hottest_c:.0f} deg C"
    return f"{generator.rating_kw:g} kW, of which {left:.0f} % are left at {where}"


def _larger(basis: Basis, generator: Generator) -> str:
    """Name the set that runs, starts and is well loaded."""
    need_kw = max(starting_need_kw(basis)[1], ac_need_w(basis) / 1000 / HEAVY_LOAD)
    rating = need_kw * generator.rating_kw / max(site_rating_kw(basis, generator), 1e-9)
    return f"a set rated at {ceil(2 * rating) / 2:g} kW or a little more"


def starting_need_kw(basis: Basis) -> tuple[float, float]:
    """Rating needed to start the motor, the least and the good one [kW]."""
    need_kw = ac_need_w(basis) / 1000
    if basis.scenario.controller.starting == "soft":
        return SOFT_LEAST * need_kw, SOFT_GOOD * need_kw
    shaft_kw = basis.motor_input_w / 1000 * basis.scenario.pump.motor_efficiency_percent / 100
    least, good = (
        float(np.interp(shaft_kw, DIRECT_MOTOR_KW, sets)) * max(1.0, shaft_kw / DIRECT_MOTOR_KW[-1])
        for sets in (DIRECT_INTERNAL_KW, DIRECT_EXTERNAL_KW)
    )
    return least, good


def _running(basis: Basis, generator: Generator) -> Verdict:
    return lowest(
        TOPIC,
        "generator_running",
        f"Generating set ({_derating(basis, generator)}), against what the controller takes at the rated power",
        site_rating_kw(basis, generator),
        ac_need_w(basis) / 1000,
        "kW",
        why="An overloaded set slows down, stalls and burns its winding.",
        remedy=_larger(basis, generator),
        source="rating by the user, derating as entered",
    )


def _starting(basis: Basis, generator: Generator) -> Verdict:
    least, good = starting_need_kw(basis)
    value = site_rating_kw(basis, generator)
    outcome: Outcome = "pass" if at_least(value, good) else "caution" if at_least(value, least) else "fail"
    if basis.scenario.controller.starting == "soft":
        how, source = "softly by a drive, 1.5 times the running need (1.25 at least)", PRACTICE
    else:
        how = f"direct on line, externally regulated (internally regulated {figure(least)} kW)"
        source = "table of a motor handbook: voltage dip of 35 %"
    return Verdict(
        TOPIC,
        "generator_starting",
        f"Generating set as derated, against what starts the motor {how}",
        outcome,
        value,
        good,
        "kW",
        reserve(value, good, "kW"),
        "A set that cannot start the motor lets its voltage collapse; the motor hums and heats.",
        "" if outcome == "pass" else _larger(basis, generator),
        source,
    )


def _loading(basis: Basis, generator: Generator) -> Verdict:
    share = ac_need_w(basis) / 1000 / max(site_rating_kw(basis, generator), 1e-9)
    light = share < (LIGHT_LOAD + HEAVY_LOAD) / 2
    good = at_least(share, LIGHT_LOAD) and at_most(share, HEAVY_LOAD)
    value, low, high = 100 * share, 100 * LIGHT_LOAD, 100 * HEAVY_LOAD
    return Verdict(
        TOPIC,
        "generator_loading",
        "Load of the set with the motor at rated power, against 30 to 70 % of its rating as derated",
        "pass" if good else "caution",
        value,
        low if light else high,
        "%",
        reserve(value, low, "%") if light else room(value, high, "%"),
        "An idling diesel fouls itself; one that is loaded above its prime rating for hours wears out early.",
        "" if good else ("a smaller set, or other loads beside the pump" if light else _larger(basis, generator)),
        "30 %: NFPA 110 practice; 70 % mean load of prime power: ISO 8528-1",
    )
