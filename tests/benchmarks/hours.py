"""The hour loop: at several widths against the bare recurrence, and against a plain Python loop."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

import numpy as np

from planner.assumptions.reader import check_scenario
from planner.sources.registry import SOLAR
from planner.study.design import built_of, option_of, site_context_of
from planner.supply.kernel import run_hours
from planner.supply.run import MONTH, run_options
from planner.supply.series import sun_series
from tests.benchmarks.measure import EXAMPLES, Row, bare_recurrence, cpu_in_turn, cpu_s, hill, million_steps
from tests.supply.cases import make_cases
from tests.supply.plain_loop import plain_loop
from tests.supply.test_kernel import GENERATOR, GRID, plain_source

WIDTHS = ((17, 1, 365, ""), (20, 7, 365, ""), (82, 7, 365, "at most 6"), (409, 7, 73, ""))
"""Groups and variants of the seven supply options, days and aim: a scenario, searches of one, a wide pass."""
PLAIN_CASES = 7


def rows() -> Iterator[Row]:
    """Measure the loop by itself and under one option's variants."""
    for groups, variants, days, aim in WIDTHS:
        arguments = make_cases(groups, variants, 1, days=days).arguments
        volume = arguments["volume_m3"]
        bare = partial(bare_recurrence, arguments["sun_m3"], arguments["draw_m3"], volume)
        ours, theirs = (min(taken) for taken in cpu_in_turn(4, partial(run_hours, **arguments), bare))
        name = f"hour loop, seven options, {volume.size:,} columns"
        yield Row(name, million_steps(24 * days * volume.size, ours), f"{ours / theirs:.2f} of the bare clip", aim)
        if aim:
            each_s, plain_s = ours / volume.size, cpu_s(partial(_plain, arguments, groups), 1) / PLAIN_CASES
            ratio = f"{each_s / plain_s:.3f} of a plain Python loop"
            yield Row("  per column", f"{1e3 * each_s:.3f} CPU ms", ratio, "at most 0.05")
    yield _variants()


def _plain(arguments: dict, groups: int) -> None:
    for column in range(0, PLAIN_CASES * groups, groups):
        plain_loop(
            arguments["sun_m3"][:, column].tolist(),
            arguments["draw_m3"][:, column].tolist(),
            float(arguments["volume_m3"][0, column]),
            float(arguments["start"][0, column]),
            plain_source(arguments["sources"][GRID], 0, column),
            plain_source(arguments["sources"][GENERATOR], 0, column),
        )


def _variants() -> Row:
    """Measure ten thousand tanks of one option."""
    scenario = check_scenario(hill({"finance.analysis_period_years": 1}), "benchmark")
    site = site_context_of(scenario, EXAMPLES)
    design = built_of(scenario, (SOLAR,), site)
    tanks = np.linspace(5, 60, 10_000)
    option = option_of(design, site, [2], tanks.tolist(), [20.0] * tanks.size, [40.0] * tanks.size)
    inflow, outflow = sun_series(option.sun, option.pump, MONTH, 1).pumped_m3[:, 0], option.draw_m3[:, 0]
    ours, bare = cpu_in_turn(3, lambda: run_options([option]), lambda: bare_recurrence(inflow, outflow, tanks))
    return Row(
        f"solar alone, one year, {tanks.size:,} tanks",
        million_steps(8760 * tanks.size, min(ours)),
        f"{min(ours) / min(bare):.2f} of the bare clip",
        "at most 4",
    )
