"""Hourly weather of one or more years, its monthly table and the irradiance on a tilted plane."""

from __future__ import annotations

import functools
from dataclasses import dataclass
from typing import Literal

import numpy as np
import pvlib

from planner.resource.closure import daily_clearness_spread
from planner.resource.sun import DAYS_PER_MONTH, HOURS_PER_YEAR, Array, Sun, hours_to_months

SkyModel = Literal["haydavies", "perez-driesse"]
Reflection = Literal["glass", "coated_glass", "none"]

_COATINGS: dict[Reflection, float | None] = {"glass": None, "coated_glass": 1.29}
"""Refractive index of the coating, as in `pvlib.iam.physical`."""

LOWEST_BEAM_ZENITH_DEG = 87.0
"""With the sun lower than this all radiation counts as diffuse (pvlib's limit for the Erbs split)."""


@dataclass(frozen=True, eq=False)
class WeatherYears:
    """Hourly weather in local standard time, labels begin the hour; arrays of (8760, n) for n years.

    Attributes
    ----------
    ghi_w_m2, dni_w_m2, dhi_w_m2 : ndarray
        Global horizontal, direct normal and diffuse horizontal irradiance.
    temperature_c, wind_m_s : ndarray
        Air temperature and wind speed; may be read-only views of one year.
    sun : Sun
        The sun above it.
    annual_factor : ndarray, shape (n,)
        Irradiation of each year over the mean of the years it was made from.
    source : str
        Where it came from, one line for people.
    notes : tuple of str
        Warnings for people.
    """

    ghi_w_m2: Array
    dni_w_m2: Array
    dhi_w_m2: Array
    temperature_c: Array
    wind_m_s: Array
    sun: Sun
    annual_factor: Array
    source: str
    notes: tuple[str, ...]

    @property
    def years(self) -> int:
        """Number of years n."""
        return int(self.ghi_w_m2.shape[1])

    def monthly_ghi_kwh_m2_day(self) -> Array:
        """Mean daily global horizontal irradiation of each month and year, shape (12, n)."""
        return np.asarray(hours_to_months(self.ghi_w_m2) / 1000 / DAYS_PER_MONTH[:, None])

    def monthly_table(self) -> dict[str, Array]:
        """Describe the months, mean over the years.

        Returns
        -------
        dict of ndarray, shape (12,)
            `ghi_kwh_m2_day` mean daily irradiation; `ghi_lowest_year_kwh_m2_day` and `ghi_highest_year_kwh_m2_day`
            its extremes among the years; `temperature_mean_c`, and `temperature_min_c`, `temperature_max_c` the
            extreme hours; `clearness` (mean), `clearness_spread` (standard deviation of the days); `wind_m_s`.
        """
        ghi = self.monthly_ghi_kwh_m2_day()
        above = hours_to_months(self.sun.extraterrestrial_horizontal_wh_m2) / 1000 / DAYS_PER_MONTH
        hours = 24 * DAYS_PER_MONTH[:, None]
        months = [self.sun.month == month for month in range(12)]
        return {
            "ghi_kwh_m2_day": ghi.mean(axis=1),
            "ghi_lowest_year_kwh_m2_day": ghi.min(axis=1),
            "ghi_highest_year_kwh_m2_day": ghi.max(axis=1),
            "temperature_mean_c": (hours_to_months(self.temperature_c) / hours).mean(axis=1),
            "temperature_min_c": np.array([self.temperature_c[month].min() for month in months]),
            "temperature_max_c": np.array([self.temperature_c[month].max() for month in months]),
            "clearness": ghi.mean(axis=1) / np.where(above > 0, above, np.nan),
            "clearness_spread": daily_clearness_spread(self.ghi_w_m2, self.sun),
            "wind_m_s": (hours_to_months(self.wind_m_s) / hours).mean(axis=1),
        }


def split_beam(ghi: Array, sun: Sun) -> tuple[Array, Array]:
    """Split global into direct normal and diffuse irradiance.

    Parameters
    ----------
    ghi : ndarray, shape (8760, n)
        W/m2.
    sun : Sun
        The sun above it.

    Returns
    -------
    tuple of ndarray, shape (8760, n)
        dni and dhi in W/m2; dni cos(zenith) + dhi = ghi in every hour.

    Notes
    -----
    Erbs, Klein and Duffie 1982, Solar Energy 28:293-302, as in `pvlib.irradiance.erbs`.
    """
    dni, dhi = np.zeros_like(ghi), ghi.copy()
    day = sun.zenith_deg <= LOWEST_BEAM_ZENITH_DEG
    parts = pvlib.irradiance.erbs(
        ghi[day], sun.zenith_deg[day, None], sun.day_of_year[day, None], max_zenith=LOWEST_BEAM_ZENITH_DEG
    )
    dni[day], dhi[day] = parts["dni"], parts["dhi"]
    return dni, dhi


def plane_irradiance(
    weather: WeatherYears,
    tilt_deg: float,
    azimuth_deg: float,
    albedo: float = 0.2,
    model: SkyModel = "haydavies",
) -> Array:
    """Irradiance on a tilted plane, shape (8760, n) in W/m2; see `irradiance_behind_glass`."""
    return irradiance_behind_glass(weather, tilt_deg, azimuth_deg, albedo, model, "none")[0]


