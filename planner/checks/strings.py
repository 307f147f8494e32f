"""Strings in parallel: their current, what protects one from the others, and the array's power over the pump's."""

from __future__ import annotations

from math import ceil, floor

from planner.checks.array import TOPIC, cold_string_v
from planner.checks.basis import Basis
from planner.checks.verdict import (
    Remedy,
    Verdict,
    at_least,
    at_most,
    figure,
    highest,
    lowest,
    missing,
    reserve,
    room,
)
from planner.scenario.solar import Solar
from planner.supply.cables import FUSE_LEAST, FUSE_MOST, PV_CURRENT_FACTOR, string_fuse_a
from planner.text import text

POWER_RATIO = (1.2, 2.0)
FEW_STRINGS = 2
"""Strings of which none can be harmed by the other: IEC 62548, as a module bears its own short-circuit current."""


def verdicts(basis: Basis) -> list[Verdict]:
    """Judge the strings; nothing without an array."""
    solar = basis.scenario.sources.solar
    if solar is None:
        return []
    return [_current(basis, solar), _over_current(basis, solar), _ratio(basis, solar)]


def strings_remedy(basis: Basis, count: int, words: str) -> Remedy:
    """Change the number of strings, or the most that a search may try where the number is left open."""
    key = "sources.solar.strings" if basis.strings is not None else "sources.solar.strings_max"
    return words, {key: count}


def _compared(basis: Basis, key: str) -> str:
    """Say what was compared, and where the number of strings is open that it is."""
    return text(key if basis.strings is not None else f"{key}_open", count=basis.strings_counted)


def _current(basis: Basis, solar: Solar) -> Verdict:
    limit, strings = basis.scenario.controller.dc_current_max_a, basis.strings_counted
    value = strings * PV_CURRENT_FACTOR * solar.module.current_sc_a
    compared = _compared(basis, "check.array_current.compared")
    why, source = text("check.array_current.why"), text("check.array_current.source")
    key = "array_current"
    if limit is None:
        look_for = text("check.array_current.look_for")
        return missing(TOPIC, key, compared, look_for, why=why, source=source, value=value, unit="A")
    fits = floor(limit / (value / strings) + 1e-9)
    words, changes = (
        strings_remedy(basis, fits, text("check.strings.remedy", count=fits))
        if fits
        else (text("check.array_current.remedy_controller"), {})
    )
    return highest(TOPIC, key, compared, value, limit, "A", why=why, remedy=words, source=source, changes=changes)


def _over_current(basis: Basis, solar: Solar) -> Verdict:
    strings, module = basis.strings_counted, solar.module
    value, limit, fuse = (strings - 1) * module.current_sc_a, module.series_fuse_max_a, solar.string_fuse_a
    key = "string_over_current"
    compared = _compared(basis, "check.string_over_current.compared")
    why, source = text("check.string_over_current.why"), text("check.string_over_current.source")
    if limit is None and strings > FEW_STRINGS:
        look_for = text("check.string_over_current.look_for")
        return missing(TOPIC, key, compared, look_for, why=why, source=source, value=value, unit="A")
    words, changes = _fuse(basis, solar)
    if fuse is not None:
        low, high = (times * module.current_sc_a for times in (FUSE_LEAST, FUSE_MOST))
        most = high if limit is None else min(high, limit)
        compared = text("check.string_over_current.compared_fuse", least=figure(low), most=figure(most))
        judge, bound = (lowest, low) if not at_least(fuse, low) else (highest, most)
        return judge(TOPIC, key, compared, fuse, bound, "A", why=why, remedy=words, source=source, changes=changes)
    if limit is None:
        compared = _compared(basis, "check.string_over_current.compared_few")
        return Verdict(TOPIC, key, compared, "pass", value, None, "A", "", why, "", source)
    return highest(TOPIC, key, compared, value, limit, "A", why=why, remedy=words, source=source, changes=changes)


def _fuse(basis: Basis, solar: Solar) -> Remedy:
    """Name the smallest usual fuse that suits the module, or fewer strings where none does."""
    module, limit = solar.module, solar.module.series_fuse_max_a
    rating = string_fuse_a(module.current_sc_a, limit)
    if rating is not None:
        volts = ceil(cold_string_v(basis, solar))
        words = text("check.string_over_current.remedy", rating=rating, volts=volts)
        return words, {"sources.solar.string_fuse_a": rating}
    fits = FEW_STRINGS if limit is None else 1 + floor(limit / module.current_sc_a + 1e-9)
    words, changes = strings_remedy(basis, fits, text("check.string_over_current.remedy_fewer", count=fits))
    return words, changes | {"sources.solar.string_fuse_a": None}


def power_ratio(basis: Basis) -> float:
    """Rated power of the array over what the pump takes; 0 without an array."""
    solar = basis.scenario.sources.solar
    return 0.0 if solar is None else basis.strings_counted * _string_w(solar) / _need_w(basis)


def _string_w(solar: Solar) -> float:
    return solar.modules_in_series * solar.module.power_w


def _need_w(basis: Basis) -> float:
    """Power that the controller takes where the motor has its rated input [W]."""
    return basis.motor_input_w / (basis.scenario.controller.efficiency_percent / 100)


def _ratio(basis: Basis, solar: Solar) -> Verdict:
    low, high = POWER_RATIO
    need_w, string_w = _need_w(basis), _string_w(solar)
    strings = basis.strings_counted
    value = strings * string_w / need_w
    unit = text("unit.times")
    short = value < (low + high) / 2
    good = at_least(value, low) and at_most(value, high)
    words, changes = _other_number(basis, need_w / string_w, strings, short=short)
    return Verdict(
        TOPIC,
        "power_ratio",
        text(
            "check.power_ratio.compared_open" if basis.strings is None else "check.power_ratio.compared",
            count=strings,
            largest=solar.strings_max,
            low=f"{low:g}",
            high=f"{high:g}",
        ),
        "pass" if good else "caution",
        value,
        low if short else high,
        unit,
        reserve(value, low, unit) if short else room(value, high, unit),
        text("check.power_ratio.why"),
        "" if good else words,
        text("check.power_ratio.source"),
        {} if good else changes,
    )


def _other_number(basis: Basis, strings_per_need: float, strings: int, *, short: bool) -> Remedy:
    low, high = POWER_RATIO
    wanted = ceil(low * strings_per_need - 1e-9) if short else max(floor(high * strings_per_need + 1e-9), 1)
    if wanted == strings:
        return text("check.power_ratio.remedy_least"), {}
    ratio = wanted / strings_per_need
    within = at_most(ratio, high) and at_least(ratio, low)
    key = "check.power_ratio.remedy" if within else "check.power_ratio.remedy_nearest"
    return strings_remedy(basis, wanted, text(key, count=wanted))
