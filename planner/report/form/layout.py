"""The form's layout, generated from the scenario models: sections of rows, months and tables, and their sheets."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import cache

from pydantic import BaseModel

from planner.report.form import visit
from planner.report.form.cells import cell_of, figure
from planner.report.form.parts import ANYTHING, DESCRIBED, OVERRIDES, KeyPath, Section, Slot, Table
from planner.scenario.equipment import Equipment
from planner.scenario.paths import dotted
from planner.scenario.scenario import Scenario
from planner.scenario.values import Takes
from planner.scenario.walk import Field, fields_of, first_line, kind_of, words_of
from planner.text import known, language_in_use, text

SHEETS: dict[str, tuple[KeyPath, ...]] = {
    visit.SHEET: (),
    "prices": (("prices",),),
    "project": ((),),
    "place": (("site",), ("weather",)),
    "demand": (("demand",),),
    "borehole": (("borehole",), ("pumping_test",), ("water_quality",)),
    "pipe": (("pipeline",),),
    "pump": (("pump",), ("controller",)),
    "solar": (("sources", "solar"),),
    "grid": (("sources", "grid"),),
    "generator": (("sources", "generator"),),
    "cables": (("cables",),),
    "tank": (("tank",), ("topup",)),
    "costs": (("costs",), ("finance",), ("households",)),
    "options": (("service",), ("overrides",)),
    "studies": (("size",), ("sweep",)),
}
"""The visit, and the sheets behind it, each with the tables of the scenario that stand on it.

A table that is named nowhere stands on the last sheet.
"""


def _overrides() -> Table:
    takes = {"option": Takes(text=True), "key": Takes(text=True), "value": ANYTHING}
    given = text("form.must_be_given")
    columns = tuple(Slot((key,), text(f"form.override_{key}"), "", given, takes[key], True) for key in takes)
    return Table(OVERRIDES, text("form.overrides"), columns)


def sections() -> tuple[Section, ...]:
    """Return every section of the form, in the order of its sheets and in the language in use."""
    return _sections_in(language_in_use())


@cache
def _sections_in(_: str) -> tuple[Section, ...]:
    found = list(_sections((), [Scenario], optional=False))
    found.sort(key=lambda section: _place(section.path))
    return tuple(visit.with_visit(found, text(f"form.sheet.{visit.SHEET}")))


def slots() -> dict[KeyPath, Slot]:
    """Return every row's and month row's slot by its path, and every column's by its table's path and key."""
    found = {slot.path: slot for section in sections() for slot in (*section.rows, *section.months)}
    for table in tables():
        for slot in table.slots:
            found.setdefault((*table.path, *slot.path), slot)
    return found


def tables() -> tuple[Table, ...]:
    """Return every table of the form."""
    return tuple(table for section in sections() for table in section.tables)


def _sections(
    path: KeyPath, models: Sequence[type[BaseModel]], *, optional: bool, found: bool = False, title: str = ""
) -> Iterator[Section]:
    rows: dict[str, Slot] = {}
    if optional and not found and not any(field.is_needed for model in models for field in fields_of(model).values()):
        rows[DESCRIBED] = Slot(
            (*path, DESCRIBED),
            text("form.described"),
            "",
            text("form.left_empty_not_described"),
            Takes(choices=("yes",)),
            needed=False,
        )
    found_tables: list[Table] = []
    inner: list[Section] = []
    for model in models:
        for field in _in_order(model, path):
            here = (*path, field.name)
            if here == OVERRIDES:
                inner.append(Section(here, _title(here, ""), "", True, (), (), (_overrides(),), _sheet(here)))
            elif not field.tables:
                kind = "" if len(models) == 1 or field.name == "kind" else kind_of(model)
                rows.setdefault(field.name, _slot(here, field, kind, models))
            elif field.is_list:
                found_tables += _tables(here, field)
            else:
                inner += _sections(
                    here,
                    field.tables,
                    optional=field.info.default is None or bool(field.how),
                    found=bool(field.how),
                    title=field.description,
                )  # fmt: skip
    plain = tuple(slot for slot in rows.values() if not slot.takes.months)
    months = tuple(slot for slot in rows.values() if slot.takes.months)
    if plain or months or found_tables:
        notes = first_line(models[0]) if len(models) == 1 and path else ""
        yield Section(path, _title(path, title), notes, optional, plain, months, tuple(found_tables), _sheet(path))
    yield from inner


def _tables(path: KeyPath, listed: Field) -> Iterator[Table]:
    for model in listed.tables:
        kind = kind_of(model) if len(listed.tables) > 1 else ""
        fields = [field for field in _in_order(model) if not (kind and field.name == "kind")]
        fields.sort(key=lambda field: field.takes.months)
        title = listed.description or words_of(str(path[-1]))
        title = text("form.table_of_kind", title=title, kind=first_line(model).rstrip(".")) if kind else title
        slots = tuple(_slot((field.name,), field, "", [model]) for field in fields)
        yield Table(path, title, slots, kind, listed.is_needed)


def _in_order(model: type[BaseModel], path: KeyPath = ()) -> list[Field]:
    """Return a model's fields with its name first and what it shares with others (price, life, upkeep) last."""
    own = set(model.__annotations__) - set(Equipment.model_fields)
    fields = fields_of(model, path).values()
    return sorted(fields, key=lambda field: (field.name not in ("name", "kind"), field.name not in own))


def _slot(path: KeyPath, field: Field, kind: str, models: Sequence[type[BaseModel]]) -> Slot:
    takes = field.takes
    if field.name == "kind" and len(models) > 1:
        takes = Takes(choices=tuple(kind_of(model) for model in models))
    given = text("form.must_be_given")
    notes = given if field.is_needed else text("form.left_empty", meaning=_when_empty(field))
    if kind:
        notes = text("form.only_for_kind", kind=kind, notes=notes)
    of_kind = text("form.kind", what=words_of(str(path[-2])).lower()) if len(path) > 1 else text("form.kind_of_entry")
    label = field.description or of_kind
    return Slot(path, label, field.unit, notes, takes, field.is_needed and not kind)


def _when_empty(field: Field) -> str:
    value = field.default
    if field.how:
        return field.how
    if value is None:
        return field.absent if field.info.default is None else text("form.no_default")
    number = isinstance(value, int | float) and not isinstance(value, bool)
    shown = f"{figure(value) if number else cell_of(value, field.takes)} {field.unit}".strip()
    source = field.default_source
    return text("form.default_with_source", value=shown, source=source) if source else shown


def _place(path: KeyPath) -> tuple[int, int]:
    """Return the number of the sheet on which a table of the scenario stands, and its place there."""
    places = {
        start: (sheet, place) for sheet, starts in enumerate(SHEETS.values()) for place, start in enumerate(starts)
    }
    found = max((start for start in places if path[: len(start)] == start), key=len)
    return places[found] if found or not path else (len(SHEETS) - 1, len(places))


def sheet_names() -> list[str]:
    """Return the names of the form's sheets in the language in use."""
    return [text(f"form.sheet.{key}") for key in SHEETS]


def _sheet(path: KeyPath) -> str:
    return sheet_names()[_place(path)[0]]


def _title(path: KeyPath, described: str) -> str:
    key = f"form.section.{dotted(path)}"
    return text(key) if known(key) else described or words_of(str(path[-1]))
