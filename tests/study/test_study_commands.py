"""`planner size` and `planner worth` from the command line."""

from __future__ import annotations

import json
import tomllib
from pathlib import Path

import pytest
from typer.testing import CliRunner

from planner.cli import app
from planner.scenario.writer import toml_text


@pytest.fixture
def quick(tmp_path: Path) -> Path:
    """The hill school with a life of one year, few options and few candidates."""
    raw = tomllib.loads(Path("scenarios/hill-school.toml").read_text(encoding="utf-8"))
    raw["finance"]["analysis_period_years"] = 1
    raw["service"]["options"] = ["grid", "solar + grid"]
    raw["size"] = {"strings": [1, 2], "tanks_m3": [10.0, 20.0], "levels_percent": [[20.0, 30.0]]}
    file = tmp_path / "quick.toml"
    file.write_text(toml_text(raw), encoding="utf-8")
    return file


def test_size_prints_the_answer_and_writes_workbook_and_json(quick: Path, tmp_path: Path) -> None:
    result = CliRunner().invoke(app, ["size", str(quick), "--outputs", str(tmp_path / "out")])
    assert result.exit_code == 0, result.output
    data = json.loads((tmp_path / "out" / "quick-size.json").read_text(encoding="utf-8"))
    assert data["best"] in result.stdout
    assert "Float switch for" in result.stdout
    assert (tmp_path / "out" / "quick-size.xlsx").stat().st_size > 5_000


def test_worth_prints_three_sentences_and_writes_workbook_and_json(quick: Path, tmp_path: Path) -> None:
    result = CliRunner().invoke(app, ["worth", str(quick), "solar", "--outputs", str(tmp_path / "out")])
    assert result.exit_code == 0, result.output
    data = json.loads((tmp_path / "out" / "quick-worth-solar.json").read_text(encoding="utf-8"))
    further = len(data["next_steps"]["sentences"])
    assert len(data["sentences"]) == 3 + further
    assert data["sentences"][3:] == data["next_steps"]["sentences"]
    assert data["sentences"][0].split(":")[0] in result.stdout
    assert (tmp_path / "out" / "quick-worth-solar.xlsx").stat().st_size > 5_000


def test_a_source_that_there_is_not_is_named_in_one_line(quick: Path) -> None:
    result = CliRunner().invoke(app, ["worth", str(quick), "wind"])
    assert result.exit_code == 2
    assert result.stderr.splitlines() == [f"{quick}: 'wind' is no source; allowed: solar, grid, generator"]


def test_a_source_that_no_option_has_is_wrong_input(quick: Path) -> None:
    result = CliRunner().invoke(app, ["worth", str(quick), "generator", "--quiet"])
    assert result.exit_code == 2
    assert "service.options: leaves no option with the generator" in result.stderr


def test_a_candidate_pipe_of_no_segment_is_named_with_its_line(quick: Path) -> None:
    with quick.open("a", encoding="utf-8") as file:
        file.write('\n[[size.pipes]]\nsegment = "Nowhere"\npipe = "PE100 SDR11 63"\nprice = 4.0\n')
    result = CliRunner().invoke(app, ["size", str(quick), "--quiet"])
    assert result.exit_code == 2
    line = quick.read_text(encoding="utf-8").splitlines().index('segment = "Nowhere"') + 1
    assert f"quick.toml:{line}: size.pipes[1].segment: 'Nowhere' was given" in result.stderr
