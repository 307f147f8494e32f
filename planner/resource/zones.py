"""Names of time zones: what to write for one that is not known."""

from __future__ import annotations

import difflib
import re
import zoneinfo

ABBREVIATIONS = {
    "ACST": ("Australia/Darwin",),
    "AEST": ("Australia/Brisbane",),
    "AFT": ("Asia/Kabul",),
    "ART": ("America/Argentina/Buenos_Aires",),
    "AST": ("America/Halifax", "Asia/Riyadh"),
    "AWST": ("Australia/Perth",),
    "BOT": ("America/La_Paz",),
    "BRT": ("America/Sao_Paulo",),
    "BST": ("Asia/Dhaka", "Europe/London"),
    "BTT": ("Asia/Thimphu",),
    "CAT": ("Africa/Lusaka",),
    "CEST": ("Europe/Paris",),
    "CLT": ("America/Santiago",),
    "COT": ("America/Bogota",),
    "CST": ("America/Chicago", "America/Guatemala", "Asia/Shanghai"),
    "CVT": ("Atlantic/Cape_Verde",),
    "EAT": ("Africa/Nairobi",),
    "ECT": ("America/Guayaquil",),
    "EDT": ("America/New_York",),
    "EEST": ("Africa/Cairo", "Europe/Athens"),
    "GST": ("Asia/Dubai",),
    "HKT": ("Asia/Hong_Kong",),
    "ICT": ("Asia/Bangkok",),
    "IRST": ("Asia/Tehran",),
    "IST": ("Asia/Kolkata", "Asia/Jerusalem"),
    "JST": ("Asia/Tokyo",),
    "KST": ("Asia/Seoul",),
    "MMT": ("Asia/Yangon",),
    "MSK": ("Europe/Moscow",),
    "MUT": ("Indian/Mauritius",),
    "NPT": ("Asia/Kathmandu",),
    "NST": ("Asia/Kathmandu", "America/St_Johns"),
    "NZST": ("Pacific/Auckland",),
    "PET": ("America/Lima",),
    "PGT": ("Pacific/Port_Moresby",),
    "PHT": ("Asia/Manila",),
    "PKT": ("Asia/Karachi",),
    "PST": ("America/Los_Angeles", "Asia/Manila"),
    "PYT": ("America/Asuncion",),
    "SAST": ("Africa/Johannesburg",),
    "SGT": ("Asia/Singapore",),
    "SLST": ("Asia/Colombo",),
    "TLT": ("Asia/Dili",),
    "UZT": ("Asia/Tashkent",),
    "VET": ("America/Caracas",),
    "WAT": ("Africa/Lagos",),
    "WIB": ("Asia/Jakarta",),
    "WIT": ("Asia/Jayapura",),
    "WITA": ("Asia/Makassar",),
}
"""Zones in which an abbreviation is in common use; the abbreviation itself is no zone of the IANA database. Common
practice, no source; compared with the abbreviations and offsets of the database in the tests."""


def zone_advice(given: str) -> str:
    """Say what to write for a time zone that is not known, '' where nothing is near.

    Parameters
    ----------
    given : str
        What was given: an abbreviation, an offset from Greenwich, a town or a misspelt zone.
    """
    name = given.strip()
    offset = re.fullmatch(r"(?:UTC|GMT|Z)?\s*([+-])?\s*(\d{1,2})(?:[:.]?(\d{2}))?\s*(?:h|hours)?", name, re.IGNORECASE)
    if offset:
        size = f"{int(offset[2]):02d}:{offset[3] or '00'}"
        return (
            f"for an offset write '{offset[1]}{size}'" if offset[1] else f"write '+{size}' (east) or '-{size}' (west)"
        )
    if name.upper() in ABBREVIATIONS:
        zones = " or ".join(repr(zone) for zone in ABBREVIATIONS[name.upper()])
        return f"{name.upper()} is an abbreviation, not a zone: write region and city, such as {zones}"
    known = zoneinfo.available_timezones()
    town = re.sub(r"[\s,]+", "_", name).lower()
    zones_of_town = sorted(zone for zone in known if zone.lower() == town or zone.lower().rpartition("/")[2] == town)
    if zones_of_town:
        return f"did you mean {zones_of_town[0]!r}?"
    if re.fullmatch(r"[A-Za-z]{1,5}", name):
        return "an abbreviation is not a zone: write region and city, or the offset"
    near = difflib.get_close_matches(name, known, 1)
    return f"did you mean {near[0]!r}?" if near else ""


def zone_at(latitude_deg: float, longitude_deg: float) -> str:
    """Name the time zone of a place.

    Parameters
    ----------
    latitude_deg, longitude_deg : float
        North and east positive.

    Returns
    -------
    str
        IANA name; at sea, beyond coastal waters, one of the zones 'Etc/GMT...' (see `is_open_sea`).

    Raises
    ------
    ValueError
        If there is no such place on the globe.
    """
    import tzfpy  # the map of the zones takes some 0.06 s to unpack

    name: str = tzfpy.get_tz(longitude_deg, latitude_deg)
    if not name:
        raise ValueError(f"no time zone is known for latitude {latitude_deg:g}, longitude {longitude_deg:g}")
    return name


def is_open_sea(zone: str) -> bool:
    """Tell whether `zone_at` found the sea: there the zones of ships hold, 'Etc/GMT' and a whole number of hours."""
    return zone.startswith("Etc/")
