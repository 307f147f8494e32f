"""The worst year in ten, by hand."""

from __future__ import annotations

import numpy as np
import pytest

from planner.figures import figure
from planner.supply.worst_year import worst_year_in_ten
from tests.study.scenarios import studied


def test_nine_years_in_ten_reach_the_worst_year_in_ten() -> None:
    shares = np.linspace(0.5, 1, 101)
    worst = worst_year_in_ten(shares)
    assert worst == pytest.approx(0.55)
    assert (shares >= worst - 1e-12).mean() >= 0.9


def test_of_twenty_years_it_lies_between_the_second_and_the_third_worst() -> None:
    shares = np.array([0.99, 0.80, 0.95, 0.90, *[1.0] * 16])
    assert worst_year_in_ten(shares) == pytest.approx(0.90 + 0.9 * (0.95 - 0.90))
    days = np.array([3.0, 40.0, 10.0, 20.0, *[0.0] * 16])
    assert worst_year_in_ten(days, worst="high") == pytest.approx(20 - 0.9 * (20 - 10))


def test_cases_keep_their_axis_and_one_year_is_itself() -> None:
    shares = np.array([[0.9, 1.0], [0.5, 0.7]])
    assert worst_year_in_ten(shares) == pytest.approx([0.91, 0.52])
    assert worst_year_in_ten([0.4]) == pytest.approx(0.4)
    assert worst_year_in_ten([0.4], worst="high") == pytest.approx(0.4)


def test_the_figures_are_those_of_the_years() -> None:
    # many users and one string, so that years differ and none is full
    study = studied(finance__analysis_period_years=11, sources__solar__strings=1, demand__growth_percent_per_year=3.0)
    option = study.option("solar")
    met, days, litres = (
        float(figure(f"{key}").read(option))
        for key in (
            "demand_met_worst_year_in_ten_percent",
            "short_days_worst_year_in_ten",
            "missing_l_per_day_worst_year_in_ten",
        )
    )
    # of eleven years in order the 10th percentile is the second
    demand, delivered = (
        sorted_years.sum(axis=-1) for sorted_years in (option.outcome.demand_m3, option.outcome.delivered_m3)
    )
    assert met == pytest.approx(100 * np.sort(delivered / demand)[1])
    assert days == pytest.approx(np.sort(option.outcome.short_days)[-2])
    assert litres == pytest.approx(np.sort(demand - delivered)[-2] * 1000 / 365)
    assert met < 100
    assert float(figure("demand_met_worst_year_percent").read(option)) <= met <= 100
