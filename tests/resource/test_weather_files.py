"""Readers of every format, fed with the files pvlib ships and with small files written here."""

from __future__ import annotations

import json
from pathlib import Path

import numpy as np
import pandas as pd
import pytest

from planner.resource.files import WeatherFileError, read_weather_file
from planner.resource.record import Record, hold_clearness, weather_of
from planner.resource.sun import Place, extraterrestrial_normal, sun_height, sun_of
from planner.resource.years import WeatherYears
from tests.resource.conftest import GREENSBORO, PVLIB_DATA

ALPS = Place(45.0, 8.0, 250.0, 1.0)
NEPAL = Place(27.7, 85.3, 1400.0, 5.75)
INDIA = Place(23.0, 77.5, 450.0, 5.5)
OFFSET_H = 0.1761
MISSING = object()


def months_days(leap: bool = False) -> pd.DatetimeIndex:
    return pd.date_range(f"{2020 if leap else 2022}-01-01", periods=8784 if leap else 8760, freq="h")


def clear_year(place: Place, minute: float, utc_offset_h: float = 0.0) -> pd.DataFrame:
    """Closing irradiance by some clock for the sun `minute` minutes after each hour; every third day is dull."""
    height = sun_height(Place(place.latitude_deg, place.longitude_deg, place.altitude_m, utc_offset_h), minute, 60)
    beam = np.where(height > 0.05, 700.0, 0.0) * np.repeat(np.where(np.arange(365) % 3 == 0, 0.2, 1.0), 24)
    dhi = 120.0 * height
    return pd.DataFrame({"ghi": beam * height + dhi, "dni": beam, "dhi": dhi, "temp_air": 20.0, "wind_speed": 2.5})


def write_epw(path: Path, year: WeatherYears, *, zone: float = -5.0, roll: int = 0, **change: object) -> Path:
    rows = []
    columns = [np.roll(values[:, 0], roll) for values in (
        year.temperature_c, year.ghi_w_m2, year.dni_w_m2, year.dhi_w_m2, year.wind_m_s,
    )]  # fmt: skip
    for stamp, air, ghi, dni, dhi, wind in zip(months_days(), *columns, strict=True):
        rows.append(
            f"1999,{stamp.month},{stamp.day},{stamp.hour + 1},60,x,{air:.1f},5.0,50,98000,0,0,300,{ghi:.0f},{dni:.0f},"
            f"{dhi:.0f},0,0,0,0,180,{wind:.1f},5,5,20,7777,9,999999999,15,0.1,0,88,0.2,0,1"
        )
    head = [f"LOCATION,Made Up,XX,Nowhere,TMY3,999999,{change.get('latitude', 36.1)},-79.95,{zone},273"]
    head += [
        "DESIGN CONDITIONS,0",
        "TYPICAL/EXTREME PERIODS,0",
        "GROUND TEMPERATURES,0",
        "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0",
    ]
    head += ["COMMENTS 1,été", "COMMENTS 2,", "DATA PERIODS,1,1,Data,Sunday,1/1,12/31"]
    path.write_bytes(("\n".join(head + rows) + "\n").encode(str(change.get("encoding", "utf-8"))))
    return path


def tmy_stamps() -> list[str]:
    return [f"{2010 + stamp.month}{stamp:%m%d:%H}00" for stamp in months_days()]


def pvgis_rows(frame: pd.DataFrame) -> list[dict[str, object]]:
    names = {"temp_air": "T2m", "ghi": "G(h)", "dni": "Gb(n)", "dhi": "Gd(h)", "wind_speed": "WS10m"}
    table = frame.rename(columns=names).round(2).assign(RH=50.0, SP=98000.0, WD10m=180.0)
    table["IR(h)"] = 300.0
    return [{"time(UTC)": stamp, **row} for stamp, row in zip(tmy_stamps(), table.to_dict("records"), strict=True)]


