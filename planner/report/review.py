"""The note that a translation awaits review, at the end of the first page of a report."""

from __future__ import annotations

from dataclasses import replace

from planner.report.document import Report, Text
from planner.text import review_note


def with_review_note(report: Report) -> Report:
    """Put the note below the first page; the report as it is where the language needs none."""
    note = review_note()
    if not note:
        return report
    first, *others = report.pages
    return Report(report.title, (replace(first, blocks=(*first.blocks, Text(note, "note"))), *others))
