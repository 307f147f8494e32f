"""The workbook as others open it: whole or not at all, the same each time, and fit to be read and printed."""

from __future__ import annotations

import math
import re
from dataclasses import replace
from pathlib import Path
from typing import Any

import openpyxl
import pytest
from openpyxl.utils import get_column_letter, range_boundaries

from planner.report.form.reading import check_form
from planner.report.run_workbook import write_workbook
from planner.report.workbook.sheet import NotFinite
from planner.study.compare import Study
from tests.report.conftest import Written, write
from tests.report.formulas import formula_cells

SHEETS = (
    "Answer", "What it rests on", "Options", "Water", "Energy", "Head", "Checks", "Test and quality", "Tank",
    "Bill of quantities", "Cash flow", "What users pay", "Simulated", "Replacements", "Returns", "Inputs",
    "Method and cautions", "Form", "Form of the run",
)  # fmt: skip
ONE_PAGE = {"Answer", "What it rests on", "Water", "Energy", "Head", "Test and quality"}
UNPRINTED = {"Cash flow", "Simulated", "Replacements", "Returns", "Inputs", "Form"}
"""Sheets of the workbook that stay out of the printed set."""
HEADED = {"Options", "Checks", "Bill of quantities", "What users pay"}
"""Printed sheets of several pages whose first table keeps its header in sight and on every page."""
HIDDEN = "Form of the run"
DIGIT_PIXELS = 7
FIRST_HEADERS = {"Figure", "Month or life year", "Verdict", "Line", "Year", "Key", "Step"}


def with_present_cost(study: Study, value: float) -> Study:
    first = study.options[0]
    figures = first.life.figures | {"present_cost": value}
    broken = replace(first, life=replace(first.life, figures=figures))
    return replace(study, options=(broken, *study.options[1:]))


def test_sheets_stand_in_order_and_the_answer_opens_first(written: Written) -> None:
    assert tuple(written.formulas.sheetnames) == SHEETS
    assert written.formulas.active.title == "Answer"


def test_every_formula_has_a_stored_value(written: Written) -> None:
    """Whether it is the value that the formula gives is for test_alive, with an independent spreadsheet program."""
    count = 0
    for name, cell in formula_cells(written.formulas):
        stored = written.values[name][cell.coordinate].value
        assert stored not in (None, ""), f"{name} {cell.coordinate} {cell.value} has no stored value"
        count += 1
    assert count > 100


def test_no_cell_holds_an_error_or_a_number_without_value(written: Written) -> None:
    for sheet in written.values:
        for row in sheet.iter_rows():
            for cell in row:
                assert cell.data_type != "e", f"{sheet.title} {cell.coordinate}"
                if isinstance(cell.value, float):
                    assert math.isfinite(cell.value)
                if isinstance(cell.value, str):
                    assert cell.value.lower() not in {"nan", "inf", "-inf", "none ", "true", "false"}


def test_texts_that_look_like_formulas_stay_texts(rich: Written) -> None:
    looks = [
        (sheet.title, cell)
        for sheet in rich.formulas
        for row in sheet.iter_rows()
        for cell in row
        if isinstance(cell.value, str) and cell.value.startswith(("=", "+", "-", "@")) and cell.data_type == "s"
    ]
    begin = {cell.value.split()[0] for _, cell in looks}
    assert {"=1+1", '=HYPERLINK("x")', "+place"} <= begin
    written_formulas = {cell.value for _, cell in formula_cells(rich.formulas)}
    bare = {re.sub(r'"(?:[^"]|"")*"', "", text) for text in written_formulas}  # words within a formula do nothing
    assert not any("HYPERLINK" in text or text.startswith("=1+1") for text in bare)


def test_control_characters_do_not_reach_the_file(rich: Written) -> None:
    assert rich.values["Answer"]["A2"].value == "+place   invented"


@pytest.mark.parametrize("name", ["plain", "alone"])
def test_a_results_workbook_can_be_run_again(name: str, request: pytest.FixtureRequest) -> None:
    written: Written = request.getfixturevalue(name)
    again = check_form(written.path)
    assert again.model_dump() == written.study.scenario.model_dump()


