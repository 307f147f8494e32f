from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.scenario.waterworks import Borehole, CurvePoint, Pipeline, ProfilePoint, Pump
from planner.water.duty import CannotLift, CannotStart, duty_at_speeds, duty_point, duty_points, flow_table
from planner.water.head import system_head
from planner.water.pump import pump_model

MakeB = Callable[..., Borehole]
MakeL = Callable[..., Pipeline]
MakeP = Callable[..., Pump]
KINDS = ["centrifugal", "helical-rotor"]
MONTHS = [60.0, 60.0, 62.0, 64.0, 66.0, 66.0, 60.0, 58.0, 55.0, 55.0, 57.0, 59.0]


@pytest.mark.parametrize("kind", KINDS)
def test_duty_point_lies_on_pump_and_system(
    make_borehole: MakeB, make_pipeline: MakeL, make_pump: MakeP, kind: str
) -> None:
    borehole, pipeline, pump = make_borehole(), make_pipeline(), make_pump(kind=kind)
    duty = duty_point(borehole, pipeline, pump)
    model, system = pump_model(pump), system_head(borehole, pipeline)
    assert duty.total_head_m == pytest.approx(float(model.head_m(duty.flow_m3h, 1.0)), rel=1e-9)
    assert duty.total_head_m == pytest.approx(float(system.total_m(duty.flow_m3h, 0)), rel=1e-9)
    parts = duty.static_head_m + duty.drawdown_m + duty.friction_m + duty.residual_head_m
    assert parts == pytest.approx(duty.total_head_m, rel=1e-12)
    assert duty.other_head_m == pytest.approx(0, abs=1e-9)
    assert (duty.limited_by, duty.speed_percent) == ("rated speed", pytest.approx(100))
    assert duty.hydraulic_power_w == pytest.approx(998.2 * 9.80665 * duty.flow_m3h / 3600 * duty.total_head_m, rel=1e-4)
    assert duty.efficiency_percent == pytest.approx(100 * duty.hydraulic_power_w / duty.input_power_w)
    assert duty.shut_off_head_m == 257


@pytest.mark.parametrize("kind", KINDS)
def test_table_agrees_with_the_duty_point_of_each_month(
    make_borehole: MakeB, make_pipeline: MakeL, make_pump: MakeP, kind: str
) -> None:
    borehole = make_borehole(static_level_by_month_m=MONTHS)
    table = flow_table(borehole, make_pipeline(), make_pump(kind=kind))
    together = duty_points(borehole, make_pipeline(), make_pump(kind=kind), None, range(12))
    for month in range(12):
        duty = duty_point(borehole, make_pipeline(), make_pump(kind=kind), month=month)
        assert together[month] == duty
        assert table.full_flow_m3h[0, month] == pytest.approx(duty.flow_m3h, rel=1e-9)
        assert table.full_power_w[0, month] == pytest.approx(duty.input_power_w, rel=1e-9)
        assert table.limited_by[month] == duty.limited_by
    assert duty_point(borehole, make_pipeline(), make_pump(kind=kind)).static_head_m == pytest.approx(
        70 + np.mean(MONTHS)
    )


@pytest.mark.parametrize("kind", KINDS)
def test_any_point_of_the_table_is_within_a_thousandth(
    make_borehole: MakeB, make_pipeline: MakeL, make_pump: MakeP, kind: str
) -> None:
    table = flow_table(make_borehole(), make_pipeline(), make_pump(kind=kind))
    for power in np.linspace(1.1 * table.start_power_w[0, 0], 0.99 * table.full_power_w[0, 0], 7):
        exact = duty_point(make_borehole(), make_pipeline(), make_pump(kind=kind), power_limit_w=float(power))
        assert exact.input_power_w == pytest.approx(power, rel=1e-9)
        assert exact.limited_by == "power limit"
        assert float(table.flow_at([power], [0])[0]) == pytest.approx(exact.flow_m3h, rel=1e-3)


def test_starting_power_is_that_of_shut_off_against_the_static_lift(
    make_borehole: MakeB, make_pipeline: MakeL, make_pump: MakeP
) -> None:
    table = flow_table(make_borehole(), make_pipeline(), make_pump())
    speed = np.sqrt(133 / 257)
    model = pump_model(make_pump())
    shaft = speed**3 * float(model.motor.shaft_w(0.6 * 2200))
    assert table.start_power_w[0, 0] == pytest.approx(float(model.motor.input_w(shaft, speed)), rel=1e-9)
    assert table.flow_m3h[0, 0, 0] == pytest.approx(0, abs=1e-9)


