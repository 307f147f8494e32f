"""The source of the water: the borehole, its test, the water's analysis, and the permits."""

from __future__ import annotations

from collections.abc import Iterator

from planner.checks.quality import GUIDELINES, MINIMUM, outcome_of, result_of
from planner.checks.safety import people_drink
from planner.report.document import Block, Cell, Column, Heading, Kind, Row, Table, Text
from planner.report.pages.records import QUALITY, STEPS, TEST
from planner.report.proposal.material import Material, asked, named, to_complete
from planner.scenario.walk import ASSUMED, Field
from planner.text import listed, model_words, text

_BOREHOLE: dict[str, Kind] = {
    "depth_m": "general",
    "casing_inner_diameter_mm": "general",
    "screen_top_m": "general",
    "static_level_m": "general",
    "pump_depth_m": "general",
    "test_flow_m3h": "general",
    "drawdown_m": "general",
    "specific_capacity_m3h_per_m": "three",
    "safe_yield_m3h": "general",
    "daily_limit_m3": "general",
    "level_decline_m_per_year": "general",
}
"""What is told of the borehole, and how."""
_ASKED = ("depth_m", "casing_inner_diameter_mm", "screen_top_m", "safe_yield_m3h", "daily_limit_m3")
"""What a reader wants to see given by whoever drilled or tested, not worked out here or left out."""
_ASKED_OF_TEST = ("date", "contractor", "static_level_m", "final_level_m", "recovery_h", "recovery_level_m")


def source_blocks(material: Material) -> Iterator[Block]:
    """Tell what is known of borehole, test and quality, and ask for what is not."""
    yield _borehole(material)
    missing = [named(_field(material, key)) for key in _ASKED if not material.given(f"borehole.{key}")]
    if missing:
        yield to_complete("borehole", names=listed(missing))
    yield from asked("completion_report", "hydrogeologist")
    yield Heading(text("records.test"))
    yield from _test(material)
    yield Heading(text("records.quality"))
    yield from _quality(material)
    yield Heading(text("proposal.permits"))
    limit = material.scenario.borehole.daily_limit_m3
    if limit is not None:
        yield Text(text("proposal.daily_limit", limit=f"{limit:g}"))
    yield from asked("water_permit", "land")


def _field(material: Material, key: str) -> Field:
    return material.fields[f"borehole.{key}"]


def _borehole(material: Material) -> Table:
    rows = []
    for key, kind in _BOREHOLE.items():
        field = _field(material, key)
        if field.value is not None:
            basis = "given" if field.given else "worked_out" if field.status == ASSUMED else "assumed"
            cells = {
                "label": Cell(model_words(field.short), "wrap"),
                "value": Cell(field.value, kind),
                "unit": Cell(model_words(field.unit)),
                "basis": Cell(text(f"proposal.basis.{basis}")),
            }
            rows.append(Row(key, cells))
    keys = ("label", "value", "unit", "basis")
    columns = tuple(Column(key, text(f"proposal.column.{key}")) for key in keys)
    return Table("proposal.borehole", columns, tuple(rows), heading=text("proposal.borehole"))


def _test(material: Material) -> Iterator[Block]:
    scenario = material.scenario
    yield from _tables(material, TEST, STEPS)
    if scenario.pumping_test is None:
        yield to_complete("pumping_test")
        return
    missing = [
        named(material.fields[f"pumping_test.{key}"])
        for key in _ASKED_OF_TEST
        if getattr(scenario.pumping_test, key) is None
    ]
    if missing:
        yield to_complete("test_record", names=listed(missing))


def _quality(material: Material) -> Iterator[Block]:
    found, drunk = material.scenario.water_quality, people_drink(material.scenario)
    if not drunk:
        yield Text(text("records.not_drunk"))
    if found is None:
        if drunk:
            yield to_complete("quality", names=_names(MINIMUM))
        else:
            yield to_complete("quality_for_use")
        return
    if found.date and found.laboratory:
        yield Text(text("records.analysed", date=found.date, laboratory=found.laboratory))
    else:
        yield to_complete("laboratory")
    table = material.table(QUALITY)
    tested = [each.key for each in GUIDELINES if result_of(found, each.key) is not None]
    if table is not None:
        yield table.only(("parameter", "result", "unit", "limit", "kind", "verdict"), tested)
        yield Text(text("records.national"), "note")
    untested = [key for key in MINIMUM if key not in tested]
    if untested and drunk:
        yield to_complete("quality_rest", names=_names(untested))
    if drunk and any(outcome_of(each, result_of(found, each.key)) == "fail" for each in GUIDELINES):
        yield to_complete("treatment")


def _names(keys: tuple[str, ...] | list[str]) -> str:
    return listed([each.name for each in GUIDELINES if each.key in keys])


def _tables(material: Material, *keys: str) -> Iterator[Table]:
    found = (material.table(key) for key in keys)
    return (table for table in found if table is not None)
