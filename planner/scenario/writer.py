"""Write a scenario as TOML, each key explained by the words that stand on its field."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from typing import Any, get_args, get_origin

from pydantic import BaseModel
from pydantic.fields import FieldInfo
from pydantic_core import PydanticUndefined

from planner.scenario.scenario import Scenario
from planner.scenario.starter import starter_data

_BARE_KEY = re.compile(r"^[A-Za-z0-9_-]+$")


def starter_text() -> str:
    """Return the commented starter scenario: invented values that run as they are."""
    head = [
        "# A starter scenario. Place, people, pump and prices are invented: replace them by your own.",
        "# Lines that begin with '# key =' show a key that may be given, with the value that holds when it is not.",
        "# Units are part of each key; 'money' stands for the currency named below.",
        "",
    ]
    return "\n".join(head) + toml_text(starter_data(), explain=True)


def toml_text(data: dict[str, Any], *, explain: bool = False) -> str:
    """Write scenario data as TOML.

    Parameters
    ----------
    data : dict
        Scenario data as `tomllib` would read it.
    explain : bool
        Add each field's description and unit, and the keys that were left out as comments.
    """
    return "\n".join(_table(data, Scenario, (), explain)).strip() + "\n"


def _table(data: dict[str, Any], model: type[BaseModel] | None, path: tuple[str, ...], explain: bool) -> Iterator[str]:
    fields = dict(model.model_fields) if model else {}
    names = [*fields, *(key for key in data if key not in fields)]
    tables: list[str] = []
    for name in names:
        field = fields.get(name)
        if name in data and (isinstance(data[name], dict) or _is_table_list(data[name])):
            tables.append(name)
        elif name in data:
            yield _line(name, data[name], field, explain)
        elif explain and field is not None and not _inner_models(field.annotation):
            yield from _absent(name, field)
    for name in tables:
        value = data[name]
        inner = _inner_models(fields[name].annotation) if name in fields else []
        for entry in value if isinstance(value, list) else [value]:
            header = ".".join(_key(part) for part in (*path, name))
            yield ""
            if explain and name in fields and fields[name].description:
                yield f"# {fields[name].description}"
            yield f"[[{header}]]" if isinstance(value, list) else f"[{header}]"
            yield from _table(entry, _member(inner, entry), (*path, name), explain)


def _line(name: str, value: Any, field: FieldInfo | None, explain: bool) -> str:
    text = f"{_key(name)} = {toml_value(value)}"
    if explain and field is not None and field.description:
        unit = _extra(field).get("unit", "")
        return f"{text}  # {field.description}{f' [{unit}]' if unit else ''}"
    return text


def _absent(name: str, field: FieldInfo) -> Iterator[str]:
    extra = _extra(field)
    unit = f" [{extra['unit']}]" if extra.get("unit") else ""
    if field.default is PydanticUndefined or field.default is None:
        if field.default_factory is None and field.default is None:
            yield f"# {_key(name)} = ...  # {field.description}{unit}; left out: {extra.get('absent', 'not given')}"
        elif field.default_factory is list:
            yield f"# {_key(name)} = []  # {field.description}"
        return
    source = extra.get("default_source", "")
    yield f"# {_key(name)} = {toml_value(field.default)}  # {field.description}{unit}; {source}"


def _extra(field: FieldInfo) -> dict[str, Any]:
    return field.json_schema_extra if isinstance(field.json_schema_extra, dict) else {}


def _is_table_list(value: Any) -> bool:
    return isinstance(value, list) and bool(value) and all(isinstance(entry, dict) for entry in value)


def _key(name: str) -> str:
    return name if _BARE_KEY.match(name) else json.dumps(name, ensure_ascii=False)


def toml_value(value: Any) -> str:
    """Write one value as TOML."""
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, str):
        return json.dumps(value, ensure_ascii=False).replace("\x7f", "\\u007f")
    if isinstance(value, list | tuple):
        return "[" + ", ".join(toml_value(entry) for entry in value) + "]"
    if isinstance(value, dict):
        return "{" + ", ".join(f"{_key(key)} = {toml_value(entry)}" for key, entry in value.items()) + "}"
    if isinstance(value, int | float):
        return repr(value)
    raise TypeError(f"TOML has no value for {type(value).__name__}")


def _inner_models(annotation: Any) -> list[type[BaseModel]]:
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        return [annotation]
    if get_origin(annotation) is dict:
        return []
    return [model for argument in get_args(annotation) for model in _inner_models(argument)]


def _member(models: list[type[BaseModel]], entry: dict[str, Any]) -> type[BaseModel] | None:
    """Pick the member of a union that an entry's `kind` names."""
    for model in models:
        kind = model.model_fields.get("kind")
        if len(models) == 1 or (kind is not None and entry.get("kind") in get_args(kind.annotation)):
            return model
    return None
