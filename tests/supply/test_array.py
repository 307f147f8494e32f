"""The PV array against a direct pvlib calculation, and the controller's window."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import numpy as np
import pandas as pd
import pvlib
import pytest
from pydantic import ValidationError

from planner.resource.files import read_weather_file
from planner.resource.sun import Place
from planner.resource.years import WeatherYears, irradiance_behind_glass
from planner.scenario.solar import Module, Plane, Solar
from planner.scenario.waterworks import Controller
from planner.supply.array import ageing, array_power, module_power

MODULE = Module(
    power_w=280.8,
    voltage_mp_v=31.2,
    current_mp_a=9.0,
    voltage_oc_v=38.4,
    current_sc_a=9.55,
    current_sc_percent_per_k=0.05,
    voltage_oc_percent_per_k=-0.30,
)


def solar(**changes: object) -> Solar:
    values: dict[str, object] = {
        "module": MODULE,
        "modules_in_series": 10,
        "strings": 1,
        "planes": [Plane(tilt_deg=25.8, azimuth_deg=180)],
        "soiling_percent": 0.0,
        "mismatch_percent": 0.0,
        "wiring_percent": 0.0,
        "light_induced_percent": 0.0,
        "reflection": "none",
    }
    return Solar(**(values | changes))  # type: ignore[arg-type]


@pytest.fixture(scope="module")
def miami() -> WeatherYears:
    """Miami's typical year that ships inside pvlib."""
    path = Path(pvlib.__file__).parent / "data" / "12839.tm2"
    return read_weather_file(path, Place(25.8, -80.26667, 2.0, -5.0))


def test_rated_power_at_standard_test_conditions() -> None:
    best, held = module_power(MODULE, np.array([1000.0]), np.array([25.0]))
    # Batzelis' closed form is exact at STC within its own parameter estimation (about 0.2 %).
    assert best[0] == pytest.approx(280.8, rel=0.003)
    assert held[0] == best[0]


@pytest.mark.engine("pvlib", "yield of an array over a typical year, step by step in the test", values=1)
def test_a_real_typical_year_agrees_with_a_direct_pvlib_calculation(miami: WeatherYears) -> None:
    """Whole solar side on Miami TMY2 against pvlib called step by step (Hay-Davies, Faiman, De Soto diode)."""
    plain = solar(sky_model="haydavies")
    ours = array_power(plain, Controller(), miami).string_w[:, 0].sum() / 1000

    path = Path(pvlib.__file__).parent / "data" / "12839.tm2"
    data, meta = pvlib.iotools.read_tmy2(path)
    middle = data.index + np.timedelta64(30, "m")  # this reader labels the start of the hour
    sun = pvlib.solarposition.get_solarposition(middle, meta["latitude"], meta["longitude"], meta["altitude"])
    plane = pvlib.irradiance.get_total_irradiance(
        25.8,
        180,
        sun["zenith"].to_numpy(),
        sun["azimuth"].to_numpy(),
        data["DNI"].to_numpy(),
        data["GHI"].to_numpy(),
        data["DHI"].to_numpy(),
        dni_extra=pvlib.irradiance.get_extra_radiation(middle.day_of_year.to_numpy()),
        albedo=0.2,
        model="haydavies",
    )
    in_plane = np.nan_to_num(np.asarray(plane["poa_global"])).clip(0)
    cell = pvlib.temperature.faiman(in_plane, data["DryBulb"].to_numpy() / 10, data["Wspd"].to_numpy() / 10)
    plate = (31.2, 9.0, 38.4, 9.55, 0.0005 * 9.55, -0.003 * 38.4)
    fit = pvlib.ivtools.sdm.fit_desoto_batzelis(*plate)
    light = in_plane > 1
    diode = pvlib.pvsystem.calcparams_desoto(
        in_plane[light],
        cell[light],
        alpha_sc=plate[4],
        a_ref=fit["a_ref"],
        I_L_ref=fit["I_L_ref"],
        I_o_ref=fit["I_o_ref"],
        R_sh_ref=fit["R_sh_ref"],
        R_s=fit["R_s"],
    )
    theirs = 10 * pvlib.pvsystem.singlediode(*diode)["p_mp"].sum() / 1000
    # 0.5 %: closed-form maximum power point against the solved diode equation.
    assert ours == pytest.approx(theirs, rel=0.005)
    # In the plane 1886.7 kWh/m2 a year (computed once with pvlib 0.16.1, Hay-Davies, albedo 0.2).
    assert array_power(plain, Controller(), miami).irradiance_w_m2.sum() / 1000 == pytest.approx(1886.7, rel=0.002)