def test_lowest_speed_sets_the_start_where_the_lift_is_small(
    make_borehole: MakeB, make_pipeline: MakeL, make_pump: MakeP
) -> None:
    pump = make_pump(speed_min_percent=85.0)
    table = flow_table(make_borehole(), make_pipeline(), pump)
    system, model = system_head(make_borehole(), make_pipeline()), pump_model(pump)
    start = table.flow_m3h[0, 0, 0]
    assert start > 0.5
    assert float(system.total_m(start, 0)) == pytest.approx(float(model.head_m(start, 0.85)), rel=1e-9)
    below, at = table.flow_at(table.start_power_w[0, 0] * np.array([0.999, 1.0]), [0, 0])
    assert (below, at) == (0.0, start)


def test_safe_yield_slows_the_pump(make_borehole: MakeB, make_pipeline: MakeL, make_pump: MakeP) -> None:
    free = duty_point(make_borehole(), make_pipeline(), make_pump())
    duty = duty_point(make_borehole(safe_yield_m3h=1.5), make_pipeline(), make_pump())
    assert (duty.flow_m3h, duty.limited_by) == (1.5, "safe yield")
    assert duty.speed_percent < 95
    assert duty.input_power_w < free.input_power_w
    assert float(pump_model(make_pump()).head_m(1.5, duty.speed_percent / 100)) == pytest.approx(duty.total_head_m)


def test_safe_yield_below_the_lowest_speed_is_throttled(
    make_borehole: MakeB, make_pipeline: MakeL, make_pump: MakeP
) -> None:
    pump = make_pump(speed_min_percent=90.0)
    borehole = make_borehole(safe_yield_m3h=0.5)
    duty = duty_point(borehole, make_pipeline(), pump)
    assert (duty.flow_m3h, duty.speed_percent, duty.limited_by) == (0.5, pytest.approx(90), "safe yield")
    assert duty.total_head_m == pytest.approx(float(pump_model(pump).head_m(0.5, 0.9)))
    assert duty.other_head_m > 20
    table = flow_table(borehole, make_pipeline(), pump)
    assert table.start_power_w[0, 0] == pytest.approx(table.full_power_w[0, 0]) == pytest.approx(duty.input_power_w)
    assert table.flow_at([0.0, 3000.0], [0, 0]).tolist() == [0.0, 0.5]


def test_pump_that_cannot_lift_says_by_how_much_and_when(
    make_borehole: MakeB, make_pipeline: MakeL, make_pump: MakeP
) -> None:
    borehole = make_borehole(static_level_by_month_m=MONTHS)
    weak = make_pump(rated_head_m=100.0, max_head_m=135.0)
    with pytest.raises(CannotLift, match=r"in May: .* 139.0 m are needed .* 135.0 m; 4.0 m are missing") as caught:
        flow_table(borehole, make_pipeline(), weak)
    error = caught.value
    assert (error.month, error.static_head_m, error.max_head_m) == (4, 139.0, 135.0)
    assert error.shortfall_m == pytest.approx(4.0)
    assert (
        flow_table(borehole, make_pipeline(residual_head_m=0.0, rise_to_tank_inlet_m=68.9), weak).full_flow_m3h[0, 4]
        > 0
    )
    assert duty_point(borehole, make_pipeline(), weak, month=8).flow_m3h > 0
    with pytest.raises(CannotLift, match="at the yearly mean level"):
        duty_point(borehole, make_pipeline(rise_to_tank_inlet_m=90.0), weak)


def test_power_limit_below_starting_power(make_borehole: MakeB, make_pipeline: MakeL, make_pump: MakeP) -> None:
    with pytest.raises(CannotStart, match=r"limit of 300 W is below the \d+ W .* in January") as caught:
        flow_table(make_borehole(), make_pipeline(), make_pump(), 300.0)
    assert caught.value.start_power_w > caught.value.power_limit_w == 300


def test_power_limit_at_rated_power_does_not_bind(make_borehole: MakeB, make_pipeline: MakeL, make_pump: MakeP) -> None:
    table = flow_table(make_borehole(), make_pipeline(), make_pump(), 2200.0)
    assert set(table.limited_by) == {"rated speed"}
    held = flow_table(make_borehole(), make_pipeline(), make_pump(), 1900.0)
    assert set(held.limited_by) == {"power limit"}
    assert held.full_power_w == pytest.approx(np.full((1, 12), 1900.0))


