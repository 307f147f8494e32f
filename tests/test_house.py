"""The house rules that a machine can check: one-way imports, module length, README and CI in step."""

from __future__ import annotations

import ast
import functools
import re
import subprocess
from pathlib import Path

import pytest

ORDER = [
    "version", "text", "scenario", "resource", "water", "supply", "assumptions", "money", "sources", "figures",
    "checks", "study", "answers", "report", "api", "commands",
]  # fmt: skip
FILES = sorted(Path("planner").rglob("*.py"))
MOST_LINES = 400
KNOWN_LONG: set[str] = set()
KNOWN_CIRCLES: set[frozenset[str]] = set()
"""What is over the limit or runs in a circle for now. What is mended must go: the tests want these exactly."""


def module_of(file: Path) -> str:
    """Dotted name of a file, a package by its folder."""
    parts = file.with_suffix("").parts
    return ".".join(parts[:-1] if parts[-1] == "__init__" else parts)


MODULES = {module_of(file): file for file in FILES}


def for_types_only(node: ast.AST) -> bool:
    """Whether this is `if TYPE_CHECKING:`."""
    return isinstance(node, ast.If) and ast.unparse(node.test) in ("TYPE_CHECKING", "typing.TYPE_CHECKING")


def imports_of(name: str, tree: ast.Module, *, types: bool) -> set[str]:
    """Modules of planner that a module imports anywhere in its file; with `types` those under TYPE_CHECKING alone."""
    package = name if MODULES[name].name == "__init__.py" else name.rpartition(".")[0]
    found: set[str] = set()

    def visit(node: ast.AST, typed: bool) -> None:
        if typed == types and isinstance(node, ast.Import):
            found.update(alias.name for alias in node.names)
        elif typed == types and isinstance(node, ast.ImportFrom):
            base = node.module or ""
            if node.level:
                above = package.split(".")[: len(package.split(".")) - node.level + 1]
                base = ".".join([*above, base] if base else above)
            for alias in node.names:
                inner = f"{base}.{alias.name}"
                found.add(inner if inner in MODULES else base)
        for field, value in ast.iter_fields(node):
            for child in value if isinstance(value, list) else [value]:
                if isinstance(child, ast.AST):
                    visit(child, typed or (field == "body" and for_types_only(node)))

    visit(tree, False)
    return {module for module in found if module == "planner" or module.startswith("planner.")}


@functools.cache
def graph(*, types: bool = False) -> dict[str, set[str]]:
    """Every module's imports."""
    return {
        name: imports_of(name, ast.parse(file.read_text(encoding="utf-8")), types=types)
        for name, file in MODULES.items()
    }


def circles(imports: dict[str, set[str]]) -> set[frozenset[str]]:
    """Groups of modules each of which leads back to itself through the others."""
    reached: dict[str, set[str]] = {}
    for start in imports:
        seen: set[str] = set()
        ahead = list(imports[start])
        while ahead:
            module = ahead.pop()
            if module not in seen:
                seen.add(module)
                ahead += imports.get(module, ())
        reached[start] = seen
    return {
        frozenset(other for other in imports if other in reached[name] and name in reached[other])
        for name in imports
        if name in reached[name]
    }


def test_circles_are_found() -> None:
    line = {"a": {"b"}, "b": {"c"}, "c": set()}
    assert circles(line) == set()
    assert circles(line | {"c": {"a"}, "d": {"a"}, "e": {"e"}}) == {frozenset("abc"), frozenset("e")}


def assert_no_new_circles(imports: dict[str, set[str]]) -> None:
    found = circles(imports)
    assert not found - KNOWN_CIRCLES, [" <-> ".join(sorted(circle)) for circle in found - KNOWN_CIRCLES]
    assert not KNOWN_CIRCLES - found, "these circles are gone: take them out of the list of known ones"


def test_no_file_imports_itself_by_way_of_others() -> None:
    assert_no_new_circles(graph())


def test_types_close_no_circle_either() -> None:
    run, types = graph(), graph(types=True)
    assert_no_new_circles({name: run[name] | types[name] for name in run})


@pytest.mark.parametrize("types", [False, True], ids=["at run time", "for types"])
def test_folders_import_one_way(types: bool) -> None:
    wrong = []
    for name, imports in graph(types=types).items():
        parts = name.split(".")
        if len(parts) < 2 or parts[1] not in ORDER:
            continue  # the command line may import everything
        for other in imports - {"planner"}:
            folder = other.split(".")[1]
            assert other in MODULES, f"{name} imports {other}, which does not exist"
            if folder not in ORDER or ORDER.index(folder) > ORDER.index(parts[1]):
                wrong.append(f"{name} imports {other}, which stands after it")
    assert wrong == []


def test_modules_stay_readable() -> None:
    lines = {str(file): len(file.read_text(encoding="utf-8").splitlines()) for file in FILES}
    long = {file: count for file, count in lines.items() if count > MOST_LINES}
    assert long.keys() == KNOWN_LONG, f"split by topic what has over {MOST_LINES} lines: {long}"


def test_nothing_else_stands_at_the_top() -> None:
    listed = subprocess.run(["git", "ls-files"], capture_output=True, text=True, check=False)
    if listed.returncode:
        pytest.skip("this is no git checkout")
    top = {path.partition("/")[0] for path in listed.stdout.splitlines() if Path(path).exists()}
    folders = {"planner", "tests", "scenarios", "outputs"}
    assert {name for name in top if name[0] != "."} == folders | {
        "README.md",
        "DEVELOPERS.md",
        "LICENSE",
        "pyproject.toml",
    }


def test_the_pictures_of_the_readme_are_there() -> None:
    pictures = re.findall(r"!\[.*?\]\((.*?)\)", Path("README.md").read_text(encoding="utf-8"))
    assert pictures
    assert all(Path(picture).is_file() for picture in pictures)


def test_readme_has_the_two_commands_and_ci_runs_the_second() -> None:
    commands = re.findall(r"^python3 -m venv .*$", Path("README.md").read_text(encoding="utf-8"), flags=re.MULTILINE)
    assert len(commands) == 2
    example = re.search(r"planner run (\S+\.toml)$", commands[0])
    assert example is not None
    assert Path(example.group(1)).exists()
    assert commands[1].endswith('.venv/bin/pytest -m ""'), "it runs the slow tests, too"
    steps = [re.sub(r"\.venv", '"$venv"', step).strip() for step in commands[1].split("&&")]
    ci = Path(".ci/run").read_text(encoding="utf-8").replace(" --quiet", "").splitlines()
    assert [line for line in ci if line in steps] == steps


def test_the_job_opens_the_readme() -> None:
    first = Path("README.md").read_text(encoding="utf-8").split("\n## ")[0]
    for word in ("borehole", "total dynamic head", "panels", "tank", "top-up", "grid", "generator", "cost"):
        assert word in first, word
