"""Spanish.

The modules have plain spaces before the sign of per cent; here they become those that keep a line from breaking there.
"""

import re

from planner.text.es import figures, model_names, model_parts, model_sources
from planner.text.gathered import gathered
from planner.text.numbers import NO_BREAK

__all__ = ["FIGURES", "MODEL_WORDS", "REVIEWED", "SENTENCES"]

REVIEWED = False
"""Whether somebody who grew up with the language has read all of it."""


def is_one(number: float) -> bool:
    """Whether the form for one goes with a number: in Spanish with one alone, be it written with decimals or not."""
    return number == 1


def respelled(listed: str) -> str:
    """Say 'e' for 'y' before the sound of i, which 'hielo' and its like do not begin with."""
    return re.sub(r" y (?=[ií]|hi(?!e))", " e ", listed, flags=re.IGNORECASE)


def typeset(sentence: str) -> str:
    """Put spaces that keep the line from breaking where Spanish has them."""
    return sentence.replace(" %", f"{NO_BREAK}%")


SENTENCES: dict[str, str] = gathered(__name__, __path__, typeset)
FIGURES = {key: (typeset(name), typeset(definition)) for key, (name, definition) in figures.FIGURES.items()}
_WORDS = model_names.NAMES | model_parts.PARTS | model_sources.UNITS | model_sources.SOURCES
MODEL_WORDS = {english: typeset(words) for english, words in _WORDS.items()}
