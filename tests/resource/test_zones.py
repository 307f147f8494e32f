"""A time zone that is not known is answered by one that is right, never by the nearest letters."""

from __future__ import annotations

import zoneinfo
from datetime import datetime, timedelta

import pytest

from planner.resource.sun import standard_utc_offset_h
from planner.resource.zones import ABBREVIATIONS

# Standard offsets of the abbreviations, from memory.
OFFSET_H = {
    "EAT": 3, "CAT": 2, "WAT": 1, "SAST": 2, "PKT": 5, "NPT": 5.75, "ICT": 7, "WIB": 7, "WITA": 8, "WIT": 9, "PET": -5,
    "COT": -5, "BOT": -4, "VET": -4, "BRT": -3, "ART": -3, "MSK": 3, "GST": 4, "AFT": 4.5, "UZT": 5, "BTT": 6,
    "MMT": 6.5, "SGT": 8, "HKT": 8, "JST": 9, "KST": 9, "PGT": 10, "AEST": 10, "AWST": 8, "ACST": 9.5, "NZST": 12,
    "MUT": 4, "CVT": -1, "CLT": -4, "ECT": -5, "IRST": 3.5, "SLST": 5.5, "TLT": 9,
    "CEST": 1, "EDT": -5, "PHT": 8, "PYT": -4,
}  # fmt: skip


@pytest.mark.parametrize("abbreviation", sorted(ABBREVIATIONS))
def test_every_zone_suggested_exists_and_has_the_abbreviations_clock(abbreviation: str) -> None:
    """Of an abbreviation used in several lands the zones are told with their lands, whatever their clocks."""
    offsets_h = [standard_utc_offset_h(zone) for zone in ABBREVIATIONS[abbreviation]]
    assert len(offsets_h) > 1 or offsets_h == [OFFSET_H[abbreviation]]


@pytest.mark.parametrize(
    ("given", "said"),
    [
        ("EAT", "EAT is an abbreviation, not a zone: write region and city, such as 'Africa/Nairobi'"),
        ("cat", "such as 'Africa/Lusaka'"),
        ("IST", "such as 'Asia/Kolkata' or 'Asia/Jerusalem'"),
        ("XYZT", "an abbreviation is not a zone: write region and city, or the offset"),
        ("GMT+3", "for an offset write '+03:00'"),
        ("GMT-4:30", "for an offset write '-04:30'"),
        ("3", "write '+03:00' (east) or '-03:00' (west)"),
        ("Nairobi", "did you mean 'Africa/Nairobi'?"),
        ("Dar es Salaam", "did you mean 'Africa/Dar_es_Salaam'?"),
        ("africa/nairobi ", "did you mean 'Africa/Nairobi'?"),
        ("Asia/Kathmando", "did you mean 'Asia/Kathmandu'?"),
    ],
)
def test_what_to_write_is_said(given: str, said: str) -> None:
    with pytest.raises(ValueError, match="is not known") as caught:
        standard_utc_offset_h(given)
    assert said in str(caught.value)
    assert len(str(caught.value)) < 300


def test_an_offset_from_greenwich_is_never_answered_by_its_opposite() -> None:
    """'Etc/GMT+3' lies west of Greenwich: the nearest letters are six hours off."""
    with pytest.raises(ValueError, match="is not known") as caught:
        standard_utc_offset_h("GMT+3")
    assert "Etc" not in str(caught.value)
    assert datetime(2022, 1, 1, tzinfo=zoneinfo.ZoneInfo("Etc/GMT+3")).utcoffset() == timedelta(hours=-3)
