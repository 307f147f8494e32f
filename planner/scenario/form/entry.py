"""What one cell of the form takes, from the field's type, and the way between cell and scenario value."""

from __future__ import annotations

import difflib
import math
import re
import tomllib
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import date, time, timedelta
from types import UnionType
from typing import Annotated, Any, Literal, Union, get_args, get_origin

import annotated_types
from pydantic.fields import FieldInfo

from planner.scenario.writer import toml_value

SEPARATOR = ";"
_FLAGS = {"yes": True, "no": False}


class CellProblem(Exception):
    """A cell holds, or would have to hold, what it cannot take; the text says what was given and what is allowed."""


@dataclass(frozen=True)
class Bounds:
    """Limits of a number; None where there is none."""

    gt: float | None = None
    ge: float | None = None
    lt: float | None = None
    le: float | None = None

    def __str__(self) -> str:
        """Say the limits in words."""
        if self.ge is not None and self.le is not None:
            return f"{figure(self.ge)} to {figure(self.le)}"
        parts = [
            f"{words} {figure(limit)}"
            for words, limit in (
                ("above", self.gt),
                ("from", self.ge),
                ("below", self.lt),
                ("up to", self.le),
            )
            if limit is not None
        ]
        return ", ".join(parts)


@dataclass(frozen=True)
class Entry:
    """What a cell takes.

    Attributes
    ----------
    words : tuple of str or int
        The choices, or the words that may stand instead of a number.
    number : Bounds or None
        Limits of a number, where the cell takes one.
    whole : bool
        Whether that number, or the numbers of a list, must be whole.
    items : str
        What a list holds: 'number', 'range' (pairs such as parts of the day), 'text', or '' where no list is taken.
    item_words : tuple of str
        Choices for the texts of a list.
    count : int or None
        Length of the list where it is fixed: 12 is laid out as months, any other in one cell.
    text : bool
        Whether any text is taken.
    flag : bool
        Whether the value is true or false, written as yes or no.
    toml : bool
        Whether the value has too many parts for cells of their own and is written as in TOML.
    """

    words: tuple[str | int, ...] = ()
    number: Bounds | None = None
    whole: bool = False
    items: Literal["", "number", "range", "text"] = ""
    item_words: tuple[str, ...] = ()
    count: int | None = None
    text: bool = False
    flag: bool = False
    toml: bool = False

    @property
    def months(self) -> bool:
        """Whether the value is twelve numbers, January to December."""
        return self.items == "number" and self.count == 12

    @property
    def _hours(self) -> bool:
        return self.items == "range" and self.number is not None and self.number.le == 24

    @property
    def _pairs(self) -> str:
        return "6-9; 17-19" if self._hours else "20-40; 30-60"

    @property
    def allowed(self) -> str:
        """Say what the cell takes, in full."""
        listed = [str(word) for word in self.words]
        ways = [" or ".join(filter(None, (", ".join(listed[:-1]), listed[-1])))] if listed else []
        if self.items == "range":
            what = "parts of the day in hours" if self._hours else f"pairs of numbers {self.number}"
            ways.append(f"{what}, such as {self._pairs}")
        elif self.items == "text":
            chosen = ", ".join(self.item_words)
            ways.append(f"one or more of {chosen}, separated by ;" if chosen else "texts separated by ;")
        elif self.items == "number" and not self.months:
            limits = f" {self.number}" if self.number and str(self.number) else ""
            ways.append(f"{self.count or ''}{' whole' if self.whole else ''} numbers{limits}, separated by ;".strip())
        elif self.number is not None:
            kind = "a whole number" if self.whole else "a number"
            ways.append(f"{kind} {self.number}".strip())
        if self.text:
            ways.append("text")
        if self.toml:
            ways.append("a list or table as in TOML, such as [{ key = 1 }] or { key = 1 }")
        return ", or ".join(ways)

    @property
    def short(self) -> str:
        """Say what the cell takes, for a narrow column."""
        if self.toml or self.items:
            kind = {"range": self._pairs, "number": f"{self.count or 'numbers'} with ;", "text": "texts with ;"}
            several = "as in TOML" if self.toml else "12 numbers" if self.months else kind[self.items]
            return f"list, or {several}" if self.words else several
        if self.words:
            return self.allowed.replace("a number ", "").replace("a whole number", "whole")
        if self.number is not None and not self.text:
            return f"{'whole ' if self.whole else ''}{self.number}" if str(self.number) else "any number"
        return "text" if self.number is None else "number or text"


@dataclass(frozen=True)
class Content:
    """What was found in a cell: its value, openpyxl's data type and its number format."""

    value: Any = None
    data_type: str = "n"
    number_format: str = "General"

    @property
    def blank(self) -> bool:
        """Whether the cell is empty or holds white space only."""
        return self.value is None or (isinstance(self.value, str) and not self.value.strip())


