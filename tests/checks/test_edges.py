"""Each check whose figures run on: it passes, it does not, and between the two it turns exactly at its limit."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any

import pytest

from planner.checks import basis as basis_module
from planner.checks.site import TOPIC_MODULES
from planner.checks.verdict import Verdict
from tests.checks.sites import basis, checked, site

FULL = basis(site({"controller.power_limit_w": 4000}))
MODULE_OF = {verdict.key: module for module in TOPIC_MODULES for verdict in module.verdicts(FULL)}
HALVINGS = 15
NAKED_MAIN = {
    "pipeline.segments.1.pipe": None,
    "pipeline.segments.1.pressure_class_bar": 16,
    "pipeline.segments.1.wave_speed_m_s": 340,
    "pipeline.segments.1.inner_diameter_mm": 51,
}
SHORT_MAIN = {"pipeline.segments.1.length_m": 20, "pipeline.profile": []}
SIX_INCH = {
    "pump.plate.frame_in": 6,
    "pump.plate.outer_diameter_mm": 140,
    "pump.plate.liquid_temperature_max_c": 35,
}
TWO_STRINGS = {"sources.solar.strings": 2}


@dataclass(frozen=True)
class Edge:
    """A key of the scenario that takes a check from `good` to `bad`, `then` being the outcome beyond the limit.

    `factor` is the share of the verdict's limit at which the outcome turns, where that is not the limit itself.
    """

    key: str
    path: str
    good: float
    bad: float
    then: str = "fail"
    before: str = "pass"
    factor: float = 1.0
    extra: dict[str, Any] = field(default_factory=dict)

    def verdict(self, value: float) -> Verdict:
        found = MODULE_OF[self.key].verdicts(basis(site(self.extra | {self.path: value})))
        return next(verdict for verdict in found if verdict.key == self.key)


# fmt: off
EDGES = [
    Edge("rated_figures", "pump.rated_power_w", 2400, 6000, "caution"),
    Edge("rated_figures", "pump.rated_power_w", 1600, 1420, "caution", extra={"pump.motor_efficiency_percent": 90}),
    Edge("largest_flow", "pump.max_flow_m3h", 9, 90, "caution"),
    Edge("current", "pump.plate.current_a", 16, 5),
    Edge("speed_range", "pump.plate.speed_min_rpm", 1200, 2990, "caution"),
    Edge("frame", "borehole.casing_inner_diameter_mm", 150, 80),
    Edge("insulation", "borehole.water_temperature_c", 20, 50, "caution"),
    Edge("water_temperature", "borehole.water_temperature_c", 20, 50),
    Edge("dc_window", "pump.plate.dc_voltage_max_v", 420, 200),
    Edge("dc_window", "pump.plate.dc_voltage_min_v", 100, 260),
    Edge("ac_window", "pump.plate.ac_voltage_max_v", 260, 200),
    Edge("ac_window", "pump.plate.ac_voltage_min_v", 190, 250),
    Edge("lift", "pipeline.rise_to_tank_inlet_m", 14, 90),
    Edge("rated_head", "pipeline.rise_to_tank_inlet_m", 14, 26, "caution"),
    Edge("rated_head", "pipeline.rise_to_tank_inlet_m", 24, 60, "fail", "caution", 0.9),
    Edge("rated_head", "borehole.static_level_m", 48, 10, "caution", factor=4 / 3),
    Edge("pipe_length", "pipeline.segments.1.length_m", 420, 100),
    Edge("velocity", "pipeline.segments.1.inner_diameter_mm", 51, 30, "caution", extra=NAKED_MAIN | SHORT_MAIN),
    Edge("velocity", "pipeline.segments.1.inner_diameter_mm", 51, 70, "caution", extra=NAKED_MAIN),
    Edge("velocity", "pipeline.segments.1.inner_diameter_mm", 29, 20, "fail", "caution", 1.5,
         extra=NAKED_MAIN | SHORT_MAIN),
    Edge("power_limit", "controller.power_limit_w", 2500, 2000, "caution"),
    Edge("duty_flow", "pipeline.rise_to_tank_inlet_m", 14, 55, "caution"),
    Edge("duty_flow", "borehole.static_level_m", 48, 10, "caution", extra={"borehole.safe_yield_m3h": 9}),
    Edge("speed", "pump.speed_min_percent", 40, 98, "caution", extra={"borehole.safe_yield_m3h": 4}),
    Edge("wire_to_water", "pipeline.rise_to_tank_inlet_m", 14, 60, "caution"),
    Edge("hours_a_day", "demand.users.0.count", 900, 4500, "caution"),
    Edge("specific_capacity", "borehole.specific_capacity_m3h_per_m", 0.9, 3, "caution",
         extra={"borehole.safe_yield_m3h": 3}),
    Edge("safe_yield", "borehole.safe_yield_m3h", 7, 5.1, "caution"),
    Edge("pumping_level", "borehole.pump_depth_m", 78, 50, extra={"pipeline.segments.1.length_m": 500}),
    Edge("submergence", "pump.plate.minimum_submergence_m", 2, 40),
    Edge("level_through_life", "borehole.level_decline_m_per_year", 0, 8, "caution"),
    Edge("level_through_life", "borehole.specific_capacity_decline_percent_per_year", 1, 25, "caution",
         extra={"borehole.specific_capacity_m3h_per_m": 0.4, "pipeline.rise_to_tank_inlet_m": 5}),
    Edge("screen", "borehole.screen_top_m", 84, 50, "caution"),
    Edge("casing_clearance", "borehole.casing_inner_diameter_mm", 150, 100, "caution"),
    Edge("below_motor", "borehole.depth_m", 96, 79, "caution"),
    Edge("motor_cooling", "borehole.casing_inner_diameter_mm", 155, 250, extra=SIX_INCH),
    Edge("motor_cooling", "borehole.flow_sleeve_diameter_mm", 150, 240,
         extra=SIX_INCH | {"borehole.screen_top_m": 60}),
    Edge("motor_cooling", "borehole.casing_inner_diameter_mm", 105, 150,
         extra={"borehole.water_temperature_c": 36}),
    Edge("daily_limit", "borehole.daily_limit_m3", 60, 26.5, "caution"),
    Edge("pressure_at_duty", "pipeline.segments.1.pressure_class_bar", 16, 1),
    Edge("pressure_at_duty", "borehole.water_temperature_c", 20, 40,
         extra={"pipeline.segments.1.pressure_class_bar": 1.9}),
    Edge("pressure_at_shut_off", "pipeline.segments.1.pressure_class_bar", 16, 3, "caution"),
    Edge("surge", "pipeline.segments.1.pressure_class_bar", 16, 4, "caution"),
    Edge("surge", "pipeline.segments.1.pressure_class_bar", 4, 2, "fail", "caution", 1.5),
    Edge("high_points", "pipeline.profile.1.level_m", 13, 20, "fail", "caution"),
    Edge("profile_length", "pipeline.profile.2.chainage_m", 415, 350, "caution"),
    Edge("string_open_circuit_voltage", "controller.dc_voltage_limit_v", 420, 300),
    Edge("string_open_circuit_voltage", "site.temperature_lowest_c", 8, -50,
         extra={"controller.dc_voltage_limit_v": 370}),
    Edge("module_system_voltage", "sources.solar.module.system_voltage_v", 1000, 300),
    Edge("string_voltage_hot", "controller.dc_voltage_min_v", 140, 300),
    Edge("string_voltage_cold", "controller.dc_voltage_max_v", 420, 250, "caution"),
    Edge("array_current", "controller.dc_current_max_a", 40, 10),
    Edge("string_over_current", "sources.solar.module.series_fuse_max_a", 25, 20, extra={"sources.solar.strings": 3}),
    Edge("string_over_current", "sources.solar.string_fuse_a", 20, 17),
    Edge("string_over_current", "sources.solar.string_fuse_a", 20, 28),
    Edge("ac_cable_protection", "cables.ac.protective_device_a", 16, 10),
    Edge("ac_cable_protection", "cables.ac.protective_device_a", 16, 63),
    Edge("ac_cable_protection", "cables.ac.ambient_temperature_c", 30, 65, extra={"cables.ac.section_mm2": 2.5}),
    Edge("dc_cable_voltage", "cables.dc.voltage_class_v", 1500, 300),
    Edge("power_ratio", "pump.rated_power_w", 2400, 2700, "caution"),
    Edge("power_ratio", "pump.rated_power_w", 3400, 2600, "caution", extra=TWO_STRINGS),
    Edge("grid_voltage", "pump.plate.ac_voltage_min_v", 190, 230),
    Edge("grid_voltage", "pump.plate.ac_voltage_max_v", 260, 235),
    Edge("grid_voltage", "cables.ac.length_m", 25, 400, extra={"pump.plate.ac_voltage_min_v": 200}),
    Edge("grid_frequency", "sources.grid.frequency_hz", 50, 51.4, "caution"),
    Edge("grid_frequency", "sources.grid.frequency_hz", 50, 47.6, "caution"),
    Edge("grid_power", "sources.grid.power_limit_w", 5000, 2000),
    Edge("generator_voltage", "pump.plate.ac_voltage_min_v", 190, 230),
    Edge("generator_voltage", "pump.plate.ac_voltage_max_v", 260, 235),
    Edge("generator_frequency", "sources.generator.frequency_hz", 50, 51.4, "caution"),
    Edge("generator_running", "sources.generator.rating_kw", 7.5, 2),
    Edge("generator_running", "site.altitude_m", 300, 6000, extra={"sources.generator.rating_kw": 3}),
    Edge("generator_running", "site.temperature_highest_c", 30, 60,
         extra={"sources.generator.rating_kw": 2.6, "site.altitude_m": 0}),
    Edge("generator_starting", "sources.generator.rating_kw", 7.5, 3.8, "caution"),
    Edge("generator_starting", "sources.generator.rating_kw", 3.8, 3, "fail", "caution", 1.25 / 1.5),
    Edge("generator_starting", "sources.generator.rating_kw", 20, 12, "caution",
         extra={"controller.starting": "direct"}),
    Edge("generator_loading", "sources.generator.rating_kw", 7.5, 15, "caution"),
    Edge("generator_loading", "sources.generator.rating_kw", 7.5, 3, "caution"),
    Edge("dc_cable_drop", "cables.dc.length_m", 30, 300),
    Edge("dc_cable_ampacity", "cables.dc.ambient_temperature_c", 30, 65),
    Edge("dc_cable_ampacity", "cables.dc.ampacity_a", 40, 5),
    Edge("ac_cable_drop", "cables.ac.length_m", 25, 400),
    Edge("ac_cable_ampacity", "cables.ac.ambient_temperature_c", 30, 65, extra={"cables.ac.section_mm2": 4}),
    Edge("drop_cable_drop", "cables.drop.length_m", 85, 600),
    Edge("drop_cable_ampacity", "cables.drop.ambient_temperature_c", 30, 65),
    Edge("drop_cable_length", "cables.drop.length_m", 85, 60),
    Edge("days_held", "tank.volume_m3", 50, 10, "caution"),
    Edge("busiest_hour", "tank.volume_m3", 50, 1),
    Edge("refill_time", "tank.volume_m3", 50, 400, "caution"),
    Edge("inlet_height", "pipeline.rise_to_tank_inlet_m", 14, 8),
    Edge("outlet_head", "tank.outlet_height_m", 8, 3, "caution"),
    Edge("outlet_head", "tank.outlet_height_m", 5, -4, "fail", "caution", 2 / 7),
    Edge("per_person", "demand.users.0.litres_per_person_day", 25, 16, "caution"),
    Edge("yield_through_life", "demand.users.0.count", 900, 2000, "caution"),
    Edge("pumping_test", "pumping_test.duration_h", 48, 6, "caution"),
    Edge("yield_of_test", "pumping_test.flow_m3h", 11, 7, "caution"),
    Edge("recovery", "pumping_test.recovery_level_m", 47.9, 50, "caution"),
    Edge("quality_e_coli_per_100ml", "water_quality.e_coli_per_100ml", 0, 8),
    Edge("quality_nitrate_and_nitrite", "water_quality.nitrite_mg_l", 0.3, 2.9),
    Edge("quality_arsenic_mg_l", "water_quality.arsenic_mg_l", 0.005, 0.04),
    Edge("quality_fluoride_mg_l", "water_quality.fluoride_mg_l", 0.75, 6),
    Edge("quality_nitrate_mg_l", "water_quality.nitrate_mg_l", 25, 200),
    Edge("quality_nitrite_mg_l", "water_quality.nitrite_mg_l", 1.5, 12),
    Edge("quality_manganese_mg_l", "water_quality.manganese_mg_l", 0.04, 0.32),
    Edge("quality_lead_mg_l", "water_quality.lead_mg_l", 0.005, 0.04),
    Edge("quality_uranium_mg_l", "water_quality.uranium_mg_l", 0.015, 0.12),
    Edge("quality_boron_mg_l", "water_quality.boron_mg_l", 1.2, 9.6),
    Edge("quality_chromium_mg_l", "water_quality.chromium_mg_l", 0.025, 0.2),
    Edge("quality_cadmium_mg_l", "water_quality.cadmium_mg_l", 0.0015, 0.012),
    Edge("quality_iron_mg_l", "water_quality.iron_mg_l", 0.15, 1.2, "caution"),
    Edge("quality_chloride_mg_l", "water_quality.chloride_mg_l", 125, 1000, "caution"),
    Edge("quality_sulfate_mg_l", "water_quality.sulfate_mg_l", 125, 1000, "caution"),
    Edge("quality_sodium_mg_l", "water_quality.sodium_mg_l", 100, 800, "caution"),
    Edge("quality_hardness_mg_l", "water_quality.hardness_mg_l", 100, 800, "caution"),
    Edge("quality_dissolved_solids_mg_l", "water_quality.dissolved_solids_mg_l", 500, 4000, "caution"),
    Edge("quality_turbidity_ntu", "water_quality.turbidity_ntu", 2.5, 20, "caution"),
]
# fmt: on


def _number(value: float | str | None) -> float:
    assert isinstance(value, float | int)
    return float(value)


@pytest.fixture(scope="module", autouse=True)
def duty_found_once() -> Iterator[None]:
    """Find the duty anew only where the borehole, the pipeline or the pump differ."""
    find, known = basis_module.duty_point, {}

    def found(*works: Any, **asked: Any) -> Any:
        key = repr((works, asked))
        if key not in known:
            known[key] = find(*works, **asked)
        return known[key]

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(basis_module, "duty_point", found)
        yield


def _beyond_limit(edge: Edge, verdict: Verdict) -> float | None:
    """How far a verdict's value is from where its outcome turns; None where it gives no two numbers."""
    if isinstance(verdict.value, float | int) and isinstance(verdict.limit, float | int):
        return float(verdict.value) - edge.factor * float(verdict.limit)
    return None


