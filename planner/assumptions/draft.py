"""A scenario that is being completed: what is given, and what is filled in with the reason beside it."""

from __future__ import annotations

import copy
import math
from typing import Any

from planner.scenario.assumption import Assumption
from planner.scenario.paths import Path, parts_of


class Draft:
    """Raw data of a scenario and what has been filled in so far.

    Whatever is given stays, however wrong: the check that follows names it.

    Parameters
    ----------
    raw : dict
        Data as read from a file; left as it is.
    """

    def __init__(self, raw: dict[str, Any]) -> None:
        self.raw: dict[str, Any] = copy.deepcopy(raw)
        self.assumptions: list[Assumption] = []

    def get(self, key: str | Path) -> Any:
        """Value at a dotted key, None where there is none."""
        here: Any = self.raw
        for part in parts_of(key) if isinstance(key, str) else key:
            if isinstance(here, dict):
                here = here.get(part)
            elif isinstance(here, list) and isinstance(part, int) and part < len(here):
                here = here[part]
            else:
                return None
        return here

    def number(self, key: str | Path) -> float | None:
        """Value at a dotted key where it is a finite number above 0, else None."""
        value = self.get(key)
        return value if is_number(value) and value > 0 else None

    def level(self, key: str | Path, otherwise: float = 0.0) -> float:
        """Value at a dotted key where it is a finite number of any sign, else another."""
        value = self.get(key)
        return float(value) if is_number(value) else otherwise

    def entries(self, key: str) -> list[tuple[Path, dict[str, Any]]]:
        """Path and table of each entry of a list of tables."""
        listed = self.get(key)
        path = parts_of(key)
        found = enumerate(listed) if isinstance(listed, list) else ()
        return [((*path, place), entry) for place, entry in found if isinstance(entry, dict)]

    def fill(self, key: str | Path, value: Any, how: str) -> None:
        """Put a value at a key that is left out; the tables on the way are made where there are none."""
        path = parts_of(key) if isinstance(key, str) else key
        if self.get(path) not in (None, "auto"):
            return
        here: Any = self.raw
        for part in path[:-1]:
            if isinstance(here, dict):
                here = here.setdefault(part, {})
            elif isinstance(here, list) and isinstance(part, int):
                here = here[part]
        if isinstance(here, dict):
            here[path[-1]] = value
            self.assumptions.append(Assumption(path, how))

    def note(self, path: Path, how: str) -> None:
        """Say of a part of what was filled in how it was found."""
        self.assumptions.append(Assumption(path, how, is_part=True))


def is_number(value: Any) -> bool:
    """Whether a raw value is a finite number."""
    return isinstance(value, int | float) and not isinstance(value, bool) and math.isfinite(value)
