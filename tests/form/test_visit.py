"""The first sheet of the form: one visit, on which all that must be given stands, and nothing twice.

Places, people and pumps are invented.
"""

from __future__ import annotations

import json
import tomllib
from collections import Counter
from pathlib import Path
from typing import Any

import openpyxl
import pytest
import xlsxwriter
from typer.testing import CliRunner

from planner.assumptions.reader import check_scenario, read_scenario
from planner.cli import app
from planner.report.form.cells import Content, value_of
from planner.report.form.layout import sections, sheet_names
from planner.report.form.parts import KEY_COLUMN
from planner.report.form.reading import check_form, read_form
from planner.report.form.sheets import add_form_sheets
from planner.scenario.errors import InputError
from planner.scenario.paths import dotted
from planner.scenario.scenario import Scenario
from planner.scenario.starter import short_text
from planner.scenario.walk import leaves
from tests.form.test_roundtrip import differences
from tests.form.workbooks import FEW, cell_of_key, edited, fill_row, form

VISIT = Path("scenarios/visit.toml")


def data() -> dict[str, Any]:
    return tomllib.loads(VISIT.read_text(encoding="utf-8"))


def cells(given: dict[str, Any]) -> dict[str, Any]:
    """What a person types for a short scenario, by key."""
    typed = {dotted(path): value for path, value in leaves(given) if path[-1] != "kind"}
    return typed | {"sources.solar.described": "yes", "sources.grid.hours": "5-20"}


def answer(*arguments: object) -> tuple[str, Any]:
    """What a command prints, and the JSON that it writes where its last argument is a folder."""
    result = CliRunner().invoke(app, [str(argument) for argument in arguments])
    assert result.exit_code == 0, result.output
    folder = arguments[-1]
    written = sorted(folder.glob("*.json")) if isinstance(folder, Path) and folder.is_dir() else []
    return result.stdout, json.loads(written[0].read_text(encoding="utf-8")) if written else None


def on_visit() -> list[Any]:
    return [slot for section in sections() if section.sheet == sheet_names()[0] for slot in section.rows]


def refused(path: Path) -> list[str]:
    with pytest.raises(InputError) as caught:
        check_form(path)
    return [line.removeprefix(f"{path}: ") for line in caught.value.lines()]


def test_the_visit_comes_first_and_no_key_stands_twice(tmp_path: Path) -> None:
    book = openpyxl.load_workbook(form(tmp_path))
    assert book.sheetnames[0] == "Visit"
    keys = Counter(
        str(sheet.cell(row, KEY_COLUMN + 1).value)
        for sheet in book.worksheets
        for row in range(2, sheet.max_row + 1)
        if sheet.cell(row, KEY_COLUMN + 1).value
    )
    twice = [key for key, times in keys.items() if times > 1 and not key.startswith("-") and key != "example"]
    assert twice == []
    assert 28 <= len(on_visit()) <= 32
    assert all(slot.printed for slot in on_visit())


def test_the_visit_asks_in_the_order_of_the_short_starter() -> None:
    given = [dotted(path) for path, _ in leaves(tomllib.loads(short_text())) if path[-1] != "kind"]
    asked = [slot.key for slot in on_visit()]
    assert [key for key in asked if key in given] == given


def test_the_visit_alone_is_a_short_scenario(tmp_path: Path) -> None:
    path = edited(form(tmp_path), cells(data()))
    assert differences(data(), read_form(path)) == []
    scenario = check_form(path)
    assert scenario == read_scenario(VISIT)
    assert scenario.assumptions == read_scenario(VISIT).assumptions


def test_the_visit_alone_is_checked_and_run_as_its_file_is(tmp_path: Path) -> None:
    path = edited(form(tmp_path), cells(data()))
    assert answer("check", path)[0] == answer("check", VISIT)[0]
    _, of_file = answer("run", VISIT, "--quick", "--outputs", tmp_path / "file")
    _, of_form = answer("run", path, "--quick", "--outputs", tmp_path / "form")
    _, again = answer("run", tmp_path / "form" / "site.xlsx", "--quick", "--outputs", tmp_path / "again")
    assert of_file["options"]
    assert of_form == of_file
    assert again == of_file


def test_a_short_scenario_is_written_on_the_visit_alone(tmp_path: Path) -> None:
    book = openpyxl.load_workbook(form(tmp_path, data()))
    for key, value in cells(data()).items():
        sheet, row = cell_of_key(book, key)
        assert (sheet.title, sheet.cell(row, 2).value) == ("Visit", value), key


