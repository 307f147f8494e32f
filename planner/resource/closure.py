"""Does the sun of a weather record stand where its time stamps say? Checks that find a wrong clock or place."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from planner.resource.sun import (
    DAYS_PER_MONTH,
    HOURS_PER_YEAR,
    MONTH_OF_DAY,
    SAMPLE_MINUTES,
    Array,
    Place,
    Sun,
    solar_days,
    sun_height,
)
from planner.text import text

OFFSETS_MINUTES = np.array(sorted({*range(-90, 91, 10), *range(-720, 721, 60)}))
LEAST_GHI_W_M2 = 20.0
LEAST_SPREAD = 0.05
"""Standard deviation of daily clearness within months below which a record is not that of real days. Common practice,
no source: typical years of many climates show 0.09 to 0.16."""
MOST_NIGHT_SHARE = 0.1
"""Share of the radiation that may fall at night by the best of the clocks tried. Common practice, no source: hourly
records have less than 0.01 (of the other hemisphere, up to 45 degrees, less than 0.04), rows of half an hour 0.2,
rows of ten minutes and shuffled ones 0.4."""
WORTH_NOTING_MINUTES = 20
WORTH_NOTING_MINUTES_GHI = 45
"""Without a split the offset can only be read from the shape of the day, and cloudy afternoons shift that by as much
as half an hour."""


@dataclass(frozen=True)
class Closure:
    """Where the sun must stand for a record to be consistent.

    Attributes
    ----------
    offset_minutes : int
        Minutes by which the best-fitting sun comes after the one the time stamps name.
    residual_w_m2, residual_as_labelled_w_m2 : float
        Root mean square misfit of the daylight hours with that sun, and with the sun as labelled.
    from_ghi_alone : bool
        Whether the record had no beam and diffuse parts to close.
    night_share : float
        Share of the radiation that falls in hours without sun by the best-fitting sun, the hours beside sunrise and
        sunset counted as day.
    """

    offset_minutes: int
    residual_w_m2: float
    residual_as_labelled_w_m2: float
    from_ghi_alone: bool
    night_share: float = 0.0

    def note(self) -> str | None:
        """Words of warning, or None where the labelled sun fits."""
        least = WORTH_NOTING_MINUTES_GHI if self.from_ghi_alone else WORTH_NOTING_MINUTES
        # Without a split the misfit is mostly that of clouds, whatever the sun.
        better = 1.03 * self.residual_w_m2 if self.from_ghi_alone else 1.2 * self.residual_w_m2 + 1
        if abs(self.offset_minutes) < least or self.residual_as_labelled_w_m2 < better:
            return None
        size = abs(self.offset_minutes)
        unit = "minutes" if size % 60 else "hours" if size > 60 else "one_hour"
        return text(
            "weather_note.sun_later" if self.offset_minutes > 0 else "weather_note.sun_earlier",
            time=text(f"weather_note.{unit}", minutes=size, hours=size // 60),
            misfit=self.residual_w_m2,
            misfit_as_labelled=self.residual_as_labelled_w_m2,
        )


def closure_offset_minutes(
    ghi: Array,
    dni: Array | None,
    dhi: Array | None,
    place: Place,
    *,
    utc_offset_h: float | None = None,
    middle_minute: float = 30.0,
) -> Closure:
    """Find the sun that closes a record: ghi = dni cos(zenith) + dhi.

    Offsets from -90 to +90 minutes in steps of ten and whole hours up to half a day are tried. Without dni or dhi
    the sun is the one to whose height ghi is most nearly proportional.

    Parameters
    ----------
    ghi, dni, dhi : ndarray, shape (8760,) or (8760, n)
        W/m2 in the order of the record's own clock.
    place : Place
        Where.
    utc_offset_h : float, optional
        The record's own clock, by default that of the place.
    middle_minute : float
        Minutes after the label at which the record's sun is supposed to stand.

    Returns
    -------
    Closure
        Best offset and misfits.
    """
    clock = place if utc_offset_h is None else replace(place, utc_offset_h=utc_offset_h)
    samples = sun_height(clock, middle_minute % SAMPLE_MINUTES, SAMPLE_MINUTES)
    first = int(middle_minute // SAMPLE_MINUTES)
    columns = ghi.reshape(HOURS_PER_YEAR, -1)
    day = columns > LEAST_GHI_W_M2
    if dni is None or dhi is None:
        beam, other = np.ones_like(columns) * day, columns * day
    else:
        beam, other = dni.reshape(columns.shape) * day, (columns - dhi.reshape(columns.shape)) * day
    # The squared misfit of all columns as a quadratic in the sun's height, summed over columns once.
    square, cross, rest = (beam**2).sum(axis=1), (beam * other).sum(axis=1), float((other**2).sum())
    misfits = np.empty(len(OFFSETS_MINUTES))

    def height_at(offset: int) -> Array:
        return np.asarray(np.roll(samples, -(first + offset // SAMPLE_MINUTES))[:: 60 // SAMPLE_MINUTES])

    for index, offset in enumerate(OFFSETS_MINUTES):
        height = height_at(offset)
        # ghi alone: the best factor of proportion; with a split the factor is 1.
        fit = (cross @ height) / max(square @ height**2, 1e-9) if dni is None or dhi is None else 1.0
        misfits[index] = fit**2 * (square @ height**2) - 2 * fit * (cross @ height) + rest
    misfits = np.sqrt(np.clip(misfits, 0, None) / max(int(day.sum()), 1))
    best = int(np.argmin(misfits))
    lit = height_at(OFFSETS_MINUTES[best]) > 0
    dark = ~(lit | np.roll(lit, 1) | np.roll(lit, -1))
    return Closure(
        offset_minutes=int(OFFSETS_MINUTES[best]),
        residual_w_m2=float(misfits[best]),
        residual_as_labelled_w_m2=float(misfits[np.flatnonzero(OFFSETS_MINUTES == 0)[0]]),
        from_ghi_alone=dni is None or dhi is None,
        night_share=float(columns[dark].sum() / max(columns.sum(), 1e-9)),
    )


def daily_clearness(ghi: Array, sun: Sun) -> Array:
    """Daily clearness index, shape (365, n), of ghi (8760, n); NaN on days without sun."""
    energy = solar_days(ghi, sun).sum(axis=1)
    above = solar_days(sun.extraterrestrial_horizontal_wh_m2, sun).sum(axis=1)
    return np.asarray(energy / np.where(above > 1.0, above, np.nan)[:, None])


def daily_clearness_spread(ghi: Array, sun: Sun) -> Array:
    """Standard deviation of the daily clearness index within each month, shape (12,).

    Parameters
    ----------
    ghi : ndarray, shape (8760, n)
        W/m2.
    sun : Sun
        The sun above it.

    Returns
    -------
    ndarray, shape (12,)
        Mean over the years; NaN in months with polar night.
    """
    daily = daily_clearness(ghi, sun)
    months = [daily[month == MONTH_OF_DAY].std(axis=0).mean() for month in range(12)]
    return np.array(months)


def plausibility_notes(ghi: Array, sun: Sun) -> list[str]:
    """Words of warning about a record whose yearly irradiation or day-to-day spread no real place has.

    Parameters
    ----------
    ghi : ndarray, shape (8760, n)
        W/m2.
    sun : Sun
        The sun above it.
    """
    notes = []
    annual = ghi.sum(axis=0).mean() / 1000
    above = sun.extraterrestrial_horizontal_wh_m2.sum() / 1000
    clear = sun.clear_sky_ghi_w_m2.sum() / 1000
    if annual > max(1.05 * clear, 0.80 * above):
        notes.append(text("weather_note.too_bright", irradiation=annual, clear_sky=clear))
    elif annual < 0.20 * above:
        notes.append(text("weather_note.too_dull", irradiation=annual, extraterrestrial=above))
    daily = daily_clearness(ghi, sun)
    spread = daily_clearness_spread(ghi, sun)
    known = np.isfinite(spread)
    if np.isfinite(daily).any() and known.any():
        mean_spread = float(np.average(spread[known], weights=DAYS_PER_MONTH[known]))
        if mean_spread < LEAST_SPREAD:
            notes.append(text("weather_note.smoothed", spread=mean_spread))
    return notes
