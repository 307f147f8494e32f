"""Reading a scenario: what is right passes, what is wrong is named by file, line, key, value and what is allowed."""

from __future__ import annotations

import tomllib
from pathlib import Path

import pytest

from planner.assumptions.reader import check_scenario, option_scenario, read_scenario
from planner.scenario.errors import InputError
from planner.scenario.reader import line_numbers
from planner.scenario.scenario import Scenario
from planner.scenario.writer import starter_text, toml_text

EXAMPLES = sorted(Path("scenarios").glob("*.toml"))


def refused(text: str, tmp_path: Path) -> list[str]:
    """Lines of the message for a scenario that must be refused."""
    file = tmp_path / "site.toml"
    file.write_text(text, encoding="utf-8")
    with pytest.raises(InputError) as caught:
        read_scenario(file)
    return [line.removeprefix(str(file)) for line in caught.value.lines()]


def starter(old: str, new: str) -> str:
    text = starter_text()
    assert text.count(old) >= 1, old
    return text.replace(old, new, 1)


@pytest.mark.parametrize("file", EXAMPLES, ids=lambda file: file.stem)
def test_examples_are_read(file: Path) -> None:
    scenario = read_scenario(file)
    assert "invented" in scenario.name


def test_starter_is_valid_and_explains_every_key_it_gives() -> None:
    text = starter_text()
    check_scenario(tomllib.loads(text), "starter", text)
    for line in text.splitlines():
        if " = " in line and not line.startswith("#") and not line.startswith("kind"):
            assert "  # " in line, line


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ("static_level_m = 48", "static_level_m = -4", "borehole.static_level_m: -4 was given; must be at least 0"),
        ("latitude_deg = -1.5", "latitude_deg = 200", "site.latitude_deg: 200 was given; must be at most 90"),
        ("rated_head_m", "rated_hed_m", "pump.rated_hed_m: is not a known key; did you mean 'rated_head_m'?"),
        ("[controller]", "[pump.plate]\npower_w = 2400\n[controller]", "did you mean 'rated_power_w' in [pump]?"),
        ("rated_power_w = 2400", "power_w = 2400", "pump.power_w: is not a known key; did you mean 'rated_power_w'?"),
        ("[controller]", "current_a = 8\n[controller]", "did you mean 'current_a' in [pump.plate]?"),
        ("count = 900", 'count = "many"', "demand.users[1].count: 'many' was given; must be a number"),
        ("count = 900", "count = nan", "demand.users[1].count: nan was given; must be a finite number"),
        ("count = 900", "count = inf", "demand.users[1].count: inf was given; must be a finite number"),
        ("count = 900", "count = true", "demand.users[1].count: True was given; must be a number"),
        ("[6.2, 6.5, 6.3,", "[6.2, 6.5,", "must have 12 values (11 found)"),
        ('volume_m3 = "auto"', 'volume_m3 = "big"', "'big' was given; must be a number, or must be 'auto'"),
        ('kind = "livestock"', 'kind = "lions"', "demand.users[2]: needs kind = one of 'people', 'livestock'"),
        ("[sources.grid]", "[sources.gridd]", "did you mean 'grid'?"),
        ("max_head_m = 118", "max_head_m = 60", "rated_head_m 80 is not below max_head_m 60: the"),
        ("rated_power_w = 2400", "rated_power_w = 900", "rated_power_w 900 cannot lift"),
        ("pump_depth_m = 78", "pump_depth_m = 40", "pump_depth_m 40 is not below the water at rest (48 m)"),
        ("demand_met_percent = 97", 'options = ["solar + wind"]', "'wind' is no source"),
        ("currency = \"USD\"", "currency = \"dollars\"", "three capital letters such as 'USD'"),
    ],
)  # fmt: skip
def test_wrong_values_are_named(old: str, new: str, said: str, tmp_path: Path) -> None:
    lines = refused(starter(old, new), tmp_path)
    assert any(said in line for line in lines), lines


