"""What was changed in a workbook since its run: what the figures follow, and what asks for a new run.

Formulas follow prices, rates and lives, for the sizes that the run chose. Any other input is compared with its value of
the run, so that no sentence and no figure of the first page stands beside an input that it does not belong to.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from planner.money.formula import Formula, Operand
from planner.money.functions import absolute, both, total, where
from planner.report.document import At, Cell, Column, Foreign, Row, Span, Table
from planner.scenario.values import Bounds
from planner.text import text

SINCE, INPUTS, COLUMN = "inputs.since", "inputs", "since"
FORM_DIFFERENCES = "form.differences"
"""Key of the cell that counts what differs on the form, what the inputs follow left aside."""
STATE = Formula.leaf(At(SINCE, "state", "value"))
"""Cell that holds one of the following."""
UNCHANGED, FOLLOWED, RUN_AGAIN, OVERPAID = range(4)
_CLOSE = 1e-9


def in_state(state: int, yes: Operand, no: Operand) -> Formula:
    """One of two operands by whether the workbook is in a state."""
    found = where(Formula("=", STATE, state), yes, no)
    assert isinstance(found, Formula)
    return found


def while_unchanged(words: str) -> Formula:
    """A sentence that gives way once anything was changed."""
    return in_state(UNCHANGED, words, "")


def while_followed(operand: Operand, instead: str) -> Formula:
    """What follows the inputs, and a word once one is changed that it does not follow."""
    found = where(STATE < RUN_AGAIN, operand, instead)
    assert isinstance(found, Formula)
    return found


def number_cell(key: str, value: float, *, linked: bool, given: bool, followed: bool, bounds: Bounds | None) -> Cell:
    """Say of a number whether it was changed, and whether the figures follow.

    Parameters
    ----------
    key : str
        Key of its row.
    value : float
        Its value in the run.
    linked : bool
        Whether it is taken from the form; there it must then be a number, or empty as it was.
    given : bool
        Whether it stands there.
    followed : bool
        Whether every sum of money follows it.
    bounds : Bounds or None
        What is allowed.
    """
    cell = Formula.leaf(At(INPUTS, key, "value"))
    sound: Operand = Formula("ISNUMBER", cell)
    if linked:
        on_form = Formula.leaf(Foreign(key))
        typed: Operand = Formula("ISNUMBER", on_form)
        sound = both(sound, typed if given else Formula("OR", typed, Formula("ISBLANK", on_form)))
    same = absolute(cell - value) <= max(_CLOSE * abs(value), 1e-12)
    changed: Operand = text("inputs.again")
    if followed:
        changed = where(_within(cell, bounds), text("inputs.followed"), changed) if bounds else text("inputs.followed")
    return _told(where(sound, where(same, _nothing(), changed), text("inputs.again")))


def words_cell(key: str, words: str) -> Cell:
    """Say of words whether they were changed."""
    same = Formula("EXACT", Formula.leaf(At(INPUTS, key, "value")), words)
    return _told(where(same, _nothing(), text("inputs.again")))


def months_cell(key: str, values: Sequence[float], months: Sequence[str]) -> Cell:
    """Say of twelve numbers whether their sum was changed."""
    summed = total(Formula.leaf(Span(INPUTS, key, months[0], last_column=months[-1])))
    same = absolute(summed - sum(values)) <= _CLOSE * max(sum(map(abs, values)), 1.0)
    return _told(where(same, _nothing(), text("inputs.again")))


def _within(cell: Formula, bounds: Bounds | None) -> Operand:
    limits = [] if bounds is None else [
        Formula(symbol, cell, limit)
        for symbol, limit in ((">", bounds.gt), (">=", bounds.ge), ("<", bounds.lt), ("<=", bounds.le))
        if limit is not None
    ]  # fmt: skip
    return Formula("AND", *limits) if limits else Formula("ISNUMBER", cell)


def _told(formula: Any) -> Cell:
    return Cell.worked_out(_nothing(), "centre", formula)


def _nothing() -> str:
    return text("answer.nothing")


def since_table(first: str, last: str, *, paid: Operand | None, with_form: bool = True) -> Table:
    """Count what was changed, and say in what state the workbook is.

    Parameters
    ----------
    first, last : str
        Keys of the first and the last input.
    paid : Operand or None
        Grant and loan together [% of the capital cost]; None where there are no prices, so that no figure follows.
    with_form : bool
        Whether the workbook has a form beside the inputs.
    """
    said = Formula.leaf(Span(INPUTS, first, COLUMN, last))
    cell = {key: Formula.leaf(At(SINCE, key, "value")) for key in ("form", "again", "followed")}
    counts: dict[str, Operand] = {
        "form": Formula.leaf(Foreign(FORM_DIFFERENCES)) if with_form else 0.0,
        "again": cell["form"] + Formula("COUNTIF", said, text("inputs.again")),
    }
    state = "state_technical"
    if paid is None:
        counts["state"] = where(cell["again"] > 0, RUN_AGAIN, UNCHANGED)
    else:
        state, counts["followed"] = "state", Formula("COUNTIF", said, text("inputs.followed"))
        followed = where(cell["followed"] > 0, FOLLOWED, UNCHANGED)
        counts["state"] = where(cell["again"] > 0, RUN_AGAIN, where(paid > 100, OVERPAID, followed))
    rows = tuple(
        Row(key, {
            "what": Cell(text(f"inputs.since_{state if key == 'state' else key}"), "wrap"),
            "value": Cell.worked_out(0.0, "year", count),
        })
        for key, count in counts.items()
    )  # fmt: skip
    columns = (Column("what", text("inputs.since")), Column("value", text("inputs.since_count")))
    return Table(SINCE, columns, rows)
