"""The lists 'How to add' of DEVELOPERS.md, followed to the letter: a figure, a sheet, a check.

The pipe material is in `tests/water/test_materials.py`, the source in `tests/sources/test_a_source_of_ones_own.py`.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

import openpyxl
import pytest

from planner import figures
from planner.answers.of_study import study_verdicts
from planner.checks import tank, water
from planner.checks.verdict import Verdict
from planner.figures import Figure
from planner.report import run_workbook
from planner.report.document import Cell, Column, Page, Row, Table
from planner.report.json_file import study_as_data
from planner.report.run_workbook import write_workbook
from planner.study.compare import Study
from planner.text import en
from tests.study.scenarios import studied


@pytest.fixture(scope="module")
def study() -> Study:
    return studied(finance__analysis_period_years=1, service__options=["solar", "grid"])


def test_a_figure_is_one_entry_and_its_words(study: Study, monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """An entry of FIGURES and of the language's FIGURES: the sheet 'Options' and the JSON show it."""
    added = Figure(
        "pv_used_kwh_first_year", "kWh", "whole", "energy", lambda result: result.outcome.solar_kwh.sum(axis=-1)[..., 0]
    )
    monkeypatch.setattr(figures, "FIGURES", (*figures.FIGURES, added))
    monkeypatch.setitem(en.FIGURES, added.key, ("PV energy used in the first year", "Energy that the array gives."))
    expected = {option.name: float(option.outcome.solar_kwh[0].sum()) for option in study.options}
    data = study_as_data(study, [], ())
    assert {option["name"]: option[added.key] for option in data["options"]} == pytest.approx(expected)
    write_workbook(study, [], tmp_path / "book.xlsx", ())
    rows = {row[0]: row[2:] for row in openpyxl.load_workbook(tmp_path / "book.xlsx")["Options"].values}
    shown = [value for value in rows["PV energy used in the first year"] if isinstance(value, int | float)]
    assert sorted(shown) == pytest.approx(sorted(expected.values()))


def test_a_sheet_is_a_function_and_its_place(study: Study, monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """A function from the study to a Page, named in `run_report`: workbook and references follow."""

    def added_page(of: Study) -> Page:
        rows = tuple(Row(option.name, {"option": Cell(option.name)}) for option in of.ranked)
        return Page("added", "Added", "Added", blocks=(Table("added", (Column("option", "Supply option"),), rows),))

    usual = run_workbook.money_pages
    monkeypatch.setattr(run_workbook, "money_pages", lambda of, inputs: (*usual(of, inputs), added_page(of)))
    write_workbook(study, [], tmp_path / "book.xlsx", ())
    values = {row[0] for row in openpyxl.load_workbook(tmp_path / "book.xlsx")["Added"].values}
    assert {option.name for option in study.options} <= values


def test_a_check_is_a_verdict_of_its_topic(study: Study, monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """A verdict more from a topic's module: the verdicts, the JSON and the sheet 'Checks' show it."""
    added = Verdict(
        tank.TOPIC, "overflow_pipe", "Bore of the overflow, against the inlet's", "pass", 80.0, 50.0, "mm", "30 mm",
        "A tank that cannot overflow bursts its roof.", "", "invented for this test",
    )  # fmt: skip
    usual = tank.verdicts
    monkeypatch.setattr(tank, "verdicts", lambda basis: [*usual(basis), added])
    verdicts = study_verdicts(study)
    assert [verdict.key for verdict in verdicts].count("overflow_pipe") == 1
    assert [verdict.topic for verdict in verdicts].index(water.TOPIC) > [v.key for v in verdicts].index("overflow_pipe")
    assert "overflow_pipe" in [check["key"] for check in study_as_data(study, [], verdicts)["checks"]]
    write_workbook(study, [], tmp_path / "book.xlsx", verdicts)
    cells: set[Any] = {cell for row in openpyxl.load_workbook(tmp_path / "book.xlsx")["Checks"].values for cell in row}
    assert "Bore of the overflow, against the inlet's" in cells
