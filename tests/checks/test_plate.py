"""The nameplate held against the site, and the facts of the trade about it (common practice, no source)."""

from __future__ import annotations

from typing import Any

import pytest

from planner.checks.plate import CHECKS, CLASS_LIMIT_C, PlateLine, plate_lines, protection_words
from planner.scenario.scenario import Scenario
from planner.text.en import SENTENCES
from planner.water.pump import pump_model
from tests.checks.sites import basis, checked, site

# a plate as a practitioner read it: 2200 W, 2 m3/h at 180 m rated, 6 m3/h and 257 m as maxima
READ: dict[str, Any] = {
    "pump.rated_power_w": 2200,
    "pump.rated_flow_m3h": 2,
    "pump.rated_head_m": 180,
    "pump.max_flow_m3h": 6,
    "pump.max_head_m": 257,
}


def _lines(scenario: Scenario) -> dict[str, PlateLine]:
    looked_at = basis(scenario)
    return {line.key: line for line in plate_lines(looked_at, list(checked(scenario).values()))}


def test_every_line_is_decoded() -> None:
    lines = _lines(site())
    assert lines["frame"].printed == "4 in"
    assert lines["frame"].meaning == "size class of the motor; does not go into a casing under 102 mm"
    assert lines["insulation"].meaning == "the winding stands 155 deg C (IEC 60085)"
    assert "dust-tight" in lines["ingress"].meaning
    assert "continuous immersion" in lines["ingress"].meaning
    assert lines["dc_supply"].printed == "100 to 420 V"
    assert lines["speed"].printed == "1200 to 3000 rpm"
    assert all(line.printed != "not given" for line in lines.values())
    assert {line.outcome for line in lines.values()} == {"pass"}


def test_lines_that_are_not_given_say_what_to_look_for() -> None:
    lines = _lines(site({"pump.plate": {}}))
    blank = [line for line in lines.values() if line.printed == "not given"]
    assert len(blank) == 11
    assert all(line.meaning.startswith("look for ") and line.outcome == "not given" for line in blank)


def test_each_line_says_what_this_site_asks_of_it() -> None:
    lines = _lines(site({"pump.plate.frequency_hz": "50/60", "sources.generator.frequency_hz": 60}))
    assert lines["rated_flow"].asks == "at most 7 m3/h, the borehole's safe yield"
    assert lines["rated_head"].asks.endswith(" m at 5 m3/h")
    assert lines["frequency"].printed == "50/60"
    assert lines["frequency"].asks == "50 Hz from the grid, 60 Hz from the generator"
    assert lines["frequency"].outcome == "pass"
    assert lines["frame"].asks == "goes into a casing of 150 mm"
    assert lines["largest_flow"].asks == ""


def test_a_line_takes_the_worst_of_its_checks() -> None:
    lines = _lines(site({"sources.generator.frequency_hz": 60, "sources.generator.voltage_v": 400}))
    assert (lines["frequency"].outcome, lines["ac_supply"].outcome, lines["phases"].outcome) == ("fail", "fail", "pass")


@pytest.mark.parametrize(
    ("controller_v", "outcome"), [(300, "pass"), (420, "fail")], ids=["limit of the controller", "limit of the plate"]
)
def test_the_open_circuit_voltage_counts_for_the_plate_where_the_limit_is_the_plates(
    controller_v: float, outcome: str
) -> None:
    # ten modules of 41 V stay within 420 V at work, and exceed it at rest in the cold
    changes = {"sources.solar.modules_in_series": 10, "controller.dc_voltage_limit_v": controller_v}
    assert checked(site(changes))["string_open_circuit_voltage"].outcome == "fail"
    assert _lines(site(changes))["dc_supply"].outcome == outcome


def test_every_line_has_its_checks_and_words() -> None:
    judged = {key for keys in CHECKS.values() for key in keys}
    assert judged <= checked(site()).keys()
    assert set(_lines(site())) == set(CHECKS)


def test_the_plate_of_2200_w() -> None:
    # common practice, no source: 0.98 kW of water, 45 per cent of the plate, and a model that keeps the three points
    scenario = site(READ)
    assert "45 %" in _lines(scenario)["rated_power"].meaning
    assert checked(scenario)["rated_figures"].value == pytest.approx(44.6, abs=0.1)
    model = pump_model(scenario.pump)
    assert float(model.head_m(2.0, 1.0)) == pytest.approx(180)
    assert (model.max_flow_m3h, model.max_head_m) == (6, 257)


def test_letters_and_digits() -> None:
    # common practice, no source: F stands 155 deg C and only H is above it among the usual letters; digits 0-6 and 0-8
    assert CLASS_LIMIT_C["F"] == 155
    assert [letter for letter in "YAEBFH" if CLASS_LIMIT_C[letter] > 155] == ["H"]
    assert {f"plate.solids.{digit}" for digit in "0123456"} <= SENTENCES.keys()
    assert {f"plate.water.{digit}" for digit in "012345678"} <= SENTENCES.keys()
    assert "dust-tight" in protection_words("IP68")
    assert "continuous immersion" in protection_words("IP68")


@pytest.mark.parametrize(("casing_mm", "outcome"), [(101.5, "fail"), (101.6, "pass"), (125, "pass")])
def test_a_four_inch_motor_does_not_go_into_a_casing_under_four_inches(casing_mm: float, outcome: str) -> None:
    # common practice, no source
    assert checked(site({"borehole.casing_inner_diameter_mm": casing_mm}))["frame"].outcome == outcome


@pytest.mark.parametrize(("water_c", "outcome"), [(34, "pass"), (35, "pass"), (35.1, "fail")])
def test_water_warmer_than_the_plate_is_outside_the_duty(water_c: float, outcome: str) -> None:
    # common practice, no source: 35 deg C is usual
    assert checked(site({"borehole.water_temperature_c": water_c}))["water_temperature"].outcome == outcome


def test_a_varying_source_asks_for_a_variable_speed_motor() -> None:
    # common practice, no source
    one_speed = checked(site({"pump.plate.speed_min_rpm": 2900}))["speed_range"]
    assert one_speed.outcome == "caution"
    assert one_speed.remedy == "choose a variable-speed motor"


def test_head_near_the_largest_and_not_the_rated_one_is_told() -> None:
    # common practice, no source: the head needed should sit near the rated head, and the plan on the rated flow
    near_largest = checked(site({"pipeline.rise_to_tank_inlet_m": 55}))
    assert near_largest["lift"].outcome == "pass"
    assert near_largest["rated_head"].outcome == "fail"
    assert near_largest["duty_flow"].outcome == "caution"


def test_total_dynamic_head_is_static_drawdown_and_friction() -> None:
    # common practice, no source: static head, dynamic head and friction make the total
    from planner.checks.head import head_parts
    from planner.text import text

    looked_at = basis(site())
    parts = dict(head_parts(looked_at.system, 5.0, 0))
    assert parts[text("head_part.static")] == 48
    assert parts[text("head_part.drawdown")] == pytest.approx(5 / 0.9)
    assert parts[text("head_part.rise")] == 14
    assert sum(parts.values()) == pytest.approx(looked_at.needed_head_m)