@pytest.mark.parametrize("file", FEW, ids=lambda file: file.stem)
def test_the_form_of_a_results_workbook_is_read_back(file: Path, tmp_path: Path) -> None:
    """There it is one sheet, the last, and holds what was given, not what was worked out."""
    scenario = read_scenario(file)
    path = tmp_path / "results.xlsx"
    book = xlsxwriter.Workbook(str(path))
    book.add_worksheet("Answer").write_formula(0, 0, "=1+1", None, 2)
    references = add_form_sheets(book, scenario.given("json"), sheet="Form")
    book.close()
    assert check_form(path) == scenario
    written = openpyxl.load_workbook(path)
    count = next((user.count for user in scenario.demand.users[:1] if user.kind == "people"), None)
    if count is not None:
        sheet, cell = references["demand.users[1].count"].split("!")
        assert written[sheet.strip("'")][cell.replace("$", "")].value == count


def test_people_of_whom_more_is_given_stand_in_their_table(tmp_path: Path) -> None:
    users = [{"kind": "people", "count": 400}, {"kind": "people", "name": "School", "count": 90}]
    for listed in (users, users[::-1], [*users, {"kind": "livestock", "count": 9, "litres_per_head_day": 30}]):
        given = data() | {"demand": {"users": listed}}
        path = form(tmp_path, given)
        assert differences(given, read_form(path)) == []
        sheet, row = cell_of_key(openpyxl.load_workbook(path), "demand.users[1].count")
        assert sheet.cell(row, 2).value == (400 if listed[0] == users[0] else None)


def test_other_users_join_those_of_the_visit(tmp_path: Path) -> None:
    path = edited(form(tmp_path), cells(data()) | {"demand.users[1].litres_per_person_day": 30})
    path = fill_row(path, "demand.users[livestock]", 1, {"place_in_list": 1, "count": 60, "litres_per_head_day": 40})
    people, cattle = check_form(path).demand.users
    assert (people.kind, people.count, cattle.kind, cattle.count) == ("people", 400, "livestock", 60)
    edited(path, {"demand.users[1].count": None})
    assert refused(path)[0].startswith("sheet 'Visit', cell B38 (Number of people in the first year): is empty")
    edited(path, {"demand.users[1].litres_per_person_day": None})
    assert [user.kind for user in check_form(path).demand.users] == ["livestock"]


@pytest.mark.parametrize(
    ("key", "typed", "read"),
    [
        ("pump.plate.dc_voltage_v", "110-400", "110-400"),
        ("pump.plate.dc_voltage_v", "DC 110 – 400 V", "DC 110 – 400 V"),
        ("pump.plate.ac_voltage_v", 230, 230),
        ("pump.plate.ac_voltage_v", "1~ 230 V", "1~ 230 V"),
        ("pump.plate.frequency_hz", "50", "50"),
        ("pump.plate.speed_rpm", "0-3.600", "0-3.600"),
        ("borehole.static_level_m", "27,5", 27.5),
        ("borehole.static_level_m", " 27.5 ", 27.5),
        ("site.latitude_deg", "-0,125", -0.125),
        ("site.longitude_deg", "28", 28),
        ("sources.grid.hours", "5,5-20; 21-22.125", [[5.5, 20], [21, 22.125]]),
    ],
)
def test_cells_are_read_as_the_plate_or_the_country_writes(key: str, typed: Any, read: Any) -> None:
    content = Content(typed, "s" if isinstance(typed, str) else "n")
    assert value_of(content, next(slot for slot in on_visit() if slot.key == key).takes) == read


def test_a_plate_read_from_a_cell_means_what_it_does_in_a_file(tmp_path: Path) -> None:
    plate = check_form(edited(form(tmp_path), cells(data()) | {"pump.plate.speed_rpm": "0-3.600"})).pump.plate
    assert (plate.speed_min_rpm, plate.speed_max_rpm) == (0, 3600)
    assert (plate.dc_voltage_min_v, plate.dc_voltage_max_v, plate.frequencies_hz) == (110, 400, (50, 60))
    lines = refused(edited(form(tmp_path), cells(data()) | {"pump.plate.dc_voltage_v": "400-110 V"}))
    assert len(lines) == 1
    assert lines[0].startswith("sheet 'Visit', cell B28 (DC supply voltage, lowest to highest): '400-110 V' was given")


