"""The place and the sun above it: geometry of one non-leap year in local standard time."""

from __future__ import annotations

import calendar
import re
import warnings
import zoneinfo
from dataclasses import dataclass
from datetime import datetime, timedelta

import numpy as np
import pandas as pd
import pvlib
from numpy.typing import NDArray

from planner.resource.zones import zone_advice

Array = NDArray[np.float64]
Whole = NDArray[np.int64]

HOURS_PER_YEAR = 8760
DAYS_PER_MONTH = np.array([31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31])
MONTH_OF_DAY = np.repeat(np.arange(12), DAYS_PER_MONTH)
FIRST_DAY_OF_MONTH = np.concatenate(([0], np.cumsum(DAYS_PER_MONTH)[:-1]))
MONTH_NAMES = tuple(calendar.month_name)[1:]
REFERENCE_YEAR = 2022
"""Half way between two leap years, so that its sun stands nearest to the sun of the average year."""
SAMPLE_MINUTES = 10


@dataclass(frozen=True)
class Place:
    """A place on the map and its clock.

    Attributes
    ----------
    latitude_deg, longitude_deg : float
        North and east positive.
    altitude_m : float
        Ground level above the sea.
    utc_offset_h : float
        Fixed offset of local standard time; half and quarter hours are fine.
    """

    latitude_deg: float
    longitude_deg: float
    altitude_m: float
    utc_offset_h: float


@dataclass(frozen=True, eq=False)
class Sun:
    """The sun of an 8,760-hour year: labels begin the hour, positions are those of mid-hour; arrays of (8760,).

    Attributes
    ----------
    zenith_deg, azimuth_deg : ndarray
        Without refraction; azimuth clockwise from north.
    day_of_year, month, hour : ndarray of int
        1..365, 0..11 and 0..23.
    extraterrestrial_normal_w_m2 : ndarray
        On a plane facing the sun, above the air.
    extraterrestrial_horizontal_wh_m2 : ndarray
        On a horizontal plane above the air, the mean of ten-minute samples of the hour.
    clear_sky_ghi_w_m2 : ndarray
        Ineichen clear sky with the Linke turbidity of pvlib's world grid. A guide, never a bound: the turbidity
        grid is too hazy in places such as the Sahel.
    clock_ahead_h : int
        Whole hours by which the clock runs ahead of the sun.
    """

    zenith_deg: Array
    azimuth_deg: Array
    day_of_year: Whole
    month: Whole
    hour: Whole
    extraterrestrial_normal_w_m2: Array
    extraterrestrial_horizontal_wh_m2: Array
    clear_sky_ghi_w_m2: Array
    clock_ahead_h: int


def altitude_from_grid(latitude_deg: float, longitude_deg: float) -> float:
    """Ground level in m from pvlib's world grid; the sea's depth and other values below zero count as 0."""
    return max(0.0, float(pvlib.location.lookup_altitude(latitude_deg, longitude_deg)))


def standard_utc_offset_h(time_zone: str) -> float:
    """Offset of a time zone's standard time, summer time left out.

    Parameters
    ----------
    time_zone : str
        IANA name such as 'Africa/Nairobi', or a fixed offset such as '+05:45'.

    Returns
    -------
    float
        Hours, east positive.

    Raises
    ------
    ValueError
        If the name is not a known zone or the offset lies outside -12:00..+14:00.
    """
    fixed = re.fullmatch(r"(?:UTC)?([+-])(\d{1,2}):?([0-5]\d)?", time_zone.strip())
    if fixed:
        size = int(fixed[2]) + int(fixed[3] or 0) / 60
        offset_h = -size if fixed[1] == "-" else size
        if not -12 <= offset_h <= 14:
            raise ValueError(f"time zone {time_zone!r}: offsets run from -12:00 to +14:00")
        return offset_h
    try:
        zone = zoneinfo.ZoneInfo(time_zone)
    except (zoneinfo.ZoneInfoNotFoundError, ValueError, OSError):
        advice = zone_advice(time_zone)
        raise ValueError(
            f"time zone {time_zone[:80]!r} is not known: give an IANA name such as 'Africa/Nairobi' "
            f"or an offset such as '+05:45'{'; ' if advice else ''}{advice}"
        ) from None
    # January and July between them always hold a day of standard time, whichever hemisphere.
    offsets = [datetime(REFERENCE_YEAR, month, 1, 12, tzinfo=zone).utcoffset() or timedelta() for month in (1, 7)]
    # Clocks go forward in summer, so the smaller offset is standard time; a zone may call it a negative winter shift.
    return min(offsets) / timedelta(hours=1)


