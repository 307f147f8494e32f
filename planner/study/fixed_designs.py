"""Designs held fixed while inputs change: what each costs and delivers in a changed scenario, and which is best."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from planner.assumptions.reader import option_scenario
from planner.figures import DAYS, figure
from planner.scenario.scenario import Scenario
from planner.study.cases import Case, Design
from planner.study.context import Context
from planner.study.evaluate import evaluate
from planner.study.results import Results, life_of
from planner.study.varied import Varied

MONEY = ("capital_cost", "present_cost", "equivalent_yearly_cost", "levelised_cost_per_m3")
"""Figures of money by which options are told apart."""


@dataclass(frozen=True)
class OptionSummary:
    """One option in a scenario, its design and its money."""

    design: Design
    modules: int
    delivered_share: float
    worst_year_share: float
    meets_service: bool
    capital_cost: float
    present_cost: float
    equivalent_yearly_cost: float
    levelised_cost_per_m3: float
    days: tuple[float, ...] = ()
    """Days without water, the figures of `figures.DAYS`; where they were asked for."""

    @property
    def name(self) -> str:
        """Name of the option."""
        return self.design.name


@dataclass(frozen=True)
class FixedDesigns:
    """Designs held fixed.

    Attributes
    ----------
    context : Context
        What all scenarios share.
    scenario : Scenario
        The scenario as it stands.
    base : Results
        What each design does there, a case a design.
    """

    context: Context
    scenario: Scenario
    base: Results

    def at_base(self) -> list[OptionSummary]:
        """What every option does in the scenario as it stands."""
        days = np.transpose([figure(key).read(self.base) for key in DAYS])
        return [replace(summary(self.base, index), days=tuple(map(float, row))) for index, row in enumerate(days)]

    def at(
        self, varied: Varied, values: Sequence[float], names: Sequence[str] | None = None
    ) -> list[list[OptionSummary]]:
        """What some options (all, where none are named) do at each of some values of an input.

        Parameters
        ----------
        varied : Varied
            The input.
        values : sequence of float
            Its values: where it changes the hours they go through the same passes, else they are priced at once.
        names : sequence of str, optional
            The options.

        Returns
        -------
        list of list of OptionSummary
            By value, then in the order of the designs.
        """
        if varied.kind == "hours" or self.scenario.overrides:
            # An override may hold a value of its own for the input, so that every scenario is put together by itself.
            return self.in_each([varied.change(self.scenario, value) for value in values], names)
        chosen = [index for index, case in enumerate(self.base.cases) if names is None or case.design.name in names]
        if varied.kind == "service":
            served = [self.base.serve(**varied.service(value)) for value in values]
            return [[summary(self.base, index, meets=bool(each[index])) for index in chosen] for each in served]
        return _by_value([_priced(self.base, index, varied, values) for index in chosen])

    def over(self, down: Varied, down_values: Sequence[float], across: Varied, across_values: Sequence[float]
    ) -> list[list[list[OptionSummary]]]:  # fmt: skip
        """What every option does at all pairs of values of two inputs: by `down`, `across`, then option."""
        scenarios = [down.change(self.scenario, value) for value in down_values]
        if across.kind in ("hours", "service") or self.scenario.overrides:
            return [self.in_each([across.change(each, value) for value in across_values]) for each in scenarios]
        found = evaluate(self.context, self._cases(scenarios))
        width = len(self.base.cases)
        return [
            _by_value([_priced(found, index, across, across_values) for index in range(begin, begin + width)])
            for begin in range(0, len(found.cases), width)
        ]

    def in_each(self, scenarios: Sequence[Scenario], names: Sequence[str] | None = None) -> list[list[OptionSummary]]:
        """What options do in each of some scenarios, whose hours go through the same passes."""
        found = evaluate(self.context, self._cases(scenarios, names))
        width = len(found.cases) // len(scenarios)
        return [
            [summary(found, index) for index in range(begin, begin + width)]
            for begin in range(0, len(found.cases), width)
        ]

    def _cases(self, scenarios: Sequence[Scenario], names: Sequence[str] | None = None) -> list[Case]:
        designs = [case.design for case in self.base.cases if names is None or case.design.name in names]
        return [Case.of(option_scenario(scenario, design.name), design) for scenario in scenarios for design in designs]


def _by_value(options: list[list[OptionSummary]]) -> list[list[OptionSummary]]:
    return [list(each) for each in zip(*options, strict=True)]


def _priced(found: Results, index: int, varied: Varied, values: Sequence[float]) -> list[OptionSummary]:
    """Price one case at every value of an input that leaves its hours as they are."""
    case, count = found.cases[index], len(values)
    life = life_of(
        varied.change(case.scenario, np.asarray(values, dtype=float)),
        case.design.sources,
        np.full(count, case.design.strings),
        np.full(count, case.design.tank_m3),
        found.quantities.taken(np.full(count, index)),
    )
    money = {name: np.broadcast_to(getattr(life, name), count) for name in MONEY}
    return [summary(found, index, {name: float(column[at]) for name, column in money.items()}) for at in range(count)]


def summary(
    found: Results, index: int, money: dict[str, Any] | None = None, *, meets: bool | None = None
) -> OptionSummary:
    """Sum up one case; `money` and `meets` take the place of its costs and of whether it meets the target."""
    case = found.cases[index]
    return OptionSummary(
        design=case.design,
        modules=case.modules,
        delivered_share=float(found.delivered_share[index]),
        worst_year_share=float(found.worst_year_share[index]),
        meets_service=bool(found.meets_service[index]) if meets is None else meets,
        **(money or {name: float(found.money[name][index]) for name in MONEY}),
    )
