"""No source is told apart by its name outside its own file."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

from planner.sources.registry import SOURCES


def compares_names(tree: ast.AST) -> bool:
    """Whether any comparison has the name of a source on one of its sides, alone or in a literal."""
    return any(
        isinstance(part, ast.Constant) and part.value in SOURCES
        for node in ast.walk(tree)
        if isinstance(node, ast.Compare)
        for part in ast.walk(node)
    )


@pytest.mark.parametrize("text", ["'grid' in names", "name == 'solar'", "names != ('solar',)"])
def test_a_comparison_is_found(text: str) -> None:
    assert compares_names(ast.parse(text))


def test_sources_are_not_told_apart_by_name() -> None:
    found = {
        path.relative_to("planner").as_posix()
        for path in Path("planner").rglob("*.py")
        if path.parts[1] != "sources" and compares_names(ast.parse(path.read_text(encoding="utf-8")))
    }
    assert not found