@settings(max_examples=40, deadline=None)
@given(
    kind=st.sampled_from(KINDS),
    level=st.floats(0, 85),
    rise=st.floats(-30, 60),
    deeper=st.floats(0.1, 20),
    safe=st.floats(0.2, 10),
    slowest=st.floats(20, 90),
    capacity=st.floats(0.1, 20),
)
def test_flow_rises_with_power_and_never_with_depth(
    make_borehole: MakeB,
    make_pipeline: MakeL,
    make_pump: MakeP,
    kind: str,
    level: float,
    rise: float,
    deeper: float,
    safe: float,
    slowest: float,
    capacity: float,
) -> None:
    borehole = make_borehole(
        static_level_by_month_m=[level] * 6 + [level + deeper] * 6,
        pump_depth_m=110.0,
        safe_yield_m3h=safe,
        specific_capacity_m3h_per_m=capacity,
    )
    pump = make_pump(kind=kind, speed_min_percent=slowest)
    table = flow_table(borehole, make_pipeline(rise_to_tank_inlet_m=rise), pump, np.inf)
    assert np.all(np.diff(table.power_w) >= 0)
    assert np.all(np.diff(table.flow_m3h) >= 0)
    assert np.all(table.full_flow_m3h <= safe)
    # where the lowest speed sets the start, a shallower pump needs a little more power to start: it gives more water
    power = np.linspace(table.start_power_w.max(), 3500, 400)
    shallow = table.flow_at(power, np.zeros(400, dtype=int))
    deep = table.flow_at(power, np.full(400, 11))
    assert np.all(deep <= shallow * (1 + 1e-3) + 1e-9)  # a thousandth for the straight lines of the table
    used = table.power_used(power, np.zeros(400, dtype=int))
    assert np.all(used <= power)
    duty = duty_point(borehole, make_pipeline(rise_to_tank_inlet_m=rise), pump, np.inf, month=11)
    assert 0 <= duty.efficiency_percent < 100
    assert duty.other_head_m > -1e-9


def test_datasheet_pump_gives_a_rising_table(
    make_borehole: MakeB, make_pipeline: MakeL, make_pump: MakeP, datasheet: list[CurvePoint]
) -> None:
    table = flow_table(make_borehole(), make_pipeline(), make_pump(curve=datasheet))
    assert np.all(np.diff(table.power_w) > 0)
    duty = duty_point(make_borehole(), make_pipeline(), make_pump(curve=datasheet), without=["power limit"])
    assert 2.0 < duty.flow_m3h < 3.0  # between the points at 180 m and 130 m
    assert 2200 < duty.input_power_w < 2300


def test_power_that_falls_with_flow_does_not_bend_the_table_back(
    make_borehole: MakeB, make_pipeline: MakeL, make_pump: MakeP
) -> None:
    flat = [
        CurvePoint(flow_m3h=1.0, head_m=152.0, power_w=2600.0),
        CurvePoint(flow_m3h=2.0, head_m=151.0, power_w=2200.0),
        CurvePoint(flow_m3h=3.0, head_m=150.0, power_w=2000.0),
    ]
    pump = make_pump(curve=flat, rated_head_m=151.0, max_head_m=153.0, max_flow_m3h=4.0)
    table = flow_table(make_borehole(specific_capacity_m3h_per_m=50.0), make_pipeline(friction="hazen-williams"), pump)
    assert np.all(np.diff(table.power_w) >= 0)
    power = np.linspace(0, 3000, 500)
    assert np.all(np.diff(table.flow_at(power, np.zeros(500, dtype=int))) >= 0)


def test_table_lookup(make_borehole: MakeB, make_pipeline: MakeL, make_pump: MakeP) -> None:
    table = flow_table(make_borehole(static_level_by_month_m=MONTHS), make_pipeline(), make_pump())
    month = np.array([0, 4, 11])
    power = np.array([[100.0, 1200.0, 9000.0]] * 3)
    flow, used = table.flow_at(power, month), table.power_used(power, month)
    assert flow.shape == used.shape == (3, 3)
    assert flow[:, 0].tolist() == used[:, 0].tolist() == [0.0, 0.0, 0.0]
    assert flow[:, 2] == pytest.approx(table.full_flow_m3h[0, month])
    assert used[:, 2] == pytest.approx(table.full_power_w[0, month])
    assert used[:, 1].tolist() == [1200.0] * 3
    assert flow[1, 1] < flow[0, 1] < flow[2, 1]  # May is the deepest, December the shallowest of the three
    for column in range(3):
        assert table.flow_at(power[:, column], month) == pytest.approx(flow[:, column])
        assert table.power_used(power[:, column], month) == pytest.approx(used[:, column])


def test_head_over_a_hill_shows_in_the_duty(make_borehole: MakeB, make_pipeline: MakeL, make_pump: MakeP) -> None:
    hill = [ProfilePoint(chainage_m=10.0, level_m=100.0)]
    duty = duty_point(make_borehole(), make_pipeline(profile=hill), make_pump())
    assert duty.other_head_m > 10
    assert duty.flow_m3h < duty_point(make_borehole(), make_pipeline(), make_pump()).flow_m3h


