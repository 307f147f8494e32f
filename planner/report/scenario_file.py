"""A scenario file written anew with its remedies, its comments and order kept as far as they can be."""

from __future__ import annotations

import os
import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from planner.assumptions.own_keys import own_keys
from planner.assumptions.reader import check_scenario
from planner.checks.remedies import CarriedOut
from planner.report.files import check_folder, write_text, writing
from planner.scenario.edited import edited
from planner.scenario.errors import InputError, Problem
from planner.scenario.paths import Path as Keys
from planner.scenario.paths import data_at, with_values
from planner.scenario.reader import INCLUDE, Lines, problem_at, with_included
from planner.scenario.scenario import Scenario
from planner.scenario.writer import toml_value
from planner.text import text

_WEATHER_FILE = ("weather", "file")


@dataclass(frozen=True)
class Rewritten:
    """A scenario file that is ready to be written.

    Attributes
    ----------
    text : str
        The file.
    scenario : Scenario
        What it says.
    kept : bool
        Whether comments and order are those of the file that it was made from.
    """

    text: str
    scenario: Scenario
    kept: bool


def check_new_file(out: Path) -> None:
    """Refuse, before any work is done, to write a scenario where a file is, or under a name that is not TOML's."""
    if out.suffix.lower() != ".toml":
        raise InputError(str(out), [Problem("", "a scenario is written as TOML: give a name that ends in .toml")])
    if out.exists():
        raise InputError(str(out), [Problem("", "is already there and is not replaced; give another name")])
    check_folder(out.parent, [out.name])


def rewritten(words: str, file: Path, out: Path, changes: Mapping[Keys, Any], notes: Mapping[Keys, str]) -> Rewritten:
    """Write a scenario anew with some keys changed; nothing that was worked out is written.

    Parameters
    ----------
    words : str
        The scenario as TOML.
    file : pathlib.Path
        Where it stands.
    out : pathlib.Path
        Where the new one is to stand; paths in it are made to hold from there.
    changes : mapping
        New values by path of the key; None takes one away.
    notes : mapping
        What to say of a change in a comment on its line.

    Raises
    ------
    InputError
        Where a key is to be taken away that stands in an included file, which other scenarios may share.
    """
    own = tomllib.loads(words)
    data, lines = with_included(own, file)
    told, said = _in_this_file(own, data, changes, notes, lines)
    moved = _moved(own, data, file.parent.resolve(), out.parent.resolve())
    told |= moved
    said |= dict.fromkeys(moved, text("apply.note_path"))
    words, kept = edited(words, told, said)
    # judged with what the old file includes: from a folder that is still to be made nothing can be found
    raw, _ = with_included(tomllib.loads(words) | {key: own[key] for key in (INCLUDE,) if key in own}, file)
    return Rewritten(words, check_scenario(raw, str(out)), kept)


def remedied_file(file: Path, out: Path, carried: CarriedOut, words: str) -> Rewritten:
    """Write a scenario anew with the remedies carried out, the check noted on each changed line; see `rewritten`."""
    before = carried.before.given()
    notes: dict[Keys, str] = {}
    for verdict in carried.remedied:
        for path in own_keys(carried.before, verdict.changes):
            was = data_at(before, path)
            shown = was is not None and carried.changes[path] is not None
            key = "apply.note_was" if shown else "apply.note"
            notes[path] = text(key, what=verdict.what, before=toml_value(_plain(was)) if shown else "")
    changes = {path: _plain(value) for path, value in carried.changes.items()}
    return rewritten(words, file, out, changes, notes)


def _plain(value: Any) -> Any:
    """Write a whole number as people do."""
    return int(value) if isinstance(value, float) and value.is_integer() else value


def _in_this_file(
    own: dict[str, Any], data: dict[str, Any], changes: Mapping[Keys, Any], notes: Mapping[Keys, str], lines: Lines
) -> tuple[dict[Keys, Any], dict[Keys, str]]:
    """Put changes into keys of the file itself, where included ones hold some of it; of a list there the whole."""
    changed, told, said = with_values(data, changes), {}, {}
    for path, value in changes.items():
        end = next((place for place, part in enumerate(path) if isinstance(part, int)), len(path))
        in_list = end < len(path) and data_at(own, path[:end]) is None
        if in_list:
            told[path[:end]], said[path[:end]] = data_at(changed, path[:end]), notes.get(path, "")
        elif value is None and data_at(own, path) is None and data_at(data, path) is not None:
            words = "is to be taken away, but stands in a file that is included and may be shared; take it away there"
            raise InputError("", [problem_at(path, words, lines)])
        else:
            told[path], said[path] = value, notes.get(path, "")
    return told, said


def _moved(own: dict[str, Any], data: dict[str, Any], before: Path, after: Path) -> dict[Keys, Any]:
    """Paths of other files as they are from the new folder."""
    if before == after:
        return {}
    found: dict[Keys, Any] = {}
    named = own.get(INCLUDE)
    if isinstance(named, str):
        found[INCLUDE,] = _from(before, after, named)
    elif named:
        found[INCLUDE,] = [_from(before, after, name) for name in named]
    if weather_file := data_at(data, _WEATHER_FILE):
        found[_WEATHER_FILE] = _from(before, after, weather_file)
    return found


def _from(before: Path, after: Path, name: str) -> str:
    """Write a path, relative to one folder, so that it holds in another."""
    if Path(name).is_absolute():
        return name
    try:
        return Path(os.path.relpath(before / name, after)).as_posix()
    except ValueError:  # another drive
        return (before / name).as_posix()


def write_new(out: Path, made: Rewritten) -> None:
    """Write the file, whole or not at all."""
    with writing(out):
        write_text(out, made.text)
