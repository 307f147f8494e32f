"""The reference and the schema: printed by their commands, complete, and in step with what stands in the project."""

from __future__ import annotations

import json
import re
import tomllib
from pathlib import Path

import jsonschema
import pytest
from typer.testing import CliRunner

import planner
from planner.cli import app
from planner.figures import FIGURES
from planner.scenario.scenario import Scenario
from planner.scenario.walk import walk_models

REFERENCE = Path(planner.__file__).with_name("reference.md")


def printed(*arguments: str) -> str:
    found = CliRunner().invoke(app, list(arguments))
    assert found.exit_code == 0, found.output
    return found.output


def test_the_reference_in_the_project_is_up_to_date() -> None:
    """Where this fails: `planner reference planner/reference.md`."""
    assert REFERENCE.read_text(encoding="utf-8") == printed("reference")


def test_the_reference_has_every_command_key_and_figure() -> None:
    words = printed("reference")
    assert re.findall(r"^### planner (\w+)$", words, re.M) == [
        command.callback.__name__ for command in app.registered_commands
    ]
    keys = {f"| `{field.name}` |" for field in walk_models(Scenario) if not field.tables}
    figures = {f"| `{figure.key}` | {figure.label.strip()} |" for figure in FIGURES}
    lines = words.splitlines()
    assert [start for start in keys | figures if not any(line.startswith(start) for line in lines)] == []
    assert "--seed" in words


def test_the_schema_is_printed_and_judges_the_starter(tmp_path: Path) -> None:
    schema = json.loads(printed("schema"))
    printed("new", str(tmp_path / "site.toml"))
    written = (tmp_path / "planner.schema.json").read_text(encoding="utf-8")
    assert json.loads(written) == schema
    words = (tmp_path / "site.toml").read_text(encoding="utf-8")
    assert words.startswith("#:schema planner.schema.json\n")
    data = tomllib.loads(words)
    jsonschema.validate(data, schema)
    data["borehole"]["pump_deepth_m"] = 3
    with pytest.raises(jsonschema.ValidationError, match="pump_deepth_m"):
        jsonschema.validate(data, schema)


def test_a_schema_that_is_there_is_kept(tmp_path: Path) -> None:
    (tmp_path / "planner.schema.json").write_text("{}")
    printed("new", str(tmp_path / "site.toml"))
    assert (tmp_path / "planner.schema.json").read_text() == "{}"
    printed("new", str(tmp_path / "site.toml"), "--force")
    assert json.loads((tmp_path / "planner.schema.json").read_text())["$schema"].startswith("https://json-schema.org")


def test_the_shell_can_complete() -> None:
    assert "--install-completion" in printed("--help")
