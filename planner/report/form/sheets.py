"""Write the fill-in form, blank or filled, as sheets of a workbook."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import Any, BinaryIO

import xlsxwriter

from planner.report.files import write_stream
from planner.report.form.cells import allowed, allowed_in_short
from planner.report.form.examples import examples
from planner.report.form.filling import (
    Looks,
    cell_in_column,
    column_head,
    entries_of,
    has_cell,
    in_column,
    keys_given,
    labelled,
    shown,
    typing_rule,
    value_at,
    value_in_row,
)
from planner.report.form.gathering import letter
from planner.report.form.layout import sections, sheet_names
from planner.report.form.parts import (
    EXAMPLE_MARK,
    KEY_COLUMN,
    MARKER,
    ORDER,
    ORDER_KEY,
    SECTION_MARK,
    VALUE_COLUMN,
    Section,
    Slot,
    Table,
)
from planner.report.style import MONTHS, line_count
from planner.scenario.errors import InputError, Problem
from planner.scenario.paths import dotted
from planner.scenario.values import Takes
from planner.text import listed, text

_WIDTHS = (40.0, 14.0, 12.0, 20.0, 15.0, *[9.5] * 13)
_LAST_COLUMN = 12
"""Last column of the printed page where no table is wider."""
_HELP_COLUMN = 5
_SPARE_ROWS = 4
_LOWEST_ROW, _LOWEST_ROW_BY_HAND = 16.0, 21.0
"""Height of a row, and of one that is also filled in by hand [points]."""
_LONGEST_MESSAGE = 255
"""Excel's limit for the words beside a cell."""

_VISIT_WIDTHS = (30.0, 16.0, 11.0, 14.5, 12.0, *[4.5] * 13)
"""Of the visit, whose page stands upright."""
_HOW_TO = ("visit", "frames", "numbers", "safety")
_HOW_TO_BEHIND = ("sources", "rows")
_COLUMNS = ("what", "value", "unit", "allowed", "example")


def write_form(path: Path, data: dict[str, Any] | None = None) -> None:
    """Write a fill-in form as a workbook of its own.

    Parameters
    ----------
    path : pathlib.Path
        The workbook wanted, ending in .xlsx; on failure it is left as it was.
    data : dict or None
        Raw scenario data to fill in, as `tomllib` gives it; None for a blank form with examples in its tables.

    Raises
    ------
    InputError
        When `data` holds something that the form has no cell for, or the name does not end in .xlsx. Of problems in
        `data` the file is left open ('') and the key given, so that `reader.located` can add where they stand.
    """
    if path.suffix.lower() != ".xlsx":
        raise InputError(str(path), [Problem("", "a form is a workbook: its name must end in .xlsx")])

    def write(stream: BinaryIO) -> None:
        workbook = xlsxwriter.Workbook(stream)
        add_form_sheets(workbook, data or {}, with_examples=data is None)
        workbook.close()

    write_stream(path, write)


def add_form_sheets(
    workbook: xlsxwriter.Workbook, data: dict[str, Any], *, sheet: str | None = None, with_examples: bool = False
) -> dict[str, str]:
    """Add the form's sheets to a workbook, so that the workbook can be run again.

    Parameters
    ----------
    workbook : xlsxwriter.Workbook
        An open workbook.
    data : dict
        Raw scenario data to fill in.
    sheet : str or None
        Name of one sheet that takes the whole form; None for a sheet for each part of the site.
    with_examples : bool
        Show example rows in the tables.

    Returns
    -------
    dict
        The absolute reference of each filled or fillable value by its dotted key, such as
        ``{"borehole.static_level_m": "'Borehole'!$B$6"}``, for formulas of other sheets.
    """
    names = [sheet] if sheet else sheet_names()
    looks = Looks(workbook)
    writers = {
        name: _SheetWriter(
            workbook.add_worksheet(name), name, looks, data, with_examples, on_one_page=not sheet and name == names[0]
        )
        for name in names
    }
    writers[names[0]].instructions(_HOW_TO[1:] if sheet else _HOW_TO)
    writers[names[0 if sheet else 1]].instructions(_HOW_TO_BEHIND)
    for section in sections():
        writers[sheet or section.sheet].section(section)
    references: dict[str, str] = {}
    for writer in writers.values():
        writer.finish()
        references |= writer.references
    lost = [key for key in keys_given(data) if not has_cell(key, references)]
    if lost:
        raise InputError("", [Problem(key, "has no cell in the form") for key in lost])
    return references


