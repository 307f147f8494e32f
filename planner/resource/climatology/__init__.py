"""Twelve means of irradiation and air temperature for any place on land, from a coarse open climatology kept here.

The tables are made by `planner.resource.climatology.derive`; where they come from and their licences stand in
ATTRIBUTION.txt beside them.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from planner.text import text

Array = NDArray[np.float64]

STEP_DEG = 3.0
SOUTH_DEG, NORTH_DEG = -57.0, 72.0
"""Cells have their centres at whole multiples of the step; longitudes run from -180 to 177."""
GHI_UNIT_KWH_M2_DAY, TEMPERATURE_UNIT_K = 0.04, 0.5
"""Units of the integers that the tables hold."""
NO_GHI, NO_TEMPERATURE = 255, -128
LAPSE_K_PER_M = 0.0065
"""ISO 2533:1975, the standard atmosphere: temperature falls by 6.5 K for each km of height."""
REDUCTION = 0.9
"""What is taken of the tables' irradiation, to stand on the careful side. Against the three typical years that pvlib
ships (TMY3 703165 at 55 N and 723170 at 36 N, TMY2 12839 at 26 N) the tables give 1.11, 1.11 and 1.01 times the
irradiation of the year, single months 0.77 to 1.40 times; with 0.9 no year is above the measured one, though single
months still are."""
MONTH_TOO_BRIGHT = 1.26
"""What the reduced irradiation of a month was at most of that measured, in the 36 months of these years."""
TABLES = Path(__file__).with_name("tables.npz")


class NoClimatology(ValueError):
    """The tables have nothing for a place; the text says what to do."""


@dataclass(frozen=True, eq=False)
class Climatology:
    """Twelve monthly means of a place, January to December, arrays of (12,).

    Attributes
    ----------
    ghi_kwh_m2_day : ndarray
        Daily global horizontal irradiation, reduced to the careful side, as a design may use it.
    ghi_as_tabled_kwh_m2_day : ndarray
        The same as the tables give it, against which other figures are compared.
    temperature_c : ndarray
        Air temperature at the altitude asked for.
    """

    ghi_kwh_m2_day: Array
    ghi_as_tabled_kwh_m2_day: Array
    temperature_c: Array


class Tables(NamedTuple):
    """Means by cell, (latitudes, longitudes, 12), NaN where there are none; temperatures reduced to sea level."""

    ghi_kwh_m2_day: Array
    sea_level_temperature_c: Array


@cache
def tables() -> Tables:
    """Read the tables; once in a process."""
    with np.load(TABLES, allow_pickle=False) as held:
        ghi, temperature = held["ghi"], held["temperature"]
    return Tables(
        np.where(ghi == NO_GHI, np.nan, GHI_UNIT_KWH_M2_DAY * ghi),
        np.where(temperature == NO_TEMPERATURE, np.nan, TEMPERATURE_UNIT_K * temperature),
    )


def estimate_note() -> str:
    """Say what everything made with an estimate must say."""
    return text("weather_note.estimate", dull=100 * (1 - 1 / MONTH_TOO_BRIGHT))


def estimate_source() -> str:
    """Say where an estimate comes from; the terms of the sources ask for it."""
    return text("weather_source.estimate", percent=100 * REDUCTION)


def climatology_at(latitude_deg: float, longitude_deg: float, altitude_m: float) -> Climatology:
    """Take twelve monthly means of a place from the tables.

    Parameters
    ----------
    latitude_deg, longitude_deg : float
        North and east positive.
    altitude_m : float
        Ground level above the sea, to which the temperature is brought.

    Returns
    -------
    Climatology
        Bilinear between the centres of the four cells about the place; cells without data count for nothing.

    Raises
    ------
    NoClimatology
        If none of the four cells has data, so that the nearest is more than 3 degrees away: at sea, on islands far
        from any land, and beyond 57 S and 72 N.
    """
    north = (latitude_deg - SOUTH_DEG) / STEP_DEG
    east = (longitude_deg + 180.0) / STEP_DEG
    ghi, temperature = tables()
    rows, columns = ghi.shape[:2]
    row, column = int(np.floor(north)), int(np.floor(east))
    sums, weight = np.zeros((2, 12)), 0.0
    for i, by_row in ((row, 1 - (north - row)), (row + 1, north - row)):
        for j, by_column in ((column, 1 - (east - column)), (column + 1, east - column)):
            if 0 <= i < rows and by_row * by_column > 0 and np.isfinite(ghi[i, j % columns, 0]):
                weight += by_row * by_column
                sums += by_row * by_column * np.stack((ghi[i, j % columns], temperature[i, j % columns]))
    if weight == 0:
        raise NoClimatology(
            f"the climatology has nothing for latitude {latitude_deg:g}, longitude {longitude_deg:g}: it covers land "
            f"and its coasts from {-SOUTH_DEG:g} S to {NORTH_DEG:g} N; give twelve monthly means or a weather file, "
            "and look at the signs of latitude and longitude"
        )
    as_tabled, at_sea_level = sums / weight
    return Climatology(REDUCTION * as_tabled, as_tabled, at_sea_level - LAPSE_K_PER_M * altitude_m)
