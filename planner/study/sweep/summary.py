"""What a sweep says: tornado, chances and percentiles by option, and plain sentences."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from planner.study.sweep.engine import MEASURES
from planner.study.sweep.run import Base, Results, SweepResult, ranking_of
from planner.study.sweep.statistics import Chances, Swing, chances, percentiles, tornado
from planner.study.sweep.weather import WeatherSpread
from planner.study.words import money

Array = NDArray[np.float64]

_SHOWN = 6
"""Changes of the answer named in a sentence."""
FEW_YEARS = 10
"""Below so many weather years a worst year in ten is little more than the worst year."""


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
    """Tornado of present cost and levelised cost of the best option, and of its lead over the second best.

    Parameters
    ----------
    base : Base
        The scenario as it stands.
    results : Results
        Of a sweep one at a time.
    """
    first, second = best_two(base)
    name = base.options[first]
    wanted: list[tuple[str, str, int | None]] = [
        (f"Present cost of {name}", "present_cost", None),
        (f"Levelised cost of {name}", "levelised_cost_per_m3", None),
    ]
    if second is not None:
        wanted.append((f"Present cost of {base.options[second]} less that of {name}", "present_cost", second))
    found = []
    for title, measure, other in wanted:
        values = results.measure(measure)
        result = values[:, first] if other is None else values[:, other] - values[:, first]
        found.append(Tornado(title, float(result[0]), tornado(result[0], result[1::2], result[2::2])))
    return found


def ends_of(results: Results, place: int) -> tuple[float, float]:
    """Low and high value of an input moved one at a time."""
    return float(results.plan.values[1 + 2 * place, place]), float(results.plan.values[2 + 2 * place, place])


@dataclass(frozen=True)
class First:
    """The option ranked first in a case: its place, and whether it meets the target."""

    place: int
    meets_target: bool


def firsts_of(results: Results) -> list[First | None]:
    """Option ranked first in each variant, as the comparison ranks; None where the variant failed."""
    serves = results.measure("meets_service") > 0.5
    found: list[First | None] = []
    for variant, numbers in enumerate(results.numbers):
        if variant in results.problems:
            found.append(None)
            continue
        place = ranking_of(numbers)[0]
        found.append(First(place, bool(serves[variant, place])))
    return found


def first_words(first: First | None, options: Sequence[str]) -> str:
    """Name the option ranked first in a case, for a table."""
    if first is None:
        return "no value"
    return options[first.place] if first.meets_target else f"{options[first.place]}, misses the target"


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
    said = []
    for results in swept.results:
        if not results.worked:
            said.append(f"Nothing {results.plan.mode} could be worked out; the first reason: {results.first_reason}.")
        elif results.plan.mode == "one at a time":
            said += _of_tornado(swept.base, results)
        elif results.plan.mode == "grid":
            said += _of_grid(results)
        else:
            said += _of_random(swept.base, results)
    if swept.weather is not None:
        said.append(_of_weather(swept.weather))
    if swept.results:
        said.append(_of_design(swept.base))
    failed = sum(len(results.problems) for results in swept.results)
    if failed:
        count = sum(results.plan.size for results in swept.results)
        said.append(
            f"{failed} of {count} variants could not be worked out and are left out; they are listed with the reason."
        )
    return said


def _of_tornado(base: Base, results: Results) -> list[str]:
    currency = base.scenario.currency
    cost = tornadoes(base, results)[0]
    worst = cost.swings[0]
    key = results.plan.keys[worst.place]
    low, high = ends_of(results, worst.place)
    said = []
    if np.isfinite(worst.swing) and worst.swing > 0:
        said.append(
            f"Moved one at a time, {key.text} matters most: as it goes from {low:g} to {high:g}, the present cost of "
            f"{base.options[best_two(base)[0]]} goes from {_money(worst.low, currency)} to "
            f"{_money(worst.high, currency)} ({_money(cost.base, currency)} as it stands)."
        )
    said.append(_of_answer(base, results))
    return said


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
    for place, key in enumerate(results.plan.keys):
        for variant in (1 + 2 * place, 2 + 2 * place):
            there = firsts[variant]
            if there is not None and there != base:
                lost = base.meets_target and not serves[variant, base.place]
                words = _change_words(results.options, base, there, lost=lost)
                found.append((place, f"{key.text} at {results.plan.values[variant, place]:g} ({words})"))
    return found


def _change_words(options: Sequence[str], base: First, there: First, *, lost: bool) -> str:
    name = options[there.place]
    if not there.meets_target:
        return "no option meets the target" if base.meets_target else f"{name} comes nearest"
    if not base.meets_target:
        return f"{name} meets the target"
    return f"{options[base.place]} misses the target, {name} is best" if lost else f"{name} is best"


def _of_answer(base: Base, results: Results) -> str:
    first = firsts_of(results)[0]
    changes = [words for _, words in changes_of(results)]
    if changes:
        more = f"; and {len(changes) - _SHOWN} more" if len(changes) > _SHOWN else ""
        return f"Moved alone, these change the answer: {'; '.join(changes[:_SHOWN])}{more}."
    best = base.options[base.ranking()[0]]
    stays = (
        f"{best} stays the cheapest option that meets the target"
        if first is not None and first.meets_target
        else f"no option meets the target, and {best} stays nearest to it"
    )
    return f"None of the inputs, moved alone within its range, changes the answer: {stays}."


def _of_grid(results: Results) -> list[str]:
    best = cheapest_of(results)
    parts = [
        f"{name} in {best.count(place)}" for place, name in enumerate(results.options) if best.count(place)
    ]  # fmt: skip
    none = best.count(None) - len(results.problems)
    if none:
        parts.append(f"none meets the target in {none}")
    return [f"Of the {results.plan.size} combinations of the grid, the cheapest that serves is {'; '.join(parts)}."]


def _of_random(base: Base, results: Results) -> list[str]:
    found = chances_of(results)
    currency = base.scenario.currency
    order = np.argsort(-found.cheapest, kind="stable")
    shares = "; ".join(
        f"{results.options[place]} in {100 * found.cheapest[place]:.0f}" for place in order if found.cheapest[place] > 0
    )
    said = f"Of 100 cases drawn at random, the cheapest that serves is {shares or 'none'}"
    if found.none_meets > 0:
        said += f"; no option meets the target in {100 * found.none_meets:.0f}"
    first = int(order[0]) if shares else best_two(base)[0]
    low, high = (p.value for p in percentiles(results.measure("present_cost")[:, first], (10, 90)))
    error = 2 * found.standard_error(float(found.cheapest[first]))
    return [
        f"{said} ({found.cases} draws, so give or take {100 * error:.0f}).",
        f"The present cost of {results.options[first]} is more than {_money(low, currency)} in 90 of 100 cases, and "
        f"more than {_money(high, currency)} in 10 of 100.",
    ]


def _of_weather(spread: WeatherSpread) -> str:
    shares = "; ".join(
        f"{name} {100 * share:.1f}"
        for name, share in zip(spread.options, spread.worst_in_ten, strict=True)
    )  # fmt: skip
    kind = "measured" if spread.measured else "synthetic"
    said = (
        f"With the demand of life year {spread.life_year}, nine of ten {kind} weather years ({spread.years} were run) "
        f"deliver at least this percentage of the water: {shares}."
    )
    if spread.years < FEW_YEARS:
        said += f" With only {spread.years} this is little more than the worst of them."
    return said


def _of_design(base: Base) -> str:
    if base.scenario.sweep is not None and base.scenario.sweep.redesign:
        return "What the scenario leaves to the tool (tank, strings, float switch) was chosen anew in each variant."
    return (
        "Tank, strings and float switch stay as they were chosen for the scenario as it stands, unless swept "
        "themselves: the works are built once."
    )


def _money(value: float, currency: str) -> str:
    return money(value, currency) if np.isfinite(value) else "no value"
