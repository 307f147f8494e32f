"""Array and controller: string voltages in the cold and in the heat, current, power and the window."""

from __future__ import annotations

from math import ceil, floor

import numpy as np
from pvlib.pvarray import batzelis
from pvlib.temperature import faiman

from planner.checks.basis import Basis
from planner.checks.verdict import (
    PRACTICE,
    Outcome,
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
from planner.scenario.sources import Module, Solar
from planner.supply.cables import PV_CURRENT_FACTOR

TOPIC = "Array and controller"
CONTROLLER = "the controller's datasheet"
NOON_W_M2 = 1000.0
NOON_WIND_M_S = 1.0
POWER_RATIO = (1.2, 2.0)
WINDOW_HOURS = 200.0


def verdicts(basis: Basis) -> list[Verdict]:
    """Judge array and controller; nothing without an array."""
    solar = basis.scenario.sources.solar
    if solar is None:
        return []
    return [
        _open_circuit(basis, solar),
        _system_voltage(basis, solar),
        _hot_noon(basis, solar),
        _cold_working(basis, solar),
        _series(basis, solar),
        _current(basis, solar),
        _ratio(basis, solar),
        _window(basis),
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
    """Fewest and most modules in series that the voltages allow; None where a voltage was not given."""
    low, _, limit = window_v(basis)
    if limit is not None and solar.module.system_voltage_v is not None:
        limit = min(limit, solar.module.system_voltage_v)
    cold = open_circuit_v(solar.module, basis.coldest_c)
    hot = operating_v(solar.module, hot_cell_c(basis.hottest_c))
    fewest = None if low is None else ceil(low / hot - 1e-9)
    return fewest, None if limit is None else floor(limit / cold + 1e-9)


def _modules(count: int) -> str:
    words = {1: "one module", 2: "two modules", 3: "three modules"}
    return words.get(count, f"{count} modules")


def _fewer(basis: Basis, solar: Solar) -> str:
    fewest, most = series_that_fit(basis, solar)
    if most is None or most < 1 or (fewest is not None and fewest > most):
        return "no number of modules in series fits: another controller or another module"
    return f"{_modules(solar.modules_in_series - most)} less in series"


def _open_circuit(basis: Basis, solar: Solar) -> Verdict:
    _, high, limit = window_v(basis)
    value = solar.modules_in_series * open_circuit_v(solar.module, basis.coldest_c)
    compared = (
        f"Open-circuit voltage of {solar.modules_in_series} modules on the coldest morning ({basis.coldest_words})"
    )
    why = (
        "Before the motor starts, the cold string stands at this voltage; above the limit it destroys the electronics."
    )
    if limit is None:
        known = "" if high is None else f"; the highest working voltage is {high:g} V"
        return missing(
            TOPIC,
            "string_open_circuit_voltage",
            f"{compared}, against what controller or pump bear{known}",
            "look for 'max. input voltage', 'max. DC' or 'Voc max.' on the controller's plate",
            why=why,
            source=CONTROLLER,
            value=value,
            unit="V",
        )
    return highest(
        TOPIC,
        "string_open_circuit_voltage",
        f"{compared}, against what controller or pump bear",
        value,
        limit,
        "V",
        why=why,
        remedy=_fewer(basis, solar),
        source=f"{CONTROLLER} or the plate; the voltage in the cold by IEC 62548",
    )


def _system_voltage(basis: Basis, solar: Solar) -> Verdict:
    value = solar.modules_in_series * open_circuit_v(solar.module, basis.coldest_c)
    compared = "Open-circuit voltage of a string in the cold, against the module's system voltage"
    why = "Above it the module's own insulation may fail, and touch the frame with the array's voltage."
    source = "the module's datasheet; IEC 62548"
    if solar.module.system_voltage_v is None:
        return missing(
            TOPIC,
            "module_system_voltage",
            compared,
            "look for 'max. system voltage' on the module's back",
            why=why,
            source=source,
            value=value,
            unit="V",
        )
    limit = solar.module.system_voltage_v
    most = floor(limit / (value / solar.modules_in_series) + 1e-9)
    return highest(
        TOPIC,
        "module_system_voltage",
        compared,
        value,
        limit,
        "V",
        why=why,
        remedy=f"{_modules(solar.modules_in_series - most)} less in series",
        source=source,
    )


def _hot_noon(basis: Basis, solar: Solar) -> Verdict:
    low, hot = window_v(basis)[0], operating_voltages(basis)[0]
    compared = f"Working voltage of a string at the hottest noon ({basis.hottest_c:.1f} deg C in the shade)"
    why = "Below the controller's lowest voltage the pump loses power just when the sun is best, or stops."
    if low is None:
        return missing(
            TOPIC,
            "string_voltage_hot",
            f"{compared}, against the controller's lowest",
            "look for the range of DC or MPP voltage in the controller's datasheet",
            why=why,
            source=CONTROLLER,
            value=hot,
            unit="V",
        )
    fewest, most = series_that_fit(basis, solar)
    more = max((fewest or 0) - solar.modules_in_series, 1)
    fits = most is None or fewest is None or fewest <= most
    return lowest(
        TOPIC,
        "string_voltage_hot",
        f"{compared}, against the controller's lowest",
        hot,
        low,
        "V",
        why=why,
        remedy=f"{_modules(more)} more in series" if fits else "another controller or module: no number in series fits",
        source=CONTROLLER,
    )


def _cold_working(basis: Basis, solar: Solar) -> Verdict:
    high, cold = window_v(basis)[1], operating_voltages(basis)[1]
    compared = f"Working voltage of a string on the coldest morning ({basis.coldest_c:.1f} deg C)"
    why = "Above the controller's highest working voltage the array is held off its best point or cut off."
    if high is None:
        return missing(
            TOPIC,
            "string_voltage_cold",
            f"{compared}, against the controller's highest",
            "look for the range of DC or MPP voltage in the controller's datasheet",
            why=why,
            source=CONTROLLER,
            value=cold,
            unit="V",
        )
    most = floor(high / (cold / solar.modules_in_series) + 1e-9)
    return highest(
        TOPIC,
        "string_voltage_cold",
        f"{compared}, against the controller's highest",
        cold,
        high,
        "V",
        why=why,
        remedy=f"{_modules(solar.modules_in_series - most)} less in series",
        source=CONTROLLER,
        beyond="caution",
    )


def _series(basis: Basis, solar: Solar) -> Verdict:
    fewest, most = series_that_fit(basis, solar)
    count = solar.modules_in_series
    compared = (
        "Modules in series, against the numbers that fit between the lowest voltage at noon and the limit in the cold"
    )
    why = "Only these numbers are safe in the cold and still work in the heat."
    span = f"{'?' if fewest is None else fewest} to {'?' if most is None else most}"
    if fewest is None or most is None:
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
    margin = "" if good else f"{_modules(abs(count - nearest))} {'too many' if count > most else 'too few'}"
    return Verdict(
        TOPIC,
        "modules_in_series",
        compared,
        "pass" if good else "fail",
        count,
        span if fewest <= most else "none",
        "modules",
        margin,
        why,
        "" if good else f"{nearest} in series" if fewest <= most else "another controller or another module",
        f"{CONTROLLER}; IEC 62548",
    )


def _current(basis: Basis, solar: Solar) -> Verdict:
    limit, strings = basis.scenario.controller.dc_current_max_a, basis.string_counts[1]
    value = strings * PV_CURRENT_FACTOR * solar.module.current_sc_a
    left_open = "" if basis.strings is not None else ", the most that the design may have"
    compared = f"Current of {strings} string(s){left_open}, 1.25 times the short-circuit current"
    why = "Bright cloud edges give more than the rated current; inputs and fuses must bear it."
    source = f"{CONTROLLER}; 1.25 times by IEC 62548"
    if limit is None:
        return missing(
            TOPIC,
            "array_current",
            f"{compared}, against the controller's largest",
            "look for 'max. input current' or 'Isc max.' on the controller's plate",
            why=why,
            source=source,
            value=value,
            unit="A",
        )
    fits = floor(limit / (value / strings) + 1e-9)
    return highest(
        TOPIC,
        "array_current",
        f"{compared}, against the controller's largest",
        value,
        limit,
        "A",
        why=why,
        remedy=f"no more than {fits} string(s)" if fits else "another controller, or a module of less current",
        source=source,
    )


def _ratio(basis: Basis, solar: Solar) -> Verdict:
    low, high = POWER_RATIO
    need_w = basis.motor_input_w / (basis.scenario.controller.efficiency_percent / 100)
    string_w = solar.modules_in_series * solar.module.power_w
    strings = basis.strings
    if strings is None:
        # the number that comes nearest to the middle stands for a design that is still open
        strings = int(min(max(round((low + high) / 2 * need_w / string_w), 1), solar.strings_max))
    value = strings * string_w / need_w
    left_open = "" if basis.strings is not None else f" (the number is open; {strings} of 1 to {solar.strings_max})"
    short = value < (low + high) / 2
    good = at_least(value, low) and at_most(value, high)
    outcome: Outcome = "pass" if good else "caution"
    wanted = ceil(low * need_w / string_w) if short else max(floor(high * need_w / string_w), 1)
    return Verdict(
        TOPIC,
        "power_ratio",
        f"Rated power of {strings} string(s){left_open} over what the pump takes, against {low:g} to {high:g}",
        outcome,
        value,
        low if short else high,
        "times",
        reserve(value, low, "times") if short else room(value, high, "times"),
        "A small array seldom brings the pump to full speed; a large one gives power that nothing can use.",
        "" if good else f"{wanted} string(s)",
        PRACTICE,
    )


def _window(basis: Basis) -> Verdict:
    hours = float(basis.first_year_array().window_hours.max())
    return highest(
        TOPIC,
        "window_hours",
        "Hours a year in which the controller's voltage window keeps the array off its best point",
        hours,
        WINDOW_HOURS,
        "h/year",
        why="In those hours power is lost that has been paid for.",
        remedy="another number of modules in series, nearer to the middle of the window",
        source=f"hourly run of the first year; {figure(WINDOW_HOURS)} hours is {PRACTICE}",
        beyond="caution",
    )
