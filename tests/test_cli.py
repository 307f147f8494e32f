"""The command line end to end."""

from __future__ import annotations

import json
import shutil
import subprocess
import sys
import tomllib
from html import escape
from pathlib import Path

import openpyxl
import pytest
from typer.testing import CliRunner

from planner.cli import app
from planner.scenario.writer import toml_text
from planner.version import __version__

DOCUMENTED = (
    "name",
    "sources",
    "meets_target",
    "demand_met_percent",
    "tank_m3",
    "modules",
    "capital_cost",
    "life_cycle_cost",
    "annualised_cost",
    "net_present_value",
    "levelised_cost_per_m3",
    "internal_rate_of_return_percent",
    "payback_years",
)
HILL = Path("scenarios/hill-school.toml")


def quick_text() -> str:
    """The hill school with a life of two years and three options, to be quick."""
    raw = tomllib.loads(HILL.read_text(encoding="utf-8"))
    raw["finance"]["analysis_period_years"] = 2
    raw["service"]["options"] = ["solar", "grid", "solar + grid + generator"]
    return toml_text(raw)


@pytest.fixture
def quick(tmp_path: Path) -> Path:
    file = tmp_path / "quick.toml"
    file.write_text(quick_text(), encoding="utf-8")
    return file


@pytest.fixture(scope="module")
def ran(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, tuple[int, str, str]]:
    """The same run once for all, quietly: its folder, and how it ended."""
    folder = tmp_path_factory.mktemp("ran")
    file = folder / "quick.toml"
    file.write_text(quick_text(), encoding="utf-8")
    return folder, planner("run", file, "--outputs", folder, "--quiet")


def planner(*arguments: object) -> tuple[int, str, str]:
    """Run the command line in this process: exit code, standard output, standard error."""
    result = CliRunner().invoke(app, [str(argument) for argument in arguments])
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    return result.exit_code, result.stdout, result.stderr


def test_new_then_run_writes_workbook_json_and_table(tmp_path: Path) -> None:
    file = tmp_path / "my-site.toml"
    assert planner("new", file)[0] == 0
    code, out, err = planner("run", file, "--outputs", tmp_path / "out")
    assert code == 0, err
    assert "technical answer, without prices" in out
    assert "meets the target" in out
    assert out.count("Local codes and licensed practice come first") == 1
    data = json.loads((tmp_path / "out" / "my-site.json").read_text(encoding="utf-8"))
    workbook = openpyxl.load_workbook(tmp_path / "out" / "my-site.xlsx", data_only=True)
    assert workbook.sheetnames[0] == "Answer"
    assert data["best"] in out
    assert sorted(path.name for path in (tmp_path / "out").iterdir()) == ["my-site.json", "my-site.xlsx"]


def test_brief_writes_a_page_that_fetches_nothing_and_says_what_the_workbook_says(quick: Path, tmp_path: Path) -> None:
    text = quick.read_text(encoding="utf-8").replace("modules_in_series = 5", "modules_in_series = 12")
    text = text.replace('name = "Hill school', 'name = "<b>Hill</b> school')
    quick.write_text(text, encoding="utf-8")
    code, out, err = planner("run", quick, "--outputs", tmp_path / "out", "--brief", "--quick")
    assert code == 0, err
    assert "quick.html" in out.replace("\n", "")
    page = (tmp_path / "out" / "quick.html").read_text(encoding="utf-8")
    data = json.loads((tmp_path / "out" / "quick.json").read_text(encoding="utf-8"))
    for part in ("<script", "http://", "https://", "src=", "<b>Hill"):
        assert part not in page
    assert "&lt;b&gt;Hill&lt;/b&gt; school" in page
    verdict = page.split('<p class="verdict">')[1].split("</p>")[0]
    assert data["ranking"][0] in verdict
    assert ("Recommended" in verdict) == data["recommended"]
    for option in data["options"]:
        assert f">{option['name']}</td>" in page
        assert f">{option['life_cycle_cost']:,.0f}</td>" in page
    for verdict in data["checks"]:
        assert (escape(verdict["compared"]) in page) == (verdict["outcome"] == "fail")
    local = "Local codes and licensed practice come first."
    assert page.count(local) == 1
    assert all(escape(caution.removesuffix(local).strip()) in page for caution in data["cautions"])


def test_new_does_not_replace_a_file(tmp_path: Path) -> None:
    file = tmp_path / "mine.toml"
    file.write_text("precious", encoding="utf-8")
    code, _, err = planner("new", file)
    assert code == 2
    assert "is already there" in err
    assert file.read_text(encoding="utf-8") == "precious"
    assert planner("new", file, "--force")[0] == 0


