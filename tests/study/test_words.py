"""Sentences and ranking by values worked by hand: what each option costs and delivers is put in, not simulated."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from planner.study.compare import Study, rank, study_scenario
from planner.study.search import LevelTrial, best_trial
from planner.study.words import money, sentences
from tests.study.scenarios import studied
from tests.study.visits import visit

HERE = Path(".")
PRICES = {"borehole": 6000.0, "pump": 1500.0, "controller": 650.0, "pv_per_kwp": 850.0, "tank_per_m3": 170.0}
Figures = tuple[float, float]
"""Present cost [money] and delivered share [%]."""


@pytest.fixture(scope="module")
def study() -> Study:
    return studied(
        finance__analysis_period_years=1,
        tank__volume_m3=30.0,
        sources__solar__strings=2,
        service__options=["grid", "generator"],
    )


@pytest.fixture(scope="module")
def sunny() -> Study:
    """The sun, the grid and both; the connection to the grid has no price."""
    sources = {"solar": {}, "grid": {"hours": [[5, 20]], "tariff": {"price_per_kwh": 0.2}}}
    return study_scenario(visit(currency="USD", prices=PRICES | {"pipe_per_m": 6.0}, sources=sources), HERE)


def with_figures(study: Study, **figures: Figures) -> Study:
    """The study with other costs and shares; the target is 97 %."""
    options = tuple(
        replace(
            option,
            life=replace(option.life, present_cost=np.array(figures[option.name][0])),
            delivered_share=figures[option.name][1] / 100,
            worst_year_share=figures[option.name][1] / 100,
            meets_service=figures[option.name][1] >= 97,
        )
        for option in study.options
    )
    ranking = rank(options)
    best = ranking[0] if max(share for _, share in figures.values()) >= 97 else None
    return replace(study, options=options, ranking=ranking, best=best)


@pytest.mark.parametrize(
    ("dearer", "close", "percent"),
    [(10_199, True, "2.0"), (10_150, True, "1.5"), (10_200, False, "2.0"), (11_500, False, "15.0")],
)
def test_less_than_two_percent_is_too_close_to_call(study: Study, dearer: float, close: bool, percent: str) -> None:
    said = sentences(with_figures(study, grid=(10_000, 99.0), generator=(dearer, 99.0)))[1]
    assert f"The next best is generator, which costs {money(dearer - 10_000, 'USD')} more" in said
    assert f"({percent} %)" in said
    assert ("too close to call" in said) == close


@pytest.mark.parametrize(
    ("mixed", "says"), [(9_850, "about the same"), (10_150, "about the same"), (9_700, "is worth")]
)
def test_a_top_up_whose_cost_is_too_close_to_call_is_not_said_to_be_worth_having(
    sunny: Study, mixed: float, says: str
) -> None:
    figures = {"solar": (10_000, 98.0), "grid": (20_000, 99.0), "solar + grid": (mixed, 99.0)}
    said = " ".join(sentences(with_figures(sunny, **figures)))
    assert says in said
    assert ("too close to call" in said) == ("worth having" not in said)
    assert f"{money(abs(mixed - 10_000), 'USD')} {'more' if mixed > 10_000 else 'less'} over" in said or "saves" in said


def test_a_lead_that_leaves_out_what_the_next_option_does_not_need_is_said_to_be_open(sunny: Study) -> None:
    figures = {"solar": (11_000, 98.0), "grid": (20_000, 99.0), "solar + grid": (10_000, 99.0)}
    lead = "no price and solar does not need (Connection)"
    assert lead in sentences(with_figures(sunny, **figures))[1]
    assert "no price" not in sentences(with_figures(sunny, **(figures | {"solar": (9_000, 98.0)})))[1]


def test_where_no_day_is_short_none_are_counted() -> None:
    study = study_scenario(visit(sources={"grid": {"hours": [[5, 20]]}}), HERE)
    assert float(study.options[0].outcome.longest_short_days.max()) == 0
    assert sentences(study)[0].endswith("100.0 % over 2 years, with no day short of more than a tenth of its water.")


def test_what_falls_short_says_what_is_missing_not_what_is_delivered(study: Study) -> None:
    said = sentences(with_figures(study, grid=(10_000, 98.0), generator=(9_000, 92.3)))[1]
    assert said == "It is the only option that meets the target; generator falls short by 4.7 percentage points."


def test_the_one_that_serves_comes_before_a_cheaper_one_that_does_not(study: Study) -> None:
    assert with_figures(study, grid=(10_000, 97.0), generator=(9_000, 96.9)).ranking == ("grid", "generator")
    assert with_figures(study, grid=(10_000, 97.0), generator=(9_000, 97.0)).ranking == ("generator", "grid")


def test_of_those_that_miss_the_one_that_delivers_more_is_nearer_and_of_equals_the_cheaper(study: Study) -> None:
    assert with_figures(study, grid=(10_000, 95.0), generator=(9_000, 94.0)).ranking == ("grid", "generator")
    assert with_figures(study, grid=(10_000, 95.0), generator=(9_000, 95.0)).ranking == ("generator", "grid")
    assert with_figures(study, grid=(9_000, 95.0), generator=(10_000, 95.0)).ranking == ("grid", "generator")


def trial(start: float, cost: float, share: float = 99.0) -> LevelTrial:
    return LevelTrial(start, start + 20, share / 100, share >= 97, 0.0, 0.0, cost, cost / 10, cost)


def test_of_settings_that_cost_the_same_the_lower_start_is_taken() -> None:
    settings = [trial(60, 5_000), trial(20, 5_000), trial(40, 5_000), trial(10, 5_001)]
    assert best_trial(settings).start_percent == 20
    assert best_trial(settings[::-1]).start_percent == 20


def test_of_settings_that_miss_the_one_that_delivers_most_and_of_equals_the_cheapest() -> None:
    assert best_trial([trial(10, 4_000, 90), trial(20, 5_000, 95), trial(40, 4_900, 95)]).start_percent == 40
    assert best_trial([trial(10, 4_000, 90), trial(20, 9_000, 97)]).start_percent == 20
