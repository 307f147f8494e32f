"""Cables: voltage drop, current-carrying capacity and its protection, voltage class, and the section to take."""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil

from planner.checks.alternating import ac_need_w
from planner.checks.array import cold_string_v
from planner.checks.basis import Basis
from planner.checks.connection import connection_of
from planner.checks.verdict import (
    Remedy,
    Verdict,
    at_least,
    at_most,
    figure,
    highest,
    lowest,
    missing,
    of_supplies,
)
from planner.scenario.cables import AcCable, CableRun, DcCable
from planner.sources.registry import supplies_of
from planner.supply.cables import (
    AC_DROP,
    DC_DROP,
    DROP_DROP,
    LOADED_CONDUCTORS,
    PV_CURRENT_FACTOR,
    ampacity_a,
    current_of_power_a,
    drop_share,
    grouping_factor,
    protected_current_a,
    run_resistance_ohm,
    smallest_section_mm2,
)
from planner.text import text

TOPIC = "cables"

BREAKERS_A = (6, 8, 10, 13, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125)
"""Usual ratings of circuit breakers (IEC 60898-1) and gG fuses, from memory."""


@dataclass(frozen=True)
class Load:
    """What one run carries: its label and kind of supply, current and voltage at rated power, current to bear."""

    label: str
    key: str
    supply: str
    current_a: float
    voltage_v: float
    bears_a: float
    limit: float


def verdicts(basis: Basis) -> list[Verdict]:
    """Judge the cables."""
    cables, sources = basis.scenario.cables, basis.scenario.sources
    found: list[Verdict] = []
    if sources.solar is not None:
        run = None if cables is None else cables.dc
        if run is None:
            found.append(_not_given("dc", text("check.dc_cable.look_for")))
        else:
            judged = [*_judged(basis, run, [_dc(basis)]), _voltage_class(basis, run), _outdoor(run)]
            found += of_supplies(judged, "array")
    if sources.grid is not None or sources.generator is not None:
        ac = None if cables is None else cables.ac
        loads = [] if ac is None else _ac(basis, ac.power_factor)
        if ac is None or not loads:
            look_for = text("check.ac_cable.look_for" if ac is None else "check.supply.look_for_voltage")
            found.append(_not_given("ac", look_for))
        else:
            found += of_supplies([*_judged(basis, ac, loads), _protected(basis, ac, loads)], "ac")
    drop = None if cables is None else cables.drop
    if drop is None:
        found.append(_not_given("drop", text("check.drop_cable.look_for")))
    else:
        current = current_of_power_a(basis.motor_input_w, drop.voltage_v, drop.supply, drop.power_factor)
        bears = max(current, basis.scenario.pump.plate.current_a or 0.0)
        label = text("check.cable.drop")
        load = Load(label, "drop", drop.supply, current, drop.voltage_v, bears, DROP_DROP)
        protected = [_protected(basis, drop, [load])] if drop.protective_device_a is not None else []
        found += [*_judged(basis, drop, [load]), *protected, _reaches(basis, drop)]
    return found


def _not_given(key: str, look_for: str) -> Verdict:
    compared, why = text(f"check.{key}_cable.compared"), text("check.cable_drop.why")
    return missing(TOPIC, f"{key}_cable", compared, look_for, why=why, source=text("check.cable.source"))


def _dc(basis: Basis) -> Load:
    solar, strings = basis.scenario.sources.solar, basis.strings_counted
    assert solar is not None
    return Load(
        text("check.cable.array" if basis.strings is not None else "check.cable.array_open", strings=strings),
        "dc",
        "dc",
        strings * solar.module.current_mp_a,
        solar.modules_in_series * solar.module.voltage_mp_v,
        PV_CURRENT_FACTOR * strings * solar.module.current_sc_a,
        DC_DROP,
    )


def array_section_mm2(basis: Basis) -> float | None:
    """Smallest standard section that the cable of the array may have; None without one, or where none suffices."""
    run = None if basis.scenario.cables is None else basis.scenario.cables.dc
    if run is None or basis.scenario.sources.solar is None:
        return None
    load = _dc(basis)
    return smallest_section_mm2(
        run,
        load.supply,
        current_a=load.current_a,
        voltage_v=load.voltage_v,
        bears_a=load.bears_a,
        ambient_c=ambient_c(basis, run),
        limit=load.limit,
    )


def _ac(basis: Basis, power_factor: float) -> list[Load]:
    found = []
    for source in supplies_of(basis.scenario):
        connection = connection_of(source, basis.scenario.pump.plate)
        if connection.voltage_v is not None:
            current = current_of_power_a(ac_need_w(basis), connection.voltage_v, connection.supply, power_factor)
            label = text(f"check.cable.{source.name}")
            found.append(Load(label, "ac", connection.supply, current, connection.voltage_v, current, AC_DROP))
    return found


