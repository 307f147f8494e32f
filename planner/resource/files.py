"""Readers of weather files. Whatever the format, the result is in local standard time with hours labelled at start."""

from __future__ import annotations

import csv
import io
import re
import tempfile
from collections.abc import Callable
from pathlib import Path
from typing import Any, Literal, get_args

import pandas as pd
import pvlib

from planner.resource.plain_csv import read_plain_csv
from planner.resource.record import Record, WeatherFileError, record_of, weather_of, whole_years
from planner.resource.sun import HOURS_PER_YEAR, Place, sun_of
from planner.resource.years import WeatherYears
from planner.scenario.ordinary import read_ordinary
from planner.text import text

__all__ = ["FORMATS", "WeatherFileError", "read_weather_file"]

FileFormat = Literal["auto", "epw", "tmy3", "tm2", "pvgis_tmy", "pvgis_hourly", "csv"]
FORMATS: tuple[str, ...] = get_args(FileFormat)

PVLIB_COLUMNS = {"ghi": "ghi", "dni": "dni", "dhi": "dhi", "temp_air": "temperature", "wind_speed": "wind"}

_LARGEST_FILE = 100_000_000
"""Twenty hourly years of every format have a fifth of this."""

# What pvlib's readers raise on a file that is not what it should be.
READER_ERRORS = (ValueError, KeyError, IndexError, TypeError, AttributeError, OverflowError, EOFError, csv.Error)


def read_weather_file(path: str | Path, place: Place, *, file_format: str = "auto") -> WeatherYears:
    """Read a weather file.

    Parameters
    ----------
    path : str or Path
        The file.
    place : Place
        Where the scheme stands; its clock is the one of the result.
    file_format : str
        One of `FORMATS`; 'auto' looks at the name and the first lines.

    Returns
    -------
    WeatherYears
        One column for each whole calendar year in the file; 29 February is dropped. `notes` tells of a wrong clock,
        a far place or implausible values.

    Raises
    ------
    WeatherFileError
        If the file cannot be read, is cut short, lacks a column or holds values that cannot be true.

    Notes
    -----
    The project's own plain CSV is described in `planner.resource.plain_csv`.
    """
    path = Path(path)
    if file_format not in FORMATS:
        raise WeatherFileError(f"{path.name}: format {file_format!r} is not one of {', '.join(FORMATS)}")
    try:
        written = read_ordinary(path, _LARGEST_FILE)
    except OSError as error:
        raise WeatherFileError(f"{path.name}: cannot be read: {error.strerror or error}") from None
    try:
        content = written.decode("utf-8-sig")
    except UnicodeDecodeError:
        content = written.decode("latin-1")
    chosen = _guess(path, content) if file_format == "auto" else file_format
    try:
        record = READERS[chosen](content, place)
    except WeatherFileError as error:
        raise WeatherFileError(f"{path.name} (read as {chosen}): {error}") from None
    except READER_ERRORS as error:
        # the reader's own words may hold parts of a file that is no weather file and nobody's business
        why = f"it is not such a file, or not whole ({type(error).__name__})"
        raise WeatherFileError(f"{path.name}: cannot be read as {chosen}: {why}") from error
    return weather_of(record, place, sun_of(place))


def _guess(path: Path, content: str) -> str:
    suffix, head = path.suffix.lower(), content[:4000]
    if suffix == ".epw" or head.startswith("LOCATION,"):
        return "epw"
    if suffix == ".tm2":
        return "tm2"
    if suffix == ".json" or head.lstrip().startswith("{"):
        return "pvgis_tmy" if '"tmy_hourly"' in content else "pvgis_hourly"
    if head.startswith("Latitude (decimal degrees)"):
        return "pvgis_tmy" if "time(UTC)" in head else "pvgis_hourly"
    if "Date (MM/DD/YYYY)" in head:
        return "tmy3"
    return "csv"


def _picked(frame: pd.DataFrame, names: dict[str, str]) -> dict[str, pd.Series]:
    return {ours: frame[theirs] for theirs, ours in names.items() if theirs in frame}


def _typical_year(frame: pd.DataFrame, index: pd.DatetimeIndex, what: str, meta: dict[str, Any]) -> Record:
    rows, years, remarks = whole_years(index, real_years=False)
    return record_of(
        _picked(frame.iloc[rows], PVLIB_COLUMNS),
        years,
        utc_offset_h=float(meta["TZ"]),
        label=what,
        latitude_deg=float(meta["latitude"]),
        longitude_deg=float(meta["longitude"]),
        notes=remarks,
    )


def _read_epw(content: str, place: Place) -> Record:
    frame, meta = pvlib.iotools.read_epw(io.StringIO(content))
    site = " ".join(str(meta.get(key, "")) for key in ("city", "country")).strip()
    # pvlib already labels the beginning of the hour here.
    return _typical_year(frame, pd.DatetimeIndex(frame.index), text("weather_source.epw", site=site), meta)


def _read_tmy3(content: str, place: Place) -> Record:
    frame, meta = pvlib.iotools.read_tmy3(io.StringIO(content))
    site = str(meta["Name"]).strip('"')
    # TMY3 labels the end of the hour (Wilcox and Marion 2008, NREL/TP-581-43156).
    beginning = pd.DatetimeIndex(frame.index) - pd.Timedelta(hours=1)
    # pvlib moves 24:00 of 28 February to 1 March in leap years; an hour before that is 29 February again.
    leap_day = (beginning.month == 2) & (beginning.day == 29)
    beginning = beginning.where(~leap_day, beginning - pd.Timedelta(days=1))
    return _typical_year(frame, beginning, text("weather_source.tmy3", site=site, state=meta["State"]), meta)


