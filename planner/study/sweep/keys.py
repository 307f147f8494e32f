"""Numeric keys of a scenario by their dotted path: find, classify by the stage they touch, and set them."""

from __future__ import annotations

import difflib
import re
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any, Literal, get_args, get_origin

from pydantic import BaseModel
from pydantic.fields import FieldInfo

from planner.scenario.errors import InputError, Problem, dotted
from planner.scenario.scenario import Scenario

Stage = Literal["weather", "design", "money"]
Path = tuple[str | int, ...]

STAGES: tuple[Stage, ...] = ("weather", "design", "money")
"""In the order in which they follow from one another: a change leaves every earlier stage as it was."""

SIZES = (
    "tank.volume_m3",
    "sources.solar.strings",
    "topup.start_level_percent",
    "topup.stop_level_percent",
    "topup.start_level_without_sun_percent",
    "topup.stop_level_without_sun_percent",
)
"""Sizes of the design: set beside the scenario, so that the tank's price follows its volume as in a sizing."""

_SITE = ("site", "weather", "seed")
_MONEY_TABLES = ("costs", "finance", "service")
_MONEY_NAMES = frozenset(
    {
        "price", "life_years", "upkeep_percent_per_year", "structure_price_per_module", "structure_life_years",
        "line_length_m", "line_price_per_m", "co2_kg_per_kwh", "fuel_price_per_l", "fuel_delivery_per_l",
        "fuel_price_growth_percent_per_year", "life_hours", "service_interval_h", "service_price",
        "overhaul_interval_h", "overhaul_price", "co2_kg_per_l",
    }
)  # fmt: skip
_NOT_SWEPT = ("sweep", "size")
_PART = re.compile(r"\.?([A-Za-z0-9_-]+)|\.?'([^']*)'|\.?\"([^\"]*)\"|\[(\d+)\]")


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
    """

    text: str
    path: Path
    base: float | None
    whole: bool
    unit: str

    @property
    def stage(self) -> Stage:
        """First stage that a change of it touches, by the section in which it stands."""
        return stage_of(self.path)

    @property
    def is_size(self) -> bool:
        """Whether it is a size of the design."""
        return self.text in SIZES

    @property
    def is_price(self) -> bool:
        """Whether it is a price, of which, with all other prices, every cost is a straight line."""
        return self.stage == "money" and self.unit.startswith("money")


def stage_of(path: Path) -> Stage:
    """Tell the first stage that a change of a key touches.

    Parameters
    ----------
    path : tuple
        Path of the key; within [overrides] that of the table overridden counts.

    Returns
    -------
    str
        'weather': the weather is made or read anew; 'design': the hours are run again in the same weather; 'money':
        neither.
    """
    if path[0] == "overrides":
        path = path[2:]
    if path[0] in _SITE or path == ("finance", "life_years"):
        return "weather"
    if path == ("pump", "life_years"):
        return "design"  # a new pump ends the wear of the old one
    if path[0] in _MONEY_TABLES or path[-1] in _MONEY_NAMES:
        return "money"
    if path[:3] == ("sources", "grid", "tariff") and not {"hours", "months"} & set(path):
        return "money"
    return "design"


def numeric_keys(scenario: Scenario) -> dict[str, Key]:
    """List every key of a scenario that is a number or could be given one, by its dotted path."""
    return {key.text: key for key in _keys_of(scenario, ())}


def key_of(scenario: Scenario, text: str, where: str) -> Key:
    """Find a numeric key.

    Parameters
    ----------
    scenario : Scenario
        The scenario.
    text : str
        Dotted path as a user writes it.
    where : str
        Key under which the user wrote it, for the message.

    Raises
    ------
    InputError
        When there is none; the message names the nearest path that there is.
    """
    known = numeric_keys(scenario)
    plain = dotted(parts_of(text)) if text else text
    if plain in known:
        return known[plain]
    near = difflib.get_close_matches(plain, known, n=1, cutoff=0.0)
    hint = f"; the nearest that there is: '{near[0]}'" if near else ""
    what = "is not a number" if _stands(scenario, parts_of(text)) else "is no key of this scenario"
    raise InputError("", [Problem(where, f"'{text}' was given; it {what}{hint}")])


def parts_of(text: str) -> Path:
    """Split a dotted path; list entries, written from 1, count from 0."""
    parts: list[str | int] = []
    place = 0
    while place < len(text):
        match = _PART.match(text, place)
        if match is None or match.end() == place:
            return (text,)
        name, single, double, number = match.groups()
        parts.append(
            int(number) - 1 if number is not None else next(p for p in (name, single, double) if p is not None)
        )
        place = match.end()
    return tuple(parts)


def with_value(raw: dict[str, Any], key: Key, value: float) -> dict[str, Any]:
    """Return raw scenario data with one key set; nothing given is changed, only the tables on the way are copied."""
    changed: dict[str, Any] = set_path(raw, key.path, whole_or_not(key, value))
    return changed


def whole_or_not(key: Key, value: float) -> float | int:
    """Bring a value to the kind of number that the key takes."""
    return round(value) if key.whole else float(value)


def set_path(node: Any, path: Path, value: Any) -> Any:
    """Return nested data with the value at a path replaced; only the tables and lists on the way are copied."""
    if not path:
        return value
    first, rest = path[0], path[1:]
    if isinstance(first, int):
        copied = list(node)
        copied[first] = set_path(copied[first], rest, value)
        return copied
    table = dict(node or {})
    table[first] = set_path(table.get(first), rest, value)
    return table


def _keys_of(node: BaseModel, path: Path) -> Iterator[Key]:
    for name, field in type(node).model_fields.items():
        if not path and name in _NOT_SWEPT:
            continue
        yield from _keys_in(getattr(node, name), field, (*path, name), node)


def _keys_in(value: Any, field: FieldInfo, path: Path, holder: BaseModel) -> Iterator[Key]:
    if path == ("overrides",):
        yield from _overridden(value, holder) if value else ()
    elif isinstance(value, BaseModel):
        yield from _keys_of(value, path)
    elif isinstance(value, list):
        for place, entry in enumerate(value):
            yield from _keys_in(entry, field, (*path, place), holder)
    elif _takes_number(field.annotation) and (value is None or value == "auto" or _is_number(value)):
        yield Key(dotted(path), path, _base(value), not _takes_float(field.annotation), _unit(field))


def _overridden(overrides: dict[str, Any], scenario: BaseModel) -> Iterator[Key]:
    """Keys of the override tables: those that hold a number, with the kind and unit that the scenario's key has."""
    known = {key.path: key for key in _keys_of(scenario.model_copy(update={"overrides": {}}), ())}
    for option, tables in overrides.items():
        for path, value in _leaves(tables, ()):
            if _is_number(value):
                own = known.get(path)
                whole, unit = (own.whole, own.unit) if own else (isinstance(value, int), "")
                full = ("overrides", option, *path)
                yield Key(dotted(full), full, float(value), whole, unit)


