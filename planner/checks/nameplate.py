"""The lines of the nameplate, each set against this site."""

from __future__ import annotations

from dataclasses import replace
from math import ceil, floor
from typing import Any

from planner.checks.array import operating_voltages, series_remedy
from planner.checks.basis import Basis
from planner.checks.connection import connection_of
from planner.checks.cooling import INCH_MM, frame_of
from planner.checks.head import better_pump
from planner.checks.plate import CLASS_LIMIT_C, protection_words
from planner.checks.verdict import (
    Outcome,
    Remedy,
    Verdict,
    at_least,
    at_most,
    figure,
    highest,
    lowest,
    missing,
    of_supplies,
    reserve,
    room,
)
from planner.sources.registry import supplies_of
from planner.supply.cables import current_of_power_a
from planner.text import text
from planner.water.duty import Duty
from planner.water.pump import hydraulic_power_w

TOPIC = "nameplate"

COOLANT_C = 40.0
"""Coolant for which the rise of a winding is rated, IEC 60034-1."""
EFFICIENT = (20.0, 75.0)
NEAR_RATED, SERVICE_FACTOR = 1.05, 1.15
LARGEST_FLOW = 4.0
"""Largest flow over the rated one, above which a figure is likely misread: common practice, no source."""


def verdicts(basis: Basis) -> list[Verdict]:
    """Judge the nameplate."""
    scenario = basis.scenario
    found = [_consistent(basis), _largest_flow(basis), _current(basis), _speed_range(basis), _frame(basis)]
    found += [_insulation(basis), _protection(basis), _temperature(basis)]
    if basis.duty is not None and not basis.too_short:
        found.append(_power(basis, basis.duty))
    if scenario.sources.solar is not None:
        found += of_supplies([_dc_window(basis)], "array")
    if scenario.sources.grid is not None or scenario.sources.generator is not None:
        found += of_supplies([_ac_window(basis)], "ac")
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
        text(
            "check.rated_figures.compared",
            hydraulic_kw=hydraulic / 1000,
            rated_w=pump.rated_power_w,
            low=low,
            high=high,
        ),
        "fail" if basis.pump_fault else "pass" if good else "caution",
        share,
        limit,
        "%",
        reserve(share, low, "%") if short else room(share, high, "%"),
        basis.pump_fault or text("check.rated_figures.why"),
        "" if good else text("check.rated_figures.remedy"),
        text("check.rated_figures.source"),
    )


def _largest_flow(basis: Basis) -> Verdict:
    pump = basis.scenario.pump
    return highest(
        TOPIC,
        "largest_flow",
        text("check.largest_flow.compared", rated=pump.rated_flow_m3h, times=LARGEST_FLOW),
        pump.max_flow_m3h,
        LARGEST_FLOW * pump.rated_flow_m3h,
        "m3/h",
        why=text("check.largest_flow.why"),
        remedy=text("check.largest_flow.remedy"),
        source=text("check.largest_flow.source"),
        beyond="caution",
    )


def _power(basis: Basis, duty: Duty) -> Verdict:
    pump, controller = basis.scenario.pump, basis.scenario.controller
    margin, remedy = 100 * (NEAR_RATED - 1), better_pump(basis)
    if controller.power_limit_w is None:
        duty = basis.full_duty
        compared = text("check.motor_power.compared_unlimited", flow_m3h=duty.flow_m3h, percent=margin)
    else:
        compared = text("check.motor_power.compared", flow=basis.flow_words, percent=margin)
    driven = controller.power_limit_w is None and controller.starting == "soft"
    if driven:
        remedy = text("check.motor_power.remedy_drive", most_w=floor(pump.rated_power_w), remedy=remedy)
    most = SERVICE_FACTOR * pump.rated_power_w
    return highest(
        TOPIC,
        "motor_power",
        compared,
        duty.input_power_w,
        NEAR_RATED * pump.rated_power_w,
        "W",
        why=text("check.motor_power.why"),
        remedy=remedy,
        source=text("check.motor_power.source", percent=margin, service_percent=100 * (SERVICE_FACTOR - 1)),
        beyond="caution" if driven or at_most(duty.input_power_w, most) else "fail",
    )


