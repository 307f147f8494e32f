"""What people write where a number or a text in quotes is wanted, and what to write instead."""

from __future__ import annotations

import re
from typing import Any

from planner.text import text

_MONTH = "jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec"
_DATE = re.compile(
    rf"\d{{1,4}}[-/.]\d{{1,2}}[-/.]\d{{1,4}}|\d{{1,2}}\.?[\s-]+(?:{_MONTH})\w*\.?(?:[\s-]+\d{{2,4}})?", re.I
)
_DEGREES = re.compile(
    r"([+-]?\d+(?:\.\d+)?)\s*(?:°|º|deg\b)\s*"
    r"(?:(\d+(?:\.\d+)?)\s*['′’]\s*)?"
    r"(?:(\d+(?:\.\d+)?)\s*(?:\"|″|”|'')\s*)?"
    r"([NSEW])?",
    re.I,
)
_SIDE = re.compile(r"([+-]?\d+(?:\.\d+)?)()()\s*([NSEW])", re.I)
_THOUSANDS = re.compile(r"[+-]?\d{1,3}(?:,\d{3})+")
_SPACED = re.compile(r"[+-]?\d{1,3}(?:[ \u00a0']\d{3})+(?:\.\d+)?")
_COMMA = re.compile(r"[+-]?\d+,\d+")
_BARE_POINT = re.compile(r"[+-]?(?:\.\d+|\d+\.)")
_LEADING_ZERO = re.compile(r"[+-]?0+\d+(?:\.\d+)?")
_PLAIN = re.compile(r"[+-]?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?")
_WITH_UNIT = re.compile(r"([+-]?\d+(?:[.,]\d+)?)\s*((?:[^\W\d_]|[%°$€£¥]|/\s*[a-z])(?:\D|(?<=[a-z^])\d)*)")
"""Digits within a unit follow a letter, as in m3/h; '50/60' and '12 or 13' are no number with a unit."""
_WITH_CURRENCY = re.compile(r"(?:[A-Z]{3}|[$€£¥])\s*([+-]?\d[\d,. ]*)")
_UNKNOWN = {"", "-", "--", "?", "n/a", "na", "none", "null", "unknown", "tbd", "nil"}
_TRUTHS = {"true": "true", "yes": "true", "on": "true", "false": "false", "no": "false", "off": "false"}
_QUOTES = "“”„«»‘’‚`"


def number_advice(text: str) -> str | None:
    """Say what number to write for a text that was meant as one; None where it does not look like a number.

    Parameters
    ----------
    text : str
        What was given, such as '3,5', '60 m' or 0°30'N.
    """
    given = text.strip()
    if _DATE.fullmatch(given):
        return None
    degrees = _DEGREES.fullmatch(given) or _SIDE.fullmatch(given)
    if degrees:
        return f"write degrees as a decimal number, south and west negative: {_decimal_degrees(degrees):.10g}"
    if _THOUSANDS.fullmatch(given):
        either = f", or {given.replace(',', '.')} if a decimal comma was meant" if given.count(",") == 1 else ""
        return f"write the number without commas: {given.replace(',', '')}{either}"
    if _COMMA.fullmatch(given):
        return f"write a decimal point instead of the comma: {given.replace(',', '.')}"
    if _SPACED.fullmatch(given):
        return f"write the number in one piece: {re.sub('[^0-9.+-]', '', given)}"
    if _BARE_POINT.fullmatch(given) or _LEADING_ZERO.fullmatch(given):
        return f"write {float(given):g}"
    if _PLAIN.fullmatch(given):
        return f"write the number without quotes: {given}"
    unit = _WITH_UNIT.fullmatch(given)
    if unit:
        return f"write the number alone, {unit[1].replace(',', '.')}; the unit is part of the key's name"
    currency = _WITH_CURRENCY.fullmatch(given)
    if currency:
        return "write the number alone; the currency is named once, by the key currency"
    return None


def value_advice(value: str) -> str | None:
    """Say what to write instead of a value that is not valid TOML; None where that cannot be told.

    Parameters
    ----------
    value : str
        What stands to the right of the equals sign, without a comment.
    """
    given = value.strip()
    if not given:
        return "write a value after the equals sign, or leave the line out"
    if given[0] in _QUOTES or given[-1] in _QUOTES:
        return f'use straight quotes: "{given.strip(_QUOTES)}"'
    if given[0] == '"' and not given.startswith('"""'):
        return _quoted_advice(given)
    if given[0] == "'" and given.count("'") == 1:
        return f'close the quotes: "{given[1:]}"'
    if given[0] == "[":
        return _list_advice(given)
    if given[-1] in ";,":
        return f"leave out the {given[-1]!r} at the end: {given[:-1].strip()}"
    if given.lower() in _UNKNOWN:
        return "leave the line out where the value is not known"
    if given.lower() in _TRUTHS:
        return f"write {_TRUTHS[given.lower()]}, in small letters and without quotes"
    if _DATE.fullmatch(given):
        return f'no key takes a date; a text stands in quotes: "{given}"'
    bare = given[0].isalpha() and not re.search(r"[\"\[\]{}=]", given)
    return number_advice(given) or (f'put the text in quotes: "{given}"' if bare else None)


def _quoted_advice(given: str) -> str | None:
    if "\\" in given:
        return "a backslash in double quotes has a meaning of its own: write / or use single quotes"
    if given.count('"') % 2:
        return f'close the quotes: "{given[1:]}"'
    return None


def _list_advice(given: str) -> str | None:
    if given.count("[") != given.count("]"):
        return None
    for part in given.strip("[] ").split(","):
        entry = part.strip()
        if re.fullmatch(r"[+-]?[\d.]+(?:\s+[+-]?[\d.]+)+|[\d.\s;+-]*;[\d.\s;+-]*", entry):
            return "separate the values of a list by commas"
        if entry and entry[0] not in "\"'{" and not _PLAIN.fullmatch(entry):
            advice = value_advice(entry)
            if advice and entry not in ("true", "false", "nan", "inf"):
                return f"for {entry} {advice}"
    return None


def _decimal_degrees(found: re.Match[str]) -> float:
    size = abs(float(found[1])) + float(found[2] or 0) / 60 + float(found[3] or 0) / 3600
    negative = found[1].startswith("-") or (found[4] or "").upper() in ("S", "W")
    return -size if negative else size


def latitude_advice(given: Any) -> str:
    """Say that a latitude beyond 90 degrees is probably the longitude; '' for anything else."""
    return text("position.swapped_range") if isinstance(given, int | float) and 90 < abs(given) <= 180 else ""
