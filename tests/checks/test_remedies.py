"""Where a remedy names a figure, that figure passes; and one just short of it does not."""

from __future__ import annotations

import re
from typing import Any

import pytest

from tests.checks.sites import checked, site

NAKED = {
    "pipeline.segments.1.pipe": None,
    "pipeline.segments.1.inner_diameter_mm": 26,
    "pipeline.segments.1.pressure_class_bar": 16,
    "pipeline.segments.1.length_m": 20,
    "pipeline.profile": [],
}
SIX_INCH = {"pump.plate.frame_in": 6, "pump.plate.outer_diameter_mm": 140, "borehole.casing_inner_diameter_mm": 250}


def said(key: str, changes: dict[str, Any], pattern: str) -> float:
    """The figure in a remedy."""
    verdict = checked(site(changes))[key]
    assert verdict.outcome in ("fail", "caution")
    found = re.search(pattern, verdict.remedy)
    assert found is not None, verdict.remedy
    return float(found.group(1))


def outcome(key: str, changes: dict[str, Any]) -> str:
    return checked(site(changes))[key].outcome


@pytest.mark.parametrize(
    ("key", "changes", "pattern", "path", "short"),
    [
        ("velocity", NAKED, r"at least (\d+) mm", "pipeline.segments.1.inner_diameter_mm", -1),
        ("motor_cooling", SIX_INCH, r"at most (\d+) mm", "borehole.flow_sleeve_diameter_mm", +2),
        ("dc_cable_drop", {"cables.dc.length_m": 120}, r"cross-section of ([\d.]+) mm2", "cables.dc.section_mm2", None),
        ("ac_cable_drop", {"cables.ac.length_m": 200}, r"cross-section of ([\d.]+) mm2", "cables.ac.section_mm2", None),
        (
            "drop_cable_drop",
            {"cables.drop.length_m": 350},
            r"cross-section of ([\d.]+) mm2",
            "cables.drop.section_mm2",
            None,
        ),
        (
            "generator_running",
            {"sources.generator.rating_kw": 2.5},
            r"at ([\d.]+) kW",
            "sources.generator.rating_kw",
            -2,
        ),
        ("grid_power", {"sources.grid.power_limit_w": 1500}, r"at least (\d+) W", "sources.grid.power_limit_w", -101),
        ("power_limit", {"controller.power_limit_w": 2000}, r"at least (\d+) W", "controller.power_limit_w", -2),
        ("surge", {"pipeline.segments.1.pressure_class_bar": 4}, r"less than ([\d.]+) s", "pipeline.stop_time_s", -0.2),
        (
            "casing_clearance",
            {"borehole.casing_inner_diameter_mm": 105},
            r"at most (\d+) mm",
            "pump.plate.outer_diameter_mm",
            +1,
        ),
        ("refill_time", {"tank.volume_m3": 400}, r"tank of at most ([\d.]+) m3", "tank.volume_m3", +0.2),
        ("drop_cable_length", {"cables.drop.length_m": 50}, r"at least (\d+) m", "cables.drop.length_m", -1),
        ("busiest_hour", {"tank.volume_m3": 1}, r"at least ([\d.]+) m3", "tank.volume_m3", -0.02),
        ("days_held", {"tank.volume_m3": 5}, r"tank of ([\d.]+) m3", "tank.volume_m3", -0.2),
        (
            "pressure_at_shut_off",
            {"pipeline.segments.0.pressure_class_bar": 6},
            r"PN (\d+)",
            "pipeline.segments.0.pressure_class_bar",
            -1,
        ),
    ],
)
def test_the_figure_of_the_remedy_is_enough(
    key: str, changes: dict[str, Any], pattern: str, path: str, short: float | None
) -> None:
    figure = said(key, changes, pattern)
    assert outcome(key, changes | {path: figure}) == "pass"
    if short is None:
        sections = [1.5, 2.5, 4, 6, 10, 16, 25, 35, 50]
        smaller = sections[sections.index(figure) - 1]
        both = (key, key.replace("drop", "ampacity") if not key.startswith("drop") else "drop_cable_ampacity")
        assert "pass" not in [outcome(key, changes | {path: smaller})] or any(
            outcome(other, changes | {path: smaller}) != "pass" for other in both
        )
    else:
        assert outcome(key, changes | {path: figure + short}) != "pass"


