"""Fetching, against a server of our own on this machine."""

from __future__ import annotations

import json
import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import date
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from urllib.parse import parse_qs, urlsplit

import numpy as np
import pandas as pd
import pytest

from planner.resource.fetch import FetchError, fetch_nasa_power, fetch_pvgis_tmy, save_as_csv
from planner.resource.files import read_weather_file
from planner.resource.sun import Place
from tests.resource.test_weather_files import OFFSET_H, clear_year, write_pvgis_tmy

INDIA = Place(23.0, 77.5, 450.0, 5.5)


@contextmanager
def server(body: str, status: int = 200, wait_s: float = 0.0) -> Iterator[tuple[str, list[str]]]:
    asked: list[str] = []

    class Handler(BaseHTTPRequestHandler):
        def do_GET(self) -> None:
            asked.append(self.path)
            time.sleep(wait_s)
            try:
                self.send_response(status)
                self.send_header("Content-Type", "application/json")
                self.end_headers()
                self.wfile.write(body.encode())
            except OSError:
                pass  # the caller waited no longer

        def log_message(self, *arguments: object) -> None:
            pass

    service = ThreadingHTTPServer(("127.0.0.1", 0), Handler)
    thread = threading.Thread(target=service.serve_forever, daemon=True)
    thread.start()
    try:
        yield f"http://127.0.0.1:{service.server_port}/", asked
    finally:
        service.shutdown()
        service.server_close()
        thread.join()


@pytest.fixture(scope="module")
def pvgis_answer(tmp_path_factory: pytest.TempPathFactory) -> str:
    return write_pvgis_tmy(tmp_path_factory.mktemp("pvgis") / "t.json", INDIA).read_text()


def power_answer(years: range, hole: bool = False) -> str:
    frame = clear_year(INDIA, 30.0)
    names = {
        "ghi": "ALLSKY_SFC_SW_DWN", "dni": "ALLSKY_SFC_SW_DNI", "dhi": "ALLSKY_SFC_SW_DIFF",
        "temp_air": "T2M", "wind_speed": "WS10M",
    }  # fmt: skip
    stamps: list[str] = []
    values: dict[str, list[float]] = {name: [] for name in names}
    for year in years:
        index = pd.date_range(f"{year}-01-01", f"{year}-12-31 23:00", freq="h")
        stamps += list(index.strftime("%Y%m%d%H"))
        for name in names:
            column = list(frame[name].round(3))
            if len(index) == 8784:
                column = column[: 59 * 24] + column[58 * 24 : 59 * 24] + column[59 * 24 :]
            values[name] += column
    if hole:
        values["ghi"][1234] = -999.0
    return json.dumps(
        {
            "geometry": {"coordinates": [77.5, 23.0, 450.0]},
            "properties": {"parameter": {names[name]: dict(zip(stamps, values[name], strict=True)) for name in names}},
            "header": {"fill_value": -999.0},
            "times": {},
            "parameters": {},
        }
    )


def test_pvgis_is_fetched_saved_and_read_again(tmp_path: Path, pvgis_answer: str) -> None:
    with server(pvgis_answer) as (url, asked):
        frame = fetch_pvgis_tmy(INDIA, url)
    query = parse_qs(urlsplit(asked[0]).query)
    assert urlsplit(asked[0]).path == "/tmy"
    assert (query["lat"], query["lon"]) == (["23.0"], ["77.5"])
    assert list(frame) == ["ghi_w_m2", "dni_w_m2", "dhi_w_m2", "temperature_c", "wind_m_s"]
    assert len(frame) == 8760
    assert frame["ghi_w_m2"].sum() == pytest.approx(clear_year(INDIA, 60 * OFFSET_H)["ghi"].sum(), rel=1e-5)

    path = tmp_path / "site.csv"
    path.write_text("old")
    with path.open() as reader:
        save_as_csv(frame, path, fetched_on=date(2025, 3, 4))
        assert reader.read() == "old"  # who is reading the old file gets all of it
    head = path.read_text().split("ghi_w_m2")[0]
    assert "fetched: 2025-03-04" in head
    assert "source: PVGIS typical" in head
    assert "licence: PVGIS, European Commission" in head
    assert list(tmp_path.iterdir()) == [path]
    again = read_weather_file(path, INDIA)
    np.testing.assert_allclose(again.ghi_w_m2[:, 0], frame["ghi_w_m2"], atol=1e-4)
    assert again.notes == ()
    assert again.source.startswith("PVGIS typical")


