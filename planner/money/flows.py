"""From quantities and prices to money by year: what is built, replaced, kept up, burnt, billed and earned."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

import numpy as np

from planner.money.formula import Operand
from planner.money.fuel import wear
from planner.money.functions import both, equals, floor, maximum, remainder, total, weighted_total, where
from planner.money.quantities import Line
from planner.money.rates import Array, Number, by_case
from planner.money.simulated import Quantities
from planner.money.tariff import yearly_bill
from planner.money.terms import Terms
from planner.money.yearly import Column, by_year
from planner.scenario import equipment
from planner.scenario.operands import with_operands


@dataclass(frozen=True)
class CashFlows:
    """Money by year, each (..., n + 1) and broadcastable with the others; costs positive, the residual negative.

    Attributes
    ----------
    construction, replacement, residual, upkeep : ndarray
        Building in year 0, renewal of worn lines, what they are worth at the end (year n), yearly upkeep.
    grid, fuel, generator_service, yearly_costs, direct_support : ndarray
        Electricity bills, fuel, services and overhauls, other costs that come back each year, and the authority's
        support.
    revenue : ndarray
        What users pay for water (a benefit, positive).
    further : mapping of str to ndarray
        Running costs by category of sources that have categories of their own.
    """

    construction: Array
    replacement: Array
    residual: Array
    upkeep: Array
    grid: Array
    fuel: Array
    generator_service: Array
    yearly_costs: Array
    direct_support: Array
    revenue: Array
    further: Mapping[str, Array] = field(default_factory=dict)

    def columns(self) -> dict[str, Array]:
        """Every flow by its name."""
        return {name: values for name, values in vars(self).items() if name != "further"} | dict(self.further)

    def costs_by_category(self) -> dict[str, Array]:
        """Every cost by its name, the revenue left out."""
        return {name: values for name, values in self.columns().items() if name != "revenue"}

    def total_cost(self) -> Array:
        """Sum of all costs by year, less the residual value, (..., n + 1)."""
        return np.asarray(total(list(self.costs_by_category().values())))

    def times(self, factor: Array) -> CashFlows:
        """Every flow times a factor by year, (..., n + 1)."""
        further = {name: values * factor for name, values in self.further.items()}
        usual = {name: values * factor for name, values in vars(self).items() if name != "further"}
        return CashFlows(**usual, further=further)


def whole_years(life_years: Operand) -> Operand:
    """Round a life to whole years, as `scenario.equipment` defines it, for numbers and for cells."""
    return equipment.whole_years(life_years, maximum, floor)


def renewals(whole_life: Operand, year: Operand, life_years: Operand) -> Operand:
    """1 in each year in which a line is replaced: at each multiple of its life before the end, else 0."""
    return where(both(equals(remainder(year, whole_life), 0), year < life_years), 1, 0)


def share_left(whole_life: Operand, life_years: Operand) -> Operand:
    """Share of its life that the last one bought of a line has left at the end (straight line)."""
    return 1 - (life_years - floor((life_years - 1) / whole_life) * whole_life) / whole_life


RUNNING = ("grid", "fuel", "generator_service")
"""Categories of running costs that every report shows; what a source costs to run is defined by the source."""
FLOWS = (
    Column("construction", first=lambda y: y.build),
    Column(
        "replacement",
        later=lambda y: weighted_total(y.line_costs, y.renewals) + weighted_total(y.worn_costs, y.bought_by_hours),
    ),
    Column(
        "residual",
        last=lambda y: -(weighted_total(y.line_costs, y.shares_left) + weighted_total(y.worn_costs, y.left_by_hours)),
    ),
    Column("upkeep", later=lambda y: y.yearly_upkeep),
    *(Column(name) for name in RUNNING),
    Column("yearly_costs", later=lambda y: y.yearly_costs),
    Column("direct_support", later=lambda y: y.direct_support),
    Column("revenue", later=lambda y: y.delivered_m3 * y.water_price_per_m3),
)
"""Money by year in constant prices, without running costs; given are `Terms`, `Quantities` and what `flows_of` makes of
lines and wear."""
CATEGORIES = tuple(column.key for column in FLOWS if column.key != "revenue")
"""Kinds of cost."""


def flow_columns(terms: Terms) -> tuple[Column, ...]:
    """Columns of money by year of an option: those of all options, with what its sources cost to run in them."""
    by_key = {column.key: column for column in terms.running}
    usual = tuple(by_key.pop(column.key, column) for column in FLOWS)
    return usual + tuple(by_key.values())


def flows_of(terms: Terms, lines: Sequence[Line], quantities: Quantities) -> CashFlows:
    """Turn quantities into money of year 0 by year.

    Parameters
    ----------
    terms : Terms
        Prices and rules.
    lines : sequence of Line
        Bill of quantities.
    quantities : Quantities
        What the option does in each life year.

    Returns
    -------
    CashFlows
        In constant prices of year 0.

    Raises
    ------
    ValueError
        When the quantities are not of as many years as the terms count, or a line worn by hours has no generator.

    Notes
    -----
    Year-end flows. A line is replaced at each multiple of its life, in whole years, before the end; the last one's
    residual value in year n is its price times the share of its life left (straight line; EU Guide to Cost-Benefit
    Analysis of Investment Projects 2014, from memory). Grid and fuel prices are those of the first year in year 1 and
    grow from year 2.
    """
    years = terms.life_years
    if quantities.delivered_m3.shape[-1] != years:
        raise ValueError(f"the quantities hold {quantities.delivered_m3.shape[-1]} years, the terms count {years}")
    given = {name: by_case(value) for name, value in vars(terms).items()}
    given |= {"delivered_m3": quantities.delivered_m3, "top_ups": quantities.top_ups}
    given |= _of_lines(lines, years) | _of_wear(terms, lines, quantities.generator_hours)
    given["grid_bill"] = 0.0
    if terms.tariff is not None:
        tariff = with_operands(terms.tariff, lambda _, value: by_case(value))
        given["grid_bill"] = yearly_bill(tariff, quantities.grid_kwh, quantities.grid_peak_kw).total
    found = by_year(flow_columns(terms), given, years)
    usual = {column.key: found.pop(column.key) for column in FLOWS}
    return CashFlows(**usual, further=found)


def _of_lines(lines: Sequence[Line], years: int) -> dict[str, Any]:
    """What the bill of quantities gives: lines of the same life are taken together."""
    build: Number = 0.0
    upkeep: Number = 0.0
    lives: dict[Any, tuple[Number, Number]] = {}
    for line in lines:
        build, upkeep = build + line.cost, upkeep + line.cost * (line.maintenance_percent_per_year / 100)
        if not line.by_hours:
            life = whole_years(line.life_years)
            key = life if np.ndim(life) == 0 else id(line)
            lives[key] = (life, lives[key][1] + line.cost if key in lives else line.cost)
    when = np.arange(1.0, years + 1)
    return {
        "build": by_case(build),
        "yearly_upkeep": by_case(upkeep),
        "line_costs": [by_case(cost) for _, cost in lives.values()],
        "renewals": [renewals(by_case(life), when, years) for life, _ in lives.values()],
        "shares_left": [share_left(by_case(life), years) for life, _ in lives.values()],
    }


def _of_wear(terms: Terms, lines: Sequence[Line], hours: Array) -> dict[str, Any]:
    """What running hours give: services and overhauls, and the renewal of lines that they wear out."""
    worn = [line for line in lines if line.by_hours]
    generator = terms.generator
    if generator is None:
        if worn:
            raise ValueError(f"'{worn[0].label}' is worn by running hours, but the option has no generator")
        return {"services": 0.0, "overhauls": 0.0, "worn_costs": [], "bought_by_hours": [], "left_by_hours": []}

    intervals = generator.service_interval_h, generator.overhaul_interval_h
    machine = wear(hours, generator.life_hours, whole_years(generator.life_years), *intervals)
    found = [
        machine
        if line.life_years is generator.life_years
        else wear(hours, generator.life_hours, whole_years(line.life_years), *intervals)
        for line in worn
    ]
    return {
        "services": machine.services,
        "overhauls": machine.overhauls,
        "worn_costs": [by_case(line.cost) for line in worn],
        "bought_by_hours": [each.bought for each in found],
        "left_by_hours": [by_case(each.left) for each in found],
    }
