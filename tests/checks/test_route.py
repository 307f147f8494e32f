"""The route for the chart, its high points, and how the pressures follow the ground."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.checks.pipeline import pressures
from planner.scenario.waterworks import Pipeline, ProfilePoint, Segment
from planner.water.route import head_of_bar, high_points, route_profile
from tests.checks.sites import basis, site


def _pipeline(levels: list[float]) -> Pipeline:
    return Pipeline(
        rise_to_tank_inlet_m=10,
        segments=[Segment(name="all", length_m=100, inner_diameter_mm=50)],
        profile=[ProfilePoint(chainage_m=10 * place, level_m=level) for place, level in enumerate(levels)],
    )


@pytest.mark.parametrize(
    ("levels", "found"),
    [
        ([0, 1, 2, 3], []),
        ([0, 5, 2, 3], [1]),
        ([0, 5, 5, 2], [2]),
        ([0, 5, 2, 6, 1, 8], [1, 3]),
        ([3, 2, 1], []),
        ([0, 2, 2, 4], []),
    ],
)
def test_high_points(levels: list[float], found: list[int]) -> None:
    assert high_points(_pipeline(levels)) == found


def test_the_chart_of_the_route() -> None:
    scenario = site()
    shown = route_profile(scenario)
    assert shown is not None
    assert shown.chainage_m[0] == 0
    assert shown.chainage_m[-1] == 420
    assert shown.ground_m.tolist() == [0, 6, 11, 14]
    assert np.all(np.diff(shown.duty_line_m) <= 1e-9)
    assert shown.duty_line_m[-1] == pytest.approx(14)
    assert np.all(shown.shut_off_line_m == 118 - 48)
    # 25 bar of the riser end at the borehole; beyond stand the 16 bar of the main
    assert shown.allowed_line_m - shown.ground_m == pytest.approx(16 * head_of_bar(20))
    assert np.all(shown.duty_line_m < shown.shut_off_line_m)


def test_the_chart_takes_the_high_water_at_shut_off_and_the_low_at_duty() -> None:
    levels = [48.0] * 11 + [40.0]
    shown = route_profile(site({"borehole.static_level_by_month_m": levels}))
    flat = route_profile(site())
    assert shown is not None
    assert flat is not None
    assert np.all(shown.shut_off_line_m == 118 - 40)
    assert shown.duty_line_m == pytest.approx(flat.duty_line_m)


def test_the_chart_without_profile_or_without_a_duty() -> None:
    assert route_profile(site({"pipeline.profile": []})) is None
    weak = route_profile(site({"pump.rated_head_m": 40, "pump.max_head_m": 55}))
    assert weak is not None
    assert np.isnan(weak.duty_line_m).all()
    bare = {"pipeline.segments.1.pipe": None, "pipeline.segments.1.inner_diameter_mm": 51}
    unknown = route_profile(site(bare))
    assert unknown is not None
    assert np.isnan(unknown.allowed_line_m[1:]).all()


def test_a_valley_bears_more_than_the_borehole() -> None:
    flat, valley = (
        pressures(basis(site({"pipeline.profile.1.level_m": level, "pipeline.rise_to_tank_inlet_m": 14})))
        for level in (6.0, -40.0)
    )
    per_bar = head_of_bar(20)
    for kind in ("shut_off_bar", "surge_bar", "duty_bar"):
        assert getattr(valley, kind)[1] > getattr(flat, kind)[1]
    assert valley.shut_off_bar[1] - flat.shut_off_bar[1] == pytest.approx(40 / per_bar)
    # at the borehole itself nothing changes
    assert valley.duty_bar[0] == pytest.approx(flat.duty_bar[0])


def test_pressure_at_the_pump_is_the_pump_s_head_above_its_cover_of_water() -> None:
    looked_at = basis(site())
    assert looked_at.duty is not None
    found = pressures(looked_at)
    cover = 78 - 48 - looked_at.drawdown_m
    assert found.duty_bar[0] * head_of_bar(20) == pytest.approx(looked_at.duty.total_head_m + cover)


@given(st.lists(st.floats(-20, 9), min_size=1, max_size=6))
def test_lines_fall_and_end_at_the_tank(levels: list[float]) -> None:
    points = [{"chainage_m": 0.0, "level_m": 0.0}]
    points += [{"chainage_m": 420.0 * (n + 1) / (len(levels) + 1), "level_m": v} for n, v in enumerate(levels)]
    points.append({"chainage_m": 420.0, "level_m": 10.0})
    shown = route_profile(site({"pipeline.profile": points}))
    assert shown is not None
    assert np.all(np.diff(shown.chainage_m) >= 0)
    assert np.all(np.diff(shown.duty_line_m) <= 1e-9)
    assert shown.duty_line_m[-1] == pytest.approx(14)
    assert shown.ground_m[-1] == 14
