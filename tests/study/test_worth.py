"""'Is it worth it?': switching values against scenarios run again from the start, the map, the words."""

from __future__ import annotations

import json
from dataclasses import replace
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np
import openpyxl
import pytest
from numpy.typing import NDArray

from planner.report.document import Table
from planner.report.document import Text as Words
from planner.report.pages.worth import switching_table, switching_words, turn_words, worth_report, worth_summary
from planner.report.studies_json import worth_as_data, write_study_json
from planner.report.workbook.book import write_book
from planner.scenario.errors import InputError
from planner.study import evaluate, fixed_designs, results
from planner.study.cases import Design
from planner.study.chosen_anew import ChosenAnew
from planner.study.compare import Study, study_scenario
from planner.study.context import Context
from planner.study.fixed_designs import OptionSummary
from planner.study.search import choose_all
from planner.study.switching import Array, crossing, limit_between, linear_crossing
from planner.study.turning import Switching
from planner.study.worth import Worth, worth_of
from planner.study.worth_words import verdict, worth_sentences
from tests.study.scenarios import EXAMPLES, changed

BASE: dict[str, Any] = {
    "finance__analysis_period_years": 2,
    "tank__volume_m3": 30.0,
    "sources__solar__strings": 2,
    "sources__grid__line_length_m": 800.0,
}
SLOW = pytest.mark.slow
TWO = ["generator", "grid + generator"]
PATHS = {
    "tariff": "sources__grid__tariff__price_per_kwh",
    "outage_hours": "sources__grid__outages__hours_per_day",
    "grid_distance": "sources__grid__line_length_m",
    "fuel_price": "sources__generator__fuel_price_per_l",
    "discount_rate": "finance__discount_rate_percent",
}


@cache
def grid_worth_counted() -> tuple[Worth, dict[str, int]]:
    """Whether the grid is worth having, and how often lives were priced and hours run to find it."""
    calls = {"priced": 0, "passes": 0}
    life, run = results.life_of, evaluate.run_options

    def priced(*given: Any) -> Any:
        calls["priced"] += 1
        return life(*given)

    def passed(*given: Any, **further: Any) -> Any:
        calls["passes"] += 1
        return run(*given, **further)

    with pytest.MonkeyPatch.context() as patch:
        for module in (results, fixed_designs):
            patch.setattr(module, "life_of", priced)
        patch.setattr(evaluate, "run_options", passed)
        return worth_of(changed(**BASE, service__options=TWO), "grid", EXAMPLES), calls


def grid_worth() -> Worth:
    return grid_worth_counted()[0]


def overrides(designs: list[Design]) -> dict[str, Any]:
    """Overrides that hold every option to its design in the base case."""
    held: dict[str, Any] = {}
    for pinned in designs:
        sunny = "solar" in pinned.sources
        start, stop = pinned.levels
        within = "" if sunny else "_without_sun"
        held[pinned.name] = {
            "tank": {"volume_m3": pinned.tank_m3},
            "topup": {f"start_level{within}_percent": start, f"stop_level{within}_percent": stop},
        }
        if sunny:
            held[pinned.name]["sources"] = {"solar": {"strings": pinned.strings}}
    return held


def again(name: str, value: float, summaries: tuple[OptionSummary, ...], options: list[str]) -> Study:
    """Study the base scenario from its TOML on, with one input changed and the designs held."""
    changes: dict[str, Any] = {**BASE, "service__options": options}
    if name == "demand":
        users = changed().model_dump(exclude_unset=True)["demand"]["users"]
        changes["demand__users"] = [user | {"count": user["count"] * value / 100} for user in users]
    else:
        changes[PATHS[name]] = value
    return study_scenario(changed(**changes, overrides=overrides([option.design for option in summaries])), EXAMPLES)


@pytest.mark.parametrize(
    "name", [pytest.param(name, marks=[] if name in ("tariff", "demand") else [SLOW]) for name in (*PATHS, "demand")]
)
def test_at_a_switching_value_the_scenario_run_again_costs_the_same_either_way(name: str) -> None:
    worth = grid_worth()
    switching = next(each for each in worth.switching if each.varied.name == name)
    assert switching.value is not None
    assert switching.agrees
    study = again(name, switching.value, worth.options, TWO)
    having = float(study.option(worth.with_best.name).life.present_cost)
    lacking = float(study.option(worth.without_best.name).life.present_cost)
    exact = switching.varied.kind == "linear"
    assert having == pytest.approx(lacking, rel=1e-9 if exact else 1e-3)
    assert switching.cost_with == pytest.approx(having, rel=1e-9)
    assert switching.cost_without == pytest.approx(lacking, rel=1e-9)
    # ... and not because it costs the same everywhere.
    base = abs(worth.saving) / worth.with_best.present_cost
    assert base > 0.03


