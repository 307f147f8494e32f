"""The lines of the nameplate, each set against this site."""

from __future__ import annotations

from math import ceil, floor
from typing import Any

from planner.checks.alternating import LICENSED
from planner.checks.array import operating_voltages, series_remedy
from planner.checks.basis import Basis
from planner.checks.connection import connection_of
from planner.checks.cooling import INCH_MM, frame_of
from planner.checks.head import better_pump
from planner.checks.plate import CLASS_LIMIT_C, protection_words
from planner.checks.verdict import (
    PLATE,
    PRACTICE,
    SITE_DATA,
    Outcome,
    Remedy,
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
from planner.supply.cables import current_of_power_a
from planner.water.duty import Duty
from planner.water.pump import hydraulic_power_w

TOPIC = "nameplate"
ARRAY = "the array"

COOLANT_C = 40.0
"""Coolant for which the rise of a winding is rated, IEC 60034-1."""
EFFICIENT = (20.0, 75.0)
NEAR_RATED, SERVICE_FACTOR = 1.05, 1.15


def verdicts(basis: Basis) -> list[Verdict]:
    """Judge the nameplate."""
    scenario = basis.scenario
    found = [_consistent(basis), _current(basis), _speed_range(basis), _frame(basis)]
    found += [_insulation(basis), _protection(basis), _temperature(basis)]
    if basis.duty is not None and not basis.too_short:
        found.append(_power(basis, basis.duty))
    if scenario.sources.solar is not None:
        found.append(_dc_window(basis))
    if scenario.sources.grid is not None or scenario.sources.generator is not None:
        found.append(_ac_window(basis))
    return found


def _consistent(basis: Basis) -> Verdict:
    pump = basis.scenario.pump
    hydraulic = float(hydraulic_power_w(pump.rated_flow_m3h, pump.rated_head_m))
    share, (low, high) = 100 * hydraulic / pump.rated_power_w, EFFICIENT
    short = share < (low + high) / 2
    good = at_least(share, low) and at_most(share, high) and not basis.pump_fault
    limit = low if short else high
    return Verdict(
        TOPIC,
        "rated_figures",
        f"Power of the water at the rated duty ({hydraulic / 1000:.2f} kW) as a share of the plate's "
        f"{pump.rated_power_w:g} W, against {low:g} to {high:g} %",
        "fail" if basis.pump_fault else "pass" if good else "caution",
        share,
        limit,
        "%",
        reserve(share, low, "%") if short else room(share, high, "%"),
        basis.pump_fault or "A share outside the usual hints at a figure misread from the plate.",
        "" if good else "read power, flow and head from the plate again; the rated ones, not the largest",
        f"{PLATE}; the range is {PRACTICE}",
    )


def _power(basis: Basis, duty: Duty) -> Verdict:
    pump, controller = basis.scenario.pump, basis.scenario.controller
    flow_words, remedy = basis.flow_words, better_pump(basis)
    held_by_drive = controller.power_limit_w is None and controller.starting == "soft"
    if controller.power_limit_w is None:
        duty = basis.full_duty
        flow_words = f"{duty.flow_m3h:.2f} m3/h, if nothing holds its power"
    if held_by_drive:
        remedy = f"a drive set to give at most {floor(pump.rated_power_w)} W, as the hourly run takes it, or {remedy}"
    most = SERVICE_FACTOR * pump.rated_power_w
    return highest(
        TOPIC,
        "motor_power",
        f"Power that the motor takes at {flow_words}, against its rated power and 5 %",
        duty.input_power_w,
        NEAR_RATED * pump.rated_power_w,
        "W",
        why="A motor that takes more than its rating overheats.",
        remedy=remedy,
        source=f"{PLATE}; 5 % is {PRACTICE}, up to 15 % is a caution (service factor, NEMA MG 1), as is what a drive "
        "can hold",
        beyond="caution" if held_by_drive or at_most(duty.input_power_w, most) else "fail",
    )


def _current(basis: Basis) -> Verdict:
    plate = basis.scenario.pump.plate
    currents = _currents_a(basis)
    listed = ", ".join(f"{value:.1f} A from {name}" for name, value, _ in currents)
    compared = f"Current at the rated power ({listed or 'no supply voltage is known'}), against the plate's largest"
    why = "More current than the plate allows trips the controller or burns the winding."
    if plate.current_a is None or not currents:
        asked = "'A' or 'Amp' on the plate" if plate.current_a is None else "the voltage of grid or generator"
        return missing(
            TOPIC,
            "current",
            compared,
            f"look for {asked}",
            why=why,
            source=PLATE,
            value=max((value for _, value, _ in currents), default=None),
            limit=plate.current_a,
            unit="A",
        )
    name, worst, volts = max(currents, key=lambda current: current[1])
    remedy, changes = _less_current(basis, plate.current_a, name, worst, volts)
    return highest(
        TOPIC, "current", compared, worst, plate.current_a, "A", why=why, remedy=remedy, source=PLATE, changes=changes
    )


def _less_current(basis: Basis, limit_a: float, name: str, current_a: float, volts: float) -> Remedy:
    """Say what lessens a current: more modules for that of the array, more voltage for that of grid or generator."""
    solar, plate = basis.scenario.sources.solar, basis.scenario.pump.plate
    another = f"read the current on the plate again, or a pump that is made for {figure(current_a)} A from {name}"
    if name == ARRAY and solar is not None:
        words, changes = series_remedy(
            basis, solar, at_least=ceil(solar.modules_in_series * current_a / limit_a - 1e-9)
        )
        return (f"{words}; or {another}" if changes else another), changes
    needed_v = volts * current_a / limit_a
    if plate.ac_voltage_max_v is None or needed_v > plate.ac_voltage_max_v:
        return another, {}
    return f"a supply of at least {ceil(needed_v)} V, within the plate's limits; or {another}", {}


def _currents_a(basis: Basis) -> list[tuple[str, float, float]]:
    """Current at the rated power from each source [A] and the voltage at which it flows [V]."""
    scenario, power = basis.scenario, basis.scenario.pump.rated_power_w
    found = []
    if scenario.sources.solar is not None:
        hot = operating_voltages(basis)[0]
        found.append((ARRAY, power / hot, hot))
    for name, source in (("the grid", scenario.sources.grid), ("the generator", scenario.sources.generator)):
        connection = None if source is None else connection_of(source, scenario.pump.plate)
        if connection is not None and connection.voltage_v is not None:
            factor = 0.85 if scenario.cables is None or scenario.cables.ac is None else scenario.cables.ac.power_factor
            current = current_of_power_a(power, connection.voltage_v, connection.supply, factor)
            found.append((name, current, connection.voltage_v))
    return found


def _speed_range(basis: Basis) -> Verdict:
    plate, solar = basis.scenario.pump.plate, basis.scenario.sources.solar
    low, high = plate.speed_min_rpm, plate.speed_max_rpm
    compared = "Speed range of the motor, against what a varying source asks"
    why = "The sun's power varies; only a motor that can turn slowly makes use of a weak one."
    if low is None or high is None:
        return missing(
            TOPIC, "speed_range", compared, "look for 'rpm' or '1/min' on the plate", why=why, source=PLATE, unit="rpm"
        )
    share = 100 * low / high
    good = solar is None or share < 90
    return Verdict(
        TOPIC,
        "speed_range",
        f"{compared}: {low:g} to {high:g} rpm, the lowest as a share of the highest",
        "pass" if good else "caution",
        share,
        90.0 if solar is not None else None,
        "%",
        "" if solar is None else room(share, 90.0, "%"),
        why,
        "" if good else "choose a variable-speed motor",
        f"{PLATE}; a variable-speed motor on a varying source is {PRACTICE}",
    )


def _frame(basis: Basis) -> Verdict:
    plate, casing = basis.scenario.pump.plate, basis.scenario.borehole.casing_inner_diameter_mm
    compared = "Casing, against the frame of the motor"
    why = "A motor does not go into a casing smaller than its frame."
    frame = plate.frame_in or frame_of(plate)
    if frame is None or casing is None:
        asked = (
            "the frame in inches on the plate" if frame is None else "the casing's inside diameter in the driller's log"
        )
        return missing(TOPIC, "frame", compared, f"look for {asked}", why=why, source=PLATE, value=casing, unit="mm")
    return lowest(
        TOPIC,
        "frame",
        f"{compared}: {frame:g} inches are {frame * INCH_MM:.0f} mm",
        casing,
        frame * INCH_MM,
        "mm",
        why=why,
        remedy=f"a pump with a frame of at most {floor(10 * casing / INCH_MM + 1e-6) / 10:g} inches",
        source=f"{PLATE}; {PRACTICE}",
    )


def _insulation(basis: Basis) -> Verdict:
    kind, water_c = basis.scenario.pump.plate.insulation_class, basis.scenario.borehole.water_temperature_c
    why = "The winding may warm up only as far as its insulation stands; hot water takes that room away."
    source = "IEC 60085 (temperature of the class), IEC 60034-1 (coolant of 40 deg C)"
    if kind is None:
        return missing(
            TOPIC,
            "insulation",
            "Insulation class, against the water's temperature",
            "look for 'Ins. Cl.' and a letter on the plate",
            why=why,
            source=source,
        )
    limit_c = CLASS_LIMIT_C[kind]
    return lowest(
        TOPIC,
        "insulation",
        f"Class {kind} stands {limit_c} deg C: room above water of {water_c:g} deg C, against that above "
        f"{COOLANT_C:g} deg C",
        limit_c - water_c,
        limit_c - COOLANT_C,
        "K",
        why=why,
        remedy="a motor of a higher class, or one that its maker rates for this water",
        source=source,
        beyond="caution",
    )


def _protection(basis: Basis) -> Verdict:
    code = basis.scenario.pump.plate.ingress_protection
    why = "A motor that lives under water must stand it for good."
    if code is None or code[3] == "X":
        return missing(
            TOPIC,
            "ingress_protection",
            "Ingress protection of a motor that hangs in water",
            "look for 'IP' and two digits on the plate; the second should be 8",
            why=why,
            source="IEC 60529",
            value=code,
            limit="IPX8",
        )
    outcome: Outcome = "pass" if code[3] == "8" else "caution" if code[3] == "7" else "fail"
    return Verdict(
        TOPIC,
        "ingress_protection",
        f"{code}: {protection_words(code)}; against a motor that hangs in water",
        outcome,
        code,
        "IPX8",
        "",
        "",
        why,
        "" if outcome == "pass" else "a submersible motor of IP68, or the maker's word on immersion",
        "IEC 60529",
    )


def _temperature(basis: Basis) -> Verdict:
    limit, water_c = basis.scenario.pump.plate.liquid_temperature_max_c, basis.scenario.borehole.water_temperature_c
    compared = "Temperature of the water, against what the plate allows"
    why = "Water warmer than the plate allows is outside the motor's duty: it cools too little and shortens its life."
    if limit is None:
        return missing(
            TOPIC,
            "water_temperature",
            compared,
            "look for 'max. liquid temp.' on the plate",
            why=why,
            source=PLATE,
            value=water_c,
            unit="deg C",
        )
    return highest(
        TOPIC,
        "water_temperature",
        compared,
        water_c,
        limit,
        "deg C",
        why=why,
        remedy=f"a motor rated for water of at least {ceil(10 * water_c) / 10:g} deg C",
        source=PLATE,
    )


def _within(
    low: float,
    high: float,
    plate: tuple[float, float],
    key: str,
    compared: str,
    remedy: str,
    changes: dict[str, Any] | None = None,
) -> Verdict:
    """Judge a range of voltages against the plate's; the nearer end is told."""
    below = plate[0] - low > high - plate[1]
    value, limit = (low, plate[0]) if below else (high, plate[1])
    judge = lowest if below else highest
    return judge(
        TOPIC,
        key,
        compared,
        value,
        limit,
        "V",
        why="Outside its voltage limits it switches off, or is destroyed.",
        remedy=remedy,
        source=PLATE,
        changes=changes,
    )


def _dc_window(basis: Basis) -> Verdict:
    plate = basis.scenario.pump.plate
    hot, cold = operating_voltages(basis)
    compared = f"Working voltage of a string, {hot:.0f} V at the hottest noon to {cold:.0f} V in the cold"
    if plate.dc_voltage_min_v is None or plate.dc_voltage_max_v is None:
        return missing(
            TOPIC,
            "dc_window",
            f"{compared}, against the plate's DC limits",
            "look for 'DC', 'PV' or 'Voc' with volts on the plate, unless the controller alone sees the array",
            why="Outside its voltage limits it switches off, or is destroyed.",
            source=PLATE,
            value=f"{hot:.0f} to {cold:.0f}",
            unit="V",
        )
    window, solar = (plate.dc_voltage_min_v, plate.dc_voltage_max_v), basis.scenario.sources.solar
    assert solar is not None
    remedy, changes = series_remedy(basis, solar)
    text = f"{compared}, against {window[0]:g} to {window[1]:g} V"
    return _within(hot, cold, window, "dc_window", text, remedy, changes)


def _ac_window(basis: Basis) -> Verdict:
    plate, sources = basis.scenario.pump.plate, basis.scenario.sources
    connections = [connection_of(source, plate) for source in (sources.grid, sources.generator) if source is not None]
    volts = [connection.voltage_v for connection in connections if connection.voltage_v is not None]
    compared = f"Nominal voltage of the supplies ({', '.join(f'{v:.4g} V' for v in volts) or 'not given'})"
    if plate.ac_voltage_min_v is None or plate.ac_voltage_max_v is None or not volts:
        asked = "'AC' or '~' with volts on the plate" if volts else "the voltage of grid and generator"
        return missing(
            TOPIC,
            "ac_window",
            f"{compared}, against the plate's AC limits",
            f"look for {asked}",
            why="Outside its voltage limits it switches off, or is destroyed.",
            source=f"{PLATE}; {SITE_DATA}",
        )
    window = (plate.ac_voltage_min_v, plate.ac_voltage_max_v)
    text = f"{compared}, against {window[0]:g} to {window[1]:g} V"
    return _within(
        min(volts),
        max(volts),
        window,
        "ac_window",
        text,
        f"a transformer, chosen and fitted {LICENSED}, or a pump for this voltage",
    )