def test_losses_multiply_and_planes_share(miami: WeatherYears) -> None:
    clean = array_power(solar(), Controller(), miami).string_w
    lossy = array_power(solar(mismatch_percent=2.0, wiring_percent=3.0), Controller(), miami).string_w
    np.testing.assert_allclose(lossy, clean * 0.98 * 0.97, rtol=1e-12)
    east, west = Plane(tilt_deg=20, azimuth_deg=90), Plane(tilt_deg=20, azimuth_deg=270)
    halves = [plane.model_copy(update={"share_percent": 50.0}) for plane in (east, west)]
    both = array_power(solar(planes=halves), Controller(), miami).string_w
    alone = [array_power(solar(planes=[plane]), Controller(), miami).string_w for plane in (east, west)]
    np.testing.assert_allclose(both, (alone[0] + alone[1]) / 2, rtol=1e-12)


def test_a_window_that_never_bites_changes_nothing_and_a_narrow_one_costs_energy(miami: WeatherYears) -> None:
    free = array_power(solar(), Controller(), miami)
    wide = array_power(solar(), Controller(dc_voltage_min_v=50.0, dc_voltage_max_v=600.0), miami)
    np.testing.assert_array_equal(free.string_w, wide.string_w)
    # Ten modules work near 270-310 V; a floor of 300 V bites in the hot hours, a ceiling of 260 V all day.
    floor = array_power(solar(), Controller(dc_voltage_min_v=300.0), miami)
    ceiling = array_power(solar(), Controller(dc_voltage_max_v=260.0), miami)
    for held in (floor, ceiling):
        assert held.window_hours[0] > 100
        assert (held.string_w <= free.string_w + 1e-9).all()
        lost = (free.string_w - held.string_w).sum() / 1000
        assert held.window_loss_kwh[0] == pytest.approx(lost, rel=1e-9)
    # Nothing at all where even the open-circuit voltage stays below the floor.
    assert array_power(solar(), Controller(dc_voltage_min_v=450.0), miami).string_w.max() == 0


def test_ageing_is_compound_and_starts_new() -> None:
    # 25 years at 0.5 % a year leave 0.88222 after 25 steps (compound); year 26 stands at that.
    share = ageing(solar(degradation_percent_per_year=0.5), 26)
    assert share[0] == 1
    assert share[25] == pytest.approx(0.88222, abs=5e-6)


@pytest.mark.parametrize(
    ("reflection", "shares"),
    [
        (
            "glass",
            {0: 1, 30: 0.9979, 50: 0.9798, 60: 0.9460, 65: 0.9128, 70: 0.8597, 75: 0.7741, 80: 0.6341, 85: 0.4009},
        ),
        ("coated_glass", {0: 1, 30: 0.9985, 50: 0.9860, 60: 0.9609, 65: 0.9345, 70: 0.8897, 75: 0.8124, 80: 0.6771}),
    ],
)
def test_reflection_of_the_beam(miami: WeatherYears, reflection: str, shares: dict[int, float]) -> None:
    """Fresnel and Bouguer's laws at glass with n = 1.526, 4 /m, 2 mm, and a coating of n = 1.29 (own closed form)."""
    sun = replace(miami.sun, zenith_deg=np.zeros(8760))
    beam = replace(miami, ghi_w_m2=np.full((8760, 1), 1e-9), dni_w_m2=np.full((8760, 1), 800.0), sun=sun)
    beam = replace(beam, dhi_w_m2=np.zeros((8760, 1)))
    for angle, share in shares.items():
        on_plane, passed = irradiance_behind_glass(beam, angle, 180.0, 0.0, "haydavies", reflection)  # type: ignore[arg-type]
        assert passed[0, 0] / on_plane[0, 0] == pytest.approx(share, abs=6e-5)


@pytest.mark.parametrize(
    ("tilt", "sky", "ground"),
    [(0, 0.9444, None), (10, 0.9484, 0.4212), (20, 0.9539, 0.6387), (30, 0.9577, 0.7597)],
)
def test_reflection_of_diffuse_light(miami: WeatherYears, tilt: float, sky: float, ground: float | None) -> None:
    """Marion 2017 with plain glass, computed with pvlib 0.16.1; an even sky with no sun in it."""
    even = np.full((8760, 1), 100.0)
    overcast = replace(miami, ghi_w_m2=even, dhi_w_m2=even, dni_w_m2=0 * even)
    dark, bright = (
        np.stack(irradiance_behind_glass(overcast, tilt, 180.0, albedo, "haydavies", "glass")) for albedo in (0.0, 0.9)
    )
    assert dark[1, 0] / dark[0, 0] == pytest.approx(sky, abs=6e-5)
    from_ground = (bright - dark)[:, 0]
    if ground is not None:
        assert from_ground[1] / from_ground[0] == pytest.approx(ground, abs=6e-5)


def test_reflection_costs_about_three_percent_and_is_taken_off_by_default(miami: WeatherYears) -> None:
    """Two to four per cent a year at a latitude's tilt; coated glass loses a fifth less; the default has the loss."""
    bare, plain, coated = (
        array_power(solar(reflection=kind), Controller(), miami).string_w.sum()
        for kind in ("none", "glass", "coated_glass")
    )
    assert 0.02 < 1 - plain / bare < 0.04
    assert 0.6 < (bare - coated) / (bare - plain) < 0.9
    untouched = Solar(module=MODULE, modules_in_series=10, strings=1, planes=[Plane(tilt_deg=25.8, azimuth_deg=180)])
    assert (untouched.reflection, untouched.sky_model) == ("glass", "perez-driesse")


