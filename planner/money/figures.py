"""Definitions of the figures that sum up an option's money, for arrays and for cells.

Life-cycle cost as in 10 CFR 436.19 and Fuller and Petersen, NIST Handbook 135 (1995). In nominal prices every flow
rises with inflation and the rate is nominal; volumes, which no inflation touches, are discounted at the real rate in
both kinds of prices, so that the levelised cost is in money of year 0 (average incremental economic cost, ADB Handbook
for the Economic Analysis of Water Supply Projects, 1999). Loan payments are level and nominal; in constant prices they
are deflated.
"""

from __future__ import annotations

from collections.abc import Iterable
from functools import partial
from typing import Any

from planner.money.flows import CATEGORIES
from planner.money.formula import Operand, Word
from planner.money.functions import level_payment, ratio, total, weighted_total, where
from planner.money.rates import growth_factor, present_worth_factor
from planner.money.yearly import Column, Definition

COMPONENTS: dict[str, tuple[str, ...]] = {
    "capital_expenditure": ("construction",),
    "operation": ("upkeep", "grid", "fuel", "generator_service", "yearly_costs"),
    "capital_maintenance": ("replacement",),
    "expenditure_on_direct_support": ("direct_support",),
    "residual_value": ("residual",),
}
"""Components of life-cycle cost as funders count them; the generator's overhauls go with its services."""


def _loan_payment(y: Any) -> Operand:
    deflator = 1.0 if y.nominal else growth_factor(y.inflation, y.year)
    level = level_payment(y.loan_rate, y.loan_years, y.start.loan_received)
    return where(y.year <= y.loan_years, level / deflator, 0)


FINANCED = (
    Column("price_level", every=lambda y: growth_factor(y.inflation, y.year) if y.nominal else 1.0, summed=False),
    Column("total_cost", every=lambda y: total(y.costs)),
    Column("discount_factor", every=lambda y: present_worth_factor(y.discount_rate, y.year), summed=False),
    Column("present_value", every=lambda y: y.total_cost * y.discount_factor),
    Column("grant_received", first=lambda y: y.start.construction * y.grant_share),
    Column("loan_received", first=lambda y: y.start.construction * y.loan_share),
    Column("loan_payment", later=_loan_payment),
    Column("owner_cost", every=lambda y: y.total_cost - y.grant_received - y.loan_received + y.loan_payment),
    Column("water_present_m3", later=lambda y: y.delivered_m3 * present_worth_factor(y.real_discount_rate, y.year)),
)
"""What follows by year from the flows of `flows.FLOWS` in the prices of each year, of which `y.costs` are the costs."""
SHOWN = (
    Column("cumulated", running="present_value", summed=False),
    Column("owner_present_value", every=lambda y: y.owner_cost * y.discount_factor),
)
"""What a reader wants to see beside it."""


def _present(column: str, o: Any) -> Operand:
    return weighted_total(getattr(o, column), o.discount_factor)


def _component(names: tuple[str, ...], o: Any) -> Operand:
    return sum((getattr(o, f"{name}_present") for name in names), 0.0)


def _presents(categories: Iterable[str]) -> dict[str, Definition]:
    return {f"{name}_present": partial(_present, name) for name in categories}


FIGURES: dict[str, Definition] = {
    "capital_cost": lambda o: o.start.construction,
    "present_cost": lambda o: total(o.present_value),
    **_presents(CATEGORIES),
    "equivalent_yearly_cost": lambda o: level_payment(o.real_discount_rate, o.life_years, o.present_cost),
    "levelised_cost_per_m3": lambda o: where(
        total(o.water_present_m3) > 0, ratio(o.present_cost, total(o.water_present_m3)), Word("nothing delivered")
    ),
    "cost_per_person_year": lambda o: where(o.people > 0, ratio(o.equivalent_yearly_cost, o.people), Word("no people")),
    "revenue_present": partial(_present, "revenue"),
    "npv": lambda o: o.revenue_present - o.present_cost,
    "grant": lambda o: o.start.grant_received,
    "loan": lambda o: o.start.loan_received,
    "own_funds": lambda o: o.capital_cost - o.grant - o.loan,
    "owner_present_cost": partial(_present, "owner_cost"),
    **{name: partial(_component, parts) for name, parts in COMPONENTS.items()},
    "cost_of_capital": lambda o: _present("loan_payment", o) - o.loan,
}
"""Figures of an option; `o` holds columns over the years, `o.start` them in year 0, and the figures above each."""


def figures_with(further: Iterable[str]) -> dict[str, Definition]:
    """Figures of an option whose sources have further categories of running cost, which count as operation."""
    names = tuple(further)
    if not names:
        return FIGURES
    operation = partial(_component, COMPONENTS["operation"] + names)
    return _presents(names) | FIGURES | {"operation": operation}
