"""What an extra outlay earns: internal rate of return and payback, each with words where there is no figure."""

from __future__ import annotations

from functools import partial
from types import SimpleNamespace
from typing import Any

import numpy as np
from numpy.typing import ArrayLike, NDArray

from planner.money.formula import Operand, Word
from planner.money.functions import (
    absolute,
    as_number,
    count,
    differs,
    equals,
    item,
    largest,
    rate_between,
    ratio,
    total,
    weighted_total,
    where,
)
from planner.money.rates import by_case
from planner.money.yearly import Column, Definition, by_year
from planner.text import text

Array = NDArray[np.float64]
Words = NDArray[np.object_]

NO_REMARK = Word("–", "")


def no_rate() -> Word:
    """What stands in place of a rate that there is not."""
    return Word(text("figure.none"))


def no_payback() -> Word:
    """What stands in place of the years of what is never paid back."""
    return Word(text("figure.never"))


RATES: Array = np.round(
    np.concatenate(
        [
            [-0.9999, -0.999, -0.99],
            np.linspace(-0.98, -0.52, 24),
            np.arange(-0.5, 0.6, 0.01),
            np.geomspace(0.61, 1e6, 60),
        ]
    ),
    6,
)
"""Rates at which the worth of the savings is worked out; a sign changed between two of them is one rate."""
_ROUNDING = 1e-9

COMPARED = (
    Column("saving", every=lambda y: y.reference_total_cost - y.total_cost),
    Column("saved", running="saving", summed=False),
    Column("saving_present", every=lambda y: y.saving * y.discount_factor),
    Column("saved_present", running="saving_present", summed=False),
)
"""Savings against the reference by year, before grant and loan and without what users pay."""


def worth_at(flows: Operand, rate: Operand, years: Operand, base_year: Operand) -> Operand:
    """Worth of flows in some year at a rate."""
    return weighted_total(flows, (1 + rate) ** (base_year - years))


def base_year(rate: float, last_year: int) -> int:
    """Year in which `worth_at` is looked at for its sign; present values explode at negative rates."""
    return last_year if rate < 0 else 0


def _changes(c: Any) -> Operand:
    return differs(c.worth_below > 0, c.worth_above > 0)


def _at_change(c: Any, rates: Operand) -> Operand:
    """Rate at the only change of sign; 0 where there are several, for their sum would be no rate."""
    return where(equals(c.changes, 1), weighted_total(as_number(_changes(c)), rates), 0)


def _behind(saved: Operand, slack: Operand) -> Operand:
    return saved < by_case(-slack)


STEPS: dict[str, Definition] = {
    "outlay": lambda c: item(c.saving, 0),
    "slack": lambda c: total(absolute(c.saving)) * _ROUNDING,
    "slack_present": lambda c: total(absolute(c.saving_present)) * _ROUNDING,
    "savers": lambda c: count(c.saving > by_case(c.slack)),
    "changes": lambda c: count(_changes(c)),
    "rate_below": lambda c: _at_change(c, c.rates_below),
    "rate_above": lambda c: _at_change(c, c.rates_above),
    "ever_behind": lambda c: where(count(_behind(c.saved, c.slack)) > 0, 1, 0),
    "last_behind": lambda c: largest(_behind(c.saved, c.slack) * c.years),
    "ever_behind_present": lambda c: where(count(_behind(c.saved_present, c.slack_present)) > 0, 1, 0),
    "last_behind_present": lambda c: largest(_behind(c.saved_present, c.slack_present) * c.years),
}
"""Steps towards rate and payback; `c` holds the columns of `COMPARED`, the worths at `RATES`, and the steps above."""


def _if_outlay(c: Any, otherwise: Operand, then: Operand) -> Operand:
    return where(c.outlay >= -c.slack, otherwise, then)


def _rate_percent(c: Any) -> Operand:
    rate = 100 * rate_between(c.saving, c.rate_below, c.rate_above)
    none = no_rate()
    return _if_outlay(c, none, where(equals(c.savers, 0), none, where(equals(c.changes, 1), rate, none)))


def _rate_reason(c: Any) -> Operand:
    several = where(equals(c.changes, 1), NO_REMARK, text("returns.several"))
    counted = where(equals(c.changes, 0), text("returns.loses_all"), several)
    return _if_outlay(
        c, text("returns.no_outlay"), where(equals(c.savers, 0), text("returns.never_saves"), counted)
    )  # fmt: skip


