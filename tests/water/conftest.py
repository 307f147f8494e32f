"""Invented waterworks for the tests; each builder takes the fields to change."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from planner.scenario.waterworks import Borehole, CurvePoint, Pipeline, Pump, Segment


@pytest.fixture(scope="session")
def make_borehole() -> Callable[..., Borehole]:
    def build(**changes: Any) -> Borehole:
        fields: dict[str, Any] = {
            "static_level_m": 60.0,
            "pump_depth_m": 90.0,
            "specific_capacity_m3h_per_m": 1.0,
            "safe_yield_m3h": 50.0,
        }
        return Borehole(**(fields | changes))

    return build


@pytest.fixture(scope="session")
def make_pipeline() -> Callable[..., Pipeline]:
    def build(**changes: Any) -> Pipeline:
        fields: dict[str, Any] = {
            "rise_to_tank_inlet_m": 70.0,
            "residual_head_m": 3.0,
            "segments": [
                Segment(name="riser", length_m=90.0, pipe="steel medium 40", fittings_k=4.0),
                Segment(name="main", length_m=850.0, pipe="PE100 SDR11 50", fittings_k=10.0),
            ],
        }
        return Pipeline(**(fields | changes))

    return build


@pytest.fixture(scope="session")
def make_pump() -> Callable[..., Pump]:
    def build(**changes: Any) -> Pump:
        fields: dict[str, Any] = {
            "name": "invented",
            "kind": "centrifugal",
            "rated_flow_m3h": 2.0,
            "rated_head_m": 180.0,
            "max_flow_m3h": 6.0,
            "max_head_m": 257.0,
            "rated_power_w": 2200.0,
        }
        if changes.get("kind") == "helical-rotor":
            fields |= {"rated_flow_m3h": 2.4, "max_flow_m3h": 2.9}
        return Pump(**(fields | changes))

    return build


@pytest.fixture(scope="session")
def datasheet() -> list[CurvePoint]:
    """Points of an invented pump whose plate is that of `make_pump`."""
    return [
        CurvePoint(flow_m3h=1.0, head_m=225.0, power_w=1800.0),
        CurvePoint(flow_m3h=2.0, head_m=180.0, power_w=2200.0),
        CurvePoint(flow_m3h=3.0, head_m=130.0, power_w=2300.0),
        CurvePoint(flow_m3h=4.5, head_m=60.0, power_w=2250.0),
    ]
