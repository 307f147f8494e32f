"""Name of the place, its time zone and its weather."""

from __future__ import annotations

from planner.assumptions.draft import Draft, is_number
from planner.text import text


def complete(draft: Draft) -> None:
    """Fill in what follows from the name of the project and from the coordinates."""
    name = draft.get("name")
    if isinstance(name, str) and name and isinstance(draft.get("site"), dict):
        draft.fill("site.place", name, text("assumed.place"))
    latitude, longitude = draft.get("site.latitude_deg"), draft.get("site.longitude_deg")
    if is_number(latitude) and is_number(longitude) and abs(latitude) <= 90 and abs(longitude) <= 180:
        draft.fill("site.time_zone", zone_at(latitude, longitude), text("assumed.time_zone"))
    draft.fill("weather", {"kind": "estimate"}, text("assumed.weather"))


def zone_at(latitude_deg: float, longitude_deg: float) -> str:  # noqa: ARG001
    """Offset of the sun's own time in whole hours."""
    hours = round(longitude_deg / 15)
    return f"{'-' if hours < 0 else '+'}{abs(hours):02d}:00"
