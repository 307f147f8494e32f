"""Form to data to TOML to form and back loses nothing."""

from __future__ import annotations

import shutil
import subprocess
import sys
import tempfile
import tomllib
from pathlib import Path
from types import SimpleNamespace
from typing import Any

import openpyxl
import pytest
import xlsxwriter
from hypothesis import HealthCheck, Phase, given, settings

from planner.assumptions.reader import check_scenario
from planner.report.form.layout import tables
from planner.report.form.reading import check_form, read_form
from planner.report.form.sheets import add_form_sheets, write_form
from planner.scenario.errors import InputError
from planner.scenario.starter import starter_data
from planner.scenario.writer import starter_text, toml_text
from planner.text import en, in_language
from tests.form.strategies import scenarios
from tests.form.workbooks import EXAMPLES, FEW, form


def as_read(value: Any) -> Any:
    """Numbers as one kind, for a form cannot tell 5 from 5.0; everything else as it is."""
    if isinstance(value, dict):
        return {key: as_read(inner) for key, inner in value.items()}
    if isinstance(value, list):
        return [as_read(inner) for inner in value]
    return float(value) if isinstance(value, int) and not isinstance(value, bool) else value


def differences(one: Any, other: Any, path: str = "") -> list[str]:
    """Where two readings differ, so that a failure shows the one key among hundreds."""
    if isinstance(one, dict) and isinstance(other, dict):
        keys = {**one, **other}
        return [text for key in keys for text in differences(one.get(key), other.get(key), f"{path}.{key}")]
    if isinstance(one, list) and isinstance(other, list) and len(one) == len(other):
        pairs = enumerate(zip(one, other, strict=True))
        return [text for place, (a, b) in pairs for text in differences(a, b, f"{path}[{place}]")]
    return [] if as_read(one) == as_read(other) else [f"{path}: {one!r} became {other!r}"]


@pytest.mark.parametrize("file", FEW, ids=lambda file: file.stem)
def test_examples_come_back_whole(file: Path, tmp_path: Path) -> None:
    data = tomllib.loads(file.read_text(encoding="utf-8"))
    path = form(tmp_path, data)
    back = read_form(path)
    assert differences(data, back) == []
    assert differences(data, tomllib.loads(toml_text(back))) == []
    assert check_form(path) == check_scenario(data, file.name)


@pytest.mark.slow
@settings(
    max_examples=25,
    deadline=None,
    suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large],
    phases=[Phase.explicit, Phase.reuse, Phase.generate],  # shrinking a whole scenario takes minutes
)
@given(data=scenarios())
def test_random_scenarios_come_back_whole(data: dict[str, Any]) -> None:
    scenario = check_scenario(data, "random")
    through_toml = tomllib.loads(toml_text(data))
    with tempfile.TemporaryDirectory() as folder:
        path = form(Path(folder), through_toml)
        back = read_form(path)
        assert differences(data, back) == []
        assert check_form(path) == scenario


@pytest.mark.parametrize("text", ["\xa0", "\u2003", '"\xa0"', '""', " "])
def test_a_name_of_white_space_or_quotes_comes_back(text: str, tmp_path: Path) -> None:
    data = tomllib.loads(starter_text()) | {"name": text}
    assert read_form(form(tmp_path, data))["name"] == text


def test_a_results_workbook_with_one_inputs_sheet_is_a_form(tmp_path: Path) -> None:
    data = tomllib.loads(EXAMPLES[0].read_text(encoding="utf-8"))
    path = tmp_path / "results.xlsx"
    book = xlsxwriter.Workbook(str(path))
    book.add_worksheet("Summary").write_formula(0, 0, "=1+1", None, 2)
    references = add_form_sheets(book, data, sheet="Inputs")
    book.add_worksheet("Hours").write_number(0, 0, 3)
    book.close()
    assert differences(data, read_form(path)) == []
    written = openpyxl.load_workbook(path)
    assert written.sheetnames == ["Summary", "Inputs", "Hours"]
    for key, wanted in (
        ("finance.discount_rate_percent", data["finance"]["discount_rate_percent"]),
        ("pipeline.segments[2].length_m", data["pipeline"]["segments"][1]["length_m"]),
        ("tank.sizes[3].price", data["tank"]["sizes"][2]["price"]),
    ):
        sheet, cell = references[key].split("!")
        assert written[sheet.strip("'")][cell.replace("$", "")].value == wanted


def test_every_key_of_the_models_has_a_cell(tmp_path: Path) -> None:
    book = xlsxwriter.Workbook(str(tmp_path / "blank.xlsx"))
    references = add_form_sheets(book, {})
    book.close()
    from planner.scenario.plate import Plate
    from planner.scenario.scenario import Scenario
    from planner.scenario.sources import Generator

    assert {f"sources.generator.{key}" for key in Generator.model_fields} <= set(references)
    assert {f"pump.plate.{key}" for key in Plate.model_fields} <= set(references)
    places = {key.split(".")[0].split("[")[0] for key in [*references, *(table.key for table in tables())]}
    assert places == set(Scenario.model_fields)
    assert {table.key for table in tables()} >= {
        "demand.users[people]",
        "demand.users[livestock]",
        "demand.users[irrigation]",
        "demand.users[volume]",
        "borehole.step_test[]",
        "pipeline.segments[]",
        "pipeline.profile[]",
        "pump.curve[]",
        "sources.solar.planes[]",
        "sources.grid.tariff.bands[]",
        "sources.grid.tariff.blocks[]",
        "tank.sizes[]",
        "costs.items[]",
        "costs.yearly[]",
        "overrides[]",
    }


