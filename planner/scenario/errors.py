"""One kind of error for everything a user can get wrong, and how it reads."""

from __future__ import annotations

import difflib
import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, datetime, time
from typing import Any

from pydantic import BaseModel, ValidationError

from planner.scenario.fields import AT_ODDS
from planner.scenario.mistakes import latitude_advice, number_advice
from planner.scenario.paths import Path, dotted
from planner.scenario.walk import field_at, keys_at

RENAMED = {
    "life_years": "analysis_period_years",
    "upkeep_percent_per_year": "maintenance_percent_per_year",
    "delivered_share_percent": "demand_met_percent",
    "worst_year_share_percent": "demand_met_worst_year_percent",
    "blending": "parallel",
}
"""Keys and values of earlier versions, and their names since; an old one counts where the new one is allowed."""

LONGEST_SHOWN, LONGEST_MESSAGE = 80, 300
"""Characters of a value that a message repeats, and of a key (a form's cell has its label with it) or a message."""
_CONTROL = re.compile("[\x00-\x1f\x7f-\x9f\u200e\u200f\u202a-\u202e\u2066-\u2069]")


@dataclass(frozen=True)
class Problem:
    """One thing that is wrong with the input.

    Attributes
    ----------
    key : str
        Dotted path of the key, or '' where the problem is not at one key.
    text : str
        What was given and what is allowed.
    line : int or None
        Line of the file, where known.
    file : str
        The file, where it is one that the scenario includes.
    kind : str
        What is wrong, where others act on it: 'missing', 'no_entry' (an empty list), 'no_kind' or 'unknown_key'.
    keys : tuple of str
        Dotted paths of the keys that are at odds, where the problem is that of several.
    """

    key: str
    text: str
    line: int | None = None
    file: str = ""
    kind: str = ""
    keys: tuple[str, ...] = ()


class InputError(Exception):
    """What the user gave cannot be used; carries every problem found, for exit code 2."""

    def __init__(self, file: str, problems: Sequence[Problem]) -> None:
        self.file = file
        self.problems = tuple(problems)
        super().__init__("\n".join(self.lines()))

    def lines(self) -> Iterator[str]:
        """Yield one line of text for each problem."""
        for problem in self.problems:
            file = problem.file or self.file
            place = file if problem.line is None else f"{file}:{problem.line}"
            key = f"{shown(problem.key, LONGEST_MESSAGE, quoted=False)}: " if problem.key else ""
            yield f"{printable(place)}: {key}{shown(problem.text, LONGEST_MESSAGE, quoted=False)}"


def printable(text: str) -> str:
    """Leave out the characters that would steer a terminal instead of being seen."""
    return _CONTROL.sub("", text)


def shown(value: Any, most: int = LONGEST_SHOWN, *, quoted: bool = True) -> str:
    """Write a given value for a message: cut where it is long, nothing in it that steers a terminal."""
    if isinstance(value, date | datetime | time):
        return f"the date or time {value.isoformat()}"
    text = repr(value[: most + 1]) if quoted and isinstance(value, str) else repr(value) if quoted else str(value)
    text = printable(text)
    return text if len(text) <= most else text[: most - 1] + "…"


@dataclass(frozen=True)
class Found:
    """What a model refuses: path in the file, plain text, kind of problem, keys from there that are at odds."""

    path: Path
    text: str
    kind: str
    keys: tuple[str, ...]


def problems_of(error: ValidationError, raw: dict[str, Any], root: type[BaseModel]) -> list[Found]:
    """Turn a validation error into what is wrong, alternatives of one key merged.

    Parameters
    ----------
    error : pydantic.ValidationError
        What pydantic found.
    raw : dict
        The data as read from the file.
    root : type[pydantic.BaseModel]
        The model that was validated, for the nearest valid key.
    """
    merged: dict[Path, list[str]] = {}
    given: dict[Path, Any] = {}
    kinds: dict[Path, str] = {}
    keys: dict[Path, tuple[str, ...]] = {}
    details = error.errors(include_url=False)
    if any(detail["type"] not in ("missing", "too_short") for detail in details):
        details = [detail for detail in details if not _follows(detail, raw, root)]
    for detail in details:
        path = _in_file(detail["loc"], raw, missing=detail["type"] == "missing")
        text = _text(detail, path, root)
        kinds.setdefault(path, _kind(detail))
        keys[path] = (*keys.get(path, ()), *detail.get("ctx", {}).get(AT_ODDS, ()))
        if path == ("site", "latitude_deg"):
            text += latitude_advice(detail["input"])
        if text not in merged.setdefault(path, []):
            merged[path].append(text)
        if detail["type"] not in ("missing", "extra_forbidden") and not isinstance(detail["input"], dict | BaseModel):
            given[path] = detail["input"]
    return [
        Found(path, _joined(texts, given.get(path, _NOTHING)), kinds[path], keys[path])
        for path, texts in merged.items()
    ]


_KINDS = {
    "missing": "missing",
    "extra_forbidden": "unknown_key",
    "union_tag_invalid": "no_kind",
    "union_tag_not_found": "no_kind",
}


def _kind(detail: Any) -> str:
    nothing = detail["type"] == "too_short" and detail["ctx"]["actual_length"] == 0
    return "no_entry" if nothing else _KINDS.get(detail["type"], "")


