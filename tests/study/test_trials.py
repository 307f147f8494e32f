"""Works tried in changed scenarios, against the same works run and priced by themselves."""

from __future__ import annotations

from functools import cache

import numpy as np
import pytest

from planner.scenario.finance import Service
from planner.scenario.operands import with_arrays
from planner.scenario.scenario import Scenario
from planner.study import trials, uncertainty
from planner.study.cases import Case
from planner.study.changes import Changes
from planner.study.context import Context
from planner.study.evaluate import evaluate
from planner.study.keys import numeric_keys
from planner.study.results import Result
from planner.study.search import choose_all
from planner.study.trials import Trial, Tried, try_all, years_run
from planner.study.varied import Varied
from tests.study.scenarios import EXAMPLES, changed

YEARS = 9
CHANGES = (("demand.leakage_percent", 20.0), ("borehole.static_level_m", 35.0), ("demand.users[1].count", 700.0))


@cache
def chosen(years: int = YEARS) -> tuple[Scenario, Context, dict[str, Result]]:
    scenario = changed(
        finance__analysis_period_years=years,
        sources__solar__strings=2,
        tank__volume_m3=20.0,
        topup__start_level_percent=20.0,
        topup__stop_level_percent=40.0,
        service__options=["solar", "generator", "solar + grid"],
    )
    context = Context(EXAMPLES)
    results = [choice.result for choice in choose_all(context, context.supplies(scenario))]
    return scenario, context, {result.case.design.name: result for result in results}


def test_a_trial_that_changes_nothing_gives_what_was_found() -> None:
    _, context, found = chosen()
    same = [Trial(name, with_arrays(result.case.scenario, {}), {}) for name, result in found.items()]
    tried = try_all(context, found, [*same, *(Trial(name, None, {}) for name in found)])
    for place, result in enumerate(found.values()):
        for at in (place, place + len(found)):
            assert tried.delivered_share[at] == pytest.approx(float(result.outcome.delivered_share), abs=1e-12)
            assert tried.present_cost[at] == pytest.approx(float(result.life.present_cost), rel=1e-12)
            assert tried.longest_short_days[at] == result.outcome.longest_short_days.max()
            assert tried.meets_service[at] == result.meets_service


@pytest.mark.parametrize("key", ["pump.maintenance_percent_per_year", "finance.discount_rate_percent", "pump.price"])
def test_numbers_of_money_priced_together_cost_what_they_cost_alone(key: str) -> None:
    scenario, context, found = chosen()
    changes, keys = Changes(scenario), numeric_keys(scenario)
    values = [0.5 * (keys[key].base or 0), 2 * (keys[key].base or 0)]
    asked = [changes.trial(name, keys[key], value) for value in values for name in found]
    tried = try_all(context, found, [trial for trial in asked if trial is not None])
    assert len(tried.present_cost) == len(asked)
    cases = [
        Case(with_arrays(result.case.scenario, {keys[key].path: value}), result.case.design)
        for value in values
        for result in found.values()
    ]
    assert tried.present_cost == pytest.approx(evaluate(context, cases).present_cost, rel=1e-12)


def test_years_that_are_run_reach_from_the_first_to_the_last() -> None:
    assert years_run(20).tolist() == [0, 5, 10, 14, 19]
    assert years_run(3).tolist() == [0, 1, 2]
    assert years_run(1).tolist() == [0]


def test_every_year_of_a_short_life_is_run_so_that_nothing_is_carried_over() -> None:
    scenario, context, found = chosen(3)
    key = numeric_keys(scenario)["demand.leakage_percent"]
    asked = [Changes(scenario).trial(name, key, 20.0) for name in found]
    tried = try_all(context, found, [trial for trial in asked if trial is not None])
    cases = [Case(trial.scenario, found[trial.option].case.design) for trial in asked if trial and trial.scenario]
    there = evaluate(Context(EXAMPLES), cases)
    assert tried.delivered_share == pytest.approx(there.delivered_share, abs=1e-12)
    assert tried.present_cost == pytest.approx(there.present_cost, rel=1e-12)


