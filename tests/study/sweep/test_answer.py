"""Whether a sweep sees what changes the answer: ranked as the comparison ranks, who serves first, then cost."""

from __future__ import annotations

from pathlib import Path
from types import SimpleNamespace
from typing import Any

import numpy as np
import openpyxl
import pytest
from typer.testing import CliRunner

from planner.cli import app
from planner.report.pages.sweep.report import sweep_report
from planner.report.workbook.book import write_book
from planner.scenario.errors import InputError, Problem
from planner.scenario.writer import toml_text
from planner.study.keys import Key
from planner.study.sweep.engine import MEASURES
from planner.study.sweep.plan import Plan
from planner.study.sweep.reasons import Reason, reason_of
from planner.study.sweep.run import Results, ranking_of, run_sweep
from planner.study.sweep.summary import First, changes_of, firsts_of, sentences
from tests.study.sweep.cases import EXAMPLES, PUPILS, SCHOOL, school, school_raw

OPTIONS = ("solar", "grid", "generator")
FAULT = Reason("failed", {"error": "KeyError", "message": "'x'"})


def numbers(*cases: list[tuple[float, float, float]]) -> np.ndarray:
    """Results by hand: present cost, meets the target (1 or 0), delivered share, of each option of each case."""
    found = np.zeros((len(cases), len(OPTIONS), len(MEASURES)))
    places = [MEASURES.index(name) for name in ("present_cost", "meets_service", "delivered_share")]
    found[:, :, places] = np.array(cases, dtype=float)
    return found