def _current(basis: Basis) -> Verdict:
    plate = basis.scenario.pump.plate
    currents = _currents_a(basis)
    compared = text("check.current.compared_unknown")
    if currents:
        shown = [text(f"check.current.from.{name}", amperes=amperes) for name, amperes, _ in currents]
        compared = text("check.current.compared", currents=text("list.comma").join(shown))
    why, source = text("check.current.why"), text("source.plate")
    if plate.current_a is None or not currents:
        return missing(
            TOPIC,
            "current",
            compared,
            text("check.current.look_for" if plate.current_a is None else "check.supply.look_for_voltage"),
            why=why,
            source=source,
            value=max((value for _, value, _ in currents), default=None),
            limit=plate.current_a,
            unit="A",
        )
    name, worst, volts = max(currents, key=lambda current: current[1])
    remedy, changes = _less_current(basis, plate.current_a, name, worst, volts)
    judged = highest(
        TOPIC, "current", compared, worst, plate.current_a, "A", why=why, remedy=remedy, source=source, changes=changes
    )
    over = {"array" if name == "array" else "ac" for name, value, _ in currents if not at_most(value, plate.current_a)}
    return replace(judged, supplies=tuple(sorted(over)))


def _less_current(basis: Basis, limit_a: float, name: str, current_a: float, volts: float) -> Remedy:
    """Say what lessens a current: more modules for that of the array, more voltage for that of grid or generator."""
    solar, plate = basis.scenario.sources.solar, basis.scenario.pump.plate
    another = text(f"check.current.remedy.{name}", amperes=figure(current_a))
    if name == "array" and solar is not None:
        words, changes = series_remedy(
            basis, solar, at_least=ceil(solar.modules_in_series * current_a / limit_a - 1e-9)
        )
        return (text("check.current.remedy_or_series", series=words, remedy=another) if changes else another), changes
    needed_v = volts * current_a / limit_a
    if plate.ac_voltage_max_v is None or needed_v > plate.ac_voltage_max_v:
        return another, {}
    return text("check.current.remedy_or_volts", volts=ceil(needed_v), remedy=another), {}


def _currents_a(basis: Basis) -> list[tuple[str, float, float]]:
    """Source, current at the rated power from it [A] and the voltage at which it flows [V]."""
    scenario, power = basis.scenario, basis.scenario.pump.rated_power_w
    found = []
    if scenario.sources.solar is not None:
        hot = operating_voltages(basis)[0]
        found.append(("array", power / hot, hot))
    for source in supplies_of(scenario):
        connection = connection_of(source, scenario.pump.plate)
        if connection.voltage_v is not None:
            factor = 0.85 if scenario.cables is None or scenario.cables.ac is None else scenario.cables.ac.power_factor
            current = current_of_power_a(power, connection.voltage_v, connection.supply, factor)
            found.append((source.name, current, connection.voltage_v))
    return found


def _speed_range(basis: Basis) -> Verdict:
    plate, solar = basis.scenario.pump.plate, basis.scenario.sources.solar
    low, high = plate.speed_min_rpm, plate.speed_max_rpm
    why, unit = text("check.speed_range.why"), text("unit.speed")
    if low is None or high is None:
        compared, look_for = text("check.speed_range.compared_not_given"), text("check.speed_range.look_for")
        return missing(TOPIC, "speed_range", compared, look_for, why=why, source=text("source.plate"), unit=unit)
    share = 100 * low / high
    good = solar is None or share < 90
    return Verdict(
        TOPIC,
        "speed_range",
        text("check.speed_range.compared", low=low, high=high),
        "pass" if good else "caution",
        share,
        90.0 if solar is not None else None,
        "%",
        "" if solar is None else room(share, 90.0, "%"),
        why,
        "" if good else text("check.speed_range.remedy"),
        text("check.speed_range.source"),
    )


def _frame(basis: Basis) -> Verdict:
    plate, casing = basis.scenario.pump.plate, basis.scenario.borehole.casing_inner_diameter_mm
    why, frame = text("check.frame.why"), plate.frame_in or frame_of(plate)
    if frame is None or casing is None:
        return missing(
            TOPIC,
            "frame",
            text("check.frame.compared_not_given"),
            text("check.frame.look_for_frame" if frame is None else "check.frame.look_for_casing"),
            why=why,
            source=text("source.plate"),
            value=casing,
            unit="mm",
        )
    return lowest(
        TOPIC,
        "frame",
        text("check.frame.compared", inches=frame, millimetres=frame * INCH_MM),
        casing,
        frame * INCH_MM,
        "mm",
        why=why,
        remedy=text("check.frame.remedy", inches=floor(10 * casing / INCH_MM + 1e-6) / 10),
        source=text("source.plate_practice"),
    )


