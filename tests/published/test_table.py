"""The table of what is held against the outside world: it counts what the marks say, with what is recalled apart."""

from __future__ import annotations

import re
import subprocess
import sys
from pathlib import Path

import pytest

from tests.published.__main__ import outcome, table
from tests.published.marks import DOMAINS, Collected, Engine, Published, collect

FEW = Collected(
    published=[
        ("a", Published("surge", "a book", 3, "seen")),
        ("b", Published("surge", "a book", 2, "at second hand", "1 %")),
        ("b", Published("surge", "another", 40, "from memory")),
        ("c", Published("wells", "a paper", 5, "at second hand")),
    ],
    engines=[("d", Engine("EPANET", "losses", 6)), ("e", Engine("EPANET", "losses", 7)), ("f", Engine("pvlib", "sun"))],
    outcomes={"a": "passed", "b": "failed", "c": "passed", "d": "skipped"},
)


def cells(line: str) -> list[str]:
    return re.split(r"\s{2,}", line.strip())


def test_values_are_counted_and_those_from_memory_are_in_no_total() -> None:
    lines = list(table(FEW))
    rows = {cells(line)[0]: cells(line)[1:] for line in lines if len(cells(line)) > 2}
    # values, seen, second hand, to the digit, sources, from memory
    assert rows["surge"] == ["5", "3", "2", "3", "1", "40"]
    assert rows["wells"] == ["5", "0", "5", "5", "1", "0"]
    assert rows["in all"] == ["10", "3", "7", "8", "2", "40"]
    assert rows["EPANET"] == ["2", "13", "losses"]
    assert rows["pvlib"] == ["1", "all", "sun"]
    assert "    40  another; from memory" in lines
    assert "     2  a book; at second hand; within 1 %" in lines


def test_what_failed_or_did_not_run_is_named() -> None:
    said = outcome(FEW)
    assert "2 cases passed, 1 failed, 1 were skipped." in said
    assert "failed: b" in said
    assert "skipped: d" in said


@pytest.mark.parametrize(
    "mark",
    [
        ("colours", "a book", 1, "seen"),
        ("surge", "", 1, "seen"),
        ("surge", "a book", 0, "seen"),
        ("surge", "a", 1, "sure"),
    ],
)
def test_a_mark_says_what_where_how_many_and_how_far(mark: tuple[str, str, int, str]) -> None:
    with pytest.raises(ValueError, match="not a mark"):
        Published(*mark)


def test_a_program_that_is_not_one_of_those_is_refused() -> None:
    with pytest.raises(ValueError, match="not a mark"):
        Engine("abacus", "sums")


MARKED = """
import pytest
by_a_book = pytest.mark.published("surge", "a book", values=2, confirmed="seen")
@by_a_book
@pytest.mark.parametrize("value", [1, 2])
def test_each(value): assert value == 1
@pytest.mark.slow
@pytest.mark.engine("EPANET", "losses", values=6)
def test_losses(): pass
def test_without_a_mark(): assert False
"""


@pytest.mark.parametrize("run", [False, True])
def test_marked_tests_are_found_case_by_case_and_run_if_wanted(tmp_path: Path, run: bool) -> None:
    (tmp_path / f"test_few_{run}.py").write_text(MARKED)  # a module is imported once
    found = collect(run=run, tests=tmp_path)
    assert [mark.values for mark in found.of("surge")] == [2, 2]
    assert [(mark.name, mark.values) for _, mark in found.engines] == [("EPANET", 6)]
    assert list(found.outcomes.values()) == (["passed", "failed", "passed"] if run else [])
    assert found.exit_code == int(run)


@pytest.mark.slow
def test_the_command_prints_what_the_marks_of_all_tests_add_up_to() -> None:
    done = subprocess.run([sys.executable, "-m", "tests.published"], capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
    head, *parts = done.stdout.split("\n\n")
    rows = {cells(line)[0]: [int(cell) for cell in cells(line)[1:]] for line in head.split("\n")[2:]}
    assert list(rows) == [*DOMAINS, "in all"]
    for number, column in enumerate(zip(*(rows[domain] for domain in DOMAINS), strict=True)):
        if number != 4:  # one source may serve two domains
            assert rows["in all"][number] == sum(column)
    listed = {part.split("\n")[0]: part.split("\n")[1:] for part in parts}
    for domain in DOMAINS:
        counted = [(int(line[:6]), "; from memory" in line) for line in listed[domain] if line]
        assert rows[domain][0] == sum(value for value, recalled in counted if not recalled)
        assert rows[domain][5] == sum(value for value, recalled in counted if recalled)
    total, seen, second_hand, exact, _, _ = rows["in all"]
    assert total == seen + second_hand
    assert exact >= 150
    assert sum(row[0] > 0 for row in rows.values()) - 1 >= 12
    for name in ("EPANET", "pvlib", "LibreOffice"):
        assert any(line.startswith(name) for line in done.stdout.split("\n"))
