"""Examples shown beside the cells of a blank form: the starters, and invented values for what they leave out."""

from __future__ import annotations

import tomllib
from functools import cache
from importlib import resources
from typing import Any

from planner.scenario.starter import short_text, starter_data


@cache
def examples() -> dict[str, Any]:
    """Return example values in the shape of a scenario."""
    starter = starter_data()
    further = tomllib.loads(resources.files("planner.report.form").joinpath("examples.toml").read_text("utf-8"))
    merged = _merged(_merged(further, tomllib.loads(short_text())), starter)
    merged["demand"]["users"] = [*starter["demand"]["users"], *further["demand"]["users"]]
    return merged


def _merged(under: dict[str, Any], over: dict[str, Any]) -> dict[str, Any]:
    merged = dict(under)
    for key, value in over.items():
        merged[key] = _merged(under[key], value) if isinstance(value, dict) and key in under else value
    return merged
