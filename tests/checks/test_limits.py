"""The limits themselves, worked out by hand for the full site, so that a check cannot turn at a wrong one."""

from __future__ import annotations

from math import pi
from typing import Any

import pytest

from planner.checks.verdict import TOPICS
from tests.checks.sites import GIVEN, checked, site

PLATE, QUALITY = GIVEN["pump.plate"], GIVEN["water_quality"]
HYDRAULIC_W = 1000 * 9.80665 * 5 / 3600 * 80
TAKEN_KW = 2.4 / 0.95
DUTY_M3H, DUTY_M = 5.352, 74.06
"""Duty of the full site, from the duty's own tests."""
HOT_V = 8 * (34.2 - 0.0027 * 41 * (65.4 - 25))
FULL_SITE: dict[str, tuple[float | str, str]] = {
    "irradiation": (40, "%"),
    "air_temperature": (12, "K"),
    "rated_figures": (20, "%"),
    "largest_flow": (4 * 5, "m3/h"),
    "current": (PLATE["current_a"], "A"),
    "speed_range": (90, "%"),
    "frame": (4 * 25.4, "mm"),
    "insulation": (155 - 40, "K"),
    "ingress_protection": ("IPX8", ""),
    "water_temperature": (35, "deg C"),
    "motor_power": (1.05 * 2400, "W"),
    "dc_window": (PLATE["dc_voltage_max_v"], "V"),
    "ac_window": (PLATE["ac_voltage_max_v"], "V"),
    "lift": (118, "m"),
    "pipe_length": (78 + 420, "m"),
    "velocity": (2, "m/s"),
    "duty_flow": (1.2 * 5, "m3/h"),
    "speed": (40, "% of rated speed"),
    "wire_to_water": (0.85 * 100 * HYDRAULIC_W / 2400, "%"),
    "hours_a_day": (20, "h/day"),
    "specific_capacity": (0.05 * 30, "m"),
    "safe_yield": (7, "m3/h"),
    "pumping_level": (78, "m"),
    "submergence": (PLATE["minimum_submergence_m"], "m"),
    "level_through_life": (78 - PLATE["minimum_submergence_m"], "m"),
    "screen": (84, "m"),
    "casing_clearance": (PLATE["outer_diameter_mm"] + 12, "mm"),
    "below_motor": (1, "m"),
    "motor_cooling": (0, "m/s"),
    "daily_limit": (60, "m3/day"),
    "pressure_at_duty": (25, "bar"),
    "pressure_at_shut_off": (25, "bar"),
    "surge": (25, "bar"),
    "high_points": (0, "m"),
    "profile_length": (0.02 * 420, "m"),
    "string_open_circuit_voltage": (420, "V"),
    "module_system_voltage": (1000, "V"),
    "string_voltage_hot": (140, "V"),
    "string_voltage_cold": (420, "V"),
    "modules_in_series": ("5 to 9", "modules"),
    "array_current": (40, "A"),
    "string_over_current": (25, "A"),
    "power_ratio": (1.2, "times"),
    "window_hours": (200, "h/year"),
    "grid_voltage": (260, "V"),
    "grid_phases": (1, "phases"),
    "grid_frequency": (0.98 * 50, "Hz"),
    "grid_power": (1000 * TAKEN_KW, "W"),
    "generator_voltage": (260, "V"),
    "generator_phases": (1, "phases"),
    "generator_frequency": (0.98 * 50, "Hz"),
    "generator_running": (TAKEN_KW, "kW"),
    "generator_starting": (1.5 * TAKEN_KW, "kW"),
    "generator_loading": (30, "%"),
    "dc_cable_drop": (3, "%"),
    "dc_cable_ampacity": (1.25 * 12.4, "A"),
    "dc_cable_voltage": (1500, "V"),
    "dc_cable_outdoor": ("made for it", ""),
    "ac_cable_protection": (38 * ((70 - 34) / 40) ** 0.5, "A"),
    "ac_cable_drop": (5, "%"),
    "ac_cable_ampacity": (1000 * TAKEN_KW / 230 / 0.85, "A"),
    "drop_cable_drop": (5, "%"),
    "drop_cable_ampacity": (PLATE["current_a"], "A"),
    "drop_cable_length": (78, "m"),
    "days_held": (1, "days"),
    "busiest_hour": (900 * 0.025 / 0.92 * 0.09 + 300 * 0.005 / 0.92 * 0.15, "m3"),
    "refill_time": (24, "h"),
    "inlet_height": (11, "m"),
    "outlet_head": (7, "m"),
    "per_person": (20, "L/person/day"),
    "yield_through_life": (60, "m3/day"),
    "pumping_test": (24, "h"),
    "yield_of_test": (70, "%"),
    "recovery": (1, "m"),
    # WHO, Guidelines for drinking-water quality, 4th edition with both addenda, 2022
    "quality_e_coli_per_100ml": (0, "per 100 mL"),
    "quality_arsenic_mg_l": (0.01, "mg/L"),
    "quality_fluoride_mg_l": (1.5, "mg/L"),
    "quality_nitrate_mg_l": (50, "mg/L"),
    "quality_nitrite_mg_l": (3, "mg/L"),
    "quality_manganese_mg_l": (0.08, "mg/L"),
    "quality_lead_mg_l": (0.01, "mg/L"),
    "quality_uranium_mg_l": (0.03, "mg/L"),
    "quality_boron_mg_l": (2.4, "mg/L"),
    "quality_chromium_mg_l": (0.05, "mg/L"),
    "quality_cadmium_mg_l": (0.003, "mg/L"),
    "quality_iron_mg_l": (0.3, "mg/L"),
    "quality_chloride_mg_l": (250, "mg/L"),
    "quality_sulfate_mg_l": (250, "mg/L"),
    "quality_sodium_mg_l": (200, "mg/L"),
    "quality_hardness_mg_l": (200, "mg/L"),
    "quality_dissolved_solids_mg_l": (1000, "mg/L"),
    "quality_turbidity_ntu": (5, "NTU"),
    "quality_ph": ("6.5 to 8.5", ""),
    "quality_nitrate_and_nitrite": (100, "%"),
}
# the head needed is worked out by the head's own tests
WORKED_OUT_ELSEWHERE = {"rated_head"}


