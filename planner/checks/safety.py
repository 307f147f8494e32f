"""The usual cautions, each placed where it applies.

They are common practice of the trades and state what to take care of, not how to do the work; the codes of the country
and the people licensed under them come first.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from planner.scenario.scenario import Scenario
from planner.sources.base import SourceKind
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


def placed_cautions(sources: Sequence[SourceKind], *, drinks: bool) -> tuple[Caution, ...]:
    """List the cautions that apply to works with some sources, the ones that can kill first.

    Parameters
    ----------
    sources : sequence of SourceKind
        Every source that is built, in order of priority.
    drinks : bool
        Whether people drink the water; see `people_drink`.
    """
    sunny = any(source.has_array for source in sources)
    return (*_electricity(sources, sunny), *_heights_and_depths(sunny), *_water(drinks))


def people_drink(scenario: Scenario) -> bool:
    """Tell whether people use the water."""
    return any(user.kind == "people" for user in scenario.demand.users)


def _caution(topic: str, key: str, **slots: str) -> Caution:
    return Caution(topic, text(f"caution.{key}", **slots))


def _electricity(sources: Sequence[SourceKind], sunny: bool) -> Iterator[Caution]:
    controller = "array" if sunny else "ac"
    yield from _own([source for source in sources if source.has_array])
    every = listed([source.supply_name for source in sources])
    yield _caution(controller, "isolate_array" if sunny else "isolate", sources=every)
    yield _caution(controller, "wet_hands")
    yield from _own([source for source in sources if not source.has_array])
    yield _caution(controller, "lightning_array" if sunny else "lightning")


def _own(sources: Sequence[SourceKind]) -> list[Caution]:
    """What each source itself warns of; what several warn of is said once."""
    said: dict[str, str] = {}
    for source in sources:
        for words in source.cautions:
            said.setdefault(words, source.check_topic)
    return [Caution(topic, words) for words, topic in said.items()]


def _heights_and_depths(sunny: bool) -> Iterator[Caution]:
    yield _caution("borehole", "lifting")
    yield _caution("borehole", "overhead_lines")
    yield _caution("borehole", "confined_space")
    yield _caution("tank", "falls")
    yield _caution("tank", "children_array" if sunny else "children")
    yield _caution("pipeline", "trench")
    yield _caution("pipeline", "pressure_test")


def _water(drinks: bool) -> Iterator[Caution]:
    yield _caution("water", "drinking" if drinks else "not_drinking")
    yield _caution("water", "chlorine")
    yield _caution("borehole", "permit")
