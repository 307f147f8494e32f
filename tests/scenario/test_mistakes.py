"""What is written the everyday way where TOML wants another: the line is named, and what to write instead."""

from __future__ import annotations

import os
import time
from pathlib import Path

import pytest

from planner.assumptions.reader import read_scenario
from planner.scenario.errors import InputError
from planner.scenario.mistakes import number_advice
from planner.scenario.writer import starter_text


def refused(text: str, tmp_path: Path) -> list[str]:
    """Lines of the message, without the name of the folder."""
    file = tmp_path / "site.toml"
    file.write_text(text, encoding="utf-8")
    with pytest.raises(InputError) as caught:
        read_scenario(file)
    return [line.replace(str(tmp_path) + "/", "") for line in caught.value.lines()]


LEVEL = "static_level_m = 48"
PLACE = 'place = "'


@pytest.mark.parametrize(
    ("given", "said"),
    [
        ("48,5", "borehole.static_level_m: 48,5 was given; write a decimal point instead of the comma: 48.5"),
        ("60 m", "borehole.static_level_m: 60 m was given; write the number alone, 60; the unit"),
        ("60m", "write the number alone, 60; the unit"),
        ("5 %", "write the number alone, 5; the unit"),
        ("1,500", "write the number without commas: 1500, or 1.500 if a decimal comma was meant"),
        ("1 500", "write the number in one piece: 1500"),
        (".5", "write 0.5"),
        ("48.", "write 48"),
        ("048", "write 48"),
        ("0°30'N", "write degrees as a decimal number, south and west negative: 0.5"),
        ("1°30' S", "south and west negative: -1.5"),
        ("36°15'36\" W", "south and west negative: -36.26"),
        ("1.5 S", "south and west negative: -1.5"),
        ("15/01/2026", 'no key takes a date; a text stands in quotes: "15/01/2026"'),
        ("12 March 2026", 'a text stands in quotes: "12 March 2026"'),
        ("2026-01-15", "the date or time 2026-01-15 was given; must be a number"),
        ("auto", 'put the text in quotes: "auto"'),
        ('"Well', 'close the quotes: "Well"'),
        ("“48”", 'use straight quotes: "48"'),
        ("Yes", "write true, in small letters"),
        ("", "nothing was given; write a value after the equals sign"),
        ("n/a", "leave the line out where the value is not known"),
        ("48;", "leave out the ';' at the end: 48"),
        ('"C:\\Users"', "a backslash in double quotes has a meaning of its own"),
        ("[3.9 4.2]", "separate the values of a list by commas"),
        ("[3.9 m, 4.2]", "for 3.9 m write the number alone, 3.9"),
        ('"48,5"', "'48,5' was given; must be a number: write a decimal point instead of the comma: 48.5"),
        ('"60 m"', "must be a number: write the number alone, 60"),
        ('"48"', "must be a number: write the number without quotes: 48"),
        ("48  # a comment = 3\nstatic_level_m = 49", "is given twice, first in line"),
    ],
)
def test_what_to_write_instead_is_said_with_line_and_key(given: str, said: str, tmp_path: Path) -> None:
    text = starter_text()
    assert text.count(LEVEL) == 1
    number = text[: text.index(LEVEL)].count("\n") + 1
    (line, *more) = refused(text.replace(LEVEL, f"static_level_m = {given}"), tmp_path)
    number += "twice" in said
    assert not more
    assert line.startswith(f"site.toml:{number}: borehole.static_level_m: "), line
    assert said in line


@pytest.mark.parametrize(
    ("wrong", "said"),
    [
        ("static level m = 48", "a key has no spaces; write static_level_m"),
        ("static_level_m: 48", "between key and value stands '=': static_level_m = 48"),
        ("static_level_m 48", "Expected '='"),
        ("[pump\n", "a table is named in square brackets"),
    ],
)
def test_a_line_that_is_no_key_and_value(wrong: str, said: str, tmp_path: Path) -> None:
    text = starter_text()
    number = text[: text.index(LEVEL)].count("\n") + 1
    line = refused(text.replace(LEVEL, wrong), tmp_path)[0]
    assert line.startswith(f"site.toml:{number}: "), line
    assert said in line


