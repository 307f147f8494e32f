"""Several scenarios side by side. Places and prices are invented."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import Any

import openpyxl
import pytest

from planner.answers.of_study import failed_of_first, study_verdicts
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
    assert book.sheetnames == ["Programme", "Side by side", "All options"]
    (series,) = book["Programme"]._charts[0].series
    references = (series.cat.strRef.f, series.val.numRef.f)
    names, costs = (book["Programme"][ref.split("!")[1].replace("$", "")] for ref in references)
    assert [cell.value for (cell,) in names] == list(lines["Figure"])
    assert costs[0][0].value == pytest.approx(float(rich.study.ranked[0].life.users["capital_cost_per_person"]))
    assert book["All options"].max_row == 2 + 2 + sum(len(study.options) for study in studies)


def test_unlike_bases_are_told(rich: Written, plain: Written, tmp_path: Path) -> None:
    write_comparison([rich.study, plain.study], tmp_path / "compare.xlsx")
    told = next(text for text in _lines(tmp_path / "compare.xlsx") if text.startswith("!"))
    assert "analysis periods, discount rates, kinds of prices" in told
    write_comparison([plain.study, plain.study], tmp_path / "same.xlsx")
    lines = _lines(tmp_path / "same.xlsx")
    assert not any(text.startswith("!") for text in lines)
    assert len(set(lines["Figure"])) == 2


def programme(path: Path) -> dict[str, dict[str, Any]]:
    """Rows of the first sheet by their first cell."""
    rows = list(openpyxl.load_workbook(path, data_only=True)["Programme"].iter_rows(values_only=True))
    start = next(number for number, row in enumerate(rows) if row[0] == "Scenario")
    return {str(row[0]): dict(zip(rows[start], row, strict=True)) for row in rows[start + 1 :] if row[0]}


def test_a_programme_adds_its_sites_up(rich: Written, plain: Written, alone: Written, tmp_path: Path) -> None:
    studies = [rich.study, plain.study, alone.study]
    write_comparison(studies, tmp_path / "compare.xlsx")
    *_, found = (row for name, row in programme(tmp_path / "compare.xlsx").items() if name.startswith("All 3 sites"))
    firsts = [study.ranked[0] for study in studies]
    capital = [float(option.life.capital_cost) for option in firsts]
    people = [float(study.scenario.people or 0) for study in studies]
    assert people[2] == 0
    assert found["People, first year"] == sum(people)
    assert found["Capital cost (USD)"] == pytest.approx(sum(capital))
    grants = [float(option.life.figures["grant"]) for option in firsts]
    assert found["Grant (USD)"] == pytest.approx(sum(grants))
    assert found["Capital cost per person (USD/person)"] == pytest.approx(sum(capital[:2]) / sum(people))
    assert found["Grant per person (USD/person)"] == pytest.approx(sum(grants[:2]) / sum(people))
    failing = sum(len(failed_of_first(study, study_verdicts(study))) for study in studies)
    assert found["Site checks that fail"] == failing
    worst = min(100 * option.worst_year_share for option in firsts)
    assert found["Demand met in the worst year (% of demand)"] == pytest.approx(worst)


def test_sites_of_several_currencies_are_brought_to_that_of_the_programme(plain: Written, tmp_path: Path) -> None:
    finance = plain.study.scenario.finance.model_copy(update={"programme_currency": "USD", "exchange_rate": 130.0})
    other = _in(plain.study, "KES")
    other = replace(other, scenario=other.scenario.model_copy(update={"finance": finance, "name": "Abroad"}))
    write_comparison([plain.study, other], tmp_path / "compare.xlsx")
    found = programme(tmp_path / "compare.xlsx")
    own, abroad = found[plain.study.scenario.name], found["Abroad"]
    for heading in (
        "Capital cost (USD)",
        "Life-cycle cost (present value, USD)",
        "Capital cost per person (USD/person)",
    ):
        assert abroad[heading] == pytest.approx(own[heading] / 130)
    assert abroad["People, first year"] == own["People, first year"]
    assert "Abroad: prices in KES, at 130 KES for 1 USD." in found
    lines = _lines(tmp_path / "compare.xlsx")
    assert lines["Capital cost"][1] == pytest.approx(lines["Capital cost"][0] / 130)


def test_currencies_must_be_the_same(plain: Written, tmp_path: Path) -> None:
    with pytest.raises(InputError, match=r"different currencies.*finance.programme_currency.*finance.exchange_rate"):
        write_comparison([plain.study, _in(plain.study, "KES")], tmp_path / "compare.xlsx")
    with pytest.raises(InputError, match="at least two"):
        write_comparison([plain.study], tmp_path / "compare.xlsx")
    assert not list(tmp_path.iterdir())
