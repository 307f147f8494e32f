"""What `planner new` writes: the short starter, every key, each example; and the examples of a wheel."""

from __future__ import annotations

import tomllib
from pathlib import Path

import pytest

from planner.assumptions.reader import read_scenario
from planner.scenario.examples import example_names
from planner.scenario.scenario import Scenario
from planner.scenario.starter import short_text
from planner.scenario.walk import walk_models
from planner.scenario.writer import starter_text
from tests.test_cli import planner

FOLDER = Path("scenarios")


def new(*arguments: object) -> int:
    return planner("new", *arguments)[0]


def test_the_short_starter_is_short_invented_and_reads(tmp_path: Path) -> None:
    file = tmp_path / "site.toml"
    assert new(file) == 0
    text = file.read_text(encoding="utf-8")
    assert text == short_text()
    assert len(text.splitlines()) <= 45
    assert "invented" in text
    scenario = read_scenario(file)
    assert not scenario.priced
    assert scenario.assumptions


def test_the_full_starter_has_every_key_with_its_explanation() -> None:
    table = ""
    shown: dict[str, set[str]] = {}
    for line in starter_text().splitlines():
        plain = line.removeprefix("# ")
        if plain.startswith("["):
            table = plain.strip("[]")
        elif " = " in plain and plain.split(" = ")[0].replace("_", "").isalnum():
            key, value = plain.split(" = ", 1)
            path = f"{table}.{key}" if table else key
            shown.setdefault(path, set()).add(value.partition("  # ")[2])
    for field in walk_models(Scenario):
        if not field.tables:
            assert field.key in shown, field.key
            assert any(field.description in words for words in shown[field.key]), field.key
    assert shown.keys() <= {field.key for field in walk_models(Scenario)}


def test_the_full_starter_reads(tmp_path: Path) -> None:
    file = tmp_path / "site.toml"
    assert new(file, "--full") == 0
    # It leaves the number of strings open, and with it the fuse that three or more of them need.
    assert [each.key for each in read_scenario(file).assumptions] == ["sources.solar.string_fuse_a"]


@pytest.mark.parametrize("name", example_names())
def test_each_example_is_written_with_what_it_reads(tmp_path: Path, name: str) -> None:
    file = tmp_path / "mine.toml"
    assert new(file, "--example", name) == 0
    assert file.read_bytes() == (FOLDER / f"{name}.toml").read_bytes()
    weather = tomllib.loads(file.read_text(encoding="utf-8")).get("weather", {}).get("file")
    assert weather is None or (tmp_path / weather).read_bytes() == (FOLDER / weather).read_bytes()
    assert new(file, "--example", name) == 2


def test_an_unknown_example_names_the_nearest(tmp_path: Path) -> None:
    code, _, said = planner("new", tmp_path / "mine.toml", "--example", "hil-school")
    assert code == 2
    assert "did you mean 'hill-school'?" in said
    assert not list(tmp_path.iterdir())
    assert new(tmp_path / "mine.toml", "--example", "hill-school", "--full") == 2


def test_a_wheel_takes_every_example_along() -> None:
    settings = tomllib.loads(Path("pyproject.toml").read_text(encoding="utf-8"))
    taken = settings["tool"]["hatch"]["build"]["targets"]["wheel"]["force-include"]
    files = [*FOLDER.glob("*.toml"), *FOLDER.glob("*.csv")]
    assert taken == {str(file): f"planner/examples/{file.name}" for file in files}
