"""How sure an answer is: what it rests on, what would turn it, the worst year in ten, and what is too close to call.

All of it is tried with the works as they were chosen, every size held, in one set of trials: those that touch the hours
share their passes, those that touch money alone are priced as arrays.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np

from planner.scenario.scenario import Scenario
from planner.study.changes import Changes
from planner.study.close_call import CloseCall, close_call
from planner.study.context import Context
from planner.study.keys import numeric_keys
from planner.study.ranking import ranked
from planner.study.rests_on import Effect, effects_of, irradiation_trial, numbers_not_given
from planner.study.results import Result
from planner.study.sweep.plan import Plan, ready_plan
from planner.study.switching_values import MOST_OPTIONS, Course, SwitchingValue, matter_most, switching_value
from planner.study.trials import Trial, Tried, try_all
from planner.study.varied import UNCERTAIN, Varied, varied_inputs


@dataclass(frozen=True)
class Uncertainty:
    """What is uncertain about an answer, the works held as they were chosen.

    Attributes
    ----------
    effects : tuple of Effect
        Numbers that were not given, what changes the first option most first.
    switching : tuple of SwitchingValue
        The inputs that matter most of those that a funder asks about.
    call : CloseCall or None
        The first two options in the changes of the ready list of `planner sweep`; None where that changes nothing.
    """

    effects: tuple[Effect, ...]
    switching: tuple[SwitchingValue, ...]
    call: CloseCall | None


def uncertainty_of(context: Context, scenario: Scenario, results: Sequence[Result]) -> Uncertainty:
    """Try what is uncertain about a comparison.

    Parameters
    ----------
    context : Context
        What the options share.
    scenario : Scenario
        The scenario for all options.
    results : sequence of Result
        What every option comes to as it was chosen, in the order of the scenario.
    """
    return _Asked(context, scenario, results).answered()


class _Asked:
    """Gathers trials, has them tried at once, and reads the answers off."""

    def __init__(self, context: Context, scenario: Scenario, results: Sequence[Result]) -> None:
        self.context, self.scenario = context, scenario
        self.chosen = {result.case.design.name: result for result in results}
        self.names = list(self.chosen)
        self.order = ranked(
            [result.meets_service for result in results],
            [float(result.outcome.delivered_share) for result in results],
            [float(result.life.present_cost) for result in results],
        )
        self.trials: list[Trial] = []
        self.index_of: dict[int, int] = {}

    def answered(self) -> Uncertainty:
        """See `uncertainty_of`."""
        keys, changes = numeric_keys(self.scenario), Changes(self.scenario)
        first = self.names[self.order[0]]
        as_it_stands = self.ask(Trial(first, None, {}))
        numbers = list(numbers_not_given(self.context, changes, keys, self.chosen[first].case.design))
        for number in numbers:
            for trial in number.trials:
                self.ask(trial)
        ready = ready_plan(self.scenario, keys)
        pairs = [] if ready is None else list(self._pairs(changes, ready))
        inputs = [each for each in varied_inputs(self.scenario, UNCERTAIN, keys) if not each.without_effect]
        varied = [(each, list(self._course(each))) for each in inputs]
        tried = try_all(self.context, self.chosen, self.trials)

        def met_and_cost(trial: Trial | None) -> tuple[float, float]:
            if trial is None:
                return np.nan, np.nan
            at = self.index_of[id(trial)]
            return 100 * float(tried.delivered_share[at]), float(tried.present_cost[at])

        return Uncertainty(
            effects=effects_of(numbers, met_and_cost, met_and_cost(self.trials[as_it_stands])),
            switching=matter_most([self._switching(tried, *each) for each in varied]),
            call=self._call(tried, pairs),
        )

    def ask(self, trial: Trial | None) -> int:
        """Have a trial tried; its index, -1 for none."""
        if trial is None:
            return -1
        self.trials.append(trial)
        self.index_of[id(trial)] = len(self.trials) - 1
        return len(self.trials) - 1

    def _pairs(self, changes: Changes, ready: Plan) -> Iterator[list[int]]:
        """Indices of the trials of the first two options in each change of the ready list."""
        two = [self.names[index] for index in self.order[:2]]
        yield [self.ask(Trial(name, None, {})) for name in two]
        for values in ready.values[1:]:
            index = int(np.flatnonzero(~np.isnan(values))[0])
            yield [self.ask(changes.trial(name, ready.keys[index], float(values[index]))) for name in two]

    def _call(self, tried: Tried, pairs: list[list[int]]) -> CloseCall | None:
        if len(pairs) < 2:
            return None
        at = np.array(pairs)
        lost = (at < 0) | ~tried.runs[at]
        meets, share, cost = (
            np.where(lost, np.nan, values[at])
            for values in (tried.meets_service, tried.delivered_share, tried.present_cost)
        )
        names = [self.names[index] for index in self.order[:2]]
        return close_call(names, meets, share, cost, priced=self.scenario.priced)

    def _course(self, varied: Varied) -> Iterator[list[int]]:
        """Indices of the trials of an input: by value, then option."""
        names = self._looked_at(varied)
        for value in varied.values:
            yield [self.ask(self._trial(varied, name, value)) for name in names]

    def _trial(self, varied: Varied, name: str, value: float) -> Trial:
        if value == varied.base:
            return Trial(name, None, {})
        if varied.name == "irradiation":
            return irradiation_trial(self.context, self.scenario, name, value / varied.base)
        return varied.trial(name, self.chosen[name].case.scenario, value)

    def _looked_at(self, varied: Varied) -> list[str]:
        """Options that may come first: all, or where hours run anew the first two and the cheapest of the others."""
        if varied.kind != "hours" or len(self.names) <= MOST_OPTIONS:
            return self.names
        cost = [float(result.life.present_cost) for result in self.chosen.values()]
        near = sorted(self.order[2:], key=lambda index: cost[index])[: MOST_OPTIONS - 2]
        return [self.names[index] for index in sorted([*self.order[:2], *near])]

    def _switching(self, tried: Tried, varied: Varied, indices: list[list[int]]) -> SwitchingValue:
        names, at = self._looked_at(varied), np.array(indices)
        course = Course(tuple(names), tried.margin[at], tried.delivered_share[at], tried.present_cost[at])
        first, *others = (self.names[index] for index in self.order[:2])
        second = names.index(others[0]) if others else None
        return switching_value(varied, course, names.index(first), second, priced=self.scenario.priced)


__all__ = ["Uncertainty", "uncertainty_of"]
