"""What an extra outlay earns: internal rate of return and payback, each with words where there is no figure."""

from __future__ import annotations

from typing import Any

import numpy as np
import numpy_financial as npf
from numpy.typing import ArrayLike, NDArray

Array = NDArray[np.float64]
Words = NDArray[np.object_]

NO_OUTLAY = "it costs no more to build than the reference, so there is no extra outlay to earn a return on"
NEVER_SAVES = "its later years save nothing that could pay for the extra construction"
LOSES_ALL = "no rate above -100 percent balances the extra construction and the later savings"
AT_ONCE = "it costs no more to build than the reference and never falls behind"
NOT_RECOVERED = "the extra construction is not recovered, to stay so, within the life"

_ROUNDING = 1e-9
_NEARLY_REAL = 1e-6
"""Imaginary part of a root that rounding may give to one of two equal roots."""


def internal_rate_of_return(flows: ArrayLike) -> tuple[Array, Words]:
    """Find the rate at which flows have no present value, where there is exactly one.

    Parameters
    ----------
    flows : array_like, (..., n + 1)
        Savings less outlays by year; the outlay of year 0 is negative.

    Returns
    -------
    rate : ndarray, (...)
        Rate [fraction per year]; NaN where there is none or more than one.
    reason : ndarray of str, (...)
        Why the rate is NaN, '' where it is not.

    Notes
    -----
    The rate is numpy_financial's. As flows that change sign more than once (a late replacement is enough) can have
    several rates (Descartes' rule of signs), all roots above -100 % are counted first, and none is chosen of several.
    """
    table = np.asarray(flows, dtype=float)
    rates, reasons = np.full(table.shape[:-1], np.nan), np.full(table.shape[:-1], "", dtype=object)
    for case in np.ndindex(rates.shape):
        rates[case], reasons[case] = _one_rate(table[case])
    return rates, reasons


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

    Notes
    -----
    A recovery that a later replacement undoes is not counted, so that a discounted payback exists exactly where the
    extra outlay has a saving in present value.
    """
    table = np.asarray(flows, dtype=float)
    total = np.cumsum(table, axis=-1)
    last = table.shape[-1] - 1
    slack = _ROUNDING * np.abs(table).sum(axis=-1, keepdims=True)
    behind = total < -slack
    ever = behind.any(axis=-1)
    # The last year end at which the outlay is still not recovered.
    year = np.where(ever, last - np.argmax(behind[..., ::-1], axis=-1), 0)
    after = np.minimum(year + 1, last)
    short = -np.take_along_axis(total, year[..., None], axis=-1)[..., 0]
    gain = np.take_along_axis(table, after[..., None], axis=-1)[..., 0]
    outlay = table[..., 0] < -slack[..., 0]
    paid = ever & outlay & (year < last)
    years = np.where(paid, year + short / np.where(paid, gain, 1.0), np.where(ever, np.nan, 0.0))
    reason = np.select([paid, ~ever, ~outlay], ["", AT_ONCE, NO_OUTLAY], NOT_RECOVERED).astype(object)
    return years, reason


def _one_rate(flows: Array) -> tuple[float, str]:
    slack = _ROUNDING * np.abs(flows).sum()
    signs = np.sign(np.where(np.abs(flows) > slack, flows, 0.0))
    if signs[0] >= 0:
        return np.nan, NO_OUTLAY
    if not (signs > 0).any():
        return np.nan, NEVER_SAVES
    kept = np.where(signs == 0, 0.0, flows)
    changes = np.count_nonzero(np.diff(signs[signs != 0]))
    if changes > 1:
        rates = _all_rates(kept)
        if not rates:
            return np.nan, LOSES_ALL
        if len(rates) > 1:
            listed = ", ".join(f"{100 * rate:.1f}" for rate in rates)
            return np.nan, f"several rates balance outlay and savings ({listed} percent), so none is the answer"
    return float(npf.irr(kept)), ""


def _all_rates(flows: Array) -> list[float]:
    """Every rate above -100 % at which the flows have no present value, in rising order; double ones twice."""
    roots: NDArray[Any] = np.roots(flows[::-1])
    positive = roots[(roots.real > 0) & (np.abs(roots.imag) < _NEARLY_REAL * np.abs(roots))].real
    return sorted((1 / positive - 1).tolist())


def plain(words: Words) -> str | Words:
    """Unpack the words of a single case; leave an array of cases as it is."""
    return str(words.item()) if words.ndim == 0 else words
