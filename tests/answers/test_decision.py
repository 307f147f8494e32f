"""What a study decides: the verdict never says more than its conditions allow.

Places, people and prices are invented.
"""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from types import SimpleNamespace
from typing import Any

import pytest

from planner.answers import decision as module
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


def of_values(monkeypatch: pytest.MonkeyPatch, **values: float) -> Any:
    """A study of one option, of which so many figures are known."""
    monkeypatch.setattr(module, "_value", lambda key, option: values[key])
    scenario = SimpleNamespace(currency="XYZ", priced=True, finance=SimpleNamespace(analysis_period_years=20))
    option = SimpleNamespace(name="sun", unpriced=())
    return SimpleNamespace(ranked=[option], options=[option], scenario=scenario, best="sun")


def test_what_the_owner_pays_of_the_cost_is_said_where_a_grant_or_loan_pays_a_part(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    figures = {"capital_cost": 40_000.0, "own_funds": 8_000.0, "capital_cost_per_person": 100.0}
    helped = module._to_build(of_values(monkeypatch, **figures))
    assert "8,000" in helped.note
    alone = module._to_build(of_values(monkeypatch, **(figures | {"own_funds": 40_000.0})))
    assert "100" in alone.note
    assert "40,000" not in alone.note


def test_days_month_and_longest_run_are_each_in_their_place(monkeypatch: pytest.MonkeyPatch) -> None:
    # The catalogue's keys of days, by name.
    figures = {key: float("nan") for key in module.DAYS} | {
        "short_days_per_year": 7.0, "longest_short_days": 4.0, "worst_month": 8.0,
    }  # fmt: skip
    large = module._short_days(of_values(monkeypatch, **figures))
    assert large.value == 7.0
    assert "August" in large.note
    assert "4" in large.note


def test_shares_of_a_middle_and_a_lowest_income_are_not_mixed_up(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(module, "users_sentence", lambda study: "")
    shares = {"income_share_operation_and_renewals": 3.0, "lowest_income_share_operation_and_renewals": 5.0}
    (sentence,) = module._pay(of_values(monkeypatch, **shares))
    assert sentence.index("3") < sentence.index("5")


def test_a_price_keeps_two_decimals_and_money_none() -> None:
    study, verdicts = priced()
    row = decision(study, verdicts).options.rows[0]
    assert row.texts["capital_cost"] == f"{row.values['capital_cost']:,.0f}"
    assert row.texts["tariff_operation_and_renewals"] == f"{row.values['tariff_operation_and_renewals']:,.2f}"


def test_energy_that_no_option_takes_gives_way_to_the_share_of_water(monkeypatch: pytest.MonkeyPatch) -> None:
    values = dict.fromkeys(module.TECHNICAL_COLUMNS, 1.0)
    assert module._technical_columns(of_values(monkeypatch, **values)) == module.TECHNICAL_COLUMNS
    assert module._technical_columns(of_values(monkeypatch, **(values | {"fuel_l_per_year": 0.0}))) == (
        "meets_target", "demand_met_percent", "short_days_per_year", "longest_short_days", "array_kwp", "tank_m3",
        "grid_kwh_per_year",
    )  # fmt: skip
