"""English."""

from planner.text.en import run, studies
from planner.text.en.figures import FIGURES

__all__ = ["FIGURES", "SENTENCES"]

SENTENCES: dict[str, str] = run.SENTENCES | studies.SENTENCES
