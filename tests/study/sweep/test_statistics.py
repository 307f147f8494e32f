"""Figures that sum up a sweep."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as some
from scipy import stats

from planner.study.sweep.statistics import (
    chances,
    percentiles,
    rank_correlations,
    sensitivity_indicator,
    tornado,
)

NAN = float("nan")


def test_percentiles_leave_out_what_has_no_value() -> None:
    assert [p.value for p in percentiles([1, NAN, 3, 2, np.inf], (0, 50, 100))] == [1, 2, 3]
    assert np.isnan(percentiles([NAN], (50,))[0].value)


@given(some.lists(some.floats(-1e6, 1e6), min_size=1, max_size=200), some.integers(0, 100))
def test_as_many_cases_exceed_a_percentile_as_it_says(values: list[float], percent: int) -> None:
    value = percentiles(values, (percent,))[0].value
    above = sum(one > value + 1e-9 for one in values)
    below = sum(one < value - 1e-9 for one in values)
    place = percent / 100 * (len(values) - 1)
    assert above <= len(values) - 1 - np.floor(place + 1e-9)
    assert below <= np.ceil(place - 1e-9)


def test_only_options_that_serve_can_be_cheapest() -> None:
    cost = np.array([[1.0, 2.0, 3.0], [1.0, 2.0, 3.0], [1.0, 2.0, 3.0], [3.0, 2.0, NAN], [5.0, 4.0, 3.0]])
    serves = np.array([[1.0, 1, 1], [0, 1, 1], [0, 0, 0], [1, 1, NAN], [1, 0, 1]])
    found = chances(cost, serves)
    assert found.cases == 4
    assert found.cheapest == pytest.approx([0.25, 0.25, 0.25])
    assert found.meets_target == pytest.approx([0.5, 0.5, 0.75])
    assert found.none_meets == 0.25
    assert found.cheapest.sum() + found.none_meets == pytest.approx(1)
    assert found.standard_error(0.25) == pytest.approx(np.sqrt(0.25 * 0.75 / 4))


def test_without_a_case_there_is_no_chance() -> None:
    found = chances(np.full((3, 2), NAN), np.ones((3, 2)))
    assert found.cases == 0
    assert np.isnan(found.cheapest).all()


def test_rank_correlations_are_those_of_spearman() -> None:
    random = np.random.default_rng(2)
    inputs = random.integers(0, 9, (60, 3)).astype(float)
    result = inputs[:, 0] - 3 * inputs[:, 1] ** 3 + random.normal(size=60)
    result[5] = NAN
    known = np.isfinite(result)
    expected = [stats.spearmanr(column[known], result[known]).statistic for column in inputs.T]
    assert rank_correlations(inputs, result) == pytest.approx(expected)


def test_an_input_that_does_not_vary_has_no_correlation() -> None:
    inputs = np.column_stack([np.ones(10), np.arange(10.0)])
    found = rank_correlations(inputs, np.exp(-np.arange(10.0)))
    assert np.isnan(found[0])
    assert found[1] == pytest.approx(-1)


def test_a_tornado_counts_the_base_and_puts_what_failed_last() -> None:
    found = tornado(10, [9, NAN, 12, NAN], [11, NAN, 15, 14])
    assert [swing.index for swing in found] == [2, 3, 0, 1]
    assert [swing.swing for swing in found[:3]] == [5, 4, 2]
    assert np.isnan(found[3].swing)


def test_an_indicator_needs_a_base_and_a_change() -> None:
    assert sensitivity_indicator(100, 90, 10, 11) == pytest.approx(1)
    for arguments in ((0, 1, 1, 2), (1, 2, 0, 1), (1, 1, 3, 3)):
        assert np.isnan(sensitivity_indicator(*arguments))
