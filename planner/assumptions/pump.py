"""What the pump's plate says beyond its own lines."""

from __future__ import annotations

from planner.assumptions.draft import Draft
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
    low, high = draft.number("pump.plate.dc_voltage_min_v"), draft.number("pump.plate.dc_voltage_max_v")
    own = draft.get("controller.dc_voltage_min_v"), draft.get("controller.dc_voltage_max_v")
    if low and high and own == (None, None):
        draft.fill("controller.dc_voltage_min_v", low, text("assumed.controller_window"))
        draft.fill("controller.dc_voltage_max_v", high, text("assumed.controller_window"))
