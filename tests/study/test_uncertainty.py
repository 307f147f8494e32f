"""How sure an answer is: each value against the comparison worked out again with that value."""

from __future__ import annotations

from functools import cache
from types import SimpleNamespace
from typing import Any

import numpy as np
import pytest

from planner.answers.uncertainty import uncertainty_sentences
from planner.report.document import Table, Text
from planner.report.pages.rests_on import IN_WORKBOOK, SWITCHING, uncertainty_blocks
from planner.report.uncertainty_json import uncertainty_data
from planner.study import uncertainty
from planner.study.close_call import CLOSE_PERCENT, close_call, close_call_sentence
from planner.study.compare import Study, study_scenario
from planner.study.sweep.plan import plans_of
from planner.study.sweep.run import base_of, run_plan
from planner.study.sweep.summary import close_call_of
from planner.study.sweep.workers import Serial
from planner.study.switching_values import Course, SwitchingValue, matter_most, switching_value
from planner.study.varied import Varied
from tests.study.scenarios import EXAMPLES, changed, changed_raw

WORKS: dict[str, Any] = {
    "finance__analysis_period_years": 3,
    "sources__solar__strings": 2,
    "tank__volume_m3": 20.0,
    "topup__start_level_percent": 20.0,
    "topup__stop_level_percent": 40.0,
    "sources__generator": None,
    "sources__grid__line_length_m": 110,
}
"""Sizes given, so that works worked out again are the same; a line so short that prices turn the answer."""


@cache
def study(**more: Any) -> Study:
    return study_scenario(changed(**WORKS, **more), EXAMPLES, with_effects=True)


def switching(found: Study, name: str) -> SwitchingValue:
    assert found.uncertainty is not None
    return next(each for each in found.uncertainty.switching if each.varied.name == name)


def first_with(key: str, value: float) -> str:
    return study_scenario(changed(**WORKS | {key: value}), EXAMPLES).ranking[0]


@pytest.mark.parametrize(
    ("name", "key"),
    [
        ("tariff", "sources__grid__tariff__price_per_kwh"),
        pytest.param("module_price", "sources__solar__module", marks=pytest.mark.slow),
    ],
)
def test_the_answer_turns_just_beyond_a_switching_price_and_not_before(name: str, key: str) -> None:
    found = study()
    turn = switching(found, name).nearest
    assert turn is not None
    outwards = 1 if turn.value > switching(found, name).varied.base else -1

    def value(price: float) -> Any:
        return changed_raw()["sources"]["solar"]["module"] | {"price": price} if name == "module_price" else price

    before, beyond = (turn.value * (1 + 0.003 * outwards * side) for side in (-1, 1))
    assert first_with(key, value(before)) == found.ranking[0]
    assert first_with(key, value(beyond)) == turn.first != found.ranking[0]


def test_the_answer_turns_just_beyond_the_switching_demand_because_the_first_misses_the_target() -> None:
    found = study()
    turn = switching(found, "demand").above
    assert turn is not None
    assert turn.misses
    assert turn.meets

    def rerun(percent: float) -> Study:
        users = [each | {"count": round(each["count"] * percent / 100)} for each in changed_raw()["demand"]["users"]]
        return study_scenario(changed(**WORKS, demand__users=users), EXAMPLES)

    before, beyond = rerun(turn.value - 2), rerun(turn.value + 2)
    assert before.ranking[0] == found.ranking[0]
    assert beyond.ranking[0] == turn.first != found.ranking[0]
    assert not beyond.option(found.ranking[0]).meets_service


def test_what_never_turns_does_not_turn_at_the_ends() -> None:
    found = study(sources__grid__tariff__price_per_kwh=0.4)
    assert found.uncertainty is not None
    for each in found.uncertainty.switching:
        if each.varied.name == "discount_rate":
            assert each.nearest is None
            for rate in (each.varied.values[0], each.varied.values[-1]):
                changes = {"sources__grid__tariff__price_per_kwh": 0.4, "finance__discount_rate_percent": rate}
                there = study_scenario(changed(**WORKS | changes), EXAMPLES)
                assert there.ranking[0] == found.ranking[0]
            return
    pytest.fail("the discount rate is not among the inputs shown")


