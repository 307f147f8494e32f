"""The main job: one scenario in, every supply option simulated, costed, compared and ranked."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from pathlib import Path

import numpy as np

from planner.money.lifecycle import Comparison, LifeCycle, compare
from planner.money.quantities import Line, Thing, unpriced
from planner.money.simulated import Quantities
from planner.resource.sun import Place
from planner.resource.years import WeatherYears
from planner.scenario.scenario import Scenario, option_name_of
from planner.sources.base import SourceKind
from planner.sources.registry import SOURCES, option_name, options_of, usual_alternative
from planner.study.cases import as_chosen, digest
from planner.study.context import Context, Store
from planner.study.next_step import NextSteps, next_steps_of
from planner.study.ranking import ranked
from planner.study.rests_on import Effect
from planner.study.search import Choice, LevelTrial, TankCurve, best_trial, choose_all
from planner.study.uncertainty import Uncertainty, uncertainty_of
from planner.supply.array import ArrayPower
from planner.supply.run import Outcome
from planner.water.duty import Duty, duty_point


@dataclass(frozen=True)
class OptionResult:
    """Everything about one supply option.

    Attributes
    ----------
    name, sources : str, tuple of SourceKind
        Its name and sources.
    scenario : Scenario
        The scenario as it holds for this option (overrides merged in).
    meets_service : bool
        Whether it delivers what the service target asks.
    delivered_share, worst_year_share : float
        Delivered / demanded over the life, and in the worst year.
    tank_m3 : float
        Tank volume [m³].
    strings, modules : int
        Strings of modules and modules in all; 0 without sun.
    levels : tuple of float or None
        Float-switch start and stop levels [% of the tank]; None where there is none.
    outcome : Outcome
        What it did, arrays (years, 12), the grid's energy (years, 12, bands).
    quantities : Quantities
        The same by year, as money uses it; water net of leakage.
    lines : tuple of Line
        Bill of quantities.
    life : LifeCycle
        Lifecycle figures.
    comparison : Comparison or None
        Against the reference option; None for the reference itself.
    array : ArrayPower or None
        The array's hours.
    tank_curve : TankCurve
        Delivered share by tank size.
    trials : tuple of LevelTrial
        Float-switch settings tried, the one used first; empty where sun and top-up do not share the tank.
    duty : Duty
        Duty point at the yearly mean water level.
    """

    name: str
    sources: tuple[SourceKind, ...]
    scenario: Scenario
    meets_service: bool
    delivered_share: float
    worst_year_share: float
    tank_m3: float
    strings: int
    series: int | None
    section_mm2: float | None
    modules: int
    levels: tuple[float, float] | None
    outcome: Outcome
    quantities: Quantities
    lines: tuple[Line, ...]
    life: LifeCycle
    comparison: Comparison | None
    array: ArrayPower | None
    tank_curve: TankCurve
    trials: tuple[LevelTrial, ...]
    duty: Duty

    @property
    def has_array(self) -> bool:
        """Whether the sun is one of its sources."""
        return any(source.has_array for source in self.sources)

    @property
    def emission_known(self) -> bool:
        """Whether the carbon dioxide of everything that is burnt or bought is known."""
        return all(source.emission_known(self.scenario) for source in self.sources)

    @property
    def generator_kw(self) -> float:
        """Rated power of the generating sets [kW]; NaN without."""
        ratings = [source.rating_kw(self.scenario) for source in self.sources]
        return sum((rating for rating in ratings if not math.isnan(rating)), 0.0) or math.nan

    @property
    def array_kw(self) -> float:
        """Rated power of the array [kW]."""
        return sum(source.array_kw(self.scenario, self.strings) for source in self.sources)

    @property
    def unpriced(self) -> tuple[Thing, ...]:
        """What has no price, so that the option's cost is incomplete."""
        return unpriced(self.scenario, self.sources, float(np.sum(self.quantities.generator_hours)))

    @property
    def best_trial(self) -> LevelTrial | None:
        """Float-switch setting that would serve at least cost, or None."""
        return best_trial(self.trials) if self.trials else None


