"""The hours of one option: they are those that were summed, nothing is lost in any, and the worst are found."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from numpy.typing import NDArray

from planner.study.compare import Study
from planner.study.hours import Hours, option_hours
from planner.supply.run import MONTH
from tests.study.scenarios import studied

Array = NDArray[np.float64]

YEARS = 3
SOME: dict[str, Any] = {
    "finance__analysis_period_years": YEARS,
    "service__options": ["solar", "solar + grid + generator", "grid + generator"],
    "borehole__static_level_by_month_m": [47, 48, 49, 50, 49, 48, 47, 46, 46, 46, 47, 47],
    "demand__leakage_m3_per_day": 1.0,
    "demand__growth_percent_per_year": 6.0,
}
MORE: dict[str, dict[str, Any]] = {
    "as given": {},
    "changeover": {"controller__mode": "changeover"},
    "daily limit": {"borehole__daily_limit_m3": 35.0},
}


@pytest.fixture(
    scope="module",
    params=[pytest.param(name, marks=[] if name == "as given" else [pytest.mark.slow]) for name in MORE],
)
def study(request: pytest.FixtureRequest) -> Study:
    return studied(**SOME | MORE[request.param])


@pytest.fixture(scope="module")
def hours_of(study: Study) -> dict[str, Hours]:
    return {option.name: option_hours(study, option.name) for option in study.options}


def by_month(hourly: Array) -> Array:
    return np.add.reduceat(hourly, np.flatnonzero(np.diff(MONTH, prepend=-1)), axis=0).T


def test_their_sums_by_month_are_those_of_the_comparison(study: Study, hours_of: dict[str, Hours]) -> None:
    for option in study.options:
        hours, did = hours_of[option.name], option.outcome
        kept = {
            "demand_m3": did.demand_m3,
            "delivered_m3": did.delivered_m3,
            "shortfall_m3": did.demand_m3 - did.delivered_m3,
            "leakage_m3": did.leakage_m3,
            "grid_m3": did.grid_m3,
            "grid_kwh": did.grid_kwh.sum(axis=-1),
            "generator_m3": did.generator_m3,
            "generator_kwh": did.generator_kwh,
            "solar_m3": did.solar_m3,
            "pv_used_kwh": did.solar_kwh,
            "pv_unused_kwh": did.idle_kwh,
        }
        sources = {key.removesuffix("_m3") for key in hours.series if key.removesuffix("_m3") in option.sources}
        assert sources == set(option.sources)
        for key, sums in kept.items():
            if key in hours.series:
                np.testing.assert_allclose(by_month(hours.series[key]), sums, rtol=1e-9, atol=1e-9, err_msg=key)
        np.testing.assert_allclose(hours.series["tank_level_m3"][-1], did.level_end_m3, atol=1e-9)


def test_no_water_comes_from_nowhere_in_any_hour(study: Study, hours_of: dict[str, Hours]) -> None:
    for option in study.options:
        hours, level = hours_of[option.name], option.outcome.level_start_m3
        for year in range(YEARS):
            one = hours.year(year)
            pumped = sum(one[f"{source}_m3"] for source in option.sources)
            change = np.diff(one["tank_level_m3"], prepend=level[year])
            np.testing.assert_allclose(change, pumped - one["delivered_m3"] - one["leakage_m3"], atol=1e-9)
            np.testing.assert_allclose(one["shortfall_m3"], one["demand_m3"] - one["delivered_m3"], atol=1e-9)
            assert all(values.shape == (8760,) and values.min() >= -1e-9 for values in one.values())
            assert one["tank_level_m3"].max() <= option.tank_m3 + 1e-9
            if option.has_array:
                offered = one["pv_used_kwh"] + one["pv_unused_kwh"]
                np.testing.assert_allclose(offered, one["pv_offered_kwh"], atol=1e-9)


def hours_with(shortfall: Array, level: Array) -> Hours:
    return Hours("any", {"shortfall_m3": shortfall, "tank_level_m3": level}, 10.0)


def test_the_worst_days_are_those_that_miss_most() -> None:
    shortfall, level = np.zeros((8760, 2)), np.full((8760, 2), 5.0)
    shortfall[24 * 100 : 24 * 114, 0] = 0.1  # 33.6 m3 in a fortnight
    shortfall[24 * 200 + 7, 1] = 20.0
    shortfall[24 * 212 + 23, 1] = 15.0  # within a fortnight of the other, not within twelve days
    hours = hours_with(shortfall, level)
    worst = hours.worst()
    assert worst.year == 1
    assert worst.shortfall_m3 == pytest.approx(35.0)
    assert worst.first_day <= 200
    assert worst.first_day + worst.days > 212
    assert worst.misses_water
    assert hours.worst(12).year == 0
    assert hours.series["shortfall_m3"][worst.hours, worst.year].sum() == pytest.approx(worst.shortfall_m3)


@pytest.mark.parametrize(("lowest", "first"), [(0, 0), (24 * 180, 173), (8759, 351)])
def test_where_no_water_is_missing_they_are_those_with_the_lowest_tank(lowest: int, first: int) -> None:
    level = np.full((8760, 2), 5.0)
    level[lowest, 1] = 0.5
    worst = hours_with(np.zeros((8760, 2)), level).worst()
    assert (worst.year, worst.first_day, worst.days) == (1, first, 14)
    assert not worst.misses_water
    assert level[worst.hours, 1].min() == 0.5
