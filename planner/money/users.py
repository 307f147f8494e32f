"""What users must pay: tariffs that cover the costs, the burden of each year, and savings that never run dry.

A tariff is level, in money of year 0: its present revenue covers the present cost (average incremental cost, ADB
Handbook for the Economic Analysis of Water Supply Projects, 1999). With equal flows in all years it is the yearly cost
over the yearly volume. Components of cost as in IRC WASHCost (2011).

The savings for replacements are one fund for all of them: the least level deposit at each year's end, before the
replacements of that year, with which it is never overdrawn. It is the largest, over the years, of the level payment
that has saved what fell due until then, so that no search is needed. Deposits rise with prices; interest is what the
account earns beyond that.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import partial
from types import SimpleNamespace
from typing import Any

import numpy as np

from planner.money.figures import COMPONENTS
from planner.money.formula import Operand, Word
from planner.money.functions import as_number, largest, level_payment, maximum, ratio, total, where
from planner.money.rates import Array, by_case, growth_factor, present_worth_factor
from planner.money.terms import Payers
from planner.money.yearly import Column, Definition, by_year
from planner.text import text

TARIFFS = ("operation", "operation_and_renewals", "full")
"""What a tariff may cover: operation; with savings for replacements; with support and what the users themselves paid
for building, less its residual value, as well."""
INCOMES = {"income_share": "income_per_month", "lowest_income_share": "lowest_income_per_month"}
"""Share of an income that a bill takes, and the income."""
_TOUCH = 1 - 1e-9


def burden_columns(further: Sequence[str] = ()) -> tuple[Column, ...]:
    """Columns by year, from those of `flows` and `figures`; `further` are kinds of running cost of one's own."""
    operation = (*COMPONENTS["operation"], *further)
    return (
        Column("operation_cost", every=lambda y: sum((getattr(y, name) for name in operation), 0.0)),
        # What the works are worth at the end is no money in the owner's hand.
        Column("burden", every=lambda y: y.owner_cost - y.residual),
        Column("renewals", every=lambda y: y.replacement / y.price_level),
        Column("renewals_present", every=lambda y: y.renewals * present_worth_factor(y.fund_interest, y.year)),
        Column("renewals_due", running="renewals_present", summed=False),
        Column("saving_needed", every=lambda y: _level(y, y.renewals_due), summed=False),
    )


def _level(y: Any, amount: Operand) -> Operand:
    """Level payment up to a year; nothing falls due in year 0."""
    return level_payment(y.fund_interest, maximum(y.year, 1), amount)


def _fund(y: Any) -> Operand:
    saved = where(y.year > 0, ratio(y.renewal_saving, _level(y, 1.0)), 0)
    return growth_factor(y.fund_interest, y.year) * (saved - y.renewals_due)


FUND = (Column("fund_balance", every=_fund, summed=False),)
"""The savings at each year's end, after its replacements, in money of year 0."""


def _later(o: Any) -> Operand:
    return o.burden * as_number(o.years > 0)


def _first_year(o: Any, values: Operand, most: Operand) -> Operand:
    """First year in which some values reach the largest of them; a word where that is nothing."""
    reached = as_number(values >= by_case(most * _TOUCH))
    year = o.life_years - largest(reached * (o.life_years - o.years))
    return where(most > 0, year, Word(text("figure.none")))


def _fund_left(o: Any) -> Operand:
    saved = ratio(o.renewal_saving, level_payment(o.fund_interest, o.life_years, 1.0))
    return growth_factor(o.fund_interest, o.life_years) * (saved - total(o.renewals_present))


def _present_saving(o: Any) -> Operand:
    return ratio(o.renewal_saving, level_payment(o.real_discount_rate, o.life_years, 1.0))


def _if_delivered(o: Any, value: Operand) -> Operand:
    return where(total(o.water_present_m3) > 0, value, Word(text("figure.no_water")))


def _tariff(covers: str, o: Any) -> Operand:
    cost = o.operation
    if covers != "operation":
        cost = cost + _present_saving(o)
    if covers == "full":
        cost = cost + o.expenditure_on_direct_support + o.capital_cost - o.grant + o.residual_value
    return _if_delivered(o, ratio(cost, total(o.water_present_m3) * o.collection_share))