@pytest.mark.parametrize(
    "name", ["tariff", *(pytest.param(name, marks=SLOW) for name in ("grid_distance", "fuel_price", "discount_rate"))]
)
def test_on_either_side_of_a_turn_another_option_is_best(name: str) -> None:
    worth = grid_worth()
    switching = next(each for each in worth.switching if each.varied.name == name)
    assert len(switching.turns) == 1
    turn = switching.turns[0]
    # Costs alone turn this answer, so it turns at the switching value.
    assert turn.value == pytest.approx(switching.value, rel=1e-3)
    assert turn.best == "generator"
    inside = turn.value + 0.01 * (switching.varied.base - turn.value)
    assert again(name, inside, worth.options, TWO).best == "grid + generator"
    assert again(name, turn.value, worth.options, TWO).best == "generator"


ALL_PAIRS = {
    ("solar", "solar + grid"),
    ("generator", "grid + generator"),
    ("solar + generator", "solar + grid + generator"),
}


@pytest.mark.parametrize(
    ("changes", "pairs"),
    [
        ({"service__options": ["solar", "generator", "solar + grid"]}, {("solar", "solar + grid")}),
        pytest.param({}, ALL_PAIRS, marks=SLOW),
    ],
    ids=["few", "all"],
)
def test_base_case_and_pairs_are_those_of_the_ordinary_run(
    changes: dict[str, Any], pairs: set[tuple[str, str]]
) -> None:
    scenario = changed(**(BASE | {"finance__analysis_period_years": 1} | changes))
    worth, study = worth_of(scenario, "grid", EXAMPLES), study_scenario(scenario, EXAMPLES)
    assert [option.name for option in worth.options] == list(study.ranking)
    for option in worth.options:
        assert option.present_cost == pytest.approx(float(study.option(option.name).life.present_cost), rel=1e-12)
    assert {(pair.without.name, pair.with_source.name) for pair in worth.pairs} == pairs
    for pair in worth.pairs:
        assert pair.saving == pytest.approx(pair.without.present_cost - pair.with_source.present_cost)
    assert worth.without_best.name == next(name for name in study.ranking if "grid" not in name)
    assert worth.with_best.name == next(name for name in study.ranking if "grid" in name)


def test_where_there_is_no_switching_value_it_says_so() -> None:
    long = BASE | {"finance__analysis_period_years": 4, "service__options": ["solar", "grid"]}
    worth = worth_of(changed(**long, sources__grid__line_price_per_m=0.0), "solar", EXAMPLES)
    by_name = {switching.varied.name: switching for switching in worth.switching}
    assert worth.with_best.name == "solar"
    rate = by_name["discount_rate"]
    assert rate.value is None
    assert switching_words(rate).startswith("none from 0 %/year to 20 %/year")
    assert "the scenario gives the new line no price" in [switching_words(each) for each in worth.switching]
    assert "the discount rate from 0 %/year to 20 %/year" in worth_sentences(worth)[2]


def test_cells_of_the_map_are_what_separate_runs_find_best() -> None:
    worth = grid_worth()
    cheapest = worth.map
    assert cheapest is not None
    assert (cheapest.down.name, cheapest.across.name) == ("outage_hours", "tariff")
    assert len(cheapest.down_values) == len(cheapest.across_values) == 7
    assert {name for row in cheapest.best for name in row} == set(TWO)
    held = overrides([option.design for option in worth.options])
    for row, column in ((0, 6), (6, 0), (3, 3), (6, 6)):
        changes = {
            PATHS["outage_hours"]: cheapest.down_values[row],
            PATHS["tariff"]: cheapest.across_values[column],
        }
        study = study_scenario(changed(**(BASE | changes), service__options=TWO, overrides=held), EXAMPLES)
        assert study.ranking[0] == cheapest.best[row][column]
        assert cheapest.present_cost[row, column] == pytest.approx(float(study.ranked[0].life.present_cost), rel=1e-9)


