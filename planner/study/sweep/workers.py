"""Who does the work of a sweep: this process, other processes of this machine, or the workers of a Dask cluster.

Each takes chunks from an iterator only as fast as it needs them and gives back what was done in any order. A worker
that dies costs no more than the chunks it had in hand, which are done again.
"""

from __future__ import annotations

import signal
import time
from collections.abc import Iterator
from concurrent.futures import FIRST_COMPLETED, Future, ProcessPoolExecutor, wait
from concurrent.futures.process import BrokenProcessPool
from contextlib import contextmanager
from dataclasses import dataclass
from functools import partial
from itertools import islice
from multiprocessing import get_context, resource_tracker
from typing import Any, Protocol

import numpy as np

from planner.scenario.errors import InputError, Problem
from planner.study.sweep.engine import MEASURES, Found, Task, engine_of
from planner.study.sweep.reasons import Reason, reason_of
from planner.study.sweep.variants import Core
from planner.version import __version__

AHEAD = 2
"""Chunks in hand for each worker: one at work, one waiting."""
MOST_LOSSES = 3
"""Times that a chunk may be lost with its worker before it is given up."""


@dataclass(frozen=True)
class Chunk:
    """Some units in a row, by the place of the first."""

    first: int
    tasks: tuple[Task, ...]


@dataclass(frozen=True)
class Done:
    """What came of a chunk, and how long it took its worker [s]."""

    first: int
    found: tuple[Found, ...]
    seconds: float

    @property
    def given_up(self) -> bool:
        """Whether it was not done, so that it may be tried again."""
        return any(reason.given_up for found in self.found for reason in found.problems.values())


class Workers(Protocol):
    """Those who do the work."""

    @property
    def count(self) -> int:
        """How many there are."""

    def work(self, core: Core, chunks: Iterator[Chunk]) -> Iterator[Done]:
        """Work out chunks, in any order."""

    def close(self) -> None:
        """End them, or take leave of them."""


def work_chunk(core: Core, chunk: Chunk) -> Done:
    """Work out a chunk in this process."""
    begin = time.perf_counter()
    engine = engine_of(core)
    found = []
    for task in chunk.tasks:
        try:
            found.append(engine.work(task))
        except Exception as error:
            found.append(_lost(core, task, reason_of(error)))
    return Done(chunk.first, tuple(found), time.perf_counter() - begin)


class Serial:
    """Do all the work in this process."""

    count = 1

    def work(self, core: Core, chunks: Iterator[Chunk]) -> Iterator[Done]:
        """Work out chunks one after another."""
        for chunk in chunks:
            yield work_chunk(core, chunk)

    def close(self) -> None:
        """Nothing to end."""


class Processes:
    """Other processes of this machine; a pool that breaks because one was killed is made anew.

    Parameters
    ----------
    count : int
        How many.
    """

    def __init__(self, count: int) -> None:
        self.count = count
        self._pool: ProcessPoolExecutor | None = None

    def work(self, core: Core, chunks: Iterator[Chunk]) -> Iterator[Done]:
        """Work out chunks, as each gets done."""
        losses: dict[int, int] = {}
        again: list[Chunk] = []
        waiting: dict[Future[Done], Chunk] = {}
        try:
            while True:
                try:
                    # A chunk that was in hand at two losses goes alone, so that a third finds the guilty one.
                    in_hand = [*again, *waiting.values()]
                    suspect = any(losses.get(chunk.first, 0) + 1 >= MOST_LOSSES for chunk in in_hand)
                    most = 1 if suspect else AHEAD * self.count
                    _fill(again, chunks, waiting, most, partial(self._send, core))
                    if not waiting:
                        return
                    ready, _ = wait(waiting, return_when=FIRST_COMPLETED)
                    for future in ready:
                        done = future.result()
                        del waiting[future]
                        yield done
                except BrokenProcessPool:
                    self.close()
                    lost = list(waiting.values())
                    waiting.clear()
                    for chunk in lost:
                        losses[chunk.first] = losses.get(chunk.first, 0) + 1
                    guilty = [chunk for chunk in lost if losses[chunk.first] >= MOST_LOSSES]
                    again = [*(chunk for chunk in lost if losses[chunk.first] < MOST_LOSSES), *again]
                    for chunk in guilty:
                        yield _given_up(core, chunk, Reason("worker_lost", {"times": str(MOST_LOSSES)}))
        finally:
            for future in waiting:
                future.cancel()

    def close(self) -> None:
        """End the processes."""
        if self._pool is not None:
            self._pool.shutdown(wait=True, cancel_futures=True)
            self._pool = None

    def _send(self, core: Core, chunk: Chunk) -> Future[Done]:
        with _interrupts_held():  # sending may start a process, which takes over what is held
            return self._ready().submit(work_chunk, core, chunk)

    def _ready(self) -> ProcessPoolExecutor:
        if self._pool is None:
            self._pool = ProcessPoolExecutor(self.count, mp_context=get_context("spawn"), initializer=_leave_interrupts)
        return self._pool


