"""Small variations of the starter scenario for tests."""

from __future__ import annotations

import copy
import tomllib
from functools import cache
from pathlib import Path
from typing import Any

from planner.assumptions.reader import check_scenario
from planner.scenario.scenario import Scenario
from planner.scenario.writer import starter_text
from planner.study.compare import Study, study_scenario

EXAMPLES = Path("scenarios")


@cache
def _starter() -> dict[str, Any]:
    return tomllib.loads(starter_text())


def changed_raw(**changes: Any) -> dict[str, Any]:
    """Data of the starter scenario with some keys changed: dots of the path are written as double underscores."""
    raw = copy.deepcopy(_starter())
    for path, value in changes.items():
        table = raw
        *tables, key = path.split("__")
        for name in tables:
            table = table.setdefault(name, {})
        if value is None:
            table.pop(key, None)
        else:
            table[key] = value
    return raw


def changed(**changes: Any) -> Scenario:
    """Starter scenario with some keys changed, as in `changed_raw`."""
    return check_scenario(changed_raw(**changes), "test")


def studied(**changes: Any) -> Study:
    """Study of the starter scenario with some keys changed."""
    return study_scenario(changed(**changes), EXAMPLES)


_STUDIES: dict[str, Study] = {}


def studied_once(**changes: Any) -> Study:
    """The same study, made once in a process: for tests that only look at it."""
    key = repr(sorted(changes.items()))
    if key not in _STUDIES:
        _STUDIES[key] = studied(**changes)
    return _STUDIES[key]
