"""The nameplate in plain words, line by line."""

from __future__ import annotations

from dataclasses import dataclass

from planner.checks.cooling import INCH_MM
from planner.scenario.waterworks import Pump
from planner.water.pump import hydraulic_power_w

CLASS_LIMIT_C = {"Y": 90, "A": 105, "E": 120, "B": 130, "F": 155, "H": 180, "N": 200, "R": 220}
"""Temperature that the winding's insulation stands, IEC 60085; N and R from memory."""
SOLIDS = {
    "0": "no protection against solids",
    "1": "keeps out bodies over 50 mm, such as the back of a hand",
    "2": "keeps out bodies of 12.5 mm and more, such as a finger",
    "3": "keeps out bodies of 2.5 mm and more, such as a tool",
    "4": "keeps out bodies of 1 mm and more, such as a wire",
    "5": "dust-protected",
    "6": "dust-tight",
    "X": "solids not stated",
}
WATER = {
    "0": "no protection against water",
    "1": "against drops that fall straight down",
    "2": "against drops, tilted up to 15 degrees",
    "3": "against spray up to 60 degrees from the vertical",
    "4": "against splashes from all sides",
    "5": "against jets",
    "6": "against powerful jets",
    "7": "stands immersion for a time",
    "8": "stands continuous immersion, on terms that the maker states",
    "9": "against hot jets of high pressure, which says nothing of immersion",
    "X": "water not stated",
}


@dataclass(frozen=True)
class PlateLine:
    """One line of the nameplate: what it is, what stands there ('not given' if nothing) and what it means."""

    item: str
    printed: str
    meaning: str


def plate_lines(pump: Pump) -> list[PlateLine]:
    """Read a nameplate in plain words, line by line; what was not given says what to look for."""
    plate = pump.plate

    def line(item: str, given: float | str | None, unit: str, meaning: str, look_for: str) -> PlateLine:
        if given is None:
            return PlateLine(item, "not given", f"look for {look_for}")
        return PlateLine(item, given if isinstance(given, str) else f"{given:g} {unit}".strip(), meaning)

    def window(low: float | None, high: float | None) -> str | None:
        return None if low is None or high is None else f"{low:g} to {high:g} V"

    hydraulic = float(hydraulic_power_w(pump.rated_flow_m3h, pump.rated_head_m))
    share = 100 * hydraulic / pump.rated_power_w
    kind, code, low, high = plate.insulation_class, plate.ingress_protection, plate.speed_min_rpm, plate.speed_max_rpm
    speed = None if low is None or high is None else f"{low:g} to {high:g} rpm"
    casing = f"does not go into a casing under {INCH_MM * (plate.frame_in or 0):.0f} mm"
    water_gets = f"the water gets {hydraulic / 1000:.2f} kW of it at the rated duty, {share:.0f} %"
    rated = f"{pump.rated_flow_m3h:g} m3/h, {pump.rated_head_m:g} m"
    most = f"{pump.max_flow_m3h:g} m3/h, {pump.max_head_m:g} m"
    dc = window(plate.dc_voltage_min_v, plate.dc_voltage_max_v)
    ac = window(plate.ac_voltage_min_v, plate.ac_voltage_max_v)
    stands = f"the winding stands {CLASS_LIMIT_C.get(kind or '', 0)} deg C (IEC 60085)"
    turns = "an AC motor turns in step with it: fewer hertz, less speed, much less head"
    return [
        PlateLine("Rated flow and head", rated, "the duty to plan on"),
        PlateLine("Largest flow and head", most, "the ends of the curve, never both at once and never to plan on"),
        PlateLine("Rated power", f"{pump.rated_power_w:g} W", f"what the motor takes; {water_gets}"),
        line(
            "DC supply", dc, "", "the array's voltage must stay within these limits", "'DC', 'PV' or 'Voc' with volts"
        ),
        line("AC supply", ac, "", "the voltage of grid or generator must stay within", "'AC' or '~' with volts"),
        line("Phases", plate.phases, "", "phases of the AC supply", "'1~' or '3~'"),
        line("Frequency", plate.frequency_hz, "Hz", turns, "'Hz'"),
        line("Current", plate.current_a, "A", "the most that it may take", "'A' or 'Amp'"),
        line("Speed", speed, "", "flow goes with the speed, head with its square", "'rpm' or '1/min'"),
        line("Frame", plate.frame_in, "in", f"size class of the motor; {casing}", "the size in inches"),
        line("Insulation class", kind, "", stands, "'Ins. Cl.' and a letter"),
        line("Ingress protection", code, "", protection_words(code or "IPXX"), "'IP' and two digits"),
        line(
            "Liquid temperature",
            plate.liquid_temperature_max_c,
            "deg C",
            "warmer water is outside its duty",
            "'max. liquid temp.'",
        ),
    ]


def protection_words(code: str) -> str:
    """Say what the two digits of a code such as 'IP68' mean (IEC 60529)."""
    return f"{SOLIDS[code[2]]}; {WATER[code[3]]} (IEC 60529)"
