"""What stands in the form's cells for given data, and what the spreadsheet program checks while one types."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from planner.report.form.cells import CellProblem, allowed_in_short, cell_of
from planner.report.form.parts import DESCRIBED, ORDER, KeyPath, Slot, Table
from planner.report.form.visit import FIRST_USER, FIRST_USERS_KIND, USERS, at, first_user_there
from planner.report.style import INK, MIST, MONTHS, RULE, SLATE, STRAW
from planner.scenario.errors import InputError, Problem
from planner.scenario.paths import dotted
from planner.scenario.values import Bounds, Takes
from planner.scenario.walk import leaves
from planner.scenario.writer import toml_value
from planner.text import text

_SOFT, _NEEDED, _FREE = "#5F6E74", STRAW, "#FAFBF7"


def keys_given(data: dict[str, Any]) -> Iterator[str]:
    """Yield the dotted key of everything that must have found a cell; the kind of a list's entry is its table's."""
    for path, value in leaves(data):
        in_list = len(path) > 1 and isinstance(path[-2], int)
        if value != [] and not (path[-1] == "kind" and in_list):
            yield dotted(path)


def has_cell(key: str, references: dict[str, str]) -> bool:
    """Whether a key, or a value that it is part of, has a cell."""
    while key and key not in references:
        key = key[: key.rindex("[")] if key.endswith("]") else key.rpartition(".")[0]
    return bool(key)


class Looks:
    """The formats of the form, in the workbook's palette; frames tell needed from optional cells in grey too."""

    def __init__(self, workbook: Any) -> None:
        base = {"font_name": "Calibri", "font_size": 10, "font_color": INK, "valign": "vcenter"}
        wrap = {**base, "text_wrap": True}

        def added(**more: Any) -> Any:
            return workbook.add_format({**wrap, **more})

        self.title = workbook.add_format({**base, "bold": True, "font_size": 16})
        self.how = added(font_size=10)
        self.head = added(bold=True, bg_color=MIST, bottom=1)
        self.band = workbook.add_format(
            {**base, "bold": True, "font_size": 11, "font_color": "#FFFFFF", "bg_color": SLATE}
        )
        self.note = workbook.add_format({**base, "italic": True, "font_color": _SOFT})
        self.label, self.unit, self.small = added(), added(indent=1), added(font_size=9, font_color=_SOFT)
        self.table = workbook.add_format({**base, "bold": True, "bottom": 1})
        self.column = added(font_size=9, bg_color=MIST, border=1, border_color=RULE, align="center")
        self.column_key = added(
            font_size=7, font_color=_SOFT, bg_color=MIST, border=1, border_color=RULE, align="center"
        )
        self.key = workbook.add_format({**base, "font_size": 8, "font_color": RULE})
        self.example = added(italic=True, font_size=9, font_color=_SOFT, align="left")
        self.example_cell = added(italic=True, font_size=9, font_color=_SOFT, align="right")
        self._inputs = {
            (needed, text, quoted): added(
                bg_color=_NEEDED if needed else _FREE,
                border=2 if needed else 1,
                border_color=INK if needed else _SOFT,
                num_format="@" if text else "General",
                align="left" if text else "right",
                **({"quote_prefix": True} if quoted else {}),
            )
            for needed in (False, True)
            for text in (False, True)
            for quoted in (False, True)
        }

    def input(self, slot_needed: bool, takes: Takes, value: Any) -> Any:
        """The format of an input cell; a text that a program could take for a formula is marked as text."""
        quoted = isinstance(value, str) and value[:1] in tuple("=+-@")
        return self._inputs[slot_needed, takes.printed or not takes.numeric, quoted]


