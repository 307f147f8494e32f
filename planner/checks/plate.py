"""The nameplate line by line: what is printed, what it means, what this site asks of it, and whether it holds here."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from planner.checks.array import cold_string_v, operating_voltages
from planner.checks.basis import Basis
from planner.checks.connection import connection_of
from planner.checks.cooling import INCH_MM
from planner.checks.verdict import ORDER, Outcome, Verdict, amount
from planner.scenario.printed import Printed
from planner.sources.registry import supplies_of
from planner.text import model_words, number, source_name, text
from planner.water.pump import hydraulic_power_w

CLASS_LIMIT_C = {"Y": 90, "A": 105, "E": 120, "B": 130, "F": 155, "H": 180, "N": 200, "R": 220}
"""Temperature that the winding's insulation stands, IEC 60085; N and R from memory."""

CHECKS: dict[str, tuple[str, ...]] = {
    "rated_flow": ("safe_yield",),
    "rated_head": ("rated_head",),
    "largest_flow": ("largest_flow",),
    "largest_head": ("lift", "pressure_at_shut_off"),
    "rated_power": ("motor_power", "rated_figures"),
    "dc_supply": ("dc_window", "string_open_circuit_voltage"),
    "ac_supply": ("ac_window", "grid_voltage", "generator_voltage"),
    "phases": ("grid_phases", "generator_phases"),
    "frequency": ("grid_frequency", "generator_frequency"),
    "current": ("current",),
    "speed": ("speed_range",),
    "frame": ("frame", "casing_clearance"),
    "insulation": ("insulation",),
    "ingress": ("ingress_protection",),
    "liquid": ("water_temperature",),
    "submergence": ("submergence",),
}
"""The lines of a plate, and the checks that judge each."""


@dataclass(frozen=True)
class PlateLine:
    """One line of the nameplate.

    Attributes
    ----------
    key : str
        One of `CHECKS`.
    symbol, printed, meaning : str
        How plates mark it, what stands there ('not given' if nothing), and what that means or what to look for.
    asks : str
        What this site asks of it; '' where nothing does.
    outcome : str or None
        The worst of the checks that judge it; None where none does.
    """

    key: str
    symbol: str
    printed: str
    meaning: str
    asks: str
    outcome: Outcome | None


def plate_lines(basis: Basis, verdicts: Sequence[Verdict]) -> list[PlateLine]:
    """Hold a nameplate against the site, line by line; what was not given says what to look for.

    Parameters
    ----------
    basis : Basis
        The site.
    verdicts : sequence of Verdict
        What the site checks found.
    """
    found = {verdict.key: verdict for verdict in verdicts}
    open_circuit = found.get("string_open_circuit_voltage")
    if open_circuit is not None and open_circuit.limit != basis.scenario.pump.plate.dc_voltage_max_v:
        # the controller's limit, which is not the plate's, may be the narrower
        del found["string_open_circuit_voltage"]
    printed, asks, slots = _printed(basis), dict(_asks(basis, found)), _meanings(basis)
    lines = []
    for key, judges in CHECKS.items():
        given = printed[key]
        outcomes = [found[judge].outcome for judge in judges if judge in found]
        meaning = text(f"plate.{key}.look_for") if given is None else text(f"plate.{key}.meaning", **slots.get(key, {}))
        worst = min(outcomes, key=ORDER.index, default=None)
        shown, symbol = text("plate.not_given") if given is None else given, text(f"plate.{key}.symbol")
        lines.append(PlateLine(key, symbol, shown, meaning, asks.get(key, ""), worst))
    return lines


def protection_words(code: str) -> str:
    """Say what the two digits of a code such as 'IP68' mean (IEC 60529)."""
    return text("plate.ingress.meaning", **_digits(code))


def _digits(code: str) -> dict[str, str]:
    return {"solids": text(f"plate.solids.{code[2]}"), "water": text(f"plate.water.{code[3]}")}


