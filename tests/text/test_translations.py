"""Each language says everything that English says, in its own words, with the same slots, numbers in its own style."""

from __future__ import annotations

import re
from importlib import import_module
from pkgutil import iter_modules
from string import Formatter
from typing import get_args

import pytest

from planner.figures import catalogue
from planner.scenario.fields import FROM_MEMORY
from planner.scenario.scenario import Scenario
from planner.scenario.walk import walk_models
from planner.text import (
    FIRST_LANGUAGE,
    in_language,
    languages,
    listed,
    model_words,
    number,
    option_label,
    review_note,
    text,
)
from planner.text.numbers import NARROW_NO_BREAK, NO_BREAK, STYLES, Language

ENGLISH = import_module("planner.text.en")
OTHERS = [code for code in languages() if code != FIRST_LANGUAGE]

NOT_PROMISED = ("form", "form_refusals", "reference")
"""Modules whose sentences a language may leave in English: of the form that is filled in, of refused cells, and of the
reference of keys and figures. The same holds for refusals of wrong input, which stand where the input is read, and for
the help of the command line."""

UNFINISHED: frozenset[str] = frozenset()
"""Languages that are being translated: what they lack is said in English. None, where all are done."""

WORD = re.compile(r"[^\W\d_]{4,}")
"""What has no such word is a sign, a unit or a standard, which languages share."""

ALIKE: dict[str, frozenset[str]] = {
    "es": frozenset(
        {
            "bill.subtotal",
            "friction.hazen-williams",
            "option_source.solar",
            "topic.cables",
            "topic_inside.cables",
            "plate.largest_flow.symbol",
            "plate.largest_head.symbol",
            "plate.current.symbol",
            "plate.submergence.symbol",
            "proposal.version",
        }
    ),
    "fr": frozenset(
        {
            "friction.hazen-williams",
            "page.options",
            "unit.modules",
            "varied.unit.per_module",
            "unit.phases",
            "bill.unit.module",
            "plate.frame.symbol",
            "plate.largest_flow.symbol",
            "plate.largest_head.symbol",
            "plate.current.symbol",
            "plate.submergence.symbol",
            "check.quality_arsenic_mg_l.what",
            "check.quality_cadmium_mg_l.what",
            "check.quality_sodium_mg_l.what",
            "check.quality_sulfate_mg_l.what",
            "check.quality_uranium_mg_l.what",
        }
    ),
    "pt": frozenset(
        {
            "option_source.solar",
            "friction.hazen-williams",
            "plate.largest_flow.symbol",
            "plate.largest_head.symbol",
            "plate.current.symbol",
            "plate.frame.symbol",
            "plate.submergence.symbol",
        }
    ),
    "sw": frozenset(
        {
            "friction.hazen-williams",
            "plate.current.symbol",
            "plate.largest_flow.symbol",
            "plate.largest_head.symbol",
            "plate.submergence.symbol",
            "proposal.version",
        }
    ),
}
"""Keys of sentences with words that read the same in English and in a language."""


def promised() -> dict[str, str]:
    """English sentences that every language must have."""
    found: dict[str, str] = {}
    for module in iter_modules(ENGLISH.__path__):
        if module.name not in NOT_PROMISED:
            found |= getattr(import_module(f"planner.text.en.{module.name}"), "SENTENCES", {})
    return found


def slots_of(sentence: str) -> set[str]:
    """Names of the slots of a sentence."""
    return {name for _, name, _, _ in Formatter().parse(sentence) if name is not None}


def of(language: str, name: str) -> dict[str, str]:
    """One of the dictionaries of a language's package."""
    found: dict[str, str] = getattr(import_module(f"planner.text.{language}"), name)
    return found