def test_every_limit_of_the_full_site() -> None:
    found = checked(site())
    assert set(found) == set(FULL_SITE) | WORKED_OUT_ELSEWHERE
    assert {verdict.topic for verdict in found.values()} == set(TOPICS)
    for key, (limit, unit) in FULL_SITE.items():
        expected = limit if isinstance(limit, str) else pytest.approx(limit)
        assert found[key].limit == expected, key
        assert found[key].unit == unit, key


VALUES: list[tuple[str, float, dict[str, Any]]] = [
    # July 4.5 kWh/m2/day; 1.5 S, 37.2 E lies between cells of 6.28 and 6.12 at 3 S, 5.24 and 6.32 on the equator
    ("irradiation", 100 * (1 - 4.5 / ((0.6 * (6.28 + 5.24) + 0.4 * (6.12 + 6.32)) / 2)), {}),
    # February 24.5 deg C; 32 and 30, 32 and 31 deg C at sea level there, and 1200 m up
    ("air_temperature", 24.5 - ((0.6 * (32 + 32) + 0.4 * (30 + 31)) / 2 - 6.5 * 1.2), {}),
    ("rated_figures", 100 * HYDRAULIC_W / 2400, {}),
    ("largest_flow", 45, {"pump.max_flow_m3h": 45}),
    ("lift", 48 + 14, {}),
    ("insulation", 155 - 20, {}),
    ("below_motor", 96 - 78 - 0.8, {}),
    ("string_open_circuit_voltage", 8 * 41 * (1 + 0.0027 * 17), {}),  # 8 deg C, -0.27 %/K
    ("array_current", 1.25 * 12.4, {}),
    ("power_ratio", 8 * 400 / (2400 / 0.96), {}),
    ("grid_voltage", 1.08 * 230, {}),
    ("generator_voltage", 1.05 * 230, {}),
    # 1 % per 100 m from 305 m, 0.45 %/K from 32.2 deg C
    ("generator_running", 7.5 * (1 - 0.01 * (1200 - 305) / 100) * (1 - 0.0045 * (34 - 32.2)), {}),
    # 11.7 A, 60 m of 3.39 ohm/km at 70 deg C, of 8 * 34.2 V
    ("dc_cable_drop", 100 * 11.7 * 0.060 * 3.39 * (1 + 0.00393 * 50) / (8 * 34.2), {}),
    # 2400 W at 220 V and 0.85 in three phases: 7.410 A; 85 m of 3.30 and 0.08 ohm/km
    ("drop_cable_drop", 100 * 3**0.5 * 7.410 * 0.085 * (3.30 * 1.1965 * 0.85 + 0.08 * 0.5268) / 220, {}),
    # 2526 W at 230 V and 0.85: 12.92 A; 25 m of 3.08 and 0.08 ohm/km, out and back
    ("ac_cable_drop", 100 * 2 * 12.92 * 0.025 * (3.08 * 1.1965 * 0.85 + 0.08 * 0.5268) / 230, {}),
    # 38 A at 30 deg C, here 34
    ("dc_cable_ampacity", 38 * ((70 - 34) / 40) ** 0.5, {}),
    ("drop_cable_ampacity", 34 * ((70 - 34) / 40) ** 0.5, {}),
    # 47 A in the ground, at a mean of the warmest month that the weather gives as 24.6 deg C
    ("dc_cable_ampacity", 47 * ((70 - 24.6) / 50) ** 0.5, {"cables.dc.installation": "D"}),
    ("motor_cooling", 0.0, {"borehole.screen_top_m": 70}),  # intake beside the screen
    ("refill_time", 50 / 5.352, {}),
    ("days_held", 50 / ((900 * 0.025 + 300 * 0.005) / 0.92), {}),
    ("yield_through_life", (900 * 0.025 + 300 * 0.005) / 0.92 * 1.02**4, {}),  # four years of growth
    # 48 m at rest, 2 m more after four years of 0.5 m, and 5.352 m3/h at 0.9 m3/h per metre of which 0.99^4 are left
    ("level_through_life", 48 + 2 + 5.352 / 0.9 / 0.99**4, {"borehole.level_decline_m_per_year": 0.5}),
    ("generator_starting", 7.5, {"site.altitude_m": 0, "site.temperature_highest_c": 30}),
    ("high_points", 14 - 11, {}),
    ("speed_range", 100 * 1200 / 3000, {}),
    ("frame", 150, {}),
    ("water_temperature", 20, {}),
    ("motor_power", 2400, {}),
    ("ac_window", 230, {}),
    ("rated_head", 80, {}),
    ("pipe_length", 78 + 420, {}),
    ("velocity", DUTY_M3H / 3600 / (pi / 4 * 0.0514**2), {}),  # 63 mm with a wall of 5.8 mm
    ("power_limit", 2300, {"controller.power_limit_w": 2300}),
    ("duty_flow", DUTY_M3H, {}),
    ("speed", 100, {}),
    ("wire_to_water", 100 * 998.2 * 9.80665 * DUTY_M3H / 3600 * DUTY_M / 2400, {}),
    ("hours_a_day", (900 * 0.025 + 300 * 0.005) / 0.92 * 1.02**4 / DUTY_M3H, {}),
    ("specific_capacity", 7 / 0.9, {}),
    ("safe_yield", DUTY_M3H, {}),
    ("pumping_level", 48 + DUTY_M3H / 0.9, {}),
    ("submergence", 78 - 48 - DUTY_M3H / 0.9, {}),
    ("screen", 48 + DUTY_M3H / 0.9, {}),
    ("casing_clearance", 150, {}),
    ("motor_cooling", DUTY_M3H / 3600 / (pi / 4 * (0.150**2 - 0.098**2)), {}),
    ("motor_cooling", DUTY_M3H / 3600 / (pi / 4 * (0.120**2 - 0.098**2)), {"borehole.flow_sleeve_diameter_mm": 120}),
    ("daily_limit", (900 * 0.025 + 300 * 0.005) / 0.92 * 1.02**4, {}),
    ("pressure_at_duty", (DUTY_M - DUTY_M3H / 0.9 - 48 + 78) / 10.2155, {}),
    ("profile_length", 20, {"pipeline.profile.2.chainage_m": 400}),
    ("module_system_voltage", 8 * 41 * (1 + 0.0027 * 17), {}),
    ("modules_in_series", 8, {}),
    ("window_hours", 0, {}),
    ("string_over_current", 2 * 12.4, {"sources.solar.strings": 3}),
    ("string_over_current", 20, {"sources.solar.string_fuse_a": 20}),
    ("grid_phases", 1, {}),
    ("grid_frequency", 50, {}),
    ("grid_power", 5000, {}),
    ("grid_power", 5000 / 3, {"sources.grid.phases": 3, "sources.grid.voltage_v": 400}),
    ("grid_voltage", 1.08 * 400 / 3**0.5, {"sources.grid.phases": 3, "sources.grid.voltage_v": 400}),
    ("generator_phases", 1, {}),
    ("generator_frequency", 50, {}),
    # of the rating that altitude and heat leave, not of the nameplate's
    ("generator_loading", 100 * TAKEN_KW / (7.5 * (1 - 0.0895) * (1 - 0.0045 * 1.8)), {}),
    ("dc_cable_voltage", 8 * 41 * (1 + 0.0027 * 17), {}),
    ("ac_cable_protection", 16, {}),
    ("ac_cable_ampacity", 38 * 0.9487, {}),
    ("ac_cable_ampacity", 38 * 0.9487 * 0.70, {"cables.ac.grouped_circuits": 3}),
    # a generator of half the voltage drops twice as much, of half the voltage
    ("ac_cable_drop", 100 * 2 * 25.845 * 0.025 * (3.08 * 1.1965 * 0.85 + 0.08 * 0.5268) / 115,
     {"sources.generator.voltage_v": 115}),
    ("drop_cable_length", 85, {}),
    ("busiest_hour", 50, {}),
    ("inlet_height", 14, {}),
    ("outlet_head", 8, {}),
    ("per_person", 25, {}),
    ("current", 2400 / 230 / 0.85, {}),
    ("pumping_test", 48, {}),
    ("yield_of_test", 100 * 7 / 11, {}),
    ("recovery", 47.9 - 47.5, {}),
    ("recovery", 0, {"pumping_test.recovery_level_m": 47.2}),
    *((f"quality_{key}", value, {}) for key, value in QUALITY.items() if key not in ("ph", "conductivity_us_cm")),
    ("quality_dissolved_solids_mg_l", 0.64 * 650, {}),  # 640 mg/L for 1 dS/m
    ("quality_dissolved_solids_mg_l", 500, {"water_quality.dissolved_solids_mg_l": 500}),
    ("quality_nitrate_and_nitrite", 12 / 0.5 + 0.3 / 0.03, {}),
]  # fmt: skip
STRAIGHT: list[tuple[str, float, dict[str, Any]]] = [
    # working voltage falls about as the open-circuit one does, 0.27 % of 41 V per kelvin: cells of 34 deg C air in
    # full sun and a light wind stand at 34 + 1000 / (25 + 6.84) = 65.4 deg C
    ("string_voltage_hot", HOT_V, {}),
    ("string_voltage_cold", 8 * (34.2 + 0.0027 * 41 * (25 - 8)), {}),
    ("dc_window", 8 * (34.2 + 0.0027 * 41 * (25 - 8)), {}),
    ("dc_window", HOT_V, {"pump.plate.dc_voltage_min_v": 230}),
    ("current", 2400 / HOT_V, {"sources.grid": None, "sources.generator": None}),
]
SHALLOW_AND_DEEP = {"borehole.static_level_by_month_m": [48.0, 40.0, *[48.0] * 9, 57.0]}


