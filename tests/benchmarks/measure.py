"""What every benchmark needs: a row of the table, CPU time in this process, CPU time and memory of another."""

from __future__ import annotations

import json
import os
import resource
import subprocess
import sys
import tomllib
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from time import process_time
from typing import Any, NamedTuple

import numpy as np

from planner.scenario.writer import toml_text

EXAMPLES = Path("scenarios")
HILL = EXAMPLES / "hill-school.toml"


@dataclass(frozen=True)
class Row:
    """One line of the table; the ratio is to something measured in the same run, the aim is never asserted."""

    name: str
    figure: str
    ratio: str = ""
    aim: str = ""


class Spent(NamedTuple):
    """CPU time [s] and peak memory [MB] of a process."""

    cpu_s: float
    megabytes: float


def hill(changes: dict[str, Any]) -> dict[str, Any]:
    """Raw data of the hill school with changes by dotted key."""
    raw = tomllib.loads(HILL.read_text(encoding="utf-8"))
    for key, value in changes.items():
        *path, last = key.split(".")
        table = raw
        for part in path:
            table = table.setdefault(part, {})
        table[last] = value
    return raw


def hill_file(path: Path, changes: dict[str, Any]) -> Path:
    """Write the hill school with changes by dotted key as a scenario file."""
    path.write_text(toml_text(hill(changes)), encoding="utf-8")
    return path


def cpu_s(work: Callable[[], object], times: int = 3) -> float:
    """Shortest CPU time of several [s]."""
    return min(cpu_in_turn(times, work)[0])


def cpu_in_turn(times: int, *works: Callable[[], object]) -> list[list[float]]:
    """CPU times of several pieces of work [s], taken in turn so that a busy moment spoils no ratio."""
    taken: list[list[float]] = [[] for _ in works]
    for _ in range(times):
        for work, own in zip(works, taken, strict=True):
            begin = process_time()
            work()
            own.append(process_time() - begin)
    return taken


def spent_by(*arguments: str, times: int = 2) -> Spent:
    """Least CPU time and memory of a fresh interpreter that runs `tests.benchmarks.child` with these arguments.

    An installed program is compiled once, so it may keep its bytecode here too. The time is that of the whole process,
    its start and its end included, as a shell's `time` counts it.
    """
    command = [sys.executable, "-m", "tests.benchmarks.child", *arguments]
    surroundings = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    found = []
    for _ in range(times):
        begin = _of_children()
        done = subprocess.run(command, check=True, capture_output=True, text=True, env=surroundings)
        found.append((_of_children() - begin, json.loads(done.stdout.splitlines()[-1])))
    return Spent(*np.min(found, axis=0).tolist())


def _of_children() -> float:
    """CPU time of all processes that this one has started and that have ended [s]."""
    spent = resource.getrusage(resource.RUSAGE_CHILDREN)
    return spent.ru_utime + spent.ru_stime


def bare_recurrence(inflow: np.ndarray, outflow: np.ndarray, volume: np.ndarray) -> None:
    """Step a tank through the hours with nothing but one clip: what no hour loop over arrays can go below."""
    level = volume / 2
    for hour in range(inflow.shape[0]):
        level = np.clip(level + inflow[hour] - outflow[hour], 0.0, volume)


def million_steps(steps: int, seconds: float) -> str:
    """Hour-steps per CPU second in words."""
    return f"{steps / seconds / 1e6:.0f} million hour-steps per CPU s"
