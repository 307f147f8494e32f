"""The nameplate in plain words, line by line."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from planner.checks.cooling import INCH_MM
from planner.scenario.waterworks import Pump
from planner.text import text
from planner.water.pump import hydraulic_power_w

CLASS_LIMIT_C = {"Y": 90, "A": 105, "E": 120, "B": 130, "F": 155, "H": 180, "N": 200, "R": 220}
"""Temperature that the winding's insulation stands, IEC 60085; N and R from memory."""


@dataclass(frozen=True)
class PlateLine:
    """One line of the nameplate: what it is, what stands there ('not given' if nothing) and what it means."""

    item: str
    printed: str
    meaning: str


def plate_lines(pump: Pump) -> list[PlateLine]:
    """Read a nameplate in plain words, line by line; what was not given says what to look for."""
    plate = pump.plate
    hydraulic_w = float(hydraulic_power_w(pump.rated_flow_m3h, pump.rated_head_m))
    low, high, code = plate.speed_min_rpm, plate.speed_max_rpm, plate.ingress_protection
    speed = None if low is None or high is None else text("plate.printed.speed", low=low, high=high)
    return [
        PlateLine(
            text("plate.rated_duty.item"),
            text("plate.printed.duty", flow_m3h=pump.rated_flow_m3h, head_m=pump.rated_head_m),
            text("plate.rated_duty.meaning"),
        ),
        PlateLine(
            text("plate.largest.item"),
            text("plate.printed.duty", flow_m3h=pump.max_flow_m3h, head_m=pump.max_head_m),
            text("plate.largest.meaning"),
        ),
        PlateLine(
            text("plate.rated_power.item"),
            f"{pump.rated_power_w:g} W",
            text(
                "plate.rated_power.meaning",
                hydraulic_kw=hydraulic_w / 1000,
                percent=100 * hydraulic_w / pump.rated_power_w,
            ),
        ),
        _line("dc_supply", _volts(plate.dc_voltage_min_v, plate.dc_voltage_max_v)),
        _line("ac_supply", _volts(plate.ac_voltage_min_v, plate.ac_voltage_max_v)),
        _line("phases", plate.phases),
        _line("frequency", plate.frequency_hz, "Hz"),
        _line("current", plate.current_a, "A"),
        _line("speed", speed),
        _line("frame", plate.frame_in, "in", millimetres=INCH_MM * (plate.frame_in or 0)),
        _line("insulation", plate.insulation_class, limit_c=CLASS_LIMIT_C.get(plate.insulation_class or "")),
        _line("ingress", code, **_digits(code or "IPXX")),
        _line("liquid", plate.liquid_temperature_max_c, "deg C"),
    ]


def protection_words(code: str) -> str:
    """Say what the two digits of a code such as 'IP68' mean (IEC 60529)."""
    return text("plate.ingress.meaning", **_digits(code))


def _digits(code: str) -> dict[str, str]:
    return {"solids": text(f"plate.solids.{code[2]}"), "water": text(f"plate.water.{code[3]}")}


def _volts(low: float | None, high: float | None) -> str | None:
    return None if low is None or high is None else text("plate.printed.volts", low=low, high=high)


def _line(key: str, given: float | str | None, unit: str = "", **slots: Any) -> PlateLine:
    item = text(f"plate.{key}.item")
    if given is None:
        return PlateLine(item, text("plate.not_given"), text(f"plate.{key}.look_for"))
    printed = given if isinstance(given, str) else f"{given:g} {unit}".strip()
    return PlateLine(item, printed, text(f"plate.{key}.meaning", **slots))
