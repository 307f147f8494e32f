"""The workbook to put in front of others, its sums of money alive."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from pathlib import Path
from typing import Any, BinaryIO

from planner.checks.verdict import Verdict
from planner.report.files import write_stream
from planner.report.sheets.answer import write_answer
from planner.report.sheets.bill import write_bill
from planner.report.sheets.cash import Cash, Sources, write_cash
from planner.report.sheets.checks import write_checks
from planner.report.sheets.head import write_head
from planner.report.sheets.inputs import InputCells, write_inputs
from planner.report.sheets.method import write_method
from planner.report.sheets.months import write_energy, write_water
from planner.report.sheets.option_money import MoneyCells
from planner.report.sheets.options import write_options
from planner.report.sheets.page import Page, clean
from planner.report.sheets.renewals import write_renewals
from planner.report.sheets.returns import write_returns
from planner.report.sheets.rows import OptionRows
from planner.report.sheets.simulated import write_simulated
from planner.report.sheets.tank import write_tank
from planner.report.style import Styles
from planner.study.compare import Study

SHEETS = (
    "Answer",
    "Options",
    "Water",
    "Energy",
    "Head",
    "Checks",
    "Tank",
    "Bill of quantities",
    "Cash flow",
    "Simulated",
    "Renewals",
    "Returns",
    "Inputs",
    "Method and cautions",
    "Form",
)
_LONGEST_FOOTER = 100


def write_workbook(
    study: Study, sentences: Sequence[str], cautions: Sequence[str], path: Path, verdicts: Sequence[Verdict]
) -> None:
    """Write a study as a workbook, whole or not at all; the same study gives the same bytes.

    Parameters
    ----------
    study : Study
        The finished comparison.
    sentences, cautions : sequence of str
        The answer in words, and what to beware of.
    path : pathlib.Path
        File to write.
    verdicts : sequence of Verdict
        What the site checks found.

    Raises
    ------
    NotFinite
        When a figure has no value where it must have one; an earlier file is then left as it was.
    """
    write_stream(path, lambda stream: _fill(study, sentences, cautions, verdicts, stream))


def _fill(
    study: Study, sentences: Sequence[str], cautions: Sequence[str], verdicts: Sequence[Verdict], stream: BinaryIO
) -> None:
    import xlsxwriter

    from planner.report.form.sheets import add_form_sheets
    from planner.report.worksheet import PlainWorksheet

    book = xlsxwriter.Workbook(
        stream,
        {"in_memory": True, "strings_to_formulas": False, "strings_to_urls": False, "strings_to_numbers": False},
    )
    book.set_properties({"title": clean(study.scenario.name), "created": datetime(1980, 1, 1)})
    styles = Styles(book)
    pages = {name: Page(book.add_worksheet(name, PlainWorksheet), styles, name) for name in SHEETS[:-1]}
    form = add_form_sheets(book, _plain(study.scenario.model_dump(mode="json", exclude_unset=True)), sheet=SHEETS[-1])
    rows, inputs, cash = write_money(pages, study, form)
    write_answer(pages["Answer"], book, study, sentences, rows, inputs, cash.options, verdicts)
    write_water(pages["Water"], book, study)
    write_energy(pages["Energy"], book, study)
    write_head(pages["Head"], book, study)
    write_checks(pages["Checks"], book, study, verdicts)
    write_tank(pages["Tank"], book, study)
    write_method(pages["Method and cautions"], study, cautions)
    footer = clean(study.scenario.name)[:_LONGEST_FOOTER].replace("&", "&&")
    for name, page in pages.items():
        page.finish(footer, one_page=name == "Answer")
    pages["Answer"].sheet.activate()
    book.close()


def write_money(pages: dict[str, Page], study: Study, form: dict[str, str]) -> tuple[OptionRows, InputCells, Cash]:
    """Fill the sheets that the sums of money run through, from the inputs to the options.

    Parameters
    ----------
    pages : dict of str to Page
        The sheets by name.
    study : Study
        The finished comparison.
    form : dict of str to str
        Address on the sheet 'Form' of each key.

    Returns
    -------
    rows, inputs, cash
        Where figures, inputs and flows stand.
    """
    inputs = write_inputs(pages["Inputs"], study, form)
    simulated = write_simulated(pages["Simulated"], study, inputs)
    bill = write_bill(pages["Bill of quantities"], study, inputs)
    renewals = write_renewals(pages["Renewals"], study, bill, simulated)
    cash = write_cash(pages["Cash flow"], study, Sources(inputs, simulated, bill, renewals))
    returns = write_returns(pages["Returns"], study, cash.options, simulated.years)
    rows = write_options(pages["Options"], study, MoneyCells(simulated, cash, returns))
    return rows, inputs, cash


def _plain(value: Any) -> Any:
    """Make every text of some data fit for a cell."""
    if isinstance(value, dict):
        return {key: _plain(inner) for key, inner in value.items()}
    if isinstance(value, list):
        return [_plain(inner) for inner in value]
    return clean(value) if isinstance(value, str) else value