def test_the_call_is_that_of_the_ready_sweep() -> None:
    found = study()
    scenario = changed(**WORKS)
    (plan,) = plans_of(scenario)
    base = base_of(scenario, EXAMPLES)
    swept = close_call_of(base, run_plan(base, plan, Serial()))
    assert found.uncertainty is not None
    assert swept is not None
    assert found.uncertainty.call is not None
    assert swept.changes == plan.size - 1 > 20
    assert vars(swept) == pytest.approx(vars(found.uncertainty.call))


def test_the_call_counts_turns_and_small_gaps_by_hand() -> None:
    # as it stands; turned by cost; gap of 1 %; turned by the target; the second misses; not worked out
    meets = [[1, 1], [1, 1], [1, 1], [0, 1], [1, 0], [1, np.nan]]
    share = [[1, 1]] * 3 + [[0.9, 1], [1, 0.9], [1, 1]]
    cost = [[100, 110], [100, 99], [100, 101], [100, 110], [100, 100.5], [100, 110]]
    call = close_call(("a", "b"), meets, share, cost, priced=True)
    assert (call.changes, call.turned, call.close) == (4, 2, 1)
    assert call.gap_percent == pytest.approx(10)
    assert call.share == pytest.approx(0.75)
    assert call.too_close
    assert "too close to call: their order turns in 2 of 4 changes" in close_call_sentence(call)


@pytest.mark.parametrize(("second", "too_close"), [(101.9, True), (102.1, False)])
def test_two_that_stand_close_are_too_close_to_call_whatever_the_changes(second: float, too_close: bool) -> None:
    cost = [[100, second], *[[100, 150]] * 9]
    call = close_call(("a", "b"), np.ones((10, 2)), np.ones((10, 2)), cost, priced=True)
    assert (call.turned, call.close) == (0, 0)
    assert call.too_close is too_close
    assert CLOSE_PERCENT == 2.0


def test_what_the_change_of_a_price_leaves_is_what_is_met_as_it_stands_in_per_cent() -> None:
    found = study()
    assert found.uncertainty is not None
    effect = next(each for each in found.uncertainty.effects if each.key == "pump.maintenance_percent_per_year")
    as_it_stands = 100 * float(found.ranked[0].outcome.delivered_m3.sum() / found.ranked[0].outcome.demand_m3.sum())
    assert effect.demand_met_percent == pytest.approx((as_it_stands, as_it_stands), abs=1e-9)


def test_beside_the_first_two_the_cheapest_of_the_others_is_looked_at() -> None:
    results = {
        name: SimpleNamespace(life=SimpleNamespace(present_cost=cost))
        for name, cost in zip("abcd", (9, 5, 7, 6), strict=True)
    }
    asked: Any = SimpleNamespace(names=list("abcd"), order=[1, 0, 2, 3], chosen=results)
    looked = uncertainty._Asked._looked_at
    assert looked(asked, SimpleNamespace(kind="hours")) == ["a", "b", "d"]  # type: ignore[arg-type]
    assert looked(asked, SimpleNamespace(kind="money")) == ["a", "b", "c", "d"]  # type: ignore[arg-type]


def test_a_change_with_which_an_option_cannot_run_is_no_change_of_the_call() -> None:
    asked: Any = SimpleNamespace(names=["a", "b"], order=[0, 1], scenario=SimpleNamespace(priced=False))
    numbers = np.array([1.0, 1.0, 1.0, 1.0, 0.0, 1.0])
    tried: Any = SimpleNamespace(runs=numbers > 0, meets_service=numbers > 0, delivered_share=numbers,
                                 present_cost=np.zeros(6))  # fmt: skip
    call = uncertainty._Asked._call(asked, tried, [[0, 1], [2, 3], [4, 5], [-1, 5]])
    assert call is not None
    assert (call.changes, call.turned) == (1, 0)


def test_without_prices_the_call_counts_where_the_first_misses_the_target() -> None:
    meets = [[1, 1], [0, 1], [1, 0], [0, 0]]
    call = close_call(("a", "b"), meets, np.ones((4, 2)), np.zeros((4, 2)), priced=False)
    assert (call.changes, call.turned, call.close) == (3, 2, 0)
    assert "a misses the target in 2 of 3" in close_call_sentence(call)


VARIED = Varied("fuel_price", "k", "USD/L", 2.0, (0.0, 2.0, 6.0), ((),), "linear", is_factor=True)


def course(a: list[float], b: list[float], margin: list[float] | None = None) -> Course:
    margins = np.column_stack([margin or [1.0] * 3, [1.0] * 3])
    return Course(("a", "b"), margins, 0.98 + margins / 100, np.column_stack([a, b]))


