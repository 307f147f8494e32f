"""The page 'Inputs': every key of the scenario with its value, unit, meaning and where the value comes from."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any

import numpy as np

from planner.money import quantities
from planner.money.formula import Formula, Operand
from planner.report.document import At, Block, Cell, Column, Foreign, Heading, Kind, Page, Row, Table, Text
from planner.report.pages.by_time import MONTHS
from planner.report.pages.since import COLUMN, INPUTS, months_cell, number_cell, since_table, words_cell
from planner.scenario.operands import with_operands
from planner.scenario.paths import Path, dotted
from planner.scenario.scenario import Scenario, option_name_of
from planner.scenario.starter import STILL_STARTER, statuses
from planner.scenario.walk import ASSUMED, Field, is_table_list, leaves, walk
from planner.scenario.writer import toml_value
from planner.study.compare import OptionResult, Study
from planner.text import model_words, text

PERCENTAGES = tuple(("costs", f"{group}_percent") for group in quantities.PERCENTAGES)
BLOCK_END = "up_to_kwh_month"
OTHER_COMMANDS = ("size", "sweep")
"""Tables that other commands read, so that no figure of a run hangs on them."""
IN_USERS = (("finance", "exchange_rate"), ("finance", "usd_prices_since_2011"))
"""Keys that change no result and that a page shows sums by."""
WEATHER: tuple[tuple[str, str, Kind], ...] = (
    ("ghi_kwh_m2_day", "kWh/m2/day", "two"),
    ("ghi_lowest_year_kwh_m2_day", "kWh/m2/day", "two"),
    ("ghi_highest_year_kwh_m2_day", "kWh/m2/day", "two"),
    ("temperature_mean_c", "deg C", "one"),
    ("temperature_min_c", "deg C", "one"),
    ("temperature_max_c", "deg C", "one"),
    ("clearness", "", "two"),
    ("clearness_spread", "", "two"),
    ("wind_m_s", "m/s", "one"),
)


@dataclass(frozen=True)
class InputRow:
    """One key of the scenario as a row; `linked` where its value is taken from the form."""

    key: str
    field: Field
    status: str
    linked: bool

    @property
    def is_linked_number(self) -> bool:
        """Whether its cell follows the form."""
        return self.linked and _is_number(self.field.value)


@dataclass(frozen=True)
class Inputs:
    """Rows of the page, and by option the row that holds for a key that its overrides change."""

    rows: tuple[InputRow, ...]
    own: dict[str, dict[str, str]]
    _scenarios: dict[str, Scenario] = field(default_factory=dict, repr=False, compare=False)

    def cell(self, key: str, option: str = "") -> Formula:
        """Cell of a number, as it holds for an option."""
        return Formula.leaf(At(INPUTS, self.own.get(option, {}).get(key, key), "value"))

    def scenario_of(self, option: OptionResult) -> Scenario:
        """Put cells in the place of what money alone hangs on, in the scenario as it holds for an option.

        Numbers that change hours, water or energy stay, and so do those that change which lines there are: the ends of
        tariff blocks, which part simulated energy, and a percentage that was 0.
        """
        if option.name in self._scenarios:
            return self._scenarios[option.name]
        money = {entry.path for entry in walk(option.scenario) if entry.changes == "money"}

        def cell(path: Path, value: Operand) -> Operand:
            fixed = path not in money or path[-1] == BLOCK_END or (path in PERCENTAGES and value == 0)
            return value if fixed else self.cell(dotted(path), option.name)

        found = self._scenarios[option.name] = with_operands(option.scenario, cell)
        return found


def inputs_of(study: Study) -> Inputs:
    """Gather the rows of the page: the scenario's keys, then what overrides leave to a default of their own.

    Where there are no prices, keys that matter to money alone are left out.
    """
    status = statuses(study.scenario)
    shown = (entry for entry in walk(study.scenario) if study.scenario.priced or not entry.is_of_money)
    rows = [InputRow(entry.key, entry, status[entry.key], _has_cell(entry)) for entry in shown]
    known = {row.key for row in rows if _is_number(row.field.value)}
    own = {}
    for option in study.options:
        found, added = _own_rows(study.scenario, option, known)
        own[option.name] = found
        rows += [row for row in added if study.scenario.priced or not row.field.is_of_money]
    return Inputs(tuple(rows), own)


def _own_rows(base: Scenario, option: OptionResult, known: set[str]) -> tuple[dict[str, str], list[InputRow]]:
    """Rows of the keys in which an option differs, and those among them that have no row yet."""
    as_written = next((name for name in base.overrides if option_name_of(name) == option.name), None)
    if as_written is None:
        return {}, []
    prefix = dotted(("overrides", as_written))
    # an override replaces a list of tables as a whole
    replaced = tuple(
        f"{dotted(path)}["
        for path, value in leaves(base.overrides[as_written], whole_lists=True)
        if is_table_list(value)
    )
    values = {entry.path: entry.value for entry in walk(base)}
    status = statuses(option.scenario)
    found: dict[str, str] = {}
    added = []
    for entry in walk(option.scenario):
        key = f"{prefix}.{entry.key}"
        if not _is_number(entry.value):
            continue
        if key in known:
            found[entry.key] = key
        elif values.get(entry.path) != entry.value or entry.key.startswith(replaced):
            found[entry.key] = key
            added.append(InputRow(key, entry, status[entry.key], False))
    return found, added


def _has_cell(entry: Field) -> bool:
    """Whether the form has a cell for a key: not for one in a list that was left out and worked out."""
    return entry.status != ASSUMED or not any(isinstance(part, int) for part in entry.path)


def inputs_page(study: Study, inputs: Inputs) -> Page:
    """Build the page 'Inputs'.

    Parameters
    ----------
    study : Study
        The finished comparison.
    inputs : Inputs
        Its rows.
    """
    priced = study.scenario.priced
    columns = (
        Column("key", text("inputs.key"), 42),
        Column("value", text("inputs.value"), 22),
        Column("unit", text("column.unit"), 14),
        Column("status", text("inputs.status"), 11),
        Column(COLUMN, text("inputs.since"), 18),
        Column("meaning", text("inputs.meaning"), 46),
        Column("source", text("inputs.source"), 36),
        *(Column(month, text(month), 6) for month in MONTHS),
    )
    table = Table(INPUTS, columns, tuple(_row(row, priced=priced) for row in inputs.rows), freeze=1)
    paid = inputs.cell("finance.grant_percent") + inputs.cell("finance.loan_percent") if priced else None
    since = since_table(inputs.rows[0].key, inputs.rows[-1].key, paid=paid)
    under = text("inputs.under", starter=text(f"inputs.status_{STILL_STARTER}"))
    if priced:
        under = f"{under} {text('inputs.money_is', currency=study.scenario.currency)}"
    note = Text(text("inputs.note" if priced else "inputs.note_technical"))
    blocks = (note, since, table, *_weather(study, columns))
    return Page("inputs", text("page.inputs"), text("page.inputs"), under, blocks, printed=0)


def plain_kind(value: float) -> Kind:
    """Format of a number as it was given: its own decimals, thousands set apart."""
    return "whole" if abs(value) >= 1000 and float(value).is_integer() else "general"


def _is_number(value: Any) -> bool:
    return isinstance(value, int | float) and not isinstance(value, bool)


def _from_form(row: InputRow) -> Operand:
    """Take a number from the form, that of the run where there is none."""
    if not row.linked:
        return row.field.value
    cell = Formula.leaf(Foreign(row.key))
    return Formula("IF", Formula("ISNUMBER", cell), cell, row.field.value)


def _is_followed(entry: Field) -> bool:
    """Whether every figure follows a number: see `Inputs.scenario_of`; what is asked of the service, none does."""
    path = entry.path[2:] if entry.in_override else entry.path
    money = entry.changes == "money" and path[0] != "service" and not str(path[-1]).startswith("co2")
    money |= path in IN_USERS or path[0] in OTHER_COMMANDS
    return money and path[-1] != BLOCK_END and not (path in PERCENTAGES and entry.value == 0)


def _row(row: InputRow, *, priced: bool) -> Row:
    entry, value = row.field, row.field.value
    monthly = isinstance(value, list) and len(value) == 12 and not isinstance(value[0], list | str)
    cells = {
        "key": Cell(row.key, "wrap"),
        "unit": Cell("" if entry.in_override else model_words(entry.unit), "wrap"),
        "status": Cell(text(f"inputs.status_{row.status}")),
        "meaning": Cell(model_words(entry.meaning, entry.short), "wrap"),
        "source": Cell(model_words(entry.source), "wrap"),
    }
    if monthly:
        cells |= {month: Cell(value[place], "general") for place, month in enumerate(MONTHS)}
        cells["value"] = Cell(text("inputs.by_month"))
        cells[COLUMN] = months_cell(row.key, value, MONTHS)
    elif _is_number(value):
        cells["value"] = Cell.worked_out(value, plain_kind(value), _from_form(row))
        cells[COLUMN] = number_cell(
            row.key,
            value,
            linked=row.linked,
            given=entry.given,
            followed=priced and _is_followed(entry),
            bounds=entry.takes.number,
        )
    else:
        words = "–" if value is None or value == [] else value if isinstance(value, str) else toml_value(value)
        cells["value"] = Cell(words, "wrap")
        cells[COLUMN] = words_cell(row.key, words)
    return Row(row.key, cells)


def _weather(study: Study, columns: tuple[Column, ...]) -> Iterator[Block]:
    weather = study.weather
    yield Heading(text("inputs.weather"))
    yield Text(text("inputs.weather_source", source=weather.source))
    for note in weather.notes:
        yield Text(text("inputs.weather_note", note=note))
    altitude = text("inputs.altitude_given" if study.altitude_given else "inputs.altitude_grid")
    rows = [
        Row("altitude", {
            "key": Cell(text("inputs.altitude")), "value": Cell(study.place.altitude_m, "whole"), "unit": Cell("m"),
            "status": Cell(altitude, "wrap"),
        })
    ]  # fmt: skip
    table = weather.monthly_table()
    for name, unit, kind in WEATHER:
        cells = {
            "key": Cell(text(f"weather.{name}")),
            "value": Cell(text("inputs.by_month")),
            "unit": Cell(model_words(unit)),
        }
        for month, value in zip(MONTHS, table[name], strict=True):
            cells[month] = Cell(float(value), kind, word=text("figure.none"))
        rows.append(Row(name, cells))
    factors = 100 * np.asarray(weather.annual_factor)
    between = text("inputs.from_to", low=f"{factors.min():.1f}", high=f"{factors.max():.1f}")
    rows.append(
        Row("factor", {"key": Cell(text("inputs.years")), "value": Cell(between), "unit": Cell(text("inputs.of_mean"))})
    )
    yield Table("inputs.weather", columns, tuple(rows), header=False)
