"""What the README shows is what the program prints."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from tests.test_cli import planner

README = Path("README.md").read_text(encoding="utf-8")
VISIT = Path("scenarios/visit.toml").read_text(encoding="utf-8")


def block(name: str) -> str:
    """Text of the fenced block below a mark of the README."""
    found = re.search(rf"<!-- {name} -->\n```\w+\n(.*?)```", README, flags=re.DOTALL)
    assert found, name
    return found[1]


def test_the_visit_shown_is_the_example() -> None:
    assert block("visit") == VISIT
    assert len(VISIT.splitlines()) <= 45


@pytest.mark.parametrize(("file", "answer"), [("visit.toml", "visit answer"), ("visit-priced.toml", "prices answer")])
def test_the_answers_shown_are_printed(file: str, answer: str, tmp_path: Path) -> None:
    (tmp_path / "visit.toml").write_text(VISIT, encoding="utf-8")
    (tmp_path / "visit-priced.toml").write_text(block("prices"), encoding="utf-8")
    code, out, err = planner("run", tmp_path / file, "--outputs", tmp_path / "out")
    assert code == 0, err
    assert " ".join(block(answer).split()) in " ".join(out.split())
