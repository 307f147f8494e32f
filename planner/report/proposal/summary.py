"""The first page and the summary."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from planner import __version__
from planner.answers.decision import Decision
from planner.figures import figure
from planner.report.document import Block, Cell, Column, Page, Row, Table, Text
from planner.report.proposal.material import Material, asked, to_complete
from planner.report.proposal.money import incomplete
from planner.report.word.book import Frame
from planner.scenario.scenario import Scenario
from planner.study.words import money
from planner.text import text

_RECORD = ("prepared_by", "visit_date", "revision")
"""Keys that say who made the study, when, and which state of it this is."""


def front_page(material: Material) -> Page:
    """Build the page before the contents: which site, by whom, and from what."""
    scenario = material.scenario
    blocks: list[Block] = [_record(scenario), Text(text("proposal.draft"))]
    blocks += asked("applicant")
    blocks += [to_complete(key) for key in _RECORD if getattr(scenario, key) is None]
    under = text("proposal.kind", place=scenario.site.place)
    return Page("proposal.front", scenario.name, scenario.name, under, tuple(blocks))


def _record(scenario: Scenario) -> Table:
    site = scenario.site
    north, east = site.latitude_deg >= 0, site.longitude_deg >= 0
    place = text(
        f"proposal.position_{'n' if north else 's'}{'e' if east else 'w'}",
        latitude=f"{abs(site.latitude_deg):g}",
        longitude=f"{abs(site.longitude_deg):g}",
    )
    said = {
        "place": scenario.place_besides_name,
        "position": place,
        **{key: getattr(scenario, key) for key in (*_RECORD, "price_date")},
        "version": text("proposal.version", version=__version__),
    }
    rows = tuple(
        Row(key, {"what": Cell(text(f"proposal.record.{key}"), "wrap", "strong"), "said": Cell(words, "wrap")})
        for key, words in said.items()
        if words
    )
    return Table("proposal.record", (Column("what", ""), Column("said", "")), rows, header=False)


def frame_of(scenario: Scenario) -> Frame:
    """What stands at the top and at the foot of each page."""
    said = [
        None if scenario.revision is None else text("proposal.foot.revision", revision=scenario.revision),
        None if scenario.visit_date is None else text("proposal.foot.visit", date=scenario.visit_date),
        text("proposal.version", version=__version__),
    ]
    days = [day for day in (_day(scenario.visit_date), _day(scenario.price_date)) if day is not None]
    return Frame(
        header=scenario.name,
        footer=text("proposal.foot.between").join(words for words in said if words),
        author=scenario.prepared_by or "",
        day=max(days, default=None),
    )


def _day(words: str | None) -> date | None:
    """Read a day that is written as ISO 8601 has it; None for any other words."""
    try:
        return None if words is None else date.fromisoformat(words)
    except ValueError:
        return None


def summary_blocks(material: Material) -> Iterator[Block]:
    """Say what is proposed and on what conditions, what it does and costs, and what is asked for."""
    decided = material.decision
    yield Text(decided.verdict, "verdict")
    yield from (Text(condition, "item") for condition in decided.conditions)
    yield from _in_brief(material)
    yield _large(decided)
    yield from (Text(sentence) for sentence in (*decided.days, *decided.pay))
    if material.priced:
        yield from incomplete(material)
        yield from _ask(material)
    else:
        yield to_complete("prices")


def _in_brief(material: Material) -> Iterator[Text]:
    """Say who is served, and what is built."""
    if material.scenario.people:
        yield Text(text("answer.people", people=f"{material.scenario.people:,.0f}"))
    slots = {
        "tank": f"{material.first.tank_m3:,.1f}",
        "kwp": f"{material.first.array_kw:,.2f}",
        "water": f"{material.value('delivered_first_year_m3') / 365:,.1f}",
    }
    yield Text(text("proposal.in_brief_array" if material.first.has_array else "proposal.in_brief", **slots))


def _large(decided: Decision) -> Table:
    rows = tuple(
        Row(each.key, {
            "label": Cell(each.label, "wrap", "strong"),
            "value": Cell(each.value_text, "word", "strong"),
            "note": Cell(each.note, "wrap"),
        })
        for each in decided.large
    )  # fmt: skip
    columns = tuple(Column(key, "") for key in ("label", "value", "note"))
    return Table("proposal.large", columns, rows, header=False)


def _ask(material: Material) -> Iterator[Text]:
    """Say what sum is asked for, where the scenario says what share a grant is to bear."""
    if not material.given("finance.grant_percent"):
        yield to_complete("grant")
        return
    currency = material.scenario.currency
    slots = {key: money(float(figure(key).read(material.first)), currency) for key in ("grant", "capital_cost")}
    percent = f"{material.scenario.finance.grant_percent:g}"
    yield Text(text("proposal.grant_asked", percent=percent, **slots))
    yield to_complete("funder")
