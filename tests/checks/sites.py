"""A site with everything given, on which every check passes, and variations of it. All of it is invented."""

from __future__ import annotations

import copy
import tomllib
from dataclasses import replace
from functools import cache
from pathlib import Path
from typing import Any

from planner.assumptions.reader import check_scenario
from planner.checks.basis import Basis, basis_of
from planner.checks.site import site_verdicts
from planner.checks.verdict import Verdict
from planner.resource.sun import Place
from planner.resource.years import WeatherYears
from planner.scenario.scenario import Scenario
from planner.scenario.writer import starter_text
from planner.study.site import place_of, weather_of

GIVEN: dict[str, Any] = {
    "site.temperature_lowest_c": 8,
    "site.temperature_highest_c": 34,
    "finance.analysis_period_years": 5,
    "borehole.screen_top_m": 84,
    "borehole.depth_m": 96,
    "borehole.daily_limit_m3": 60,
    "pipeline.profile": [
        {"chainage_m": 0, "level_m": 0},
        {"chainage_m": 200, "level_m": 6},
        {"chainage_m": 420, "level_m": 11},
    ],
    "pump.plate": {
        "dc_voltage_min_v": 100,
        "dc_voltage_max_v": 420,
        "ac_voltage_min_v": 190,
        "ac_voltage_max_v": 260,
        "phases": 1,
        "frequency_hz": 50,
        "current_a": 16,
        "speed_min_rpm": 1200,
        "speed_max_rpm": 3000,
        "frame_in": 4,
        "outer_diameter_mm": 98,
        "insulation_class": "F",
        "ingress_protection": "IP68",
        "liquid_temperature_max_c": 35,
        "minimum_submergence_m": 2,
        "length_below_intake_m": 0.8,
    },
    "controller.dc_voltage_limit_v": 420,
    "controller.dc_current_max_a": 40,
    "sources.solar.strings": 1,
    "sources.solar.module.system_voltage_v": 1000,
    "sources.solar.module.series_fuse_max_a": 25,
    "sources.grid.voltage_v": 230,
    "sources.grid.voltage_tolerance_percent": 8,
    "sources.grid.phases": 1,
    "sources.grid.frequency_hz": 50,
    "sources.grid.power_limit_w": 5000,
    "sources.generator.voltage_v": 230,
    "sources.generator.phases": 1,
    "sources.generator.frequency_hz": 50,
    "cables": {
        "dc": {
            "length_m": 30,
            "section_mm2": 6,
            "conductor_class": 5,
            "conductor": "tinned",
            "voltage_class_v": 1500,
            "outdoor": "yes",
        },
        "ac": {"length_m": 25, "section_mm2": 6, "protective_device_a": 16},
        "drop": {"length_m": 85, "section_mm2": 6, "conductor_class": 5, "supply": "3-phase", "voltage_v": 220},
    },
    "tank.volume_m3": 50,
    "tank.outlet_height_m": 8,
    "pumping_test": {
        "flow_m3h": 11,
        "duration_h": 48,
        "static_level_m": 47.5,
        "final_level_m": 60,
        "recovery_h": 12,
        "recovery_level_m": 47.9,
    },
    "water_quality": {
        "e_coli_per_100ml": 0,
        "arsenic_mg_l": 0.002,
        "fluoride_mg_l": 0.7,
        "nitrate_mg_l": 12,
        "nitrite_mg_l": 0.3,
        "manganese_mg_l": 0.03,
        "lead_mg_l": 0.001,
        "uranium_mg_l": 0.004,
        "boron_mg_l": 0.2,
        "chromium_mg_l": 0.01,
        "cadmium_mg_l": 0.001,
        "iron_mg_l": 0.1,
        "chloride_mg_l": 40,
        "sulfate_mg_l": 30,
        "sodium_mg_l": 35,
        "hardness_mg_l": 160,
        "conductivity_us_cm": 650,
        "turbidity_ntu": 1.5,
        "ph": 7.2,
    },
}


@cache
def _starter() -> dict[str, Any]:
    return tomllib.loads(starter_text())


def _set(table: Any, path: str, value: Any) -> None:
    *steps, last = path.split(".")
    for step in steps:
        table = table[int(step)] if isinstance(table, list) else table.setdefault(step, {})
    if isinstance(table, list):
        table[int(last)] = value
    elif value is None:
        table.pop(last, None)
    else:
        table[last] = value


def site(changes: dict[str, Any] | None = None) -> Scenario:
    """The full site with some dotted keys changed; None takes a key away."""
    raw = copy.deepcopy(_starter())
    for path, value in (copy.deepcopy(GIVEN) | copy.deepcopy(changes or {})).items():
        _set(raw, path, value)
    return check_scenario(raw, "test")


@cache
def _ground() -> tuple[Place, WeatherYears]:
    scenario = site({"finance.analysis_period_years": 2})
    place = place_of(scenario)
    return place, weather_of(scenario, place, Path())


def place_and_weather(scenario: Scenario) -> tuple[Place, WeatherYears]:
    """Weather of the full site, at the altitude of a scenario; made once."""
    place, weather = _ground()
    altitude_m = scenario.site.altitude_m
    return place if altitude_m is None else replace(place, altitude_m=altitude_m), weather


def basis(scenario: Scenario) -> Basis:
    """What the checks of one scenario share."""
    return basis_of(scenario, *place_and_weather(scenario))


def checked(scenario: Scenario) -> dict[str, Verdict]:
    """Verdicts by their keys."""
    found = site_verdicts(scenario, *place_and_weather(scenario))
    return {verdict.key: verdict for verdict in found}
