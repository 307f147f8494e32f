"""The nameplate in plain words, and the facts of the trade about it (common practice, no source)."""

from __future__ import annotations

from typing import Any

import pytest

from planner.checks.plate import CLASS_LIMIT_C, plate_lines, protection_words
from planner.scenario.waterworks import Pump
from planner.text.en import SENTENCES
from planner.water.pump import pump_model
from tests.checks.sites import checked, site

# a plate as a practitioner read it: 2200 W, 2 m3/h at 180 m rated, 6 m3/h and 257 m as maxima
READ: dict[str, Any] = {
    "pump.rated_power_w": 2200,
    "pump.rated_flow_m3h": 2,
    "pump.rated_head_m": 180,
    "pump.max_flow_m3h": 6,
    "pump.max_head_m": 257,
}


def _printed(pump: Pump) -> dict[str, tuple[str, str]]:
    return {line.item: (line.printed, line.meaning) for line in plate_lines(pump)}


def test_every_line_is_decoded() -> None:
    lines = _printed(site().pump)
    assert lines["Frame"] == ("4 in", "size class of the motor; does not go into a casing under 102 mm")
    assert lines["Insulation class"] == ("F", "the winding stands 155 deg C (IEC 60085)")
    assert "dust-tight" in lines["Ingress protection"][1]
    assert "continuous immersion" in lines["Ingress protection"][1]
    assert lines["DC supply"][0] == "100 to 420 V"
    assert lines["Speed"][0] == "1200 to 3000 rpm"
    assert all(printed != "not given" for printed, _ in lines.values())


def test_lines_that_are_not_given_say_what_to_look_for() -> None:
    lines = _printed(site({"pump.plate": {}}).pump)
    blank = [item for item, (printed, _) in lines.items() if printed == "not given"]
    assert len(blank) == 10
    assert all(lines[item][1].startswith("look for ") for item in blank)


def test_the_plate_of_2200_w() -> None:
    # common practice, no source: 0.98 kW of water, 45 per cent of the plate, and a model that keeps the three points
    scenario = site(READ)
    lines = _printed(scenario.pump)
    assert "0.98 kW" in lines["Rated power"][1]
    assert "45 %" in lines["Rated power"][1]
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
    from tests.checks.sites import basis

    looked_at = basis(site())
    parts = dict(head_parts(looked_at.system, 5.0, 0))
    assert parts[text("head_part.static")] == 48
    assert parts[text("head_part.drawdown")] == pytest.approx(5 / 0.9)
    assert parts[text("head_part.rise")] == 14
    assert sum(parts.values()) == pytest.approx(looked_at.needed_head_m)
