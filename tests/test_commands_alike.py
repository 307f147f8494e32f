"""What all commands share: help said in full, forms read like scenario files, cautions pointed to and said once."""

from __future__ import annotations

import json
import tomllib
from pathlib import Path

import openpyxl
import pytest
from typer.main import get_command
from typer.testing import CliRunner

from planner.cli import app
from planner.report.form.sheets import write_form
from planner.scenario.writer import toml_text
from planner.text import text

WHERE_LISTED = text("caution.where_listed")


COMMANDS = get_command(app).commands  # type: ignore[attr-defined]
STUDIES = (["size"], ["worth", "solar"], ["sweep"])


def run(name: str, *arguments: object) -> tuple[int, str, str]:
    result = CliRunner().invoke(app, [name, *map(str, arguments)])
    return result.exit_code, " ".join(result.stdout.split()), " ".join(result.stderr.split())


def raw() -> dict[str, object]:
    """Hill school, one year, little to try and one input to vary."""
    data = tomllib.loads(Path("scenarios/hill-school.toml").read_text(encoding="utf-8"))
    data["finance"]["analysis_period_years"] = 1
    data["service"]["options"] = ["grid", "solar + grid"]
    data["size"] = {"strings": [1, 2], "tanks_m3": [10.0, 20.0], "levels_percent": [[20.0, 30.0]]}
    data["sweep"] = {"one_at_a_time": [{"key": "pump.price", "change_percent": 10.0}]}
    return data


@pytest.fixture(scope="module")
def toml(tmp_path_factory: pytest.TempPathFactory) -> Path:
    file = tmp_path_factory.mktemp("alike") / "quick.toml"
    file.write_text(toml_text(raw()), encoding="utf-8")
    return file


@pytest.mark.parametrize("name", COMMANDS)
def test_help_says_every_word(name: str) -> None:
    code, out, _ = run(name, "--help")
    assert code == 0
    command = COMMANDS[name]
    texts = [command.help, *(parameter.help for parameter in command.params if getattr(parameter, "help", None))]
    for told in texts:
        assert " ".join(told.split()) in out
    assert " ".join(command.help.split()) in run("--help")[1]


def test_help_of_sweep_names_its_table() -> None:
    assert "as the [sweep] table says" in run("sweep", "--help")[1]


@pytest.mark.parametrize(
    "command",
    [pytest.param(command, marks=[pytest.mark.slow] if command[0] == "worth" else []) for command in STUDIES],
    ids=lambda command: command[0],
)
def test_a_study_reads_a_form_like_a_scenario_file(command: list[str], toml: Path) -> None:
    form = toml.parent / "form.xlsx"
    write_form(form, raw())
    name, *more = command
    said = {}
    for file in (toml, form):
        code, out, err = run(name, file, *more, "--outputs", toml.parent / file.stem)
        assert code == 0, err
        said[file] = out.split("Wrote ")[0]
    assert said[toml] == said[form]


def test_a_results_workbook_is_read_again(toml: Path) -> None:
    out = toml.parent / "results"
    assert run("run", toml, "--outputs", out, "--quiet", "--quick")[0] == 0
    code, _, err = run("size", out / "quick.xlsx", "--outputs", out, "--quiet")
    assert code == 0, err


@pytest.mark.parametrize(
    ("command", "place"),
    [
        (["size"], "sheet 'Studies', cell A30 (Name of the segment"),
        (["worth", "solar"], "sheet 'Options', cell B9 (Supply options to compare"),
        (["sweep"], "sheet 'Studies', cell A44 (Key of the scenario"),
    ],
    ids=["size", "worth", "sweep"],
)
def test_what_shows_only_when_worked_out_is_named_by_sheet_and_cell(
    command: list[str], place: str, tmp_path: Path
) -> None:
    data = raw()
    data["service"] = {"options": ["solar"]}
    data["sweep"] = {"one_at_a_time": [{"key": "pump.prise", "change_percent": 10.0}]}
    data["size"] = {"pipes": [{"segment": "Nowhere", "pipe": "PE100 SDR11 63", "price": 4.0}]}
    form = tmp_path / "form.xlsx"
    write_form(form, data)
    code, _, err = run(command[0], form, *command[1:], "--outputs", tmp_path)
    assert code == 2
    assert err.startswith(f"{form}: {place}")


@pytest.mark.parametrize(
    "command",
    [["check"], *(pytest.param(each, marks=[pytest.mark.slow] if each[0] == "worth" else []) for each in STUDIES)],
    ids=lambda command: command[0],
)
def test_local_codes_come_first_and_the_list_is_pointed_to(command: list[str], toml: Path) -> None:
    name, *more = command
    if name == "check":
        for more in ([], ["--verbose"]):
            out = run(name, toml, *more)[1]
            assert out.count(WHERE_LISTED) == 1
            assert out.endswith("the site takes 109 m.")  # the finding ends the screen
        return
    out = toml.parent / "pointed"
    assert WHERE_LISTED in run(name, toml, *more, "--outputs", out)[1]
    stem = "-".join(["quick", *command])
    book = openpyxl.load_workbook(out / f"{stem}.xlsx")
    assert any(WHERE_LISTED in str(cell.value) for row in book["Answer"].iter_rows() for cell in row)
    if name != "sweep":
        assert json.loads((out / f"{stem}.json").read_text(encoding="utf-8"))["cautions"] == [WHERE_LISTED]


def test_the_cautions_of_several_sites_are_printed_once(toml: Path) -> None:
    other = toml.with_name("other.toml")
    data = raw()
    data["service"] = {"options": ["generator"]}
    data["sweep"] = {}
    other.write_text(toml_text(data), encoding="utf-8")
    code, out, err = run("run", toml, other, "--outputs", toml.parent / "two", "--verbose", "--quick")
    assert code == 0, err
    for words in ("Trench walls", "Clean, disinfect and flush", "exhaust kills"):
        assert out.count(words) == 1, words
    assert "isolate every source (array and grid)" in out
    assert "isolate every source (generator)" in out
    assert out.count("Local codes and licensed practice come first.") == 1
    assert out.count("Wrote ") == 2


def test_the_dangers_of_several_sites_are_named_once_and_the_answer_stands_last(toml: Path) -> None:
    other = toml.with_name("sunny.toml")
    data = raw()
    data["name"] = "The other site"
    data["service"] = {"options": ["solar + generator"]}
    data["sweep"] = {}
    other.write_text(toml_text(data), encoding="utf-8")
    code, out, err = run("run", other, toml, "--outputs", toml.parent / "three", "--quick")
    assert code == 0, err
    for words in ("DC voltage of the array", "exhaust of the generator", "grid electricity", "trenches"):
        assert out.count(words) == 1, words
    assert out.count("Local codes and licensed practice come first.") == 1
    assert "Before a cover is opened" not in out
    last = json.loads((toml.parent / "three" / f"{toml.stem}.json").read_text(encoding="utf-8"))["sentences"][-1]
    assert out.rstrip().endswith(last)