def one_at_a_time(*cases: list[tuple[float, float, float]], problems: dict[int, Reason] | None = None) -> Results:
    texts = ["people", "tariff"][: (len(cases) - 1) // 2]
    keys = tuple(Key(text, (text,), 550.0, False, "", "run", text) for text in texts)
    values = np.full((len(cases), len(keys)), np.nan)
    for place in range(len(keys)):
        values[1 + 2 * place : 3 + 2 * place, place] = (440.0, 660.0)
    return Results(Plan("one_at_a_time", keys, values), OPTIONS, numbers(*cases), problems or {})


# Solar costs least in every case, so by cost alone nothing ever changes; at 660 people it misses the target.
STANDS = [(100.0, 1.0, 0.99), (130.0, 1.0, 1.0), (150.0, 1.0, 1.0)]
MORE_PEOPLE = [(105.0, 0.0, 0.90), (140.0, 1.0, 1.0), (160.0, 1.0, 1.0)]
NONE_SERVES = [(105.0, 0.0, 0.90), (140.0, 0.0, 0.95), (160.0, 0.0, 0.80)]
CHEAP_GRID = [(100.0, 1.0, 0.99), (90.0, 1.0, 1.0), (150.0, 1.0, 1.0)]


def test_who_serves_comes_first_then_cost_then_what_is_delivered() -> None:
    assert ranking_of(numbers(STANDS)[0]) == [0, 1, 2]
    assert ranking_of(numbers(MORE_PEOPLE)[0]) == [1, 2, 0]
    assert ranking_of(numbers(NONE_SERVES)[0]) == [1, 0, 2]
    alike = [(120.0, 0.0, 0.9), (110.0, 0.0, 0.9), (130.0, 0.0, 0.95)]
    assert ranking_of(numbers(alike)[0]) == [2, 1, 0], "where two deliver the same, the cheaper is nearer"


def test_an_option_that_misses_the_target_is_not_best_however_cheap() -> None:
    results = one_at_a_time(STANDS, STANDS, MORE_PEOPLE, STANDS, CHEAP_GRID)
    assert firsts_of(results) == [First(0, True), First(0, True), First(1, True), First(0, True), First(1, True)]
    assert [words for _, words in changes_of(results)] == [
        "'people' at 660 (solar misses the target, grid is best)",
        "'tariff' at 660 (grid is best)",
    ]


def test_that_nothing_serves_is_a_change_of_the_answer() -> None:
    assert [words for _, words in changes_of(one_at_a_time(STANDS, STANDS, NONE_SERVES))] == [
        "'people' at 660 (no option meets the target)"
    ]
    assert [words for _, words in changes_of(one_at_a_time(NONE_SERVES, STANDS, MORE_PEOPLE))] == [
        "'people' at 440 (solar meets the target)",
        "'people' at 660 (grid meets the target)",
    ]


def test_a_variant_that_failed_is_no_change() -> None:
    results = one_at_a_time(STANDS, STANDS, MORE_PEOPLE, problems={2: FAULT})
    assert firsts_of(results)[2] is None
    assert changes_of(results) == []
    assert results.worked
    assert not one_at_a_time(STANDS, STANDS, MORE_PEOPLE, problems={1: FAULT, 2: FAULT}).worked


def said(**table: Any) -> tuple[str, Any]:
    raw = school(service={"options": ["solar", "solar + grid"]}, sweep={"one_at_a_time": [table]})
    solar = raw.sources.solar.model_copy(update={"strings": 2})  # type: ignore[union-attr]
    swept = run_sweep(raw.model_copy(update={"sources": raw.sources.model_copy(update={"solar": solar})}), EXAMPLES)
    return " ".join(sentences(swept)), swept


def test_the_sentence_and_the_sheet_name_the_demand_that_solar_cannot_meet(tmp_path: Path) -> None:
    text, swept = said(key=SCHOOL, low=250, high=2000)
    assert "Moved alone, these change the answer" in text
    assert f"'{PUPILS}' at 2000 (solar misses the target, solar + grid is best)" in text
    assert "None of the inputs" not in text
    path = tmp_path / "sweep.xlsx"
    write_book(sweep_report(swept, sentences(swept)), path)
    rows = [[cell.value for cell in row] for row in openpyxl.load_workbook(path)["One at a time"].iter_rows()]
    head = next(row for row in rows if row[0] == "Input")
    line = next(row for row in rows if str(row[0]).startswith(PUPILS))
    assert line[head.index("Best at low")] == "solar"
    assert line[head.index("Best at high")] == "solar + grid"


def test_what_changes_nothing_is_said_to_change_nothing() -> None:
    text, _ = said(key="pump.price", change_percent=5)
    assert "changes the answer: solar stays the cheapest option that meets the target" in text


@pytest.mark.parametrize(
    ("reason", "words", "code"),
    [
        (
            reason_of(InputError("", [Problem("pump.max_head_m", "must be larger")])),
            "pump.max_head_m: must be larger",
            2,
        ),
        (reason_of(KeyError("x")), "failed with KeyError: 'x'", 1),
        (Reason("wrong_input", {"problems": "failed with care"}), "failed with care", 2),
        (Reason("worker_lost", {"times": "3"}), "given up: its worker was lost 3 times", 1),
    ],
    ids=["input", "ours", "words of ours in the input", "worker"],
)
def test_the_exit_code_of_a_sweep_that_failed_says_whose_fault_it_is(
    reason: Reason, words: str, code: int, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    results = one_at_a_time(STANDS, STANDS, STANDS, problems={1: reason, 2: FAULT})
    swept = SimpleNamespace(results=(results,), worked=False)
    monkeypatch.setattr("planner.study.sweep.run.run_sweep", lambda *given, **named: swept)
    file = tmp_path / "school.toml"
    file.write_text(toml_text(school_raw()), encoding="utf-8")
    ran = CliRunner().invoke(app, ["sweep", str(file), "--outputs", str(tmp_path / "out")])
    assert ran.exit_code == code
    assert f"no variant of the sweep could be worked out; the first reason: {words}" in ran.stderr


def test_a_sweep_in_which_nothing_could_be_worked_out_says_no_sentence_and_fails(tmp_path: Path) -> None:
    table = {"one_at_a_time": [{"key": "pump.max_head_m", "low": 20, "high": 30}]}
    file = tmp_path / "school.toml"
    file.write_text(toml_text(school_raw(sweep=table)), encoding="utf-8")
    ran = CliRunner().invoke(app, ["sweep", str(file), "--outputs", str(tmp_path / "out")])
    assert ran.exit_code == 2
    assert "the first reason: pump: " in ran.stderr or "the first reason: pump.max_head_m" in ran.stderr
    assert ran.stdout == ""
    assert not list((tmp_path / "out").glob("*.xlsx"))
    swept = run_sweep(school(sweep=table), EXAMPLES)
    assert sentences(swept) == []
