"""What a proposal says of a study: the chapters in order, what is known, and a line for each fact that is not."""

from __future__ import annotations

import ast
import io
from pathlib import Path

import docx
import pytest

from planner.answers.next_step import next_step_sentences
from planner.answers.uncertainty import switching_sentences, worst_year_sentences
from planner.report.proposal.book import CHAPTERS, count_to_complete, proposal_report
from planner.report.proposal.summary import frame_of
from planner.report.word.book import word_bytes
from planner.text import in_language, text, texts_of
from tests.report.proposal.scenarios import asks, document, lines, material, words

NO_KEY = (
    "applicant", "present_sources", "baseline", "inclusion", "consent", "coordination", "completion_report",
    "hydrogeologist", "water_permit", "land", "drawings", "array_place", "tank_structure", "other_ways",
    "contributions", "procurement", "timetable", "willingness", "savings_account", "stockist", "operator", "committee",
    "electrician", "operation_contract", "theft", "screening", "protection", "waste_water", "end_of_life", "safeguards",
    "other_risks", "targets", "monitoring", "logframe", "exit", "papers",
)  # fmt: skip
"""Facts for which a scenario has no key, so that every proposal asks for them."""
WITH_KEY = {
    "prepared_by": "A. Person",
    "visit_date": "2026-11-02",
    "revision": "",
    "growth": "in year 2",
    "litres": "",
    "borehole": "Inside diameter of the casing at the pump",
    "pumping_test": "33.5",
    "quality": "Sample of 2026-09-03, analysed by Invented laboratory.",
    "profile": "",
    "pump": "'Invented pump'",
}
"""Facts that a bare visit leaves out, and what stands in the proposal once they are given."""
OF_MONEY = {
    "unpriced": "",
    "grant": "Asked for: a grant of USD",
    "percentages": "% of all above",
    "price_date": "Prices are those of 2026-10-15.",
    "exchange_rate": "",
    "households": "At 5 people a household these are about 80 households.",
    "support": "",
    "tariff": "USD 0.5 per m3",
}
"""The same of a visit with a few prices."""


@pytest.mark.parametrize("name", ["bare", "priced", "whole"])
def test_the_chapters_stand_in_the_order_in_which_donors_ask_for_them(name: str) -> None:
    titles = [each.text for each in document(name).paragraphs if each.style.name == "Heading 1"]
    assert titles == [text(f"proposal.chapter.{key}") for key in CHAPTERS]
    assert list(CHAPTERS) == [
        "summary", "need", "source", "design", "options", "budget", "recovery", "operation", "environment", "risks",
        "indicators", "annexes",
    ]  # fmt: skip


@pytest.mark.parametrize("key", NO_KEY)
@pytest.mark.parametrize("name", ["bare", "whole"])
def test_what_no_key_holds_is_asked_for_and_never_invented(name: str, key: str) -> None:
    assert asks(name, key)


@pytest.mark.parametrize(("key", "said"), WITH_KEY.items(), ids=WITH_KEY)
def test_what_a_visit_leaves_out_is_asked_for_until_it_is_given(key: str, said: str) -> None:
    assert asks("bare", key)
    assert not asks("whole", key)
    assert said not in words("bare") or not said
    assert said in words("whole")


@pytest.mark.parametrize(("key", "said"), OF_MONEY.items(), ids=OF_MONEY)
def test_what_a_budget_lacks_is_asked_for_until_it_is_given(key: str, said: str) -> None:
    assert asks("priced", key)
    assert not asks("whole", key)
    assert said not in words("priced") or not said
    assert said in words("whole")


def test_every_line_ends_in_a_hint_in_brackets_and_is_one_sentence() -> None:
    for key in texts_of("proposal.open."):
        said = text(f"proposal.open.{key}", names="a", currency="USD", factor="0.1", topic="Tank")
        assert said.startswith("To be completed")
        assert said.endswith("]")
        assert said.count("[") == said.count("]") == 1


def test_every_line_is_asked_for_by_a_chapter() -> None:
    """The keys are arguments of a function, so that the test of all sentences does not see them."""
    said = {
        node.value
        for file in Path("planner/report/proposal").glob("*.py")
        for node in ast.walk(ast.parse(file.read_text(encoding="utf-8")))
        if isinstance(node, ast.Constant) and isinstance(node.value, str)
    }
    assert [key for key in texts_of("proposal.open.") if key not in said] == []


def test_a_visit_without_prices_has_no_money_in_it() -> None:
    assert asks("bare", "prices")
    assert lines("bare").count(text("proposal.open.prices")) == 2, "in the summary and in the budget"
    assert "XXX" not in words("bare")
    assert text("page.bill") not in words("bare")