def model_texts() -> set[str]:
    """Names, units and sources of the numbers of a scenario that an answer may rest on, and of the figures.

    And what it means to leave a key out, which the list of inputs says of what is not worked out instead.
    """
    found = {figure.unit for figure in catalogue(())}
    for field in walk_models(Scenario):
        own = field.path[0] not in ("sweep", "size")
        if field.absent != field.how and (own or len(field.path) == 1):
            found.add(field.absent)
        if own and not field.tables and field.takes.numeric:
            found |= {field.short, field.unit, field.default_source}
    return {each for each in found if WORD.search(each.replace("money", ""))} | {FROM_MEMORY}


@pytest.mark.parametrize("language", OTHERS)
class TestLanguage:
    def test_it_may_be_asked_for(self, language: str) -> None:
        assert language in get_args(Language)
        assert language in STYLES

    def test_it_says_all_that_is_promised(self, language: str, request: pytest.FixtureRequest) -> None:
        if language in UNFINISHED:
            request.applymarker(pytest.mark.xfail(reason="being translated", strict=True))
        assert sorted(promised().keys() - of(language, "SENTENCES").keys()) == []

    def test_it_says_nothing_else(self, language: str) -> None:
        assert sorted(of(language, "SENTENCES").keys() - ENGLISH.SENTENCES.keys()) == []

    def test_its_modules_are_those_of_english(self, language: str) -> None:
        own = import_module(f"planner.text.{language}").__path__
        for module in iter_modules(own):
            if module.name.startswith("model_"):
                continue
            name, there = f"planner.text.{language}.{module.name}", import_module(f"planner.text.en.{module.name}")
            sentences = getattr(import_module(name), "SENTENCES", {})
            assert sorted(sentences.keys() - getattr(there, "SENTENCES", {}).keys()) == [], name

    def test_its_slots_are_those_of_english(self, language: str) -> None:
        english = ENGLISH.SENTENCES
        own = {key: said for key, said in of(language, "SENTENCES").items() if key in english}
        assert [key for key, said in own.items() if slots_of(said) != slots_of(english[key])] == []

    def test_its_slots_can_be_filled(self, language: str) -> None:
        """A format code that a number cannot have shows only when the sentence is said."""
        for key, said in of(language, "SENTENCES").items():
            specs = {name: spec for _, name, spec, _ in Formatter().parse(said) if name is not None}
            with in_language(language):
                text(key, **{name: 1234.5 if spec else "word" for name, spec in specs.items()})

    def test_it_is_not_english(self, language: str) -> None:
        english = ENGLISH.SENTENCES
        alike = {key for key, said in of(language, "SENTENCES").items() if said == english.get(key)}
        worded = {key for key in alike if any(WORD.search(part) for part, *_ in Formatter().parse(english[key]))}
        assert sorted(worded - ALIKE.get(language, frozenset())) == []
        assert sorted(ALIKE.get(language, frozenset()) - worded) == [], "these differ: take them off the list"

    def test_it_names_every_figure(self, language: str) -> None:
        figures = import_module(f"planner.text.{language}").FIGURES
        assert figures.keys() == ENGLISH.FIGURES.keys()
        assert [key for key, said in figures.items() if said[1] == ENGLISH.FIGURES[key][1]] == []

    def test_it_names_what_an_answer_may_rest_on(self, language: str) -> None:
        assert sorted(model_texts() - of(language, "MODEL_WORDS").keys()) == []

    def test_every_sheet_has_a_name_that_a_workbook_takes(self, language: str) -> None:
        names = [said for key, said in of(language, "SENTENCES").items() if key.startswith("page.")]
        assert len(set(names)) == len(names)
        assert [name for name in names if len(name) > 31 or set(name) & set("[]:*?/\\'")] == []

    def test_it_says_that_it_awaits_review(self, language: str) -> None:
        with in_language(language):
            note = review_note()
        assert (
            note.endswith("awaits review by a native speaker.")
            is not import_module(f"planner.text.{language}").REVIEWED
        )


def test_english_needs_no_review() -> None:
    assert review_note() == ""