def test_irradiance_is_worked_out_once_for_designs_that_share_it(miami: WeatherYears) -> None:
    asked = (25.8, 180.0, 0.2, "perez-driesse", "glass")
    first, again = irradiance_behind_glass(miami, *asked), irradiance_behind_glass(miami, *asked)
    assert first[1] is again[1]
    with pytest.raises(ValueError, match="read-only"):
        first[1][0] = 1.0
    other = replace(miami, dni_w_m2=miami.dni_w_m2 / 2)
    assert irradiance_behind_glass(other, *asked)[1].sum() < 0.9 * first[1].sum()


def test_perez_gives_more_than_hay_and_davies(miami: WeatherYears) -> None:
    """In the plane 1917.6 kWh/m2 by Perez 1990 against 1886.7 by Hay and Davies (pvlib 0.16.1, albedo 0.2)."""
    perez = array_power(solar(sky_model="perez-driesse"), Controller(), miami).irradiance_w_m2.sum() / 1000
    assert perez == pytest.approx(1917.6, rel=0.003)


def test_dust_and_shade_by_month(miami: WeatherYears) -> None:
    months = miami.sun.month
    clean = array_power(solar(), Controller(), miami).string_w[:, 0]
    dusty = array_power(solar(soiling_by_month_percent=[0.0] * 6 + [20.0] * 6), Controller(), miami).string_w[:, 0]
    np.testing.assert_array_equal(dusty[months < 6], clean[months < 6])
    # Less light on the cells, as warm as before: a little less than in proportion, by the module's low-light loss.
    assert dusty[months >= 6].sum() / clean[months >= 6].sum() == pytest.approx(0.795, abs=0.01)
    every = array_power(solar(soiling_by_month_percent=[7.0] * 12), Controller(), miami).string_w
    np.testing.assert_array_equal(every, array_power(solar(soiling_percent=7.0), Controller(), miami).string_w)

    shaded = Plane(tilt_deg=25.8, azimuth_deg=180, shading_by_month_percent=[20.0, *[0.0] * 11])
    shade = array_power(solar(planes=[shaded]), Controller(), miami).string_w[:, 0]
    assert shade[months == 0].sum() < 0.81 * clean[months == 0].sum()
    np.testing.assert_array_equal(shade[months > 0], clean[months > 0])
    always = Plane(tilt_deg=25.8, azimuth_deg=180, shading_percent=7.0)
    np.testing.assert_allclose(array_power(solar(planes=[always]), Controller(), miami).string_w, every, rtol=1e-12)
    # Only the plane in the shade loses.
    half, open_half = (
        p.model_copy(update={"share_percent": 50.0}) for p in (shaded, Plane(tilt_deg=25.8, azimuth_deg=180))
    )
    both = array_power(solar(planes=[half, open_half]), Controller(), miami).string_w[:, 0]
    np.testing.assert_allclose(both, (shade + clean) / 2, rtol=1e-12)


@pytest.mark.parametrize(("rate", "days", "loss"), [(0.2, 30, 3.0), (0.43, 60, 12.9)])
def test_dust_grows_until_it_is_cleaned(rate: float, days: float, loss: float) -> None:
    """Mean of a linear growth r over T days: r T / 2; against the mean of the days of Kimber et al. 2006 in pvlib."""
    values = {name: value for name, value in solar().model_dump().items() if name != "soiling_percent"}
    dusty = Solar(**values | {"soiling_percent_per_day": rate, "cleaning_interval_days": days})
    assert dusty.soiling_of_months_percent() == pytest.approx((loss,) * 12)
    index = pd.date_range("2022-01-01", periods=24 * int(days), freq="h")
    kimber = pvlib.soiling.kimber(pd.Series(0.0, index), soiling_loss_rate=rate / 100)
    assert 100 * kimber.mean() == pytest.approx(loss, abs=rate)


@pytest.mark.parametrize(
    ("given", "words"),
    [
        ({"soiling_percent_per_day": 0.2}, "together, or neither"),
        ({"cleaning_interval_days": 30.0}, "together, or neither"),
        ({"soiling_percent_per_day": 0.2, "cleaning_interval_days": 30.0, "soiling_percent": 3.0}, "once"),
        ({"soiling_percent_per_day": 2.0, "cleaning_interval_days": 60.0}, "is 120.* %, must be at most 100 %"),
        ({"soiling_by_month_percent": [3.0] * 11}, "at least 12 items"),
        ({"reflection": "matt"}, "'glass', 'coated_glass' or 'none'"),
    ],
)
def test_dust_and_glass_that_cannot_be(given: dict[str, object], words: str) -> None:
    values = {name: value for name, value in solar().model_dump().items() if name != "soiling_percent"}
    with pytest.raises(ValidationError, match=words):
        Solar(**values | given)
