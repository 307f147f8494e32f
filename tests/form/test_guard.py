"""Workbooks from strangers: what could do harm is refused with a message, and nothing in them is executed."""

from __future__ import annotations

import tomllib
import zipfile
from pathlib import Path

import openpyxl
import pytest

from planner.report.form import guard
from planner.report.form.reading import check_form, read_form
from planner.scenario.errors import InputError
from planner.scenario.writer import starter_text
from tests.form.workbooks import form, repacked

STARTER = tomllib.loads(starter_text())
SHEET = "xl/worksheets/sheet1.xml"


def refused(path: Path) -> str:
    with pytest.raises(InputError) as caught:
        check_form(path)
    return str(caught.value)


def test_the_form_itself_passes(tmp_path: Path) -> None:
    guard.check_archive(form(tmp_path, STARTER))


def test_files_that_are_no_workbook(tmp_path: Path) -> None:
    path = tmp_path / "site.xlsx"
    assert "there is no such file" in refused(path)
    path.write_bytes(b"\xd0\xcf\x11\xe0 an old format")
    assert "is not a workbook of the kind .xlsx (an old .xls or a file with a password" in refused(path)
    with zipfile.ZipFile(path, "w") as archive:
        archive.writestr("letter.txt", "<hello>")
    assert "is a packed file, but not a workbook" in refused(path)
    assert "cannot be read" in refused(tmp_path)
    openpyxl.Workbook().save(path)
    assert "holds no form" in refused(path)


@pytest.mark.parametrize(
    ("part", "said"),
    [
        ("xl__vbaProject.bin", "contains macros"),
        ("xl__macrosheets__sheet1.xml", "contains macros"),
        ("xl__externalLinks__externalLink1.xml", "contains links to other workbooks"),
        ("xl__connections.xml", "contains data connections"),
        ("xl__embeddings__oleObject1.bin", "contains embedded objects"),
    ],
)
def test_parts_that_no_form_needs(part: str, said: str, tmp_path: Path) -> None:
    assert said in refused(repacked(form(tmp_path, STARTER), **{part: b"<x/>"}))


def test_a_macro_workbook_by_its_content_type(tmp_path: Path) -> None:
    def macro(name: str, text: bytes) -> bytes:
        plain = b"openxmlformats-officedocument.spreadsheetml.sheet.main"
        return text.replace(plain, b"ms-excel.sheet.macroEnabled.main") if name == "[Content_Types].xml" else text

    assert "is a workbook with macros" in refused(repacked(form(tmp_path, STARTER), macro))


BOMB = b"""<?xml version="1.0"?><!DOCTYPE x [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;">]><worksheet>&b;</worksheet>"""


@pytest.mark.parametrize("part", [SHEET, "xl/sharedStrings.xml", "xl/styles.xml", "docProps/core.xml"])
def test_entities_in_any_part(part: str, tmp_path: Path) -> None:
    path = repacked(form(tmp_path, STARTER), lambda name, text: BOMB if name == part else text)
    assert f"its part {part} declares a document type or entities" in refused(path)


@pytest.mark.parametrize("encoding", ["utf-16", "utf-16-le", "cp037", "latin-1"])
def test_entities_hidden_by_an_encoding(encoding: str, tmp_path: Path) -> None:
    text = (
        BOMB.decode()
        .replace('"1.0"', f'"1.0" encoding="{encoding}"')
        .replace("<!", "<!" if encoding != "latin-1" else "< !")
    )
    path = repacked(form(tmp_path, STARTER), lambda name, old: text.encode(encoding) if name == SHEET else old)
    assert f"its part {SHEET} is not XML in UTF-8" in refused(path)


def test_packed_to_fill_the_memory(tmp_path: Path) -> None:
    path = repacked(form(tmp_path, STARTER), xl__zeros=b"<x/>" + b"0" * 5_000_000)
    assert "packed tighter than 200 to 1" in refused(path)


def test_limits_of_size(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    path = form(tmp_path, STARTER)
    for name, limit, said in (
        ("LARGEST_FILE", 1000, "a form is at most 1000"),
        ("MOST_PARTS", 5, "parts; at most 5 are read"),
        ("LARGEST_UNPACKED", 10_000, "at most 10000 are read"),
    ):
        with monkeypatch.context() as patch:
            patch.setattr(guard, name, limit)
            assert said in refused(path)
    guard.check_archive(path)


def test_the_stated_limits_are_the_limits() -> None:
    said = " ".join((guard.__doc__ or "").split())
    assert f"at most {guard.LARGEST_FILE // 10**6} MB" in said
    assert f"at most {guard.MOST_PARTS:,} parts, {guard.LARGEST_UNPACKED // 10**6} MB".replace(",", " ", 1) in said
    assert f"{guard.TIGHTEST_PACKING} to 1" in said
    assert f"first {guard.MOST_ROWS:,} rows".replace(",", " ") in said


@pytest.mark.filterwarnings("ignore:Duplicate name")
def test_two_parts_of_one_name(tmp_path: Path) -> None:
    path = form(tmp_path, STARTER)
    with zipfile.ZipFile(path, "a") as archive:
        archive.writestr(SHEET, "<worksheet/>")
    assert "holds two parts of one name" in refused(path)


def test_huge_sheets(tmp_path: Path) -> None:
    path = form(tmp_path, STARTER)
    book = openpyxl.load_workbook(path)
    book["Borehole"].cell(1_000_000, 2).value = 5
    book.save(path)
    assert "has values below row 5000" in refused(path)
    book["Borehole"].cell(1_000_000, 2).value = None
    book["Borehole"].row_dimensions[1_000_000].height = 30
    book["Borehole"].cell(4, 16_000).value = "far to the right"
    book.save(path)
    assert read_form(path)["name"] == STARTER["name"]


def test_a_merged_area_over_the_whole_sheet_costs_nothing(tmp_path: Path) -> None:
    def merged(name: str, text: bytes) -> bytes:
        return (
            text.replace(b'<mergeCell ref="', b'<mergeCell ref="A1:XFD1048576"/><mergeCell ref="', 1)
            if name == SHEET
            else text
        )

    assert read_form(repacked(form(tmp_path, STARTER), merged))["name"] == STARTER["name"]


def test_damaged_workbooks(tmp_path: Path) -> None:
    for part in (SHEET, "xl/workbook.xml", "xl/styles.xml", "xl/sharedStrings.xml"):
        path = repacked(form(tmp_path, STARTER), lambda name, text, part=part: text[:300] if name == part else text)
        assert "is a damaged workbook that cannot be read" in refused(path)
    path = form(tmp_path, STARTER)
    path.write_bytes(path.read_bytes()[:-3000])
    assert "is not a workbook of the kind .xlsx" in refused(path)


def test_formulas_beside_the_value_cells_are_left_alone(tmp_path: Path) -> None:
    path = form(tmp_path, STARTER)
    book = openpyxl.load_workbook(path)
    book["Borehole"]["R5"].value = '=WEBSERVICE("http://192.0.2.1/")'
    book["Borehole"]["R40"].value = "=1/0"
    book.save(path)
    assert read_form(path)["borehole"] == STARTER["borehole"]
