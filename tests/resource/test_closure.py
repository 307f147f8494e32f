from __future__ import annotations

import dataclasses

import numpy as np
import pytest

from planner.resource.closure import (
    Closure,
    closure_offset_minutes,
    daily_clearness_spread,
    plausibility_notes,
)
from planner.resource.sun import Place, Sun
from planner.resource.synthetic import synthetic_years
from planner.resource.years import WeatherYears


def parts(year: WeatherYears) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    return year.ghi_w_m2, year.dni_w_m2, year.dhi_w_m2


def test_right_clock_is_not_remarked_on(typical_year: WeatherYears, greensboro: Place) -> None:
    found = closure_offset_minutes(*parts(typical_year), greensboro)
    assert found.offset_minutes == 0
    assert found.residual_w_m2 < 3
    assert found.note() is None
    alone = closure_offset_minutes(typical_year.ghi_w_m2, None, None, greensboro)
    assert abs(alone.offset_minutes) <= 30
    assert alone.note() is None


@pytest.mark.parametrize("hours", [-7, -1, 1, 2])
@pytest.mark.parametrize("with_parts", [True, False])
def test_shifted_hours_are_found(typical_year: WeatherYears, greensboro: Place, hours: int, with_parts: bool) -> None:
    ghi, dni, dhi = (np.roll(values, hours, axis=0) for values in parts(typical_year))
    found = closure_offset_minutes(ghi, dni if with_parts else None, dhi if with_parts else None, greensboro)
    assert found.offset_minutes == -60 * hours
    note = found.note()
    assert note is not None
    assert f"{abs(hours)} hour" in note
    assert ("earlier" if hours > 0 else "later") in note


def test_half_hour_is_found(typical_year: WeatherYears, greensboro: Place) -> None:
    clock = dataclasses.replace(greensboro, utc_offset_h=-4.5)
    found = closure_offset_minutes(*parts(typical_year), clock)
    assert found.offset_minutes == 30
    assert "30 minutes later" in str(found.note())
    labelled = closure_offset_minutes(*parts(typical_year), clock, utc_offset_h=-5.0)
    assert labelled.offset_minutes == 0
    end_of_hour = closure_offset_minutes(*parts(typical_year), greensboro, middle_minute=-30.0)
    assert end_of_hour.offset_minutes == 60


def test_wrong_sign_of_longitude_is_found(typical_year: WeatherYears, greensboro: Place) -> None:
    wrong = dataclasses.replace(greensboro, longitude_deg=79.95)
    found = closure_offset_minutes(*parts(typical_year), wrong)
    # Twice 79.95 degrees are 10.66 hours; whole hours are tried out there.
    assert found.offset_minutes == -660
    assert "sign of the longitude" in str(found.note())


def test_several_years_close_together(sahel: Place, sahel_sun: Sun) -> None:
    weather = synthetic_years(sahel, sahel_sun, [5.5] * 12, [28.0] * 12, None, years=4, seed=1)
    found = closure_offset_minutes(*parts(weather), sahel)
    assert found.offset_minutes == 0
    assert found.residual_w_m2 < 1e-4


def test_plausibility(typical_year: WeatherYears) -> None:
    sun, ghi = typical_year.sun, typical_year.ghi_w_m2
    assert plausibility_notes(ghi, sun) == []
    assert "more than a cloudless sky" in plausibility_notes(1.6 * ghi, sun)[0]
    assert "under a fifth" in plausibility_notes(0.3 * ghi, sun)[0]
    smooth = 0.55 * sun.extraterrestrial_horizontal_wh_m2[:, None]
    assert "looks smoothed" in plausibility_notes(smooth, sun)[0]


def test_spread_of_days(typical_year: WeatherYears) -> None:
    spread = daily_clearness_spread(typical_year.ghi_w_m2, typical_year.sun)
    # Standard deviation of days about their month in this file, regression value 0.154.
    assert spread.mean() == pytest.approx(0.154, abs=0.005)
    smooth = 0.55 * typical_year.sun.extraterrestrial_horizontal_wh_m2[:, None]
    assert daily_clearness_spread(smooth, typical_year.sun).max() < 1e-9


def test_no_remark_where_no_sun_fits_much_better() -> None:
    assert Closure(40, 50.0, 58.0, False).note() is None
    assert Closure(40, 50.0, 65.0, False).note() is not None
    assert Closure(60, 140.0, 143.0, True).note() is None
    assert Closure(60, 140.0, 150.0, True).note() is not None
