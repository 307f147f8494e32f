"""The sentences of a language's package, gathered from its modules."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from importlib import import_module
from pkgutil import iter_modules

from planner.text.numbers import NO_BREAK


def hold_currency(sentence: str) -> str:
    """Hold a currency's code to the number behind it, so that no line breaks between them."""
    return sentence.replace("{currency} {", f"{{currency}}{NO_BREAK}{{")


def gathered(package: str, path: Iterable[str], typeset: Callable[[str], str] = str) -> dict[str, str]:
    """Put together the `SENTENCES` of every module of a package, each sentence as `typeset` gives it."""
    found: dict[str, str] = {}
    for module in iter_modules(path):
        sentences: dict[str, str] = getattr(import_module(f"{package}.{module.name}"), "SENTENCES", {})
        found |= {key: typeset(sentence) for key, sentence in sentences.items()}
    return found
