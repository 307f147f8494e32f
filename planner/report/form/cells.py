"""The way between a cell of the form and a scenario value, and the words for what a cell takes."""

from __future__ import annotations

import difflib
import math
import re
import tomllib
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, time, timedelta
from functools import reduce
from typing import Any

from planner.scenario.mistakes import number_advice
from planner.scenario.values import YES_OR_NO, Bounds, Takes
from planner.scenario.writer import toml_value
from planner.text import text

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
        return text("form.limits.ge_le", ge=figure(bounds.ge), le=figure(bounds.le))
    given = ((name, getattr(bounds, name)) for name in ("gt", "ge", "lt", "le"))
    said = (text(f"form.limits.{name}", limit=figure(limit)) for name, limit in given if limit is not None)
    return text("list.comma").join(said)


def _pairs(takes: Takes) -> str:
    return "6-9; 17-19" if takes.hours else "20-40; 30-60"


def allowed(takes: Takes) -> str:
    """Say what a cell takes, in full."""
    return _ways(takes, _within(text("form.takes.whole_number" if takes.whole else "form.takes.number"), takes))


def _ways(takes: Takes, number: str) -> str:
    """Say everything that a cell takes, a number in the words given."""
    ways = [_listed(takes.choices)] if takes.choices else []
    if takes.printed:
        return _within(text("form.takes.printed"), takes)
    if takes.items == "range":
        pairs = _within(text("form.takes.pairs_of_numbers"), takes)
        key = "form.takes.parts_of_day" if takes.hours else "form.takes.pairs"
        ways.append(text(key, pairs=pairs, example=_pairs(takes)))
    elif takes.items == "text":
        key = "form.takes.texts_of" if takes.item_choices else "form.takes.texts"
        ways.append(text(key, choices=text("list.comma").join(takes.item_choices)))
    elif takes.items == "number" and not takes.months:
        ways.append(text("form.takes.list", numbers=_within(_numbers(takes), takes)))
    elif takes.number is not None:
        ways.append(number)
    if takes.text:
        ways.append(text("form.takes.text"))
    if takes.other:
        ways.append(text("form.takes.toml"))
    return reduce(lambda first, second: text("form.takes.either", first=first, second=second), ways) if ways else ""


def _listed(choices: Sequence[str | int]) -> str:
    *first, last = map(str, choices)
    return text("form.takes.or", first=text("list.comma").join(first), last=last) if first else last


def _numbers(takes: Takes) -> str:
    """Name the numbers of a list."""
    numbers = text("form.takes.whole_numbers" if takes.whole else "form.takes.numbers")
    return text("form.takes.count_of_numbers", count=takes.count, numbers=numbers) if takes.count else numbers


def _within(what: str, takes: Takes) -> str:
    """Add the limits of a number to its name."""
    bounds = limits(takes.number) if takes.number else ""
    return text("form.takes.within", what=what, limits=bounds) if bounds else what


def allowed_in_short(takes: Takes) -> str:
    """Say what a cell takes, for a narrow column."""
    if takes.printed:
        return text("form.takes_short.printed")
    if takes.other or takes.items:
        several = _several_in_short(takes)
        return text("form.takes_short.list_or", other=several) if takes.choices else several
    bounds = limits(takes.number) if takes.number else ""
    number = text("form.takes_short.whole", limits=bounds) if takes.whole else bounds
    number = number if bounds else text("form.takes_short.any_number")
    if takes.choices:
        return _ways(takes, number)
    if takes.number is None or takes.text:
        return text("form.takes.text" if takes.number is None else "form.takes_short.number_or_text")
    return number


def _several_in_short(takes: Takes) -> str:
    """Say which list or table a cell takes, for a narrow column."""
    if takes.other:
        return text("form.takes_short.toml")
    if takes.items == "range":
        return _pairs(takes)
    if takes.items == "text":
        return text("form.takes_short.texts")
    if takes.months:
        return text("form.takes_short.months")
    return text("form.takes_short.count" if takes.count else "form.takes_short.numbers", count=takes.count)


def figure(value: float) -> str:
    """Write a limit with a space between thousands."""
    return f"{value:,.0f}".replace(",", " ") if float(value).is_integer() else f"{value:g}"