def _follows(detail: Any, raw: dict[str, Any], root: type[BaseModel]) -> bool:
    """Whether a key is missing that is worked out from others, of which one is more likely what is wrong."""
    if detail["type"] != "missing":
        return False
    known = field_at(root, _in_file(detail["loc"], raw, missing=True))
    return known is not None and bool(known.how)


_NOTHING = object()
_WHOLE_FLOAT = re.compile(r"(\d)\.0\b(?!\.)")


def _joined(texts: list[str], given: Any) -> str:
    allowed = ", or ".join(texts)
    if given is _NOTHING or (isinstance(given, list) and "found)" in allowed):
        return allowed
    words = shown(given) if not isinstance(given, list) else f"a list of {len(given)}"
    advice = number_advice(given) if isinstance(given, str) and "must be a number" in texts else None
    return f"{words} was given; {allowed}{f': {advice}' if advice else ''}"


def _in_file(loc: tuple[str | int, ...], raw: Any, *, missing: bool) -> Path:
    """Drop the parts of a pydantic location that are not keys of the file (tags of unions)."""
    path: list[str | int] = []
    here = raw
    for index, part in enumerate(loc):
        last = index == len(loc) - 1
        if isinstance(here, dict) and part in here:
            here = here[part]
            path.append(part)
        elif isinstance(here, list) and isinstance(part, int) and part < len(here):
            here = here[part]
            path.append(part)
        elif isinstance(here, dict) and last and missing:
            path.append(part)
    return tuple(path)


_TEXTS = {
    "missing": "is missing",
    "float_type": "must be a number",
    "int_type": "must be a whole number",
    "string_type": "must be text",
    "bool_type": "must be true or false",
    "list_type": "must be a list",
    "dict_type": "must be a table",
    "model_type": "must be a table",
    "model_attributes_type": "must be a table",
    "finite_number": "must be a finite number",
}


def _text(detail: Any, path: Path, root: type[BaseModel]) -> str:
    kind, context = detail["type"], detail.get("ctx", {})
    if kind == "extra_forbidden":
        return _unknown_key(path, root)
    if kind == "missing" and (known := field_at(root, path)) is not None and known.how:
        return f"is missing, and what is given does not say it ({known.how})"
    if kind in _TEXTS:
        return _TEXTS[kind]
    if kind == "greater_than":
        return f"must be greater than {context['gt']:g}"
    if kind == "greater_than_equal":
        return f"must be at least {context['ge']:g}"
    if kind == "less_than":
        return f"must be less than {context['lt']:g}"
    if kind == "less_than_equal":
        return f"must be at most {context['le']:g}"
    if kind == "literal_error":
        allowed, new = context["expected"], RENAMED.get(str(detail["input"]), "")
        return f"must be {allowed}" + (f"; it is called '{new}' now" if f"'{new}'" in allowed else "")
    if kind in ("too_short", "too_long"):
        wanted = context.get("min_length", context.get("max_length"))
        few = "at least" if kind == "too_short" else "at most"
        wanted_text = f"{wanted} values" if wanted in (2, 12, 24) else f"{few} {wanted}"
        doubled = wanted in (12, 24) and context["actual_length"] == 2 * wanted
        hint = "; if decimal commas were meant, write points: 3.9, not 3,9" if doubled else ""
        return f"must have {wanted_text} ({context['actual_length']} found){hint}"
    if kind in ("union_tag_invalid", "union_tag_not_found"):
        tags = context.get("expected_tags", "")
        return f"needs kind = one of {tags}" if tags else "needs the key kind"
    if kind == "string_too_short":
        return "must not be empty"
    if kind == "string_pattern_mismatch":
        known = field_at(root, path)
        return f"is not written as it must be ({known.description})" if known else "is not written as it must be"
    return _WHOLE_FLOAT.sub(r"\1", str(detail["msg"]))


def _table_of(name: str, table: Path, root: type[BaseModel], *, nearer_than: str) -> str:
    """Say in which table above or below the key stands that was meant; empty where the nearest stands here."""
    least = max(0.65, difflib.SequenceMatcher(None, name, nearer_than).ratio() + 0.01)
    paths = [(*table, key) for key in keys_at(root, table)]
    below = [inner for inner in paths if (field := field_at(root, inner)) is not None and field.kind == "table"]
    for other in ([table[:-1]] if len(table) > 1 else []) + below:
        found = difflib.get_close_matches(name, keys_at(root, other), n=1, cutoff=min(least, 1.0))
        if found:
            return f"is not a known key here; did you mean '{found[0]}' in [{dotted(other)}]?"
    return ""


def _unknown_key(path: Path, root: type[BaseModel]) -> str:
    known = keys_at(root, path[:-1])
    new = RENAMED.get(str(path[-1]))
    if new in known:
        return f"is not a known key; it is called '{new}' now"
    near = difflib.get_close_matches(str(path[-1]), known, n=1, cutoff=0.5)
    table = _table_of(str(path[-1]), path[:-1], root, nearer_than=near[0] if near else "")
    if table:
        return table
    if near:
        return f"is not a known key; did you mean '{near[0]}'?"
    listed = shown(", ".join(known), LONGEST_MESSAGE - 60, quoted=False) if known else "none"
    return f"is not a known key; allowed here: {listed}"
