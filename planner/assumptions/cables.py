"""Cross-sections of cables that are described without one: the smallest standard one that bears what it carries."""

from __future__ import annotations

from typing import Any

from pydantic import ValidationError

from planner.assumptions.draft import Draft
from planner.assumptions.solar import ARRAY_RATIO
from planner.scenario.cables import STANDARD_SECTIONS_MM2, AcCable, CableRun, DcCable, DropCable
from planner.supply.cables import (
    AC_DROP,
    DC_DROP,
    DROP_DROP,
    PV_CURRENT_FACTOR,
    current_of_power_a,
    protected_current_a,
    smallest_section_mm2,
)
from planner.text import text

HOT_AIR_C, WARM_GROUND_C = 45.0, 35.0
"""What surrounds a cable where the site gives no highest temperature; careful, assumed."""
AC_V, AC_SUPPLY = 230.0, "1-phase"
"""Voltage where grid and generator give none, assumed; and the supply that takes the most current at any voltage."""
MODELS: dict[str, type[CableRun]] = {"dc": DcCable, "ac": AcCable, "drop": DropCable}
Load = tuple[str, float, float, float, float]
"""Kind of supply, current and voltage at rated power, current to bear, and the share of voltage that may be lost."""


def complete(draft: Draft) -> None:
    """Fill in the sections that are left out; of the array's cable for the array that the pump asks for."""
    for name, model in MODELS.items():
        table = draft.get(f"cables.{name}")
        if not isinstance(table, dict) or table.get("section_mm2") not in (None, "auto"):
            continue
        try:
            run = model.model_validate(table | {"section_mm2": STANDARD_SECTIONS_MM2[0]})
        except ValidationError:
            continue  # the check that follows names what is wrong
        load = _array(draft) if isinstance(run, DcCable) else _pump(draft, run)
        if load is None:
            continue
        supply, current, volts, bears, limit = load
        found = smallest_section_mm2(
            run,
            supply,
            current_a=current,
            voltage_v=volts,
            bears_a=bears,
            ambient_c=_ambient_c(draft, run),
            limit=limit,
        )
        section = STANDARD_SECTIONS_MM2[-1] if found is None else found
        draft.fill(f"cables.{name}.section_mm2", section, text("assumed.section", percent=100 * limit))


def _ambient_c(draft: Draft, run: CableRun) -> float:
    if run.ambient_temperature_c is not None:
        return run.ambient_temperature_c
    return WARM_GROUND_C if run.installation == "D" else draft.level("site.temperature_highest_c", HOT_AIR_C)


def _array(draft: Draft) -> Load | None:
    module: dict[str, Any] = {
        name: draft.number(f"sources.solar.module.{name}")
        for name in ("power_w", "voltage_mp_v", "current_mp_a", "current_sc_a")
    }
    series, rated = draft.number("sources.solar.modules_in_series"), draft.number("pump.rated_power_w")
    if None in module.values() or not series or not rated:
        return None
    strings = draft.number("sources.solar.strings") or max(round(ARRAY_RATIO * rated / (series * module["power_w"])), 1)
    bears = PV_CURRENT_FACTOR * strings * module["current_sc_a"]
    return "dc", strings * module["current_mp_a"], series * module["voltage_mp_v"], bears, DC_DROP


def _pump(draft: Draft, run: CableRun) -> Load | None:
    rated = draft.number("pump.rated_power_w")
    if not rated or not isinstance(run, AcCable):
        return None
    if isinstance(run, DropCable):
        current = current_of_power_a(rated, run.voltage_v, run.supply, run.power_factor)
        return run.supply, current, run.voltage_v, max(current, draft.level("pump.plate.current_a")), DROP_DROP
    need = rated / (draft.number("controller.ac_efficiency_percent") or 96.0) * 100
    given = [draft.number(f"sources.{name}.voltage_v") for name in ("grid", "generator")]
    volts = min([voltage for voltage in given if voltage], default=AC_V)
    current = current_of_power_a(need, volts, AC_SUPPLY, run.power_factor)
    device = run.protective_device_a
    bears = max(current, 0.0 if device is None else protected_current_a(device, run.protective_device))
    return AC_SUPPLY, current, volts, bears, AC_DROP
