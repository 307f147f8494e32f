"""Timetables and outages."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.supply.availability import outage_share, share_of_hours


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
