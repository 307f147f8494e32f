"""Array and controller: string voltages in the cold and in the heat, and the controller's window."""

from __future__ import annotations

from math import ceil, floor

import numpy as np
from pvlib.pvarray import batzelis
from pvlib.temperature import faiman

from planner.checks.basis import Basis
from planner.checks.verdict import PRACTICE, Outcome, Remedy, Verdict, at_most, figure, highest, lowest, missing, room
from planner.scenario.solar import Module, Solar

TOPIC = "array"
CONTROLLER = "the controller's datasheet"
NOON_W_M2 = 1000.0
NOON_WIND_M_S = 1.0
WINDOW_HOURS = 200.0
WINDOW_LOSS = 0.10
"""Share of the array's energy that the controller's window may lose before the design fails: common practice."""
LOOK_FOR_LIMIT = "look for 'max. input voltage', 'max. DC' or 'Voc max.' on the controller's plate"
NO_ADDING = "no module may be added in series until the largest DC voltage of the controller is known"
NONE_FITS = "no number of modules in series fits: another controller or another module"


def verdicts(basis: Basis) -> list[Verdict]:
    """Judge the voltages of the array; nothing without an array."""
    solar = basis.scenario.sources.solar
    if solar is None:
        return []
    return [
        _open_circuit(basis, solar),
        _system_voltage(basis, solar),
        _hot_noon(basis, solar),
        _cold_working(basis, solar),
        _series(basis, solar),
        _window(basis, solar),
    ]


def open_circuit_v(module: Module, temperature_c: float) -> float:
    """Open-circuit voltage of a module in full light at a temperature of its cells [V].

    Straight in the temperature by the datasheet's coefficient, IEC 62548.
    """
    return module.voltage_oc_v * (1 + module.voltage_oc_percent_per_k / 100 * (temperature_c - 25))


def operating_v(module: Module, cell_c: float) -> float:
    """Voltage of a module at its maximum power point in full light [V], after Batzelis (2017) as in pvlib."""
    point = batzelis(
        np.array([NOON_W_M2]),
        np.array([cell_c]),
        module.voltage_mp_v,
        module.current_mp_a,
        module.voltage_oc_v,
        module.current_sc_a,
        module.current_sc_percent_per_k / 100 * module.current_sc_a,
        module.voltage_oc_percent_per_k / 100 * module.voltage_oc_v,
    )
    return float(point["v_mp"][0])


def hot_cell_c(air_c: float) -> float:
    """Temperature of the cells at noon in hot, still air [deg C], after Faiman 2008 as in pvlib."""
    return float(faiman(NOON_W_M2, air_c, NOON_WIND_M_S))


def operating_voltages(basis: Basis) -> tuple[float, float]:
    """Working voltage of a string at the hottest noon and on the coldest morning [V]."""
    solar = basis.scenario.sources.solar
    assert solar is not None
    hot, cold = hot_cell_c(basis.hottest_c), basis.coldest_c
    return (
        solar.modules_in_series * operating_v(solar.module, hot),
        solar.modules_in_series * operating_v(solar.module, cold),
    )


def cold_string_v(basis: Basis, solar: Solar) -> float:
    """Open-circuit voltage of a string on the coldest morning [V]."""
    return solar.modules_in_series * open_circuit_v(solar.module, basis.coldest_c)


def window_v(basis: Basis) -> tuple[float | None, float | None, float | None]:
    """Lowest and highest working voltage and the voltage that destroys [V]; None where not given.

    The narrower of the controller's and the plate's, where both are given.
    """
    controller, plate = basis.scenario.controller, basis.scenario.pump.plate
    lows = [v for v in (controller.dc_voltage_min_v, plate.dc_voltage_min_v) if v is not None]
    highs = [v for v in (controller.dc_voltage_max_v, plate.dc_voltage_max_v) if v is not None]
    limits = [v for v in (controller.dc_voltage_limit_v, plate.dc_voltage_max_v) if v is not None]
    return max(lows, default=None), min(highs, default=None), min(limits, default=None)


