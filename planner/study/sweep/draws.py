"""Random draws of inputs: Latin hypercube, ready distributions and rank correlations; all from one seed."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray
from scipy.special import ndtr, ndtri

from planner.scenario.errors import InputError, Problem
from planner.scenario.sweep import (
    Correlation,
    Discrete,
    LogNormal,
    Normal,
    RandomInput,
    RandomSweep,
    Triangular,
    Uniform,
)

Array = NDArray[np.float64]


def draw(random: RandomSweep, seed: int) -> Array:
    """Draw every random input of a sweep.

    Parameters
    ----------
    random : RandomSweep
        Inputs, correlations and number of draws.
    seed : int
        Start of the random numbers, used where the sweep gives none.

    Returns
    -------
    ndarray, (draws, inputs)

    Raises
    ------
    InputError
        When correlations name unknown inputs or contradict each other, or cuts leave nothing of a distribution.

    Notes
    -----
    Latin hypercube sampling (McKay, Beckman and Conover 1979); correlations by Iman and Conover 1982, which
    reorders each input's draws and so leaves each distribution as it is.
    """
    generator = np.random.default_rng(random.seed if random.seed is not None else seed)
    shares = latin_hypercube(random.draws, len(random.inputs), generator)
    if random.correlations:
        wanted = correlation_matrix([given.key for given in random.inputs], random.correlations)
        shares = correlated(shares, wanted, generator)
    return np.column_stack(
        [_drawn(given, shares[:, index], index) for index, given in enumerate(random.inputs)]
    )  # fmt: skip


def latin_hypercube(draws: int, inputs: int, generator: np.random.Generator) -> Array:
    """Draw shares from 0 to 1, (draws, inputs): each input has one in each of as many equal ranges as there are draws.

    As `scipy.stats.qmc.LatinHypercube` draws them; to import that takes longer than a study.
    """
    (generator,) = generator.spawn(1)
    within = generator.uniform(size=(draws, inputs))
    ranges = np.tile(np.arange(1, draws + 1), (inputs, 1))
    for row in ranges:
        generator.shuffle(row)
    return np.asarray((ranges.T - within) / draws)


def quantile(given: RandomInput, share: Array | float) -> Array:
    """Value of a random input that a share of the draws does not exceed, cuts included.

    Parameters
    ----------
    given : RandomInput
        The input's distribution.
    share : array_like, (...)
        Shares, 0 to 1.

    Raises
    ------
    ValueError
        When the cuts leave nothing of the distribution.
    """
    shares = np.asarray(share, dtype=float)
    if isinstance(given, Discrete):
        weights = np.asarray(given.weights or [1.0] * len(given.values))
        edges = np.cumsum(weights / weights.sum())
        index = np.searchsorted(edges, shares, side="right")
        return np.asarray(given.values, dtype=float)[np.minimum(index, _last_weighed(weights))]
    if isinstance(given, Uniform):
        return np.asarray(given.low + (given.high - given.low) * shares)
    if isinstance(given, Triangular):
        width = given.high - given.low
        peak = (given.mode - given.low) / width
        rising, falling = np.sqrt(peak * shares), 1 - np.sqrt((1 - peak) * (1 - shares))
        return np.asarray(given.low + width * np.where(shares < peak, rising, falling))
    low = 0.0 if given.low is None else float(ndtr(_score(given, given.low)))
    high = 1.0 if given.high is None else float(ndtr(_score(given, given.high)))
    if high - low < 1e-6:
        raise ValueError("low and high leave nothing of the distribution")
    scores = ndtri(low + (high - low) * shares)
    if isinstance(given, Normal):
        return np.asarray(given.mean + given.standard_deviation * scores)
    middle, spread = _of_logarithm(given)
    return np.asarray(np.exp(middle + spread * scores))


def _drawn(given: RandomInput, shares: Array, index: int) -> Array:
    try:
        return quantile(given, shares)
    except ValueError as error:
        raise InputError("", [Problem(f"sweep.random.inputs[{index + 1}]", str(error))]) from error


def _score(given: Normal | LogNormal, value: float) -> float:
    """By how many standard deviations a value lies above the middle of its distribution."""
    if isinstance(given, Normal):
        return (value - given.mean) / given.standard_deviation
    middle, spread = _of_logarithm(given)
    return float((np.log(value) - middle) / spread) if value > 0 else -np.inf


def _of_logarithm(given: LogNormal) -> tuple[float, float]:
    """Mean and standard deviation of the logarithm."""
    variance = np.log1p((given.standard_deviation / given.mean) ** 2)
    return float(np.log(given.mean) - variance / 2), float(np.sqrt(variance))


def _last_weighed(weights: Array) -> int:
    return int(np.flatnonzero(weights > 0)[-1])


def correlation_matrix(keys: Sequence[str], correlations: Sequence[Correlation]) -> Array:
    """Lay given rank correlations out as a matrix, (inputs, inputs).

    Raises
    ------
    InputError
        When a key is not among the inputs, a pair is given twice, or the correlations cannot all hold at once.
    """
    matrix = np.eye(len(keys))
    for index, given in enumerate(correlations):
        where = f"sweep.random.correlations[{index + 1}]"
        for name in (given.first, given.second):
            if name not in keys:
                text = f"'{name}' is no random input of this sweep; there are: {', '.join(keys)}"
                raise InputError("", [Problem(where, text)])
        first, second = keys.index(given.first), keys.index(given.second)
        if first == second or matrix[first, second] != 0:
            raise InputError("", [Problem(where, "a pair of two different inputs, each pair once, is wanted")])
        matrix[first, second] = matrix[second, first] = given.rank_correlation
    if np.linalg.eigvalsh(_of_scores(matrix)).min() < 1e-9:
        text = "the correlations contradict each other: no random numbers can have all of them at once"
        raise InputError("", [Problem("sweep.random.correlations", text)])
    return matrix


def correlated(shares: Array, rank_correlation: Array, generator: np.random.Generator) -> Array:
    """Reorder each column of draws so that the columns have given rank correlations.

    Parameters
    ----------
    shares : ndarray, (draws, inputs)
        Independent draws.
    rank_correlation : ndarray, (inputs, inputs)
        Spearman's rank correlations wanted.
    generator : numpy.random.Generator
        Source of the order.

    Returns
    -------
    ndarray, (draws, inputs)
        The same numbers in each column, in another order.

    Notes
    -----
    Iman and Conover 1982, Communications in Statistics B11(3):311-334, with van der Waerden scores. The normal scores
    are given the Pearson correlation 2 sin(pi r / 6) that belongs to a rank correlation r of normal variables.
    """
    draws, inputs = shares.shape
    scores = ndtri(np.arange(1, draws + 1) / (draws + 1))
    mixed = np.column_stack([generator.permutation(scores) for _ in range(inputs)])
    have = np.linalg.cholesky(np.corrcoef(mixed, rowvar=False))
    want = np.linalg.cholesky(_of_scores(rank_correlation))
    ranks = np.argsort(np.argsort(mixed @ np.linalg.solve(have, np.eye(inputs)).T @ want.T, axis=0), axis=0)
    return np.asarray(np.take_along_axis(np.sort(shares, axis=0), ranks, axis=0))


def _of_scores(rank_correlation: Array) -> Array:
    return np.asarray(2 * np.sin(np.pi / 6 * rank_correlation))