@pytest.mark.parametrize("kind", KINDS)
def test_curves_cross_at_the_duty_point(
    make_borehole: MakeB, make_pipeline: MakeL, make_pump: MakeP, kind: str
) -> None:
    curves = duty_at_speeds(make_borehole(), make_pipeline(), make_pump(kind=kind), [50, 100], points=400)
    assert curves.pump_head_m.shape == (2, 400)
    reached = np.isfinite(curves.pump_head_m)
    assert reached[1].all()
    assert reached[0].sum() == 200
    assert np.nanmax(curves.pump_head_m[0]) < np.nanmax(curves.pump_head_m[1]) == pytest.approx(257)
    crossing = np.interp(0, curves.system_head_m - curves.pump_head_m[1], curves.flow_m3h)
    duty = duty_point(make_borehole(), make_pipeline(), make_pump(kind=kind))
    assert crossing == pytest.approx(duty.flow_m3h, rel=1e-3)


@pytest.mark.parametrize("kind", KINDS)
def test_without_a_limit_of_the_controller_the_rated_power_holds(
    make_borehole: MakeB, make_pipeline: MakeL, make_pump: MakeP, kind: str
) -> None:
    # a head above the rated one asks more torque of a helical rotor than the plate's power gives at rated speed
    pump = make_pump(kind=kind, rated_power_w=1900.0, rated_head_m=120.0)
    pipeline = make_pipeline(rise_to_tank_inlet_m=105.0 if kind == "helical-rotor" else 0.0)
    free = duty_point(make_borehole(), pipeline, pump, without=["power limit"])
    duty = duty_point(make_borehole(), pipeline, pump)
    table = flow_table(make_borehole(), pipeline, pump)
    if kind == "helical-rotor":
        assert free.input_power_w > 1.2 * 1900
        assert (duty.input_power_w, duty.limited_by) == (pytest.approx(1900), "power limit")
        assert duty.flow_m3h < free.flow_m3h
    assert table.power_w.max() <= 1900 * (1 + 1e-9)
    assert table.full_power_w == pytest.approx(np.full((1, 12), duty.input_power_w))
    assert flow_table(make_borehole(), pipeline, pump, 9000.0).full_power_w.max() == pytest.approx(free.input_power_w)


def test_rated_power_holds_a_datasheet_that_exceeds_it(
    make_borehole: MakeB, make_pipeline: MakeL, make_pump: MakeP, datasheet: list[CurvePoint]
) -> None:
    pump = make_pump(curve=datasheet, rated_power_w=2100.0)
    table = flow_table(make_borehole(), make_pipeline(), pump)
    assert set(table.limited_by) == {"power limit"}
    assert table.full_power_w == pytest.approx(np.full((1, 12), 2100.0))


@pytest.mark.parametrize("submergence", [None, 2.0])
def test_pumping_level_stays_above_the_intake(
    make_borehole: MakeB, make_pipeline: MakeL, make_pump: MakeP, submergence: float | None
) -> None:
    # 60 m at rest, 0.2 m3/h per metre: 1 m3/h draws down 5 m, and an intake at 65 m lets no more be drawn
    borehole = make_borehole(specific_capacity_m3h_per_m=0.2, pump_depth_m=65.0)
    pump = make_pump(plate={"minimum_submergence_m": submergence})
    expected = 1.0 if submergence is None else 0.6
    duty = duty_point(borehole, make_pipeline(), pump)
    assert (duty.flow_m3h, duty.limited_by) == (pytest.approx(expected), "intake level")
    assert 60 + duty.drawdown_m == pytest.approx(65 - (submergence or 0))
    table = flow_table(borehole, make_pipeline(), pump)
    assert table.full_flow_m3h == pytest.approx(np.full((1, 12), expected))
    assert duty_point(borehole, make_pipeline(), pump, without=["intake level"]).flow_m3h > 1.2


def test_intake_holds_a_borehole_with_well_losses(make_borehole: MakeB, make_pipeline: MakeL, make_pump: MakeP) -> None:
    steps = [{"flow_m3h": flow, "drawdown_m": 3 * flow + 2 * flow**2} for flow in (0.5, 1.0, 1.5)]
    borehole = make_borehole(specific_capacity_m3h_per_m=None, step_test=steps, pump_depth_m=65.0)
    duty = duty_point(borehole, make_pipeline(), make_pump())
    assert duty.flow_m3h == pytest.approx(1.0)  # 3 + 2 = 5 m