def test_a_pump_set_deeper_by_what_is_said_is_deep_enough() -> None:
    shallow = {"pump.plate.minimum_submergence_m": 26}
    deeper = 78 + said("submergence", shallow, r"set the pump ([\d.]+) m deeper")
    longer = {"borehole.pump_depth_m": deeper, "pipeline.segments.0.length_m": deeper, "borehole.depth_m": 100}
    assert outcome("submergence", shallow | longer) == "pass"


def test_a_borehole_that_ends_does_not_let_the_pump_go_deeper() -> None:
    remedy = checked(site({"pump.plate.minimum_submergence_m": 42}))["submergence"].remedy
    assert remedy == "pump less: the borehole is not deep enough to hang the pump deeper"


@pytest.mark.parametrize(("count", "remedy"), [(10, "one module less in series"), (11, "two modules less in series")])
def test_modules_too_many(count: int, remedy: str) -> None:
    many = {"sources.solar.modules_in_series": count}
    assert checked(site(many))["string_open_circuit_voltage"].remedy == remedy
    assert outcome("string_open_circuit_voltage", {"sources.solar.modules_in_series": 9}) == "pass"


def test_modules_too_few() -> None:
    few = {"sources.solar.modules_in_series": 3}
    assert checked(site(few))["string_voltage_hot"].remedy == "two modules more in series"
    assert outcome("string_voltage_hot", {"sources.solar.modules_in_series": 5}) == "pass"


def test_no_number_of_modules_fits_a_narrow_controller() -> None:
    narrow = {"controller.dc_voltage_min_v": 300, "controller.dc_voltage_limit_v": 340}
    assert (
        "no number of these modules fits: at least 11 for the 300 V"
        in checked(site(narrow))["string_open_circuit_voltage"].remedy
    )
    assert checked(site(narrow))["modules_in_series"].limit == "none"


def test_the_next_pipe_size_is_named_and_slow_enough() -> None:
    thin = {"pipeline.segments.1.pipe": "PE100 SDR11 32", "pipeline.segments.1.length_m": 20, "pipeline.profile": []}
    verdict = checked(site(thin))["velocity"]
    assert verdict.outcome == "caution"
    assert "the next pipe size, PE100 SDR11 40" in verdict.remedy
    assert outcome("velocity", thin | {"pipeline.segments.1.pipe": "PE100 SDR11 40"}) == "pass"


def test_the_next_pressure_class_is_tried_with_its_own_bore() -> None:
    high = {"pipeline.rise_to_tank_inlet_m": 40, "borehole.static_level_m": 10, "borehole.water_temperature_c": 40}
    weak = high | {"pipeline.segments.1.pipe": "PE100 SDR17 63", "pipeline.segments.1.pressure_class_bar": 5}
    remedy = checked(site(weak))["pressure_at_duty"].remedy
    named = re.search(r"PE100 SDR[\d.]+ 63", remedy)
    assert named is not None
    changed = high | {"pipeline.segments.1.pipe": named.group()}
    assert outcome("pressure_at_duty", changed) == "pass"


def test_the_drive_held_to_the_speed_that_is_said_keeps_the_yield() -> None:
    weak = {"borehole.safe_yield_m3h": 5.1}
    percent = said("safe_yield", weak, r"highest speed to (\d+) %")
    # affinity laws at another speed: a pump of that size gives no more than the yield at full speed
    share = percent / 100
    slowed = {
        "pump.rated_flow_m3h": 5 * share,
        "pump.max_flow_m3h": 8.5 * share,
        "pump.rated_head_m": 80 * share**2,
        "pump.max_head_m": 118 * share**2,
    }
    assert outcome("safe_yield", weak | slowed) == "pass"


def test_a_slow_tank_asks_for_the_flow_that_fills_it_in_a_day() -> None:
    verdict = checked(site({"tank.volume_m3": 140}))["refill_time"]
    assert "or a flow of at least 5.84 m3/h" in verdict.remedy  # 140 m3 in 24 h
    assert verdict.changes == {"tank.volume_m3": 128.4}  # 24 h of 5.352 m3/h


