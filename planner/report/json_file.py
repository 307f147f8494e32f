"""The machine-readable result: stable, versioned, documented in DEVELOPERS.md."""

from __future__ import annotations

import json
import math
from collections.abc import Sequence
from dataclasses import asdict
from pathlib import Path
from typing import Any

import numpy as np

from planner import __version__
from planner.checks.of_study import headline, holds
from planner.checks.verdict import Verdict
from planner.report.files import write_text
from planner.study.compare import OptionResult, Study

SCHEMA = 2
"""Raised by one whenever a field is renamed, removed or changes meaning; new fields do not raise it."""


def write_json(
    study: Study, sentences: Sequence[str], cautions: Sequence[str], verdicts: Sequence[Verdict], path: Path
) -> None:
    """Write a study as JSON, whole or not at all.

    Parameters
    ----------
    study : Study
        The finished comparison.
    sentences, cautions : sequence of str
        The answer in words, and what to beware of.
    verdicts : sequence of Verdict
        What the site checks found.
    path : pathlib.Path
        File to write.
    """
    text = json.dumps(
        study_as_data(study, sentences, cautions, verdicts), indent=2, ensure_ascii=False, allow_nan=False
    )
    write_text(path, text + "\n")


def study_as_data(
    study: Study, sentences: Sequence[str], cautions: Sequence[str], verdicts: Sequence[Verdict]
) -> dict[str, Any]:
    """Return a study as plain data: dictionaries, lists, numbers, texts and None."""
    duty = study.duty
    return {
        "planner_version": __version__,
        "schema": SCHEMA,
        "scenario": study.scenario.name,
        "currency": study.scenario.currency,
        "life_years": study.scenario.finance.life_years,
        "people": study.scenario.people,
        "weather": {"source": study.weather.source, "notes": list(study.weather.notes)},
        "duty": {
            "flow_m3h": _number(duty.flow_m3h),
            "total_head_m": _number(duty.total_head_m),
            "static_head_m": _number(duty.static_head_m),
            "drawdown_m": _number(duty.drawdown_m),
            "friction_m": _number(duty.friction_m),
            "residual_head_m": _number(duty.residual_head_m),
            "input_power_w": _number(duty.input_power_w),
        },
        "best": study.best,
        "headline": headline(study, verdicts),
        "recommended": holds(study, verdicts),
        "ranking": list(study.ranking),
        "reference": study.reference,
        "sentences": list(sentences),
        "cautions": list(cautions),
        "checks": [_check(verdict) for verdict in verdicts],
        "options": [_option(option) for option in study.options],
    }


def _check(verdict: Verdict) -> dict[str, Any]:
    data = asdict(verdict) | {"topic": verdict.topic_label}
    for name in ("value", "limit"):
        if not isinstance(data[name], str):
            data[name] = _number(data[name])
    return data


def _option(option: OptionResult) -> dict[str, Any]:
    life, comparison = option.life, option.comparison
    return {
        "name": option.name,
        "sources": list(option.sources),
        "meets_service": option.meets_service,
        "delivered_share": _number(option.delivered_share),
        "worst_year_share": _number(option.worst_year_share),
        "tank_m3": _number(option.tank_m3),
        "strings": option.strings,
        "modules": option.modules,
        "array_kw": _number(option.array_kw),
        "start_level_percent": option.levels[0] if option.levels else None,
        "stop_level_percent": option.levels[1] if option.levels else None,
        "unpriced": list(option.unpriced),
        "capital_cost": _number(life.capital_cost),
        "present_cost": _number(life.present_cost),
        "present_cost_by_category": {name: _number(value) for name, value in life.present_by_category.items()},
        "npv": _number(life.npv),
        "equivalent_yearly_cost": _number(life.equivalent_yearly_cost),
        "levelised_cost_per_m3": _number(life.levelised_cost_per_m3),
        "cost_per_person_year": _number(life.cost_per_person_year),
        "co2_kg": _number(np.sum(life.co2_kg)),
        "saving_against_reference": _number(comparison.saving_present) if comparison else None,
        "internal_rate_of_return": _number(comparison.internal_rate_of_return) if comparison else None,
        "simple_payback_years": _number(comparison.simple_payback_years) if comparison else None,
        "tank_curve": [
            {"volume_m3": _number(volume), "delivered_share": _number(share)}
            for volume, share in zip(option.tank_curve.volume_m3, option.tank_curve.delivered_share, strict=True)
        ],
        "yearly": _yearly(option),
        "monthly": _monthly(option),
    }


def _yearly(option: OptionResult) -> list[dict[str, Any]]:
    quantities = option.quantities
    grid_kwh = quantities.grid_kwh.sum(axis=(-1, -2))
    cost = option.life.flows.total_cost()
    by_limit = option.outcome.limit_shortfall_m3
    return [
        {
            "year": year + 1,
            "demand_m3": _number(quantities.demand_m3[year]),
            "delivered_m3": _number(quantities.delivered_m3[year]),
            "solar_kwh": _number(quantities.solar_kwh[year]),
            "grid_kwh": _number(grid_kwh[year]),
            "generator_kwh": _number(quantities.generator_kwh[year]),
            "fuel_l": _number(quantities.fuel_l[year]),
            "generator_hours": _number(quantities.generator_hours[year]),
            "cost": _number(cost[year + 1]),
            "shortfall_by_daily_limit_m3": _number(None if by_limit is None else by_limit[year]),
        }
        for year in range(quantities.demand_m3.shape[-1])
    ]


def _monthly(option: OptionResult) -> list[dict[str, Any]]:
    outcome = option.outcome
    grid_kwh = outcome.grid_kwh[0].sum(axis=-1)
    return [
        {
            "month": month + 1,
            "demand_m3": _number(outcome.demand_m3[0, month]),
            "delivered_m3": _number(outcome.delivered_m3[0, month]),
            "solar_kwh": _number(outcome.solar_kwh[0, month]),
            "idle_kwh": _number(outcome.idle_kwh[0, month]),
            "grid_kwh": _number(grid_kwh[month]),
            "generator_kwh": _number(outcome.generator_kwh[0, month]),
            "fuel_l": _number(outcome.fuel_l[0, month]),
            "generator_hours": _number(outcome.generator_hours[0, month]),
        }
        for month in range(12)
    ]


def _number(value: Any) -> float | None:
    """Return a plain number, or None where there is none."""
    if value is None:
        return None
    number = float(value)
    return number if math.isfinite(number) else None
