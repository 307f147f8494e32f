"""The workbook to put in front of others, its sums of money alive."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import Any

from planner.answers.decision import decision
from planner.checks.verdict import Verdict
from planner.report.document import Page, Report
from planner.report.pages.answer import answer_page
from planner.report.pages.basis import basis_page
from planner.report.pages.bill import bill_of_study, bill_page
from planner.report.pages.by_time import energy_page, water_page
from planner.report.pages.cash import Sources, cash_page
from planner.report.pages.checks import checks_page
from planner.report.pages.head import head_page
from planner.report.pages.inputs import Inputs, inputs_of, inputs_page
from planner.report.pages.method import method_page
from planner.report.pages.next_step import next_step_page
from planner.report.pages.options import options_page
from planner.report.pages.records import records_page
from planner.report.pages.renewals import renewals_page
from planner.report.pages.returns import returns_page
from planner.report.pages.simulated import simulated_page
from planner.report.pages.since import FORM_DIFFERENCES
from planner.report.pages.tank import tank_page
from planner.report.pages.users import users_page
from planner.report.workbook.book import write_book
from planner.report.workbook.copy import add_copy
from planner.report.workbook.sheet import clean, leave_unprinted
from planner.study.compare import Study
from planner.study.words import sentences
from planner.text import text


def write_workbook(
    study: Study, cautions: Sequence[str], path: Path, verdicts: Sequence[Verdict], remedied: Sequence[str] = ()
) -> None:
    """Write a study as a workbook, whole or not at all; the same study gives the same bytes.

    Parameters
    ----------
    study : Study
        The finished comparison.
    cautions : sequence of str
        What to beware of.
    path : pathlib.Path
        File to write.
    verdicts : sequence of Verdict
        What the site checks found.
    remedied : sequence of str
        What there is to say of the answer with the remedies.

    Raises
    ------
    NotFinite
        When a figure has no value where it must have one; an earlier file is then left as it was.
    """
    from planner.report.form.sheets import add_form_sheets

    data = _clean(study.scenario.given("json"))
    linked = [row.key for row in inputs_of(study).rows if row.is_linked_number]

    def form(book: Any) -> Mapping[str, str]:
        # An address of several cells is no value that a cell of the page 'Inputs' could take.
        found = add_form_sheets(book, data, sheet=text("page.form"))
        leave_unprinted(book.get_worksheet_by_name(text("page.form")))
        single = {key: cell for key, cell in found.items() if ":" not in cell}
        followed = [single[key] for key in linked if key in single]
        return {**single, FORM_DIFFERENCES: add_copy(book, text("page.form"), text("page.form_of_run"), followed)}

    write_book(run_report(study, cautions, verdicts, remedied), path, form)


def run_report(
    study: Study, cautions: Sequence[str], verdicts: Sequence[Verdict], remedied: Sequence[str] = ()
) -> Report:
    """Build the whole report of a study."""
    inputs, decided = inputs_of(study), decision(study, verdicts, remedied)
    pages = (
        answer_page(study, decided, verdicts),
        basis_page(study, inputs, sentences(study), (*decided.days, *decided.turns)),
        options_page(study),
        *([] if study.next_steps is None else [next_step_page(study.next_steps, study.scenario)]),
        water_page(study),
        energy_page(study),
        head_page(study),
        checks_page(study, verdicts, remedied),
        records_page(study.scenario),
        tank_page(study),
        *(money_pages(study, inputs) if study.scenario.priced else (inputs_page(study, inputs),)),
        method_page(study, cautions),
    )
    return Report(study.scenario.name, pages)


def money_pages(study: Study, inputs: Inputs) -> tuple[Page, ...]:
    """Pages that the sums of money run through, from the bill of quantities to the inputs."""
    bill = bill_of_study(study, inputs)
    return (
        bill_page(study, bill),
        cash_page(study, Sources(inputs, bill)),
        users_page(study, inputs),
        simulated_page(study, inputs),
        renewals_page(study, bill),
        returns_page(study),
        inputs_page(study, inputs),
    )


def _clean(value: Any) -> Any:
    """Make every text of some data fit for a cell."""
    if isinstance(value, dict):
        return {key: _clean(inner) for key, inner in value.items()}
    if isinstance(value, list):
        return [_clean(inner) for inner in value]
    return clean(value) if isinstance(value, str) else value