def entry_of(field: FieldInfo) -> Entry:
    """Read off a field's type what its cell takes; what has too many parts for one cell is taken as TOML."""
    words: list[str | int] = []
    found: dict[str, Any] = {}
    for annotation, metadata in _members(field.annotation, tuple(field.metadata)):
        origin = get_origin(annotation)
        if origin is Literal:
            words += get_args(annotation)
        elif annotation in (int, float):
            found |= {"number": _bounds(metadata), "whole": annotation is int}
        elif annotation is str:
            found["text"] = True
        elif annotation is bool:
            found["flag"] = True
            words += _FLAGS
        elif origin is list:
            found |= _list_entry(get_args(annotation)[0], metadata)
        else:
            return Entry(toml=True)
    return Entry(words=tuple(words), **found)


def _list_entry(item: Any, metadata: tuple[Any, ...]) -> dict[str, Any]:
    lengths = {
        limit.min_length if isinstance(limit, annotated_types.MinLen) else limit.max_length
        for limit in metadata
        if isinstance(limit, annotated_types.MinLen | annotated_types.MaxLen)
    }
    count = lengths.pop() if len(lengths) == 1 and len(metadata) > 1 else None
    inner, inner_metadata = next(iter(_members(item, ())))
    if get_origin(inner) is list:
        _, limits = next(iter(_members(get_args(inner)[0], ())))
        return {"items": "range", "number": _bounds(limits)}
    if inner is str:
        return {"items": "text", "count": count}
    if get_origin(inner) is Literal:
        return {"items": "text", "item_words": get_args(inner), "count": count}
    if inner not in (int, float):
        return {"toml": True}
    return {"items": "number", "number": _bounds(inner_metadata), "whole": inner is int, "count": count}


def _members(annotation: Any, metadata: tuple[Any, ...]) -> Iterator[tuple[Any, tuple[Any, ...]]]:
    """Yield each type of a union but None, with the limits that hold for it."""
    origin = get_origin(annotation)
    if origin is Annotated:
        inner, *extra = get_args(annotation)
        limits = [limit for part in extra for limit in (part.metadata if isinstance(part, FieldInfo) else [part])]
        yield from _members(inner, metadata + tuple(limits))
    elif origin in (Union, UnionType):
        for member in get_args(annotation):
            yield from _members(member, metadata)
    elif annotation is not type(None):
        yield annotation, metadata


def _bounds(metadata: Iterable[Any]) -> Bounds:
    limits = {}
    for limit in metadata:
        for name in ("gt", "ge", "lt", "le"):
            if hasattr(limit, name):
                limits[name] = getattr(limit, name)
    return Bounds(**limits)


def figure(value: float) -> str:
    """Write a limit with a space between thousands."""
    return f"{value:,.0f}".replace(",", " ") if float(value).is_integer() else f"{value:g}"


def value_of(content: Content, entry: Entry) -> Any:
    """Turn a filled cell into the scenario value, or say what is wrong with it.

    Nothing is guessed: a number typed as text, a percentage, a date, a truth value or a formula is refused by name.

    Raises
    ------
    CellProblem
    """
    value, must = content.value, f"must be {entry.allowed}"
    if content.data_type == "f":
        raise CellProblem(f"a formula was given ({_shown(value)}); formulas are not read, type the value: {must}")
    if content.data_type == "e":
        raise CellProblem(f"the error value {value} was given; {must}")
    if isinstance(value, bool) and entry.flag:
        return value
    if isinstance(value, bool):
        raise CellProblem(f"{str(value).upper()} was given; {must}")
    if isinstance(value, date | time | timedelta):
        raise CellProblem(f"a date or time was given ({value}); format the cell as text, then type again: {must}")
    if isinstance(value, int | float):
        return _number_value(value, content.number_format, entry, must)
    if not isinstance(value, str):
        raise CellProblem(f"something that is neither number nor text was given; {must}")
    return _text_value(value, entry, must)


def _number_value(value: float, number_format: str, entry: Entry, must: str) -> Any:
    if "%" in re.sub(r'"[^"]*"', "", number_format):
        raise CellProblem(
            f"{value * 100:g}% was given as a percentage; the unit is in the unit column: format the cell as a plain "
            f"number and type the figure without the sign; {must}"
        )
    if value in entry.words and float(value).is_integer():
        return int(value)
    if entry.number is not None and entry.items != "range" and entry.count is None:
        if entry.whole and not float(value).is_integer():
            raise CellProblem(f"{value:g} was given; {must}")
        value = int(value) if entry.whole else value
        return [value] if entry.items else value
    if entry.text:
        raise CellProblem(f"the number {value:g} was given; {must} (an apostrophe before it makes it text)")
    raise CellProblem(f"the number {value:g} was given; {must}")


