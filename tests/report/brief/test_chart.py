"""Drawn charts: as long as the values, within their frame, told apart in grey, with gaps where nothing is known."""

from __future__ import annotations

import itertools
import math
import re

import pytest

from planner.report.brief.axes import scale_of, width_of
from planner.report.brief.chart import chart_html
from planner.report.brief.drawing import LETTERS, WIDTH
from planner.report.document import (
    Axis,
    Cell,
    Chart,
    ChartKind,
    Column,
    Kind,
    Page,
    Report,
    Row,
    Series,
    Span,
    Table,
    Value,
)
from planner.report.style import COST_FILLS, LINES, SOURCE_FILLS, series_style
from tests.report.brief.reading import Element, read

NAMES = ("first", "second <b>&", "third of a long name, such as one that a scenario has given to a source of its own")


def drawn(
    kind: ChartKind,
    columns: dict[str, list[float | None]],
    *,
    places: list[Value] | None = None,
    styles: tuple[str, ...] = ("cost construction", "cost grid", "cost fuel"),
    x: Axis | None = None,
    y: Axis | None = None,
) -> Element:
    """Draw columns of numbers over places."""
    places = list(NAMES) if places is None else places
    rows = tuple(
        Row(place, {"x": Cell(name)} | {key: Cell(values[place]) for key, values in columns.items()})
        for place, name in enumerate(places)
    )
    table = Table("any", (Column("x", ""), *(Column(key, key) for key in columns)), rows)
    last = len(places) - 1
    series = tuple(
        Series(key, Span("any", 0, "x", last), Span("any", 0, key, last), style)
        for key, style in zip(columns, styles, strict=False)
    )
    chart = Chart(
        "any.chart", kind, "A title", "What it shows", series, x or Axis("places", "text"), y or Axis("money (USD)")
    )
    report = Report("any", (Page("any", "", "", blocks=(table, chart)),))
    return read(chart_html(chart, report.values)).one("figure")


def boxes(figure: Element, style: str) -> list[tuple[float, float, float, float]]:
    """Left, top, width and height of the boxes of a style; hatched ones are found by the hatch that the key shows."""
    look = series_style(style, "columns")
    svg = figure.all("svg")[0]
    fill = look["fill"]["color"] if "fill" in look else None
    if fill is None:
        colour = look["pattern"]["fg_color"]
        (name,) = (
            pattern.attributes["id"]
            for pattern in svg.all("pattern")
            if any(path.attributes.get("stroke") == colour for path in pattern.all("path"))
        )
        fill = f"url(#{name})"
    found = []
    for path in svg.all("path"):
        steps = re.fullmatch(r"M([-\d.]+),([-\d.]+) h([\d.]+) v([\d.]+) h-[\d.]+ z", path.attributes["d"])
        if steps and path.attributes.get("fill") == fill:
            found.append(tuple(float(number) for number in steps.groups()))
    return [(found_one[0], found_one[1], found_one[2], found_one[3]) for found_one in found]


def test_lying_bars_are_as_long_as_their_values_and_stand_end_to_end() -> None:
    figure = drawn("stacked bars", {"a": [100.0, 50.0, 0.0], "b": [40.0, 80.0, 20.0], "c": [-30.0, 0.0, -10.0]})
    first, second, third = (boxes(figure, style) for style in ("cost construction", "cost grid", "cost fuel"))
    unit = first[0][2] / 100
    assert [width for _, _, width, _ in first] == pytest.approx([100 * unit, 50 * unit], abs=0.02)
    assert [width for _, _, width, _ in second] == pytest.approx([40 * unit, 80 * unit, 20 * unit], abs=0.02)
    assert second[0][0] == pytest.approx(first[0][0] + first[0][2], abs=0.1)
    below = third[0]
    assert below[0] + below[2] == pytest.approx(first[0][0], abs=0.1)  # what is below nil lies on its other side
    assert second[2][0] == pytest.approx(first[0][0], abs=0.1)  # nothing comes before it
    assert first[0][1] < second[1][1] < second[2][1]


def test_standing_columns_lie_on_one_another_or_side_by_side() -> None:
    values: dict[str, list[float | None]] = {"a": [4.0, 2.0, None], "b": [1.0, 6.0, math.nan]}
    on_one_another = drawn("stacked columns", values)
    low, high = boxes(on_one_another, "cost construction"), boxes(on_one_another, "cost grid")
    unit = low[0][3] / 4
    assert [height for *_, height in high] == pytest.approx([unit, 6 * unit], abs=0.02)
    assert high[0][1] + high[0][3] == pytest.approx(low[0][1], abs=0.1)
    assert [box[0] for box in high] == [box[0] for box in low]
    side_by_side = drawn("columns", values)
    low, high = boxes(side_by_side, "cost construction"), boxes(side_by_side, "cost grid")
    assert len(low) == len(high) == 2  # nothing is drawn where there is no value
    assert high[0][0] == pytest.approx(low[0][0] + low[0][2], abs=0.1)
    assert high[0][1] + high[0][3] == pytest.approx(low[0][1] + low[0][3], abs=0.1)


def test_lines_break_where_there_is_no_value() -> None:
    places: list[Value] = [0.0, 1.0, 2.0, 3.0, 4.0, 5.0]
    figure = drawn(
        "lines",
        {"a": [0.0, 10.0, None, 5.0, math.nan, 5.0]},
        places=places,
        styles=("plain line 0",),
        x=Axis("year", "year", 0, 5),
    )
    lines = [line.attributes["points"].split() for line in figure.all("polyline")]
    assert [len(line) for line in lines] == [2, 1, 1]
    (x0, y0), (x1, y1), (x3, y3) = (map(float, point.split(",")) for point in (*lines[0], lines[1][0]))
    assert x3 - x0 == pytest.approx(3 * (x1 - x0), abs=0.2)
    assert y0 - y3 == pytest.approx((y0 - y1) / 2, abs=0.2)  # upwards is less