def _insulation(basis: Basis) -> Verdict:
    kind, water_c = basis.scenario.pump.plate.insulation_class, basis.scenario.borehole.water_temperature_c
    why, source = text("check.insulation.why"), text("check.insulation.source", coolant_c=COOLANT_C)
    if kind is None:
        compared, look_for = text("check.insulation.compared_not_given"), text("check.insulation.look_for")
        return missing(TOPIC, "insulation", compared, look_for, why=why, source=source)
    limit_c = CLASS_LIMIT_C[kind]
    return lowest(
        TOPIC,
        "insulation",
        text("check.insulation.compared", letter=kind, limit_c=limit_c, water_c=water_c, coolant_c=COOLANT_C),
        limit_c - water_c,
        limit_c - COOLANT_C,
        "K",
        why=why,
        remedy=text("check.insulation.remedy"),
        source=source,
        beyond="caution",
    )


def _protection(basis: Basis) -> Verdict:
    code = basis.scenario.pump.plate.ingress_protection
    why, source = text("check.ingress_protection.why"), text("check.ingress_protection.source")
    if code is None or code[3] == "X":
        return missing(
            TOPIC,
            "ingress_protection",
            text("check.ingress_protection.compared_not_given"),
            text("check.ingress_protection.look_for"),
            why=why,
            source=source,
            value=code,
            limit="IPX8",
        )
    outcome: Outcome = "pass" if code[3] == "8" else "caution" if code[3] == "7" else "fail"
    return Verdict(
        TOPIC,
        "ingress_protection",
        text("check.ingress_protection.compared", code=code, meaning=protection_words(code)),
        outcome,
        code,
        "IPX8",
        "",
        "",
        why,
        "" if outcome == "pass" else text("check.ingress_protection.remedy"),
        source,
    )


def _temperature(basis: Basis) -> Verdict:
    limit, water_c = basis.scenario.pump.plate.liquid_temperature_max_c, basis.scenario.borehole.water_temperature_c
    compared, why = text("check.water_temperature.compared"), text("check.water_temperature.why")
    key, unit, source = "water_temperature", "deg C", text("source.plate")
    if limit is None:
        look_for = text("check.water_temperature.look_for")
        return missing(TOPIC, key, compared, look_for, why=why, source=source, value=water_c, unit=unit)
    remedy = text("check.water_temperature.remedy", water_c=ceil(10 * water_c) / 10)
    return highest(TOPIC, key, compared, water_c, limit, unit, why=why, remedy=remedy, source=source)


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
        why=text("check.plate_window.why"),
        remedy=remedy,
        source=text("source.plate"),
        changes=changes,
    )


def _dc_window(basis: Basis) -> Verdict:
    plate = basis.scenario.pump.plate
    hot, cold = operating_voltages(basis)
    if plate.dc_voltage_min_v is None or plate.dc_voltage_max_v is None:
        return missing(
            TOPIC,
            "dc_window",
            text("check.dc_window.compared_not_given", hot=hot, cold=cold),
            text("check.dc_window.look_for"),
            why=text("check.plate_window.why"),
            source=text("source.plate"),
            value=text("check.dc_window.span", hot=hot, cold=cold),
            unit="V",
        )
    window, solar = (plate.dc_voltage_min_v, plate.dc_voltage_max_v), basis.scenario.sources.solar
    assert solar is not None
    remedy, changes = series_remedy(basis, solar)
    compared = text("check.dc_window.compared", hot=hot, cold=cold, low=window[0], high=window[1])
    return _within(hot, cold, window, "dc_window", compared, remedy, changes)


def _ac_window(basis: Basis) -> Verdict:
    plate = basis.scenario.pump.plate
    connections = [connection_of(source, plate) for source in supplies_of(basis.scenario)]
    volts = [connection.voltage_v for connection in connections if connection.voltage_v is not None]
    shown = text("list.comma").join(text("check.supply_voltage.nominal", volts=v) for v in volts)
    if plate.ac_voltage_min_v is None or plate.ac_voltage_max_v is None or not volts:
        compared = (
            text("check.ac_window.compared_not_given", volts=shown)
            if volts
            else text("check.ac_window.compared_none_given")
        )
        look_for = text("check.ac_window.look_for" if volts else "check.supply.look_for_voltage")
        why, source = text("check.plate_window.why"), text("source.plate_and_site")
        return missing(TOPIC, "ac_window", compared, look_for, why=why, source=source)
    low, high = plate.ac_voltage_min_v, plate.ac_voltage_max_v
    compared = text("check.ac_window.compared", volts=shown, low=low, high=high)
    return _within(min(volts), max(volts), (low, high), "ac_window", compared, text("check.ac_window.remedy"))
