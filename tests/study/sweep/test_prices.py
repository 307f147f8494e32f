"""Costs as straight lines of prices, against the whole life-cycle arithmetic."""

from __future__ import annotations

import numpy as np
import pytest

from planner.study.keys import numeric_keys
from planner.study.sweep.engine import MEASURES, PRICED
from planner.study.sweep.plan import Plan, cut
from planner.study.sweep.prices import PriceLine, price_line
from planner.study.sweep.run import base_of, run_plan
from planner.study.sweep.workers import Serial
from tests.study.sweep.cases import EXAMPLES, school
from tests.study.visits import visit


def test_every_price_of_a_scenario_together_makes_a_straight_line() -> None:
    finance = {"prices": "nominal", "inflation_percent": 4.0, "grant_percent": 20, "loan_percent": 40, "loan_years": 2}
    scenario = school(finance=finance | {"loan_rate_percent": 9.0, "water_price_per_m3": 0.4})
    keys = tuple(
        key
        for key in numeric_keys(scenario).values()
        if key.is_price and key.base is not None and key.text != "tank.price"
    )
    assert len(keys) > 20
    random = np.random.default_rng(4)
    base = np.array([key.base for key in keys])
    values = (base + 1) * random.uniform(0.2, 3.0, (12, len(keys)))
    begun = base_of(scenario, EXAMPLES)
    few = Plan("random", keys, values)
    many = Plan("random", keys, np.vstack([values, (base + 1) * random.uniform(0.2, 3.0, (400, len(keys)))]))
    assert not cut(few, option_years=8, redesign=False).by_line
    assert cut(many, option_years=8, redesign=False).by_line
    exact = run_plan(begun, few, Serial()).numbers
    line = run_plan(begun, many, Serial()).numbers
    assert np.isfinite(exact[:, :, : len(PRICED)]).all()
    assert line[:12] == pytest.approx(exact, rel=1e-9, nan_ok=True)
    cost = exact[:, :, MEASURES.index("present_cost")]
    assert (np.ptp(cost, axis=0) > 0.1 * cost.mean(axis=0)).all()


def test_a_line_is_found_whatever_the_prices_it_is_looked_at() -> None:
    slope = np.array([[1.0, -2.0], [0.5, 3.0], [7.0, 0.0]])

    def priced(prices: np.ndarray) -> np.ndarray:
        return np.array([10.0, 20.0]) + prices @ slope

    line = price_line(priced, np.array([1.0, 2.0, 4.0]), np.array([3.0, 2.5, 4.0]))
    prices = np.array([[2.0, 9.0, 4.0], [0.0, 0.0, 4.0]])
    assert line.at(prices) == pytest.approx(np.array([priced(row) for row in prices]))


def test_a_line_gives_each_case_the_same_to_the_last_bit_wherever_it_is_cut_at_a_tile() -> None:
    random = np.random.default_rng(1)
    line = PriceLine(random.normal(size=40), random.normal(size=(9, 40)))
    prices = random.normal(size=(20_000, 9))
    tile = 200_000 // line.slope.size
    whole = line.at(prices)
    assert np.array_equal(whole[5 * tile :], line.at(prices[5 * tile :]))
    assert whole == pytest.approx(prices @ line.slope + line.constant)


@pytest.mark.parametrize(("cases", "by_line"), [pytest.param(2, False, marks=pytest.mark.slow), (400, True)])
def test_each_option_is_priced_with_the_modules_in_series_that_were_chosen_for_it(cases: int, by_line: bool) -> None:
    prices = {"borehole": 6000.0, "pv_per_kwp": 850.0, "tank_per_m3": 170.0, "grid_per_kwh": 0.2}
    scenario = visit(currency="USD", prices=prices, sources={"solar": {}, "grid": {"hours": [[5, 20]]}})
    base, key = base_of(scenario, EXAMPLES), numeric_keys(scenario)["borehole.price"]
    assert len({design.series for design in base.designs if design.strings}) == 2
    plan = Plan("random", (key,), np.linspace(6000.0, 7000.0, cases)[:, None])
    assert cut(plan, option_years=6, redesign=False).by_line == by_line
    swept = run_plan(base, plan, Serial()).measure("present_cost")[0]
    assert swept == pytest.approx(base.numbers[:, MEASURES.index("present_cost")], rel=1e-9)