def ambient_c(basis: Basis, run: CableRun) -> float:
    """Temperature of what surrounds a run [deg C]."""
    if run.ambient_temperature_c is not None:
        return run.ambient_temperature_c
    return basis.ground_c if run.installation == "D" else basis.hottest_c


def _bears_a(basis: Basis, run: CableRun, supply: str) -> float:
    """Current-carrying capacity of a run where it lies [A]."""
    if run.ampacity_a is not None:
        return run.ampacity_a
    loaded = LOADED_CONDUCTORS[supply]
    return ampacity_a(run.section_mm2, run.installation, loaded, ambient_c(basis, run), run.grouped_circuits)


def _device_needs_a(run: CableRun) -> float:
    """Capacity that the protective device of a run asks of its cable [A]; 0 where there is none."""
    if not isinstance(run, AcCable) or run.protective_device_a is None:
        return 0.0
    return protected_current_a(run.protective_device_a, run.protective_device)


def _thicker(basis: Basis, run: CableRun, loads: list[Load]) -> Remedy:
    """Name the smallest section that passes drop, capacity and the device that is there, and what it does not cover.

    Never a thinner one than there is; where the datasheet gives the cable less than the table, it does a thicker one.
    """
    sections = []
    for load in loads:
        by_table = _bears_a(basis, run.model_copy(update={"ampacity_a": None}), load.supply)
        found = smallest_section_mm2(
            run,
            load.supply,
            current_a=load.current_a,
            voltage_v=load.voltage_v,
            bears_a=max(load.bears_a, _device_needs_a(run)) * max(1.0, by_table / (run.ampacity_a or by_table or 1.0)),
            ambient_c=ambient_c(basis, run),
            limit=load.limit,
        )
        sections.append(found)
    section = max((found for found in sections if found is not None), default=None)
    if section is None or None in sections:
        return text("check.cable.remedy_none"), {}
    section = max(section, run.section_mm2)
    circuits = run.grouped_circuits
    words = text(
        "check.cable.remedy" if circuits == 1 else "check.cable.remedy_grouped",
        section_mm2=section,
        circuits=circuits,
        installation=run.installation,
        ambient_c=ambient_c(basis, run),
        not_covered=_not_covered(run),
    )
    key = f"cables.{loads[0].key}"
    return words, {f"{key}.section_mm2": section, f"{key}.ampacity_a": None}


def _not_covered(run: CableRun) -> str:
    uncovered = []
    if isinstance(run, AcCable):
        uncovered.append(text("check.cable.not_covered.faults"))
        if run.protective_device_a is None:
            uncovered.append(text("check.cable.not_covered.device"))
    else:
        uncovered.append(text("check.cable.not_covered.outdoors"))
    if run.installation == "D":
        uncovered.append(text("check.cable.not_covered.ground"))
    if run.installation == "D" and run.grouped_circuits > 1:
        uncovered.append(text("check.cable.not_covered.ground_grouping"))
    return text("list.comma").join(uncovered)


def _judged(basis: Basis, run: CableRun, loads: list[Load]) -> list[Verdict]:
    remedy, changes = _thicker(basis, run, loads)
    dropping = max(loads, key=lambda load: drop_share(run, load.supply, load.current_a, load.voltage_v))
    bearing = max(loads, key=lambda load: load.bears_a / max(_bears_a(basis, run, load.supply), 1e-9))
    circuits = run.grouped_circuits
    return [
        highest(
            TOPIC,
            f"{dropping.key}_cable_drop",
            text(
                "check.cable_drop.compared",
                cable=dropping.label,
                length_m=run.length_m,
                section_mm2=run.section_mm2,
                ohm=run_resistance_ohm(run),
                conductor_c=run.conductor_temperature_c,
                current_a=figure(dropping.current_a),
                voltage_v=figure(dropping.voltage_v),
            ),
            100 * drop_share(run, dropping.supply, dropping.current_a, dropping.voltage_v),
            100 * dropping.limit,
            "%",
            why=text("check.cable_drop.why"),
            remedy=remedy,
            source=text("check.ac_cable_drop.source" if dropping.key == "ac" else "check.cable_drop.source"),
            changes=changes,
        ),
        lowest(
            TOPIC,
            f"{bearing.key}_cable_ampacity",
            text(
                "check.cable_ampacity.compared" if circuits == 1 else "check.cable_ampacity.compared_grouped",
                cable=bearing.label,
                section_mm2=run.section_mm2,
                installation=run.installation,
                ambient_c=ambient_c(basis, run),
                circuits=circuits,
                factor=grouping_factor(circuits),
            ),
            _bears_a(basis, run, bearing.supply),
            bearing.bears_a,
            "A",
            why=text("check.cable_ampacity.why"),
            remedy=remedy,
            source=text(
                "check.cable_ampacity.source" if run.ampacity_a is None else "check.cable_ampacity.source_datasheet"
            ),
            changes=changes,
        ),
    ]


