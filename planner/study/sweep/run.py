"""Run a sweep: base case, chunks of about a second, results gathered in the order of the variants."""

from __future__ import annotations

import json
import time
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Protocol

import numpy as np
from numpy.typing import NDArray

from planner.scenario.scenario import Scenario
from planner.sources.base import SourceKind
from planner.sources.registry import SOURCES
from planner.study.cases import Design
from planner.study.context import Context
from planner.study.design import SiteContext
from planner.study.ranking import ranked
from planner.study.search import choose_all
from planner.study.sweep.engine import MEASURES, Found, Task, engine_of, measures_of
from planner.study.sweep.plan import Layout, Plan, cut, hour_keys, plans_of
from planner.study.sweep.reasons import Reason
from planner.study.sweep.variants import Core
from planner.study.sweep.weather import WeatherSpread, weather_spread
from planner.study.sweep.workers import Chunk, Done, Serial, Workers

Array = NDArray[np.float64]
Progress = Callable[[str, int, int, float], None]
"""Called with the kind of sweep, variants done, variants in all and seconds left (NaN while unknown)."""

CHUNK_SECONDS = 1.0
CHUNKS_PER_WORKER = 4
"""At least so many chunks for each worker, so that they end at about the same time."""


class Store(Protocol):
    """Where finished chunks are kept."""

    def load(self, plan: Plan) -> list[Done]:
        """Return the chunks of a plan that are already there."""

    def save(self, plan: Plan, done: Done) -> None:
        """Keep a chunk."""


@dataclass(frozen=True)
class Base:
    """The scenario as it stands, on which every sweep is built.

    Attributes
    ----------
    context : Context
        What the options share.
    designs : tuple of Design
        The designs, held in every variant unless they are to be chosen anew.
    numbers : ndarray, (options, measures)
        Results of the scenario as it stands.
    """

    scenario: Scenario
    context: Context
    designs: tuple[Design, ...]
    numbers: Array

    @property
    def site(self) -> SiteContext:
        """Place, weather and demand."""
        return self.context.site(self.scenario)

    @property
    def options(self) -> tuple[str, ...]:
        """Names of the supply options."""
        return tuple(design.name for design in self.designs)

    def ranking(self) -> list[int]:
        """Places of the options, best first."""
        return ranking_of(self.numbers)


def ranking_of(numbers: Array) -> list[int]:
    """Order options as the comparison does: those that meet the target by cost, then the others by what they deliver.

    Parameters
    ----------
    numbers : ndarray, (options, measures)
        Results of one case.

    Returns
    -------
    list of int
        Places of the options, best first.
    """
    return ranked(*(numbers[:, MEASURES.index(name)] for name in _RANKED))


_RANKED = ("meets_service", "delivered_share", "present_cost")


@dataclass(frozen=True)
class Results:
    """What came of one plan.

    Attributes
    ----------
    plan : Plan
        The variants.
    options : tuple of str
        Supply options.
    numbers : ndarray, (variants, options, measures)
        Results; NaN where a variant could not be worked out.
    problems : dict of int to Reason
        Why, by variant.
    """

    plan: Plan
    options: tuple[str, ...]
    numbers: Array
    problems: dict[int, Reason]

    def measure(self, name: str) -> Array:
        """One measure, (variants, options)."""
        return np.asarray(self.numbers[:, :, MEASURES.index(name)])

    @property
    def worked(self) -> bool:
        """Whether any variant was worked out, the scenario as it stands not counted."""
        varied = range(1 if self.plan.mode == "one_at_a_time" else 0, self.plan.size)
        return any(variant not in self.problems for variant in varied)

    @property
    def first_reason(self) -> Reason | None:
        """Why the first variant that failed could not be worked out; None where none failed."""
        return next(iter(self.problems.values()), None)


@dataclass(frozen=True)
class SweepResult:
    """Everything that a sweep found."""

    base: Base
    results: tuple[Results, ...]
    weather: WeatherSpread | None

    @property
    def worked(self) -> bool:
        """Whether anything was worked out."""
        return self.weather is not None or any(results.worked for results in self.results)


def run_sweep(
    scenario: Scenario,
    folder: Path,
    *,
    kinds: Sequence[SourceKind] = SOURCES,
    workers: Workers | None = None,
    store: Store | None = None,
    progress: Progress | None = None,
    chunk_seconds: float = CHUNK_SECONDS,
) -> SweepResult:
    """Run every kind of sweep that a scenario describes.

    Parameters
    ----------
    scenario : Scenario
        With a [sweep] table, or none for the ready list of inputs.
    folder : pathlib.Path
        Folder to which paths in the scenario are relative.
    kinds : sequence of SourceKind
        The sources in order of priority.
    workers : Workers, optional
        Who does the work; this process by default. The results do not depend on it.
    store : Store, optional
        Keeps finished chunks, and gives those that an earlier run of the same sweep left.
    progress : callable, optional
        Told after each chunk.
    chunk_seconds : float
        Work in one chunk [s]; the results do not depend on it.

    Returns
    -------
    SweepResult

    Raises
    ------
    InputError
        When the scenario as it stands is unworkable, or the [sweep] table is wrong. A variant that cannot be worked
        out is told in the results and ends nothing.
    """
    plans = plans_of(scenario)
    base = base_of(scenario, folder, kinds)
    workers = workers or Serial()
    results = tuple(run_plan(base, plan, workers, store, progress, chunk_seconds) for plan in plans)
    asked = scenario.sweep.weather if scenario.sweep else None
    weather = None if asked is None else weather_spread(scenario, base.context, base.designs, asked)
    return SweepResult(base, results, weather)


