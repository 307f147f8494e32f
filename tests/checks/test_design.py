"""The judge of one design: it says what the site checks say, and leaves out of a search what fails."""

from __future__ import annotations

from itertools import product
from typing import Any

import pytest

from planner.checks.design import design_judge, series_to_try
from planner.checks.site import site_verdicts
from planner.checks.verdict import failed
from tests.checks.sites import basis, site

OPEN: dict[str, Any] = {"sources.solar.modules_in_series": None, "sources.solar.strings": "auto"}
CABLE = {"length_m": 40, "section_mm2": 6, "voltage_class_v": 1500, "outdoor": "yes", "ampacity_a": 30}
HELD = {"sources.solar.string_fuse_a": 20, "cables.dc": CABLE}


@pytest.mark.parametrize(
    ("series", "tank_m3", "strings"),
    [
        pytest.param(*case, marks=[] if place % 5 == 0 else [pytest.mark.slow])
        for place, case in enumerate(product([3, 7, 10], [0.5, 10.0, 40.0], [1, 2, 3, 4]))
    ],
)
def test_the_judge_says_what_the_site_checks_say(series: int, strings: int, tank_m3: float) -> None:
    changes = HELD | {"sources.solar.modules_in_series": series, "sources.solar.strings": "auto"}
    here = basis(site(changes))
    found = site_verdicts(here.scenario, here.place, here.weather, strings=strings, tank_m3=tank_m3)
    design = {"array", "cables", "tank", "nameplate"}
    expected = {verdict.key for verdict in failed(found) if verdict.topic in design}
    assert set(design_judge(here)(None, strings, tank_m3).failed) == expected
    # the number in series may come from the search as well
    other = basis(site(HELD | {"sources.solar.modules_in_series": 5, "sources.solar.strings": "auto"}))
    assert set(design_judge(other)(series, strings, tank_m3).failed) == expected


@pytest.mark.parametrize(
    ("check", "key", "at_limit", "beyond"),
    [
        # three strings of 12.4 A, 1.25 times
        ("array_current", "controller.dc_current_max_a", 46.5, 46.4),
        # without fuses, two others drive 24.8 A into a faulty one
        ("string_over_current", "sources.solar.module.series_fuse_max_a", 24.8, 24.7),
    ],
)
def test_strings_at_the_limit_pass_and_beyond_it_fail(check: str, key: str, at_limit: float, beyond: float) -> None:
    for value, passes in ((at_limit, True), (beyond, False), (at_limit + 10, True)):
        assert (check not in design_judge(basis(site({key: value})))(None, 3, 40.0).failed) is passes


def test_modules_in_series_are_those_from_the_hot_noon_to_the_cold_morning() -> None:
    here = basis(site(OPEN))
    tried = series_to_try(here)
    judge = design_judge(here)
    assert len(tried) > 2
    voltages = {"string_open_circuit_voltage", "module_system_voltage", "string_voltage_hot", "modules_in_series"}
    assert not any(voltages & set(judge(count, 1, 40.0).failed) for count in tried)
    assert "modules_in_series" in judge(tried[-1] + 1, 1, 40.0).failed
    assert "modules_in_series" in judge(tried[0] - 1, 1, 40.0).failed


def test_the_system_voltage_of_the_module_bounds_the_series() -> None:
    whole = series_to_try(basis(site(OPEN)))
    cold_v = 0.0
    for verdict in site_verdicts(*_parts(site(OPEN | {"sources.solar.modules_in_series": whole[-1]}))):
        if verdict.key == "module_system_voltage":
            cold_v = float(verdict.value or 0)
    held = series_to_try(basis(site(OPEN | {"sources.solar.module.system_voltage_v": cold_v})))
    assert held == whole
    held = series_to_try(basis(site(OPEN | {"sources.solar.module.system_voltage_v": cold_v - 0.5})))
    assert held == whole[:-1]


def test_an_option_without_an_array_is_judged_by_its_tank_alone() -> None:
    judge = design_judge(basis(site({"controller.dc_current_max_a": 1})))
    assert judge(None, 1, 40.0).failed == ("array_current",)
    assert judge(None, 0, 40.0).failed == ()
    assert judge(None, 0, 0.1).failed == ("busiest_hour",)


def _parts(scenario: Any) -> tuple[Any, Any, Any]:
    here = basis(scenario)
    return here.scenario, here.place, here.weather