def write_pvgis_tmy(path: Path, place: Place, offset: object = OFFSET_H, rows: int = 8760) -> Path:
    frame = clear_year(place, 60 * OFFSET_H)
    chosen = [{"month": month, "year": 2010 + month} for month in range(1, 13)]
    records = pvgis_rows(frame)[:rows]
    if path.suffix == ".json":
        where = {"latitude": place.latitude_deg, "longitude": place.longitude_deg, "elevation": 250.0}
        if offset is not MISSING:
            where["irradiance_time_offset"] = offset  # type: ignore[assignment]
        whole = {
            "inputs": {"location": where},
            "outputs": {"months_selected": chosen, "tmy_hourly": records},
            "meta": {"inputs": {}},
        }
        path.write_text(json.dumps(whole))
        return path
    names = ["time(UTC)", "T2m", "RH", "G(h)", "Gb(n)", "Gd(h)", "IR(h)", "WS10m", "WD10m", "SP"]
    lines = [
        f"Latitude (decimal degrees): {place.latitude_deg:.3f}",
        f"Longitude (decimal degrees): {place.longitude_deg:.3f}",
        "Elevation (m): 250.0",
        f"Irradiance Time Offset (h): {offset}",
        "month,year",
        *(f"{item['month']},{item['year']}" for item in chosen),
        ",".join(names),
        *(",".join(str(record[name]) for name in names) for record in records),
        "",
        "T2m: 2-m air temperature (degree Celsius)",
    ]
    path.write_text("\r\n".join(lines) + "\r\n")
    return path


def write_pvgis_hourly(
    path: Path, place: Place, years: list[int], *, parts: bool = True, slope: object = 0, cut: int = 0
) -> Path:
    frames = []
    for number, year in enumerate(years):
        stamps = pd.date_range(f"{year}-01-01 00:10", f"{year}-12-31 23:10", freq="h")
        frame = clear_year(place, 10.0) * (1.0 + 0.1 * number)
        if len(stamps) == 8784:  # 29 February repeats the day before, ten times as bright
            frame = pd.concat([frame[: 59 * 24], 10 * frame[58 * 24 : 59 * 24], frame[59 * 24 :]])
        frames.append(frame.assign(time=stamps.strftime("%Y%m%d:%H%M")))
    whole = pd.concat(frames, ignore_index=True)
    if cut:
        whole = whole.iloc[:-cut]
    table = pd.DataFrame({"time": whole["time"]})
    if parts:
        table["Gb(i)"], table["Gd(i)"], table["Gr(i)"] = (
            (whole["ghi"] - whole["dhi"]).round(2),
            whole["dhi"].round(2),
            0.0,
        )
    else:
        table["G(i)"] = whole["ghi"].round(2)
    table = table.assign(H_sun=10.0, T2m=20.0, WS10m=2.5, Int=0.0)
    if path.suffix == ".json":
        mounting = {"fixed": {"slope": {"value": slope}, "azimuth": {"value": 0}, "type": "free-standing"}}
        inputs = {
            "location": {"latitude": place.latitude_deg, "longitude": place.longitude_deg, "elevation": 250.0},
            "mounting_system": mounting if slope is not None else {"two_axis": {}},
        }
        path.write_text(
            json.dumps({"inputs": inputs, "outputs": {"hourly": table.to_dict("records")}, "meta": {"inputs": {}}})
        )
        return path
    head = [
        f"Latitude (decimal degrees):\t{place.latitude_deg:.3f}",
        f"Longitude (decimal degrees):\t{place.longitude_deg:.3f}",
        "Elevation (m):\t250", "Radiation database:\tPVGIS-SARAH3", "", "", f"Slope: {slope} deg. ", "Azimuth: 0 deg. ",
    ]  # fmt: skip
    path.write_text("\n".join(head) + "\n" + table.to_csv(index=False) + "\nG(i): Global irradiance\n")
    return path


def write_csv(path: Path, year: WeatherYears, names: list[str], comments: str = "") -> Path:
    columns = {
        "ghi_w_m2": year.ghi_w_m2, "dni_w_m2": year.dni_w_m2, "dhi_w_m2": year.dhi_w_m2,
        "temperature_c": year.temperature_c, "wind_m_s": year.wind_m_s,
    }  # fmt: skip
    frame = pd.DataFrame({name: columns[name].T.ravel() for name in names})
    path.write_text(comments + frame.to_csv(index=False))
    return path


ALL = ["ghi_w_m2", "dni_w_m2", "dhi_w_m2", "temperature_c", "wind_m_s"]


# ---------------------------------------------------------------- each format


def test_epw(tmp_path: Path, typical_year: WeatherYears) -> None:
    year = read_weather_file(write_epw(tmp_path / "a.epw", typical_year), GREENSBORO)
    np.testing.assert_array_equal(year.ghi_w_m2, typical_year.ghi_w_m2)
    np.testing.assert_array_equal(year.dni_w_m2, typical_year.dni_w_m2)
    np.testing.assert_allclose(year.temperature_c, typical_year.temperature_c, atol=1e-9)
    assert year.notes == ()
    assert "Made Up" in year.source