def _leaves(node: Any, path: Path) -> Iterator[tuple[Path, Any]]:
    if isinstance(node, dict):
        for name, value in node.items():
            yield from _leaves(value, (*path, name))
    elif isinstance(node, list):
        for place, value in enumerate(node):
            yield from _leaves(value, (*path, place))
    else:
        yield path, node


def _stands(scenario: Scenario, path: Path) -> bool:
    node: Any = scenario
    for part in path:
        if isinstance(part, int):
            if not isinstance(node, list) or not 0 <= part < len(node):
                return False
            node = node[part]
        elif isinstance(node, dict) and part in node:
            node = node[part]
        elif isinstance(node, BaseModel) and part in type(node).model_fields:
            node = getattr(node, part)
        else:
            return False
    return True


def _is_number(value: Any) -> bool:
    return isinstance(value, int | float) and not isinstance(value, bool)


def _base(value: Any) -> float | None:
    return float(value) if _is_number(value) else None


def _plain_types(annotation: Any) -> Iterator[Any]:
    if get_origin(annotation) is Literal:
        yield from (type(choice) for choice in get_args(annotation))
    elif get_args(annotation):
        for inner in get_args(annotation):
            yield from _plain_types(inner)
    else:
        yield annotation


def _takes_number(annotation: Any) -> bool:
    return any(kind in (int, float) for kind in _plain_types(annotation))


def _takes_float(annotation: Any) -> bool:
    return any(kind is float for kind in _plain_types(annotation))


def _unit(field: FieldInfo) -> str:
    extra = field.json_schema_extra
    return str(extra.get("unit", "")) if isinstance(extra, dict) else ""
