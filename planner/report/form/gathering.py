"""Gather the cells of a form, sheet by sheet, into raw scenario data, and remember where each value stands."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from typing import Any

from pydantic import BaseModel

from planner.report.form.cells import CellProblem, Content, allowed, toml_of, value_of
from planner.report.form.layout import sections, slots, tables
from planner.report.form.parts import (
    ANYTHING,
    DESCRIBED,
    EXAMPLE_MARK,
    KEY_COLUMN,
    MARKER,
    ORDER,
    ORDER_KEY,
    SECTION_MARK,
    VALUE_COLUMN,
    KeyPath,
    Slot,
    Table,
)
from planner.report.form.visit import FIRST_USER, FIRST_USERS_KIND, USERS
from planner.report.style import MONTHS
from planner.scenario.paths import dotted
from planner.scenario.scenario import Scenario
from planner.scenario.values import Takes
from planner.scenario.walk import fields_of
from planner.text import text


@dataclass(frozen=True)
class Cell:
    """Where a value of the scenario stands in the workbook; a title takes no value and allows nothing."""

    sheet: str
    reference: str
    label: str
    allowed: str = ""

    def __str__(self) -> str:
        """Say where the cell is, as problems name it."""
        return text("form_cell.place", sheet=self.sheet, cell=self.reference, label=self.label)


@dataclass
class Form:
    """A form as read.

    Attributes
    ----------
    data : dict
        Raw scenario data, as `tomllib` would give it; a cell that could not be read holds an `Unreadable`.
    cells : dict
        The cell of every key by its dotted path; of a table of the scenario, the cell of its title.
    problems : list of (Cell, str)
        What is wrong with single cells.
    """

    data: dict[str, Any] = field(default_factory=dict)
    cells: dict[str, Cell] = field(default_factory=dict)
    problems: list[tuple[Cell | None, str]] = field(default_factory=list)


class Unreadable:
    """Stands for the value of a cell that could not be read, so that its key does not count as missing."""


@dataclass(frozen=True)
class _Header:
    """A table's header as found: the key, slot and month of each column."""

    table: Table
    columns: dict[int, tuple[str, Slot | None, int | None]]


@dataclass
class _Row:
    """One filled row of a table."""

    cell: Cell
    order: int | None = None
    values: dict[str, Any] = field(default_factory=dict)
    cells: dict[str, Cell] = field(default_factory=dict)


