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
        ("dc_cable_drop", {"cables.dc.length_m": 120}, r"section of ([\d.]+) mm2", "cables.dc.section_mm2", None),
        ("ac_cable_drop", {"cables.ac.length_m": 200}, r"section of ([\d.]+) mm2", "cables.ac.section_mm2", None),
        ("drop_cable_drop", {"cables.drop.length_m": 350}, r"section of ([\d.]+) mm2", "cables.drop.section_mm2", None),
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
def test_the_figure_of_the_mend_is_enough(
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
    assert "no number of modules in series fits" in checked(site(narrow))["string_open_circuit_voltage"].remedy
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
