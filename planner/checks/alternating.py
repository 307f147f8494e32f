"""AC side: voltage, phases and frequency of grid and generator, and the grid's connection."""

from __future__ import annotations

from math import ceil

from planner.checks.basis import Basis
from planner.checks.connection import Connection, connection_of
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
)
from planner.scenario.cables import STANDARD_SECTIONS_MM2
from planner.scenario.sources import Generator, Grid
from planner.supply.cables import current_of_power_a, drop_share

TOPIC = "ac"

GENERATOR_TOLERANCE_PERCENT = 5.0
"""Variation of a generating set's voltage: ISO 8528-5, from memory."""
FREQUENCY_USUAL_PERCENT = 2.0
FREQUENCY_WIDE_PERCENT = (5.0, 3.0)
"""Zones A and B of IEC 60034-1: 2 % either way for good; 5 % below and 3 % above for a while."""
LICENSED = "by a licensed electrician"


def verdicts(basis: Basis) -> list[Verdict]:
    """Judge what grid and generator supply; nothing without them."""
    grid, generator = basis.scenario.sources.grid, basis.scenario.sources.generator
    found = []
    for name, source in (("grid", grid), ("generator", generator)):
        if source is not None:
            found += [_voltage(basis, name, source), _phases(basis, name, source), _frequency(basis, name, source)]
    if grid is not None and grid.power_limit_w is not None:
        found.append(_connection_power(basis, grid, grid.power_limit_w))
    return found


def ac_need_w(basis: Basis) -> float:
    """Power that grid or generator must give with the motor at its rated power [W]."""
    return basis.motor_input_w / (basis.scenario.controller.ac_efficiency_percent / 100)


def cable_drop_share(basis: Basis, connection: Connection, section_mm2: float | None = None) -> float | None:
    """Share of the voltage lost in the AC cable at the rated power; None where cable or voltage were not given."""
    cables = basis.scenario.cables
    if cables is None or cables.ac is None or connection.voltage_v is None:
        return None
    current = current_of_power_a(ac_need_w(basis), connection.voltage_v, connection.supply, cables.ac.power_factor)
    return drop_share(cables.ac, connection.supply, current, connection.voltage_v, section_mm2)


def _voltage(basis: Basis, name: str, source: Grid | Generator) -> Verdict:
    plate, connection = basis.scenario.pump.plate, connection_of(source, basis.scenario.pump.plate)
    varies = source.voltage_tolerance_percent if isinstance(source, Grid) else GENERATOR_TOLERANCE_PERCENT
    compared = f"Voltage of the {name} at the controller"
    why = "With too little voltage the motor draws more current and stops; with too much its insulation suffers."
    source_words = f"{PLATE}; variation of {figure(varies)} %: " + (
        SITE_DATA if isinstance(source, Grid) else "ISO 8528-5, from memory"
    )
    volts, least_v, most_v = connection.voltage_v, plate.ac_voltage_min_v, plate.ac_voltage_max_v
    if volts is None or least_v is None or most_v is None:
        asked = [f"the voltage of the {name}"] if volts is None else []
        if least_v is None or most_v is None:
            asked.append("'AC' or '~' with volts on the plate of pump or controller")
        return missing(
            TOPIC,
            f"{name}_voltage",
            f"{compared}, against the plate's AC limits",
            f"look for {' and '.join(asked)}",
            why=why,
            source=source_words,
            value=volts,
            unit="V",
        )
    drop = cable_drop_share(basis, connection)
    least_at_source_v, high = volts * (1 - varies / 100), volts * (1 + varies / 100)
    low = least_at_source_v * (1 - (drop or 0.0))
    lost = "drop in the cable not given and not counted" if drop is None else f"{100 * drop:.1f} % in the cable"
    taken = f", {connection.words}" if connection.words else ""
    compared = (
        f"{compared}, {low:.0f} to {high:.0f} V ({volts:.4g} V{taken}, variation {figure(varies)} %, {lost}), against "
        f"{least_v:g} to {most_v:g} V"
    )
    if least_v - low > high - most_v:
        remedy = f"a voltage stabiliser or a transformer, chosen and fitted {LICENSED}, or a pump for less voltage"
        section = None
        if drop is not None and at_least(least_at_source_v, least_v):
            section = _section_that_suffices(basis, connection, least_at_source_v, least_v)
            thick = f"a section of {section:g} mm2 in the AC cable" if section else "a shorter AC cable"
            remedy = f"{thick} (not covered: earth-fault loop, short circuit and the protective device); or {remedy}"
        return lowest(
            TOPIC,
            f"{name}_voltage",
            compared,
            low,
            least_v,
            "V",
            why=why,
            remedy=remedy,
            source=source_words,
            changes={"cables.ac.section_mm2": section, "cables.ac.ampacity_a": None} if section else {},
        )
    return highest(
        TOPIC,
        f"{name}_voltage",
        compared,
        high,
        most_v,
        "V",
        why=why,
        remedy=f"a voltage stabiliser or a transformer, chosen and fitted {LICENSED}, or a pump for more voltage",
        source=source_words,
    )


def _section_that_suffices(basis: Basis, connection: Connection, at_source_v: float, least_v: float) -> float | None:
    """Smallest standard section thicker than the given one with which the voltage arrives, or None."""
    cables = basis.scenario.cables
    assert cables is not None
    assert cables.ac is not None
    for section in STANDARD_SECTIONS_MM2:
        drop = cable_drop_share(basis, connection, section)
        if section > cables.ac.section_mm2 and drop is not None and at_least(at_source_v * (1 - drop), least_v):
            return section
    return None


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
    outcome: Outcome = "pass" if given == wanted else "caution" if given == 3 else "fail"
    remedy = ""
    if outcome == "caution":
        why = "A pump of one phase loads one phase of three, so that it can draw a third of the power."
        how = connection_of(source, basis.scenario.pump.plate).words
        allowed = (
            "voltage and utility allow it" if name == "grid" else "voltage and the maker of the generator allow it"
        )
        remedy = f"connect {how}, if {allowed}, {LICENSED}"
    elif outcome == "fail":
        remedy = f"a {name} of three phases, or a drive that takes {given} and gives three, {LICENSED}"
    return Verdict(
        TOPIC, f"{name}_phases", compared, outcome, given, wanted, "phases", "", why, remedy, f"{PLATE}; {PRACTICE}"
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


def _connection_power(basis: Basis, grid: Grid, limit_w: float) -> Verdict:
    share = connection_of(grid, basis.scenario.pump.plate).power_share
    needed = ceil(ac_need_w(basis) / share / 100 - 1e-9) * 100
    return lowest(
        TOPIC,
        "grid_power",
        "Power that the grid's connection gives"
        + (" on one of its phases" if share < 1 else "")
        + ", against what the controller takes with the motor at rated power",
        limit_w * share,
        ac_need_w(basis),
        "W",
        why="A connection too small trips as soon as the pump runs at full speed.",
        remedy=f"a connection of at least {needed} W, if the utility grants it; its cable and protection then too",
        source=SITE_DATA,
        changes={"sources.grid.power_limit_w": float(needed)},
    )
