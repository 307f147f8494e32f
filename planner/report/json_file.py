"""The machine-readable result: stable, versioned, documented in DEVELOPERS.md."""

from __future__ import annotations

import json
import math
from collections.abc import Sequence
from dataclasses import asdict
from pathlib import Path
from typing import Any

from planner.answers.of_study import answer, headline, holds
from planner.answers.remedied import Remedied, remedied_sentences
from planner.checks.verdict import Verdict
from planner.figures import catalogue
from planner.report.files import write_text
from planner.report.next_step_json import next_steps_as_data
from planner.report.rows import by_month, by_year
from planner.report.uncertainty_json import uncertainty_data
from planner.scenario.paths import dotted
from planner.study.compare import OptionResult, Study
from planner.study.rests_on import Effect
from planner.version import __version__

SCHEMA = 3
"""Raised by one whenever a field is renamed, removed or changes meaning; new fields do not raise it."""


def write_json(
    study: Study, cautions: Sequence[str], verdicts: Sequence[Verdict], path: Path, found: Remedied | None = None
) -> None:
    """Write a study as JSON, whole or not at all.

    Parameters
    ----------
    study : Study
        The finished comparison.
    cautions : sequence of str
        What to beware of.
    verdicts : sequence of Verdict
        What the site checks found.
    path : pathlib.Path
        File to write.
    found : Remedied or None
        What it comes to with the remedies of failed checks.
    """
    data = study_as_data(study, cautions, verdicts, found)
    text = json.dumps(data, indent=2, ensure_ascii=False, allow_nan=False)
    write_text(path, text + "\n")


def study_as_data(
    study: Study, cautions: Sequence[str], verdicts: Sequence[Verdict], found: Remedied | None = None
) -> dict[str, Any]:
    """Return a study as plain data: dictionaries, lists, numbers, texts and None."""
    duty = study.duty
    return {
        "planner_version": __version__,
        "schema": SCHEMA,
        "scenario": study.scenario.name,
        "currency": study.scenario.currency if study.scenario.priced else None,
        "analysis_period_years": study.scenario.finance.analysis_period_years,
        "people": study.scenario.people,
        "weather": {"source": study.weather.source, "notes": list(study.weather.notes)},
        "duty": {
            "flow_m3h": _number(duty.flow_m3h),
            "total_dynamic_head_m": _number(duty.total_head_m),
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
        "reference": study.reference if study.scenario.priced else None,
        "sentences": answer(study, verdicts),
        "rests_on": [_effect(effect, priced=study.scenario.priced) for effect in study.effects],
        "uncertainty": uncertainty_data(study),
        "next_steps": None if study.next_steps is None else next_steps_as_data(study.next_steps, study.scenario),
        "cautions": list(cautions),
        "checks": [_check(verdict) for verdict in verdicts],
        "remedied": None if found is None else _remedied(found),
        "options": [_option(option, study.further_costs) for option in study.options],
    }


def _effect(effect: Effect, *, priced: bool) -> dict[str, Any]:
    return {
        "key": effect.key,
        "unit": effect.unit,
        "value": effect.value,
        "source": effect.how,
        "tried": list(effect.tried),
        "demand_met_percent": [_number(share) for share in effect.demand_met_percent],
        "life_cycle_cost": [_number(cost) for cost in effect.life_cycle_cost] if priced else None,
    }


def _check(verdict: Verdict) -> dict[str, Any]:
    data = asdict(verdict) | {"topic": verdict.topic_label}
    for name in ("value", "limit"):
        if not isinstance(data[name], str):
            data[name] = _number(data[name])
    return data


def _remedied(found: Remedied) -> dict[str, Any]:
    """What the comparison comes to with the remedies of failed checks."""
    option, priced = found.option, found.after.scenario.priced
    return {
        "sentences": remedied_sentences(found),
        "remedies": [
            {"key": verdict.key, "remedy": verdict.remedy, "changes": verdict.changes}
            for verdict in found.carried.remedied
        ],
        "changes": {dotted(path): value for path, value in found.carried.changes.items()},
        "not_priced": found.not_priced,
        "option": option.name,
        "meets_target": option.meets_service,
        "demand_met_percent": _number(100 * option.delivered_share),
        "life_cycle_cost": _number(option.life.present_cost) if priced else None,
        "further_life_cycle_cost": _number(found.further_cost) if priced else None,
        "failing": [verdict.key for verdict in found.failing],
    }


def _option(option: OptionResult, further_costs: Sequence[str]) -> dict[str, Any]:
    """Figures of one option; those of money are null where there are no prices."""
    curve, priced = option.tank_curve, option.scenario.priced
    return {
        "name": option.name,
        "sources": list(option.sources),
        "unpriced": [thing.label() for thing in option.unpriced] if priced else None,
        **{
            figure.key: _number(figure.read(option)) if priced or not figure.is_money else None
            for figure in catalogue(further_costs)
        },
        "meets_target": option.meets_service,
        "tank_curve": [
            {"tank_m3": _number(volume), "demand_met_percent": _number(100 * share)}
            for volume, share in zip(curve.volume_m3, curve.delivered_share, strict=True)
        ],
        "yearly": _yearly(option),
        "monthly": _monthly(option),
    }


def _yearly(option: OptionResult) -> list[dict[str, Any]]:
    columns: dict[str, Any] = by_year(option)
    years = columns["demand_m3"].size
    columns.setdefault("cost", [None] * years)
    by_limit = option.outcome.limit_shortfall_m3
    columns["shortfall_by_daily_limit_m3"] = [None] * years if by_limit is None else by_limit
    return _records("year", columns)


def _monthly(option: OptionResult) -> list[dict[str, Any]]:
    return _records("month", {key: values[0] for key, values in by_month(option).items()})


def _records(name: str, columns: dict[str, Any]) -> list[dict[str, Any]]:
    """Turn columns into rows, which are counted from 1."""
    rows = zip(*columns.values(), strict=True)
    return [{name: place, **dict(zip(columns, map(_number, row), strict=True))} for place, row in enumerate(rows, 1)]


def _number(value: Any) -> float | None:
    """Return a plain number, or None where there is none."""
    if value is None:
        return None
    number = float(value)
    return number if math.isfinite(number) else None
