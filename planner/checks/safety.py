"""The usual cautions, each placed where it applies.

They are common practice of the trades and state what to take care of, not how to do the work; the codes of the country
and the people licensed under them come first.
"""

from __future__ import annotations

from collections.abc import Iterator, Set
from dataclasses import dataclass

from planner.scenario.scenario import Scenario
from planner.text import listed, text


@dataclass(frozen=True)
class Caution:
    """A caution, and the topic of the checks beside which it belongs (see `planner.checks.verdict`)."""

    topic: str
    words: str

    @property
    def text(self) -> str:
        """The caution, and that local codes come first."""
        return text("caution.with_local", caution=self.words)


def placed_cautions(*scenarios: Scenario) -> tuple[Caution, ...]:
    """List the cautions that apply to one scenario or to several together, the ones that can kill first."""
    sources = {name for scenario in scenarios for name in scenario.sources.names}
    drinks = any(user.kind == "people" for scenario in scenarios for user in scenario.demand.users)
    return (*_electricity(sources), *_heights_and_depths(sources), *_water(drinks))


def _caution(topic: str, key: str, **slots: str) -> Caution:
    return Caution(topic, text(f"caution.{key}", **slots))


def _electricity(sources: Set[str]) -> Iterator[Caution]:
    solar, grid, generator = (name in sources for name in ("solar", "grid", "generator"))
    controller = "array" if solar else "ac"
    if solar:
        yield _caution("array", "daylight")
        yield _caution("array", "dc_arc")
    every = listed([text(f"caution.source.{name}") for name in ("solar", "grid", "generator") if name in sources])
    yield _caution(controller, "isolate_array" if solar else "isolate", sources=every)
    yield _caution(controller, "wet_hands")
    if grid:
        yield _caution("ac", "grid")
    if grid or generator:
        yield _caution("ac", "residual_current")
    if generator:
        yield _caution("ac", "exhaust")
        yield _caution("ac", "backfeed")
    yield _caution(controller, "lightning_array" if solar else "lightning")


def _heights_and_depths(sources: Set[str]) -> Iterator[Caution]:
    yield _caution("borehole", "lifting")
    yield _caution("borehole", "overhead_lines")
    yield _caution("borehole", "confined_space")
    yield _caution("tank", "falls")
    yield _caution("tank", "children_array" if "solar" in sources else "children")
    yield _caution("pipeline", "trench")
    yield _caution("pipeline", "pressure_test")


def _water(drinks: bool) -> Iterator[Caution]:
    yield _caution("water", "drinking" if drinks else "not_drinking")
    yield _caution("water", "chlorine")
    yield _caution("borehole", "permit")
