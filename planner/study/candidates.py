"""What the sizing of one supply option may choose from: pumps, pipes, hours, strings, tanks and float-switch levels."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import product

import numpy as np
from numpy.typing import NDArray

from planner.scenario.errors import InputError, Problem
from planner.scenario.scenario import Scenario
from planner.scenario.size import HoursCandidate, PipeCandidate, Size
from planner.scenario.waterworks import Pump, Segment
from planner.sources.base import TopUpSourceKind
from planner.study.cases import Case, Supply
from planner.study.context import Context
from planner.study.passing import Sizes, admitted, judged
from planner.study.search import LEVELS, TANK_STEPS
from planner.text import source_name, text
from planner.water.pipes import pipe_of

Levels = tuple[float, float]
Hours = list[list[float]]

LEVELS_WITHOUT_SUN: tuple[Levels, ...] = ((30.0, 60.0), (50.0, 80.0), (70.0, 95.0), (90.0, 98.0))
"""Start and stop levels tried where the sun is no source, per cent of the tank."""
HOURS: dict[str, Hours] = {"by_night": [[18.0, 6.0]], "by_day": [[6.0, 18.0]]}
"""Hours to which a timer could hold the top-up, tried beside those given."""
AS_GIVEN = ""
"""Stands for the name of the hours that the scenario gives."""


@dataclass(frozen=True)
class Setup:
    """One choice of what changes the hourly series: pump, pipes and allowed hours, and the option with them."""

    pump: str
    pipes: tuple[str, ...]
    hours: str
    supply: Supply


@dataclass(frozen=True)
class CandidateGrid:
    """Every candidate of one supply option: those of setups x strings x tanks x levels that fail the fewest checks.

    Attributes
    ----------
    name : str
        The supply option.
    setups : tuple of Setup
        Choices of pump, pipes, hours and, where they are open, modules in series; what the scenario gives comes first.
    strings, tanks_m3, levels : tuple
        Numbers of strings, tank volumes and float-switch levels (start, stop) [%], each in rising order.
    indices : ndarray, (candidates, 4)
        Setup, strings, tank and levels of each candidate, as positions in these lists.
    cautions : ndarray, (candidates,)
        Checks that each passes with caution, where these count (see `Sizes`).
    left_out : tuple of str
        Candidates that cannot work here, and why.
    """

    name: str
    setups: tuple[Setup, ...]
    strings: tuple[int, ...]
    tanks_m3: tuple[float, ...]
    levels: tuple[Levels, ...]
    indices: NDArray[np.int64]
    cautions: NDArray[np.int64]
    left_out: tuple[str, ...]

    @property
    def count(self) -> int:
        """Number of candidate designs."""
        return len(self.indices)

    def case(self, index: int) -> Case:
        """One candidate."""
        setup, strings, tank, levels = self.indices[index].tolist()
        supply: Supply = self.setups[setup].supply
        return supply.case(self.strings[strings], self.tanks_m3[tank], self.levels[levels])

    @property
    def has_switch(self) -> bool:
        """Whether a float switch starts a pump on grid or generator."""
        return self.setups[0].supply.has_switch


def candidate_grid(context: Context, supply: Supply) -> CandidateGrid:
    """List the candidates of one supply option.

    Parameters
    ----------
    context : Context
        What the options share.
    supply : Supply
        The option as the scenario gives it.

    Returns
    -------
    CandidateGrid

    Raises
    ------
    InputError
        When a candidate pipe names no segment or no pipe, or no candidate can work at the site.
    """
    scenario = supply.scenario
    size = scenario.size or Size()
    left_out: list[str] = []
    tanks = _tanks(scenario, size, float(context.site(scenario).draw_m3[:, 0].max()), left_out)
    strings, levels = _strings(supply, size), _levels(supply, size)
    setups: list[Setup] = []
    tried: list[Sizes] = []
    for setup in _setups(context, supply, size, left_out):
        for sizes in judged(context, setup.supply, strings, tanks):
            setups.append(replace(setup, supply=sizes[0].supply))
            tried += sizes
    keep = np.array(admitted(tried)).reshape(len(setups), len(strings), len(tanks))
    if not keep.all():
        left_out.append(text("candidate.fails_checks", count=int((~keep).sum()), all=keep.size))
    shape = (*keep.shape, len(levels))
    indices = np.argwhere(np.broadcast_to(keep[..., None], shape))
    cautions = np.repeat([sizes.cautions for sizes in tried], len(levels)).reshape(shape)[tuple(indices.T)]
    return CandidateGrid(supply.name, tuple(setups), strings, tanks, levels, indices, cautions, tuple(left_out))


def _strings(supply: Supply, size: Size) -> tuple[int, ...]:
    return supply.sunny.strings_to_size(supply.scenario, size.strings) if supply.sunny else (0,)


def _tanks(scenario: Scenario, size: Size, draw_m3: float, left_out: list[str]) -> tuple[float, ...]:
    given = scenario.tank.volume_m3
    tried = set(size.tanks_m3 or [listed.volume_m3 for listed in scenario.tank.sizes])
    if given != "auto":
        tried = (tried or {step * given for step in TANK_STEPS}) | {given}
    enough = {volume for volume in tried if volume >= draw_m3}
    small = ", ".join(f"{volume:g}" for volume in sorted(tried - enough))
    if small:
        left_out.append(text("candidate.tanks_too_small", tanks=small, draw=draw_m3))
    if not enough:
        raise InputError("", [Problem("size.tanks_m3", f"no tank holds the {draw_m3:.2f} m3 of the busiest hour")])
    return tuple(sorted(enough))


def _levels(supply: Supply, size: Size) -> tuple[Levels, ...]:
    given = supply.given_levels
    if not supply.has_switch:
        return (given,)
    sunny = supply.sunny is not None
    listed = size.levels_percent if sunny else size.levels_without_sun_percent
    ready = LEVELS if sunny else LEVELS_WITHOUT_SUN
    return tuple(sorted({given, *((start, stop) for start, stop in listed or ready)}))


def _setups(context: Context, supply: Supply, size: Size, left_out: list[str]) -> tuple[Setup, ...]:
    works = [
        (pump, *pipes) for pump, pipes in product(_pumps(supply.scenario, size), _pipelines(supply.scenario, size))
    ]
    windows = _windows(supply, size, left_out)
    setups: list[Setup] = []
    failure: InputError | None = None
    for pump, segments, pipes in works:
        for hours, scenario in windows:
            segments_changed = scenario.pipeline.model_copy(update={"segments": segments})
            changed = scenario.model_copy(update={"pump": pump, "pipeline": segments_changed, "overrides": {}})
            try:
                context.built(changed, supply.sources)
            except InputError as error:
                failure = error
                candidate = text("list.comma").join([pump.name, *pipes])
                left_out.append(text("candidate.unworkable", candidate=candidate, problem=error.problems[0].text))
                break
            setups.append(Setup(pump.name, pipes, hours, replace(supply, scenario=changed)))
    if not setups:
        assert failure is not None
        raise failure
    return tuple(setups)


def _pumps(scenario: Scenario, size: Size) -> list[Pump]:
    return [scenario.pump, *(pump for pump in size.pumps if pump != scenario.pump)]


def _pipelines(scenario: Scenario, size: Size) -> list[tuple[list[Segment], tuple[str, ...]]]:
    """Every combination of pipes over the segments that have candidates, with the candidates' names."""
    names = [segment.name for segment in scenario.pipeline.segments]
    for index, candidate in enumerate(size.pipes):
        if candidate.segment not in names:
            words = f"{candidate.segment!r} was given; no segment has this name (there are: {', '.join(names)})"
            raise InputError("", [Problem(f"size.pipes[{index + 1}].segment", words)])
        if candidate.pipe is not None:
            try:
                pipe_of(candidate.pipe)
            except ValueError as error:
                raise InputError("", [Problem(f"size.pipes[{index + 1}].pipe", str(error))]) from error
    choices = [
        [(segment, ""), *((_replaced(segment, other), other.label) for other in size.pipes if other.segment == name)]
        for segment, name in zip(scenario.pipeline.segments, names, strict=True)
    ]
    return [
        (
            [segment for segment, _ in chosen],
            tuple(f"{segment.name}: {label}" for segment, label in chosen if label),
        )
        for chosen in product(*choices)
    ]


