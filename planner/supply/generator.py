"""The generator: what is left of its rating at the site, what starting a motor asks of it, and its fuel."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from planner.scenario.sources import Generator

Array = NDArray[np.float64]

KW_PER_HP = 0.7457
LOCKED_ROTOR_KVA_PER_HP = {
    "A": 3.15, "B": 3.55, "C": 4.0, "D": 4.5, "E": 5.0, "F": 5.6, "G": 6.3, "H": 7.1, "J": 8.0, "K": 9.0, "L": 10.0,
    "M": 11.2, "N": 12.5, "P": 14.0,
}  # fmt: skip
"""Upper end of each code letter's range, NEMA MG 1 (the same in NEC table 430.7(B)), from memory."""
_USUAL_CODE_UP_TO_HP = {1.0: "N", 1.5: "M", 2.0: "L", 3.0: "K", 5.0: "J", 10.0: "H"}
"""Letter of the locked-rotor current of design B motors, NEMA MG 1 part 12, from memory: 30 A at 1 hp, 50 A at 2 hp,
92 A at 5 hp, 162 A at 10 hp, 290 A at 20 hp, all at 230 V in three phases; larger motors G."""
SOFT_LEAST, SOFT_GOOD = 1.25, 1.5
"""Rating over running need for a motor on a drive: common practice, no source."""
DIP_GOOD, DIP_MOST = 0.25, 0.35
"""Voltage dip while the motor starts: class G1 of ISO 8528-5 (from memory), and what a motor just starts with, at 42 %
of its torque: common practice, no source."""
LIGHT_LOAD, HEAVY_LOAD = 0.30, 0.70
"""Least load: NFPA 110 practice; mean load of a prime-power set: ISO 8528-1."""
RATING_STEP_KW = 0.5
"""Between the ratings proposed."""
RATED_POWER_FACTOR = 0.8
"""Power factor at which a generator is rated, ISO 8528-1."""


@dataclass(frozen=True)
class FuelUse:
    """Rating of a set [kW] and its fuel at no load [L/h/kW] and per kWh [L/kWh]."""

    rating_kw: float
    idle_l_per_h_per_kw: float
    marginal_l_per_kwh: float

    def litres(self, run_hours: ArrayLike, kwh: ArrayLike) -> Array:
        """Fuel burnt over some running time [h] and energy [kWh]; see `fuel_l`."""
        return fuel_l(run_hours, kwh, self.rating_kw, self.idle_l_per_h_per_kw, self.marginal_l_per_kwh)


def usual_locked_rotor_code(shaft_kw: float) -> str:
    """Code letter to expect of a motor whose plate shows none."""
    hp = shaft_kw / KW_PER_HP
    return next((code for most, code in _USUAL_CODE_UP_TO_HP.items() if hp <= most), "G")


def locked_rotor_kva(shaft_kw: float, code: str) -> float:
    """Apparent power that a motor takes while it starts direct on line, at full voltage [kVA].

    Parameters
    ----------
    shaft_kw : float
        Rated power at the shaft [kW].
    code : str
        Code letter, a key of LOCKED_ROTOR_KVA_PER_HP; the upper end of its range counts.
    """
    return LOCKED_ROTOR_KVA_PER_HP[code] * shaft_kw / KW_PER_HP


def rating_for_dip_kw(start_kva: float, transient_reactance: float, dip: float) -> float:
    """Rating of the generator whose voltage dips by no more than a share while a motor starts [kW].

    Parameters
    ----------
    start_kva : float
        Apparent power of the motor at full voltage while it starts [kVA].
    transient_reactance : float
        Of the alternator, per unit of its rating.
    dip : float
        Allowed voltage dip, a share of the rated voltage.

    Notes
    -----
    The motor's starting impedance and the transient reactance X' share the voltage: dip = X' s / (1 + X' s) with s the
    starting over the rated kVA, both taken as reactances, so that S = start X' (1 - dip) / dip.
    """
    return RATED_POWER_FACTOR * start_kva * transient_reactance * (1 - dip) / dip


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