@pytest.mark.parametrize(("key", "value", "changes"), STRAIGHT, ids=[key for key, *_ in STRAIGHT])
def test_working_voltage_by_hand(key: str, value: float, changes: dict[str, Any]) -> None:
    assert checked(site(changes))[key].value == pytest.approx(value, rel=0.015)


def test_every_check_of_the_full_site_has_its_value_fixed() -> None:
    fixed = {key for key, *_ in VALUES + STRAIGHT} | {"surge", "pressure_at_shut_off"}
    # these hold words, and are fixed where the steps and the quality of the water are
    assert set(checked(site())) - fixed == {"ingress_protection", "dc_cable_outdoor", "quality_ph"}


def test_the_deepest_water_counts_for_the_lift_and_the_shallowest_against_a_closed_valve() -> None:
    found = checked(site(SHALLOW_AND_DEEP))
    assert found["lift"].value == pytest.approx(57 + 14)
    assert found["pressure_at_shut_off"].value == pytest.approx((118 - 40 + 78) / 10.2155, rel=1e-4)
    assert "December" in found["pumping_level"].compared
    assert float(found["pumping_level"].value) > 57  # type: ignore[arg-type]


@pytest.mark.parametrize(("key", "value", "changes"), VALUES, ids=[key for key, *_ in VALUES])
def test_value_by_hand(key: str, value: float, changes: dict[str, Any]) -> None:
    assert checked(site(changes))[key].value == pytest.approx(value, rel=2e-3)


