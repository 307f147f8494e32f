"""Which values of a scenario still are those of the starter that `planner new` writes.

A scenario keeps no note of what it was made from, so it is told by its values: one that shares more than a few of the
starter's invented names and prices was made from it, and whatever else it shares with the starter was not looked at.
"""

from __future__ import annotations

import tomllib
from functools import cache
from importlib import resources
from typing import Any

from planner.scenario.paths import Path, dotted
from planner.scenario.scenario import Scenario
from planner.scenario.walk import leaves, walk
from planner.text import text

FEW = 5
"""Names and prices that a scenario may share with the starter by chance; assumed."""
STILL_STARTER = "starter"
"""Status of a key whose value still is the starter's."""
_NAMES = ("name", "place", "question")
_CHOICES = ("kind", "mode", "currency", "time_zone", "draw_profile", "seed")


def starter_data() -> dict[str, Any]:
    """Return the starter scenario as raw data."""
    return tomllib.loads(resources.files("planner.scenario").joinpath("starter.toml").read_text("utf-8"))


def short_text() -> str:
    """Return the short starter: the notes of one visit, invented values that run as they are."""
    return resources.files("planner.scenario").joinpath("short.toml").read_text("utf-8")


def left_over(scenario: Scenario) -> tuple[str, ...]:
    """List the keys whose value was given but still is the starter's; none where a scenario was not made from it.

    Parameters
    ----------
    scenario : Scenario
        The checked scenario.

    Returns
    -------
    tuple of str
        Dotted keys; choices of a kind, the currency, the time zone and the seed are passed over.
    """
    given = dict(leaves(scenario.given("json")))
    starter = _starter()
    same = [path for path, value in given.items() if path in starter and starter[path] == value]
    telling = [path for path in same if path[-1] in _NAMES or "price" in str(path[-1])]
    if len(telling) <= FEW:
        return ()
    return tuple(dotted(path) for path in same if path[-1] not in _CHOICES)


def statuses(scenario: Scenario) -> dict[str, str]:
    """Say of each key where its value comes from: 'given', 'default', 'not given' or `STILL_STARTER`."""
    left = frozenset(left_over(scenario))
    return {
        field.key: STILL_STARTER if field.status == "given" and field.key in left else field.status
        for field in walk(scenario)
    }


def starter_sentence(scenario: Scenario) -> str | None:
    """Say that the starter's invented values still stand in a scenario, where more than a few do."""
    keys = left_over(scenario)
    if not keys:
        return None
    return text("starter.left_over", count=len(keys), status=text(f"inputs.status_{STILL_STARTER}"))


@cache
def _starter() -> dict[Path, Any]:
    return dict(leaves(starter_data()))