def typing_rule(takes: Takes, cell: str) -> dict[str, Any]:
    """What the spreadsheet program itself checks while one types; the tool checks everything again."""
    if takes.choices:
        listed = [str(word) for word in takes.choices]
        return {"validate": "list", "source": listed, "show_error": takes.number is None and not takes.items}
    if takes.number is None or takes.items or takes.text:
        return {"validate": "any"}
    kind, limits = "integer" if takes.whole else "decimal", takes.number
    if limits.ge is not None and limits.le is not None:
        return {"validate": kind, "criteria": "between", "minimum": limits.ge, "maximum": limits.le}
    signs = [(sign, value) for sign, value in _signs(limits) if value is not None]
    if len(signs) == 1:
        return {"validate": kind, "criteria": signs[0][0], "value": signs[0][1]}
    tests = ",".join([f"ISNUMBER({cell})", *(f"{cell}{sign}{value:.15g}" for sign, value in signs)])
    return {"validate": "custom", "value": f"=AND({tests})"}


def _signs(limits: Bounds) -> tuple[tuple[str, float | None], ...]:
    return ((">", limits.gt), (">=", limits.ge), ("<", limits.lt), ("<=", limits.le))


def column_head(slot: Slot | None, month: int | None) -> str:
    """Words over a column of a table; None as slot is the place in the list."""
    if slot is None:
        return text("form.place_in_list")
    if month is not None:
        return f"{MONTHS[month]}\n{slot.unit}"
    few = 2 <= len(slot.takes.choices) <= 3 or slot.takes.number is not None or slot.takes.other
    head = labelled(slot)
    return f"{head}\n{allowed_in_short(slot.takes)}" if few else head


def labelled(slot: Slot) -> str:
    """Name a value with its unit, where it has one."""
    return text("form.labelled", label=slot.label, unit=slot.unit) if slot.unit else slot.label


def value_at(data: dict[str, Any], path: KeyPath) -> Any:
    """Return the value at a path of the data; None where there is none, or an empty list."""
    if path[-1] == DESCRIBED:
        here = at(data, path[:-1])
        return "yes" if here is not None and not _holds_anything(here) else None
    value = at(data, path)
    return value if value != [] else None


def value_in_row(data: dict[str, Any], path: KeyPath) -> Any:
    """Return what the row of a key holds; of the first user None where the row of a table holds it."""
    return value_at(data, path) if path[: len(FIRST_USER)] != FIRST_USER or first_user_there(data) else None


def _holds_anything(value: Any) -> bool:
    if isinstance(value, dict):
        return any(_holds_anything(inner) for inner in value.values())
    return bool(value != [])


def entries_of(data: dict[str, Any], table: Table) -> list[tuple[Any, dict[str, Any]]]:
    """Return (place in the list, entry) of the entries that stand in a table; of an override, (key, row)."""
    if table.of_overrides:
        return list(_override_rows(value_at(data, table.path) or {}))
    found = list(enumerate(value_at(data, table.path) or []))
    if table.path == USERS and table.kind == FIRST_USERS_KIND and first_user_there(data):
        found.pop(0)
    return [(place, entry) for place, entry in found if not table.kind or entry.get("kind") == table.kind]


def _override_rows(overrides: dict[str, Any]) -> Iterator[tuple[str, dict[str, Any]]]:
    for option, tables in overrides.items():
        for path, value in leaves(tables, whole_lists=True):
            shown = toml_value(value) if isinstance(value, list) else value
            yield (
                dotted(("overrides", option, *path)),
                {"option": option, "key": ".".join(map(str, path)), "value": shown},
            )


def in_column(entry: dict[str, Any], key: str, slot: Slot | None, month: int | None) -> Any:
    """Return what an entry of a list has for a column; None where it has nothing."""
    if slot is None or month is None:
        value = entry.get(key)
        return None if value == [] else value
    values = entry.get(slot.key)
    return None if values is None else values[month]


def cell_in_column(entry: dict[str, Any], key: str, slot: Slot | None, month: int | None) -> Any:
    """Return what the cell of a column holds for an entry of a list."""
    return shown(in_column(entry, key, slot, month), key, slot.takes if slot and month is None else ORDER)


def shown(value: Any, key: str, takes: Takes) -> Any:
    """What a cell holds for a value; None where it stays empty."""
    if value is None:
        return None
    try:
        return cell_of(value, takes)
    except CellProblem as problem:
        raise InputError("", [Problem(key, str(problem))]) from problem
