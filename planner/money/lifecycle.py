"""Life-cycle figures: present cost, levelised cost, what the owner pays, and saving against a reference."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

import numpy as np

from planner.money.flows import CashFlows, Quantities, flows_of
from planner.money.quantities import Line
from planner.money.rates import (
    Array,
    Number,
    capital_recovery_factor,
    discount_factor,
    growth_factor,
    level_payment,
    present_value,
)
from planner.money.returns import Words, internal_rate_of_return, payback_years, plain
from planner.money.terms import Terms, terms_of
from planner.scenario.scenario import Scenario

__all__ = ["CashFlows", "Comparison", "LifeCycle", "Quantities", "appraise", "cash_flows", "compare", "life_cycle"]


@dataclass(frozen=True)
class LifeCycle:
    """What one option costs over its life; leading axes (...) are cases.

    Attributes
    ----------
    flows : CashFlows
        Money by year in the kind of prices chosen.
    discount_factor : ndarray, (n + 1,) or (..., n + 1)
        Present value of one unit of that money.
    present_cost : ndarray, (...)
        Present value of every cost less the residual value, before grant and loan.
    present_by_category : dict of str to ndarray
        The same by kind of cost.
    revenue_present, npv : ndarray, (...)
        Present value of what users pay, and that less the present cost.
    equivalent_yearly_cost : ndarray, (...)
        Level yearly cost, in money of year 0, of the same present value.
    levelised_cost_per_m3 : ndarray, (...)
        Present cost per present m³ delivered, in money of year 0; NaN where nothing is delivered.
    cost_per_person_year : ndarray, (...)
        Equivalent yearly cost per person of the first year (whatever else is watered too); NaN without people.
    capital_cost : ndarray, (...)
        Construction, before grant and loan.
    co2_kg : ndarray, (..., n)
        Carbon dioxide of fuel, and of the grid where its factor is given [kg].
    owner_flows : ndarray, (..., n + 1)
        Costs that the owner bears: all costs less grant and loan drawn, plus loan payments.
    owner_present_cost : ndarray, (...)
        Their present value.
    grant, loan : ndarray, (...)
        Sums received in year 0.
    loan_payment : ndarray, (..., n + 1)
        Payments of interest and principal in the kind of prices chosen.
    """

    flows: CashFlows
    discount_factor: Array
    present_cost: Array
    present_by_category: dict[str, Array]
    revenue_present: Array
    npv: Array
    equivalent_yearly_cost: Array
    levelised_cost_per_m3: Array
    cost_per_person_year: Array
    capital_cost: Array
    co2_kg: Array
    owner_flows: Array
    owner_present_cost: Array
    grant: Array
    loan: Array
    loan_payment: Array


@dataclass(frozen=True)
class Comparison:
    """One option against a reference, before grant and loan; (...) cases, words plain for a single case.

    Attributes
    ----------
    saving_present : ndarray
        Present cost of the reference less the option's.
    internal_rate_of_return : ndarray
        Rate at which the extra construction equals the later savings, in the kind of prices chosen [fraction per
        year]; NaN where there is none or several.
    irr_reason : str or ndarray of str
        Why it is NaN, '' where it is not.
    simple_payback_years, discounted_payback_years : ndarray
        Years until the extra construction is recovered and stays so; 0 at once, NaN never.
    payback_reason, discounted_payback_reason : str or ndarray of str
        Why they are 0 or NaN, '' elsewhere.
    """

    saving_present: Array
    internal_rate_of_return: Array
    irr_reason: str | Words
    simple_payback_years: Array
    payback_reason: str | Words
    discounted_payback_years: Array
    discounted_payback_reason: str | Words


def cash_flows(scenario: Scenario, sources: Sequence[str], lines: Sequence[Line], quantities: Quantities) -> CashFlows:
    """Money by year of a supply option, in constant prices of year 0; see `flows.flows_of`."""
    return flows_of(terms_of(scenario, sources), lines, quantities)


def life_cycle(scenario: Scenario, sources: Sequence[str], lines: Sequence[Line], quantities: Quantities) -> LifeCycle:
    """Life-cycle figures of a supply option.

    Parameters
    ----------
    scenario : Scenario
        The scenario as it holds for the option.
    sources : sequence of str
        Its sources.
    lines : sequence of Line
        Its bill of quantities.
    quantities : Quantities
        What it does in each life year; leading axes are cases.

    Returns
    -------
    LifeCycle
    """
    terms = terms_of(scenario, sources)
    return appraise(terms, flows_of(terms, lines, quantities), quantities)


def appraise(terms: Terms, flows: CashFlows, quantities: Quantities) -> LifeCycle:
    """Life-cycle figures of money by year.

    Parameters
    ----------
    terms : Terms
        Rules of the money.
    flows : CashFlows
        Money by year, in constant prices of year 0.
    quantities : Quantities
        What the option does in each life year.

    Returns
    -------
    LifeCycle

    Notes
    -----
    Life-cycle cost as in 10 CFR 436.19 and Fuller and Petersen, NIST Handbook 135 (1995). In nominal prices every flow
    rises with inflation and the rate is nominal; volumes, which no inflation touches, are discounted at the real rate
    in both kinds of prices, so that the levelised cost is in money of year 0 (average incremental economic cost, ADB
    Handbook for the Economic Analysis of Water Supply Projects, 1999). Loan payments are level and nominal; in constant
    prices they are deflated.
    """
    years, real = terms.life_years, terms.real_discount_rate
    factor, basis = terms.discount_factor, flows
    if terms.prices == "nominal":
        basis = flows.times(terms.price_level)
    by_category = {name: present_value(flow, factor) for name, flow in basis.costs_by_category().items()}
    present_cost = _sum(by_category.values())
    revenue = present_value(basis.revenue, factor)
    volume = present_value(quantities.delivered_m3, discount_factor(real, years)[..., 1:])
    yearly = present_cost * capital_recovery_factor(real, years)
    capital = np.asarray(basis.construction[..., 0])
    grant, loan = np.asarray(terms.grant_share * capital), np.asarray(terms.loan_share * capital)
    payment = _loan_payments(terms, loan)
    return LifeCycle(
        flows=basis,
        discount_factor=factor,
        present_cost=present_cost,
        present_by_category=by_category,
        revenue_present=revenue,
        npv=revenue - present_cost,
        equivalent_yearly_cost=yearly,
        levelised_cost_per_m3=_ratio(present_cost, volume),
        cost_per_person_year=yearly / (terms.people or np.nan),
        capital_cost=capital,
        co2_kg=_co2_kg(terms, quantities),
        owner_flows=basis.total_cost() + payment - _at_start(grant + loan, years),
        owner_present_cost=present_cost - grant - loan + present_value(payment, factor),
        grant=grant,
        loan=loan,
        loan_payment=payment,
    )


def compare(option: LifeCycle, reference: LifeCycle) -> Comparison:
    """Compare an option with a reference: its extra construction against what its later years save.

    Parameters
    ----------
    option, reference : LifeCycle
        Of the same life and kind of prices; before grant and loan, and without what users pay for water.

    Returns
    -------
    Comparison
    """
    saving = reference.flows.total_cost() - option.flows.total_cost()
    rate, rate_reason = internal_rate_of_return(saving)
    simple, simple_reason = payback_years(saving)
    discounted, discounted_reason = payback_years(saving * option.discount_factor)
    return Comparison(
        saving_present=np.asarray(reference.present_cost - option.present_cost),
        internal_rate_of_return=rate,
        irr_reason=plain(rate_reason),
        simple_payback_years=simple,
        payback_reason=plain(simple_reason),
        discounted_payback_years=discounted,
        discounted_payback_reason=plain(discounted_reason),
    )


def _at_start(amount: Array, years: int) -> Array:
    """Put an amount (...) in year 0: (..., n + 1)."""
    flow: Array = np.zeros((*amount.shape, years + 1)) if amount.any() else np.zeros(years + 1)
    if amount.any():
        flow[..., 0] = amount
    return flow


def _loan_payments(terms: Terms, loan: Array) -> Array:
    """Payments by year, (..., n + 1), deflated where prices are constant."""
    when = np.arange(terms.life_years + 1)
    if not loan.any():
        return np.zeros(when.shape)
    due = ((when >= 1) & (when <= terms.loan_years)).astype(float)
    payment: Array = np.asarray(level_payment(terms.loan_rate, terms.loan_years, loan))[..., None] * due
    if terms.prices == "constant":
        payment = payment * growth_factor(terms.inflation, -when)
    return payment


def _co2_kg(terms: Terms, quantities: Quantities) -> Array:
    emitted = np.zeros(terms.life_years)
    if terms.generator is not None:
        emitted = emitted + quantities.fuel_l * terms.generator.co2_kg_per_l
    if terms.grid_co2_kg_per_kwh is not None:
        emitted = emitted + quantities.grid_kwh.sum(axis=(-1, -2)) * terms.grid_co2_kg_per_kwh
    return emitted


def _ratio(above: Array, below: Array) -> Array:
    shape = np.broadcast_shapes(above.shape, below.shape)
    return np.asarray(np.divide(above, below, out=np.full(shape, np.nan), where=np.broadcast_to(below > 0, shape)))


def _sum(parts: Iterable[Array]) -> Array:
    total: Number = 0.0
    for part in parts:
        total = total + part
    return np.asarray(total)
