"""Head lost to friction in full pipes and to fittings."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.special import wrightomega

from planner.water.properties import GRAVITY_M_S2

Array = NDArray[np.float64]

LAMINAR_REYNOLDS = 2000.0
TURBULENT_REYNOLDS = 4000.0
_TWO_OVER_LN10 = 2 / np.log(10)


def velocity_m_s(flow_m3_s: ArrayLike, diameter_m: ArrayLike) -> Array:
    """Mean velocity in a full round pipe [m/s]."""
    return np.asarray(4 * np.asarray(flow_m3_s) / (np.pi * np.square(diameter_m)))


def _colebrook(reynolds: Array, relative_roughness: Array) -> tuple[Array, Array]:
    """Friction factor of Colebrook-White and its slope over the Reynolds number.

    With y the bracket of 1/sqrt(f) = -2 log10(y) and a = 2/ln 10, c = 2.51/Re, the equation becomes u + ln u = k for
    u = y / (a c), which Wright's omega function solves exactly.
    """
    scale = _TWO_OVER_LN10 * 2.51 / reynolds
    bracket = scale * wrightomega(relative_roughness / 3.7 / scale - np.log(scale))
    factor = (_TWO_OVER_LN10 * np.log(bracket)) ** -2
    return factor, -2 * factor * scale / (reynolds * (bracket + scale))


def friction_factor(reynolds: ArrayLike, relative_roughness: ArrayLike) -> Array:
    """Darcy friction factor.

    Parameters
    ----------
    reynolds : array_like
        Reynolds number, above 0.
    relative_roughness : array_like
        Roughness over inside diameter; the two broadcast.

    Notes
    -----
    Laminar 64/Re (Hagen-Poiseuille) below Re 2000; Colebrook (1939), J. Inst. Civ. Eng. 11:133-156, above 4000. Between
    the two the cubic in Re that meets both in value and slope: the way of Dunlop (1991) in the EPANET 2.2 manual,
    chapter 12, there with the formula of Swamee and Jain at its upper end.
    """
    reynolds, roughness = np.broadcast_arrays(
        np.asarray(reynolds, dtype=float), np.asarray(relative_roughness, dtype=float)
    )
    factor, slope = _colebrook(np.maximum(reynolds, TURBULENT_REYNOLDS), roughness)
    if np.all(reynolds >= TURBULENT_REYNOLDS):
        return np.asarray(factor)
    laminar = 64 / np.minimum(reynolds, LAMINAR_REYNOLDS)
    width = TURBULENT_REYNOLDS - LAMINAR_REYNOLDS
    t = np.clip((reynolds - LAMINAR_REYNOLDS) / width, 0, 1)
    laminar_slope = -64 / LAMINAR_REYNOLDS**2
    blend = (
        laminar * (1 + 2 * t) * (1 - t) ** 2
        + width * laminar_slope * t * (1 - t) ** 2
        + factor * t**2 * (3 - 2 * t)
        + width * slope * t**2 * (t - 1)
    )
    return np.asarray(np.where(reynolds < TURBULENT_REYNOLDS, blend, factor))


def darcy_weisbach_head_m(
    flow_m3_s: ArrayLike,
    length_m: ArrayLike,
    diameter_m: ArrayLike,
    roughness_m: ArrayLike,
    viscosity_m2_s: ArrayLike,
) -> Array:
    """Head lost to pipe friction by Darcy and Weisbach [m]; the arguments broadcast.

    Parameters
    ----------
    flow_m3_s : array_like
        Flow, not below 0 [m3/s].
    length_m, diameter_m, roughness_m : array_like
        Length, inside diameter and roughness of the pipe [m].
    viscosity_m2_s : array_like
        Kinematic viscosity [m2/s].

    Notes
    -----
    h = f L/D v^2/(2 g), f from `friction_factor`.
    """
    diameter = np.asarray(diameter_m, dtype=float)
    velocity = velocity_m_s(flow_m3_s, diameter)
    reynolds = np.maximum(velocity * diameter / np.asarray(viscosity_m2_s), 1e-9)  # at rest v^2 makes the loss nil
    factor = friction_factor(reynolds, np.asarray(roughness_m) / diameter)
    return np.asarray(factor * np.asarray(length_m) / diameter * velocity**2 / (2 * GRAVITY_M_S2))


def hazen_williams_head_m(
    flow_m3_s: ArrayLike, length_m: ArrayLike, diameter_m: ArrayLike, hazen_williams_c: ArrayLike
) -> Array:
    """Head lost to pipe friction by Hazen and Williams [m]; the arguments broadcast.

    Parameters
    ----------
    flow_m3_s : array_like
        Flow, not below 0 [m3/s].
    length_m, diameter_m : array_like
        Length and inside diameter [m].
    hazen_williams_c : array_like
        Coefficient C of the pipe.

    Notes
    -----
    The form of EPANET (2.2 manual, table 3.1) in SI: h = 10.667 C^-1.852 D^-4.871 L Q^1.852. It is 3 to 25 % below
    Darcy-Weisbach in small plastic pipe at usual velocities.
    """
    return np.asarray(
        10.667
        * np.asarray(length_m)
        * np.asarray(hazen_williams_c, dtype=float) ** -1.852
        * np.asarray(diameter_m, dtype=float) ** -4.871
        * np.asarray(flow_m3_s, dtype=float) ** 1.852
    )


def minor_head_m(flow_m3_s: ArrayLike, diameter_m: ArrayLike, k: ArrayLike) -> Array:
    """Head lost in fittings of summed loss coefficient k: k v^2/(2 g) [m]; the arguments broadcast."""
    return np.asarray(np.asarray(k) * velocity_m_s(flow_m3_s, diameter_m) ** 2 / (2 * GRAVITY_M_S2))