@pytest.mark.parametrize(
    ("key", "limit", "changes"),
    [
        ("rated_figures", 75, {"pump.rated_power_w": 1430, "pump.motor_efficiency_percent": 90}),
        ("velocity", 0.5, {"pipeline.segments.1.pipe": "PE100 SDR11 90"}),
        ("duty_flow", 0.7 * 5, {"pipeline.rise_to_tank_inlet_m": 55}),
        ("power_ratio", 2, {"sources.solar.strings": 2}),
        ("generator_loading", 70, {"sources.generator.rating_kw": 3}),
        ("grid_frequency", 1.02 * 50, {"sources.grid.frequency_hz": 51.2}),
        ("grid_voltage", 215, {"pump.plate.ac_voltage_min_v": 215}),
        ("generator_voltage", 230, {"pump.plate.ac_voltage_min_v": 230}),
        ("dc_window", 250, {"pump.plate.dc_voltage_min_v": 250}),
        ("yield_through_life", 20 * 7, {"borehole.daily_limit_m3": None}),
        ("yield_through_life", 20 * 2.5, {"borehole.safe_yield_m3h": 2.5}),
        ("per_person", 15, {"demand.users.0.litres_per_person_day": 14}),
        ("per_person", 3, {"demand.users.0.litres_per_person_day": 2, "demand.users.0.draw_profile": "school"}),
        ("daily_limit", 25, {"borehole.daily_limit_m3": 25}),
        ("modules_in_series", "none", {"controller.dc_voltage_min_v": 300, "controller.dc_voltage_limit_v": 320}),
    ],
)
def test_the_other_end_of_a_range(key: str, limit: float | str, changes: dict[str, Any]) -> None:
    verdict = checked(site(changes))[key]
    assert verdict.outcome != "pass" or key == "yield_through_life"
    assert verdict.limit == (limit if isinstance(limit, str) else pytest.approx(limit))


