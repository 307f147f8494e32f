"""Cables: voltage drop, current-carrying capacity and its protection, voltage class, and the section to take."""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil

from planner.checks.alternating import ac_need_w
from planner.checks.array import cold_string_v
from planner.checks.basis import Basis
from planner.checks.connection import connection_of
from planner.checks.verdict import (
    PRACTICE,
    Outcome,
    Remedy,
    Verdict,
    at_least,
    at_most,
    figure,
    highest,
    lowest,
    missing,
)
from planner.scenario.cables import AcCable, CableRun, DcCable
from planner.supply.cables import (
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

TOPIC = "cables"

DC_DROP, AC_DROP, DROP_DROP = 0.03, 0.05, 0.05
ANNEX_G = "IEC 60364-5-52 annex G, other uses than lighting on a public network"
AMPACITY_SOURCE = "IEC 60364-5-52, PVC, with the factors for ambient temperature and grouping"
PROTECTION_SOURCE = "IEC 60364-4-43:2008, 433.1: Ib <= In <= Iz and I2 <= 1.45 Iz"
BREAKERS_A = (6, 8, 10, 13, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125)
"""Usual ratings of circuit breakers (IEC 60898-1) and gG fuses, from memory."""
_WHY_DROP = "Voltage lost in the cable is power lost for life, and too little of it stops the motor."
_WHY_BEARS = "A cable that carries more than it bears overheats and can start a fire."
_WHY_PROTECTED = "A device too small trips the pump; one too large lets the cable burn before it trips."


@dataclass(frozen=True)
class Load:
    """What one run carries: its kind of supply, current and voltage at rated power, and the current to bear."""

    name: str
    key: str
    supply: str
    current_a: float
    voltage_v: float
    bears_a: float
    limit: float
    source: str


def verdicts(basis: Basis) -> list[Verdict]:
    """Judge the cables."""
    cables, sources = basis.scenario.cables, basis.scenario.sources
    found: list[Verdict] = []
    if sources.solar is not None:
        run = None if cables is None else cables.dc
        if run is None:
            found.append(_not_given("dc", "from the array to the controller"))
        else:
            found += [*_judged(basis, run, [_dc(basis)]), _voltage_class(basis, run), _outdoor(run)]
    if sources.grid is not None or sources.generator is not None:
        ac = None if cables is None else cables.ac
        loads = [] if ac is None else _ac(basis, ac.power_factor)
        if ac is None or not loads:
            found.append(_not_given("ac", "from grid or generator to the controller", voltage_lacks=ac is not None))
        else:
            found += [*_judged(basis, ac, loads), _protected(basis, ac, loads)]
    drop = None if cables is None else cables.drop
    if drop is None:
        found.append(_not_given("drop", "from the controller down to the motor"))
    else:
        current = current_of_power_a(basis.motor_input_w, drop.voltage_v, drop.supply, drop.power_factor)
        bears = max(current, basis.scenario.pump.plate.current_a or 0.0)
        load = Load("Drop cable", "drop", drop.supply, current, drop.voltage_v, bears, DROP_DROP, PRACTICE)
        protected = [_protected(basis, drop, [load])] if drop.protective_device_a is not None else []
        found += [*_judged(basis, drop, [load]), *protected, _reaches(basis, drop)]
    return found


def _not_given(key: str, where: str, *, voltage_lacks: bool = False) -> Verdict:
    look_for = f"measure the run {where} and look for the section (mm2) printed on the cable; give cables.{key}"
    if voltage_lacks:
        look_for = "look for the voltage of grid and generator"
    return missing(
        TOPIC, f"{key}_cable", f"Cable {where}: voltage drop and ampacity", look_for, why=_WHY_DROP, source=ANNEX_G
    )


def _dc(basis: Basis) -> Load:
    solar, strings = basis.scenario.sources.solar, basis.string_counts[1]
    assert solar is not None
    return Load(
        f"Array cable with {strings} string(s)" + ("" if basis.strings is not None else ", the most there may be"),
        "dc",
        "dc",
        strings * solar.module.current_mp_a,
        solar.modules_in_series * solar.module.voltage_mp_v,
        PV_CURRENT_FACTOR * strings * solar.module.current_sc_a,
        DC_DROP,
        PRACTICE,
    )


def _ac(basis: Basis, power_factor: float) -> list[Load]:
    found = []
    for name, source in (("grid", basis.scenario.sources.grid), ("generator", basis.scenario.sources.generator)):
        if source is None:
            continue
        connection = connection_of(source, basis.scenario.pump.plate)
        if connection.voltage_v is not None:
            current = current_of_power_a(ac_need_w(basis), connection.voltage_v, connection.supply, power_factor)
            name = f"AC cable on the {name}"
            found.append(Load(name, "ac", connection.supply, current, connection.voltage_v, current, AC_DROP, ANNEX_G))
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
        return (
            "a shorter run, or another cable laid out by a licensed electrician: no section up to 50 mm2 suffices",
            {},
        )
    section = max(section, run.section_mm2)
    circuits = "by itself" if run.grouped_circuits == 1 else f"with {run.grouped_circuits} circuits together"
    words = (
        f"a section of {section:g} mm2, the smallest that passes drop and ampacity with PVC, laid {circuits} as "
        f"{run.installation} at {ambient_c(basis, run):.0f} deg C; not covered: {_not_covered(run)}"
    )
    key = f"cables.{loads[0].key}"
    return words, {f"{key}.section_mm2": section, f"{key}.ampacity_a": None}


def _not_covered(run: CableRun) -> str:
    uncovered = []
    if isinstance(run, AcCable):
        uncovered.append("earth-fault loop and short circuit")
        if run.protective_device_a is None:
            uncovered.append("the protective device")
    else:
        uncovered.append("insulation for DC, sun and weather")
    if run.installation == "D":
        uncovered.append("depth, ducts and dryness of the ground")
    if run.installation == "D" and run.grouped_circuits > 1:
        uncovered.append("the ground's own factor for grouping")
    return ", ".join(uncovered)


def _judged(basis: Basis, run: CableRun, loads: list[Load]) -> list[Verdict]:
    remedy, changes = _thicker(basis, run, loads)
    dropping = max(loads, key=lambda load: drop_share(run, load.supply, load.current_a, load.voltage_v))
    bearing = max(loads, key=lambda load: load.bears_a / max(_bears_a(basis, run, load.supply), 1e-9))
    ohm = f"{run_resistance_ohm(run):.3f} ohm at {run.conductor_temperature_c:g} deg C"
    circuits = run.grouped_circuits
    together = "" if circuits == 1 else f", {circuits} circuits together (factor {grouping_factor(circuits):g})"
    return [
        highest(
            TOPIC,
            f"{dropping.key}_cable_drop",
            f"{dropping.name}, {run.length_m:g} m of {run.section_mm2:g} mm2 ({ohm}): voltage lost at "
            f"{figure(dropping.current_a)} A and {figure(dropping.voltage_v)} V",
            100 * drop_share(run, dropping.supply, dropping.current_a, dropping.voltage_v),
            100 * dropping.limit,
            "%",
            why=_WHY_DROP,
            remedy=remedy,
            source=f"{dropping.source}; resistance by IEC 60228",
            changes=changes,
        ),
        lowest(
            TOPIC,
            f"{bearing.key}_cable_ampacity",
            f"{bearing.name}, {run.section_mm2:g} mm2 laid as {run.installation} at {ambient_c(basis, run):.0f} deg C"
            f"{together}: current-carrying capacity, against the current to design for",
            _bears_a(basis, run, bearing.supply),
            bearing.bears_a,
            "A",
            why=_WHY_BEARS,
            remedy=remedy,
            source=AMPACITY_SOURCE if run.ampacity_a is None else "the cable's datasheet",
            changes=changes,
        ),
    ]


def _protected(basis: Basis, run: AcCable, loads: list[Load]) -> Verdict:
    device, kind = run.protective_device_a, run.protective_device
    carried = max(load.bears_a for load in loads)
    bears = min(_bears_a(basis, run, load.supply) for load in loads)
    key, why, source = f"{loads[0].key}_cable_protection", _WHY_PROTECTED, PROTECTION_SOURCE
    compared = f"Protective device of the {'drop' if loads[0].key == 'drop' else 'AC'} cable"
    if device is None:
        look_for = (
            "look for the rated current on the circuit breaker or fuse before the cable; it is to be at least "
            f"{figure(carried)} A and at most {figure(bears)} A"
        )
        return missing(TOPIC, key, compared, look_for, why=why, source=source, unit="A")
    most = bears * device / protected_current_a(device, kind)
    compared += (
        f", a {kind} of {device:g} A, against the {figure(carried)} A that the cable is to carry and the "
        f"{figure(most)} A that protect it"
    )
    remedy, changes = _other_device(basis, run, loads, carried, bears)
    judge, limit = (highest, most) if at_least(device, carried) else (lowest, carried)
    return judge(TOPIC, key, compared, device, limit, "A", why=why, remedy=remedy, source=source, changes=changes)


def _other_device(basis: Basis, run: AcCable, loads: list[Load], carried: float, bears: float) -> Remedy:
    """Name the smallest usual device that carries the load and protects the cable, or else one with a thicker cable."""
    kind, key = run.protective_device, f"cables.{loads[0].key}.protective_device_a"
    device = next((float(rating) for rating in BREAKERS_A if at_least(rating, carried)), None)
    if device is None:
        return "a device for more current than those of usual size, chosen by a licensed electrician", {}
    words = f"a {kind} of {device:g} A, with the motor's own overload protection beside it"
    if at_most(protected_current_a(device, kind), bears):
        return f"{words}; not covered: earth-fault loop and short circuit", {key: device}
    thicker, changes = _thicker(basis, run.model_copy(update={"protective_device_a": device}), loads)
    return f"{words}, and {thicker}", changes | {key: device} if changes else {}


def _voltage_class(basis: Basis, run: DcCable) -> Verdict:
    solar = basis.scenario.sources.solar
    assert solar is not None
    value, limit = cold_string_v(basis, solar), run.voltage_class_v
    compared = "Open-circuit voltage of a string in the cold, against the DC voltage for which the array cable is made"
    why = "Insulation that is not made for the voltage fails, and an arc of DC does not go out by itself."
    source = "IEC 62548; cable for PV is made for 1,500 V DC (EN 50618, IEC 62930)"
    key = "dc_cable_voltage"
    if limit is None:
        look_for = "look for the DC voltage printed on the cable, such as 'DC 1500 V'"
        return missing(TOPIC, key, compared, look_for, why=why, source=source, value=value, unit="V")
    remedy = "a cable made for PV (EN 50618 or IEC 62930, 1,500 V DC)"
    changes = {"cables.dc.voltage_class_v": 1500.0, "cables.dc.outdoor": "yes"}
    return highest(TOPIC, key, compared, value, limit, "V", why=why, remedy=remedy, source=source, changes=changes)


def _outdoor(run: DcCable) -> Verdict:
    compared = "Array cable, against sun and weather"
    why = "Insulation that sun and rain wear out leaks to earth within years, and shocks or burns."
    source, key = "IEC 62548; EN 50618, IEC 62930", "dc_cable_outdoor"
    if run.outdoor is None:
        look_for = "look for 'EN 50618', 'IEC 62930' or 'H1Z2Z2-K' printed on the cable"
        return missing(TOPIC, key, compared, look_for, why=why, source=source, limit="made for it")
    outcome: Outcome = "pass" if run.outdoor == "yes" else "fail"
    good = outcome == "pass"
    return Verdict(
        TOPIC,
        key,
        compared,
        outcome,
        "made for it" if good else "not made for it",
        "made for it",
        "",
        "",
        why,
        ""
        if good
        else "a cable made for PV (EN 50618 or IEC 62930), or conduit that stands the sun over all its length",
        source,
        {} if good else {"cables.dc.outdoor": "yes"},
    )


def _reaches(basis: Basis, run: CableRun) -> Verdict:
    depth = basis.scenario.borehole.pump_depth_m
    return lowest(
        TOPIC,
        "drop_cable_length",
        "Length of the drop cable, against the pump's depth",
        run.length_m,
        depth,
        "m",
        why="A joint under water is the first thing to fail.",
        remedy=f"a drop cable of at least {ceil(depth)} m in one piece",
        source="the site's data",
        changes={"cables.drop.length_m": float(ceil(depth))},
    )
