"""A wrong cell is named by sheet, cell and label, with what was given and what is allowed; all of them at once."""

from __future__ import annotations

import datetime
import tempfile
import tomllib
from functools import cache
from pathlib import Path
from typing import Any

import openpyxl
import pytest

from planner.assumptions.reader import option_scenario
from planner.report.form.cells import allowed
from planner.report.form.layout import sections
from planner.report.form.parts import KEY_COLUMN
from planner.report.form.reading import check_form, located_in_form, read_form
from planner.scenario.errors import InputError, Problem
from planner.scenario.writer import starter_text
from tests.form.workbooks import EXAMPLES, cell_of_key, edited, fill_row, form

SLOW = pytest.mark.slow
STARTER = tomllib.loads(starter_text())


@cache
def starter_book() -> Any:
    """The starter's form, to look up in it where a key stands."""
    with tempfile.TemporaryDirectory() as folder:
        return openpyxl.load_workbook(form(Path(folder), STARTER))


def refused(path: Path) -> list[str]:
    with pytest.raises(InputError) as caught:
        check_form(path)
    return [line.removeprefix(f"{path}: ") for line in caught.value.lines()]


LEVEL = "(Static water level: depth of the water at rest): "


@pytest.mark.parametrize(
    ("key", "given", "said"),
    [
        ("borehole.static_level_m", -4, f"{LEVEL}-4 was given; must be at least 0"),
        ("borehole.static_level_m", "1,250", "the text '1,250' was given, which can be read as 1250 and as 1.25; type"),
        pytest.param(
            "borehole.static_level_m", "1.250",
            "the text '1.250' was given, which can be read as 1250 and as 1.25; type", marks=SLOW
        ),
        pytest.param("borehole.static_level_m", "-4,5", f"{LEVEL}-4.5 was given; must be at least 0", marks=SLOW),
        (
            "borehole.static_level_m",
            "12,5 m",
            "the text '12,5 m' was given; must be a number 0 to 1 500: write the number alone, 12.5",
        ),
        (
            "site.latitude_deg",
            "16 S",
            "the text '16 S' was given; must be a number -90 to 90: write degrees as a decimal number, south and west "
            "negative: -16",
        ),
        ("borehole.static_level_m", True, "TRUE was given; must be a number 0 to 1 500"),
        ("borehole.static_level_m", None, f"{LEVEL}is empty; must be a number 0 to 1 500"),
        pytest.param("borehole.static_level_m", "   ", f"{LEVEL}is empty; must be a number 0 to 1 500", marks=SLOW),
        ("borehole.static_level_m", datetime.datetime(2026, 6, 9), "a date or time was given (2026-06-09"),
        ("borehole.static_level_m", "=40+8", "a formula was given ('=40+8'); formulas are not read"),
        ("borehole.static_level_m", "#N/A", "the error value #N/A was given"),
        ("borehole.pump_depth_m", 40, "(Depth of the pump's intake): pump_depth_m 40 is not below the water"),
        ("finance.analysis_period_years", 12.5, "12.5 was given; must be a whole number 1 to 40"),
        ("pump.kind", "Centrifugal", "the text 'Centrifugal' was given; must be centrifugal or helical-rotor; did you"),
        ("pump.kind", 3, "the number 3 was given; must be centrifugal or helical-rotor"),
        pytest.param("pump.name", 7, "the number 7 was given; must be text", marks=SLOW),
        pytest.param("pump.plate.phases", 2, "the number 2 was given; must be 1 or 3", marks=SLOW),
        ("tank.volume_m3", "big", "the text 'big' was given; must be auto, or a number above 0, up to 100 000"),
        ("currency", "dollars", "(Currency of every price, three capital letters such as 'USD'): 'dollars' was"),
        ("sources.grid.hours", "6 to 9", "'6 to 9' in a list is not a pair; must be parts of the day in hours"),
        pytest.param("sources.grid.hours", datetime.datetime(2026, 9, 6), "a date or time was given", marks=SLOW),
        pytest.param(
            "sources.grid.hours", "6-27", "(Grid: hours of the day in which it is on): 27 was given", marks=SLOW
        ),
        ("demand.draw_profile", "0,5; 1,250", "'1,250' in a list was given, which can be read as 1250 and as 1.25"),
        ("demand.draw_profile", "0,5; 0,5", "2 values were given; must be household, school"),
        ("demand.draw_profile", "0,5; half", "'half' in a list is not a number; must be household, school"),
        pytest.param("demand.draw_profile", "0.5; 0.5", "2 values were given; must be household, school", marks=SLOW),
        ("weather.kind", None, "(Kind of weather): is empty; must be monthly, file or estimate"),
        ("weather.file", "x.csv", "does not belong to the kind chosen; leave it empty, or choose the other kind"),
        pytest.param(
            "site.time_zone", datetime.time(3, 0),
            "a date or time was given (03:00:00); format the cell as text", marks=SLOW
        ),
        ("service.reference", "wind", "service.reference names 'wind', but 'wind' is no source"),
        ("sources.grid.tariff.price_per_kwh", None, "give either price_per_kwh or blocks (both or neither was given)"),
    ],
)  # fmt: skip
def test_a_wrong_cell_is_named(key: str, given: Any, said: str, tmp_path: Path) -> None:
    path = edited(form(tmp_path, STARTER), {key: given})
    lines = refused(path)
    assert len(lines) == 1
    assert said in lines[0], lines
    sheet, row = cell_of_key(starter_book(), key)
    if not said.startswith("give either"):
        assert lines[0].startswith(f"sheet '{sheet.title}', cell B{row} ("), lines


