"""How the workbook looks: palette, number formats, column widths and charts.

The colours differ in lightness, so that they can be told apart in grey and without colour vision; charts add hatching
and dashes, tables add words and signs.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache
from itertools import repeat
from typing import Any, Literal

from planner.text import text

Kind = Literal[
    "text", "wrap", "centre", "word", "general", "whole", "one", "two", "three", "money", "price", "year", "yes"
]
Look = Literal["plain", "best", "total", "sub", "strong"]

MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")
FONT, SIZE = "Arial", 10
INK, SLATE, MIST, STRAW, RULE, HAIR = "#1D2B33", "#2C4A56", "#DDE6E6", "#F2EBD6", "#9AA7AB", "#E1E7E7"

NUMBER_FORMATS: dict[str, str] = {
    "general": "General",
    "whole": "#,##0",
    "one": "#,##0.0",
    "two": "#,##0.00",
    "three": "0.000",
    "money": "#,##0;-#,##0;–",
    "price": "#,##0.00",
    "year": "0",
}
"""Of 'yes' the words stand in the texts: 1 and 0 are shown as yes and no."""
DECIMALS = {"one": 1, "two": 2, "three": 3, "price": 2}

_LETTER_WIDTHS: dict[str, float] = {
    **dict.fromkeys("ijl'|", 0.42),
    **dict.fromkeys(" .,;:!()[]/\\ftrI-", 0.56),
    **dict.fromkeys("ckvxyszJ", 0.92),
    **dict.fromkeys("ABCDEFGHKLNOPQRSTUVXYZ&+=<>", 1.28),
    **dict.fromkeys("mwMW%@–—…✓✗", 1.6),
}
"""Widths of letters over that of a digit, roughly those of Arial; any other counts as one digit."""

Fill = dict[str, Any]


def solid(colour: str) -> Fill:
    """Chart series filled with one colour."""
    return {"fill": {"color": colour}, "border": {"color": INK, "width": 0.5}}


def hatched(pattern: str, colour: str, ground: str = "#FFFFFF") -> Fill:
    """Chart series with a hatch."""
    return {
        "pattern": {"pattern": pattern, "fg_color": colour, "bg_color": ground},
        "border": {"color": INK, "width": 0.5},
    }


SOURCE_FILLS: dict[str, Fill] = {
    "solar": solid("#E9C46A"),
    "grid": hatched("wide_upward_diagonal", "#2F5F9E"),
    "generator": solid("#4A4A4A"),
}
COST_FILLS: dict[str, Fill] = {
    "construction": solid("#2C4A56"),
    "replacement": solid("#6F9AA0"),
    "upkeep": solid("#C8DCDA"),
    "grid": hatched("wide_upward_diagonal", "#2F5F9E"),
    "fuel": hatched("large_check", "#B5651D"),
    "generator_service": hatched("wide_downward_diagonal", "#7A4A12"),
    "yearly_costs": hatched("large_grid", "#6B6B6B"),
    "direct_support": hatched("light_vertical", "#5E6B3A"),
    "residual": solid("#FFFFFF"),
}
LINES: tuple[Fill, ...] = (
    {"color": SLATE, "width": 2.25},
    {"color": "#B5651D", "width": 2.0, "dash_type": "dash"},
    {"color": "#6F9AA0", "width": 1.75, "dash_type": "round_dot"},
    {"color": "#4A4A4A", "width": 1.5, "dash_type": "long_dash_dot"},
    {"color": "#8C7A3C", "width": 1.5, "dash_type": "square_dot"},
    {"color": "#7A3B69", "width": 1.5, "dash_type": "dash_dot"},
    {"color": "#A9B388", "width": 2.0},
)
MARKERS = ("circle", "square", "diamond", "triangle", "x", "plus", "star")
LOW_FILL, HIGH_FILL = solid("#6F9AA0"), hatched("wide_upward_diagonal", "#B5651D")

_FILLS: dict[str, Fill] = {
    **{f"source {name}": fill for name, fill in SOURCE_FILLS.items()},
    **{f"cost {name}": fill for name, fill in COST_FILLS.items()},
    "unused": hatched("dotted_grid", "#B08D2E"),
    "missing": solid("#FFFFFF"),
    "light": solid("#C8DCDA"),
    "dark": solid("#2C4A56"),
    "low": LOW_FILL,
    "high": HIGH_FILL,
}
_SPECIAL_LINES: dict[str, Fill] = {
    "system": {"line": {"color": INK, "width": 2.75}, "marker": {"type": "none"}},
    "target": {"line": {"color": INK, "width": 1.25, "dash_type": "dash"}, "marker": {"type": "none"}},
    "duty point": {
        "line": {"none": True},
        "marker": {"type": MARKERS[2], "size": 10, "fill": {"color": "#B5651D"}, "border": {"color": INK}},
    },
}


def series_style(name: str, chart_kind: str) -> Fill:
    """Look of a chart's series by the name of its style: a fill, 'line 0' and on, or a line of its own."""
    if name in _FILLS:
        return _FILLS[name]
    if name in _SPECIAL_LINES:
        return _SPECIAL_LINES[name]
    kind, number = name.rsplit(" ", 1)
    place = int(number) % len(LINES)
    colour = LINES[place]["color"]
    if chart_kind not in ("lines", "points"):
        return solid(colour)
    marker = {"type": MARKERS[place], "size": 5, "fill": {"color": colour}, "border": {"color": INK}}
    if chart_kind == "points":
        return {"marker": {**marker, "size": 7}}
    return {"line": LINES[place], "marker": {"type": "none"} if kind == "plain line" else marker}