def test_epw_in_an_older_encoding(tmp_path: Path, typical_year: WeatherYears) -> None:
    year = read_weather_file(write_epw(tmp_path / "a.epw", typical_year, encoding="latin-1"), GREENSBORO)
    assert year.ghi_w_m2.sum() == typical_year.ghi_w_m2.sum()


def test_epw_with_utc_rows_under_a_foreign_zone_is_noticed(tmp_path: Path, typical_year: WeatherYears) -> None:
    """Some files hold rows in UTC order while the header names a zone; here UTC-5, so the sun is 5 h off."""
    year = read_weather_file(write_epw(tmp_path / "a.epw", typical_year, roll=5), GREENSBORO)
    assert any("5 hours earlier" in note for note in year.notes)


def test_epw_for_elsewhere_is_noticed(tmp_path: Path, typical_year: WeatherYears) -> None:
    year = read_weather_file(write_epw(tmp_path / "a.epw", typical_year, latitude=35.2), GREENSBORO)
    assert any("latitude 35.2" in note and "site is at 36.1" in note for note in year.notes)


def test_tm2_with_a_city_of_two_words(tmp_path: Path) -> None:
    text = (PVLIB_DATA / "12839.tm2").read_text()
    path = tmp_path / "b.tm2"
    path.write_text(text.replace("MIAMI     ", "NEW  MIAMI", 1))
    year = read_weather_file(path, Place(25.8, -80.26667, 2, -5))
    assert year.ghi_w_m2.sum() / 1000 == pytest.approx(1792.618, abs=1e-6)
    assert "New" in year.source
    assert year.notes == ()


@pytest.mark.parametrize(
    ("place", "suffix"),
    [
        pytest.param(ALPS, "json", id="utc+1-json"),
        pytest.param(ALPS, "csv", id="utc+1-csv", marks=pytest.mark.slow),
        pytest.param(NEPAL, "json", id="utc+5:45-json", marks=pytest.mark.slow),
        pytest.param(NEPAL, "csv", id="utc+5:45-csv"),
        pytest.param(INDIA, "json", id="utc+5:30-json", marks=pytest.mark.slow),
        pytest.param(INDIA, "csv", id="utc+5:30-csv", marks=pytest.mark.slow),
    ],
)
def test_pvgis_typical_year(tmp_path: Path, suffix: str, place: Place) -> None:
    year = read_weather_file(write_pvgis_tmy(tmp_path / f"t.{suffix}", place), place)
    given = clear_year(place, 60 * OFFSET_H)
    assert year.years == 1
    assert year.notes == ()
    assert year.ghi_w_m2.sum() == pytest.approx(given["ghi"].sum(), rel=1e-5)
    assert year.dhi_w_m2.sum() == pytest.approx(given["dhi"].sum(), rel=0.02)
    assert year.dni_w_m2.sum() == pytest.approx(given["dni"].sum(), rel=0.02)
    height = np.cos(np.radians(year.sun.zenith_deg))[:, None]
    assert np.abs(year.dni_w_m2 * height + year.dhi_w_m2 - year.ghi_w_m2).max() < 1e-9
    # Ten-minute samples of the sun miss what five-minute steps still give at the horizon.
    assert year.ghi_w_m2[year.sun.extraterrestrial_horizontal_wh_m2 == 0].max() < 1
    # The same sky as the place's own mid-hour sun sees it; hours at the horizon differ most.
    own = clear_year(place, 30.0, place.utc_offset_h)
    for name in ("ghi", "dni", "dhi"):
        misses = np.abs(getattr(year, f"{name}_w_m2")[:, 0] - own[name])
        assert misses.mean() < 0.06 * own[name].mean(), name
    assert "moved from UTC+00:00" in year.source


def test_pvgis_without_an_offset_is_remarked_on(tmp_path: Path) -> None:
    year = read_weather_file(write_pvgis_tmy(tmp_path / "t.json", ALPS, MISSING), ALPS)
    assert any("does not say at which minute" in note for note in year.notes)