class Cluster:
    """Workers of an existing Dask scheduler.

    Parameters
    ----------
    address : str
        Address of the scheduler, such as 'tcp://10.0.0.5:8786'.

    Raises
    ------
    InputError
        When the extra is not installed, nobody answers, or the workers have another version of the planner.
    """

    def __init__(self, address: str) -> None:
        try:
            from distributed import Client
        except ImportError as error:
            text = "needs the optional extra: pip install 'borehole-planner[cluster]'"
            raise InputError("--cluster", [Problem("", text)]) from error
        try:
            self._client = Client(address, timeout=10, set_as_default=False)
        except (OSError, TimeoutError, ValueError) as error:
            raise InputError("--cluster", [Problem("", f"no scheduler answers at {address}: {error}")]) from error
        self.count = max(len(self._client.scheduler_info(n_workers=-1)["workers"]), 1)
        others = set(self._client.run(_version).values()) - {__version__}
        if others:
            self.close()
            text = f"the workers have planner {', '.join(sorted(others))}, this is {__version__}; install the same"
            raise InputError("--cluster", [Problem("", text)])

    def work(self, core: Core, chunks: Iterator[Chunk]) -> Iterator[Done]:
        """Work out chunks, as each gets done; the scheduler gives what a dead worker had to another."""
        from distributed import wait as wait_for

        waiting: dict[Any, Chunk] = {}
        core = core.with_weather()  # the workers need not see this machine's disk
        try:
            while True:
                _fill([], chunks, waiting, AHEAD * self.count, partial(self._send, core))
                if not waiting:
                    return
                with self._client.as_current():
                    ready = wait_for(list(waiting), return_when="FIRST_COMPLETED").done
                for future in ready:
                    chunk = waiting.pop(future)
                    yield future.result() if future.status == "finished" else _given_up(core, chunk, _why(future))
        finally:
            self._client.cancel(list(waiting))

    def close(self) -> None:
        """Take leave of the scheduler; it and its workers go on."""
        self._client.close()

    def _send(self, core: Core, chunk: Chunk) -> Any:
        # pure=False: a chunk is done as often as it is sent, never taken for another.
        return self._client.submit(work_chunk, core, chunk, pure=False)


def _fill(again: list[Chunk], chunks: Iterator[Chunk], waiting: dict[Any, Chunk], most: int, submit: Any) -> None:
    """Hand out chunks, those lost first, until enough are in hand."""
    while len(waiting) < most:
        if not again:
            again.extend(islice(chunks, 1))
        if not again:
            return
        waiting[submit(again[0])] = again[0]
        again.pop(0)


def _given_up(core: Core, chunk: Chunk, why: Reason) -> Done:
    return Done(chunk.first, tuple(_lost(core, task, why) for task in chunk.tasks), 0.0)


def _why(future: Any) -> Reason:
    """Why the cluster did not do a chunk."""
    if future.status != "error":
        return Reason("not_done", {"status": future.status})
    return Reason("not_done_error", {"status": future.status, "error": type(future.exception(timeout=10)).__name__})


def _lost(core: Core, task: Task, why: Reason) -> Found:
    shape = (len(task.case), len(core.designs), len(MEASURES))
    return Found(np.full(shape, np.nan), dict.fromkeys(range(len(task.case)), why))


def _version() -> str:
    return __version__


def _leave_interrupts() -> None:
    """Leave Ctrl-C to the process that hands out the work."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)


@contextmanager
def _interrupts_held() -> Iterator[None]:
    """Hold Ctrl-C back, for this process until the end, for those started meanwhile as long as they live.

    Without it one that comes while a process is still importing ends in a traceback of that process.
    """
    if not hasattr(signal, "pthread_sigmask"):
        yield
        return
    # the tracker lets go of what is held when it is started, so it must be there before
    resource_tracker.ensure_running()
    before = signal.pthread_sigmask(signal.SIG_BLOCK, {signal.SIGINT})
    try:
        yield
    finally:
        signal.pthread_sigmask(signal.SIG_SETMASK, before)
