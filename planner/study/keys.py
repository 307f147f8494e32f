"""Numeric keys of a scenario by their dotted path: find them and set them."""

from __future__ import annotations

import difflib
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from planner.scenario.errors import InputError, Problem
from planner.scenario.fields import Changes
from planner.scenario.operands import value_at
from planner.scenario.paths import Path, dotted, parts_of, set_path
from planner.scenario.scenario import Scenario
from planner.scenario.walk import Field, walk, words_of
from planner.study.cases import SIZES
from planner.text import known, model_words, text

STAGES: tuple[Changes, ...] = ("weather", "run", "money", "nothing")
"""In the order in which they follow from one another: a change leaves every earlier stage as it was."""

COUNTED = (
    "demand.users.count",
    "finance.analysis_period_years",
    "pipeline.segments.length_m",
    "pump.life_years",
    "sources.solar.modules_in_series",
    "tank.sizes.volume_m3",
)
"""Keys that touch the hours and are counted in the bill of quantities or its money as well."""

READY_CHANGE_PERCENT = 20.0
"""Change by which an input is tried where no other is given; assumed, common practice, no source."""
READY_ENDS = {
    "pump.wear_percent_per_year": (0.0, 3.0),
    "borehole.level_decline_m_per_year": (0.0, 0.5),
    "borehole.specific_capacity_decline_percent_per_year": (0.0, 4.0),
}
"""Ends of inputs for which a change by per cent says little: no ageing, and sand in the water, a stressed aquifer,
iron-rich alluvium; assumed."""

_NOT_SWEPT = ("sweep", "size")


@dataclass(frozen=True)
class Key:
    """A numeric key of a scenario.

    Attributes
    ----------
    text : str
        Its dotted path.
    path : tuple
        The same in parts, list entries from 0.
    base : float or None
        Its value in the scenario; None where it is left to the tool or not given.
    whole : bool
        Whether it takes whole numbers only.
    unit : str
        Unit of the field.
    changes : str
        First stage that a change of it touches.
    label : str
        What people call it.
    is_of_money : bool
        Whether it matters only where there are prices.
    """

    text: str
    path: Path
    base: float | None
    whole: bool
    unit: str
    changes: Changes
    label: str
    is_of_money: bool = False

    @property
    def touches_hours(self) -> bool:
        """Whether a change of it makes the hours run anew."""
        return self.changes in ("weather", "run")

    @property
    def is_size(self) -> bool:
        """Whether it is a size of the design."""
        return self.text in SIZES

    @property
    def is_counted(self) -> bool:
        """Whether it touches the hours and, apart from what they bring, the money too."""
        names = [part for part in self.path if isinstance(part, str)]
        return ".".join(names[2:] if names[0] == "overrides" else names) in COUNTED

    @property
    def is_price(self) -> bool:
        """Whether it is a price, of which, with all other prices, every cost is a straight line."""
        return self.changes == "money" and self.unit.startswith("money")


def numeric_keys(scenario: Scenario) -> dict[str, Key]:
    """List every key of a scenario that is a number or could be given one, by its dotted path."""
    swept = (field for field in walk(scenario) if field.path[0] not in _NOT_SWEPT)
    return {key.text: key for field in swept for key in _keys_of(scenario, field)}


def _keys_of(scenario: Scenario, field: Field) -> Iterator[Key]:
    """Numbers of one field: its value where it is or could be one, or those in its list."""
    found = list(_numbers(field.value, field.path))
    if field.takes.numeric and (field.value is None or field.value == "auto"):
        found.append((field.path, None))
    for path, value in found:
        label = label_of(scenario, field, path)
        yield Key(
            dotted(path), path, value, field.takes.whole_only, field.unit, field.changes, label, field.is_of_money
        )


def label_of(scenario: Scenario, field: Field, path: Path) -> str:
    """Name a value for people: what it is, in which entry or part of the works, and which value of a list."""
    option = path[1] if field.in_override else None
    name = model_words(field.short)
    if isinstance(path[-1], int):
        name = text("input.numbered", list=name, number=path[-1] + 1)
    parts = field.path[2:-1] if option else field.path[:-1]
    if parts:
        name = text("input.in_place", name=name, place=_place_of(scenario, parts))
    return text("input.for_option", name=name, option=option) if option else name


def _place_of(scenario: Scenario, parts: Path) -> str:
    """Name the entry of a list, or the table, in which a value stands."""
    names = [part for part in parts if isinstance(part, str)]
    if isinstance(parts[-1], int):
        entry = value_at(scenario, parts)
        return getattr(entry, "name", "") or text("input.numbered", list=_title(names), number=parts[-1] + 1)
    return _title(names)


def _title(names: Sequence[str]) -> str:
    key = f"input.place.{'.'.join(names)}"
    return text(key) if known(key) else model_words(words_of(names[-1]))


def _numbers(value: Any, path: Path) -> Iterator[tuple[Path, float | None]]:
    if isinstance(value, list):
        for index, entry in enumerate(value):
            yield from _numbers(entry, (*path, index))
    elif isinstance(value, int | float) and not isinstance(value, bool):
        yield path, float(value)


def key_of(scenario: Scenario, written: str, where: str, keys: Mapping[str, Key] | None = None) -> Key:
    """Find a numeric key.

    Parameters
    ----------
    scenario : Scenario
        The scenario.
    written : str
        Dotted path as a user writes it.
    where : str
        Key under which the user wrote it, for the message.
    keys : mapping of str to Key, optional
        What `numeric_keys` gave, where that is known.

    Raises
    ------
    InputError
        When there is none; the message names the nearest path that there is.
    """
    there = numeric_keys(scenario) if keys is None else keys
    path = parts_of(written)
    plain = dotted(path)
    if plain in there:
        return there[plain]
    near = difflib.get_close_matches(plain, there, n=1, cutoff=0.0)
    hint = f"; the nearest that there is: '{near[0]}'" if near else ""
    stands = any(path and field.path[: len(path)] == path for field in walk(scenario))
    what = "is not a number" if stands else "is no key of this scenario"
    raise InputError("", [Problem(where, f"'{written}' was given; it {what}{hint}")])


def with_value(raw: dict[str, Any], key: Key, value: float) -> dict[str, Any]:
    """Return raw scenario data with one key set; nothing given is changed, only the tables on the way are copied."""
    changed: dict[str, Any] = set_path(raw, key.path, whole_or_not(key, value))
    return changed


def whole_or_not(key: Key, value: float) -> float | int:
    """Bring a value to the kind of number that the key takes."""
    return round(value) if key.whole else float(value)
