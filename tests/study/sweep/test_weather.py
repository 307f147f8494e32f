"""The spread between weather years."""

from __future__ import annotations

import numpy as np
import pytest

from planner.assumptions.reader import check_scenario
from planner.scenario.errors import InputError
from planner.scenario.reader import read_raw
from planner.scenario.scenario import Scenario
from planner.scenario.sweep import WeatherSweep
from planner.study.compare import study_scenario
from planner.study.sweep.run import base_of
from planner.study.sweep.weather import WeatherSpread, weather_spread
from tests.study.sweep.cases import EXAMPLES, school


def spread_of(scenario: Scenario, **asked: int) -> WeatherSpread:
    base = base_of(scenario, EXAMPLES)
    return weather_spread(scenario, base.context, base.designs, WeatherSweep(**asked))


def test_the_first_years_are_those_of_a_life_without_growth_and_ageing() -> None:
    raw_solar = school().sources.solar
    assert raw_solar is not None
    still = school(
        demand={"growth_percent_per_year": 0.0},
        finance={"analysis_period_years": 6},
        pump={"wear_percent_per_year": 0.0},
        borehole={"specific_capacity_decline_percent_per_year": 0.0},
    )
    solar = still.sources.solar
    assert solar is not None
    still = still.model_copy(
        update={
            "sources": still.sources.model_copy(
                update={"solar": solar.model_copy(update={"degradation_percent_per_year": 0.0})}
            )
        }
    )
    study = study_scenario(still, EXAMPLES)
    spread = spread_of(still, years=6)
    for place, name in enumerate(spread.options):
        outcome = study.option(name).outcome
        shares = outcome.delivered_m3.sum(axis=1) / outcome.demand_m3.sum(axis=1)
        assert spread.delivered_share[place] == pytest.approx(shares, rel=1e-12)
        assert spread.fuel_l[place] == pytest.approx(outcome.fuel_l.sum(axis=1), rel=1e-12)
    assert np.ptp(spread.delivered_share[spread.options.index("solar")]) > 0.005


def test_a_later_life_year_has_more_demand_and_an_older_array() -> None:
    early = school(
        finance={"analysis_period_years": 15}, demand={"growth_percent_per_year": 3.0}, service={"options": ["solar"]}
    )
    first, last = spread_of(early, years=10), spread_of(early, years=10, life_year=15)
    place = first.options.index("solar")
    assert (last.delivered_share[place] < first.delivered_share[place]).all()
    assert np.array_equal(first.irradiation_kwh_m2, last.irradiation_kwh_m2)


def test_a_later_life_year_has_older_works() -> None:
    # the array keeps the power that a year of its age leaves; only pump and borehole differ between the two
    still = {
        "demand": {"growth_percent_per_year": 0.0},
        "finance": {"analysis_period_years": 7},
        "service": {"options": ["solar"]},
    }
    aged, new = (
        spread_of(
            school(
                **still,
                pump={"wear_percent_per_year": wear},
                borehole={"specific_capacity_decline_percent_per_year": tired},
            ),
            years=4,
            life_year=7,
        )
        for wear, tired in ((2.0, 4.0), (0.0, 0.0))
    )
    place = new.options.index("solar")
    assert (aged.delivered_share[place] < new.delivered_share[place] - 0.01).all()


def test_more_years_than_a_life_may_have_can_be_run_even_with_overrides() -> None:
    overrides = {"solar + grid": {"tank": {"volume_m3": 30}}}
    spread = spread_of(school(overrides=overrides, service={"options": ["solar", "solar + grid"]}), years=60)
    assert spread.delivered_share.shape == (2, 60)
    place = spread.options.index("solar")
    shares = spread.delivered_share[place]
    assert spread.worst_in_ten[place] == pytest.approx(np.percentile(shares, 10))
    assert shares.min() <= spread.worst_in_ten[place] < shares.mean()
    dull = np.argsort(spread.irradiation_kwh_m2)[:15]
    assert shares[dull].mean() < shares.mean()


def test_a_weather_file_gives_its_own_years() -> None:
    raw = read_raw(EXAMPLES / "dry-village.toml") | {"service": {"options": ["solar"]}}
    scenario = check_scenario(raw, "test")
    spread = spread_of(scenario, years=30)
    assert spread.measured
    assert spread.years == base_of(scenario, EXAMPLES).site.weather.years


def test_a_life_year_beyond_the_life_is_refused() -> None:
    with pytest.raises(InputError, match="the life counted has 2 years"):
        spread_of(school(), years=10, life_year=3)
