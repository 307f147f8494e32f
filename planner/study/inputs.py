"""Inputs of a scenario that could turn a decision: where each stands, its range, and how to change it."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Literal

from planner.scenario.paths import parts_of
from planner.scenario.place import User
from planner.scenario.scenario import Scenario
from planner.scenario.sources import Outages, Tariff
from planner.scenario.walk import field_at

Change = Callable[[Scenario, float], Scenario]
Kind = Literal["linear", "money", "hours"]

MEAN_OUTAGE_H = 3.0
"""Duration of an outage where the scenario has none; assumed, common practice, no source."""


@dataclass(frozen=True)
class VariedInput:
    """One input.

    Attributes
    ----------
    name, key : str
        Short name, and the scenario's key that it changes.
    label, unit : str
        What people call it.
    base, low, high : float
        Its value in the scenario, and the range looked at.
    kind : str
        'linear': present cost is a straight line of it; 'money': it changes prices only; 'hours': the hours run anew.
    change : callable
        Gives the scenario with another value.
    without_effect : str
        Why it cannot matter in this scenario, '' where it can.
    """

    name: str
    key: str
    label: str
    unit: str
    base: float
    low: float
    high: float
    kind: Kind
    change: Change
    without_effect: str = ""

    def text(self, value: float) -> str:
        """Write a value of it with its unit."""
        shown = f"{value:,.0f}" if abs(value) >= 1000 else f"{value:.3g}"
        return f"{shown} {self.unit}"


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
    inputs: list[VariedInput] = []
    if "grid" in sources and scenario.sources.grid is not None:
        inputs += [_tariff(scenario), _outages(scenario), _line(scenario)]
    if "generator" in sources and scenario.sources.generator is not None:
        fuel = scenario.sources.generator.fuel_price_per_l
        inputs.append(
            _price("fuel price", "sources.generator.fuel_price_per_l", f"{scenario.currency}/L", fuel, _set_fuel)
        )
    if "solar" in sources and scenario.sources.solar is not None:
        panel = scenario.sources.solar.module.price
        inputs.append(
            _price(
                "panel price", "sources.solar.module.price", f"{scenario.currency} a panel", panel, _set_panel
            )
        )  # fmt: skip
    return [*inputs, _demand(largest_demand_percent), _discount(scenario)]


def _kind(key: str) -> Kind:
    """How an input works on the present cost: of what changes money alone, all but rates are factors of it."""
    field = field_at(Scenario, parts_of(key))
    assert field is not None
    if field.changes in ("weather", "run"):
        return "hours"
    return "money" if "%" in field.unit else "linear"


def _price(name: str, key: str, unit: str, base: float, change: Change) -> VariedInput:
    nothing = "" if base > 0 else "the scenario gives no price, so there is no scale for it"
    return VariedInput(name, key, f"the {name}", unit, base, 0.0, 5 * base, _kind(key), change, nothing)


def _tariff(scenario: Scenario) -> VariedInput:
    assert scenario.sources.grid is not None
    tariff = scenario.sources.grid.tariff
    if tariff.price_per_kwh is not None and not tariff.bands:
        key = "sources.grid.tariff.price_per_kwh"
        return _price("tariff", key, f"{scenario.currency}/kWh", tariff.price_per_kwh, _set_tariff)
    return VariedInput(
        "tariff", "sources.grid.tariff", "all energy prices of the tariff", "percent of today's",
        100.0, 0.0, 500.0, _kind("sources.grid.tariff.price_per_kwh"), _scale_tariff,
    )  # fmt: skip


def _outages(scenario: Scenario) -> VariedInput:
    assert scenario.sources.grid is not None
    given = scenario.sources.grid.outages
    return VariedInput(
        "outage hours", "sources.grid.outages.hours_per_day", "the outages of the grid", "hours a day",
        0.0 if given is None else given.hours_per_day, 0.0, max(20.0, 0.0 if given is None else given.hours_per_day),
        _kind("sources.grid.outages.hours_per_day"), _set_outages,
    )  # fmt: skip


def _line(scenario: Scenario) -> VariedInput:
    assert scenario.sources.grid is not None
    grid = scenario.sources.grid
    nothing = "" if grid.line_price_per_m > 0 else "sources.grid.line_price_per_m is 0"
    return VariedInput(
        "distance to the grid", "sources.grid.line_length_m", "the distance to the grid", "m",
        grid.line_length_m, 0.0, max(20_000.0, 2 * grid.line_length_m), _kind("sources.grid.line_length_m"), _set_line,
        nothing,
    )  # fmt: skip


def _demand(largest_percent: float) -> VariedInput:
    high = max(100.0, min(200.0, largest_percent))
    return VariedInput(
        "demand",
        "demand.users",
        "the demand for water",
        "percent of today's",
        100.0,
        25.0,
        high,
        _kind("demand.users.count"),
        _scale_demand,
    )


def _discount(scenario: Scenario) -> VariedInput:
    base = scenario.finance.discount_rate_percent
    return VariedInput(
        "discount rate", "finance.discount_rate_percent", "the discount rate", "percent a year",
        base, min(0.0, base), max(30.0, base), _kind("finance.discount_rate_percent"), _set_discount,
    )  # fmt: skip


def _with_source(scenario: Scenario, source: str, **values: object) -> Scenario:
    described = getattr(scenario.sources, source).model_copy(update=values)
    return scenario.model_copy(update={"sources": scenario.sources.model_copy(update={source: described})})


def _with_tariff(scenario: Scenario, **values: object) -> Scenario:
    return _with_source(scenario, "grid", tariff=_tariff_of(scenario).model_copy(update=values))


def _tariff_of(scenario: Scenario) -> Tariff:
    assert scenario.sources.grid is not None
    return scenario.sources.grid.tariff


def _set_tariff(scenario: Scenario, value: float) -> Scenario:
    return _with_tariff(scenario, price_per_kwh=value)


def _scale_tariff(scenario: Scenario, percent: float) -> Scenario:
    tariff, factor = _tariff_of(scenario), percent / 100
    changed: dict[str, object] = {}
    if tariff.price_per_kwh is not None:
        changed["price_per_kwh"] = tariff.price_per_kwh * factor
    for name in ("bands", "blocks"):
        parts = getattr(tariff, name)
        if parts:
            changed[name] = [
                part.model_copy(update={"price_per_kwh": part.price_per_kwh * factor}) for part in parts
            ]  # fmt: skip
    return _with_tariff(scenario, **changed)


def _set_outages(scenario: Scenario, value: float) -> Scenario:
    assert scenario.sources.grid is not None
    given = scenario.sources.grid.outages or Outages(hours_per_day=value, mean_duration_h=MEAN_OUTAGE_H)
    return _with_source(scenario, "grid", outages=given.model_copy(update={"hours_per_day": value}))


def _set_line(scenario: Scenario, value: float) -> Scenario:
    return _with_source(scenario, "grid", line_length_m=value)


def _set_fuel(scenario: Scenario, value: float) -> Scenario:
    return _with_source(scenario, "generator", fuel_price_per_l=value)


def _set_panel(scenario: Scenario, value: float) -> Scenario:
    assert scenario.sources.solar is not None
    module = scenario.sources.solar.module.model_copy(update={"price": value})
    return _with_source(scenario, "solar", module=module)


def _set_discount(scenario: Scenario, value: float) -> Scenario:
    finance = scenario.finance.model_copy(update={"discount_rate_percent": value})
    return scenario.model_copy(update={"finance": finance})


def _scale_demand(scenario: Scenario, percent: float) -> Scenario:
    users = [_scaled(user, percent / 100) for user in scenario.demand.users]
    return scenario.model_copy(update={"demand": scenario.demand.model_copy(update={"users": users})})


def _scaled(user: User, factor: float) -> User:
    if user.kind == "irrigation":
        return user.model_copy(update={"area_m2": user.area_m2 * factor})
    if user.kind == "volume":
        return user.model_copy(update={"m3_per_day": [volume * factor for volume in user.m3_per_day]})
    return user.model_copy(update={"count": user.count * factor})
