"""Sizing and worth as plain data and as JSON: stable, versioned, the figures by their keys in the catalogue."""

from __future__ import annotations

import json
import math
from collections.abc import Sequence
from dataclasses import asdict
from pathlib import Path
from typing import Any

from planner.report.files import write_text
from planner.report.next_step_json import next_steps_as_data
from planner.report.pages.size import MOST_RUNNERS, design_figures
from planner.report.pages.worth import option_figures, switching_words
from planner.study.sizing import OptionSizing, SizedDesign, Sizing
from planner.study.sizing_words import hours_words
from planner.study.worth import Switching, Worth
from planner.text import text
from planner.version import __version__

SCHEMA = 3
"""Raised by one whenever a field is renamed, removed or changes meaning; new fields do not raise it."""


def write_study_json(data: dict[str, Any], path: Path) -> None:
    """Write plain data as JSON, whole or not at all; numbers without a value become null."""
    text = json.dumps(finite(data), indent=2, ensure_ascii=False, allow_nan=False)
    write_text(path, text + "\n")


def finite(value: Any) -> Any:
    """Put None in place of numbers without a value, at any depth."""
    if isinstance(value, float) and not math.isfinite(value):
        return None
    if isinstance(value, dict):
        return {key: finite(inner) for key, inner in value.items()}
    if isinstance(value, list | tuple):
        return [finite(inner) for inner in value]
    return value


def sizing_as_data(sizing: Sizing, sentences: Sequence[str]) -> dict[str, Any]:
    """Return a sizing as plain data."""
    return {
        "planner_version": __version__,
        "schema": SCHEMA,
        "scenario": sizing.scenario.name,
        "currency": sizing.scenario.currency if sizing.scenario.priced else None,
        "analysis_period_years": sizing.scenario.finance.analysis_period_years,
        "candidates": sizing.candidate_count,
        "best": sizing.ranking[0] if sizing.ranked[0].best else None,
        "ranking": list(sizing.ranking),
        "sentences": list(sentences),
        "cautions": [text("caution.where_listed")],
        "options": [_sized_option(option, priced=sizing.scenario.priced) for option in sizing.options],
    }


def _sized_option(option: OptionSizing, *, priced: bool) -> dict[str, Any]:
    """One option; costs are null where there are no prices, and weights, in kWp of array, where there are."""
    higher, more = option.next_percent

    def cost(value: float | None, *, wanted: bool = priced) -> float | None:
        return value if wanted else None

    def weight(value: float | None) -> float | None:
        return cost(value, wanted=not priced)

    return {
        "name": option.name,
        "candidates": option.grid.count,
        "left_out": list(option.grid.left_out),
        "meets_target": option.best is not None,
        "misses_by_percent": option.misses_by_percent,
        "misses_by_days": option.misses_by_days,
        "design": _design(option.nearest, priced=priced),
        "runners_up": [_design(design, priced=priced) for design in option.runners_up[:MOST_RUNNERS]],
        "trade_off": [_design(design, priced=priced) for design in option.front],
        "least_cost_at": [
            {
                "demand_met_percent": share,
                "life_cycle_cost": None if design is None else cost(design.present_cost),
                "weight_kwp": None if design is None else weight(design.objective),
            }
            for share, design in option.least_cost_at
        ],
        "next_percent": {
            "demand_met_percent": higher, "extra_life_cycle_cost": cost(more), "extra_weight_kwp": weight(more),
        },
        "steady_start_percent": list(option.steady_start_percent) if option.steady_start_percent else None,
        "by_run": {
            "life_cycle_cost": cost(option.by_run_cost), "weight_kwp": weight(option.by_run_cost),
            "meets_target": option.by_run_meets,
        },
    }  # fmt: skip


def _design(design: SizedDesign, *, priced: bool) -> dict[str, Any]:
    return {
        "pump": design.pump,
        "pipes": list(design.pipes),
        "hours": hours_words(design),
        "meets_target": design.meets_service,
        "switch_m3": design.switch_m3,
        "weight_kwp": None if priced else design.objective,
        **design_figures(design, priced=priced),
    }


def worth_as_data(worth: Worth, sentences: Sequence[str]) -> dict[str, Any]:
    """Return the answer of 'is it worth it?' as plain data."""
    cheapest = worth.map
    return {
        "planner_version": __version__,
        "schema": SCHEMA,
        "scenario": worth.scenario.name,
        "currency": worth.scenario.currency,
        "source": worth.source,
        "sentences": list(sentences),
        "cautions": [text("caution.where_listed")],
        "with_best": worth.with_best.name,
        "without_best": worth.without_best.name,
        "saving_present": worth.saving,
        "options": [
            {
                "name": option.name,
                "sources": list(option.design.sources),
                "meets_target": option.meets_service,
                **option_figures(option),
            }
            for option in worth.options
        ],
        "pairs": [
            {"without": pair.without.name, "with": pair.with_source.name, "saving_present": pair.saving}
            for pair in worth.pairs
        ],
        "switching_values": [
            _switching(switching) | {"chosen_anew": None if worth.anew is None else _chosen_anew(worth.anew[place])}
            for place, switching in enumerate(worth.switching)
        ],
        "next_steps": next_steps_as_data(worth.next_steps, worth.scenario),
        "map": None if cheapest is None else {
            "down": cheapest.down.name, "down_unit": cheapest.down.unit, "down_values": list(cheapest.down_values),
            "across": cheapest.across.name, "across_unit": cheapest.across.unit,
            "across_values": list(cheapest.across_values), "best": [list(row) for row in cheapest.best],
            "meets_target": [list(row) for row in cheapest.meets],
            "life_cycle_cost": cheapest.present_cost.tolist(),
        },
    }  # fmt: skip


def _switching(switching: Switching) -> dict[str, Any]:
    varied = switching.varied
    return {
        "input": varied.name,
        "key": varied.key,
        "unit": varied.unit,
        "base": varied.base,
        "low": varied.low,
        "high": varied.high,
        "value": switching.value,
        "other_values": list(switching.others),
        "beyond_range": switching.beyond,
        "words": switching_words(switching),
        "life_cycle_cost_with": switching.cost_with,
        "life_cycle_cost_without": switching.cost_without,
        "agrees": switching.agrees,
        "cheapest_there": switching.cheapest_there,
        "answer_turns": _turns(switching),
    }


def _chosen_anew(switching: Switching) -> dict[str, Any]:
    """The same with the works chosen anew at each value."""
    keys = ("value", "other_values", "words", "life_cycle_cost_with", "life_cycle_cost_without", "answer_turns")
    return {key: value for key, value in _switching(switching).items() if key in keys}


def _turns(switching: Switching) -> list[dict[str, Any]]:
    return [
        {("meets_target" if name == "meets" else name): value for name, value in asdict(turn).items()}
        for turn in switching.turns
    ]
