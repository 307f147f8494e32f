"""An answer without prices: on one screen, and without a word of money in any file."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import openpyxl
import pytest
from typer.testing import CliRunner

from planner.cli import app
from planner.figures import FIGURES
from tests.study.visits import visit_file

SOURCES: dict[str, Any] = {"solar": {}, "grid": {"outages": {"hours_per_day": 9, "mean_duration_h": 3}}}
MONEY = re.compile(
    r"\b(?:costs?|capital|loans?|grants?|tariffs?|discount\w*|payback|currency|annualised|levelised|net present|"
    r"revenue|rate of return|nominal|inflation|XXX|None(?! of)|nan)\b|\bmoney\b(?! is committed)"
)
MEANING = (6, 7)
"""Columns of the sheet 'Inputs' that say what a key means and where its default comes from."""
SAID = (
    "names no currency and gives no prices", "With a currency and prices on that sheet", "may cost the borehole",
    "Fast water costs head",
)  # fmt: skip
"""What may be said of money: that there is none, how to get there, and what is no money at all."""


def planner(*arguments: object) -> tuple[int, str, str]:
    result = CliRunner(env={"COLUMNS": "100"}).invoke(app, [str(argument) for argument in arguments])
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    return result.exit_code, result.stdout, result.stderr


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Everything that the commands write of the visit with sun and grid."""
    folder = tmp_path_factory.mktemp("technical")
    file = visit_file(folder, sources=SOURCES)
    for command in (("run", "--brief"), ("sweep",), ("size",)):
        code, out, err = planner(command[0], file, *command[1:], "--outputs", folder)
        assert code == 0, err
        (folder / f"{command[0]}.txt").write_text(out, encoding="utf-8")
    return folder


def words(path: Path) -> Iterator[str]:
    """Texts of a workbook's cells, values and formulas; not those of the form, nor what keys of the scenario mean."""
    for only_values in (True, False):
        for sheet in openpyxl.load_workbook(path, data_only=only_values):
            for row in sheet.iter_rows():
                for cell in row:
                    meaning = sheet.title == "Inputs" and cell.column in MEANING
                    if isinstance(cell.value, str) and not sheet.title.startswith("Form") and not meaning:
                        yield f"{sheet.title}!{cell.coordinate}: {cell.value}"


def of_money(texts: Iterator[str]) -> list[str]:
    return [text for text in texts if MONEY.search(text) and not any(said in text for said in SAID)]


@pytest.mark.parametrize("name", ["visit", "visit-sweep", "visit-size"])
def test_no_cell_speaks_of_money(folder: Path, name: str) -> None:
    assert of_money(words(folder / f"{name}.xlsx")) == []


def test_no_sheet_is_of_money(folder: Path) -> None:
    book = openpyxl.load_workbook(folder / "visit.xlsx")
    assert book.sheetnames == [
        "Answer", "What it rests on", "Options", "Next step", "Water", "Energy", "Head", "Checks", "Test and quality",
        "Tank", "Inputs", "Method and cautions", "Form", "Form of the run",
    ]  # fmt: skip
    labels = {cell.value for cell in openpyxl.load_workbook(folder / "visit.xlsx")["Options"]["A"]}
    # whether the target is met stands once, beside what it asks
    assert {figure.label for figure in FIGURES if not figure.is_money and figure.key != "meets_target"} <= labels
    assert not labels & {figure.label for figure in FIGURES if figure.is_money}


def test_neither_page_nor_terminal_nor_rows_speak_of_money(folder: Path) -> None:
    page = re.sub(r"<[^>]*>", "\n", (folder / "visit.html").read_text(encoding="utf-8"))
    shown = [(folder / f"{command}.txt").read_text(encoding="utf-8") for command in ("run", "sweep", "size")]
    rows = (folder / "visit-sweep.csv").read_text(encoding="utf-8").splitlines()[0].replace("_", " ")
    assert of_money(iter([*page.splitlines(), *"\n".join(shown).splitlines(), rows])) == []


def test_figures_of_money_are_null(folder: Path) -> None:
    data = json.loads((folder / "visit.json").read_text(encoding="utf-8"))
    assert (data["currency"], data["reference"]) == (None, None)
    for option in data["options"]:
        found = {figure.key: option[figure.key] for figure in FIGURES}
        assert all(found[figure.key] is None for figure in FIGURES if figure.is_money)
        assert found["short_days_per_year"] >= 0
        assert found["demand_met_worst_month_percent"] <= found["demand_met_percent"]
        assert option["unpriced"] is None
        assert {year["cost"] for year in option["yearly"]} == {None}
    assert all(effect["life_cycle_cost"] is None for effect in data["rests_on"])
    assert len(data["rests_on"]) > 10
    sized = json.loads((folder / "visit-size.json").read_text(encoding="utf-8"))["options"][0]
    assert sized["design"]["life_cycle_cost"] is None
    assert sized["design"]["weight_kwp"] == pytest.approx(
        sized["design"]["array_kwp"] + 0.25 * sized["design"]["tank_m3"]
    )


