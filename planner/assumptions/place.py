"""Name of the place, its time zone and its weather."""

from __future__ import annotations

from planner.assumptions.draft import Draft, is_number
from planner.resource.zones import zone_at
from planner.text import text


def complete(draft: Draft) -> None:
    """Fill in what follows from the name of the project and from the coordinates."""
    name = draft.get("name")
    if isinstance(name, str) and name and isinstance(draft.get("site"), dict):
        draft.fill("site.place", name, text("assumed.place"))
    latitude, longitude = draft.get("site.latitude_deg"), draft.get("site.longitude_deg")
    known = is_number(latitude) and is_number(longitude) and abs(latitude) <= 90 and abs(longitude) <= 180
    if known and draft.get("site.time_zone") is None:
        draft.fill("site.time_zone", zone_at(latitude, longitude), text("assumed.time_zone"))
    draft.fill("weather", {"kind": "estimate"}, text("assumed.weather"))
