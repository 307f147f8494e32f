"""The project's own CSV: weather that cannot be right is refused by line and key, and nothing else is repeated."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pandas as pd
import pytest

from planner.resource.files import WeatherFileError, read_weather_file
from planner.resource.years import WeatherYears
from tests.resource.conftest import GREENSBORO

HEADER = "ghi_w_m2,temperature_c"


@pytest.fixture(scope="module")
def rows(typical_year: WeatherYears) -> list[str]:
    """Rows of a real year."""
    pairs = zip(typical_year.ghi_w_m2[:, 0], typical_year.temperature_c[:, 0], strict=True)
    return [f"{ghi:.0f},{air:.1f}" for ghi, air in pairs]


def write(path: Path, rows: list[str], *, header: str = HEADER, comments: str = "") -> Path:
    path.write_text("\n".join([*comments.splitlines(), header, *rows]) + "\n", encoding="utf-8")
    return path


def said(path: Path, **how: str) -> str:
    with pytest.raises(WeatherFileError) as caught:
        read_weather_file(path, GREENSBORO, **how)
    return str(caught.value)


@pytest.mark.parametrize(("times", "share"), [(6, "41 %"), (2, "20 %")], ids=["10 minutes", "half hours"])
def test_rows_of_less_than_an_hour_are_not_taken_for_years(
    tmp_path: Path, rows: list[str], times: int, share: str
) -> None:
    text = said(write(tmp_path / "w.csv", [row for row in rows for _ in range(times)]))
    assert f"{share} of its radiation falls at night" in text
    assert f"the rows are not one hour each ({8760 * times:,} were taken as hours)" in text


def test_shuffled_rows_are_refused(tmp_path: Path, rows: list[str]) -> None:
    order = np.random.default_rng(1).permutation(8760)
    assert "falls at night" in said(write(tmp_path / "w.csv", [rows[place] for place in order]))


@pytest.mark.parametrize("shift", [-9, -1, 1, 5, 12])
def test_a_whole_year_by_a_wrong_clock_is_remarked_on_but_read(tmp_path: Path, rows: list[str], shift: int) -> None:
    year = read_weather_file(write(tmp_path / "w.csv", rows[shift:] + rows[:shift]), GREENSBORO)
    assert any("fits a sun" in note for note in year.notes)


def test_decimal_commas_are_refused_by_line(tmp_path: Path, rows: list[str]) -> None:
    commas = [row.replace(".", ",") for row in rows]
    text = said(write(tmp_path / "w.csv", commas, comments="# made up"))
    assert "line 3: '0,10,0' has 3 values, the header has 2 columns (decimal commas? write points)" in text
    text = said(write(tmp_path / "w.csv", [*rows[:99], "5", *rows[100:]]))
    assert "line 101: '5' has 1 values, the header has 2 columns" in text
    semicolons = [row.replace(",", ";") for row in rows]
    assert "separated by commas" in said(write(tmp_path / "w.csv", semicolons, header=HEADER.replace(",", ";")))


@pytest.mark.parametrize(
    ("line", "wanted"),
    [
        ("utc_offset_h: nan", "line 2: utc_offset_h: 'nan' was given; must be a number from -12 to 14"),
        ("utc_offset_h: 99", "line 2: utc_offset_h: '99' was given; must be a number from -12 to 14"),
        ("utc_offset_h: +05:45", "line 2: utc_offset_h: '+05:45' was given"),
        ("latitude_deg: 0°30'N", "line 2: latitude_deg: "),
        ("latitude_deg = -91", "line 2: latitude_deg: '-91' was given; must be a number from -90 to 90"),
        ("longitude_deg:", "line 2: longitude_deg: '' was given; must be a number from -180 to 180"),
    ],
)
def test_a_wrong_header_value_is_named_by_line_and_key(tmp_path: Path, rows: list[str], line: str, wanted: str) -> None:
    assert wanted in said(write(tmp_path / "w.csv", rows, comments=f"# made up\n# {line}"))


def test_latitude_alone_is_compared_with_the_site(tmp_path: Path, rows: list[str]) -> None:
    path = write(tmp_path / "w.csv", rows, comments="# latitude_deg: -60")
    assert any("for latitude -60" in note for note in read_weather_file(path, GREENSBORO).notes)
    path = write(tmp_path / "w.csv", rows, comments="# latitude_deg: 36.1")
    assert read_weather_file(path, GREENSBORO).notes == ()


@pytest.mark.parametrize("count", [0, 1, 8759, 8761, 8784, 13_140])
def test_rows_that_make_no_whole_years_are_counted(tmp_path: Path, rows: list[str], count: int) -> None:
    assert f"{count:,} rows found, 8,760" in said(write(tmp_path / "w.csv", (rows + rows)[:count]))


def stamped(rows: list[str], labels: pd.DatetimeIndex, how: str = "%Y-%m-%d %H:%M") -> list[str]:
    return [f"{label},{row}" for label, row in zip(labels.strftime(how), rows, strict=True)]


TIMED = f"time,{HEADER}"


@pytest.mark.parametrize("how", ["%Y-%m-%d %H:%M", "%d/%m/%Y %H:%M", "%Y-%m-%dT%H:%M:%S-05:00"])
def test_labels_are_checked_and_29_february_is_left_out(tmp_path: Path, rows: list[str], how: str) -> None:
    labels = pd.date_range("2020-01-01", periods=8784, freq="h")
    longer = rows[: 59 * 24] + ["999,9.9"] * 24 + rows[59 * 24 :]
    year = read_weather_file(write(tmp_path / "w.csv", stamped(longer, labels, how), header=TIMED), GREENSBORO)
    assert year.years == 1
    assert year.notes == ()
    plain = read_weather_file(write(tmp_path / "v.csv", rows), GREENSBORO)
    np.testing.assert_array_equal(year.ghi_w_m2, plain.ghi_w_m2)


def test_the_clock_of_the_labels_counts(tmp_path: Path, rows: list[str]) -> None:
    labels = pd.date_range("2021-01-01", periods=8760, freq="h")
    utc = stamped(rows[-5:] + rows[:-5], labels, "%Y-%m-%dT%H:%MZ")
    year = read_weather_file(write(tmp_path / "w.csv", utc, header=TIMED), GREENSBORO)
    assert "moved from UTC+00:00 to UTC-05:00" in year.source
    np.testing.assert_array_equal(
        year.ghi_w_m2, read_weather_file(write(tmp_path / "v.csv", rows), GREENSBORO).ghi_w_m2
    )


def test_labels_show_wrong_spacing_and_order(tmp_path: Path, rows: list[str]) -> None:
    fine = pd.date_range("2021-01-01", periods=6 * 8760, freq="10min")
    lines = stamped([row for row in rows for _ in range(6)], fine)
    assert "rows found 52,560 in 2021" in said(write(tmp_path / "w.csv", lines, header=TIMED))
    lines = stamped(rows, pd.date_range("2021-01-01", periods=8760, freq="h"))
    lines[30], lines[31] = lines[31], lines[30]
    text = said(write(tmp_path / "w.csv", lines, header=TIMED))
    assert "row 31 of the data: the hour from 2/1 (day/month) 06:00 was expected, 02/01 07:00 found" in text


SECRET = "root:x:0:0:a secret:/root:/bin/sh"


@pytest.mark.parametrize("file_format", ["auto", "epw", "tmy3", "tm2", "pvgis_tmy", "pvgis_hourly", "csv"])
@pytest.mark.parametrize("head", ["", '{"a": 1}\n', "LOCATION,a secret\n", "Latitude (decimal degrees): a secret\n"])
def test_nothing_of_a_file_that_is_no_weather_is_repeated(tmp_path: Path, file_format: str, head: str) -> None:
    path = tmp_path / "w.csv"
    path.write_text(head + f"{SECRET}\n{SECRET},1\n" * 40, encoding="utf-8")
    text = said(path, file_format=file_format)
    assert "secret" not in text
    assert "root" not in text


def test_only_an_ordinary_file_is_read() -> None:
    assert "zero: cannot be read: is not an ordinary file" in said(Path("/dev/zero"))


def test_a_file_beyond_the_limit_is_not_read(tmp_path: Path) -> None:
    with (tmp_path / "w.csv").open("wb") as stream:
        stream.truncate(200_000_000)
    assert "is larger than 100,000,000 bytes" in said(tmp_path / "w.csv")