def _at_limit(edge: Edge, verdict: Verdict) -> bool:
    away = _beyond_limit(edge, verdict)
    return away is not None and away == pytest.approx(
        0, abs=max(1e-3, 1e-3 * abs(_number(verdict.limit)) * edge.factor)
    )


def _turn(edge: Edge, good: Verdict, bad: Verdict) -> tuple[float, Verdict]:
    """Close in on where the outcome turns: the last value that is not good, and its verdict.

    Until both sides stand at the limit, or next to one another. The figures of the verdicts say where to look, a little
    to this side of it or to that in turn; each third time, and where they say nothing, it is half way.
    """
    near, far, inside, beyond = edge.good, edge.bad, good, bad
    step = 0
    while abs(far - near) > abs(edge.bad - edge.good) / 2**HALVINGS:
        if _at_limit(edge, inside) and _at_limit(edge, beyond):
            break
        share, before, after = 0.5, _beyond_limit(edge, inside), _beyond_limit(edge, beyond)
        if step % 3 < 2 and before is not None and after is not None and before * after < 0:
            share = min(max(before / (before - after) + (0.0005 if step % 3 else -0.0005), 0.0005), 0.9995)
        step += 1
        between = near + share * (far - near)
        verdict = edge.verdict(between)
        if verdict.outcome == edge.before:
            near, inside = between, verdict
        else:
            far, beyond = between, verdict
    return far, beyond


