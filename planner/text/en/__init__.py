"""English."""

from planner.text.en import (
    answers,
    assumptions,
    bill,
    brief,
    by_time,
    cautions,
    checks,
    checks_electrical,
    checks_nameplate,
    checks_pipeline,
    checks_works,
    decision,
    form,
    form_refusals,
    inputs,
    materials,
    method,
    plate,
    records,
    remedies,
    run,
    site,
    studies,
    technical,
    terminal,
    users,
    weather,
)
from planner.text.en.figures import FIGURES

__all__ = ["FIGURES", "SENTENCES"]

SENTENCES: dict[str, str] = {}
for _part in (
    answers, assumptions, bill, brief, by_time, cautions, checks, checks_electrical, checks_nameplate, checks_pipeline,
    checks_works, decision, form, form_refusals, inputs, materials, method, plate, records, remedies, run, site,
    studies, technical, terminal, users, weather,
):  # fmt: skip
    SENTENCES |= _part.SENTENCES
