from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.scenario.waterworks import CurvePoint, Pump
from planner.water.pump import ImplausiblePump, Motor, hydraulic_power_w, pump_model, rising_root

Make = Callable[..., Pump]
KINDS = ["centrifugal", "helical-rotor"]


@pytest.mark.parametrize("kind", KINDS)
def test_nameplate_reproduces_its_three_points(make_pump: Make, kind: str) -> None:
    plate = make_pump(kind=kind)
    model = pump_model(plate)
    heads = model.head_m([0.0, plate.rated_flow_m3h, plate.max_flow_m3h], 1.0)
    assert heads == pytest.approx([plate.max_head_m, plate.rated_head_m, 0.0], abs=1e-6)
    assert model.input_power_w(plate.rated_flow_m3h, plate.rated_head_m, 1.0) == pytest.approx(
        plate.rated_power_w, rel=1e-12
    )


@pytest.mark.parametrize("kind", KINDS)
def test_datasheet_points_are_reproduced(make_pump: Make, datasheet: list[CurvePoint], kind: str) -> None:
    points = datasheet
    if kind == "helical-rotor":
        points = [
            CurvePoint(flow_m3h=2.4, head_m=180.0, power_w=2200.0),
            CurvePoint(flow_m3h=2.6, head_m=120.0, power_w=1600.0),
            CurvePoint(flow_m3h=2.8, head_m=40.0, power_w=750.0),
        ][::-1]
        points = sorted(points, key=lambda point: point.flow_m3h)
    model = pump_model(make_pump(kind=kind, curve=points))
    flow = np.array([point.flow_m3h for point in points])
    head = np.array([point.head_m for point in points])
    assert model.head_m(flow, 1.0) == pytest.approx(head, rel=1e-9)
    assert model.speed_for(flow, head) == pytest.approx(np.ones(len(points)), rel=1e-9)
    assert model.input_power_w(flow, head, 1.0) == pytest.approx([point.power_w for point in points], rel=1e-12)
    assert model.head_m(0.0, 1.0) == pytest.approx(257.0)  # carried to the plate's shut-off head


def test_datasheet_with_its_own_ends_ignores_the_plate(make_pump: Make) -> None:
    points = [
        CurvePoint(flow_m3h=0.0, head_m=240.0, power_w=1500.0),
        CurvePoint(flow_m3h=2.0, head_m=180.0, power_w=2200.0),
        CurvePoint(flow_m3h=5.0, head_m=0.0, power_w=2000.0),
    ]
    model = pump_model(make_pump(curve=points))
    assert (model.max_head_m, model.max_flow_m3h) == (240.0, 5.0)


@pytest.mark.parametrize("kind", KINDS)
@given(share=st.floats(0.05, 0.95), speed=st.floats(0.4, 1.0))
def test_speed_head_and_flow_agree(make_pump: Make, kind: str, share: float, speed: float) -> None:
    model = pump_model(make_pump(kind=kind))
    flow = share * speed * model.max_flow_m3h
    assert model.speed_for(flow, model.head_m(flow, speed)) == pytest.approx(speed, rel=1e-9)


@given(share=st.floats(0, 1), speed=st.floats(0.2, 1.0))
def test_affinity_of_the_centrifugal_pump(
    make_pump: Make, datasheet: list[CurvePoint], share: float, speed: float
) -> None:
    for curve in ([], datasheet):
        model = pump_model(make_pump(curve=curve))
        flow = np.array(share * model.max_flow_m3h)
        head = model.head_m(flow, 1.0)
        assert model.head_m(flow * speed, speed) == pytest.approx(float(head * speed**2), abs=1e-6)
        shaft = model.shaft_power_w(flow, head, np.array(1.0))
        slowed = model.shaft_power_w(flow * speed, head * speed**2, np.array(speed))
        assert slowed == pytest.approx(float(shaft * speed**3), rel=1e-9)