def test_no_remedy_asks_for_more_than_the_borehole_bears() -> None:
    slow = checked(site({"tank.volume_m3": 400}))["refill_time"]  # 16.67 m3/h
    assert slow.remedy == "a tank of at most 128.4 m3"
    for name, changes in (
        ("refill_time", {"tank.volume_m3": 400, "demand.users.0.count": 9000}),
        ("hours_a_day", {"demand.users.0.count": 9000}),
    ):
        verdict = checked(site(changes))[name]
        assert verdict.outcome in ("fail", "caution")
        assert "a flow of at least" not in verdict.remedy
        assert "second borehole or source" in verdict.remedy
        assert "safe yield" in verdict.remedy


@pytest.mark.parametrize(("strings", "outcome_then"), [(2, "pass"), (3, "fail")])
def test_strings_too_many(strings: int, outcome_then: str) -> None:
    # 33 A bear two strings of 1.25 x 12.4 A
    many = {"sources.solar.strings": 4, "sources.solar.string_fuse_a": 20, "controller.dc_current_max_a": 33}
    assert checked(site(many))["array_current"].changes == {"sources.solar.strings": 2}
    assert outcome("array_current", many | {"sources.solar.strings": strings}) == outcome_then


@pytest.mark.parametrize(
    ("power_w", "strings", "wanted"),
    [
        (5000, 1, 2),  # 5,208 W for the controller: 1.2 to 2 times are 6.25 to 10.4 kW, a string has 3.2 kW
        (4000, 4, 2),  # 4,167 W: 5.0 to 8.3 kW
        (7000, 2, 3),  # 7,292 W: 8.75 to 14.6 kW
    ],
)
def test_the_number_of_strings_brings_the_ratio_into_its_range(power_w: float, strings: int, wanted: int) -> None:
    changes = {"pump.rated_power_w": power_w, "sources.solar.strings": strings}
    verdict = checked(site(changes))["power_ratio"]
    assert verdict.outcome == "caution"
    assert verdict.remedy.startswith(f"{wanted} string(s)")
    assert outcome("power_ratio", changes | {"sources.solar.strings": wanted}) == "pass"


def test_the_protective_device_carries_the_larger_of_two_loads() -> None:
    # 2,526 W at 0.85 are 12.9 A on the grid of 230 V and 25.8 A on a generator of 115 V
    verdict = checked(site({"sources.generator.voltage_v": 115}))["ac_cable_protection"]
    assert (verdict.outcome, verdict.limit) == ("fail", pytest.approx(25.84, abs=0.01))
    assert verdict.changes == {"cables.ac.protective_device_a": 32.0}


def test_a_cable_with_a_datasheet_is_never_made_thinner() -> None:
    # 8 A where the table gives 36: no 1.5 mm2, though that would bear 12.9 A by the table
    verdict = checked(site({"cables.ac.ampacity_a": 8}))["ac_cable_ampacity"]
    assert verdict.outcome == "fail"
    assert verdict.changes["cables.ac.section_mm2"] > 6


@pytest.mark.parametrize("short", [0.0, 0.02])
def test_the_pump_is_set_deeper_by_what_is_missing_and_no_less(short: float) -> None:
    shallow = {"pump.plate.minimum_submergence_m": 26}
    changes = checked(site(shallow))["submergence"].changes
    # 48 m and 5.352 / 0.9 m of drawdown: 26 m more make 79.95 m
    assert changes["borehole.pump_depth_m"] == pytest.approx(79.95, abs=0.005)
    assert changes["pipeline.segments[1].length_m"] == changes["borehole.pump_depth_m"]
    depth = changes["borehole.pump_depth_m"] - short
    set_there = {"borehole.pump_depth_m": depth, "pipeline.segments.0.length_m": depth}
    assert outcome("submergence", shallow | set_there) == ("fail" if short else "pass")


def test_a_pump_is_never_set_deeper_into_the_screen() -> None:
    # 79.95 m and 0.8 m of motor below the intake reach below a screen that begins at 80 m
    verdict = checked(site({"pump.plate.minimum_submergence_m": 26, "borehole.screen_top_m": 80}))["submergence"]
    assert verdict.outcome == "fail"
    assert "pump less" in verdict.remedy
    assert "deeper by" not in verdict.remedy
    assert not verdict.changes
    unknown = checked(site({"pump.plate.minimum_submergence_m": 26, "borehole.screen_top_m": None}))["submergence"]
    assert "once the driller's log shows that screen" in unknown.remedy
    assert not unknown.changes


