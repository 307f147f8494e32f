"""The first sheet: what one visit brings home, gathered from the sections behind it so that no key stands twice."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from typing import Any

from planner.report.form.parts import KeyPath, Section, Slot
from planner.scenario.paths import dotted, parts_of
from planner.text import known, text

SHEET = "visit"
USERS: KeyPath = ("demand", "users")
FIRST_USER: KeyPath = (*USERS, 0)
FIRST_USERS_KIND = "people"
_FIRST_USERS_KEYS = ("count", "litres_per_person_day")

_VISIT: dict[str, tuple[str, ...]] = {
    "site": ("name", "site.latitude_deg", "site.longitude_deg", "site.altitude_m"),
    "borehole": (
        "borehole.depth_m",
        "borehole.static_level_m",
        "borehole.test_flow_m3h",
        "borehole.drawdown_m",
        "borehole.pump_depth_m",
    ),
    "pipeline": ("pipeline.length_m", "pipeline.rise_to_tank_inlet_m"),
    "pump": (
        "pump.rated_flow_m3h",
        "pump.rated_head_m",
        "pump.max_flow_m3h",
        "pump.max_head_m",
        "pump.rated_power_w",
    ),
    "pump.plate": (
        "pump.plate.dc_voltage_v",
        "pump.plate.ac_voltage_v",
        "pump.plate.frequency_hz",
        "pump.plate.current_a",
        "pump.plate.speed_rpm",
        "pump.plate.frame_in",
        "pump.plate.insulation_class",
        "pump.plate.ingress_protection",
        "pump.plate.liquid_temperature_max_c",
    ),
    "demand": tuple(dotted((*FIRST_USER, key)) for key in _FIRST_USERS_KEYS),
    "sources": ("sources.solar.described", "sources.grid.hours", "sources.generator.rating_kw"),
    "prices": ("currency",),
}
"""Keys in the order of a visit, which is that of the short starter, under the table whose title they stand below."""

_ASKED_FOR: dict[str, tuple[str, ...]] = {
    "site.place": ("name",),
    "site.time_zone": ("site.latitude_deg", "site.longitude_deg"),
    "borehole.safe_yield_m3h": ("borehole.test_flow_m3h", "borehole.drawdown_m"),
    "pipeline.segments": ("pipeline.length_m",),
    "pump.kind": ("pump.rated_flow_m3h", "pump.max_flow_m3h"),
    "sources.solar.modules_in_series": ("pump.rated_power_w",),
    "demand.users": (dotted((*FIRST_USER, "count")),),
}
"""What the visit asks for in place of a key, which is worked out from it or holds it."""
_OTHERWISE: dict[str, tuple[str, ...]] = {
    "borehole.safe_yield_m3h": ("borehole.specific_capacity_m3h_per_m", "borehole.step_test"),
}
"""What may be given instead of what the visit asks for."""


def asked_for(key: str, data: dict[str, Any]) -> dict[str, Any]:
    """Return what the visit asks for in place of a key that is missing, with what is given there.

    Parameters
    ----------
    key : str
        A key that is missing.
    data : dict
        What the form gives.

    Returns
    -------
    dict
        Value by key, None where the cell is empty; nothing where the key itself is wanted.
    """
    if any(at(data, parts_of(other)) is not None for other in _OTHERWISE.get(key, ())):
        return {}
    return {asked: at(data, parts_of(asked)) for asked in _ASKED_FOR.get(key, ())}


def with_visit(behind: Sequence[Section], sheet: str) -> list[Section]:
    """Put the sections of the visit before those behind it, which lose the keys that it has.

    Parameters
    ----------
    behind : sequence of Section
        Every section, with every key.
    sheet : str
        Name of the visit's sheet.
    """
    optional = tuple(section.path for section in behind if section.optional)
    found = {slot.key: slot for section in behind for slot in section.rows} | _first_user(behind)
    taken = {key for keys in _VISIT.values() for key in keys}
    rows = {title: [_on_visit(found[key], optional) for key in keys] for title, keys in _VISIT.items()}
    visit = [
        Section(parts_of(title), text(f"form.visit.{title}"), "", False, tuple(slots), (), (), sheet)
        for title, slots in rows.items()
    ]
    left = [replace(each, rows=tuple(slot for slot in each.rows if slot.key not in taken)) for each in behind]
    return [*visit, *(each for each in left if each.rows or each.months or each.tables)]


def _first_user(behind: Iterable[Section]) -> dict[str, Slot]:
    """Rows of the first entry of the list of users, made from the columns of its table."""
    tables = [table for section in behind for table in section.tables]
    people = next(table for table in tables if table.path == USERS and table.kind == FIRST_USERS_KIND)
    rows = [replace(slot, path=(*FIRST_USER, *slot.path)) for slot in people.slots if slot.key in _FIRST_USERS_KEYS]
    return {slot.key: slot for slot in rows}


def _on_visit(slot: Slot, optional: Sequence[KeyPath]) -> Slot:
    """Return a row as the visit shows it: what report and plate call it beside it, wanted where others rest on it."""
    label, printed = f"form.visit.label.{slot.key}", f"form.printed.{slot.key}"
    wanted = any(slot.key in asked for asked in _ASKED_FOR.values())
    aside = any(slot.path[: len(path)] == path for path in optional)
    needed = (slot.needed or wanted) and not aside
    return replace(
        slot,
        label=text(label) if known(label) else slot.label,
        notes=text("form.must_be_given") if needed else slot.notes,
        needed=needed,
        printed=text(printed) if known(printed) else slot.notes,
    )


def first_user_there(data: dict[str, Any]) -> bool:
    """Whether the first of the users stands on the visit: people, of whom nothing is given that it does not ask."""
    first = at(data, FIRST_USER)
    return (
        isinstance(first, dict) and first.get("kind") == FIRST_USERS_KIND and set(first) <= {"kind", *_FIRST_USERS_KEYS}
    )


def at(data: Any, path: KeyPath) -> Any:
    """Return the value at a path of the data; None where there is none."""
    for part in path:
        if isinstance(part, int):
            data = data[part] if isinstance(data, list) and part < len(data) else None
        else:
            data = data.get(part) if isinstance(data, dict) else None
    return data
