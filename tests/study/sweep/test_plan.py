"""Variants and the fixed units into which they are cut."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as some

from planner.scenario.errors import InputError
from planner.study.keys import numeric_keys
from planner.study.sweep.plan import Plan, cut, hour_keys, plans_of, ready_inputs
from tests.study.sweep.cases import FUEL, SCHOOL, random_table, school, uniform

TANK, GHI = "tank.volume_m3", "weather.ghi_kwh_m2_day[1]"


def test_one_at_a_time_begins_with_the_scenario_and_moves_one_input() -> None:
    table = {"one_at_a_time": [{"key": SCHOOL, "low": 300, "high": 500}, {"key": FUEL, "change_percent": 10}]}
    (plan,) = plans_of(school(sweep=table))
    expected = [[np.nan, np.nan], [300, np.nan], [500, np.nan], [np.nan, 1.17], [np.nan, 1.43]]
    assert plan.values == pytest.approx(np.array(expected), nan_ok=True)


def test_a_grid_has_every_combination_once() -> None:
    table = {"grid": [{"key": TANK, "values": [5, 10]}, {"key": FUEL, "values": [1, 2, 3]}]}
    (plan,) = plans_of(school(sweep=table))
    assert [tuple(row) for row in plan.values] == [(5, 1), (5, 2), (5, 3), (10, 1), (10, 2), (10, 3)]


def test_without_a_table_a_ready_list_is_moved_by_a_fifth() -> None:
    (plan,) = plans_of(school())
    texts = [key.text for key in plan.keys]
    assert {SCHOOL, FUEL, "finance.discount_rate_percent", "sources.solar.module.price"} <= set(texts)
    place = texts.index(FUEL)
    assert plan.values[1 + 2 * place, place] == pytest.approx(0.8 * 1.30)
    assert plan.values[2 + 2 * place, place] == pytest.approx(1.2 * 1.30)


def test_the_ready_list_ages_the_works_between_ends_of_its_own() -> None:
    ends = {step.key: (step.low, step.high) for step in ready_inputs(school())}
    assert ends["pump.wear_percent_per_year"] == (0.0, 3.0)
    assert ends["borehole.level_decline_m_per_year"] == (0.0, 0.5)
    assert ends["borehole.specific_capacity_decline_percent_per_year"] == (0.0, 4.0)
    worse = school(borehole={"level_decline_m_per_year": 1.5})
    assert {step.key: step.high for step in ready_inputs(worse)}["borehole.level_decline_m_per_year"] == 1.5


@pytest.mark.parametrize(
    ("table", "said"),
    [
        ({"grid": [{"key": "sources.solar.strings", "values": [1.5]}]}, "takes whole numbers only"),
        ({"grid": [{"key": FUEL, "values": [1]}, {"key": FUEL, "values": [2]}]}, "is varied twice"),
        ({"one_at_a_time": [{"key": "demand.growth_percent_per_year", "change_percent": 10}]}, None),
        ({"one_at_a_time": [{"key": "costs.contingency_percent", "low": 1}]}, "either low and high, or change_percent"),
        ({"one_at_a_time": [{"key": FUEL, "low": 3, "high": 2}]}, "must be above"),
        ({"one_at_a_time": [{"key": "sources.grid.power_limit_w", "change_percent": 10}]}, "no value of its own"),
        (
            {"grid": [{"key": FUEL, "values": [1] * 5000}, {"key": TANK, "values": [1] * 5000}]},
            "25,000,000 combinations",
        ),
        ({"random": {"inputs": [{"kind": "discrete", "key": FUEL, "values": [1, 2], "weights": [1]}]}}, "one weight"),
    ],
)
def test_a_wrong_table_is_refused_in_words(table: dict[str, object], said: str | None) -> None:
    if said is None:
        assert plans_of(school(sweep=table))
        return
    with pytest.raises(InputError, match=said):
        plans_of(school(sweep=table))


def test_whole_keys_are_drawn_as_whole_numbers() -> None:
    (plan,) = plans_of(school(sweep=random_table(50, uniform("sources.solar.strings", 0.6, 4.4))))
    assert set(plan.values[:, 0]) == {1, 2, 3, 4}


KEYS = tuple(numeric_keys(school())[text] for text in (FUEL, SCHOOL, TANK, GHI, "sources.solar.strings"))


@settings(max_examples=60, deadline=None)
@given(
    picked=some.sets(some.integers(0, 4), min_size=1),
    rows=some.lists(some.tuples(*[some.sampled_from([1.0, 2.0, 3.0, float("nan")])] * 5), min_size=1, max_size=400),
    option_years=some.sampled_from([1, 8, 140]),
    redesign=some.booleans(),
)
def test_units_hold_every_variant_once_and_lead_to_its_values(
    picked: set[int], rows: list[tuple[float, ...]], option_years: int, redesign: bool
) -> None:
    places = sorted(picked)
    plan = Plan("random", tuple(KEYS[place] for place in places), np.array(rows)[:, places])
    layout = cut(plan, option_years=option_years, redesign=redesign)
    variants = np.concatenate([unit.variants for unit in layout.units])
    assert sorted(variants) == list(range(plan.size))
    touched = hour_keys(plan, redesign)
    for unit in layout.units:
        found = layout.batches[unit.batch].cases[unit.case]
        assert np.array_equal(found, plan.values[unit.variants][:, touched], equal_nan=True)
    for batch in layout.batches:
        for row in range(int(batch.rows.max()) + 1):
            shared = [
                place
                for place, at in enumerate(touched)
                if redesign or not plan.keys[at].is_size or plan.keys[at].text == "sources.solar.strings"
            ]
            cases = batch.cases[batch.rows == row][:, shared]
            assert np.array_equal(cases, np.broadcast_to(cases[0], cases.shape), equal_nan=True)
    together = [len({case.tobytes() for case in batch.cases}) for batch in layout.batches]
    assert sum(together) == len({row.tobytes() for row in np.ascontiguousarray(plan.values[:, touched])})


def test_prices_alone_make_one_case_of_the_hours() -> None:
    (plan,) = plans_of(school(sweep=random_table(5000, uniform(FUEL, 1, 2), uniform("pump.price", 1000, 3000))))
    layout = cut(plan, option_years=8, redesign=False)
    assert len(layout.batches) == 1
    assert layout.batches[0].cases.shape == (1, 0)
    assert layout.by_line


def test_tanks_share_the_hourly_series_of_a_row() -> None:
    table = {"grid": [{"key": SCHOOL, "values": [300, 400]}, {"key": TANK, "values": [5, 10, 20]}]}
    (plan,) = plans_of(school(sweep=table))
    layout = cut(plan, option_years=8, redesign=False)
    assert [batch.rows.tolist() for batch in layout.batches] == [[0, 0, 0, 1, 1, 1]]
