"""Parts of a drawing in SVG: words, lines, boxes, and the frame in which a chart stands."""

from __future__ import annotations

from collections.abc import Sequence

from planner.report.brief.axes import Scale, every, scale_of, width_of
from planner.report.brief.escaping import safe
from planner.report.document import Axis
from planner.report.style import MIST, RULE

WIDTH = 240
"""Width of a drawing, in units of which the letters take `LETTERS`: three stand side by side on a sheet of paper, in
letters of 8 points, and one fills a phone."""
LETTERS = 11
LINE = 12.5
PLOT_HEIGHT = 92
EDGE = 4.0


def upright(axis: Axis, ends: Sequence[float]) -> tuple[float, float, Scale]:
    """Top and bottom of the plot, below the name of its axis of values, and the scale between them."""
    top = LINE * len(wrapped(axis.name, WIDTH)) + 6.0
    bottom = top + PLOT_HEIGHT
    return top, bottom, scale_of(axis, ends).between(bottom, top)


def grid(axis: Axis, scale: Scale, top: float, bottom: float) -> tuple[float, list[str]]:
    """Place of the left end of the plot, and the axis of values with its grid."""
    labels = [scale.label(tick) for tick in scale.ticks]
    left = max((width_of(label, LETTERS) for label in labels), default=0.0) + EDGE
    parts = [text_at(0, LINE * (place + 1) - 3, words) for place, words in enumerate(wrapped(axis.name, WIDTH))]
    for tick, label in zip(scale.ticks, labels, strict=True):
        parts.append(stroke(left, scale(tick), WIDTH - EDGE, scale(tick), MIST))
        parts.append(text_at(left - EDGE / 2, scale(tick) + LETTERS / 3, label, "end"))
    parts.append(stroke(left, top, left, bottom, RULE))
    return left, parts


def with_places(
    parts: list[str], axis: Axis, marked: Sequence[tuple[float, str]], left: float, bottom: float
) -> tuple[str, float]:
    """Add the axis of places below an upright plot."""
    middle = (left + WIDTH) / 2
    below = bottom + LINE
    parts += [text_at(place, below, label, "middle") for place, label in marked]
    for words in wrapped(axis.name, WIDTH - left):
        below += LINE
        parts.append(text_at(middle, below, words, "middle"))
    return "".join(parts), below + 4


def with_bottom(parts: list[str], axis: Axis, scale: Scale, bottom: float) -> tuple[str, float]:
    """Add the axis of values below lying bars; the outermost numbers do not leave the drawing."""
    below = bottom + LINE
    for tick in scale.ticks:
        label = scale.label(tick)
        half = width_of(label, LETTERS) / 2
        place = min(max(scale(tick), half), WIDTH - half)
        parts.append(text_at(place, below, label, "middle"))
    for words in wrapped(axis.name, WIDTH):
        below += LINE
        parts.append(text_at(WIDTH / 2, below, words, "middle"))
    return "".join(parts), below + 4


def scale_along(axis: Axis, ends: Sequence[float], most: int = 5) -> Scale:
    """The scale with the most ticks, up to so many, whose numbers do not touch along the width."""
    for count in range(most, 1, -1):
        scale = scale_of(axis, ends, count, round_ends=False)
        if every([scale.label(tick) for tick in scale.ticks], LETTERS, WIDTH / max(len(scale.ticks), 1)) == 1:
            return scale
    return scale_of(axis, ends, 1, round_ends=False)


def wrapped(words: str, room: float) -> list[str]:
    """Break words into lines that fit a width."""
    lines: list[str] = []
    for word in words.split():
        longer = f"{lines[-1]} {word}" if lines else word
        if lines and width_of(longer, LETTERS) <= room:
            lines[-1] = longer
        else:
            lines.append(word)
    return lines


def text_at(x: float, y: float, words: str, anchor: str = "start") -> str:
    """Words on one line, that begin, stand in the middle or end at a place."""
    placed = "" if anchor == "start" else f' text-anchor="{anchor}"'
    return f'<text x="{x:.1f}" y="{y:.1f}"{placed}>{safe(words)}</text>'


def stroke(x: float, y: float, to_x: float, to_y: float, colour: str) -> str:
    """A thin line."""
    return f'<path d="M{x:.1f},{y:.1f} L{to_x:.1f},{to_y:.1f}" stroke="{colour}"/>'


def box(x: float, y: float, width: float, height: float, look: str) -> str:
    """A box by its upper left corner."""
    return f'<path d="M{x:.1f},{y:.1f} h{width:.2f} v{height:.2f} h-{width:.2f} z" {look}/>'
