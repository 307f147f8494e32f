"""One walk over the scenario models: every key with what stands on its field, and with its value in a scenario.

Messages, starter, form, inputs sheet, sweeps and schema are made from it, so a key declared on its model is known to
all of them.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import cache, cached_property
from typing import Any, get_args, get_origin

from pydantic import BaseModel
from pydantic.fields import FieldInfo
from pydantic_core import PydanticUndefined

from planner.scenario.fields import Changes, Model
from planner.scenario.paths import Path, dotted
from planner.scenario.values import Kind, Takes, takes_of

ASSUMED = "assumed"
"""Status of a key that was left out and worked out."""


@dataclass(frozen=True)
class Field:
    """One key of the scenario.

    Attributes
    ----------
    path : tuple
        Keys from the root of the scenario; places in lists (from 0) only where a scenario is walked.
    model : type
        The model on which the key stands.
    info : pydantic.fields.FieldInfo
        Its declaration.
    value : Any
        Its value in a scenario; None where none is given, or where models are walked.
    given : bool
        Whether the user gave it.
    reason : str
        How it was worked out, where it was left out and `planner.assumptions` did so.
    """

    path: Path
    model: type[BaseModel]
    info: FieldInfo
    value: Any = None
    given: bool = False
    reason: str = ""

    @property
    def name(self) -> str:
        """Last part of the path."""
        return str(self.path[-1])

    @property
    def key(self) -> str:
        """The dotted path, as in messages: `pipeline.segments[2].length_m`."""
        return dotted(self.path)

    @property
    def in_override(self) -> bool:
        """Whether it holds for one supply option only."""
        return self.path[0] == "overrides" and len(self.path) > 1

    @property
    def description(self) -> str:
        """What it is; '' where the field says nothing."""
        return self.info.description or ""

    @property
    def meaning(self) -> str:
        """What it is, else what the table is in which it stands."""
        if self.in_override:
            return "Holds for this option only, in place of the key above"
        return self.description or first_line(self.model)

    @property
    def short(self) -> str:
        """What it is, without what its description adds after a comma, a colon or in brackets; else its name."""
        return re.split(r"[,:;]| \(", self.description, maxsplit=1)[0] or words_of(self.name)

    @property
    def unit(self) -> str:
        """Unit; '' where it has none."""
        return self._said("unit")

    @property
    def absent(self) -> str:
        """What it means to leave a key out that need not be given."""
        return self._said("absent") or self.how

    @property
    def how(self) -> str:
        """From what the key is worked out where it is left out; '' where it is not."""
        return self._said("how")

    @property
    def default_source(self) -> str:
        """Where the default comes from."""
        return self._said("default_source")

    @cached_property
    def takes(self) -> Takes:
        """Type, limits and choices of a plain value."""
        return takes_of(self.info)

    @cached_property
    def tables(self) -> tuple[type[BaseModel], ...]:
        """Models of the table, or of the tables of the list, that stands at the key; none for a plain value."""
        return tuple(_models_in(self.info.annotation))

    @property
    def is_list(self) -> bool:
        """Whether a list, of values or of tables, stands at the key."""
        return get_origin(self.info.annotation) is list

    @property
    def kind(self) -> Kind:
        """Kind of value."""
        if not self.tables:
            return self.takes.kind
        return "tables" if self.is_list else "table"

    @property
    def is_needed(self) -> bool:
        """Whether it must be given, and not be an empty list."""
        return not self.how and self._is_required

    @property
    def _is_required(self) -> bool:
        filled = self.is_list and any(getattr(limit, "min_length", 0) for limit in self.info.metadata)
        return self.info.is_required() or filled

    @property
    def has_default(self) -> bool:
        """Whether a plain value holds where it is not given."""
        return self.info.default is not PydanticUndefined and self.info.default is not None

    @property
    def default(self) -> Any:
        """The value that holds where it is not given; None where there is none."""
        return self.info.default if self.has_default else None

    @property
    def changes(self) -> Changes:
        """What a change of the key makes necessary."""
        own: Any = self._said("changes")
        return own or (self.model.changes if issubclass(self.model, Model) else Model.changes)

    @property
    def is_of_money(self) -> bool:
        """Whether it matters only where there are prices."""
        if self.path[0] == "service":
            return self.name == "reference" or self.unit.startswith("money")
        return self.path[0] in ("currency", "prices") or self.unit.startswith("money") or self.changes == "money"

    @property
    def status(self) -> str:
        """Where the value comes from: 'given', 'assumed', 'default' or 'not given'."""
        if self.reason:
            return ASSUMED
        if self.value is None or (self.value == [] and not self.in_override):
            return "not given"
        return "given" if self.given else "default"

    @property
    def source(self) -> str:
        """How it was worked out, source of a default that holds, or what the absence means of a key without value."""
        if self.reason:
            return self.reason
        if self.value is None:
            return self.absent
        return self.default_source or self._said("given_by") if self.status == "default" else ""

    def _said(self, name: str) -> str:
        extra = self.info.json_schema_extra
        return str(extra.get(name, "")) if isinstance(extra, dict) else ""


def fields_of(model: type[BaseModel], path: Path = ()) -> dict[str, Field]:
    """Return the fields of one model by name, their paths beginning with the model's."""
    return {name: Field((*path, name), model, info) for name, info in model.model_fields.items()}


