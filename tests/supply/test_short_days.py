"""Runs of short days, against counting them in the hour-by-hour record."""

from __future__ import annotations

from itertools import groupby

import numpy as np
import pytest

from planner.supply.kernel import run_hours
from planner.supply.run import run_options
from tests.supply.cases import make_cases
from tests.supply.options import HOURS, option, sun_of


def test_the_longest_run_of_short_days_is_that_of_the_record() -> None:
    arguments = make_cases(2, 3, 5, days=120).arguments
    arguments["start"] = np.zeros_like(arguments["start"])
    totals, record = run_hours(**arguments, trace=True)
    assert record is not None
    missing = record.shortfall_m3.reshape(120, 24, *record.shortfall_m3.shape[1:]).sum(axis=1)
    drawn = arguments["draw_m3"].reshape(120, 24, -1).sum(axis=1)
    longest, first = np.zeros(missing.shape[1:]), np.zeros(missing.shape[1:])
    number, lacking = np.zeros((12, *longest.shape)), np.zeros((12, *longest.shape))
    month = arguments["months"][::24]
    for variant, column in np.ndindex(longest.shape):
        short = [missing[day, variant, column] > 0.1 * drawn[day, column] for day in range(120)]
        for day in np.flatnonzero(short):
            number[month[day], variant, column] += 1
            lacking[month[day], variant, column] += missing[day, variant, column]
        runs = [(is_short, len(list(run))) for is_short, run in groupby(short)]
        longest[variant, column] = max((length for is_short, length in runs if is_short), default=0)
        first[variant, column] = runs[0][1] if runs[0][0] else 0
    np.testing.assert_array_equal(totals.longest_short_days, longest)
    np.testing.assert_array_equal(totals.first_short_days, first)
    np.testing.assert_array_equal(totals.short_days, number)
    np.testing.assert_allclose(totals.short_days_shortfall_m3, lacking, rtol=1e-12, atol=1e-12)
    assert longest.max() > longest.min()
    assert first.max() > 0


def test_a_day_is_short_where_more_than_a_tenth_is_missing() -> None:
    # 24 m3 drawn each day, of which the sun gives 21.4, 21.8, 21.4, 21.4: the second day misses 9 %.
    sun = np.repeat([21.4, 21.8, 21.4, 21.4], 24)[:, None] / 24
    nothing, tank = np.zeros((96, 1)), np.array([[1.0]])
    totals, _ = run_hours(sun, np.ones((96, 1)), nothing, tank, np.zeros((1, 1)), np.zeros(96, dtype=int))
    assert totals.longest_short_days[0, 0] == 2
    assert totals.first_short_days[0, 0] == 1
    assert totals.short_days[0, 0, 0] == 3
    # They miss 2.6 m3 each; what the second day misses is not theirs.
    assert totals.short_days_shortfall_m3[0, 0, 0] == pytest.approx(3 * 2.6)


def test_a_run_is_counted_within_the_life_and_over_the_turn_of_the_year() -> None:
    # Half of the water is missing on every day of three years: one run, that begins with the first.
    draw = np.full((HOURS, 3), 1.0)
    never = run_options([option("solar", draw, [5.0], sun=sun_of(300.0, 3))])[0]
    np.testing.assert_array_equal(never.longest_short_days[0, 0], [365, 730, 1095])
    # The last ten days of each year and the first five lack it: 15 in a row, but 10 alone in the first year.
    watts = np.full(HOURS, 800.0)
    watts[: 5 * 24] = watts[-10 * 24 :] = 300.0
    turns = run_options([option("solar", draw, [0.1], sun=sun_of(watts, 3))])[0]
    np.testing.assert_array_equal(turns.longest_short_days[0, 0], [10, 15, 15])
    np.testing.assert_array_equal(turns.month_short_days[0, 0], [[5, *[0] * 10, 10]] * 3)
    np.testing.assert_array_equal(turns.short_days[0, 0], [15, 15, 15])


def test_what_is_missing_on_short_days_is_what_users_miss() -> None:
    # A quarter of the draw leaks away; the sun gives half of it, so users miss half of three quarters.
    draw = np.full((HOURS, 1), 1.0)
    short = run_options([option("solar", draw, [5.0], sun=sun_of(300.0, 1), users_share=np.full((1, 1), 0.75))])[0]
    np.testing.assert_allclose(short.short_days_shortfall_m3.sum(), (short.demand_m3 - short.delivered_m3).sum())
    by_hour = np.where(np.arange(HOURS) % 24 < 12, 0.5, 1.0)[:, None]
    short = run_options([option("solar", draw, [5.0], sun=sun_of(300.0, 1), users_share=by_hour)])[0]
    np.testing.assert_allclose(short.short_days_shortfall_m3, short.demand_m3 - short.delivered_m3)
    assert short.short_days_shortfall_m3.sum() > 0
