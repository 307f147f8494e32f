"""Services, overhauls and replacement by running hours."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from numpy.typing import ArrayLike

from planner.money.flows import whole_years
from planner.money.fuel import times_due, wear


def replacement_by_hours(hours: ArrayLike, life_hours: float, life_years: float) -> tuple[np.ndarray, np.ndarray]:
    found = wear(hours, life_hours, whole_years(life_years))
    return found.bought, found.left


def overhauls_due(hours: ArrayLike, interval_h: float, life_hours: float, life_years: float) -> np.ndarray:
    return wear(hours, life_hours, whole_years(life_years), overhaul_interval_h=interval_h).overhauls


YEARLY_HOURS = st.lists(st.floats(0, 8760), min_size=1, max_size=25)


@pytest.mark.parametrize(("life", "years"), [(0.2, 1), (1.0, 1), (2.4, 2), (2.5, 3), (3.5, 4), (15.0, 15)])
def test_lives_are_rounded_to_whole_years(life: float, years: int) -> None:
    assert whole_years(life) == years


def test_services_by_summed_hours() -> None:
    assert times_due([100.0, 100.0, 100.0, 700.0], 250.0).tolist() == [0, 0, 1, 3]
    assert times_due([[250.0, 250.0], [249.9, 250.0]], 250.0).tolist() == [[1, 1], [0, 1]]


def test_summed_tenths_reach_their_multiple() -> None:
    # 0.1 summed ten times is 0.9999999999999999 in binary
    assert times_due(np.full(10, 0.1), 1.0).sum() == 1


@given(hours=YEARLY_HOURS, interval=st.floats(50, 5000))
def test_as_many_services_as_whole_intervals(hours: list[float], interval: float) -> None:
    due = times_due(hours, interval)
    assert (due >= 0).all()
    assert due.sum() == math.floor(sum(hours) / interval + 1e-9)


def test_replaced_by_hours_within_the_year() -> None:
    counts, left = replacement_by_hours([1500.0] * 4, 2000.0, 15.0)
    # worn at 2000 h (year 2) and 4000 h (year 3); the third machine has run 2000 h exactly at the end, and stays
    assert counts.tolist() == [0, 1, 1, 0]
    assert left == pytest.approx(0.0)


def test_several_replacements_in_one_year() -> None:
    counts, left = replacement_by_hours([8760.0, 8760.0], 2000.0, 15.0)
    assert counts.tolist() == [4, 4]
    assert left == pytest.approx(1 - (2 * 8760 - 8 * 2000) / 2000)


def test_replaced_by_years_where_it_hardly_runs() -> None:
    counts, left = replacement_by_hours(np.full(20, 10.0), 20_000.0, 8.0)
    assert np.flatnonzero(counts).tolist() == [7, 15]
    assert left == pytest.approx(0.5)  # 4 of 8 years; 40 of 20 000 hours


def test_share_left_is_the_lesser_of_hours_and_years() -> None:
    _, left = replacement_by_hours(np.full(5, 1800.0), 10_000.0, 20.0)
    assert left == pytest.approx(0.1)  # 9000 of 10 000 hours, 5 of 20 years


@given(hours=YEARLY_HOURS, life_hours=st.floats(500, 30_000))
def test_replacement_count_by_hours_alone(hours: list[float], life_hours: float) -> None:
    counts, left = replacement_by_hours(hours, life_hours, 100.0)
    total = sum(hours) / life_hours
    # the two bounds differ only where a machine wears out exactly at the end of a year
    assert math.ceil(total - 1e-9) - 1 <= counts.sum() <= math.floor(total + 1e-9)
    assert (counts >= 0).all()
    assert 0 <= left <= 1
    # what was bought has been used, but for the share left by hours
    assert left <= 1 + counts.sum() - total + 1e-6


@given(years=st.integers(1, 40), life_years=st.floats(0.5, 30))
def test_replacement_count_by_years_alone(years: int, life_years: float) -> None:
    counts, _ = replacement_by_hours(np.zeros(years), 1e5, life_years)
    assert counts.sum() == math.ceil(years / whole_years(life_years)) - 1


def test_no_overhaul_of_a_machine_at_its_end() -> None:
    # 10 000 h apart, replaced at 20 000 h: overhauls at 10 000, 30 000 and 50 000 h, none at 20 000 and 40 000 h
    due = overhauls_due(np.full(10, 5000.0), 10_000.0, 20_000.0, 15.0)
    assert np.flatnonzero(due).tolist() == [1, 5, 9]


def test_overhauls_count_anew_for_a_new_machine() -> None:
    # replaced by age at the end of year 4 with 8000 h run: the next overhaul is 10 000 h later, not 2000 h
    due = overhauls_due(np.full(10, 2000.0), 10_000.0, 1e5, 4.0)
    assert due.sum() == 0
    assert times_due(np.full(10, 2000.0), 10_000.0).sum() == 2


def test_no_overhaul_where_the_machine_wears_out_first() -> None:
    assert overhauls_due(np.full(10, 5000.0), 10_000.0, 5000.0, 15.0).sum() == 0


def test_cases_are_counted_apart() -> None:
    hours = np.random.default_rng(3).uniform(0, 6000, (4, 5, 12))
    together = [*replacement_by_hours(hours, 9000.0, 6.0), overhauls_due(hours, 4000.0, 9000.0, 6.0)]
    for case in np.ndindex(4, 5):
        alone = [*replacement_by_hours(hours[case], 9000.0, 6.0), overhauls_due(hours[case], 4000.0, 9000.0, 6.0)]
        for many, one in zip(together, alone, strict=True):
            np.testing.assert_array_equal(many[case], one)
