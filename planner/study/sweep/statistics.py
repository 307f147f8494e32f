"""Figures that sum up a sweep: percentiles with their meaning, probabilities, rank correlations and the tornado."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from planner.text import text

Array = NDArray[np.float64]

PERCENTS = (5, 10, 25, 50, 75, 90, 95)


@dataclass(frozen=True)
class Percentile:
    """One percentile of a result.

    Attributes
    ----------
    percent : float
        Per cent of the cases that do not exceed the value.
    value : float
        The value; NaN where there is no case.
    meaning : str
        The same in words that cannot be read the other way round.
    """

    percent: float
    value: float
    meaning: str


@dataclass(frozen=True)
class Chances:
    """How often each option is best; fractions of the cases that could be worked out.

    Attributes
    ----------
    cheapest : ndarray, (options,)
        Costs least of the options that meet the service target.
    meets_target : ndarray, (options,)
        Meets the service target.
    none_meets : float
        No option meets it.
    cases : int
        Cases counted.
    """

    cheapest: Array
    meets_target: Array
    none_meets: float
    cases: int

    def standard_error(self, share: float) -> float:
        """Standard error of one of these fractions as if the draws were independent (Latin hypercubes do better)."""
        return float(np.sqrt(share * (1 - share) / self.cases)) if self.cases else float("nan")


@dataclass(frozen=True)
class Swing:
    """How far one input moves one result.

    Attributes
    ----------
    index : int
        Position of the input in the sweep.
    low, high : float
        Result with the input low and with it high; NaN where it could not be worked out.
    base : float
        Result as the scenario stands.
    swing : float
        Largest less smallest of low, base and high.
    """

    index: int
    low: float
    high: float
    base: float
    swing: float


def meaning(percent: float) -> str:
    """Spell out a percentile, since P90 means opposite things to energy assessors and to cost estimators."""
    return text("sweep.exceeded_in", cases=100 - percent)


def percentiles(values: ArrayLike, percents: Sequence[float] = PERCENTS) -> tuple[Percentile, ...]:
    """Percentiles of a result over its cases, those without a value left out.

    Parameters
    ----------
    values : array_like, (cases,)
        The result.
    percents : sequence of float
        Per cent of the cases that are not to exceed each value.

    Returns
    -------
    tuple of Percentile

    Notes
    -----
    Linear between the ordered cases (Hyndman and Fan 1996, definition 7).
    """
    given = np.asarray(values, dtype=float)
    given = given[np.isfinite(given)]
    found = np.percentile(given, percents) if given.size else np.full(len(percents), np.nan)
    return tuple(Percentile(p, float(v), meaning(p)) for p, v in zip(percents, found, strict=True))


def chances(present_cost: Array, meets_target: Array) -> Chances:
    """Count how often each option is the cheapest that serves, and how often it serves.

    Parameters
    ----------
    present_cost : ndarray, (cases, options)
        Present cost; a case with a NaN is left out.
    meets_target : ndarray, (cases, options)
        1 where the option meets the service target.
    """
    known = np.isfinite(present_cost).all(axis=1)
    cost, serves = present_cost[known], meets_target[known] > 0.5
    cases, options = cost.shape
    if cases == 0:
        nothing = np.full(options, np.nan)
        return Chances(nothing, nothing, float("nan"), 0)
    any_serves = serves.any(axis=1)
    best = np.where(serves, cost, np.inf).argmin(axis=1)
    cheapest = np.bincount(best[any_serves], minlength=options) / cases
    return Chances(cheapest, serves.mean(axis=0), float(1 - any_serves.mean()), cases)


def rank_correlations(inputs: Array, result: Array) -> Array:
    """Spearman's rank correlation of each input with a result.

    Parameters
    ----------
    inputs : ndarray, (cases, inputs)
        Values of the inputs.
    result : ndarray, (cases,)
        The result; cases without a value are left out.

    Returns
    -------
    ndarray, (inputs,)
        NaN where an input or the result does not vary.
    """
    known = np.isfinite(result)
    ranks = np.column_stack([_ranks(column) for column in (*inputs[known].T, result[known])])
    centred = ranks - ranks.mean(axis=0)
    spread = np.sqrt((centred**2).sum(axis=0))
    product = centred[:, :-1].T @ centred[:, -1]
    scale = spread[:-1] * spread[-1]
    return np.asarray(np.divide(product, scale, out=np.full(product.shape, np.nan), where=scale > 0))


def _ranks(values: Array) -> Array:
    """Rank of each value (cases,) from 1; equal ones share the mean of theirs."""
    _, index, count = np.unique(values, return_inverse=True, return_counts=True)
    return np.asarray((np.cumsum(count) - (count - 1) / 2)[index])


def tornado(base: float, low: ArrayLike, high: ArrayLike) -> tuple[Swing, ...]:
    """Order inputs by how far each alone moves a result, the largest swing first.

    Parameters
    ----------
    base : float
        Result as the scenario stands.
    low, high : array_like, (inputs,)
        Result with each input low and high, all others as they stand.

    Notes
    -----
    One variable is changed and the others held, as in the ADB Guidelines for the Economic Analysis of Projects (1997),
    chapter XII. An input whose ends could not be worked out comes last.
    """
    ends = np.column_stack([np.asarray(low, dtype=float), np.asarray(high, dtype=float)])
    swings = []
    for index, (at_low, at_high) in enumerate(ends):
        known = [value for value in (at_low, base, at_high) if np.isfinite(value)]
        swing = max(known) - min(known) if np.isfinite([at_low, at_high]).any() else float("nan")
        swings.append(Swing(index, float(at_low), float(at_high), base, float(swing)))
    return tuple(sorted(swings, key=lambda swing: -np.nan_to_num(swing.swing, nan=-1.0)))


def sensitivity_indicator(base_result: float, result: float, base_input: float, given: float) -> float:
    """Percentage change of a result for each per cent that an input changes, signs dropped.

    Parameters
    ----------
    base_result, result : float
        Result as it stands and with the input changed.
    base_input, given : float
        The input as it stands and changed.

    Returns
    -------
    float
        NaN where the input does not change or a base is 0.

    Notes
    -----
    Asian Development Bank, Handbook for the Economic Analysis of Water Supply Projects (1999), chapter 7.
    """
    if base_result == 0 or base_input == 0 or given == base_input:
        return float("nan")
    return abs((result - base_result) / base_result) / abs((given - base_input) / base_input)
