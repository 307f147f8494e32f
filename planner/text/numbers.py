"""How each language writes numbers, after CLDR 48 (as ICU 78.2 prints them)."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Literal

Language = Literal["en", "es", "fr", "pt", "pt-BR", "sw"]
"""Languages that a scenario may ask for: a language with a package, or one of its regions with a number style."""

NO_BREAK, NARROW_NO_BREAK = "\u00a0", "\u202f"
_PLAIN = re.compile(r"([+-]?)(\d{1,3}(?:,\d{3})+|\d+)(?:\.(\d+))?(e[+-]\d+)?(%?)")
"""A number as Python's format codes write it."""


class AsWritten(str):
    """A text that a slot takes as it is: a number already in the style of the language."""

    __slots__ = ()


@dataclass(frozen=True)
class NumberStyle:
    """How numbers are written.

    Attributes
    ----------
    decimal, group : str
        Mark before the decimals, and between groups of three digits.
    least_digits : int
        Digits of the whole part from which groups are marked at all.
    percent : str
        What stands between a number and its sign of per cent.
    """

    decimal: str = "."
    group: str = ","
    least_digits: int = 4
    percent: str = ""

    def restyled(self, plain: str) -> str:
        """Write in this style what Python's format codes wrote; what is no number stays as it is."""
        found = _PLAIN.fullmatch(plain)
        if found is None:
            return plain
        sign, whole, decimals, power, percent = found.groups()
        digits = whole.replace(",", "")
        mark = self.group if len(digits) >= self.least_digits else ""
        parts = [sign, whole.replace(",", mark)]
        parts += [self.decimal, decimals] if decimals else []
        parts += [power] if power else []
        parts += [self.percent, percent] if percent else []
        return "".join(parts)


ENGLISH = NumberStyle()
STYLES: dict[str, NumberStyle] = {
    "en": ENGLISH,
    "fr": NumberStyle(",", NARROW_NO_BREAK, 4, NO_BREAK),
    "es": NumberStyle(",", ".", 5, NO_BREAK),  # Spain, Bolivia, Argentina; for others name the region
    "es-419": ENGLISH,
    "es-MX": ENGLISH,
    "es-PE": ENGLISH,
    "pt": NumberStyle(",", NO_BREAK, 5),  # Portugal, Mozambique, Angola
    "pt-BR": NumberStyle(",", "."),
    "sw": ENGLISH,
}
"""Style of each language, or of one of its regions where that differs."""


def style_of(language: str) -> NumberStyle:
    """Style of a language: of its region where that has one, else of the language, else that of English."""
    return STYLES.get(language) or STYLES.get(language.split("-")[0]) or ENGLISH
