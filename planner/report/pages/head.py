"""The page 'Head': what the total dynamic head is made of, the duty point, the months and the curves."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np

from planner.money.formula import Formula
from planner.money.functions import total
from planner.report.document import At, Axis, Block, Cell, Chart, Column, Kind, Page, Row, Series, Span, Table
from planner.report.pages.by_time import MONTHS
from planner.scenario.scenario import Scenario
from planner.study.compare import Study
from planner.text import model_words, text
from planner.water.duty import Duty, duty_at_speeds, duty_points
from planner.water.friction import velocity_m_s
from planner.water.head import SystemHead, system_head

PARTS, RUNS, CURVES, DUTY, TOTAL = "head.parts", "head.runs", "head.curves", "head.duty", "total"
WIDTHS = (36.0, *[14.5] * 6)
CHART_ROWS = 24
SPEEDS_PERCENT = (40.0, 60.0, 80.0, 100.0)
_SMALL_M = 0.005
"""A part of the head that is left out when it is less than what is shown of a metre."""


def head_page(study: Study) -> Page:
    """Build the page 'Head', with the waterworks of the first-ranked option."""
    option = study.ranked[0]
    own, duty = option.scenario, option.duty
    system = system_head(own.borehole, own.pipeline)
    curves, chart = _curves(own, duty)
    differing = _differing(study, duty)
    blocks: tuple[Block, ...] = (
        _build_up(system, duty, own),
        _duty(duty),
        _runs(system, duty),
        *([differing] if differing.rows else []),
        _months(own),
        chart,
        curves,
    )
    under = text("head.under", option=option.name)
    return Page("head", text("page.head"), text("head.title"), under, blocks, WIDTHS, one_page=True, upright=True,
                printed=len(blocks) - 1)  # fmt: skip


def _columns(*keys: str) -> tuple[Column, ...]:
    return tuple(Column(key, text(f"head.{key}")) for key in keys)


def _build_up(system: SystemHead, duty: Duty, own: Scenario) -> Table:
    rise = own.pipeline.rise_to_tank_inlet_m
    pipes, fittings = (float(part.sum()) for part in system.segment_friction_m(duty.flow_m3h))
    parts = {
        "static_level": duty.static_head_m - rise,
        "rise": rise,
        "drawdown": duty.drawdown_m,
        "pipe_friction": pipes,
        "fitting_losses": fittings,
        "residual": duty.residual_head_m,
    }
    other = duty.total_head_m - sum(parts.values())
    if abs(other) > _SMALL_M:
        parts["other"] = other
    whole = Formula.leaf(At(PARTS, TOTAL, "head_m"))
    first, *_, last = parts
    rows = []
    for key, value in [*parts.items(), (TOTAL, duty.total_head_m)]:
        own_cell = Formula.leaf(At(PARTS, key, "head_m"))
        added = total(Formula.leaf(Span(PARTS, first, "head_m", last))) if key == TOTAL else value
        cells = {
            "part": Cell(text(f"head.{key}")),
            "head_m": Cell.worked_out(value, "two", added),
            "share": Cell.worked_out(100 * value / duty.total_head_m, "one", 100 * own_cell / whole),
        }
        rows.append(Row(key, cells, "total" if key == TOTAL else "plain"))
    return Table(PARTS, _columns("part", "head_m", "share"), tuple(rows), heading=text("head.build_up"))


def _duty(duty: Duty) -> Table:
    figures: tuple[tuple[str, float, str, Kind], ...] = (
        ("flow", duty.flow_m3h, "m3/h", "two"),
        (TOTAL, duty.total_head_m, "m", "one"),
        ("shut_off", duty.shut_off_head_m, "m", "one"),
        ("speed", duty.speed_percent, text("head.of_rated"), "one"),
        ("hydraulic_power", duty.hydraulic_power_w, "W", "whole"),
        ("input_power", duty.input_power_w, "W", "whole"),
        ("efficiency", duty.efficiency_percent, "%", "one"),
    )
    rows = [
        Row(key, {"figure": Cell(text(f"head.{key}")), "value": Cell(value, kind), "unit": Cell(unit)})
        for key, value, unit, kind in figures
    ]
    rows.append(Row("limit", {"figure": Cell(text("head.limited_by")), "value": Cell(model_words(duty.limited_by))}))
    return Table("head.figures", _columns("figure", "value", "unit"), tuple(rows), heading=text("head.duty"))


def _runs(system: SystemHead, duty: Duty) -> Table:
    """Friction by run of pipe."""
    pipes, fittings = system.segment_friction_m(duty.flow_m3h)
    rows = []
    for index, pipe in enumerate(system.pipes):
        length, name = float(system.length_m[index]), system.segment_names[index]
        at = {key: Formula.leaf(At(RUNS, index, key)) for key in ("length", "friction", "fittings")}
        cells = {
            "run": Cell(name if pipe.name == name else f"{name} ({pipe.name})", "wrap"),
            "length": Cell(length, "one"),
            "inside_diameter": Cell(1000 * pipe.inner_diameter_m, "one"),
            "velocity": Cell(float(velocity_m_s(duty.flow_m3h / 3600, pipe.inner_diameter_m)), "two"),
            "friction": Cell(float(pipes[index]), "two"),
            "fittings": Cell(float(fittings[index]), "two"),
            "loss": Cell.worked_out(
                100 * float(pipes[index] + fittings[index]) / length,
                "two",
                100 * (at["friction"] + at["fittings"]) / at["length"],
            ),
        }
        rows.append(Row(index, cells))
    columns = _columns("run", "length", "inside_diameter", "velocity", "friction", "fittings", "loss")
    return Table(RUNS, columns, tuple(rows), heading=text("head.by_run", method=system.friction_method.title()))


def _duty_cells(duty: Duty) -> dict[str, Cell]:
    return {
        "static_lift": Cell(duty.static_head_m, "two"),
        "flow_m3h": Cell(duty.flow_m3h, "two"),
        "total_head": Cell(duty.total_head_m, "one"),
        "friction": Cell(duty.friction_m, "two"),
        "input_w": Cell(duty.input_power_w, "whole"),
        "limited_by": Cell(model_words(duty.limited_by)),
    }


def _months(own: Scenario) -> Table:
    levels = own.borehole.static_level_by_month_m or [own.borehole.static_level_m] * 12
    duties = duty_points(own.borehole, own.pipeline, own.pump, own.controller.power_limit_w, range(12))
    rows = tuple(
        Row(month, {"month": Cell(text(month)), "level": Cell(level, "two"), **_duty_cells(duty)})
        for month, level, duty in zip(MONTHS, levels, duties, strict=True)
    )
    columns = _columns("month", "level", "static_lift", "flow_m3h", "total_head", "input_w", "limited_by")
    return Table("head.months", columns, rows, heading=text("head.by_month"))


def _differing(study: Study, duty: Duty) -> Table:
    """The other options' duty points where their pump or pipes differ."""
    rows = tuple(
        Row(option.name, {"option": Cell(option.name), **_duty_cells(option.duty)})
        for option in study.ranked
        if option.duty != duty
    )
    columns = _columns("option", "flow_m3h", "total_head", "static_lift", "friction", "input_w", "limited_by")
    return Table("head.options", columns, rows, heading=text("head.differing"))


