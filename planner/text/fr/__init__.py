"""French.

The modules have plain spaces before high punctuation and inside quotation marks; here they become those that keep a
line from breaking there.
"""

from planner.text.fr import figures, model_names, model_parts, model_sources
from planner.text.gathered import gathered, hold_currency
from planner.text.numbers import NARROW_NO_BREAK, NO_BREAK

__all__ = ["FIGURES", "MODEL_WORDS", "REVIEWED", "SENTENCES"]

REVIEWED = False
"""Whether somebody who grew up with the language has read all of it."""


def is_one(number: float) -> bool:
    """Whether the form for one goes with a number: in French with everything under two."""
    return abs(number) < 2


def typeset(sentence: str) -> str:
    """Put spaces that keep the line from breaking where French has them."""
    sentence = hold_currency(sentence)
    for sign in ";!?":
        sentence = sentence.replace(f" {sign}", f"{NARROW_NO_BREAK}{sign}")
    for sign in (":", "%", "»"):
        sentence = sentence.replace(f" {sign}", f"{NO_BREAK}{sign}")
    return sentence.replace("« ", f"«{NO_BREAK}")


SENTENCES: dict[str, str] = gathered(__name__, __path__, typeset)
FIGURES = {key: (typeset(name), typeset(definition)) for key, (name, definition) in figures.FIGURES.items()}
_WORDS = model_names.NAMES | model_parts.PARTS | model_sources.UNITS | model_sources.SOURCES
MODEL_WORDS = {english: typeset(words) for english, words in _WORDS.items()}
