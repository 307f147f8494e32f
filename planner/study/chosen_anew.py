"""Works chosen anew while inputs change: of the strings and tanks open to each option the cheapest that serves there.

Candidates are those that pass the checks in the scenario as it stands, with the float-switch levels chosen there.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import TypeVar

import numpy as np
from numpy.typing import NDArray

from planner.assumptions.reader import option_scenario
from planner.scenario.scenario import Scenario
from planner.study.cases import Case, Design
from planner.study.context import Context
from planner.study.evaluate import evaluate
from planner.study.fixed_designs import MONEY, OptionSummary, summary
from planner.study.pareto import cheapest
from planner.study.passing import passing
from planner.study.results import Results, money_of, nearest
from planner.study.search import Choice
from planner.study.varied import Varied

Array = NDArray[np.float64]
Size = TypeVar("Size", int, float)

MOST_SIZES = 4
"""Numbers of strings, and tanks, evenly apart that an option is given at most, beside those next to the chosen ones."""


@dataclass(frozen=True)
class ChosenAnew:
    """Works chosen anew.

    Attributes
    ----------
    context : Context
        What all scenarios share.
    scenario : Scenario
        The scenario as it stands.
    options : tuple of tuple of Design
        What each option may be built as.
    """

    context: Context
    scenario: Scenario
    options: tuple[tuple[Design, ...], ...]

    @staticmethod
    def of(context: Context, scenario: Scenario, choices: Sequence[Choice]) -> ChosenAnew | None:
        """Gather what options may be built as; None where the scenario leaves nothing open of any."""
        options = tuple(_candidates(context, scenario, choice) for choice in choices)
        return ChosenAnew(context, scenario, options) if any(len(each) > 1 for each in options) else None

    def at(
        self, varied: Varied, values: Sequence[float], names: Sequence[str] | None = None
    ) -> list[list[OptionSummary]]:
        """What some options (all, where none are named) are built as, cost and deliver at each value of an input.

        Parameters
        ----------
        varied : Varied
            The input.
        values : sequence of float
            Its values.
        names : sequence of str, optional
            The options.

        Returns
        -------
        list of list of OptionSummary
            By value, then in the order of the options.
        """
        if varied.kind == "hours" or self.scenario.overrides:
            return self.in_each([varied.change(self.scenario, value) for value in values], names)
        found = self._base
        if varied.kind == "service":
            return [self._chosen(found, found.money, found.serve(**varied.service(value)), names) for value in values]
        if varied.kind == "money":
            return [self._chosen(found, self._money(varied, value), found.meets_service, names) for value in values]
        ends = [self._money(varied, end) for end in (varied.low, varied.high)]
        shares = [(value - varied.low) / (varied.high - varied.low) for value in values]
        return [
            self._chosen(
                found,
                {name: (1 - share) * ends[0][name] + share * ends[1][name] for name in MONEY},
                found.meets_service,
                names,
            )
            for share in shares
        ]

    def in_each(self, scenarios: Sequence[Scenario], names: Sequence[str] | None = None) -> list[list[OptionSummary]]:
        """What options are built as in each of some scenarios, whose hours go through the same passes."""
        options = [each for each in self.options if names is None or each[0].name in names]
        found = evaluate(self.context, [case for scenario in scenarios for case in _cases(scenario, options)])
        width = len(found.cases) // len(scenarios)
        return [
            _picked(found, begin, options, found.money, found.meets_service)
            for begin in range(0, len(found.cases), width)
        ]

    @cached_property
    def _base(self) -> Results:
        return evaluate(self.context, _cases(self.scenario, self.options))

    def _money(self, varied: Varied, value: float) -> dict[str, Array]:
        """Costs of every candidate at a value of an input that leaves its hours as they are."""
        return money_of(_cases(varied.change(self.scenario, value), self.options), self._base.quantities)

    def _chosen(
        self, found: Results, money: dict[str, Array], served: NDArray[np.bool_], names: Sequence[str] | None
    ) -> list[OptionSummary]:
        every = _picked(found, 0, self.options, money, served)
        return [each for each in every if names is None or each.name in names]


def _cases(scenario: Scenario, options: Sequence[tuple[Design, ...]]) -> list[Case]:
    """Every candidate of some options in a scenario; those alike in what is not a size share a scenario."""
    cases = []
    for designs in options:
        merged = option_scenario(scenario, designs[0].name)
        known: dict[tuple[int | None, float | None], Scenario] = {}
        for design in designs:
            case = Case.of(known.get((design.series, design.section_mm2), merged), design)
            known[design.series, design.section_mm2] = case.scenario
            cases.append(case)
    return cases


def _picked(
    found: Results,
    begin: int,
    options: Sequence[tuple[Design, ...]],
    money: dict[str, Array],
    served: NDArray[np.bool_],
) -> list[OptionSummary]:
    """Pick each option's cheapest candidate that serves, else the cheapest of those that miss the target least."""
    picked = []
    for designs in options:
        block = slice(begin, begin + len(designs))
        allowed = served[block]
        if not allowed.any():
            service = found.cases[begin].scenario.service
            shares = found.delivered_share[block], found.worst_year_share[block]
            allowed = nearest(service, *shares, found.longest_short_days[block])
        best = cheapest(money["present_cost"][block], allowed)
        assert best is not None
        at = begin + best
        costs = {name: float(money[name][at]) for name in MONEY}
        picked.append(summary(found, at, costs, meets=bool(served[at])))
        begin += len(designs)
    return picked


def _candidates(context: Context, scenario: Scenario, choice: Choice) -> tuple[Design, ...]:
    """Designs open to an option, the chosen one first, so that it is kept among equals."""
    chosen = choice.design
    supply = next(each for each in context.supplies(scenario) if each.name == chosen.name)
    strings, tanks_m3 = _thinned(supply.strings_to_try, chosen.strings), _thinned(supply.tanks_to_try, chosen.tank_m3)
    designs = [sizes.case(chosen.levels).design for sizes in passing(context, supply, strings, tanks_m3)]
    return (chosen, *(design for design in designs if design != chosen))


def _thinned(values: Sequence[Size], chosen: Size) -> tuple[Size, ...]:
    """Keep at most so many of some rising values, the chosen one and those next to it among them."""
    index = values.index(chosen)
    near = {at for at in (index - 1, index, index + 1) if 0 <= at < len(values)}
    even = np.linspace(0, len(values) - 1, min(MOST_SIZES, len(values))).round().astype(int).tolist()
    return tuple(values[at] for at in sorted(near.union(even)))
