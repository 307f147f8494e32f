"""Timetables and outages."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.resource.sun import DAYS_PER_MONTH
from planner.scenario.sources import Outages
from planner.supply.availability import share_of_hours
from planner.supply.outages import TooManyOutages, outage_share, outages_of, start_rates
from planner.water.demand import MONTH_OF_HOUR


def test_ranges_cover_their_hours_over_midnight_and_by_fractions() -> None:
    assert share_of_hours([]).tolist() == [1.0] * 24
    share = share_of_hours([[22, 6], [12.5, 13.25]])
    assert share[[22, 23, 0, 5]].tolist() == [1.0] * 4
    assert share[[6, 21, 14]].tolist() == [0.0] * 3
    assert share[[12, 13]].tolist() == [0.5, 0.25]


def test_overlapping_ranges_count_once() -> None:
    assert share_of_hours([[6, 12], [8, 10]]).sum() == 6


@settings(max_examples=20, deadline=None)
@given(hours=st.floats(0, 23), duration=st.floats(0.3, 30), seed=st.integers(0, 100))
def test_outage_shares_are_shares(hours: float, duration: float, seed: int) -> None:
    share = outage_share(hours, duration, 2, seed)
    assert share.shape == (8760, 2)
    assert share.min() >= 0
    assert share.max() <= 1


@pytest.mark.parametrize(("hours", "duration"), [(2.0, 0.5), (8.0, 3.0), (16.0, 6.0)])
def test_outages_have_the_wanted_hours_and_duration(hours: float, duration: float) -> None:
    share = outage_share(hours, duration, 40, 3)
    assert share.mean() * 24 == pytest.approx(hours, rel=0.04)
    # An outage longer than two hours leaves whole hours without grid: e.g. durations exponential with the given mean.
    off = share > 0
    begins = off[1:] & ~off[:-1]
    per_outage = share.sum() / (begins.sum() + 40)
    # short breaks between outages merge some of them, so the mean run is at least the mean duration
    assert per_outage > 0.9 * duration


def test_year_k_has_the_same_outages_however_many_years() -> None:
    np.testing.assert_array_equal(outage_share(5, 2, 3, 9), outage_share(5, 2, 20, 9)[:, :3])
    assert not np.array_equal(outage_share(5, 2, 2, 9)[:, 0], outage_share(5, 2, 2, 9)[:, 1])
    assert not np.array_equal(outage_share(5, 2, 1, 9), outage_share(5, 2, 1, 10))


def test_no_outages_means_always_on() -> None:
    assert outage_share(0.0, 2.0, 1, 1).max() == 0


def test_a_year_begins_without_grid_as_often_as_any_hour_is() -> None:
    # 8 h in 24 off: a third of 1,500 years begin within an outage, within four standard deviations.
    outages = Outages(hours_per_day=8.0, mean_duration_h=200.0)
    for weights in (None, [1.0] * 24):
        begins = outages_of(outages.model_copy(update={"start_weights": weights}), 1500, 5)[0] > 0.99
        assert begins.mean() == pytest.approx(1 / 3, abs=4 * np.sqrt(2 / 9 / 1500))


def test_outages_by_month_and_hour_have_the_wanted_hours() -> None:
    months = [1.0] * 4 + [4.0] * 3 + [0.0] + [1.0] * 4
    evening = [0.0] * 17 + [1.0] * 4 + [0.0] * 3
    outages = Outages(hours_per_day=1.5, mean_duration_h=1.5, month_weights=months, start_weights=evening)
    share = outages_of(outages, 200, 3)
    assert share.mean() * 24 == pytest.approx(1.5, rel=0.02)
    mean = np.average(months, weights=DAYS_PER_MONTH)
    for month in (0, 4, 11):
        off_h = share[month == MONTH_OF_HOUR].mean() * 24
        assert off_h == pytest.approx(1.5 * months[month] / mean, rel=0.05)
    # August begins within the last outage of July at most.
    assert share[MONTH_OF_HOUR == 7].mean() < 0.002
    by_hour = share.reshape(365, 24, 200).mean(axis=(0, 2))
    assert by_hour[8:17].max() < 0.002
    assert by_hour[18:22].min() > 0.15
    assert share.min() >= 0
    assert share.max() <= 1


def test_equal_weights_are_outages_without_weights() -> None:
    # Rate while on = share off / (1 - share off) / duration = 0.5 / 2 h at 8 h a day.
    rates, first = start_rates([8.0] * 12, 2.0, [3.0] * 24)
    np.testing.assert_allclose(rates, 0.25, rtol=1e-9)
    assert first == pytest.approx(1 / 3)
    alike = Outages(hours_per_day=8.0, mean_duration_h=2.0, month_weights=[1.0] * 12, start_weights=[1.0] * 24)
    plain = alike.model_copy(update={"month_weights": None, "start_weights": None})
    np.testing.assert_array_equal(outages_of(plain, 2, 9), outage_share(8.0, 2.0, 2, 9))
    assert outages_of(alike, 30, 9).mean() == pytest.approx(1 / 3, rel=0.03)
    np.testing.assert_array_equal(outages_of(alike, 1, 9)[:, 0], outages_of(alike, 3, 9)[:, 0])


def test_weights_that_cannot_be_are_refused() -> None:
    with pytest.raises(TooManyOutages, match=r"cannot add up to 12 h a day"):
        start_rates([12.0] * 12, 1.0, [0.0] * 23 + [1.0])
    with pytest.raises(ValueError, match=r"makes 25.8 hours without grid a day"):
        Outages(hours_per_day=13.0, mean_duration_h=1.0, month_weights=[2.0, 0.0] * 6)
    with pytest.raises(ValueError, match="must not all be 0"):
        Outages(hours_per_day=12.0, mean_duration_h=1.0, start_weights=[0.0] * 24)