def test_same_study_gives_the_same_bytes(plain: Written, tmp_path: Path) -> None:
    write(plain.study, tmp_path / "again.xlsx")
    assert (tmp_path / "again.xlsx").read_bytes() == plain.path.read_bytes()


def test_a_number_without_value_leaves_the_earlier_workbook_alone(plain: Written, tmp_path: Path) -> None:
    path = tmp_path / "study.xlsx"
    before = plain.path.read_bytes()
    path.write_bytes(before)
    with pytest.raises(NotFinite, match=r"'What it rests on' [A-Z]+\d+: nan"):
        write_workbook(with_present_cost(plain.study, float("nan")), [], path, [])
    assert path.read_bytes() == before
    assert [file.name for file in tmp_path.iterdir()] == ["study.xlsx"]


def test_a_first_failure_leaves_nothing_behind(plain: Written, tmp_path: Path) -> None:
    with pytest.raises(NotFinite):
        write_workbook(with_present_cost(plain.study, float("inf")), [], tmp_path / "study.xlsx", [])
    assert list(tmp_path.iterdir()) == []


def test_a_full_disk_leaves_the_earlier_workbook_alone(
    plain: Written, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "study.xlsx"
    before = plain.path.read_bytes()
    path.write_bytes(before)

    def half_written(file: Path, content: bytes) -> None:
        with file.open("wb") as stream:
            stream.write(content[:100])
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(Path, "write_bytes", half_written)
    with pytest.raises(OSError, match="No space left"):
        write(plain.study, path)
    assert path.read_bytes() == before
    assert [file.name for file in tmp_path.iterdir()] == ["study.xlsx"]


def test_very_long_texts_are_cut_not_lost(plain: Written, tmp_path: Path) -> None:
    study = replace(plain.study, scenario=plain.study.scenario.model_copy(update={"question": "why? " * 10_000}))
    write(study, tmp_path / "long.xlsx")
    sheet = openpyxl.load_workbook(tmp_path / "long.xlsx")["Answer"]
    question = next(cell.value for (cell,) in sheet.iter_rows(max_col=1) if str(cell.value).startswith("Question"))
    assert question.endswith("…")
    assert 31_000 < len(question) <= 32_767


def test_numbers_fit_their_columns(written: Written) -> None:
    for sheet in written.values:
        if sheet.title == HIDDEN:
            continue
        # openpyxl gathers neighbouring columns of one width under the first of them.
        widths = {}
        for dimension in sheet.column_dimensions.values():
            for column in range(dimension.min, dimension.max + 1):
                widths[column] = dimension.width
        over_several = {area.coord.split(":")[0] for area in sheet.merged_cells.ranges}
        for row in sheet.iter_rows():
            for cell in row:
                if cell.coordinate in over_several:
                    continue
                if isinstance(cell.value, int | float) and not isinstance(cell.value, bool):
                    shown = _shown(cell.value, cell.number_format)
                    bold = 1.1 if cell.font.b else 1.0
                    # Arial 10 is 7.4 pixels a digit, a comma or point half of that; 5 pixels are the cell's margins.
                    pixels = bold * sum(3.8 if letter in ",.-" else 7.45 for letter in shown)
                    assert pixels <= DIGIT_PIXELS * widths[cell.column], f"{sheet.title} {cell.coordinate} {shown}"


def _shown(value: float, number_format: str) -> str:
    first = number_format.split(";")[0]
    if first.startswith('"') and first.endswith('"'):  # words in the place of the number
        return first.strip('"')
    if first == "General":
        return f"{value:.10g}"
    decimals = len(first.partition(".")[2])
    return f"{value:,.{decimals}f}" if "," in first else f"{value:.{decimals}f}"


def test_pages_are_set_up_for_printing(written: Written) -> None:
    for sheet in written.formulas:
        if sheet.title == HIDDEN:
            assert sheet.sheet_state == "veryHidden"
            continue
        assert sheet.page_setup.paperSize == 9
        assert sheet.sheet_properties.pageSetUpPr.fitToPage
        assert sheet.page_setup.fitToWidth in (None, 1)
        assert (sheet.page_setup.fitToHeight or 1) <= (1 if sheet.title in ONE_PAGE | UNPRINTED - {"Form"} else 3)
        assert "&P" in sheet.oddFooter.right.text
        assert "&N" in sheet.oddFooter.right.text
        if sheet.title in HEADED:
            top_row = int(sheet.print_title_rows.strip("$").split(":")[0].replace("$", ""))
            assert sheet.freeze_panes is not None
            frozen_from = sheet[sheet.freeze_panes].row
            assert frozen_from == top_row + 1
            assert sheet.cell(top_row, 1).value in FIRST_HEADERS


def printed(sheet: Any) -> tuple[int, int, int, int]:
    """First column and row, last column and row of what is printed of a sheet."""
    return range_boundaries(sheet.print_area.rpartition("!")[2].replace("$", ""))


def test_what_stays_in_the_workbook_has_a_print_area_in_which_nothing_stands(written: Written) -> None:
    for sheet in written.formulas:
        if sheet.title == HIDDEN:
            continue
        left, top, right, bottom = printed(sheet)
        area = sheet.print_area.rpartition("!")[2]
        area = area if ":" in area else f"{area}:{area}"
        filled = any(cell.value is not None for row in sheet[area] for cell in row)
        assert filled == (sheet.title not in UNPRINTED), sheet.title
        if not filled:
            assert (left, top) == (right, bottom)
            assert not sheet.print_title_rows


def test_charts_lie_inside_the_printed_page(written: Written) -> None:
    for sheet in written.formulas:
        for chart in sheet._charts:
            _, _, right, bottom = printed(sheet)
            corner = chart.anchor.to
            assert corner.col < right, f"{sheet.title}: chart reaches {get_column_letter(corner.col + 1)}"
            assert corner.row < bottom or chart.anchor._from.row >= bottom, f"{sheet.title}: a page break cuts a chart"


def test_letters_are_printed_with_eight_points_or_more(written: Written) -> None:
    """Letters of 10 points on A4, as small as the printed columns and, on a single page, the rows make them."""
    seen = 0
    for sheet in written.formulas:
        if sheet.title in UNPRINTED or sheet.title == HIDDEN:
            continue
        left, top, right, bottom = printed(sheet)
        wide = sum(0.75 * (7 * width_of(sheet, column) + 5) for column in range(left, right + 1))
        high = sum(sheet.row_dimensions[row].height or 12.75 for row in range(top, bottom + 1))
        across, down = (595.3, 841.9) if sheet.page_setup.orientation == "portrait" else (841.9, 595.3)
        scale = min(1.0, (across - 57.6) / wide)
        if sheet.title in ONE_PAGE:
            scale = min(scale, (down - 79.2) / high)
        assert 10 * scale >= 7.9, f"{sheet.title}: {10 * scale:.1f} points"
        seen += 1
    assert seen > 8


def width_of(sheet: Any, column: int) -> float:
    found = (each for each in sheet.column_dimensions.values() if each.min <= column <= each.max)
    return next((each.width - 0.71 for each in found if each.width), 8.43)


def test_charts_name_their_axes_and_units(written: Written) -> None:
    sheets_with_charts = [sheet.title for sheet in written.formulas if sheet._charts]
    wanted = ["Answer", "What it rests on", "Water", "Energy", "Head", "Tank"]
    assert [name for name in sheets_with_charts if name != "Checks"] == wanted
    for sheet in written.formulas:
        for chart in sheet._charts:
            value_title = "".join(run.t for p in chart.y_axis.title.tx.rich.p for run in p.r or [])
            assert "(" in value_title, sheet.title
            assert not chart.y_axis.delete
            assert not chart.x_axis.delete
            for series in chart.series:
                reference = (series.yVal or series.val).numRef.f
                _assert_numbers(written, reference)


def _assert_numbers(written: Written, reference: str) -> None:
    name, _, cells = reference.replace("$", "").rpartition("!")
    rows = written.values[name.strip("'")][cells]
    rows = rows if isinstance(rows, tuple) else ((rows,),)
    values = [cell.value for row in rows for cell in (row if isinstance(row, tuple) else (row,))]
    assert any(isinstance(value, int | float) for value in values), reference


def test_footer_shows_an_ampersand_as_such(rich: Written) -> None:
    assert "=1+1 && 'Söhne' <invented>" in rich.formulas["Answer"].oddFooter.left.text
