"""Positions that no borehole can have, and what was probably meant."""

from __future__ import annotations

from pvlib.location import lookup_altitude

from planner.resource.zones import is_open_sea, zone_at
from planner.scenario.mistakes import latitude_advice
from planner.text import text

MOST_SOUTHERN_DEG = -60.0
"""Nobody lives on the land beyond, so it was not meant."""


def at_sea(latitude_deg: float, longitude_deg: float) -> bool:
    """Tell whether a position lies at sea, beyond the coastal waters of any country.

    Parameters
    ----------
    latitude_deg, longitude_deg : float
        North and east positive, on the globe.
    """
    # Quick where the answer is plain: pvlib's grid, in steps of 28 m from -450 m, is at 0 only where it has no land.
    return lookup_altitude(latitude_deg, longitude_deg) == 0 and is_open_sea(zone_at(latitude_deg, longitude_deg))


def position_fault(latitude_deg: float, longitude_deg: float) -> str:
    """Say what is wrong with a position and what was probably meant; '' where nothing is.

    Parameters
    ----------
    latitude_deg, longitude_deg : float
        As given, north and east positive.
    """
    given = {"latitude": latitude_deg, "longitude": longitude_deg}
    if not (abs(latitude_deg) <= 90 and abs(longitude_deg) <= 180):
        return text("position.off_the_globe", **given) + latitude_advice(latitude_deg)
    if not at_sea(latitude_deg, longitude_deg):
        return ""
    others = {
        "position.swapped": (longitude_deg, latitude_deg),
        "position.latitude_sign": (-latitude_deg, longitude_deg),
        "position.longitude_sign": (latitude_deg, -longitude_deg),
    }
    likely = [
        text(key, latitude=north, longitude=east, zone=zone_at(north, east))
        for key, (north, east) in others.items()
        if MOST_SOUTHERN_DEG <= north <= 90 and not at_sea(north, east)
    ]
    hints = "; ".join(likely) or text("position.look")
    return f"{text('position.at_sea', **given)}: {hints}"
