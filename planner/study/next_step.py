"""The next step up from each option, the incremental cost of the water between options, and the target that turns it.

Every figure is of works as they would be built: strings, tank and levels of each option as they were chosen.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cache
from typing import Literal

import numpy as np

from planner.assumptions.tank import USUAL_SIZES_M3
from planner.checks.design import Judge, design_judge
from planner.money.quantities import unpriced
from planner.money.rates import present_worth_factor
from planner.scenario.errors import InputError
from planner.scenario.scenario import Scenario
from planner.study.cases import Case, Design, Supply
from planner.study.context import Context
from planner.study.evaluate import evaluate
from planner.study.incremental import Increment, increments, worth_between
from planner.study.passing import MOST_POWER_RATIO, site_basis
from planner.study.ranking import ranked
from planner.study.results import Result
from planner.study.search import Choice

StepKind = Literal["string", "tank", "string_and_tank", "pump", "source"]

BEST = 2
"""Options, best first, whose next steps a run works out, beside those that miss the target and do not cost more."""
_ROUNDING = 1e-9


@dataclass(frozen=True)
class Point:
    """A design of an option: what it serves and what it costs.

    Attributes
    ----------
    option : str
        The option.
    design : Design
        Its sizes.
    meets_target, meets_rest : bool
        Whether it meets the service target, and the conditions beside the share of the life's demand.
    demand_met_percent, demand_met_worst_year_percent : float
        Demand met over the life, and in the worst year [%].
    short_days_per_year, longest_short_days : float
        Days in a mean year of which more than a tenth of the water is missing, and the longest run of them.
    capital_cost, life_cycle_cost : float
        What it costs [money].
    cost_known : bool
        Whether there are prices, and none lacks in what it is built of.
    water_m3, unserved_m3 : float
        Present value of the water that users get, and of the demand that is not met [m3].
    """

    option: str
    design: Design
    meets_target: bool
    meets_rest: bool
    demand_met_percent: float
    demand_met_worst_year_percent: float
    short_days_per_year: float
    longest_short_days: float
    capital_cost: float
    life_cycle_cost: float
    cost_known: bool
    water_m3: float
    unserved_m3: float


@dataclass(frozen=True)
class Step:
    """One step up from an option.

    Attributes
    ----------
    kind : str
        'string', 'tank' or both at once, another 'pump', or one 'source' more.
    before : Point
        The option as it is.
    strings, tank_m3 : int, float
        Sizes after the step.
    name : str
        The pump, or the source that is added; '' for sizes.
    after : Point or None
        The option after it; None where it cannot be built as it is.
    failed : tuple of str
        Keys of the checks that would fail beyond those that fail already.
    """

    kind: StepKind
    before: Point
    strings: int
    tank_m3: float
    name: str = ""
    after: Point | None = None
    failed: tuple[str, ...] = ()

    @property
    def cost_per_m3(self) -> float:
        """Incremental cost of the water that it adds [money/m3, both discounted]; NaN where it adds or costs none."""
        if self.after is None or not self.adds_water or self.after.life_cycle_cost <= self.before.life_cycle_cost:
            return math.nan
        extra = self.after.life_cycle_cost - self.before.life_cycle_cost
        return extra / (self.after.water_m3 - self.before.water_m3)

    @property
    def adds_water(self) -> bool:
        """Whether more is served after it."""
        return self.after is not None and self.after.water_m3 > self.before.water_m3 * (1 + _ROUNDING)


@dataclass(frozen=True)
class TargetTurn:
    """A share of the demand at which another option becomes the answer: below it, or above."""

    percent: float
    option: str
    saving: float


@dataclass(frozen=True)
class AtValue:
    """An option with what is not served put at a value: that value of its unserved water, and its cost with it."""

    option: str
    unserved_cost: float
    cost_with_unserved: float


@dataclass(frozen=True)
class NextSteps:
    """What the next step would bring.

    Attributes
    ----------
    points : tuple of Point
        Every option as it was chosen, best first.
    increments : tuple of Increment
        The incremental cost of each of them, in that order, by the water they serve; empty without prices.
    steps : tuple of Step
        Steps up from some of them.
    below, above : TargetTurn or None
        Where the answer turns if the target is lowered or raised, the works as they are; None where it does not, or no
        option meets the target.
    worth_from, worth_to : float
        Values of a m3 not served between which the answer is also the cheapest with the target set aside; the first is
        the larger where there are none; NaN without prices.
    at_value : tuple of AtValue
        The options by cost with unserved water at the scenario's value of it; empty where it gives none.
    """

    points: tuple[Point, ...]
    increments: tuple[Increment, ...]
    steps: tuple[Step, ...]
    below: TargetTurn | None
    above: TargetTurn | None
    worth_from: float
    worth_to: float
    at_value: tuple[AtValue, ...]

    def steps_of(self, option: str) -> tuple[Step, ...]:
        """Steps up from one option."""
        return tuple(step for step in self.steps if step.before.option == option)

    def point(self, option: str) -> Point:
        """One option as it was chosen."""
        return next(point for point in self.points if point.option == option)


def next_steps_of(context: Context, choices: Sequence[Choice], *, every: bool = False) -> NextSteps:
    """Work out the next steps of options, and how their costs stand to the water they serve.

    Parameters
    ----------
    context : Context
        What the options share; hours that were run already are not run again.
    choices : sequence of Choice
        The design of every option, and what it does.
    every : bool
        Work out the steps of every option, not only of the best and of those that miss the target and cost less.

    Returns
    -------
    NextSteps
    """
    points = [_point(choice.result) for choice in choices]
    columns = zip(*((p.meets_target, p.demand_met_percent, p.life_cycle_cost) for p in points), strict=True)
    order = ranked(*columns)
    points, choices = [points[index] for index in order], [choices[index] for index in order]
    scenario, least = choices[0].supply.scenario, points[0].life_cycle_cost
    stepped = [
        index
        for index, point in enumerate(points)
        if every or index < BEST or (not point.meets_target and (not scenario.priced or point.life_cycle_cost < least))
    ]
    steps = tuple(_steps(context, choices, points, stepped))
    if not scenario.priced:
        return NextSteps(tuple(points), (), steps, None, None, math.nan, math.nan, ())
    costs, water = [point.life_cycle_cost for point in points], [point.water_m3 for point in points]
    worth_from, worth_to = worth_between(costs, water, 0)
    return NextSteps(
        points=tuple(points),
        increments=tuple(increments(costs, water)),
        steps=steps,
        below=_below(points),
        above=_above(points),
        worth_from=worth_from,
        worth_to=worth_to,
        at_value=at_value(points, scenario.service.unserved_water_value_per_m3),
    )


def at_value(points: Sequence[Point], value_per_m3: float | None) -> tuple[AtValue, ...]:
    """Order options by life-cycle cost and a value of what they do not serve; nothing where there is no value."""
    if value_per_m3 is None:
        return ()
    unserved = [(point, value_per_m3 * point.unserved_m3) for point in points]
    valued = [AtValue(point.option, cost, point.life_cycle_cost + cost) for point, cost in unserved]
    return tuple(sorted(valued, key=lambda each: each.cost_with_unserved))


def _point(result: Result) -> Point:
    life, outcome, scenario, design = result.life, result.outcome, result.case.scenario, result.case.design
    service = scenario.service
    years = np.arange(1, result.quantities.demand_m3.shape[-1] + 1)
    present = np.asarray(present_worth_factor(life.real_discount_rate, years))
    water_m3 = float((result.quantities.delivered_m3 * present).sum())
    worst, longest = 100 * float(outcome.worst_year_share), float(outcome.longest_short_days.max())
    enough = service.demand_met_worst_year_percent is None or worst >= service.demand_met_worst_year_percent - _ROUNDING
    return Point(
        option=design.name,
        design=design,
        meets_target=result.meets_service,
        meets_rest=enough and (service.longest_short_days is None or longest <= service.longest_short_days),
        demand_met_percent=100 * float(outcome.delivered_share),
        demand_met_worst_year_percent=worst,
        short_days_per_year=float(outcome.short_days.mean()),
        longest_short_days=longest,
        capital_cost=float(life.capital_cost),
        life_cycle_cost=float(life.present_cost),
        cost_known=scenario.priced
        and not unpriced(scenario, design.sources, float(np.sum(result.quantities.generator_hours))),
        water_m3=water_m3,
        unserved_m3=float((result.quantities.demand_m3 * present).sum()) - water_m3,
    )


def _below(points: Sequence[Point]) -> TargetTurn | None:
    """Where the answer turns if the target is lowered: at the largest share of those that cost less and miss it."""
    first = points[0]
    cheaper = [
        point
        for point in points
        if point.meets_rest and not point.meets_target and point.life_cycle_cost < first.life_cycle_cost
    ]
    if not first.meets_target or not cheaper:
        return None
    next_one = max(cheaper, key=lambda point: point.demand_met_percent)
    return TargetTurn(next_one.demand_met_percent, next_one.option, first.life_cycle_cost - next_one.life_cycle_cost)


def _above(points: Sequence[Point]) -> TargetTurn | None:
    """Where the answer turns if the target is raised: at its own share, to the cheapest that serves more."""
    first = points[0]
    more = [p for p in points if p.meets_rest and p.demand_met_percent > first.demand_met_percent + 100 * _ROUNDING]
    if not first.meets_target or not more:
        return None
    next_one = min(more, key=lambda point: point.life_cycle_cost)
    return TargetTurn(first.demand_met_percent, next_one.option, first.life_cycle_cost - next_one.life_cycle_cost)


def _steps(
    context: Context, choices: Sequence[Choice], points: Sequence[Point], stepped: Sequence[int]
) -> Iterator[Step]:
    """Steps of some options; those whose hours must be run go through the same passes."""

    @cache
    def judge_of(index: int) -> Judge:
        supply = choices[index].supply
        alike = next(at for at in range(index + 1) if choices[at].supply.scenario is supply.scenario)
        return design_judge(site_basis(context, supply)) if alike == index else judge_of(alike)

    tried: list[tuple[Step, Case | None]] = []
    for index in stepped:
        tried += _sizes(choices[index], points[index], judge_of(index))
        tried += _pumps(context, choices[index], points[index])
    cases = [case for _, case in tried if case is not None]
    found = evaluate(context, cases) if cases else None
    at = 0
    for step, case in tried:
        if found is None or case is None:
            yield step
            continue
        yield replace(step, after=_point(found.at(at)))
        at += 1
    for index in stepped:
        point = points[index]
        for other in points:
            added = [source for source in other.design.sources if source not in point.design.sources]
            if len(added) == 1 and len(other.design.sources) == len(point.design.sources) + 1:
                yield Step("source", point, other.design.strings, other.design.tank_m3, str(added[0]), other)


def _sizes(choice: Choice, point: Point, judge: Judge) -> Iterator[tuple[Step, Case | None]]:
    """The next string, the next tank, and both where each may be; no case of what fails more checks than the option."""
    supply, design = choice.supply, choice.design
    strings, tank_m3 = _next_strings(supply, design), _next_tank_m3(supply.scenario, design.tank_m3)
    sizes: list[tuple[StepKind, int | None, float | None]] = [
        ("string", strings, design.tank_m3), ("tank", design.strings, tank_m3), ("string_and_tank", strings, tank_m3),
    ]  # fmt: skip
    now, fails = judge(supply.series, design.strings, design.tank_m3), False
    for kind, count, volume in sizes:
        if count is None or volume is None or (kind == "string_and_tank" and fails):
            continue
        judged = judge(supply.series, count, volume)
        if judged.power_ratio > max(MOST_POWER_RATIO, now.power_ratio) and count > design.strings:
            continue
        failed = tuple(key for key in judged.failed if key not in now.failed)
        cabled, fails = supply, fails or bool(failed)
        if judged.section_mm2 is not None:
            cabled = supply.with_sections(
                {**{n: mm2 for n, (mm2, _) in supply.cabled.items()}, count: judged.section_mm2}
            )
        case = cabled.case(count, volume, design.levels) if not failed else None
        yield Step(kind, point, count, volume, failed=failed), case


def _next_strings(supply: Supply, design: Design) -> int | None:
    """One string more, where there is an array and room for it."""
    solar = supply.scenario.sources.solar
    if supply.sunny is None or solar is None:
        return None
    bounded = solar.strings == "auto" or "strings_max" in solar.model_fields_set
    return None if bounded and design.strings >= solar.strings_max else design.strings + 1


def _next_tank_m3(scenario: Scenario, tank_m3: float) -> float | None:
    """The next of the sizes that can be built, or of the usual ones where none are listed."""
    sizes = [size.volume_m3 for size in scenario.tank.sizes] or USUAL_SIZES_M3
    return min((volume for volume in sizes if volume > tank_m3 * (1 + _ROUNDING)), default=None)


def _pumps(context: Context, choice: Choice, point: Point) -> Iterator[tuple[Step, Case | None]]:
    """The next larger of the pumps that the scenario knows, where it can work at the site."""
    scenario, design = choice.supply.scenario, choice.design
    larger = [
        pump
        for pump in (scenario.size.pumps if scenario.size else [])
        if pump.rated_flow_m3h > scenario.pump.rated_flow_m3h
    ]
    if not larger:
        return
    pump = min(larger, key=lambda each: each.rated_flow_m3h)
    supply = replace(choice.supply, scenario=scenario.model_copy(update={"pump": pump}), cabled={})
    judged, before = (
        design_judge(site_basis(context, each))(each.series, design.strings, design.tank_m3)
        for each in (supply, choice.supply)
    )
    failed = tuple(key for key in judged.failed if key not in before.failed)
    case = Case.of(supply.scenario, design)
    try:
        context.prepared(case)
    except InputError:
        return
    step = Step("pump", point, design.strings, design.tank_m3, pump.name, failed=failed)
    yield step, (None if failed else case)
