"""Power of the PV array at the controller, from module datasheet, planes, losses and the controller's DC window."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from pvlib.ivtools.sdm import fit_desoto_batzelis
from pvlib.pvarray import batzelis
from pvlib.pvsystem import calcparams_desoto, i_from_v
from pvlib.temperature import faiman

from planner.resource.years import WeatherYears, irradiance_behind_glass
from planner.scenario.solar import Module, Solar
from planner.scenario.waterworks import Controller

Array = NDArray[np.float64]

_DARK_W_M2 = 1.0
"""Below this the closed-form module model leaves its range; the array is taken as dark."""


@dataclass(frozen=True)
class ArrayPower:
    """DC power of one string, averaged over the planes by their shares.

    Attributes
    ----------
    string_w : ndarray, (hours, weather years)
        DC power of one new string at the controller, losses taken off [W].
    irradiance_w_m2 : ndarray, (hours, weather years)
        Irradiance on the planes before shade, dust and reflection, averaged by their shares [W/m²].
    window_hours : ndarray, (weather years,)
        Hours in which the controller's voltage window keeps the array off its maximum power point.
    window_loss_kwh : ndarray, (weather years,)
        Energy so lost, per string [kWh].
    """

    string_w: Array
    irradiance_w_m2: Array
    window_hours: Array
    window_loss_kwh: Array


def array_power(
    solar: Solar, controller: Controller, weather: WeatherYears, *, cable_apart: bool = False
) -> ArrayPower:
    """Work out the DC power that one string offers to the controller, hour by hour.

    Parameters
    ----------
    solar : Solar
        Module, planes and losses.
    controller : Controller
        Its DC voltage window.
    weather : WeatherYears
        Irradiance and temperature, (hours, weather years).
    cable_apart : bool
        Leave out the flat loss in the DC wiring, because the cable's own is counted elsewhere.

    Returns
    -------
    ArrayPower

    Notes
    -----
    Transposition and reflection as in `planner.resource.years.irradiance_behind_glass`; cell temperature after Faiman
    2008; module at any irradiance and temperature after Batzelis (2017), off the maximum power point by the De Soto
    single-diode equation with Batzelis' parameters, all through pvlib. Shade and dust lessen the light on the cells in
    the month's proportion, and are taken not to cool them.
    """
    shape = weather.ghi_w_m2.shape
    power, irradiance = np.zeros(shape), np.zeros(shape)
    window_hours, window_loss = np.zeros(shape[1]), np.zeros(shape[1])
    for plane in solar.planes:
        share = plane.share_percent / 100
        in_plane, passed = irradiance_behind_glass(
            weather, plane.tilt_deg, plane.azimuth_deg, solar.albedo, solar.sky_model, solar.reflection
        )
        kept_by_month = np.prod(
            [
                1 - np.array(loss) / 100
                for loss in (solar.soiling_of_months_percent(), plane.shading_of_months_percent())
            ],
            axis=0,
        )
        effective = passed * kept_by_month[weather.sun.month, None]
        cell_c = faiman(in_plane, weather.temperature_c, weather.wind_m_s)
        best, held = module_power(solar.module, effective, cell_c, _window_per_module(solar, controller))
        power += share * held
        irradiance += share * in_plane
        lost = best - held
        window_hours = np.maximum(window_hours, (lost > 1e-6 * solar.module.power_w).sum(axis=0))
        window_loss += share * lost.sum(axis=0) * solar.modules_in_series / 1000
    wiring = 0.0 if cable_apart else solar.wiring_percent
    kept = np.prod([1 - loss / 100 for loss in (solar.mismatch_percent, wiring, solar.light_induced_percent)])
    return ArrayPower(power * solar.modules_in_series * kept, irradiance, window_hours, window_loss * kept)


def module_power(
    module: Module, irradiance_w_m2: Array, cell_c: Array, window_v: tuple[float, float] = (0.0, np.inf)
) -> tuple[Array, Array]:
    """Power of one module at its maximum power point and within a voltage window.

    Parameters
    ----------
    module : Module
        The datasheet.
    irradiance_w_m2, cell_c : ndarray
        Effective irradiance [W/m²] and cell temperature [°C], of one shape.
    window_v : pair of float
        Lowest and highest working voltage per module [V].

    Returns
    -------
    best_w, held_w : ndarray
        At the maximum power point, and with the voltage held within the window; 0 where the open-circuit voltage does
        not reach it.
    """
    best, held = np.zeros(irradiance_w_m2.shape), np.zeros(irradiance_w_m2.shape)
    light = irradiance_w_m2 > _DARK_W_M2
    sun, cell = irradiance_w_m2[light], cell_c[light]
    plate = (module.voltage_mp_v, module.current_mp_a, module.voltage_oc_v, module.current_sc_a)
    alpha = module.current_sc_percent_per_k / 100 * module.current_sc_a
    beta = module.voltage_oc_percent_per_k / 100 * module.voltage_oc_v
    point = batzelis(sun, cell, *plate, alpha, beta)
    at_best = np.maximum(point["p_mp"], 0.0)
    within = at_best.copy()
    low, high = window_v
    outside = (point["v_mp"] < low) | (point["v_mp"] > high)
    if outside.any():
        fitted = fit_desoto_batzelis(*plate, alpha, beta)
        diode = calcparams_desoto(
            sun[outside],
            cell[outside],
            alpha_sc=alpha,
            a_ref=fitted["a_ref"],
            I_L_ref=fitted["I_L_ref"],
            I_o_ref=fitted["I_o_ref"],
            R_sh_ref=fitted["R_sh_ref"],
            R_s=fitted["R_s"],
        )
        volts = np.clip(point["v_mp"][outside], low, high)
        within[outside] = np.maximum(volts * i_from_v(volts, *diode), 0.0)
        within = np.minimum(within, at_best)
    best[light], held[light] = at_best, within
    return best, held


def _window_per_module(solar: Solar, controller: Controller) -> tuple[float, float]:
    low, high = controller.dc_voltage_min_v, controller.dc_voltage_max_v
    count = solar.modules_in_series
    return (low or 0.0) / count, (high if high is not None else np.inf) / count


def ageing(solar: Solar, years: int) -> Array:
    """Share of its new power that the array has in each life year, compound, the first year new; (years,)."""
    return np.asarray((1 - solar.degradation_percent_per_year / 100) ** np.arange(years))
