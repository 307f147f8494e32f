"""The way between a cell of the form and a scenario value, and the words for what a cell takes."""

from __future__ import annotations

import difflib
import math
import re
import tomllib
from dataclasses import dataclass
from datetime import date, time, timedelta
from typing import Any

from planner.scenario.values import YES_OR_NO, Bounds, Takes
from planner.scenario.writer import toml_value

SEPARATOR = ";"


class CellProblem(Exception):
    """A cell holds, or would have to hold, what it cannot take; the text says what was given and what is allowed."""


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


def limits(bounds: Bounds) -> str:
    """Say the limits of a number in words."""
    if bounds.ge is not None and bounds.le is not None:
        return f"{figure(bounds.ge)} to {figure(bounds.le)}"
    named = (("above", bounds.gt), ("from", bounds.ge), ("below", bounds.lt), ("up to", bounds.le))
    return ", ".join(f"{word} {figure(limit)}" for word, limit in named if limit is not None)


def _pairs(takes: Takes) -> str:
    return "6-9; 17-19" if takes.hours else "20-40; 30-60"


def allowed(takes: Takes) -> str:
    """Say what a cell takes, in full."""
    bounds = limits(takes.number) if takes.number else ""
    listed = [str(choice) for choice in takes.choices]
    ways = [" or ".join(filter(None, (", ".join(listed[:-1]), listed[-1])))] if listed else []
    if takes.items == "range":
        what = "parts of the day in hours" if takes.hours else f"pairs of numbers {bounds}"
        ways.append(f"{what}, such as {_pairs(takes)}")
    elif takes.items == "text":
        chosen = ", ".join(takes.item_choices)
        ways.append(f"one or more of {chosen}, separated by ;" if chosen else "texts separated by ;")
    elif takes.items == "number" and not takes.months:
        within = f" {bounds}" if bounds else ""
        ways.append(f"{takes.count or ''}{' whole' if takes.whole else ''} numbers{within}, separated by ;".strip())
    elif takes.number is not None:
        kind = "a whole number" if takes.whole else "a number"
        ways.append(f"{kind} {bounds}".strip())
    if takes.text:
        ways.append("text")
    if takes.other:
        ways.append("a list or table as in TOML, such as [{ key = 1 }] or { key = 1 }")
    return ", or ".join(ways)


def allowed_in_short(takes: Takes) -> str:
    """Say what a cell takes, for a narrow column."""
    if takes.other or takes.items:
        kind = {"range": _pairs(takes), "number": f"{takes.count or 'numbers'} with ;", "text": "texts with ;"}
        several = "as in TOML" if takes.other else "12 numbers" if takes.months else kind[takes.items]
        return f"list, or {several}" if takes.choices else several
    if takes.choices:
        return allowed(takes).replace("a number ", "").replace("a whole number", "whole")
    if takes.number is None or takes.text:
        return "text" if takes.number is None else "number or text"
    bounds = limits(takes.number)
    return f"{'whole ' if takes.whole else ''}{bounds}" if bounds else "any number"


def figure(value: float) -> str:
    """Write a limit with a space between thousands."""
    return f"{value:,.0f}".replace(",", " ") if float(value).is_integer() else f"{value:g}"


def value_of(content: Content, takes: Takes) -> Any:
    """Turn a filled cell into the scenario value, or say what is wrong with it.

    Nothing is guessed: a number typed as text, a percentage, a date, a truth value or a formula is refused by name.

    Raises
    ------
    CellProblem
    """
    value, must = content.value, f"must be {allowed(takes)}"
    if content.data_type == "f":
        raise CellProblem(f"a formula was given ({_shown(value)}); formulas are not read, type the value: {must}")
    if content.data_type == "e":
        raise CellProblem(f"the error value {value} was given; {must}")
    if isinstance(value, bool) and takes.flag:
        return value
    if isinstance(value, bool):
        raise CellProblem(f"{str(value).upper()} was given; {must}")
    if isinstance(value, date | time | timedelta):
        raise CellProblem(f"a date or time was given ({value}); format the cell as text, then type again: {must}")
    if isinstance(value, int | float):
        return _number_value(value, content.number_format, takes, must)
    if not isinstance(value, str):
        raise CellProblem(f"something that is neither number nor text was given; {must}")
    return _text_value(value, takes, must)


