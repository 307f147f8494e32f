"""English."""

from planner.text.en import by_time, method, run, site, studies, terminal
from planner.text.en.figures import FIGURES

__all__ = ["FIGURES", "SENTENCES"]

SENTENCES: dict[str, str] = {}
for _part in (by_time, run, site, method, studies, terminal):
    SENTENCES |= _part.SENTENCES
