"""Copper cables: resistance, voltage drop, ampacity, the section that suffices and the power that is lost."""

from __future__ import annotations

from math import sqrt

import numpy as np
from numpy.typing import ArrayLike, NDArray

from planner.scenario.cables import STANDARD_SECTIONS_MM2, AcCable, CableRun, DropCable
from planner.scenario.solar import Solar

RESISTANCE_OHM_PER_KM: dict[tuple[int, str], tuple[float, ...]] = {
    (2, "plain"): (12.1, 7.41, 4.61, 3.08, 1.83, 1.15, 0.727, 0.524, 0.387),
    (2, "tinned"): (12.2, 7.56, 4.70, 3.11, 1.84, 1.16, 0.734, 0.529, 0.391),
    (5, "plain"): (13.3, 7.98, 4.95, 3.30, 1.91, 1.21, 0.780, 0.554, 0.386),
    (5, "tinned"): (13.7, 8.21, 5.09, 3.39, 1.95, 1.24, 0.795, 0.565, 0.393),
}
"""Largest resistance at 20 deg C by class and copper, IEC 60228:2004 tables 2 and 3, for STANDARD_SECTIONS_MM2."""
COPPER_PER_K = 0.00393
"""Temperature coefficient of copper at 20 deg C, IEC 60287-1-1 table 1."""
REACTANCE_OHM_PER_KM = 0.08
"""Reactance of low-voltage cable, IEC 60364-5-52 annex G, from memory."""

AMPACITY_A: dict[tuple[str, int], tuple[float, ...]] = {
    ("B2", 2): (16.5, 23, 30, 38, 52, 69, 90, 111, 133),
    ("B2", 3): (15, 20, 27, 34, 46, 62, 80, 99, 118),
    ("C", 2): (19.5, 27, 36, 46, 63, 85, 112, 138, 168),
    ("C", 3): (17.5, 24, 32, 41, 57, 76, 96, 119, 144),
    ("D", 2): (22, 29, 38, 47, 63, 81, 103, 125, 148),
    ("D", 3): (18, 24, 31, 39, 52, 67, 86, 103, 122),
}
"""Copper in PVC (70 deg C) by method and loaded conductors, IEC 60364-5-52 (D: 2001 edition); B2 and C with two loaded
above 16 mm2, C with two loaded and everything at 35 and 50 mm2 from memory."""
GROUPING_FACTOR = {
    1: 1.0,
    2: 0.80,
    3: 0.70,
    4: 0.65,
    5: 0.60,
    6: 0.57,
    7: 0.54,
    8: 0.52,
    9: 0.50,
    12: 0.45,
    16: 0.41,
    20: 0.38,
}
"""Factor by the number of circuits bunched in air or in one conduit, IEC 60364-5-52 table B.52.17, first row."""
PVC_LIMIT_C = 70.0
REFERENCE_AMBIENT_C = {"B2": 30.0, "C": 30.0, "D": 20.0}
CIRCUIT_FACTOR = {"dc": 2.0, "1-phase": 2.0, "3-phase": sqrt(3)}
LOADED_CONDUCTORS = {"dc": 2, "1-phase": 2, "3-phase": 3}
PV_CURRENT_FACTOR = 1.25
"""Current to design a PV cable for, over the short-circuit current, IEC 62548."""
DC_DROP, AC_DROP, DROP_DROP = 0.03, 0.05, 0.05
"""Share of the voltage that a run may lose: IEC 60364-5-52 annex G for those on AC; on DC, common practice."""
FUSE_LEAST, FUSE_MOST = 1.5, 2.4
"""Rating of a string's fuse over the short-circuit current of a module, IEC 62548 (from memory)."""
FUSE_RATINGS_A = (1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 16, 20, 25, 30, 32, 40, 50, 63)
"""Usual ratings of gPV fuses (IEC 60269-6), from memory."""
_TOUCH = 1e-9
"""Relative difference within which a rating counts as standing at its limit."""


def string_fuse_a(current_sc_a: float, largest_a: float | None) -> float | None:
    """Smallest usual fuse that suits a string.

    Parameters
    ----------
    current_sc_a : float
        Short-circuit current of its modules [A].
    largest_a : float or None
        Largest series fuse of the module [A]; None where it is not known.

    Returns
    -------
    float or None
        Rating of a gPV fuse (IEC 60269-6) by IEC 62548 [A]; None where no usual one suits.
    """
    least = FUSE_LEAST * current_sc_a * (1 - _TOUCH)
    most = min(FUSE_MOST * current_sc_a, largest_a or float("inf")) * (1 + _TOUCH)
    return next((float(rating) for rating in FUSE_RATINGS_A if least <= rating <= most), None)


