"""Published ranges of what rural water supplies cost, against which a budget that is too small shows."""

from __future__ import annotations

from dataclasses import dataclass

from planner.money.formula import Operand
from planner.scenario.scenario import Scenario

DOLLAR = "USD"
MOST_OF_MEDIUM = 5000


@dataclass(frozen=True)
class Benchmark:
    """A range by the figure of the catalogue that it holds for, in US dollars of 2011 per person (and year)."""

    figure: str
    low_usd: float
    high_usd: float


def benchmarks_for(people: float) -> tuple[Benchmark, ...]:
    """Ranges for a piped supply from a mechanised borehole, by the people served.

    Notes
    -----
    IRC WASHCost, infosheet 1, 'Providing a basic level of water and sanitation services that last: cost benchmarks',
    2012, at second hand: small and medium piped schemes, and larger ones (more than 5000 people).
    """
    capital = (30.0, 131.0) if people <= MOST_OF_MEDIUM else (20.0, 152.0)
    return Benchmark("capital_cost_per_person", *capital), Benchmark("recurrent_cost_per_person", 3.0, 15.0)


def units_per_dollar(scenario: Scenario) -> Operand:
    """Units of the scenario's currency for one US dollar; None where that is not known."""
    if scenario.currency == DOLLAR:
        return 1.0
    return scenario.finance.exchange_rate if scenario.finance.programme_currency == DOLLAR else None
