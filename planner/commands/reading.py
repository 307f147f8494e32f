"""What the commands have in common: reading a scenario, showing progress."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any


def read_with_seed(file: Path, seed: int | None) -> Any:
    """Read a scenario, another seed put in place of its own."""
    from planner.scenario.reader import read_scenario

    scenario = read_scenario(file)
    return scenario if seed is None else scenario.model_copy(update={"seed": seed})


@contextmanager
def shown_progress(quiet: bool) -> Iterator[Callable[[int, int, str], None]]:
    """Show a bar with the time left, on a terminal only: called with done, total and what is at work."""
    if quiet or not sys.stderr.isatty():
        yield lambda done, total, name: None
        return
    from rich.console import Console
    from rich.progress import BarColumn, Progress, TextColumn, TimeRemainingColumn

    columns = (TextColumn("{task.description}"), BarColumn(), TextColumn("{task.completed}/{task.total}"))
    with Progress(*columns, TimeRemainingColumn(), console=Console(stderr=True), transient=True) as bar:
        task = bar.add_task("", total=None)
        yield lambda done, total, name: bar.update(task, completed=done, total=total, description=name)
