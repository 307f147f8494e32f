"""The benchmarks still start, and measure; what they measure is nobody's test."""

from __future__ import annotations

import subprocess
import sys

from tests.benchmarks.measure import cpu_in_turn, spent_by


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
