"""What a top-up source can add to the sun's hour."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from planner.supply.run import MONTH
from planner.supply.series import Sun, TopUpSource, extra_series, sun_series
from planner.water.duty import FlowTable

HOURS = 8760


@pytest.fixture
def pump() -> FlowTable:
    """A pump that starts at 400 W and gives 4 m3/h at 2,000 W, the same in every month."""
    power, flow = np.array([400.0, 800.0, 2000.0]), np.array([0.0, 1.6, 4.0])
    return FlowTable(
        power_w=np.tile(power, (1, 12, 1)),
        flow_m3h=np.tile(flow, (1, 12, 1)),
        torque=np.ones((1, 12, 3)),
        start_power_w=np.full((1, 12), 400.0),
        full_power_w=np.full((1, 12), 2000.0),
        full_flow_m3h=np.full((1, 12), 4.0),
        limited_by=("rated speed",) * 12,
    )


def sun(watts: float, strings: tuple[int, ...] = (1,)) -> Sun:
    return Sun(np.full((HOURS, 1), watts), np.array([0]), np.array([1.0]), strings, 0.96)


def source(*, parallel: bool, power_w: float = 1e12, available: float = 1.0) -> TopUpSource:
    return TopUpSource("grid", np.full((HOURS, 1), available), np.full((1, 1), power_w), 0.95, parallel)


def test_strings_scale_the_array_and_ageing_wears_it(pump: FlowTable) -> None:
    aged = Sun(np.full((HOURS, 1), 1000.0), np.array([0, 0]), np.array([1.0, 0.5]), (1, 2), 0.96)
    series = sun_series(aged, pump, MONTH, 2)
    np.testing.assert_allclose(series.offered_kwh[0], [1.0, 0.5, 2.0, 1.0])
    np.testing.assert_allclose(series.motor_w[0], [960.0, 480.0, 1920.0, 960.0])
    assert series.used_kwh[0, 0] == pytest.approx(1.0)


def test_no_sun_is_nil(pump: FlowTable) -> None:
    series = sun_series(None, pump, MONTH, 3)
    assert series.pumped_m3.shape == (1, 3)  # one row holds for all hours
    assert series.pumped_m3.max() == 0


def test_parallel_takes_only_what_the_sun_lacks(pump: FlowTable) -> None:
    series = sun_series(sun(1000.0), pump, MONTH, 1)
    extra = extra_series(source(parallel=True), series, 0.96, pump, MONTH)
    kwh = extra.kwh_per_m3 * extra.extra_m3
    assert extra.extra_m3[0, 0] == pytest.approx(4.0 - pump.flow_at(np.array([[960.0]]), np.array([0]))[0, 0])
    assert kwh[0, 0] == pytest.approx((2000 - 960) / 0.95 / 1000)
    assert extra.sun_kwh_per_m3[0, 0] == pytest.approx(0.0, abs=1e-12)


def test_parallel_also_uses_sun_too_weak_to_start_the_pump(pump: FlowTable) -> None:
    series = sun_series(sun(300.0), pump, MONTH, 1)
    assert series.used_kwh[0, 0] == 0
    extra = extra_series(source(parallel=True), series, 0.96, pump, MONTH)
    assert (extra.sun_kwh_per_m3 * extra.extra_m3)[0, 0] == pytest.approx(0.3)


def test_changeover_leaves_the_sun_aside(pump: FlowTable) -> None:
    series = sun_series(sun(1000.0), pump, MONTH, 1)
    extra = extra_series(source(parallel=False), series, 0.96, pump, MONTH)
    assert (extra.kwh_per_m3 * extra.extra_m3)[0, 0] == pytest.approx(2000 / 0.95 / 1000)
    assert (extra.sun_kwh_per_m3 * extra.extra_m3)[0, 0] == pytest.approx(-1.0)


def test_a_weak_source_gives_what_its_power_allows(pump: FlowTable) -> None:
    series = sun_series(sun(0.0), pump, MONTH, 1)
    extra = extra_series(source(parallel=True, power_w=1000.0), series, 0.96, pump, MONTH)
    assert extra.extra_m3[0, 0] == pytest.approx(pump.flow_at(np.array([[950.0]]), np.array([0]))[0, 0])
    assert (extra.kwh_per_m3 * extra.extra_m3)[0, 0] == pytest.approx(1.0)


def test_a_weak_source_and_the_sun_add_up(pump: FlowTable) -> None:
    # 480 W of the sun give 0.32 m3/h; 950 W more make 1,430 W and 1.6 + 630 x 2.4 / 1200 = 2.86 m3/h.
    extra = extra_series(
        source(parallel=True, power_w=1000.0), sun_series(sun(500.0), pump, MONTH, 1), 0.96, pump, MONTH
    )
    assert extra.extra_m3[0, 0] == pytest.approx(2.86 - 0.32, rel=1e-3)
    assert (extra.kwh_per_m3 * extra.extra_m3)[0, 0] == pytest.approx(1.0)


def test_a_source_that_is_weak_in_some_hours_is_weak_in_these_alone(pump: FlowTable) -> None:
    # 950 W give 1.6 + 150 x 2.4 / 1200 = 1.9 m3/h, enough power 4 m3/h.
    power_w = np.where(np.arange(HOURS) < 12, 1000.0, 1e4)[:, None]
    weak = replace(source(parallel=True), power_w=power_w)
    extra = extra_series(weak, sun_series(None, pump, MONTH, 1), 1.0, pump, MONTH)
    assert extra.extra_m3[[0, 11, 12, -1], 0] == pytest.approx([1.9, 1.9, 4.0, 4.0], rel=1e-3)


def test_availability_scales_the_water_not_its_cost(pump: FlowTable) -> None:
    series = sun_series(sun(500.0), pump, MONTH, 1)
    whole = extra_series(source(parallel=True), series, 0.96, pump, MONTH)
    half = extra_series(source(parallel=True, available=0.5), series, 0.96, pump, MONTH)
    np.testing.assert_allclose(half.extra_m3, whole.extra_m3 / 2)
    np.testing.assert_array_equal(half.kwh_per_m3, whole.kwh_per_m3)


def test_nothing_to_add_where_the_sun_already_gives_all(pump: FlowTable) -> None:
    series = sun_series(sun(5000.0), pump, MONTH, 1)
    extra = extra_series(source(parallel=True), series, 0.96, pump, MONTH)
    for name in ("extra_m3", "hours_per_m3", "kwh_per_m3", "sun_kwh_per_m3"):
        assert getattr(extra, name).max() == 0


def test_a_cable_that_is_far_too_long_leaves_energy_but_never_less_than_none(pump: FlowTable) -> None:
    # It loses 1e-3 of the power per watt: at most 250 W arrive, at 500 W, however much more the array could give.
    for watts, arrives_kwh in ((100.0, 0.09), (500.0, 0.25), (900.0, 0.25), (5000.0, 0.25)):
        far = replace(sun(watts), cable_loss_per_w=1e-3)
        series = sun_series(far, pump, MONTH, 1)
        assert series.offered_kwh[0, 0] == pytest.approx(arrives_kwh)
        assert (series.offered_kwh - series.used_kwh).min() >= 0
