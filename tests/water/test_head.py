from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest

from planner.scenario.waterworks import Borehole, Pipeline, ProfilePoint, Segment
from planner.water.friction import darcy_weisbach_head_m, hazen_williams_head_m, minor_head_m
from planner.water.head import system_head
from planner.water.properties import kinematic_viscosity_m2_s

MakeB = Callable[..., Borehole]
MakeP = Callable[..., Pipeline]


def test_total_is_the_sum_of_its_parts(make_borehole: MakeB, make_pipeline: MakeP) -> None:
    system = system_head(make_borehole(water_temperature_c=25.0), make_pipeline())
    viscosity = kinematic_viscosity_m2_s(25.0)
    flow = np.array([0.5, 2.0, 5.0])
    riser = darcy_weisbach_head_m(flow / 3600, 90, 0.0419, 0.15e-3, viscosity) + minor_head_m(flow / 3600, 0.0419, 4)
    main = darcy_weisbach_head_m(flow / 3600, 850, 0.0408, 7e-6, viscosity) + minor_head_m(flow / 3600, 0.0408, 10)
    assert system.friction_m(flow) == pytest.approx(riser + main, rel=1e-12)
    assert system.total_m(flow, 3) == pytest.approx(60 + 70 + 3 + flow / 1.0 + riser + main, rel=1e-12)


def test_hazen_williams_by_choice(make_borehole: MakeB, make_pipeline: MakeP) -> None:
    system = system_head(make_borehole(), make_pipeline(friction="hazen-williams"))
    pipe_m, fittings_m = system.segment_friction_m(3.0)
    assert pipe_m == pytest.approx(
        [
            float(hazen_williams_head_m(3 / 3600, 90, 0.0419, 120)),
            float(hazen_williams_head_m(3 / 3600, 850, 0.0408, 150)),
        ]
    )
    assert fittings_m[1] == pytest.approx(float(minor_head_m(3 / 3600, 0.0408, 10)))


def test_shapes(make_borehole: MakeB, make_pipeline: MakeP) -> None:
    system = system_head(make_borehole(), make_pipeline())
    flow = np.ones((12, 7))
    assert [part.shape for part in system.segment_friction_m(flow)] == [(2, 12, 7)] * 2
    assert system.friction_m(flow).shape == (12, 7)
    assert system.total_m(flow, np.arange(12)[:, np.newaxis]).shape == (12, 7)
    assert system.segment_names == ("riser", "main")


def test_level_by_month_wins_over_the_one_level(make_borehole: MakeB, make_pipeline: MakeP) -> None:
    months = [50.0 + month for month in range(12)]
    system = system_head(make_borehole(static_level_by_month_m=months), make_pipeline())
    assert system.static_m().tolist() == [level + 70 for level in months]
    assert float(system.total_m(0.0, 11)) == 61 + 70 + 3
    assert system_head(make_borehole(), make_pipeline()).static_m().tolist() == [130.0] * 12


def test_water_must_reach_the_ground_before_it_runs_down(make_borehole: MakeB, make_pipeline: MakeP) -> None:
    system = system_head(make_borehole(), make_pipeline(rise_to_tank_inlet_m=-40.0, residual_head_m=0.0))
    assert float(system.total_m(0.0, 0)) == 60  # not 20: air enters at the top
    riser = float(np.sum(system.segment_friction_m(1.0), axis=0)[0])
    assert float(system.total_m(1.0, 0)) == pytest.approx(60 + 1 + riser)
    # at a high flow the friction of the main uses up the fall, and the tank's end governs again
    assert float(system.total_m(12.0, 0)) == pytest.approx(20 + 12 + float(system.friction_m(12.0)))


def test_high_point_on_the_way(make_borehole: MakeB, make_pipeline: MakeP) -> None:
    profile = [
        ProfilePoint(chainage_m=0.0, level_m=0.0),
        ProfilePoint(chainage_m=425.0, level_m=95.0),
        ProfilePoint(chainage_m=850.0, level_m=68.0),
    ]
    system = system_head(make_borehole(), make_pipeline(profile=profile))
    assert float(system.total_m(0.0, 0)) == 60 + 95
    riser, main = np.sum(system.segment_friction_m(1.0), axis=0)
    assert float(system.total_m(1.0, 0)) == pytest.approx(60 + 95 + 1 + riser + main / 2)
    flat = system_head(make_borehole(), make_pipeline(profile=[ProfilePoint(chainage_m=425.0, level_m=72.0)]))
    assert flat.crest_m.size == 0  # below the head line at the tank: 70 m and 3 m residual


def test_unknown_pipe_is_refused(make_borehole: MakeB, make_pipeline: MakeP) -> None:
    with pytest.raises(ValueError, match="no pipe 'copper 22'"):
        system_head(make_borehole(), make_pipeline(segments=[Segment(name="main", length_m=10.0, pipe="copper 22")]))
