"""Plausible visits drawn at random, through check, run and remedies: what is recommended passes, or is said not to."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from functools import partial
from pathlib import Path

import numpy as np
import pytest

from planner.answers.of_study import answer, failed_of_first, failed_with, headline, option_verdicts, study_verdicts
from planner.answers.remedied import remedied, remedied_sentences
from planner.assumptions.reader import check_scenario
from planner.checks.design import depends_on_design
from planner.checks.finding import finding
from planner.checks.remedies import carried_out
from planner.checks.site import site_basis, site_verdicts
from planner.checks.verdict import Verdict, failed
from planner.figures import FIGURES
from planner.resource.sun import Place
from planner.resource.years import WeatherYears
from planner.scenario.errors import InputError
from planner.scenario.scenario import Scenario
from planner.study.compare import OptionResult, Study, study_scenario
from planner.study.context import Context
from planner.study.passing import MOST_POWER_RATIO, judged
from planner.study.site import place_of, weather_of
from planner.water.demand import hourly_demand_m3
from tests.study.random_visits import random_visit

HERE = Path(".")
CHUNKS = [range(begin, begin + 50) for begin in range(0, 200, 50)]
NOT_ALWAYS = (
    "start_level_percent", "stop_level_percent", "generator_kw", "internal_rate_of_return_percent",
    "burden_largest_year", "renewal_fund_empty_year",
)  # fmt: skip
"""Figures that an option may lack; others have words for that (`Figure.absent`)."""
OF_WATER = ("pumped_by_solar_percent", "pumped_by_grid_percent", "pumped_by_generator_percent")
"""Figures that an option lacks which delivers nothing."""
SHOWN = 4
"""Failing checks that the answer names; it counts the rest."""


def faults_of(seed: int) -> list[str]:
    """Tell what is wrong with what the tool says of one visit."""
    scenario = check_scenario(random_visit(seed), f"visit {seed}")
    place = place_of(scenario)
    weather = weather_of(scenario, place, HERE)
    judge = partial(_judged, place=place, weather=weather)
    checked = judge(scenario)
    faults = [*_checked(scenario, checked, judge), *_found(scenario, checked, place, weather)]
    try:
        study = study_scenario(scenario, HERE)
    except InputError as refused:
        return [*faults, *_refused(refused, checked)]
    verdicts = study_verdicts(study)
    said = " ".join(answer(study, verdicts))
    faults += [*_recommended(study, verdicts, said), *_remedied(study, verdicts), *_none_better(study, verdicts, said)]
    return [*faults, *(f"{option.name}: {fault}" for option in study.options for fault in _figures(option))]


def _judged(scenario: Scenario, place: Place, weather: WeatherYears) -> tuple[Verdict, ...]:
    return site_verdicts(scenario, place, weather)


def _keys(verdicts: Sequence[Verdict]) -> set[str]:
    return {verdict.key for verdict in failed(verdicts)}


def _checked(
    scenario: Scenario, checked: Sequence[Verdict], judge: Callable[[Scenario], Sequence[Verdict]]
) -> Iterator[str]:
    """Carry out the remedies that the checks print: none is to bring a new failure."""
    carried = carried_out(scenario, checked, judge)
    if new := _keys(carried.verdicts) - _keys(checked):
        yield f"the remedies of the checks bring {sorted(new)}"
    if left := [verdict.key for verdict in failed(carried.verdicts) if verdict.changes]:
        yield f"remedies are left over: {left}"
    if not all(verdict.remedy for verdict in failed(checked)):
        yield "a failed check has no remedy"


def _found(scenario: Scenario, checked: Sequence[Verdict], place: Place, weather: WeatherYears) -> Iterator[str]:
    words = " ".join(finding(site_basis(scenario, place, weather), checked))
    if not words or "nan" in words.split() or "inf" in words.split():
        yield f"finding: {words!r}"


def _refused(refused: InputError, checked: Sequence[Verdict]) -> Iterator[str]:
    """What cannot be run is refused with a key and words, and the checks say why."""
    if not all(problem.key and problem.text for problem in refused.problems):
        yield f"refused without words: {refused}"
    if not failed(checked):
        yield f"refused, though no check fails: {refused}"


def _recommended(study: Study, verdicts: Sequence[Verdict], said: str) -> Iterator[str]:
    first = study.ranked[0]
    failing = failed_of_first(study, verdicts)
    own = failed_with(first.sources, study.kinds, option_verdicts(study, first))
    if _keys(own) - _keys(failing):
        yield f"the design of {first.name} fails {sorted(_keys(own) - _keys(failing))}, which the answer does not see"
    unsaid = [verdict.key for verdict in failing[:SHOWN] if verdict.what not in said]
    if unsaid or (len(failing) > SHOWN and f"and {len(failing) - SHOWN} more" not in said):
        yield f"not said to fail: {unsaid or _keys(failing)}"
    if study.best is None and not (
        "No option meets the target" in said and "comes nearest" in headline(study, verdicts)
    ):
        yield f"no option meets the target, which is not said: {said}"
    if study.best is None and "hours of pumping at the" not in said:
        yield "no option meets the target, and the answer does not say why"
    if study.best is not None and not study.option(study.best).meets_service:
        yield f"{study.best} does not meet the target"
    if (study.best is None) == any(option.meets_service for option in study.options):
        yield "an option that meets the target is passed over"


def _none_better(study: Study, verdicts: Sequence[Verdict], said: str) -> Iterator[str]:
    """Where the design that stands first fails a check that another might pass, none does, and that is said."""
    context = Context(HERE)
    supply = next(each for each in context.supplies(study.scenario) if each.name == study.ranking[0])
    every = [sizes for one in judged(context, supply, supply.strings_to_try, supply.tanks_to_try) for sizes in one]
    tried = [sizes for sizes in every if sizes.judgement.power_ratio <= MOST_POWER_RATIO] or every
    failing = {verdict.key for verdict in failed_of_first(study, verdicts) if depends_on_design(verdict)}
    if failing and not all(sizes.judgement.failed for sizes in tried):
        yield f"fails {sorted(failing)}, and another design that was tried does not"
    if bool(failing) != ("stands in the way" in said):
        yield f"what stands in the way of passing {sorted(failing)} is not said, or for no reason"


def _remedied(study: Study, verdicts: Sequence[Verdict]) -> Iterator[str]:
    found = remedied(study, verdicts, HERE)
    if found is None:
        if failed(verdicts):
            yield f"cannot be run with the remedies of {sorted(_keys(verdicts))}"
        return
    if new := {verdict.key for verdict in found.failing} - _keys(verdicts):
        yield f"the remedies bring {sorted(new)}"
    said = " ".join(remedied_sentences(found))
    if unsaid := [verdict.key for verdict in found.failing if verdict.what not in said]:
        yield f"not said to fail still: {unsaid}"


def _figures(option: OptionResult) -> Iterator[str]:
    outcome, dry = option.outcome, not option.outcome.delivered_m3.any()
    pumped = outcome.solar_m3 + sum(each.m3 for each in outcome.top_ups.values())
    tiny = 1e-6 * max(float(pumped.sum()), 1.0)
    stored = outcome.level_end_m3 - outcome.level_start_m3
    lost = (pumped - outcome.delivered_m3 - outcome.leakage_m3).sum(axis=-1) - stored
    if (abs(lost) > tiny).any():
        yield f"{lost} m3 that were pumped went nowhere"
    if (outcome.delivered_m3 < 0).any() or (outcome.delivered_m3 > outcome.demand_m3 + tiny).any():
        yield "less than nothing, or more than what is asked for, is delivered"
    value = {each.key: float(each.read(option)) for each in FIGURES}
    years = option.scenario.finance.analysis_period_years
    sums = float(outcome.delivered_m3.sum()) / years + value["shortfall_m3_per_year"]
    if sums != pytest.approx(float(outcome.demand_m3.sum()) / years):
        yield "delivered and shortfall are not the demand"
    if option.tank_m3 < hourly_demand_m3(option.scenario.demand, 1).max():
        yield f"a tank of {option.tank_m3:g} m3 holds less than an hour's draw"
    for each in FIGURES:
        of_water = each.key in OF_WATER or each.absent == "figure.no_water"
        worded = each.absent not in ("figure.none", "figure.no_water")
        may_lack = not each.known(option) or each.key in NOT_ALWAYS or worded or (dry and of_water)
        if not (np.isfinite(value[each.key]) or (may_lack and np.isnan(value[each.key]))):
            yield f"{each.key} is {value[each.key]}"


@pytest.mark.parametrize("seed", [0, 1, 2, 3, 5])
def test_a_visit(seed: int) -> None:
    assert faults_of(seed) == []


@pytest.mark.slow
@pytest.mark.parametrize("seeds", CHUNKS, ids=lambda seeds: f"from {seeds.start}")
def test_visits(seeds: range) -> None:
    found = {seed: faults for seed in seeds if (faults := faults_of(seed))}
    assert found == {}