def test_the_answer_stands_on_one_screen(folder: Path, tmp_path: Path) -> None:
    out = (folder / "run.txt").read_text(encoding="utf-8")
    lines = [line for long in out.strip().splitlines() for line in _wrapped(long.rstrip())]
    assert lines[0].startswith("Wrote")
    assert 30 < len(lines) <= 48
    for part in (
        "Duty: 2.50 m3/h at 81.5 m", "motor input 1118 W", "This pump lifts 1.3 times what the site needs",
        "What would fit: a pump rated at about 82 m", "7 x 1", "estimate: measure or fetch before money is committed",
        "What it rests on", "weather.ghi_kwh_m2_day", "Local codes and licensed practice come first",
        "'Method and cautions'",
    ):  # fmt: skip
        assert part in " ".join(out.split()), part
    assert "What it rests on" not in planner("run", folder / "visit.toml", "--outputs", tmp_path, "--quick")[1]


def test_a_pump_that_cannot_serve_is_said_to_miss_without_a_word_of_money(tmp_path: Path) -> None:
    users = [{"kind": "people", "count": 2500}]
    sources = {"solar": {}, "generator": {"rating_kw": 6.0}}
    file = visit_file(tmp_path, demand={"users": users}, sources=sources, service={"options": ["solar", "generator"]})
    code, out, err = planner("run", file, "--outputs", tmp_path)
    assert code == 0, err
    said = " ".join(out.split())
    assert "Not to be built as it is" in said
    assert "No option meets the target of 98 % of the water" in said
    assert of_money(iter(out.splitlines())) == []
    assert of_money(words(tmp_path / "visit.xlsx")) == []
    data = json.loads((tmp_path / "visit.json").read_text(encoding="utf-8"))
    assert (data["best"], data["recommended"]) == (None, False)


def _wrapped(line: str) -> list[str]:
    return [line[begin : begin + 100] for begin in range(0, len(line), 100)] or [""]


def test_technical_answers_are_compared_with_one_another_only(tmp_path: Path, folder: Path) -> None:
    (tmp_path / "other").mkdir()
    sunny = visit_file(tmp_path)
    other = visit_file(tmp_path / "other", sources=SOURCES).rename(tmp_path / "mixed.toml")
    book = tmp_path / "side.xlsx"
    code, _, err = planner("run", sunny, other, "--outputs", tmp_path, "--compare", book, "--quick", "-q")
    assert code == 0, err
    assert of_money(words(book)) == []
    priced = visit_file(tmp_path / "other", currency="USD", prices={"pump": 800})
    priced = priced.rename(tmp_path / "priced.toml")
    book.unlink()
    code, _, err = planner("run", sunny, priced, "--outputs", tmp_path, "--compare", book, "--quick", "-q")
    assert code == 2
    assert "scenarios with prices and without cannot be compared" in err
    assert not book.exists()


def test_worth_without_prices_is_refused_in_one_message(tmp_path: Path) -> None:
    code, out, err = planner("worth", visit_file(tmp_path, sources=SOURCES), "grid", "--outputs", tmp_path / "out")
    assert code == 2
    assert out == ""
    assert len(err.strip().splitlines()) == 1
    assert "currency: is left out, so there are no prices" in err


def test_what_the_answer_rests_on_has_names_in_the_workbook_and_keys_in_the_terminal(folder: Path) -> None:
    sheet = openpyxl.load_workbook(folder / "visit.xlsx")["What it rests on"]
    cells = [cell.value for row in sheet.iter_rows() for cell in row]
    for key, label, notable in (
        ("weather.ghi_kwh_m2_day", "Global irradiation, mean of the year", True),
        ("demand.growth_percent_per_year", "Growth of demand", False),
    ):  # in two years growth changes 0.02 % of the water
        assert any(isinstance(value, str) and value.startswith(label) for value in cells), label
        assert key not in cells
        assert (key in (folder / "run.txt").read_text(encoding="utf-8")) == notable


def test_where_nothing_that_was_not_given_changes_the_answer_that_is_said_in_place_of_a_table(tmp_path: Path) -> None:
    grid = {"grid": {"hours": [[5, 20]]}}
    code, out, err = planner("run", visit_file(tmp_path, sources=grid), "--outputs", tmp_path)
    assert code == 0, err
    said = " ".join(out.split())
    assert "none changes the answer notably" in said
    assert "What it rests on" not in said
