"""Places and typical years shared by the tests of the weather."""

from __future__ import annotations

from pathlib import Path

import pvlib
import pytest

from planner.resource.files import read_weather_file
from planner.resource.sun import Place, Sun, sun_of
from planner.resource.years import WeatherYears

PVLIB_DATA = Path(pvlib.__file__).parent / "data"
GREENSBORO = Place(36.1, -79.95, 273.0, -5.0)


@pytest.fixture(scope="session")
def greensboro() -> Place:
    return GREENSBORO


@pytest.fixture(scope="session")
def typical_year() -> WeatherYears:
    """The TMY3 year that pvlib ships."""
    return read_weather_file(PVLIB_DATA / "723170TYA.CSV", GREENSBORO)


@pytest.fixture(scope="session")
def sahel() -> Place:
    return Place(12.4, -1.5, 306.0, 0.0)


@pytest.fixture(scope="session")
def sahel_sun(sahel: Place) -> Sun:
    return sun_of(sahel)
