"""What a key takes, read off the type and limits of its field."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from types import UnionType
from typing import Annotated, Any, Literal, Union, get_args, get_origin

import annotated_types
from pydantic.fields import FieldInfo

Kind = Literal["number", "integer", "choice", "text", "bool", "months", "list", "table", "tables", "other"]


@dataclass(frozen=True)
class Bounds:
    """Limits of a number; None where there is none."""

    gt: float | None = None
    ge: float | None = None
    lt: float | None = None
    le: float | None = None


@dataclass(frozen=True)
class Takes:
    """What a key takes; several of these may hold at once, as of a number that may also be 'auto'.

    Attributes
    ----------
    choices : tuple of str or int
        The choices, or the words that may stand instead of a number or a list; yes and no where it is true or false.
    number : Bounds or None
        Limits of a number, or of each number of a list.
    whole : bool
        Whether that number, or the numbers of a list, must be whole.
    items : str
        What a list holds: 'number', 'range' (pairs such as parts of the day), 'text', or '' where no list is taken.
    item_choices : tuple of str
        Choices for the texts of a list.
    count : int or None
        Length of the list where it is fixed.
    text : bool
        Whether any text is taken.
    flag : bool
        Whether the value is true or false.
    other : bool
        Whether the value is of none of these types, such as a table in one value.
    """

    choices: tuple[str | int, ...] = ()
    number: Bounds | None = None
    whole: bool = False
    items: Literal["", "number", "range", "text"] = ""
    item_choices: tuple[str, ...] = ()
    count: int | None = None
    text: bool = False
    flag: bool = False
    other: bool = False

    @property
    def kind(self) -> Kind:
        """The widest type that is taken."""
        if self.other or self.items:
            return "other" if self.other else "months" if self.months else "list"
        if self.number is not None:
            return "integer" if self.whole else "number"
        return "text" if self.text else "bool" if self.flag else "choice"

    @property
    def months(self) -> bool:
        """Whether the value is twelve numbers, January to December."""
        return self.items == "number" and self.count == 12

    @property
    def hours(self) -> bool:
        """Whether the value is a list of parts of the day."""
        return self.items == "range" and self.number is not None and self.number.le == 24

    @property
    def numeric(self) -> bool:
        """Whether the value can be a single number, chosen freely or among some."""
        free = self.number is not None and not self.items
        return free or any(isinstance(choice, int) for choice in self.choices)

    @property
    def printed(self) -> bool:
        """Whether the value may be figures as a nameplate prints them: a number, two of them, or text."""
        return self.text and self.items == "number"

    @property
    def whole_only(self) -> bool:
        """Whether every number taken is whole."""
        return self.whole or (self.number is None and not self.other)


YES_OR_NO = {"yes": True, "no": False}
"""How a value that is true or false is written in cells."""


def takes_of(field: FieldInfo) -> Takes:
    """Read off a field's type what its key takes."""
    choices: list[str | int] = []
    found: dict[str, Any] = {}
    for annotation, limits in _members(field.annotation, tuple(field.metadata)):
        origin = get_origin(annotation)
        if origin is Literal:
            choices += get_args(annotation)
        elif annotation in (int, float):
            found |= {"number": _bounds(limits), "whole": annotation is int}
        elif annotation is str:
            found["text"] = True
        elif annotation is bool:
            found["flag"] = True
            choices += YES_OR_NO
        elif origin is list:
            found |= _list_of(get_args(annotation)[0], limits)
        else:
            return Takes(other=True)
    return Takes(choices=tuple(choices), **found)


def _list_of(item: Any, limits: tuple[Any, ...]) -> dict[str, Any]:
    lengths = {
        limit.min_length if isinstance(limit, annotated_types.MinLen) else limit.max_length
        for limit in limits
        if isinstance(limit, annotated_types.MinLen | annotated_types.MaxLen)
    }
    count = lengths.pop() if len(lengths) == 1 and len(limits) > 1 else None
    inner, inner_limits = next(iter(_members(item, ())))
    if get_origin(inner) is list:
        _, limits = next(iter(_members(get_args(inner)[0], ())))
        return {"items": "range", "number": _bounds(limits)}
    if inner is str:
        return {"items": "text", "count": count}
    if get_origin(inner) is Literal:
        return {"items": "text", "item_choices": get_args(inner), "count": count}
    if inner not in (int, float):
        return {"other": True}
    return {"items": "number", "number": _bounds(inner_limits), "whole": inner is int, "count": count}


def _members(annotation: Any, limits: tuple[Any, ...]) -> Iterator[tuple[Any, tuple[Any, ...]]]:
    """Yield each type of a union but None, with the limits that hold for it."""
    origin = get_origin(annotation)
    if origin is Annotated:
        inner, *extra = get_args(annotation)
        more = [limit for part in extra for limit in (part.metadata if isinstance(part, FieldInfo) else [part])]
        yield from _members(inner, limits + tuple(more))
    elif origin in (Union, UnionType):
        for member in get_args(annotation):
            yield from _members(member, limits)
    elif annotation is not type(None):
        yield annotation, limits


def _bounds(limits: Iterable[Any]) -> Bounds:
    found = {}
    for limit in limits:
        for name in ("gt", "ge", "lt", "le"):
            if hasattr(limit, name):
                found[name] = getattr(limit, name)
    return Bounds(**found)
