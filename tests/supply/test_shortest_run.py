"""The shortest run of a set, by hand-worked cases: pump 4 m3/h at 2 kW, tank 20 m3, start 3 m3, stop 4 m3."""

from __future__ import annotations

import numpy as np
import pytest

from planner.supply.kernel import Totals, Trace, run_hours
from planner.supply.topup import FloatSwitch, TopUpSeries


def run(
    draw_m3: np.ndarray | float,
    first_m3: float,
    minimum_run_h: float,
    *,
    available: np.ndarray | float = 1.0,
    sun_m3: np.ndarray | float = 0.0,
    hours: int = 24,
) -> tuple[Totals, Trace]:
    """Run the set over some hours."""
    sun, draw, share = (np.array(np.broadcast_to(v, hours), dtype=float)[:, None] for v in (sun_m3, draw_m3, available))
    extra = 4.0 - sun
    per_m3 = np.divide(1.0, extra, out=np.zeros_like(extra), where=extra > 0)
    series = TopUpSeries(slice(0, 1), extra * share, per_m3, 2.0 * per_m3, np.zeros((hours, 1)), share)
    levels = FloatSwitch(np.array([[3.0]]), np.array([[4.0]]), minimum_run_h)
    totals, trace = run_hours(
        sun,
        draw,
        np.zeros((hours, 1)),
        np.array([[20.0]]),
        np.array([[first_m3]]),
        np.zeros(hours, dtype=int),
        sources=[(series, levels)],
        trace=True,
    )
    assert trace is not None
    return totals, trace


FROM_EIGHT = np.where(np.arange(24) >= 8, 1.0, 0.0)


def test_a_start_level_crossed_outside_the_hours_arms_the_shortest_run_when_they_begin() -> None:
    # 4.5 m3 at midnight, 0.25 m3 an hour: below 3 m3 from 06:00; the set may run from 08:00 and then runs 3 h, to
    # 2.5 + 3 x 3.75 = 13.75 m3, instead of 0.4375 h to the stop level.
    totals, trace = run(0.25, 4.5, 3.0, available=FROM_EIGHT)
    assert totals.top_ups[0].run_hours.sum() == pytest.approx(3.0)
    np.testing.assert_allclose(trace.top_up_m3[0, 7:12, 0, 0], [0, 4, 4, 4, 0], atol=1e-9)
    assert trace.level_m3[10, 0, 0] == pytest.approx(2.5 + 3 * 3.75)


def test_no_start_while_the_set_may_not_run() -> None:
    # Below the start level from 06:00, but the sun lifts the tank above the stop level before the hours begin.
    sun = np.where(np.arange(24) == 7, 3.0, 0.0)
    totals, _ = run(np.where(np.arange(24) < 8, 0.25, 0.0), 4.5, 3.0, available=FROM_EIGHT, sun_m3=sun)
    assert totals.top_ups[0].run_hours.sum() == 0


def test_a_start_in_the_middle_of_an_hour_runs_only_the_rest_of_it() -> None:
    # 3.75 m3, 1 m3 an hour: the start level is crossed at 00:45; one hour's run ends at 01:45, with 4 m3 pumped.
    draw = np.where(np.arange(24) < 1, 1.0, 0.0)
    totals, trace = run(draw, 3.75, 1.0)
    np.testing.assert_allclose(trace.top_up_m3[0, :3, 0, 0], [1.0, 3.0, 0.0], atol=1e-9)
    assert totals.top_ups[0].run_hours.sum() == pytest.approx(1.0)


def test_the_end_of_the_hours_ends_the_run_for_good() -> None:
    # Started at 00:00 for 3 h, allowed until 01:00; nothing of the run is left to the next day.
    available = np.tile(np.where(np.arange(24) < 1, 1.0, 0.0), 2)
    totals, trace = run(0.0, 2.0, 3.0, available=available, hours=48)
    assert totals.top_ups[0].run_hours.sum() == pytest.approx(1.0)
    assert trace.top_up_m3[0, 24:].sum() == 0


