"""Days worked out without stepping through their hours: the same as stepped through, and found where they are."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from planner.supply.cells import over_day
from planner.supply.kernel import Totals, run_hours
from planner.supply.quiet import QuietDays
from planner.supply.topup import TopUpSeries
from tests.supply.cases import make_cases

FIRST = np.zeros(1, dtype=np.int64)
"""The one column has the one series."""


def numbers(totals: Totals) -> dict[str, np.ndarray]:
    """Every array of the totals."""
    found = {name: value for name, value in vars(totals).items() if isinstance(value, np.ndarray)}
    found |= {f"end {name}": value for name, value in vars(totals.end).items()}
    for place, top_up in enumerate(totals.top_ups):
        found |= {f"{place} {name}": v for name, v in vars(top_up).items() if name in ("added_m3", "kwh", "run_hours")}
    return found


@pytest.mark.parametrize("limit", [None, 8.0, 20.0])
@pytest.mark.parametrize("run", [0.0, 2.5])
def test_stepping_through_every_hour_of_a_day_gives_the_same(limit: float | None, run: float) -> None:
    # Day by day from the same state: over many days a switch can turn a difference of rounding into one of a run.
    arguments = make_cases(2, 3, 1, minimum_run_h=run, days=40).arguments
    state = arguments.pop("start")
    sources = arguments.pop("sources")
    volume = arguments.pop("volume_m3")
    for begin in range(0, 40 * 24, 24):
        hours = slice(begin, begin + 24)
        given = {name: series[hours] for name, series in arguments.items()}
        given |= {"volume_m3": volume, "start": state, "daily_limit_m3": limit}
        given["sources"] = [(replace(series, **cut(series, hours)), switch) for series, switch in sources]
        settled, _ = run_hours(**given)
        stepped, _ = run_hours(**given, trace=True)
        found, expected = numbers(settled), numbers(stepped)
        for name, value in found.items():
            if name != "end on":  # off is nil or below
                np.testing.assert_allclose(value, expected[name], rtol=1e-10, atol=1e-9, err_msg=name)
        np.testing.assert_array_equal(found["end on"] > 0, expected["end on"] > 0)
        state = stepped.end


def cut(series: TopUpSeries, hours: slice) -> dict[str, np.ndarray]:
    """Some hours of a source's series."""
    return {name: value[hours] for name, value in vars(series).items() if isinstance(value, np.ndarray)}


def day(level_m3: float, sun_m3: float) -> tuple[bool, float]:
    """Whether a day of sun from 8 to 16 h and 1 m3/h drawn is quiet in a tank of 20 m3, and the level at its end."""
    hour = np.arange(24)
    sun = np.where((hour >= 8) & (hour < 16), sun_m3, 0.0)[:, None]
    days = QuietDays(np.full((1, 1), 20.0), [], None, FIRST, sun, np.ones((24, 1)))
    quiet = days.of(0, np.full((1, 1), level_m3))
    return bool(quiet.holds[0, 0]), float(quiet.end_m3[0, 0])


def test_a_tank_that_fills_is_quiet_and_ends_as_if_it_had_been_stepped_through() -> None:
    # 9 m3 fall to 1 by 8 h; 8 x 3 m3 more would make 25: full from 15 h on, 4 m3 too much; 8 h more draw 8 of 20.
    holds, end = day(9.0, 4.0)
    assert holds
    assert end == pytest.approx(12.0)


def test_a_tank_that_runs_dry_before_sunrise_is_not_quiet_however_full_it_ends() -> None:
    assert not day(7.5, 4.0)[0]


def test_a_tank_that_runs_dry_after_it_was_full_is_not_quiet() -> None:
    # The sum of the day is positive, but a tank of 20 m3 that is full at noon would be drawn on for 24 hours.
    hour = np.arange(24)
    sun = np.where(hour == 0, 60.0, 0.0)[:, None]
    days = QuietDays(np.full((1, 1), 20.0), [], None, FIRST, sun, np.ones((24, 1)))
    quiet = days.of(0, np.full((1, 1), 5.0))
    assert not quiet.holds[0, 0]


def test_a_lone_case_is_summed_in_the_same_order_as_many() -> None:
    flow = np.random.default_rng(1).random((24, 50))
    alone = [over_day(flow[:, [column]].copy())[0] for column in range(50)]
    np.testing.assert_array_equal(alone, over_day(flow))