class _SheetWriter:
    """Writes sections one below another on one sheet."""

    def __init__(
        self,
        sheet: Any,
        name: str,
        looks: Looks,
        data: dict[str, Any],
        with_examples: bool,
        *,
        on_one_page: bool = False,
    ) -> None:
        self._on_one_page = on_one_page
        self._widths = _VISIT_WIDTHS if on_one_page else _WIDTHS
        self._sheet, self._name, self._looks, self._data = sheet, name, looks, data
        self._with_examples = with_examples
        self._last_column = _LAST_COLUMN
        self.references: dict[str, str] = {}
        for column, width in enumerate(self._widths):
            sheet.set_column(column, column, width)
        sheet.set_column(KEY_COLUMN, KEY_COLUMN, 50)
        sheet.write_string(0, 0, name, looks.title)
        sheet.write_string(0, KEY_COLUMN, MARKER, looks.key)
        for column, title in enumerate(_COLUMNS):
            sheet.write_string(1, column, text(f"form.column.{title}"), looks.head)
        last = text("form.column.printed" if on_one_page else "form.column.notes")
        sheet.merge_range(1, _HELP_COLUMN, 1, _LAST_COLUMN, last, looks.head)
        sheet.set_row(0, 26)
        sheet.set_row(1, 18)
        sheet.freeze_panes(2, 1)
        self._row = 2

    def instructions(self, parts: Sequence[str]) -> None:
        """Say at the top how the form is filled in."""
        for part in parts:
            line = text(f"form.how_to.{part}")
            self._sheet.merge_range(self._row, 0, self._row, _LAST_COLUMN, line, self._looks.how)
            self._mark(SECTION_MARK)
            self._tall(self._row, (line, sum(self._widths[: _LAST_COLUMN + 1])))
            self._row += 1

    def section(self, section: Section) -> None:
        """Write one section: its values, its months, its tables."""
        if self._row > 2 and not self._on_one_page:
            self._row += 1
        for column in range(_LAST_COLUMN + 1):
            self._sheet.write_string(self._row, column, "" if column else section.title, self._looks.band)
        self._mark(f"{SECTION_MARK} {dotted(section.path)}".strip())
        self._row += 1
        notes = section.notes
        if section.optional:
            notes = text("form.leave_section_empty", notes=notes).strip()
        if notes:
            self._sheet.write_string(self._row, 0, notes, self._looks.note)
            self._mark(SECTION_MARK)
            self._row += 1
        for slot in section.rows:
            self._value_row(slot)
        if section.months:
            self._months(section.months)
        for table in section.tables:
            self._table(table)

    def finish(self) -> None:
        """Set up the printed page."""
        sheet = self._sheet
        sheet.hide_gridlines(2)
        sheet.set_paper(9)
        sheet.set_margins(left=0.4, right=0.4, top=0.5, bottom=0.6)
        if self._on_one_page:
            sheet.fit_to_pages(1, 1)
        else:
            sheet.set_landscape()
            sheet.fit_to_pages(1, 0)
        sheet.repeat_rows(0, 1)
        sheet.print_area(0, 0, self._row, self._last_column)
        sheet.set_footer(f"&L&8&A&R&8{text('form.page', page='&P', pages='&N')}")

    def _mark(self, key: str) -> None:
        self._sheet.write_string(self._row, KEY_COLUMN, key, self._looks.key)

    def _value_row(self, slot: Slot) -> None:
        sheet, row, looks = self._sheet, self._row, self._looks
        value = shown(value_in_row(self._data, slot.path), slot.key, slot.takes)
        shape = looks.input(slot.needed, slot.takes, value)
        example = shown(value_at(examples(), slot.path), slot.key, slot.takes)
        sheet.write_string(row, 0, slot.label, looks.label)
        wide = slot.takes.text and not slot.unit
        if wide:
            sheet.merge_range(row, VALUE_COLUMN, row, VALUE_COLUMN + 2, "", shape)
        self._write(row, VALUE_COLUMN, value, shape)
        self._validate(row, row, VALUE_COLUMN, slot, slot.takes)
        if not wide:
            sheet.write_string(row, 2, slot.unit, looks.unit)
            sheet.write_string(row, 3, allowed_in_short(slot.takes), looks.small)
        if example is not None:
            self._write(row, 4, example, looks.example)
        sheet.merge_range(row, _HELP_COLUMN, row, _LAST_COLUMN, slot.printed or slot.notes, looks.small)
        self._mark(slot.key)
        self._refer(slot.key, row, VALUE_COLUMN)
        room = 44.0 if wide else self._widths[1]
        self._tall(
            row,
            (slot.label, self._widths[0]),
            (value, room),
            ("" if wide else allowed_in_short(slot.takes), self._widths[3]),
            (example, self._widths[4]),
            (slot.printed or slot.notes, sum(self._widths[_HELP_COLUMN : _LAST_COLUMN + 1])),
        )
        self._row += 1

    def _months(self, months: Sequence[Slot]) -> None:
        self._row += 1
        for month, name in enumerate(MONTHS):
            self._sheet.write_string(self._row, VALUE_COLUMN + month, name, self._looks.column)
        self._sheet.write_string(self._row, 0, text("form.by_month"), self._looks.table)
        self._mark(SECTION_MARK)
        self._row += 1
        for slot in months:
            label = f"{labelled(slot)}\n{slot.notes}"
            example = value_at(examples(), slot.path)
            if example is not None and self._with_examples:
                self._example(
                    [(text("form.column.example"), 0), *((value, VALUE_COLUMN + i) for i, value in enumerate(example))]
                )
            self._sheet.write_string(self._row, 0, label, self._looks.label)
            self._twelve(value_at(self._data, slot.path), slot, VALUE_COLUMN)
            self._validate(self._row, self._row, VALUE_COLUMN, slot, Takes(number=slot.takes.number), 12)
            self._mark(slot.key)
            self._refer(slot.key, self._row, VALUE_COLUMN, VALUE_COLUMN + 11)
            self._tall(self._row, (slot.label, self._widths[0]), ("", 1), extra=f"{slot.unit} {slot.notes}")
            self._row += 1

    def _twelve(self, values: Any, slot: Slot, column: int) -> None:
        if values is not None and not (isinstance(values, list) and len(values) == 12):
            raise InputError("", [Problem(slot.key, "must be twelve values, January to December")])
        for month in range(12):
            takes = Takes(number=slot.takes.number)
            value = None if values is None else shown(values[month], slot.key, takes)
            self._write(self._row, column + month, value, self._looks.input(slot.needed, takes, value))

    def _table(self, table: Table) -> None:
        looks, sheet = self._looks, self._sheet
        first = 0 if table.slots[0].takes.text else VALUE_COLUMN
        columns = list(enumerate(table.headers, start=first))
        self._last_column = max(self._last_column, columns[-1][0])
        self._row += 1
        monthly = [slot for slot in table.slots if slot.takes.months]
        title = table.title
        if monthly:
            months = [text("form.labelled", label=slot.label.lower(), unit=slot.unit) for slot in monthly]
            title = text("form.table_by_month", title=title, months=listed(months))
        sheet.write_string(self._row, 0, title, looks.table)
        self._mark(SECTION_MARK)
        self._row += 1
        heads = [(column, column_head(slot, month)) for column, (_, slot, month) in columns]
        for column, head in heads:
            sheet.write_string(self._row, column, head, looks.column)
        self._mark(SECTION_MARK)
        self._tall(self._row, *((head, self._widths[column]) for column, head in heads), size=12.0, scale=0.85)
        self._row += 1
        for column, (key, _, _) in columns:
            sheet.write_string(self._row, column, key, looks.column_key)
        self._tall(self._row, *((key, self._widths[column]) for column, (key, _, _) in columns), size=9.5, scale=0.7)
        self._mark(table.key)
        self._row += 1
        if self._with_examples:
            for _, shown_entry in entries_of(examples(), table)[:2]:
                cells = [(cell_in_column(shown_entry, *head), column) for column, head in columns]
                self._example([*([(text("form.column.example"), 0)] if first else []), *cells])
        start = self._row
        given = entries_of(self._data, table)
        for place, given_entry in [*given, *[(None, {})] * _SPARE_ROWS]:
            self._entry_row(table, columns, place, given_entry)
        for column, (_, slot, month) in columns:
            takes = ORDER if slot is None else Takes(number=slot.takes.number) if month is not None else slot.takes
            self._validate(start, self._row - 1, column, slot, takes)

    def _entry_row(self, table: Table, columns: Sequence[tuple[int, Any]], place: Any, entry: dict[str, Any]) -> None:
        where = dotted((*table.path, place)) if isinstance(place, int) else dotted(table.path)
        texts: list[tuple[Any, float]] = []
        for column, (key, slot, month) in columns:
            value = in_column(entry, key, slot, month)
            if key == ORDER_KEY and isinstance(place, int):
                value = place + 1
            takes = slot.takes if slot and month is None else ORDER
            value = shown(value, f"{where}.{key}", takes)
            shape = self._looks.input(bool(slot and slot.needed), takes, value)
            self._write(self._row, column, value, shape)
            texts.append((value, self._widths[column]))
            if table.of_overrides and key == "value" and place:
                self._refer(str(place), self._row, column)
            elif isinstance(place, int) and slot is not None and month in (None, 0):
                self._refer(f"{where}.{slot.key}", self._row, column, column + (11 if month == 0 else 0))
        self._tall(self._row, *texts)
        self._row += 1

    def _example(self, cells: Sequence[tuple[Any, int]]) -> None:
        texts: list[tuple[Any, float]] = []
        for value, column in cells:
            self._write(self._row, column, value, self._looks.example if column == 0 else self._looks.example_cell)
            texts.append((value, self._widths[column]))
        self._mark(EXAMPLE_MARK)
        self._tall(self._row, *texts, size=12.5)
        self._row += 1

    def _write(self, row: int, column: int, value: Any, shape: Any) -> None:
        if value is None:
            self._sheet.write_blank(row, column, None, shape)
        elif isinstance(value, str):
            self._sheet.write_string(row, column, value, shape)
        else:
            self._sheet.write_number(row, column, value, shape)

    def _refer(self, key: str, row: int, column: int, last: int | None = None) -> None:
        sheet = self._name.replace("'", "''")
        end = f":${letter(last)}${row + 1}" if last is not None and last > column else ""
        self.references[key] = f"'{sheet}'!${letter(column)}${row + 1}{end}"

    def _tall(
        self, row: int, *texts: tuple[Any, float], size: float = 13.5, scale: float = 0.92, extra: str = ""
    ) -> None:
        """Make a row as tall as its longest text needs."""
        lines = max((line_count(str(text), width, scale) for text, width in texts if text is not None), default=1)
        if extra:
            lines += line_count(extra, self._widths[0], scale)
        lowest = _LOWEST_ROW_BY_HAND if self._on_one_page else _LOWEST_ROW
        self._sheet.set_row(row, max(lowest, lines * size + 3))

    def _validate(self, first: int, last: int, column: int, slot: Slot | None, takes: Takes, width: int = 1) -> None:
        label = labelled(slot) if slot else text("form.place_may_stay_empty")
        notes = f"\n{slot.notes}" if slot else ""
        rule = typing_rule(takes, f"{letter(column)}{first + 1}")
        message = f"{label}\n{allowed(takes)}{notes}"
        rule |= {
            "input_message": message if len(message) <= _LONGEST_MESSAGE else message[: _LONGEST_MESSAGE - 3] + "...",
            "error_title": text("form.not_allowed"),
            "error_message": text("form.allowed", allowed=allowed(takes))[:_LONGEST_MESSAGE],
        }
        self._sheet.data_validation(first, column, last, column + width - 1, rule)