def base_of(scenario: Scenario, folder: Path, kinds: Sequence[SourceKind] = SOURCES) -> Base:
    """Choose the designs of the scenario as it stands, whose results come with them."""
    context = Context(folder, kinds)
    results = [choice.result for choice in choose_all(context, context.supplies(scenario))]
    return Base(scenario, context, tuple(each.case.design for each in results), measures_of(results))


def run_plan(
    base: Base,
    plan: Plan,
    workers: Workers,
    store: Store | None = None,
    progress: Progress | None = None,
    chunk_seconds: float = CHUNK_SECONDS,
) -> Results:
    """Work out the variants of one plan; see `run_sweep`."""
    scenario = base.scenario
    redesign = bool(scenario.sweep and scenario.sweep.redesign)
    option_years = len(base.designs) * scenario.finance.analysis_period_years
    layout = cut(plan, option_years=option_years, redesign=redesign)
    core = core_of(scenario, base.context, base.designs, plan, by_line=layout.by_line, redesign=redesign)
    if isinstance(workers, Serial):
        engine_of(core).reuse(base.context)
    numbers = np.full((plan.size, len(base.designs), len(MEASURES)), np.nan)
    problems: dict[int, Reason] = {}
    left = np.ones(len(layout.units), dtype=bool)

    def enter(done: Done) -> None:
        for unit, found in zip(layout.units[done.first : done.first + len(done.found)], done.found, strict=True):
            numbers[unit.variants] = found.numbers
            problems.update({int(unit.variants[index]): reason for index, reason in found.problems.items()})
        left[done.first : done.first + len(done.found)] = False

    for done in store.load(plan) if store else []:
        enter(done)
    pace = _Pace(chunk_seconds)
    before, begin = int(left.sum()), time.perf_counter()
    for done in workers.work(core, _chunks(layout, plan, left.copy(), pace, workers.count)):
        pace.learn(len(done.found), done.seconds)
        enter(done)
        if store and not done.given_up:
            store.save(plan, done)
        if progress:
            rest = int(left.sum())
            seconds = (time.perf_counter() - begin) * rest / max(before - rest, 1)
            still = sum(layout.units[unit].variants.size for unit in np.flatnonzero(left))
            progress(plan.mode, plan.size - still, plan.size, seconds)
    return Results(plan, base.options, numbers, dict(sorted(problems.items())))


class _Pace:
    """How long a unit takes, learnt from the chunks done."""

    def __init__(self, chunk_seconds: float) -> None:
        self._wanted = chunk_seconds
        self._units, self._seconds = 0, 0.0

    def learn(self, units: int, seconds: float) -> None:
        self._units += units
        self._seconds += seconds

    def units(self) -> int:
        """Units that fill a chunk; one until a chunk is done."""
        if self._units == 0 or self._seconds <= 0:
            return 1
        return max(int(self._wanted * self._units / self._seconds), 1)


def _chunks(layout: Layout, plan: Plan, left: NDArray[np.bool_], pace: _Pace, workers: int) -> Iterator[Chunk]:
    """Cut what is left into chunks of about the wanted time, made only when they are asked for."""
    unit, count = 0, len(layout.units)
    while unit < count:
        if not left[unit]:
            unit += 1
            continue
        fair = int(np.ceil(left[unit:].sum() / (CHUNKS_PER_WORKER * workers)))
        end = unit + 1
        while end < count and left[end] and end - unit < min(pace.units(), fair):
            end += 1
        yield Chunk(unit, tuple(_task(layout, plan, number) for number in range(unit, end)))
        unit = end


def _task(layout: Layout, plan: Plan, number: int) -> Task:
    unit = layout.units[number]
    batch = layout.batches[unit.batch]
    return Task(batch.cases, batch.rows, unit.case, plan.values[unit.variants])


def core_of(
    scenario: Scenario, context: Context, designs: tuple[Design, ...], plan: Plan, *, by_line: bool, redesign: bool
) -> Core:
    """Gather what every unit of a plan shares."""
    raw = scenario.given("json", keep=[key.path for key in plan.keys])
    raw = {name: table for name, table in raw.items() if name not in ("sweep", "size")}
    ends = tuple(
        (float(column.min()), float(column.max()))
        for key, column in zip(plan.keys, plan.values.T, strict=True)
        if key.is_price
    )
    return Core(
        raw=json.dumps(raw),
        folder=str(context.folder.resolve()),
        kinds=context.kinds,
        keys=plan.keys,
        hour_keys=tuple(hour_keys(plan, redesign)),
        designs=designs,
        redesign=redesign,
        by_line=by_line,
        price_ends=ends if by_line else (),
    )


__all__ = [
    "Base",
    "Found",
    "Progress",
    "Results",
    "Store",
    "SweepResult",
    "base_of",
    "ranking_of",
    "run_plan",
    "run_sweep",
]
