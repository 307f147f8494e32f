"""Values that a user left as the starter has them are told apart from those that were given."""

from __future__ import annotations

from pathlib import Path

import pytest

from planner.assumptions.reader import read_scenario
from planner.scenario.starter import STILL_STARTER, left_over, starter_sentence, statuses
from tests.study.scenarios import changed


def test_what_was_not_changed_still_is_the_starters() -> None:
    scenario = changed(name="Own village", pump__price=3100.0)
    status = statuses(scenario)
    assert status["name"] == "given"
    assert status["pump.price"] == "given"
    assert status["pump.name"] == STILL_STARTER
    assert status["controller.price"] == STILL_STARTER
    assert status["demand.users[2].count"] == STILL_STARTER
    assert status["controller.life_years"] == STILL_STARTER
    assert status["borehole.maintenance_percent_per_year"] == "default"
    assert status["currency"] == "given"


def test_it_is_said_with_their_number() -> None:
    said = starter_sentence(changed(name="Own village"))
    assert said is not None
    assert said.startswith(f"{len(left_over(changed())) - 1} values still are the invented ones of the starter")
    assert "('still the starter's value' on the sheet 'Inputs')" in said


@pytest.mark.parametrize("file", sorted(Path("scenarios").glob("*.toml")), ids=str)
def test_a_scenario_of_its_own_is_not_suspected(file: Path) -> None:
    assert starter_sentence(read_scenario(file)) is None
