"""Fewer of what `python -m tests.robust` tries: no traceback, no nonsense, no message that is too long or steers."""

from __future__ import annotations

from collections import Counter

import pytest

from tests.robust.__main__ import KINDS
from tests.robust.mutations import extreme, mutated

FEW = {"scenarios": 200, "forms": 4, "weather": 60, "runs": 1}
MORE = {"scenarios": 3000, "forms": 60, "weather": 600, "runs": 12}


def wrong(kind: str, seeds: range) -> list[str]:
    trial = KINDS[kind][0]
    found = {seed: trial(seed) for seed in seeds}
    counts = Counter(each.what for each in found.values())
    assert set(counts) <= {"taken", "refused"} or "traceback" in counts
    return [f"{kind} {seed}: {each.what}: {each.wrong}" for seed, each in found.items() if each.wrong]


@pytest.mark.parametrize("kind", KINDS)
def test_a_few(kind: str) -> None:
    assert wrong(kind, range(FEW[kind])) == []


@pytest.mark.slow
@pytest.mark.parametrize("kind", KINDS)
def test_more(kind: str) -> None:
    assert wrong(kind, range(FEW[kind], FEW[kind] + MORE[kind])) == []


def test_the_same_seed_gives_the_same() -> None:
    assert [repr(mutated(seed)) for seed in range(30)] == [repr(mutated(seed)) for seed in range(30)]
    assert [repr(extreme(seed)) for seed in range(10)] == [repr(extreme(seed)) for seed in range(10)]
    assert len({repr(mutated(seed)) for seed in range(30)}) > 25