class Styles:
    """Cell formats of one workbook, each made once."""

    def __init__(self, book: Any) -> None:
        self._book = book
        self._made: dict[tuple[str, str], Any] = {}

    def cell(self, kind: Kind, look: Look = "plain", *, indented: bool = False) -> Any:
        """Format of a table's cell by what it holds and how it stands out; an indented text keeps off its left."""
        key = (kind, f"{look} indented" if indented else look)
        if key not in self._made:
            properties: dict[str, Any] = {**_LETTERS, "valign": "top"}
            if kind == "yes":
                yes, no = (text(f"answer.{word}").replace('"', "") for word in ("yes", "no"))
                properties |= {"num_format": f'"{yes}";;"{no}"', "align": "center"}
            if kind in NUMBER_FORMATS:
                properties |= {"num_format": NUMBER_FORMATS[kind], "align": "center" if kind == "year" else "right"}
            if kind == "wrap":
                properties["text_wrap"] = True
            if indented:
                properties["indent"] = 1
            if kind in ("centre", "word"):
                properties["align"] = "center" if kind == "centre" else "right"
            if look == "total":
                properties |= {"bold": True, "top": 1, "bottom": 1, "border_color": RULE}
            if look == "sub":
                properties |= {"italic": True, "top": 1, "border_color": RULE}
            if look == "best":
                properties |= {"bold": True, "bg_color": STRAW, "bottom": 1, "border_color": HAIR}
            if look == "strong":
                properties["bold"] = True
            if look == "plain":
                properties |= {"bottom": 1, "border_color": HAIR}
            self._made[key] = self._book.add_format(properties)
        return self._made[key]

    def large(self, before: str, after: str, decimals: int) -> Any:
        """Format of a number that stands large, with the words around it."""
        key = ("large", f"{before}|{after}|{decimals}")
        if key not in self._made:
            digits = "#,##0" + (f".{'0' * decimals}" if decimals else "")
            around = [f'"{words}"' if words else "" for words in (before, after)]
            number = {"num_format": f"{around[0]}{digits}{around[1]}"}
            self._made[key] = self._book.add_format({**_LETTERS, **_NAMED["large"], **number})
        return self._made[key]

    def named(self, name: str) -> Any:
        """Format of titles, headings, headers and running text."""
        key = ("", name)
        if key not in self._made:
            self._made[key] = self._book.add_format({**_LETTERS, **_NAMED[name]})
        return self._made[key]


