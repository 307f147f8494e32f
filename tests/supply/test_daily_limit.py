"""The daily limit: the sun goes first, nothing is starved for nothing, and what the limit costs is said."""

from __future__ import annotations

import numpy as np
import pytest

from planner.supply.cells import Cells
from planner.supply.daily_limit import DailyLimit, OpenDay
from planner.supply.kernel import run_hours
from planner.supply.run import run_options
from planner.supply.topup import FloatSwitch, TopUpSeries
from tests.supply.cases import make_cases
from tests.supply.options import HOURS, option, source_of, sun_of

SUN_AT_NOON = np.where((np.arange(24) >= 8) & (np.arange(24) < 16), 3.0, 0.0)  # 24 m3 a day


def days(sun_m3: np.ndarray, draw_m3: np.ndarray, volume_m3: float, first_m3: float, limit_m3: float, **switch: float):
    """Run some days, (days, 24), of one case: top-up of 4 m3/h, on below 20 % and off at 40 % of the tank."""
    hours = sun_m3.size
    sun = sun_m3.reshape(hours, 1)
    extra = 4.0 - sun
    series = TopUpSeries(slice(0, 1), extra, 1 / extra, 0.5 / extra, np.zeros((hours, 1)), np.ones((hours, 1)))
    levels = FloatSwitch(np.array([[0.2 * volume_m3]]), np.array([[0.4 * volume_m3]]), **switch)
    totals, trace = run_hours(
        sun,
        draw_m3.reshape(hours, 1),
        np.zeros((hours, 1)),
        np.array([[volume_m3]]),
        np.array([[first_m3]]),
        np.zeros(hours, dtype=int),
        sources=[(series, levels)],
        daily_limit_m3=limit_m3,
        trace=True,
    )
    assert trace is not None
    return totals, trace


def test_top_up_at_night_leaves_the_allowance_to_the_sun() -> None:
    # The sun could pump the whole limit; a low tank at midnight must not spend it on the grid.
    totals, trace = days(SUN_AT_NOON, np.full(24, 0.8), 40.0, 7.0, 24.0)
    assert totals.top_ups[0].added_m3.sum() == 0
    assert totals.idle_m3.sum() == 0
    assert trace.level_m3[-1, 0, 0] == pytest.approx(7 + 24 - 24 * 0.8)


def test_top_up_gets_what_the_sun_will_not_use() -> None:
    # Half the sun, 12 m3 before the limit of 20: at midnight 8 m3 may be topped up.
    totals, trace = days(SUN_AT_NOON / 2, np.full(24, 1.0), 40.0, 7.0, 20.0)
    assert trace.top_up_m3[0, :8].sum() == pytest.approx(8.0)
    assert totals.top_ups[0].added_m3.sum() == pytest.approx(8.0)
    assert totals.idle_m3.sum() == 0


def test_top_up_is_not_starved_for_sun_that_a_full_tank_would_turn_away() -> None:
    # Sun for 24 m3, limit 20; but the tank of 10 m3 and the draw until 16:00 take no more than 9 + 17 x 0.5 < 20.
    totals, trace = days(SUN_AT_NOON, np.full(24, 0.5), 10.0, 1.0, 20.0)
    assert trace.top_up_m3[0, 0].sum() == pytest.approx(3.5)  # to the stop level of 4 m3 at once: 4 - (1 - 0.5)
    assert totals.shortfall_m3.sum() == 0


def test_an_allowance_that_found_no_room_is_given_back() -> None:
    # Limit 14. The sun is booked for 12 m3 in the morning, of which a tank of 5 m3 takes 5; so 9 are left to the
    # evening; from 16:00 on the top-up lifts the tank from 0 to its stop level of 2 m3 every other hour, four times.
    sun = np.where(np.arange(24) < 4, 3.0, 0.0)
    draw = np.where(np.arange(24) >= 12, 1.0, 0.0)
    totals, _ = days(sun, draw, 5.0, 0.0, 14.0)
    assert totals.idle_m3.sum() == pytest.approx(12 - 5)
    assert totals.top_ups[0].added_m3.sum() == pytest.approx(8.0)
    assert totals.shortfall_m3.sum() == 0


def test_sun_that_the_limit_bars_is_sun_not_used() -> None:
    # Sun for 24 m3, of which the limit lets 10 into a tank that has room for all.
    totals, trace = days(SUN_AT_NOON, np.zeros(24), 40.0, 10.0, 10.0)
    assert totals.idle_m3.sum() == pytest.approx(14.0)
    assert trace.level_m3[-1, 0, 0] == pytest.approx(20.0)


