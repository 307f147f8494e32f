"""Write the brief of a study to a file."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from planner.answers.decision import decision
from planner.checks.verdict import Verdict
from planner.report.brief.contents import SHOWN, brief_report, is_long
from planner.report.brief.page import html_text
from planner.report.files import write_text
from planner.study.compare import Study
from planner.study.hours import option_hours
from planner.text import language_in_use


def write_brief(study: Study, path: Path, verdicts: Sequence[Verdict], remedied: Sequence[str] = ()) -> None:
    """Write a study as a brief, whole or not at all; the hours of its first option are run again for it.

    Parameters
    ----------
    study : Study
        The finished comparison.
    path : pathlib.Path
        File to write.
    verdicts : sequence of Verdict
        What the site checks found.
    remedied : sequence of str
        What there is to say of the answer with the remedies.
    """
    hours = option_hours(study, study.ranked[0].name)
    report = brief_report(study, decision(study, verdicts, remedied), verdicts, hours)
    write_text(path, html_text(report, SHOWN, language_in_use(), dense=is_long(report)))
