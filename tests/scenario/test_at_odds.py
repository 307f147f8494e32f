"""Values that do not agree are refused with the keys of both, by which a form finds their cells."""

from __future__ import annotations

import ast
from importlib import import_module
from pathlib import Path

import pytest

import planner.scenario
from planner.scenario.fields import AT_ODDS, at_odds
from planner.scenario.walk import keys_at

MODULES = sorted(Path(planner.scenario.__file__).parent.glob("*.py"))


def refusals(file: Path) -> list[tuple[str, tuple[str, ...]]]:
    """Class and keys of every `at_odds` in a module whose keys are written out."""
    found = []
    for place in ast.parse(file.read_text(encoding="utf-8")).body:
        for call in ast.walk(place) if isinstance(place, ast.ClassDef) else ():
            named = isinstance(call, ast.Call) and isinstance(call.func, ast.Name) and call.func.id == "at_odds"
            if named and isinstance(call.args[0], ast.Tuple):
                keys = [key.value for key in call.args[0].elts if isinstance(key, ast.Constant)]
                found.append((place.name, tuple(map(str, keys))))
    return found


@pytest.mark.parametrize("file", [file for file in MODULES if refusals(file)], ids=lambda file: file.stem)
def test_keys_at_odds_are_keys_of_the_model(file: Path) -> None:
    module = import_module(f"planner.scenario.{file.stem}")
    for name, keys in refusals(file):
        for key in keys:
            *table, last = key.split(".")
            assert last in keys_at(getattr(module, name), tuple(table)), (name, key)


def test_every_model_with_rules_is_read_by_the_test_above() -> None:
    assert sum(len(refusals(file)) for file in MODULES) >= 35


def test_the_words_keep_their_slots() -> None:
    error = at_odds(("low", "high"), "{low} is above {high}", {"low": 3, "high": 2.5})
    assert error.message() == "3 is above 2.5"
    assert error.context == {"low": 3, "high": 2.5, AT_ODDS: ("low", "high")}