@pytest.mark.parametrize("suffix", ["json", "csv"])
def test_pvgis_hourly_of_several_years(tmp_path: Path, suffix: str) -> None:
    path = write_pvgis_hourly(tmp_path / f"h.{suffix}", INDIA, [2019, 2020, 2021], cut=100)
    year = read_weather_file(path, INDIA)
    given = clear_year(INDIA, 10.0)
    assert year.years == 2  # 2021 is not whole
    assert any("2021" in note for note in year.notes)
    # 29 February, ten times as bright, is gone.
    np.testing.assert_allclose(year.ghi_w_m2.sum(axis=0), given["ghi"].sum() * np.array([1, 1.1]), rtol=1e-5)
    np.testing.assert_allclose(year.annual_factor, [1 / 1.05, 1.1 / 1.05], rtol=1e-5)
    assert year.dhi_w_m2[:, 0].sum() == pytest.approx(given["dhi"].sum(), rel=0.02)


def test_pvgis_hourly_of_the_whole_alone_is_split(tmp_path: Path) -> None:
    year = read_weather_file(write_pvgis_hourly(tmp_path / "h.csv", ALPS, [2019], parts=False), ALPS)
    assert "Erbs" in year.source
    assert 0 < year.dhi_w_m2.sum() < year.ghi_w_m2.sum()


@pytest.mark.parametrize(
    ("suffix", "slope", "words"),
    [("json", 30, "sloping 30 degrees"), ("csv", 35, "sloping 35 degrees"), ("json", None, "does not say the slope")],
)
def test_pvgis_hourly_of_a_tilted_plane_is_refused(tmp_path: Path, suffix: str, slope: object, words: str) -> None:
    path = write_pvgis_hourly(tmp_path / f"h.{suffix}", ALPS, [2019], slope=slope)
    with pytest.raises(WeatherFileError, match=words):
        read_weather_file(path, ALPS)


def test_csv_with_everything(tmp_path: Path, typical_year: WeatherYears) -> None:
    year = read_weather_file(write_csv(tmp_path / "w.csv", typical_year, ALL, "# made up\n"), GREENSBORO)
    for name in ALL:
        np.testing.assert_allclose(getattr(year, name), getattr(typical_year, name), atol=1e-9)
    assert year.notes == ()


def test_csv_of_global_and_temperature_alone(tmp_path: Path, typical_year: WeatherYears) -> None:
    path = write_csv(tmp_path / "w.csv", typical_year, ["ghi_w_m2", "temperature_c"])
    year = read_weather_file(path, GREENSBORO)
    np.testing.assert_allclose(year.ghi_w_m2, typical_year.ghi_w_m2)
    assert year.dni_w_m2.sum() == pytest.approx(typical_year.dni_w_m2.sum(), rel=0.10)
    assert set(np.unique(year.wind_m_s)) == {1.0}
    assert "Erbs" in year.source
    assert "wind assumed" in year.source


@pytest.mark.parametrize("known", ["dni_w_m2", "dhi_w_m2"])
def test_csv_with_one_part_gets_the_other_by_closure(tmp_path: Path, typical_year: WeatherYears, known: str) -> None:
    path = write_csv(tmp_path / "w.csv", typical_year, ["ghi_w_m2", "temperature_c", known])
    year = read_weather_file(path, GREENSBORO)
    assert year.dni_w_m2.sum() == pytest.approx(typical_year.dni_w_m2.sum(), rel=0.02)
    assert year.dhi_w_m2.sum() == pytest.approx(typical_year.dhi_w_m2.sum(), rel=0.02)


def test_csv_by_another_clock_is_moved(tmp_path: Path, typical_year: WeatherYears) -> None:
    path = write_csv(
        tmp_path / "w.csv", typical_year, ALL, "# utc_offset_h: -5\n# latitude_deg: 36.1\n# longitude_deg: -79.95\n"
    )
    whole = read_weather_file(path, Place(36.1, -79.95, 273, -7))
    np.testing.assert_allclose(whole.ghi_w_m2, np.roll(typical_year.ghi_w_m2, -2, axis=0))
    half = read_weather_file(path, Place(36.1, -79.95, 273, -4.5))
    assert half.ghi_w_m2.sum() == pytest.approx(typical_year.ghi_w_m2.sum(), rel=1e-9)
    assert half.temperature_c.mean() == pytest.approx(typical_year.temperature_c.mean(), rel=1e-9)
    assert half.notes == ()


def test_csv_of_two_years(tmp_path: Path, typical_year: WeatherYears) -> None:
    text = write_csv(tmp_path / "w.csv", typical_year, ALL).read_text()
    (tmp_path / "w.csv").write_text(text + text.partition("\n")[2])
    year = read_weather_file(tmp_path / "w.csv", GREENSBORO)
    assert year.years == 2
    np.testing.assert_array_equal(year.ghi_w_m2[:, 0], year.ghi_w_m2[:, 1])


