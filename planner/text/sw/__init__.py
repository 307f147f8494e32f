"""Swahili, of Kenya and Tanzania.

The modules have plain spaces before the sign of per cent; here they become those that keep a line from breaking there.
"""

from planner.text.gathered import gathered, hold_currency
from planner.text.numbers import NO_BREAK
from planner.text.sw import figures, model_names, model_parts, model_sources

__all__ = ["FIGURES", "MODEL_WORDS", "REVIEWED", "SENTENCES"]

REVIEWED = False
"""Whether somebody who grew up with the language has read all of it."""


def is_one(number: float) -> bool:
    """Whether the form for one goes with a number: in Swahili with one alone."""
    return number == 1


def typeset(sentence: str) -> str:
    """Put spaces that keep the line from breaking where Swahili has them."""
    return hold_currency(sentence).replace(" %", f"{NO_BREAK}%")


SENTENCES: dict[str, str] = gathered(__name__, __path__, typeset)
FIGURES = {key: (typeset(name), typeset(definition)) for key, (name, definition) in figures.FIGURES.items()}
_WORDS = model_names.NAMES | model_parts.PARTS | model_sources.UNITS | model_sources.SOURCES
MODEL_WORDS = {english: typeset(words) for english, words in _WORDS.items()}
