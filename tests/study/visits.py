"""The notes of one visit, without prices, and changes of them. Place, people and pump are invented."""

from __future__ import annotations

import tomllib
from pathlib import Path
from typing import Any

from planner.assumptions.reader import check_scenario
from planner.scenario.scenario import Scenario
from planner.scenario.writer import toml_text

VISIT = Path("scenarios/visit.toml")


def visit_raw(**changes: Any) -> dict[str, Any]:
    """Data of the visit under the sun alone, over two years to be quick, with some tables replaced or added."""
    raw = tomllib.loads(VISIT.read_text(encoding="utf-8"))
    raw.pop("sources", None)
    return raw | {"finance": {"analysis_period_years": 2}} | changes


def visit(**changes: Any) -> Scenario:
    """The visit as a scenario, see `visit_raw`."""
    return check_scenario(visit_raw(**changes), "test")


def visit_file(folder: Path, **changes: Any) -> Path:
    """The visit as a file, see `visit_raw`."""
    file = folder / "visit.toml"
    file.write_text(toml_text(visit_raw(**changes)), encoding="utf-8")
    return file
