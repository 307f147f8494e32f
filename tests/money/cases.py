"""Invented scenarios and quantities for the money tests: everything free of charge unless a test gives it a price."""

from __future__ import annotations

from typing import Any

import numpy as np

from planner.money.simulated import Quantities, TopUpYears
from planner.money.terms import Terms
from planner.scenario.scenario import Scenario
from planner.scenario.sources import Generator, Tariff
from planner.sources.registry import GENERATOR as GENERATOR_KIND
from planner.sources.registry import GRID as GRID_KIND

MODULE: dict[str, Any] = {
    "power_w": 400.0,
    "voltage_mp_v": 34.0,
    "current_mp_a": 11.76,
    "voltage_oc_v": 41.0,
    "current_sc_a": 12.4,
    "voltage_oc_percent_per_k": -0.27,
}
SOLAR: dict[str, Any] = {
    "module": MODULE,
    "modules_in_series": 6,
    "strings": 2,
    "planes": [{"tilt_deg": 15.0, "azimuth_deg": 180.0}],
}
GRID: dict[str, Any] = {"tariff": {"price_per_kwh": 0.0}}
GENERATOR: dict[str, Any] = {"rating_kw": 10.0, "fuel_price_per_l": 0.0}
PLAIN: dict[str, Any] = {
    "name": "Invented place",
    "currency": "EUR",
    "site": {"place": "Nowhere", "latitude_deg": 10.0, "longitude_deg": 10.0, "time_zone": "+01:00"},
    "weather": {"kind": "monthly", "ghi_kwh_m2_day": [5.5] * 12, "temperature_c": [25.0] * 12},
    "demand": {"users": [{"kind": "people", "name": "Village", "count": 500.0, "litres_per_person_day": 20.0}]},
    "borehole": {
        "static_level_m": 30.0,
        "pump_depth_m": 60.0,
        "specific_capacity_m3h_per_m": 1.0,
        "safe_yield_m3h": 10.0,
    },
    "pipeline": {
        "rise_to_tank_inlet_m": 5.0,
        "segments": [{"name": "Rising pipe", "length_m": 65.0, "inner_diameter_mm": 50.0}],
    },
    "pump": {
        "name": "Invented pump",
        "kind": "centrifugal",
        "rated_flow_m3h": 5.0,
        "rated_head_m": 60.0,
        "max_flow_m3h": 8.0,
        "max_head_m": 90.0,
        "rated_power_w": 2000.0,
    },
    "sources": {"solar": SOLAR, "grid": GRID, "generator": GENERATOR},
    "tank": {"volume_m3": 20.0, "price": 0.0},
    "finance": {"discount_rate_percent": 5.0},
}


def merged(base: dict[str, Any], changes: dict[str, Any]) -> dict[str, Any]:
    """Put changes into a tree of tables."""
    result = dict(base)
    for key, value in changes.items():
        both = isinstance(value, dict) and isinstance(result.get(key), dict)
        result[key] = merged(result[key], value) if both else value
    return result


def make_scenario(**changes: Any) -> Scenario:
    """Build the plain scenario with some tables changed."""
    return Scenario.model_validate(merged(PLAIN, changes))


def make_terms(life_years: int = 20, discount_rate: float = 0.05, **changes: Any) -> Terms:
    """Build terms in constant prices with everything free of charge."""
    fields: dict[str, Any] = {"life_years": life_years, "prices": "constant", "discount_rate": discount_rate}
    if "tariff" in changes:
        fields["running"], fields["emissions"] = GRID_KIND.running, (GRID_KIND.emission,)
    if "generator" in changes or "fuel_price_per_l" in changes:
        fields["running"] = fields.get("running", ()) + GENERATOR_KIND.running
    if "generator" in changes:
        fields["emissions"] = (*fields.get("emissions", ()), GENERATOR_KIND.emission)
    return Terms(**(fields | changes))


def make_quantities(years: int, bands: int = 1, **changes: Any) -> Quantities:
    """Build quantities of nothing but the given ones; a number holds for every year, month and band."""

    def filled(name: str, *shape: int) -> np.ndarray:
        given = np.asarray(changes.get(name, 0.0), dtype=float)
        return np.broadcast_to(given, np.broadcast_shapes(given.shape, shape))

    nothing, months = np.zeros(years), np.zeros((years, 12))
    band_kwh = filled("grid_kwh", years, 12, bands)
    return Quantities(
        demand_m3=filled("demand_m3", years),
        delivered_m3=filled("delivered_m3", years),
        solar_kwh=filled("solar_kwh", years),
        top_ups={
            "grid": TopUpYears(
                band_kwh.sum(axis=(-1, -2)), nothing, nothing, band_kwh, filled("grid_peak_kw", years, 12)
            ),
            "generator": TopUpYears(
                filled("generator_kwh", years), filled("generator_hours", years), filled("fuel_l", years),
                months[..., None], months,
            ),
        },
    )  # fmt: skip


def make_generator(**changes: Any) -> Generator:
    """Build a generator."""
    return Generator(**(GENERATOR | changes))


def make_tariff(**changes: Any) -> Tariff:
    """Build a tariff; a flat free one unless changed."""
    if "blocks" not in changes:
        changes = {"price_per_kwh": 0.0} | changes
    return Tariff.model_validate(changes)
