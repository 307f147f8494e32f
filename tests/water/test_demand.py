from __future__ import annotations

from calendar import monthrange
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.resource.sun import DAYS_PER_MONTH
from planner.scenario.place import Demand, Irrigation, Livestock, People, Volume
from planner.water.demand import MONTH_OF_HOUR, PROFILES, daily_demand_m3, hourly_demand_m3, users_share

PEOPLE = People(kind="people", name="village", count=1000.0, litres_per_person_day=25.0)
CATTLE = Livestock(kind="livestock", name="cattle", count=200.0, litres_per_head_day=30.0, draw_profile="livestock")
GARDEN = Irrigation(
    kind="irrigation",
    name="garden",
    area_m2=5000.0,
    net_requirement_mm_day=[0, 0, 1, 2, 3, 4, 4, 3, 2, 1, 0, 0.5],
    application_efficiency_percent=80.0,
    draw_profile="morning",
    growth_percent_per_year=0.0,
)
SCHOOL = Volume(kind="volume", name="school", m3_per_day=[2.0] * 6 + [0.0] + [2.0] * 5, draw_profile="school")


def _demand(*users: Any, **changes: Any) -> Demand:
    return Demand(users=list(users), **changes)


def test_profiles_are_days() -> None:
    for name, shares in PROFILES.items():
        assert len(shares) == 24, name
        assert sum(shares) == pytest.approx(1, abs=1e-12), name
        assert min(shares) >= 0, name


def test_months() -> None:
    assert DAYS_PER_MONTH.tolist() == [monthrange(2023, month)[1] for month in range(1, 13)]
    assert MONTH_OF_HOUR.shape == (8760,)
    assert MONTH_OF_HOUR[[0, 743, 744, 59 * 24 - 1, 59 * 24, 8759]].tolist() == [0, 0, 1, 1, 2, 11]


def test_each_kind_of_user() -> None:
    assert daily_demand_m3(_demand(PEOPLE), 1)[0] == pytest.approx(np.full(12, 25.0))
    assert daily_demand_m3(_demand(CATTLE), 1)[0] == pytest.approx(np.full(12, 6.0))
    # 4 mm on 5000 m2 are 20 m3 net, 25 m3 at 80 percent
    assert daily_demand_m3(_demand(GARDEN), 1)[0, [0, 5, 11]] == pytest.approx([0.0, 25.0, 3.125])
    assert daily_demand_m3(_demand(SCHOOL), 1)[0, [5, 6]] == pytest.approx([2.0, 0.0])


def test_growth_compounds_for_each_user_and_spares_the_first_year() -> None:
    daily = daily_demand_m3(_demand(PEOPLE, GARDEN, growth_percent_per_year=2.0), 11)
    assert daily.shape == (11, 12)
    assert daily[0, 5] == pytest.approx(25 + 25)
    assert daily[10, 5] == pytest.approx(25 * 1.02**10 + 25)


def test_leakage_raises_what_is_drawn() -> None:
    assert daily_demand_m3(_demand(PEOPLE, leakage_percent=20.0), 1)[0, 0] == pytest.approx(25 / 0.8)


def test_hours_follow_the_profile_of_each_user() -> None:
    hourly = hourly_demand_m3(_demand(PEOPLE, SCHOOL, draw_profile="even"), 1)[:, 0]
    first_day = hourly[:24]
    assert first_day[3] == pytest.approx(25 / 24)
    assert first_day[10] == pytest.approx(25 / 24 + 2.0 * PROFILES["school"][10])
    july = hourly[MONTH_OF_HOUR == 6]
    assert july == pytest.approx(np.full(744, 25 / 24))


def test_own_24_shares_are_used_and_must_make_a_day() -> None:
    shares = [0.0] * 24
    shares[7] = 0.75
    shares[18] = 0.25
    hourly = hourly_demand_m3(_demand(PEOPLE, draw_profile=shares), 1)[:24, 0]
    assert hourly[[7, 18, 0]] == pytest.approx([18.75, 6.25, 0.0])
    with pytest.raises(ValueError, match="24 fractions must add up to 1"):
        _demand(PEOPLE, draw_profile=[0.04] * 23 + [0.5])


@given(
    growth=st.floats(-5, 8),
    leakage=st.floats(0, 60),
    profile=st.sampled_from(sorted(PROFILES)),
    years=st.integers(1, 25),
)
def test_hours_sum_to_days(growth: float, leakage: float, profile: str, years: int) -> None:
    demand = _demand(
        PEOPLE,
        CATTLE,
        GARDEN,
        SCHOOL,
        growth_percent_per_year=growth,
        leakage_percent=leakage,
        draw_profile=profile,
    )
    hourly, daily = hourly_demand_m3(demand, years), daily_demand_m3(demand, years)
    assert hourly.shape == (8760, years)
    assert hourly.min() >= 0
    for month in (0, 1, 6, 11):
        assert hourly[month == MONTH_OF_HOUR].sum(axis=0) == pytest.approx(
            daily[:, month] * DAYS_PER_MONTH[month], rel=1e-12
        )


def test_leakage_by_the_clock_is_steady_and_does_not_grow() -> None:
    demand = _demand(SCHOOL, leakage_percent=20.0, leakage_m3_per_day=1.2, growth_percent_per_year=10.0)
    hourly = hourly_demand_m3(demand, 2)
    assert hourly[0] == pytest.approx([0.05, 0.05])  # night: nobody draws
    noon = 10
    assert hourly[noon] - 0.05 == pytest.approx(2.0 / 0.8 * PROFILES["school"][noon] * np.array([1.0, 1.1]))
    assert daily_demand_m3(demand, 2)[:, 0] == pytest.approx([2.5 + 1.2, 2.75 + 1.2])
    share = users_share(demand, hourly)
    assert share[0] == pytest.approx([0.0, 0.0])
    assert (share * hourly)[:24].sum(axis=0) == pytest.approx([2.0, 2.2])


def test_share_of_users_is_one_number_where_leakage_follows_the_draw() -> None:
    demand = _demand(PEOPLE, leakage_percent=20.0)
    assert users_share(demand, hourly_demand_m3(demand, 3)).tolist() == [[pytest.approx(0.8)]]


def test_leakage_and_growth_of_a_later_year() -> None:
    # 25 m3 growing by 2 % a year, a fifth of what leaves the tank lost: in year 6 25 x 1.02^5 / 0.8.
    hourly = hourly_demand_m3(_demand(PEOPLE, leakage_percent=20.0, growth_percent_per_year=2.0), 6)
    assert hourly[:24, 5].sum() == pytest.approx(25 * 1.02**5 / 0.8)
