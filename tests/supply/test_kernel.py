"""The hour loop: balances, agreement with a plain loop, and what must never happen."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.supply.kernel import Totals, run_hours
from planner.supply.topup import FloatSwitch, TopUpSeries
from tests.supply.cases import FULL_M3H, make_cases
from tests.supply.plain_loop import PlainTopUp, plain_loop

GRID, GENERATOR = 0, 1


def added(totals: Totals, source: int) -> np.ndarray:
    """Water a source added in the year, over all columns."""
    result = np.zeros(totals.end_m3.shape)
    result[:, totals.top_ups[source].columns] = totals.top_ups[source].added_m3.sum(axis=0)
    return result


def imbalance(arguments: dict, totals: Totals) -> np.ndarray:
    """Water that appeared or vanished in each case."""
    pumped = arguments["sun_m3"].sum(axis=0) - totals.idle_m3.sum(axis=0)
    pumped = pumped + added(totals, GRID) + added(totals, GENERATOR)
    drawn = arguments["draw_m3"].sum(axis=0) - totals.shortfall_m3.sum(axis=0)
    return pumped - drawn - (totals.end_m3 - totals.start_m3)


@settings(max_examples=12, deadline=None)
@given(seed=st.integers(0, 10_000), minimum_run_h=st.sampled_from([0.0, 1.5]), limited=st.booleans())
def test_water_is_neither_created_nor_lost(seed: int, minimum_run_h: float, limited: bool) -> None:
    cases = make_cases(2, 3, seed, minimum_run_h=minimum_run_h, days=30)
    totals, _ = run_hours(**cases.arguments, daily_limit_m3=14.0 if limited else None)
    assert np.abs(imbalance(cases.arguments, totals)).max() < 1e-9


@pytest.mark.parametrize("seed", [1, 2, 3])
def test_agrees_with_a_plain_loop_over_hours(seed: int) -> None:
    cases = make_cases(1, 2, seed, days=120)
    arguments = cases.arguments
    totals, _ = run_hours(**arguments)
    for variant in range(2):
        for column in range(7):
            plain = plain_loop(
                arguments["sun_m3"][:, column].tolist(),
                arguments["draw_m3"][:, column].tolist(),
                arguments["volume_m3"][variant, column],
                arguments["start"][variant, column],
                plain_source(arguments["sources"][GRID], variant, column),
                plain_source(arguments["sources"][GENERATOR], variant, column),
            )
            assert totals.shortfall_m3[:, variant, column].sum() == pytest.approx(plain["shortfall_m3"], abs=1e-8)
            assert totals.idle_m3[:, variant, column].sum() == pytest.approx(plain["idle_m3"], abs=1e-8)
            assert totals.end_m3[variant, column] == pytest.approx(plain["end_m3"], abs=1e-8)
            assert added(totals, GRID)[variant, column] == pytest.approx(plain["grid_m3"], abs=1e-8)
            assert added(totals, GENERATOR)[variant, column] == pytest.approx(plain["generator_m3"], abs=1e-8)
    assert totals.top_ups[0].kwh.sum() > 0
    assert totals.top_ups[-1].kwh.sum() > 0
    assert totals.shortfall_m3.sum() > 0


def plain_source(source: tuple[TopUpSeries, FloatSwitch], variant: int, column: int) -> PlainTopUp | None:
    series, switch = source
    place = column - series.columns.start
    if not 0 <= place < series.columns.stop - series.columns.start:
        return None
    return PlainTopUp(
        series.extra_m3[:, place].tolist(),
        series.hours_per_m3[:, place].tolist(),
        series.kwh_per_m3[:, place].tolist(),
        float(switch.start_m3[variant, place]),
        float(switch.stop_m3[variant, place]),
    )


def test_levels_stay_within_the_tank_and_flows_are_never_negative() -> None:
    cases = make_cases(2, 3, 5, minimum_run_h=2.0, days=60)
    _, trace = run_hours(**cases.arguments, trace=True)
    volume = cases.arguments["volume_m3"]
    assert trace is not None
    assert trace.level_m3.min() >= 0
    assert (trace.level_m3 <= volume + 1e-12).all()
    for flow in (trace.shortfall_m3, trace.idle_m3, trace.top_up_m3):
        assert flow.min() >= 0
    assert trace.top_up_m3.max() <= FULL_M3H + 1e-9


def test_every_hour_balances() -> None:
    cases = make_cases(1, 2, 8, days=40)
    arguments = cases.arguments
    _, trace = run_hours(**arguments, trace=True)
    assert trace is not None
    before = np.concatenate([arguments["start"][None], trace.level_m3[:-1]])
    sun, draw = arguments["sun_m3"][:, None, :], arguments["draw_m3"][:, None, :]
    after = before + sun - trace.idle_m3 + trace.top_up_m3.sum(axis=0) - draw + trace.shortfall_m3
    assert np.abs(after - trace.level_m3).max() < 1e-12


def test_a_case_alone_gives_the_same_as_among_many() -> None:
    cases = make_cases(3, 2, 4, days=90)
    together, _ = run_hours(**cases.arguments)
    alone_arguments = dict(cases.arguments)
    column = slice(3 + 1, 3 + 2)  # one column of solar + grid
    for name in ("sun_m3", "draw_m3", "sun_kwh_per_m3", "volume_m3", "start"):
        alone_arguments[name] = cases.arguments[name][:, column]
    series, switch = cases.arguments["sources"][GRID]
    place = slice(column.start - series.columns.start, column.stop - series.columns.start)
    own = (
        TopUpSeries(
            slice(0, 1),
            series.extra_m3[:, place],
            series.hours_per_m3[:, place],
            series.kwh_per_m3[:, place],
            series.sun_kwh_per_m3[:, place],
            series.available[:, place],
        ),
        FloatSwitch(switch.start_m3[:, place], switch.stop_m3[:, place]),
    )
    alone_arguments["sources"] = [own]
    alone, _ = run_hours(**alone_arguments)
    np.testing.assert_array_equal(alone.shortfall_m3[..., 0], together.shortfall_m3[..., column.start])
    np.testing.assert_array_equal(alone.top_ups[0].kwh[..., 0], together.top_ups[0].kwh[..., place.start])


@settings(max_examples=15, deadline=None)
@given(seed=st.integers(0, 10_000), larger=st.floats(1.01, 4.0))
def test_on_sun_alone_a_larger_tank_never_delivers_less(seed: int, larger: float) -> None:
    cases = make_cases(3, 1, seed, days=60)
    sun = slice(0, 3)
    arguments = {name: cases.arguments[name][:, sun] for name in ("sun_m3", "draw_m3", "sun_kwh_per_m3", "volume_m3")}
    small, _ = run_hours(**arguments, start=arguments["volume_m3"] / 2, months=cases.arguments["months"])
    first = arguments["volume_m3"] / 2
    arguments["volume_m3"] = arguments["volume_m3"] * larger
    large, _ = run_hours(**arguments, start=first, months=cases.arguments["months"])
    assert (large.shortfall_m3.sum(axis=0) <= small.shortfall_m3.sum(axis=0) + 1e-9).all()


def test_the_daily_limit_holds_each_day() -> None:
    limit = 9.0
    cases = make_cases(1, 1, 6, days=60)
    _, trace = run_hours(**cases.arguments, daily_limit_m3=limit, trace=True)
    assert trace is not None
    pumped = cases.arguments["sun_m3"][:, None, :] - trace.idle_m3 + trace.top_up_m3.sum(axis=0)
    daily = pumped.reshape(60, 24, 1, 7).sum(axis=1)
    assert daily.max() <= limit + 1e-9
    assert daily.max() > limit - 1e-6


def test_a_started_set_runs_at_least_its_shortest_run() -> None:
    # Night only, no sun, a draw that would let the set stop after a fraction of an hour.
    hours = 48
    flow = np.full((hours, 1), 4.0)
    per_m3 = np.full((hours, 1), 0.25)
    series = TopUpSeries(slice(0, 1), flow, per_m3, per_m3 * 2.0, np.zeros((hours, 1)), np.ones((hours, 1)))
    common = {
        "sun_m3": np.zeros((hours, 1)),
        "draw_m3": np.full((hours, 1), 0.5),
        "sun_kwh_per_m3": np.zeros((hours, 1)),
        "volume_m3": np.array([[20.0]]),
        "start": np.array([[5.2]]),
        "months": np.zeros(hours, dtype=int),
    }
    levels = (np.array([[5.0]]), np.array([[5.5]]))
    _, short_trace = run_hours(**common, sources=[(series, FloatSwitch(*levels))], trace=True)
    long, long_trace = run_hours(**common, sources=[(series, FloatSwitch(*levels, minimum_run_h=2.0))], trace=True)
    assert short_trace is not None
    assert long_trace is not None
    assert short_trace.top_up_m3.max() < 2.0
    runs = long_trace.top_up_m3[0, :, 0, 0] > 0
    starts = np.flatnonzero(runs & ~np.r_[False, runs[:-1]])
    assert all(long_trace.top_up_m3[0, start : start + 3, 0, 0].sum() >= 2.0 * 4.0 - 1e-9 for start in starts[:-1])
    assert long.top_ups[0].run_hours.sum() == pytest.approx(long.top_ups[0].added_m3.sum() * 0.25)
    assert long_trace.level_m3.max() > short_trace.level_m3.max()


def test_a_full_tank_makes_the_set_idle_out_its_shortest_run() -> None:
    hours = 24
    flow, per_m3 = np.full((hours, 1), 4.0), np.full((hours, 1), 0.25)
    series = TopUpSeries(slice(0, 1), flow, per_m3, per_m3 * 2.0, np.zeros((hours, 1)), np.ones((hours, 1)))
    totals, _ = run_hours(
        np.zeros((hours, 1)),
        np.full((hours, 1), 0.1),
        np.zeros((hours, 1)),
        np.array([[3.0]]),
        np.array([[1.0]]),
        np.zeros(hours, dtype=int),
        sources=[(series, FloatSwitch(np.array([[1.0]]), np.array([[2.9]]), minimum_run_h=3.0))],
    )
    assert totals.top_ups[-1].run_hours.sum() >= 3.0 - 1e-9
    assert totals.top_ups[-1].added_m3.sum() * 0.25 < totals.top_ups[-1].run_hours.sum() - 1.0


def test_the_demand_billed_is_that_of_the_busiest_half_hour() -> None:
    # 2 kW pump, 4 m3/h. Kept full to a narrow band: some hours pump a quarter of an hour, so 0.5 kWh in half an hour.
    hours = 24
    per_m3 = np.full((hours, 1), 0.25)
    series = TopUpSeries(
        slice(0, 1),
        np.full((hours, 1), 4.0),
        per_m3,
        per_m3 * 2.0,
        np.zeros((hours, 1)),
        bands=np.zeros(hours, dtype=int),
    )

    def peak(draw_m3: float) -> float:
        totals, trace = run_hours(
            np.zeros((hours, 1)),
            np.full((hours, 1), draw_m3),
            np.zeros((hours, 1)),
            np.array([[20.0]]),
            np.array([[10.0]]),
            np.zeros(hours, dtype=int),
            sources=[(series, FloatSwitch(np.array([[10.0]]), np.array([[10.0 + 1e-6]])))],
            trace=True,
        )
        assert trace is not None
        assert trace.top_up_m3[0, 1:, 0, 0] == pytest.approx(draw_m3)
        return float(totals.top_ups[0].peak_kw.max())

    assert peak(1.0) == pytest.approx(1.0, rel=1e-5)  # a quarter of an hour at 2 kW within half an hour
    assert peak(3.0) == pytest.approx(2.0, rel=1e-5)
