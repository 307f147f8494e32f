"""Mutated input: the examples with keys that are wrong, missing, misspelt, exchanged, or of another kind."""

from __future__ import annotations

import datetime
import math
import random
import tomllib
from collections.abc import Callable
from copy import deepcopy
from functools import cache
from pathlib import Path
from typing import Any

from planner.scenario.paths import set_path
from planner.scenario.scenario import Scenario
from planner.scenario.walk import field_at, leaves

EXAMPLES = sorted(Path("scenarios").glob("*.toml"))
FOLDER = Path("scenarios").resolve()
LONG = "9" * 5000
NASTY: tuple[Any, ...] = (
    "", " ", "0", "nan", "auto", "1,5", "12 m", "=1+1", "@x", "\x1b[31mred\x1b[0m", "Well [/b] 3", "بئر القرية",
    "\u202eabc", LONG, -1, 0, 1, 7, -0.5, 1e-300, 1e300, -1e9, 2**63, math.nan, math.inf, -math.inf, True, False, [],
    {}, [[]], [1], [1, 2], ["a"], [{}], {"kind": "x"}, {"a": {"b": {"c": 1}}}, [0] * 12, [1e9] * 24,
    datetime.date(2026, 2, 28), datetime.time(3, 0),
)  # fmt: skip
"""Values of the wrong kind, at and beyond every edge, and texts that steer a terminal, a sheet or markup."""


@cache
def example(file: Path) -> dict[str, Any]:
    """Raw data of an example."""
    return tomllib.loads(file.read_text(encoding="utf-8"))


def mutated(seed: int) -> dict[str, Any]:
    """Return raw data of an example with one to four things changed; the same seed gives the same."""
    draw = random.Random(seed)
    data = deepcopy(example(draw.choice(EXAMPLES)))
    for _ in range(draw.choice((1, 1, 1, 2, 3, 4))):
        paths = [path for path, _ in leaves(data)]
        if not paths:
            break
        data = draw.choice(CHANGES)(draw, data, paths)
    return data


Paths = list[tuple[str | int, ...]]


def _wrong(draw: random.Random, data: Any, paths: Paths) -> Any:
    return set_path(data, draw.choice(paths), deepcopy(draw.choice(NASTY)))


def _scaled(draw: random.Random, data: Any, paths: Paths) -> Any:
    numbers = [path for path in paths if isinstance(at(data, path), int | float)]
    if not numbers:
        return data
    path = draw.choice(numbers)
    return set_path(data, path, at(data, path) * draw.choice((-1, 0, 1e-9, 1e-3, 0.1, 10, 1e3, 1e9)))


def _table(draw: random.Random, data: Any, paths: Paths) -> Any:
    path = draw.choice(paths)
    above = path[: draw.randint(1, len(path))]
    return set_path(data, above, deepcopy(draw.choice(NASTY)))


def _left_out(draw: random.Random, data: Any, paths: Paths) -> Any:
    path = draw.choice(paths)
    above, last = at(data, path[:-1]), path[-1]
    if isinstance(above, dict):
        above.pop(last, None)
    return data


def _misspelt(draw: random.Random, data: Any, paths: Paths) -> Any:
    path = draw.choice(paths)
    above, last = at(data, path[:-1]), path[-1]
    if isinstance(above, dict) and isinstance(last, str):
        letters = list(last)
        letters.insert(draw.randrange(len(letters) + 1), draw.choice("abx_. '\n[]"))
        above["".join(letters)] = above.pop(last)
    return data


def _exchanged(draw: random.Random, data: Any, paths: Paths) -> Any:
    one, other = draw.choice(paths), draw.choice(paths)
    first, second = deepcopy(at(data, one)), deepcopy(at(data, other))
    return set_path(set_path(data, one, second), other, first)


def _repeated(draw: random.Random, data: Any, paths: Paths) -> Any:
    lists = [path for path in paths if isinstance(at(data, path), list) and at(data, path)]
    if not lists:
        return data
    path = draw.choice(lists)
    given = at(data, path)
    return set_path(data, path, draw.choice((given + given, given[:-1], given * 100, list(reversed(given)))))


CHANGES: tuple[Callable[[random.Random, Any, Paths], Any], ...] = (
    _wrong, _wrong, _wrong, _scaled, _scaled, _table, _left_out, _misspelt, _exchanged, _repeated,
)  # fmt: skip


def at(data: Any, path: tuple[str | int, ...]) -> Any:
    """Value at a path of raw data."""
    for part in path:
        data = data[part]
    return data


def extreme(seed: int) -> dict[str, Any]:
    """Return raw data of an example, over two years, in which some numbers stand at an end of what is allowed."""
    draw = random.Random(seed)
    data = deepcopy(example(draw.choice(EXAMPLES)))
    data.setdefault("finance", {})["analysis_period_years"] = 2
    numbers = [path for path, value in leaves(data) if isinstance(value, int | float) and not isinstance(value, bool)]
    for path in draw.sample(numbers, draw.randint(1, 5)):
        field = field_at(Scenario, path)
        limits = None if field is None else field.takes.number
        if limits is None or path[-1] in ("analysis_period_years", "seed"):
            continue
        low = limits.ge if limits.ge is not None else 1e-6 if limits.gt is not None else -1e4
        high = limits.le if limits.le is not None else 1e6
        value = draw.choice(
            (low, high, low + (high - low) * draw.random() ** 3, at(data, path) * draw.choice((0.1, 10)))
        )
        data = set_path(data, path, round(value) if field is not None and field.takes.whole else float(value))
    return data
