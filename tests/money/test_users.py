"""What users must pay, against sums worked by hand and against the fund year by year."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.money.flows import CashFlows
from planner.money.lifecycle import LifeCycle, appraise
from planner.money.terms import Payers
from tests.money.cases import make_quantities, make_terms

YEARS = 20
LUMPS = {5: 900.0, 8: 3700.0, 10: 600.0, 15: 900.0, 16: 3700.0}
"""Valves and switches; pump and controller; the tank's lining. Invented."""


def life_of(
    years: int = YEARS, lumps: dict[int, float] = LUMPS, *, build: float = 42000.0, running: float = 2600.0,
    delivered_m3: float = 3400.0, residual: float = 0.0, support: float = 0.0, payers: Payers | None = None,
    rate: float = 0.08, **terms: Any,
) -> LifeCycle:  # fmt: skip
    """Life of an option that costs and delivers the same in all years but for its lumps."""
    nothing, later = np.zeros(years + 1), np.r_[0.0, np.ones(years)]
    replacement = nothing.copy()
    for year, cost in lumps.items():
        replacement[year] = cost
    last = nothing.copy()
    last[-1] = -residual
    first = nothing.copy()
    first[0] = build
    flows = CashFlows(
        first, replacement, last, nothing, nothing, nothing, nothing, running * later, support * later, nothing
    )
    rules = make_terms(years, rate, payers=payers or Payers(), **terms)
    return appraise(rules, flows, make_quantities(years, delivered_m3=delivered_m3))


def balance(lumps: dict[int, float], years: int, saving: float, interest: float) -> list[float]:
    """The fund year by year: interest, deposit, then the year's replacements."""
    fund, found = 0.0, []
    for year in range(1, years + 1):
        fund = fund * (1 + interest) + saving - lumps.get(year, 0.0)
        found.append(fund)
    return found


@pytest.mark.parametrize(("collection", "tariffs"), [(1.0, (0.765, 0.945, 2.203)), (0.9, (0.850, 1.050, 2.448))])
def test_tariffs_of_equal_years_are_the_yearly_cost_over_the_yearly_volume(
    collection: float, tariffs: tuple[float, ...]
) -> None:
    # By hand: 2600 / 3400; (2600 + 612.50) / 3400; (2600 + 612.50 + 0.10185 x 42000) / 3400, of 4000 m3 less 15 %.
    users = life_of(payers=Payers(collection_share=collection)).users
    found = [float(users[f"tariff_{covers}"]) for covers in ("operation", "operation_and_renewals", "full")]
    assert found == pytest.approx(tariffs, abs=0.0006)


@pytest.mark.parametrize(
    ("interest", "saving", "after"),
    [(0.0, 612.50, (300, 925, 0, 2450)), (0.03, 559.43, (291, 845, 0, 2340)), (-0.02, 650.39, (306, 982, 0, 2525))],
)
def test_the_least_level_saving_is_bound_by_the_last_lump(
    interest: float, saving: float, after: tuple[float, ...]
) -> None:
    users = life_of(payers=Payers(fund_interest=interest)).users
    assert float(users["renewal_saving"]) == pytest.approx(saving, abs=0.005)
    assert float(users["renewal_fund_empty_year"]) == 16
    assert [users["fund_balance"][year] for year in (8, 10, 16, 20)] == pytest.approx(after, abs=0.6)
    assert float(users["renewal_fund_left"]) == pytest.approx(after[-1], abs=0.6)
    # The plain mean of 9800 over 20 years would be overdrawn by 680 after the pump.
    assert balance(LUMPS, YEARS, 9800 / YEARS, 0.0)[7] == pytest.approx(-680)


@settings(max_examples=60, deadline=None)
@given(
    lumps=st.dictionaries(st.integers(1, 15), st.floats(1, 5000), max_size=6),
    interest=st.floats(-0.1, 0.12),
)
def test_the_fund_is_never_overdrawn_and_with_less_it_is(lumps: dict[int, float], interest: float) -> None:
    users = life_of(15, lumps, payers=Payers(fund_interest=interest)).users
    saving = float(users["renewal_saving"])
    scale = sum(lumps.values()) + 1
    assert users["fund_balance"][1:] == pytest.approx(balance(lumps, 15, saving, interest), abs=1e-7 * scale)
    assert min(balance(lumps, 15, saving, interest)) >= -1e-8 * scale
    if lumps:
        assert min(balance(lumps, 15, 0.999 * saving, interest)) < 0
    else:
        assert saving == 0
        assert np.isnan(users["renewal_fund_empty_year"])


