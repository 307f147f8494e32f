"""A plain supply option on a pump of 4 m3/h at 2 kW, whose numbers can be worked by hand."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import numpy as np

from planner.supply.generator import FuelUse
from planner.supply.option import Option
from planner.supply.series import Sun, TopUpSource
from planner.water.duty import FlowTable

HOURS = 8760
PUMP = FlowTable(
    power_w=np.tile([400.0, 800.0, 2000.0], (1, 12, 1)),
    flow_m3h=np.tile([0.0, 1.6, 4.0], (1, 12, 1)),
    torque=np.tile([0.2, 0.4, 1.0], (1, 12, 1)),
    start_power_w=np.full((1, 12), 400.0),
    full_power_w=np.full((1, 12), 2000.0),
    full_flow_m3h=np.full((1, 12), 4.0),
    limited_by=("rated speed",) * 12,
)
FUEL = FuelUse(rating_kw=5.0, idle_l_per_h_per_kw=0.08, marginal_l_per_kwh=0.25)


def sun_of(watts: np.ndarray | float, years: int) -> Sun:
    """One string that gives these watts, (hours,) or (hours, years)."""
    string_w = np.broadcast_to(np.reshape(watts, (-1, 1)) if np.ndim(watts) < 2 else watts, (HOURS, years))
    return Sun(np.array(string_w), np.arange(years), np.ones(years), (1,), 1.0)


def source_of(available: np.ndarray | float, years: int) -> TopUpSource:
    """A source with power enough, available for a share of each hour, (hours,)."""
    share = np.broadcast_to(np.reshape(available, (-1, 1)), (HOURS, years))
    return TopUpSource("", np.array(share), np.full((1, years), 1e12), 1.0, True)


def option(name: str, draw_m3: np.ndarray, tank_m3: float | list[float], **given: Any) -> Option:
    """Make an option; `draw_m3` is (hours, years), top-up sources are given by their names in order of priority."""
    tanks = np.atleast_1d(np.asarray(tank_m3, dtype=float))
    values: dict[str, Any] = {
        "users_share": np.ones((1, 1)),
        "sun": None,
        "start_share": np.full(tanks.size, 0.2),
        "stop_share": np.full(tanks.size, 0.4),
    } | {key: value for key, value in given.items() if not isinstance(value, TopUpSource)}
    top_ups = tuple(replace(value, name=key) for key, value in given.items() if isinstance(value, TopUpSource))
    sources = tuple(name.split(" + "))
    return Option(name, sources, PUMP, draw_m3, tank_m3=tanks, top_ups=top_ups, **values)