def test_a_source_without_which_nothing_serves_is_needed() -> None:
    few = BASE | {"sources__solar__strings": 1, "tank__volume_m3": 10.0}
    worth = worth_of(changed(**few, service__options=["solar", "solar + grid"]), "grid", EXAMPLES)
    assert not worth.without_best.meets_service
    assert worth.with_best.meets_service
    said = worth_sentences(worth)
    assert len(said) == 3
    assert said[0].startswith("Yes, the grid is needed")
    # With less demand the sun alone meets the target; no price brings that about.
    turned = {switching.varied.name for switching in worth.switching if switching.turns}
    assert turned == {"demand", "target"}
    demand = next(each for each in worth.switching if each.varied.name == "demand")
    assert demand.turns[0].best == "solar"
    assert demand.turns[0].value < 100


def test_the_verdict_agrees_with_the_costs() -> None:
    assert verdict(grid_worth()).startswith("Yes, the grid is worth having")
    dear = worth_of(
        changed(**(BASE | {"sources__grid__line_length_m": 3000.0}), service__options=TWO), "grid", EXAMPLES
    )
    assert dear.saving < 0
    assert verdict(dear).startswith("No, the grid is not worth having")


@pytest.mark.parametrize(
    ("source", "changes", "words"),
    [
        ("wind", {}, "is no source"),
        ("grid", {"sources__grid": None}, "is not described"),
        ("grid", {"service__options": ["solar", "generator"]}, "leaves no option with the grid"),
        ("grid", {"service__options": ["grid", "solar + grid"]}, "leaves no option without the grid"),
    ],
)
def test_what_cannot_be_compared_is_refused(source: str, changes: dict[str, Any], words: str) -> None:
    with pytest.raises(InputError, match=words):
        worth_of(changed(**(BASE if "sources__grid" not in changes else {}), **changes), source, EXAMPLES)


def test_workbook_and_json_tell_the_same(tmp_path: Path) -> None:
    worth = grid_worth()
    said = worth_sentences(worth)
    write_book(worth_report(worth, said), tmp_path / "a.xlsx")
    write_study_json(worth_as_data(worth, said), tmp_path / "a.json")
    book = openpyxl.load_workbook(tmp_path / "a.xlsx", data_only=True)
    sheets = ["Answer", "With and without", "Switching values", "Map", "Next step"]
    assert book.sheetnames == sheets
    data = json.loads((tmp_path / "a.json").read_text(encoding="utf-8"))
    assert data["sentences"] == said
    assert [option["life_cycle_cost"] for option in data["options"]] == [o.present_cost for o in worth.options]
    values = {each["key"]: each["value"] for each in data["switching_values"]}
    rows = {row[-1]: row for row in book["Switching values"].iter_rows(values_only=True)}
    turning = {each["key"] for each in data["switching_values"] if each["value"] or each["answer_turns"]}
    assert turning <= set(rows)
    for name in turning:
        assert values[name] is None or rows[name][3] == pytest.approx(values[name])
    assert all(len(book[name]._charts) == 1 for name in sheets[1:4])


# --------------------------------------------------------------------------------------------- works chosen anew

OPEN: dict[str, Any] = {
    "finance__analysis_period_years": 2,
    "sources__solar__strings": "auto",
    "sources__solar__strings_max": 3,
    "tank__volume_m3": "auto",
    "tank__sizes": [{"volume_m3": 10.0, "price": 1500.0}, {"volume_m3": 20.0, "price": 4500.0},
                    {"volume_m3": 40.0, "price": 9000.0}],
    "topup__start_level_percent": 20.0,
    "topup__stop_level_percent": 40.0,
    "service__options": ["solar", "solar + generator"],
}  # fmt: skip


@cache
def open_worth() -> Worth:
    return worth_of(changed(**OPEN), "generator", EXAMPLES)


def anew_of(worth: Worth, name: str) -> Switching:
    assert worth.anew is not None
    return next(each for each in worth.anew if each.varied.name == name)


def test_chosen_anew_at_the_base_the_works_are_those_of_the_run() -> None:
    scenario, context = changed(**OPEN), Context(EXAMPLES)
    choices = choose_all(context, context.supplies(scenario))
    anew = ChosenAnew.of(context, scenario, choices)
    assert anew is not None
    (there,) = anew.in_each([scenario])
    for option, choice in zip(there, choices, strict=True):
        assert option.design == choice.design
        assert option.present_cost == pytest.approx(float(choice.result.life.present_cost), rel=1e-12)


