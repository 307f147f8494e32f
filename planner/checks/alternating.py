"""AC side: voltage, phases and frequency of grid and generator, and the grid's connection."""

from __future__ import annotations

from math import ceil

from planner.checks.basis import Basis
from planner.checks.connection import Connection, connection_of
from planner.checks.verdict import (
    Outcome,
    Verdict,
    at_least,
    at_most,
    figure,
    highest,
    lowest,
    missing,
)
from planner.scenario.cables import STANDARD_SECTIONS_MM2
from planner.scenario.sources import Grid
from planner.sources.base import AcSupply
from planner.sources.registry import supplies_of
from planner.supply.cables import current_of_power_a, drop_share
from planner.text import listed, text

TOPIC = "ac"

FREQUENCY_USUAL_PERCENT = 2.0
FREQUENCY_WIDE_PERCENT = (5.0, 3.0)
"""Zones A and B of IEC 60034-1: 2 % either way for good; 5 % below and 3 % above for a while."""


def verdicts(basis: Basis) -> list[Verdict]:
    """Judge what grid and generator supply; nothing without them."""
    found = []
    for supply in supplies_of(basis.scenario):
        found += [_voltage(basis, supply), _phases(basis, supply), _frequency(basis, supply)]
    grid = basis.scenario.sources.grid
    if grid is not None and grid.power_limit_w is not None:
        found.append(_connection_power(basis, grid, grid.power_limit_w))
    return found


def ac_need_w(basis: Basis) -> float:
    """Power that grid or generator must give with the motor at its rated power [W]."""
    return basis.motor_input_w / (basis.scenario.controller.ac_efficiency_percent / 100)


def cable_drop_share(basis: Basis, connection: Connection, section_mm2: float | None = None) -> float | None:
    """Share of the voltage lost in the AC cable at the rated power; None where cable or voltage were not given."""
    cables = basis.scenario.cables
    if cables is None or cables.ac is None or connection.voltage_v is None:
        return None
    current = current_of_power_a(ac_need_w(basis), connection.voltage_v, connection.supply, cables.ac.power_factor)
    return drop_share(cables.ac, connection.supply, current, connection.voltage_v, section_mm2)


def _voltage(basis: Basis, source: AcSupply) -> Verdict:
    name = source.name
    plate, connection = basis.scenario.pump.plate, connection_of(source, basis.scenario.pump.plate)
    varies = source.voltage_tolerance_percent
    why = text("check.supply_voltage.why")
    source_words = text(f"check.{name}_voltage.source", percent=figure(varies))
    volts, least_v, most_v = connection.voltage_v, plate.ac_voltage_min_v, plate.ac_voltage_max_v
    if volts is None or least_v is None or most_v is None:
        asked = [text(f"check.asked.{name}_volts")] if volts is None else []
        if least_v is None or most_v is None:
            asked.append(text("check.asked.ac_volts"))
        return missing(
            TOPIC,
            f"{name}_voltage",
            text(f"check.{name}_voltage.compared_not_given"),
            text("check.look_for", things=listed(asked)),
            why=why,
            source=source_words,
            value=volts,
            unit="V",
        )
    drop = cable_drop_share(basis, connection)
    least_at_source_v, high = volts * (1 - varies / 100), volts * (1 + varies / 100)
    low = least_at_source_v * (1 - (drop or 0.0))
    facts = [text("check.supply_voltage.nominal", volts=volts)]
    if connection.way != "direct":
        facts.append(text(f"check.connection.{connection.way}", volts=volts))
    facts.append(text("check.supply_voltage.variation", percent=figure(varies)))
    if drop is None:
        facts.append(text("check.supply_voltage.drop_not_given"))
    else:
        facts.append(text("check.supply_voltage.drop", percent=100 * drop))
    compared = text(
        f"check.{name}_voltage.compared",
        low=low,
        high=high,
        facts=text("list.comma").join(facts),
        least=least_v,
        most=most_v,
    )
    if least_v - low > high - most_v:
        remedy, section = text("check.supply_voltage.remedy_low"), None
        if drop is not None and at_least(least_at_source_v, least_v):
            section = _section_that_suffices(basis, connection, least_at_source_v, least_v)
            remedy = (
                text("check.supply_voltage.remedy_thicker_cable", section_mm2=section)
                if section
                else text("check.supply_voltage.remedy_shorter_cable")
            )
        return lowest(
            TOPIC,
            f"{name}_voltage",
            compared,
            low,
            least_v,
            "V",
            why=why,
            remedy=remedy,
            source=source_words,
            changes={"cables.ac.section_mm2": section, "cables.ac.ampacity_a": None} if section else {},
        )
    return highest(
        TOPIC,
        f"{name}_voltage",
        compared,
        high,
        most_v,
        "V",
        why=why,
        remedy=text("check.supply_voltage.remedy_high"),
        source=source_words,
    )


