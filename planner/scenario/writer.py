"""Write a scenario as TOML, each key explained by the words that stand on its field."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from typing import Any

from pydantic import BaseModel

from planner.scenario.paths import Path
from planner.scenario.scenario import Scenario
from planner.scenario.schema import SCHEMA_FILE
from planner.scenario.starter import starter_data
from planner.scenario.walk import Field, fields_of, first_line, is_table_list, kind_of, model_of

_BARE_KEY = re.compile(r"^[A-Za-z0-9_-]+$")


def starter_text() -> str:
    """Return the full starter: invented values that run as they are, and every other key as a comment."""
    head = [
        f"#:schema {SCHEMA_FILE}",
        "# A starter scenario. Place, people, pump and prices are invented: replace them by your own.",
        "# Lines that begin with '# key =' show a key that may be given, with the value that holds when it is not;",
        "# those that begin with '# [table]', a table that may be given, with its keys below it.",
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


def _table(data: dict[str, Any], model: type[BaseModel] | None, path: Path, explain: bool) -> Iterator[str]:
    fields = fields_of(model) if model else {}
    names = [*fields, *(key for key in data if key not in fields)]
    tables: list[str] = []
    for name in names:
        field = fields.get(name)
        if name in data and (isinstance(data[name], dict) or is_table_list(data[name])):
            tables.append(name)
        elif name in data:
            line = f"{toml_key(name)} = {toml_value(data[name])}"
            yield f"{line}  # {_meaning(field)}" if explain and field is not None and field.description else line
        elif explain and field is not None and not field.tables:
            yield from _absent(field)
    for name in tables:
        value, field = data[name], fields.get(name)
        for entry in value if isinstance(value, list) else [value]:
            header = ".".join(toml_key(str(part)) for part in (*path, name))
            yield ""
            if explain and field is not None and field.description:
                yield f"# {field.description}"
            yield f"[[{header}]]" if isinstance(value, list) else f"[{header}]"
            yield from _table(entry, model_of(field.tables, entry) if field else None, (*path, name), explain)
    if explain:
        for field in fields.values():
            entries = data.get(field.name)
            there = entries if isinstance(entries, list) else [] if entries is None else [entries]
            used = [model_of(field.tables, entry) for entry in there]
            for inner in field.tables:
                if inner not in used:
                    yield from _absent_table(field, inner, (*path, field.name))


def _absent_table(field: Field, model: type[BaseModel], path: Path) -> Iterator[str]:
    """Show, as comments, a table that is left out, or a kind of it that is not used, with every key in it."""
    header = ".".join(toml_key(str(part)) for part in path)
    yield ""
    yield f"# {field.description or first_line(model)}"
    yield f"# [[{header}]]" if field.is_list else f"# [{header}]"
    inner = fields_of(model)
    for key in inner.values():
        if key.name == "kind" and len(field.tables) > 1:
            yield f"# kind = {toml_value(kind_of(model))}"
        elif not key.tables:
            shown = list(_absent(key))
            yield from shown or [f"# {toml_key(key.name)} = ...  # {_meaning(key)}"]
    for key in inner.values():
        for further in key.tables:
            yield from _absent_table(key, further, (*path, key.name))


def _meaning(field: Field) -> str:
    return f"{field.description} [{field.unit}]" if field.unit else field.description


def _absent(field: Field) -> Iterator[str]:
    """Say, as a comment, what holds where a key is left out; nothing of a key that may not be."""
    if field.how:
        yield f"# {toml_key(field.name)} = ...  # {_meaning(field)}; left out: {field.how}"
    elif field.has_default:
        yield f"# {toml_key(field.name)} = {toml_value(field.default)}  # {_meaning(field)}; {field.default_source}"
    elif field.info.default is None:
        yield f"# {toml_key(field.name)} = ...  # {_meaning(field)}; left out: {field.absent or 'not given'}"
    elif field.info.default_factory is list:
        yield f"# {toml_key(field.name)} = []  # {field.description}"
    elif field.info.default_factory is dict:
        yield f"# {toml_key(field.name)} = {{}}  # {field.description}"


def toml_key(name: str) -> str:
    """Write one key, or part of a dotted one, as TOML."""
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
        return "{" + ", ".join(f"{toml_key(key)} = {toml_value(entry)}" for key, entry in value.items()) + "}"
    if isinstance(value, int | float):
        return repr(value)
    raise TypeError(f"TOML has no value for {type(value).__name__}")
