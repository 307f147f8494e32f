"""A TOML file is edited by lines: the keys asked for have their new values, and every other line stands as it was."""

from __future__ import annotations

import tomllib
from pathlib import Path
from typing import Any

import pytest

from planner.scenario.edited import edited
from planner.scenario.paths import Path as Keys
from planner.scenario.paths import data_at, with_values
from planner.scenario.reader import line_numbers
from planner.scenario.walk import leaves
from planner.scenario.writer import starter_text

TEXT = """\
# Title
name = "x"  # the name

[pump]
rated = 3 # m3/h
"max head" = 5
dc.low = 3
levels = [
  1, # the first
  2,
]

# the runs of pipe

[[runs]]
pipe = 'b#c'   # bought

[[runs]]
inline = { a = 1, b = { c = 2 } } # kept together
class = 10

# the end
"""


def changed(changes: dict[Keys, Any], text: str = TEXT) -> tuple[str, list[str]]:
    """The text with the changes, and its lines that were not there; what it says is held against the data changed."""
    found, kept = edited(text, changes, dict.fromkeys(changes, "why"))
    assert kept
    assert tomllib.loads(found) == with_values(tomllib.loads(text), changes)
    assert edited(found, changes, dict.fromkeys(changes, "why")) == (found, True)
    before = text.split("\n")
    return found, [line for line in found.split("\n") if line not in before]


@pytest.mark.parametrize(
    ("path", "value", "lines"),
    [
        (("pump", "rated"), 4.5, ["rated = 4.5  # m3/h  # why"]),
        (("runs", 0, "pipe"), "d", ['pipe = "d"  # bought  # why']),
        (("runs", 1, "class"), None, ["# class = 10  # why"]),
        (("runs", 1, "inline", "b", "c"), 9, ["inline = {a = 1, b = {c = 9}}  # kept together  # why"]),
        (("runs", 1, "pipe"), "e", ['pipe = "e"  # why']),
        (("pump", "dc", "high"), 8, ["dc.high = 8  # why"]),
        (("pump", "levels"), [3, 4], ["    3,", "    4,", "]  # why"]),
        (("pump", "max head"), 6, ['"max head" = 6  # why']),
        (("seed",), 2, ["seed = 2  # why"]),
        (("tank", "size"), "auto", ["[tank]", 'size = "auto"  # why']),
        (("pump", "absent"), None, []),
    ],
)
def test_one_key_is_changed_where_it_stands(path: Keys, value: Any, lines: list[str]) -> None:
    found, new = changed({path: value})
    assert new == lines
    gone = [line for line in TEXT.split("\n") if line not in found.split("\n")]
    there = data_at(tomllib.loads(TEXT), path) is not None
    assert len(gone) == (3 if path == ("pump", "levels") else int(there))


def test_a_new_key_goes_to_the_end_of_its_table_before_the_comments_of_the_next() -> None:
    found, _ = changed({("pump", "power"): 7})
    assert found.index("power = 7") < found.index("# the runs of pipe")
    assert found.index("]\npower = 7") > 0


def test_several_keys_at_once() -> None:
    _, new = changed({("runs", 0, "pipe"): "d", ("runs", 1, "class"): None, ("cables", "ac", "size"): 4})
    assert new == ['pipe = "d"  # bought  # why', "# class = 10  # why", "[cables.ac]", "size = 4  # why"]


FILES = {file.stem: file.read_text(encoding="utf-8") for file in sorted(Path("scenarios").glob("*.toml"))}


@pytest.mark.parametrize(
    "name",
    [
        pytest.param(name, marks=[] if name in ("visit", "hill-school") else [pytest.mark.slow])
        for name in (*FILES, "starter")
    ],
)
def test_every_key_of_the_examples_can_be_set_and_taken_away(name: str) -> None:
    text = FILES.get(name) or starter_text()
    lines, comments = line_numbers(text), [line for line in text.split("\n") if line.startswith("#")]
    for path, value in leaves(tomllib.loads(text)):
        for new in ("other", None):
            if new is None and len(path) > 1 and path[:-1] not in lines:
                continue  # a table that only its dotted keys make: without them it would be gone, not empty
            found, kept = edited(text, {path: new}, {})
            assert kept, (path, value)
            after = found.split("\n")
            assert [line for line in after if line.startswith("#") and line in comments] == comments
            if path in lines and not isinstance(value, list):
                assert len([line for line in text.split("\n") if line not in after]) <= 1, path


def test_what_cannot_be_edited_by_lines_is_written_anew() -> None:
    text = 'question = """\n[tank]\nvolume = 3\n"""\n[pump]\nflow = 1  # a comment\n'
    found, kept = edited(text, {("tank", "volume"): 4}, {})
    assert not kept
    assert tomllib.loads(found) == tomllib.loads(text) | {"tank": {"volume": 4}}


def test_nothing_changes_where_the_value_is_there_already() -> None:
    assert edited(TEXT, {("pump", "rated"): 3}, {("pump", "rated"): "why"}) == (TEXT, True)