@pytest.mark.parametrize("edge", EDGES, ids=lambda edge: f"{edge.key}-{edge.path}-{edge.then}")
def test_the_check_turns_at_its_limit(edge: Edge) -> None:
    good, bad = edge.verdict(edge.good), edge.verdict(edge.bad)
    assert (good.outcome, bad.outcome) == (edge.before, edge.then)
    if edge.before == "pass":
        assert good.remedy == ""
    assert bad.remedy

    far, beyond = _turn(edge, good, bad)
    assert beyond.outcome == edge.then
    assert _number(beyond.value) == pytest.approx(edge.factor * _number(beyond.limit), rel=1e-3, abs=1e-3)

    # where the key is itself the value or the limit, it can be put exactly at the limit, which passes
    if edge.factor == 1 and _number(beyond.limit) == far:
        assert edge.verdict(_number(beyond.value)).outcome == edge.before
    elif edge.factor == 1 and _number(beyond.value) == far:
        assert edge.verdict(_number(beyond.limit)).outcome == edge.before


def test_every_number_is_told_with_unit_and_source() -> None:
    for verdict in checked(site()).values():
        assert verdict.outcome == "pass", verdict
        assert verdict.remedy == ""
        assert verdict.why.endswith(".")
        assert verdict.source
        if isinstance(verdict.value, float):
            assert verdict.unit, verdict
