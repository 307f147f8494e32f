"""From quantities and prices to money by year: what is built, replaced, kept up, burnt, billed and earned."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, fields

import numpy as np
from numpy.typing import ArrayLike

from planner.money.fuel import overhauls_due, replacement_by_hours, times_due, whole_years
from planner.money.quantities import Line
from planner.money.rates import Array, Number, growth_factor
from planner.money.tariff import yearly_bill
from planner.money.terms import Terms


@dataclass(frozen=True)
class Quantities:
    """What one option does in each life year; leading axes are cases.

    Attributes
    ----------
    demand_m3, delivered_m3 : ndarray, (..., n)
        Water wanted and delivered [m³].
    generator_kwh, generator_hours, fuel_l : ndarray, (..., n)
        Generator's energy [kWh], running time [h] and fuel [L].
    grid_kwh : ndarray, (..., n, 12, bands)
        Energy from the grid by month and time band [kWh].
    grid_peak_kw : ndarray, (..., n, 12)
        Highest hourly demand of each month [kW].
    solar_kwh : ndarray, (..., n)
        PV energy used [kWh].
    """

    demand_m3: Array
    delivered_m3: Array
    generator_kwh: Array
    generator_hours: Array
    fuel_l: Array
    grid_kwh: Array
    grid_peak_kw: Array
    solar_kwh: Array


@dataclass(frozen=True)
class CashFlows:
    """Money by year, each (..., n + 1) and broadcastable with the others; costs positive, the residual negative.

    Attributes
    ----------
    construction, replacement, residual, upkeep : ndarray
        Building in year 0, renewal of worn lines, what they are worth at the end (year n), yearly upkeep.
    grid, fuel, generator_service, yearly_costs : ndarray
        Electricity bills, fuel, services and overhauls, other costs that come back each year.
    revenue : ndarray
        What users pay for water (a benefit, positive).
    """

    construction: Array
    replacement: Array
    residual: Array
    upkeep: Array
    grid: Array
    fuel: Array
    generator_service: Array
    yearly_costs: Array
    revenue: Array

    def costs_by_category(self) -> dict[str, Array]:
        """Every cost by its name, the revenue left out."""
        return {field.name: getattr(self, field.name) for field in fields(self) if field.name != "revenue"}

    def total_cost(self) -> Array:
        """Sum of all costs by year, less the residual value, (..., n + 1)."""
        # The smallest arrays first, so that those with many cases are passed over least often.
        parts = sorted(self.costs_by_category().values(), key=lambda part: part.size)
        total = parts[0]
        for part in parts[1:]:
            total = total + part
        return total

    def times(self, factor: Array) -> CashFlows:
        """Every flow times a factor by year, (..., n + 1)."""
        return CashFlows(**{field.name: getattr(self, field.name) * factor for field in fields(self)})


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
    bought, kept_up = _sum_by_life(lines)
    construction: Number = 0.0
    residual: Number = 0.0
    replacement = np.zeros(years + 1)
    for life, cost in bought.items():
        construction = construction + cost
        renewals, left = _renewal(life, years)
        residual = residual + cost * left
        if renewals.any():
            replacement = replacement + _over_years(cost, renewals)
    for line in (line for line in lines if line.by_hours):
        if terms.generator is None:
            raise ValueError(f"'{line.name}' is worn by running hours, but the option has no generator")
        counts, last_left = replacement_by_hours(
            quantities.generator_hours, terms.generator.life_hours, line.life_years
        )
        construction = construction + line.cost
        residual = residual + line.cost * last_left
        if counts.any():
            replacement = replacement + np.asarray(line.cost)[..., None] * _from_year_one(counts)
    first, later, last = np.eye(years + 1)[0], 1 - np.eye(years + 1)[0], np.eye(years + 1)[years]
    return CashFlows(
        construction=_over_years(construction, first),
        replacement=replacement,
        residual=_over_years(-residual, last),
        upkeep=_over_years(kept_up, later),
        grid=_grid(terms, quantities),
        fuel=_per_year(terms.fuel_price_per_l, terms.fuel_price_growth, quantities.fuel_l),
        generator_service=_services(terms, quantities.generator_hours),
        yearly_costs=_over_years(terms.yearly_costs, later),
        revenue=_per_year(terms.water_price_per_m3, 0.0, quantities.delivered_m3),
    )


def _sum_by_life(lines: Sequence[Line]) -> tuple[dict[int, Number], Number]:
    """Cost of the lines worn by years alone, by life in whole years, and the yearly upkeep of all lines."""
    bought: dict[int, Number] = {}
    upkeep: Number = 0.0
    for line in lines:
        upkeep = upkeep + line.cost * (line.upkeep_percent_per_year / 100)
        if not line.by_hours:
            life = whole_years(line.life_years)
            bought[life] = bought.get(life, 0.0) + line.cost
    return bought, upkeep


def _renewal(life: int, years: int) -> tuple[Array, float]:
    """Replacements by year, (n + 1,), and the share of its life that the last one has left."""
    when = np.arange(years + 1)
    renewals = ((when % life == 0) & (when > 0) & (when < years)).astype(float)
    age = years - (years - 1) // life * life
    return renewals, 1 - age / life


def _grid(terms: Terms, quantities: Quantities) -> Array:
    if terms.tariff is None:
        return np.zeros(terms.life_years + 1)
    bill = yearly_bill(terms.tariff, quantities.grid_kwh, quantities.grid_peak_kw).total
    return _per_year(terms.grid_price_factor, terms.grid_price_growth, bill)


def _services(terms: Terms, hours: Array) -> Array:
    generator = terms.generator
    if generator is None:
        return np.zeros(terms.life_years + 1)
    services = times_due(hours, generator.service_interval_h)
    overhauls = overhauls_due(hours, generator.overhaul_interval_h, generator.life_hours, generator.life_years)
    service_cost: Array = np.asarray(terms.service_price)[..., None] * _from_year_one(services)
    overhaul_cost: Array = np.asarray(terms.overhaul_price)[..., None] * _from_year_one(overhauls)
    return service_cost + overhaul_cost


def _over_years(amount: Number, profile: Array) -> Array:
    """An amount (...) times a profile by year (n + 1,): (..., n + 1)."""
    flow: Array = np.asarray(amount, dtype=float)[..., None] * profile
    return flow


def _per_year(price: Number, growth: Number, quantity: Array) -> Array:
    """Price (...) of year 1, growing from year 2, times a yearly quantity (..., n): (..., n + 1), nothing in year 0."""
    prices = np.asarray(price, dtype=float)[..., None] * growth_factor(growth, np.arange(quantity.shape[-1]))
    return _from_year_one(prices * quantity)


def _from_year_one(values: ArrayLike) -> Array:
    """Put a year 0 of nothing before the years 1 to n."""
    later = np.asarray(values, dtype=float)
    flow = np.zeros((*later.shape[:-1], later.shape[-1] + 1))
    flow[..., 1:] = later
    return flow