@dataclass(frozen=True)
class Study:
    """The whole comparison of one scenario; `options` in the scenario's order, `ranking` best first.

    `best` is None where no option meets the service target; `ranking` then begins with the one that delivers most.
    `kinds` are the sources known to it, in order of priority. `uncertainty` tells how sure the answer is, `next_steps`
    what comes next beyond the options as they are; None where that was not asked for.
    """

    scenario: Scenario
    place: Place
    altitude_given: bool
    weather: WeatherYears
    duty: Duty
    options: tuple[OptionResult, ...]
    ranking: tuple[str, ...]
    best: str | None
    reference: str
    kinds: tuple[SourceKind, ...]
    uncertainty: Uncertainty | None = None
    next_steps: NextSteps | None = None

    @property
    def effects(self) -> tuple[Effect, ...]:
        """What numbers that were not given change of the option ranked first; empty where that was not asked for."""
        return () if self.uncertainty is None else self.uncertainty.effects

    def option(self, name: str) -> OptionResult:
        """Return one option by its name."""
        return next(option for option in self.options if option.name == name)

    @cached_property
    def further_costs(self) -> tuple[str, ...]:
        """Kinds of running cost that sources of one's own have beside the usual ones."""
        return tuple(dict.fromkeys(name for option in self.options for name in option.life.flows.further))

    @cached_property
    def further_sources(self) -> tuple[SourceKind, ...]:
        """Sources of its options beside the usual ones, for which reports have rows of their own."""
        return tuple(kind for kind in self.sources if kind not in SOURCES)

    @property
    def sources(self) -> tuple[SourceKind, ...]:
        """Sources of its options, in order of priority."""
        return tuple(kind for kind in self.kinds if any(kind in option.sources for option in self.options))

    @property
    def ranked(self) -> tuple[OptionResult, ...]:
        """The options, best first."""
        return tuple(self.option(name) for name in self.ranking)


def study_scenario(
    scenario: Scenario, folder: Path, kinds: tuple[SourceKind, ...] = SOURCES, *, with_effects: bool = False
) -> Study:
    """Simulate, cost, compare and rank every supply option of a scenario.

    Parameters
    ----------
    scenario : Scenario
        The checked scenario.
    folder : pathlib.Path
        Folder to which paths in the scenario are relative.
    kinds : tuple of SourceKind
        The sources in order of priority.
    with_effects : bool
        Also try how sure the answer is.

    Returns
    -------
    Study

    Raises
    ------
    InputError
        When weather, hydraulics or tank show the scenario to be unworkable.
    """
    context = Context(folder, kinds)
    choices = choose_all(context, context.supplies(scenario))
    reference = reference_option(scenario, kinds)
    against = next(choice.result.life for choice in choices if choice.supply.name == reference)
    duties: Store[Duty] = Store(len(choices) + 1)

    def duty_of(merged: Scenario) -> Duty:
        """Solve the duty point of an option once for all that share its waterworks."""
        works = digest(merged, ("weather", "run"), tables=("borehole", "pipeline", "pump", "controller"))
        return duties.keep(
            works, lambda: duty_point(merged.borehole, merged.pipeline, merged.pump, merged.controller.power_limit_w)
        )

    options = tuple(
        _result(context, choice, None if choice.supply.name == reference else against, duty_of(choice.supply.scenario))
        for choice in choices
    )
    ranking = rank(options)
    site = context.site(scenario)
    chosen = next((option for name in ranking for option in options if option.name == name and option.has_array), None)
    return Study(
        scenario=scenario if chosen is None else as_chosen(scenario, chosen.series, chosen.section_mm2),
        place=site.place,
        altitude_given=site.altitude_given,
        weather=site.weather,
        duty=duty_of(scenario),
        options=options,
        ranking=ranking,
        best=ranking[0] if next(o for o in options if o.name == ranking[0]).meets_service else None,
        reference=reference,
        kinds=kinds,
        uncertainty=uncertainty_of(context, scenario, [choice.result for choice in choices]) if with_effects else None,
        next_steps=next_steps_of(context, choices) if with_effects else None,
    )


def reference_option(scenario: Scenario, kinds: tuple[SourceKind, ...] = SOURCES) -> str:
    """Name the option against which saving and payback are counted."""
    if scenario.service.reference is not None:
        return option_name_of(scenario.service.reference)
    return option_name(usual_alternative(options_of(scenario, kinds), kinds))


def rank(options: Sequence[OptionResult]) -> tuple[str, ...]:
    """Order options: those that meet the service target by present cost, then the others by how much they deliver."""
    order = ranked(
        [option.meets_service for option in options],
        [option.delivered_share for option in options],
        [float(option.life.present_cost) for option in options],
    )
    return tuple(options[index].name for index in order)


def _result(context: Context, choice: Choice, reference: LifeCycle | None, duty: Duty) -> OptionResult:
    result, design, scenario = choice.result, choice.design, choice.result.case.scenario
    return OptionResult(
        name=design.name,
        sources=design.sources,
        scenario=scenario,
        meets_service=result.meets_service,
        delivered_share=float(result.outcome.delivered_share),
        worst_year_share=float(result.outcome.worst_year_share),
        tank_m3=design.tank_m3,
        strings=design.strings,
        series=design.series,
        section_mm2=design.section_mm2,
        modules=result.case.modules,
        levels=choice.levels,
        outcome=result.outcome,
        quantities=result.quantities,
        lines=result.lines,
        life=result.life,
        comparison=None if reference is None else compare(result.life, reference),
        array=context.prepared(result.case).built.array,
        tank_curve=choice.tank_curve,
        trials=choice.trials,
        duty=duty,
    )


__all__ = ["OptionResult", "Study", "rank", "reference_option", "study_scenario"]
