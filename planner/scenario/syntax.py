"""TOML that cannot be read: the line, the key and what to write instead."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator
from typing import Any

from planner.scenario.errors import InputError, Problem, shown
from planner.scenario.mistakes import value_advice
from planner.scenario.paths import dotted

_MOST_PROBLEMS = 20
_MOST_PARTS = 50
_DEEP = re.compile(rf"(?:[\w\"'-]{{1,200}}[ \t]*\.[ \t]*){{{_MOST_PARTS},}}")
_PLACE = re.compile(r"\s*\(at (?:line (\d+), column \d+|end of document)\)$")
_HEADER = re.compile(r"\s*\[\[?([^\[\]=]+)\]?\]?\s*(?:#.*)?")
_KEY_VALUE = re.compile(r"\s*([^=\[\]{},#\"']+?|\"[^\"]*\"|'[^']*')\s*=(.*)", re.DOTALL)
_TEXT_OR_COMMENT = re.compile(r""""(?:\\.|[^"\\])*"|'[^']*'|#.*""")


def parsed_toml(text: str, file: str) -> dict[str, Any]:
    """Read TOML text as plain data.

    Parameters
    ----------
    text : str
        The text.
    file : str
        Name of its file, for messages.

    Raises
    ------
    InputError
        When it is not valid TOML, or nested so deeply that no scenario can be meant; lines with values that were
        written the everyday way (decimal comma, unit, degree marks, no quotes) are all named.
    """
    deep = _DEEP.search(text)
    if deep:
        line = text.count("\n", 0, deep.start()) + 1
        raise InputError(file, [Problem("", f"a key of more than {_MOST_PARTS} parts; not a scenario", line)])
    try:
        return tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise InputError(file, list(_problems(text, error))) from error
    except RecursionError as error:
        raise InputError(file, [Problem("", "lists or tables are nested too deeply; not a scenario")]) from error


def _problems(text: str, error: tomllib.TOMLDecodeError) -> Iterator[Problem]:
    """Yield the problem of an error, and those that show once the lines named so far are left out."""
    lines = text.split("\n")
    for _ in range(_MOST_PROBLEMS):
        problem, mended = _explained(lines, str(error))
        yield problem
        if not mended or problem.line is None:
            return
        lines[problem.line - 1] = ""
        try:
            tomllib.loads("\n".join(lines))
            return
        except tomllib.TOMLDecodeError as another:
            error = another


def _explained(lines: list[str], error: str) -> tuple[Problem, bool]:
    """Explain an error, and say whether the line named is wrong by itself, so that the rest can be read without it."""
    place = _PLACE.search(error)
    words = _PLACE.sub("", error)
    number = int(place[1]) if place and place[1] else len(lines)
    line = lines[number - 1].strip()
    problem = _left_open(lines, number, words, at_end=not (place and place[1])) or _given_twice(lines, number, words)
    if problem:
        return problem, False
    found = _KEY_VALUE.fullmatch(line)
    if found:
        text = _pair_advice(found[1], _without_comment(found[2]))
        if text:
            return Problem(_key_at(lines, number, found[1]), text, number), True
    elif re.fullmatch(r"[\w-]+\s*:.*", line, re.DOTALL):
        name, _, value = _without_comment(line).partition(":")
        meant = f"{_cut(name.strip())} = {_cut(value.strip())}"
        return Problem("", f"{_cut(name)}: was given; between key and value stands '=': {meant}", number), True
    elif line.startswith("["):
        example = "a table is named in square brackets, such as [pump] or [[demand.users]]"
        return Problem("", f"{_cut(line)} was given; {example}", number), False
    return Problem("", f"{_cut(line)} was given; is not valid TOML: {words}", number), False


def _pair_advice(key: str, value: str) -> str | None:
    """Say what to write instead of a key and its value, where that can be told."""
    name = key.strip()
    if " " in name and name[0] not in "'\"":
        return f"a key has no spaces; write {_cut(re.sub('[^A-Za-z0-9_.-]+', '_', name))}"
    try:
        tomllib.loads(f"value = {value}")
    except tomllib.TOMLDecodeError:
        advice = value_advice(value)
    else:
        return None
    return advice and f"{_cut(value) or 'nothing'} was given; {advice}"


def _given_twice(lines: list[str], number: int, words: str) -> Problem | None:
    if not words.startswith(("Cannot overwrite", "Cannot declare")):
        return None
    wanted = _name_at(lines, number)
    first = next((at for at in range(1, number) if _name_at(lines, at) == wanted), None)
    if not wanted or first is None:
        return None
    return Problem(wanted, f"is given twice, first in line {first}; leave one", number)


def _name_at(lines: list[str], number: int) -> str:
    """Name of the key or table that a line gives, '' where it gives none."""
    line = lines[number - 1]
    found = _KEY_VALUE.fullmatch(line)
    return _key_at(lines, number, found[1]) if found else _table_of(line)


def _table_of(line: str) -> str:
    header = _HEADER.fullmatch(line)
    return re.sub(r"\s*\.\s*", ".", header[1].strip()) if header else ""


def _key_at(lines: list[str], number: int, key: str) -> str:
    """Write the key of a line with the table in which it stands, tables of a list without their number."""
    table = next((_table_of(line) for line in reversed(lines[: number - 1]) if _table_of(line)), "")
    own = dotted(part.strip().strip("\"'") for part in key.split("."))
    return f"{table}.{own}" if table else own


def _left_open(lines: list[str], number: int, words: str, *, at_end: bool) -> Problem | None:
    """Find a list or inline table that is still open where the error was found and another key or table begins."""
    depth, begun = 0, 0
    for at, line in enumerate(lines[:number], start=1):
        found = _KEY_VALUE.fullmatch(line)
        if depth == 0 and not found:
            continue
        bare = _TEXT_OR_COMMENT.sub("", found[2] if depth == 0 and found else line)
        begun = at if depth == 0 else begun
        depth = max(0, depth + sum(map(bare.count, "[{")) - sum(map(bare.count, "]}")))
    opened = _KEY_VALUE.fullmatch(lines[begun - 1]) if depth else None
    another = begun != number and (_name_at(lines, number) or at_end)
    if opened is None or not (another or "Unclosed" in words):
        return None
    text = "a list or table that begins here is not closed: ']' or '}' is missing"
    return Problem(_key_at(lines, begun, opened[1]), text, begun)


def _without_comment(value: str) -> str:
    """Drop a comment that begins outside quotes."""
    if value.strip().startswith(('"', "'")):
        whole = re.match(r"""\s*("(?:\\.|[^"\\])*"|'[^']*')""", value)
        if whole:
            return (whole[1] + _without_comment(" " + value[whole.end() :])).strip()
    return re.split(r"(?:^|\s)#", value, maxsplit=1)[0].strip()


def _cut(text: str) -> str:
    return shown(text, quoted=False)
