"""Array and controller: string voltages in the cold and in the heat, and the controller's window."""

from __future__ import annotations

from math import ceil, floor

import numpy as np
from pvlib.pvarray import batzelis
from pvlib.temperature import faiman

from planner.checks.basis import Basis
from planner.checks.verdict import Outcome, Remedy, Verdict, at_most, highest, lowest, missing, room
from planner.scenario.solar import Module, Solar
from planner.text import text

TOPIC = "array"
NOON_W_M2 = 1000.0
NOON_WIND_M_S = 1.0
WINDOW_HOURS = 200.0
WINDOW_LOSS = 0.10
"""Share of the array's energy that the controller's window may lose before the design fails: common practice."""
COUNTED = {1: "one", 2: "two", 3: "three"}
"""Numbers of modules that have sentences of their own."""


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
    low, most_v = window_v(basis)[0], _open_circuit_limit_v(basis, solar)
    hot = operating_v(solar.module, hot_cell_c(basis.hottest_c))
    fewest = None if low is None else ceil(low / hot - 1e-9)
    if most_v is None:
        return fewest, None
    return fewest, floor(most_v / open_circuit_v(solar.module, basis.coldest_c) + 1e-9)


def _open_circuit_limit_v(basis: Basis, solar: Solar) -> float | None:
    """Least that electronics, module and cable bear [V]; None where nothing is known of the electronics."""
    _, high, limit = window_v(basis)
    electronics = high if limit is None else limit
    cables = basis.scenario.cables
    cable = None if cables is None or cables.dc is None else cables.dc.voltage_class_v
    known = [volts for volts in (electronics, solar.module.system_voltage_v, cable) if volts is not None]
    return None if electronics is None else min(known)


def _counted(count: int) -> str:
    """Part of a sentence's key that stands for a number of modules."""
    return COUNTED.get(count, "many")


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
        return text("check.series.no_adding" if low > count else "check.series.another"), {}
    high = min(bound for bound in (most, at_most) if bound is not None)
    if low > high:
        return _none_fits(basis, solar, fewest, most), {}
    target = min(max(count, low), high)
    if target == count:
        return text("check.series.another"), {}
    change, way = abs(target - count), "more" if target > count else "less"
    words = text(f"check.series.{way}.{_counted(change)}", count=change)
    return words, {"sources.solar.modules_in_series": target}


def _none_fits(basis: Basis, solar: Solar, fewest: int | None, most: int | None) -> str:
    """Say why no number of modules in series fits, and what would."""
    least_v, most_v = window_v(basis)[0], _open_circuit_limit_v(basis, solar)
    if most_v is not None and most == 0:
        one_v = open_circuit_v(solar.module, basis.coldest_c)
        rated_v = floor(solar.module.voltage_oc_v * most_v / one_v)
        return text("check.series.not_even_one", one_v=one_v, most_v=most_v, rated_v=rated_v)
    if fewest is not None and most is not None and fewest > most:
        return text("check.series.window_too_narrow", fewest=fewest, least_v=least_v, most=most, most_v=most_v)
    return text("check.series.none_fits")


def _open_circuit(basis: Basis, solar: Solar) -> Verdict:
    _, high, limit = window_v(basis)
    key, value = "string_open_circuit_voltage", cold_string_v(basis, solar)
    modules, coldest = solar.modules_in_series, basis.coldest_words
    compared = text("check.string_open_circuit_voltage.compared", modules=modules, coldest=coldest)
    why = text("check.string_open_circuit_voltage.why")
    source = text("check.string_open_circuit_voltage.source")
    words, changes = series_remedy(basis, solar)
    if limit is not None:
        return highest(TOPIC, key, compared, value, limit, "V", why=why, remedy=words, source=source, changes=changes)
    if high is not None and not at_most(value, high):
        return highest(
            TOPIC,
            key,
            text("check.string_open_circuit_voltage.compared_with_working", modules=modules, coldest=coldest),
            value,
            high,
            "V",
            why=why,
            remedy=text("check.string_open_circuit_voltage.remedy_until_known", remedy=words),
            source=source,
            beyond="caution",
            changes=changes,
        )
    if high is not None:
        compared = text(
            "check.string_open_circuit_voltage.compared_working_known",
            modules=modules,
            coldest=coldest,
            highest_v=high,
        )
    look_for = text("check.string_open_circuit_voltage.look_for")
    return missing(TOPIC, key, compared, look_for, why=why, source=source, value=value, unit="V")


