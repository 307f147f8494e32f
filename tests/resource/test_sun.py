from __future__ import annotations

import numpy as np
import pandas as pd
import pvlib
import pytest

from planner.resource import sun as sun_module
from planner.resource.sun import Place, altitude_from_grid, solar_days, standard_utc_offset_h, sun_of

PLACES = {
    "nairobi": Place(-1.286, 36.817, 1706, 3),
    "delhi 5.5": Place(28.6, 77.2, 222, 5.5),
    "kathmandu 5.75": Place(27.7, 85.3, 1400, 5.75),
    "south": Place(-33.5, -70.7, 520, -4),
    "dateline": Place(-18.14, 178.44, 0, 12),
    "beyond the dateline": Place(-13.8, -172.0, 10, 13),
    "polar": Place(70.0, 25.0, 50, 1),
    "foreign clock": Place(-10.0, 150.0, 10, 0),
}


@pytest.mark.parametrize("place", PLACES.values(), ids=PLACES.keys())
@pytest.mark.engine("pvlib", "sun by NREL's algorithm, each hour of a year, in the test", values=17520)
def test_mid_hour_sun_agrees_with_the_nrel_algorithm(place: Place) -> None:
    start = pd.Timestamp(sun_module.REFERENCE_YEAR, 1, 1, 0, 30, tz="UTC") - pd.Timedelta(hours=place.utc_offset_h)
    times = pd.date_range(start, periods=8760, freq="h")
    exact = pvlib.solarposition.spa_python(times, place.latitude_deg, place.longitude_deg)
    sun = sun_of(place)
    assert np.abs(sun.zenith_deg - exact["zenith"]).max() < 0.012
    turn = (sun.azimuth_deg - exact["azimuth"] + 180) % 360 - 180
    # An error in azimuth moves the sun by its sine of zenith only.
    assert np.abs(turn * np.sin(np.radians(exact["zenith"]))).max() < 0.012


@pytest.mark.parametrize("place", PLACES.values(), ids=PLACES.keys())
def test_solar_days_hold_the_sun_in_their_middle(place: Place) -> None:
    sun = sun_of(place)
    days = solar_days(sun.extraterrestrial_horizontal_wh_m2, sun)
    assert days.sum() == pytest.approx(sun.extraterrestrial_horizontal_wh_m2.sum(), rel=1e-12)
    centre = (days.sum(axis=0) @ (np.arange(24) + 0.5)) / days.sum()
    assert abs(centre - 12) < 0.6


def test_arrays_are_of_one_year() -> None:
    sun = sun_of(PLACES["nairobi"])
    assert sun.month[0] == 0
    assert sun.month[-1] == 11
    assert np.bincount(sun.month).tolist() == [744, 672, 744, 720, 744, 720, 744, 744, 720, 744, 720, 744]
    assert sun.hour[:25].tolist() == [*range(24), 0]
    assert sun.day_of_year[[0, 23, 24, 8759]].tolist() == [1, 1, 2, 365]
    for name in ("zenith_deg", "azimuth_deg", "extraterrestrial_normal_w_m2", "clear_sky_ghi_w_m2"):
        values = getattr(sun, name)
        assert values.shape == (8760,)
        assert np.isfinite(values).all(), name


def test_polar_night_has_no_radiation() -> None:
    sun = sun_of(PLACES["polar"])
    december = sun.month == 11
    assert sun.extraterrestrial_horizontal_wh_m2[december].sum() == 0
    assert sun.clear_sky_ghi_w_m2[december].max() < 1
    assert (sun.extraterrestrial_horizontal_wh_m2[sun.month == 5] > 0).all()


@pytest.mark.parametrize(
    ("zone", "offset_h"),
    [
        ("Africa/Nairobi", 3),
        ("Asia/Kolkata", 5.5),
        ("Asia/Kathmandu", 5.75),
        ("Asia/Yangon", 6.5),
        ("Europe/Berlin", 1),  # summer time in July
        ("America/Santiago", -4),  # summer time in January
        ("Australia/Adelaide", 9.5),  # summer time in January, half hour
        ("Pacific/Chatham", 12.75),
        ("+05:45", 5.75),
        ("-03:30", -3.5),
        ("UTC+7", 7),
        ("UTC", 0),
    ],
)
def test_standard_offset(zone: str, offset_h: float) -> None:
    assert standard_utc_offset_h(zone) == offset_h


@pytest.mark.parametrize("zone", ["Africa/Nairobbi", "Africa", "../etc/passwd", "", "+15:00", "5.5"])
def test_unknown_zone_is_refused(zone: str) -> None:
    with pytest.raises(ValueError, match=r"time zone .*(not known|offsets run)"):
        standard_utc_offset_h(zone)


def test_near_zone_is_suggested() -> None:
    with pytest.raises(ValueError, match="did you mean 'Africa/Nairobi'"):
        standard_utc_offset_h("Africa/Nairobbi")


def test_altitude_is_never_below_the_sea() -> None:
    assert altitude_from_grid(-1.286, 36.817) == pytest.approx(1706, abs=2)  # pvlib's grid, regression
    assert altitude_from_grid(31.5, 35.5) == 0  # the grid has -170 there