def test_works_without_a_price_are_named_in_summary_and_budget_and_in_the_bill() -> None:
    missing = [line for line in lines("priced") if "budget is incomplete" in line]
    assert len(missing) == 2
    assert all("Riser and Main" in line for line in missing)
    assert text("proposal.tariffs_too_low") in words("priced")
    bill = next(table for table in document("priced").tables if table.rows[0].cells[0].text == text("bill.line"))
    costs = {row.cells[0].text: row.cells[-1].text for row in bill.rows}
    assert costs["Riser"] == costs["Main"] == text("figure.not_given")
    assert costs["Pump"] == "1,400"


def test_the_bill_adds_up_to_what_is_asked_for() -> None:
    found = material("whole")
    bill = next(table for table in document("whole").tables if table.rows[0].cells[0].text == text("bill.line"))
    rows = [[cell.text for cell in row.cells] for row in bill.rows]
    costs = [float(row[-1].replace(",", "")) for row in rows[1:-2] if row[0] != row[1] and "Subtotal" not in row[0]]
    capital = float(found.first.life.capital_cost)
    assert sum(costs) == pytest.approx(capital, abs=len(costs) / 2)
    assert float(rows[-2][-1].replace(",", "")) == pytest.approx(capital, abs=0.5)
    assert f"USD {float(found.first.life.capital_cost):,.0f}" in words("whole")
    assert f"70 % of the capital cost of USD {round(capital, -2):,.0f}" in words("whole")


def test_tasks_and_spares_are_those_of_the_works_proposed() -> None:
    said = words("bare")
    assert text("proposal.upkeep.daily.solar.task") in said
    assert text("proposal.spares.on_site.solar") in said
    for other in ("grid", "generator"):
        assert text(f"proposal.upkeep.daily.{other}.task") not in said
        assert text(f"proposal.spares.on_site.{other}") not in said
    assert "Caretaker, USD 240 a year" in words("whole")


def test_failed_and_doubtful_checks_stand_among_the_risks_with_their_remedy() -> None:
    found = [verdict for verdict in material("bare").verdicts if verdict.outcome in ("fail", "caution")]
    assert found
    assert all(verdict.compared in words("bare") and verdict.remedy in words("bare") for verdict in found)


def test_checks_that_could_not_be_made_are_named_by_topic() -> None:
    open_ones = [verdict for verdict in material("bare").verdicts if verdict.outcome == "not given"]
    said = [line for line in lines("bare") if "not checked for lack of a figure" in line]
    assert len(said) == len({verdict.topic for verdict in open_ones})
    assert all(any(verdict.what in line for line in said) for verdict in open_ones)


def test_assumptions_stand_with_their_source() -> None:
    headings = [text(f"proposal.column.{key}") for key in ("label", "value", "unit", "source")]
    table = next(each for each in document("bare").tables if [cell.text for cell in each.rows[0].cells] == headings)
    rows = {row.cells[0].text: [cell.text for cell in row.cells[1:]] for row in table.rows}
    assert rows["Efficiency of the motor at its rated load"] == ["80", "%", "assumed, common practice, no source"]
    assert rows["Water per person and day"][0] == "25"
    assert "National Water Policy" in rows["Water per person and day"][2]
    whole = "\n".join(cell.text for each in document("whole").tables for row in each.rows for cell in row.cells)
    assert "National Water Policy" not in whole


def test_every_caution_of_the_study_is_in_the_annex() -> None:
    assert material("bare").cautions
    assert all(caution in words("bare") for caution in material("bare").cautions)
    assert words("bare").count(text("caution.local")) == 2  # once below the checks, once above the cautions


def test_the_lines_are_counted_as_they_stand_in_the_document() -> None:
    for name in ("bare", "whole"):
        assert count_to_complete(proposal_report(material(name))) == len(lines(name))
    assert len(lines("whole")) < len(lines("bare"))


def test_revision_and_visit_stand_at_the_foot_of_each_page() -> None:
    foot = document("whole").sections[0].footer.paragraphs[0].text
    assert foot.startswith("Revision B · Site visited: 2026-11-02 · planner ")
    assert "Revision" not in document("bare").sections[0].footer.paragraphs[0].text
    assert str(document("whole").core_properties.created.date()) == "2026-11-02"


def test_numbers_are_written_as_the_language_writes_them() -> None:
    found = material("whole")
    with in_language("fr"):
        said = docx.Document(io.BytesIO(word_bytes(proposal_report(found), frame_of(found.scenario))))
    cells = [cell.text for table in said.tables for row in table.rows for cell in row.cells]
    assert "10,0" in cells
    assert "10.0" not in cells
    assert said.core_properties.language == "fr"


def test_what_would_turn_the_answer_stands_once_among_the_risks() -> None:
    study = material("two").study
    said = [each.text for each in document("two").paragraphs]
    start, end = (said.index(text(f"proposal.chapter.{key}")) for key in ("risks", "indicators"))
    found = switching_sentences(study)
    assert found
    assert all(said.count(sentence) == 1 and sentence in said[start:end] for sentence in found)
    assert all(sentence in said for sentence in [*worst_year_sentences(study), *next_step_sentences(study)])
    assert text("proposal.risks.turns") not in [each.text for each in document("bare").paragraphs]