NO_LIMIT = {
    "controller.dc_voltage_limit_v": None,
    "pump.plate.dc_voltage_max_v": None,
    "controller.dc_voltage_min_v": 900,
    "sources.solar.module.system_voltage_v": 600,
}


def test_no_module_is_added_beyond_the_least_voltage_that_is_known() -> None:
    # 900 V at noon ask 31 modules, which stand at 1,329 V in the cold; the module bears 600 V
    working = NO_LIMIT | {"controller.dc_voltage_max_v": 1500}
    found = checked(site(working))
    for key in ("string_voltage_hot", "window_hours"):
        assert found[key].outcome == "fail"
        assert "more" not in found[key].remedy
        assert not found[key].changes
    unknown = NO_LIMIT | {"controller.dc_voltage_max_v": None, "sources.solar.module.system_voltage_v": None}
    verdict = checked(site(unknown))["string_voltage_hot"]
    assert "no module may be added in series until" in verdict.remedy
    assert not verdict.changes
    # the cable's class bounds it too: 7 modules stand at 300.2 V
    cable = {"cables.dc.voltage_class_v": 300, "controller.dc_voltage_min_v": 230}
    assert checked(site(cable))["string_voltage_hot"].remedy == ""
    assert not checked(site(cable | {"sources.solar.modules_in_series": 5}))["string_voltage_hot"].changes


def test_a_cold_voltage_above_the_only_one_known_is_a_caution() -> None:
    only_working = {
        "controller.dc_voltage_limit_v": None,
        "pump.plate.dc_voltage_max_v": None,
        "controller.dc_voltage_max_v": 300,
    }
    verdict = checked(site(only_working))["string_open_circuit_voltage"]
    assert verdict.outcome == "caution"
    assert verdict.value == pytest.approx(343.06, abs=0.01)
    assert verdict.limit == 300
    assert verdict.changes == {"sources.solar.modules_in_series": 6}  # 6 x 42.88 V are 257.3 V, 7 are 300.2 V
    below = checked(site(only_working | {"controller.dc_voltage_max_v": 400}))["string_open_circuit_voltage"]
    assert below.outcome == "not given"
    assert "no module may be added" in below.remedy


def test_a_grid_current_never_asks_for_modules() -> None:
    # 12.3 A from the grid at 230 V against 11 A; the array's 10.2 A are within it
    verdict = checked(site({"pump.plate.current_a": 11}))["current"]
    assert verdict.outcome == "fail"
    assert "series" not in verdict.remedy
    assert "a supply of at least 257 V" in verdict.remedy  # 230 x 12.276 / 11
    sun = {"pump.plate.current_a": 9.5, "sources.grid": None, "sources.generator": None}
    assert checked(site(sun))["current"].changes == {"sources.solar.modules_in_series": 9}


def test_a_thicker_cable_only_where_the_voltage_would_pass_without_any_drop() -> None:
    # 230 V less 8 % are 211.6 V
    thick = {"cables.ac.length_m": 300, "pump.plate.ac_voltage_min_v": 205}
    verdict = checked(site(thick))["grid_voltage"]
    assert "a cross-section of" in verdict.remedy
    section = verdict.changes["cables.ac.section_mm2"]
    assert outcome("grid_voltage", thick | {"cables.ac.section_mm2": section}) == "pass"
    hopeless = checked(site({"pump.plate.ac_voltage_min_v": 213}))["grid_voltage"]
    assert "section" not in hopeless.remedy
    assert "cable" not in hopeless.remedy
    assert "a voltage stabiliser or a transformer" in hopeless.remedy


def test_one_phase_is_taken_from_three() -> None:
    three = {"sources.grid.phases": 3, "sources.grid.voltage_v": 400}
    found = checked(site(three))
    assert found["grid_phases"].outcome == "caution"
    assert "connect one phase and neutral (231 V), if voltage and utility allow it" in found["grid_phases"].remedy
    assert found["grid_voltage"].outcome == "pass"
    assert found["current"].value == pytest.approx(2400 / 230 / 0.85)
    between = checked(site({"sources.grid.phases": 3, "sources.grid.voltage_v": 230}))
    assert "two of the phases (230 V)" in between["grid_phases"].remedy
    # a generator of three phases gives a third of its power on one of them
    generator = {"sources.generator.phases": 3, "sources.generator.voltage_v": 400}
    assert checked(site(generator))["generator_running"].value == pytest.approx(7.5 / 3 * 0.9105 * 0.9919, rel=1e-4)