def sun_position(place: Place, first_minute: float, step_minutes: int) -> pd.DataFrame:
    """Sun positions through the year by pvlib's `ephemeris` (within about 0.01 deg of the NREL algorithm).

    Parameters
    ----------
    place : Place
        Where.
    first_minute : float
        Minutes of local standard time from the start of 1 January to the first position.
    step_minutes : int
        Distance of positions; a divisor of 60.

    Returns
    -------
    pandas.DataFrame
        `zenith`, `apparent_zenith`, `azimuth` in degrees, 525600 / step_minutes rows.
    """
    start = pd.Timestamp(REFERENCE_YEAR, 1, 1, tz="UTC")
    start += pd.Timedelta(seconds=round(60 * (first_minute - 60 * place.utc_offset_h)))
    times = pd.date_range(start, periods=HOURS_PER_YEAR * 60 // step_minutes, freq=f"{step_minutes}min")
    with warnings.catch_warnings():
        # pvlib asks for DatetimeIndex.dayofyear, which pandas 3 announces to rename.
        warnings.simplefilter("ignore", DeprecationWarning)
        position: pd.DataFrame = pvlib.solarposition.ephemeris(times, place.latitude_deg, place.longitude_deg)
    return position


def sun_height(place: Place, first_minute: float, step_minutes: int) -> Array:
    """Cosine of the zenith angle through the year, 0 below the horizon; see `sun_position`."""
    zenith = sun_position(place, first_minute, step_minutes)["zenith"].to_numpy()
    return np.asarray(np.clip(np.cos(np.radians(zenith)), 0.0, None))


def extraterrestrial_normal(step_minutes: int = 60) -> Array:
    """Extraterrestrial normal irradiance (Spencer 1971, pvlib) in W/m2 for each step of the year."""
    daily = pvlib.irradiance.get_extra_radiation(np.arange(1, 366))
    return np.repeat(np.asarray(daily, dtype=np.float64), 1440 // step_minutes)


def sun_of(place: Place) -> Sun:
    """Lay out the sun of one year over a place.

    Parameters
    ----------
    place : Place
        Where, and by which clock.

    Returns
    -------
    Sun
        Geometry, extraterrestrial and clear-sky irradiance.

    Notes
    -----
    Clear sky: Ineichen and Perez 2002, Solar Energy 73:151-157, as in `pvlib.clearsky.ineichen`.
    """
    days = np.repeat(np.arange(365), 24)
    position = sun_position(place, 30.0, 60)
    samples = sun_height(place, SAMPLE_MINUTES / 2, SAMPLE_MINUTES)
    normal = extraterrestrial_normal()
    return Sun(
        zenith_deg=position["zenith"].to_numpy(),
        azimuth_deg=position["azimuth"].to_numpy(),
        day_of_year=days + 1,
        month=MONTH_OF_DAY[days],
        hour=np.tile(np.arange(24), 365),
        extraterrestrial_normal_w_m2=normal,
        extraterrestrial_horizontal_wh_m2=normal * samples.reshape(HOURS_PER_YEAR, -1).mean(axis=1),
        clear_sky_ghi_w_m2=_clear_sky_ghi(place, position["apparent_zenith"].to_numpy(), normal),
        clock_ahead_h=(round(place.utc_offset_h - place.longitude_deg / 15) + 12) % 24 - 12,
    )


def _clear_sky_ghi(place: Place, apparent_zenith_deg: Array, normal_w_m2: Array) -> Array:
    noon = pd.date_range(f"{REFERENCE_YEAR}-01-01 12:00", periods=365, freq="D", tz="UTC")
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", DeprecationWarning)  # as in sun_position
        daily = pvlib.clearsky.lookup_linke_turbidity(noon, place.latitude_deg, place.longitude_deg)
    turbidity, up = np.repeat(daily.to_numpy(), 24), apparent_zenith_deg < 90
    air_mass = pvlib.atmosphere.get_absolute_airmass(
        pvlib.atmosphere.get_relative_airmass(apparent_zenith_deg[up]), pvlib.atmosphere.alt2pres(place.altitude_m)
    )
    clear = pvlib.clearsky.ineichen(apparent_zenith_deg[up], air_mass, turbidity[up], place.altitude_m, normal_w_m2[up])
    ghi = np.zeros(HOURS_PER_YEAR)
    ghi[up] = clear["ghi"]
    return ghi


def hours_to_months(hourly: Array) -> Array:
    """Sum (8760, ...) values of the hours to (12, ...) values of the months."""
    return np.asarray(np.add.reduceat(hourly, 24 * FIRST_DAY_OF_MONTH, axis=0))


def solar_days(hourly: Array, sun: Sun) -> Array:
    """Arrange (8760,) or (8760, n) hours in (365, 24) or (365, 24, n) days that begin at solar midnight.

    The year is closed to a ring, so that a clock far from the sun's own cuts no day in two.
    """
    return np.roll(hourly, -sun.clock_ahead_h, axis=0).reshape(365, 24, *hourly.shape[1:])
