"""How the pump is connected to grid or generator: voltage, phases, and what is left of the source's power."""

from __future__ import annotations

from dataclasses import dataclass
from math import sqrt
from typing import Literal

from planner.scenario.plate import Plate
from planner.scenario.sources import Generator, Grid
from planner.sources.base import AcSupply

Way = Literal["direct", "phase_and_neutral", "two_phases"]


@dataclass(frozen=True)
class Connection:
    """One way to connect a pump to a source.

    Attributes
    ----------
    voltage_v : float or None
        Nominal voltage that the pump gets [V]; None where the source's was not given.
    supply : str
        '1-phase' or '3-phase'.
    power_share : float
        Share of the source's power that the pump can draw: a third where a source of three phases gives one.
    way : str
        'direct', or how one phase is taken from three: 'phase_and_neutral' or 'two_phases'.
    """

    voltage_v: float | None
    supply: str
    power_share: float
    way: Way


def connection_of(source: AcSupply | Grid | Generator, plate: Plate) -> Connection:
    """Connect a pump to a source: as they are, or one of three phases to a pump of one.

    Of the two ways to take one phase from three, one phase and neutral is meant unless only the voltage between two
    phases is within the plate's limits.
    """
    if source.phases != 3 or plate.phases != 1:
        supply = "3-phase" if (source.phases or plate.phases) == 3 else "1-phase"
        return Connection(source.voltage_v, supply, 1.0, "direct")
    if source.voltage_v is None:
        return Connection(None, "1-phase", 1 / 3, "phase_and_neutral")
    neutral_v = source.voltage_v / sqrt(3)
    low, high = plate.ac_voltage_min_v, plate.ac_voltage_max_v
    if low is not None and high is not None and low <= source.voltage_v <= high and not low <= neutral_v <= high:
        return Connection(source.voltage_v, "1-phase", 1 / 3, "two_phases")
    return Connection(neutral_v, "1-phase", 1 / 3, "phase_and_neutral")
