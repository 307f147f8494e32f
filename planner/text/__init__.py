"""Every word to people, as whole sentences with named slots: one package a language, English first.

`text("key", slot=value)` gives the sentence of the language in use. A language is a package of this folder with
`SENTENCES`, `FIGURES`, `MODEL_WORDS` and `REVIEWED`; adding one is adding its package and its name to
`planner.text.numbers.Language`. A sentence that a language lacks is given in English.

A number in a slot is written in the language's style, be it a number or a text that is nothing but one, and so is the
name of a supply option. Outside English a slot may have the word that goes with its number, in the forms for one and
for others: `{days:.1f jour|jours}`; the language's `is_one` chooses. A language's `respelled`, where it has one, mends
the word before the last of a list.
"""

from __future__ import annotations

from contextlib import contextmanager
from contextvars import ContextVar
from functools import cache
from importlib import import_module
from string import Formatter
from typing import TYPE_CHECKING, Any, get_args

from planner.text.numbers import NO_BREAK, AsWritten, Language, style_of

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Sequence
    from types import ModuleType

FIRST_LANGUAGE = "en"
_MARK = " *"
"""Behind the name of an option whose costs are incomplete."""
_language: ContextVar[str] = ContextVar("language", default=FIRST_LANGUAGE)


def languages() -> tuple[str, ...]:
    """Codes of the languages that may be asked for, English first; a package that is not finished is not among them."""
    found = sorted({code.split("-")[0] for code in get_args(Language)})
    return (FIRST_LANGUAGE, *(name for name in found if name != FIRST_LANGUAGE))


def language_in_use() -> str:
    """Code of the language in use, with its region where one was asked for."""
    return _language.get()


@contextmanager
def in_language(code: str) -> Iterator[None]:
    """Give every sentence within the block in a language, such as 'fr' or 'pt-BR'; an unknown one raises ValueError."""
    token = _language.set(_checked(code))
    try:
        yield
    finally:
        _language.reset(token)


def go_on_in(code: str) -> None:
    """Give every sentence from here to the end of the command in a language; an unknown one raises ValueError."""
    _language.set(_checked(code))


def _checked(code: str) -> str:
    if code.split("-")[0] not in languages():
        raise ValueError(f"{code!r} is no language of the planner; there are {', '.join(languages())}")
    return code


def text(key: str, /, **slots: Any) -> str:
    """Give a sentence of the language in use with its slots filled.

    Raises
    ------
    KeyError
        When there is no such sentence, or a slot that it names is not given.
    """
    sentence = _sentence(key)
    return sentence.format(**slots) if _language.get() == FIRST_LANGUAGE else _LOCAL.vformat(sentence, (), slots)


def texts_of(prefix: str) -> tuple[str, ...]:
    """What follows a prefix in the keys that begin with it, in their order."""
    return tuple(key.removeprefix(prefix) for key in _english().SENTENCES if key.startswith(prefix))


def source_name(source: str) -> str:
    """What a source is called inside a sentence: as it calls itself where the language has no word for it."""
    return _sentence(f"source.{source}") if known(f"source.{source}") else source


def known(key: str) -> bool:
    """Whether there is a sentence."""
    return key in _module().SENTENCES or key in _english().SENTENCES


def listed(items: Sequence[str]) -> str:
    """Join the names of things as the language in use lists them: 'a', 'a and b', 'a, b and c'."""
    items = [option_label(restyled(item)) for item in items]
    if len(items) < 2:
        return "".join(items)
    respelled: Callable[[str], str] = getattr(_module(), "respelled", str)
    return respelled(text("list.and", first=text("list.comma").join(items[:-1]), last=items[-1]))


def figure_label(key: str) -> str:
    """What a figure of the catalogue is called."""
    return _figure(key)[0]


def figure_definition(key: str) -> str:
    """What a figure of the catalogue is, in one line, with its source."""
    return _figure(key)[1]


def model_words(english: str, *shorter: str) -> str:
    """What the scenario's models or the catalogue of figures say in English (a name, a unit, a source), as it is said.

    The first of what is given for which the language in use has words; in English where it has none.
    """
    words: dict[str, str] = getattr(_module(), "MODEL_WORDS", {})
    return next((words[each] for each in (english, *shorter) if each in words), english)


def option_label(name: str) -> str:
    """What a supply option, or each of a list of them, is called by its name in scenarios; other texts as they are."""
    if _language.get() == FIRST_LANGUAGE:
        return name
    if "; " in name:
        return "; ".join(map(option_label, name.split("; ")))
    parts = name.removesuffix(_MARK).split(" + ")
    if not all(known(f"option_source.{part}") for part in parts):
        return name
    marked = _MARK if name.endswith(_MARK) else ""
    return " + ".join(_sentence(f"option_source.{part}") for part in parts) + marked


def number(value: float, spec: str) -> str:
    """Write a number by a format code (',.2f') in the style of the language in use."""
    return AsWritten(style_of(_language.get()).restyled(format(value, spec)))


def sum_of_money(value: float, currency: str, spec: str = ",.0f") -> str:
    """Write a sum of money: the currency's code before the number, outside English held to it."""
    space = " " if _language.get() == FIRST_LANGUAGE else NO_BREAK
    return f"{currency}{space}{number(value, spec)}"


def restyled(plain: str) -> str:
    """Write in the style of the language in use a number that format codes wrote; any other text as it is."""
    return style_of(_language.get()).restyled(plain)


def review_note() -> str:
    """What stands at the end of every output while nobody who grew up with the language has read it; else ''."""
    if getattr(_module(), "REVIEWED", True):
        return ""
    return f"{_sentence('language.unreviewed')} / {_english().SENTENCES['language.unreviewed']}"


class _Local(Formatter):
    """Fills the slots of a sentence in the style of the language in use."""

    def format_field(self, value: Any, format_spec: str) -> str:
        if isinstance(value, AsWritten) and not format_spec:
            return value
        code, _, forms = format_spec.partition(" ")
        written = format(value, code)
        shown = option_label(restyled(written))
        return f"{shown}{NO_BREAK}{_form_for(written, forms)}" if forms else shown

    def convert_field(self, value: Any, conversion: str | None) -> Any:
        """Take a slot with `!s` as it is written."""
        return AsWritten(value) if conversion == "s" else super().convert_field(value, conversion)


_LOCAL = _Local()


def _form_for(written: str, forms: str) -> str:
    """Which of 'jour|jours' stands with a number, as it is written."""
    one, other = forms.split("|")
    try:
        return one if _module().is_one(float(written.replace(",", ""))) else other
    except ValueError:
        return other


def _sentence(key: str) -> str:
    own: dict[str, str] = _module().SENTENCES
    return own[key] if key in own else str(_english().SENTENCES[key])


def _figure(key: str) -> tuple[str, str]:
    found: tuple[str, str] = _module().FIGURES.get(key) or _english().FIGURES[key]
    return found


def _module() -> ModuleType:
    return _module_of(_language.get())


@cache
def _module_of(language: str) -> ModuleType:
    return import_module(f"{__name__}.{language.split('-')[0]}")


def _english() -> ModuleType:
    return _module_of(FIRST_LANGUAGE)