def _curves(own: Scenario, duty: Duty) -> tuple[Table, Chart]:
    """The points of the curves, and the chart of them."""
    speeds = sorted({*SPEEDS_PERCENT, round(duty.speed_percent)} if duty.speed_percent < 99 else SPEEDS_PERCENT)
    curves = duty_at_speeds(own.borehole, own.pipeline, own.pump, speeds, points=31)
    # The system curve is shown no further up than the pump reaches, so that the chart keeps its scale.
    top_m = 1.15 * float(np.nanmax(curves.pump_head_m))
    heads = {"system": np.where(curves.system_head_m <= top_m, curves.system_head_m, np.nan)}
    heads |= {f"speed_{speed:g}": curves.pump_head_m[place] for place, speed in enumerate(speeds)}
    rows = []
    for place, flow in enumerate(curves.flow_m3h):
        reached = {key: _head(values[place]) for key, values in heads.items()}
        rows.append(Row(place, {"flow_m3h": Cell(float(flow), "two"), **reached}))
    point = {"flow_m3h": Cell(duty.flow_m3h, "two"), "system": Cell(duty.total_head_m, "one")}
    rows.append(Row(DUTY, point, "total"))
    columns = (
        *_columns("flow_m3h", "system"),
        *(Column(f"speed_{speed:g}", text("head.at_speed", speed=f"{speed:g}")) for speed in speeds),
    )
    table = Table(CURVES, columns, tuple(rows), heading=text("head.curves"))
    return table, _chart(speeds, len(curves.flow_m3h) - 1)


def _head(value: Any) -> Cell:
    return Cell(float(value) if np.isfinite(value) else None, "one")


def _chart(speeds: Sequence[float], last: int) -> Chart:
    flows = Span(CURVES, 0, "flow_m3h", last)

    def series(name: str, key: str, style: str) -> Series:
        return Series(name, flows, Span(CURVES, 0, key, last), style)

    return Chart(
        "head.chart",
        "lines",
        text("head.chart"),
        text("head.chart_alt"),
        (
            series(text("head.system_curve"), "system", "system"),
            *(
                series(text("head.pump_curve", speed=f"{speed:g}"), f"speed_{speed:g}", f"plain line {place}")
                for place, speed in enumerate(speeds)
            ),
            Series(text("head.duty_point"), Span(CURVES, DUTY, "flow_m3h"), Span(CURVES, DUTY, "system"), "duty point"),
        ),
        Axis(text("head.flow_m3h"), "one", 0),
        Axis(text("head.head_m"), low=0),
        rows=CHART_ROWS,
    )
