"""What the pump's plate says beyond its own lines."""

from __future__ import annotations

from planner.assumptions.draft import Draft
from planner.scenario.printed import ends_of
from planner.text import text

HELICAL_FLOW_RATIO = 1.35
"""Largest flow over rated flow below which a pump end is taken for a helical rotor, whose flow hardly falls with head;
a centrifugal one gives half as much again. Common practice, no source."""


def complete(draft: Draft) -> None:
    """Fill in name and kind of the pump, and the controller's voltages from the plate."""
    if not isinstance(draft.get("pump"), dict):
        return
    draft.fill("pump.name", text("assumed.pump_name"), text("assumed.pump_named"))
    rated, largest = draft.number("pump.rated_flow_m3h"), draft.number("pump.max_flow_m3h")
    if rated and largest:
        kind = "helical-rotor" if largest < HELICAL_FLOW_RATIO * rated else "centrifugal"
        draft.fill("pump.kind", kind, text("assumed.pump_kind", ratio=f"{largest / rated:.1f}"))
    low, high = plate_window_v(draft)
    own = draft.get("controller.dc_voltage_min_v"), draft.get("controller.dc_voltage_max_v")
    if low and high and own == (None, None):
        draft.fill("controller.dc_voltage_min_v", low, text("assumed.controller_window"))
        draft.fill("controller.dc_voltage_max_v", high, text("assumed.controller_window"))


def plate_window_v(draft: Draft) -> tuple[float | None, float | None]:
    """Lowest and highest DC voltage of the plate, in two keys or as printed [V]; None where not given or not clear."""
    keys = "dc_voltage_min_v", "dc_voltage_max_v"
    low, high = (draft.number(f"pump.plate.{key}") for key in keys)
    printed = draft.get("pump.plate.dc_voltage_v")
    if printed is None:
        return low, high
    try:
        found = ends_of(printed, "dc_voltage_v", *keys)
    except (ValueError, TypeError):
        return low, high
    return found.get(keys[0], low), found.get(keys[1], high)