def series_that_fit(basis: Basis, solar: Solar) -> tuple[int | None, int | None]:
    """Fewest and most modules in series that the voltages allow; None where a voltage was not given.

    The most is by the least of what electronics, module and cable bear. Where what destroys the electronics is not
    known, its highest working voltage stands for it; where that is not known either, no number is safe to name.
    """
    low, high, limit = window_v(basis)
    electronics = high if limit is None else limit
    cables = basis.scenario.cables
    cable = None if cables is None or cables.dc is None else cables.dc.voltage_class_v
    hot = operating_v(solar.module, hot_cell_c(basis.hottest_c))
    fewest = None if low is None else ceil(low / hot - 1e-9)
    if electronics is None:
        return fewest, None
    known = [volts for volts in (electronics, solar.module.system_voltage_v, cable) if volts is not None]
    return fewest, floor(min(known) / open_circuit_v(solar.module, basis.coldest_c) + 1e-9)


def modules_words(count: int) -> str:
    """Write a number of modules in words."""
    words = {1: "one module", 2: "two modules", 3: "three modules"}
    return words.get(count, f"{count} modules")


def series_remedy(basis: Basis, solar: Solar, *, at_least: int = 1, at_most: int | None = None) -> Remedy:
    """Find the nearest number of modules in series that every known voltage allows, within further bounds.

    Parameters
    ----------
    basis, solar
        The site and its array.
    at_least, at_most : int
        Bounds that the check itself sets; without an upper one the voltages alone bound it.

    Returns
    -------
    (str, dict)
        The remedy in words, and as changes of the scenario.
    """
    count = solar.modules_in_series
    fewest, most = series_that_fit(basis, solar)
    low = max(fewest or 1, at_least, 1)
    if most is None and (low > count or at_most is None):
        return (NO_ADDING if low > count else "another controller or another module"), {}
    high = min(bound for bound in (most, at_most) if bound is not None)
    if low > high:
        return NONE_FITS, {}
    target = min(max(count, low), high)
    if target == count:
        return "another controller or another module", {}
    words = f"{modules_words(abs(target - count))} {'more' if target > count else 'less'} in series"
    return words, {"sources.solar.modules_in_series": target}


def _open_circuit(basis: Basis, solar: Solar) -> Verdict:
    _, high, limit = window_v(basis)
    value = cold_string_v(basis, solar)
    compared = (
        f"Open-circuit voltage of {solar.modules_in_series} modules on the coldest morning ({basis.coldest_words})"
    )
    why = (
        "Before the motor starts, the cold string stands at this voltage; above the limit it destroys the electronics."
    )
    source = f"{CONTROLLER} or the plate; the voltage in the cold by IEC 62548"
    key, against = "string_open_circuit_voltage", f"{compared}, against what controller or pump bear"
    words, changes = series_remedy(basis, solar)
    if limit is not None:
        return highest(TOPIC, key, against, value, limit, "V", why=why, remedy=words, source=source, changes=changes)
    if high is not None and not at_most(value, high):
        return highest(
            TOPIC,
            key,
            f"{compared}, against the highest working voltage, as what the controller bears was not given",
            value,
            high,
            "V",
            why=why,
            remedy=f"{LOOK_FOR_LIMIT}; until it is known, {words}",
            source=source,
            beyond="caution",
            changes=changes,
        )
    known = "" if high is None else f"; the highest working voltage is {high:g} V"
    look_for = f"{LOOK_FOR_LIMIT}; {NO_ADDING}"
    return missing(TOPIC, key, f"{against}{known}", look_for, why=why, source=source, value=value, unit="V")


def _system_voltage(basis: Basis, solar: Solar) -> Verdict:
    value = cold_string_v(basis, solar)
    compared = "Open-circuit voltage of a string in the cold, against the module's system voltage"
    why = "Above it the module's own insulation may fail, and touch the frame with the array's voltage."
    source = "the module's datasheet; IEC 62548"
    limit = solar.module.system_voltage_v
    if limit is None:
        look_for = "look for 'max. system voltage' on the module's back"
        key = "module_system_voltage"
        return missing(TOPIC, key, compared, look_for, why=why, source=source, value=value, unit="V")
    most = floor(limit / (value / solar.modules_in_series) + 1e-9)
    words, changes = series_remedy(basis, solar, at_most=most)
    return highest(
        TOPIC,
        "module_system_voltage",
        compared,
        value,
        limit,
        "V",
        why=why,
        remedy=words,
        source=source,
        changes=changes,
    )