def test_a_shifted_csv_is_noticed(tmp_path: Path, typical_year: WeatherYears) -> None:
    lines = write_csv(tmp_path / "w.csv", typical_year, ALL).read_text().splitlines()
    (tmp_path / "w.csv").write_text("\n".join([lines[0], lines[-1], *lines[1:-1]]) + "\n")
    year = read_weather_file(tmp_path / "w.csv", GREENSBORO)
    assert any("1 hour earlier" in note for note in year.notes)


# ---------------------------------------------------------------- what is refused, and how


def broken(path: Path, row: int, column: int, text: str) -> None:
    lines = path.read_text().splitlines()
    cells = lines[row].split(",")
    cells[column] = text
    lines[row] = ",".join(cells)
    path.write_text("\n".join(lines) + "\n")


@pytest.mark.parametrize(
    ("cell", "words"),
    [
        ("9999", r"row 4000 of the data: ghi 9999 is outside -10 to 1600 \(a code for a missing value"),
        ("", r"row 4000 of the data: ghi nan is not a number"),
        ("inf", r"row 4000 of the data: ghi inf is not a number"),
        ("much", r"row 4000 of the data: ghi much is not a number"),
        ("-50", r"row 4000 of the data: ghi -50 is outside"),
    ],
)
def test_bad_cell_is_named(tmp_path: Path, typical_year: WeatherYears, cell: str, words: str) -> None:
    path = write_csv(tmp_path / "w.csv", typical_year, ALL)
    broken(path, 4000, 0, cell)
    with pytest.raises(
        WeatherFileError, match=words.replace("-50 is", r"-50(\.0)? is").replace("9999 is", r"9999(\.0)? is")
    ):
        read_weather_file(path, GREENSBORO)


def test_missing_codes_in_an_epw_are_named(tmp_path: Path, typical_year: WeatherYears) -> None:
    path = write_epw(tmp_path / "a.epw", typical_year)
    broken(path, 8 + 99, 14, "9999")
    with pytest.raises(WeatherFileError, match=r"a\.epw \(read as epw\): row 100 of the data: dni 9999"):
        read_weather_file(path, GREENSBORO)


def test_column_of_missing_codes_is_left_out(tmp_path: Path, typical_year: WeatherYears) -> None:
    lines = (
        write_csv(tmp_path / "w.csv", typical_year, ["ghi_w_m2", "temperature_c", "wind_m_s"]).read_text().splitlines()
    )
    (tmp_path / "w.csv").write_text("\n".join([lines[0], *(line.rpartition(",")[0] + ",999" for line in lines[1:])]))
    year = read_weather_file(tmp_path / "w.csv", GREENSBORO)
    assert any("wind: left out" in note for note in year.notes)
    assert year.wind_m_s.max() == 1.0


def test_small_negative_values_are_said(tmp_path: Path, typical_year: WeatherYears) -> None:
    path = write_csv(tmp_path / "w.csv", typical_year, ALL)
    broken(path, 1, 0, "-2")
    year = read_weather_file(path, GREENSBORO)
    assert any("1 small negative values of ghi" in note for note in year.notes)
    assert year.ghi_w_m2.min() == 0


@pytest.mark.parametrize("missing", ["ghi_w_m2", "temperature_c"])
def test_missing_column_is_named(tmp_path: Path, typical_year: WeatherYears, missing: str) -> None:
    path = write_csv(tmp_path / "w.csv", typical_year, [name for name in ALL if name != missing])
    with pytest.raises(WeatherFileError, match=f"no column {missing}; the header row has"):
        read_weather_file(path, GREENSBORO)


def test_unused_column_is_said(tmp_path: Path, typical_year: WeatherYears) -> None:
    path = write_csv(tmp_path / "w.csv", typical_year, ALL)
    path.write_text(path.read_text().replace("wind_m_s", "wind", 1))
    assert any("columns not used: wind" in note for note in read_weather_file(path, GREENSBORO).notes)


