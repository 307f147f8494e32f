"""The sheet 'Inputs': every key of the scenario with its value, unit, meaning and where the value comes from."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

import numpy as np
from pydantic import BaseModel

from planner.report.sheets.months import MONTHS
from planner.report.sheets.page import Page
from planner.report.style import Kind
from planner.scenario.errors import dotted
from planner.scenario.scenario import Scenario, option_name_of
from planner.scenario.starter import STILL_STARTER, left_over
from planner.scenario.writer import toml_value
from planner.study.compare import OptionResult, Study

Path = tuple[str | int, ...]
NOTE = (
    "To change an input, go to the sheet 'Form': the values here follow it, and every sum of money follows these. "
    "Prices, lives and upkeep of things bought, percentages, the discount rate, inflation, growth of prices, grant, "
    "loan, water price and tariff prices may be changed so. All else needs a new run of this workbook (planner run "
    "FILE): whatever changes water, energy, fuel or hours, the years counted, the kind of prices, the limits of tariff "
    "blocks, the lives of pump and generator, its service intervals, a percentage that was 0, and whatever was chosen "
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


@dataclass(frozen=True)
class Entry:
    """One key: its dotted path, value, unit, meaning, whether it was given, and the source of a default."""

    key: str
    value: Any
    unit: str
    meaning: str
    status: str
    source: str

    @property
    def is_monthly(self) -> bool:
        """Whether the value is a list of twelve numbers."""
        return isinstance(self.value, list) and len(self.value) == 12 and not isinstance(self.value[0], list | str)


def entries(scenario: Scenario) -> Iterator[Entry]:
    """List every key of a scenario, in the order in which the models declare them."""
    yield from _of_model(scenario, (), frozenset(left_over(scenario)))


def _of_model(model: BaseModel, path: Path, starter: frozenset[str]) -> Iterator[Entry]:
    for name, field in type(model).model_fields.items():
        value, here = getattr(model, name), (*path, name)
        if isinstance(value, BaseModel):
            yield from _of_model(value, here, starter)
        elif isinstance(value, list) and value and isinstance(value[0], BaseModel):
            for index, member in enumerate(value):
                yield from _of_model(member, (*here, index), starter)
        elif isinstance(value, dict):
            yield from _of_override(value, here)
        else:
            extra = field.json_schema_extra if isinstance(field.json_schema_extra, dict) else {}
            given = name in model.model_fields_set
            status = "given" if given else "default"
            if dotted(here) in starter:
                status = STILL_STARTER
            source = "" if given else str(extra.get("default_source", ""))
            if value is None or value == []:
                status, source = "not given", str(extra.get("absent", "")) if value is None else ""
            yield Entry(
                dotted(here),
                value,
                str(extra.get("unit", "")),
                field.description or (type(model).__doc__ or "").split("\n")[0],
                status,
                source,
            )


def _of_override(tables: dict[str, Any], path: Path) -> Iterator[Entry]:
    for name, value in tables.items():
        here = (*path, name)
        if isinstance(value, dict):
            yield from _of_override(value, here)
        elif isinstance(value, list) and value and isinstance(value[0], dict):
            for index, member in enumerate(value):
                yield from _of_override(member, (*here, index))
        else:
            yield Entry(dotted(here), value, "", "Holds for this option only, in place of the key above", "given", "")


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
    for entry in entries(study.scenario):
        if _is_number(entry.value):
            of_key[entry.key] = page.at(page.row, VALUE)
        _entry(page, entry, form)
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
    replaced = tuple(_lists(base.overrides[spelt], ()))
    known = {entry.key: entry.value for entry in entries(base)}
    cells: dict[str, str] = {}
    for entry in entries(option.scenario):
        key = f"{prefix}.{entry.key}"
        if not _is_number(entry.value):
            continue
        if key in of_key:
            cells[entry.key] = of_key[key]
        elif known.get(entry.key) != entry.value or entry.key.startswith(replaced):
            cells[entry.key] = page.at(page.row, VALUE)
            _entry(page, Entry(key, entry.value, entry.unit, entry.meaning, entry.status, entry.source), {})
    return cells


def _lists(tables: dict[str, Any], path: Path) -> Iterator[str]:
    """Keys of lists of tables, which an override replaces as a whole."""
    for name, value in tables.items():
        if isinstance(value, dict):
            yield from _lists(value, (*path, name))
        elif isinstance(value, list) and value and isinstance(value[0], dict):
            yield f"{dotted((*path, name))}["


def _from_form(entry: Entry, form: dict[str, str]) -> str | None:
    """Formula that takes a value from the form, the default where its cell there is empty."""
    cell = form.get(entry.key)
    if cell is None or ":" in cell:
        return None
    return f"={cell}" if entry.status in ("given", STILL_STARTER) else f"=IF(ISBLANK({cell}),{entry.value!r},{cell})"


def _entry(page: Page, entry: Entry, form: dict[str, str]) -> None:
    row = page.row
    page.put(row, KEY, entry.key, "wrap")
    if entry.is_monthly:
        page.put(row, VALUE, "by month", "text")
    elif isinstance(entry.value, int | float) and not isinstance(entry.value, bool):
        page.put(row, VALUE, entry.value, plain_kind(entry.value), formula=_from_form(entry, form))
    elif entry.value is None or entry.value == []:
        page.put(row, VALUE, "–")
    else:
        page.put(row, VALUE, entry.value if isinstance(entry.value, str) else toml_value(entry.value), "wrap")
    page.put(row, UNIT, entry.unit, "wrap")
    for column in range(len(MONTHS)):
        value = entry.value[column] if entry.is_monthly else None
        page.put(row, FIRST_MONTH + column, value, "general")
    page.put(row, STATUS, entry.status)
    page.put(row, MEANING, entry.meaning, "wrap")
    page.put(row, SOURCE, entry.source, "wrap")
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
