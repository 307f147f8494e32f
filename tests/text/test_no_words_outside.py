"""A string for people stands in `planner/text`, where a language can give it, and nowhere else."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

FOLDERS = ("answers", "study", "checks", "answers", "report", "commands", "money", "supply", "water", "resource")
"""Where the walk goes. Not to `scenario`: the models' descriptions stand beside the keys that they describe."""

FRAMEWORK = {"typer.Option", "typer.Argument", "typer.Typer"}
"""Help of the command line, which the framework wants where the option is declared."""
PATTERNS = {"re.compile", "re.search", "re.match", "re.fullmatch", "re.findall", "re.sub"}
LOOKUPS = {"get", "startswith", "endswith"}
"""Methods whose first string is looked for in what somebody else wrote."""
REFUSAL = re.compile(r"(Error|Exit|Problem|super\(\).__init__)$")
"""What is raised. Refusals of wrong input stay where the input is read: each names its own line, key and value."""

REFUSALS_APART = {
    "planner/study/sweep/variants.py": 3,  # why a variant of a sweep is refused
    "planner/water/working_range.py": 1,  # the month in a refusal
    "planner/resource/record.py": 1,  # what a value in the header is
    "planner/resource/zones.py": 6,  # advice at the end of a refusal
}
"""Refusals that are written in a function of their own, as the walk cannot see: not to be moved."""

STYLE_SHEETS = {"planner/report/brief/style.py": 2}
"""Long strings that nobody reads: the style sheet of the HTML page."""

LEAST_WORDS = 3
TAG = re.compile(r"<[^<>]*>")
WORD = re.compile(r"[^\W\d_]{2,}")
END = re.compile(r"\w[)'\"]*[.!?]$")


def is_for_people(string: str) -> bool:
    """Whether a string holds three words or ends like a sentence; what has no space in it is a key or a path.

    Tags of HTML do not count.
    """
    read = TAG.sub("", string)
    words = [part for part in read.split() if WORD.search(part)]
    return len(words) >= LEAST_WORDS or (len(words) > 1 and END.search(read) is not None)


def words_in(tree: ast.AST) -> Iterator[tuple[int, str]]:
    """Line and text of each string for people, the values of an f-string as '{}'."""

    def visit(node: ast.AST, refused: set[str]) -> Iterator[tuple[int, str]]:
        if is_docstring(node) or is_refusal(node) or is_exempt_call(node) or targets_of(node) & refused:
            return
        if isinstance(node, ast.FunctionDef):
            refused = names_of_refusals(node)
        string = string_of(node)
        if string is not None and is_for_people(string):
            yield node.lineno, string
        for child in children_of(node):
            yield from visit(child, refused)

    yield from visit(tree, set())


def is_refusal(node: ast.AST) -> bool:
    """Whether this raises, or makes what is raised."""
    call = isinstance(node, ast.Call) and REFUSAL.search(ast.unparse(node.func)) is not None
    return call or isinstance(node, ast.Raise)


def names_of_refusals(function: ast.AST) -> set[str]:
    """Names of which a function makes its refusals: a string that is given to one of them is part of a refusal."""
    return {
        name.id
        for node in ast.walk(function)
        if is_refusal(node)
        for name in ast.walk(node)
        if isinstance(name, ast.Name)
    }


def targets_of(node: ast.AST) -> set[str]:
    """Names that a statement gives a value to."""
    targets = node.targets if isinstance(node, ast.Assign) else [getattr(node, "target", None)]
    return {target.id for target in targets if isinstance(target, ast.Name)}


def is_docstring(node: ast.AST) -> bool:
    """Whether this is a string that nobody takes: a docstring, of a module, class, function or attribute."""
    return isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant)


def is_exempt_call(node: ast.AST) -> bool:
    """Whether this call makes an option of the command line, a pattern, or looks for something."""
    if not isinstance(node, ast.Call):
        return False
    lookup = isinstance(node.func, ast.Attribute) and node.func.attr in LOOKUPS
    return lookup or ast.unparse(node.func) in FRAMEWORK | PATTERNS


def string_of(node: ast.AST) -> str | None:
    """Text of a string constant or an f-string; None for anything else."""
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        return node.value
    if isinstance(node, ast.JoinedStr):
        return "".join(str(part.value) if isinstance(part, ast.Constant) else "{}" for part in node.values)
    return None


def children_of(node: ast.AST) -> Iterator[ast.AST]:
    """Parts of a node in which a string can be for people: not keys, what is compared, or types."""
    for field, value in ast.iter_fields(node):
        key = isinstance(node, ast.Dict) and field == "keys"
        place = isinstance(node, ast.Subscript) and field == "slice"
        if key or place or field in ("annotation", "returns") or isinstance(node, ast.Compare):
            continue
        for child in value if isinstance(value, list) else [value]:
            part = isinstance(node, ast.JoinedStr) and isinstance(child, ast.Constant)
            if isinstance(child, ast.AST) and not part:
                yield child


def found_in(file: Path) -> list[tuple[int, str]]:
    """Strings for people in a file."""
    return list(words_in(ast.parse(file.read_text(encoding="utf-8"))))


def files() -> list[Path]:
    """Files of the folders that the walk goes through."""
    return [file for folder in FOLDERS for file in sorted(Path("planner", folder).rglob("*.py"))]


def test_no_string_for_people_stands_outside() -> None:
    allowed = REFUSALS_APART | STYLE_SHEETS
    found = {file.as_posix(): found_in(file) for file in files()}
    new = {
        name: [f"line {line}: {string}" for line, string in strings]
        for name, strings in found.items()
        if len(strings) > allowed.get(name, 0)
    }
    assert new == {}, "move these sentences to planner/text, and give them by `text(key, slot=...)`"
    fewer = {name: len(found.get(name, [])) for name, count in allowed.items() if len(found.get(name, [])) < count}
    assert fewer == {}, "these have fewer now: write the number into the list, or take the file out at 0"


SAMPLE = """
'''A docstring with a good many words.'''
LIMIT = 3
'''What stands below a constant with words.'''
FOUND = "Three words here"
ALSO = f"{LIMIT} strings in {LIMIT} pieces."
ENDS = "Two words."
SHORT = "Two words"
MARK_UP = "<p class='of many words'>Two words</p>"
READ = "<b>Three</b> words here"
KEY = "answer.next_best_close"
NAMED = {"a key of words": 1}["a key of words"]
PATTERN = re.compile("three words here")
Quiet = typer.Option("--quiet", help="Print nothing but errors.")

def read(mode: "Literal['one of these words']") -> "a type of words":
    if mode == "one at a time":
        return text("answer.none_meets", option="the one given here")
    advice = "write three words here"
    raise ValueError(f"that is not the way: {advice}")
"""


def test_the_walk_finds_what_people_read_and_nothing_else() -> None:
    strings = [string for _, string in words_in(ast.parse(SAMPLE))]
    assert strings == ["Three words here", "{} strings in {} pieces.", "Two words.", "<b>Three</b> words here",
                       "the one given here"]  # fmt: skip