def _payback(present: str, c: Any) -> Operand:
    flows, saved = getattr(c, f"saving{present}"), getattr(c, f"saved{present}")
    ever, last = getattr(c, f"ever_behind{present}"), getattr(c, f"last_behind{present}")
    paid = last - ratio(item(saved, last), item(flows, last + 1))
    never = no_payback()
    return where(equals(ever, 0), 0, _if_outlay(c, never, where(last < c.life_years, paid, never)))


def _payback_reason(present: str, c: Any) -> Operand:
    ever, last = getattr(c, f"ever_behind{present}"), getattr(c, f"last_behind{present}")
    rest = where(last < c.life_years, NO_REMARK, text("returns.not_recovered"))
    return where(equals(ever, 0), text("returns.at_once"), _if_outlay(c, text("returns.no_outlay"), rest))


RETURNS: dict[str, Definition] = {
    "saving_present": lambda c: c.reference.present_cost - c.present_cost,
    "internal_rate_of_return_percent": _rate_percent,
    "irr_reason": _rate_reason,
    "simple_payback_years": partial(_payback, ""),
    "payback_reason": partial(_payback_reason, ""),
    "discounted_payback_years": partial(_payback, "_present"),
    "discounted_payback_reason": partial(_payback_reason, "_present"),
}
"""Figures and remarks of an option against the reference, from `STEPS`; the present costs are those of `FIGURES`.

Flows that change sign more than once (a late replacement is enough) can have several rates (Descartes' rule of signs):
a rate is given where the worth of the savings changes its sign once over `RATES`. Two rates between the same two of
them are not seen. A payback that a later replacement undoes is not counted, so that a discounted payback exists exactly
where the extra outlay has a saving in present value.
"""


def returns_of(columns: dict[str, Array]) -> dict[str, Array]:
    """Work out the steps and, but for the saving, the figures of `RETURNS`.

    Parameters
    ----------
    columns : dict of str to ndarray, (..., n + 1)
        The columns of `COMPARED`.

    Returns
    -------
    dict of str to ndarray, (...)
        Figures, NaN where there is none, and remarks, '' where there is none; `worth` is (..., rates).
    """
    last_year = columns["saving"].shape[-1] - 1
    years, rates = np.arange(last_year + 1.0), RATES[:, None]
    bases = np.array([[base_year(rate, last_year)] for rate in RATES])
    worth = worth_at(columns["saving"][..., None, :], rates, years, bases)
    c = SimpleNamespace(
        **columns, years=years, life_years=last_year, worth=worth, worth_below=worth[..., :-1],
        worth_above=worth[..., 1:], rates_below=RATES[:-1], rates_above=RATES[1:],
    )  # fmt: skip
    for name, definition in (STEPS | RETURNS).items():
        if name != "saving_present":
            setattr(c, name, np.asarray(definition(c)))
    return vars(c)


def internal_rate_of_return(flows: ArrayLike) -> tuple[Array, Words]:
    """Find the rate at which flows have no present value, where there is exactly one.

    Parameters
    ----------
    flows : array_like, (..., n + 1)
        Savings less outlays by year; the outlay of year 0 is negative.

    Returns
    -------
    rate : ndarray, (...)
        Rate [fraction per year]; NaN where there is none or more than one, see `RETURNS`.
    reason : ndarray of str, (...)
        Why the rate is NaN, '' where it is not.
    """
    found = _of_savings(flows)
    return found["internal_rate_of_return_percent"] / 100, found["irr_reason"].astype(object)


def payback_years(flows: ArrayLike) -> tuple[Array, Words]:
    """Find how long it takes until the extra outlay of year 0 is recovered and stays recovered.

    Parameters
    ----------
    flows : array_like, (..., n + 1)
        Savings less outlays by year, discounted for the discounted payback.

    Returns
    -------
    years : ndarray, (...)
        Years, read off linearly within the year; 0 where the flows' sum is never negative, NaN where there is none.
    reason : ndarray of str, (...)
        Words where the figure is 0 or NaN, '' elsewhere.
    """
    found = _of_savings(flows)
    return found["simple_payback_years"], found["payback_reason"].astype(object)


def _of_savings(flows: ArrayLike) -> dict[str, Array]:
    saving = np.asarray(flows, dtype=float)
    given = {"reference_total_cost": saving, "total_cost": 0.0, "discount_factor": 1.0}
    return returns_of(by_year(COMPARED, given, saving.shape[-1] - 1))
