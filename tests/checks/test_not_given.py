"""Nothing that is missing is assumed silently: each rating that was not given is reported, with what to look for."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from planner.assumptions.reader import read_scenario
from planner.checks.site import site_verdicts
from planner.study.site import place_of, weather_of
from tests.checks.sites import checked, site

NO_CONTROLLER_LIMIT = {"controller.dc_voltage_limit_v": None, "pump.plate.dc_voltage_max_v": None}


@pytest.mark.parametrize(
    ("key", "changes", "look_for"),
    [
        ("current", {"pump.plate.current_a": None}, "'A' or 'Amp'"),
        ("speed_range", {"pump.plate.speed_min_rpm": None}, "'rpm'"),
        ("frame", {"pump.plate.frame_in": None, "pump.plate.outer_diameter_mm": None}, "frame in inches"),
        ("insulation", {"pump.plate.insulation_class": None}, "'Ins. Cl.'"),
        ("ingress_protection", {"pump.plate.ingress_protection": None}, "'IP'"),
        ("water_temperature", {"pump.plate.liquid_temperature_max_c": None}, "liquid temp"),
        ("dc_window", {"pump.plate.dc_voltage_min_v": None}, "'DC'"),
        ("ac_window", {"pump.plate.ac_voltage_min_v": None}, "'AC'"),
        ("submergence", {"pump.plate.minimum_submergence_m": None}, "minimum submergence"),
        ("screen", {"borehole.screen_top_m": None}, "driller's log"),
        ("casing_clearance", {"borehole.casing_inner_diameter_mm": None}, "driller's log"),
        ("below_motor", {"borehole.depth_m": None}, "sound it"),
        ("below_motor", {"pump.plate.length_below_intake_m": None}, "the motor's length"),
        ("motor_cooling", {"borehole.casing_inner_diameter_mm": None}, "driller's log"),
        ("daily_limit", {"borehole.daily_limit_m3": None}, "permit"),
        (
            "pressure_at_duty",
            {"pipeline.segments.1.pipe": None, "pipeline.segments.1.inner_diameter_mm": 51},
            "'PN'",
        ),
        (
            "surge",
            {
                "pipeline.segments.1.pipe": None,
                "pipeline.segments.1.inner_diameter_mm": 51,
                "pipeline.segments.1.pressure_class_bar": 16,
            },
            "SDR",
        ),
        ("high_points", {"pipeline.profile": []}, "walk the route"),
        ("string_open_circuit_voltage", NO_CONTROLLER_LIMIT, "max. input voltage"),
        ("modules_in_series", NO_CONTROLLER_LIMIT, "largest DC voltage"),
        ("module_system_voltage", {"sources.solar.module.system_voltage_v": None}, "max. system voltage"),
        (
            "string_voltage_hot",
            {"controller.dc_voltage_min_v": None, "pump.plate.dc_voltage_min_v": None},
            "range of DC or MPP voltage",
        ),
        (
            "string_voltage_cold",
            {"controller.dc_voltage_max_v": None, "pump.plate.dc_voltage_max_v": None},
            "range of DC or MPP voltage",
        ),
        (
            "string_over_current",
            {"sources.solar.module.series_fuse_max_a": None, "sources.solar.strings": 3},
            "max. series fuse",
        ),
        ("ac_cable_protection", {"cables.ac.protective_device_a": None}, "at least 12.9 A and at most 36.0 A"),
        ("dc_cable_voltage", {"cables.dc.voltage_class_v": None}, "DC 1500 V"),
        ("dc_cable_outdoor", {"cables.dc.outdoor": None}, "EN 50618"),
        ("array_current", {"controller.dc_current_max_a": None}, "max. input current"),
        ("grid_voltage", {"sources.grid.voltage_v": None}, "the voltage of the grid"),
        ("grid_phases", {"pump.plate.phases": None}, "'1~' or '3~'"),
        ("grid_frequency", {"sources.grid.frequency_hz": None}, "the frequency of the grid"),
        ("generator_voltage", {"sources.generator.voltage_v": None}, "the voltage of the generator"),
        ("generator_phases", {"sources.generator.phases": None}, "the phases of the generator"),
        ("generator_frequency", {"pump.plate.frequency_hz": None}, "'Hz'"),
        ("dc_cable", {"cables.dc": None}, "enter both for the array cable"),
        ("ac_cable", {"cables.ac": None}, "enter both for the AC cable"),
        ("ac_cable", {"sources.grid.voltage_v": None, "sources.generator.voltage_v": None}, "voltage of grid"),
        ("drop_cable", {"cables": None}, "enter both for the drop cable"),
        ("inlet_height", {"pipeline.profile": []}, "survey"),
        ("outlet_head", {"tank.outlet_height_m": None}, "survey the outlet against the highest tap"),
    ],
)
def test_what_is_missing_is_reported(key: str, changes: dict[str, Any], look_for: str) -> None:
    verdict = checked(site(changes))[key]
    assert verdict.outcome == "not given"
    assert verdict.symbol == "?"
    assert look_for in verdict.remedy


def test_a_missing_screen_of_the_cable_does_not_hide_the_voltage() -> None:
    verdict = checked(site({"cables.ac": None}))["grid_voltage"]
    assert verdict.outcome == "pass"
    assert "drop in the cable not given and not counted" in verdict.compared


def test_sources_that_are_not_there_are_not_judged() -> None:
    sun_only = checked(site({"sources.grid": None, "sources.generator": None}))
    assert not [verdict for verdict in sun_only.values() if verdict.topic == "ac"]
    assert {"ac_cable", "ac_cable_drop", "ac_window"}.isdisjoint(sun_only)
    grid_only = checked(site({"sources.solar": None, "sources.generator": None}))
    assert not [verdict for verdict in grid_only.values() if verdict.topic == "array"]
    assert {"dc_cable_drop", "dc_window", "generator_running"}.isdisjoint(grid_only)


@pytest.mark.parametrize("file", sorted(Path("scenarios").glob("*.toml")), ids=lambda file: file.stem)
def test_the_examples_are_judged_without_a_fault_of_ours(file: Path) -> None:
    scenario = read_scenario(file)
    place = place_of(scenario)
    found = site_verdicts(scenario, place, weather_of(scenario, place, file.parent))
    keys = [verdict.key for verdict in found]
    assert len(keys) == len(set(keys)) > 40
    for verdict in found:
        assert (verdict.remedy == "") == (verdict.outcome == "pass"), verdict