NUMBERS = [
    ("en", "1,234.5", "12,345.6", "1,234,567.89", "12%"),
    ("fr", "1⍽234,5", "12⍽345,6", "1⍽234⍽567,89", "12·%"),
    ("es", "1234,5", "12.345,6", "1.234.567,89", "12·%"),
    ("es-MX", "1,234.5", "12,345.6", "1,234,567.89", "12%"),
    ("pt", "1234,5", "12·345,6", "1·234·567,89", "12%"),
    ("pt-BR", "1.234,5", "12.345,6", "1.234.567,89", "12%"),
    ("sw", "1,234.5", "12,345.6", "1,234,567.89", "12%"),
]
"""As ICU 78.2 prints them with the data of CLDR 48; ⍽ is U+202F, · is U+00A0."""


@pytest.mark.parametrize(("language", "short", "middle", "long", "percent"), NUMBERS)
def test_numbers_are_written_as_cldr_does(language: str, short: str, middle: str, long: str, percent: str) -> None:
    style = STYLES[language]
    written = [
        style.restyled(f"{value:{spec}}")
        for value, spec in ((1234.5, ",.1f"), (12345.6, ",.1f"), (1234567.89, ",.2f"), (0.12, ".0%"))
    ]
    wanted = [each.replace("⍽", NARROW_NO_BREAK).replace("·", NO_BREAK) for each in (short, middle, long, percent)]
    assert written == wanted


@pytest.mark.parametrize(
    ("plain", "french"),
    [
        ("2026", "2026"),
        ("-0.5", "-0,5"),
        ("1e+06", "1e+06"),
        ("1.5e+06", "1,5e+06"),
        ("2026-09-05", "2026-09-05"),
        ("1.2.3", "1.2.3"),
        ("PE100 SDR13.6", "PE100 SDR13.6"),
        ("nan", "nan"),
        ("–", "–"),
    ],
)
def test_what_is_no_number_stays_as_it_is(plain: str, french: str) -> None:
    assert STYLES["fr"].restyled(plain) == french


def test_a_list_in_spanish_has_another_word_before_the_sound_of_i() -> None:
    with in_language("es"):
        assert listed(["cobre", "plomo", "hierro"]) == "cobre, plomo y hierro"
        assert listed(["supervisión", "impuesto"]) == "supervisión e impuesto"
        assert listed(["diseño", "Hidrogeólogo"]) == "diseño e Hidrogeólogo"


def test_slots_are_written_in_the_style_of_the_language() -> None:
    with in_language("fr"):
        assert text("list.and", first="1,234.5", last=0.25) == f"1{NARROW_NO_BREAK}234,5 et 0,25"
        assert text("list.and", first=number(0.305, ".3f"), last="0.305") == "0,305 et 0,305"
        assert listed(["1.5 m", "2.5", "solar + grid"]) == "1.5 m, 2,5 et solaire + réseau"
    assert text("list.and", first="1,234.5", last=0.25) == "1,234.5 and 0.25"


def test_the_word_beside_a_number_follows_the_rule_of_the_language(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(of("fr", "SENTENCES"), "list.comma", "{first:,.1f jour|jours}")
    with in_language("fr"):
        said = [text("list.comma", first=days) for days in (0, 1.5, 1.96, 2, 1.9, 1234)]
    assert said == [
        f"{days}{NO_BREAK}{word}"
        for days, word in (
            ("0,0", "jour"), ("1,5", "jour"), ("2,0", "jours"), ("2,0", "jours"), ("1,9", "jour"),
            (f"1{NARROW_NO_BREAK}234,0", "jours"),
        )
    ]  # fmt: skip


def test_options_are_called_by_the_words_of_the_language() -> None:
    with in_language("fr"):
        assert option_label("solar + grid *") == "solaire + réseau *"
        assert option_label("grid; solar") == "réseau; solaire"
        assert option_label("grid connection") == "grid connection"
    assert option_label("solar + grid *") == "solar + grid *"


def test_what_a_language_has_no_words_for_is_said_in_english(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delitem(of("fr", "SENTENCES"), "answer.yes")
    with in_language("fr"):
        assert text("answer.yes") == ENGLISH.SENTENCES["answer.yes"]
        assert model_words("a unit of its own") == "a unit of its own"
