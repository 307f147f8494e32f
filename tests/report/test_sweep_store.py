"""Chunks of a sweep on disk: what is read is what was written, and nothing of others is used or removed."""

from __future__ import annotations

from pathlib import Path
from types import SimpleNamespace
from typing import Any

import numpy as np
import pytest

from planner.report import sweep_store
from planner.report.sweep_store import ChunkFolder, run_key
from planner.study.sweep.engine import Found
from planner.study.sweep.reasons import Reason
from planner.study.sweep.workers import Done
from tests.study.scenarios import EXAMPLES, changed

PLAN: Any = SimpleNamespace(mode="one_at_a_time")
WRONG = Reason("wrong_input", {"problems": "pump.max_head_m: too low"})


def done(first: int, *sizes: int) -> Done:
    """Units of so many variants, of one option and two measures, numbered through; the last variant went wrong."""
    begins = np.cumsum([0, *sizes[:-1]])
    parts = [
        np.arange(2.0 * begin, 2.0 * (begin + size)).reshape(size, 1, 2)
        for begin, size in zip(begins, sizes, strict=True)
    ]
    wrong: list[dict[int, Reason]] = [{} for _ in sizes]
    wrong[-1] = {sizes[-1] - 1: WRONG}
    return Done(first, tuple(Found(*each) for each in zip(parts, wrong, strict=True)), 1.0)


def test_chunks_are_read_as_they_were_written(tmp_path: Path) -> None:
    store = ChunkFolder(tmp_path, changed(), EXAMPLES)
    for chunk in (done(0, 2, 1), done(2, 1, 3, 2)):
        store.save(PLAN, chunk)
    assert [(each.first, [len(found.numbers) for found in each.found]) for each in store.load(PLAN)] == [
        (0, [2, 1]),
        (2, [1, 3, 2]),
    ]
    last = store.load(PLAN)[1]
    assert last.found[1].numbers.ravel().tolist() == [2.0, 3.0, 4.0, 5.0, 6.0, 7.0]
    assert [found.problems for found in last.found] == [{}, {}, {1: WRONG}]
    assert store.load(SimpleNamespace(mode="random")) == []  # type: ignore[arg-type]


def test_chunks_of_another_version_are_never_used(monkeypatch: pytest.MonkeyPatch) -> None:
    before = run_key(changed(), EXAMPLES)
    monkeypatch.setattr(sweep_store, "__version__", "another")
    assert run_key(changed(), EXAMPLES) != before


def test_what_is_not_ours_stays_where_it_is(tmp_path: Path) -> None:
    store = ChunkFolder(tmp_path / "runs", changed(), EXAMPLES)
    store.save(PLAN, done(0, 1))
    (chunk,) = store.folder.rglob("*.npz")
    half, theirs = chunk.with_name(".0000000-0000000-abcd_123.npz"), chunk.with_name("mine.npz")
    for file in (half, theirs):
        file.write_bytes(b"some")
    store.clear()
    assert list(tmp_path.rglob("*.npz")) == [theirs]
    theirs.unlink()
    store.clear()
    assert not (tmp_path / "runs").exists()
