"""The rating of a generator that is described without one: the smallest that runs and starts the motor here."""

from __future__ import annotations

from math import ceil
from typing import Any

from pydantic import ValidationError

from planner.assumptions.cables import HOT_AIR_C
from planner.assumptions.draft import Draft
from planner.resource.sun import altitude_from_grid
from planner.scenario.sources import Generator
from planner.supply.generator import (
    DIP_GOOD,
    HEAVY_LOAD,
    RATING_STEP_KW,
    SOFT_GOOD,
    derated_rating_kw,
    locked_rotor_kva,
    rating_for_dip_kw,
    usual_locked_rotor_code,
)
from planner.text import text

AC_EFFICIENCY_PERCENT, MOTOR_EFFICIENCY_PERCENT = 95.0, 80.0
"""As the scenario's own defaults."""


def complete(draft: Draft) -> None:
    """Fill in the rating: what the checks of a generator call good, left over at the site's altitude and heat."""
    table, rated_w = draft.get("sources.generator"), draft.number("pump.rated_power_w")
    if not isinstance(table, dict) or table.get("rating_kw") not in (None, "auto") or not rated_w:
        return
    try:
        of_one_kw = Generator.model_validate(table | {"rating_kw": 1.0})
    except ValidationError:
        return  # the check that follows names what is wrong
    hottest_c = draft.level("site.temperature_highest_c", HOT_AIR_C)
    left = float(derated_rating_kw(of_one_kw, _altitude_m(draft), hottest_c))
    if of_one_kw.phases == 3 and draft.get("pump.plate.phases") == 1:
        left /= 3
    if left <= 0:
        return
    need_kw = rated_w / 1000 / (draft.number("controller.ac_efficiency_percent") or AC_EFFICIENCY_PERCENT) * 100
    good_kw = max(_starting_kw(draft, of_one_kw, need_kw, rated_w), need_kw / HEAVY_LOAD)
    rating_kw = RATING_STEP_KW * ceil(good_kw / left / RATING_STEP_KW - 1e-9)
    how = text("assumed.rating", need=need_kw, percent=100 * left, hottest=hottest_c)
    draft.fill("sources.generator.rating_kw", rating_kw, how)


def _altitude_m(draft: Draft) -> float:
    given: Any = draft.get("site.altitude_m")
    if given is not None:
        return draft.level("site.altitude_m")
    return altitude_from_grid(draft.level("site.latitude_deg"), draft.level("site.longitude_deg"))


def _starting_kw(draft: Draft, generator: Generator, need_kw: float, rated_w: float) -> float:
    if draft.get("controller.starting") != "direct":
        return SOFT_GOOD * need_kw
    efficiency = draft.number("pump.motor_efficiency_percent") or MOTOR_EFFICIENCY_PERCENT
    shaft_kw = rated_w / 1000 * efficiency / 100
    code = draft.get("pump.plate.locked_rotor_code") or usual_locked_rotor_code(shaft_kw)
    start_kva = locked_rotor_kva(shaft_kw, code)
    return max(need_kw, rating_for_dip_kw(start_kva, generator.transient_reactance_percent / 100, DIP_GOOD))