_LETTERS: dict[str, Any] = {"font_name": FONT, "font_size": SIZE, "font_color": INK}
_NAMED: dict[str, dict[str, Any]] = {
    "title": {"bold": True, "font_size": 16, "font_color": SLATE},
    "note": {"italic": True, "text_wrap": True, "valign": "top"},
    "heading": {"bold": True, "font_size": 12, "font_color": SLATE, "bottom": 2, "bottom_color": SLATE},
    "header": {
        "bold": True,
        "bg_color": MIST,
        "text_wrap": True,
        "valign": "vcenter",
        "align": "center",
        "bottom": 1,
        "top": 1,
        "border_color": SLATE,
    },
    "header left": {
        "bold": True,
        "bg_color": MIST,
        "text_wrap": True,
        "valign": "vcenter",
        "bottom": 1,
        "top": 1,
        "border_color": SLATE,
    },
    "paragraph": {"text_wrap": True, "valign": "vcenter"},
    "verdict": {
        "text_wrap": True,
        "valign": "vcenter",
        "bold": True,
        "font_size": 13,
        "bg_color": STRAW,
        "top": 2,
        "border_color": SLATE,
    },
    "condition": {"text_wrap": True, "valign": "vcenter", "bg_color": STRAW, "indent": 1},
    "tile": {"bold": True, "font_color": SLATE, "top": 2, "top_color": SLATE, "align": "center", "text_wrap": True},
    "large": {"bold": True, "font_size": 18, "align": "center", "valign": "vcenter"},
    "tile note": {"text_wrap": True, "align": "center", "valign": "top", "bottom": 1, "bottom_color": RULE},
}


def shown_length(value: float, kind: Kind) -> int:
    """Characters that a number takes in its format."""
    return len(f"{value:.10g}" if kind == "general" else f"{value:,.{DECIMALS.get(kind, 0)}f}")


@lru_cache(maxsize=10_000)
def text_width(text: str) -> float:
    """Width of a text in the sheet's letters, in digits of a column's width."""
    return 1.02 * sum(map(_LETTER_WIDTHS.get, text, repeat(1.0)))


def longest_word(text: str) -> float:
    """Width of the longest word, the least width of a wrapped header."""
    return max((text_width(word) for word in text.split()), default=0.0)


def line_count(text: str, width: float, size: float = 1.0) -> int:
    """Lines that a text takes when wrapped in a width of so many digits; `size` is its letters' size over the usual."""
    room = max(width / size - 0.5, 4.0)
    space, used, lines = text_width(" "), 0.0, 1
    for word in text.split(" "):
        needed = text_width(word)
        if used and used + space + needed > room:
            lines, used = lines + 1, 0.0
        used += needed + (space if used else 0.0)
        if used > room:  # a word longer than the line is broken
            extra = int(used // room)
            lines, used = lines + extra, used - extra * room
    return lines


def axis(name: str, number_format: str = "#,##0", **more: Any) -> dict[str, Any]:
    """Chart axis with its name, unit included."""
    font = {"name": FONT, "size": 9, "color": INK}
    return {
        "name": name,
        "name_font": {"name": FONT, "size": 9, "bold": False, "color": INK},
        "num_font": font,
        "num_format": number_format,
        "line": {"color": RULE},
        "major_gridlines": {"visible": False},
        **more,
    }


def value_axis(name: str, number_format: str = "#,##0", **more: Any) -> dict[str, Any]:
    """Chart axis of values, with light grid lines."""
    lines = {"visible": True, "line": {"color": MIST, "width": 0.75}}
    return axis(name, number_format, **{"major_gridlines": lines, **more})


def style_chart(chart: Any, title: str, legend: str = "bottom") -> Any:
    """Give a chart its title and legend."""
    chart.set_title({"name": title, "name_font": {"name": FONT, "size": 11, "color": SLATE}, "overlay": False})
    chart.set_legend({"position": legend, "font": {"name": FONT, "size": 9, "color": INK}})
    chart.set_chartarea({"border": {"color": RULE}})
    return chart


def column_pixels(width: float) -> int:
    """Pixels of a column so many digits wide."""
    return int(width * 7 + 5)


def total_width(widths: Sequence[float]) -> float:
    """Width of several columns together, in digits."""
    return sum(widths) + 0.7 * (len(widths) - 1)
