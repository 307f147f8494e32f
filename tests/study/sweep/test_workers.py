"""Other processes and a cluster do the same work, and survive the death of a worker."""

from __future__ import annotations

import json
import os
import pickle
import re
import signal
import subprocess
import sys
import time
import zlib
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from planner.assumptions.reader import check_scenario
from planner.scenario.errors import InputError
from planner.study.sweep import plan
from planner.study.sweep.engine import Task
from planner.study.sweep.plan import Plan
from planner.study.sweep.run import SweepResult, base_of, core_of, run_sweep
from planner.study.sweep.workers import Chunk, Cluster, Processes, work_chunk
from tests.study.sweep.cases import EXAMPLES, FUEL, SCHOOL, random_table, school, school_raw, uniform

SWEEP = {
    "grid": [
        {"key": SCHOOL, "values": [300, 350, 400, 450, 500, 550, 600, 650]},
        {"key": "pump.max_head_m", "values": [210, 90, 220, 230, 240, 250, 260, 270, 280, 290, 300, 310]},
        {"key": FUEL, "values": [1, 2]},
    ]
} | random_table(500, uniform("finance.discount_rate_percent", 2, 9), uniform("pump.price", 2000, 3000))


@pytest.fixture(scope="module", autouse=True)
def small_batches() -> Iterator[None]:
    """Many chunks from few variants."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(plan, "COLUMNS", 320)
        yield


@pytest.fixture(scope="module")
def alone() -> SweepResult:
    return run_sweep(school(sweep=SWEEP), EXAMPLES)


def assert_same(one: SweepResult, other: SweepResult) -> None:
    for mine, theirs in zip(one.results, other.results, strict=True):
        assert mine.numbers.tobytes() == theirs.numbers.tobytes()
        assert mine.problems == theirs.problems


@pytest.mark.slow
def test_two_processes_give_the_same_numbers_though_one_is_killed(alone: SweepResult) -> None:
    crew = Processes(2)
    killed: list[int] = []

    def kill_one(kind: str, done: int, count: int, seconds: float) -> None:
        if not killed and crew._pool is not None:
            killed.append(next(iter(crew._pool._processes)))
            os.kill(killed[0], signal.SIGKILL)

    try:
        swept = run_sweep(school(sweep=SWEEP), EXAMPLES, workers=crew, progress=kill_one, chunk_seconds=0.3)
    finally:
        crew.close()
    assert killed
    assert_same(alone, swept)
    assert len(swept.results[0].problems) == 16


def suicide(core: Any, chunk: Chunk) -> Any:
    """Work that kills its worker at one chunk."""
    if chunk.first == 1:
        os.kill(os.getpid(), signal.SIGKILL)
    return work_chunk(core, chunk)


@pytest.mark.slow
def test_a_chunk_that_kills_every_worker_is_given_up_and_the_others_are_done(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("planner.study.sweep.workers.work_chunk", suicide)
    crew = Processes(2)
    core = _core()
    nothing = np.zeros((1, 0))
    zero = np.zeros(1, dtype=np.int64)
    chunks = [Chunk(first, (Task(nothing, zero, zero, nothing),)) for first in range(4)]
    try:
        done = {one.first: one.found[0] for one in crew.work(core, iter(chunks))}
    finally:
        crew.close()
    assert set(done) == {0, 1, 2, 3}
    assert "its worker was lost 3 times" in done[1].problems[0].words
    for first in (0, 2, 3):
        assert not done[first].problems
        assert np.isfinite(done[first].numbers[:, :, 1]).all()


def _core() -> Any:
    scenario = school()
    base = base_of(scenario, EXAMPLES)
    return core_of(
        scenario, base.context, base.designs, Plan("grid", (), np.zeros((1, 0))), by_line=False, redesign=False
    )


@pytest.fixture
def cluster(tmp_path: Path) -> Iterator[tuple[str, list[subprocess.Popen[bytes]]]]:
    """Run a scheduler and two worker processes, without a nanny to bring a killed one back."""
    distributed = pytest.importorskip("distributed", reason="the optional extra 'cluster' is not installed")
    address_file = tmp_path / "scheduler.json"
    environment = os.environ | {"PYTHONPATH": str(Path.cwd()), "PYTHONWARNINGS": "ignore"}
    started: list[subprocess.Popen[bytes]] = []

    def start(program: str, *arguments: str) -> None:
        command = [sys.executable, "-m", f"distributed.cli.{program}", "--scheduler-file", str(address_file)]
        with (tmp_path / f"{len(started)}.log").open("wb") as log:
            process = subprocess.Popen(
                [*command, *arguments], cwd=tmp_path, env=environment, stdout=log, stderr=subprocess.STDOUT
            )
        started.append(process)

    try:
        start("dask_scheduler", "--port", "0", "--host", "127.0.0.1", "--no-dashboard", "--no-show")
        deadline = time.monotonic() + 20
        while not address_file.exists():
            assert time.monotonic() < deadline, (tmp_path / "0.log").read_text()
            time.sleep(0.05)
        for _ in range(2):
            start("dask_worker", "--nthreads", "1", "--no-nanny", "--no-dashboard")
        address = json.loads(address_file.read_text())["address"]
        with distributed.Client(address, timeout=20, set_as_default=False) as client:
            client.wait_for_workers(2, timeout=20)
        yield address, started[1:]
    finally:
        for process in started:
            process.kill()
        for process in started:
            process.wait(timeout=20)


@pytest.mark.slow
def test_a_cluster_gives_the_same_numbers_though_a_worker_is_killed(
    alone: SweepResult, cluster: tuple[str, list[subprocess.Popen[bytes]]]
) -> None:
    address, workers = cluster
    crew = Cluster(address)
    seen: list[int] = []

    def kill_one(kind: str, done: int, count: int, seconds: float) -> None:
        seen.append(done)
        if len(seen) == 2:
            workers[0].kill()

    try:
        assert crew.count == 2
        swept = run_sweep(school(sweep=SWEEP), EXAMPLES, workers=crew, progress=kill_one, chunk_seconds=0.3)
    finally:
        crew.close()
    assert workers[0].wait(timeout=10) == -signal.SIGKILL
    assert workers[1].poll() is None
    assert len(seen) > 3, "it was killed in the middle"
    assert_same(alone, swept)


def test_no_scheduler_at_the_address_is_said_plainly() -> None:
    pytest.importorskip("distributed", reason="the optional extra 'cluster' is not installed")
    with pytest.raises(InputError, match="no scheduler answers at nonsense"):
        Cluster("nonsense://here")


def test_no_worker_process_hears_ctrl_c_however_early(tmp_path: Path) -> None:
    """The signal must be held from the first instruction on: a process that is still importing has no handler."""
    if not Path("/proc/self/status").exists():
        pytest.skip("signals held by a process are read from /proc")
    crew = Processes(1)
    try:
        process = crew._send(_core(), Chunk(0, ()))
        (number,) = crew._pool._processes if crew._pool is not None else ()
        held = re.search(r"^SigBlk:\s*(\w+)", Path(f"/proc/{number}/status").read_text(), re.MULTILINE)
        assert held is not None
        assert int(held[1], 16) >> (signal.SIGINT - 1) & 1
        assert process.result(timeout=60).first == 0
        assert signal.SIGINT not in signal.pthread_sigmask(signal.SIG_BLOCK, ())
    finally:
        crew.close()


@pytest.fixture
def by_file(tmp_path: Path) -> tuple[Any, Chunk]:
    """What the workers are sent for a scenario with a weather file, and a chunk of it."""
    (tmp_path / "year.csv").write_bytes((EXAMPLES / "dry-village-weather.csv").read_bytes())
    raw = school_raw()
    raw["weather"] = {"kind": "file", "file": "year.csv"}
    scenario = check_scenario(raw, "test")
    base = base_of(scenario, tmp_path)
    plan = Plan("grid", (), np.zeros((1, 0)))
    zero, nothing = np.zeros(1, dtype=np.int64), np.zeros((1, 0))
    core = core_of(scenario, base.context, base.designs, plan, by_line=False, redesign=False)
    return core, Chunk(0, (Task(nothing, zero, zero, nothing),))


def test_the_weather_file_travels_to_workers_that_do_not_see_the_disk(
    by_file: tuple[Any, Chunk], tmp_path: Path
) -> None:
    core, chunk = by_file
    here = work_chunk(core, chunk).found[0]
    sent = pickle.loads(pickle.dumps(core.with_weather()))
    (tmp_path / "year.csv").unlink()
    there = work_chunk(replace(sent, folder=str(tmp_path / "elsewhere")), chunk).found[0]
    assert not there.problems
    assert there.numbers.tobytes() == here.numbers.tobytes()
    assert len(sent.weather) < 100_000


def test_a_cluster_is_sent_the_weather_file(by_file: tuple[Any, Chunk]) -> None:
    pytest.importorskip("distributed", reason="the optional extra 'cluster' is not installed")
    core, chunk = by_file
    sent: list[Any] = []

    class Client:
        def submit(self, work: Any, core: Any, chunk: Any, *, pure: bool) -> None:
            sent.append((core, pure))
            raise StopAsyncIteration

        def cancel(self, futures: list[Any]) -> None:
            assert futures == []

    crew = Cluster.__new__(Cluster)
    crew._client, crew.count = Client(), 1
    with pytest.raises(StopAsyncIteration):
        next(crew.work(core, iter([chunk])))
    ((taken, pure),) = sent
    assert zlib.decompress(taken.weather) == (EXAMPLES / "dry-village-weather.csv").read_bytes()
    assert not pure