def test_a_percentage_is_not_taken_for_its_hundredth(tmp_path: Path) -> None:
    path = form(tmp_path, STARTER)
    book = openpyxl.load_workbook(path)
    sheet, row = cell_of_key(book, "finance.grant_percent")
    sheet.cell(row, 2).value = 0.15
    sheet.cell(row, 2).number_format = "0%"
    book.save(path)
    assert "15% was given as a percentage" in refused(path)[0]


def test_months_name_the_month(tmp_path: Path) -> None:
    months = list(STARTER["weather"]["temperature_c"])
    months[2], months[6] = None, "20,5 C"
    lines = refused(edited(form(tmp_path, STARTER), {"weather.temperature_c": months}))
    assert len(lines) == 2
    assert "(Monthly mean air temperature, Mar): is empty; all twelve months are needed" in lines[0]
    assert "(Monthly mean air temperature, Jul): the text '20,5 C' was given" in lines[1]
    lines = refused(edited(form(tmp_path, STARTER), {"weather.ghi_kwh_m2_day": [*[5] * 11, -1]}))
    assert "irradiation on a horizontal plane, Dec): -1 was given; must be at least 0" in lines[0]


def test_all_wrong_cells_at_once(tmp_path: Path) -> None:
    path = edited(
        form(tmp_path, STARTER),
        {
            "borehole.static_level_m": "48 to 50",
            "site.latitude_deg": 200,
            "pump.kind": "helical",
            "borehole.depth_m": 9000,
        },
    )
    path = fill_row(path, "pipeline.segments[]", 2, {"length_m": "long"})
    lines = refused(path)
    assert len(lines) == 5
    for said in ("'48 to 50' was given", "200 was given", "'helical' was given", "9000 was given", "'long' was given"):
        assert sum(said in line for line in lines) == 1, lines


def test_tables_name_the_row(tmp_path: Path) -> None:
    path = fill_row(form(tmp_path, STARTER), "pipeline.segments[]", 3, {"length_m": 10, "pipe": "steel medium 50"})
    assert "(Which run of pipe): is empty; must be text" in refused(path)[0]
    path = fill_row(form(tmp_path, STARTER), "tank.sizes[]", 7, {"volume_m3": 5, "price": 100})
    assert "sizes must be in order of rising volume" in refused(path)[0]
    path = fill_row(form(tmp_path, STARTER), "costs.yearly[]", 2, {"name": "Guard", "per_year": 5, "sources": "sun"})
    assert (
        "(Sources it belongs to; none means every option): 'sun' was given; must be one or more of" in refused(path)[0]
    )


def test_rows_may_be_inserted_and_users_put_in_order(tmp_path: Path) -> None:
    path = form(tmp_path, STARTER)
    book = openpyxl.load_workbook(path)
    sheet, row = cell_of_key(book, "pipeline.segments[]")
    wanted = [sheet.cell(row + 1, column).value for column in range(1, 13)]
    for column in range(1, 13):
        sheet.cell(row + 6, column).value = sheet.cell(row + 1, column).value
        sheet.cell(row + 1, column).value = None
    assert wanted[0] == "Rising pipe"
    users, header = cell_of_key(book, "demand.users[livestock]")
    assert users.cell(header + 1, 2).value == 2
    users.cell(header + 1, 2).value = 0.5
    book.save(path)
    assert "(place in the list): 0.5 was given; must be a whole number from 1" in refused(path)[0]
    users.cell(header + 1, 2).value = None
    book.save(path)
    data = read_form(path)
    assert [segment["name"] for segment in data["pipeline"]["segments"]] == ["Main to the tank", "Rising pipe"]
    assert [user["name"] for user in data["demand"]["users"]] == ["Households", "Goats"]


