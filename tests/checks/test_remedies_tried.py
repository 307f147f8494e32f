"""Every remedy that comes as changes of the scenario, carried out on the examples and on 200 sites with random faults.

With it the check it belongs to does not fail, nor one that did not fail before.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from planner.assumptions.reader import read_scenario
from planner.checks.remedies import with_changes
from planner.checks.site import site_verdicts
from planner.checks.verdict import Verdict
from planner.scenario.errors import InputError
from planner.scenario.scenario import Scenario
from planner.study.site import place_of, weather_of
from tests.checks.sites import place_and_weather, site

SITES = 200
Judge = Callable[[Scenario], Sequence[Verdict]]

# each may be drawn for one site, up to five at a time
FAULTS: list[tuple[str, list[Any]]] = [
    ("sources.solar.modules_in_series", [2, 3, 4, 6, 9, 10, 11, 14, 25]),
    ("sources.solar.strings", [1, 2, 3, 4, 6, "auto"]),
    ("sources.solar.module.series_fuse_max_a", [None, 15, 20, 30]),
    ("sources.solar.string_fuse_a", [10, 15, 20, 32]),
    ("sources.solar.module.system_voltage_v", [None, 250, 350, 600]),
    ("controller.dc_voltage_limit_v", [None, 250, 340, 420, 800]),
    ("controller.dc_voltage_min_v", [60, 200, 300, 320]),
    ("controller.dc_voltage_max_v", [None, 330, 400, 420]),
    ("controller.dc_current_max_a", [None, 10, 16, 33, 60]),
    ("controller.power_limit_w", [900, 1500, 2000]),
    ("controller.starting", ["direct"]),
    ("pump.plate.dc_voltage_max_v", [None, 300, 600]),
    ("pump.plate.dc_voltage_min_v", [None, 260]),
    ("pump.plate.current_a", [6, 8, 10, 12]),
    ("pump.plate.phases", [1, 3]),
    ("pump.plate.ac_voltage_min_v", [195, 200, 207, 220]),
    ("pump.plate.frame_in", [4, 6]),
    ("pump.plate.outer_diameter_mm", [None, 120, 138, 145, 160]),
    ("pump.plate.minimum_submergence_m", [1, 25, 28, 33]),
    ("pump.rated_head_m", [50, 70, 90]),
    ("pump.rated_flow_m3h", [3, 6, 7.5]),
    ("borehole.safe_yield_m3h", [3, 5, 5.3]),
    ("borehole.static_level_m", [20, 60, 70]),
    ("borehole.pump_depth_m", [72, 83, 90, 95]),
    ("borehole.screen_top_m", [None, 70, 80, 90]),
    ("borehole.depth_m", [None, 79, 84, 120]),
    ("borehole.casing_inner_diameter_mm", [100, 105, 126, 200, 250]),
    ("borehole.water_temperature_c", [31, 36, 42]),
    ("pipeline.rise_to_tank_inlet_m", [8, 20, 30, 48]),
    ("pipeline.segments.1.pipe", ["PE100 SDR11 32", "PE100 SDR11 40", "PE100 SDR17 63"]),
    ("pipeline.segments.1.length_m", [300, 440]),
    ("pipeline.profile.1.level_m", [13, 16, 25]),
    ("site.altitude_m", [0, 2500, 4500]),
    ("site.temperature_highest_c", [30, 45, 55]),
    ("site.temperature_lowest_c", [-30, -10, 15]),
    ("sources.grid.voltage_v", [127, 200, 220, 400]),
    ("sources.grid.voltage_tolerance_percent", [5, 12, 18]),
    ("sources.grid.phases", [1, 3]),
    ("sources.grid.power_limit_w", [1000, 2000, 6000]),
    ("sources.generator.rating_kw", [1.5, 2.5, 3, 15]),
    ("sources.generator.phases", [1, 3]),
    ("sources.generator.voltage_v", [230, 400]),
    ("cables.dc.section_mm2", [1.5, 2.5]),
    ("cables.dc.length_m", [100, 300]),
    ("cables.dc.voltage_class_v", [None, 300, 600]),
    ("cables.dc.outdoor", [None, "no"]),
    ("cables.ac.section_mm2", [1.5, 2.5]),
    ("cables.ac.length_m", [100, 250, 800]),
    ("cables.ac.protective_device_a", [None, 10, 20, 32, 63]),
    ("cables.ac.protective_device", ["gG fuse"]),
    ("cables.ac.grouped_circuits", [2, 6, 20]),
    ("cables.ac.ampacity_a", [8, 20]),
    ("cables.drop.section_mm2", [1.5, 2.5]),
    ("cables.drop.length_m", [60, 200, 500]),
    ("cables.drop.installation", ["C", "D"]),
    ("demand.users.0.count", [1500, 4000]),
    ("demand.users.0.litres_per_person_day", [10, 16]),
    ("tank.volume_m3", [1, 10, 200, "auto"]),
    ("tank.outlet_height_m", [-3, 1, 4]),
]


def assert_remedies_pass(scenario: Scenario, judge: Judge) -> list[str]:
    """Carry out every remedy on its own; the keys of the checks that had one."""
    found = judge(scenario)
    failing = {verdict.key for verdict in found if verdict.outcome == "fail"}
    carried_out = []
    for verdict in found:
        assert verdict.outcome in ("fail", "caution") or not verdict.changes
        if not verdict.changes:
            continue
        after = {other.key: other for other in judge(with_changes(scenario, verdict.changes))}
        told = (verdict.key, verdict.remedy, verdict.changes)
        assert after[verdict.key].outcome != "fail", told
        newly = {key for key, other in after.items() if other.outcome == "fail"} - failing
        assert not newly, (told, newly)
        carried_out.append(verdict.key)
    return carried_out


def judged_in_the_full_sites_weather(scenario: Scenario) -> Sequence[Verdict]:
    return site_verdicts(scenario, *place_and_weather(scenario))


@cache
def faulty_sites() -> list[tuple[dict[str, Any], Scenario]]:
    """Sites with one to five faults each; what no scenario may hold at all is drawn again."""
    random = np.random.default_rng(20)
    drawn: list[tuple[dict[str, Any], Scenario]] = []
    while len(drawn) < SITES:
        chosen = random.choice(len(FAULTS), size=random.integers(1, 6), replace=False)
        changes = {}
        for number in chosen:
            path, values = FAULTS[number]
            changes[path] = values[random.integers(len(values))]
        try:
            drawn.append((changes, site(changes)))
        except InputError:
            continue
    return drawn


@pytest.mark.slow
@pytest.mark.parametrize("part", range(10))
def test_no_remedy_of_a_faulty_site_fails_or_makes_another_check_fail(part: int) -> None:
    for _, scenario in faulty_sites()[part::10]:
        assert_remedies_pass(scenario, judged_in_the_full_sites_weather)


@pytest.mark.slow
def test_the_faulty_sites_reach_the_remedies() -> None:
    proposed: set[str] = set()
    for _, scenario in faulty_sites():
        proposed |= {verdict.key for verdict in judged_in_the_full_sites_weather(scenario) if verdict.changes}
    assert len(proposed) > 25


@pytest.mark.parametrize("file", sorted(Path("scenarios").glob("*.toml")), ids=lambda file: file.stem)
def test_no_remedy_of_an_example_fails_or_makes_another_check_fail(file: Path) -> None:
    scenario = read_scenario(file)
    place = place_of(scenario)
    weather = weather_of(scenario, place, file.parent)
    assert_remedies_pass(scenario, lambda changed: site_verdicts(changed, place, weather))