@functools.lru_cache(maxsize=3)  # designs tried one after another share weather and planes
def irradiance_behind_glass(
    weather: WeatherYears,
    tilt_deg: float,
    azimuth_deg: float,
    albedo: float,
    model: SkyModel,
    reflection: Reflection,
) -> tuple[Array, Array]:
    """Irradiance on a tilted plane, and what of it passes the glass.

    Parameters
    ----------
    weather : WeatherYears
        n years.
    tilt_deg : float
        From horizontal.
    azimuth_deg : float
        Of the plane's normal, clockwise from north.
    albedo : float
        Share of the global irradiance that the ground throws back.
    model : {'haydavies', 'perez-driesse'}
        Sky: Hay and Davies 1980, or the continuous Perez model of Driesse, Jensen and Perez 2024 (Solar Energy
        267:112093), both as in pvlib.
    reflection : {'glass', 'coated_glass', 'none'}
        What is lost to slanting incidence, relative to a sun that faces the module.

    Returns
    -------
    on_plane, passed : ndarray, shape (8760, n)
        W/m2, finite and >= 0; read-only, because the last results are kept.

    Raises
    ------
    ValueError
        If the sky model or the reflection is not one of those.

    Notes
    -----
    Reflection: air-glass surface and absorption in the glass after De Soto, Klein and Beckman 2006 (Solar Energy
    80:78-88), for the sun and the sky about it by the angle of incidence, for sky, horizon and ground integrated over
    what the plane sees of them (Marion 2017, Solar Energy 147:344-348); both as in pvlib.
    """
    if model not in ("haydavies", "perez-driesse"):
        raise ValueError(f"sky model {model!r} is not one of 'haydavies', 'perez-driesse'")
    if reflection not in ("glass", "coated_glass", "none"):
        raise ValueError(f"reflection {reflection!r} is not one of 'glass', 'coated_glass', 'none'")
    sun = weather.sun
    on_plane = np.zeros((HOURS_PER_YEAR, weather.years))
    lit = (weather.ghi_w_m2 > 0).any(axis=1) | (weather.dni_w_m2 > 0).any(axis=1)
    if not lit.any():
        return on_plane, on_plane
    ghi, dni, dhi = weather.ghi_w_m2[lit], weather.dni_w_m2[lit], weather.dhi_w_m2[lit]
    zenith, azimuth = sun.zenith_deg[lit, None], sun.azimuth_deg[lit, None]
    extra = sun.extraterrestrial_normal_w_m2[lit, None]
    facing = np.maximum(pvlib.irradiance.aoi_projection(tilt_deg, azimuth_deg, zenith, azimuth), 0.0)
    if model == "haydavies":
        ratio = facing / np.maximum(np.cos(np.radians(zenith)), 0.01745)  # pvlib's bound, a sun at 89 degrees
        sky = pvlib.irradiance.haydavies(
            tilt_deg, azimuth_deg, dhi, dni, extra, projection_ratio=ratio, return_components=True
        )
        even, about_sun, horizon = sky["poa_isotropic"], sky["poa_circumsolar"], np.zeros_like(dhi)
    else:
        air_mass = pvlib.atmosphere.get_relative_airmass(zenith)
        sky = pvlib.irradiance.perez_driesse(
            tilt_deg, azimuth_deg, dhi, dni, extra, zenith, azimuth, air_mass, return_components=True
        )
        # Perez knows no air mass with the sun at or below the horizon: the sky is then taken as even.
        known = np.isfinite(air_mass)
        even = np.where(known, sky["poa_isotropic"], pvlib.irradiance.isotropic(tilt_deg, dhi))
        about_sun, horizon = (np.where(known, sky[f"poa_{part}"], 0.0) for part in ("circumsolar", "horizon"))
    beam = dni * facing + about_sun
    ground = pvlib.irradiance.get_ground_diffuse(tilt_deg, ghi, albedo)
    on_plane[lit] = np.maximum(beam + even + horizon + ground, 0.0)
    on_plane.flags.writeable = False
    if reflection == "none":
        return on_plane, on_plane
    passed = np.zeros(on_plane.shape)
    of_beam = pvlib.iam.physical(np.degrees(np.arccos(np.minimum(facing, 1.0))), n_ar=_COATINGS[reflection])
    of = _passed_of_diffuse(tilt_deg, _COATINGS[reflection])
    passed[lit] = np.maximum(beam * of_beam + even * of["sky"] + horizon * of["horizon"] + ground * of["ground"], 0.0)
    passed.flags.writeable = False
    return on_plane, passed


@functools.lru_cache(maxsize=64)
def _passed_of_diffuse(tilt_deg: float, coating: float | None) -> dict[str, float]:
    """Share of diffuse irradiance that passes, by where it comes from: 'sky', 'horizon', 'ground'."""
    parts = pvlib.iam.marion_diffuse("physical", tilt_deg, n_ar=coating)
    return {name: float(share) for name, share in parts.items()}