def test_the_json_has_its_documented_fields(quick: Path, tmp_path: Path) -> None:
    raw = tomllib.loads(quick.read_text(encoding="utf-8"))
    del raw["service"]["options"]
    quick.write_text(toml_text(raw), encoding="utf-8")
    assert planner("run", quick, "--outputs", tmp_path, "--quiet", "--quick")[0] == 0
    data = json.loads((tmp_path / "quick.json").read_text(encoding="utf-8"))
    assert data["planner_version"] == __version__
    assert data["schema"] == 3
    assert data["currency"] == "USD"
    assert data["scenario"] == "Hill school and clinic (invented)"
    assert "days: Saunier, Reddy and Kumar 1987, chosen by latitude (28 degrees)" in data["weather"]["source"]
    assert data["weather"]["notes"] == []
    duty = data["duty"]
    head = duty["static_head_m"] + duty["drawdown_m"] + duty["friction_m"]
    assert duty["total_dynamic_head_m"] == pytest.approx(head + duty["residual_head_m"], abs=1e-6)
    assert duty["flow_m3h"] > 0
    assert duty["input_power_w"] > 0
    assert len(data["options"]) == 7
    for option in data["options"]:
        for key in DOCUMENTED:
            assert key in option
        assert [year["year"] for year in option["yearly"]] == [1, 2]
        assert set(option["yearly"][0]) == {
            "year", "demand_m3", "delivered_m3", "shortfall_m3", "pv_used_kwh", "pv_unused_kwh", "grid_kwh",
            "generator_kwh", "fuel_l", "generator_hours", "shortfall_by_daily_limit_m3", "cost",
        }  # fmt: skip
        assert len(option["monthly"]) == 12
        monthly = sum(month["delivered_m3"] for month in option["monthly"])
        assert monthly == pytest.approx(option["yearly"][0]["delivered_m3"], rel=1e-9)


def test_same_scenario_and_seed_give_the_same_json_and_cells(
    ran: tuple[Path, tuple[int, str, str]], quick: Path, tmp_path: Path
) -> None:
    assert planner("run", quick, "--outputs", tmp_path, "--quiet")[0] == 0
    assert (ran[0] / "quick.json").read_bytes() == (tmp_path / "quick.json").read_bytes()
    cells = []
    for folder in (ran[0], tmp_path):
        workbook = openpyxl.load_workbook(folder / "quick.xlsx", read_only=True)
        cells.append({sheet.title: [list(row) for row in sheet.values] for sheet in workbook})
    assert cells[0] == cells[1]


def test_another_seed_gives_other_numbers(quick: Path, tmp_path: Path) -> None:
    for name, seed in (("one", 1), ("two", 2)):
        assert planner("run", quick, "--outputs", tmp_path / name, "--quiet", "--quick", "--seed", seed)[0] == 0
    assert (tmp_path / "one" / "quick.json").read_text() != (tmp_path / "two" / "quick.json").read_text()


def test_quiet_prints_nothing_and_verbose_more(
    ran: tuple[Path, tuple[int, str, str]], quick: Path, tmp_path: Path
) -> None:
    assert ran[1] == (0, "", "")
    assert "Duty:" in planner("run", quick, "--outputs", tmp_path, "--verbose", "--quick")[1]


def test_wrong_input_leaves_an_earlier_workbook_untouched(
    ran: tuple[Path, tuple[int, str, str]], quick: Path, tmp_path: Path
) -> None:
    shutil.copy(ran[0] / "quick.xlsx", tmp_path)
    before = (tmp_path / "quick.xlsx").read_bytes()
    text = quick.read_text(encoding="utf-8")
    quick.write_text(text.replace("static_level_m = 61", "static_level_m = -61"), encoding="utf-8")
    code, out, err = planner("run", quick, "--outputs", tmp_path)
    assert code == 2
    assert out == ""
    assert "borehole.static_level_m: -61 was given; must be at least 0" in err
    assert "Traceback" not in err
    assert (tmp_path / "quick.xlsx").read_bytes() == before


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ("rise_to_tank_inlet_m = 36", "rise_to_tank_inlet_m = 236", "pump.max_head_m: "),
        ("volume_m3 = 20\nsizes", "volume_m3 = 0.2\nsizes", "tank.volume_m3: 0.2 m3 is less than the"),
        ('time_zone = "+05:45"', 'time_zone = "Asia/Kathmando"', "did you mean 'Asia/Kathmandu'?"),
        ("ghi_kwh_m2_day = [3.9,", "ghi_kwh_m2_day = [13.9,", "weather.ghi_kwh_m2_day: "),
        ('pipe = "PE100 SDR11 50"', 'pipe = "PE100 SDR11 51"', "PE100 SDR11 50"),
    ],
)
def test_what_shows_only_when_worked_out_is_named_with_its_line(old: str, new: str, said: str, tmp_path: Path) -> None:
    text = HILL.read_text(encoding="utf-8")
    assert old in text
    file = tmp_path / "site.toml"
    file.write_text(text.replace(old, new), encoding="utf-8")
    code, _, err = planner("run", file, "--outputs", tmp_path)
    assert code == 2
    assert said in err
    assert err.startswith(f"{file}:"), err
    assert err.removeprefix(f"{file}:").split(":")[0].isdigit(), err
    assert not list(tmp_path.glob("*.xlsx"))