def test_straight_lines_cross_where_they_do_by_hand() -> None:
    # a costs 10 + 5 v, b costs 24 + v: equal at 3.5
    found = switching_value(VARIED, course([10, 20, 40], [24, 26, 30]), 0, 1, priced=True)
    assert found.below is None
    assert found.above is not None
    assert found.above.value == pytest.approx(3.5, abs=1e-3)
    assert (found.above.first, found.above.meets, found.above.misses) == ("b", True, False)
    assert found.distance == pytest.approx(0.75, abs=1e-3)
    # a fifth of 2 is 0.4, by which the lead changes by 1.6 of a cost of 20
    assert found.moves == pytest.approx(0.08)


def test_an_option_that_ceases_to_meet_the_target_gives_way() -> None:
    found = switching_value(VARIED, course([20, 20, 20], [30, 30, 30], [2.0, 1.0, -1.0]), 0, 1, priced=True)
    assert found.above is not None
    assert found.above.misses
    assert found.above.first == "b"
    assert 2.0 < found.above.value < 6.0


def test_an_option_that_cannot_run_at_a_value_misses_the_target_there() -> None:
    found = switching_value(VARIED, course([20, 20, np.nan], [30, 30, 30]), 0, 1, priced=True)
    assert found.above is not None
    assert found.above.first == "b"


def test_inputs_that_turn_by_the_smallest_change_come_first_and_then_those_that_move_most() -> None:
    near = switching_value(VARIED, course([10, 20, 40], [24, 26, 30]), 0, 1, priced=True)
    far = switching_value(VARIED, course([10, 20, 40], [38, 38, 38]), 0, 1, priced=True)
    still = switching_value(VARIED, course([20, 20, 20], [50, 50, 50]), 0, 1, priced=True)  # it moves nothing
    moved = switching_value(VARIED, course([10, 20, 40], [90, 90, 90]), 0, 1, priced=True)
    assert matter_most([still, moved, far, near]) == (near, far, moved)
    assert matter_most([still, moved]) == (moved,)


def test_values_are_rounded_to_what_is_known_of_them() -> None:
    assert VARIED.rounded(3.4567) == 3.46
    demand = Varied("demand", "k", "%", 100.0, (50.0, 100.0), ((),), "hours", is_factor=True, is_share=True)
    assert [demand.rounded(value) for value in (71.33, 101.57, 100.44, 100.0)] == [71, 102, 100.4, 100]


def test_quick_leaves_it_out() -> None:
    quick = study_scenario(changed(**WORKS), EXAMPLES)
    assert quick.uncertainty is None
    assert quick.effects == ()
    assert uncertainty_sentences(quick) == []
    assert uncertainty_data(quick) is None


def test_the_sentences_say_values_options_and_works() -> None:
    said = uncertainty_sentences(study())
    assert said[0].startswith("solar stays ahead of solar + grid")
    assert any(
        each.startswith("Grid tariff: below 0.0191 USD/kWh (now 0.19 USD/kWh), grid comes first") for each in said
    )
    assert any("solar misses the target and solar + grid comes first" in each for each in said)
    assert any("the works as they would be built" in each for each in said)
    assert any(each.startswith("Worst year in ten with solar: ") for each in said)
    data = uncertainty_data(study())
    assert data is not None
    assert data["sentences"] == said
    assert [each["input"] for each in data["switching"]] == ["demand", "tariff", "module_price"]
    assert data["close_call"]["too_close_to_call"] is False


def test_the_page_has_the_sentences_and_a_table_of_what_would_turn_the_answer() -> None:
    blocks = list(uncertainty_blocks(study(), IN_WORKBOOK))
    texts = [block.text for block in blocks if isinstance(block, Text)]
    assert texts[: len(uncertainty_sentences(study()))] == uncertainty_sentences(study())
    table = next(block for block in blocks if isinstance(block, Table) and block.key == SWITCHING)
    words = {row.key: [cell.value for cell in row.cells.values()] for row in table.rows}
    assert words["tariff"][1:] == [0.19, "USD/kWh", "0 to 0.57", "0.0191: grid", "stays"]
    assert words["demand"][-2:] == ["stays", "128: solar + grid"]
    assert list(uncertainty_blocks(study_scenario(changed(**WORKS), EXAMPLES), IN_WORKBOOK)) == []
