"""What is best without prices, what an answer rests on, and totals that are incomplete."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from planner.money.quantities import Thing
from planner.scenario.errors import InputError
from planner.scenario.scenario import Scenario
from planner.study.cases import Case
from planner.study.compare import Study, study_scenario
from planner.study.context import Context, Prepared
from planner.study.evaluate import evaluate
from planner.study.keys import key_of, numeric_keys
from planner.study.ranking import TANK_KWP_PER_M3, objective
from planner.study.rests_on import ENDS, IRRADIATION, Effect
from planner.study.search import choose_all
from planner.study.sizing import size_scenario
from planner.study.sweep.plan import plans_of
from planner.study.sweep.run import base_of, run_plan
from planner.study.sweep.workers import Serial
from planner.study.uncertainty import uncertainty_of
from planner.study.words import sentences
from planner.study.worth import worth_of
from tests.study.visits import visit

HERE = Path(".")
GRID: dict[str, Any] = {"solar": {}, "grid": {"outages": {"hours_per_day": 9, "mean_duration_h": 3}}}
HARD = {
    "demand": {"users": [{"kind": "people", "count": 900}]},
    "tank": {"sizes": [{"volume_m3": volume} for volume in (30.0, 40.0, 60.0)]},
}
"""So many that one string does not do; no tank holds less than a day, of which the checks would warn."""


@pytest.fixture(scope="module")
def mixed() -> Study:
    return study_scenario(visit(sources=GRID), HERE)


def test_sizes_are_those_that_prices_in_the_stated_proportion_choose() -> None:
    # Array and tank live and are kept up alike, so that costs are in proportion to prices.
    per_kwp = 1000.0
    prices = {"pv_per_kwp": per_kwp, "tank_per_m3": TANK_KWP_PER_M3 * per_kwp}
    plain, priced = (
        study_scenario(visit(**HARD, **more), HERE).options[0] for more in ({}, {"currency": "USD", "prices": prices})
    )
    assert (plain.strings, plain.tank_m3) == (priced.strings, priced.tank_m3)
    assert plain.modules > 7  # more modules weigh less here than the next tank


def test_the_objective_is_the_cost_where_there_are_prices_and_a_weight_where_there_are_none() -> None:
    sizes = {"array_kwp": 2.8, "tank_m3": 10.0, "grid_kwh_per_year": 500.0, "fuel_l_per_year": 50.0}
    # 2.8 + 0.25 x 10 + 0.002 x 500 + 0.02 x 50
    assert objective(visit(), 0.0, **sizes) == pytest.approx(7.3)
    assert objective(visit(currency="USD"), 1234.0, **sizes) == 1234.0


def test_run_and_size_choose_by_the_same_objective() -> None:
    users, tank = [{"kind": "people", "count": 750}], {"sizes": [{"volume_m3": 20.0}, {"volume_m3": 60.0}]}
    found = size_scenario(visit(demand={"users": users}, tank=tank | {"volume_m3": "auto"}), HERE).options[0]
    weights = found.candidates.objective[found.candidates.meets_service]
    assert found.nearest.objective == weights.min() == pytest.approx(found.by_run_cost)
    assert (found.nearest.strings, found.nearest.tank_m3) == (1, 20.0)
    assert weights.max() > weights.min()


def test_options_stand_in_the_order_of_the_scenario_and_those_that_miss_last(mixed: Study) -> None:
    assert mixed.ranking == ("solar", "grid", "solar + grid")
    assert all(option.meets_service for option in mixed.options)
    turned = study_scenario(visit(sources=GRID, service={"options": ["solar + grid", "grid", "solar"]}), HERE)
    assert turned.ranking == ("solar + grid", "grid", "solar")
    weak = GRID | {"grid": {"outages": {"hours_per_day": 23, "mean_duration_h": 12}}}
    short = study_scenario(visit(sources=weak, service={"options": ["grid", "solar"]}), HERE)
    assert short.ranking == ("solar", "grid")
    assert not short.option("grid").meets_service


def test_the_sentences_name_days_without_water_and_no_cost(mixed: Study) -> None:
    said = " ".join(sentences(mixed))
    first = mixed.ranked[0]
    assert f"{first.outcome.short_days.mean():.1f} days a year are short" in said
    assert "So do: grid; solar + grid." in said
    assert "a m3 of tank counts as 0.25 kWp of array" in said
    assert "cost" not in said


def test_where_none_meets_the_target_the_demand_is_held_against_the_flow_of_the_pump() -> None:
    # 3,000 people x 25 L a day are 75 m3 in every month; the borehole was tested at 2.5 m3/h: 30 hours
    many = study_scenario(visit(demand={"users": [{"kind": "people", "count": 3000}]}), HERE)
    assert many.best is None
    said = sentences(many)[1]
    assert "75.0 m3 a day are asked for: 30 hours of pumping at the 2.50 m3/h" in said
    month = many.ranked[0].outcome.month_share.argmin()
    hours = 75 * float(many.ranked[0].outcome.month_share[month]) / 2.5
    assert f"solar gives as much as {hours:.1f} such hours do: more flow" in said
    fewer = sentences(study_scenario(visit(demand={"users": [{"kind": "people", "count": 2000}]}), HERE))
    assert "50.0 m3 a day are asked for: 20.0 hours" in fewer[1]
    assert "such hours do: more hours of power" in fewer[1]


def effects_of(context: Context, scenario: Scenario) -> tuple[Effect, ...]:
    """Effects of the numbers that were not given on the one option of a scenario."""
    chosen = choose_all(context, context.supplies(scenario))
    return uncertainty_of(context, scenario, [choice.result for choice in chosen]).effects


def test_what_matters_most_is_found_by_trying() -> None:
    scenario, context = visit(), Context(HERE)
    choice = choose_all(context, context.supplies(scenario))[0]
    effects = effects_of(context, scenario)
    assert [effect.weight for effect in effects] == sorted((effect.weight for effect in effects), reverse=True)
    by_key = {effect.key: effect for effect in effects}
    # each against a scenario in which the number is given, with the same works
    for key, change in (
        (
            "demand.users[1].litres_per_person_day",
            {"demand": {"users": [{"kind": "people", "count": 400, "litres_per_person_day": 30.0}]}},
        ),
        ("demand.leakage_percent", {"demand": {"users": [{"kind": "people", "count": 400}], "leakage_percent": 20.0}}),
        ("sources.solar.soiling_percent", {"sources": {"solar": {"soiling_percent": 3.6}}}),
    ):
        there = evaluate(Context(HERE), [Case(visit(**change), choice.design)])
        assert by_key[key].demand_met_percent[1] == pytest.approx(100 * there.delivered_share[0], abs=1e-9)
        assert by_key[key].demand_met_percent[1] < 100 * choice.result.outcome.delivered_share
    sun = by_key[IRRADIATION]
    assert sun.demand_met_percent[0] < 100 * choice.result.outcome.delivered_share < sun.demand_met_percent[1]
    assert by_key["demand.leakage_percent"].tried == ENDS["demand.leakage_percent"]


def test_what_is_given_or_chosen_is_not_tried() -> None:
    users = [{"kind": "people", "count": 400, "litres_per_person_day": 25.0}]
    scenario, context = visit(demand={"users": users}), Context(HERE)
    keys = {effect.key for effect in effects_of(context, scenario)}
    assert "demand.growth_percent_per_year" in keys
    for key in ("demand.users[1].litres_per_person_day", "borehole.static_level_m", "sources.solar.modules_in_series"):
        assert key in numeric_keys(scenario)
        assert key not in keys
    assert not any(key.startswith(("tank.", "finance.")) for key in keys)


def test_works_that_cannot_run_with_a_value_are_told_as_no_water(monkeypatch: pytest.MonkeyPatch) -> None:
    scenario, context = visit(), Context(HERE)
    prepared, made = context.prepared, choose_all(context, context.supplies(scenario))

    def without_leaks(case: Case) -> Prepared:
        if case.scenario.demand.leakage_percent > 0:
            raise InputError("", [])
        return prepared(case)

    monkeypatch.setattr(context, "prepared", without_leaks)
    first = uncertainty_of(context, scenario, [made[0].result]).effects[0]
    assert (first.key, first.demand_met_percent[1]) == ("demand.leakage_percent", 0.0)


def test_with_prices_the_cost_of_each_is_told_too() -> None:
    priced: dict[str, Any] = {"currency": "USD", "prices": {"pv_per_kwp": 900, "pump": 800}}
    study = study_scenario(visit(**priced), HERE, with_effects=True)
    effect = next(each for each in study.effects if each.key == "finance.discount_rate_percent")
    for rate, cost in zip(effect.tried, effect.life_cycle_cost, strict=True):
        finance = {"analysis_period_years": 2, "discount_rate_percent": rate}
        there = study_scenario(visit(**priced, finance=finance), HERE).options[0]
        assert cost == pytest.approx(float(there.life.present_cost))
    assert effect.tried == pytest.approx((4.8, 7.2))


def test_with_some_prices_the_total_is_called_incomplete() -> None:
    prices = {"pv_per_kwp": 900, "tank_per_m3": 180, "pipe_per_m": 4, "pump": 800, "controller": 300}
    finance = {"analysis_period_years": 2, "discount_rate_percent": 5.0}
    study = study_scenario(visit(currency="USD", prices=prices, finance=finance), HERE)
    said = " ".join(sentences(study))
    assert study.ranked[0].unpriced == (Thing("borehole"),)
    assert "Its total is incomplete, as no price was entered for: Borehole" in said
    whole = study_scenario(visit(currency="USD", prices=prices | {"borehole": 0}, finance=finance), HERE)
    assert whole.ranked[0].unpriced == ()
    assert "incomplete" not in " ".join(sentences(whole))


def test_worth_says_which_prices_it_needs() -> None:
    with pytest.raises(InputError, match=r"prices of: Borehole, Pump, .*Energy from the grid"):
        worth_of(visit(sources=GRID), "grid", HERE)


def test_a_sweep_without_prices_varies_nothing_of_money_and_refuses_to() -> None:
    (plan,) = plans_of(visit())
    assert "finance.discount_rate_percent" not in {key.text for key in plan.keys}
    step = {"key": "finance.discount_rate_percent", "change_percent": 10.0}
    with pytest.raises(InputError, match="changes costs alone"):
        plans_of(visit(sweep={"one_at_a_time": [step]}))


def test_a_run_of_pipe_that_was_worked_out_can_be_swept() -> None:
    key = "pipeline.segments[2].length_m"
    scenario = visit(sweep={"one_at_a_time": [{"key": key, "low": 400.0, "high": 2000.0}]})
    assert key_of(scenario, key, "").base == 430.0
    results = run_plan(base_of(scenario, HERE), plans_of(scenario)[0], Serial())
    assert not results.problems
    near, far = results.measure("delivered_share")[1:, 0]
    assert near > far