def test_a_pump_that_cannot_lift_says_by_how_many_metres(tmp_path: Path) -> None:
    text = HILL.read_text(encoding="utf-8").replace("rise_to_tank_inlet_m = 36", "rise_to_tank_inlet_m = 236")
    file = tmp_path / "site.toml"
    file.write_text(text, encoding="utf-8")
    # Lowest water 65 m down in April and May, 236 m up, 210 m of shut-off head: 91 m short.
    assert "91" in planner("run", file, "--outputs", tmp_path)[2]


def test_a_truncated_weather_file_is_named(tmp_path: Path) -> None:
    source = Path("scenarios/dry-village-weather.csv").read_text(encoding="utf-8").splitlines(keepends=True)
    (tmp_path / "dry-village-weather.csv").write_text("".join(source[:5000]), encoding="utf-8")
    file = tmp_path / "village.toml"
    file.write_text(Path("scenarios/dry-village.toml").read_text(encoding="utf-8"), encoding="utf-8")
    code, _, err = planner("run", file, "--outputs", tmp_path)
    assert code == 2
    assert "weather.file" in err
    assert "8,760" in err or "8760" in err


def test_several_scenarios_each_get_their_files_and_a_wrong_one_does_not_stop_the_rest(
    quick: Path, tmp_path: Path
) -> None:
    wrong = tmp_path / "wrong.toml"
    wrong.write_text("name = 3", encoding="utf-8")
    other = tmp_path / "other.toml"
    other.write_text(quick.read_text(encoding="utf-8"), encoding="utf-8")
    code, _, err = planner("run", quick, wrong, other, "--outputs", tmp_path / "out", "--quiet", "--quick")
    assert code == 2
    assert "name: 3 was given; must be text" in err
    assert sorted(path.name for path in (tmp_path / "out").iterdir()) == [
        "other.json", "other.xlsx", "quick.json", "quick.xlsx",
    ]  # fmt: skip


def test_two_scenarios_of_one_name_are_refused(quick: Path, tmp_path: Path) -> None:
    (tmp_path / "sub").mkdir()
    twin = tmp_path / "sub" / "quick.toml"
    twin.write_text(quick.read_text(encoding="utf-8"), encoding="utf-8")
    code, _, err = planner("run", quick, twin, "--outputs", tmp_path / "out")
    assert code == 2
    assert "rename one" in err


def test_an_output_folder_that_cannot_be_made(quick: Path, tmp_path: Path) -> None:
    blocked = tmp_path / "file"
    blocked.write_text("", encoding="utf-8")
    code, _, err = planner("run", quick, "--outputs", blocked / "out")
    assert code == 2
    assert "cannot be written" in err


def test_weather_shows_twelve_months(quick: Path) -> None:
    code, out, _ = planner("weather", quick)
    assert code == 0
    for month in ("Jan", "Jun", "Dec"):
        assert month in out
    assert "3.90" in out


def test_weather_that_cannot_be_fetched_says_so(quick: Path, tmp_path: Path) -> None:
    code, _, err = planner(
        "weather", quick, "--fetch", "pvgis", "--service-url", "http://127.0.0.1:9/", "--save", tmp_path / "w.csv"
    )
    assert code == 2
    assert "could not be fetched" in err
    assert not (tmp_path / "w.csv").exists()