def test_every_such_line_is_named_at_once(tmp_path: Path) -> None:
    text = starter_text().replace(LEVEL, "static_level_m = 48,5").replace("count = 900", "count = 900 people")
    lines = refused(text, tmp_path)
    assert [line.split(": ")[1] for line in lines] == ["demand.users.count", "borehole.static_level_m"]


@pytest.mark.parametrize("after", ["rise_m = 3\n", "[pump]\n", ""])
def test_a_list_left_open_is_named_where_it_begins(after: str, tmp_path: Path) -> None:
    (line,) = refused(f"[site]\nx = 1\nmonths = [1, 2,\n3, 4\n{after}", tmp_path)
    assert line == "site.toml:3: site.months: a list or table that begins here is not closed: ']' or '}' is missing"


def test_decimal_commas_in_a_list_of_months_are_suspected(tmp_path: Path) -> None:
    text = starter_text()
    start = text.index("ghi_kwh_m2_day = [")
    end = text.index("]", start)
    wrong = "ghi_kwh_m2_day = [" + ", ".join("5,9" for _ in range(12))
    assert any("if decimal commas were meant" in line for line in refused(text[:start] + wrong + text[end:], tmp_path))


@pytest.mark.parametrize("text", ["several", "north", "12 or 13", "50/60", "3 to 5 m", "2026-01-15", ""])
def test_no_advice_where_no_number_can_be_seen(text: str) -> None:
    assert number_advice(text) is None


@pytest.mark.parametrize("text", ["2.5 m3/h", "2.5m3/h", "2,5 m^3/h", "2.5 $", "2.5 / m", "2.5 kWh/m2/day"])
def test_units_with_digits_are_units(text: str) -> None:
    assert "write the number alone, 2.5;" in str(number_advice(text))


@pytest.mark.parametrize("text", ["a = " + "[" * 50_000, "[" + "a." * 200_000 + "a]\n", "a." * 100_000 + "a = 1\n"])
def test_what_is_deep_or_wide_is_refused_quickly(text: str, tmp_path: Path) -> None:
    begin = time.process_time()
    (line,) = refused(text, tmp_path)
    assert "not a scenario" in line
    assert time.process_time() - begin < 5


def test_long_values_are_cut_and_control_characters_left_out(tmp_path: Path) -> None:
    name = "x" * 5_000
    for old, new in (
        ("count = 900", f'count = "{name}"'),
        (LEVEL, f"static_level_m = {name}"),
        ("[borehole]", f"[{name}]"),
        ('time_zone = "', f'time_zone = "{name}'),
    ):
        assert old in starter_text()
        lines = refused_or_placed(starter_text().replace(old, new), tmp_path)
        assert all(len(line) <= 700 for line in lines), lines
    (line, *_) = refused(starter_text().replace("[borehole]", '["bore\\u001b[31mhole\\u202e"]'), tmp_path)
    assert "\x1b" not in line
    assert "\u202e" not in line


def refused_or_placed(text: str, tmp_path: Path) -> list[str]:
    """Lines of the message of reading, or of finding the place."""
    from planner.study.site import place_of

    file = tmp_path / "site.toml"
    file.write_text(text, encoding="utf-8")
    with pytest.raises(InputError) as caught:
        place_of(read_scenario(file))
    return list(caught.value.lines())


def test_only_ordinary_files_of_a_bearable_size_are_read(tmp_path: Path) -> None:
    with pytest.raises(InputError, match="is not an ordinary file"):
        read_scenario(Path("/dev/zero"))
    os.mkfifo(tmp_path / "pipe.toml")
    with pytest.raises(InputError, match="is not an ordinary file"):
        read_scenario(tmp_path / "pipe.toml")
    (tmp_path / "large.toml").write_bytes(b"#" * 2_000_001)
    with pytest.raises(InputError, match="is larger than 2,000,000 bytes"):
        read_scenario(tmp_path / "large.toml")