def test_a_source_is_described_as_soon_as_a_cell_is_filled(tmp_path: Path) -> None:
    without = {name: inner for name, inner in STARTER["sources"].items() if name != "grid"}
    path = form(tmp_path, STARTER | {"sources": without})
    assert "grid" not in read_form(path)["sources"]
    assert check_form(path).sources.grid is None
    edited(path, {"sources.grid.tariff.price_per_kwh": 0.2})
    assert read_form(path)["sources"]["grid"] == {"tariff": {"price_per_kwh": 0.2}}
    edited(path, {"sources.grid.outages.hours_per_day": 3})
    assert "(or leave all of 'Random outages of the grid' empty)" in refused(path)[0]


def test_keys_that_a_careless_program_changed(tmp_path: Path) -> None:
    path = form(tmp_path, STARTER)
    book = openpyxl.load_workbook(path)
    sheet, row = cell_of_key(book, "borehole.safe_yield_m3h")
    sheet.cell(row, KEY_COLUMN + 1).value = "borehole.safe_yeld"
    other, row = cell_of_key(book, "site.longitude_deg")
    other.cell(row, KEY_COLUMN + 1).value = "site.latitude_deg"
    pipes, row = cell_of_key(book, "pipeline.segments[]")
    pipes.cell(row, 2).value = "length_km"
    book.save(path)
    text = "\n".join(refused(path))
    assert "the key column says 'borehole.safe_yeld', which is no key of this form" in text
    assert "is given twice; the other place is sheet 'Visit', cell B9 (Latitude, north positive)" in text
    assert "'length_km' is no column of this table; it has name, length_m" in text
    sheet.insert_cols(1)
    book.save(path)
    assert "the keys must stand in column T" in "\n".join(refused(path))


def test_overrides(tmp_path: Path) -> None:
    def given(**row: Any) -> Path:
        return fill_row(form(tmp_path, STARTER), "overrides[]", 1, {"option": "solar + grid", **row})

    path = given(key="tank.volume_m3", value=30)
    assert option_scenario(check_form(path), "solar + grid").tank.volume_m3 == 30
    assert read_form(given(key="sources.grid.hours", value="6-9; 17-19.5"))["overrides"] == {
        "solar + grid": {"sources": {"grid": {"hours": [[6, 9], [17, 19.5]]}}}
    }
    path = given(key="tank.sizes", value="[{ volume_m3 = 5, price = 100 }]")
    assert read_form(path)["overrides"]["solar + grid"]["tank"]["sizes"] == [{"volume_m3": 5, "price": 100}]
    for row, said in (
        ({"key": "tank.volume_m3"}, "(Value; lists and tables as in TOML): is empty; an override needs option, key"),
        ({"key": "tank.volume_m3", "value": -1}, "(solar + grid: tank.volume_m3): -1 was given; must be greater"),
        ({"key": "tank.volume_m3", "value": "30.500"}, "(solar + grid: tank.volume_m3): the text '30.500' was given"),
        ({"key": "tank.volum_m3", "value": 3}, "is not a known key; did you mean 'volume_m3'?"),
        ({"key": "tank.sizes", "value": "[{"}, "must be one list or table as in TOML"),
        ({"key": "tank.sizes", "value": "[]\nname = 1"}, "must be one list or table as in TOML"),
        ({"key": "tank.sizes", "value": "[" * 5000}, "must be one list or table as in TOML, not so deeply nested"),
        ({"key": "weather.kind", "value": "file"}, "'weather' cannot differ in one option"),
    ):  # fmt: skip
        assert said in "\n".join(refused(given(**row)))


def test_problems_of_every_override_are_shown(tmp_path: Path) -> None:
    path = fill_row(form(tmp_path, STARTER), "overrides[]", 1, {"option": "grid", "key": "tank.price", "value": -1})
    path = fill_row(path, "overrides[]", 2, {"option": "solar", "key": "tank.price", "value": -2})
    lines = refused(path)
    assert len(lines) == 2
    assert "-1 was given" in lines[0]
    assert "-2 was given" in lines[1]


def test_problems_found_later_are_placed_in_the_form(tmp_path: Path) -> None:
    path = form(tmp_path, STARTER)
    problem = Problem("pipeline.segments[2].pipe", "'PE100 63' is not in the pipe tables")
    with pytest.raises(InputError) as caught, located_in_form(path):
        raise InputError("", [problem])
    sheet, header = cell_of_key(openpyxl.load_workbook(path), "pipeline.segments[]")
    column = next(cell.column_letter for cell in sheet[header] if cell.value == "pipe")
    wanted = f"{path}: sheet 'Pipe', cell {column}{header + 2} (A size from the pipe tables"
    assert str(caught.value).startswith(wanted)
    assert str(caught.value).endswith("'PE100 63' is not in the pipe tables")