def _number_value(value: float, number_format: str, takes: Takes, must: str) -> Any:
    if "%" in re.sub(r'"[^"]*"', "", number_format):
        raise CellProblem(
            f"{value * 100:g}% was given as a percentage; the unit is in the unit column: format the cell as a plain "
            f"number and type the figure without the sign; {must}"
        )
    if value in takes.choices and float(value).is_integer():
        return int(value)
    if takes.number is not None and takes.items != "range" and takes.count is None:
        if takes.whole and not float(value).is_integer():
            raise CellProblem(f"{value:g} was given; {must}")
        value = int(value) if takes.whole else value
        return [value] if takes.items and not takes.text else value
    if takes.text:
        raise CellProblem(f"the number {value:g} was given; {must} (an apostrophe before it makes it text)")
    raise CellProblem(f"the number {value:g} was given; {must}")


def _text_value(value: str, takes: Takes, must: str) -> Any:
    stripped = value.strip()
    if stripped in takes.choices:
        return YES_OR_NO[stripped] if takes.flag else stripped
    if takes.text:
        return value[1:-1] if _bare_quotes(value) else value
    if takes.other and stripped[:1] in ("[", "{"):
        return toml_of(stripped)
    if takes.items and not (takes.choices and re.match(r"[A-Za-z]", stripped)):
        return _list_value(stripped, takes, must)
    given = f"the text {_shown(value)} was given"
    if takes.number is not None and re.fullmatch(r"[+-]?[\d\s.,']+%?", stripped):
        hint = " (a decimal comma is read only where the spreadsheet program itself uses one)" if "," in value else ""
        raise CellProblem(f"{given}, not a number{hint}; {must}")
    words = [str(word) for word in takes.choices]
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


def _list_value(text: str, takes: Takes, must: str) -> list[Any]:
    parts = [part.strip() for part in text.split(SEPARATOR)]
    if parts[-1] == "":
        parts.pop()
    values: list[Any] = []
    for part in parts:
        if takes.items == "range":
            match = _RANGE.fullmatch(part)
            if match is None:
                raise CellProblem(f"'{part}' in a list is not a pair; {must}")
            values.append([_plain_number(match[1]), _plain_number(match[2])])
        elif takes.items == "number":
            if not re.fullmatch(_NUMBER, part):
                hint = "; write decimals with a point here" if "," in part else ""
                raise CellProblem(f"'{part}' in a list is not a number{hint}; {must}")
            number = _plain_number(part)
            if takes.whole and not isinstance(number, int):
                raise CellProblem(f"'{part}' in a list is not a whole number; {must}")
            values.append(number)
        elif takes.item_choices and part not in takes.item_choices:
            near = difflib.get_close_matches(part.casefold(), takes.item_choices, n=1, cutoff=0.6)
            raise CellProblem(f"'{part}' was given; {must}" + (f"; did you mean '{near[0]}'?" if near else ""))
        else:
            values.append(part)
    if takes.count and len(values) != takes.count:
        raise CellProblem(f"{len(values)} values were given; {must}")
    return values


def _plain_number(text: str) -> int | float:
    return int(text) if re.fullmatch(r"[+-]?\d+", text) else float(text)


def _shown(value: Any) -> str:
    text = str(value)
    return repr(text if len(text) <= 60 else text[:57] + "...")


def cell_of(value: Any, takes: Takes) -> int | float | str:
    """Turn a scenario value (but not twelve months) into what its cell holds.

    Raises
    ------
    CellProblem
        When a spreadsheet cell cannot hold it.
    """
    if isinstance(value, bool) and takes.flag:
        return "yes" if value else "no"
    if isinstance(value, bool) or (isinstance(value, float) and not math.isfinite(value)):
        raise CellProblem(f"{value} cannot stand in a cell of the form")
    if isinstance(value, int | float):
        return value
    if isinstance(value, str):
        if re.search(r"[\x00-\x08\x0b-\x1f\x7f\ufffe\uffff]", value) or len(value) > 32_000:
            raise CellProblem("a text with control characters, or longer than a cell, cannot stand in the form")
        return f'"{value}"' if not value.strip() or _bare_quotes(value) else value
    if isinstance(value, list | dict) and takes.other:
        return cell_of(toml_value(value), Takes(text=True))
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
