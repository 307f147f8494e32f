"""Fills, hatches, lines and markers of a drawn chart: the looks of `planner.report.style` in SVG."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any

from planner.report.style import INK, series_style

TILE = 6
"""Side of the tile that a hatch repeats."""
_STROKES = {
    "upward": f"M-1,1 l2,-2 M0,{TILE} L{TILE},0 M{TILE - 1},{TILE + 1} l2,-2",
    "downward": f"M-1,{TILE - 1} l2,2 M0,0 L{TILE},{TILE} M{TILE - 1},-1 l2,2",
    "horizontal": f"M0,{TILE / 4:g} H{TILE} M0,{3 * TILE / 4:g} H{TILE}",
    "vertical": f"M{TILE / 4:g},0 V{TILE} M{3 * TILE / 4:g},0 V{TILE}",
    "grid": f"M0,{TILE / 2:g} H{TILE} M{TILE / 2:g},0 V{TILE}",
    "dotted": "M1,1.5 h1.4 M4,4.5 h1.4",
}
"""Strokes of a tile by a word in the name of a hatch; a name of several words has those of each."""
_ALIKE = {
    "cross": ("upward", "downward"),
    "trellis": ("upward", "downward"),
    "percent": ("dotted",),
    "confetti": ("dotted",),
    "check": ("dotted",),
    "brick": ("grid",),
    "weave": ("upward", "downward"),
}
_DASHES = {
    "solid": "", "round_dot": "1 2.5", "square_dot": "2 2", "dash": "5 3", "dash_dot": "5 2.5 1 2.5",
    "long_dash": "8 3", "long_dash_dot": "8 2.5 1 2.5", "long_dash_dot_dot": "8 2 1 2 1 2",
}  # fmt: skip


class Marks:
    """Looks of the series of one chart.

    Parameters
    ----------
    prefix : str
        Begins the names of its hatches, which are unique in a page.
    chart_kind : str
        Kind of the chart.
    """

    def __init__(self, prefix: str, chart_kind: str) -> None:
        self._prefix, self._kind = prefix, chart_kind
        self._hatches: dict[tuple[str, str, str], str] = {}

    def fill(self, style: str) -> str:
        """Attributes of an area, by the name of its style."""
        look = series_style(style, self._kind)
        border = look.get("border", {}).get("color", INK)
        return _attributes(fill=self._paint(look), stroke=border, stroke_width="0.5")

    def line(self, style: str) -> str:
        """Attributes of a line; none where the style has no line."""
        line = series_style(style, self._kind).get("line", {"none": True})
        if line.get("none"):
            return _attributes(fill="none", stroke="none")
        dash = _DASHES.get(line.get("dash_type", "solid"), "")
        dashed = {"stroke_dasharray": dash} if dash else {}
        width = f"{0.8 * float(line.get('width', 1.5)):.3g}"
        return _attributes(fill="none", stroke=line["color"], stroke_width=width, stroke_linejoin="round", **dashed)

    def marker(self, style: str, x: float, y: float) -> str:
        """The marker of a style at a place; '' where it has none."""
        marker = series_style(style, self._kind).get("marker", {"type": "none"})
        if marker["type"] == "none":
            return ""
        half = 0.4 * float(marker.get("size", 5))
        fill = marker.get("fill", {}).get("color", INK)
        shape = _SHAPES.get(marker["type"], _SHAPES["circle"])
        return f'<path d="{shape(x, y, half)}" fill="{fill}" stroke="{INK}" stroke-width="0.5"/>'

    def definitions(self) -> str:
        """The hatches that were asked for, to stand in the chart."""
        if not self._hatches:
            return ""
        return f"<defs>{''.join(self._hatch(*hatch) for hatch in self._hatches.items())}</defs>"

    def _paint(self, look: dict[str, Any]) -> str:
        if "pattern" not in look:
            return str(look["fill"]["color"])
        pattern = look["pattern"]
        hatch = pattern["pattern"], pattern["fg_color"], pattern.get("bg_color", "#FFFFFF")
        return f"url(#{self._hatches.setdefault(hatch, f'{self._prefix}-{len(self._hatches)}')})"

    def _hatch(self, hatch: tuple[str, str, str], name: str) -> str:
        pattern, colour, ground = hatch
        return (
            f'<pattern id="{name}" width="{TILE}" height="{TILE}" patternUnits="userSpaceOnUse">'
            f'<path d="M0,0 h{TILE} v{TILE} h-{TILE} z" fill="{ground}"/>'
            f'<path d="{" ".join(_strokes(pattern))}" stroke="{colour}" stroke-width="1.6"/></pattern>'
        )


def _attributes(**values: str) -> str:
    return " ".join(f'{name.replace("_", "-")}="{value}"' for name, value in values.items())


def _strokes(pattern: str) -> Iterator[str]:
    """Strokes of a hatch; dots alone where it has both dots and a grid, and where its name is not known."""
    words = pattern.split("_")
    named = [stroke for word in words for stroke in (_ALIKE.get(word, ()) if word in _ALIKE else (word,))]
    found = [name for name in _STROKES if name in named]
    yield from (_STROKES[name] for name in (["dotted"] if "dotted" in found or not found else found))


def _round(x: float, y: float, half: float) -> str:
    across = f"a{half:.1f},{half:.1f} 0 1,0"
    return f"M{x - half:.1f},{y:.1f} {across} {2 * half:.1f},0 {across} -{2 * half:.1f},0 z"


def _straight(*steps: str) -> Callable[[float, float, float], str]:
    """A shape of steps, in halves of its size, from its middle."""

    def shape(x: float, y: float, half: float) -> str:
        moves = (step[0] + ",".join(f"{float(part) * half:.1f}" for part in step[1:].split(",")) for step in steps)
        return f"M{x:.1f},{y:.1f} {' '.join(moves)}"

    return shape


_SHAPES: dict[str, Callable[[float, float, float], str]] = {
    "circle": _round,
    "square": _straight("m-1,-1", "l2,0", "l0,2", "l-2,0", "l0,-2"),
    "diamond": _straight("m0,-1", "l1,1", "l-1,1", "l-1,-1", "l1,-1"),
    "triangle": _straight("m0,-1", "l1,2", "l-2,0", "l1,-2"),
    "x": _straight("m-1,-1", "l2,2", "m0,-2", "l-2,2"),
    "plus": _straight("m-1,0", "l2,0", "m-1,-1", "l0,2"),
}
