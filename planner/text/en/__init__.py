"""English."""

from planner.text.en import (
    answers,
    assumptions,
    bill,
    by_time,
    cautions,
    checks,
    checks_cables,
    checks_electrical,
    checks_nameplate,
    checks_pipeline,
    checks_works,
    commands,
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
    answers, assumptions, bill, by_time, cautions, checks, checks_cables, checks_electrical, checks_nameplate,
    checks_pipeline, checks_works, commands, form, form_refusals, inputs, materials, method, plate, records, remedies,
    run, site, studies, technical, terminal, users, weather,
):  # fmt: skip
    SENTENCES |= _part.SENTENCES
