"""A sweep over keys works out anew what stands on them, in hours and in money."""

from __future__ import annotations

from itertools import product
from typing import Any

import numpy as np
import pytest

from planner.assumptions.reader import check_scenario, scenario_of
from planner.checks.remedies import with_changes
from planner.study.compare import study_scenario
from planner.study.sweep.engine import MEASURES
from planner.study.sweep.run import run_sweep
from tests.assumptions.test_topics import priced
from tests.study.sweep.cases import EXAMPLES


def short_lived(**tables: Any) -> dict[str, Any]:
    """The visit with prices, sizes of its own and a life of two years."""
    raw = priced(finance={"analysis_period_years": 2}, tank={"volume_m3": 10.0})
    return raw | {"sources": {"solar": {"strings": 1}}} | tables


DEPTHS = {"borehole.pump_depth_m": (50.0, 70.0)}


@pytest.mark.parametrize(
    "varied",
    [
        pytest.param(DEPTHS, marks=pytest.mark.slow),
        DEPTHS | {"prices.pipe_per_m": (5.0, 9.0)},
        {"pipeline.segments[2].length_m": (300.0, 500.0)},
    ],
)
def test_a_variant_is_what_the_changed_scenario_gives(varied: dict[str, tuple[float, ...]]) -> None:
    grid = [{"key": key, "values": list(values)} for key, values in varied.items()]
    swept = run_sweep(check_scenario(short_lived(sweep={"grid": grid}), "test"), EXAMPLES).results[0]
    costs = swept.numbers[:, 0, MEASURES.index("present_cost")]
    base = scenario_of(short_lived())
    alone = [
        study_scenario(with_changes(base, dict(zip(varied, values, strict=True))), EXAMPLES).options[0]
        for values in product(*varied.values())
    ]
    expected = [float(option.life.present_cost) for option in alone]
    assert len(set(expected)) == len(expected)
    np.testing.assert_allclose(costs, expected, rtol=1e-12)