def resistance_ohm_per_km(
    section_mm2: float, conductor_class: int = 2, conductor: str = "plain", temperature_c: float = 20.0
) -> float:
    """Resistance of one conductor at its working temperature [ohm/km].

    Parameters
    ----------
    section_mm2 : float
        One of STANDARD_SECTIONS_MM2.
    conductor_class : int
        2 (stranded) or 5 (flexible).
    conductor : str
        'plain' or 'tinned'.
    temperature_c : float
        Temperature of the conductor [deg C].

    Notes
    -----
    IEC 60228 at 20 deg C, carried to the temperature by 1 + 0.00393 (t - 20).
    """
    cold = RESISTANCE_OHM_PER_KM[conductor_class, conductor][STANDARD_SECTIONS_MM2.index(section_mm2)]
    return cold * (1 + COPPER_PER_K * (temperature_c - 20))


def run_resistance_ohm(run: CableRun, section_mm2: float | None = None) -> float:
    """Resistance of one conductor over the length of a run [ohm], with another section where one is given."""
    per_km = resistance_ohm_per_km(
        run.section_mm2 if section_mm2 is None else section_mm2,
        run.conductor_class,
        run.conductor,
        run.conductor_temperature_c,
    )
    return per_km * run.length_m / 1000


def voltage_drop_v(
    current_a: float, resistance_ohm: float, supply: str, power_factor: float = 1.0, reactance_ohm: float = 0.0
) -> float:
    """Voltage lost along a run [V]; between phases for three-phase.

    Parameters
    ----------
    current_a : float
        Current [A].
    resistance_ohm, reactance_ohm : float
        Of one conductor over the whole run [ohm].
    supply : str
        'dc', '1-phase' or '3-phase'.
    power_factor : float
        Of the load; 1 for DC.

    Notes
    -----
    b I (R cos + X sin) with b = 2 for DC and single phase, sqrt 3 for three-phase: the form of IEC 60364-5-52 annex G.
    """
    sine = sqrt(1 - power_factor**2)
    return CIRCUIT_FACTOR[supply] * current_a * (resistance_ohm * power_factor + reactance_ohm * sine)


def ambient_factor(method: str, ambient_c: float) -> float:
    """Factor on the ampacity of PVC cable for its surroundings; 0 where they are as hot as the conductor may be.

    Notes
    -----
    sqrt((70 - ambient) / (70 - reference)), reference 30 deg C in air and 20 deg C in the ground; rounded it is
    IEC 60364-5-52 tables B.52.14 and B.52.15.
    """
    return sqrt(max(PVC_LIMIT_C - ambient_c, 0.0) / (PVC_LIMIT_C - REFERENCE_AMBIENT_C[method]))


def grouping_factor(circuits: int) -> float:
    """Factor on the ampacity for circuits that lie together; between two numbers of the table, that of the larger."""
    return next(factor for count, factor in GROUPING_FACTOR.items() if count >= circuits)


def ampacity_a(section_mm2: float, method: str, loaded_conductors: int, ambient_c: float, circuits: int = 1) -> float:
    """Current-carrying capacity of copper cable with PVC [A].

    Parameters
    ----------
    section_mm2 : float
        One of STANDARD_SECTIONS_MM2.
    method : str
        'B2', 'C' or 'D' of IEC 60364-5-52.
    loaded_conductors : int
        2 for DC and single phase, 3 for three-phase.
    ambient_c : float
        Temperature of the surroundings [deg C].
    circuits : int
        Loaded circuits that lie together, this one counted.
    """
    base = AMPACITY_A[method, loaded_conductors][STANDARD_SECTIONS_MM2.index(section_mm2)]
    return base * ambient_factor(method, ambient_c) * grouping_factor(circuits)


def protected_current_a(device_a: float, kind: str) -> float:
    """Least ampacity that a protective device protects against overload [A].

    Parameters
    ----------
    device_a : float
        Rated current of the device [A].
    kind : str
        'breaker' or 'gG fuse'.

    Notes
    -----
    IEC 60364-4-43:2008, 433.1: In <= Iz and I2 <= 1.45 Iz. A breaker to IEC 60898 has I2 = 1.45 In; a gG fuse
    (IEC 60269) 1.6 In from 16 A and 1.9 In below.
    """
    if kind == "breaker":
        return device_a
    return device_a * (1.6 if device_a >= 16 else 1.9) / 1.45