def _system_voltage(basis: Basis, solar: Solar) -> Verdict:
    key, value = "module_system_voltage", cold_string_v(basis, solar)
    compared, why = text("check.module_system_voltage.compared"), text("check.module_system_voltage.why")
    source = text("check.module_system_voltage.source")
    limit = solar.module.system_voltage_v
    if limit is None:
        look_for = text("check.module_system_voltage.look_for")
        return missing(TOPIC, key, compared, look_for, why=why, source=source, value=value, unit="V")
    most = floor(limit / (value / solar.modules_in_series) + 1e-9)
    words, changes = series_remedy(basis, solar, at_most=most)
    return highest(TOPIC, key, compared, value, limit, "V", why=why, remedy=words, source=source, changes=changes)


def _hot_noon(basis: Basis, solar: Solar) -> Verdict:
    low, hot = window_v(basis)[0], operating_voltages(basis)[0]
    key, compared = "string_voltage_hot", text("check.string_voltage_hot.compared", hottest_c=basis.hottest_c)
    why, source = text("check.string_voltage_hot.why"), text("source.controller")
    if low is None:
        look_for = text("check.string_voltage.look_for")
        return missing(TOPIC, key, compared, look_for, why=why, source=source, value=hot, unit="V")
    words, changes = series_remedy(basis, solar)
    return lowest(TOPIC, key, compared, hot, low, "V", why=why, remedy=words, source=source, changes=changes)


def _cold_working(basis: Basis, solar: Solar) -> Verdict:
    high, cold = window_v(basis)[1], operating_voltages(basis)[1]
    key, compared = "string_voltage_cold", text("check.string_voltage_cold.compared", coldest_c=basis.coldest_c)
    why, source = text("check.string_voltage_cold.why"), text("source.controller")
    if high is None:
        look_for = text("check.string_voltage.look_for")
        return missing(TOPIC, key, compared, look_for, why=why, source=source, value=cold, unit="V")
    words, changes = series_remedy(basis, solar, at_most=floor(high / (cold / solar.modules_in_series) + 1e-9))
    return highest(
        TOPIC,
        key,
        compared,
        cold,
        high,
        "V",
        why=why,
        remedy=words,
        source=source,
        beyond="caution",
        changes=changes,
    )


def _series(basis: Basis, solar: Solar) -> Verdict:
    fewest, most = series_that_fit(basis, solar)
    count = solar.modules_in_series
    compared, why = text("check.modules_in_series.compared"), text("check.modules_in_series.why")
    span = text(
        "check.modules_in_series.span",
        fewest="?" if fewest is None else fewest,
        most="?" if most is None else most,
    )
    if fewest is None or most is None or window_v(basis)[2] is None:
        return missing(
            TOPIC,
            "modules_in_series",
            compared,
            text("check.modules_in_series.look_for"),
            why=why,
            source=text("source.controller"),
            value=count,
            limit=span,
            unit=text("unit.modules"),
        )
    good = fewest <= count <= most
    nearest = most if count > most else fewest
    off, way = abs(count - nearest), "too_many" if count > most else "too_few"
    words, changes = series_remedy(basis, solar)
    return Verdict(
        TOPIC,
        "modules_in_series",
        compared,
        "pass" if good else "fail",
        count,
        span if fewest <= most else text("check.modules_in_series.no_span"),
        text("unit.modules"),
        "" if good else text(f"check.modules_in_series.{way}.{_counted(off)}", count=off),
        why,
        "" if good else words,
        text("check.modules_in_series.source"),
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
    unit = text("unit.hours_per_year")
    good = outcome == "pass"
    return Verdict(
        TOPIC,
        "window_hours",
        text("check.window_hours.compared", percent=100 * share),
        outcome,
        hours,
        WINDOW_HOURS,
        unit,
        room(hours, WINDOW_HOURS, unit),
        text("check.window_hours.why"),
        "" if good else words,
        text("check.window_hours.source", hours=WINDOW_HOURS),
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