def _hot_noon(basis: Basis, solar: Solar) -> Verdict:
    low, hot = window_v(basis)[0], operating_voltages(basis)[0]
    compared = f"Working voltage of a string at the hottest noon ({basis.hottest_c:.1f} deg C in the shade)"
    why = "Below the controller's lowest voltage the pump loses power just when the sun is best, or stops."
    key, against = "string_voltage_hot", f"{compared}, against the controller's lowest"
    if low is None:
        look_for = "look for the range of DC or MPP voltage in the controller's datasheet"
        return missing(TOPIC, key, against, look_for, why=why, source=CONTROLLER, value=hot, unit="V")
    words, changes = series_remedy(basis, solar)
    return lowest(TOPIC, key, against, hot, low, "V", why=why, remedy=words, source=CONTROLLER, changes=changes)


def _cold_working(basis: Basis, solar: Solar) -> Verdict:
    high, cold = window_v(basis)[1], operating_voltages(basis)[1]
    compared = f"Working voltage of a string on the coldest morning ({basis.coldest_c:.1f} deg C)"
    why = "Above the controller's highest working voltage the array is held off its best point or cut off."
    key, against = "string_voltage_cold", f"{compared}, against the controller's highest"
    if high is None:
        look_for = "look for the range of DC or MPP voltage in the controller's datasheet"
        return missing(TOPIC, key, against, look_for, why=why, source=CONTROLLER, value=cold, unit="V")
    words, changes = series_remedy(basis, solar, at_most=floor(high / (cold / solar.modules_in_series) + 1e-9))
    return highest(
        TOPIC,
        key,
        against,
        cold,
        high,
        "V",
        why=why,
        remedy=words,
        source=CONTROLLER,
        beyond="caution",
        changes=changes,
    )


def _series(basis: Basis, solar: Solar) -> Verdict:
    fewest, most = series_that_fit(basis, solar)
    count = solar.modules_in_series
    compared = (
        "Modules in series, against the numbers that fit between the lowest voltage at noon and the limit in the cold"
    )
    why = "Only these numbers are safe in the cold and still work in the heat."
    span = f"{'?' if fewest is None else fewest} to {'?' if most is None else most}"
    if fewest is None or most is None or window_v(basis)[2] is None:
        return missing(
            TOPIC,
            "modules_in_series",
            compared,
            "look for the lowest and the largest DC voltage on the controller's plate",
            why=why,
            source=CONTROLLER,
            value=count,
            limit=span,
            unit="modules",
        )
    good = fewest <= count <= most
    nearest = most if count > most else fewest
    words, changes = series_remedy(basis, solar)
    return Verdict(
        TOPIC,
        "modules_in_series",
        compared,
        "pass" if good else "fail",
        count,
        span if fewest <= most else "none",
        "modules",
        "" if good else f"{modules_words(abs(count - nearest))} {'too many' if count > most else 'too few'}",
        why,
        "" if good else words,
        f"{CONTROLLER}; IEC 62548",
        {} if good else changes,
    )


def _window(basis: Basis, solar: Solar) -> Verdict:
    array = basis.first_year_array
    hours, loss_kwh = float(array.window_hours.max()), float(array.window_loss_kwh.max())
    share = loss_kwh / max(loss_kwh + float(array.string_w.sum(axis=0).max()) / 1000, 1e-9)
    outcome: Outcome = "pass" if at_most(hours, WINDOW_HOURS) else "caution"
    if not at_most(share, WINDOW_LOSS):
        outcome = "fail"
    words, changes = _towards_the_middle(basis, solar)
    good = outcome == "pass"
    return Verdict(
        TOPIC,
        "window_hours",
        "Hours a year in which the controller's voltage window keeps the array off its best point; "
        f"{100 * share:.1f} % of its energy is lost so",
        outcome,
        hours,
        WINDOW_HOURS,
        "h/year",
        room(hours, WINDOW_HOURS, "h/year"),
        "In those hours power is lost that has been paid for.",
        "" if good else words,
        f"hourly run of the first year; {figure(WINDOW_HOURS)} hours is {PRACTICE}, and so is the tenth of the energy "
        "beyond which it fails",
        {} if good else changes,
    )


def _towards_the_middle(basis: Basis, solar: Solar) -> Remedy:
    """Aim at the number whose working voltages stand in the middle of the window, as far as the voltages allow it."""
    low, high, _ = window_v(basis)
    hot, cold = (volts / solar.modules_in_series for volts in operating_voltages(basis))
    if low is None or high is None:
        return series_remedy(basis, solar)
    middle = max(round((low + high) / (hot + cold)), 1)
    if middle > solar.modules_in_series:
        return series_remedy(basis, solar, at_least=min(middle, series_that_fit(basis, solar)[1] or 1))
    return series_remedy(basis, solar, at_most=middle)