def test_the_power_of_a_proposed_pump_is_worked_out_and_not_the_plates() -> None:
    # a pump of 2.2 kW far too high for the site: 106 m at 2 m3/h need 577 W in the water, 1.3 kW at 45 %
    large = {
        "pump.rated_flow_m3h": 2,
        "pump.max_flow_m3h": 4,
        "pump.rated_head_m": 160,
        "pump.max_head_m": 220,
        "pump.rated_power_w": 2200,
        "pump.plate.current_a": 20,
        "pipeline.rise_to_tank_inlet_m": 54,
    }
    remedy = checked(site(large))["rated_head"].remedy
    assert "a pump rated at about 106 m at 2 m3/h (about 1.3 kW if 45 % of it reach the water)" in remedy


@pytest.mark.parametrize(
    ("current_a", "limit_a", "strings", "remedy"),
    [
        (13.9, 25, 3, "a gPV fuse (IEC 60269-6) of 25 A"),  # 27.8 > 25; 20.85 to 33.36 A
        (13.9, 25, 2, ""),
        pytest.param(  # 36.84 > 20; 18.42 to 29.47 A
            12.28,
            20,
            4,
            "a gPV fuse (IEC 60269-6) of 20 A",
            marks=pytest.mark.published(
                "array", "worked example citing IEC 62548: fuses of four strings", values=2, confirmed="seen"
            ),
        ),
        (18.5, 30, 3, "a gPV fuse (IEC 60269-6) of 30 A"),  # 27.75 to 44.4 A
        (18.5, 25, 3, "no more than 2 string(s) and no fuse"),  # no rating fits
    ],
)
def test_string_fuses(current_a: float, limit_a: float, strings: int, remedy: str) -> None:
    """Rule of IEC 62548; the third row is a worked example published with it (4 strings of 12.28 A, fuse of 20 A)."""
    module = {
        "sources.solar.strings": strings,
        "sources.solar.module.current_sc_a": current_a,
        "sources.solar.module.series_fuse_max_a": limit_a,
        "controller.dc_current_max_a": 200,
        "cables.dc.section_mm2": 50,
    }
    verdict = checked(site(module))["string_over_current"]
    assert verdict.outcome == ("fail" if remedy else "pass")
    assert verdict.value == pytest.approx((strings - 1) * current_a)
    assert remedy in verdict.remedy
    assert "for at least 344 V DC" in verdict.remedy or "fuse (" not in remedy
    fewest_known = checked(site(module | {"sources.solar.module.series_fuse_max_a": None}))["string_over_current"]
    assert fewest_known.outcome == ("not given" if strings > 2 else "pass")


@pytest.mark.parametrize(
    ("section", "ambient_c", "kind", "expected"),
    [
        (2.5, 40, "breaker", "fail"),  # 23 x .866 x .80 = 15.9 A
        (4, 40, "breaker", "pass"),  # 30 x .866 x .80 = 20.8 A
        (4, 40, "gG fuse", "pass"),  # 20.8 / 1.103 = 18.8 A
        (4, 57, "breaker", "fail"),  # 30 x .570 x .80 = 13.7 A
        (4, 50, "gG fuse", "fail"),  # 30 x .707 x .80 = 17.0 A, / 1.103 = 15.4 A
        (4, 50, "breaker", "pass"),
    ],
)
def test_protective_device_with_ambient_and_grouping(
    section: float, ambient_c: float, kind: str, expected: str
) -> None:
    """Ib <= In <= Iz of IEC 60364-4-43; In of 16 A, two circuits together, two loaded conductors, method B2."""
    changes = {
        "cables.ac.section_mm2": section,
        "cables.ac.ambient_temperature_c": ambient_c,
        "cables.ac.protective_device": kind,
        "cables.ac.grouped_circuits": 2,
    }
    assert checked(site(changes))["ac_cable_protection"].outcome == expected