def test_our_own_fault_ends_with_one(quick: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def broken(*_: object, **__: object) -> None:
        raise RuntimeError("boom")

    monkeypatch.setattr("planner.study.compare.study_scenario", broken)
    code, _, err = planner("run", quick, "--outputs", tmp_path)
    assert code == 1
    assert "RuntimeError: boom" in err
    assert "Traceback" not in err


def test_version_and_module_entry() -> None:
    done = subprocess.run(
        [sys.executable, "-m", "planner", "--version"], capture_output=True, text=True, check=True
    )  # fmt: skip
    assert done.stdout.strip() == f"planner {__version__}"


def test_help_imports_none_of_the_heavy_libraries() -> None:
    code = (
        "import sys; from typer.testing import CliRunner; from planner.cli import app\n"
        "assert CliRunner().invoke(app, ['--help']).exit_code == 0\n"
        "names = {'numpy', 'pandas', 'pvlib', 'scipy', 'openpyxl', 'xlsxwriter', 'numpy_financial'}\n"
        "heavy = names & set(sys.modules)\n"
        "assert not heavy, heavy"
    )
    subprocess.run([sys.executable, "-c", code], check=True)


def test_check_names_what_fails_and_strict_ends_with_one(tmp_path: Path) -> None:
    text = HILL.read_text(encoding="utf-8")
    file = tmp_path / "site.toml"
    text = text.replace("modules_in_series = 5", "modules_in_series = 12")
    file.write_text(text, encoding="utf-8")
    code, out, _ = planner("check", file)
    assert code == 0
    assert "✗ fail" in out
    assert "Remedy:" in out
    assert "look for look for" not in out.lower()
    assert planner("check", file, "--strict")[0] == 1
    assert planner("check", Path("scenarios/dairy-farm.toml"), "--strict")[0] == 0
    assert planner("check", file, "--quiet")[1] == ""


def test_check_ends_with_whether_the_pump_fits_and_counts_what_was_not_given(tmp_path: Path) -> None:
    file = tmp_path / "visit.toml"
    file.write_text(Path("tests/checks/visit.toml").read_text(encoding="utf-8"), encoding="utf-8")
    _, out, _ = planner("check", file)
    lines = [line for line in out.splitlines() if line]
    assert lines[-2].startswith("This pump lifts 1.5 times what the site needs")
    assert lines[-1].startswith("What would fit: a pump rated at about 74 m at 2.50 m3/h")
    assert out.count("? not given:") == 0
    assert "checks could not be made for want of a figure; --verbose" in out
    _, verbose, _ = planner("check", file, "--verbose")
    assert verbose.count("? not given: ") > 10
    assert "checks could not be made" not in verbose


def test_a_form_runs_like_its_scenario(ran: tuple[Path, tuple[int, str, str]], quick: Path, tmp_path: Path) -> None:
    form = tmp_path / "by-form.xlsx"
    assert planner("form", form, "--from", quick)[0] == 0
    assert planner("run", form, "--outputs", tmp_path / "out", "--quiet")[0] == 0
    by_form = json.loads((tmp_path / "out" / "by-form.json").read_text(encoding="utf-8"))
    assert by_form == json.loads((ran[0] / "quick.json").read_text(encoding="utf-8"))


def test_a_blank_form_says_what_is_missing_by_cell(tmp_path: Path) -> None:
    form = tmp_path / "blank.xlsx"
    assert planner("form", form)[0] == 0
    code, _, err = planner("run", form, "--outputs", tmp_path / "out")
    assert code == 2
    assert err.count("\n") > 10
    assert "latitude" in err.lower()
    assert not (tmp_path / "out").exists()


def test_a_clock_far_from_the_sun_is_refused(tmp_path: Path) -> None:
    text = HILL.read_text(encoding="utf-8").replace("longitude_deg = 85.6", "longitude_deg = -85.6")
    file = tmp_path / "site.toml"
    file.write_text(text, encoding="utf-8")
    code, _, err = planner("run", file, "--outputs", tmp_path)
    assert code == 2
    assert "site.time_zone: '+05:45' stands 11.5 hours from the sun at longitude -85.6" in err


def test_run_compares_scenarios_side_by_side(quick: Path, tmp_path: Path) -> None:
    other = tmp_path / "other.toml"
    other.write_text(quick.read_text(encoding="utf-8"), encoding="utf-8")
    compare = tmp_path / "out" / "compare.xlsx"
    code, out, err = planner("run", quick, other, "--outputs", tmp_path / "out", "--compare", compare, "--quick")
    assert code == 0, err
    assert f"Wrote {compare}" in out.replace("\n", "")
    assert openpyxl.load_workbook(compare).sheetnames == ["Programme", "Side by side", "All options"]
    raw = tomllib.loads(quick.read_text(encoding="utf-8")) | {"currency": "KES"}
    other.write_text(toml_text(raw), encoding="utf-8")
    compare.unlink()
    options = ("--outputs", tmp_path / "out", "--compare", compare, "--quiet", "--quick")
    code, _, err = planner("run", quick, other, *options)
    assert code == 2
    assert "different currencies" in err
    assert not compare.exists()


@pytest.mark.parametrize(
    ("name", "words"), [("quick.toml", "xlsx"), ("out/quick.xlsx", "would replace")], ids=["not a workbook", "results"]
)
def test_a_comparison_that_cannot_be_is_refused_first(quick: Path, tmp_path: Path, name: str, words: str) -> None:
    other = tmp_path / "other.toml"
    other.write_text(quick.read_text(encoding="utf-8"), encoding="utf-8")
    code, _, err = planner("run", quick, other, "--outputs", tmp_path / "out", "--compare", tmp_path / name)
    assert code == 2
    assert words in err.replace("\n", " ")
    code, _, err = planner("run", quick, "--outputs", tmp_path / "out", "--compare", tmp_path / "two.xlsx")
    assert code == 2
    assert "at least two" in err
    assert not (tmp_path / "out").exists()
