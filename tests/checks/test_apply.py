"""`planner check --apply`: the file written passes its checks, or what still fails is named; all else stays."""

from __future__ import annotations

import json
import shutil
import tomllib
from pathlib import Path

import pytest
from typer.testing import CliRunner

from planner.assumptions.reader import read_scenario
from planner.checks.remedies import carried_out
from planner.checks.verdict import failed
from planner.cli import app
from planner.report.scenario_file import remedied_file
from planner.scenario.paths import data_at, parts_of
from planner.scenario.reader import read_raw
from planner.scenario.writer import toml_text
from tests.checks.test_remedies_tried import faulty_sites, judged_in_the_full_sites_weather

EXAMPLES = Path("scenarios")

# What is put wrong in each example, as in its text, and the checks that no computed remedy mends.
FAULTY: dict[str, tuple[dict[str, str], list[str]]] = {
    "hill-school": (
        {
            "strings = 1\n": "strings = 4  # as many as the roof holds\n",
            "length_m = 90\nsection_mm2 = 2.5": "length_m = 90\nsection_mm2 = 1.5",
            "{ chainage_m = 420, level_m = 27, air_valve": "{ chainage_m = 420, level_m = 37, air_valve",
            'pipe = "PE100 SDR11 50"\n': 'pipe = "PE100 SDR17 50"  # what the shop had\npressure_class_bar = 3\n',
        },
        [],
    ),
    "dry-village": (
        {"rating_kw = 14\n": "rating_kw = 5\n", "length_m = 40\nsection_mm2 = 6": "length_m = 400\nsection_mm2 = 1.5"},
        [],
    ),
    "dairy-farm": (
        {
            "string_fuse_a = 25\n": "string_fuse_a = 10  # from the old array\n",
            "length_m = 72\nsection_mm2 = 4": "length_m = 52\nsection_mm2 = 1.5",
            "rise_to_tank_inlet_m = 17": "rise_to_tank_inlet_m = 40",
        },
        ["head at the flow to plan on"],
    ),
    "market-garden": (
        {"modules_in_series = 10\n": "modules_in_series = 14\n", 'outdoor = "yes"': 'outdoor = "no"'},
        [],
    ),
}


def planner(*arguments: object) -> tuple[int, str, str]:
    """Run the command line in this process: exit code, standard output, standard error."""
    result = CliRunner().invoke(app, [str(argument) for argument in arguments])
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    return result.exit_code, " ".join(result.stdout.split()), result.stderr


def faulty(name: str, folder: Path) -> Path:
    """An example with its faults, in a folder of its own with what it reads."""
    text = (EXAMPLES / f"{name}.toml").read_text(encoding="utf-8")
    for right, wrong in FAULTY[name][0].items():
        assert text.count(right) == 1, right
        text = text.replace(right, wrong)
    folder.mkdir()
    for file in EXAMPLES.glob("*.csv"):
        shutil.copy(file, folder)
    file = folder / f"{name}.toml"
    file.write_text(text, encoding="utf-8")
    return file


@pytest.mark.parametrize(
    "name",
    [pytest.param(name, marks=[] if name in ("hill-school", "dairy-farm") else [pytest.mark.slow]) for name in FAULTY],
)
def test_a_faulty_example_is_written_with_its_remedies(name: str, tmp_path: Path) -> None:
    file, out, again = faulty(name, tmp_path / "site"), tmp_path / "new" / "out.toml", tmp_path / "new" / "again.toml"
    assert planner("check", file, "--strict")[0] == 1
    code, said, err = planner("check", file, "--apply", out)
    assert (code, err) == (0, "")
    left = FAULTY[name][1]
    assert said.count("Left to do, as it cannot be computed, for ") == len(left)
    assert all(what in said.partition("Remedies carried out")[2] for what in left)
    assert said.endswith("one check still fails." if left else "no check fails.")
    assert planner("check", out, "--strict")[0] == (1 if left else 0)

    before, after = (path.read_text(encoding="utf-8").split("\n") for path in (file, out))
    new = [line for line in after if line not in before]
    assert new
    assert all("# remedy: " in line or "# from the folder of this file" in line for line in new)
    for line in before:
        comment = line.partition("#")[2]
        assert not comment or any(comment.strip() in other for other in after), line

    assert planner("check", out, "--apply", again)[0] == 0
    assert again.read_bytes() == out.read_bytes()


