"""Twelve sentences that every answer is made of, with their numbers as each language writes them."""

from __future__ import annotations

import re

import pytest

from planner.text import in_language, languages, sum_of_money, text
from planner.text.numbers import NARROW_NO_BREAK, NO_BREAK

NUMBER = re.compile(rf"(?<![a-z])\d(?:[\d.,{NO_BREAK}{NARROW_NO_BREAK}]*\d)?")

SENTENCES = {
    "answer.best": (
        {"target": 98.0, "option": "solar", "years": 20, "capital_cost": 12345.0, "life_cycle_cost": 1234567.0,
         "per_m3": 1234.5},
        (98, "12,345", "1,234,567", 20, "1,234.5"),
    ),
    "decision.none_meets": ({"target": 97.5, "option": "solar", "delivered": 89.25}, ("97.5", "89.2")),
    "answer.next_best": ({"option": "grid", "gap": 1945.0, "percent": 5.81}, ("1,945", "5.8")),
    "answer.top_up_needed": (
        {"sources": "sun", "alone": 89.2, "topped_up": 99.96, "gap": 1072.0}, ("89.2", "100.0", "1,072"),
    ),
    "answer.top_up_not_worth": (
        {"sources": "sun", "alone": 98.4, "topped_up": 99.9, "gap": 25476.0}, ("25,476", "98.4", "99.9"),
    ),
    "uncertainty.other_first_above": (
        {"input": "x", "value": "1,234.5", "base": "0.25", "other": "grid", "option": "solar"}, ("1,234.5", "0.25"),
    ),
    "uncertainty.worst_year": (
        {"option": "solar", "met": 99.9, "days": 1.0, "litres": 12345.0}, ("99.90", "1", "12,345"),
    ),
    "days.none": ({"option": "solar", "years": 20}, (20,)),
    "site_answer.some_fail": ({"count": 3, "checks": "x"}, (3,)),
    "decision.unpriced": ({"names": "x"}, ()),
    "decision.estimated_weather": ({}, ()),
    "caution.local": ({}, ()),
}  # fmt: skip
"""Slots of each, and the numbers in it as English writes them."""
MONEY = ("capital_cost", "life_cycle_cost", "gap", "per_m3")

WRITTEN = {
    "fr": {
        "12,345": "12⍽345", "1,234,567": "1⍽234⍽567", "1,234.5": "1⍽234,5", "1,945": "1⍽945", "1,072": "1⍽072",
        "25,476": "25⍽476",
    },
    "es": {
        "12,345": "12.345", "1,234,567": "1.234.567", "1,234.5": "1234,5", "1,945": "1945", "1,072": "1072",
        "25,476": "25.476",
    },
    "pt": {
        "12,345": "12·345", "1,234,567": "1·234·567", "1,234.5": "1234,5", "1,945": "1945", "1,072": "1072",
        "25,476": "25·476",
    },
}  # fmt: skip
"""Numbers that a language writes in another way than English does, apart from those that take a comma for the point."""


def written(number: str, language: str) -> str:
    """How a language writes a number; ⍽ stands for U+202F, · for U+00A0."""
    if language not in WRITTEN:
        return number
    said = WRITTEN[language].get(number, number.replace(".", ","))
    return said.replace("⍽", NARROW_NO_BREAK).replace("·", NO_BREAK)


@pytest.mark.parametrize("language", languages())
@pytest.mark.parametrize("key", SENTENCES)
def test_its_numbers_are_written_as_the_language_does(key: str, language: str) -> None:
    slots, numbers = SENTENCES[key]
    with in_language(language):
        money = {
            name: sum_of_money(value, "USD", ",.1f" if name == "per_m3" else ",.0f")
            for name, value in slots.items()
            if name in MONEY
        }
        said = text(key, **slots | money)
    space = " " if language == "en" else NO_BREAK
    assert said.count(f"USD{space}") == len(money)
    found = NUMBER.findall(said.replace("USD", ""))
    assert sorted(found) == sorted(written(str(number), language) for number in numbers)
