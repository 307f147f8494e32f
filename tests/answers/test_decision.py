"""What a study decides: the verdict never says more than its conditions allow.

Places, people and prices are invented.
"""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import pytest

from planner.answers.decision import Decision, decision
from planner.answers.of_study import failed_of_first, study_verdicts
from planner.assumptions.reader import check_scenario, read_scenario
from planner.checks.verdict import Verdict
from planner.study.compare import Study, study_scenario
from tests.study.scenarios import EXAMPLES, studied
from tests.study.visits import visit


@cache
def priced() -> tuple[Study, tuple[Verdict, ...]]:
    options = ["grid", "solar + grid", "solar + generator"]
    homes = {"size": 6.0, "income_per_month": 90.0}
    study = studied(finance__analysis_period_years=2, households=homes, service__options=options)
    return study, study_verdicts(study)


@cache
def technical() -> tuple[Study, tuple[Verdict, ...]]:
    study = study_scenario(visit(finance={"analysis_period_years": 2}), EXAMPLES)
    return study, study_verdicts(study)


def passing(verdicts: tuple[Verdict, ...]) -> tuple[Verdict, ...]:
    return tuple(replace(verdict, outcome="pass") for verdict in verdicts)


def failing(verdicts: tuple[Verdict, ...]) -> tuple[Verdict, ...]:
    """The same with one that fails, of the borehole, which every option shares."""
    place = next(place for place, verdict in enumerate(verdicts) if verdict.topic == "borehole")
    return (*verdicts[:place], replace(verdicts[place], outcome="fail"), *verdicts[place + 1 :])


def test_a_study_without_faults_recommends_without_conditions() -> None:
    example = read_scenario(EXAMPLES / "hill-school.toml").given("json")
    example["finance"]["analysis_period_years"] = 2
    study = study_scenario(check_scenario(example, "test"), EXAMPLES)
    found = decision(study, passing(study_verdicts(study)))
    assert study.scenario.weather.kind == "monthly"
    assert found.conditions == ()
    assert found.verdict.startswith(f"Recommended: {study.best}, ")


def test_a_failed_check_is_a_condition_and_takes_the_recommendation_back() -> None:
    study, verdicts = priced()
    verdicts = failing(passing(verdicts))
    assert failed_of_first(study, verdicts)
    found = decision(study, verdicts, ["With the remedies it costs 10 more."])
    assert found.verdict.startswith(f"Not yet to be built: {study.best} ")
    assert found.conditions[0].startswith("Not to be built as it is: one site check fails")
    assert found.conditions[1] == "With the remedies it costs 10 more."


def test_estimated_weather_and_missing_prices_are_conditions() -> None:
    study = studied(
        finance__analysis_period_years=1, weather={"kind": "estimate"}, borehole__price=None, service__options=["solar"]
    )
    found = decision(study, passing(study_verdicts(study)))
    assert found.verdict.startswith("Recommended on the conditions below: ")
    assert any("estimate" in sentence for sentence in found.conditions)
    assert any("Borehole" in sentence for sentence in found.conditions)
    assert [large.label for large in found.large[:2]] == ["To build it, at least", "Users must pay, at least"]
    assert "Borehole" in found.pay[0]


def test_three_large_numbers_are_those_of_the_option_ranked_first() -> None:
    study, verdicts = priced()
    found, first = decision(study, verdicts), study.ranked[0]
    assert [large.key for large in found.large] == [
        "capital_cost", "tariff_operation_and_renewals", "short_days_per_year",
    ]  # fmt: skip
    assert found.large[0].value == pytest.approx(float(first.life.capital_cost))
    assert found.large[0].value_text == f"{study.scenario.currency} {float(first.life.capital_cost):,.0f}"
    assert found.large[2].value == pytest.approx(float(first.outcome.short_days.mean()))
    assert "of a middle household's income" in found.pay[-1]


def test_options_have_at_most_eight_columns_and_stand_best_first() -> None:
    for study, verdicts in (priced(), technical()):
        found: Decision = decision(study, verdicts)
        assert len(found.options.headings) <= 8
        assert [row.name for row in found.options.rows] == list(study.ranking)
        for row in found.options.rows:
            assert row.texts.keys() == found.options.headings.keys()
            assert row.best == (row.name == study.best)


def test_without_prices_no_money_is_spoken_of() -> None:
    study, verdicts = technical()
    found = decision(study, verdicts)
    assert found.pay == ()
    assert [large.key for large in found.large] == ["water", "short_days_per_year", "array_and_tank"]
    assert "least cost" not in found.verdict
    first = study.ranked[0]
    assert found.large[0].value == pytest.approx(float(first.quantities.delivered_m3.mean()) / 365)


def test_who_and_when_are_said_or_said_to_be_missing() -> None:
    study, verdicts = priced()
    assert decision(study, verdicts).who[0].startswith("Not said: who prepared it")
    told = replace(study, scenario=study.scenario.model_copy(update={"prepared_by": "An invented author"}))
    assert "Prepared by: An invented author." in decision(told, verdicts).who[0]
