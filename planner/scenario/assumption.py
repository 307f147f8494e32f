"""What was left out of a scenario and worked out: where it stands, and how; and the data without it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from planner.scenario.paths import Path, dotted


@dataclass(frozen=True)
class Assumption:
    """One key, or table, that was left out and worked out.

    Attributes
    ----------
    path : tuple
        Keys from the root of the scenario; places in lists from 0.
    how : str
        From what, and by which rule.
    is_part : bool
        Whether it is a part of a table that was filled in as a whole, and comes and goes with it.
    """

    path: Path
    how: str
    is_part: bool = False

    @property
    def key(self) -> str:
        """The dotted path, as in messages."""
        return dotted(self.path)


def without(data: dict[str, Any], assumptions: Iterable[Assumption], keep: Iterable[Path] = ()) -> dict[str, Any]:
    """Take out of raw data what was worked out, but what lies on the way to some keys, or below them.

    Parameters
    ----------
    data : dict
        Raw data; changed in place.
    assumptions : iterable of Assumption
        What was worked out.
    keep : iterable of tuple
        Paths of the keys.
    """
    kept = tuple(keep)
    for assumption in assumptions:
        path = assumption.path
        if not assumption.is_part and not any(path == key[: len(path)] or key == path[: len(key)] for key in kept):
            _take_out(data, path)
    return data


def _take_out(data: Any, path: Path) -> None:
    for part in path[:-1]:
        inside = part in data if isinstance(data, dict) else isinstance(part, int) and part < len(data)
        if not inside:
            return
        data = data[part]
    if isinstance(data, dict):
        data.pop(path[-1], None)
