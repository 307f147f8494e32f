"""The evaluator: nothing depends on the width of its passes, and what is alike is run once."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest

from planner.assumptions.reader import check_scenario
from planner.scenario.errors import InputError
from planner.scenario.operands import with_arrays
from planner.scenario.scenario import Scenario
from planner.study import evaluate as evaluator
from planner.study.cases import Case, supplies_of
from planner.study.context import Context
from planner.study.evaluate import evaluate
from planner.study.keys import COUNTED, numeric_keys
from planner.study.results import Results, money_of
from planner.study.sweep.engine import PRICED
from planner.supply.run import Outcome
from tests.study.scenarios import EXAMPLES, changed
from tests.study.test_changes import SCENARIOS

SHORT: dict[str, Any] = {"finance__analysis_period_years": 2}


def cases_of(*scenarios: Scenario, tanks: tuple[float, ...] = (15.0, 40.0), strings: int = 2) -> list[Case]:
    """Every option of some scenarios with some tanks and two settings of the float switch."""
    return [
        supply.case(strings if "solar" in supply.sources else 0, tank, levels)
        for scenario in scenarios
        for supply in supplies_of(scenario)
        for tank in tanks
        for levels in ((20.0, 40.0), (30.0, 60.0))
    ]


def same(one: Results, other: Results, rtol: float) -> None:
    for name in ("demand_m3", "delivered_m3", "solar_kwh", "grid_kwh", "fuel_l", "longest_short_days", "level_end_m3"):
        np.testing.assert_allclose(getattr(one.outcome, name), getattr(other.outcome, name), rtol=rtol, atol=1e-12)
    for name, values in one.money.items():
        np.testing.assert_allclose(values, other.money[name], rtol=rtol, atol=1e-9)
    assert np.array_equal(one.meets_service, other.meets_service)


@pytest.mark.parametrize("columns", [pytest.param(1, marks=pytest.mark.slow), 7])
def test_results_do_not_depend_on_the_width_of_the_passes(columns: int, monkeypatch: pytest.MonkeyPatch) -> None:
    widths: list[int] = []
    true = evaluator.run_options

    def counted(options: Any, **more: Any) -> list[Outcome]:
        widths.append(len(options))
        return true(options, **more)

    some = SHORT | {"service__options": ["solar", "grid + generator", "solar + grid + generator"]}
    cases = cases_of(changed(**some), changed(**some, demand__growth_percent_per_year=3))
    wide = evaluate(Context(EXAMPLES), cases)
    monkeypatch.setattr(evaluator, "run_options", counted)
    narrow = evaluate(Context(EXAMPLES), cases, columns_at_once=columns, cells_at_once=40)
    assert max(widths) == max(columns // 2, 1)
    same(wide, narrow, 1e-12)


def run_columns(monkeypatch: pytest.MonkeyPatch) -> list[int]:
    """Columns times variants of each pass to come, spin-up left out."""
    found: list[int] = []
    true = evaluator.run_options

    def counted(options: Any, **more: Any) -> list[Outcome]:
        found.append(sum(option.tank_m3.size * option.draw_m3.shape[1] for option in options))
        return true(options, **more)

    monkeypatch.setattr(evaluator, "run_options", counted)
    return found


def test_what_the_hour_loop_cannot_tell_apart_is_run_once(monkeypatch: pytest.MonkeyPatch) -> None:
    scenario = changed(**SHORT, service__options=["solar", "solar + generator"])
    dearer = changed(**SHORT, service__options=["solar", "solar + generator"], pump__price=9000.0)
    ran = run_columns(monkeypatch)
    found = evaluate(Context(EXAMPLES), cases_of(scenario, dearer, tanks=(15.0,)))
    # of the sun alone one case, as levels are nothing to it; of the mixed option two; a price changes no hour
    assert sum(ran) <= (1 + 2 + 1) * 2
    assert found.delivered_share[0] == found.delivered_share[1] == found.delivered_share[4]
    assert found.present_cost[0] < found.present_cost[4]


def test_hours_once_known_are_not_run_again(monkeypatch: pytest.MonkeyPatch) -> None:
    context, ran = Context(EXAMPLES), run_columns(monkeypatch)
    before = evaluate(context, cases_of(changed(**SHORT)))
    runs = len(ran)
    after = evaluate(context, cases_of(changed(**SHORT, finance__discount_rate_percent=9.0)))
    assert len(ran) == runs
    assert np.array_equal(before.delivered_share, after.delivered_share)
    assert (before.present_cost != after.present_cost).all()
    evaluate(context, cases_of(changed(**SHORT, demand__growth_percent_per_year=3)))
    assert len(ran) > runs


def test_one_case_taken_out_is_the_case_evaluated_alone() -> None:
    cases = cases_of(changed(**SHORT))
    found = evaluate(Context(EXAMPLES), cases)
    for place in (0, len(cases) - 1):
        alone, taken = evaluate(Context(EXAMPLES), [cases[place]]).at(0), found.at(place)
        assert taken.case is cases[place]
        assert taken.meets_service == alone.meets_service
        assert taken.outcome.delivered_m3 == pytest.approx(alone.outcome.delivered_m3, rel=1e-12)
        assert float(taken.life.present_cost) == pytest.approx(float(found.present_cost[place]), rel=1e-12)
        assert float(taken.life.present_cost) == pytest.approx(float(alone.life.present_cost), rel=1e-12)


def test_lives_that_differ_are_not_evaluated_together() -> None:
    with pytest.raises(ValueError, match="same life"):
        evaluate(Context(EXAMPLES), cases_of(changed(**SHORT), changed(finance__analysis_period_years=3)))


def test_a_case_that_cannot_work_is_refused() -> None:
    with pytest.raises(InputError, match="cannot lift"):
        evaluate(Context(EXAMPLES), cases_of(changed(**SHORT, pipeline__rise_to_tank_inlet_m=400)))


@pytest.mark.parametrize(
    "name",
    [pytest.param(name, marks=[] if name == "every table" else [pytest.mark.slow]) for name in SCENARIOS],
)
def test_of_the_keys_that_touch_the_hours_the_bill_counts_no_more_than_those_listed(name: str) -> None:
    """Variants of a sweep that differ in other keys are priced in one go, by the scenario of the first of them."""
    scenario = check_scenario(SCENARIOS[name]() | {"overrides": {}}, "test")
    cases = cases_of(scenario, tanks=(20.0,))
    before, counted = evaluate(Context(EXAMPLES), cases), set()
    for key in numeric_keys(scenario).values():
        if not key.touches_hours or key.base is None or key.is_size or key.text == "finance.analysis_period_years":
            continue
        there = with_arrays(scenario, {key.path: 1.3 * key.base + 1})
        money = money_of([Case(there, case.design) for case in cases], before.quantities)
        if any(not np.array_equal(money[name], before.money[name], equal_nan=True) for name in PRICED):
            counted.add(".".join(part for part in key.path if isinstance(part, str)))
    assert counted <= set(COUNTED)
    assert {"pipeline.segments.length_m", "pump.life_years"} <= counted


def test_beside_options_of_other_sources_each_keeps_its_own() -> None:
    # The tariff has two bands and what they leave, the generator one; the passes hold all options.
    bands = [
        {"name": "night", "hours": [[22, 6]], "price_per_kwh": 0.1},
        {"name": "day", "hours": [[6, 22]], "price_per_kwh": 0.3},
    ]
    options = ["solar", "generator", "solar + grid", "solar + grid + generator"]
    scenario = changed(**SHORT, sources__grid__tariff__bands=bands, service__options=options)
    cases = cases_of(scenario, tanks=(15.0,))[::2]
    together = evaluate(Context(EXAMPLES), cases)
    assert {len(case.design.sources) for case in cases} == {1, 2, 3}
    for place, case in enumerate(cases):
        beside, alone = together.at(place), evaluate(Context(EXAMPLES), [case]).at(0)
        own = [source for source in case.design.sources if source != "solar"]
        assert list(beside.outcome.top_ups) == list(beside.quantities.top_ups) == own
        assert beside.outcome.grid_kwh.shape == alone.outcome.grid_kwh.shape == (2, 12, 3)
        for name in own:
            there, here = beside.outcome.top_ups[name], alone.outcome.top_ups[name]
            assert there.kwh.shape[-1] == (3 if name == "grid" else 1)
            np.testing.assert_allclose(there.kwh, here.kwh, rtol=1e-12)
        assert float(beside.life.present_cost) == pytest.approx(float(alone.life.present_cost), rel=1e-12)
