from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.water.motor import SUBMERSIBLE, LossShares, Motor

SPEEDS = np.array([1.0, 0.9, 0.8, 0.7, 0.6, 0.5])
INDUCTION = LossShares(copper=0.60, iron=0.20, friction=0.12, stray=0.08)
PERMANENT_MAGNET = LossShares(copper=0.50, iron=0.20, friction=0.30)
SEVEN_POINTS = np.array([(0.9, 1), (0.5, 1), (0.25, 1), (0.9, 0.5), (0.5, 0.5), (0.5, 0.25), (0.25, 0.25)])
"""Speed and torque at which the loss is measured, IEC 60034-2-3:2020, from memory."""


def efficiency(motor: Motor, speed: np.ndarray, torque: np.ndarray) -> np.ndarray:
    return motor.efficiency_percent(torque * speed * motor.rated_shaft_w, speed) / 100


@pytest.mark.parametrize(
    ("rated", "losses", "by_square", "constant"),
    [
        (0.77, INDUCTION, [0.7700, 0.7749, 0.7770, 0.7750, 0.7666, 0.7484],
         [0.7700, 0.7622, 0.7519, 0.7380, 0.7192, 0.6932]),
        (0.87, PERMANENT_MAGNET, [0.8700, 0.8680, 0.8639, 0.8566, 0.8447, 0.8254],
         [0.8700, 0.8683, 0.8651, 0.8598, 0.8514, 0.8382]),
    ],
    ids=["induction", "permanent magnet"],
)  # fmt: skip
def test_efficiency_by_speed_with_the_torque_of_either_kind_of_pump(
    rated: float, losses: LossShares, by_square: list[float], constant: list[float]
) -> None:
    # worked by hand from the split of losses: torque with the square of the speed (centrifugal), and the same (helical)
    motor = Motor(1500.0, rated, losses)
    assert efficiency(motor, SPEEDS, SPEEDS**2) == pytest.approx(by_square, abs=6e-5)
    assert efficiency(motor, SPEEDS, np.ones(6)) == pytest.approx(constant, abs=6e-5)


def test_permanent_magnet_motor_at_rated_speed() -> None:
    motor = Motor(1500.0, 0.87, PERMANENT_MAGNET)
    load = np.array([0.25, 0.5, 0.75, 1.0])
    assert efficiency(motor, np.ones(4), load) == pytest.approx([0.7590, 0.8426, 0.8653, 0.8700], abs=6e-5)


@pytest.mark.parametrize(
    ("rated", "constant", "expected"),
    [
        (0.70, 0.40, [0.5714, 0.6796, 0.7035, 0.7000, 0.6856]),
        (0.80, 0.40, [0.6957, 0.7843, 0.8027, 0.8000, 0.7890]),
        (0.85, 0.35, [0.7839, 0.8468, 0.8559, 0.8500, 0.8384]),
        (0.90, 0.30, [0.8675, 0.9045, 0.9068, 0.9000, 0.8898]),
    ],
)
def test_efficiency_by_load_at_rated_speed(rated: float, constant: float, expected: list[float]) -> None:
    # eta = x / (x + (1/eta_r - 1) (k + (1 - k) x^2)), worked by hand
    motor = Motor(1000.0, rated, LossShares(1 - constant, constant / 2, constant / 2))
    assert efficiency(motor, np.ones(5), np.array([0.25, 0.5, 0.75, 1.0, 1.25])) == pytest.approx(expected, abs=6e-5)


def seven_point_terms(speed: np.ndarray, torque: np.ndarray) -> np.ndarray:
    one = np.ones_like(speed)
    return np.stack([one, speed, speed**2, speed * torque**2, speed**2 * torque**2, torque, torque**2], axis=-1)


def test_seven_point_interpolation_gives_its_coefficients_back() -> None:
    c = np.array([0.01, 0.02, 0.03, 0.04, 0.02, 0.01, 0.08])
    at = seven_point_terms(*SEVEN_POINTS.T)
    assert at @ c == pytest.approx([0.1945, 0.1425, 0.118125, 0.09035, 0.05875, 0.036562, 0.025078], abs=6e-7)
    assert np.linalg.solve(at, at @ c) == pytest.approx(c, abs=1e-6)


@pytest.mark.parametrize("losses", [SUBMERSIBLE, INDUCTION, PERMANENT_MAGNET])
def test_losses_agree_with_the_seven_point_interpolation_of_the_standard(losses: LossShares) -> None:
    # the standard interpolates a motor's loss between seven measured points; it knows no speed^1.5, so within a
    # hundredth of the rated loss from half speed up
    measured = losses.loss(SEVEN_POINTS[:, 1], SEVEN_POINTS[:, 0])
    c = np.linalg.solve(seven_point_terms(*SEVEN_POINTS.T), measured)
    speed, torque = (grid.ravel() for grid in np.meshgrid(np.linspace(0.5, 1, 11), np.linspace(0.25, 1, 11)))
    assert seven_point_terms(speed, torque) @ c == pytest.approx(losses.loss(torque, speed), abs=0.01)


def test_slow_motor_keeps_the_copper_loss_of_its_torque() -> None:
    # 80 % at the rated point: half speed and full torque lose 0.64 + 0.24 * 0.354 + 0.12 * 0.25 of the rated loss
    motor = Motor(1000.0, 0.8)
    assert efficiency(motor, np.array([1.0, 0.5, 0.25]), np.ones(3)) == pytest.approx([0.8, 0.726, 0.596], abs=5e-4)
    # a centrifugal pump's torque falls with the square of the speed, and the efficiency hardly at all
    assert efficiency(motor, np.array([0.9, 0.7]), np.array([0.81, 0.49])) == pytest.approx([0.80, 0.79], abs=0.01)


@given(torque=st.floats(0, 1.5), speed=st.floats(0.05, 1.0), slower=st.floats(0.1, 0.99))
def test_loss_never_falls_with_torque_or_speed(torque: float, speed: float, slower: float) -> None:
    assert SUBMERSIBLE.loss(torque, speed) >= SUBMERSIBLE.loss(torque * slower, speed)
    assert SUBMERSIBLE.loss(torque, speed) >= SUBMERSIBLE.loss(torque, speed * slower)
    assert SUBMERSIBLE.loss(1.0, 1.0) == pytest.approx(1.0)