def _section_that_suffices(basis: Basis, connection: Connection, at_source_v: float, least_v: float) -> float | None:
    """Smallest standard section thicker than the given one with which the voltage arrives, or None."""
    cables = basis.scenario.cables
    assert cables is not None
    assert cables.ac is not None
    for section in STANDARD_SECTIONS_MM2:
        drop = cable_drop_share(basis, connection, section)
        if section > cables.ac.section_mm2 and drop is not None and at_least(at_source_v * (1 - drop), least_v):
            return section
    return None


def _phases(basis: Basis, source: AcSupply) -> Verdict:
    name = source.name
    wanted, given = basis.scenario.pump.plate.phases, source.phases
    compared, why = text(f"check.{name}_phases.compared"), text("check.supply_phases.why")
    if wanted is None or given is None:
        asked = [text(f"check.asked.{name}_phases")] if given is None else []
        asked += [text("check.asked.phases")] if wanted is None else []
        return missing(
            TOPIC,
            f"{name}_phases",
            compared,
            text("check.look_for", things=listed(asked)),
            why=why,
            source=text("source.plate"),
            value=given,
            limit=wanted,
            unit=text("unit.phases"),
        )
    outcome: Outcome = "pass" if given == wanted else "caution" if given == 3 else "fail"
    remedy = ""
    if outcome == "caution":
        why = text("check.supply_phases.why_one_of_three")
        connection = connection_of(source, basis.scenario.pump.plate)
        remedy = (
            text(f"check.{name}_phases.remedy_connect_unknown")
            if connection.voltage_v is None
            else text(f"check.{name}_phases.remedy_connect.{connection.way}", volts=connection.voltage_v)
        )
    elif outcome == "fail":
        remedy = text(f"check.{name}_phases.remedy_three", given=given)
    return Verdict(
        TOPIC,
        f"{name}_phases",
        compared,
        outcome,
        given,
        wanted,
        text("unit.phases"),
        "",
        why,
        remedy,
        text("source.plate_practice"),
    )


def _frequency(basis: Basis, source: AcSupply) -> Verdict:
    name = source.name
    printed, given = basis.scenario.pump.plate.frequencies_hz, source.frequency_hz
    why = text("check.supply_frequency.why")
    if not printed or given is None:
        asked = [text(f"check.asked.{name}_hertz")] if given is None else []
        asked += [text("check.asked.hertz")] if not printed else []
        return missing(
            TOPIC,
            f"{name}_frequency",
            text(f"check.{name}_frequency.compared_not_given"),
            text("check.look_for", things=listed(asked)),
            why=why,
            source=text("source.plate"),
            value=given,
            limit=printed[0] if printed else None,
            unit="Hz",
        )
    wanted = min(max(given, printed[0]), printed[-1])
    off = 100 * (given / wanted - 1)
    below, above = FREQUENCY_WIDE_PERCENT
    side = "above" if off > 0 else "below" if off < 0 else "equal"
    outcome: Outcome = "fail"
    if at_most(abs(off), FREQUENCY_USUAL_PERCENT):
        outcome = "pass"
    elif at_least(off, -below) and at_most(off, above):
        outcome = "caution"
    return Verdict(
        TOPIC,
        f"{name}_frequency",
        text(f"check.{name}_frequency.compared", wanted_hz=wanted, percent=FREQUENCY_USUAL_PERCENT),
        outcome,
        given,
        wanted * (1 + (FREQUENCY_USUAL_PERCENT if off > 0 else -FREQUENCY_USUAL_PERCENT) / 100),
        "Hz",
        text(f"check.supply_frequency.side.{side}", percent=abs(off)),
        why,
        "" if outcome == "pass" else text(f"check.{name}_frequency.remedy", wanted_hz=wanted),
        text("check.supply_frequency.source"),
    )


def _connection_power(basis: Basis, grid: Grid, limit_w: float) -> Verdict:
    share = connection_of(grid, basis.scenario.pump.plate).power_share
    needed = ceil(ac_need_w(basis) / share / 100 - 1e-9) * 100
    return lowest(
        TOPIC,
        "grid_power",
        text("check.grid_power.compared_one_phase" if share < 1 else "check.grid_power.compared"),
        limit_w * share,
        ac_need_w(basis),
        "W",
        why=text("check.grid_power.why"),
        remedy=text("check.grid_power.remedy", needed_w=needed),
        source=text("source.site"),
        changes={"sources.grid.power_limit_w": float(needed)},
    )