def _text_value(value: str, entry: Entry, must: str) -> Any:
    stripped = value.strip()
    if stripped in entry.words:
        return _FLAGS[stripped] if entry.flag else stripped
    if entry.text:
        return value[1:-1] if _bare_quotes(value) else value
    if entry.toml and stripped[:1] in ("[", "{"):
        return toml_of(stripped)
    if entry.items and not (entry.words and re.match(r"[A-Za-z]", stripped)):
        return _list_value(stripped, entry, must)
    given = f"the text {_shown(value)} was given"
    if entry.number is not None and re.fullmatch(r"[+-]?[\d\s.,']+%?", stripped):
        hint = " (a decimal comma is read only where the spreadsheet program itself uses one)" if "," in value else ""
        raise CellProblem(f"{given}, not a number{hint}; {must}")
    words = [str(word) for word in entry.words]
    if stripped in words:
        raise CellProblem(f"{given}, not a number; {must}")
    near = difflib.get_close_matches(stripped.casefold(), words, n=1, cutoff=0.6)
    raise CellProblem(f"{given}; {must}" + (f"; did you mean '{near[0]}'?" if near else ""))


def toml_of(text: str) -> Any:
    """Read one list or table written as in TOML.

    Raises
    ------
    CellProblem
    """
    given = f"the text {_shown(text)} was given; must be one list or table as in TOML"
    try:
        read = tomllib.loads(f"value = {text}")
    except tomllib.TOMLDecodeError as error:
        raise CellProblem(f"{given}: {error}") from error
    except RecursionError as error:
        raise CellProblem(f"{given}, not so deeply nested") from error
    if set(read) != {"value"}:
        raise CellProblem(given)
    return read["value"]


_NUMBER = r"[+-]?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?"
_RANGE = re.compile(rf"({_NUMBER})\s*-\s*({_NUMBER})")


def _list_value(text: str, entry: Entry, must: str) -> list[Any]:
    parts = [part.strip() for part in text.split(SEPARATOR)]
    if parts[-1] == "":
        parts.pop()
    values: list[Any] = []
    for part in parts:
        if entry.items == "range":
            match = _RANGE.fullmatch(part)
            if match is None:
                raise CellProblem(f"'{part}' in a list is not a pair; {must}")
            values.append([_plain_number(match[1]), _plain_number(match[2])])
        elif entry.items == "number":
            if not re.fullmatch(_NUMBER, part):
                hint = "; write decimals with a point here" if "," in part else ""
                raise CellProblem(f"'{part}' in a list is not a number{hint}; {must}")
            number = _plain_number(part)
            if entry.whole and not isinstance(number, int):
                raise CellProblem(f"'{part}' in a list is not a whole number; {must}")
            values.append(number)
        elif entry.item_words and part not in entry.item_words:
            near = difflib.get_close_matches(part.casefold(), entry.item_words, n=1, cutoff=0.6)
            raise CellProblem(f"'{part}' was given; {must}" + (f"; did you mean '{near[0]}'?" if near else ""))
        else:
            values.append(part)
    if entry.count and len(values) != entry.count:
        raise CellProblem(f"{len(values)} values were given; {must}")
    return values


def _plain_number(text: str) -> int | float:
    return int(text) if re.fullmatch(r"[+-]?\d+", text) else float(text)


def _shown(value: Any) -> str:
    text = str(value)
    return repr(text if len(text) <= 60 else text[:57] + "...")


def cell_of(value: Any, entry: Entry) -> int | float | str:
    """Turn a scenario value (but not twelve months) into what its cell holds.

    Raises
    ------
    CellProblem
        When a spreadsheet cell cannot hold it.
    """
    if isinstance(value, bool) and entry.flag:
        return "yes" if value else "no"
    if isinstance(value, bool) or (isinstance(value, float) and not math.isfinite(value)):
        raise CellProblem(f"{value} cannot stand in a cell of the form")
    if isinstance(value, int | float):
        return value
    if isinstance(value, str):
        if re.search(r"[\x00-\x08\x0b-\x1f\x7f\ufffe\uffff]", value) or len(value) > 32_000:
            raise CellProblem("a text with control characters, or longer than a cell, cannot stand in the form")
        return f'"{value}"' if not value.strip() or _bare_quotes(value) else value
    if isinstance(value, list | dict) and entry.toml:
        return cell_of(toml_value(value), Entry(text=True))
    if isinstance(value, list):
        return f"{SEPARATOR} ".join(_item_text(item) for item in value)
    raise CellProblem(f"a value of the kind {type(value).__name__} cannot stand in a cell of the form")


def _item_text(item: Any) -> str:
    if isinstance(item, list):
        return "-".join(repr(hour) for hour in item)
    if isinstance(item, str):
        if SEPARATOR in item or item != item.strip() or not item:
            raise CellProblem(f"{item!r} cannot stand in a list of the form")
        return item
    return repr(item)


def _bare_quotes(text: str) -> bool:
    """Whether a text is nothing but quotes and white space between two quotes, which stands for an empty text."""
    return len(text) >= 2 and text[0] == text[-1] == '"' and not text.replace('"', "").strip()
