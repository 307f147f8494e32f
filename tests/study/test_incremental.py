"""Incremental cost of water: dominance and the frontier against an example worked by hand."""

from __future__ import annotations

import numpy as np
import pytest

from planner.study.incremental import increments, worth_between

# Life-cycle cost and m3 served, discounted alike; figures invented, the steps (sort by effect, strike dominated and
# extended dominated options, read the remaining ratios) as in Tan-Torres Edejer et al. (eds), Making choices in health:
# WHO guide to cost-effectiveness analysis, 2003. Worked by hand.
NAMES = ["small solar", "generator", "mid solar", "large solar", "solar + generator", "solar + grid + generator"]
COST = [48_000.0, 61_000.0, 56_000.0, 57_000.0, 59_500.0, 75_000.0]
WATER = [43_500.0, 46_000.0, 46_500.0, 49_200.0, 49_900.0, 50_000.0]


def test_worked_example() -> None:
    by_name = dict(zip(NAMES, increments(COST, WATER), strict=True))
    assert by_name["generator"].standing == "dominated"
    assert by_name["generator"].against == NAMES.index("mid solar")  # cheaper, and serves more
    assert by_name["mid solar"].standing == "extended"
    assert by_name["mid solar"].per_unit == pytest.approx(2.67, abs=0.005)  # 8,000 / 3,000
    frontier = [name for name in NAMES if by_name[name].standing == "frontier"]
    assert frontier == ["small solar", "large solar", "solar + generator", "solar + grid + generator"]
    assert np.isnan(by_name["small solar"].per_unit)
    assert [by_name[name].per_unit for name in frontier[1:]] == pytest.approx([1.58, 3.57, 155.0], abs=0.005)
    assert [by_name[name].against for name in frontier] == [None, 0, 3, 4]


@pytest.mark.parametrize("order", [[5, 4, 3, 2, 1, 0], [2, 0, 5, 1, 4, 3]])
def test_order_is_nothing_to_it(order: list[int]) -> None:
    plain = increments(COST, WATER)
    mixed = increments([COST[place] for place in order], [WATER[place] for place in order])
    for at, place in enumerate(order):
        assert mixed[at].standing == plain[place].standing
        assert mixed[at].per_unit == pytest.approx(plain[place].per_unit, nan_ok=True)


def test_of_equals_the_first_is_kept() -> None:
    assert [each.standing for each in increments([5.0, 5.0, 4.0], [2.0, 2.0, 1.0])] == [
        "frontier", "dominated", "frontier",
    ]  # fmt: skip


def test_value_between_which_an_option_is_best() -> None:
    low, high = worth_between(COST, WATER, NAMES.index("solar + generator"))
    assert (low, high) == pytest.approx((2_500 / 700, 15_500 / 100))
    # The least of cost and value of what is not served agrees, on a fine row of values.
    values = np.array([0.99 * low, 1.01 * low, 0.99 * high, 1.01 * high])
    sums = np.array(COST) - values[:, None] * np.array(WATER)
    assert [NAMES[place] for place in sums.argmin(axis=1)] == [
        "large solar", "solar + generator", "solar + generator", "solar + grid + generator",
    ]  # fmt: skip


def test_what_is_dominated_is_best_at_no_value() -> None:
    for name in ("generator", "mid solar"):
        low, high = worth_between(COST, WATER, NAMES.index(name))
        assert low > high
    low, high = worth_between(COST, WATER, 0)
    assert low == 0.0
    assert high == pytest.approx(9_000 / 5_700)
