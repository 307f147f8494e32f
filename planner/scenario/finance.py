"""Costs beyond the equipment, the rules of the money and the service to be given."""

from __future__ import annotations

from typing import Annotated, Literal, Self

from pydantic import Field, model_validator

from planner.scenario.fields import COMMON_PRACTICE, Model, Percent, assumed, at_odds, needed, optional, several

SourceName = Literal["solar", "grid", "generator"]


class CostItem(Model):
    """One more line of the bill of quantities."""

    changes = "money"

    name: str = needed("What it is", changes="nothing", min_length=1)
    quantity: float = assumed(1.0, "How many", source="one", gt=0)
    unit: str = assumed("item", "Unit of the quantity", source="item", changes="nothing")
    unit_price: float = needed("Price per unit", "money", ge=0)
    life_years: float | None = optional("Service life", "years", absent="lasts the whole life", gt=0, le=200)
    maintenance_percent_per_year: float = assumed(
        0.0, "Yearly maintenance as a share of the price", "%/year", source="none", ge=0, le=50
    )
    sources: list[SourceName] = several("Sources it belongs to; none means every option")


class YearlyCost(Model):
    """A cost that comes back each year, such as a caretaker."""

    changes = "money"

    name: str = needed("What it is", changes="nothing", min_length=1)
    per_year: float = needed("Cost per year", "money/year", ge=0)
    sources: list[SourceName] = several("Sources it belongs to; none means every option")


class Costs(Model):
    """Costs that are not the price of a thing described elsewhere."""

    changes = "money"

    items: list[CostItem] = several("Further lines of the bill of quantities")
    yearly: list[YearlyCost] = several("Yearly costs")
    installation_percent: Percent = assumed(
        0.0,
        "Labour and transport of the first building, as a share of the equipment bought; not added to replacements",
        "%",
        source="none entered",
    )
    contingency_percent: Percent = assumed(0.0, "Contingency on the capital cost", "%", source="none entered")
    supervision_percent: Percent = assumed(
        0.0,
        "Design and supervision, as a share of the capital cost with its contingency; not added to replacements",
        "%",
        source="none entered",
    )
    vat_percent: Percent = assumed(
        0.0,
        "Value added tax on the capital cost with contingency and supervision; not added to replacements and running "
        "costs, whose prices are to be given with what tax they bear",
        "%",
        source="none entered: every price holds the tax that it bears",
    )
    direct_support_per_person_year: float = assumed(
        0.0,
        "Direct support: what the local authority spends on visits, training and repairs beyond the users' means",
        "money/person/year",
        source="none entered",
        ge=0,
    )


class Finance(Model):
    """The rules of the money."""

    changes = "money"

    analysis_period_years: int = assumed(
        20, "Analysis period: years that are counted", "years", source=COMMON_PRACTICE, changes="weather", ge=1, le=40
    )
    discount_rate_percent: float = assumed(
        6.0,
        "Discount rate, in the kind of prices chosen",
        "%/year",
        source="World Bank, Discounting costs and benefits in economic analysis of World Bank projects, 2016, from "
        "memory; take the funder's own",
        gt=-5,
        le=40,
    )
    prices: Literal["constant", "nominal"] = assumed(
        "constant",
        "Constant prices of year 0, or nominal prices that rise with inflation",
        source="constant prices",
    )
    inflation_percent: float = assumed(0.0, "General inflation", "%/year", source="none entered", gt=-5, le=50)
    grant_percent: Percent = assumed(0.0, "Share of the capital cost paid by a grant", "%", source="no grant entered")
    loan_percent: Percent = assumed(0.0, "Share of the capital cost paid by a loan", "%", source="no loan entered")
    loan_rate_percent: float = assumed(
        0.0, "Interest on the loan (nominal)", "%/year", source="no loan entered", ge=0, le=60
    )
    loan_years: int = assumed(5, "Years to repay the loan", "years", source="assumed", ge=1, le=40)
    water_price_per_m3: float = assumed(
        0.0, "What users pay for delivered water", "money/m3", source="no price entered", ge=0
    )
    renewal_fund_interest_percent: float = assumed(
        0.0,
        "Interest on the savings for replacements beyond inflation, negative where the account loses value",
        "%/year",
        source="none: an account that keeps up with inflation",
        gt=-20,
        le=20,
    )
    programme_currency: str | None = optional(
        "Currency of the programme, three letters, in which sites of several countries are compared",
        changes="nothing",
        pattern=r"^[A-Z]{3}$",
    )
    exchange_rate: float | None = optional(
        "Units of the scenario's currency for one unit of the programme's", changes="nothing", gt=0
    )
    usd_prices_since_2011: float | None = optional(
        "Prices in US dollars at the price date, those of 2011 being 1",
        absent="published figures of 2011 are shown as they are",
        changes="nothing",
        gt=0,
        le=20,
    )

    @model_validator(mode="after")
    def _shares(self) -> Self:
        if self.grant_percent + self.loan_percent > 100:
            raise at_odds(("grant_percent", "loan_percent"), "grant_percent and loan_percent together exceed 100")
        if self.loan_percent > 0 and self.loan_years > self.analysis_period_years:
            raise at_odds(("loan_years", "analysis_period_years"), "loan_years is longer than analysis_period_years")
        if (self.programme_currency is None) != (self.exchange_rate is None):
            raise at_odds(
                ("programme_currency", "exchange_rate"), "programme_currency and exchange_rate must be given together"
            )
        return self


class Service(Model):
    """What counts as serving the demand, and which options are compared."""

    changes = "money"

    demand_met_percent: Annotated[float, Field(gt=0, le=100)] = assumed(
        98.0,
        "Least share of the life's demand that must be delivered",
        "%",
        source=f"assumed, {COMMON_PRACTICE}",
    )
    demand_met_worst_year_percent: Percent | None = optional(
        "Least share that must be delivered in the worst year", "%", absent="no such condition"
    )
    longest_short_days: int | None = optional(
        "Longest run of short days allowed in any year; a day is short where more than a tenth of its water is missing",
        "days",
        absent="no such condition",
        ge=0,
        le=365,
    )
    unserved_water_value_per_m3: float | None = optional(
        "What a m3 of demand that is not met costs those who go without, such as the price of a vendor or of a tanker, "
        "or the crop lost; the options are also ranked with it, and it is part of no cost",
        "money/m3",
        absent="the value at which the answer would turn is worked out",
        changes="nothing",
        ge=0,
    )
    options: list[str] = several(
        "Supply options to compare, such as 'solar + grid'; none means all the described sources allow",
        changes="run",
    )
    reference: str | None = optional(
        "Supply option against which saving and payback are counted",
        absent="generator alone, else grid alone, else the first option",
    )