def test_a_forced_run_keeps_the_daily_limit() -> None:
    # A run of at least 5 hours would pump 20 m3; the limit leaves 6, and the set idles out the rest.
    totals, _ = days(np.zeros(24), np.full(24, 0.1), 40.0, 8.05, 6.0, minimum_run_h=5.0)
    assert totals.top_ups[0].added_m3.sum() == pytest.approx(6.0)
    assert totals.top_ups[0].run_hours.sum() == pytest.approx(5.0)


def test_a_limit_below_the_demand_does_not_change_who_pumps() -> None:
    # Demand 26 m3 a day, sun for 24, limit 24 or 23: the sun pumps what the limit allows, the grid next to none.
    draw = np.full((HOURS, 2), 26 / 24)
    watts = np.tile(np.where(SUN_AT_NOON > 0, 1500.0, 0.0), 365)
    for limit in (24.0, 23.0):
        made = option("solar + grid", draw, 40.0, sun=sun_of(watts, 2), grid=source_of(1.0, 2), daily_limit_m3=limit)
        outcome = run_options([made])[0]
        assert outcome.solar_m3.sum() > 0.99 * limit * 365 * 2
        assert outcome.grid_m3.sum() < 0.01 * limit * 365 * 2


def test_what_the_limit_costs_is_the_shortfall_without_it_taken_off() -> None:
    # Without limit the grid serves all; with 20 m3 a day of 24 the users miss 4.
    draw = np.full((HOURS, 2), 1.0)
    limited = option("grid", draw, 40.0, grid=source_of(1.0, 2), daily_limit_m3=20.0, users_share=np.full((1, 1), 0.8))
    free = option("solar", draw, 40.0, sun=sun_of(600.0, 2))
    asked = run_options([limited, free], free_variants=[1, 1])
    np.testing.assert_allclose(asked[0].limit_shortfall_m3, 4 * 365 * 0.8, rtol=1e-3)
    assert np.abs(asked[1].limit_shortfall_m3).max() == 0
    assert asked[1].delivered_share[0, 0] < 1
    assert run_options([limited])[0].limit_shortfall_m3 is None


def test_each_option_keeps_its_own_limit() -> None:
    draw = np.full((HOURS, 1), 1.0)
    options = [option("grid", draw, 40.0, grid=source_of(1.0, 1), daily_limit_m3=limit) for limit in (12.0, None, 18.0)]
    shares = [float(outcome.delivered_share[0, 0]) for outcome in run_options(options)]
    assert shares == pytest.approx([0.5, 1.0, 0.75], rel=1e-3)


@pytest.mark.parametrize("limit", [6.0, 12.0, 24.0])
@pytest.mark.parametrize("run", [0.0, 2.5])
def test_a_cell_is_spared_only_where_the_limit_would_hold_nothing_back(
    limit: float, run: float, monkeypatch: pytest.MonkeyPatch
) -> None:
    arguments = make_cases(2, 3, 4, minimum_run_h=run, days=40).arguments
    held: list[float] = []
    find = DailyLimit.might_hold

    def counted(self: DailyLimit, cells: Cells, day: OpenDay) -> np.ndarray:
        found = find(self, cells, day)
        held.append(found.size / cells.count)
        return found

    monkeypatch.setattr(DailyLimit, "might_hold", counted)
    quick, _ = run_hours(**arguments, daily_limit_m3=limit)
    assert 0 < np.mean(held) < 1
    monkeypatch.setattr(DailyLimit, "might_hold", lambda self, cells, day: np.arange(cells.count))
    whole, _ = run_hours(**arguments, daily_limit_m3=limit)
    for name in ("shortfall_m3", "idle_m3", "end_m3"):
        np.testing.assert_allclose(getattr(quick, name), getattr(whole, name), atol=1e-9)
    for place in range(2):
        np.testing.assert_allclose(quick.top_ups[place].added_m3, whole.top_ups[place].added_m3, atol=1e-9)


def test_what_the_limit_costs_is_found_for_the_variants_asked_for_alone() -> None:
    draw = np.full((HOURS, 2), 1.0)
    limited = option("grid", draw, [40.0, 20.0], grid=source_of(1.0, 2), daily_limit_m3=20.0)
    smaller = option("grid", draw, [30.0], grid=source_of(1.0, 2), daily_limit_m3=20.0)
    asked, other = run_options([limited, smaller], free_variants=[1, 0])
    np.testing.assert_allclose(asked.limit_shortfall_m3[0], 4 * 365, rtol=1e-3)
    assert np.isnan(asked.limit_shortfall_m3[1]).all()
    assert np.isnan(other.limit_shortfall_m3).all()
    assert other.demand_m3.shape[0] == 1
