"""Examples shown beside the cells of a blank form: the starter scenario, and invented values for what it leaves out."""

from __future__ import annotations

import tomllib
from functools import cache
from importlib import resources
from typing import Any

# Invented, like the starter. They need not make sense together: each only shows how its own cell is filled.
_FURTHER = """
[site]
altitude_m = 1200

[weather]
daily_law = "by_latitude"
file = "my-weather.csv"
file_format = "auto"

[borehole]
static_level_by_month_m = [48, 48.5, 49, 49, 48, 47, 46.5, 46, 46.5, 47, 47.5, 48]
step_test = [{ flow_m3h = 3, drawdown_m = 3.1 }, { flow_m3h = 5, drawdown_m = 5.6 }]
daily_limit_m3 = 60
water_temperature_c = 22
screen_top_m = 82

[pipeline]
residual_head_m = 2
friction = "darcy-weisbach"
profile = [{ chainage_m = 0, level_m = 0 }, { chainage_m = 210, level_m = 9.5 }]

[pump]
speed_min_percent = 40
motor_efficiency_percent = 78
curve = [{ flow_m3h = 0, head_m = 118, power_w = 1500 }, { flow_m3h = 5, head_m = 80, power_w = 2400 }]

[pump.plate]
dc_voltage_min_v = 120
dc_voltage_max_v = 440
ac_voltage_min_v = 200
ac_voltage_max_v = 260
phases = 3
frequency_hz = 50
current_a = 9.5
speed_min_rpm = 900
speed_max_rpm = 3000
frame_in = 4
outer_diameter_mm = 98
insulation_class = "F"
ingress_protection = "IP68"
liquid_temperature_max_c = 35
minimum_submergence_m = 1

[controller]
power_limit_w = 4000
efficiency_percent = 96
ac_efficiency_percent = 95
dc_voltage_limit_v = 450
maintenance_percent_per_year = 1

[topup]
start_level_percent = 20
stop_level_percent = 40
start_level_without_sun_percent = 70
stop_level_without_sun_percent = 95

[sources.solar]
soiling_percent = 4
structure_life_years = 25

[sources.grid]
hours = [[5, 9], [17, 21.5]]
power_limit_w = 5000
voltage_v = 400
phases = 3
frequency_hz = 50
co2_kg_per_kwh = 0.4

[sources.grid.tariff]
bands = [{ name = "Evening", hours = [[18, 22]], months = [6, 7, 8], price_per_kwh = 0.31 }]
blocks = [{ up_to_kwh_month = 100, price_per_kwh = 0.12 }, { price_per_kwh = 0.19 }]
demand_charge_per_kw_month = 6
levy_per_kwh = 0.01
price_growth_percent_per_year = 1

[sources.generator]
hours = [[6, 20]]
voltage_v = 400
phases = 3
frequency_hz = 50

[tank]
price = 5000
outlet_height_m = 6

[service]
demand_met_worst_year_percent = 93
options = ["solar", "solar + grid"]
reference = "generator"

[[costs.items]]
name = "Fence"
quantity = 120
unit = "m"
unit_price = 9
life_years = 15
sources = ["solar"]

[finance]
prices = "constant"
inflation_percent = 3
loan_percent = 20
loan_rate_percent = 9
loan_years = 5
"""

_USERS: tuple[dict[str, Any], ...] = (
    {
        "kind": "irrigation",
        "name": "School garden",
        "area_m2": 1500,
        "application_efficiency_percent": 70,
        "net_requirement_mm_day": [4, 4, 4, 3, 2, 2, 2, 3, 4, 4, 3, 3],
    },
    {"kind": "volume", "name": "Clinic", "m3_per_day": [2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2]},
)


@cache
def examples() -> dict[str, Any]:
    """Return example values in the shape of a scenario."""
    starter = tomllib.loads(resources.files("planner.scenario").joinpath("starter.toml").read_text("utf-8"))
    merged = _merged(tomllib.loads(_FURTHER), starter)
    merged["demand"]["users"] = [*starter["demand"]["users"], *_USERS]
    merged["overrides"] = {"solar + grid": {"tank": {"volume_m3": 30}}}
    return merged


def _merged(under: dict[str, Any], over: dict[str, Any]) -> dict[str, Any]:
    merged = dict(under)
    for key, value in over.items():
        merged[key] = _merged(under[key], value) if isinstance(value, dict) and key in under else value
    return merged
