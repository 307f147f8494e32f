"""Weather fetched over the network, on request only, and kept as our plain CSV."""

from __future__ import annotations

import os
import queue
import threading
from collections.abc import Callable, Sequence
from datetime import date
from pathlib import Path
from typing import Any

import pandas as pd
import pvlib
import requests

from planner.resource.files import PVLIB_COLUMNS, READER_ERRORS, pvgis_tmy_record
from planner.resource.record import Record, WeatherFileError, clock_text, record_of, weather_of, whole_years
from planner.resource.sun import Place, sun_of
from planner.text import text


class FetchError(RuntimeError):
    """The weather could not be fetched; the text says why."""


def fetch_pvgis_tmy(place: Place, url: str | None = None, timeout_s: float = 30.0) -> pd.DataFrame:
    """Fetch the PVGIS typical meteorological year of a place.

    Parameters
    ----------
    place : Place
        Where, and the clock of the result.
    url : str, optional
        Base address of the service with its final '/', by default that known to pvlib.
    timeout_s : float
        How long to wait for an answer.

    Returns
    -------
    pandas.DataFrame
        8,760 rows with the columns of the plain CSV; `attrs` holds `source`, `licence`, `place` and `notes`.

    Raises
    ------
    FetchError
        If there is no answer, the service refuses, or the answer is not a whole year of weather.
    """
    address = url or pvlib.iotools.pvgis.URL

    def ask() -> tuple[pd.DataFrame, dict[str, Any]]:
        answer: tuple[pd.DataFrame, dict[str, Any]] = pvlib.iotools.get_pvgis_tmy(
            place.latitude_deg, place.longitude_deg, outputformat="json", url=address, timeout=timeout_s,
            coerce_year=None,
        )  # fmt: skip
        return answer

    return _frame("PVGIS", ask, pvgis_tmy_record, place, text("weather_source.pvgis_licence"), timeout_s)


def fetch_nasa_power(
    place: Place, year: int | Sequence[int], url: str | None = None, timeout_s: float = 120.0
) -> pd.DataFrame:
    """Fetch hourly weather of real years from NASA POWER.

    Parameters
    ----------
    place : Place
        Where, and the clock of the result.
    year : int or (first, last)
        Calendar year or first and last of several.
    url : str, optional
        Address of the service, by default that known to pvlib.
    timeout_s : float
        How long to wait for the answer.

    Returns
    -------
    pandas.DataFrame
        8,760 rows a year (29 February dropped); columns and `attrs` as in `fetch_pvgis_tmy`.

    Raises
    ------
    FetchError
        As in `fetch_pvgis_tmy`.
    """
    first, last = (year, year) if isinstance(year, int) else (min(year), max(year))
    address = url or pvlib.iotools.nasa_power.URL

    def ask() -> tuple[pd.DataFrame, dict[str, Any]]:
        answer: tuple[pd.DataFrame, dict[str, Any]] = pvlib.iotools.get_nasa_power(
            place.latitude_deg, place.longitude_deg, f"{first}-01-01", f"{last}-12-31", url=address
        )
        return answer

    def convert(frame: pd.DataFrame, meta: dict[str, Any]) -> Record:
        rows, years, remarks = whole_years(pd.DatetimeIndex(frame.index), real_years=True)
        frame = frame.iloc[rows]
        columns = {ours: frame[theirs] for theirs, ours in PVLIB_COLUMNS.items() if theirs in frame}
        label = "weather_source.nasa_power_one_year" if first == last else "weather_source.nasa_power"
        return record_of(
            columns,
            years,
            utc_offset_h=0.0,
            label=text(label, first=first, last=last),
            latitude_deg=float(meta["latitude"]),
            longitude_deg=float(meta["longitude"]),
            notes=remarks,
        )

    return _frame("NASA POWER", ask, convert, place, text("weather_source.nasa_power_licence"), timeout_s)


def _frame(
    service: str,
    ask: Callable[[], tuple[pd.DataFrame, dict[str, Any]]],
    convert: Callable[[pd.DataFrame, dict[str, Any]], Record],
    place: Place,
    licence: str,
    timeout_s: float,
) -> pd.DataFrame:
    try:
        frame, meta = _within(timeout_s, ask)
    except (TimeoutError, requests.Timeout):
        raise FetchError(f"{service} did not answer within {timeout_s:g} s: try again later") from None
    except requests.ConnectionError as error:
        raise FetchError(f"{service} could not be reached; this computer may be offline") from error
    except requests.HTTPError as error:
        raise FetchError(f"{service} refused: {error}") from error
    except (requests.RequestException, *READER_ERRORS) as error:
        raise FetchError(f"{service} gave an answer that cannot be read: {error}") from error
    try:
        weather = weather_of(convert(frame, meta), place, sun_of(place))
    except WeatherFileError as error:
        raise FetchError(f"{service} gave weather that cannot be used: {error}") from error
    except READER_ERRORS as error:
        raise FetchError(f"{service} gave an answer that cannot be read: {error}") from error
    columns = {
        "ghi_w_m2": weather.ghi_w_m2,
        "dni_w_m2": weather.dni_w_m2,
        "dhi_w_m2": weather.dhi_w_m2,
        "temperature_c": weather.temperature_c,
        "wind_m_s": weather.wind_m_s,
    }
    result = pd.DataFrame({name: values.T.ravel() for name, values in columns.items()})
    result.attrs = {"source": weather.source, "licence": licence, "place": place, "notes": weather.notes}
    return result


def _within(seconds: float, ask: Callable[[], Any]) -> Any:
    """Run `ask` but wait no longer than so many seconds: not every pvlib call takes a timeout."""
    answers: queue.Queue[tuple[Any, BaseException | None]] = queue.Queue()

    def run() -> None:
        try:
            answers.put((ask(), None))
        except BaseException as error:  # handed over to the caller, which raises it
            answers.put((None, error))

    threading.Thread(target=run, daemon=True).start()
    try:
        answer, error = answers.get(timeout=seconds)
    except queue.Empty:
        raise TimeoutError from None
    if error is not None:
        raise error
    return answer


def save_as_csv(frame: pd.DataFrame, path: str | Path, *, fetched_on: date) -> None:
    """Write fetched weather as our plain CSV, whole or not at all.

    Parameters
    ----------
    frame : pandas.DataFrame
        From `fetch_pvgis_tmy` or `fetch_nasa_power`.
    path : str or Path
        The file to write; one of that name is replaced.
    fetched_on : date
        Day of the fetch, for the header.

    Raises
    ------
    OSError
        If the file cannot be written.
    """
    path = Path(path)
    place: Place = frame.attrs["place"]
    header = [
        text("weather_source.saved_file", clock=clock_text(place.utc_offset_h)),
        f"source: {frame.attrs['source']}",
        f"licence: {frame.attrs['licence']}",
        f"fetched: {fetched_on.isoformat()}",
        f"latitude_deg: {place.latitude_deg:.10g}",
        f"longitude_deg: {place.longitude_deg:.10g}",
        f"utc_offset_h: {place.utc_offset_h:.10g}",
    ]
    part = path.with_name(f"{path.name}.part")
    try:
        with part.open("w", encoding="utf-8", newline="\n") as file:
            file.writelines(f"# {line}\n" for line in header)
            frame.to_csv(file, index=False, float_format="%.4f", lineterminator="\n")
        os.replace(part, path)
    finally:
        part.unlink(missing_ok=True)