def test_power_years_are_fetched(tmp_path: Path) -> None:
    with server(power_answer(range(2019, 2021))) as (url, asked):
        frame = fetch_nasa_power(INDIA, (2019, 2020), url)
    query = parse_qs(urlsplit(asked[0]).query)
    assert (query["start"], query["end"], query["time-standard"]) == (["20190101"], ["20201231"], ["utc"])
    assert len(frame) == 2 * 8760
    assert frame["ghi_w_m2"].sum() == pytest.approx(2 * clear_year(INDIA, 30.0)["ghi"].sum(), rel=1e-5)
    save_as_csv(frame, tmp_path / "p.csv", fetched_on=date(2025, 1, 1))
    assert read_weather_file(tmp_path / "p.csv", INDIA).years == 2


def test_one_power_year_with_a_hole_is_refused() -> None:
    with (
        server(power_answer(range(2019, 2020), hole=True)) as (url, _),
        pytest.raises(
            FetchError,
            match=r"NASA POWER gave weather that cannot be used: row 1235 of the data: ghi nan is not a number",
        ),
    ):
        fetch_nasa_power(INDIA, 2019, url)


@pytest.mark.parametrize(
    "fetch", [lambda url: fetch_pvgis_tmy(INDIA, url, 5), lambda url: fetch_nasa_power(INDIA, 2019, url, 5)]
)
@pytest.mark.parametrize(
    ("body", "status", "words"),
    [
        ('{"message": "Location over the sea"}', 400, "refused: .*Location over the sea"),
        ('{"message": "busy"}', 503, "refused: .*busy"),
        ("not json", 200, "an answer that cannot be read"),
        ("{}", 200, "an answer that cannot be read"),
    ],
)
def test_bad_answers(fetch: object, body: str, status: int, words: str) -> None:
    with server(body, status) as (url, _), pytest.raises(FetchError, match=words):
        fetch(url)  # type: ignore[operator]


@pytest.mark.parametrize(
    "fetch", [lambda url: fetch_pvgis_tmy(INDIA, url, 0.2), lambda url: fetch_nasa_power(INDIA, 2019, url, 0.2)]
)
def test_silence(fetch: object) -> None:
    with server("{}", wait_s=1.0) as (url, _):
        start = time.monotonic()
        with pytest.raises(FetchError, match=r"did not answer within 0\.2 s"):
            fetch(url)  # type: ignore[operator]
        assert time.monotonic() - start < 0.9
        time.sleep(1.0)  # let the abandoned request end before its server goes


def test_nobody_there() -> None:
    with server("{}") as (url, _):
        pass
    with pytest.raises(FetchError, match="PVGIS could not be reached"):
        fetch_pvgis_tmy(INDIA, url, 5)


def test_failed_saving_leaves_the_old_file(tmp_path: Path) -> None:
    path = tmp_path / "site.csv"
    path.write_text("old")
    frame = pd.DataFrame({"ghi_w_m2": [1.0]})
    frame.attrs = {"place": INDIA, "source": "s\ud800", "licence": "l"}  # cannot be encoded
    with pytest.raises(UnicodeEncodeError):
        save_as_csv(frame, path, fetched_on=date(2025, 1, 1))
    assert path.read_text() == "old"
    assert list(tmp_path.iterdir()) == [path]
