"""The walk over the models agrees with the models, with scenarios, with the starter and with the schema."""

from __future__ import annotations

import tomllib
from functools import cache
from pathlib import Path
from typing import Any

import jsonschema
import pytest
from pydantic import BaseModel

from planner.assumptions.reader import check_scenario, read_scenario
from planner.scenario.fields import Model, assumed, needed, optional, several
from planner.scenario.paths import dotted, parts_of
from planner.scenario.scenario import Scenario
from planner.scenario.schema import scenario_schema
from planner.scenario.values import Bounds
from planner.scenario.walk import Field, field_at, fields_of, leaves, walk, walk_models
from planner.scenario.writer import starter_text
from tests.study.scenarios import changed

EXAMPLES = sorted(Path("scenarios").glob("*.toml"))


class Part(Model):
    """A part of a thing."""

    name: str = needed("Its name", changes="nothing")
    length_m: float | None = optional("Its length", "m", absent="as long as the thing", gt=0)


class Thing(Model):
    """A thing with parts."""

    changes = "money"

    count: int = assumed(2, "How many", source="two hands", ge=1, le=9)
    by_month: list[float] = several("By month", changes="run", min_length=12, max_length=12)
    best: Part | None = optional("The best part")
    parts: list[Part] = several("All parts")


def test_a_field_says_all_that_its_declaration_says() -> None:
    fields = fields_of(Thing)
    count = fields["count"]
    assert (count.kind, count.default, count.default_source, count.changes) == ("integer", 2, "two hands", "money")
    assert count.takes.number == Bounds(ge=1, le=9)
    assert not count.is_needed
    assert (fields["by_month"].kind, fields["by_month"].changes, fields["by_month"].is_needed) == (
        "months",
        "run",
        True,
    )
    assert (fields["best"].kind, fields["best"].tables) == ("table", (Part,))
    assert (fields["parts"].kind, fields["parts"].tables) == ("tables", (Part,))
    length = fields_of(Part, ("best",))["length_m"]
    assert (length.key, length.unit, length.absent, length.changes) == (
        "best.length_m", "m", "as long as the thing", "run",
    )  # fmt: skip
    assert length.takes.number == Bounds(gt=0)


def test_models_are_walked_table_by_table() -> None:
    keys = [field.key for field in walk_models(Thing)]
    assert keys == [
        "count", "by_month", "best", "best.name", "best.length_m", "parts", "parts.name", "parts.length_m",
    ]  # fmt: skip


def test_a_scenario_is_walked_value_by_value() -> None:
    thing = Thing(count=2, by_month=[1.0] * 12, parts=[Part(name="one"), Part(name="two", length_m=3.0)])
    found = {field.key: field for field in walk(thing)}
    assert list(found) == [
        "count", "by_month", "best", "parts[1].name", "parts[1].length_m", "parts[2].name", "parts[2].length_m",
    ]  # fmt: skip
    assert [(found[key].value, found[key].status) for key in ("count", "best", "parts[2].length_m")] == [
        (2, "given"),
        (None, "not given"),
        (3.0, "given"),
    ]
    assert {field.key: field.status for field in walk(Thing(by_month=[1.0] * 12))}["count"] == "default"
    assert found["parts[1].length_m"].source == "as long as the thing"


@pytest.mark.parametrize("file", EXAMPLES, ids=lambda file: file.stem)
def test_every_value_of_an_example_is_met_once_and_known_to_be_given(file: Path) -> None:
    raw = dict(leaves(tomllib.loads(file.read_text(encoding="utf-8"))))
    found = list(walk(read_scenario(file)))
    assert len({field.path for field in found}) == len(found)
    given = {field.path: field.value for field in found if field.given}
    assert given == raw
    for field in found:
        assert parts_of(field.key) == field.path
        known = field_at(Scenario, field.path)
        assert known is not None
        assert (known.name, known.changes) == (field.name, field.changes)


def test_a_key_within_an_override_is_that_of_the_key_in_whose_place_it_stands() -> None:
    tables = {
        "solar + generator": {"pump": {"price": 1200, "curve": []}, "tank": {"sizes": [{"volume_m3": 5, "price": 9}]}}
    }
    found = {field.key: field for field in walk(changed(overrides=tables)) if field.in_override}
    price = found["overrides.'solar + generator'.tank.sizes[1].price"]
    assert (price.value, price.unit, price.changes, price.status) == (9, "money", "money", "given")
    assert found["overrides.'solar + generator'.pump.curve"].status == "given"


def test_every_key_of_the_starter_comes_from_the_walk() -> None:
    known = {field.key for field in walk_models(Scenario)}
    starter = tomllib.loads(starter_text())
    written = {dotted(part for part in path if isinstance(part, str)) for path, _ in leaves(starter)}
    assert written <= known