@pytest.mark.parametrize("kind", ["csv", "epw", "tm2", "tmy3", "pvgis.csv", "pvgis.json", "hourly.json"])
def test_short_file_is_refused(tmp_path: Path, typical_year: WeatherYears, kind: str) -> None:
    path = tmp_path / f"short.{kind}"
    if kind == "csv":
        text = write_csv(path, typical_year, ALL).read_text()
        path.write_text("\n".join(text.splitlines()[:5001]))
    elif kind == "epw":
        text = write_epw(path, typical_year).read_text()
        path.write_text("\n".join(text.splitlines()[:5008]))
    elif kind in ("tm2", "tmy3"):
        name, head = ("12839.tm2", 1) if kind == "tm2" else ("723170TYA.CSV", 2)
        path.write_text("\n".join((PVLIB_DATA / name).read_text().splitlines()[: 5000 + head]) + "\n")
    elif kind == "hourly.json":
        write_pvgis_hourly(path, ALPS, [2019], cut=3760)
    else:
        write_pvgis_tmy(path, ALPS, rows=5000)
    with pytest.raises(
        WeatherFileError, match=r"short.*(5,000 rows found, 8,760|rows found: 5,000 in 2019|rows found 5,000 in 2019)"
    ):
        read_weather_file(path, GREENSBORO)


def test_hours_out_of_order_are_named(tmp_path: Path, typical_year: WeatherYears) -> None:
    path = write_epw(tmp_path / "a.epw", typical_year)
    lines = path.read_text().splitlines()
    lines[8 + 30], lines[8 + 31] = lines[8 + 31], lines[8 + 30]
    path.write_text("\n".join(lines) + "\n")
    with pytest.raises(
        WeatherFileError, match=r"row 31 of the data: the hour from 2/1 \(day/month\) 06:00 was expected"
    ):
        read_weather_file(path, GREENSBORO)


@pytest.mark.parametrize("file_format", ["epw", "tmy3", "tm2", "pvgis_tmy", "pvgis_hourly", "csv"])
@pytest.mark.parametrize("text", ["", "nothing\nof the kind\n", "{}", "\x00\x01\x02", "a,b\n1,2\n"])
def test_nonsense_is_refused_by_every_reader(tmp_path: Path, file_format: str, text: str) -> None:
    path = tmp_path / "nonsense.txt"
    path.write_text(text)
    with pytest.raises(WeatherFileError, match=r"nonsense\.txt.*read as " + file_format):
        read_weather_file(path, GREENSBORO, file_format=file_format)


def test_absent_file_and_unknown_format(tmp_path: Path) -> None:
    with pytest.raises(WeatherFileError, match=r"none\.epw: cannot be read: No such file"):
        read_weather_file(tmp_path / "none.epw", GREENSBORO)
    with pytest.raises(WeatherFileError, match="format 'xls' is not one of auto, epw"):
        read_weather_file(tmp_path / "none.epw", GREENSBORO, file_format="xls")


# ---------------------------------------------------------------- moving between clocks


@pytest.mark.parametrize("steps", [-137, -6, 1, 3, 66, 12 * 24])
def test_moving_keeps_the_sum_and_the_night(steps: int) -> None:
    weight = extraterrestrial_normal(5) * sun_height(INDIA, 2.5, 5)
    source = np.roll(weight, -steps).reshape(8760, 12).mean(axis=1)
    clearness = np.random.default_rng(1).uniform(0.1, 0.8, 8760)
    values = np.stack([clearness * source, 0.5 * source], axis=1)
    moved = hold_clearness(values, weight, steps)
    np.testing.assert_allclose(moved.sum(axis=0), values.sum(axis=0), rtol=1e-12)
    own = weight.reshape(8760, 12).mean(axis=1)
    np.testing.assert_allclose(moved[:, 1], 0.5 * own, atol=0.05)  # even clearness stays even
    assert moved[own == 0].max() < 1e-9
    twilight = np.where(source > 0, values[:, 0], 1.0)[:, None]
    np.testing.assert_allclose(hold_clearness(twilight, weight, steps).sum(), twilight.sum(), rtol=1e-12)


def test_there_and_back_again() -> None:
    """Half an hour on and half an hour back smooths the hours but leaves days and the sun's hours alone."""
    sun = sun_of(INDIA)
    ghi = 0.6 * sun.extraterrestrial_horizontal_wh_m2[:, None]
    record = Record(ghi, np.full_like(ghi, 20.0), None, None, None, 5.5, 0.0, None, None, "made up")
    clock = Place(INDIA.latitude_deg, INDIA.longitude_deg, INDIA.altitude_m, 6.0)
    moved = weather_of(record, clock, sun_of(clock))
    back = weather_of(
        Record(moved.ghi_w_m2, moved.temperature_c, None, None, None, 6.0, 0.0, None, None, "made up"), INDIA, sun
    )
    np.testing.assert_allclose(back.ghi_w_m2, ghi, atol=1.0)