def drop_share(
    run: CableRun, supply: str, current_a: float, voltage_v: float, section_mm2: float | None = None
) -> float:
    """Share of the voltage that a run loses, with another section where one is given."""
    power_factor = run.power_factor if isinstance(run, AcCable) and supply != "dc" else 1.0
    reactance = 0.0 if supply == "dc" else REACTANCE_OHM_PER_KM * run.length_m / 1000
    lost = voltage_drop_v(current_a, run_resistance_ohm(run, section_mm2), supply, power_factor, reactance)
    return lost / voltage_v


def smallest_section_mm2(
    run: CableRun,
    supply: str,
    *,
    current_a: float,
    voltage_v: float | None,
    bears_a: float,
    ambient_c: float,
    limit: float,
) -> float | None:
    """Smallest standard section whose voltage drop and ampacity suffice, or None where none does.

    Parameters
    ----------
    run : CableRun
        The run; its own section and its datasheet's ampacity are left aside.
    supply : str
        'dc', '1-phase' or '3-phase'.
    current_a, voltage_v : float
        At rated power [A, V]; without a voltage only the ampacity counts.
    bears_a : float
        Current that it must bear [A].
    ambient_c : float
        Temperature of the surroundings [deg C].
    limit : float
        Largest share of the voltage to lose.
    """
    for section in STANDARD_SECTIONS_MM2:
        loaded = LOADED_CONDUCTORS[supply]
        enough = ampacity_a(section, run.installation, loaded, ambient_c, run.grouped_circuits) >= bears_a
        if enough and (voltage_v is None or drop_share(run, supply, current_a, voltage_v, section) <= limit):
            return section
    return None


def current_of_power_a(power_w: float, voltage_v: float, supply: str, power_factor: float = 1.0) -> float:
    """Current that a power takes [A]."""
    if supply == "3-phase":
        return power_w / (sqrt(3) * voltage_v * power_factor)
    return power_w / (voltage_v * (1.0 if supply == "dc" else power_factor))


def _loss_share(run: CableRun, supply: str, current_a: float, power_w: float) -> float:
    wires = 3 if supply == "3-phase" else 2
    return wires * current_a**2 * run_resistance_ohm(run) / power_w


def dc_loss_share(run: CableRun, solar: Solar, strings: int) -> float:
    """Share of the array's rated power that the run from array to controller loses at that power."""
    current = strings * solar.module.current_mp_a
    return _loss_share(run, "dc", current, current * solar.modules_in_series * solar.module.voltage_mp_v)


def ac_loss_share(run: AcCable, power_w: float, voltage_v: float, phases: int) -> float:
    """Share of a power that the run from grid or generator to controller loses when that power is drawn."""
    supply = "3-phase" if phases == 3 else "1-phase"
    current = current_of_power_a(power_w, voltage_v, supply, run.power_factor)
    return _loss_share(run, supply, current, power_w)


def drop_loss_share(run: DropCable, power_w: float) -> float:
    """Share of the power sent down to the motor that the drop cable loses at that power."""
    current = current_of_power_a(power_w, run.voltage_v, run.supply, run.power_factor)
    return _loss_share(run, run.supply, current, power_w)


def drop_loss_w(run: DropCable, rated_w: float, power_w: ArrayLike, torque: ArrayLike) -> NDArray[np.float64]:
    """Power that the drop cable loses [W].

    Parameters
    ----------
    run : DropCable
        The cable; it loses less than all at the rated power.
    rated_w : float
        Rated input of the motor [W].
    power_w, torque : array_like
        Input of the motor [W] and its torque over the rated one; broadcast.

    Notes
    -----
    The loss goes with the square of the current. On AC the drive's voltage follows the speed, so the current follows
    the torque: a motor that turns slowly against the same head takes the same current (the magnetising current of an
    induction motor, which does not follow, is left out). A DC cable keeps its voltage, and its current follows power.
    """
    share = drop_loss_share(run, rated_w)
    current = np.asarray(power_w) / rated_w if run.supply == "dc" else np.asarray(torque)
    return np.asarray(share / (1 - share) * rated_w * current**2)


__all__ = [
    "AC_DROP",
    "DC_DROP",
    "DROP_DROP",
    "FUSE_LEAST",
    "FUSE_MOST",
    "PV_CURRENT_FACTOR",
    "ac_loss_share",
    "ambient_factor",
    "ampacity_a",
    "current_of_power_a",
    "dc_loss_share",
    "drop_loss_share",
    "drop_loss_w",
    "drop_share",
    "grouping_factor",
    "protected_current_a",
    "resistance_ohm_per_km",
    "run_resistance_ohm",
    "smallest_section_mm2",
    "string_fuse_a",
    "voltage_drop_v",
]
