"""Weather estimated from coordinates: what the years keep, and that every answer names it as what it is."""

from __future__ import annotations

import json
import tomllib
from pathlib import Path
from typing import Any

import openpyxl
import pytest

from planner.assumptions.reader import check_scenario
from planner.resource.climatology import climatology_at
from planner.scenario.errors import InputError
from planner.scenario.writer import starter_text, toml_text
from planner.study.site import place_of, weather_of
from tests.test_cli import planner

NOTE = "sun and temperature are an estimate: measure or fetch before money is committed"
SOURCES = ("MERRA-2", "modified Copernicus Climate Change Service information")


def raw(**site: Any) -> dict[str, Any]:
    data = tomllib.loads(starter_text())
    data["weather"] = {"kind": "estimate"}
    data["finance"]["analysis_period_years"] = 1
    data["service"] = data.get("service", {}) | {"options": ["solar", "solar + grid"]}
    data["site"] |= site
    return data


def test_years_keep_the_reduced_months() -> None:
    scenario = check_scenario(raw(), "test")
    place = place_of(scenario)
    weather = weather_of(scenario, place, Path())
    found = climatology_at(place.latitude_deg, place.longitude_deg, place.altitude_m)
    months = weather.monthly_table()
    assert months["ghi_kwh_m2_day"] == pytest.approx(found.ghi_kwh_m2_day, rel=1e-6)
    assert months["temperature_mean_c"] == pytest.approx(found.temperature_c, abs=1e-6)
    assert weather.notes[0].startswith(NOTE)
    assert not [note for note in weather.notes if "give the monthly range" in note]
    assert all(source in weather.source for source in SOURCES)


@pytest.mark.parametrize(
    ("site", "key", "words"),
    [
        ({"longitude_deg": -28, "time_zone": "-02:00"}, "site.latitude_deg", "longitude 28 would be on or near land"),
        ({"latitude_deg": 15, "longitude_deg": -23.5, "time_zone": "-01:00"}, "weather.kind", "give twelve monthly"),
    ],
)
def test_a_place_without_figures(site: dict[str, Any], key: str, words: str) -> None:
    scenario = check_scenario(raw(**site), "test")
    with pytest.raises(InputError) as caught:
        weather_of(scenario, place_of(scenario), Path())
    assert caught.value.problems[0].key == key
    assert words in caught.value.problems[0].text


def test_a_latitude_that_is_a_longitude() -> None:
    with pytest.raises(InputError, match=r"-120 was given; must be at least -90: more than 90 can only be a longitude"):
        check_scenario(raw(latitude_deg=-120, longitude_deg=15), "test")
    with pytest.raises(InputError, match="must be at most 90") as caught:
        check_scenario(raw(latitude_deg=200), "test")
    assert "swapped" not in str(caught.value)


def test_run_and_check_name_the_estimate(tmp_path: Path) -> None:
    file = tmp_path / "site.toml"
    file.write_text(toml_text(raw()), encoding="utf-8")
    code, out, err = planner("run", file, "--outputs", tmp_path, "--quick")
    assert code == 0, err
    assert NOTE in " ".join(out.split())
    data = json.loads((tmp_path / "site.json").read_text())
    assert data["weather"]["notes"][0].startswith(NOTE)
    assert [caution for caution in data["cautions"] if caution.startswith(NOTE)]
    assert all(source in data["weather"]["source"] for source in SOURCES)
    first_sheet = openpyxl.load_workbook(tmp_path / "site.xlsx", data_only=True)["Answer"]
    cells = [cell for row in first_sheet.values for cell in row if cell is not None]
    verdict = next(place for place, cell in enumerate(cells) if str(cell).startswith("! "))
    condition = "Sun and temperature are an estimate for the place: measure or fetch them before money is committed."
    assert condition in cells[verdict : verdict + 5]  # in the band of the verdict
    _, out, _ = planner("check", file)
    assert NOTE in " ".join(out.split())


@pytest.mark.slow
@pytest.mark.parametrize(
    ("command", "stem"), [(("size",), "size"), (("worth", "grid"), "worth-grid"), (("sweep",), "sweep")]
)
def test_size_worth_and_sweep_name_the_estimate(command: tuple[str, ...], stem: str, tmp_path: Path) -> None:
    file = tmp_path / "site.toml"
    file.write_text(toml_text(raw()), encoding="utf-8")
    first, *more = command
    code, out, err = planner(first, file, *more, "--outputs", tmp_path)
    assert code == 0, err
    said = " ".join(out.split())
    assert NOTE in said
    assert all(source in said for source in SOURCES)
    assert (tmp_path / f"site-{stem}.xlsx").exists()


def test_weather_of_coordinates() -> None:
    code, out, err = planner("weather", "--latitude", -15, "--longitude", 27)
    assert code == 0, err
    said = " ".join(out.split())
    # 7.28 kWh/m2/day in the table's October, of which nine tenths are used; 33.5 deg C at sea level
    assert "Oct 6.55 7.28 26." in said
    assert "Africa/Lusaka" in said
    assert NOTE in said
    assert all(source in said for source in SOURCES)


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        ((), "needs a scenario, or --latitude and --longitude"),
        (("--latitude", -16), "needs a scenario, or --latitude and --longitude"),
        (("site.toml", "--latitude", -16, "--longitude", 28), "one or the other"),
        (("--latitude", 128, "--longitude", -16), "the two may have been swapped"),
        (("--latitude", 15, "--longitude", -23.5), "the climatology has nothing for latitude 15"),
        (("--latitude", 0, "--longitude", -30), "lies in the open sea"),
    ],
)
def test_wrong_coordinates(arguments: tuple[object, ...], words: str) -> None:
    code, out, err = planner("weather", *arguments)
    assert code == 2
    assert out == ""
    assert words in err


def test_no_connection_is_said_in_one_line(tmp_path: Path) -> None:
    code, out, err = planner(
        "weather", "--latitude", -16, "--longitude", 28, "--fetch", "pvgis", "--service-url", "http://127.0.0.1:9/",
        "--save", tmp_path / "w.csv",
    )  # fmt: skip
    assert (code, out) == (2, "")
    assert err.strip().count("\n") == 0
    assert "PVGIS could not be reached; this computer may be offline" in err
    assert '[weather] kind = "estimate"' in err
    assert not any(word in err for word in ("HTTPConnectionPool", "urllib3", "Errno"))
    assert list(tmp_path.iterdir()) == []
