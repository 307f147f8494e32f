"""Columns and cells of the catalogue's figures in tables of the studies, and what the studies call the figures."""

from __future__ import annotations

from math import nan
from typing import Any

from planner.figures import figure
from planner.report.document import Cell, Column, Look
from planner.text import text

PERCENT = 100.0
ARRAY = ("strings", "modules", "array_kwp")
LEVELS = ("start_level_percent", "stop_level_percent")
COSTS = ("capital_cost", "life_cycle_cost", "annualised_cost", "levelised_cost_per_m3")
"""Figures that the tables of designs show together."""

_MEASURES: dict[str, tuple[str, float]] = {
    "array_kwp": ("array_kw", 1.0),
    "meets_target": ("meets_service", 1.0),
    "demand_met_percent": ("delivered_share", PERCENT),
    "demand_met_worst_year_percent": ("worst_year_share", PERCENT),
    "life_cycle_cost": ("present_cost", 1.0),
    "annualised_cost": ("equivalent_yearly_cost", 1.0),
    "net_present_value": ("npv", 1.0),
    "owner_life_cycle_cost": ("owner_present_cost", 1.0),
}
"""Name in the studies, and factor to the figure's unit, of figures that the studies hold in another way."""
_FIGURES = {name: (key, factor) for key, (name, factor) in _MEASURES.items()}


def measure_of(key: str) -> tuple[str, float]:
    """Name of a figure in the studies, and the factor that brings it to the figure's unit."""
    return _MEASURES.get(key, (key, 1.0))


def figure_of(measure: str) -> tuple[str, float]:
    """Key in the catalogue of what the studies call by another name, and the factor to its unit."""
    return _FIGURES.get(measure, (measure, 1.0))


def figure_value(result: Any, key: str) -> float:
    """Value of a figure from a study's result that holds it as an attribute."""
    name, factor = measure_of(key)
    return factor * float(getattr(result, name))


def figure_heading(key: str, currency: str) -> str:
    """Label of a figure with its unit, in the bracket that the label ends with where it has one."""
    shown = figure(key)
    unit = shown.unit_in(currency)
    if not unit:
        return shown.label
    if shown.label.endswith(")"):
        return text("figure.heading_in_bracket", label=shown.label[:-1], unit=unit)
    return text("figure.heading", label=shown.label, unit=unit)


def figure_column(key: str, currency: str, width: float | None = None) -> Column:
    """Column of a figure."""
    return Column(key, figure_heading(key, currency), width)


def figure_cell(key: str, value: float, look: Look | None = None) -> Cell:
    """Cell of a figure; NaN stands for no value, and so does 0 of an array."""
    shown = figure(key)
    return Cell(nan if key in ARRAY and value == 0 else float(value), shown.format, look, text(shown.absent))


def yes_no(holds: bool) -> Cell:
    """Cell that says yes or no with a sign and a word."""
    return Cell(text("studies.yes" if holds else "studies.no"), "centre")
