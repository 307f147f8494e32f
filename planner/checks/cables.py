"""Cables: voltage drop, ampacity, length, and the smallest standard section that passes."""

from __future__ import annotations

from dataclasses import dataclass

from planner.checks.alternating import ac_need_w
from planner.checks.basis import Basis
from planner.checks.verdict import PRACTICE, Verdict, figure, highest, lowest, missing
from planner.scenario.cables import CableRun
from planner.supply.cables import (
    LOADED_CONDUCTORS,
    PV_CURRENT_FACTOR,
    ampacity_a,
    current_of_power_a,
    drop_share,
    run_resistance_ohm,
    smallest_section_mm2,
)

TOPIC = "Cables"

DC_DROP, AC_DROP, DROP_DROP = 0.03, 0.05, 0.05
ANNEX_G = "IEC 60364-5-52 annex G, other uses than lighting on a public network"
AMPACITY_SOURCE = "IEC 60364-5-52, PVC, with the factor for the ambient temperature"
_WHY_DROP = "Voltage lost in the cable is power lost for life, and too little of it stops the motor."
_WHY_BEARS = "A cable that carries more than it bears overheats and can start a fire."


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
        found += (
            [_not_given("dc", "from the array to the controller")] if run is None else _judged(basis, run, _dc(basis))
        )
    if sources.grid is not None or sources.generator is not None:
        ac = None if cables is None else cables.ac
        loads = [] if ac is None else _ac(basis, ac.power_factor)
        if ac is None or not loads:
            found.append(_not_given("ac", "from grid or generator to the controller", voltage_lacks=ac is not None))
        else:
            found += _judged(basis, ac, max(loads, key=lambda load: load.current_a / load.voltage_v))
    drop = None if cables is None else cables.drop
    if drop is None:
        found.append(_not_given("drop", "from the controller down to the motor"))
    else:
        current = current_of_power_a(basis.motor_input_w, drop.voltage_v, drop.supply, drop.power_factor)
        bears = max(current, basis.scenario.pump.plate.current_a or 0.0)
        load = Load("Drop cable", "drop", drop.supply, current, drop.voltage_v, bears, DROP_DROP, PRACTICE)
        found += [*_judged(basis, drop, load), _reaches(basis, drop)]
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
        if source is not None and source.voltage_v is not None:
            supply = "3-phase" if source.phases == 3 else "1-phase"
            current = current_of_power_a(ac_need_w(basis), source.voltage_v, supply, power_factor)
            found.append(
                Load(f"AC cable on the {name}", "ac", supply, current, source.voltage_v, current, AC_DROP, ANNEX_G)
            )
    return found


def ambient_c(basis: Basis, run: CableRun) -> float:
    """Temperature of what surrounds a run [deg C]."""
    if run.ambient_temperature_c is not None:
        return run.ambient_temperature_c
    return basis.ground_c if run.installation == "D" else basis.hottest_c


def _judged(basis: Basis, run: CableRun, load: Load) -> list[Verdict]:
    surroundings = ambient_c(basis, run)
    section = smallest_section_mm2(
        run,
        load.supply,
        current_a=load.current_a,
        voltage_v=load.voltage_v,
        bears_a=load.bears_a,
        ambient_c=surroundings,
        limit=load.limit,
    )
    remedy = (
        f"a section of {section:g} mm2, the smallest that passes drop and ampacity"
        if section is not None
        else "a shorter run or a higher voltage: no section up to 50 mm2 suffices"
    )
    ohm = f"{run_resistance_ohm(run):.3f} ohm at {run.conductor_temperature_c:g} deg C"
    bears = run.ampacity_a
    if bears is None:
        bears = ampacity_a(run.section_mm2, run.installation, LOADED_CONDUCTORS[load.supply], surroundings)
    return [
        highest(
            TOPIC,
            f"{load.key}_cable_drop",
            f"{load.name}, {run.length_m:g} m of {run.section_mm2:g} mm2 ({ohm}): voltage lost at "
            f"{figure(load.current_a)} A and {figure(load.voltage_v)} V",
            100 * drop_share(run, load.supply, load.current_a, load.voltage_v),
            100 * load.limit,
            "%",
            why=_WHY_DROP,
            remedy=remedy,
            source=f"{load.source}; resistance by IEC 60228",
        ),
        lowest(
            TOPIC,
            f"{load.key}_cable_ampacity",
            f"{load.name}, {run.section_mm2:g} mm2 laid as {run.installation} at {surroundings:.0f} deg C: "
            "what it bears, against the current to design for",
            bears,
            load.bears_a,
            "A",
            why=_WHY_BEARS,
            remedy=remedy,
            source=AMPACITY_SOURCE if run.ampacity_a is None else "the cable's datasheet",
        ),
    ]


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
        remedy=f"a drop cable of at least {figure(depth)} m in one piece",
        source="the site's data",
    )