def test_every_number_of_the_schema_has_the_bounds_of_the_walk() -> None:
    names = {"gt": "exclusiveMinimum", "ge": "minimum", "lt": "exclusiveMaximum", "le": "maximum"}
    checked = 0
    for field in walk_models(Scenario):
        if field.kind in ("number", "integer") and field.takes.number is not None:
            declared = property_of(field)
            forms = [form for form in declared.get("anyOf", [declared]) if form.get("type") in ("number", "integer")]
            assert len(forms) == 1, field.key
            bounds = {name: forms[0].get(word) for name, word in names.items()}
            assert Bounds(**bounds) == field.takes.number, field.key
            assert (forms[0]["type"] == "integer") == field.takes.whole, field.key
            checked += 1
    assert checked > 150


def test_the_schema_says_unit_source_absence_and_what_a_change_makes_necessary() -> None:
    for field in walk_models(Scenario):
        declared = property_of(field)
        if field.tables:
            continue
        assert declared.get("unit", "") == field.unit
        assert declared["changes"] == field.changes
        assert ("default_source" in declared) == (field.has_default and field.default_source != ""), field.key
        if field.has_default:
            assert declared["default"] == field.default
            assert declared["default_source"], field.key
        if field.info.default is None:
            assert declared["absent"], field.key


@cache
def the_schema() -> dict[str, Any]:
    return scenario_schema()


def property_of(field: Field) -> dict[str, Any]:
    schema = the_schema()
    model = schema if field.model is Scenario else schema["$defs"][field.model.__name__]
    declared: dict[str, Any] = model["properties"][field.name]
    return declared


def test_the_schema_refuses_unknown_keys_and_lists_what_must_be_given() -> None:
    schema = the_schema()
    models = {field.model: None for field in walk_models(Scenario)}
    for model in models:
        declared = schema if model is Scenario else schema["$defs"][model.__name__]
        assert declared["additionalProperties"] is False
        required = {
            name
            for name, field in fields_of(model).items()
            if field.info.is_required() and not field.how  # what is worked out may be left out
        }
        assert set(declared.get("required", [])) == required


@pytest.mark.parametrize("file", EXAMPLES, ids=lambda file: file.stem)
def test_the_examples_keep_to_the_schema(file: Path) -> None:
    raw = tomllib.loads(file.read_text(encoding="utf-8"))
    assert mistakes(raw, the_schema()) == []
    assert check_scenario(raw, file.name)
    raw["pump"]["colour"] = "red"
    raw["borehole"]["static_level_m"] = "deep"
    assert sorted(mistakes(raw, the_schema())) == ["borehole.static_level_m", "pump.colour"]


def mistakes(data: Any, schema: dict[str, Any]) -> list[str]:
    """Keys of data that do not keep to a schema, by as much of the standard as the scenario's schema uses."""

    def wrong(value: Any, rule: dict[str, Any], path: tuple[str | int, ...]) -> list[str]:
        if "$ref" in rule:
            return wrong(value, schema["$defs"][rule["$ref"].rpartition("/")[2]], path)
        for word in ("anyOf", "oneOf"):
            if word in rule:
                return min((wrong(value, each, path) for each in rule[word]), key=len)
        here = [dotted(path)]
        if "const" in rule or "enum" in rule:
            return [] if value in rule.get("enum", [rule.get("const")]) else here
        if rule.get("type") == "object" and "properties" in rule:
            if not isinstance(value, dict):
                return here
            found = [dotted((*path, name)) for name in rule.get("required", []) if name not in value]
            for name, inner in value.items():
                known = rule["properties"].get(name)
                found += [dotted((*path, name))] if known is None else wrong(inner, known, (*path, name))
            return found
        if rule.get("type") == "array":
            if not isinstance(value, list) or not rule.get("minItems", 0) <= len(value) <= rule.get("maxItems", 10**9):
                return here
            return [text for place, inner in enumerate(value) for text in wrong(inner, rule["items"], (*path, place))]
        types = {"number": (int, float), "integer": int, "string": str, "boolean": bool, "object": dict}
        if rule.get("type") == "null" or not isinstance(value, types[rule["type"]]):
            return here
        low, high = rule.get("minimum", rule.get("exclusiveMinimum")), rule.get("maximum", rule.get("exclusiveMaximum"))
        return here if (low is not None and value < low) or (high is not None and value > high) else []

    return wrong(data, schema, ())


@pytest.mark.parametrize("file", EXAMPLES, ids=lambda file: file.stem)
def test_a_validator_of_the_standard_takes_the_examples(file: Path) -> None:
    validator = jsonschema.Draft202012Validator
    validator.check_schema(the_schema())
    raw = tomllib.loads(file.read_text(encoding="utf-8"))
    assert list(validator(the_schema()).iter_errors(raw)) == []
    assert list(validator(the_schema()).iter_errors(raw | {"seed": -1}))


def test_models_of_other_libraries_can_be_walked() -> None:
    class Plain(BaseModel):
        number: float = 1.0

    (field,) = walk(Plain())
    assert (field.kind, field.value, field.status, field.changes) == ("number", 1.0, "default", "run")
