"""Inputs of a scenario that could turn a decision: the keys that each changes, where it stands, and its range."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Any, Literal

import numpy as np
from numpy.typing import NDArray

from planner.scenario.operands import value_at, with_arrays
from planner.scenario.paths import Path, parts_of
from planner.scenario.scenario import Scenario
from planner.scenario.sources import Outages
from planner.scenario.walk import field_at
from planner.study.keys import numeric_keys
from planner.text import number, text

Array = NDArray[np.float64]
Kind = Literal["linear", "money", "service", "hours"]

MEAN_OUTAGE_H = 3.0
"""Duration of an outage where the scenario has none; assumed, common practice, no source."""
_TARIFF, _OUTAGES = "sources.grid.tariff", "sources.grid.outages"
_USERS = ("count", "area_m2", "m3_per_day")
"""Keys of users to which what they draw is in proportion."""


@dataclass(frozen=True)
class VariedInput:
    """One input.

    Attributes
    ----------
    name, key : str
        Name by which it is known here and in the texts, and the scenario's key that it changes.
    unit : str
        Its unit, for people.
    base, low, high : float
        Its value in the scenario, and the range looked at.
    kind : str
        'linear': present cost is a straight line of it; 'money': it changes prices only; 'service': what is asked for;
        'hours': the hours run anew.
    paths : tuple of tuple
        Keys that it sets or multiplies.
    of_today : bool
        Whether its values are per cent of today's, so that it multiplies.
    without_effect : str
        Why it cannot matter in this scenario, '' where it can.
    """

    name: str
    key: str
    unit: str
    base: float
    low: float
    high: float
    kind: Kind
    paths: tuple[Path, ...]
    of_today: bool = False
    without_effect: str = ""

    @property
    def source(self) -> str:
        """Source that it belongs to, '' where it belongs to none."""
        table, *below = _names(parts_of(self.key))
        return below[0] if table == "sources" else ""

    @property
    def label(self) -> str:
        """What people call it, in a table."""
        return text(f"worth_input.{self.name}")

    @property
    def phrase(self) -> str:
        """What people call it, in a sentence."""
        return text(f"worth_input.the_{self.name}{'_of_today' if self.of_today else ''}")

    def with_unit(self, value: float) -> str:
        """Write a value of it with its unit."""
        shown = number(value, ",.0f" if abs(value) >= 1000 else ".3g")
        return f"{shown} {self.unit}"

    def service(self, value: float) -> dict[str, float]:
        """Put another value of it into the service to be given."""
        return {str(path[-1]): value for path in self.paths}

    def change(self, scenario: Scenario, value: float | Array) -> Scenario:
        """Put another value of it into a scenario, or one for each of some cases that differ in money alone."""
        if self.key.startswith(_OUTAGES):
            scenario = _with_outages(scenario)
        if not self.of_today:
            return with_arrays(scenario, dict.fromkeys(self.paths, value))
        return with_arrays(scenario, {path: value_at(scenario, path) * (value / 100) for path in self.paths})


def inputs_of(scenario: Scenario, sources: Sequence[str], largest_demand_percent: float = 200.0) -> list[VariedInput]:
    """List the inputs that matter to options of some sources.

    Parameters
    ----------
    scenario : Scenario
        The scenario.
    sources : sequence of str
        Sources of the options compared.
    largest_demand_percent : float
        Upper end of the range of demand.
    """
    currency = scenario.currency
    inputs: list[VariedInput] = []
    if scenario.sources.grid is not None:
        inputs += _of_grid(_with_outages(scenario))
    if scenario.sources.generator is not None:
        inputs.append(_price(scenario, "fuel_price", "sources.generator.fuel_price_per_l", f"{currency}/L"))
    if scenario.sources.solar is not None:
        unit = text("worth_input.unit_per_panel", currency=currency)
        inputs.append(_price(scenario, "panel_price", "sources.solar.module.price", unit))
    inputs = [varied for varied in inputs if varied.source in sources]
    most = max(100.0, min(200.0, largest_demand_percent))
    drawn = tuple(path for path in _numbers(scenario, "demand.users") if _names(path)[-1] in _USERS)
    rate = scenario.finance.discount_rate_percent
    return [
        *inputs,
        _scaled("demand", "demand.users", 25.0, most, drawn),
        _input(scenario, "discount_rate", "finance.discount_rate_percent", text("worth_input.unit_percent_a_year"),
               min(0.0, rate), max(30.0, rate)),
        _input(scenario, "target", "service.demand_met_percent", text("worth_input.unit_of_demand"),
               min(50.0, scenario.service.demand_met_percent), 100.0),
    ]  # fmt: skip


def _of_grid(scenario: Scenario) -> Iterator[VariedInput]:
    grid = scenario.sources.grid
    assert grid is not None
    assert grid.outages is not None
    if grid.tariff.price_per_kwh is not None and not grid.tariff.bands:
        yield _price(scenario, "tariff", f"{_TARIFF}.price_per_kwh", f"{scenario.currency}/kWh")
    else:
        prices = tuple(path for path in _numbers(scenario, _TARIFF) if path[-1] == "price_per_kwh")
        yield _scaled("tariff", _TARIFF, 0.0, 500.0, prices)
    off_h, length_m = grid.outages.hours_per_day, grid.line_length_m
    yield _input(scenario, "outage_hours", f"{_OUTAGES}.hours_per_day", text("worth_input.unit_hours_a_day"),
                 0.0, max(20.0, off_h))  # fmt: skip
    nothing = "" if grid.line_price_per_m > 0 else text("worth_input.no_line_price")
    yield _input(
        scenario, "grid_distance", "sources.grid.line_length_m", "m", 0.0, max(20_000.0, 2 * length_m), nothing
    )


def _input(
    scenario: Scenario, name: str, key: str, unit: str, low: float, high: float, without_effect: str = ""
) -> VariedInput:
    path = parts_of(key)
    base = float(value_at(scenario, path))
    return VariedInput(name, key, unit, base, low, high, _kind(path), (path,), without_effect=without_effect)


def _price(scenario: Scenario, name: str, key: str, unit: str) -> VariedInput:
    base = float(value_at(scenario, parts_of(key)))
    nothing = "" if base > 0 else text("worth_input.no_price")
    return _input(scenario, name, key, unit, 0.0, 5 * base, nothing)


def _scaled(name: str, key: str, low: float, high: float, paths: tuple[Path, ...]) -> VariedInput:
    unit = text("worth_input.unit_of_today")
    return VariedInput(name, key, unit, 100.0, low, high, _kind(paths[0]), paths, of_today=True)


def _kind(path: Path) -> Kind:
    """How an input works on the life-cycle cost: of what changes money alone, all but rates are factors of it."""
    field = field_at(Scenario, path)
    assert field is not None
    if path[0] == "service":
        return "service"
    if field.changes in ("weather", "run"):
        return "hours"
    return "money" if "%" in field.unit else "linear"


def _names(path: Path) -> list[str]:
    return [part for part in path if isinstance(part, str)]


def _numbers(scenario: Scenario, key: str) -> Iterator[Path]:
    """Paths of every number below a key."""
    for known in numeric_keys(scenario).values():
        if _names(known.path)[: len(_names(parts_of(key)))] == _names(parts_of(key)) and known.base is not None:
            yield known.path


def _with_outages(scenario: Scenario) -> Scenario:
    """Give the grid outages of no hours where the scenario has none."""
    grid = scenario.sources.grid
    if grid is None or grid.outages is not None:
        return scenario
    never: dict[str, Any] = {"outages": Outages(hours_per_day=0.0, mean_duration_h=MEAN_OUTAGE_H)}
    sources = scenario.sources.model_copy(update={"grid": grid.model_copy(update=never)})
    return scenario.model_copy(update={"sources": sources})
