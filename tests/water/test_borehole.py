from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.scenario.waterworks import Borehole, StepTestPoint
from planner.water.borehole import Drawdown, drawdown_of

Make = Callable[..., Borehole]


def _steps(*points: tuple[float, float]) -> list[StepTestPoint]:
    return [StepTestPoint(flow_m3h=flow, drawdown_m=drawdown) for flow, drawdown in points]


def _tested(make_borehole: Make, *points: tuple[float, float]) -> Drawdown:
    return drawdown_of(make_borehole(specific_capacity_m3h_per_m=None, step_test=_steps(*points)))


def test_specific_capacity_gives_a_straight_line(make_borehole: Make) -> None:
    law = drawdown_of(make_borehole(specific_capacity_m3h_per_m=2.5))
    assert law.at([0.0, 2.5, 10.0]) == pytest.approx([0.0, 1.0, 4.0])
    assert law.efficiency_percent(10.0) == 100


@given(linear=st.floats(1e-3, 20), quadratic=st.floats(1e-4, 2))
def test_fit_recovers_an_exact_law(make_borehole: Make, linear: float, quadratic: float) -> None:
    truth = Drawdown(linear, quadratic)
    law = _tested(make_borehole, *((flow, float(truth.at(flow))) for flow in (1.0, 2.5, 4.0, 6.0)))
    assert law.linear_m_per_m3h == pytest.approx(linear, rel=1e-6)
    assert law.quadratic_m_per_m3h2 == pytest.approx(quadratic, rel=1e-6)
    assert law.efficiency_percent(3.0) == pytest.approx(100 * linear / (linear + 3 * quadratic))


def test_coefficients_stay_above_nil(make_borehole: Make) -> None:
    falling = _tested(make_borehole, (1.0, 2.0), (2.0, 3.0))  # s/Q 2.0, 1.5
    assert (falling.linear_m_per_m3h, falling.quadratic_m_per_m3h2) == pytest.approx((1.75, 0.0))
    assert falling.basis == "linear_part"
    steep = _tested(make_borehole, (1.0, 0.5), (2.0, 4.0))  # s/Q 0.5, 2.0: the line starts at -1
    assert (steep.linear_m_per_m3h, steep.quadratic_m_per_m3h2) == pytest.approx((0.0, 0.9))
    assert steep.basis == "quadratic_part"
    assert steep.efficiency_percent([0.0, 2.0]).tolist() == [100.0, 0.0]


def test_equal_steps_give_no_quadratic_part(make_borehole: Make) -> None:
    law = _tested(make_borehole, (2.0, 3.0), (2.0, 5.0))
    assert (law.linear_m_per_m3h, law.quadratic_m_per_m3h2) == (2.0, 0.0)
    assert law.basis == "one_flow"


@given(
    points=st.lists(st.tuples(st.floats(0.1, 50), st.floats(0.01, 80)), min_size=2, max_size=6),
    flow=st.floats(0, 100),
)
def test_drawdown_never_falls_with_flow(make_borehole: Make, points: list[tuple[float, float]], flow: float) -> None:
    law = _tested(make_borehole, *points)
    assert np.all(np.diff(law.at([flow, flow + 0.1, flow + 10])) > 0)
    assert law.at(0.0) == 0
