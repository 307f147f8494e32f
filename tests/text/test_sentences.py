"""Sentences and the code that asks for them agree: keys, slots, and none that nobody asks for.

What a key put together in an f-string asks for is known only when it runs, where `text` raises on a slot that lacks;
here such a key must fit a sentence, and the slots given must be those of one that it fits.
"""

from __future__ import annotations

import ast
import re
from dataclasses import dataclass
from functools import cache
from importlib import import_module
from pathlib import Path
from pkgutil import iter_modules
from string import Formatter

import pytest

import planner
from planner.text import FIRST_LANGUAGE, in_language, listed
from planner.text import en as english
from planner.text.en import SENTENCES

Key = ast.Constant | ast.JoinedStr
ROOT = Path(planner.__file__).parent
BY_NAME: frozenset[str] = frozenset()
"""Keys put together in a way that neither a literal nor an f-string of the code shows."""


@dataclass(frozen=True)
class Asked:
    """One call of `text`: where, the keys that the code shows, and the slots given; None where it does not show all."""

    where: str
    keys: tuple[Key, ...]
    slots: frozenset[str] | None


def _branches(node: ast.expr) -> list[Key | None]:
    """Keys that an expression may give, None for one that the code does not show."""
    if isinstance(node, ast.IfExp):
        return [*_branches(node.body), *_branches(node.orelse)]
    return [node if isinstance(node, Key) else None]


def _pattern(key: Key) -> re.Pattern[str]:
    """Keys that a literal or an f-string may be.

    A placeholder stands for anything within a part between dots; at the beginning for the key of another sentence.
    """
    if isinstance(key, ast.Constant):
        return re.compile(re.escape(str(key.value)))
    parts = [re.escape(str(part.value)) if isinstance(part, ast.Constant) else "[^.]*" for part in key.values]
    if not isinstance(key.values[0], ast.Constant):
        parts[0] = ".+"
    return re.compile("".join(parts))


def _slots(sentence: str) -> frozenset[str]:
    return frozenset(name for _, name, _, _ in Formatter().parse(sentence) if name is not None)


@cache
def _trees() -> dict[str, ast.Module]:
    files = [path for path in sorted(ROOT.rglob("*.py")) if ROOT / "text" not in path.parents]
    return {str(path.relative_to(ROOT)): ast.parse(path.read_text("utf-8")) for path in files}


@cache
def _asked() -> tuple[Asked, ...]:
    found = []
    for name, tree in _trees().items():
        for node in ast.walk(tree):
            if not (isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "text"):
                continue
            branches = _branches(node.args[0])
            names = [keyword.arg for keyword in node.keywords]
            slots = None if None in names or None in branches else frozenset(name for name in names if name)
            keys = tuple(branch for branch in branches if branch is not None)
            found.append(Asked(f"{name}:{node.lineno}", keys, slots))
    return tuple(found)


@cache
def _literal() -> frozenset[str]:
    """Keys that stand in the code as they are."""
    strings = {
        node.value
        for tree in _trees().values()
        for node in ast.walk(tree)
        if isinstance(node, ast.Constant) and isinstance(node.value, str)
    }
    return frozenset(strings & SENTENCES.keys())


def _matching(key: Key) -> list[str]:
    pattern = _pattern(key)
    return [name for name in SENTENCES if pattern.fullmatch(name)]


def test_the_code_asks_for_sentences_by_readable_keys() -> None:
    assert len(_asked()) > 30
    assert sum(bool(asked.keys) for asked in _asked()) > 0.9 * len(_asked())


def test_every_key_asked_for_is_there() -> None:
    unknown = [f"{asked.where}: {ast.unparse(key)}" for asked in _asked() for key in asked.keys if not _matching(key)]
    assert not unknown


def test_the_slots_given_are_those_of_the_sentence() -> None:
    wrong = []
    for asked in _asked():
        if asked.slots is None:
            continue
        named = set()
        for key in asked.keys:
            slots = [_slots(SENTENCES[name]) for name in _matching(key)]
            named |= frozenset().union(*slots)
            if slots and not any(found <= asked.slots for found in slots):
                wrong.append(f"{asked.where}: {ast.unparse(key)} needs {sorted(slots[0])}")
        if asked.slots - named:
            wrong.append(f"{asked.where}: no sentence has {sorted(asked.slots - named)}")
    assert not wrong


def test_every_slot_has_a_name() -> None:
    assert not [key for key, sentence in SENTENCES.items() if any(not slot.isidentifier() for slot in _slots(sentence))]


def test_every_module_of_english_is_gathered_and_no_key_says_two_things() -> None:
    found: dict[str, set[str]] = {}
    for module in iter_modules(english.__path__):
        of_module = getattr(import_module(f"{english.__name__}.{module.name}"), "SENTENCES", {})
        for key, sentence in of_module.items():
            found.setdefault(key, set()).add(sentence)
    assert found == {key: {sentence} for key, sentence in SENTENCES.items()}


@pytest.mark.parametrize(
    ("items", "words"), [([], ""), (["a"], "a"), (["a", "b"], "a and b"), (["a", "b", "c"], "a, b and c")]
)
def test_a_list_of_things(items: list[str], words: str) -> None:
    with in_language(FIRST_LANGUAGE):
        assert listed(items) == words