@pytest.mark.parametrize(
    ("name", "values"),
    [
        ("demand", (50.0, 75.0, 110.0)),
        pytest.param("target", (70.0, 90.0, 99.9), marks=SLOW),
        pytest.param("module_price", (0.0, 600.0), marks=SLOW),
        pytest.param("discount_rate", (0.0, 25.0), marks=SLOW),
    ],
)
def test_chosen_anew_the_works_are_what_the_run_chooses_at_that_value(name: str, values: tuple[float, ...]) -> None:
    scenario, context = changed(**OPEN), Context(EXAMPLES)
    anew = ChosenAnew.of(context, scenario, choose_all(context, context.supplies(scenario)))
    assert anew is not None
    varied = next(each.varied for each in open_worth().switching if each.varied.name == name)
    seen = set()
    for value, options in zip(values, anew.at(varied, values), strict=True):
        there = varied.change(scenario, value)
        for option, choice in zip(options, choose_all(context, context.supplies(there)), strict=True):
            assert option.design == choice.design, value
            assert option.present_cost == pytest.approx(float(choice.result.life.present_cost), rel=1e-9)
            assert option.meets_service == choice.result.meets_service
            seen.add((option.name, option.design))
    assert len(seen) > len(anew.options), "the works were the same at every value"


@pytest.mark.parametrize(
    "name", ["demand", *(pytest.param(name, marks=SLOW) for name in ("target", "fuel_price", "module_price"))]
)
def test_a_study_run_from_the_start_turns_where_works_chosen_anew_do(name: str) -> None:
    """The study chooses strings and tank by itself; the levels are given, and held in both."""
    worth = open_worth()
    found, fixed = anew_of(worth, name), next(each for each in worth.switching if each.varied.name == name)
    first = worth.options[0]
    having = "generator" in first.design.sources
    for turn in found.turns:
        varied = found.varied
        step = (0.02 if varied.kind == "hours" else 0.004) * (varied.high - varied.low)
        beyond = step if turn.value > varied.base else -step
        for change, same in ((-beyond, True), (beyond / 8, False)):
            value = turn.value + change
            if not varied.low <= value <= varied.high:
                continue
            study = study_scenario(varied.change(changed(**OPEN), value), EXAMPLES)
            assert ("generator" in study.ranking[0]) == (having if same else not having), (turn, value)
    if name in ("demand", "target"):
        assert found.turns, "nothing was looked at"
        assert [turn.value for turn in found.turns] != [turn.value for turn in fixed.turns]


def test_both_are_told_and_which_is_which() -> None:
    worth = open_worth()
    said = worth_sentences(worth)[1]
    built, anew = said.split("With strings and tank chosen anew at each value, ")
    assert built.startswith("With the works as they would be built, ")
    demand, fixed = anew_of(worth, "demand"), next(each for each in worth.switching if each.varied.name == "demand")
    assert demand.varied.with_unit(demand.turns[0].value) in anew
    assert fixed.varied.with_unit(fixed.turns[0].value) in built
    table = switching_table(worth)
    row = table.row("demand")
    assert row.cells["turns"].value == turn_words(fixed)
    assert row.cells["anew_turns"].value == turn_words(demand)
    data = next(each for each in worth_as_data(worth, [])["switching_values"] if each["input"] == "demand")
    assert data["answer_turns"][0]["value"] == fixed.turns[0].value
    assert data["chosen_anew"]["answer_turns"][0]["value"] == demand.turns[0].value


def test_where_nothing_is_open_that_is_said_and_nothing_is_run_twice() -> None:
    worth = grid_worth()
    assert worth.anew is None
    assert "The scenario leaves neither strings nor tank open" in worth_sentences(worth)[1]
    assert "anew_turns" not in {column.key for column in switching_table(worth).columns}
    assert worth_as_data(worth, [])["switching_values"][0]["chosen_anew"] is None


