"""Is a source worth having? Options with and without it, the values that would turn the answer, and a map of them.

Every option keeps the design chosen in the base case (strings, tank, float-switch levels) while an input changes.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path

from planner.money.quantities import unpriced
from planner.scenario.errors import InputError, Problem
from planner.scenario.scenario import SOURCE_ORDER, Scenario, option_name
from planner.sources.registry import SOURCES
from planner.study.context import Context
from planner.study.held import Held, Standing, best_first
from planner.study.inputs import inputs_of
from planner.study.search import choose_all
from planner.study.turning import AGREE, CheapestMap, Switching, Turn, Turning


@dataclass(frozen=True)
class Pair:
    """An option without the source and the same with it; `saving` is what adding it saves in present cost."""

    without: Standing
    with_source: Standing
    saving: float


@dataclass(frozen=True)
class Worth:
    """Whether a source is worth having.

    `with_best` and `without_best` are the best options with and without it: those that meet the target by present
    cost, else the one that delivers most. `options` is best first.
    """

    scenario: Scenario
    source: str
    options: tuple[Standing, ...]
    with_best: Standing
    without_best: Standing
    pairs: tuple[Pair, ...]
    switching: tuple[Switching, ...]
    map: CheapestMap | None

    @property
    def saving(self) -> float:
        """What the source saves in present cost over the life: the best without it less the best with it."""
        return self.without_best.present_cost - self.with_best.present_cost


def worth_of(scenario: Scenario, source: str, folder: Path, progress: Callable[[str], None] | None = None) -> Worth:
    """Find out whether a source is worth having.

    Parameters
    ----------
    scenario : Scenario
        The checked scenario.
    source : str
        'solar', 'grid' or 'generator'.
    folder : pathlib.Path
        Folder to which paths in the scenario are relative.
    progress : callable, optional
        Called with the name of each step.

    Returns
    -------
    Worth

    Raises
    ------
    InputError
        When the source is not described, or the options compared do not leave one with and one without it.
    """
    _check(scenario, source)
    tell = progress or (lambda step: None)
    tell("base case")
    context = Context(folder)
    held = Held(context, tuple(choice.design for choice in choose_all(context, context.supplies(scenario))))
    standings = best_first(held.standings(scenario))
    with_best = next(option for option in standings if source in option.pinned.sources)
    without_best = next(option for option in standings if source not in option.pinned.sources)
    everything = [name for name in SOURCE_ORDER if any(name in option.pinned.sources for option in standings)]
    used = [name for name in SOURCE_ORDER if name in with_best.pinned.sources + without_best.pinned.sources]
    smallest_m3 = min(design.tank_m3 for design in held.designs)
    largest_percent = 100 * smallest_m3 / float(context.ground(scenario).draw_m3[:, 0].max())
    inputs = inputs_of(scenario, used, largest_percent)
    turning = Turning(scenario, held, source)
    tell("map")
    # The map first: it runs every option at the values that the switching values are then sought between.
    cheapest = turning.map(inputs) or turning.map(inputs_of(scenario, everything, largest_percent))
    switching = []
    for varied in inputs:
        tell(varied.name)
        switching.append(turning.switching(varied, (with_best, without_best)))
    return Worth(
        scenario=scenario,
        source=source,
        options=tuple(standings),
        with_best=with_best,
        without_best=without_best,
        pairs=_pairs(source, standings),
        switching=tuple(switching),
        map=cheapest,
    )


def _check(scenario: Scenario, source: str) -> None:
    if source not in SOURCE_ORDER:
        raise InputError("", [Problem("", f"{source!r} is no source; allowed: {', '.join(SOURCE_ORDER)}")])
    if source not in scenario.sources.names:
        raise InputError(
            "", [Problem(f"sources.{source}", f"is not described, so there is no option with the {source}")]
        )
    if not scenario.priced:
        kinds = tuple(kind for kind in SOURCES if kind.described(scenario))
        needed = ", ".join(thing.label() for thing in unpriced(scenario, kinds))
        text = (
            f"is left out, so there are no prices to say whether the {source} is worth having (planner run says what "
            f"it changes of the water); give it, and the prices of: {needed}"
        )
        raise InputError("", [Problem("currency", text)])
    names = scenario.option_names
    having = [name for name in names if source in name.split(" + ")]
    if not having or len(having) == len(names):
        missing = "with" if not having else "without"
        key = "service.options" if scenario.service.options else "sources"
        text = f"leaves no option {missing} the {source} to compare (options: {'; '.join(names)})"
        raise InputError("", [Problem(key, text)])


def _pairs(source: str, standings: Sequence[Standing]) -> tuple[Pair, ...]:
    by_name = {option.name: option for option in standings}
    pairs = []
    for option in standings:
        added = option_name((*option.pinned.sources, source))
        if source not in option.pinned.sources and added in by_name:
            other = by_name[added]
            pairs.append(Pair(option, other, option.present_cost - other.present_cost))
    return tuple(pairs)


__all__ = ["AGREE", "CheapestMap", "Pair", "Standing", "Switching", "Turn", "Worth", "worth_of"]