def _printed(basis: Basis) -> dict[str, str | None]:
    """What stands on each line, None where it was not given."""
    pump, plate = basis.scenario.pump, basis.scenario.pump.plate
    return {
        "rated_flow": _figure(pump.rated_flow_m3h, "m3/h"),
        "rated_head": _figure(pump.rated_head_m, "m"),
        "largest_flow": _figure(pump.max_flow_m3h, "m3/h"),
        "largest_head": _figure(pump.max_head_m, "m"),
        "rated_power": _figure(pump.rated_power_w, "W"),
        "dc_supply": _range(plate.dc_voltage_v, plate.dc_voltage_min_v, plate.dc_voltage_max_v, "V"),
        "ac_supply": _range(plate.ac_voltage_v, plate.ac_voltage_min_v, plate.ac_voltage_max_v, "V"),
        "phases": None if plate.phases is None else f"{plate.phases}~",
        "frequency": _range(plate.frequency_hz, None, None, "Hz"),
        "current": _figure(plate.current_a, "A"),
        "speed": _range(plate.speed_rpm, plate.speed_min_rpm, plate.speed_max_rpm, "rpm"),
        "frame": _figure(plate.frame_in, "in"),
        "insulation": plate.insulation_class,
        "ingress": plate.ingress_protection,
        "liquid": _figure(plate.liquid_temperature_max_c, "deg C"),
        "submergence": _figure(plate.minimum_submergence_m, "m"),
    }


def _figure(value: float | None, unit: str) -> str | None:
    return None if value is None else f"{number(value, 'g')} {model_words(unit)}"


def _range(printed: Printed | None, low: float | None, high: float | None, unit: str) -> str | None:
    """Give the text as printed, else the figure or the range."""
    if isinstance(printed, str):
        return printed
    if isinstance(printed, list):
        low, high = printed[0], printed[-1]
    elif printed is not None:
        low = high = printed
    if low is None or high is None:
        return None
    unit = model_words(unit)
    return f"{number(low, 'g')} {unit}" if low == high else text("plate.printed.range", low=low, high=high, unit=unit)


def _meanings(basis: Basis) -> dict[str, dict[str, Any]]:
    """What goes into the meaning of a line."""
    pump, plate = basis.scenario.pump, basis.scenario.pump.plate
    hydraulic_w = float(hydraulic_power_w(pump.rated_flow_m3h, pump.rated_head_m))
    return {
        "rated_power": {"percent": 100 * hydraulic_w / pump.rated_power_w},
        "frame": {"millimetres": INCH_MM * (plate.frame_in or 0)},
        "insulation": {"limit_c": CLASS_LIMIT_C.get(plate.insulation_class or "")},
        "ingress": _digits(plate.ingress_protection or "IPXX"),
    }


def _asks(basis: Basis, found: Mapping[str, Verdict]) -> Iterator[tuple[str, str]]:
    """What the site asks of each line of which it asks anything."""
    borehole, solar = basis.scenario.borehole, basis.scenario.sources.solar
    water_c = borehole.water_temperature_c
    yield "rated_flow", text("plate.rated_flow.asks", limit=f"{number(borehole.safe_yield_m3h, 'g')} m3/h")
    flow, needed = f"{basis.design_flow_m3h:.3g}", amount(basis.needed_head_m, "m")
    yield "rated_head", text("plate.rated_head.asks", limit=needed, flow=flow)
    for line, key in (
        ("largest_head", "lift"),
        ("rated_power", "motor_power"),
        ("current", "current"),
        ("submergence", "submergence"),
    ):
        value = found[key].value if key in found else None
        if isinstance(value, int | float):
            yield line, text(f"plate.{line}.asks", value=amount(value, found[key].unit))
    if solar is not None:
        hot, cold = operating_voltages(basis)
        volts = {"hot": hot, "cold": cold, "open": cold_string_v(basis, solar)}
        yield "dc_supply", text("plate.dc_supply.asks", **volts, count=solar.modules_in_series)
        yield "speed", text("plate.speed.asks")
    casing = borehole.casing_inner_diameter_mm
    fits = text("plate.frame.asks_open") if casing is None else text("plate.frame.asks", value=amount(casing, "mm"))
    yield "frame", fits
    yield from ((line, text(f"plate.{line}.asks", water_c=water_c)) for line in ("insulation", "liquid"))
    yield "ingress", text("plate.ingress.asks")
    yield from _asked_by_supplies(basis)


def _asked_by_supplies(basis: Basis) -> Iterator[tuple[str, str]]:
    """What grid and generator give: voltage, phases and frequency, each where it is known."""
    supplies = supplies_of(basis.scenario)
    volts = [connection_of(supply, basis.scenario.pump.plate).voltage_v for supply in supplies]
    for line, values, unit in (
        ("ac_supply", volts, "V"),
        ("phases", [supply.phases for supply in supplies], "~"),
        ("frequency", [supply.frequency_hz for supply in supplies], "Hz"),
    ):
        said = [
            text(
                "plate.asked_by",
                value=f"{number(value, 'g')}~" if unit == "~" else amount(value, unit),
                source=source_name(name),
            )
            for name, value in zip((supply.name for supply in supplies), values, strict=True)
            if value is not None
        ]
        if said:
            yield line, text("list.comma").join(said)
