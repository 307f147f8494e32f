"""English."""

from planner.text.en import (
    answers,
    by_time,
    checks_electrical,
    checks_nameplate,
    method,
    run,
    site,
    studies,
    terminal,
    weather,
)
from planner.text.en.figures import FIGURES

__all__ = ["FIGURES", "SENTENCES"]

SENTENCES: dict[str, str] = {}
for _part in (answers, by_time, checks_electrical, checks_nameplate, method, run, site, studies, terminal, weather):
    SENTENCES |= _part.SENTENCES