def _bill(covers: str, o: Any) -> Operand:
    return _if_delivered(o, getattr(o, f"tariff_{covers}") * o.household_m3_per_month)


def _share(covers: str, income: str, o: Any) -> Operand:
    return _if_delivered(o, 100 * ratio(getattr(o, f"bill_{covers}"), getattr(o, income)))


def _per_person(o: Any, yearly: Operand) -> Operand:
    return where(o.people > 0, ratio(yearly, o.people), Word(text("figure.no_people")))


def _recurrent(o: Any) -> Operand:
    running = o.operation + o.expenditure_on_direct_support
    return _per_person(o, level_payment(o.real_discount_rate, o.life_years, running) + o.renewal_saving)


def users_definitions() -> dict[str, Definition]:
    """Figures of an option, in an order in which each needs only those before it, in the language in use.

    `o` holds the columns of `burden_columns` and those before, `o.years`, the figures of `figures.FIGURES`, and what
    `terms.Payers` holds.
    """
    return {
        "burden_mean": lambda o: total(_later(o)) / o.life_years,
        "burden_largest": lambda o: largest(_later(o)),
        "burden_largest_year": lambda o: _first_year(o, _later(o), o.burden_largest),
        "renewal_saving": lambda o: largest(o.saving_needed),
        "renewal_fund_empty_year": lambda o: _first_year(o, o.saving_needed, o.renewal_saving),
        "renewal_fund_left": _fund_left,
        **{f"tariff_{covers}": partial(_tariff, covers) for covers in TARIFFS},
        "household_m3_per_month": lambda o: o.household_size * o.litres_per_person_day * (365 / 12 / 1000),
        **{f"bill_{covers}": partial(_bill, covers) for covers in TARIFFS},
        **{
            f"{share}_{covers}": partial(_share, covers, income)
            for share, income in INCOMES.items()
            for covers in TARIFFS
        },
        "capital_cost_per_person": lambda o: _per_person(o, o.capital_cost),
        "recurrent_cost_per_person": _recurrent,
    }


def users_of(
    columns: Mapping[str, Array],
    figures: Mapping[str, Array],
    payers: Payers,
    *,
    real_discount_rate: Operand,
    people: float,
    further: Sequence[str] = (),
) -> dict[str, Array]:
    """Work out what users must pay.

    Parameters
    ----------
    columns : mapping of str to ndarray, (..., n + 1)
        Columns by year of `flows.FLOWS` and `figures.FINANCED`.
    figures : mapping of str to ndarray, (...)
        Those of `figures.FIGURES`.
    payers : Payers
        Who pays.
    real_discount_rate : float or ndarray
        Without inflation [fraction per year].
    people : float
        Served in the first year, 0 where there are none.
    further : sequence of str
        Kinds of running cost beside the usual ones.

    Returns
    -------
    dict of str to ndarray
        Columns of `burden_columns` and `FUND`, (..., n + 1), and figures of `users_definitions`, (...), NaN where what
        they rest on is not given.
    """
    life_years = columns["price_level"].shape[-1] - 1
    given = dict(columns) | {"fund_interest": by_case(payers.fund_interest)}
    found = by_year(burden_columns(further), given, life_years)
    numbers = {name: np.nan if isinstance(value, float | int) and value == 0 and name not in _MAY_BE_NOTHING else value
               for name, value in vars(payers).items()}  # fmt: skip
    o = SimpleNamespace(
        **columns,
        **{name: value for name, value in figures.items() if name not in columns},
        **found,
        **numbers,
        years=np.arange(life_years + 1.0),
        life_years=life_years,
        real_discount_rate=real_discount_rate,
        people=people,
    )
    for name, definition in users_definitions().items():
        found[name] = np.asarray(definition(o))
        setattr(o, name, found[name])
    fund = {"renewal_saving": by_case(found["renewal_saving"]), "renewals_due": found["renewals_due"]}
    return found | by_year(FUND, fund | {"fund_interest": given["fund_interest"]}, life_years)


_MAY_BE_NOTHING = ("fund_interest", "collection_share")
"""What of `Payers` may be 0 and is a number then."""
