"""What a sweep says: tornado, chances and percentiles by option, and plain sentences."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from planner.study.close_call import CloseCall, close_call, close_call_sentence
from planner.study.site import estimate_sentences
from planner.study.sweep.engine import MEASURES
from planner.study.sweep.run import Base, Results, SweepResult, ranking_of
from planner.study.sweep.statistics import Chances, Swing, chances, percentiles, tornado
from planner.study.sweep.weather import WeatherSpread
from planner.study.words import money
from planner.text import text

Array = NDArray[np.float64]

_SHOWN = 6
"""Changes of the answer named in a sentence."""
FEW_YEARS = 10
"""Below so many weather years a worst year in ten is little more than the worst year."""


@dataclass(frozen=True)
class Judged:
    """The result by which variants are judged: its key in the catalogue, its measure, and the factor between them."""

    figure: str
    measure: str
    factor: float = 1.0


def judged(base: Base) -> Judged:
    """Life-cycle cost, or what is met of the demand where there are no prices."""
    if base.scenario.priced:
        return Judged("life_cycle_cost", "present_cost")
    return Judged("demand_met_percent", "delivered_share", 100.0)


@dataclass(frozen=True)
class Tornado:
    """Inputs by how far each alone moves one result.

    Attributes
    ----------
    title : str
        Which result, of which option.
    base : float
        Result as the scenario stands.
    swings : tuple of Swing
        Largest first.
    """

    title: str
    base: float
    swings: tuple[Swing, ...]


def of_base(base: Base, name: str) -> Array:
    """One measure of the scenario as it stands, (options,)."""
    return np.asarray(base.numbers[:, MEASURES.index(name)])


def best_two(base: Base) -> tuple[int, int | None]:
    """Places of the two best options as the scenario stands."""
    ranking = base.ranking()
    return ranking[0], ranking[1] if len(ranking) > 1 else None


def tornadoes(base: Base, results: Results) -> list[Tornado]:
    """Tornado of life-cycle cost and levelised cost of the best option, and of its lead over the second best.

    Without prices, of what the first option meets of the demand.

    Parameters
    ----------
    base : Base
        The scenario as it stands.
    results : Results
        Of a sweep one at a time.
    """
    first, second = best_two(base)
    name = base.options[first]
    priced, by = base.scenario.priced, judged(base)
    key = "sweep_answer.life_cycle_cost_of" if priced else "sweep_answer.demand_met_of"
    wanted: list[tuple[str, str, int | None]] = [(text(key, option=name), by.measure, None)]
    if priced:
        wanted.append((text("sweep_answer.levelised_cost_of", option=name), "levelised_cost_per_m3", None))
    if priced and second is not None:
        lead = text("sweep_answer.lead_of", other=base.options[second], option=name)
        wanted.append((lead, "present_cost", second))
    found = []
    for title, measure, other in wanted:
        values = results.measure(measure) * (by.factor if measure == by.measure else 1.0)
        result = values[:, first] if other is None else values[:, other] - values[:, first]
        found.append(Tornado(title, float(result[0]), tornado(result[0], result[1::2], result[2::2])))
    return found


def ends_of(results: Results, index: int) -> tuple[float, float]:
    """Low and high value of an input moved one at a time."""
    return float(results.plan.values[1 + 2 * index, index]), float(results.plan.values[2 + 2 * index, index])


@dataclass(frozen=True)
class First:
    """The option ranked first in a case: its index, and whether it meets the target."""

    index: int
    meets_target: bool


def firsts_of(results: Results) -> list[First | None]:
    """Option ranked first in each variant, as the comparison ranks; None where the variant failed."""
    serves = results.measure("meets_service") > 0.5
    found: list[First | None] = []
    for variant, numbers in enumerate(results.numbers):
        if variant in results.problems:
            found.append(None)
            continue
        index = ranking_of(numbers)[0]
        found.append(First(index, bool(serves[variant, index])))
    return found


def first_words(first: First | None, options: Sequence[str]) -> str:
    """Name the option ranked first in a case, for a table."""
    if first is None:
        return text("sweep_answer.no_value")
    option = options[first.index]
    return option if first.meets_target else text("sweep_answer.first_misses", option=option)


def cheapest_of(results: Results) -> list[int | None]:
    """Place of the cheapest option that serves in each variant; None where none does or it failed."""
    cost, serves = results.measure("present_cost"), results.measure("meets_service") > 0.5
    found: list[int | None] = []
    for variant in range(results.plan.size):
        served = serves[variant] & np.isfinite(cost[variant])
        found.append(int(np.where(served, cost[variant], np.inf).argmin()) if served.any() else None)
    return found


def chances_of(results: Results) -> Chances:
    """How often each option is best in a random sweep."""
    return chances(results.measure("present_cost"), results.measure("meets_service"))


def sentences(swept: SweepResult) -> list[str]:
    """Put what a sweep found into plain sentences.

    Parameters
    ----------
    swept : SweepResult
        The finished sweep.

    Returns
    -------
    list of str
        Empty where nothing could be worked out.
    """
    if not swept.worked:
        return []
    answer_sentences = []
    for results in swept.results:
        nothing, found = _BY_MODE[results.plan.mode]
        reason = results.first_reason
        answer_sentences += (
            [text(nothing, reason=reason.words)] if reason and not results.worked else found(swept.base, results)
        )
    if swept.weather is not None:
        answer_sentences += _of_weather(swept.weather)
    if swept.results:
        answer_sentences.append(_of_design(swept.base))
    failed = sum(len(results.problems) for results in swept.results)
    if failed:
        count = sum(results.plan.size for results in swept.results)
        answer_sentences.append(text("sweep_answer.failed", failed=failed, count=count))
    return [*answer_sentences, *estimate_sentences(swept.base.scenario)]


def _of_tornado(base: Base, results: Results) -> list[str]:
    cost = tornadoes(base, results)[0]
    worst = cost.swings[0]
    low, high = ends_of(results, worst.index)
    found = []
    if np.isfinite(worst.swing) and worst.swing > 0:
        found.append(
            _sentence(
                base,
                "matters_most",
                input=results.plan.keys[worst.index].label,
                low=low,
                high=high,
                option=base.options[best_two(base)[0]],
                cost_at_low=_amount(base, worst.low),
                cost_at_high=_amount(base, worst.high),
                cost=_amount(base, cost.base),
            )
        )
    call = close_call_of(base, results)
    return [*found, _of_answer(base, results), *([close_call_sentence(call)] if call else [])]


def close_call_of(base: Base, results: Results) -> CloseCall | None:
    """Tell in how many of the changes one at a time the first two options are not told apart; None without changes."""
    if results.plan.size < 2:
        return None
    two = base.ranking()[:2]
    meets, share, cost = (
        results.measure(name)[:, two] for name in ("meets_service", "delivered_share", "present_cost")
    )
    return close_call([base.options[index] for index in two], meets, share, cost, priced=base.scenario.priced)


def changes_of(results: Results) -> list[tuple[int, str]]:
    """Say where an input moved alone changes which option is best, or whether it meets the target.

    Returns
    -------
    list of tuple of int and str
        Place of the input, and its value with what holds there, in the order of the inputs.
    """
    firsts = firsts_of(results)
    base = firsts[0]
    found: list[tuple[int, str]] = []
    if base is None:
        return found
    serves = results.measure("meets_service") > 0.5
    for index, key in enumerate(results.plan.keys):
        for variant in (1 + 2 * index, 2 + 2 * index):
            there = firsts[variant]
            if there is not None and there != base:
                lost = base.meets_target and not serves[variant, base.index]
                says = text(
                    _change(base, there, lost=lost),
                    input=key.label,
                    value=results.plan.values[variant, index],
                    first=results.options[base.index],
                    option=results.options[there.index],
                )
                found.append((index, says))
    return found


def _change(base: First, there: First, *, lost: bool) -> str:
    """Key of what is said of a change from one first option to another."""
    if not there.meets_target:
        return "sweep_answer.change_none_meets" if base.meets_target else "sweep_answer.change_nearest"
    if not base.meets_target:
        return "sweep_answer.change_meets"
    return "sweep_answer.change_first_misses" if lost else "sweep_answer.change_best"


def _of_answer(base: Base, results: Results) -> str:
    first = firsts_of(results)[0]
    changes = [says for _, says in changes_of(results)]
    if changes:
        more = len(changes) - _SHOWN
        key = "sweep_answer.changes_and_more" if more > 0 else "sweep_answer.changes"
        return text(key, changes="; ".join(changes[:_SHOWN]), more=more)
    stays = first is not None and first.meets_target
    option = base.options[base.ranking()[0]]
    if stays:
        return _sentence(base, "stays_cheapest", option=option)
    return text("sweep_answer.stays_nearest", option=option)


def _of_grid(base: Base, results: Results) -> list[str]:
    best = cheapest_of(results)
    counts = [
        text("sweep_answer.grid_part", option=name, count=best.count(index))
        for index, name in enumerate(results.options)
        if best.count(index)
    ]
    none = best.count(None) - len(results.problems)
    if none:
        counts.append(text("sweep_answer.grid_none", count=none))
    return [_sentence(base, "grid", count=results.plan.size, counts="; ".join(counts))]


def _of_random(base: Base, results: Results) -> list[str]:
    found, by = chances_of(results), judged(base)
    if not found.cases:
        return []
    order = np.argsort(-found.cheapest, kind="stable")
    shares = [
        text("sweep_answer.random_share", option=results.options[index], cases=100 * found.cheapest[index])
        for index in order
        if found.cheapest[index] > 0
    ]
    first = int(order[0]) if shares else best_two(base)[0]
    if not shares:
        key = "random_none"
    else:
        key = "random_some_none" if found.none_meets > 0 else "random"
    low, high = (p.value for p in percentiles(by.factor * results.measure(by.measure)[:, first], (10, 90)))
    return [
        _sentence(
            base,
            key,
            shares="; ".join(shares),
            none=100 * found.none_meets,
            draws=found.cases,
            error=200 * found.standard_error(float(found.cheapest[first])),
        ),
        _sentence(
            base,
            "random_cost",
            option=results.options[first],
            low=_amount(base, low),
            high=_amount(base, high),
        ),
    ]


_BY_MODE: dict[str, tuple[str, Callable[[Base, Results], list[str]]]] = {
    "one_at_a_time": ("sweep_answer.nothing_one_at_a_time", _of_tornado),
    "grid": ("sweep_answer.nothing_grid", _of_grid),
    "random": ("sweep_answer.nothing_random", _of_random),
}
"""By the kind of sweep: the sentence where nothing of it worked, and the function that puts it into sentences."""


def _of_weather(spread: WeatherSpread) -> list[str]:
    shares = [
        text("sweep_answer.weather_share", option=name, percent=100 * share)
        for name, share in zip(spread.options, spread.worst_in_ten, strict=True)
    ]
    sentence = text(
        "sweep_answer.measured_weather" if spread.measured else "sweep_answer.synthetic_weather",
        life_year=spread.life_year,
        years=spread.years,
        shares="; ".join(shares),
    )
    if spread.years >= FEW_YEARS:
        return [sentence]
    return [f"{sentence} {text('sweep_answer.few_years', years=spread.years)}"]


def _of_design(base: Base) -> str:
    anew = base.scenario.sweep is not None and base.scenario.sweep.redesign
    return text("sweep_answer.chosen_anew" if anew else "sweep_answer.built_once")


def _sentence(base: Base, key: str, **slots: object) -> str:
    """Words about costs, or about water where there are no prices."""
    return text(f"sweep_answer.{key}" if base.scenario.priced else f"sweep_answer.{key}_technical", **slots)


def _amount(base: Base, value: float) -> str:
    """Write a cost, or what is met of the demand where there are no prices."""
    if not np.isfinite(value):
        return text("sweep_answer.no_value")
    return money(value, base.scenario.currency) if base.scenario.priced else text("sweep_answer.percent", percent=value)
