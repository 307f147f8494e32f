"""The tank where none is given, or its size is left open."""

from __future__ import annotations

from planner.assumptions.draft import Draft
from planner.text import text

USUAL_SIZES_M3 = (2.0, 5.0, 10.0, 15.0, 20.0, 30.0, 40.0, 50.0, 75.0, 100.0, 150.0, 200.0, 300.0)
"""Sizes in which tanks are usually built. Common practice, no source."""


def complete(draft: Draft) -> None:
    """Fill in the sizes to choose from."""
    draft.fill("tank", {}, text("assumed.tank"))
    if draft.get("tank.volume_m3") in (None, "auto") and not draft.get("tank.sizes"):
        sizes = [{"volume_m3": volume} for volume in USUAL_SIZES_M3]
        draft.fill("tank.sizes", sizes, text("assumed.tank_sizes"))
