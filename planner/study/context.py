"""What the cases of one call share, each part made once for all that leaves it as it is."""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Callable, Hashable, Sequence
from copy import copy
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Generic, TypeVar

import numpy as np
from numpy.typing import NDArray

from planner.scenario.scenario import Scenario
from planner.sources.base import SourceKind
from planner.sources.registry import SOURCES
from planner.study.cases import Case, Digest, Supply, digest, supplies_of
from planner.study.design import Built, SiteContext, built_of, check_tank, site_context_of
from planner.supply.run import Outcome

Thing = TypeVar("Thing")

MOST_PARTS = 128
"""Flow tables, arrays, availabilities, demands and weathers that are kept."""
MOST_BUILT = 2500
"""Life years of built options that are kept; each takes up to 210 kB where nothing is shared."""
_MOST_SEEN = 256
MOST_HOURS = 1024
"""Cases of which the hours are kept, each of some tens of kB."""


class Store(Generic[Thing]):
    """Keeps what was made last, by key.

    Parameters
    ----------
    most : int
        How much is kept; the oldest is forgotten beyond it.
    size : callable, optional
        How much a thing counts for; 1 by default.
    """

    def __init__(self, most: int, size: Callable[[Thing], int] = lambda thing: 1) -> None:
        self.most = most
        self._size, self._sum = size, 0
        self._kept: OrderedDict[Hashable, Thing] = OrderedDict()

    def get(self, key: Hashable) -> Thing | None:
        """Return what is kept under a key, if anything."""
        if key in self._kept:
            self._kept.move_to_end(key)
        return self._kept.get(key)

    def put(self, key: Hashable, thing: Thing) -> Thing:
        """Keep something under a key of its own."""
        self._kept[key] = thing
        self._sum += self._size(thing)
        while self._sum > self.most:
            self._sum -= self._size(self._kept.popitem(last=False)[1])
        return thing

    def keep(self, key: Hashable, make: Callable[[], Thing]) -> Thing:
        """Return what is kept under a key, made if need be."""
        found = self.get(key)
        return self.put(key, make()) if found is None else found


@dataclass(frozen=True)
class Prepared:
    """A case ready to run but for its sizes; `key` is equal for cases that share their hours but for these."""

    key: Digest
    built: Built
    site: SiteContext


class Context:
    """Place, weather, demand and built options, kept by the keys of the scenario that change them.

    Parameters
    ----------
    folder : pathlib.Path
        Folder to which paths in the scenarios are relative.
    kinds : sequence of SourceKind
        The sources in order of priority.
    """

    def __init__(self, folder: Path, kinds: Sequence[SourceKind] = SOURCES) -> None:
        self.folder, self.kinds = folder, tuple(kinds)
        self._life_years: NDArray[np.int64] | None = None
        self._parts: Store[Any] = Store(MOST_PARTS)
        self._begin()

    def _begin(self) -> None:
        """Keep nothing of what was made of cases."""
        self.hours: Store[Outcome] = Store(MOST_HOURS)
        self._built: Store[Prepared] = Store(MOST_BUILT, lambda prepared: prepared.site.draw_m3.shape[1])
        # By the identity of a scenario, which is kept too: its values need not be gathered again.
        self._sites: Store[tuple[Scenario, SiteContext]] = Store(_MOST_SEEN)
        self._seen: Store[tuple[Scenario, Prepared]] = Store(_MOST_SEEN)

    def without_hours(self) -> Context:
        """Return a context that shares all parts with this one but keeps no hours of its own.

        What goes through a pass then does not depend on what was worked out before.
        """
        other = copy(self)
        other.hours = Store(0)
        return other

    def in_years(self, life_years: NDArray[np.int64]) -> Context:
        """Return a context that runs some years of the life alone, from 0 and rising, and shares all other parts."""
        other = copy(self)
        other._life_years = life_years
        other._begin()
        return other

    def site(self, scenario: Scenario) -> SiteContext:
        """Place, weather, demand and tariff bands of a scenario; InputError where they cannot be had."""

        def make() -> tuple[Scenario, SiteContext]:
            return scenario, site_context_of(scenario, self.folder, self._parts.keep, self.kinds, self._life_years)

        return self._sites.keep(id(scenario), make)[1]

    def supplies(self, scenario: Scenario) -> list[Supply]:
        """Supply options of a scenario, each with a tank that holds what the busiest hour draws; else InputError."""
        supplies, draw_m3 = supplies_of(scenario, self.kinds), self.site(scenario).draw_m3
        for supply in supplies:
            check_tank(supply.scenario, draw_m3)
        return supplies

    def prepared(self, case: Case) -> Prepared:
        """Build the option of a case; InputError where it cannot work at the site."""
        return self.built(case.scenario, case.design.sources)

    def built(self, scenario: Scenario, sources: tuple[SourceKind, ...]) -> Prepared:
        """Build an option in the scenario as it holds for it; InputError where it cannot work at the site."""
        return self._seen.keep((id(scenario), sources), lambda: (scenario, self._built_anew(scenario, sources)))[1]

    def _built_anew(self, scenario: Scenario, sources: tuple[SourceKind, ...]) -> Prepared:
        key = (sources, digest(scenario, ("weather", "run"), sources=sources))

        def make() -> Prepared:
            site = self.site(scenario)
            return Prepared(key, built_of(scenario, sources, site, self._parts.keep), site)

        return self._built.keep(key, make)
