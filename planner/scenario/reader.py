"""From a TOML file to a checked scenario, with every problem named by file, line and key."""

from __future__ import annotations

import copy
import re
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from pydantic import ValidationError

from planner.scenario.errors import InputError, Problem, problems_of
from planner.scenario.ordinary import read_ordinary
from planner.scenario.paths import dotted
from planner.scenario.scenario import Scenario, option_name_of
from planner.scenario.syntax import parsed_toml

_LARGEST_FILE = 2_000_000


def read_scenario(path: Path) -> Scenario:
    """Read and check a scenario file.

    Parameters
    ----------
    path : pathlib.Path
        The TOML file.

    Returns
    -------
    Scenario

    Raises
    ------
    InputError
        When the file cannot be read or anything in it is wrong; every problem found is named.
    """
    return check_scenario(read_raw(path), str(path), _text_of(path))


def read_raw(path: Path) -> dict[str, Any]:
    """Read a TOML file as plain data, unchecked; an InputError says what keeps it from being read."""
    return parsed_toml(_text_of(path), str(path))


def check_scenario(raw: dict[str, Any], file: str, text: str = "") -> Scenario:
    """Check raw data against the scenario models, the overrides of each option included.

    Parameters
    ----------
    raw : dict
        Data as read from a file.
    file : str
        Name of the file, for messages.
    text : str
        The file's text, for line numbers.
    """
    scenario = _validated(raw, file, text, ())
    for name in scenario.overrides:
        option_scenario(scenario, name, raw=raw, file=file, text=text)
    return scenario


def option_scenario(
    scenario: Scenario, option: str, *, raw: dict[str, Any] | None = None, file: str = "scenario", text: str = ""
) -> Scenario:
    """Return the scenario as it holds for one supply option, its overrides merged in."""
    override = next(
        (tables for name, tables in scenario.overrides.items() if option_name_of(name) == option_name_of(option)),
        None,
    )
    if override is None:
        return scenario
    base = copy.deepcopy(raw if raw is not None else scenario.model_dump(exclude_unset=True))
    base.pop("overrides", None)
    return _validated(_merge(base, override), file, text, ("overrides", option))


@contextmanager
def located(file: Path) -> Iterator[None]:
    """Give problems found while a scenario is worked out the name of its file and the line of their key."""
    try:
        yield
    except InputError as error:
        if error.file:
            raise
        lines = line_numbers(_text_of(file))
        spelt = {dotted(path): line for path, line in lines.items()}
        problems = [
            Problem(problem.key, problem.text, problem.line or _nearest(problem.key, spelt))
            for problem in error.problems
        ]
        raise InputError(str(file), problems) from error


def _nearest(key: str, lines: dict[str, int]) -> int | None:
    """Find the line of a dotted key, or of the table it would stand in."""
    while key:
        if key in lines:
            return lines[key]
        key = key.rpartition(".")[0]
    return None


def _merge(base: dict[str, Any], changes: dict[str, Any]) -> dict[str, Any]:
    merged = dict(base)
    for key, value in changes.items():
        both = isinstance(value, dict) and isinstance(merged.get(key), dict)
        merged[key] = _merge(merged[key], value) if both else value
    return merged


def _validated(raw: dict[str, Any], file: str, text: str, prefix: tuple[str | int, ...]) -> Scenario:
    try:
        return Scenario.model_validate(raw)
    except ValidationError as error:
        lines = line_numbers(text)
        problems = [
            Problem(dotted(prefix + path), words, _line_of(prefix + path, lines))
            for path, words in problems_of(error, raw, Scenario)
        ]
        problems.sort(key=lambda problem: (problem.line is None, problem.line or 0))
        raise InputError(file, problems) from error


def _text_of(path: Path) -> str:
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


def _line_of(path: tuple[str | int, ...], lines: dict[tuple[str | int, ...], int]) -> int | None:
    for end in range(len(path), 0, -1):
        if path[:end] in lines:
            return lines[path[:end]]
    return None