def test_starting_direct_on_line_by_code_letter_and_dip() -> None:
    # 2.4 kW at 80 % are 1.92 kW or 2.575 hp at the shaft, letter K with up to 9 kVA per hp: 23.17 kVA; with a reactance
    # of 25 % and a dip of 25 % that asks 3 x 0.25 x 23.17 = 17.38 kVA or 13.90 kW, of 35 % 8.61 kW
    direct = checked(site({"controller.starting": "direct", "sources.generator.rating_kw": 12}))["generator_starting"]
    assert direct.limit == pytest.approx(13.90, abs=0.005)
    assert direct.outcome == "caution"
    assert "23.2 kVA (code letter K, assumed)" in direct.compared
    assert "8.61 kW for 35 %" in direct.compared
    # letter F, up to 5.6 kVA per hp, and a stiffer alternator
    lighter = {"pump.plate.locked_rotor_code": "F", "sources.generator.transient_reactance_percent": 15}
    stiff = checked(site({"controller.starting": "direct"} | lighter))["generator_starting"]
    assert stiff.limit == pytest.approx(0.8 * 5.6 * 2.5747 * 0.15 * 3, rel=1e-3)


@pytest.mark.parametrize(
    ("changes", "needed"),
    [
        ({}, 0.0),
        ({"pump.rated_power_w": 2900}, 0.0762),
        ({"pump.plate.frame_in": 6, "pump.plate.outer_diameter_mm": 138}, 0.1524),
        ({"borehole.water_temperature_c": 36}, 0.9144),
        ({"borehole.water_temperature_c": 34}, 0.0),  # within the plate's 35 deg C
        ({"borehole.water_temperature_c": 31, "pump.plate.liquid_temperature_max_c": None}, 0.9144),
    ],
)
def test_what_cools_the_motor(changes: dict[str, Any], needed: float) -> None:
    # 3 hp are 2240 W at the shaft: 2400 W at 80 % are less, 2900 W are more
    assert checked(site(changes))["motor_cooling"].limit == pytest.approx(needed)


