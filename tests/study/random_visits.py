"""Plausible notes of visits, drawn at random from a seed. Places, people, pumps and prices are invented."""

from __future__ import annotations

from typing import Any

import numpy as np

LAND = (
    (-26.0, -16.0, 16.0, 30.0), (-12.0, 8.0, 15.0, 33.0), (8.0, 15.0, -5.0, 32.0), (5.0, 12.0, 35.5, 42.0),
    (17.0, 27.5, 75.0, 83.0), (-20.0, -4.0, -60.0, -43.0), (-22.0, -16.0, -68.5, -61.0),
)  # fmt: skip
"""Inland boxes of Africa, South Asia and Latin America: lowest and highest latitude, then longitude [deg]."""
PUMPS = ("fit", "fit", "fit", "weak", "strong", "window low", "window high", "thirsty")
"""What is drawn of the pump; 'thirsty' takes more than the borehole was tested at."""
FRICTION_SHARE = 0.015
"""Head lost in a metre of main [m], to draw a pump near what the site takes."""
OVERALL_EFFICIENCY = 0.45


def random_visit(seed: int) -> dict[str, Any]:
    """Draw the notes of one visit, over two to four years to be quick; the same for the same seed."""
    draw = np.random.default_rng(seed)

    def between(low: float, high: float, digits: int = 1) -> float:
        return round(float(draw.uniform(low, high)), digits)

    def spread(low: float, high: float, digits: int) -> float:
        """Draw evenly by proportion."""
        return round(float(np.exp(draw.uniform(np.log(low), np.log(high)))), digits)

    def one_of(*choices: Any) -> Any:
        return choices[int(draw.integers(len(choices)))]

    south, north, west, east = one_of(*LAND)
    static, test_flow, length = between(5, 120, 0), spread(0.5, 15, 1), spread(20, 3000, 0)
    drawdown, rise = between(1, 25, 0), between(-min(20.0, length / 2), min(80.0, length / 2), 0)
    pump_depth = static + drawdown + between(3, 20, 0)
    raw: dict[str, Any] = {
        "name": f"Visit {seed} (invented)",
        "site": {"latitude_deg": between(south, north, 2), "longitude_deg": between(west, east, 2)},
        "borehole": {
            "depth_m": pump_depth + between(4, 40, 0),
            "static_level_m": static,
            "test_flow_m3h": test_flow,
            "drawdown_m": drawdown,
            "pump_depth_m": pump_depth,
        },
        "pipeline": {"length_m": length, "rise_to_tank_inlet_m": rise},
        "demand": {"users": [{"kind": "people", "count": spread(50, 5000, -1)}]},
        "finance": {"analysis_period_years": int(draw.integers(2, 5))},
    }
    head = max(static + drawdown + rise + FRICTION_SHARE * length, 10.0)
    raw["pump"] = _pump(one_of(*PUMPS), test_flow, head, between, one_of)
    raw["sources"] = one_of(
        {"solar": {}},
        {"solar": {}, "grid": _grid(between, one_of)},
        {"solar": {}, "generator": {"rating_kw": round(raw["pump"]["rated_power_w"] / 1000 * between(1.2, 4), 1)}},
    )
    prices = _prices(between)
    kept = one_of(None, None, "some", "all")
    if kept:
        given = {key: value for key, value in prices.items() if kept == "all" or draw.random() < 0.5}
        raw |= {"currency": "USD", "prices": given}
    return raw


def _pump(kind: str, test_flow: float, head: float, between: Any, one_of: Any) -> dict[str, Any]:
    by_head = {"weak": (0.25, 0.6), "strong": (2.0, 4.0)}.get(kind, (1.0, 1.4))
    by_flow = (1.2, 2.5) if kind == "thirsty" else (0.6, 1.0)
    rated_head = round(head * between(*by_head, 2), 0)
    rated_flow = max(round(test_flow * between(*by_flow, 2), 1), 0.3)
    power = max(round(9.81 * rated_head * rated_flow / 3.6 / OVERALL_EFFICIENCY, -1), 100.0)
    # a plate for the power: small pumps at low voltage, others at the usual one of a controller
    low, high = {"window low": (24, 48), "window high": (550, 1000)}.get(
        kind, (60, 150) if power < 600 else (110, 400) if power < 4000 else (250, 800)
    )
    plate: dict[str, Any] = {"dc_voltage_v": f"{low}-{high} V"}
    if one_of(True, False):
        plate |= {"current_a": round(1.2 * power / (0.5 * (low + high)), 1), "ingress_protection": "IP68"}
    if one_of(True, False):
        plate |= {"ac_voltage_v": "200-240 V" if power < 4000 else "380-415 V", "frequency_hz": "50/60"}
    return {
        "rated_flow_m3h": rated_flow,
        "rated_head_m": rated_head,
        "max_flow_m3h": round(rated_flow * between(1.15, 1.9, 2), 2),
        "max_head_m": round(rated_head * between(1.25, 1.7, 2), 0),
        "rated_power_w": power,
        "plate": plate,
    }


def _grid(between: Any, one_of: Any) -> dict[str, Any]:
    hours = int(between(2, 18, 0))
    outages = {"hours_per_day": between(1, 16), "mean_duration_h": between(1, 12)}
    return one_of(
        {}, {"hours": [[4, 4 + hours]]}, {"outages": outages}, {"hours": [[4, 4 + hours]], "outages": outages}
    )


def _prices(between: Any) -> dict[str, float]:
    return {
        "pv_per_kwp": between(500, 1500, 0),
        "tank_per_m3": between(80, 300, 0),
        "pipe_per_m": between(2, 15),
        "pump": between(500, 4000, 0),
        "controller": between(200, 1500, 0),
        "borehole": between(3000, 15000, 0),
        "grid_connection": between(500, 5000, 0),
        "grid_per_kwh": between(0.05, 0.4, 2),
        "generator": between(500, 5000, 0),
        "fuel_per_l": between(0.8, 2.0, 2),
    }
