"""A form filled in with LibreOffice itself, where decimals have a comma; place, pump and prices are invented."""

from __future__ import annotations

from pathlib import Path

import openpyxl
import pytest

from planner.report.form.reading import check_form, read_form
from planner.scenario.errors import InputError
from tests.form.office import OFFICE, typed
from tests.form.test_roundtrip import differences
from tests.form.workbooks import cell_of_key, form

pytestmark = [
    pytest.mark.slow,
    pytest.mark.skipif(OFFICE is None, reason="LibreOffice (soffice) is not installed: nothing can be typed into it"),
]

TYPED = {
    "name": 'Besuch im Hügelland "Nord" (erfunden)',
    "site.latitude_deg": "-16,25",
    "site.longitude_deg": "28,0",
    "site.altitude_m": "1.250",
    "borehole.depth_m": "84",
    "borehole.static_level_m": "27,5",
    "borehole.test_flow_m3h": "2,5",
    "borehole.drawdown_m": "6",
    "borehole.pump_depth_m": "60",
    "pipeline.length_m": "430",
    "pipeline.rise_to_tank_inlet_m": "35,25",
    "pump.rated_flow_m3h": "2,5",
    "pump.rated_head_m": "110",
    "pump.max_flow_m3h": "4,5",
    "pump.max_head_m": "165",
    "pump.rated_power_w": "1.500",
    "pump.plate.dc_voltage_v": "110-400 V",
    "pump.plate.ac_voltage_v": "230",
    "pump.plate.frequency_hz": "50/60",
    "pump.plate.current_a": "8",
    "pump.plate.speed_rpm": "0-3,600",
    "pump.plate.frame_in": "4",
    "pump.plate.insulation_class": "F",
    "pump.plate.ingress_protection": "IP68",
    "pump.plate.liquid_temperature_max_c": "40",
    "demand.users[1].count": "400",
    "sources.solar.described": "yes",
    "sources.grid.hours": "5,5-20",
    "currency": "USD",
    "prices.pv_per_kwp": "899,5",
}
READ = {
    "name": 'Besuch im Hügelland "Nord" (erfunden)',
    "currency": "USD",
    "site": {"latitude_deg": -16.25, "longitude_deg": 28, "altitude_m": 1250},
    "borehole": {
        "depth_m": 84,
        "static_level_m": 27.5,
        "test_flow_m3h": 2.5,
        "drawdown_m": 6,
        "pump_depth_m": 60,
    },
    "pipeline": {"length_m": 430, "rise_to_tank_inlet_m": 35.25},
    "pump": {
        "rated_flow_m3h": 2.5,
        "rated_head_m": 110,
        "max_flow_m3h": 4.5,
        "max_head_m": 165,
        "rated_power_w": 1500,
        "plate": {
            "dc_voltage_v": "110-400 V",
            "ac_voltage_v": "230",
            "frequency_hz": "50/60",
            "current_a": 8,
            "speed_rpm": "0-3,600",
            "frame_in": 4,
            "insulation_class": "F",
            "ingress_protection": "IP68",
            "liquid_temperature_max_c": 40,
        },
    },
    "demand": {"users": [{"kind": "people", "count": 400}]},
    "sources": {"solar": {}, "grid": {"hours": [[5.5, 20]]}},
    "prices": {"pv_per_kwp": 899.5},
}


def entries(path: Path, given: dict[str, str]) -> list[tuple[str, str, str]]:
    book = openpyxl.load_workbook(path)
    places = {key: cell_of_key(book, key) for key in given}
    return [(sheet.title, f"B{row}", given[key]) for key, (sheet, row) in places.items()]


def test_a_visit_typed_in_german_is_read(tmp_path: Path) -> None:
    path = form(tmp_path)
    saved, ods, through_ods = typed(path, tmp_path, entries(path, TYPED), "de-DE")
    for file in (saved, through_ods):
        assert differences(READ, read_form(file)) == [], file.name
        plate = check_form(file).pump.plate
        assert (plate.speed_max_rpm, plate.ac_voltage_min_v) == (3600, 207)
    with pytest.raises(InputError, match=r"not a workbook of the kind \.xlsx; save it as \.xlsx"):
        read_form(ods)


def test_what_is_typed_wrong_in_german_is_named_by_its_cell(tmp_path: Path) -> None:
    wrong = TYPED | {
        "borehole.static_level_m": "27 m",
        "site.latitude_deg": "16 S",
        "borehole.drawdown_m": "=3+3",
        "pump.plate.frequency_hz": "50/55/60",
    }
    path = form(tmp_path)
    places = {key: (sheet, cell) for key, (sheet, cell, _) in zip(wrong, entries(path, wrong), strict=True)}
    saved, _, through_ods = typed(path, tmp_path, entries(path, wrong), "de-DE")
    for file in (saved, through_ods):
        with pytest.raises(InputError) as caught:
            check_form(file)
        lines = list(caught.value.lines())
        for key, said in (
            ("borehole.static_level_m", "the text '27 m' was given"),
            ("site.latitude_deg", "south and west negative: -16"),
            ("borehole.drawdown_m", "formulas are not read"),
            ("pump.plate.frequency_hz", "'50/55/60' was given, but it is not understood"),
        ):
            sheet, cell = places[key]
            assert any(f"sheet '{sheet}', cell {cell} (" in line and said in line for line in lines), (key, lines)