def walk_models(root: type[BaseModel], path: Path = ()) -> Iterator[Field]:
    """Yield every key that a scenario may have, tables before the keys in them, lists without places.

    Where tables of several kinds may stand at one path, the keys of each kind are yielded in turn.
    """
    for field in fields_of(root, path).values():
        yield field
        for model in field.tables:
            yield from walk_models(model, field.path)


def walk(scenario: BaseModel) -> Iterator[Field]:
    """Yield every key of a scenario that holds a plain value, a list of such, or nothing, in the models' order.

    Keys within [overrides] have the unit, kind and changes of the key in whose place they stand.
    """
    reasons = {assumption.path: assumption.how for assumption in getattr(scenario, "assumptions", ())}
    yield from _of_model(scenario, (), _Of(type(scenario), reasons))


@dataclass(frozen=True)
class _Of:
    """Of what a model is a part: the root, why its keys were assumed, and what holds for the table it stands in."""

    root: type[BaseModel]
    reasons: dict[Path, str]
    given: bool = True
    reason: str = ""


def _of_model(model: BaseModel, path: Path, of: _Of) -> Iterator[Field]:
    for name, field in fields_of(type(model), path).items():
        value = getattr(model, name)
        given = of.given and name in model.model_fields_set
        reason = of.reasons.get(field.path, of.reason)
        if isinstance(value, BaseModel):
            yield from _of_model(value, field.path, _Of(of.root, of.reasons, given, reason))
        elif isinstance(value, list) and value and isinstance(value[0], BaseModel):
            for place, entry in enumerate(value):
                inside = (*field.path, place)
                yield from _of_model(entry, inside, _Of(of.root, of.reasons, given, of.reasons.get(inside, reason)))
        elif isinstance(value, dict):
            for option, tables in value.items():
                for inner, held in leaves(tables):
                    known = field_at(of.root, inner) or field
                    yield replace(known, path=(*field.path, option, *inner), value=held, given=True)
        else:
            reason = reason if given else ""
            yield Field(field.path, field.model, field.info, value, given and not reason, reason)


def leaves(data: Any, path: Path = (), *, whole_lists: bool = False) -> Iterator[tuple[Path, Any]]:
    """Yield (path, value) of every value of raw data that is no table and, unless lists stay whole, no list of such."""
    if isinstance(data, dict):
        for name, value in data.items():
            yield from leaves(value, (*path, name), whole_lists=whole_lists)
    elif is_table_list(data) and not whole_lists:
        for place, value in enumerate(data):
            yield from leaves(value, (*path, place))
    else:
        yield path, data


def is_table_list(value: Any) -> bool:
    """Tell a list of tables from any other value."""
    return isinstance(value, list) and bool(value) and all(isinstance(entry, dict) for entry in value)


@cache
def field_at(root: type[BaseModel], path: Path) -> Field | None:
    """Find a key of the models, None where there is none; places in lists may be in the path, and do not matter.

    Where tables of several kinds have it, that of the first counts; within [overrides], that of the table overridden.
    """
    names = [part for part in path if isinstance(part, str)]
    if not names:
        return None
    if names[0] == "overrides" and len(names) > 2:
        names = names[2:]
    models = _models_at(root, tuple(names[:-1]))
    found = (fields_of(model, tuple(names[:-1])).get(names[-1]) for model in models)
    return next((field for field in found if field is not None), None)


def keys_at(root: type[BaseModel], path: Path) -> list[str]:
    """Names of the keys that a table may have, over every kind of table that may stand there."""
    models = _models_at(root, tuple(part for part in path if isinstance(part, str)))
    return sorted({name for model in models for name in model.model_fields})


def _models_at(root: type[BaseModel], names: tuple[str, ...]) -> list[type[BaseModel]]:
    models = [root]
    for name in names:
        models = [
            inner for model in models if name in model.model_fields for inner in fields_of(model)[name].tables
        ]  # fmt: skip
    return models


def _models_in(annotation: Any) -> Iterator[type[BaseModel]]:
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        yield annotation
    elif get_origin(annotation) is not dict:
        for argument in get_args(annotation):
            yield from _models_in(argument)


def kind_of(model: type[BaseModel]) -> str:
    """The `kind` by which a table names its model; '' where it has none."""
    field = model.model_fields.get("kind")
    return str(get_args(field.annotation)[0]) if field is not None and get_args(field.annotation) else ""


def model_of(models: tuple[type[BaseModel], ...], table: dict[str, Any]) -> type[BaseModel] | None:
    """Pick among the models that may stand at a key the one that a table names by its `kind`."""
    return next((model for model in models if len(models) == 1 or kind_of(model) == table.get("kind")), None)


def words_of(name: str) -> str:
    """Spell a key out as words."""
    return name.replace("_", " ").capitalize()


def first_line(model: type[BaseModel]) -> str:
    """First line of a model's description."""
    return (model.__doc__ or "").strip().partition("\n")[0].replace("`", "")
