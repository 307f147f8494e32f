"""Draw a chart as SVG: title, drawing and key of its series, readable in grey and by those who cannot see it."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from itertools import groupby

from planner.report.brief.axes import Scale, every
from planner.report.brief.drawing import (
    EDGE,
    LETTERS,
    WIDTH,
    box,
    grid,
    scale_along,
    stroke,
    text_at,
    upright,
    with_bottom,
    with_places,
    wrapped,
)
from planner.report.brief.escaping import safe
from planner.report.brief.marks import Marks
from planner.report.document import Cell, Chart, Series, Span, Value
from planner.report.shown import shown
from planner.report.style import INK, MIST

Values = Callable[[Span], Sequence[Value]]
"""Gives the values of a run of cells, as `Report.values` does."""

BAR, BAR_GAP = 7.0, 2.0
COLUMN_SHARE = 0.72
"""Part of a place's room that its columns take."""


def chart_html(chart: Chart, values: Values) -> str:
    """Draw a chart.

    Parameters
    ----------
    chart : Chart
        What it shows.
    values : callable
        Gives the values of its cells.

    Returns
    -------
    str
        A `figure` of HTML.
    """
    marks, name = Marks(_name(chart.key), chart.kind), _name(chart.key)
    if chart.kind == "stacked bars":
        body, height = _bars(chart, values, marks)
    elif chart.kind in ("columns", "stacked columns"):
        body, height = _columns(chart, values, marks)
    else:
        body, height = _lines(chart, values, marks)
    return (
        f'<figure class="chart"><figcaption>{safe(chart.title)}</figcaption>'
        f'<svg viewBox="0 0 {WIDTH} {height:.0f}" role="img" aria-labelledby="{name}-t {name}-d">'
        f'<title id="{name}-t">{safe(chart.title)}</title><desc id="{name}-d">{safe(chart.alt_text)}</desc>'
        f"{marks.definitions()}{body}</svg>{_key(chart, marks)}</figure>"
    )


def _name(key: str) -> str:
    return "".join(letter if letter.isalnum() else "-" for letter in key)


def _key(chart: Chart, marks: Marks) -> str:
    """Key of the series, where there are several."""
    if len(chart.series) < 2:
        return ""
    of_lines = chart.kind in ("lines", "points")
    items = []
    for series in chart.series:
        if of_lines:
            drawn = f'<path d="M1,6 H21" {marks.line(series.style)}/>{marks.marker(series.style, 11, 6)}'
        else:
            drawn = f'<path d="M3,1 h16 v10 h-16 z" {marks.fill(series.style)}/>'
        swatch = f'<svg class="swatch" viewBox="0 0 22 12" aria-hidden="true">{drawn}</svg>'
        items.append(f"<li>{swatch}{safe(series.name)}</li>")
    return f'<ul class="key">{"".join(items)}</ul>'


def _bars(chart: Chart, values: Values, marks: Marks) -> tuple[str, float]:
    """Draw lying bars, each with its name above it, the values of a place end to end."""
    names = [_words(value) for value in values(chart.series[0].x)]
    stacks = _stacked(chart, values)
    ends = [end for stack in stacks for pair in stack for end in pair]
    scale = scale_along(chart.y, ends).between(EDGE, WIDTH - EDGE)
    parts: list[str] = []
    top = 0.0
    for place, name in enumerate(names):
        for words in wrapped(name, WIDTH - 2 * EDGE):
            top += LETTERS
            parts.append(text_at(EDGE, top - 2, words))
        for series, stack in zip(chart.series, stacks, strict=True):
            low, high = stack[place]
            if high > low:
                parts.append(box(scale(low), top, scale(high) - scale(low), BAR, marks.fill(series.style)))
        parts.append(stroke(scale(0), top - 1, scale(0), top + BAR + 1, INK))
        top += BAR + BAR_GAP
    behind = [stroke(scale(tick), 0, scale(tick), top, MIST) for tick in scale.ticks]
    return with_bottom([*behind, *parts], chart.y, scale, top)


