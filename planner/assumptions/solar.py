"""The array where nothing, or only a part of it, is given: sources, module, modules in series, planes."""

from __future__ import annotations

from math import ceil, floor
from typing import Any

from planner.assumptions.draft import Draft
from planner.assumptions.pump import plate_window_v
from planner.supply.cables import string_fuse_a
from planner.text import text

GENERIC_MODULE: dict[str, Any] = {
    "power_w": 400.0,
    "voltage_mp_v": 31.0,
    "current_mp_a": 12.9,
    "voltage_oc_v": 37.0,
    "current_sc_a": 13.7,
    "voltage_oc_percent_per_k": -0.27,
    "system_voltage_v": 1000.0,
    "series_fuse_max_a": 25.0,
}
"""Round figures of a crystalline module of a common size; no one's datasheet. Common practice, no source."""
LEAST_TILT_DEG = 10.0
"""Tilt from which rain washes the glass. Common practice, no source."""
ARRAY_RATIO = 1.6
"""Power of an array over the input of the controller, the middle of the usual range. Common practice, no source."""
COLDEST_C, HOTTEST_C, CELL_OVER_AIR_K = -10.0, 35.0, 30.0
"""Air where the site gives no extremes, careful where voltage could destroy, and cells at noon over it; assumed."""
_STANDARD_C = 25.0
LONGEST_STRING = 100
"""Modules in series that are tried at most: no plate's voltage asks for more."""


def complete(draft: Draft) -> None:
    """Fill in the sun as the only source where none is given, and what is left out of the array."""
    sources = draft.get("sources")
    if sources is None or sources == {}:
        draft.fill("sources.solar", {}, text("assumed.sources"))
    if not isinstance(draft.get("sources.solar"), dict):
        return
    draft.fill("sources.solar.module", dict(GENERIC_MODULE), text("assumed.module"))
    _series(draft)
    _fuse(draft)
    if not draft.get("sources.solar.planes"):
        latitude = draft.level("site.latitude_deg")
        tilt = float(round(max(abs(latitude), LEAST_TILT_DEG)))
        plane = {"tilt_deg": min(tilt, 90.0), "azimuth_deg": 180.0 if latitude >= 0 else 0.0}
        draft.fill("sources.solar.planes", [plane], text("assumed.planes"))


def _fuse(draft: Draft) -> None:
    """Fill in the fuse of the strings where their number is open: from three strings on they need one."""
    module, short = "sources.solar.module", draft.number("sources.solar.module.current_sc_a")
    if short and draft.get("sources.solar.strings") in (None, "auto"):
        rating = string_fuse_a(short, draft.number(f"{module}.series_fuse_max_a"))
        if rating is not None:
            draft.fill("sources.solar.string_fuse_a", rating, text("assumed.string_fuse"))


def _series(draft: Draft) -> None:
    module = "sources.solar.module"
    power, rated = draft.number(f"{module}.power_w"), draft.number("pump.rated_power_w")
    working, open_v = draft.number(f"{module}.voltage_mp_v"), draft.number(f"{module}.voltage_oc_v")
    if not (power and rated and working and open_v):
        return
    low, high = draft.number("controller.dc_voltage_min_v"), draft.number("controller.dc_voltage_max_v")
    electronics = draft.number("controller.dc_voltage_limit_v") or high
    limits = [electronics, draft.number(f"{module}.system_voltage_v"), plate_window_v(draft)[1]]
    slope = draft.level(f"{module}.voltage_oc_percent_per_k", -0.3) / 100 * open_v
    cold_v = open_v + slope * (draft.level("site.temperature_lowest_c", COLDEST_C) - _STANDARD_C)
    hot_v = working + slope * (draft.level("site.temperature_highest_c", HOTTEST_C) + CELL_OVER_AIR_K - _STANDARD_C)
    highest = min([limit for limit in limits if limit], default=None)
    wanted = ARRAY_RATIO * rated / (draft.number("controller.efficiency_percent") or 96.0) * 100 / power
    most = LONGEST_STRING if highest is None else min(max(floor(highest / max(cold_v, 1.0)), 1), LONGEST_STRING)
    current = draft.number("pump.plate.current_a")
    least_v = max(low or 0.0, rated / current if current else 0.0)
    fewest = min(max(ceil(least_v / max(hot_v, 1.0)), 1), most)

    def off(count: int) -> tuple[float, int]:
        """How far strings of a length stay from the power wanted; the longer of two that are alike, for its current."""
        return round(abs(max(round(wanted / count), 1) * count - wanted), 6), -count

    series = min(range(fewest, most + 1), key=off)
    key = "assumed.series" if low and highest else "assumed.series_by_power"
    how = text(key, fewest=fewest, most=most, ratio=f"{ARRAY_RATIO:g}")
    draft.fill("sources.solar.modules_in_series", series, how)