def test_line_numbers_point_at_the_key(tmp_path: Path) -> None:
    text = starter("static_level_m = 48", "static_level_m = -4")
    wanted = next(number for number, line in enumerate(text.splitlines(), 1) if line.startswith("static_level_m"))
    assert refused(text, tmp_path)[0].startswith(f":{wanted}: ")


def test_several_errors_are_reported_together(tmp_path: Path) -> None:
    text = starter("static_level_m = 48", "static_level_m = -4").replace("longitude_deg = 37.2", "longitude_deg = 370")
    lines = refused(text, tmp_path)
    assert len(lines) == 2
    assert "longitude_deg" in lines[0]
    assert "static_level_m" in lines[1]


def test_a_source_named_but_not_described(tmp_path: Path) -> None:
    text = starter("[service]", '[service]\noptions = ["solar", "solar + grid"]')
    start = text.index("[sources.grid]")
    end = text.index("[sources.generator]")
    lines = refused(text[:start] + text[end:], tmp_path)
    assert any("the source 'grid' is not described; add [sources.grid]" in line for line in lines), lines


def test_unreadable_files(tmp_path: Path) -> None:
    with pytest.raises(InputError, match="there is no such file"):
        read_scenario(tmp_path / "absent.toml")
    binary = tmp_path / "binary.toml"
    binary.write_bytes(b"\xff\xfe\x00\x01")
    with pytest.raises(InputError, match="not text in UTF-8"):
        read_scenario(binary)
    broken = tmp_path / "broken.toml"
    broken.write_text("name = [1,\n", encoding="utf-8")
    with pytest.raises(InputError, match=r"broken\.toml:1: name: a list or table that begins here is not closed"):
        read_scenario(broken)
    with pytest.raises(InputError, match="cannot be read"):
        read_scenario(tmp_path)


def test_overrides_hold_for_one_option_and_are_checked() -> None:
    raw = tomllib.loads(starter_text())
    raw["overrides"] = {"grid + solar": {"tank": {"volume_m3": 30.0}}}
    scenario = check_scenario(raw, "site.toml")
    assert option_scenario(scenario, "solar + grid").tank.volume_m3 == 30.0
    assert option_scenario(scenario, "grid").tank.volume_m3 == "auto"
    raw["overrides"] = {"solar + grid": {"tank": {"volume_m3": -1.0}}}
    with pytest.raises(InputError, match=r"overrides\.'solar \+ grid'\.tank\.volume_m3: -1.0 was given"):
        check_scenario(raw, "site.toml")
    raw["overrides"] = {"solar + grid": {"weather": {}}}
    with pytest.raises(InputError, match="'weather' cannot differ in one option"):
        check_scenario(raw, "site.toml")


@pytest.mark.parametrize("file", EXAMPLES, ids=lambda file: file.stem)
def test_every_key_of_the_examples_has_its_line(file: Path) -> None:
    text = file.read_text(encoding="utf-8")
    source = text.splitlines()
    lines = line_numbers(text)
    checked = 0
    for path, line in lines.items():
        key = next(part for part in reversed(path) if isinstance(part, str))
        assert key in source[line - 1], (path, line)
        checked += 1
    raw = tomllib.loads(text)
    assert checked >= sum(isinstance(value, dict) for value in raw.values())
    for table, value in raw.items():
        if isinstance(value, dict):
            for key, inner in value.items():
                if not isinstance(inner, dict | list):
                    assert (table, key) in lines


@pytest.mark.parametrize("file", EXAMPLES, ids=lambda file: file.stem)
def test_writing_toml_loses_nothing(file: Path) -> None:
    raw = tomllib.loads(file.read_text(encoding="utf-8"))
    assert tomllib.loads(toml_text(raw)) == raw
    assert tomllib.loads(toml_text(raw, explain=True)) == raw


def test_every_field_is_described() -> None:
    schema = Scenario.model_json_schema()
    for name, model in schema["$defs"].items():
        for key, field in model.get("properties", {}).items():
            described = "description" in field or "$ref" in field or key == "kind" or "allOf" in field
            assert described, f"{name}.{key} has no description"
