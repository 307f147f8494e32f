"""Charts of a report as XlsxWriter's charts."""

from __future__ import annotations

from typing import Any

from planner.report.document import Axis, Chart, Series
from planner.report.style import NUMBER_FORMATS, axis, series_style, style_chart, value_axis
from planner.report.workbook.layout import Addresses
from planner.text import option_label

_TYPES: dict[str, dict[str, str]] = {
    "stacked bars": {"type": "bar", "subtype": "stacked"},
    "columns": {"type": "column"},
    "stacked columns": {"type": "column", "subtype": "stacked"},
    "lines": {"type": "scatter", "subtype": "straight_with_markers"},
    "points": {"type": "scatter"},
}
_BAR_GAP = 45


def book_chart(book: Any, chart: Chart, addresses: Addresses) -> Any:
    """Make a chart; what its series show stays linked to the cells."""
    made = book.add_chart(_TYPES[chart.kind])
    for series in chart.series:
        made.add_series(_series(chart, series, addresses))
    places, values = _axis(chart.x, values=False), _axis(chart.y, values=True)
    if chart.kind == "stacked bars":
        # A lying chart has its places on the vertical axis; the first at the top, their names left of the bars.
        made.set_y_axis({**places, "reverse": True, "label_position": "low", "crossing": "max"})
        made.set_x_axis(values)
    else:
        made.set_x_axis({**places, "label_position": "low"})
        made.set_y_axis(values)
    made.show_blanks_as("gap")
    beside = "right" if chart.kind == "stacked bars" else "bottom"
    return style_chart(made, chart.title, beside if len(chart.series) > 1 else "none")


def _series(chart: Chart, series: Series, addresses: Addresses) -> dict[str, Any]:
    options = {
        "name": option_label(series.name),
        "categories": list(addresses.corners(series.x)),
        "values": list(addresses.corners(series.y)),
        **series_style(series.style, chart.kind),
    }
    if series.points:
        options["points"] = [series_style(point, chart.kind) for point in series.points]
    if chart.kind == "stacked bars":
        options["gap"] = _BAR_GAP
    return options


def _axis(given: Axis, *, values: bool) -> dict[str, Any]:
    ends = {name: end for name, end in (("min", given.low), ("max", given.high)) if end is not None}
    make = value_axis if values else axis
    return make(given.name, NUMBER_FORMATS.get(given.kind, "General"), **ends)