@pytest.mark.slow
@pytest.mark.parametrize("name", ["hill-school", "market-garden"])
def test_a_run_says_of_the_remedies_what_a_run_of_the_file_with_them_says(name: str, tmp_path: Path) -> None:
    file, out = faulty(name, tmp_path / "site"), tmp_path / "out.toml"
    assert planner("check", file, "--apply", out)[0] == 0
    told = []
    for path in (file, out):
        assert planner("run", path, "--outputs", tmp_path)[0] == 0
        told.append(json.loads((tmp_path / f"{path.stem}.json").read_text(encoding="utf-8")))
    without, with_remedies = told
    assert without["remedied"]["option"] == with_remedies["ranking"][0]
    assert without["remedied"]["failing"] == []
    best = next(option for option in with_remedies["options"] if option["name"] == with_remedies["ranking"][0])
    for key in ("life_cycle_cost", "demand_met_percent"):
        assert without["remedied"][key] == pytest.approx(best[key])
    assert with_remedies["remedied"] is None
    assert with_remedies["recommended"]


def test_what_is_said_of_a_remedy_names_what_it_does_not_cover(tmp_path: Path) -> None:
    said = planner("check", faulty("hill-school", tmp_path / "site"), "--apply", tmp_path / "out.toml")[1]
    assert "voltage lost in the AC cable: a cross-section of 2.5 mm2" in said
    assert "not covered: earth-fault loop and short circuit" in said.partition("Remedies carried out")[2]
    assert "for licensed practice to confirm" in said


def test_a_short_scenario_stays_short(tmp_path: Path) -> None:
    text = (EXAMPLES / "visit.toml").read_text(encoding="utf-8")
    file, out = tmp_path / "visit.toml", tmp_path / "out.toml"
    weak = text.replace("length_m = 430\n", 'length_m = 430\nriser_pipe = "PE100 SDR17 40"  # in the store\n')
    file.write_text(weak, encoding="utf-8")
    assert planner("check", file, "--apply", out, "--strict")[0] == 0
    assert planner("check", out, "--strict")[0] == 0
    before, after = read_raw(file), read_raw(out)
    assert after["pipeline"].pop("riser_pipe") == "PE100 SDR9 40"
    del before["pipeline"]["riser_pipe"]
    assert after == before
    assert '\nriser_pipe = "PE100 SDR9 40"  # in the store  # remedy: ' in out.read_text(encoding="utf-8")


def test_a_form_becomes_a_scenario_file(tmp_path: Path) -> None:
    file, form, out = faulty("hill-school", tmp_path / "site"), tmp_path / "form.xlsx", tmp_path / "out.toml"
    assert planner("form", form, "--from", file)[0] == 0
    assert planner("check", form, "--apply", out, "--strict")[0] == 0
    assert planner("check", out, "--strict")[0] == 0
    assert read_raw(out)["sources"]["solar"]["strings"] == 1
    assert "strings = 1  # remedy: current of the strings, was 4" in out.read_text(encoding="utf-8")


def included(folder: Path, ac: str = "length_m = 200\nsection_mm2 = 1.5\n") -> Path:
    """The hill school with its pipe and AC cable in a file of their own."""
    raw = tomllib.loads((EXAMPLES / "hill-school.toml").read_text(encoding="utf-8"))
    shared = {"pipeline": {"segments": raw["pipeline"].pop("segments")}}
    del raw["cables"]["ac"]
    shared["pipeline"]["segments"][1] |= {"pipe": "PE100 SDR17 50", "pressure_class_bar": 3}
    folder.mkdir()
    (folder / "shared.toml").write_text(f"{toml_text(shared)}\n[cables.ac]\n{ac}", encoding="utf-8")
    file = folder / "site.toml"
    file.write_text(toml_text({"include": "shared.toml", **raw}), encoding="utf-8")
    return file


