"""The sheet 'Checks': the verdicts on the site, and the pressure along the route where its profile was given."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np

from planner.checks.verdict import SYMBOL, Verdict, worst_first
from planner.report.checks_table import figure, summary
from planner.report.sheets.page import Page
from planner.report.style import LINES, Look, axis, style_chart, value_axis
from planner.study.compare import Study
from planner.water.route import RouteProfile, route_profile

LAST = 8
CHART_ROWS = 18
_WIDTHS = (12, 14, 26, 15, 15, 20, 34, 40, 26)


def write_checks(page: Page, book: Any, study: Study, verdicts: Sequence[Verdict]) -> None:
    """Fill the sheet 'Checks'.

    Parameters
    ----------
    page : Page
        The sheet.
    book
        XlsxWriter's workbook, for the chart.
    study : Study
        The finished comparison.
    verdicts : sequence of Verdict
        What the site checks found.
    """
    for column, width in enumerate(_WIDTHS):
        page.fix_width(column, width)
    page.title("Site checks", f"{summary(verdicts)}. Local codes and licensed practice come first.")
    page.header(
        ["Verdict", "Topic", "What was compared", "Value", "Limit", "Margin", "Why it matters", "Remedy",
         "Limit from"]
    )  # fmt: skip
    page.freeze()
    for verdict in worst_first(verdicts):
        row = page.row
        look: Look = "strong" if verdict.outcome == "fail" else "plain"
        page.put(row, 0, f"{SYMBOL[verdict.outcome]} {verdict.outcome}", "text", look)
        texts = (
            verdict.topic_label,
            verdict.compared,
            figure(verdict.value, verdict.unit),
            figure(verdict.limit, verdict.unit),
            verdict.margin,
            verdict.why,
            verdict.remedy,
            verdict.source,
        )
        for column, text in enumerate(texts, start=1):
            page.put(row, column, text, "wrap", look)
        page.row += 1
    profile = route_profile(study.scenario)
    if profile is not None:
        _route(page, book, profile)


def _route(page: Page, book: Any, profile: RouteProfile) -> None:
    page.heading("Route and pressure lines", LAST)
    page.header(["Chainage (m)", "Ground (m)", "Head line at duty (m)", "At shut-off (m)", "Head the pipe bears (m)"])
    first = page.row
    columns = (
        profile.chainage_m,
        profile.ground_m,
        profile.duty_line_m,
        profile.shut_off_line_m,
        profile.allowed_line_m,
    )
    for values in zip(*columns, strict=True):
        for column, value in enumerate(values):
            page.put(page.row, column, float(value), "one", word="not known")
        page.row += 1
    last = page.row - 1
    chart = book.add_chart({"type": "scatter", "subtype": "straight"})
    names = ("Ground", "Head line at duty", "Head line at shut-off", "Head the pipe bears")
    for place, (name, line) in enumerate(zip(names, columns[1:], strict=True)):
        if np.isfinite(line).all():
            chart.add_series(
                {
                    "name": name,
                    "categories": page.range_of(first, 0, last, 0),
                    "values": page.range_of(first, place + 1, last, place + 1),
                    "line": LINES[place],
                }
            )
    chart.set_x_axis(axis("Chainage from the borehole (m)", "#,##0", min=0))
    chart.set_y_axis(value_axis("Level above the ground at the borehole (m)", "#,##0"))
    page.row += 1
    page.chart(style_chart(chart, "Route and pressure lines"), page.row, 0, LAST, CHART_ROWS)
    page.row += CHART_ROWS + 1
