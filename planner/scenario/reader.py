"""From a TOML file, and those that it includes, to plain data and the line of each key."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path
from types import MappingProxyType
from typing import Any, NamedTuple

from planner.scenario.errors import InputError, Problem
from planner.scenario.ordinary import read_ordinary
from planner.scenario.paths import dotted, parts_of
from planner.scenario.syntax import parsed_toml

_LARGEST_FILE = 2_000_000
INCLUDE = "include"


class Line(NamedTuple):
    """Where a key stands: the number of the line, and the file where it is one that the scenario includes."""

    number: int
    file: str = ""


Lines = Mapping[tuple[str | int, ...], Line]
"""Line of each key and table."""
NO_LINES: Lines = MappingProxyType({})


def read_raw(path: Path) -> dict[str, Any]:
    """Read a TOML file and what it includes as plain data, unchecked; an InputError says what keeps it from that."""
    return read_with_lines(path)[0]


def read_with_lines(path: Path) -> tuple[dict[str, Any], Lines]:
    """Read a TOML file and what it includes as plain data, unchecked, with the line of each key.

    Raises
    ------
    InputError
        When a file cannot be read, or includes itself by way of others.
    """
    text = text_of(path)
    raw = parsed_toml(text, str(path))  # first, as it refuses what would take the line numbers long
    lines = {key: Line(number) for key, number in line_numbers(text).items()}
    return with_included(raw, path, lines)


def with_included(
    raw: dict[str, Any], path: Path, lines: Lines = NO_LINES, above: tuple[Path, ...] = ()
) -> tuple[dict[str, Any], Lines]:
    """Merge what a scenario includes under its own values; of several files the earlier wins, of lists the whole.

    Parameters
    ----------
    raw : dict
        The file's own data.
    path : pathlib.Path
        The file; what it includes is looked for beside it.
    lines : mapping
        Line of each of its keys.
    above : tuple of pathlib.Path
        Files by way of which it is included, the scenario first.
    """
    named = raw.get(INCLUDE)
    files = [named] if isinstance(named, str) else named
    if not isinstance(files, list) or not all(isinstance(file, str) and file for file in files):
        return raw, lines  # none, or no names: the check says so
    data = {key: value for key, value in raw.items() if key != INCLUDE}
    chain = (*above, path)
    for file in files:
        other = path.parent / file
        try:
            if other.resolve() in [each.resolve() for each in chain]:
                raise InputError("", [Problem("", "it includes itself")])
            text = text_of(other)
        except InputError as error:
            words = f"{file!r} was given; {error.problems[0].text}"
            where = str(path) if above else ""
            found = problem_at((INCLUDE,), words, {key: Line(line.number, where) for key, line in lines.items()})
            raise InputError(str(chain[0]), [found]) from error
        theirs = parsed_toml(text, str(other))
        own = {key: Line(number, str(other)) for key, number in line_numbers(text).items()}
        included, further = with_included(theirs, other, own, chain)
        data, lines = merged(included, data), {**further, **lines}
    return data, lines


def problem_at(
    path: tuple[str | int, ...], words: str, lines: Lines, kind: str = "", keys: tuple[str, ...] = ()
) -> Problem:
    """Problem of a key, with the line of it or of the table that it would stand in; `keys` from there are at odds."""
    line = next((lines[path[:end]] for end in range(len(path), 0, -1) if path[:end] in lines), None)
    table = f"{dotted(path)}." if path else ""
    at_odds = tuple(table + key for key in keys)
    return Problem(dotted(path), words, line.number if line else None, line.file if line else "", kind, at_odds)


@contextmanager
def located(file: Path) -> Iterator[None]:
    """Give problems found while a scenario is worked out the name of its file and the line of their key."""
    try:
        yield
    except InputError as error:
        if error.file:
            raise
        lines = read_with_lines(file)[1]
        problems = [
            problem if problem.line else problem_at(parts_of(problem.key), problem.text, lines)
            for problem in error.problems
        ]
        raise InputError(str(file), problems) from error


def merged(base: dict[str, Any], changes: dict[str, Any]) -> dict[str, Any]:
    """Put changes over raw data, table by table; a list is replaced as a whole."""
    found = dict(base)
    for key, value in changes.items():
        both = isinstance(value, dict) and isinstance(found.get(key), dict)
        found[key] = merged(found[key], value) if both else value
    return found


def text_of(path: Path) -> str:
    """Read a file as text; an InputError says what keeps it from that."""
    try:
        return read_ordinary(path, _LARGEST_FILE).decode("utf-8-sig").replace("\r\n", "\n")
    except FileNotFoundError as error:
        raise InputError(str(path), [Problem("", "there is no such file")]) from error
    except UnicodeDecodeError as error:
        raise InputError(str(path), [Problem("", "is not text in UTF-8; is it a TOML file?")]) from error
    except OSError as error:
        raise InputError(str(path), [Problem("", f"cannot be read: {error.strerror}")]) from error


_HEADER = re.compile(r"^\s*(\[\[?)\s*([^\]]+?)\s*\]\]?\s*(#.*)?$")
_KEY = re.compile(r"""^\s*((?:[A-Za-z0-9_-]+|"[^"]*"|'[^']*')(?:\s*\.\s*(?:[A-Za-z0-9_-]+|"[^"]*"|'[^']*'))*)\s*=""")
_PART = re.compile(r"""[A-Za-z0-9_-]+|"[^"]*"|'[^']*'""")
_TEXT_OR_COMMENT = re.compile(r""""(?:\\.|[^"\\])*"|'[^']*'|#.*""")


def line_numbers(text: str) -> dict[tuple[str | int, ...], int]:
    """Map each key and table of a TOML text to its line.

    Not a parser: tables, dotted keys and arrays of tables are followed, keys inside inline tables and multi-line
    texts are not; a path that is not found falls back to its table's line.
    """
    lines: dict[tuple[str | int, ...], int] = {}
    table: tuple[str | int, ...] = ()
    counts: dict[tuple[str | int, ...], int] = {}
    depth = 0
    for number, line in enumerate(text.split("\n"), start=1):
        if depth == 0:
            header, key = _HEADER.match(line), _KEY.match(line)
            if header:
                names = [part.strip("\"'") for part in _PART.findall(header.group(2))]
                table = (*_resolved(names[:-1], counts), names[-1])
                if header.group(1) == "[[":
                    counts[table] = counts.get(table, -1) + 1
                    table = (*table, counts[table])
                else:
                    table = _resolved(names, counts)
                lines.setdefault(table, number)
                continue
            if key:
                parts = tuple(part.strip("\"'") for part in _PART.findall(key.group(1)))
                lines.setdefault(table + parts, number)
                line = line[key.end() :]
        bare = _TEXT_OR_COMMENT.sub("", line)
        depth = max(0, depth + sum(map(bare.count, "[{")) - sum(map(bare.count, "]}")))
    return lines


def _resolved(names: list[str], counts: dict[tuple[str | int, ...], int]) -> tuple[str | int, ...]:
    path: tuple[str | int, ...] = ()
    for name in names:
        path = (*path, name)
        if path in counts:
            path = (*path, counts[path])
    return path
