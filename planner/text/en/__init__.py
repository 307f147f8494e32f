"""English: every sentence of the modules of this folder, and what the figures are called."""

from planner.text.en.figures import FIGURES
from planner.text.gathered import gathered

__all__ = ["FIGURES", "SENTENCES"]

SENTENCES: dict[str, str] = gathered(__name__, __path__)
