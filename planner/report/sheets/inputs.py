"""The sheet 'Inputs': every key of the scenario with its value, unit, meaning and where the value comes from."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np

from planner.report.sheets.page import Page
from planner.report.style import MONTHS, Kind
from planner.scenario.paths import dotted
from planner.scenario.scenario import Scenario, option_name_of
from planner.scenario.starter import STILL_STARTER, statuses
from planner.scenario.walk import Field, is_table_list, leaves, walk
from planner.scenario.writer import toml_value
from planner.study.compare import OptionResult, Study

NOTE = (
    "To change an input, go to the sheet 'Form': the values here follow it, and every sum of money follows these. "
    "Prices, lives and upkeep of things bought, percentages, the discount rate, inflation, growth of prices, grant, "
    "loan, water price and tariff prices may be changed so. All else needs a new run of this workbook (planner run "
    "FILE): whatever changes water, energy, fuel or hours, the years counted, the kind of prices, the limits of tariff "
    "blocks, the pump's life, a percentage that was 0, and whatever was chosen "
    "by cost (tank, strings, levels), which stays as it was chosen. The sheet 'Tank' and the sentences of the sheet "
    "'Answer' stay as of the run."
)
KEY, VALUE, UNIT, FIRST_MONTH = range(4)
STATUS = FIRST_MONTH + len(MONTHS)
MEANING, SOURCE = STATUS + 1, STATUS + 2

WEATHER_ROWS: tuple[tuple[str, str, str, Kind], ...] = (
    ("ghi_kwh_m2_day", "Horizontal irradiation, mean", "kWh/m2/day", "two"),
    ("ghi_lowest_year_kwh_m2_day", "Horizontal irradiation, lowest year", "kWh/m2/day", "two"),
    ("ghi_highest_year_kwh_m2_day", "Horizontal irradiation, highest year", "kWh/m2/day", "two"),
    ("temperature_mean_c", "Air temperature, mean", "deg C", "one"),
    ("temperature_min_c", "Air temperature, coldest hour", "deg C", "one"),
    ("temperature_max_c", "Air temperature, hottest hour", "deg C", "one"),
    ("clearness", "Clearness index, mean", "", "two"),
    ("clearness_spread", "Clearness index, spread of the days", "", "two"),
    ("wind_m_s", "Wind", "m/s", "one"),
)


def plain_kind(value: float) -> Kind:
    """Format of a number as it was given: its own decimals, thousands set apart."""
    return "whole" if abs(value) >= 1000 and float(value).is_integer() else "general"


@dataclass(frozen=True)
class InputCells:
    """Where each number of the scenario stands; `own` holds what an option's overrides put in the place of a key."""

    of_key: dict[str, str]
    own: dict[str, dict[str, str]]

    def of(self, option: str, key: str) -> str:
        """Absolute address of the input that holds for an option."""
        return self.own.get(option, {}).get(key) or self.of_key[key]


def write_inputs(page: Page, study: Study, form: dict[str, str]) -> InputCells:
    """Fill the sheet 'Inputs'.

    Parameters
    ----------
    page : Page
        The sheet.
    study : Study
        The finished comparison.
    form : dict of str to str
        Address on the sheet 'Form' of each key; the values here are taken from there.

    Returns
    -------
    InputCells
        Where each number stands, for the formulas of other sheets.
    """
    page.title(
        "Inputs",
        "Every key of the scenario. 'given' stands in the scenario; 'default' is assumed, with its source; 'not given' "
        f"has no value; '{STILL_STARTER}' was invented for the starter scenario and not changed since. 'money' is "
        f"{study.scenario.currency}.",
    )
    page.paragraph(NOTE)
    page.header(
        ["Key", "Value", "Unit", *MONTHS, "Given or default", "Meaning", "Source of the default, or what absence means"]
    )
    page.freeze()
    for column, width in ((KEY, 42), (VALUE, 22), (UNIT, 14), (STATUS, 11), (MEANING, 46), (SOURCE, 36)):
        page.fix_width(column, width)
    for column in range(FIRST_MONTH, STATUS):
        page.fix_width(column, 6)
    of_key: dict[str, str] = {}
    status = statuses(study.scenario)
    for field in walk(study.scenario):
        if _is_number(field.value):
            of_key[field.key] = page.at(page.row, VALUE)
        _row(page, field, field.key, status[field.key], form)
    own = {option.name: _own_cells(page, study.scenario, option, of_key) for option in study.options}
    _weather(page, study)
    return InputCells(of_key, own)


