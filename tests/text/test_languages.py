"""The sentences of a language: each has its key once, fills its slots, and is said somewhere."""

from __future__ import annotations

import ast
import functools
import re
from importlib import import_module
from pathlib import Path
from pkgutil import iter_modules
from string import Formatter

from planner.text import in_language, source_name, text

ENGLISH = import_module("planner.text.en")
SENTENCES: dict[str, str] = ENGLISH.SENTENCES
MODULES = [module.name for module in iter_modules(ENGLISH.__path__) if module.name != "figures"]


@functools.cache
def keys_in_code() -> tuple[frozenset[str], frozenset[str]]:
    """First arguments of `text(...)`, and every string that could be a key; slots of an f-string as '.+'."""
    called, all_strings = set(), set()
    for file in Path("planner").rglob("*.py"):
        if len(file.relative_to("planner").parts) == 3 and file.is_relative_to("planner/text"):
            continue  # the words of a language
        tree = ast.parse(file.read_text(encoding="utf-8"))
        for node in ast.walk(tree):
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "text" and node.args:
                called.update(patterns_of(node.args[0]))
            all_strings.update(patterns_of(node))
    return frozenset(called), frozenset(all_strings)


def patterns_of(node: ast.AST) -> list[str]:
    """Patterns of the keys that an expression gives."""
    if isinstance(node, ast.IfExp):
        return [*patterns_of(node.body), *patterns_of(node.orelse)]
    if isinstance(node, ast.JoinedStr):
        parts = (re.escape(str(part.value)) if isinstance(part, ast.Constant) else ".*" for part in node.values)
        return ["".join(parts)]
    return [re.escape(node.value)] if isinstance(node, ast.Constant) and isinstance(node.value, str) else []


def test_no_key_stands_in_two_modules() -> None:
    modules = [import_module(f"planner.text.en.{name}").SENTENCES for name in MODULES]
    assert sum(map(len, modules)) == len(SENTENCES)


def test_every_sentence_that_is_asked_for_is_there() -> None:
    called, _ = keys_in_code()
    assert [pattern for pattern in called if not any(re.fullmatch(pattern, key) for key in SENTENCES)] == []


def test_every_sentence_is_asked_for() -> None:
    _, strings = keys_in_code()
    asked = re.compile("|".join(pattern for pattern in strings if re.match(r"\w+\\\.", pattern)))
    assert [key for key in SENTENCES if not asked.fullmatch(key)] == []


def slots_of(sentence: str) -> set[str]:
    """Names of the slots of a sentence."""
    slots = {name for _, name, _, _ in Formatter().parse(sentence) if name is not None}
    assert all(slot.isidentifier() for slot in slots), sentence
    return slots


def test_a_source_without_a_word_is_called_as_it_calls_itself() -> None:
    with in_language("en"):
        assert source_name("grid") == text("source.grid") == "the grid"
        assert source_name("neighbour") == "neighbour"
