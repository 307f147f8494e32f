"""Is a source worth having? Options with and without it, the values that would turn the answer, and a map of them.

While an input changes, every option keeps the works as they would be built (strings, tank, float-switch levels); and
once more, where the scenario leaves them open, strings and tank are chosen anew at each value.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path

from planner.money.quantities import unpriced
from planner.scenario.errors import InputError, Problem
from planner.scenario.scenario import Scenario
from planner.sources.base import SourceKind
from planner.sources.registry import SOURCES, option_name, options_of
from planner.study.chosen_anew import ChosenAnew
from planner.study.context import Context
from planner.study.fixed_designs import FixedDesigns, OptionSummary
from planner.study.next_step import NextSteps, next_steps_of
from planner.study.ranking import best_first
from planner.study.results import Results
from planner.study.search import choose_all
from planner.study.turning import AGREE, CheapestMap, Switching, Turn, Turning, map_of
from planner.study.varied import DECIDING, Varied, varied_inputs, with_outages
from planner.text import text


@dataclass(frozen=True)
class Pair:
    """An option without the source and the same with it; `saving` is what adding it saves in present cost."""

    without: OptionSummary
    with_source: OptionSummary
    saving: float


@dataclass(frozen=True)
class Worth:
    """Whether a source is worth having.

    `with_best` and `without_best` are the best options with and without it: those that meet the target by present
    cost, else the one that delivers most. `options` is best first. `switching` is of the works as they would be built,
    `anew` of works chosen anew at each value, None where the scenario leaves nothing of them open.
    """

    scenario: Scenario
    source: str
    options: tuple[OptionSummary, ...]
    with_best: OptionSummary
    without_best: OptionSummary
    pairs: tuple[Pair, ...]
    switching: tuple[Switching, ...]
    anew: tuple[Switching, ...] | None
    map: CheapestMap | None
    next_steps: NextSteps

    @property
    def saving(self) -> float:
        """What the source saves in present cost over the life: the best without it less the best with it."""
        return self.without_best.present_cost - self.with_best.present_cost


def worth_of(
    scenario: Scenario,
    source: str,
    folder: Path,
    progress: Callable[[str], None] | None = None,
    *,
    kinds: Sequence[SourceKind] = SOURCES,
) -> Worth:
    """Find out whether a source is worth having.

    Parameters
    ----------
    scenario : Scenario
        The checked scenario.
    source : str
        Name of one of the sources.
    folder : pathlib.Path
        Folder to which paths in the scenario are relative.
    progress : callable, optional
        Called with the name of each step.
    kinds : sequence of SourceKind
        The sources in order of priority.

    Returns
    -------
    Worth

    Raises
    ------
    InputError
        When the source is not described, or the options compared do not leave one with and one without it.
    """
    _check(scenario, source, kinds)
    tell = progress or (lambda step: None)
    tell(text("worth_input.step_base"))
    context = Context(folder, kinds)
    choices = choose_all(context, context.supplies(scenario))
    base = Results.of([choice.result for choice in choices])
    fixed = FixedDesigns(context, scenario, base)
    options = best_first(fixed.at_base())
    with_best = next(option for option in options if source in option.design.sources)
    without_best = next(option for option in options if source not in option.design.sources)
    everything = [kind for kind in kinds if any(kind in option.design.sources for option in options)]
    used = [kind for kind in kinds if kind in with_best.design.sources + without_best.design.sources]
    smallest_m3 = min(option.design.tank_m3 for option in options)
    largest_percent = 100 * smallest_m3 / float(context.site(scenario).draw_m3[:, 0].max())
    every = varied_inputs(with_outages(scenario), DECIDING, largest_demand_percent=largest_percent)
    inputs = _of_sources(every, used)
    pair = with_best, without_best
    open_works = ChosenAnew.of(context, scenario, choices)
    anew = None
    if open_works is not None:
        tell(text("worth_input.step_anew"))
        anew = _switching(Turning(open_works, source, is_fixed=False), inputs, pair, lambda _: None)
    turning = Turning(fixed, source)
    tell(text("worth_input.step_map"))
    turning.prepare(inputs)
    cheapest = map_of(fixed, source, inputs) or map_of(fixed, source, _of_sources(every, everything))
    return Worth(
        scenario=scenario,
        source=source,
        options=tuple(options),
        with_best=with_best,
        without_best=without_best,
        pairs=_pairs(source, options),
        switching=_switching(turning, inputs, pair, tell),
        anew=anew,
        map=cheapest,
        next_steps=next_steps_of(context, choices, every=True),
    )


def _of_sources(inputs: Sequence[Varied], kinds: Sequence[SourceKind]) -> list[Varied]:
    """Those of some sources, and those of none."""
    return [varied for varied in inputs if not varied.source or varied.source in kinds]


def _switching(
    turning: Turning,
    inputs: Sequence[Varied],
    pair: tuple[OptionSummary, OptionSummary],
    tell: Callable[[str], None],
) -> tuple[Switching, ...]:
    turning.prepare(inputs)
    found = []
    for varied in inputs:
        tell(varied.label)
        found.append(turning.switching(varied, pair))
    return tuple(found)


def _check(scenario: Scenario, source: str, kinds: Sequence[SourceKind]) -> None:
    kind = next((kind for kind in kinds if kind == source), None)
    if kind is None:
        raise InputError("", [Problem("", f"{source!r} is no source; allowed: {', '.join(kinds)}")])
    if not kind.described(scenario):
        raise InputError(
            "", [Problem(f"sources.{source}", f"is not described, so there is no option with the {source}")]
        )
    options = options_of(scenario, kinds)
    if not scenario.priced:
        things = dict.fromkeys(thing for sources in options for thing in unpriced(scenario, sources))
        words = (
            f"is left out, so there are no prices to say whether the {source} is worth having (planner run says what "
            f"it changes of the water); give it, and the prices of: {', '.join(thing.label() for thing in things)}"
        )
        raise InputError("", [Problem("currency", words)])
    having = [sources for sources in options if kind in sources]
    if not having or len(having) == len(options):
        missing = "with" if not having else "without"
        key = "service.options" if scenario.service.options else "sources"
        names = "; ".join(map(option_name, options))
        text = f"leaves no option {missing} the {source} to compare (options: {names})"
        raise InputError("", [Problem(key, text)])


def _pairs(source: str, options: Sequence[OptionSummary]) -> tuple[Pair, ...]:
    by_sources: dict[frozenset[str], OptionSummary] = {frozenset(option.design.sources): option for option in options}
    pairs = []
    for option in options:
        other = by_sources.get(frozenset((*option.design.sources, source)))
        if other is not None and other is not option:
            pairs.append(Pair(option, other, option.present_cost - other.present_cost))
    return tuple(pairs)


__all__ = ["AGREE", "CheapestMap", "OptionSummary", "Pair", "Switching", "Turn", "Worth", "worth_of"]
