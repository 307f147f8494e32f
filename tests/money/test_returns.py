"""Return and payback of an extra outlay, and the words where there is none."""

from __future__ import annotations

import numpy as np
import numpy_financial as npf
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from planner.money.returns import internal_rate_of_return, payback_years
from planner.text import text

OUTLAY_FIRST = st.builds(
    lambda outlay, later: [float(-outlay), *map(float, later)],
    st.integers(1, 800),
    st.lists(st.integers(-100, 400), min_size=1, max_size=12),
)


@pytest.mark.parametrize(
    ("flows", "reason"),
    [
        ([0.0, 10.0, 10.0], "no_outlay"),
        ([5.0, -10.0, 10.0], "no_outlay"),
        ([-5.0, -1.0, 0.0], "never_saves"),
        ([-5.0, 0.0, 0.0], "never_saves"),
        ([-10.0, 8.0, -10.0], "loses_all"),
    ],
)
def test_no_rate_has_words(flows: list[float], reason: str) -> None:
    rate, words = internal_rate_of_return(flows)
    assert np.isnan(rate)
    assert words == text(f"returns.{reason}")


def test_two_rates_are_never_reduced_to_one() -> None:
    # -100 + 230/(1+r) - 132/(1+r)^2 is nothing at 10 % and at 20 %; numpy_financial silently gives 10 %
    flows = [-100.0, 230.0, -132.0]
    assert npf.irr(flows) == pytest.approx(0.10)
    rate, words = internal_rate_of_return(flows)
    assert np.isnan(rate)
    assert words == text("returns.several")


def test_a_double_rate_is_not_one_rate() -> None:
    rate, words = internal_rate_of_return([-100.0, 220.0, -121.0])
    assert np.isnan(rate)
    assert words == text("returns.loses_all")  # the savings are worth the outlay at 10 %, and more at no rate


def test_one_rate_in_spite_of_several_changes_of_sign() -> None:
    flows = [-100.0, 60.0, -20.0, 60.0, 60.0]
    rate, words = internal_rate_of_return(flows)
    assert words == ""
    assert npf.npv(rate, flows) == pytest.approx(0, abs=1e-9)


@given(flows=OUTLAY_FIRST)
def test_a_rate_leaves_no_present_value_and_is_the_only_one(flows: list[float]) -> None:
    rate, words = internal_rate_of_return(flows)
    assert np.isnan(rate) == (words != "")
    assume(not np.isnan(rate))
    terms = np.array(flows) * (1 + rate) ** -np.arange(len(flows))
    assert abs(terms.sum()) <= 1e-6 * np.abs(terms).sum()
    # the present value keeps its sign on either side of the only rate
    below, above = (1 + rate) * np.linspace(0.3, 0.999, 60) - 1, (1 + rate) * np.linspace(1.001, 8, 200) - 1
    for side in (below, above):
        values = (np.array(flows) * (1 + side[:, None]) ** -np.arange(len(flows))).sum(axis=1)
        assert (values > 0).all() or (values < 0).all()


@pytest.mark.parametrize(
    ("flows", "years", "reason"),
    [
        ([-100.0, 40.0, 40.0, 40.0], 2.5, ""),
        ([-100.0, 100.0, 5.0, 5.0], 1.0, ""),
        ([-100.0, 120.0, -50.0, 60.0], 2.5, ""),  # the recovery of year 1 does not last
        ([-100.0, 120.0, -50.0, 10.0], np.nan, "not_recovered"),
        ([0.0, 5.0, 5.0, 5.0], 0.0, "at_once"),
        ([50.0, -10.0, -10.0, -10.0], 0.0, "at_once"),
        ([50.0, -60.0, 0.0, 20.0], np.nan, "no_outlay"),
        ([0.0, 0.0, 0.0, 0.0], 0.0, "at_once"),
    ],
)
def test_payback(flows: list[float], years: float, reason: str) -> None:
    found, words = payback_years(flows)
    np.testing.assert_allclose(found, years, atol=1e-12)
    assert words == (text(f"returns.{reason}") if reason else "")


def test_signs_that_change_several_times_are_no_rate_and_no_fault() -> None:
    """The rates at which this sum changes its sign add up to one below -100 %."""
    rate, words = internal_rate_of_return([-172.0, -4.0, 14.0, 62.0, 2.0, -5.0])
    assert np.isnan(rate)
    assert words == text("returns.several")


@given(flows=OUTLAY_FIRST)
def test_payback_of_an_outlay_exists_where_the_sum_is_a_saving(flows: list[float]) -> None:
    years, words = payback_years(flows)
    assert np.isnan(years) == (sum(flows) < 0)
    assert (words == "") == (sum(flows) >= 0)
    assume(sum(flows) >= 0)
    total = np.interp(years, np.arange(len(flows)), np.cumsum(flows))
    assert total == pytest.approx(0, abs=1e-9)
    assert (np.cumsum(flows)[int(np.ceil(years)) :] >= -1e-9).all()


def test_cases_are_judged_apart() -> None:
    flows = np.random.default_rng(5).integers(-50, 60, (3, 4, 8)).astype(float)
    flows[..., 0] -= 60
    rates, words = internal_rate_of_return(flows)
    years, _ = payback_years(flows)
    assert rates.shape == words.shape == years.shape == (3, 4)
    assert np.isfinite(rates).any()
    for case in np.ndindex(3, 4):
        np.testing.assert_equal(rates[case], internal_rate_of_return(flows[case])[0])
        np.testing.assert_equal(years[case], payback_years(flows[case])[0])
