"""Portuguese, as it is written in Mozambique and Angola, with the spelling from before the agreement of 1990."""

from planner.text.gathered import gathered
from planner.text.pt import figures, model_names, model_parts, model_sources

__all__ = ["FIGURES", "MODEL_WORDS", "REVIEWED", "SENTENCES"]

REVIEWED = False
"""Whether somebody who grew up with the language has read all of it."""


def is_one(number: float) -> bool:
    """Whether the form for one goes with a number."""
    return abs(number) == 1


SENTENCES: dict[str, str] = gathered(__name__, __path__)
FIGURES = figures.FIGURES
MODEL_WORDS = model_names.NAMES | model_parts.PARTS | model_sources.UNITS | model_sources.SOURCES
