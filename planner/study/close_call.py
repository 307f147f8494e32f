"""Too close to call: how often single changes of uncertain inputs turn the order of the first two options."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from planner.study.ranking import ranked
from planner.text import text

Array = NDArray[np.float64]

CLOSE_PERCENT = 2.0
"""Difference in life-cycle cost, in per cent of the cheaper, below which cost alone does not decide."""
OFTEN = 0.25
"""Share of the changes from which on the first two are too close to call: assumed, common practice, no source."""


@dataclass(frozen=True)
class CloseCall:
    """The first two options under single changes of uncertain inputs.

    Attributes
    ----------
    first, second : str
        The two as they stand in the comparison; `second` is '' where there is but one option.
    priced : bool
        Whether cost orders them; without prices only the target does.
    gap_percent : float
        Cost of the second above that of the first as they stand [%]; NaN where one misses the target or without prices.
    changes : int
        Changes that could be worked out.
    turned : int
        Of these, in how many their order turns; without prices, in how many the first no longer meets the target.
    close : int
        Of the others, in how many both meet the target and their costs differ by less than `CLOSE_PERCENT`.
    """

    first: str
    second: str
    priced: bool
    gap_percent: float
    changes: int
    turned: int
    close: int

    @property
    def share(self) -> float:
        """Share of the changes in which the order turns or the gap is too small to decide."""
        return (self.turned + self.close) / self.changes if self.changes else 0.0

    @property
    def too_close(self) -> bool:
        """Whether the two are too close to call: as they stand, or in a quarter of the changes."""
        return self.gap_percent < CLOSE_PERCENT or self.share >= OFTEN


def close_call(names: Sequence[str], meets: ArrayLike, share: ArrayLike, cost: ArrayLike, *, priced: bool) -> CloseCall:
    """Count in how many single changes the first two options are not told apart.

    Parameters
    ----------
    names : sequence of str
        The option that stands first and, where there is one, the one that stands second.
    meets, share, cost : array_like, (1 + changes, options)
        Whether the two meet the target, what they deliver, and what they cost: as they stand, then in each change.
        A change in which any of it is NaN could not be worked out and is left out.
    priced : bool
        Whether there are prices.
    """
    met, shares, costs = (np.asarray(each, dtype=float) for each in (meets, share, cost))
    known = np.isfinite(met).all(axis=1) & np.isfinite(shares).all(axis=1) & np.isfinite(costs).all(axis=1)
    both = (met > 0.5).all(axis=1)
    gap = np.where(both & priced, _gap_percent(costs), np.nan)
    if priced:
        turned = np.array([ranked(*each)[0] != 0 for each in zip(met, shares, costs, strict=True)])
    else:
        turned = (met[:, 0] < 0.5) & (met[0, 0] > 0.5)
    close = ~turned & (np.abs(gap) < CLOSE_PERCENT)
    known[0] = False
    return CloseCall(
        first=names[0],
        second=names[1] if len(names) > 1 else "",
        priced=priced,
        gap_percent=float(gap[0]),
        changes=int(known.sum()),
        turned=int(turned[known].sum()),
        close=int(close[known].sum()),
    )


def _gap_percent(costs: Array) -> Array:
    first, second = costs[:, 0], costs[:, -1]
    gap: Array = 100 * np.divide(second - first, first, out=np.full(first.shape, np.nan), where=first > 0)
    return gap


def close_call_sentence(call: CloseCall) -> str:
    """Say whether the first two options are too close to call; '' where nothing could be changed."""
    if not call.changes or (call.priced and not call.second):
        return ""
    slots = {"first": call.first, "second": call.second, "changes": call.changes, "turned": call.turned}
    if not call.priced:
        return text("uncertainty.misses_in_some" if call.turned else "uncertainty.meets_in_all", **slots)
    if call.too_close:
        key = "too_close"
    else:
        key = "ahead_in_most" if call.share else "ahead_in_all"
    return text(f"uncertainty.{key}", close=call.close, percent=CLOSE_PERCENT, **slots)