@given(head=st.floats(5, 200), speed=st.floats(0.5, 1.0))
def test_helical_rotor_flow_falls_by_displacement_and_torque_stays(make_pump: Make, head: float, speed: float) -> None:
    model = pump_model(make_pump(kind="helical-rotor"))

    def flow_at(turn: float) -> float:
        return float(
            rising_root(lambda flow: -model.surplus(flow, np.array(head), np.array(turn)), 0.0, model.max_flow_m3h)
        )

    if flow_at(speed) > 0:
        assert flow_at(1.0) - flow_at(speed) == pytest.approx((1 - speed) * 2.9, rel=1e-9)
    torque = [float(model.shaft_power_w(np.array(1.0), np.array(head), np.array(turn)) / turn) for turn in (1.0, speed)]
    assert torque[0] == pytest.approx(torque[1])
    rated_shaft = 2200 * 0.8
    assert torque[0] == pytest.approx(rated_shaft * (0.15 + 0.85 * head / 180))


@given(efficiency=st.floats(0.3, 0.98), load=st.floats(0, 1.5))
def test_motor_runs_both_ways_and_peaks_at_three_quarters(efficiency: float, load: float) -> None:
    motor = Motor(1500.0, efficiency)
    shaft = load * motor.rated_shaft_w
    assert motor.shaft_w(motor.input_w(shaft)) == pytest.approx(shaft, rel=1e-9, abs=1e-9)
    assert motor.efficiency_percent(motor.rated_shaft_w) == pytest.approx(100 * efficiency)
    loads = np.array([0.1, 0.25, 0.5, 0.74, 0.75, 0.76, 1.0])
    assert motor.efficiency_percent(loads * motor.rated_shaft_w).argmax() == 4


def test_motor_below_its_constant_loss_gives_nothing() -> None:
    motor = Motor(1000.0, 0.8)
    idle = float(motor.input_w(0.0))
    assert idle == pytest.approx(72.0)  # 1000 - 800 = 200 W of losses, 0.36 of them constant
    assert motor.shaft_w([0.0, 0.99 * idle, idle]).tolist() == [0.0, 0.0, 0.0]


def test_power_beyond_the_rated_flow_stays_level(make_pump: Make) -> None:
    model = pump_model(make_pump())
    flow = np.array([0.0, 2.0, 3.0, 5.0])
    power = model.input_power_w(flow, model.head_m(flow, 1.0), 1.0)
    assert power == pytest.approx([0.6 * 2200, 2200, 2200, 2200])


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize(("flow", "largest"), [(2.0, 6.0), (2.4, 2.6)])
def test_pump_end_never_makes_power(make_pump: Make, kind: str, flow: float, largest: float) -> None:
    model = pump_model(make_pump(kind=kind, rated_flow_m3h=flow, max_flow_m3h=largest, rated_power_w=2000.0))
    speed = np.array([[0.4], [0.7], [1.0]])
    flows = np.linspace(0.01, 0.99, 50) * speed * model.max_flow_m3h
    head = model.head_m(flows, speed)
    shaft = model.shaft_w(flows, head, speed)
    assert np.all(hydraulic_power_w(flows, head) <= 0.8000001 * shaft)


def test_impossible_figures_are_refused(make_pump: Make, datasheet: list[CurvePoint]) -> None:
    with pytest.raises(ImplausiblePump, match=r"more than 100 % efficient: at 2 m3/h and 180 m"):
        pump_model(make_pump(rated_power_w=1200.0))
    with pytest.raises(ImplausiblePump, match=r"max_head_m 200 .* not above the first point"):
        pump_model(make_pump(curve=datasheet, max_head_m=200.0))
    with pytest.raises(ImplausiblePump, match=r"max_flow_m3h 4 .* not above the last point"):
        pump_model(make_pump(curve=datasheet, max_flow_m3h=4.0))


def test_rising_root_falls_back_to_the_nearer_end() -> None:
    found = rising_root(lambda x, shift: x - shift, 0.0, 1.0, np.array([-1.0, 0.25, 2.0]))
    assert found == pytest.approx([0.0, 0.25, 1.0])
