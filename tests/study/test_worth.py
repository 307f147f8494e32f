"""'Is it worth it?': switching values against scenarios run again from the start, the map, the words."""

from __future__ import annotations

import json
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np
import openpyxl
import pytest
from numpy.typing import NDArray

from planner.report.pages.worth import switching_words, worth_report
from planner.report.studies_json import worth_as_data, write_study_json
from planner.report.workbook.book import write_book
from planner.scenario.errors import InputError
from planner.study import evaluate, fixed_designs, results
from planner.study.cases import Design
from planner.study.compare import Study, study_scenario
from planner.study.fixed_designs import OptionSummary
from planner.study.switching import Array, crossing, limit_between, linear_crossing
from planner.study.worth import Worth, worth_of
from planner.study.worth_words import verdict, worth_sentences
from tests.study.scenarios import EXAMPLES, changed

BASE: dict[str, Any] = {
    "finance__analysis_period_years": 4,
    "tank__volume_m3": 30.0,
    "sources__solar__strings": 2,
    "sources__grid__line_length_m": 1000.0,
}
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


@pytest.mark.parametrize("name", [*PATHS, "demand"])
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


@pytest.mark.parametrize("name", ["tariff", "grid_distance", "fuel_price", "discount_rate"])
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


def test_base_case_and_pairs_are_those_of_the_ordinary_run() -> None:
    worth = worth_of(changed(**BASE), "grid", EXAMPLES)
    study = study_scenario(changed(**BASE), EXAMPLES)
    assert [option.name for option in worth.options] == list(study.ranking)
    for option in worth.options:
        assert option.present_cost == pytest.approx(float(study.option(option.name).life.present_cost), rel=1e-12)
    assert {(pair.without.name, pair.with_source.name) for pair in worth.pairs} == {
        ("solar", "solar + grid"),
        ("generator", "grid + generator"),
        ("solar + generator", "solar + grid + generator"),
    }
    for pair in worth.pairs:
        assert pair.saving == pytest.approx(pair.without.present_cost - pair.with_source.present_cost)
    assert worth.without_best.name == next(name for name in study.ranking if "grid" not in name)
    assert worth.with_best.name == next(name for name in study.ranking if "grid" in name)


def test_where_there_is_no_switching_value_it_says_so() -> None:
    worth = worth_of(changed(**BASE, sources__grid__line_price_per_m=0.0), "solar", EXAMPLES)
    by_name = {switching.varied.name: switching for switching in worth.switching}
    assert worth.with_best.name == "solar"
    rate = by_name["discount_rate"]
    assert rate.value is None
    assert switching_words(rate).startswith("none from 0 percent a year to 30")
    assert "no effect: the scenario gives the new line no price" in [switching_words(each) for each in worth.switching]
    assert "discount rate from 0 percent a year to 30 percent a year" in worth_sentences(worth)[2]


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
    assert turned == {"demand"}
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
    sheets = ["Answer", "With and without", "Switching values", "Map"]
    assert book.sheetnames == sheets
    data = json.loads((tmp_path / "a.json").read_text(encoding="utf-8"))
    assert data["sentences"] == said
    assert [option["life_cycle_cost"] for option in data["options"]] == [o.present_cost for o in worth.options]
    values = {each["input"]: each["value"] for each in data["switching_values"]}
    rows = {row[0]: row for row in book["Switching values"].iter_rows(values_only=True)}
    for name, value in values.items():
        assert rows[name][5] == pytest.approx(value)
    assert all(len(book[name]._charts) == 1 for name in sheets[1:])


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
