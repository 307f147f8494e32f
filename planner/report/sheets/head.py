"""The sheet 'Head': what the total dynamic head is made of, the duty point, the months and the curves."""

from __future__ import annotations

from typing import Any

import numpy as np

from planner.report.sheets.page import Page, reference
from planner.report.style import INK, LINES, MARKERS, MONTHS, axis, style_chart, value_axis
from planner.scenario.scenario import Scenario
from planner.study.compare import OptionResult, Study
from planner.water.duty import Duty, duty_at_speeds, duty_point
from planner.water.friction import velocity_m_s
from planner.water.head import SystemHead, system_head

LAST, CHART_AT, CHART_ROWS = 6, 8, 24
SPEEDS_PERCENT = (40.0, 60.0, 80.0, 100.0)
_SMALL_M = 0.005
"""A part of the head that is left out when it is less than what is shown of a metre."""


def write_head(page: Page, book: Any, study: Study) -> None:
    """Fill the sheet 'Head', with the waterworks of the first-ranked option.

    Parameters
    ----------
    page : Page
        The sheet.
    book
        XlsxWriter's workbook, for the chart.
    study : Study
        The finished comparison.
    """
    option = study.ranked[0]
    own, duty = option.scenario, option.duty
    system = system_head(own.borehole, own.pipeline)
    page.title(
        "Total dynamic head and duty point",
        f"Waterworks of {option.name}; heads in metres of water. The duty point is where the pump at full speed meets "
        "the system, or where safe yield, power limit or intake level hold it.",
    )
    page.fix_width(0, 40)
    for column in range(1, LAST + 1):
        page.fix_width(column, 18)
    page.fix_width(LAST + 1, 2)
    for column in range(CHART_AT, CHART_AT + 8):
        page.fix_width(column, 9)
    top = page.row + 1
    _build_up(page, system, duty, own)
    _duty(page, duty)
    _segments(page, system, duty)
    _months(page, own)
    _differing(page, study, duty)
    _curves(page, book, own, duty, top)


def _build_up(page: Page, system: SystemHead, duty: Duty, own: Scenario) -> None:
    page.heading("Build-up at the duty point", LAST)
    page.header(["Part", "Head (m)", "Share (%)"])
    first = page.row
    rise = own.pipeline.rise_to_tank_inlet_m
    pipes, fittings = (float(part.sum()) for part in system.segment_friction_m(duty.flow_m3h))
    parts = [
        ("Depth of the water at rest, mean of the months", duty.static_head_m - rise),
        ("Rise from the ground to the tank's inlet", rise),
        ("Drawdown", duty.drawdown_m),
        ("Friction in the pipes", pipes),
        ("Losses in fittings", fittings),
        ("Residual head at the inlet", duty.residual_head_m),
    ]
    other = duty.total_head_m - sum(value for _, value in parts)
    if abs(other) > _SMALL_M:
        parts.append(("High point of the route, or held back by a valve", other))
    total = first + len(parts)
    whole = reference(total, 1, fixed_row=True)
    for row, (label, value) in enumerate([*parts, ("Total dynamic head", duty.total_head_m)], start=first):
        look: Any = "total" if row == total else "plain"
        formula = f"=SUM({reference(first, 1)}:{reference(total - 1, 1)})" if row == total else None
        page.put(row, 0, label, "text", look)
        page.put(row, 1, value, "two", look, formula=formula)
        page.put(row, 2, 100 * value / duty.total_head_m, "one", look, formula=f"=100*{reference(row, 1)}/{whole}")
    page.row = total + 1


def _duty(page: Page, duty: Duty) -> None:
    page.heading("Duty point, yearly mean water level", LAST)
    page.header(["Figure", "Value", "Unit"])
    for label, value, unit, kind in (
        ("Flow", duty.flow_m3h, "m3/h", "two"),
        ("Total dynamic head", duty.total_head_m, "m", "one"),
        ("Pump's head at no flow, rated speed", duty.shut_off_head_m, "m", "one"),
        ("Speed", duty.speed_percent, "% of rated", "one"),
        ("Power of the water lifted", duty.hydraulic_power_w, "W", "whole"),
        ("Input of the motor", duty.input_power_w, "W", "whole"),
        ("Efficiency, motor input to water", duty.efficiency_percent, "%", "one"),
    ):
        page.put(page.row, 0, label)
        page.put(page.row, 1, value, kind)  # type: ignore[arg-type]
        page.put(page.row, 2, unit)
        page.row += 1
    page.put(page.row, 0, "Held by")
    page.put(page.row, 1, duty.limited_by)
    page.row += 1


def _segments(page: Page, system: SystemHead, duty: Duty) -> None:
    page.heading(f"Friction at the duty point by run of pipe ({system.friction_method})", LAST)
    page.header(
        ["Run of pipe", "Length (m)", "Bore (mm)", "Velocity (m/s)", "Friction (m)", "Fittings (m)", "Loss (m/100 m)"]
    )
    pipes, fittings = system.segment_friction_m(duty.flow_m3h)
    for index, pipe in enumerate(system.pipes):
        length = float(system.length_m[index])
        row = page.row
        same = "" if pipe.name == system.segment_names[index] else f" ({pipe.name})"
        page.put(row, 0, f"{system.segment_names[index]}{same}", "wrap")
        page.put(row, 1, length, "one")
        page.put(row, 2, 1000 * pipe.inner_diameter_m, "one")
        page.put(row, 3, float(velocity_m_s(duty.flow_m3h / 3600, pipe.inner_diameter_m)), "two")
        page.put(row, 4, float(pipes[index]), "two")
        page.put(row, 5, float(fittings[index]), "two")
        loss = f"=100*({reference(row, 4)}+{reference(row, 5)})/{reference(row, 1)}"
        page.put(row, 6, 100 * float(pipes[index] + fittings[index]) / length, "two", formula=loss)
        page.row += 1