class Gatherer:
    """Takes the sheets of a workbook one by one; `finish` gives the form."""

    def __init__(self) -> None:
        self._form = Form()
        self._slots = {slot.key: slot for section in sections() for slot in (*section.rows, *section.months)}
        self._tables = {table.key: table for table in tables()}
        self._sections = {dotted(section.path): section for section in sections()}
        self._entries: dict[KeyPath, list[_Row]] = {}
        self._first_user: _Row | None = None
        self._overrides: list[_Row] = []
        self._described: list[KeyPath] = []

    def sheet(self, title: str, rows: Iterable[Sequence[Content]]) -> bool:
        """Take one sheet, its rows from the first on; False where it is no sheet of a form."""
        numbered = enumerate(rows, start=1)
        _, first = next(numbered, (1, ()))
        at = next((column for column, content in enumerate(first) if content.value == MARKER), None)
        if at is None:
            return False
        if at != KEY_COLUMN:
            cell = Cell(title, _reference(1, at), text("form_cell.keys"))
            self._problem(cell, text("form_cell.keys_moved", column=letter(KEY_COLUMN)))
            return True
        table: _Header | None = None
        for number, row in numbered:
            contents = [*row, *[Content()] * (KEY_COLUMN + 1 - len(row))]
            key = "" if contents[KEY_COLUMN].blank else str(contents[KEY_COLUMN].value).strip()
            if key in self._tables:
                table = self._header(self._tables[key], title, number, contents)
            elif key == "" and table is not None:
                self._entry(table, title, number, contents)
            elif key not in ("", EXAMPLE_MARK):
                table = None
                self._keyed(key, title, number, contents)
        return True

    def _problem(self, cell: Cell, says: str) -> None:
        self._form.problems.append((cell, says))

    def _value(self, content: Content, takes: Takes, cell: Cell) -> Any:
        try:
            return value_of(content, takes)
        except CellProblem as problem:
            self._problem(cell, str(problem))
            return Unreadable()

    def _keyed(self, key: str, title: str, number: int, contents: Sequence[Content]) -> None:
        """Take a row that has its own key: a title, one value or twelve months."""
        if key.startswith(SECTION_MARK):
            name = key.removeprefix(SECTION_MARK).strip()
            if name in self._sections:
                self._form.cells.setdefault(name, Cell(title, _reference(number, 0), self._sections[name].title))
            return
        slot = self._slots.get(key)
        if slot is None:
            if any(not content.blank for content in contents[VALUE_COLUMN : VALUE_COLUMN + 1]):
                cell = Cell(title, _reference(number, VALUE_COLUMN), key)
                self._problem(cell, text("form_cell.unknown_key", key=key))
            return
        cell = Cell(
            title,
            _reference(number, VALUE_COLUMN),
            slot.label,
            allowed(slot.takes) or text("form.takes.twelve_numbers"),
        )
        cells: dict[str, Cell] = {}
        value: Any = None
        if slot.takes.months:
            places = list(enumerate(contents))[VALUE_COLUMN : VALUE_COLUMN + 12]
            value = self._months(slot, title, number, places, cells)
        elif not contents[VALUE_COLUMN].blank:
            value = self._value(contents[VALUE_COLUMN], slot.takes, cell)
        if key in self._form.cells:
            if value is not None:
                self._problem(cell, text("form_cell.given_twice", place=self._form.cells[key]))
            return
        self._form.cells |= {**cells, key: cell}
        if value is not None and slot.path[-1] == DESCRIBED:
            self._described.append(slot.path[:-1])
        elif value is not None and slot.path[: len(FIRST_USER)] == FIRST_USER:
            self._first_user = self._first_user or _Row(cell, 0, {"kind": FIRST_USERS_KIND})
            self._first_user.values[str(slot.path[-1])] = value
        elif value is not None:
            _put(self._form.data, slot.path, value)

    def _header(self, table: Table, title: str, number: int, contents: Sequence[Content]) -> _Header:
        known = {key: (key, slot, month) for key, slot, month in table.headers}
        columns: dict[int, tuple[str, Slot | None, int | None]] = {}
        for column, content in enumerate(contents[:KEY_COLUMN]):
            name = "" if content.blank else str(content.value).strip()
            if name in known:
                columns[column] = known[name]
            elif name:
                cell = Cell(title, _reference(number, column), table.title)
                columns_known = text("list.comma").join(known)
                self._problem(cell, text("form_cell.unknown_column", column=name, columns=columns_known))
        name = table.title.partition(":")[0] if table.kind else table.title
        self._form.cells.setdefault(dotted(table.path), Cell(title, _reference(number, 0), name))
        return _Header(table, columns)

    def _entry(self, header: _Header, title: str, number: int, contents: Sequence[Content]) -> None:
        """Take a row below a table's header; a row with nothing but its place in the list is an empty one."""
        filled = {column for column in header.columns if not contents[column].blank}
        if not any(header.columns[column][0] != ORDER_KEY for column in filled):
            return
        row = _Row(Cell(title, _reference(number, min(header.columns)), header.table.title))
        months: dict[str, list[tuple[int, Content]]] = {}
        for column, (name, slot, month) in header.columns.items():
            if month is not None and slot is not None:
                months.setdefault(slot.key, []).append((column, contents[column]))
                continue
            takes, label = (slot.takes, slot.label) if slot else (ORDER, text("form_cell.place_in_list"))
            row.cells[name] = Cell(title, _reference(number, column), label, allowed(takes))
            if column in filled:
                whole = ANYTHING if header.table.of_overrides else takes
                row.values[name] = self._value(contents[column], whole, row.cells[name])
            elif slot is not None and slot.needed and takes.items:
                row.values[name] = []
        for slot in header.table.slots:
            if slot.key in months:
                first = _reference(number, months[slot.key][0][0])
                row.cells[slot.key] = Cell(title, first, slot.label, text("form.takes.twelve_numbers"))
                found = self._months(slot, title, number, months[slot.key], row.cells)
                row.values |= {} if found is None else {slot.key: found}
        if header.table.of_overrides:
            self._overrides.append(row)
            return
        place = row.values.pop(ORDER_KEY, None)
        row.order = place if isinstance(place, int) else None
        row.values |= {"kind": header.table.kind} if header.table.kind else {}
        self._entries.setdefault(header.table.path, []).append(row)

    def _months(
        self, slot: Slot, title: str, number: int, places: Sequence[tuple[int, Content]], cells: dict[str, Cell]
    ) -> list[Any] | None:
        """Read twelve cells; None where all are empty. A cell left empty beside filled ones is a problem."""
        one = Takes(number=slot.takes.number)
        given = any(not content.blank for _, content in places)
        values: list[Any] = []
        for month, (column, content) in enumerate(places):
            label = text("form_cell.of_month", label=slot.label, month=MONTHS[month])
            cell = Cell(title, _reference(number, column), label, allowed(one))
            cells[f"{slot.key}[{month + 1}]"] = cell
            if not given:
                continue
            if content.blank:
                self._problem(cell, text("form_cell.month_empty", allowed=allowed(one)))
                values.append(Unreadable())
            else:
                values.append(self._value(content, one, cell))
        return values if given else None

    def finish(self) -> Form:
        """Put entries in order and overrides in place, and add what every site must have, so that gaps are named."""
        if self._first_user is not None:
            self._entries.setdefault(USERS, []).append(self._first_user)
        for path, rows in self._entries.items():
            rows.sort(key=lambda row: (row.order is None, row.order or 0))
            for index, row in enumerate(rows):
                here = dotted((*path, index))
                self._form.cells[here] = row.cell
                self._form.cells |= {f"{here}.{name}": cell for name, cell in row.cells.items()}
            _put(self._form.data, path, [row.values for row in rows])
        for row in self._overrides:
            self._override(row)
        for path in self._described:
            _within(self._form.data, path)
        _complete(self._form.data, Scenario)
        if "weather.kind" in self._form.cells:
            self._form.cells["weather"] = self._form.cells["weather.kind"]
        return self._form

    def _override(self, row: _Row) -> None:
        missing = [name for name in ("option", "key", "value") if name not in row.values]
        for name in missing:
            self._problem(row.cells.get(name, row.cell), text("form_cell.override_incomplete"))
        option, key, value = (row.values.get(name) for name in ("option", "key", "value"))
        if missing or any(isinstance(part, Unreadable) for part in (option, key, value)):
            return
        path = ("overrides", str(option).strip(), *str(key).strip().split("."))
        name = dotted(path)
        cell = Cell(
            row.cells["value"].sheet, row.cells["value"].reference, f"{option}: {key}", text("form.takes.as_its_key")
        )
        slot = slots().get(path[2:])
        if name in self._form.cells:
            self._problem(cell, text("form_cell.given_twice", place=self._form.cells[name]))
            return
        self._form.cells[name] = cell
        self._form.cells.setdefault(dotted(path[:2]), row.cells["option"])
        try:
            _put(self._form.data, path, _override_value(value, slot))
        except CellProblem as problem:
            self._problem(cell, str(problem))
        except TypeError:
            self._problem(row.cells["key"], text("form_cell.within_another", key=key))


