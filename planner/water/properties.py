"""Properties of clean water at the pressure of a well: density, viscosity, vapour pressure, bulk modulus.

Every fit holds from 0 to 60 deg C, the range that the scenario allows. Dissolved salts are not counted.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

Array = NDArray[np.float64]

GRAVITY_M_S2 = 9.80665
"""Standard acceleration of gravity (3rd CGPM 1901, ISO 80000-3)."""


def water_density_kg_m3(t_c: ArrayLike) -> Array:
    """Density of air-free water at one atmosphere [kg/m3].

    Parameters
    ----------
    t_c : array_like
        Temperature of the water [deg C].

    Notes
    -----
    Kell, G. S. (1975), J. Chem. Eng. Data 20(1):97-105, eq. 16; within 0.01 % of IAPWS-95 here.
    """
    t = np.asarray(t_c, dtype=float)
    above = np.polynomial.polynomial.polyval(
        t, [999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12]
    )
    return np.asarray(above / (1 + 16.879850e-3 * t))


def kinematic_viscosity_m2_s(t_c: ArrayLike) -> Array:
    """Kinematic viscosity of water at 0.1 MPa [m2/s].

    Parameters
    ----------
    t_c : array_like
        Temperature of the water [deg C].

    Notes
    -----
    Dynamic viscosity after IAPWS SR6-08(2011), Supplementary Release on Properties of Liquid Water at 0.1 MPa
    (Patek, Hruby, Klomfar, Souckova and Harvey 2009, J. Phys. Chem. Ref. Data 38(1):21-29), over `water_density_kg_m3`.
    """
    reduced = (np.asarray(t_c, dtype=float)[..., np.newaxis] + 273.15) / 300
    terms = np.array([280.68, 511.45, 61.131, 0.45903]) * reduced ** np.array([-1.9, -7.7, -19.6, -40.0])
    return np.asarray(1e-6 * terms.sum(axis=-1) / water_density_kg_m3(t_c))


def vapour_pressure_pa(t_c: ArrayLike) -> Array:
    """Vapour pressure of water [Pa, absolute].

    Parameters
    ----------
    t_c : array_like
        Temperature of the water [deg C].

    Notes
    -----
    Wagner, W. and Pruss, A. (1993), J. Phys. Chem. Ref. Data 22(3):783-787, eq. 1 (IAPWS SR1-86(1992)).
    """
    kelvin = np.asarray(t_c, dtype=float) + 273.15
    tau = (1 - kelvin / 647.096)[..., np.newaxis]
    coefficients = np.array([-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502])
    powers = np.array([1, 1.5, 3, 3.5, 4, 7.5])
    return np.asarray(22.064e6 * np.exp(647.096 / kelvin * (coefficients * tau**powers).sum(axis=-1)))


def bulk_modulus_pa(t_c: ArrayLike) -> Array:
    """Isentropic bulk modulus of water at one atmosphere [Pa], the one that a pressure surge meets.

    Parameters
    ----------
    t_c : array_like
        Temperature of the water [deg C].

    Notes
    -----
    K = density * (speed of sound)^2, speed of sound after Marczak, W. (1997), J. Acoust. Soc. Am. 102(5):2776-2779.
    """
    sound_m_s = np.polynomial.polynomial.polyval(
        np.asarray(t_c, dtype=float),
        [1.402385e3, 5.038813, -5.799136e-2, 3.287156e-4, -1.398845e-6, 2.787860e-9],
    )
    return np.asarray(water_density_kg_m3(t_c) * sound_m_s**2)
