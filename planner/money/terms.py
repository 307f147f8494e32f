"""The prices and rules by which one option is priced, apart from its quantities; each price may be an array of cases.

A sweep over prices takes `terms_of` once and puts arrays in place of single prices with `dataclasses.replace`.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, Literal

import numpy as np

from planner.money.formula import Operand
from planner.money.functions import may_be
from planner.money.quantities import PricedSource, belongs
from planner.money.rates import Array, by_case, discount_factor, growth_factor, real_rate
from planner.money.yearly import Column, Definition
from planner.scenario.scenario import Scenario
from planner.scenario.sources import Generator, Tariff


@dataclass(frozen=True)
class Payers:
    """Who pays for the water, for `users`; 0 stands for what is not given.

    Attributes
    ----------
    household_size, litres_per_person_day : float or ndarray
        People per household, and water that one of them wants [L/day].
    income_per_month, lowest_income_per_month : float or ndarray
        Of a household in the middle, and of one of the poorest fifth [money/month].
    collection_share : float or ndarray
        Share of the water delivered that is paid for.
    fund_interest : float or ndarray
        Interest on the savings for replacements beyond inflation [fraction per year].
    """

    household_size: Operand = 0.0
    litres_per_person_day: float = 0.0
    income_per_month: Operand = 0.0
    lowest_income_per_month: Operand = 0.0
    collection_share: Operand = 1.0
    fund_interest: Operand = 0.0

    @property
    def households(self) -> bool:
        """Whether there are households of which the size is known."""
        return self.litres_per_person_day > 0 and may_be(self.household_size > 0)


@dataclass(frozen=True)
class Terms:
    """Prices in money of year 0 and rules; rates as fractions per year. A number may be an array of cases or a formula.

    Attributes
    ----------
    life_years : int
        Years counted, n.
    prices : str
        'constant' or 'nominal'.
    discount_rate : float or ndarray
        Real in constant prices, nominal in nominal prices.
    inflation : float or ndarray
        General inflation.
    grant_share, loan_share, loan_rate : float or ndarray
        Shares of construction paid by grant and loan; nominal interest on the loan.
    loan_years : int
        Years to repay the loan.
    water_price_per_m3 : float or ndarray
        What users pay.
    yearly_costs : float or ndarray
        Costs that come back each year [money/year].
    direct_support : float or ndarray
        What the authority spends on support, by the people of the first year [money/year].
    people : float or None
        People served in the first year.
    tariff : Tariff or None
        The grid's tariff; None where the option has no grid.
    grid_price_factor, grid_price_growth : float or ndarray
        Multiplies the whole bill; growth beyond inflation.
    grid_co2_kg_per_kwh : float or None
        None leaves the grid's emissions out.
    generator : Generator or None
        Its intervals and lives; None where the option has none.
    fuel_price_per_l, fuel_price_growth : float or ndarray
        Price at the site, delivery included [money/L]; growth beyond inflation.
    service_price, overhaul_price : float or ndarray
        Price of one [money].
    running : tuple of Column
        What the option's sources cost to run, by category, in constant prices. `y` holds these terms, `y.top_ups` the
        yearly quantities of each source by its name, `y.grid_bill` the bill at the first year's prices, `y.services`
        and `y.overhauls` what running hours ask for.
    emissions : tuple of callable
        Carbon dioxide of each source [kg], from the same `y`.
    payers : Payers
        Who pays for the water.
    """

    life_years: int
    prices: Literal["constant", "nominal"]
    discount_rate: Operand
    inflation: Operand = 0.0
    grant_share: Operand = 0.0
    loan_share: Operand = 0.0
    loan_rate: Operand = 0.0
    loan_years: int = 1
    water_price_per_m3: Operand = 0.0
    yearly_costs: Operand = 0.0
    direct_support: Operand = 0.0
    people: float | None = None
    tariff: Tariff | None = None
    grid_price_factor: Operand = 1.0
    grid_price_growth: Operand = 0.0
    grid_co2_kg_per_kwh: float | None = None
    generator: Generator | None = None
    fuel_price_per_l: Operand = 0.0
    fuel_price_growth: Operand = 0.0
    service_price: Operand = 0.0
    overhaul_price: Operand = 0.0
    running: tuple[Column, ...] = ()
    emissions: tuple[Definition, ...] = ()
    payers: Payers = Payers()

    @property
    def real_discount_rate(self) -> Operand:
        """Discount rate without inflation (Fisher)."""
        return real_rate(self.discount_rate, self.inflation) if self.nominal else self.discount_rate

    @property
    def nominal(self) -> bool:
        """Whether prices rise with inflation."""
        return self.prices == "nominal"

    @property
    def discount_factor(self) -> Array:
        """Present value of one unit of money of each year, in the kind of prices chosen, (..., n + 1)."""
        return discount_factor(self.discount_rate, self.life_years)

    @property
    def price_level(self) -> Array:
        """Nominal money of each year that buys what one unit did in year 0, (..., n + 1)."""
        return np.asarray(growth_factor(by_case(self.inflation), np.arange(self.life_years + 1.0)))


def terms_of(scenario: Scenario, sources: Sequence[PricedSource]) -> Terms:
    """Take the terms of one supply option from its scenario.

    Parameters
    ----------
    scenario : Scenario
        The scenario as it holds for the option.
    sources : sequence of PricedSource
        The option's sources; prices of others are left out.

    Returns
    -------
    Terms

    Raises
    ------
    ValueError
        When the option names a source that the scenario does not describe.
    """
    missing = [source for source in sources if not source.described(scenario)]
    if missing:
        raise ValueError(f"the scenario does not describe the source '{missing[0]}'")
    finance = scenario.finance
    prices: dict[str, Any] = {}
    for source in sources:
        prices |= source.prices(scenario)
    return Terms(
        life_years=finance.analysis_period_years,
        prices=finance.prices,
        discount_rate=finance.discount_rate_percent / 100,
        inflation=finance.inflation_percent / 100,
        grant_share=finance.grant_percent / 100,
        loan_share=finance.loan_percent / 100,
        loan_rate=finance.loan_rate_percent / 100,
        loan_years=finance.loan_years,
        water_price_per_m3=finance.water_price_per_m3,
        yearly_costs=sum(cost.per_year for cost in scenario.costs.yearly if belongs(cost.sources, sources)),
        direct_support=scenario.costs.direct_support_per_person_year * (scenario.people or 0.0),
        people=scenario.people,
        payers=_payers(scenario),
        running=tuple(column for source in sources for column in source.running),
        emissions=tuple(source.emission for source in sources if source.emission is not None),
        **prices,
    )


def _payers(scenario: Scenario) -> Payers:
    interest = scenario.finance.renewal_fund_interest_percent / 100
    homes = scenario.households
    if homes is None:
        return Payers(fund_interest=interest)
    return Payers(
        household_size=homes.size,
        litres_per_person_day=scenario.litres_per_person_day or 0.0,
        income_per_month=0.0 if homes.income_per_month is None else homes.income_per_month,
        lowest_income_per_month=0.0 if homes.lowest_income_per_month is None else homes.lowest_income_per_month,
        collection_share=homes.collection_percent / 100,
        fund_interest=interest,
    )
