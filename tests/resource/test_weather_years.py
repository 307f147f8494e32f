from __future__ import annotations

import dataclasses

import numpy as np
import pvlib
import pytest

from planner.resource.sun import Place, Sun
from planner.resource.synthetic import synthetic_years
from planner.resource.years import WeatherYears, plane_irradiance, split_beam


def test_horizontal_plane_gets_the_global_irradiance(typical_year: WeatherYears) -> None:
    flat = plane_irradiance(typical_year, 0.0, 180.0)
    height = np.cos(np.radians(typical_year.sun.zenith_deg))[:, None]
    closed = typical_year.dni_w_m2 * np.maximum(height, 0) + typical_year.dhi_w_m2
    high = typical_year.sun.zenith_deg < 85  # nearer the horizon the file's own parts do not close
    np.testing.assert_allclose(flat[high], closed[high], rtol=1e-9, atol=1e-9)
    assert flat.sum() == pytest.approx(typical_year.ghi_w_m2.sum(), rel=0.002)


@pytest.mark.parametrize("model", ["haydavies", "perez-driesse"])
@pytest.mark.parametrize(("tilt", "azimuth"), [(36.1, 180.0), (60.0, 250.0), (90.0, 0.0), (10.0, 95.0)])
@pytest.mark.engine("pvlib", "irradiance on a tilted plane, each hour with the sun up, in the test")
def test_plane_is_that_of_pvlib(typical_year: WeatherYears, model: str, tilt: float, azimuth: float) -> None:
    year, sun = typical_year, typical_year.sun
    expected = pvlib.irradiance.get_total_irradiance(
        tilt, azimuth, sun.zenith_deg, sun.azimuth_deg,
        year.dni_w_m2[:, 0], year.ghi_w_m2[:, 0], year.dhi_w_m2[:, 0],
        dni_extra=sun.extraterrestrial_normal_w_m2, airmass=pvlib.atmosphere.get_relative_airmass(sun.zenith_deg),
        albedo=0.3, model=model,
    )["poa_global"]  # fmt: skip
    got = plane_irradiance(year, tilt, azimuth, 0.3, model)[:, 0]  # type: ignore[arg-type]
    up = sun.zenith_deg < 89
    np.testing.assert_allclose(got[up], expected[up], rtol=1e-9, atol=1e-6)
    assert np.isfinite(got).all()
    assert got.min() >= 0


def test_years_are_independent_columns(sahel: Place, sahel_sun: Sun) -> None:
    weather = synthetic_years(sahel, sahel_sun, [5.5] * 12, [28.0] * 12, None, years=3, seed=4)
    second = dataclasses.replace(
        weather,
        **{
            name: getattr(weather, name)[:, 1:2]
            for name in ("ghi_w_m2", "dni_w_m2", "dhi_w_m2", "temperature_c", "wind_m_s")
        },
    )
    for model in ("haydavies", "perez-driesse"):
        together = plane_irradiance(weather, 15, 180, model=model)  # type: ignore[arg-type]
        alone = plane_irradiance(second, 15, 180, model=model)  # type: ignore[arg-type]
        np.testing.assert_allclose(together[:, 1:2], alone, rtol=1e-12)


@pytest.mark.parametrize("model", ["haydavies", "perez-driesse"])
def test_dusk_is_an_even_sky(typical_year: WeatherYears, model: str) -> None:
    """With the sun under the horizon what light there is comes from the whole sky."""
    dark, dusk = np.zeros_like(typical_year.ghi_w_m2), (typical_year.sun.zenith_deg > 90)[:, None]
    light = np.where(dusk, 4.0, 0.0)
    evening = dataclasses.replace(typical_year, ghi_w_m2=light, dni_w_m2=dark, dhi_w_m2=light)
    got = plane_irradiance(evening, 60, 180, 0.2, model)  # type: ignore[arg-type]
    np.testing.assert_allclose(got[dusk], 4 * (1 + 0.5) / 2 + 4 * 0.2 * (1 - 0.5) / 2)


def test_unknown_sky_is_refused(typical_year: WeatherYears) -> None:
    with pytest.raises(ValueError, match="sky model 'klucher' is not one of"):
        plane_irradiance(typical_year, 10, 180, model="klucher")  # type: ignore[arg-type]


def test_no_light_gives_nothing(typical_year: WeatherYears) -> None:
    dark = np.zeros_like(typical_year.ghi_w_m2)
    night = dataclasses.replace(typical_year, ghi_w_m2=dark, dni_w_m2=dark, dhi_w_m2=dark)
    assert plane_irradiance(night, 20, 180).sum() == 0


def test_split_closes(typical_year: WeatherYears) -> None:
    dni, dhi = split_beam(typical_year.ghi_w_m2, typical_year.sun)
    height = np.cos(np.radians(typical_year.sun.zenith_deg))[:, None]
    np.testing.assert_allclose(dni * height + dhi, typical_year.ghi_w_m2, atol=1e-9)
    assert dni.min() >= 0
    low = typical_year.sun.zenith_deg > 87
    np.testing.assert_array_equal(dhi[low], typical_year.ghi_w_m2[low])


def test_monthly_table(typical_year: WeatherYears) -> None:
    table = typical_year.monthly_table()
    # Monthly sums of the file itself divided by the days: July 188.58 kWh/m2.
    assert table["ghi_kwh_m2_day"][6] == pytest.approx(188.58 / 31, abs=0.001)
    assert table["temperature_min_c"].min() == -16.7
    assert table["temperature_max_c"].max() == 35.6
    assert table["temperature_mean_c"][0] == pytest.approx(0.33, abs=0.005)
    assert table["clearness"][5] == pytest.approx(0.541, abs=0.003)
    assert np.average(table["clearness_spread"]) == pytest.approx(0.154, abs=0.005)
    assert {values.shape for values in table.values()} == {(12,)}
    np.testing.assert_array_equal(table["ghi_lowest_year_kwh_m2_day"], table["ghi_highest_year_kwh_m2_day"])