def test_a_motor_beside_the_screen_gets_no_flow_unless_a_sleeve_brings_it() -> None:
    large = {"pump.plate.frame_in": 6, "pump.plate.outer_diameter_mm": 138, "borehole.casing_inner_diameter_mm": 152}
    above, beside = (checked(site(large | {"borehole.screen_top_m": top}))["motor_cooling"] for top in (84, 70))
    assert (above.outcome, beside.outcome) == ("pass", "fail")
    assert "the water does not pass the motor" not in above.compared
    assert "the water does not pass the motor" in beside.compared
    sleeve = large | {"borehole.screen_top_m": 70, "borehole.flow_sleeve_diameter_mm": 150}
    assert checked(site(sleeve))["motor_cooling"].outcome == "pass"


def test_surge_by_hand() -> None:
    # 5.352 m3/h in 53.1 mm: 0.6713 m/s; anchored steel 3.6 mm thick, Poisson 0.3: 1409 m/s and 96.4 m on top of the
    # pressure at the pump
    from planner.water.properties import bulk_modulus_pa

    found = checked(site())
    bulk = float(bulk_modulus_pa(20))
    speed = (bulk / 998.2 / (1 + (1 - 0.3**2) * bulk / 2e11 * 53.1 / 3.6)) ** 0.5
    rise_m = speed * 0.6713 / 9.80665
    assert isinstance(found["surge"].value, float)
    assert isinstance(found["pressure_at_duty"].value, float)
    assert found["surge"].value - found["pressure_at_duty"].value == pytest.approx(rise_m / 10.2155, rel=2e-3)


def test_shut_off_by_hand() -> None:
    # 118 m of the pump less 48 m down to the water, at the pump 78 m below ground
    assert checked(site())["pressure_at_shut_off"].value == pytest.approx((118 - 48 + 78) / 10.2155, rel=1e-4)
