"""A design that sizing finds is not named as the one to build while its site checks fail. All values are invented."""

from __future__ import annotations

from typing import Any

from planner.answers.of_study import sizing_answer
from planner.study.site import place_of, weather_of
from planner.study.sizing import size_scenario
from tests.study.scenarios import EXAMPLES, changed

SMALL: dict[str, Any] = {
    "finance__analysis_period_years": 1,
    "service__options": ["solar"],
    "service__demand_met_percent": 80,
    "size": {"strings": [2], "tanks_m3": [50.0]},
    "controller__dc_voltage_limit_v": 450.0,
}


def said(**changes: Any) -> list[str]:
    scenario = changed(**SMALL, **changes)
    place = place_of(scenario)
    return sizing_answer(size_scenario(scenario, EXAMPLES), place, weather_of(scenario, place, EXAMPLES))


def test_a_sound_design_is_named_at_once() -> None:
    first, *more = said()
    assert "the cheapest that meets the target of 80 % of the water is solar" in first
    assert not any("remedied" in sentence for sentence in more)


def test_a_design_that_would_destroy_its_controller_must_be_mended_first() -> None:
    first = said(sources__solar__modules_in_series=20, sources__solar__module__system_voltage_v=600.0)[0]
    assert first.startswith("Least cost once these are remedied: solar. Not to be built as it is: ")
    assert "array and controller" in first
