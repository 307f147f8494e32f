"""The values of inputs that would turn a decision for or against a source, and a map over two inputs.

Either every option keeps the design of the base case while an input changes (`FixedDesigns`), or its works are chosen
anew at each value (`ChosenAnew`).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Protocol

import numpy as np
from numpy.typing import NDArray

from planner.scenario.scenario import Scenario
from planner.study.fixed_designs import FixedDesigns, OptionSummary
from planner.study.ranking import best_first
from planner.study.switching import Crossing, crossing, limit_between, linear_crossing
from planner.study.varied import Varied, with_base

Array = NDArray[np.float64]

AGREE = 0.001
"""At a switching value the two present costs agree to this share."""
_PRICE_STEPS = (0.25, 0.5, 0.75, 1.0, 1.5, 2.0, 3.0)
_SCAN_STEPS, _FEW_STEPS = 41, 11
"""Values over the range of an input that leaves the hours as they are: designs held, and chosen anew."""
_LIMIT_WIDTH, _FINE_WIDTH, _FAIR_WIDTH = 0.01, 1e-6, 1e-3
"""Width, as a share of the range, to which turning points are found: where hours run anew, and where they do not, the
designs held or chosen anew."""
_MAPS = {
    "grid": (("outage_hours", "tariff"), ("demand", "tariff")),
    "generator": (("outage_hours", "fuel_price"), ("demand", "fuel_price")),
    "solar": (("fuel_price", "module_price"), ("tariff", "module_price")),
}
_MAP_OF_ANY = ("demand", "discount_rate")


@dataclass(frozen=True)
class Turn:
    """A value of an input, nearest to its base, beyond which the answer is the opposite.

    `best` is the best of all options just beyond it, `meets` whether that one meets the target, and `by_service`
    whether the option that is best in the base case has ceased to meet the target there.
    """

    value: float
    best: str
    meets: bool
    by_service: bool


@dataclass(frozen=True)
class Switching:
    """The switching value of one input between the best option with the source and the best without.

    Attributes
    ----------
    varied : Varied
        The input.
    value : float or None
        Where the two present costs are equal; None where they are not within the range.
    others : tuple of float
        Roughly, further such values in the range.
    beyond : float or None
        Where they would be equal outside the range, for straight lines.
    changes : bool
        Whether the input changes the difference at all.
    cost_with, cost_without : float or None
        Both present costs at the value, from the scenario run again there.
    agrees : bool or None
        Whether they agree to 0.1 percent; they may not where a machine's replacement makes the cost jump.
    serve_there : bool or None
        Whether both options serve there as they do in the base case.
    cheapest_there : str or None
        Which of all options is the cheapest there of those that meet the target.
    turns : tuple of Turn
        Where the best of all options becomes one with the source instead of one without it, or the other way round,
        be it by cost or because an option begins or ceases to meet the target: the nearest value on either side.
    """

    varied: Varied
    value: float | None
    others: tuple[float, ...] = ()
    beyond: float | None = None
    changes: bool = True
    cost_with: float | None = None
    cost_without: float | None = None
    agrees: bool | None = None
    serve_there: bool | None = None
    cheapest_there: str | None = None
    turns: tuple[Turn, ...] = ()


@dataclass(frozen=True)
class CheapestMap:
    """Which option is best over two inputs: `best`, `meets` and `present_cost` are (down, across)."""

    down: Varied
    across: Varied
    down_values: tuple[float, ...]
    across_values: tuple[float, ...]
    best: tuple[tuple[str, ...], ...]
    meets: tuple[tuple[bool, ...], ...]
    present_cost: Array


class Designs(Protocol):
    """What options are built as while an input changes; see `FixedDesigns` and `ChosenAnew`."""

    @property
    def scenario(self) -> Scenario:
        """The scenario as it stands."""

    def at(
        self, varied: Varied, values: Sequence[float], names: Sequence[str] | None = None
    ) -> list[list[OptionSummary]]:
        """What some options do at each of some values of an input."""

    def in_each(self, scenarios: Sequence[Scenario], names: Sequence[str] | None = None) -> list[list[OptionSummary]]:
        """What options do in each of some scenarios."""


@dataclass(frozen=True)
class Turning:
    """Looks for what turns a decision about a source.

    Attributes
    ----------
    designs : Designs
        What options are built as.
    source : str
        The source.
    is_fixed : bool
        Whether designs are held, so that costs are straight lines of prices and cheap to work out: inputs are then
        looked at more closely.
    """

    designs: Designs
    source: str
    is_fixed: bool = True

    def prepare(self, inputs: Sequence[Varied]) -> None:
        """Run the hours at every value of some inputs that is looked at first, all in the same passes."""
        scenario = self.designs.scenario
        changed = [
            varied.change(scenario, value) for varied in inputs if varied.kind == "hours" for value in varied.values
        ]
        if changed:
            self.designs.in_each(changed)

    def switching(self, varied: Varied, pair: tuple[OptionSummary, OptionSummary]) -> Switching:
        """Find where the best option with the source and the best without it cost the same, and where the best turns.

        Parameters
        ----------
        varied : Varied
            The input that changes.
        pair : tuple of OptionSummary
            Both options in the base case, the one with the source first.
        """
        if varied.without_effect:
            return Switching(varied, None, changes=False)
        names = [option.name for option in pair]
        scale = max(abs(option.present_cost) for option in pair)

        def gap(values: Array) -> Array:
            both = (_of(names, options) for options in self.designs.at(varied, values.tolist(), names))
            return np.array([having.present_cost - lacking.present_cost for having, lacking in both])

        # The turns first: they run every option at the values between which a crossing is then sought.
        turns = self._turns(varied)
        if varied.kind == "service" and self.is_fixed:
            return Switching(varied, None, changes=False, turns=turns)
        if varied.kind == "linear" and self.is_fixed:
            found = linear_crossing(gap, varied.base, varied.low, varied.high, scale)
        else:
            enough = AGREE / 10 * scale if varied.kind == "hours" else 0.0
            found = crossing(gap, varied.base, self._values(varied), scale, enough)
        return self._verified(varied, found, turns, pair)

    def _verified(
        self, varied: Varied, found: Crossing, turns: tuple[Turn, ...], pair: tuple[OptionSummary, OptionSummary]
    ) -> Switching:
        """Work out the changed scenario at the switching value and compare the two present costs."""
        if found.value is None:
            return Switching(varied, None, beyond=found.beyond, changes=found.changes, turns=turns)
        (there,) = self.designs.in_each([varied.change(self.designs.scenario, found.value)])
        having, lacking = _of([option.name for option in pair], there)
        costs = having.present_cost, lacking.present_cost
        first = best_first(there)[0]
        return Switching(
            varied=varied,
            value=found.value,
            others=found.others,
            changes=True,
            cost_with=costs[0],
            cost_without=costs[1],
            agrees=abs(costs[0] - costs[1]) <= AGREE * max(map(abs, costs)),
            serve_there=all(
                now.meets_service == before.meets_service for now, before in zip((having, lacking), pair, strict=True)
            ),
            cheapest_there=first.name if first.meets_service else None,
            turns=turns,
        )

    def _turns(self, varied: Varied) -> tuple[Turn, ...]:
        """Find where the answer turns, going up and going down, over all options."""
        fine = varied.kind != "hours"
        values = self._values(varied)
        at = dict(zip(values, self._orders(varied, values), strict=True))
        first = at[varied.base][0]
        having = self.source in first.design.sources

        def same(tried: Array) -> NDArray[np.bool_]:
            orders = self._orders(varied, tried.tolist())
            return np.array([(self.source in order[0].design.sources) == having for order in orders])

        share = _LIMIT_WIDTH if not fine else _FINE_WIDTH if self.is_fixed else _FAIR_WIDTH
        width = share * (varied.high - varied.low)
        up = [value for value in values if value >= varied.base]
        down = [value for value in reversed(values) if value <= varied.base]
        turns = []
        for way in (up, down):
            for inside, outside in pairwise(way):
                if (self.source in at[outside][0].design.sources) == having:
                    continue
                value = limit_between(same, inside, outside, width)
                (there,) = self._orders(varied, [value])
                still = next(option.meets_service for option in there if option.name == first.name)
                by_service = first.meets_service and not still
                turns.append(Turn(value, there[0].name, there[0].meets_service, by_service))
                break
        return tuple(turns)

    def _values(self, varied: Varied) -> tuple[float, ...]:
        """Values of an input that are looked at first: many where the hours stay as they are."""
        if varied.kind == "hours":
            return varied.values
        steps = _SCAN_STEPS if self.is_fixed else _FEW_STEPS
        return tuple(sorted({*np.linspace(varied.low, varied.high, steps).tolist(), varied.base}))

    def _orders(self, varied: Varied, values: Sequence[float]) -> list[list[OptionSummary]]:
        """Every option, best first, at each of some values of an input."""
        return [best_first(options) for options in self.designs.at(varied, values)]


def map_of(fixed: FixedDesigns, source: str, inputs: Sequence[Varied]) -> CheapestMap | None:
    """Find the best option over two of some inputs; None where those that the source's map is of are not there."""
    known = {varied.name: varied for varied in inputs if not varied.without_effect}
    pairs = (*_MAPS.get(source, ()), _MAP_OF_ANY)
    chosen = next((pair for pair in pairs if pair[0] in known and pair[1] in known), None)
    if chosen is None:
        return None
    down, across = (known[name] for name in chosen)
    down_values, across_values = _map_values(down), _map_values(across)
    rows = fixed.over(down, down_values, across, across_values)
    best = [[best_first(options)[0] for options in row] for row in rows]
    return CheapestMap(
        down,
        across,
        down_values,
        across_values,
        tuple(tuple(option.name for option in row) for row in best),
        tuple(tuple(option.meets_service for option in row) for row in best),
        np.array([[option.present_cost for option in row] for row in best]),
    )


def _of(names: Sequence[str], options: Sequence[OptionSummary]) -> tuple[OptionSummary, OptionSummary]:
    """Pick two options by their names, in this order."""
    by_name = {option.name: option for option in options}
    return by_name[names[0]], by_name[names[1]]


def _map_values(varied: Varied) -> tuple[float, ...]:
    if varied.kind == "hours":
        return varied.values
    if varied.kind == "linear":
        return tuple(varied.base * step for step in _PRICE_STEPS)
    return with_base(np.linspace(varied.low, varied.high, 7).tolist(), varied.base)
