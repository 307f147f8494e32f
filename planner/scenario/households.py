"""The households that pay for the water: what a tariff means to them."""

from __future__ import annotations

from planner.scenario.fields import Model, assumed, needed, optional


class Households(Model):
    """Households among the people served, for the bill per household and what it takes of an income."""

    changes = "money"

    size: float = needed("People per household", "people", ge=1, le=50)
    income_per_month: float | None = optional("Income of a household, the middle one", "money/month", gt=0)
    lowest_income_per_month: float | None = optional("Income of a household of the poorest fifth", "money/month", gt=0)
    collection_percent: float = assumed(
        100.0,
        "Share of the water delivered that is paid for",
        "%",
        source="every bill is paid: enter what is known of bills paid in the area",
        gt=0,
        le=100,
    )
