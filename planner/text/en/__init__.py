"""English."""

from planner.text.en import checks_electrical, checks_nameplate, run, studies
from planner.text.en.figures import FIGURES

__all__ = ["FIGURES", "SENTENCES"]

SENTENCES: dict[str, str] = run.SENTENCES | studies.SENTENCES | checks_electrical.SENTENCES | checks_nameplate.SENTENCES