def test_what_is_carried_over_to_other_years_is_near_to_what_they_do(monkeypatch: pytest.MonkeyPatch) -> None:
    scenario, context, found = chosen()
    keys, changes = numeric_keys(scenario), Changes(scenario)
    asked = [
        trial
        for key, value in (
            ("demand.leakage_percent", 20.0),
            ("borehole.static_level_m", 35.0),
            ("demand.users[1].count", 700),
        )
        for name in found
        if (trial := changes.trial(name, keys[key], value)) is not None
    ]
    near = try_all(context, found, asked)
    monkeypatch.setattr(trials, "YEARS_RUN", YEARS)
    exact = try_all(context, found, asked)
    moved = np.abs(exact.delivered_share - [float(found[trial.option].outcome.delivered_share) for trial in asked])
    assert moved.max() > 0.01
    assert near.delivered_share == pytest.approx(exact.delivered_share, abs=0.002)
    assert near.present_cost == pytest.approx(exact.present_cost, rel=0.005)
    assert not np.array_equal(near.delivered_share, exact.delivered_share)


def test_what_becomes_less_does_so_in_proportion_and_what_becomes_more_by_as_much() -> None:
    # three years of which the first and the last are run
    known = np.array([[4.0, 10.0, 8.0]])
    base, weights = np.array([[4.0, 8.0]]), np.array([[1, 0], [0.5, 0.5], [0, 1.0]])
    less = trials._carried_over(known, base, np.array([[2.0, 4.0]]), weights)
    assert less == pytest.approx(np.array([[2.0, 5.0, 4.0]]))
    more = trials._carried_over(known, base, np.array([[5.0, 11.0]]), weights)
    assert more == pytest.approx(np.array([[5.0, 12.0, 11.0]]))
    nothing = trials._carried_over(np.zeros((1, 3)), np.zeros((1, 2)), np.array([[0.0, 2.0]]), weights)
    assert nothing == pytest.approx(np.array([[0.0, 1.0, 2.0]]))


@pytest.mark.parametrize(
    ("share", "worst", "days", "left"),
    [
        (0.95, 0.82, 2.0, 2.0),  # 5 % of the share, 2 % of the worst year, 3 days
        (0.95, 0.90, 4.0, 1.0),  # 1 day
        (0.91, 0.90, 2.0, 1.0),  # 1 % of the share
        (0.95, 0.90, 9.0, -4.0),  # 4 days too many
        (0.95, 0.75, 2.0, -5.0),  # 5 % too little in the worst year
    ],
)
def test_the_margin_is_the_least_of_what_is_left_to_the_parts_of_the_target(
    share: float, worst: float, days: float, left: float
) -> None:
    service = Service(demand_met_percent=90.0, demand_met_worst_year_percent=80.0, longest_short_days=5)
    tried = Tried(service, np.array([True]), *(np.array([value]) for value in (share, worst, days, 1.0)))
    assert tried.margin[0] == pytest.approx(left)
    assert tried.meets_service[0] == (left >= 0)


def test_what_cannot_run_gives_no_water_and_has_no_cost(monkeypatch: pytest.MonkeyPatch) -> None:
    _, context, found = chosen()
    monkeypatch.setattr(trials, "_can_run", lambda *_: False)
    name, result = next(iter(found.items()))
    tried = try_all(context, found, [Trial(name, result.case.scenario, {}), Trial(name, None, {})])
    assert tried.runs.tolist() == [False, True]
    assert (tried.delivered_share[0], tried.worst_year_share[0], tried.longest_short_days[0]) == (0.0, 0.0, np.inf)
    assert np.isnan(tried.present_cost[0])
    assert tried.delivered_share[1] > 0
    assert np.isfinite(tried.present_cost[1])
    assert not tried.meets_service[0]


def test_a_share_of_the_estimated_irradiation_is_a_factor_on_it(monkeypatch: pytest.MonkeyPatch) -> None:
    scenario, context, found = chosen()
    factors: list[float] = []
    monkeypatch.setattr(uncertainty, "irradiation_trial", lambda *given: factors.append(given[-1]))
    varied = Varied("irradiation", "weather", "%", 100.0, (80.0, 100.0), (), "hours", is_factor=True, is_share=True)
    uncertainty._Asked(context, scenario, list(found.values()))._trial(varied, next(iter(found)), 80.0)
    assert factors == [0.8]
