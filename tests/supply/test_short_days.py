"""Runs of short days, against counting them in the hour-by-hour record."""

from __future__ import annotations

from itertools import groupby

import numpy as np

from planner.supply.kernel import run_hours
from tests.supply.cases import make_cases


def test_the_longest_run_of_short_days_is_that_of_the_record() -> None:
    arguments = make_cases(2, 3, 5, days=120).arguments
    totals, record = run_hours(**arguments, trace=True)
    assert record is not None
    missing = record.shortfall_m3.reshape(120, 24, *record.shortfall_m3.shape[1:]).sum(axis=1)
    drawn = arguments["draw_m3"].reshape(120, 24, -1).sum(axis=1)
    longest, number = np.zeros(missing.shape[1:]), np.zeros(missing.shape[1:])
    for variant, column in np.ndindex(longest.shape):
        short = [missing[day, variant, column] > 0.1 * drawn[day, column] for day in range(120)]
        number[variant, column] = sum(short)
        longest[variant, column] = max((len(list(run)) for is_short, run in groupby(short) if is_short), default=0)
    np.testing.assert_array_equal(totals.longest_short_days, longest)
    np.testing.assert_array_equal(totals.short_days, number)
    assert longest.max() > longest.min()


def test_a_day_is_short_where_more_than_a_tenth_is_missing() -> None:
    # 24 m3 drawn each day, of which the sun gives 21.4, 21.8, 21.4, 21.4: the second day misses 9 %.
    sun = np.repeat([21.4, 21.8, 21.4, 21.4], 24)[:, None] / 24
    nothing, tank = np.zeros((96, 1)), np.array([[1.0]])
    totals, _ = run_hours(sun, np.ones((96, 1)), nothing, tank, np.zeros((1, 1)), np.zeros(96, dtype=int))
    assert totals.longest_short_days[0, 0] == 2
    assert totals.short_days[0, 0] == 3