def test_included_files_are_left_alone_and_found_from_the_new_folder(tmp_path: Path) -> None:
    file, out = included(tmp_path / "site"), tmp_path / "new" / "deep" / "out.toml"
    shared = (tmp_path / "site" / "shared.toml").read_bytes()
    assert planner("check", file, "--apply", out, "--strict")[0] == 0
    assert planner("check", out, "--strict")[0] == 0
    own = tomllib.loads(out.read_text(encoding="utf-8"))
    assert own["include"] == "../../site/shared.toml"
    assert own["cables"]["ac"].keys() == {"section_mm2"}
    rising, main = own["pipeline"]["segments"]
    assert rising == tomllib.loads(shared.decode())["pipeline"]["segments"][0]
    assert main["pipe"] != "PE100 SDR17 50"
    assert "pressure_class_bar" not in main
    assert (tmp_path / "site" / "shared.toml").read_bytes() == shared


def test_what_would_have_to_leave_an_included_file_is_refused(tmp_path: Path) -> None:
    file, out = (
        included(tmp_path / "site", "length_m = 200\nsection_mm2 = 1.5\nampacity_a = 8\n"),
        tmp_path / "out.toml",
    )
    code, _, err = planner("check", file, "--apply", out)
    assert code == 2
    assert err.count("\n") == 1
    assert "shared.toml:" in err
    assert "cables.ac.ampacity_a: is to be taken away" in err
    assert not out.exists()


@pytest.mark.parametrize(
    ("name", "words"),
    [("site/hill-school.toml", "already there"), ("out.xlsx", "ends in .toml"), ("old.toml", "already")],
)
def test_nothing_is_overwritten(name: str, words: str, tmp_path: Path) -> None:
    file, old = faulty("hill-school", tmp_path / "site"), tmp_path / "old.toml"
    old.write_text("mine\n", encoding="utf-8")
    before = file.read_bytes()
    code, out, err = planner("check", file, "--apply", tmp_path / name)
    assert (code, out) == (2, "")
    assert words in err
    assert err.count("\n") == 1
    assert file.read_bytes() == before
    assert old.read_text(encoding="utf-8") == "mine\n"


def test_a_scenario_without_faults_is_written_as_it_is(tmp_path: Path) -> None:
    file, out = EXAMPLES / "hill-school.toml", tmp_path / "out.toml"
    code, said, _ = planner("check", file, "--apply", out)
    assert code == 0
    assert "there is nothing to carry out" in said
    assert out.read_bytes() == file.read_bytes()


def test_another_seed_is_written_as_it_was_judged(tmp_path: Path) -> None:
    out = tmp_path / "out.toml"
    assert planner("check", EXAMPLES / "hill-school.toml", "--apply", out, "--seed", 11)[0] == 0
    assert read_scenario(out).seed == 11


@pytest.mark.slow
@pytest.mark.parametrize("part", range(10))
def test_remedies_carried_out_together_leave_only_what_cannot_be_computed(part: int, tmp_path: Path) -> None:
    for number, (_, scenario) in enumerate(faulty_sites()[part::10]):
        verdicts = judged_in_the_full_sites_weather(scenario)
        carried = carried_out(scenario, verdicts, judged_in_the_full_sites_weather)
        before, after = ({verdict.key for verdict in failed(each)} for each in (verdicts, carried.verdicts))
        assert after <= before - {verdict.key for verdict in carried.remedied}
        assert not [verdict.changes for verdict in failed(carried.verdicts) if verdict.changes]
        file, words = tmp_path / "site.toml", toml_text(scenario.given("json"))
        made = remedied_file(file, tmp_path / f"{number}.toml", carried, words)
        assert made.kept
        assert made.scenario.given() == carried.scenario.given()
        for verdict in carried.remedied:
            for key, value in verdict.changes.items():
                path = parts_of(key)
                if path[-1] in ("section_mm2", "voltage_class_v"):
                    assert carried.changes[path] >= value >= (data_at(scenario.given(), path) or 0)
