"""Time zones by position, and positions that no borehole can have."""

from __future__ import annotations

import subprocess
import sys
import zoneinfo

import pytest
import tzfpy

from planner.resource.position import at_sea, position_fault
from planner.resource.zones import is_open_sea, zone_at


@pytest.mark.parametrize(
    ("latitude", "longitude", "zone"),
    [
        (-16.0, 28.0, "Africa/Lusaka"),
        (27.7, 85.3, "Asia/Kathmandu"),
        (-1.3, 36.8, "Africa/Nairobi"),
        (-8.52, 179.2, "Pacific/Funafuti"),
    ],
)
def test_zone_of_a_place(latitude: float, longitude: float, zone: str) -> None:
    assert zone_at(latitude, longitude) == zone
    assert not at_sea(latitude, longitude)
    assert position_fault(latitude, longitude) == ""


def test_every_zone_of_the_map_is_one_of_the_database() -> None:
    assert set(tzfpy.timezonenames()) <= zoneinfo.available_timezones()


def test_no_zone_off_the_globe() -> None:
    with pytest.raises(ValueError, match="no time zone is known for latitude -120, longitude 28"):
        zone_at(-120, 28)


def test_the_sea() -> None:
    assert is_open_sea(zone_at(0, -30))
    assert at_sea(0, -30)


@pytest.mark.parametrize(
    ("latitude", "longitude", "words"),
    [
        (-120, 28, "from -90 to 90 and from -180 to 180: more than 90 can only be a longitude, so the two may have"),
        (28, 200, "latitude 28, longitude 200: must be from -90 to 90 and from -180 to 180"),
        (float("nan"), 3, "must be from -90 to 90"),
        (-1.5, -28, "lies in the open sea: longitude 28 would be on or near land (Africa/"),
        (78.22, 15.65, ""),
        (36.8, -1.3, "lies in the open sea: swapped, latitude -1.3 and longitude 36.8 lie on or near land (Africa/Nai"),
        (-45, -120, "lies in the open sea: "),
    ],
)
def test_what_is_said_of_a_position(latitude: float, longitude: float, words: str) -> None:
    said = position_fault(latitude, longitude)
    assert words in said
    assert bool(words) == bool(said)


def test_where_nothing_else_fits_both_figures_are_to_be_looked_at() -> None:
    assert position_fault(0, -160).endswith("look at both figures and at their signs, south and west negative")


def test_the_map_of_zones_is_not_loaded_until_it_is_asked() -> None:
    code = "import sys, planner.study.site, planner.resource.position; sys.exit('tzfpy' in sys.modules)"
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0
