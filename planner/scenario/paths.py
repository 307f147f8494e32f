"""Dotted paths of keys, as people read and write them: tables by dots, list entries by number from 1."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from typing import Any

Path = tuple[str | int, ...]
"""Keys from the root of the scenario, and places in lists, counted from 0."""

_PART = re.compile(r"\.?([A-Za-z0-9_-]+)|\.?'([^']*)'|\.?\"([^\"]*)\"|\[(\d+)\]")


def dotted(path: Iterable[str | int]) -> str:
    """Write a path the way a reader of TOML would: tables by dots, list entries by number from 1."""
    text = ""
    for part in path:
        if isinstance(part, int):
            text += f"[{part + 1}]"
        else:
            shown = part if part.replace("_", "").replace("-", "").isalnum() else f"'{part}'"
            text += f".{shown}" if text else shown
    return text


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


def data_at(data: Any, path: Path) -> Any:
    """Value at a path of nested data, None where there is none."""
    for part in path:
        if not (part in data if isinstance(data, dict) else _is_entry(data, part)):
            return None
        data = data[part]
    return data


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


def with_values(raw: dict[str, Any], changes: Mapping[Path, Any]) -> dict[str, Any]:
    """Return raw data with some values set, and those taken away whose new value is None."""
    data: Any = raw
    for path, value in changes.items():
        data = set_path(data, path, value) if value is not None else _without(data, path)
    found: dict[str, Any] = data
    return found


def _without(node: Any, path: Path) -> Any:
    if data_at(node, path) is None:
        return node
    first, rest = path[0], path[1:]
    if rest:
        return set_path(node, (first,), _without(node[first], rest))
    return {key: value for key, value in node.items() if key != first}


def _is_entry(data: Any, part: str | int) -> bool:
    return isinstance(data, list) and isinstance(part, int) and part < len(data)