def _read_tm2(content: str, place: Place) -> Record:
    first, _, rest = content.partition("\n")
    # pvlib's reader takes one word for the city.
    header = re.sub(r"^(\s*\S+\s+)(.*?)(\s+[A-Z]{2}\s+-?\d+\s+[NS]\s)", _one_word, first)
    with tempfile.TemporaryDirectory() as folder:
        copy = Path(folder) / "year.tm2"
        copy.write_text(f"{header}\n{rest}", encoding="utf-8")
        frame, meta = pvlib.iotools.read_tmy2(str(copy))
    frame = pd.DataFrame(
        {
            "ghi": frame["GHI"],
            "dni": frame["DNI"],
            "dhi": frame["DHI"],
            "temp_air": frame["DryBulb"] / 10,  # tenths
            "wind_speed": frame["Wspd"] / 10,
        }
    )
    site = str(meta["City"]).replace("_", " ").title()
    # The index is the beginning of the hour, whatever pvlib's docstring says: the file's own extraterrestrial
    # column agrees with the sun half an hour after it.
    return _typical_year(
        frame, pd.DatetimeIndex(frame.index), text("weather_source.tmy2", site=site, state=meta["State"]), meta
    )


def _one_word(match: re.Match[str]) -> str:
    return match[1] + match[2].strip().replace(" ", "_") + match[3]


def pvgis_tmy_record(frame: pd.DataFrame, meta: dict[str, Any]) -> Record:
    """Make a record of what pvlib's readers give for a PVGIS typical year: UTC, instantaneous irradiance."""
    rows, years, remarks = whole_years(pd.DatetimeIndex(frame.index), real_years=False)
    inputs = meta["inputs"]
    where = inputs.get("location", inputs)
    offset_h = inputs.get("irradiance time offset", where.get("irradiance_time_offset"))
    if offset_h is None:
        remarks += (text("weather_note.minute_not_given"),)
    return record_of(
        _picked(frame.iloc[rows], PVLIB_COLUMNS),
        years,
        utc_offset_h=0.0,
        first_minute=60 * float(offset_h or 0.0) - 30,
        label=text("weather_source.pvgis_typical_year"),
        latitude_deg=float(where["latitude"]),
        longitude_deg=float(where["longitude"]),
        notes=remarks,
    )


def _read_pvgis_tmy(content: str, place: Place) -> Record:
    if content.startswith("LOCATION,"):
        return _read_epw(content, place)
    if content.lstrip().startswith("{"):
        return pvgis_tmy_record(*pvlib.iotools.read_pvgis_tmy(io.StringIO(content), pvgis_format="json"))
    found = len(re.findall(r"^\d{8}:\d{4},", content, re.MULTILINE))
    if found < HOURS_PER_YEAR:
        raise WeatherFileError(f"{found:,} rows found, 8,760 expected; the file is cut short")
    return pvgis_tmy_record(*pvlib.iotools.read_pvgis_tmy(io.BytesIO(content.encode()), pvgis_format="csv"))


def _read_pvgis_hourly(content: str, place: Place) -> Record:
    kind = "json" if content.lstrip().startswith("{") else "csv"
    frame, meta = pvlib.iotools.read_pvgis_hourly(io.StringIO(content), pvgis_format=kind)
    inputs = meta["inputs"]
    slope = _slope_deg(inputs)
    if slope is None or slope != 0:
        got = "does not say the slope of its plane" if slope is None else f"is for a plane sloping {slope:g} degrees"
        raise WeatherFileError(f"the file {got}: ask PVGIS for a fixed plane with slope 0 (horizontal)")
    index = pd.DatetimeIndex(frame.index)
    rows, years, remarks = whole_years(index, real_years=True)
    frame = frame.iloc[rows]
    columns = _picked(frame, PVLIB_COLUMNS)
    if {"poa_direct", "poa_sky_diffuse"} <= set(frame):
        diffuse = frame["poa_sky_diffuse"] + frame.get("poa_ground_diffuse", 0.0)
        columns |= {"ghi": frame["poa_direct"] + diffuse, "dhi": diffuse}
    elif "poa_global" in frame:
        columns["ghi"] = frame["poa_global"]
    where = inputs.get("location", inputs)
    return record_of(
        columns,
        years,
        utc_offset_h=0.0,
        first_minute=float(index.minute[0]) - 30,
        label=text("weather_source.pvgis_hourly" if years > 1 else "weather_source.pvgis_hourly_one_year", years=years),
        latitude_deg=float(where["latitude"]),
        longitude_deg=float(where["longitude"]),
        notes=remarks,
    )


def _slope_deg(inputs: dict[str, Any]) -> float | None:
    mounting = inputs.get("mounting_system")
    if mounting is not None:
        slope = mounting.get("fixed", {}).get("slope", {}).get("value")
        return None if slope is None else float(slope)
    number = re.match(r"-?[\d.]+", str(inputs.get("Slope", "")))
    return float(number[0]) if number else None


READERS: dict[str, Callable[[str, Place], Record]] = {
    "epw": _read_epw,
    "tmy3": _read_tmy3,
    "tm2": _read_tm2,
    "pvgis_tmy": _read_pvgis_tmy,
    "pvgis_hourly": _read_pvgis_hourly,
    "csv": read_plain_csv,
}
