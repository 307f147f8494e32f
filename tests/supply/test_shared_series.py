"""Series that columns share, and options with other numbers of variants: the same as each by itself."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from planner.supply.columns import Shared
from planner.supply.kernel import run_hours
from planner.supply.run import run_options
from tests.supply.cases import make_cases
from tests.supply.options import HOURS, option, source_of, sun_of


def test_columns_that_share_series_do_as_with_series_of_their_own() -> None:
    arguments = make_cases(2, 2, 3, days=40).arguments
    names = ("sun_m3", "draw_m3", "sun_kwh_per_m3")
    # the second of two columns takes the series of the first
    first = np.arange(14) // 2 * 2
    repeated = arguments | {name: arguments[name][:, first] for name in names}
    shared = arguments | {name: arguments[name][:, ::2] for name in names} | {"of_column": np.arange(14) // 2}
    sources = {"own": [], "shared": []}
    for series, switch in arguments["sources"]:
        own = {name: value for name, value in vars(series).items() if isinstance(value, np.ndarray)}
        count = series.extra_m3.shape[1]
        sources["own"].append((replace(series, **{n: v[:, np.arange(count) // 2 * 2] for n, v in own.items()}), switch))
        held = {name: value[:, ::2] for name, value in own.items()}
        sources["shared"].append((replace(series, **held, of_column=np.arange(count) // 2), switch))
    expected, _ = run_hours(**repeated | {"sources": sources["own"], "daily_limit_m3": 12.0})
    found, _ = run_hours(**shared | {"sources": sources["shared"], "daily_limit_m3": 12.0})
    for name in ("shortfall_m3", "idle_m3", "idle_kwh", "end_m3", "longest_short_days"):
        np.testing.assert_array_equal(getattr(found, name), getattr(expected, name))
    for mine, theirs in zip(found.top_ups, expected.top_ups, strict=True):
        np.testing.assert_array_equal(mine.kwh, theirs.kwh)
    assert expected.top_ups[0].kwh.sum() > 0


def test_what_has_the_same_key_is_held_once() -> None:
    shared = Shared.of(["sun", "none", "sun"], [slice(0, 3), slice(3, 5), slice(5, 8)])
    assert shared.blocks == {0: slice(0, 3), 1: slice(3, 5)}
    assert shared.count == 5
    np.testing.assert_array_equal(shared.of_column, [0, 1, 2, 3, 4, 0, 1, 2])


def test_an_option_of_fewer_variants_does_beside_others_as_alone() -> None:
    draw = np.full((HOURS, 2), 0.9)
    grid, sun = source_of(np.tile([1.0, 1.0, 0.0, 0.4] * 6, 365), 2), sun_of(np.tile([0.0] * 8 + [700.0] * 16, 365), 2)
    deep = option("solar + grid", draw, [10.0, 20.0, 40.0], grid=grid, sun=sun)
    single = option("grid", draw, [15.0], grid=grid)
    (alone,) = run_options([single])
    beside = run_options([deep, single])[1]
    assert beside.demand_m3.shape == alone.demand_m3.shape == (1, 1, 2, 12)
    for name in ("delivered_m3", "grid_kwh", "grid_hours", "level_start_m3", "level_end_m3", "longest_short_days"):
        np.testing.assert_array_equal(getattr(beside, name), getattr(alone, name))
    assert alone.grid_kwh.sum() > 0
