"""What cools the motor in the borehole: its frame, and the water that flows past it."""

from __future__ import annotations

from math import floor, pi, sqrt

from planner.checks.basis import Basis
from planner.checks.verdict import Remedy, Verdict, at_most, lowest, missing
from planner.scenario.plate import Plate
from planner.text import text

TOPIC = "borehole"

INCH_MM = 25.4
SMALL_MOTOR_W = 2240.0
"""Shaft power of 3 hp, below which a four-inch motor needs no flow past it: common practice, no source."""
COOLING_M_S = {4: 0.0762, 6: 0.1524, 8: 0.1524}
"""Least velocity past the motor by frame in inches, water up to 30 deg C: 0.25 and 0.5 ft/s, common practice."""
HOT_COOLING_M_S = 0.9144
"""The same for a standard motor in hotter water: 3 ft/s, common practice, no source."""
HOT_WATER_C = 30.0
FRAME_OUTER_MM = {4: 95.25, 6: 138.2, 8: 193.7}
"""Outside diameter of the motor by frame: 3.75 and 5.44 in, NEMA MG 1 part 18, from memory; 8 inch assumed."""
SLEEVE_ROOM_MM, SLEEVE_WALL_MM = 6.0, 10.0
"""Room that a flow sleeve needs over the motor, and its two walls with their room in the casing: common practice."""


def frame_of(plate: Plate) -> int | None:
    """Frame of the motor in whole inches (4, 6 or 8), from the plate's frame or its outside diameter."""
    if plate.frame_in is not None:
        return min(COOLING_M_S, key=lambda frame: abs(frame - (plate.frame_in or 0)))
    if plate.outer_diameter_mm is None:
        return None
    return next((frame for frame, outer in FRAME_OUTER_MM.items() if plate.outer_diameter_mm <= outer + 6), 8)


def outer_diameter_mm(plate: Plate) -> float | None:
    """Outside diameter of the motor [mm], as given, or as usual for its frame."""
    if plate.outer_diameter_mm is not None:
        return plate.outer_diameter_mm
    frame = frame_of(plate)
    return None if frame is None else FRAME_OUTER_MM[frame]


def look_for_diameters(*, casing: bool, motor: bool) -> str:
    """Say where to look for the diameters of casing and motor, or of one of them."""
    which = "both" if casing and motor else "casing" if casing else "motor"
    return text(f"check.motor_size.look_for_{which}")


def cooling(basis: Basis) -> Verdict:
    """Judge whether the water cools the motor."""
    borehole, pump = basis.scenario.borehole, basis.scenario.pump
    plate, sleeve = pump.plate, basis.scenario.borehole.flow_sleeve_diameter_mm
    outer, frame = outer_diameter_mm(plate), frame_of(plate)
    around = sleeve if sleeve is not None else borehole.casing_inner_diameter_mm
    key = "check.motor_cooling.compared" if sleeve is None else "check.motor_cooling.compared_sleeve"
    why, source = text("check.motor_cooling.why"), text("check.motor_cooling.source")
    if outer is None or frame is None or around is None:
        return missing(
            TOPIC,
            "motor_cooling",
            text(key, flow=basis.flow_words),
            look_for_diameters(casing=around is None, motor=outer is None),
            why=why,
            source=source,
            unit="m/s",
        )
    water_c, stands_c = borehole.water_temperature_c, plate.liquid_temperature_max_c
    hot = not at_most(water_c, max(HOT_WATER_C, stands_c or 0.0))
    small = frame == 4 and pump.rated_power_w * pump.motor_efficiency_percent / 100 < SMALL_MOTOR_W
    needed = HOT_COOLING_M_S if hot else 0.0 if small else COOLING_M_S[frame]
    above_screen = borehole.screen_top_m is None or borehole.pump_depth_m < borehole.screen_top_m
    passed = above_screen or sleeve is not None
    gap_m2 = pi / 4 * (around**2 - outer**2) / 1e6
    # a motor that fills its casing has no room for water: the clearance fails, and the velocity has no meaning
    velocity = basis.flow_m3h / 3600 / gap_m2 if passed and gap_m2 > 0 else 0.0
    if small and not hot:
        key += "_small"
    if not passed:
        key += "_beside"
    remedy, changes = _sleeve(basis, outer, needed or COOLING_M_S[frame])
    return lowest(
        TOPIC,
        "motor_cooling",
        text(key, flow=basis.flow_words),
        velocity,
        needed,
        "m/s",
        why=why,
        remedy=remedy,
        source=source,
        changes=changes,
    )


def _sleeve(basis: Basis, outer_mm: float, needed_m_s: float) -> Remedy:
    """Name the widest flow sleeve that cools the motor and goes into the casing."""
    casing = basis.scenario.borehole.casing_inner_diameter_mm
    wide_mm = floor(sqrt(outer_mm**2 + 4e6 * basis.flow_m3h / 3600 / (pi * needed_m_s)))
    if casing is not None:
        wide_mm = min(wide_mm, floor(casing - SLEEVE_WALL_MM))
    if wide_mm < outer_mm + SLEEVE_ROOM_MM:
        return text("check.motor_cooling.remedy_motor"), {}
    key = "check.motor_cooling.remedy_if_room" if casing is None else "check.motor_cooling.remedy"
    return text(key, width=wide_mm), {"borehole.flow_sleeve_diameter_mm": float(wide_mm)}