def _columns(chart: Chart, values: Values, marks: Marks) -> tuple[str, float]:
    """Draw standing columns, the values of a place on one another or side by side."""
    names = [_words(value) for value in values(chart.series[0].x)]
    on_one_another = chart.kind == "stacked columns"
    stacks = _stacked(chart, values) if on_one_another else [_from_nil(values(series.y)) for series in chart.series]
    ends = [end for stack in stacks for pair in stack for end in pair]
    top, bottom, scale = upright(chart.y, ends)
    left, parts = grid(chart.y, scale, top, bottom)
    places = Scale(0, max(len(names), 1), left, WIDTH - EDGE, (), "text")
    room = places(1) - places(0)
    width = room * COLUMN_SHARE / (1 if on_one_another else len(chart.series))
    for order, (series, stack) in enumerate(zip(chart.series, stacks, strict=True)):
        shift = room * (1 - COLUMN_SHARE) / 2 + (0 if on_one_another else order * width)
        for place, (low, high) in enumerate(stack):
            if high > low:
                look = marks.fill(series.style)
                parts.append(box(places(place) + shift, scale(high), width, scale(low) - scale(high), look))
    parts.append(stroke(left, scale(0), WIDTH - EDGE, scale(0), INK))
    step = every(names, LETTERS, room)
    marked = [(places(place + 0.5), name) for place, name in enumerate(names) if place % step == 0]
    return with_places(parts, chart.x, marked, left, bottom)


def _lines(chart: Chart, values: Values, marks: Marks) -> tuple[str, float]:
    """Draw lines or points over numbers."""
    points = [_points(series, values) for series in chart.series]
    known = [point for each in points for point in each if point is not None]
    top, bottom, scale = upright(chart.y, [y for _, y in known])
    left, parts = grid(chart.y, scale, top, bottom)
    across = scale_along(chart.x, [x for x, _ in known], most=7).between(left, WIDTH - 2 * EDGE)
    parts.append(stroke(left, bottom, WIDTH - 2 * EDGE, bottom, INK))
    for series, own in zip(chart.series, points, strict=True):
        if chart.kind == "lines":
            for there, run in groupby(own, lambda point: point is not None):
                if there:
                    path = " ".join(f"{across(x):.1f},{scale(y):.1f}" for x, y in filter(None, run))
                    parts.append(f'<polyline points="{path}" {marks.line(series.style)}/>')
        styles = series.points or (series.style,) * len(own)
        parts += [
            marks.marker(style, across(point[0]), scale(point[1]))
            for style, point in zip(styles, own, strict=True)
            if point is not None
        ]
    marked = [(across(tick), across.label(tick)) for tick in across.ticks]
    return with_places(parts, chart.x, marked, left, bottom)


def _stacked(chart: Chart, values: Values) -> list[list[tuple[float, float]]]:
    """Where each value of each series begins and ends, one upon the other, those below nil apart."""
    count = len(values(chart.series[0].x))
    above, below = [0.0] * count, [0.0] * count
    stacks = []
    for series in chart.series:
        stack = []
        for place, value in enumerate(map(_number, values(series.y))):
            side = above if value >= 0 else below
            begin = side[place]
            side[place] = begin + value
            stack.append((min(begin, side[place]), max(begin, side[place])))
        stacks.append(stack)
    return stacks


def _from_nil(values: Sequence[Value]) -> list[tuple[float, float]]:
    return [(min(value, 0.0), max(value, 0.0)) for value in map(_number, values)]


def _number(value: Value) -> float:
    """The value as a number; nil where it has none."""
    number = value if isinstance(value, int | float) else 0.0
    return float(number) if math.isfinite(number) else 0.0


def _points(series: Series, values: Values) -> list[tuple[float, float] | None]:
    pairs = zip(values(series.x), values(series.y), strict=True)
    return [
        (float(x), float(y))
        if isinstance(x, int | float) and isinstance(y, int | float) and math.isfinite(x) and math.isfinite(y)
        else None
        for x, y in pairs
    ]


def _words(value: Value) -> str:
    return shown(Cell(value, "general"))
