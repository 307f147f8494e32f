"""A language is chosen by the scenario or on the command line, holds for one command, and is refused by name."""

from __future__ import annotations

from pathlib import Path

import pytest
from typer.testing import CliRunner

from planner.assumptions.reader import read_scenario
from planner.cli import app
from planner.scenario.errors import InputError
from planner.text import FIRST_LANGUAGE, in_language, language_in_use, languages, text

VISIT = Path("scenarios/visit.toml").read_text(encoding="utf-8")


def said(*arguments: str) -> str:
    """What `planner check` says."""
    result = CliRunner().invoke(app, ["check", *arguments])
    assert result.exit_code == 0, result.output
    return result.output


def titled(code: str) -> str:
    """How the title of the checks reads in a language."""
    with in_language(code):
        return text("check.title", scenario="Visit in the hills (invented)")


@pytest.fixture
def french(tmp_path: Path) -> str:
    """A scenario that asks for French."""
    file = tmp_path / "visit.toml"
    file.write_text(f'language = "fr"\n{VISIT}', encoding="utf-8")
    return str(file)


def test_the_scenario_or_the_command_line_chooses_and_the_command_line_wins(french: str) -> None:
    assert titled("fr") in said(french)
    assert titled("en") in said(french, "--language", "en")
    assert titled("fr") in said("scenarios/visit.toml", "--language", "fr")


def test_a_command_leaves_the_language_as_it_was(french: str) -> None:
    said(french)
    assert language_in_use() == FIRST_LANGUAGE
    assert titled("en") in said("scenarios/visit.toml")


def test_what_was_worked_out_is_said_in_the_language_of_the_scenario(french: str) -> None:
    tank = {code: next(each.how for each in read_scenario(Path(french), code).assumptions if each.key == "tank")
            for code in ("fr", "en")}  # fmt: skip
    with in_language("fr"):
        assert tank["fr"] == text("assumed.tank")
    assert tank["en"] == text("assumed.tank") != tank["fr"]


def test_an_unknown_language_is_refused_with_those_that_there_are(tmp_path: Path) -> None:
    file = tmp_path / "visit.toml"
    file.write_text(f'language = "xx"\n{VISIT}', encoding="utf-8")
    with pytest.raises(InputError) as refused:
        read_scenario(file)
    (problem,) = refused.value.problems
    assert problem.key == "language"
    assert all(code in problem.text for code in ("xx", *languages()))
    with pytest.raises(ValueError, match="xx"), in_language("xx"):
        pass