def test_sources_and_money_join_the_visit(tmp_path: Path) -> None:
    more = {
        "sources.solar.described": "yes",
        "sources.grid.hours": "5-20",
        "currency": "USD",
        "prices.pv_per_kwp": 900,
        "prices.tank_per_m3": "150",
    }
    scenario = check_form(edited(form(tmp_path), cells(data()) | more))
    assert scenario.option_names == ["solar", "grid", "solar + grid"]
    assert scenario.priced
    given = data() | {
        "currency": "USD",
        "prices": {"pv_per_kwp": 900, "tank_per_m3": 150},
        "sources": {"solar": {}, "grid": {"hours": [[5, 20]]}},
    }
    assert scenario == check_scenario(given, "as a file")
    assert differences(given, read_form(form(tmp_path, given))) == []


def test_what_is_asked_in_place_of_a_key_is_named_only_where_it_is_wanted(tmp_path: Path) -> None:
    without = {
        key: value
        for key, value in cells(data()).items()
        if key not in ("borehole.test_flow_m3h", "borehole.drawdown_m")
    }
    path = edited(form(tmp_path), without)
    assert [line.partition(" (")[0] for line in refused(path)] == ["sheet 'Visit', cell B15", "sheet 'Visit', cell B16"]
    edited(path, {"borehole.specific_capacity_m3h_per_m": 0.4})
    (line,) = refused(path)
    assert line.startswith("sheet 'Borehole', cell B")
    assert "(Safe yield: flow that the borehole can give without harm): is empty; must be a number above 0" in line
    assert isinstance(check_form(edited(path, {"borehole.safe_yield_m3h": 2.5})), Scenario)


def test_the_visit_is_one_upright_page_and_checks_what_is_typed(tmp_path: Path) -> None:
    visit = openpyxl.load_workbook(form(tmp_path))["Visit"]
    setup = visit.page_setup
    assert visit.sheet_properties.pageSetUpPr.fitToPage
    assert (setup.paperSize, setup.orientation, setup.fitToWidth or 1, setup.fitToHeight or 1) == (9, "portrait", 1, 1)
    rules = {str(rule.sqref): rule for rule in visit.data_validations.dataValidation}
    rows = {visit.cell(row, KEY_COLUMN + 1).value: f"B{row}" for row in range(3, visit.max_row + 1)}
    latitude = rules[rows["site.latitude_deg"]]
    assert (latitude.type, latitude.formula1, latitude.formula2) == ("decimal", "-90", "90")
    assert rules[rows["pump.plate.insulation_class"]].formula1 == '"Y,A,E,B,F,H,N,R"'
    assert visit[rows["pump.plate.speed_rpm"]].number_format == "@"
    assert visit[rows["pump.rated_power_w"]].number_format == "General"
    for slot in on_visit():
        assert len(rules[rows[slot.key]].prompt) <= 255, slot.key


def test_only_the_cause_is_named_where_much_is_worked_out_from_it(tmp_path: Path) -> None:
    path = edited(form(tmp_path), cells(data()) | {"site.latitude_deg": "16 S", "pipeline.length_m": "430 m"})
    assert [line.partition(" (")[0] for line in refused(path)] == ["sheet 'Visit', cell B9", "sheet 'Visit', cell B19"]
    path = edited(form(tmp_path), cells(data()) | {"site.longitude_deg": None})
    assert [line.partition(" (")[0] for line in refused(path)] == ["sheet 'Visit', cell B10"]


def test_a_form_takes_prices_from_a_file_beside_it(tmp_path: Path) -> None:
    path = edited(form(tmp_path), cells(data()) | {"include": "prices.toml"})
    (line,) = refused(path)
    assert line.startswith("sheet 'Project', cell B5 (Files, relative to this one, ")
    assert line.endswith("'prices.toml' was given; there is no such file")
    prices = tmp_path / "prices.toml"
    prices.write_text("currency = 'USD'\n[prices]\npv_per_kwp = 900\n", encoding="utf-8")
    scenario = check_form(path)
    assert scenario.prices is not None
    assert (scenario.currency, scenario.prices.pv_per_kwp) == ("USD", 900)
    prices.write_text("currency = 'USD'\n[prices]\npv_per_kwp = -900\n", encoding="utf-8")
    (line,) = refused(path)
    assert line.startswith(f"{prices}:3: prices.pv_per_kwp: -900 was given")
