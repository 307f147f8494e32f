"""Sentences and the code that asks for them agree: keys, slots, and none that nobody asks for."""

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
from planner.text import FIRST_LANGUAGE, in_language, languages, listed
from planner.text import en as english
from planner.text.en import SENTENCES

ROOT = Path(planner.__file__).parent
BY_NAME: frozenset[str] = frozenset()
"""Keys put together in a way that neither a literal nor an f-string of the code shows."""
OPEN = r"[^.]+"
WITHIN = r"[^._]+"
"""What a placeholder of a key stands for: a whole part between dots, or a word of one."""


@dataclass(frozen=True)
class Asked:
    """One call of `text`: where, the keys that it may ask for, and the slots given (None where spread from a dict)."""

    where: str
    keys: tuple[ast.Constant | ast.JoinedStr, ...]
    slots: frozenset[str] | None


def _branches(node: ast.expr) -> list[ast.Constant | ast.JoinedStr]:
    if isinstance(node, ast.IfExp):
        return [*_branches(node.body), *_branches(node.orelse)]
    literal = isinstance(node, ast.JoinedStr) or (isinstance(node, ast.Constant) and isinstance(node.value, str))
    return [node] if literal else []  # type: ignore[list-item]


def _pattern(node: ast.Constant | ast.JoinedStr) -> re.Pattern[str]:
    """Keys that a literal or an f-string may be."""
    if isinstance(node, ast.Constant):
        return re.compile(re.escape(str(node.value)))
    parts = [part.value if isinstance(part, ast.Constant) else None for part in node.values]
    written = ""
    for index, part in enumerate(parts):
        before, after = parts[index - 1] if index else ".", parts[index + 1] if index + 1 < len(parts) else "."
        whole = str(before).endswith(".") and str(after).startswith(".")
        written += re.escape(str(part)) if part is not None else OPEN if whole else WITHIN
    return re.compile(written)


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
            keys = tuple(_branches(node.args[0])) if node.args else ()
            spread = any(keyword.arg is None for keyword in node.keywords)
            slots = None if spread else frozenset(keyword.arg for keyword in node.keywords if keyword.arg)
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


def _matching(key: ast.Constant | ast.JoinedStr) -> set[str]:
    """Sentences that a key may ask for; of an f-string those that are not asked for by their own key elsewhere."""
    found = {name for name in SENTENCES if _pattern(key).fullmatch(name)}
    return found if isinstance(key, ast.Constant) else (found - _literal() or found)


def test_the_code_asks_for_sentences_by_readable_keys() -> None:
    assert len(_asked()) > 30
    assert sum(bool(asked.keys) for asked in _asked()) > 0.9 * len(_asked())


def test_every_key_asked_for_is_there() -> None:
    unknown = [f"{asked.where}: {ast.unparse(key)}" for asked in _asked() for key in asked.keys if not _matching(key)]
    assert not unknown


def test_the_slots_given_are_those_of_the_sentence() -> None:
    wrong = []
    for asked in _asked():
        if asked.slots is None or not asked.keys:
            continue
        named = {name: _slots(SENTENCES[name]) for key in asked.keys for name in _matching(key)}
        wrong += [
            f"{asked.where}: {name} also needs {sorted(slots - asked.slots)}"
            for name, slots in named.items()
            if slots - asked.slots
        ]
        idle = asked.slots - frozenset().union(*named.values())
        wrong += [f"{asked.where}: no sentence has {sorted(idle)}"] if idle else []
    assert not wrong


def test_every_sentence_is_asked_for_somewhere() -> None:
    patterns = [
        _pattern(node)
        for tree in _trees().values()
        for node in ast.walk(tree)
        if isinstance(node, ast.JoinedStr) and re.match(r"[a-z_]+\.", str(getattr(node.values[0], "value", "")))
    ]
    by_pattern = {key for key in SENTENCES if any(pattern.fullmatch(key) for pattern in patterns)}
    by_text = {"list.and", "list.comma"}  # asked for by `listed`
    assert not sorted(SENTENCES.keys() - _literal() - by_pattern - by_text - BY_NAME)


def test_every_slot_has_a_name() -> None:
    assert not [key for key, sentence in SENTENCES.items() if any(not slot.isidentifier() for slot in _slots(sentence))]


def test_every_module_of_english_is_gathered_and_no_key_says_two_things() -> None:
    found: dict[str, set[str]] = {}
    for module in iter_modules(english.__path__):
        of_module = getattr(import_module(f"{english.__name__}.{module.name}"), "SENTENCES", {})
        for key, sentence in of_module.items():
            found.setdefault(key, set()).add(sentence)
    assert found == {key: {sentence} for key, sentence in SENTENCES.items()}


def test_every_language_has_the_same_keys_and_slots() -> None:
    for language in languages():
        sentences = import_module(f"planner.text.{language}").SENTENCES
        assert sentences.keys() == SENTENCES.keys(), language
        assert not [key for key in sentences if _slots(sentences[key]) != _slots(SENTENCES[key])], language


@pytest.mark.parametrize(
    ("items", "words"), [([], ""), (["a"], "a"), (["a", "b"], "a and b"), (["a", "b", "c"], "a, b and c")]
)
def test_a_list_of_things(items: list[str], words: str) -> None:
    with in_language(FIRST_LANGUAGE):
        assert listed(items) == words
