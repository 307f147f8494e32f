"""Random draws: distributions, Latin hypercube, correlations."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as some
from scipy import stats

from planner.scenario.errors import InputError
from planner.scenario.sweep import Correlation, Discrete, LogNormal, Normal, RandomSweep, Triangular, Uniform
from planner.study.sweep.draws import correlation_matrix, draw, latin_hypercube, quantile
from tests.study.sweep.cases import uniform


def sweep(draws: int, *inputs: dict[str, Any], **more: Any) -> RandomSweep:
    return RandomSweep.model_validate({"draws": draws, "inputs": list(inputs), **more})


def test_each_input_has_one_draw_in_each_of_n_equal_parts() -> None:
    values = draw(sweep(40, uniform("a", 0, 1), uniform("b", -1, 3)), seed=3)
    for column, low, width in ((values[:, 0], 0, 1), (values[:, 1], -1, 4)):
        assert sorted(np.floor(40 * (column - low) / width)) == list(range(40))


@pytest.mark.parametrize(("draws", "inputs"), [(1, 1), (7, 3), (200, 12)])
def test_the_hypercube_is_that_of_scipy_number_for_number(draws: int, inputs: int) -> None:
    expected = stats.qmc.LatinHypercube(d=inputs, rng=np.random.default_rng(5)).random(draws)
    np.testing.assert_array_equal(latin_hypercube(draws, inputs, np.random.default_rng(5)), expected)


def test_quantiles_are_those_of_scipy() -> None:
    shares = np.linspace(0.001, 0.999, 99)
    triangle = Triangular(kind="triangular", key="a", low=2.0, mode=3.0, high=7.0)
    np.testing.assert_allclose(quantile(triangle, shares), stats.triang(0.2, loc=2, scale=5).ppf(shares), rtol=1e-12)
    variance = np.log1p((2 / 5) ** 2)
    law = stats.lognorm(np.sqrt(variance), scale=5 * np.exp(-variance / 2))
    cut = LogNormal(kind="lognormal", key="a", mean=5.0, standard_deviation=2.0, low=0.0, high=9.0)
    np.testing.assert_allclose(quantile(cut, shares), law.ppf(law.cdf(9) * shares), rtol=1e-12)


def test_the_seed_makes_the_draws() -> None:
    given_seed = sweep(20, uniform("a", 0, 1), seed=9)
    plain = sweep(20, uniform("a", 0, 1))
    assert np.array_equal(draw(given_seed, 1), draw(given_seed, 2))
    assert np.array_equal(draw(plain, 9), draw(given_seed, 1))
    assert not np.array_equal(draw(plain, 1), draw(plain, 2))


def test_a_normal_input_cut_at_both_ends_stays_within_them() -> None:
    law = Normal(kind="normal", key="a", mean=10.0, standard_deviation=4.0, low=8.0, high=11.0)
    found = quantile(law, np.linspace(0, 1, 101))
    assert found.min() == pytest.approx(8)
    assert found.max() == pytest.approx(11)
    cut = stats.truncnorm(-0.5, 0.25, loc=10, scale=4)
    assert found[1:-1] == pytest.approx(cut.ppf(np.linspace(0, 1, 101)[1:-1]), rel=1e-9)


def test_mean_and_deviation_of_a_lognormal_input_are_of_the_value_itself() -> None:
    law = LogNormal(kind="lognormal", key="a", mean=5.0, standard_deviation=2.0)
    values = quantile(law, (np.arange(200_000) + 0.5) / 200_000)
    assert values.mean() == pytest.approx(5, rel=1e-3)
    assert values.std() == pytest.approx(2, rel=0.01)


def test_discrete_values_come_as_often_as_their_weights_say() -> None:
    law = {"kind": "discrete", "key": "a", "values": [3.0, 1.0, 2.0, 9.0], "weights": [0.5, 0.25, 0.25, 0.0]}
    values = draw(sweep(400, law), seed=1)[:, 0]
    assert [int((values == value).sum()) for value in (3, 1, 2, 9)] == [200, 100, 100, 0]
    top = quantile(Discrete.model_validate(law), 1.0)
    assert float(top) == 2.0


def test_cuts_that_leave_nothing_are_refused() -> None:
    law = {"kind": "normal", "key": "a", "mean": 0.0, "standard_deviation": 1.0, "low": 20.0}
    with pytest.raises(InputError, match="leave nothing of the distribution"):
        draw(sweep(20, law), seed=1)


@given(share=some.floats(0.001, 0.999), low=some.floats(-50, 50), width=some.floats(0.1, 100), at=some.floats(0, 1))
def test_a_triangular_quantile_is_the_share_below_it(share: float, low: float, width: float, at: float) -> None:
    mode, high = low + at * width, low + width
    value = float(quantile(Triangular(kind="triangular", key="a", low=low, mode=min(mode, high), high=high), share))
    rising = value <= mode
    area = (value - low) ** 2 / (width * (mode - low)) if rising else 1 - (high - value) ** 2 / (width * (high - mode))
    assert area == pytest.approx(share, abs=1e-6)


@pytest.mark.parametrize("wanted", [-0.8, -0.3, 0.5, 0.95])
def test_correlated_inputs_have_the_rank_correlation_and_keep_their_draws(wanted: float) -> None:
    inputs = (uniform("a", 0, 1), {"kind": "lognormal", "key": "b", "mean": 3.0, "standard_deviation": 2.0})
    pair = {"first": "a", "second": "b", "rank_correlation": wanted}
    free, tied = draw(sweep(1000, *inputs), 5), draw(sweep(1000, *inputs, correlations=[pair]), 5)
    assert stats.spearmanr(tied[:, 0], tied[:, 1]).statistic == pytest.approx(wanted, abs=0.02)
    assert np.array_equal(np.sort(tied, axis=0), np.sort(free, axis=0))


def test_an_input_without_correlation_stays_independent() -> None:
    inputs = (uniform("a", 0, 1), uniform("b", 0, 1), uniform("c", 0, 1))
    pair = {"first": "a", "second": "b", "rank_correlation": 0.9}
    values = draw(sweep(1000, *inputs, correlations=[pair]), 5)
    assert abs(stats.spearmanr(values[:, 0], values[:, 2]).statistic) < 0.05


def test_correlations_that_contradict_each_other_are_refused() -> None:
    pairs = [
        Correlation(first=first, second=second, rank_correlation=r)
        for first, second, r in (("a", "b", 0.9), ("b", "c", 0.9), ("a", "c", -0.9))
    ]
    with pytest.raises(InputError, match="contradict each other"):
        correlation_matrix(["a", "b", "c"], pairs)


@pytest.mark.parametrize(("first", "second"), [("a", "x"), ("a", "a")])
def test_a_wrong_pair_is_refused(first: str, second: str) -> None:
    with pytest.raises(InputError, match=r"sweep\.random\.correlations\[1\]"):
        correlation_matrix(["a", "b"], [Correlation(first=first, second=second, rank_correlation=0.1)])


def test_a_uniform_quantile_is_a_straight_line() -> None:
    law = Uniform(kind="uniform", key="a", low=2.0, high=6.0)
    assert quantile(law, np.array([0, 0.25, 1])) == pytest.approx([2, 3, 6])
