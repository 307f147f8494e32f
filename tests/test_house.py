"""The house rules that a machine can check: one-way imports, module length, README and CI in step."""

from __future__ import annotations

import ast
import re
from pathlib import Path

import pytest

ORDER = ["text", "scenario", "resource", "water", "supply", "money", "study", "checks", "figures", "report", "commands"]
MODULES = sorted(Path("planner").rglob("*.py"))


def folder_of(module: str) -> str | None:
    """Folder of a dotted module name such as planner.water.pump, or None for the top level."""
    parts = module.split(".")
    return parts[1] if len(parts) > 2 or (len(parts) == 2 and parts[1] in ORDER) else None


@pytest.mark.parametrize("file", MODULES, ids=str)
def test_imports_run_one_way(file: Path) -> None:
    if len(file.parts) < 3:
        return  # the command line may import everything
    here = ORDER.index(file.parts[1])
    for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
        names = []
        if isinstance(node, ast.Import):
            names = [alias.name for alias in node.names]
        elif isinstance(node, ast.ImportFrom) and node.module:
            names = [node.module]
        for name in names:
            if name.startswith("planner."):
                folder = folder_of(name)
                assert folder is not None, f"{file} imports {name}"
                assert ORDER.index(folder) <= here, f"{file} imports {name}, which stands after it"


@pytest.mark.parametrize("file", MODULES, ids=str)
def test_modules_stay_readable(file: Path) -> None:
    assert len(file.read_text(encoding="utf-8").splitlines()) <= 420, "split it by topic"


def test_readme_has_the_two_commands_and_ci_runs_the_second() -> None:
    readme = Path("README.md").read_text(encoding="utf-8")
    commands = re.findall(r"^python3 -m venv .*$", readme, flags=re.MULTILINE)
    assert len(commands) == 2
    example = re.search(r"planner run (\S+\.toml)$", commands[0])
    assert example is not None
    assert Path(example.group(1)).exists()
    ci = Path(".ci/run").read_text(encoding="utf-8")
    wanted = commands[1].replace("pip install -e", "pip install --quiet -e")
    assert wanted in ci


def test_the_job_opens_the_readme() -> None:
    first = Path("README.md").read_text(encoding="utf-8").split("\n## ")[0]
    for word in ("borehole", "total dynamic head", "panels", "tank", "top-up", "grid", "generator", "cost"):
        assert word in first, word
