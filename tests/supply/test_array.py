"""The PV array against a direct pvlib calculation, and the controller's window."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pvlib
import pytest

from planner.resource.files import read_weather_file
from planner.resource.sun import Place
from planner.resource.years import WeatherYears
from planner.scenario.sources import Module, Plane, Solar
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


def test_a_real_typical_year_agrees_with_a_direct_pvlib_calculation(miami: WeatherYears) -> None:
    """Whole solar side on Miami TMY2 against pvlib called step by step (Hay-Davies, Faiman, De Soto diode)."""
    ours = array_power(solar(), Controller(), miami).string_w[:, 0].sum() / 1000

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
    assert array_power(solar(), Controller(), miami).irradiance_w_m2.sum() / 1000 == pytest.approx(1886.7, rel=0.002)


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
