"""The tank where none is given or its size is left open, and the float-switch level that is not given."""

from __future__ import annotations

from planner.assumptions.draft import Draft, is_number
from planner.text import text

USUAL_SIZES_M3 = (2.0, 5.0, 10.0, 15.0, 20.0, 30.0, 40.0, 50.0, 75.0, 100.0, 150.0, 200.0, 300.0)
"""Sizes in which tanks are usually built. Common practice, no source."""

LEVELS_APART_PERCENT = 20.0
"""Between the levels of the float switch where one alone is given. Common practice, no source."""


def complete(draft: Draft) -> None:
    """Fill in the sizes to choose from, and the second level where one alone is given."""
    draft.fill("tank", {}, text("assumed.tank"))
    if draft.get("tank.volume_m3") in (None, "auto") and not draft.get("tank.sizes"):
        sizes = [{"volume_m3": volume} for volume in USUAL_SIZES_M3]
        draft.fill("tank.sizes", sizes, text("assumed.tank_sizes"))
    start, stop = (draft.get(f"topup.{name}_level_percent") for name in ("start", "stop"))
    if is_number(start):
        draft.fill("topup.stop_level_percent", min(start + LEVELS_APART_PERCENT, 100.0), text("assumed.level"))
    elif is_number(stop):
        draft.fill("topup.start_level_percent", max(stop - LEVELS_APART_PERCENT, 0.0), text("assumed.level"))
