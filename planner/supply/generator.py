"""The generating set: what is left of its rating at the site, and its fuel."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from planner.scenario.sources import Generator

Array = NDArray[np.float64]


def derated_rating_kw(generator: Generator, altitude_m: float, temperature_c: ArrayLike) -> Array:
    """Rating left at an altitude and air temperature.

    Parameters
    ----------
    generator : Generator
        Rating and derating rules: per cent per 100 m above an altitude, per cent per kelvin above a temperature.
    altitude_m : float
        Altitude [m].
    temperature_c : array_like
        Air temperature [°C].

    Returns
    -------
    ndarray
        Rating [kW], of the shape of `temperature_c`, never below 0.

    Notes
    -----
    The defaults combine the MSHA fuelling rule (1 % per 100 m above 305 m) with the temperature factor 0.95 at 110 °F
    of Hicks, Handbook of Energy Engineering Calculations; the two factors multiply, as in Hicks' worked example.
    """
    above_m = max(altitude_m - generator.derating_from_altitude_m, 0.0)
    hotter_k = np.maximum(np.asarray(temperature_c, dtype=float) - generator.derating_from_temperature_c, 0.0)
    thin = max(1 - generator.derating_percent_per_100m / 100 * above_m / 100, 0.0)
    hot = np.maximum(1 - generator.derating_percent_per_k / 100 * hotter_k, 0.0)
    rating: Array = generator.rating_kw * thin * hot
    return rating


def fuel_l(
    run_hours: ArrayLike, kwh: ArrayLike, rating_kw: float, idle_l_per_h_per_kw: float, marginal_l_per_kwh: float
) -> Array:
    """Fuel burnt over some running time and energy.

    Parameters
    ----------
    run_hours, kwh : array_like
        Running time [h] and energy given [kWh].
    rating_kw : float
        Rating of the set at the reference conditions [kW].
    idle_l_per_h_per_kw : float
        Fuel at no load per kW of rating [L/h/kW].
    marginal_l_per_kwh : float
        Further fuel per kWh [L/kWh].

    Returns
    -------
    ndarray
        Fuel [L].

    Notes
    -----
    The straight line of Skarstein and Uhlen 1989, Wind Engineering 13(2) (coefficients from memory).
    """
    fuel: Array = idle_l_per_h_per_kw * rating_kw * np.asarray(run_hours) + marginal_l_per_kwh * np.asarray(kwh)
    return fuel
