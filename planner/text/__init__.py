"""Every word to people, as whole sentences with named slots: one package a language, English first.

`text("key", slot=value)` gives the sentence of the language in use. A language is a package of this folder with the
same `SENTENCES` and `FIGURES`; adding one is adding its package.
"""

from __future__ import annotations

from contextlib import contextmanager
from contextvars import ContextVar
from importlib import import_module
from pkgutil import iter_modules
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence
    from types import ModuleType

FIRST_LANGUAGE = "en"
_language: ContextVar[str] = ContextVar("language", default=FIRST_LANGUAGE)


def languages() -> tuple[str, ...]:
    """Codes of the languages there are, English first."""
    found = sorted(module.name for module in iter_modules(__path__))
    return (FIRST_LANGUAGE, *(name for name in found if name != FIRST_LANGUAGE))


def language_in_use() -> str:
    """Code of the language in use."""
    return _language.get()


@contextmanager
def in_language(code: str) -> Iterator[None]:
    """Give every sentence within the block in a language; an unknown code raises ValueError."""
    if code not in languages():
        raise ValueError(f"{code!r} is no language of the planner; there are {', '.join(languages())}")
    token = _language.set(code)
    try:
        yield
    finally:
        _language.reset(token)


def text(key: str, /, **slots: Any) -> str:
    """Give a sentence of the language in use with its slots filled.

    Raises
    ------
    KeyError
        When there is no such sentence, or a slot that it names is not given.
    """
    sentence: str = _module().SENTENCES[key]
    return sentence.format(**slots)


def texts_of(prefix: str) -> tuple[str, ...]:
    """What follows a prefix in the keys that begin with it, in their order."""
    return tuple(key.removeprefix(prefix) for key in _module().SENTENCES if key.startswith(prefix))


def source_name(source: str) -> str:
    """What a source is called inside a sentence: as it calls itself where the language has no word for it."""
    name: str = _module().SENTENCES.get(f"source.{source}", source)
    return name


def known(key: str) -> bool:
    """Whether the language in use has a sentence."""
    return key in _module().SENTENCES


def listed(items: Sequence[str]) -> str:
    """Join the names of things as the language in use lists them: 'a', 'a and b', 'a, b and c'."""
    if len(items) < 2:
        return "".join(items)
    return text("list.and", first=text("list.comma").join(items[:-1]), last=items[-1])


def figure_label(key: str) -> str:
    """What a figure of the catalogue is called."""
    label: str = _module().FIGURES[key][0]
    return label


def figure_definition(key: str) -> str:
    """What a figure of the catalogue is, in one line, with its source."""
    definition: str = _module().FIGURES[key][1]
    return definition


def _module() -> ModuleType:
    return import_module(f"{__name__}.{_language.get()}")
