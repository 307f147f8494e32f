"""The project's own plain CSV of hourly weather.

Comment lines begin with '#', then a header row, then 8,760 rows a year (several years may follow each other) of local
standard time, each row for the hour that begins at its label, 1 January 00:00 first and 29 February left out. Columns
`ghi_w_m2` and `temperature_c` are needed, `dni_w_m2`, `dhi_w_m2` and `wind_m_s` may be given. A column `time` with the
label of each row may be given too: then order and spacing are checked by it, and 29 February may be there. Comments
'# latitude_deg: 1.2', '# longitude_deg: 3.4' and '# utc_offset_h: 5.5' say where and by which clock the rows are;
without them the place's own are taken.
"""

from __future__ import annotations

import csv
import io
import math
import re
import warnings

import pandas as pd

from planner.resource.record import Record, WeatherFileError, record_of, whole_years
from planner.resource.sun import HOURS_PER_YEAR, Place
from planner.scenario.errors import shown
from planner.text import text

COLUMNS = {
    "ghi_w_m2": "ghi",
    "dni_w_m2": "dni",
    "dhi_w_m2": "dhi",
    "temperature_c": "temperature",
    "wind_m_s": "wind",
}
NEEDED = ("ghi_w_m2", "temperature_c")
TIME_NAMES = ("time", "timestamp", "datetime", "date_time", "local_time", "date")
HEADER_BOUNDS = {"latitude_deg": (-90, 90), "longitude_deg": (-180, 180), "utc_offset_h": (-12, 14)}
_SAID = re.compile(rf"#\s*({'|'.join(HEADER_BOUNDS)})\s*[:=]\s*(.*?)\s*")


def read_plain_csv(content: str, place: Place) -> Record:
    """Read the plain CSV.

    Parameters
    ----------
    content : str
        Text of the file.
    place : Place
        Where the scheme stands; its clock holds where the file names none.

    Raises
    ------
    WeatherFileError
        When a header value, the columns, the width of a row, the number of rows or their order is wrong; it names the
        line and the key. Of a file without any of the columns nothing is repeated.
    """
    said = _header_values(content)
    told = re.search(r"^#\s*source\s*:\s*(.+?)\s*$", content, re.MULTILINE | re.IGNORECASE)
    rows = [(number, line.partition("#")[0]) for number, line in enumerate(content.splitlines(), start=1)]
    rows = [(number, line) for number, line in rows if line.strip()]
    if not rows:
        raise WeatherFileError("there is no header row and no row of values")
    names = _names(rows[0][1])
    _check_widths(rows, len(names))
    if len(rows) == 1:
        raise WeatherFileError("0 rows found, 8,760 expected")
    frame = pd.read_csv(
        io.StringIO("\n".join(line for _, line in rows[1:])), names=names, header=None, skipinitialspace=True,
        index_col=False,
    )  # fmt: skip
    chosen, years, clock_h, remarks = _whole_years(frame)
    unused = [name for name in names if name not in COLUMNS and name.lower() not in TIME_NAMES]
    if unused:
        remarks += (text("weather_note.columns_not_used", columns=shown(", ".join(unused), quoted=False)),)
    return record_of(
        {ours: frame[theirs].iloc[chosen] for theirs, ours in COLUMNS.items() if theirs in frame},
        years,
        utc_offset_h=said.get("utc_offset_h", place.utc_offset_h if clock_h is None else clock_h),
        label=told[1] if told else text("weather_source.csv"),
        latitude_deg=said.get("latitude_deg"),
        longitude_deg=said.get("longitude_deg"),
        notes=remarks,
    )


def _header_values(content: str) -> dict[str, float]:
    said: dict[str, float] = {}
    for number, line in enumerate(content.splitlines(), start=1):
        found = _SAID.fullmatch(line)
        if not found:
            continue
        lowest, highest = HEADER_BOUNDS[found[1]]
        try:
            value = float(found[2])
        except ValueError:
            value = math.nan
        if not lowest <= value <= highest:
            raise WeatherFileError(
                f"line {number}: {found[1]}: {shown(found[2])} was given; must be a number from {lowest} to {highest}"
            )
        said[found[1]] = value
    return said


def _names(header: str) -> list[str]:
    names = [name.strip() for name in next(csv.reader([header]))]
    if not set(names) & set(COLUMNS):
        apart = next((mark for mark in ";\t" if set(header.split(mark)) & set(COLUMNS)), None)
        if apart:
            raise WeatherFileError("columns must be separated by commas, and decimals written with a point")
        raise WeatherFileError(
            f"no column {' and no column '.join(NEEDED)} in its first row: it is not a weather file of this project"
        )
    missing = [name for name in NEEDED if name not in names]
    if missing:
        listed = shown(", ".join(names), quoted=False)
        raise WeatherFileError(f"no column {' and no column '.join(missing)}; the header row has {listed}")
    doubled = next((name for name in names if names.count(name) > 1), None)
    if doubled is not None:
        raise WeatherFileError(f"the column {shown(doubled)} is there twice")
    return names


def _check_widths(rows: list[tuple[int, str]], width: int) -> None:
    """Refuse rows that are wider or narrower than the header: their values would stand in the wrong columns."""
    for (number, line), cells in zip(rows, csv.reader(line for _, line in rows), strict=False):
        if len(cells) != width:
            hint = " (decimal commas? write points)" if len(cells) > width else ""
            raise WeatherFileError(
                f"line {number}: {shown(line.strip())} has {len(cells)} values, the header has {width} columns{hint}"
            )


def _whole_years(frame: pd.DataFrame) -> tuple[slice | list[int], int, float | None, tuple[str, ...]]:
    """Rows of whole years, by their labels where there are any and else by their number; and the labels' clock."""
    name = next((column for column in frame.columns if str(column).lower() in TIME_NAMES), None)
    labels, clock_h = (None, None) if name is None else _labels(frame[name])
    if labels is not None:
        rows, years, remarks = whole_years(labels, real_years=len(frame) != HOURS_PER_YEAR)
        return rows.tolist(), years, clock_h, remarks
    if len(frame) % HOURS_PER_YEAR:
        raise WeatherFileError(f"{len(frame):,} rows found, 8,760 (or a whole number of such years) expected")
    unread = () if name is None else (text("weather_note.labels_not_read", column=shown(str(name))),)
    return slice(None), len(frame) // HOURS_PER_YEAR, None, unread


def _labels(given: pd.Series) -> tuple[pd.DatetimeIndex | None, float | None]:
    """Read labels with the month or the day first, and the offset from UTC that they name; None where unreadable."""
    for day_first in (False, True):
        with warnings.catch_warnings(action="ignore"):
            labels = pd.to_datetime(given.astype(str), errors="coerce", dayfirst=day_first)
        if labels.dtype.kind == "M" and labels.notna().all():
            index = pd.DatetimeIndex(labels)
            offset = None if index.tz is None else index[0].utcoffset()
            return index.tz_localize(None), None if offset is None else offset.total_seconds() / 3600
    return None, None
