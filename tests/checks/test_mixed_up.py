"""Figures that were mixed up are told in the engineer's words."""

from __future__ import annotations

from typing import Any

import pytest

from planner.scenario.errors import InputError
from tests.checks.sites import checked, site

SHALLOW: dict[str, Any] = {"borehole.safe_yield_m3h": 3, "pump.rated_flow_m3h": 2.5, "pump.rated_power_w": 1300}


@pytest.mark.parametrize(
    ("typed", "outcome", "inverse"),
    [
        (0.333, "pass", ""),  # 3 m3/h draw the water down by 9 m
        (3, "caution", "0.333"),  # 1 m of 30 m, or 9 m: metres per m3/h were typed
        (3 / 1.5, "pass", ""),  # 1.5 m of 30 m is the limit
        (12, "pass", ""),  # upside down it would be 36 m, more than there are
        (0.05, "caution", "20"),  # 60 m of 30 m, or 0.15 m
        (1, "pass", ""),
    ],
)
def test_a_specific_capacity_upside_down_is_doubted(typed: float, outcome: str, inverse: str) -> None:
    found = checked(site(SHALLOW | {"borehole.specific_capacity_m3h_per_m": typed}))["specific_capacity"]
    assert found.outcome == outcome
    assert not inverse or f"the specific capacity is {inverse}," in found.remedy
    assert found.changes == {}  # only the pumping test can tell


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"borehole.depth_m": 60}, "pump_depth_m 78 is not above the bottom of the borehole, depth_m 60"),
        ({"borehole.static_level_m": 80}, "pump_depth_m 78 is not below the water at rest (80 m)"),
    ],
)
def test_a_pump_that_does_not_hang_in_the_water_is_refused(changes: dict[str, Any], said: str) -> None:
    with pytest.raises(InputError, match=said.replace("(", r"\(").replace(")", r"\)")):
        site(changes)


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"pump.plate.dc_voltage_min_v": 24, "pump.plate.dc_voltage_max_v": 40}, "not even one of these modules fits"),
        (
            {"pump.plate.dc_voltage_min_v": 280, "pump.plate.dc_voltage_max_v": 330},
            "at least 10 for the 280 V needed at the hottest noon, at most 7 for the 330 V borne at rest in the cold",
        ),
        ({"pump.plate.dc_voltage_max_v": 330}, "one module less in series"),
    ],
)
def test_a_plate_voltage_that_the_modules_do_not_meet_says_how_many_would(changes: dict[str, Any], said: str) -> None:
    window = {"controller.dc_voltage_min_v": None, "controller.dc_voltage_max_v": None}
    found = checked(site(window | changes))["string_open_circuit_voltage"]
    assert found.outcome == "fail"
    assert said in found.remedy, found.remedy
    assert (found.changes == {}) == ("less" not in said)
