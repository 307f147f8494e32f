"""A short-lived example to sweep."""

from __future__ import annotations

import copy
import tomllib
from functools import cache
from pathlib import Path
from typing import Any

from planner.assumptions.reader import check_scenario
from planner.scenario.scenario import Scenario

EXAMPLES = Path("scenarios")
FUEL, SCHOOL = "sources.generator.fuel_price_per_l", "demand.users[1].count"
PUPILS = "Number of people in the first year (Day pupils)"
"""What `SCHOOL` is called."""


@cache
def _school() -> dict[str, Any]:
    raw = tomllib.loads((EXAMPLES / "hill-school.toml").read_text(encoding="utf-8"))
    raw["finance"]["analysis_period_years"] = 2
    raw["service"]["options"] = ["solar", "grid", "solar + grid", "solar + grid + generator"]
    return raw


def school_raw(**tables: Any) -> dict[str, Any]:
    """Raw data of the hill school with a life of two years; tables are merged in."""
    raw = copy.deepcopy(_school())
    for name, table in tables.items():
        if isinstance(table, dict) and isinstance(raw.get(name), dict):
            raw[name] |= table
        else:
            raw[name] = table
    return raw


def school(**tables: Any) -> Scenario:
    """Scenario of the hill school with a life of two years; tables are merged in."""
    return check_scenario(school_raw(**tables), "test")


def random_table(draws: int, *inputs: dict[str, Any], **more: Any) -> dict[str, Any]:
    """Table of a random sweep."""
    return {"random": {"draws": draws, "inputs": list(inputs), **more}}


def uniform(key: str, low: float, high: float) -> dict[str, Any]:
    """A uniform input."""
    return {"kind": "uniform", "key": key, "low": low, "high": high}
