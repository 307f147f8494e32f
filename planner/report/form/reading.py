"""Read a filled form: raw scenario data, or a checked scenario with every wrong cell named by sheet, cell and label.

A cell is found by the key beside it or above it, never by its label, so rows may be moved and inserted. A source, or
any other optional section, counts as described as soon as one of its cells is filled. Formulas are refused, not
computed. Numbers keep the 15 significant digits that a spreadsheet keeps.
"""

from __future__ import annotations

import warnings
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from planner.assumptions.reader import check_scenario
from planner.report.form.cells import Content
from planner.report.form.gathering import Cell, Form, Gatherer, Unreadable
from planner.report.form.guard import MOST_ROWS, check_archive
from planner.report.form.layout import sections
from planner.report.form.parts import KEY_COLUMN, MARKER
from planner.report.form.visit import asked_for
from planner.scenario.errors import InputError, Problem
from planner.scenario.paths import dotted
from planner.scenario.reader import NO_LINES, with_included
from planner.scenario.scenario import Scenario
from planner.text import text


def read_form(path: Path) -> dict[str, Any]:
    """Read raw scenario data from a fill-in form.

    Parameters
    ----------
    path : pathlib.Path
        A workbook with a form in it.

    Returns
    -------
    dict
        Scenario data in the shape `tomllib` would give; not yet checked against the models.

    Raises
    ------
    InputError
        When the file is refused (`planner.report.form.guard` states the limits) or a cell cannot be read; every
        such cell is named by sheet, cell and label.
    """
    form = _read(path)
    if form.problems:
        raise _input_error(path, form.problems)
    return form.data


def check_form(path: Path, language: str | None = None) -> Scenario:
    """Read a fill-in form and check it against the scenario models.

    Overrides are checked once the values they stand on are right. `language` is that of the answer, instead of the
    form's.

    Raises
    ------
    InputError
        With every wrong cell: sheet, cell, label, what was given and what is allowed.
    """
    form = _read(path)
    problems = list(form.problems)
    unreadable = {cell for cell, _ in problems}
    try:
        data, lines = with_included(form.data, path)
    except InputError as error:
        data, lines = form.data, NO_LINES
        problems += [pair for problem in error.problems for pair in _placed(problem, form)]
    if language is not None:
        data = {**data, "language": language}
    base = {key: value for key, value in data.items() if key != "overrides"}
    trials = [base, *({**base, "overrides": {name: keys}} for name, keys in data.get("overrides", {}).items())]
    for trial in trials:
        try:
            check_scenario(trial, str(path), lines)
        except InputError as error:
            found = [pair for problem in error.problems for pair in _placed(problem, form)]
            problems += [pair for pair in found if pair[0] is None or pair[0] not in unreadable]
            if trial is base:
                break
    if problems:
        order = {cell: place for place, cell in enumerate(form.cells.values())}
        raise _input_error(path, sorted(problems, key=lambda pair: order.get(pair[0], 0) if pair[0] else 0))
    return check_scenario(data, str(path), lines)


@contextmanager
def located_in_form(path: Path) -> Iterator[None]:
    """Give problems found while a scenario is worked out the name of its form and the cell of their key."""
    try:
        yield
    except InputError as error:
        if error.file:
            raise
        cells = _read(path).cells
        raise _input_error(path, [_located(problem, cells) for problem in error.problems]) from error


def _read(path: Path) -> Form:
    check_archive(path)
    import openpyxl

    gatherer = Gatherer()
    try:
        with warnings.catch_warnings(action="ignore"):
            book = openpyxl.load_workbook(path, read_only=True, data_only=False, keep_links=False, keep_vba=False)
            found = [gatherer.sheet(sheet.title, _rows(sheet)) for sheet in book.worksheets]
            book.close()
    except Exception as error:
        # a damaged or crafted workbook can make the parser fail in any way, and none of them is a fault of ours
        words = f"is a damaged workbook that cannot be read ({type(error).__name__}: {error})"
        raise InputError(str(path), [Problem("", words)]) from error
    if not any(found):
        words = f"holds no form ('{MARKER}' stands in the first row of none of its sheets)"
        raise InputError(str(path), [Problem("", words)])
    return gatherer.finish()


def _rows(sheet: Any) -> Iterator[list[Content]]:
    for row in sheet.iter_rows(min_row=1, max_row=MOST_ROWS, max_col=2 * KEY_COLUMN):
        yield [
            Content()
            if cell.value is None
            else Content(cell.value, cell.data_type or "n", cell.number_format or "General")
            for cell in row
        ]


def _input_error(path: Path, problems: Sequence[tuple[Cell | None, str]]) -> InputError:
    return InputError(str(path), [Problem(str(cell) if cell else "", says) for cell, says in dict.fromkeys(problems)])


def _placed(problem: Problem, form: Form) -> list[tuple[Cell | None, str]]:
    """Find the cell of a problem; of what is worked out from the visit, the cells that are empty or wrong there."""
    if problem.file:  # it stands in a file that the form includes
        return [(None, f"{problem.file}:{problem.line}: {problem.key}: {problem.text}")]
    asked = asked_for(problem.key, form.data) if problem.kind in ("missing", "no_entry") else {}
    if any(isinstance(value, Unreadable) for value in asked.values()):
        return []
    cells = [form.cells[key] for key, value in asked.items() if value is None and key in form.cells]
    empty: list[tuple[Cell | None, str]] = [(cell, text("form_cell.empty", allowed=cell.allowed)) for cell in cells]
    return empty or [_located(problem, form.cells)]


def _located(problem: Problem, cells: dict[str, Cell]) -> tuple[Cell | None, str]:
    """Find the cell of a problem; one that concerns a whole section points at the keys that are at odds."""
    key, says = problem.key, problem.text
    cell = _nearest(key, cells)
    if key in cells and problem.kind == "no_entry":
        says = text("form_cell.no_row")
    elif cell is None or not cell.allowed:
        cell, says = _by_keys(problem, cell, cells)
    elif key in cells and problem.kind in ("missing", "no_kind"):
        says = _empty(key, cell)
    elif key in cells and problem.kind == "unknown_key" and not key.startswith("overrides."):
        says = text("form_cell.other_kind")
    return cell, says if cell or not key else f"{key}: {says}"


def _by_keys(problem: Problem, cell: Cell | None, cells: dict[str, Cell]) -> tuple[Cell | None, str]:
    found = dict.fromkeys(cells[key] for key in problem.keys if key in cells)
    at_odds = [each for each in found if each != cell]
    if len(at_odds) == 1:
        return at_odds[0], problem.text
    if not at_odds:
        return cell, problem.text
    places = text("list.comma").join(f"{each.sheet}!{each.reference}" for each in at_odds)
    return cell, text("form_cell.see", problem=problem.text, cells=places)


def _empty(key: str, cell: Cell) -> str:
    """Say what an empty cell must hold, and where that is so that an optional section may stay empty as a whole."""
    around = [section for section in sections() if section.optional and key.startswith(f"{dotted(section.path)}.")]
    if not around:
        return text("form_cell.empty", allowed=cell.allowed)
    return text("form_cell.empty_in_section", allowed=cell.allowed, section=around[-1].title)


def _nearest(key: str, cells: dict[str, Cell]) -> Cell | None:
    """Find the cell of a dotted key, or of the entry or table in which it stands."""
    while key:
        if key in cells:
            return cells[key]
        key = key[: key.rindex("[")] if key.endswith("]") else key.rpartition(".")[0]
    return None
