"""English."""

from planner.text.en import answers, run, studies, weather
from planner.text.en.figures import FIGURES

__all__ = ["FIGURES", "SENTENCES"]

SENTENCES: dict[str, str] = run.SENTENCES | studies.SENTENCES | answers.SENTENCES | weather.SENTENCES