def _replaced(segment: Segment, other: PipeCandidate) -> Segment:
    return segment.model_copy(
        update={
            "pipe": other.pipe,
            "inner_diameter_mm": other.inner_diameter_mm,
            "roughness_mm": other.roughness_mm,
            "hazen_williams_c": None,
            "pressure_class_bar": None,
            "price": other.price,
        }
    )


def _windows(supply: Supply, size: Size, left_out: list[str]) -> list[tuple[str, Scenario]]:
    """Name and scenario of each choice of allowed hours; those that change nothing or allow nothing are left out."""
    scenario = supply.scenario
    windows, known = [(AS_GIVEN, scenario)], [_hours_of(supply, scenario)]
    if not supply.has_switch:
        return windows
    for candidate in size.hours or _ready_hours():
        changed = scenario
        for source, given in _timed(supply, scenario):
            hours = common_hours(given, candidate.hours)
            if hours is None:
                left_out.append(text("candidate.never_on", hours=candidate.name, source=source_name(source.key)))
                break
            changed = source.held_to(changed, hours)
        else:
            if _hours_of(supply, changed) not in known:
                known.append(_hours_of(supply, changed))
                windows.append((candidate.name, changed))
    return windows


def _timed(supply: Supply, scenario: Scenario) -> list[tuple[TopUpSourceKind, Hours]]:
    """Top-up sources that a timer can hold to some hours, with those in which they may run."""
    top_ups = [source for source in supply.sources if isinstance(source, TopUpSourceKind)]
    return [(source, hours) for source in top_ups if (hours := source.hours(scenario)) is not None]


