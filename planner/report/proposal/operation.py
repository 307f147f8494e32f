"""Operation and upkeep: who does what and how often, what is kept in store, and who answers for it."""

from __future__ import annotations

from collections.abc import Iterator

from planner.report.document import Block, Cell, Column, Heading, Row, Section, Table, Text
from planner.report.proposal.material import Material, asked, to_complete
from planner.study.words import money
from planner.text import known, text

_INTERVALS = ("daily", "weekly", "monthly", "quarterly", "yearly", "years")
_WORKS = ("works", "solar", "grid", "generator")
"""What every supply has, and what each source of power brings with it."""
_ON_SITE, _IN_DISTRICT = "on_site", "in_district"


def operation_blocks(material: Material) -> Iterator[Block]:
    """Lay out tasks and spares for the works that are proposed, and ask who answers for them."""
    yield Text(text("proposal.operation"))
    yield _tasks(material)
    yield from _generator(material)
    yield Text(text("proposal.upkeep.sources"), "note")
    yield _spares(material)
    yield from asked("stockist")
    yield Heading(text("proposal.who"))
    yield from _running_costs(material)
    yield from asked("operator", "committee", "electrician", "operation_contract")
    if not material.given("costs.direct_support_per_person_year"):
        yield to_complete("support")
    yield from asked("theft")


def _own_works(material: Material) -> list[str]:
    names = {source.key for source in material.first.sources}
    return [each for each in _WORKS if each == "works" or each in names]


def _tasks(material: Material) -> Table:
    """What is to be done how often, by whom, and on what authority it is said here."""
    rows: list[Row | Section] = []
    for interval in _INTERVALS:
        tasks = [f"{interval}.{works}" for works in _own_works(material)]
        tasks = [each for each in tasks if known(f"proposal.upkeep.{each}.task")]
        if tasks:
            rows.append(Section(text(f"proposal.upkeep.{interval}")))
        for each in tasks:
            cells = {part: Cell(text(f"proposal.upkeep.{each}.{part}"), "wrap") for part in ("task", "by", "basis")}
            rows.append(Row(each, {"of": Cell(text(f"proposal.upkeep.of.{each.partition('.')[2]}"), "wrap"), **cells}))
    columns = tuple(Column(key, text(f"proposal.upkeep.column.{key}")) for key in ("of", "task", "by", "basis"))
    return Table("proposal.upkeep", columns, tuple(rows), heading=text("proposal.upkeep.heading"))


def _generator(material: Material) -> Iterator[Text]:
    """Say how often the set is serviced by its hours."""
    generator = material.first.scenario.sources.generator
    hours = material.value("generator_hours_per_year")
    if generator is not None and hours > 0:
        slots = {"hours": f"{hours:,.0f}", "interval": f"{generator.service_interval_h:g}"}
        yield Text(text("proposal.generator_hours", times=f"{hours / generator.service_interval_h:.1f}", **slots))


def _spares(material: Material) -> Table:
    rows = []
    for place in (_ON_SITE, _IN_DISTRICT):
        for works in _own_works(material):
            key = f"proposal.spares.{place}.{works}"
            if known(key):
                said = {"kept": f"proposal.spares.{place}", "of": f"proposal.upkeep.of.{works}", "parts": key}
                rows.append(Row(key, {part: Cell(text(each), "wrap") for part, each in said.items()}))
    headings = {"kept": "proposal.spares.kept", "of": "proposal.upkeep.column.of", "parts": "proposal.spares.parts"}
    columns = tuple(Column(key, text(heading)) for key, heading in headings.items())
    return Table("proposal.spares", columns, tuple(rows), heading=text("proposal.spares.heading"))


def _running_costs(material: Material) -> Iterator[Text]:
    """Name the yearly costs that were entered, such as an operator's pay."""
    if not material.priced:
        return
    names = {source.key for source in material.first.sources}
    for each in material.first.scenario.costs.yearly:
        if not each.sources or names.intersection(each.sources):
            yearly = money(each.per_year, material.scenario.currency)
            yield Text(text("proposal.yearly_cost", name=each.name, cost=yearly), "item")