def test_in_hours_of_which_half_is_allowed_the_run_takes_twice_as_many() -> None:
    # 3 h in halves of an hour are six hours, 2 m3 in each.
    totals, trace = run(0.0, 2.0, 3.0, available=0.5)
    assert totals.top_ups[0].run_hours.sum() == pytest.approx(3.0)
    np.testing.assert_allclose(trace.top_up_m3[0, :7, 0, 0], [2, 2, 2, 2, 2, 2, 0], atol=1e-9)


def test_a_run_that_its_hours_ended_does_not_idle_on_when_they_come_back() -> None:
    # Allowed in hour 0 and from hour 2 on. In hour 0 it lifts 2 m3 to 3 while 3 are drawn, in hour 1 the tank falls to
    # nothing; from hour 2 on the sun gives all that the pump can, so the set is wanted but has nothing to do.
    hour = np.arange(24)
    available = np.where(hour == 1, 0.0, 1.0)
    totals, _ = run(np.where(hour < 3, 3.0, 0.0), 2.0, 5.0, available=available, sun_m3=np.where(hour >= 2, 4.0, 0.0))
    assert totals.top_ups[0].run_hours.sum() == pytest.approx(1.0)


def test_the_run_goes_on_idle_while_the_sun_gives_all() -> None:
    # Started in hour 0; in hours 1 and 2 the sun pumps all the pump can, and the set idles out its 3 h.
    sun = np.where(np.isin(np.arange(24), (1, 2)), 4.0, 0.0)
    totals, trace = run(0.0, 2.0, 3.0, sun_m3=sun)
    assert totals.top_ups[0].run_hours.sum() == pytest.approx(3.0)
    assert trace.top_up_m3[0].sum() == pytest.approx(4.0)


def test_a_second_source_with_a_shortest_run_leaves_the_first_its_part_of_the_hour() -> None:
    # The first pumps half of each hour (2 m3 at most); the pump cannot run more than the whole hour.
    hours = 24
    whole, per_m3, none = np.full((hours, 1), 4.0), np.full((hours, 1), 0.25), np.zeros((hours, 1))
    first = TopUpSeries(slice(0, 1), whole / 2, per_m3, per_m3, none)
    second = TopUpSeries(np.array([0]), whole, per_m3, per_m3, none, np.ones((hours, 1)))
    levels = FloatSwitch(np.array([[3.0]]), np.array([[19.0]]))
    standby = FloatSwitch(np.array([[3.0]]), np.array([[19.0]]), 2.0)
    _, trace = run_hours(
        none,
        none,
        none,
        np.array([[20.0]]),
        np.array([[2.0]]),
        np.zeros(hours, dtype=int),
        sources=[(first, levels), (second, standby)],
        trace=True,
    )
    assert trace is not None
    np.testing.assert_allclose(trace.top_up_m3[:, :4, 0, 0], 2.0)


def test_the_end_of_the_hours_of_one_option_ends_its_run_alone() -> None:
    # Two sets started at 00:00 for 3 h; the first may not run from 01:00 to 02:00, which ends its run.
    hours = 24
    none, share = np.zeros((hours, 2)), np.ones((hours, 2))
    share[1, 0] = 0.0
    series = TopUpSeries(slice(0, 2), 4.0 * share, share / 4, share / 2, none, share)
    levels, first = (np.full((1, 2), level) for level in (3.0, 2.0))
    totals, _ = run_hours(
        none,
        none,
        none,
        np.full((1, 2), 20.0),
        first,
        np.zeros(hours, dtype=int),
        sources=[(series, FloatSwitch(levels, levels + 1.0, 3.0))],
        trace=True,
    )
    np.testing.assert_allclose(totals.top_ups[0].run_hours.sum(axis=0).ravel(), [1.0, 3.0])