def _ready_hours() -> list[HoursCandidate]:
    return [HoursCandidate(name=text(f"candidate.{name}"), hours=hours) for name, hours in HOURS.items()]


def _hours_of(supply: Supply, scenario: Scenario) -> list[Hours | None]:
    """Allowed hours of each top-up source, spelt alike where they are alike."""
    return [common_hours(hours, []) for _, hours in _timed(supply, scenario)]


def common_hours(first: Sequence[Sequence[float]], second: Sequence[Sequence[float]]) -> Hours | None:
    """Hours of the day that two lists of ranges have in common, in order and within the day.

    Parameters
    ----------
    first, second : sequence of [from, to]
        Ranges; none means the whole day, and a range whose end is not after its beginning runs over midnight.

    Returns
    -------
    list of [from, to] or None
        No range where the whole day is common; None where nothing is.
    """
    common = [
        [max(one[0], other[0]), min(one[1], other[1])]
        for one in _pieces(first)
        for other in _pieces(second)
        if max(one[0], other[0]) < min(one[1], other[1])
    ]
    if not common:
        return None
    merged: Hours = []
    for begin, end in sorted(common):
        if merged and begin <= merged[-1][1]:
            merged[-1][1] = max(merged[-1][1], end)
        else:
            merged.append([begin, end])
    return [] if merged == [[0.0, 24.0]] else merged


def _pieces(ranges: Sequence[Sequence[float]]) -> Hours:
    """Split ranges at midnight."""
    if not ranges:
        return [[0.0, 24.0]]
    return [
        piece
        for begin, end in ranges
        for piece in ([[begin, end]] if end > begin else [[begin, 24.0], [0.0, end]])
        if piece[1] > piece[0]
    ]
