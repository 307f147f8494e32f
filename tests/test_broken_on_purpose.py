"""The script that breaks the program on purpose, on a tiny project: what a test covers is noticed, the rest listed."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.broken_on_purpose import breaks_of, survivors

TINY = """def doubled(value: float) -> float:
    return 2 * value


def larger(first: float, second: float) -> float:
    return max(first, second)
"""
TESTED = "from planner.tiny.sums import doubled\n\n\ndef test_doubled():\n    assert doubled(3) == {result}\n"


def _house(folder: Path, result: int) -> Path:
    for name in ("planner/tiny", "tests/tiny"):
        (folder / name).mkdir(parents=True)
    for name in ("planner", "planner/tiny"):  # a package, so that no installed one is taken in its place
        (folder / name / "__init__.py").touch()
    (folder / "pyproject.toml").write_text("[tool.pytest.ini_options]\npythonpath = ['.']\n")
    (folder / "planner/tiny/sums.py").write_text(TINY)
    (folder / "tests/tiny/test_sums.py").write_text(TESTED.format(result=result))
    return folder


def test_what_no_test_covers_is_listed_and_no_file_is_touched(tmp_path: Path) -> None:
    left = survivors(_house(tmp_path, 6), ["planner/tiny"], 10, 1, [])
    assert [(one.line, one.was, one.becomes) for one in left] == [(6, "max(first, second)", "min(first, second)")]
    assert (tmp_path / "planner/tiny/sums.py").read_text() == TINY


def test_tests_that_fail_anyhow_judge_nothing(tmp_path: Path) -> None:
    with pytest.raises(SystemExit, match="before anything is broken"):
        survivors(_house(tmp_path, 7), ["planner/tiny"], 10, 1, [])


@pytest.mark.parametrize(
    ("was", "becomes"),
    [
        ("a < b", "a >= b"), ("a + b", "a - b"), ("a * b", "a / b"), ("a and b", "a or b"), ("-a", "a"), ("not a", "a"),
        ("np.minimum(a, b)", "np.maximum(a, b)"), ("a[0]", "a[1]"), ("f(3)", "f(6)"), ("f(True)", "f(False)"),
        ("ä + b", "ä - b"),
    ],
)  # fmt: skip
def test_one_place_of_each_kind_is_broken(was: str, becomes: str) -> None:
    (one,) = breaks_of(f"x = {was}\n", Path("m.py"))
    code = f"x = {was}\n".encode()
    broken = (code[: one.begin] + one.becomes.encode() + code[one.end :]).decode()
    assert broken == f"x = {becomes}\n"


def test_annotations_and_text_are_left_alone() -> None:
    assert not breaks_of(
        'def f(a: "int" = None) -> Literal[3]:\n    """Two."""\n    return "a" + f"{a + 1}"\n', Path("m.py")
    )