def test_what_has_one_outcome_is_a_sentence_and_no_table_and_no_map() -> None:
    """The sun alone is best by far wherever its panels cost next to nothing and there is room for them."""
    cheap = BASE | {"sources__solar__strings": 5, "sources__solar__module__price": 0.01}
    options = ["solar", "generator"]
    worth = worth_of(changed(**cheap, service__options=options, service__demand_met_percent=50.0), "solar", EXAMPLES)
    quiet = replace(
        worth, switching=tuple(replace(each, value=None, turns=()) for each in worth.switching if each.varied.name)
    )
    names = [block.key for block in worth_summary(quiet, ["x"]) if isinstance(block, Table)]
    assert "worth.switching" not in names
    assert worth.map is not None
    one = {(name, meets) for row, serves in zip(worth.map.best, worth.map.meets, strict=True)
           for name, meets in zip(row, serves, strict=True)}  # fmt: skip
    assert one == {("solar", True)}
    assert "worth.map" not in names
    words = [block.text for block in worth_summary(worth, ["x"]) if isinstance(block, Words)]
    assert any(each.startswith("Whatever the values of ") and "solar stays the best option" in each for each in words)
    assert "worth.map" not in [page.key for page in worth_report(worth, ["x"]).pages]


def test_inputs_with_which_nothing_turns_stand_in_no_table() -> None:
    worth = open_worth()
    shown = {row.key for row in switching_table(worth).data_rows()}
    assert worth.anew is not None
    for fixed, anew in zip(worth.switching, worth.anew, strict=True):
        does = fixed.value is not None or fixed.turns or anew.value is not None or anew.turns
        assert (fixed.varied.name in shown) == bool(does)


# ------------------------------------------------------------------------------------------ the search for a crossing


def test_a_straight_line_is_crossed_exactly() -> None:
    found = linear_crossing(lambda value: 3.0 * value - 7.5, 1.0, 0.0, 10.0)
    assert found.value == pytest.approx(2.5, rel=1e-14)
    beyond = linear_crossing(lambda value: 3.0 * value - 7.5, 1.0, 0.0, 2.0)
    assert beyond.value is None
    assert beyond.beyond == pytest.approx(2.5, rel=1e-14)
    assert not linear_crossing(np.ones_like, 1.0, 0.0, 2.0).changes


def test_of_several_crossings_the_nearest_is_closed_in_on() -> None:
    values = [0.0, 1.0, 2.0, 3.0, 4.0]

    def gap(value: Array) -> Array:
        return (value - 0.5) * (value - 1.5) * (value - 3.25)

    found = crossing(gap, 3.0, values)
    assert found.value == pytest.approx(3.25, abs=1e-4)
    assert len(found.others) == 2
    assert crossing(lambda value: 1.0 + value, 1.0, [0.0, 1.0]).value is None
    assert not crossing(np.ones_like, 1.0, [0.0, 1.0]).changes


def test_a_limit_is_closed_in_on_from_outside() -> None:
    found = limit_between(lambda value: value < 2.71, 0.0, 10.0, 1e-6)
    assert 2.71 <= found <= 2.71 + 1e-6
    assert limit_between(lambda value: value > 2.71, 10.0, 0.0, 1e-6) == pytest.approx(2.71, abs=1e-6)


@pytest.mark.parametrize("name", ["curve", "jump"])
def test_a_crossing_is_found_in_a_few_passes_of_several_values(name: str) -> None:
    asked: list[int] = []

    def gap(values: Array) -> Array:
        asked.append(values.size)
        return np.exp(values) - 5.0 if name == "curve" else np.where(values < 1.7, -1.0, 2.0)

    found = crossing(gap, 0.0, [0.0, 1.0, 2.0, 3.0])
    assert found.value == pytest.approx(np.log(5.0) if name == "curve" else 1.7, abs=3e-5)
    # The values between which it lies, then a curve in two passes more, and a jump by at least an eighth in each.
    assert len(asked) <= (4 if name == "curve" else 7)


def test_a_limit_is_found_in_a_few_passes_of_several_values() -> None:
    asked: list[int] = []

    def serves(values: Array) -> NDArray[np.bool_]:
        asked.append(values.size)
        return values < 2.71

    limit_between(serves, 0.0, 10.0, 0.1)
    # Seven halvings, which would be as many passes one by one.
    assert asked == [7, 7, 1] or asked == [7, 3, 3]


def test_prices_of_a_scan_are_worked_out_at_once_and_hours_run_in_the_same_passes() -> None:
    found, calls = grid_worth_counted()
    assert sum(len(each.turns) for each in found.switching) >= 4
    assert calls["passes"] <= 12
    assert calls["priced"] <= 400
