"""Need and people: who draws how much, what is asked of the supply, and what must be known of those who live there."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np

from planner.report.document import Block, Cell, Column, Row, Table, Text
from planner.report.proposal.material import Material, asked, to_complete
from planner.resource.sun import DAYS_PER_MONTH
from planner.scenario.place import User
from planner.scenario.scenario import Scenario
from planner.text import number, text
from planner.water.demand import daily_demand_m3

_COLUMNS = ("user", "number", "each", "mean", "largest")


def need_blocks(material: Material) -> Iterator[Block]:
    """Say who draws how much and what service is asked, and ask for what a study cannot know of them."""
    scenario, service = material.scenario, material.scenario.service
    yield _users(scenario)
    first, last = (float(material.first.quantities.demand_m3[year]) / 365 for year in (0, -1))
    growth = "proposal.demand_grows" if not np.isclose(first, last, rtol=1e-3) else "proposal.demand_level"
    years = scenario.finance.analysis_period_years
    yield Text(text(growth, first=f"{first:,.1f}", last=f"{last:,.1f}", years=years))
    yield Text(text("proposal.target", percent=f"{service.demand_met_percent:g}", years=years))
    if not material.given("demand.growth_percent_per_year"):
        yield to_complete("growth")
    if not material.given("demand.leakage_percent") and not material.given("demand.leakage_m3_per_day"):
        yield to_complete("leakage")
    people = [user for user in scenario.demand.users if user.kind == "people"]
    if any("litres_per_person_day" not in user.model_fields_set for user in people):
        yield to_complete("litres")
    if scenario.households is not None and scenario.people:
        count = scenario.people / scenario.households.size
        yield Text(text("proposal.households", count=f"{count:,.0f}", size=f"{scenario.households.size:g}"))
    yield from asked("present_sources", "baseline", "inclusion", "consent", "coordination")


def _users(scenario: Scenario) -> Table:
    """Lay out who draws water, how many, and how much in the first year, without leakage and growth."""
    rows = []
    for place, user in enumerate(scenario.demand.users):
        alone = scenario.demand.model_copy(update={"users": [user], "leakage_percent": 0.0, "leakage_m3_per_day": 0.0})
        by_month = daily_demand_m3(alone, 1)[0]
        how_many, each = _how_many(user)
        cells = {
            "user": Cell(user.name, "wrap"),
            "number": Cell(how_many, "word"),
            "each": Cell(each, "word"),
            "mean": Cell(float(np.average(by_month, weights=DAYS_PER_MONTH)), "one"),
            "largest": Cell(float(by_month.max()), "one"),
        }
        rows.append(Row(place, cells))
    columns = tuple(Column(key, text(f"proposal.users.{key}")) for key in _COLUMNS)
    return Table("proposal.users", columns, tuple(rows), heading=text("proposal.users.heading"))


def _how_many(user: User) -> tuple[str, str]:
    """Say how many there are, and what each of them draws."""
    if user.kind == "people":
        each = f"{number(user.litres_per_person_day, 'g')} L"
        return text("proposal.users.people", count=f"{user.count:,.0f}"), each
    if user.kind == "livestock":
        each = f"{number(user.litres_per_head_day, 'g')} L"
        return text("proposal.users.animals", count=f"{user.count:,.0f}"), each
    if user.kind == "irrigation":
        return f"{number(user.area_m2, ',.0f')} m2", f"{number(max(user.net_requirement_mm_day), 'g')} mm"
    return text("answer.nothing"), text("answer.nothing")