def test_the_saving_is_in_money_of_year_0_though_replacements_rise_with_prices() -> None:
    flat = life_of(rate=0.08)
    nominal = life_of(rate=1.08 * 1.05 - 1, prices="nominal", inflation=0.05)
    assert nominal.columns["replacement"][16] == pytest.approx(3700 * 1.05**16)
    for name in ("renewal_saving", "tariff_operation", "tariff_operation_and_renewals", "tariff_full"):
        assert float(nominal.users[name]) == pytest.approx(float(flat.users[name]))


def test_the_burden_has_its_lumps_and_leaves_out_grant_and_what_the_works_are_worth() -> None:
    life = life_of(residual=5000.0, grant_share=0.8)
    assert life.users["burden"][0] == pytest.approx(0.2 * 42000)
    assert life.users["burden"][1] == pytest.approx(2600)
    assert life.users["burden"][20] == pytest.approx(2600)
    assert float(life.users["burden_largest"]) == pytest.approx(2600 + 3700)
    assert float(life.users["burden_largest_year"]) == 8
    assert float(life.users["burden_mean"]) == pytest.approx(2600 + 9800 / 20)


def test_a_grant_and_what_is_left_at_the_end_lower_the_full_tariff_alone() -> None:
    plain, helped = life_of().users, life_of(residual=5000.0, grant_share=0.8).users
    recovery = 0.08 * 1.08**20 / (1.08**20 - 1)
    assert float(helped["tariff_full"]) == pytest.approx(
        (2600 + 612.5 + recovery * (0.2 * 42000 - 5000 / 1.08**20)) / 3400
    )
    assert helped["tariff_operation_and_renewals"] == pytest.approx(plain["tariff_operation_and_renewals"])


def test_the_bill_of_a_household_and_its_share_of_an_income() -> None:
    # 5.5 people x 20 L x 30.4 days = 3.35 m3 a month: at 1.05 a bill of 3.51, which is 3 % of 117 and 5 % of 70.
    payers = Payers(5.5, 20.0, 117.1, 70.25, 0.9)
    users = life_of(payers=payers).users
    assert float(users["household_m3_per_month"]) == pytest.approx(3.346, abs=0.001)
    assert float(users["bill_operation_and_renewals"]) == pytest.approx(3.51, abs=0.005)
    assert float(users["income_share_operation_and_renewals"]) == pytest.approx(3.0, abs=0.01)
    assert float(users["lowest_income_share_operation_and_renewals"]) == pytest.approx(5.0, abs=0.01)
    assert float(users["bill_full"]) == pytest.approx(8.19, abs=0.01)


def test_support_counts_in_the_full_tariff_and_in_what_a_person_costs() -> None:
    plain, helped = life_of(people=400.0), life_of(people=400.0, support=340.0)
    assert float(helped.users["tariff_full"] - plain.users["tariff_full"]) == pytest.approx(0.1)
    assert helped.users["tariff_operation"] == pytest.approx(plain.users["tariff_operation"])
    assert float(plain.users["recurrent_cost_per_person"]) == pytest.approx((2600 + 612.5) / 400)
    assert float(helped.users["recurrent_cost_per_person"]) == pytest.approx((2600 + 612.5 + 340) / 400)
    assert float(plain.users["capital_cost_per_person"]) == pytest.approx(42000 / 400)


def test_without_water_people_or_households_there_is_no_figure() -> None:
    users = life_of(delivered_m3=0.0).users
    for name in ("tariff_full", "bill_full", "income_share_full", "recurrent_cost_per_person"):
        assert np.isnan(users[name]), name
    assert np.isnan(life_of().users["bill_full"])


def test_cases_side_by_side_are_each_as_alone() -> None:
    years, interest = 6, np.array([0.0, 0.03])
    one = [life_of(years, {2: 500.0, 5: 900.0}, payers=Payers(fund_interest=float(rate))).users for rate in interest]
    both = life_of(years, {2: 500.0, 5: 900.0}, payers=Payers(fund_interest=interest)).users
    for name in ("renewal_saving", "renewal_fund_empty_year", "renewal_fund_left", "tariff_full", "fund_balance"):
        wanted = np.stack([alone[name] for alone in one])
        assert both[name] == pytest.approx(np.broadcast_to(wanted, both[name].shape)), name
