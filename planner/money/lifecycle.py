"""Life-cycle figures: present cost, levelised cost, what the owner pays, and saving against a reference."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from types import SimpleNamespace
from typing import Any

import numpy as np

from planner.money.figures import FINANCED, SHOWN, figures_with
from planner.money.flows import CashFlows, flows_of
from planner.money.formula import Operand
from planner.money.quantities import Line, PricedSource
from planner.money.rates import Array, by_case
from planner.money.returns import COMPARED, RETURNS, Words, returns_of
from planner.money.simulated import Quantities
from planner.money.terms import Payers, Terms, terms_of
from planner.money.users import users_of
from planner.money.yearly import by_year
from planner.scenario.scenario import Scenario

__all__ = ["CashFlows", "Comparison", "LifeCycle", "Quantities", "appraise", "cash_flows", "compare", "life_cycle"]


_NAMED = (
    "present_cost", "revenue_present", "npv", "equivalent_yearly_cost", "levelised_cost_per_m3", "cost_per_person_year",
    "capital_cost", "owner_present_cost", "grant", "loan", "own_funds", "cost_of_capital",
)  # fmt: skip
"""Figures that are attributes of `LifeCycle`."""


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
    grant, loan, own_funds : ndarray, (...)
        Sums received in year 0, and what is left of the construction after them.
    cost_of_capital : ndarray, (...)
        Present value of the loan's payments less the loan.
    loan_payment : ndarray, (..., n + 1)
        Payments of interest and principal in the kind of prices chosen.
    columns : dict of str to ndarray, (..., n + 1)
        Every column by year of `flows.FLOWS` and `figures.FINANCED`.
    figures : dict of str to ndarray, (...)
        Every figure of `figures.FIGURES`.
    payers : Payers
        Who pays for the water.
    people : float
        Served in the first year, 0 where there are none.
    real_discount_rate : float or ndarray
        Without inflation [fraction per year].
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
    own_funds: Array
    cost_of_capital: Array
    loan_payment: Array
    columns: dict[str, Array]
    figures: dict[str, Array]
    payers: Payers
    people: float
    real_discount_rate: Operand

    @cached_property
    def users(self) -> dict[str, Array]:
        """What users must pay: columns by year and figures of `users.users_of`."""
        return users_of(
            self.columns,
            self.figures,
            self.payers,
            real_discount_rate=self.real_discount_rate,
            people=self.people,
            further=tuple(self.flows.further),
        )

    def shown_columns(self) -> dict[str, Array]:
        """Every column by year, those too that only a reader needs (`figures.SHOWN`)."""
        return self.columns | by_year(SHOWN, self.columns, self.discount_factor.shape[-1] - 1)


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
    steps : dict of str to ndarray
        Savings by year (`returns.COMPARED`), worth by rate, and every step of `returns.STEPS` and `returns.RETURNS`.
    """

    saving_present: Array
    internal_rate_of_return: Array
    irr_reason: str | Words
    simple_payback_years: Array
    payback_reason: str | Words
    discounted_payback_years: Array
    discounted_payback_reason: str | Words
    steps: dict[str, Array]

    @property
    def internal_rate_of_return_percent(self) -> Array:
        """The internal rate of return [%/year]."""
        return 100 * self.internal_rate_of_return


def cash_flows(
    scenario: Scenario, sources: Sequence[PricedSource], lines: Sequence[Line], quantities: Quantities
) -> CashFlows:
    """Money by year of a supply option, in constant prices of year 0; see `flows.flows_of`."""
    return flows_of(terms_of(scenario, sources), lines, quantities)


def life_cycle(
    scenario: Scenario, sources: Sequence[PricedSource], lines: Sequence[Line], quantities: Quantities
) -> LifeCycle:
    """Life-cycle figures of a supply option.

    Parameters
    ----------
    scenario : Scenario
        The scenario as it holds for the option.
    sources : sequence of PricedSource
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
    The definitions are those of `figures`.
    """
    basis = flows.times(terms.price_level) if terms.nominal else flows
    costs = basis.costs_by_category()
    given = {name: by_case(value) for name, value in vars(terms).items()} | basis.columns()
    given |= {
        "nominal": terms.nominal,
        "real_discount_rate": by_case(terms.real_discount_rate),
        "delivered_m3": quantities.delivered_m3,
        "costs": list(costs.values()),
    }
    columns = basis.columns() | by_year(FINANCED, given, terms.life_years)
    o = SimpleNamespace(
        **columns,
        start=SimpleNamespace(**{name: values[..., 0] for name, values in columns.items()}),
        real_discount_rate=terms.real_discount_rate,
        life_years=terms.life_years,
        people=terms.people or 0.0,
    )
    definitions = figures_with(basis.further)
    for name, definition in definitions.items():
        setattr(o, name, np.asarray(definition(o)))
    figures = {name: getattr(o, name) for name in definitions}
    return LifeCycle(
        flows=basis,
        columns=columns,
        figures=figures,
        present_by_category={name: figures[f"{name}_present"] for name in costs},
        co2_kg=_co2_kg(terms, quantities),
        discount_factor=columns["discount_factor"],
        owner_flows=columns["owner_cost"],
        loan_payment=columns["loan_payment"],
        payers=terms.payers,
        people=o.people,
        real_discount_rate=o.real_discount_rate,
        **{name: figures[name] for name in _NAMED},
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
    given = {
        "reference_total_cost": reference.flows.total_cost(),
        "total_cost": option.flows.total_cost(),
        "discount_factor": option.discount_factor,
    }
    found = returns_of(by_year(COMPARED, given, option.discount_factor.shape[-1] - 1))
    words = {name: _plain(found[name]) for name in ("irr_reason", "payback_reason", "discounted_payback_reason")}
    return Comparison(
        saving_present=np.asarray(RETURNS["saving_present"](SimpleNamespace(**vars(option), reference=reference))),
        internal_rate_of_return=found["internal_rate_of_return_percent"] / 100,
        simple_payback_years=found["simple_payback_years"],
        discounted_payback_years=found["discounted_payback_years"],
        **words,
        steps=found,
    )


def _plain(words: Any) -> str | Words:
    """Unpack the words of a single case; leave an array of cases as it is."""
    return str(words.item()) if words.ndim == 0 else words.astype(object)


def _co2_kg(terms: Terms, quantities: Quantities) -> Array:
    given = {name: by_case(value) for name, value in vars(terms).items()}
    y = SimpleNamespace(**given, top_ups=quantities.top_ups)
    return sum((np.asarray(emission(y)) for emission in terms.emissions), np.zeros(terms.life_years))
