"""A generator that stands by a grid: half the start level starts it, the start level stops it."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from planner.supply.run import run_options
from tests.supply.options import FUEL, HOURS, option, source_of


def test_standby_levels_by_hand() -> None:
    # Tank 40 m3, grid from 8 to 16 m3. The grid is never on: the generator starts at 4 m3 and stops at 8.
    draw = np.full((HOURS, 1), 0.5)
    common = {"start_share": np.array([0.2]), "stop_share": np.array([0.4])}
    dead, alive = source_of(0.0, 1), replace(source_of(1.0, 1), fuel=FUEL)
    beside = option("grid + generator", draw, 40.0, grid=dead, generator=alive, **common)
    alone = option("generator", draw, 40.0, generator=alive, **common)
    standing_by, by_itself = run_options([beside, alone], trace=True)
    for outcome, start, stop in ((standing_by, 4.0, 8.0), (by_itself, 8.0, 16.0)):
        assert outcome.trace is not None
        level, added = outcome.trace.level_m3[:, 0, 0], outcome.trace.top_up_m3[1, :, 0, 0]
        running = added > 1e-9
        assert level[~running].min() == pytest.approx(start, abs=1e-9)
        assert level.max() == pytest.approx(stop, abs=1e-9)


def test_a_grid_that_is_on_leaves_the_generator_nothing() -> None:
    draw = np.full((HOURS, 1), 0.5)
    alive = source_of(1.0, 1)
    outcome = run_options([option("grid + generator", draw, 40.0, grid=alive, generator=alive)])[0]
    assert outcome.generator_m3.sum() == 0
    assert outcome.grid_m3.sum() == pytest.approx(0.5 * HOURS, rel=0.01)
