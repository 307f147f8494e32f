"""Change values in the text of a TOML file, with its comments and the order of its keys."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Mapping
from typing import Any

from planner.scenario.paths import Path, data_at, with_values
from planner.scenario.reader import line_numbers
from planner.scenario.writer import toml_key, toml_text, toml_value

_TEXT_OR_COMMENT = re.compile(r""""(?:\\.|[^"\\])*"|'[^']*'|(?P<comment>#.*)""")


def edited(text: str, changes: Mapping[Path, Any], notes: Mapping[Path, str]) -> tuple[str, bool]:
    """Set, add and take away keys of a TOML text, the rest of which stays as it is.

    Parameters
    ----------
    text : str
        The file.
    changes : mapping
        New values by path, lists counted from 0; None takes a key away, whose line then stays as a comment.
    notes : mapping
        What to say, in a comment on its line, of a path in `changes`.

    Returns
    -------
    str
        The text with the changes. A value within an inline table or list is set by writing that anew, in one line.
    bool
        Whether comments and order were kept: not where the text is written in a way that cannot be edited by lines.
    """
    data = tomllib.loads(text)
    wanted = with_values(data, changes)
    if wanted == data:
        return text, True
    words = text
    for path, value in changes.items():
        words = _with_value(words, path, value, notes.get(path, ""))
    try:
        if tomllib.loads(words) == wanted:
            return words, True
    except tomllib.TOMLDecodeError:
        pass
    return toml_text(wanted), False


def _with_value(text: str, path: Path, value: Any, note: str) -> str:
    data, places, lines = tomllib.loads(text), line_numbers(text), text.split("\n")
    if with_values(data, {path: value}) == data:
        return text
    held = next((path[:end] for end in range(len(path), 0, -1) if path[:end] in places), ())
    if held and not _is_header(lines[places[held] - 1]):
        start = places[held] - 1
        end = _end(lines, start)
        written = None if value is None and held == path else data_at(with_values(data, {path: value}), held)
        lines[start:end] = _anew(lines[start:end], written, note)
    else:
        at, line = _place_for(lines, places, path)
        lines[at:at] = [*line[:-1], _noted(f"{line[-1]} = {toml_value(value)}", note)]
    return "\n".join(lines)


def _anew(lines: list[str], value: Any, note: str) -> list[str]:
    """Write the lines of one key with another value; as a comment where it is None."""
    if value is None:
        return [_noted(f"# {lines[0]}", note), *(f"# {line}" for line in lines[1:])]
    comment = next((found["comment"] for found in _TEXT_OR_COMMENT.finditer(lines[-1]) if found["comment"]), "")
    key = lines[0][: lines[0].index("=")].rstrip()
    written = toml_value(value)
    if len(lines) > 1 and isinstance(value, list) and value:
        indent = " " * (len(key) - len(key.lstrip()) + 4)
        written = "\n".join(["[", *(f"{indent}{toml_value(entry)}," for entry in value), f"{indent[4:]}]"])
    return _noted(f"{key} = {written}{f'  {comment}' if comment else ''}", note).split("\n")


def _place_for(lines: list[str], places: Mapping[Path, int], path: Path) -> tuple[int, list[str]]:
    """Find where a key goes that is not there: number of lines above it, and the lines up to its name."""
    table, headers = path[:-1], [number for number, line in enumerate(lines) if _is_header(line)]
    dotted_keys = [
        number - 1 for key, number in places.items() if key[: len(table)] == table and number - 1 not in headers
    ]
    if not table or table in places:
        first = places[table] - 1 if table else -1
        after = next((number for number in headers if number > first), len(lines))
        filled = [number for number in range(max(first, 0), after) if _says_something(lines[number])]
        return (filled[-1] + 1 if filled else 0), [_name(path[-1:])]
    if dotted_keys:
        # a table made of dotted keys may not have a header as well
        last = max(dotted_keys)
        above = max((number for number in headers if number < last), default=-1)
        header = next((key for key, number in places.items() if number - 1 == above), ())
        return _end(lines, last), [_name(path[len(header) :])]
    end = max((number + 1 for number, line in enumerate(lines) if line.strip()), default=0)
    return end, ["", f"[{_name(table)}]", _name(path[-1:])]


def _end(lines: list[str], start: int) -> int:
    """Number of the line after a key's value."""
    for end in range(start + 1, len(lines)):
        try:
            tomllib.loads("\n".join(lines[start:end]))
        except tomllib.TOMLDecodeError:
            continue
        return end
    return len(lines)


def _name(path: Path) -> str:
    return ".".join(toml_key(str(part)) for part in path)


def _noted(line: str, note: str) -> str:
    return f"{line}  # {note}" if note else line


def _is_header(line: str) -> bool:
    return line.lstrip().startswith("[")


def _says_something(line: str) -> bool:
    return bool(line.strip()) and not line.lstrip().startswith("#")
