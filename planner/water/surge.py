"""Pressure surge when the flow in the rising main stops."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from planner.water.pipes import Pipe
from planner.water.properties import GRAVITY_M_S2, bulk_modulus_pa, water_density_kg_m3

Array = NDArray[np.float64]


def wave_speed_m_s(
    bulk_modulus_pa: ArrayLike,
    density_kg_m3: ArrayLike,
    young_pa: ArrayLike,
    inner_diameter_m: ArrayLike,
    wall_m: ArrayLike,
    poisson: ArrayLike | None = None,
) -> Array:
    """Speed of a pressure wave in a full elastic pipe [m/s]; the arguments broadcast.

    Parameters
    ----------
    bulk_modulus_pa, density_kg_m3 : array_like
        Of the water [Pa, kg/m3].
    young_pa : array_like
        Modulus of the wall [Pa].
    inner_diameter_m, wall_m : array_like
        Inside diameter and wall [m].
    poisson : array_like, optional
        Poisson's ratio of the wall, for a pipe that is anchored along its length, as a buried or clamped main is;
        without it the pipe is free to move.

    Notes
    -----
    Korteweg 1878, Annalen der Physik 241:525-542: a = sqrt(K/rho) / sqrt(1 + c K D / (E e)), c = 1 for a free pipe and
    1 - poisson^2 for an anchored one (Wylie and Streeter, Fluid Transients, from memory), whose wave is the faster.
    """
    bulk = np.asarray(bulk_modulus_pa, dtype=float)
    held = 1.0 if poisson is None else 1 - np.square(poisson)
    slack = held * bulk / np.asarray(young_pa) * np.asarray(inner_diameter_m) / np.asarray(wall_m)
    return np.asarray(np.sqrt(bulk / np.asarray(density_kg_m3) / (1 + slack)))


def wave_speed_of(pipe: Pipe, water_temperature_c: float) -> float | None:
    """Wave speed of an anchored pipe of the tables [m/s]; None where its material's modulus or its wall is not known.

    Parameters
    ----------
    pipe : Pipe
        The pipe.
    water_temperature_c : float
        Temperature of the water [deg C].
    """
    material = pipe.material
    if material.young_pa is None or pipe.wall_m is None:
        return None
    bulk, density = bulk_modulus_pa(water_temperature_c), water_density_kg_m3(water_temperature_c)
    speed = wave_speed_m_s(bulk, density, material.young_pa, pipe.inner_diameter_m, pipe.wall_m, material.poisson)
    return float(speed)


def joukowsky_head_m(wave_speed_m_s: ArrayLike, velocity_change_m_s: ArrayLike) -> Array:
    """Rise of head when a velocity is taken away at once, a v / g [m] (Joukowsky 1898)."""
    return np.asarray(np.asarray(wave_speed_m_s, dtype=float) * np.asarray(velocity_change_m_s) / GRAVITY_M_S2)


def surge_heads_m(
    wave_speed_m_s: ArrayLike, velocity_m_s: ArrayLike, length_m: ArrayLike, stop_time_s: float | None = None
) -> Array:
    """Rise of head in each run of a main when its flow stops [m].

    Parameters
    ----------
    wave_speed_m_s, velocity_m_s, length_m : (segments,) array_like
        Of each run from pump to tank.
    stop_time_s : float, optional
        Time in which the flow stops; None for at once.

    Returns
    -------
    (segments,) array
        By Joukowsky, run by run; where the flow stops more slowly than a wave runs to the tank and back, no more than
        Michaud's 2 L v / (g T) of the whole main. What the joint of two pipes throws back is left out.
    """
    speed, velocity, length = (np.asarray(v, dtype=float) for v in (wave_speed_m_s, velocity_m_s, length_m))
    at_once = joukowsky_head_m(speed, velocity)
    if stop_time_s is None or stop_time_s <= (2 * length / speed).sum():
        return at_once
    return np.asarray(np.minimum(at_once, 2 * (length * velocity).sum() / (GRAVITY_M_S2 * stop_time_s)))


def stop_time_for_s(head_m: float, velocity_m_s: ArrayLike, length_m: ArrayLike) -> float:
    """Time in which the flow of a main may stop without a higher rise of head than that, by Michaud [s]."""
    return float(2 * (np.asarray(length_m) * np.asarray(velocity_m_s)).sum() / (GRAVITY_M_S2 * head_m))