@pytest.mark.parametrize("kind", ["stacked bars", "columns", "stacked columns", "lines", "points"])
@pytest.mark.parametrize("size", [0.0, 0.004, 1.0, 987_654_321.0, -55.0])
def test_nothing_leaves_the_drawing(kind: ChartKind, size: float) -> None:
    numbers = kind in ("lines", "points")
    figure = drawn(
        kind,
        {"a": [size, 0.5 * size, 0.1 * size], "b": [0.0, 0.3 * size, size]},
        places=[0.0, 3.5, 7.0] if numbers else None,
        styles=("line 0", "line 1") if numbers else ("cost construction", "cost grid"),
        x=Axis(
            "a name of an axis that is too long for one line of a drawing so narrow", "whole" if numbers else "text"
        ),
    )
    svg = figure.all("svg")[0]
    height = float(svg.attributes["viewbox"].split()[3])
    assert svg.all("text")
    for words in svg.all("text"):
        x, y = float(words.attributes["x"]), float(words.attributes["y"])
        half = {"start": 0.0, "middle": 0.5, "end": 1.0}[words.attributes.get("text-anchor", "start")]
        left = x - half * width_of(words.text, LETTERS)
        assert left >= -0.5
        assert left + width_of(words.text, LETTERS) <= WIDTH + 0.5, words.text
        assert 0 < y <= height
    for path in svg.all("path"):
        if "stroke" in path.attributes and path.parent is svg:
            x, y = map(float, re.match(r"M([-\d.]+),([-\d.]+)", path.attributes["d"]).groups())  # type: ignore[union-attr]
            assert -0.5 <= x <= WIDTH + 0.5
            assert -0.5 <= y <= height + 0.5


def test_names_are_escaped_and_the_key_names_every_series() -> None:
    figure = drawn("stacked bars", {"a <i>": [1.0, 2.0, 3.0], "b & c": [1.0, 1.0, 1.0]})
    assert [item.text for item in figure.all("li")] == ["a <i>", "b & c"]
    shown = " ".join(words.text for words in figure.all("text"))
    assert all(name in shown for name in NAMES)


def grey(colour: str) -> float:
    """Lightness of a colour, from 0 to 1 (the weights of ITU-R BT.709)."""
    red, green, blue = (int(colour[place : place + 2], 16) / 255 for place in (1, 3, 5))
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


@pytest.mark.parametrize("fills", [COST_FILLS, SOURCE_FILLS], ids=["costs", "sources"])
def test_areas_can_be_told_apart_in_grey(fills: dict[str, dict[str, dict[str, str]]]) -> None:
    hatches = {name: fill["pattern"]["pattern"] if "pattern" in fill else "" for name, fill in fills.items()}
    lightness = {name: grey(fill["fill"]["color"]) if "fill" in fill else 0.0 for name, fill in fills.items()}
    for one, other in itertools.combinations(fills, 2):
        assert hatches[one] != hatches[other] or abs(lightness[one] - lightness[other]) > 0.08, (one, other)


def test_every_hatch_of_a_look_is_drawn_and_each_in_a_way_of_its_own() -> None:
    hatched = {name: fill["pattern"]["pattern"] for name, fill in COST_FILLS.items() if "pattern" in fill}
    tiles = {}
    for name, hatch in hatched.items():
        pattern = drawn("columns", {"a": [1.0, 2.0, 3.0]}, styles=(f"cost {name}",)).all("pattern")[0]
        tiles[hatch] = pattern.all("path")[-1].attributes["d"]
    assert len(tiles) >= 2
    assert len(set(tiles.values())) == len(tiles)


def test_lines_differ_by_their_dashes() -> None:
    dashes = []
    for number in range(len(LINES)):
        places: list[Value] = [0.0, 1.0]
        figure = drawn("lines", {"a": [0.0, 1.0]}, places=places, styles=(f"plain line {number}",))
        look = figure.all("polyline")[0].attributes
        dashes.append((look.get("stroke-dasharray"), look["stroke-width"]))
    assert len(set(dashes)) == len(LINES)


@pytest.mark.parametrize(
    ("values", "kind", "labels"),
    [
        ([0, 12.3], "whole", ["0.0", "2.5", "5.0", "7.5", "10.0", "12.5"]),
        ([0, 100_000], "money", ["0", "20,000", "40,000", "60,000", "80,000", "100,000"]),
        ([0, 0.3], "whole", ["0.0", "0.1", "0.2", "0.3"]),
        ([-40, 90], "whole", ["-50", "0", "50", "100"]),
        ([], "whole", ["0.0", "0.2", "0.4", "0.6", "0.8", "1.0"]),
        ([2020, 2021], "year", ["0", "500", "1000", "1500", "2000", "2500"]),
    ],
)
def test_ticks_are_round_and_written_with_as_few_decimals_as_tell_them_apart(
    values: list[float], kind: Kind, labels: list[str]
) -> None:
    scale = scale_of(Axis(kind=kind), values)
    assert [scale.label(tick) for tick in scale.ticks] == labels
    assert len(set(labels)) == len(labels)


def test_ends_that_are_given_are_kept() -> None:
    scale = scale_of(Axis(low=0, high=14), [3.0], 7)
    assert (scale.low, scale.high, scale.ticks[0], scale.ticks[-1]) == (0, 14, 0, 14)
    assert (scale.between(10, 24)(0), scale.between(10, 24)(7)) == (10, 17)
