"""A weather record on its own clock, and how it is brought to the place's clock."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
import pandas as pd

from planner.resource.closure import MOST_NIGHT_SHARE, closure_offset_minutes, plausibility_notes
from planner.resource.sun import (
    DAYS_PER_MONTH,
    HOURS_PER_YEAR,
    MONTH_OF_DAY,
    Array,
    Place,
    Sun,
    extraterrestrial_normal,
    sun_height,
)
from planner.resource.synthetic import ASSUMED_WIND_M_S
from planner.resource.years import LOWEST_BEAM_ZENITH_DEG, WeatherYears, split_beam
from planner.scenario.errors import shown
from planner.text import text

STEP_MINUTES = 5
STEPS_PER_HOUR = 60 // STEP_MINUTES
FAR_DEG = 0.5


class WeatherFileError(ValueError):
    """A weather record that cannot be used; the text says what is wrong and where."""


@dataclass(frozen=True, eq=False)
class Record:
    """Hourly values in the order of their own clock, arrays of (8760, n).

    Attributes
    ----------
    ghi, temperature, dni, dhi, wind : ndarray or None
        W/m2, deg C and m/s.
    utc_offset_h : float
        The record's clock.
    first_minute : float
        The hour a value stands for begins this many minutes after its label (instantaneous values stand for the
        hour about their instant).
    latitude_deg, longitude_deg : float or None
        Where the record is for, if it says so.
    label : str
        What it is, for people.
    notes : tuple of str
        Remarks made while reading.
    """

    ghi: Array
    temperature: Array
    dni: Array | None
    dhi: Array | None
    wind: Array | None
    utc_offset_h: float
    first_minute: float
    latitude_deg: float | None
    longitude_deg: float | None
    label: str
    notes: tuple[str, ...] = ()


# Lowest and highest value that can be true; missing-value codes such as 9999 lie beyond.
BOUNDS = {"ghi": (-10, 1600), "dni": (-10, 1500), "dhi": (-10, 1200), "temperature": (-90, 60), "wind": (0, 110)}
NEEDED = ("ghi", "temperature")


def record_of(
    columns: dict[str, pd.Series],
    years: int,
    *,
    utc_offset_h: float,
    label: str,
    first_minute: float = 0.0,
    latitude_deg: float | None = None,
    longitude_deg: float | None = None,
    notes: tuple[str, ...] = (),
) -> Record:
    """Check columns of 8,760 x years rows and lay them side by side, one column a year.

    Parameters
    ----------
    columns : dict of Series
        `ghi` and `temperature`; `dni`, `dhi` and `wind` if known.
    years : int
        Years one after the other in the rows.
    utc_offset_h, label, first_minute, latitude_deg, longitude_deg, notes
        As in `Record`.

    Raises
    ------
    WeatherFileError
        If a value is missing, not a number or beyond what can be; names column and row.
    """
    for key, value, highest in (
        ("latitude", latitude_deg, 90), ("longitude", longitude_deg, 180), ("hours from UTC", utc_offset_h, 14)
    ):  # fmt: skip
        if value is not None and not abs(value) <= highest:
            raise WeatherFileError(f"its header gives {value:g} as {key}; must be from {-highest} to {highest}")
    arrays: dict[str, Array | None] = {}
    remarks = list(notes)
    for name, (lowest, highest) in BOUNDS.items():
        if name not in columns:
            arrays[name] = None
            continue
        given = columns[name]
        values = pd.to_numeric(given, errors="coerce").to_numpy(dtype=np.float64)
        good = np.isfinite(values) & (values >= lowest) & (values <= highest)
        if not good.any() and name not in NEEDED:
            remarks.append(text("weather_note.column_left_out", column=name))
            arrays[name] = None
            continue
        if not good.all():
            row = int(np.argmin(good))
            wrong = shown(given.iloc[row], quoted=False)
            why = "is not a number" if not np.isfinite(values[row]) else f"is outside {lowest} to {highest}"
            code = " (a code for a missing value?)" if abs(values[row]) >= 999 else ""
            raise WeatherFileError(
                f"row {row + 1} of the data: {name} {wrong} {why}{code}; {int((~good).sum())} such values"
            )
        if name != "temperature":
            below = int((values < 0).sum())
            if below:
                remarks.append(text("weather_note.negative_values", count=below, column=name))
            values = np.maximum(values, 0.0)
        arrays[name] = np.ascontiguousarray(values.reshape(years, HOURS_PER_YEAR).T)
    ghi, temperature = arrays["ghi"], arrays["temperature"]
    if ghi is None or temperature is None:
        raise WeatherFileError("the file has no column of global horizontal irradiance or none of air temperature")
    return Record(
        ghi, temperature, arrays["dni"], arrays["dhi"], arrays["wind"],
        utc_offset_h, first_minute, latitude_deg, longitude_deg, label, tuple(remarks),
    )  # fmt: skip


def whole_years(index: pd.DatetimeIndex, *, real_years: bool) -> tuple[np.ndarray, int, tuple[str, ...]]:
    """Find the rows of whole 365-day years; 29 February is dropped.

    Parameters
    ----------
    index : DatetimeIndex
        Labels that begin the hour, in the record's own clock. Minutes are not looked at.
    real_years : bool
        Whether labels run through real years (then each whole calendar year is one year of weather) or make up one
        typical year from months of several.

    Returns
    -------
    tuple
        Row numbers, number of years and remarks.

    Raises
    ------
    WeatherFileError
        If there is no whole year, or hours are missing, doubled or out of order.
    """
    rows = np.flatnonzero(~((index.month == 2) & (index.day == 29)))
    remarks: tuple[str, ...] = ()
    if real_years:
        year_of = np.asarray(index.year)[rows]
        counted = {int(year): int((year_of == year).sum()) for year in np.unique(year_of)}
        whole = [year for year, count in counted.items() if count == HOURS_PER_YEAR]
        if not whole:
            found = ", ".join(f"{count:,} in {year}" for year, count in counted.items())
            raise WeatherFileError(f"no whole calendar year of 8,760 hours: rows found {found or 'none'}")
        if len(whole) < len(counted):
            left = ", ".join(str(year) for year in counted if year not in whole)
            remarks = (text("weather_note.incomplete_years", years=left),)
        rows = rows[np.isin(year_of, whole)]
        years = len(whole)
    else:
        if len(rows) != HOURS_PER_YEAR:
            raise WeatherFileError(
                f"{len(rows):,} rows found, 8,760 expected" + ("; the file is cut short" if len(rows) < 8760 else "")
            )
        years = 1
    days = np.arange(365)
    day_of_month = days - np.concatenate(([0], np.cumsum(DAYS_PER_MONTH)))[MONTH_OF_DAY] + 1
    expected = np.stack([np.repeat(MONTH_OF_DAY + 1, 24), np.repeat(day_of_month, 24), np.tile(np.arange(24), 365)])
    found_labels = np.stack([index.month[rows], index.day[rows], index.hour[rows]])
    wrong = (found_labels != np.tile(expected, years)).any(axis=0)
    if wrong.any():
        row = int(np.argmax(wrong))
        month, day, hour = expected[:, row % HOURS_PER_YEAR]
        raise WeatherFileError(
            f"row {int(rows[row]) + 1} of the data: the hour from {day}/{month} (day/month) {hour:02d}:00 was "
            f"expected, {index[rows[row]]:%d/%m %H:%M} found: hours are missing, doubled or out of order"
        )
    return rows, years, remarks


def hold_clearness(values: Array, weight: Array, steps: int) -> Array:
    """Move hourly values by part of an hour, their sum kept.

    Each source hour is spread over its five-minute steps in proportion to `weight` and the steps are gathered into
    the hours of the other clock. With extraterrestrial irradiation as the weight the clearness of a source hour
    holds throughout it, so no radiation gets into the night.

    Parameters
    ----------
    values : ndarray, shape (8760, n)
        Means of source hours.
    weight : ndarray, shape (105120,)
        Weights of the steps of the year by the clock moved to.
    steps : int
        Steps by which the source's hour 0 begins after that of the clock moved to; the year is a ring.

    Returns
    -------
    ndarray, shape (8760, n)
        Means of the hours of the clock moved to.
    """
    source = np.roll(weight, -steps).reshape(HOURS_PER_YEAR, STEPS_PER_HOUR)
    source = np.where(source.mean(axis=1, keepdims=True) > 0, source, 1.0)  # no sun: evenly
    share = source / source.mean(axis=1, keepdims=True)
    fine = (values[:, None, :] * share[:, :, None]).reshape(-1, values.shape[1])
    gathered = np.roll(fine, steps, axis=0).reshape(HOURS_PER_YEAR, STEPS_PER_HOUR, -1)
    return np.asarray(gathered.mean(axis=1))


def _by_place_clock(record: Record, place: Place, sun: Sun) -> tuple[Array, Array, Array, Array, Array]:
    clock = replace(place, utc_offset_h=record.utc_offset_h)
    ghi, dni, dhi = record.ghi, record.dni, record.dhi
    wind = np.full_like(ghi, ASSUMED_WIND_M_S) if record.wind is None else record.wind
    if dhi is None and dni is not None:
        height = sun_height(clock, record.first_minute + 30, 60)[:, None]
        dhi = np.clip(ghi - dni * height, 0.0, ghi)
    late_minutes = record.first_minute + 60 * (place.utc_offset_h - record.utc_offset_h)
    steps = round(late_minutes / STEP_MINUTES)
    if steps % STEPS_PER_HOUR == 0:
        hours = steps // STEPS_PER_HOUR
        ghi, temperature, wind = (np.roll(values, hours, axis=0) for values in (ghi, record.temperature, wind))
        dni, dhi = (None if values is None else np.roll(values, hours, axis=0) for values in (dni, dhi))
    else:
        weight = extraterrestrial_normal(STEP_MINUTES) * sun_height(place, STEP_MINUTES / 2, STEP_MINUTES)
        even = np.ones_like(weight)
        dni = None  # follows from the moved global and diffuse parts
        dhi = None if dhi is None else hold_clearness(np.minimum(dhi, ghi), weight, steps)
        ghi = hold_clearness(ghi, weight, steps)
        temperature, wind = hold_clearness(record.temperature, even, steps), hold_clearness(wind, even, steps)
    if dhi is None:
        dni, dhi = split_beam(ghi, sun)
    elif dni is None:
        zenith = np.minimum(sun.zenith_deg, LOWEST_BEAM_ZENITH_DEG)
        height = np.cos(np.radians(zenith))[:, None]
        highest = np.where(sun.zenith_deg > LOWEST_BEAM_ZENITH_DEG, 0.0, sun.extraterrestrial_normal_w_m2)
        dni = np.clip((ghi - dhi) / height, 0.0, highest[:, None])
        dhi = ghi - dni * height
    return ghi, dni, dhi, temperature, wind


def weather_of(record: Record, place: Place, sun: Sun) -> WeatherYears:
    """Bring a record to the place's clock, check it and say what is odd about it.

    Parameters
    ----------
    record : Record
        n years on their own clock.
    place : Place
        Where, and by which clock.
    sun : Sun
        `sun_of(place)`.

    Raises
    ------
    WeatherFileError
        When no clock puts the radiation of the record into the day.

    Returns
    -------
    WeatherYears
        n years. Clocks that differ by whole hours only roll the values; otherwise `hold_clearness` moves them and
        the direct part is worked out anew for the mid-hour sun. The year is a ring: what runs over its end comes in
        at its beginning. Missing direct and diffuse parts come from `split_beam`.
    """
    notes = list(record.notes)
    latitude_deg = place.latitude_deg if record.latitude_deg is None else record.latitude_deg
    longitude_deg = place.longitude_deg if record.longitude_deg is None else record.longitude_deg
    east = (longitude_deg - place.longitude_deg + 180) % 360 - 180
    if max(abs(latitude_deg - place.latitude_deg), abs(east)) > FAR_DEG:
        notes.append(
            text(
                "weather_note.far_away",
                latitude=latitude_deg,
                longitude=longitude_deg,
                site_latitude=place.latitude_deg,
                site_longitude=place.longitude_deg,
            )
        )
    found = closure_offset_minutes(
        record.ghi, record.dni, record.dhi, place,
        utc_offset_h=record.utc_offset_h, middle_minute=record.first_minute + 30,
    )  # fmt: skip
    if found.night_share > MOST_NIGHT_SHARE:
        raise WeatherFileError(
            f"{100 * found.night_share:.0f} % of its radiation falls at night, whatever clock is tried: the rows are "
            f"not one hour each ({HOURS_PER_YEAR * record.ghi.shape[1]:,} were taken as hours), not in order, or for "
            "another latitude"
        )
    notes += [note for note in (found.note(),) if note]
    ghi, dni, dhi, temperature, wind = _by_place_clock(record, place, sun)
    notes += plausibility_notes(ghi, sun)
    source = [record.label]
    if record.dni is None and record.dhi is None:
        source.append(text("weather_source.diffuse_share"))
    if record.wind is None:
        source.append(text("weather_source.wind_assumed", wind=ASSUMED_WIND_M_S))
    if record.utc_offset_h != place.utc_offset_h:
        clocks = {"file_clock": clock_text(record.utc_offset_h), "site_clock": clock_text(place.utc_offset_h)}
        source.append(text("weather_source.moved", **clocks))
    annual = ghi.sum(axis=0)
    return WeatherYears(
        ghi_w_m2=ghi,
        dni_w_m2=dni,
        dhi_w_m2=dhi,
        temperature_c=temperature,
        wind_m_s=wind,
        sun=sun,
        annual_factor=annual / annual.mean() if annual.mean() > 0 else np.ones(len(annual)),
        source="; ".join(source),
        notes=tuple(notes),
    )


def clock_text(utc_offset_h: float) -> str:
    """Write an offset as 'UTC+05:45'."""
    minutes = round(abs(utc_offset_h) * 60)
    return f"UTC{'-' if utc_offset_h < 0 else '+'}{minutes // 60:02d}:{minutes % 60:02d}"
