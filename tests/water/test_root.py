"""Roots of rising functions, against scipy's."""

from __future__ import annotations

import numpy as np
import pytest
from scipy.optimize.elementwise import find_root

from planner.water.root import rising_root


def cubic(x: np.ndarray, shift: np.ndarray) -> np.ndarray:
    return x**3 + x - shift


def test_roots_are_those_of_scipy() -> None:
    shift = np.linspace(-900, 900, 401).reshape(1, -1) * np.array([[1.0], [1e-3], [1e-9]])
    found = rising_root(cubic, -10.0, 10.0, shift)
    theirs = find_root(cubic, (np.full_like(shift, -10.0), np.full_like(shift, 10.0)), args=(shift,))
    assert found.shape == shift.shape
    assert theirs.success.all()
    assert found == pytest.approx(theirs.x, rel=1e-12, abs=1e-12)


def test_a_step_is_found_where_it_is() -> None:
    place = np.array([0.1, 0.3, 0.7])
    found = rising_root(lambda x, at: np.where(x < at, -1.0, 1.0), 0.0, 1.0, place)
    assert found == pytest.approx(place, rel=1e-12)


def test_where_there_is_none_the_nearer_end_is_given() -> None:
    found = rising_root(lambda x, shift: x - shift, 1.0, 2.0, np.array([0.0, 1.0, 1.5, 2.0, 3.0]))
    assert found == pytest.approx([1.0, 1.0, 1.5, 2.0, 2.0])
    assert rising_root(lambda x: x - 1.25, 1.0, 2.0) == pytest.approx(1.25)


def test_a_flat_stretch_and_what_is_not_a_number_end() -> None:
    flat = rising_root(lambda x: np.clip(x - 5, -1, 1), 0.0, 10.0)
    assert flat == pytest.approx(5)
    assert rising_root(lambda x, y: x * y, -1.0, 1.0, np.array([np.nan, 1.0]))[1] == pytest.approx(0.0, abs=1e-12)


def test_a_root_beside_nought_ends() -> None:
    calls = iter(range(2000))

    def step(x: np.ndarray) -> np.ndarray:
        assert next(calls, None) is not None, "it goes on without end"
        return np.where(x > 0, 1.0, -1.0)

    assert rising_root(step, 0.0, 4.5) == pytest.approx(0.0, abs=1e-300)