def _months(page: Page, own: Scenario) -> None:
    page.heading("Duty point by month", LAST)
    page.header(
        ["Month", "Water at rest (m)", "Static lift (m)", "Flow (m3/h)", "Total head (m)", "Motor input (W)", "Held by"]
    )
    levels = own.borehole.static_level_by_month_m or [own.borehole.static_level_m] * 12
    # Months with the same level share one working-out.
    duties = {
        level: duty_point(own.borehole, own.pipeline, own.pump, own.controller.power_limit_w, month=month)
        for month, level in reversed(list(enumerate(levels)))
    }
    for month, level in zip(MONTHS, levels, strict=True):
        duty = duties[level]
        page.put(page.row, 0, month)
        page.put(page.row, 1, level, "two")
        page.put(page.row, 2, duty.static_head_m, "two")
        page.put(page.row, 3, duty.flow_m3h, "two")
        page.put(page.row, 4, duty.total_head_m, "one")
        page.put(page.row, 5, duty.input_power_w, "whole")
        page.put(page.row, 6, duty.limited_by)
        page.row += 1


def _differing(page: Page, study: Study, duty: Duty) -> None:
    """Show the other options' duty points where their pump or pipes differ."""
    others: list[OptionResult] = [option for option in study.ranked if option.duty != duty]
    if not others:
        return
    page.heading("Options with another pump, pipeline or limit", LAST)
    page.header(
        [
            "Supply option",
            "Flow (m3/h)",
            "Total head (m)",
            "Static lift (m)",
            "Friction (m)",
            "Motor input (W)",
            "Held by",
        ]
    )
    for option in others:
        page.put(page.row, 0, option.name)
        page.put(page.row, 1, option.duty.flow_m3h, "two")
        page.put(page.row, 2, option.duty.total_head_m, "one")
        page.put(page.row, 3, option.duty.static_head_m, "two")
        page.put(page.row, 4, option.duty.friction_m, "two")
        page.put(page.row, 5, option.duty.input_power_w, "whole")
        page.put(page.row, 6, option.duty.limited_by)
        page.row += 1


def _curves(page: Page, book: Any, own: Scenario, duty: Duty, top: int) -> None:
    """Place the chart beside the tables, and the points of its curves below it."""
    speeds = sorted({*SPEEDS_PERCENT, round(duty.speed_percent)} if duty.speed_percent < 99 else SPEEDS_PERCENT)
    curves = duty_at_speeds(own.borehole, own.pipeline, own.pump, speeds, points=31)
    # The system curve is shown no further up than the pump reaches, so that the chart keeps its scale.
    top_m = 1.15 * float(np.nanmax(curves.pump_head_m))
    system_m = np.where(curves.system_head_m <= top_m, curves.system_head_m, np.nan)
    left = page.row
    page.row = top + CHART_ROWS + 1
    page.header(["Flow (m3/h)", "System (m)", *(f"{speed:g} % (m)" for speed in speeds)], CHART_AT)
    first = page.row
    for index, flow in enumerate(curves.flow_m3h):
        page.put(page.row, CHART_AT, float(flow), "two")
        for column, head in enumerate((system_m[index], *curves.pump_head_m[:, index]), start=CHART_AT + 1):
            page.put(page.row, column, float(head) if np.isfinite(head) else None, "one")
        page.row += 1
    last, point = page.row - 1, page.row
    page.put(point, CHART_AT, duty.flow_m3h, "two", "total")
    page.put(point, CHART_AT + 1, duty.total_head_m, "one", "total")
    page.put(point, CHART_AT + 2, "Duty point", "text", "total")
    page.row = max(left, point + 1)
    chart = book.add_chart({"type": "scatter", "subtype": "straight_with_markers"})
    flows = page.range_of(first, CHART_AT, last, CHART_AT)
    for place in range(1 + len(speeds)):
        column = CHART_AT + 1 + place
        line = {"color": INK, "width": 2.75} if place == 0 else LINES[(place - 1) % len(LINES)]
        chart.add_series(
            {
                "name": "System" if place == 0 else f"Pump at {speeds[place - 1]:g} % speed",
                "categories": flows,
                "values": page.range_of(first, column, last, column),
                "line": line,
                "marker": {"type": "none"},
            }
        )
    chart.add_series(
        {
            "name": "Duty point",
            "categories": page.range_of(point, CHART_AT, point, CHART_AT),
            "values": page.range_of(point, CHART_AT + 1, point, CHART_AT + 1),
            "line": {"none": True},
            "marker": {"type": MARKERS[2], "size": 10, "fill": {"color": "#B5651D"}, "border": {"color": INK}},
        }
    )
    chart.set_x_axis(axis("Flow (m3/h)", "0.0", min=0))
    chart.set_y_axis(value_axis("Head (m)", "0", min=0))
    chart.show_blanks_as("gap")
    page.chart(style_chart(chart, "Pump and system"), top, CHART_AT, CHART_AT + 7, CHART_ROWS)