def _protected(basis: Basis, run: AcCable, loads: list[Load]) -> Verdict:
    device, kind = run.protective_device_a, run.protective_device
    carried = max(load.bears_a for load in loads)
    bears = min(_bears_a(basis, run, load.supply) for load in loads)
    name, why = loads[0].key, text("check.cable_protection.why")
    key, source = f"{name}_cable_protection", text("check.cable_protection.source")
    if device is None:
        compared = text("check.ac_cable_protection.compared_not_given")
        look_for = text("check.cable_protection.look_for", carried_a=figure(carried), most_a=figure(bears))
        return missing(TOPIC, key, compared, look_for, why=why, source=source, unit="A")
    most = bears * device / protected_current_a(device, kind)
    compared = text(
        f"check.{name}_cable_protection.compared",
        device=_device(run, device),
        carried_a=figure(carried),
        most_a=figure(most),
    )
    remedy, changes = _other_device(basis, run, loads, carried, bears)
    judge, limit = (highest, most) if at_least(device, carried) else (lowest, carried)
    return judge(TOPIC, key, compared, device, limit, "A", why=why, remedy=remedy, source=source, changes=changes)


def _other_device(basis: Basis, run: AcCable, loads: list[Load], carried: float, bears: float) -> Remedy:
    """Name the smallest usual device that carries the load and protects the cable, or else one with a thicker cable."""
    kind, key = run.protective_device, f"cables.{loads[0].key}.protective_device_a"
    device = next((float(rating) for rating in BREAKERS_A if at_least(rating, carried)), None)
    if device is None:
        return text("check.cable_protection.remedy_none"), {}
    words = _device(run, device)
    if at_most(protected_current_a(device, kind), bears):
        return text("check.cable_protection.remedy", device=words), {key: device}
    thicker, changes = _thicker(basis, run.model_copy(update={"protective_device_a": device}), loads)
    words = text("check.cable_protection.remedy_and_cable", device=words, remedy=thicker)
    return words, changes | {key: device} if changes else {}


def _device(run: AcCable, rating_a: float) -> str:
    if run.protective_device == "breaker":
        return text("check.cable_protection.device.breaker", rating_a=rating_a)
    return text("check.cable_protection.device.fuse", rating_a=rating_a)


def _voltage_class(basis: Basis, run: DcCable) -> Verdict:
    solar = basis.scenario.sources.solar
    assert solar is not None
    value, limit = cold_string_v(basis, solar), run.voltage_class_v
    compared, why = text("check.dc_cable_voltage.compared"), text("check.dc_cable_voltage.why")
    source = text("check.dc_cable_voltage.source")
    key = "dc_cable_voltage"
    if limit is None:
        look_for = text("check.dc_cable_voltage.look_for")
        return missing(TOPIC, key, compared, look_for, why=why, source=source, value=value, unit="V")
    remedy = text("check.dc_cable_voltage.remedy")
    changes = {"cables.dc.voltage_class_v": 1500.0, "cables.dc.outdoor": "yes"}
    return highest(TOPIC, key, compared, value, limit, "V", why=why, remedy=remedy, source=source, changes=changes)


def _outdoor(run: DcCable) -> Verdict:
    key, compared = "dc_cable_outdoor", text("check.dc_cable_outdoor.compared")
    why, source = text("check.dc_cable_outdoor.why"), text("check.dc_cable_outdoor.source")
    made_for_it = text("check.dc_cable_outdoor.made_for_it")
    if run.outdoor is None:
        look_for = text("check.dc_cable_outdoor.look_for")
        return missing(TOPIC, key, compared, look_for, why=why, source=source, limit=made_for_it)
    if run.outdoor == "yes":
        return Verdict(TOPIC, key, compared, "pass", made_for_it, made_for_it, "", "", why, "", source)
    return Verdict(
        TOPIC,
        key,
        compared,
        "fail",
        text("check.dc_cable_outdoor.not_made_for_it"),
        made_for_it,
        "",
        "",
        why,
        text("check.dc_cable_outdoor.remedy"),
        source,
        {"cables.dc.outdoor": "yes"},
    )


def _reaches(basis: Basis, run: CableRun) -> Verdict:
    depth = basis.scenario.borehole.pump_depth_m
    return lowest(
        TOPIC,
        "drop_cable_length",
        text("check.drop_cable_length.compared"),
        run.length_m,
        depth,
        "m",
        why=text("check.drop_cable_length.why"),
        remedy=text("check.drop_cable_length.remedy", length_m=ceil(depth)),
        source=text("source.site"),
        changes={"cables.drop.length_m": float(ceil(depth))},
    )