def value_of(content: Content, takes: Takes) -> Any:
    """Turn a filled cell into the scenario value, or say what is wrong with it.

    Nothing is guessed: a percentage, a date, a truth value, a formula, or a number typed as text that can be read in
    two ways is refused by name.

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
    if (
        takes.printed
        and all(_PLAIN.fullmatch(part.strip()) for part in stripped.split(SEPARATOR))
        and SEPARATOR in value
    ):
        return _list_value(stripped, takes, must)
    if takes.text:
        return value[1:-1] if _bare_quotes(value) else value
    if takes.other and stripped[:1] in ("[", "{"):
        return toml_of(stripped)
    if takes.items and not (takes.choices and re.match(r"[A-Za-z]", stripped)):
        return _list_value(stripped, takes, must)
    given = f"the text {_shown(value)} was given"
    if takes.number is not None and not takes.items and _PLAIN.fullmatch(stripped):
        return _number_value(_figure(stripped, given, must, points=False), "", takes, must)
    if takes.number is not None and (advice := number_advice(stripped)):
        raise CellProblem(f"{given}; {must}: {advice.partition(';')[0]}")
    words = [str(word) for word in takes.choices]
    if stripped in words:
        raise CellProblem(f"{given}, not a number; {must}")
    near = difflib.get_close_matches(stripped.casefold(), words, n=1, cutoff=0.6)
    raise CellProblem(f"{given}; {must}" + (f"; did you mean '{near[0]}'?" if near else ""))


def toml_of(written: str) -> Any:
    """Read one list or table written as in TOML.

    Raises
    ------
    CellProblem
    """
    given = f"the text {_shown(written)} was given; must be one list or table as in TOML"
    try:
        read = tomllib.loads(f"value = {written}")
    except tomllib.TOMLDecodeError as error:
        raise CellProblem(f"{given}: {error}") from error
    except RecursionError as error:
        raise CellProblem(f"{given}, not so deeply nested") from error
    if set(read) != {"value"}:
        raise CellProblem(given)
    return read["value"]


_NUMBER = r"[+-]?\d+(?:[.,]\d+)?(?:[eE][+-]?\d+)?"
_PLAIN = re.compile(_NUMBER)
_THOUSANDS = re.compile(r"[+-]?[1-9]\d{0,2}[.,]\d{3}")
_RANGE = re.compile(rf"({_NUMBER})\s*-\s*({_NUMBER})")


def _list_value(written: str, takes: Takes, must: str) -> list[Any]:
    parts = [part.strip() for part in written.split(SEPARATOR)]
    if parts[-1] == "":
        parts.pop()
    values: list[Any] = []
    for part in parts:
        if takes.items == "range":
            match = _RANGE.fullmatch(part)
            if match is None:
                raise CellProblem(f"'{part}' in a list is not a pair; {must}")
            values.append([_figure(end, f"'{part}' in a list was given", must) for end in match.groups()])
        elif takes.items == "number":
            if not re.fullmatch(_NUMBER, part):
                raise CellProblem(f"'{part}' in a list is not a number; {must}")
            number = _figure(part, f"'{part}' in a list was given", must)
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


def _figure(written: str, given: str, must: str, *, points: bool = True) -> int | float:
    """Read a number with a decimal point or comma; refuse one whose mark may stand for thousands.

    In a list (`points`) a point is decimal: what the form itself writes there has points.
    """
    if _THOUSANDS.fullmatch(written) and not (points and "." in written):
        whole, part = re.split("[.,]", written)
        raise CellProblem(
            f"{given}, which can be read as {whole}{part} and as {float(f'{whole}.{part}'):g}; type it without a mark "
            f"for thousands; {must}"
        )
    digits = written.replace(",", ".")
    return int(digits) if re.fullmatch(r"[+-]?\d+", digits) else float(digits)


def _shown(value: Any) -> str:
    written = str(value)
    return repr(written if len(written) <= 60 else written[:57] + "...")


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


def _bare_quotes(written: str) -> bool:
    """Whether a text is nothing but quotes and white space between two quotes, which stands for an empty text."""
    return len(written) >= 2 and written[0] == written[-1] == '"' and not written.replace('"', "").strip()