def test_a_blank_form_holds_examples_but_no_values(tmp_path: Path) -> None:
    path = form(tmp_path)
    data = read_form(path)
    assert data == {
        "site": {},
        "demand": {"users": []},
        "borehole": {},
        "pipeline": {},
        "pump": {},
    }
    book = openpyxl.load_workbook(path)
    texts = [
        cell.value for sheet in book.worksheets for row in sheet.iter_rows() for cell in row if cell.value is not None
    ]
    assert "Starter village (invented)" in texts
    assert not any(cell.data_type == "f" for sheet in book.worksheets for row in sheet.iter_rows() for cell in row)


def test_validation_follows_the_bounds(tmp_path: Path) -> None:
    from tests.form.workbooks import cell_of_key

    book = openpyxl.load_workbook(form(tmp_path))

    def rule(key: str) -> Any:
        sheet, row = cell_of_key(book, key)
        return next(each for each in sheet.data_validations.dataValidation if f"B{row}" in str(each.sqref).split())

    level = rule("borehole.static_level_m")
    assert (level.type, level.formula1, level.formula2) == ("decimal", "0", "1500")
    depth = rule("borehole.pump_depth_m")
    assert depth.type == "custom"
    assert ">0" in depth.formula1
    assert "<=1500" in depth.formula1
    assert (rule("borehole.safe_yield_m3h").operator, rule("borehole.safe_yield_m3h").formula1) == ("greaterThan", "0")
    assert rule("finance.analysis_period_years").type == "whole"
    assert rule("pump.kind").formula1 == '"centrifugal,helical-rotor"'
    volume = rule("tank.volume_m3")
    assert (volume.type, volume.formula1, bool(volume.showErrorMessage)) == ("list", '"auto"', False)
    assert "Static water level" in level.prompt
    assert "0 to 1 500" in level.prompt


def test_texts_that_look_like_formulas_are_written_as_text(tmp_path: Path) -> None:
    data = tomllib.loads(starter_text())
    segments, users = data["pipeline"]["segments"], data["demand"]["users"]
    texts = ("=cmd()", "+1", "-1", "@sum")
    data["name"], data["question"], data["site"]["place"], data["pump"]["name"] = texts
    segments[0]["name"], segments[1]["name"], users[0]["name"], users[1]["name"] = texts
    path = form(tmp_path, data)
    cells = [cell for sheet in openpyxl.load_workbook(path) for row in sheet.iter_rows() for cell in row]
    for text in texts:
        found = [cell for cell in cells if cell.value == text]
        assert len(found) == 2
        assert all(cell.data_type == "s" and cell.quotePrefix for cell in found)
    assert differences(data, read_form(path)) == []


@pytest.mark.parametrize(
    ("change", "said"),
    [
        ({"colour": "red"}, "colour: has no cell in the form"),
        ({"seed": float("nan")}, "seed: nan cannot stand in a cell"),
        ({"name": "bell\x07"}, "name: a text with control characters"),
        ({"question": "x" * 40_000}, "longer than a cell"),
    ],
)
def test_what_has_no_cell_is_refused_and_the_old_file_stays(change: dict[str, Any], said: str, tmp_path: Path) -> None:
    path = form(tmp_path)
    before = path.read_bytes()
    with pytest.raises(InputError, match=said):
        write_form(path, tomllib.loads(starter_text()) | change)
    assert path.read_bytes() == before
    assert list(tmp_path.iterdir()) == [path]


def test_a_form_is_an_xlsx(tmp_path: Path) -> None:
    with pytest.raises(InputError, match=r"must end in \.xlsx"):
        write_form(tmp_path / "site.xls")


@pytest.mark.slow
@pytest.mark.skipif(shutil.which("soffice") is None, reason="LibreOffice is not installed")
def test_a_form_saved_by_another_program_reads_the_same(tmp_path: Path) -> None:
    data = tomllib.loads(Path("scenarios/hill-school.toml").read_text(encoding="utf-8")) | {"question": "=1+1"}
    path = form(tmp_path, data)
    saved = tmp_path / "saved"
    command = ["soffice", "--headless", f"-env:UserInstallation={(tmp_path / 'profile').as_uri()}"]
    command += ["--convert-to", "xlsx", "--outdir", str(saved), str(path)]
    subprocess.run(command, check=True, capture_output=True, timeout=120)
    assert differences(data, read_form(saved / path.name)) == []


def test_the_form_is_written_in_the_language_in_use(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """The sections are kept, but not from one language to another; a form is read by its keys in either."""
    other = {"form.sheet.tank": "Reservoir", "form.section.topup": "Schwimmer", "form.must_be_given": "Pflicht"}
    module = SimpleNamespace(SENTENCES=en.SENTENCES | other, FIGURES=en.FIGURES)
    monkeypatch.setitem(sys.modules, "planner.text.xx", module)  # type: ignore[arg-type]
    monkeypatch.setattr("planner.text.languages", lambda: ("en", "xx"))
    data = starter_data()
    with in_language("en"):
        write_form(tmp_path / "en.xlsx", data)
    with in_language("xx"):
        write_form(tmp_path / "xx.xlsx", data)
    first, second = (openpyxl.load_workbook(tmp_path / f"{code}.xlsx") for code in ("en", "xx"))
    assert ("Tank" in first.sheetnames, "Reservoir" in second.sheetnames) == (True, True)
    assert "Schwimmer" in {row[0] for row in second["Reservoir"].values}
    assert "Pflicht" in {cell for sheet in second.worksheets for row in sheet.values for cell in row}
    assert "Pflicht" not in {cell for sheet in first.worksheets for row in sheet.values for cell in row}
    assert read_form(tmp_path / "xx.xlsx") == read_form(tmp_path / "en.xlsx") == data
