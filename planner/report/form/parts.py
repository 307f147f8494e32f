"""What a form consists of: sections of rows, months and tables, and the marks by which they are found again."""

from __future__ import annotations

from dataclasses import dataclass

from planner.scenario.paths import Path, dotted
from planner.scenario.values import Bounds, Takes

KeyPath = Path

MARKER = "planner form 1"
"""Stands in the key column of the first row of every sheet of a form; a new layout gets a new number."""
DESCRIBED = "described"
"""Last part of the key of the cell that says 'yes' where a part is described although all its cells are empty."""
KEY_COLUMN = 19
"""Column of the keys, counted from 0; every row and table lies to its left, with one column between."""
VALUE_COLUMN = 1
SECTION_MARK, EXAMPLE_MARK, ORDER_KEY = "-", "example", "place_in_list"

OVERRIDES: KeyPath = ("overrides",)

ANYTHING = Takes(text=True, number=Bounds())
"""What an override's cells take before the type of its key is known."""
ORDER = Takes(number=Bounds(ge=1), whole=True)
"""What the place-in-list cells take."""


@dataclass(frozen=True)
class Slot:
    """One value of the scenario: a row of the form, or a column of a table.

    Attributes
    ----------
    path : tuple
        Keys from the root of the scenario, and places in lists; for a column, its key within the entry only.
    label, unit, notes : str
        What it is, its unit, and what holds when it is left empty.
    takes : Takes
        What the cell takes.
    needed : bool
        Whether it must be given wherever its section or entry is used.
    printed : str
        What pumping test and nameplate call it; '' where the form does not say.
    """

    path: KeyPath
    label: str
    unit: str
    notes: str
    takes: Takes
    needed: bool
    printed: str = ""

    @property
    def key(self) -> str:
        """The dotted key as it stands in the key column or in a table's header."""
        return dotted(self.path)


@dataclass(frozen=True)
class Table:
    """A list of tables of the scenario, one entry a row; where entries are of several kinds, one table a kind."""

    path: KeyPath
    title: str
    slots: tuple[Slot, ...]
    kind: str = ""
    needed: bool = False

    @property
    def key(self) -> str:
        """What stands in the key column beside the header."""
        return f"{dotted(self.path)}[{self.kind}]"

    @property
    def of_overrides(self) -> bool:
        """Whether its rows hold for one supply option each."""
        return self.path == OVERRIDES

    @property
    def headers(self) -> tuple[tuple[str, Slot | None, int | None], ...]:
        """(header key, slot, month from 0) of each column; the place in the list has no slot."""
        columns: list[tuple[str, Slot | None, int | None]] = []
        for slot in self.slots:
            if slot.takes.months:
                columns += [(f"{slot.key}[{month + 1}]", slot, month) for month in range(12)]
            else:
                columns.append((slot.key, slot, None))
        if self.kind:
            columns.insert(1, (ORDER_KEY, None, None))
        return tuple(columns)


@dataclass(frozen=True)
class Section:
    """One table of the scenario on the form.

    `optional` sections count as described as soon as one of their cells, or of the sections within them, is filled.
    """

    path: KeyPath
    title: str
    notes: str
    optional: bool
    rows: tuple[Slot, ...]
    months: tuple[Slot, ...]
    tables: tuple[Table, ...]
    sheet: str
