"""Speed of the hour loop, as ratios within one run."""

from __future__ import annotations

import time
from collections.abc import Callable

import numpy as np

from planner.supply.kernel import run_hours
from tests.supply.cases import make_cases
from tests.supply.plain_loop import plain_loop
from tests.supply.test_kernel import plain_source

GROUPS, VARIANTS = 82, 7
"""7 supply options x 82 x 7 tanks = 4,018 columns, as a search over strings, years and tanks has them."""


def best_of(times: int, work: Callable[[], object]) -> float:
    """Shortest of several timings [s]."""
    taken = []
    for _ in range(times):
        begin = time.perf_counter()
        work()
        taken.append(time.perf_counter() - begin)
    return min(taken)


def test_at_4000_columns_the_hour_loop_keeps_near_the_bare_recurrence() -> None:
    arguments = make_cases(GROUPS, VARIANTS, 1).arguments
    inflow, outflow, volume = arguments["sun_m3"], arguments["draw_m3"], arguments["volume_m3"]

    def bare() -> None:
        level = arguments["start_m3"].copy()
        for hour in range(inflow.shape[0]):
            level = np.clip(level + inflow[hour] - outflow[hour], 0.0, volume)

    run_hours(**arguments)
    # In turn and several times, so that a moment in which the machine is busy spoils neither figure.
    pairs = [(best_of(1, lambda: run_hours(**arguments)), best_of(1, bare)) for _ in range(8)]
    ours, theirs = (min(taken) for taken in zip(*pairs, strict=True))
    steps = inflow.shape[0] * volume.size
    print(f"\n{volume.size} columns: {ours:.3f} s, {steps / ours / 1e6:.0f} million hour-steps a second")
    print(f"bare clip recurrence: {theirs:.3f} s, ratio {ours / theirs:.2f}")
    assert ours < 6 * theirs


def test_per_column_the_hour_loop_beats_a_plain_python_loop() -> None:
    arguments = make_cases(GROUPS, VARIANTS, 1).arguments
    columns = range(0, 7 * GROUPS, GROUPS)
    plain_arguments = [
        (
            arguments["sun_m3"][:, column].tolist(),
            arguments["draw_m3"][:, column].tolist(),
            float(arguments["volume_m3"][0, column]),
            float(arguments["start_m3"][0, column]),
        )
        for column in columns
    ]

    def plain() -> None:
        for column, numbers in zip(columns, plain_arguments, strict=True):
            plain_loop(
                *numbers,
                plain_source(arguments["grid"], 0, column),
                plain_source(arguments["generator"], 0, column),
            )

    ours = best_of(2, lambda: run_hours(**arguments)) / arguments["volume_m3"].size
    theirs = best_of(2, plain) / len(columns)
    print(f"\nper column: {1e3 * ours:.3f} ms against {1e3 * theirs:.1f} ms, ratio {theirs / ours:.0f}")
    assert theirs > 20 * ours
