from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.water.friction import (
    darcy_weisbach_head_m,
    friction_factor,
    hazen_williams_head_m,
    minor_head_m,
    velocity_m_s,
)

flows = st.floats(1e-6, 0.05)
diameters = st.floats(0.015, 0.3)
roughnesses = st.floats(0, 1e-3)
more = st.floats(1.001, 5)


@given(reynolds=st.floats(4000, 1e8), roughness=st.floats(0, 0.05))
def test_turbulent_factor_solves_the_equation_of_colebrook_and_white(reynolds: float, roughness: float) -> None:
    inverse_root = 1 / np.sqrt(friction_factor(reynolds, roughness))
    assert inverse_root == pytest.approx(-2 * np.log10(roughness / 3.7 + 2.51 * inverse_root / reynolds), rel=1e-11)


@given(reynolds=st.floats(1e-3, 1999))
def test_laminar_factor_is_64_over_reynolds(reynolds: float) -> None:
    assert friction_factor(reynolds, 0.02) == pytest.approx(64 / reynolds, rel=1e-12)


@pytest.mark.parametrize("edge", [2000.0, 4000.0])
@pytest.mark.parametrize("roughness", [0.0, 1e-4, 0.02])
def test_factor_and_its_slope_are_continuous_at_both_ends_of_the_blend(edge: float, roughness: float) -> None:
    step = 1e-3
    below, at, above = friction_factor(edge + np.array([-step, 0, step]), roughness)
    assert below == pytest.approx(above, rel=1e-5)
    assert (at - below) / step == pytest.approx((above - at) / step, abs=1e-9)


@given(flow=flows, diameter=diameters, roughness=roughnesses, factor=more)
def test_head_loss_rises_with_flow(flow: float, diameter: float, roughness: float, factor: float) -> None:
    darcy = darcy_weisbach_head_m([flow, flow * factor], 100, diameter, roughness, 1e-6)
    hazen = hazen_williams_head_m([flow, flow * factor], 100, diameter, 150)
    assert darcy[1] > darcy[0]
    assert hazen[1] > hazen[0]


@given(flow=flows, diameter=diameters, roughness=roughnesses, factor=more)
def test_head_loss_falls_with_diameter(flow: float, diameter: float, roughness: float, factor: float) -> None:
    darcy = darcy_weisbach_head_m(flow, 100, [diameter, diameter * factor], roughness, 1e-6)
    hazen = hazen_williams_head_m(flow, 100, [diameter, diameter * factor], 150)
    assert darcy[1] < darcy[0]
    assert hazen[1] < hazen[0]


def test_head_loss_goes_with_length_and_is_nil_at_rest() -> None:
    flow = np.array([0.0, 1e-4, 1e-3])
    one = darcy_weisbach_head_m(flow, 100, 0.04, 1e-5, 1e-6)
    assert one[0] == 0
    assert darcy_weisbach_head_m(flow, 300, 0.04, 1e-5, 1e-6) == pytest.approx(3 * one, rel=1e-14)
    assert hazen_williams_head_m(0.0, 100, 0.04, 150) == 0


def test_laminar_loss_is_that_of_hagen_and_poiseuille() -> None:
    # h = 128 nu L Q / (pi g d^4)
    expected = 128 * 1e-6 * 850 * 2e-5 / (np.pi * 9.80665 * 0.04**4)
    assert darcy_weisbach_head_m(2e-5, 850, 0.04, 1e-5, 1e-6) == pytest.approx(expected, rel=1e-12)


def test_arguments_broadcast() -> None:
    loss = darcy_weisbach_head_m(np.full((5, 1), 1e-3), np.array([10.0, 20.0, 30.0]), 0.05, 1e-5, 1e-6)
    assert loss.shape == (5, 3)
    assert loss[4, 2] == pytest.approx(3 * loss[0, 0])


def test_velocity_and_minor_loss() -> None:
    assert velocity_m_s(np.pi / 4 * 0.1**2 * 1.5, 0.1) == pytest.approx(1.5)
    assert minor_head_m(np.pi / 4 * 0.1**2 * 1.5, 0.1, 2.0) == pytest.approx(2.0 * 1.5**2 / (2 * 9.80665))
