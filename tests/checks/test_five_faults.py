"""A scenario with five faults gets all five named, and the remedies, applied as they are said, pass."""

from __future__ import annotations

import re
from typing import Any

import pytest

from planner.checks.verdict import Verdict
from tests.checks.sites import checked, site

# a pump 40 m short of head and rated far above the yield, one module too many, a thin pipe and a set too small
FAULTS: dict[str, Any] = {
    "pipeline.rise_to_tank_inlet_m": 48.57,
    "pump.rated_head_m": 54.8,
    "pump.max_head_m": 76.4,
    "pump.rated_flow_m3h": 7.5,
    "pump.max_flow_m3h": 12,
    "borehole.safe_yield_m3h": 5.5,
    "sources.solar.modules_in_series": 10,
    "controller.dc_voltage_limit_v": 420,
    "pipeline.segments.1.pipe": "PE100 SDR11 63",
    "pipeline.segments.1.pressure_class_bar": 4,
    "sources.generator.rating_kw": 2.5,
}
NAMED = {
    "rated_head": "a pump rated at about",
    "safe_yield": "rated at no more than 5.22 m3/h",
    "string_open_circuit_voltage": "one module less in series",
    "pressure_at_duty": "Main to the tank",
    "generator_running": "a generator rated at",
}


def _number(pattern: str, verdict: Verdict) -> float:
    found = re.search(pattern, verdict.remedy)
    assert found is not None, verdict.remedy
    return float(found.group(1))


def test_all_five_are_named_and_their_remedies_pass() -> None:
    found = checked(site(FAULTS))
    for key, words in NAMED.items():
        assert found[key].outcome == "fail", found[key]
        assert words in found[key].remedy, found[key].remedy
    assert found["rated_head"].margin == "40.0 m short"

    pump = found["rated_head"]
    head, flow = _number(r"at about (\d+) m", pump), _number(r"m at ([\d.]+) m3/h", pump)
    power_kw = _number(r"\(about ([\d.]+) kW", pump)
    changed = FAULTS | {
        "pump.rated_head_m": head,
        "pump.max_head_m": head * FAULTS["pump.max_head_m"] / FAULTS["pump.rated_head_m"],
        "pump.rated_flow_m3h": flow,
        "pump.max_flow_m3h": flow * FAULTS["pump.max_flow_m3h"] / FAULTS["pump.rated_flow_m3h"],
        "pump.rated_power_w": 1000 * power_kw,
        "pump.plate.current_a": 20,
        "cables.ac.protective_device_a": 20,
        "sources.solar.modules_in_series": 10 - 1,
        "pipeline.segments.1.pressure_class_bar": None,
        "pipeline.segments.1.pipe": re.search(r"PE100 SDR[\d.]+ 63", found["pressure_at_duty"].remedy),
        "sources.generator.rating_kw": _number(r"rated at ([\d.]+) kW", found["generator_running"]),
    }
    changed["pipeline.segments.1.pipe"] = changed["pipeline.segments.1.pipe"].group()
    after = checked(site(changed))
    for key in (*NAMED, "lift", "modules_in_series", "generator_starting", "generator_loading", "pressure_at_shut_off"):
        assert after[key].outcome == "pass", after[key]
    assert not [verdict for verdict in after.values() if verdict.outcome == "fail"]


@pytest.mark.parametrize("rise_m", [14, 150])
def test_a_pump_that_cannot_lift_at_all_is_a_verdict_and_not_an_error(rise_m: float) -> None:
    weak = {"pump.rated_head_m": 40, "pump.max_head_m": 55, "pipeline.rise_to_tank_inlet_m": rise_m}
    found = checked(site(weak))
    needed = 48 + rise_m
    assert found["lift"].outcome == "fail"
    assert found["lift"].value == pytest.approx(needed)
    assert found["lift"].margin == f"{needed - 55:.{1 if needed - 55 < 99.95 and needed % 1 else 0}f} m short"
    assert {"duty_flow", "speed", "wire_to_water", "motor_power"}.isdisjoint(found)
    assert "the flow to plan on" in found["velocity"].compared
    head = _number(r"at about (\d+) m", found["lift"])
    lifted = weak | {"pump.rated_head_m": head, "pump.max_head_m": 1.4 * head, "pump.rated_power_w": 30 * head}
    after = checked(site(lifted))
    assert after["lift"].outcome == after["rated_head"].outcome == "pass"
