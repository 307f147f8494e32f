"""Several scenarios side by side. Places and prices are invented."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import Any

import openpyxl
import pytest

from planner.report.pages.comparison import comparison_report
from planner.report.workbook.book import write_book
from planner.scenario.errors import InputError
from planner.study.compare import Study
from tests.report.conftest import Written


def write_comparison(studies: list[Study], path: Path) -> None:
    write_book(comparison_report(studies, str(path)), path)


def _lines(path: Path) -> dict[str, tuple[Any, ...]]:
    rows = openpyxl.load_workbook(path, data_only=True)["Side by side"].iter_rows(values_only=True)
    return {str(row[0]): row[2:] for row in rows if row[0]}


def _in(study: Study, currency: str) -> Study:
    return replace(study, scenario=study.scenario.model_copy(update={"currency": currency}))


def test_scenarios_stand_side_by_side(rich: Written, plain: Written, alone: Written, tmp_path: Path) -> None:
    studies = [rich.study, plain.study, alone.study]
    write_comparison(studies, tmp_path / "compare.xlsx")
    lines = _lines(tmp_path / "compare.xlsx")
    assert [name.split(" (")[0] for name in lines["Figure"]] == [
        study.scenario.name.split(" (")[0] for study in studies
    ]
    assert lines["Least cost, or nearest"] == tuple(study.ranking[0] for study in studies)
    for name, attribute in (("Capital cost", "capital_cost"), ("Levelised cost of water", "levelised_cost_per_m3")):
        wanted = [float(getattr(study.ranked[0].life, attribute)) for study in studies]
        assert list(lines[name]) == pytest.approx(wanted)
    paid = [
        sum(lines[name][place] for name in ("Grant", "Loan", "Own funds in year 0 (community or owner)"))
        for place in range(3)
    ]
    assert paid == pytest.approx(list(lines["Capital cost"]))
    assert lines["Annualised cost per person of the first year"][2] == "no people"
    book = openpyxl.load_workbook(tmp_path / "compare.xlsx")
    assert book.sheetnames == ["Side by side", "All options"]
    (series,) = book["Side by side"]._charts[0].series
    references = (series.cat.strRef.f, series.val.numRef.f)
    (names,), (costs,) = (book["Side by side"][ref.split("!")[1].replace("$", "")] for ref in references)
    assert [cell.value for cell in names] == list(lines["Figure"])
    assert [cell.value for cell in costs] == list(lines["Levelised cost of water"])
    assert book["All options"].max_row == 2 + 2 + sum(len(study.options) for study in studies)


def test_unlike_bases_are_told(rich: Written, plain: Written, tmp_path: Path) -> None:
    write_comparison([rich.study, plain.study], tmp_path / "compare.xlsx")
    told = next(text for text in _lines(tmp_path / "compare.xlsx") if text.startswith("!"))
    assert "analysis periods, discount rates, kinds of prices" in told
    write_comparison([plain.study, plain.study], tmp_path / "same.xlsx")
    lines = _lines(tmp_path / "same.xlsx")
    assert not any(text.startswith("!") for text in lines)
    assert len(set(lines["Figure"])) == 2


def test_currencies_must_be_the_same(plain: Written, tmp_path: Path) -> None:
    with pytest.raises(InputError, match="different currencies"):
        write_comparison([plain.study, _in(plain.study, "KES")], tmp_path / "compare.xlsx")
    with pytest.raises(InputError, match="at least two"):
        write_comparison([plain.study], tmp_path / "compare.xlsx")
    assert not list(tmp_path.iterdir())