def _is_number(value: Any) -> bool:
    return isinstance(value, int | float) and not isinstance(value, bool)


def _own_cells(page: Page, base: Scenario, option: OptionResult, of_key: dict[str, str]) -> dict[str, str]:
    """Addresses of the keys in which an option differs; what its overrides leave to a default gets a row of its own."""
    spelt = next((name for name in base.overrides if option_name_of(name) == option.name), None)
    if spelt is None:
        return {}
    prefix = dotted(("overrides", spelt))
    # an override replaces a list of tables as a whole
    replaced = tuple(
        f"{dotted(path)}[" for path, value in leaves(base.overrides[spelt], whole_lists=True) if is_table_list(value)
    )
    known = {field.path: field.value for field in walk(base)}
    status = statuses(option.scenario)
    cells: dict[str, str] = {}
    for field in walk(option.scenario):
        key = f"{prefix}.{field.key}"
        if not _is_number(field.value):
            continue
        if key in of_key:
            cells[field.key] = of_key[key]
        elif known.get(field.path) != field.value or field.key.startswith(replaced):
            cells[field.key] = page.at(page.row, VALUE)
            _row(page, field, key, status[field.key], {})
    return cells


def _from_form(field: Field, form: dict[str, str]) -> str | None:
    """Formula that takes a value from the form, the default where its cell there is empty."""
    cell = form.get(field.key)
    if cell is None or ":" in cell:
        return None
    return f"={cell}" if field.given else f"=IF(ISBLANK({cell}),{field.value!r},{cell})"


def _row(page: Page, field: Field, key: str, status: str, form: dict[str, str]) -> None:
    row, value = page.row, field.value
    monthly = isinstance(value, list) and len(value) == 12 and not isinstance(value[0], list | str)
    page.put(row, KEY, key, "wrap")
    if monthly:
        page.put(row, VALUE, "by month", "text")
    elif _is_number(value):
        page.put(row, VALUE, value, plain_kind(value), formula=_from_form(field, form))
    elif value is None or value == []:
        page.put(row, VALUE, "–")
    else:
        page.put(row, VALUE, value if isinstance(value, str) else toml_value(value), "wrap")
    page.put(row, UNIT, "" if field.in_override else field.unit, "wrap")
    for column in range(len(MONTHS)):
        page.put(row, FIRST_MONTH + column, value[column] if monthly else None, "general")
    page.put(row, STATUS, status)
    page.put(row, MEANING, field.meaning, "wrap")
    page.put(row, SOURCE, field.source, "wrap")
    page.row += 1


def _weather(page: Page, study: Study) -> None:
    weather = study.weather
    page.heading("Weather used", SOURCE)
    page.paragraph(f"Source: {weather.source}")
    for note in weather.notes:
        page.paragraph(f"Note: {note}")
    altitude = "given" if study.altitude_given else "from pvlib's world grid"
    page.put(page.row, KEY, "Altitude of the site")
    page.put(page.row, VALUE, study.place.altitude_m, "whole")
    page.put(page.row, UNIT, "m")
    page.put(page.row, STATUS, altitude, "wrap")
    page.row += 1
    table = weather.monthly_table()
    for name, label, unit, kind in WEATHER_ROWS:
        page.put(page.row, KEY, label)
        page.put(page.row, VALUE, "by month")
        page.put(page.row, UNIT, unit)
        for column, value in enumerate(table[name]):
            page.put(page.row, FIRST_MONTH + column, float(value), kind, word="none")
        page.row += 1
    factors = weather.annual_factor
    page.put(page.row, KEY, "Irradiation of the lowest and highest year")
    page.put(page.row, VALUE, f"{100 * float(np.min(factors)):.1f} to {100 * float(np.max(factors)):.1f}")
    page.put(page.row, UNIT, "% of mean")
    page.row += 1
