"""The benchmarks still run, here at small sizes; what they measure is nobody's test."""

from __future__ import annotations

import subprocess
import sys

import pytest

from tests.benchmarks import commands, hours, sweeps
from tests.benchmarks.measure import Row, cpu_in_turn, spent_by


def test_an_unknown_part_is_refused_by_name_once_all_are_loaded() -> None:
    command = [sys.executable, "-m", "tests.benchmarks", "speed"]
    done = subprocess.run(command, capture_output=True, text=True, check=False)
    assert done.returncode == 1
    assert done.stderr.strip() == "no such part: speed (there are commands, hours, sweeps)"


def test_a_child_tells_its_own_time_and_memory() -> None:
    small, large = spent_by("import", "json", times=1), spent_by("import", "numpy", times=1)
    assert small.cpu_s > 0
    assert 1 < small.megabytes < large.megabytes


def test_work_is_timed_in_turn() -> None:
    calls: list[str] = []
    taken = cpu_in_turn(2, lambda: calls.append("a"), lambda: calls.append("b"))
    assert calls == ["a", "b", "a", "b"]
    assert [len(times) for times in taken] == [2, 2]


def assert_filled(rows: list[Row]) -> None:
    assert all(row.name and row.figure for row in rows)
    assert not any("nan" in row.figure + row.ratio or "inf" in row.figure + row.ratio for row in rows)


def test_the_hour_loop_is_measured(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(hours, "WIDTHS", ((5, 2, 20, "at most 6"),))
    rows = list(hours.rows())
    assert [row.name for row in rows][:2] == ["hour loop, seven options, 70 columns", "  per column"]
    assert_filled(rows)


@pytest.mark.slow
def test_commands_are_measured(monkeypatch: pytest.MonkeyPatch) -> None:
    few = {
        "service.options": ["solar"],
        "service.reference": "solar",
        "finance.analysis_period_years": 1,
        "size.strings": [1, 2],
        "size.tanks_m3": [20.0],
        "size.levels_percent": [[20.0, 40.0]],
    }
    monkeypatch.setattr(commands, "RUNS", (("run", few, "at most 4"),))
    monkeypatch.setattr(commands, "SEARCHES", (("size", few),))
    rows = list(commands.rows())
    assert len(rows) == 10
    assert_filled(rows)


@pytest.mark.slow
def test_sweeps_are_measured(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sweeps, "DRAWS", {"design": 10, "price": 500, "rate": 20})
    monkeypatch.setattr(sweeps, "DESIGNS", 4)
    monkeypatch.setattr(sweeps, "BARE_PASSES", 1)
    rows = list(sweeps.rows())
    assert len(rows) == 8
    assert_filled(rows)
