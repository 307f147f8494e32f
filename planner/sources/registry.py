"""The sources in order of priority, and the supply options that they form."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations

from planner.scenario.scenario import Scenario
from planner.sources.base import AcSupply, SourceKind, TopUpSourceKind
from planner.sources.generator import GeneratorKind
from planner.sources.grid import GridKind
from planner.sources.solar import SolarKind

SOLAR, GRID, GENERATOR = SolarKind(), GridKind(), GeneratorKind()
SOURCES: tuple[SourceKind, ...] = (SOLAR, GRID, GENERATOR)
"""Every source, the first to serve first."""


def named(names: Sequence[str], kinds: Sequence[SourceKind] = SOURCES) -> tuple[SourceKind, ...]:
    """Find sources by their names, in order of priority.

    Raises
    ------
    KeyError
        When a name is none of theirs.
    """
    unknown = [name for name in names if name not in kinds]
    if unknown:
        raise KeyError(unknown[0])
    return tuple(kind for kind in kinds if kind in names)


def option_name(sources: Sequence[SourceKind]) -> str:
    """Name the supply option formed by some sources."""
    return " + ".join(sources)


def options_of(scenario: Scenario, kinds: Sequence[SourceKind] = SOURCES) -> list[tuple[SourceKind, ...]]:
    """Sources of every supply option to compare: those asked for, else all that the sources at hand allow.

    Single sources come first.
    """
    if scenario.service.options:
        return [named(name.split(" + "), kinds) for name in scenario.option_names]
    at_hand = [kind for kind in kinds if kind.described(scenario)]
    return [chosen for size in range(1, len(at_hand) + 1) for chosen in combinations(at_hand, size)]


def supplies_of(scenario: Scenario, kinds: Sequence[SourceKind] = SOURCES) -> list[AcSupply]:
    """AC that the sources at hand give, in order of priority."""
    top_ups = [kind for kind in kinds if isinstance(kind, TopUpSourceKind) and kind.described(scenario)]
    return [supply for kind in top_ups if (supply := kind.supply(scenario)) is not None]


def usual_alternative(
    options: Sequence[tuple[SourceKind, ...]], kinds: Sequence[SourceKind] = SOURCES
) -> tuple[SourceKind, ...]:
    """The option others are measured against where none is named: one top-up source alone, the last in priority.

    The first option where no top-up source stands alone.
    """
    alone = [(kind,) for kind in kinds if isinstance(kind, TopUpSourceKind) and (kind,) in options]
    return alone[-1] if alone else options[0]