def test_a_blank_form_names_every_cell_that_must_be_filled(tmp_path: Path) -> None:
    lines = refused(form(tmp_path))
    wanted = [slot for section in sections() if not section.optional for slot in section.rows if slot.needed]
    for slot in wanted:
        assert any(f"({slot.label}): is empty; must be {allowed(slot.takes)}" in line for line in lines), slot.key
    assert len(lines) == len(wanted) == 15
    assert all(line.startswith("sheet 'Visit', cell B") for line in lines)


def test_filling_a_blank_form_by_hand(tmp_path: Path) -> None:
    """An invented farm, filled in as a person would: only what must be given, in the order of the sheets."""
    path = edited(
        form(tmp_path),
        {
            "name": "Ridge farm (invented)",
            "currency": "KES",
            "site.place": "Invented ridge",
            "site.latitude_deg": 0.3,
            "site.longitude_deg": 36,
            "site.time_zone": "+03:00",
            "weather.kind": "monthly",
            "weather.ghi_kwh_m2_day": [6.1, 6.4, 6.2, 5.5, 5.3, 5, 4.8, 5, 5.6, 5.7, 5.3, 5.7],
            "weather.temperature_c": [18, 19, 19, 18, 18, 17, 16, 16, 17, 18, 17, 17],
            "borehole.static_level_m": 62,
            "borehole.pump_depth_m": 90,
            "borehole.safe_yield_m3h": 4,
            "pipeline.rise_to_tank_inlet_m": 9,
            "pump.name": "Invented pump",
            "pump.kind": "centrifugal",
            "pump.rated_flow_m3h": 3,
            "pump.rated_head_m": 90,
            "pump.max_flow_m3h": 5,
            "pump.max_head_m": 130,
            "pump.rated_power_w": 1600,
            "sources.grid.price": 150000,
            "sources.grid.hours": "5-11; 14-22.5",
            "sources.grid.tariff.price_per_kwh": 24,
            "tank.volume_m3": 15,
            "tank.price": 250000,
            "finance.discount_rate_percent": 9,
        },
    )
    fill_row(path, "demand.users[livestock]", 1, {"name": "Cows", "count": 60, "litres_per_head_day": 60})
    fill_row(path, "borehole.step_test[]", 1, {"flow_m3h": 2, "drawdown_m": 3})
    fill_row(path, "borehole.step_test[]", 2, {"flow_m3h": 3.5, "drawdown_m": 6.5})
    fill_row(path, "pipeline.segments[]", 1, {"name": "Riser", "length_m": 90, "pipe": "steel medium 40", "price": 900})
    scenario = check_form(path)
    assert scenario.option_names == ["grid"]
    assert scenario.sources.grid is not None
    assert scenario.sources.grid.hours == [[5, 11], [14, 22.5]]
    assert [point.drawdown_m for point in scenario.borehole.step_test] == [3, 6.5]
    edited(path, {"site.latitude_deg": "0,3 N", "pump.max_head_m": 13000, "sources.grid.hours": "5 - 11, 14 - 22"})
    lines = refused(path)
    assert len(lines) == 3
    for sheet, label, given in (
        ("Visit", "Latitude, north positive", "the text '0,3 N' was given; must be a number"),
        ("Visit", "Grid: hours of the day in which it is on", "'5 - 11, 14 - 22' in a list is not"),
        ("Visit", "Largest head, at no flow", "13000 was given; must be at most 3000"),
    ):
        assert any(line.startswith(f"sheet '{sheet}', ") and f"({label}): {given}" in line for line in lines), lines


def test_the_examples_of_the_form_can_be_typed_in(tmp_path: Path) -> None:
    """Every example shown in the column beside the cells is taken by its own cell."""
    path = form(tmp_path)
    book = openpyxl.load_workbook(path)
    copied = 0
    for sheet in book.worksheets:
        for row in range(3, sheet.max_row + 1):
            key = sheet.cell(row, KEY_COLUMN + 1).value
            example = sheet.cell(row, 5).value
            if (
                key
                and key[0] != "-"
                and key != "example"
                and "[" not in key
                and "by_month" not in key
                and example is not None
            ):
                sheet.cell(row, 2).value = example
                copied += 1
    book.save(path)
    assert copied > 90
    data = read_form(path)
    assert data["sources"]["grid"]["hours"] == [[5, 9], [17, 21.5]]


def test_a_part_may_be_described_by_its_defaults_alone(tmp_path: Path) -> None:
    assert len(EXAMPLES) >= 4
    described = [section for section in sections() if section.rows and section.rows[0].path[-1] == "described"]
    assert ("size",) in [section.path for section in described]
    path = form(tmp_path, STARTER | {"size": {}})
    assert read_form(path)["size"] == {}
    assert "size" not in read_form(edited(path, {"size.described": None}))
    assert "the text 'no' was given; must be yes" in refused(edited(path, {"size.described": "no"}))[0]