def letter(column: int) -> str:
    """Name a column counted from 0."""
    return (letter(column // 26 - 1) if column >= 26 else "") + chr(ord("A") + column % 26)


def _reference(row: int, column: int) -> str:
    return f"{letter(column)}{row}"


def _within(data: dict[str, Any], path: KeyPath) -> dict[str, Any]:
    """Return the table at a path, made where it is missing."""
    for part in path:
        data = data.setdefault(str(part), {})
        if not isinstance(data, dict):
            raise TypeError("a value stands where a table is needed")
    return data


def _put(data: dict[str, Any], path: KeyPath, value: Any) -> None:
    data, name = _within(data, path[:-1]), str(path[-1])
    if name in data:
        raise TypeError("a table stands where a value is needed")
    data[name] = value


def _override_value(value: Any, slot: Slot | None) -> Any:
    """Bring an override's value to the type of its key; lists and tables are written as in TOML."""
    if isinstance(value, str) and value.lstrip()[:1] in ("[", "{") and not (slot and slot.takes.text):
        return toml_of(value)
    if slot is None or (slot.takes.text and isinstance(value, str)):
        return value
    if slot.takes.months:
        raise CellProblem(f"{value!r} was given; must be twelve numbers as in TOML, such as [3, 3.5, ...]")
    return value_of(Content(value, "s" if isinstance(value, str) else "n"), slot.takes)


def _complete(data: dict[str, Any], model: type[BaseModel]) -> None:
    for name, declared in fields_of(model).items():
        if declared.is_list and declared.tables and declared.is_needed:
            data.setdefault(name, [])
        elif declared.tables and not declared.is_list:
            if declared.is_needed:
                data.setdefault(name, {})
            if isinstance(data.get(name), dict) and len(declared.tables) == 1:
                _complete(data[name], declared.tables[0])
