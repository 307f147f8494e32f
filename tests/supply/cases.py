"""Random but plausible cases for the hour loop."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from planner.supply.run import HOUR, MONTH
from planner.supply.topup import FloatSwitch, TopUpSeries

FULL_M3H = 4.0


@dataclass(frozen=True)
class Cases:
    """Arguments of the hour loop and the plain numbers behind them."""

    arguments: dict
    grid_columns: slice
    generator_columns: slice


def make_cases(groups: int, variants: int, seed: int, *, minimum_run_h: float = 0.0, days: int = 365) -> Cases:
    """Make cases of the seven supply options, `groups` columns of each.

    Columns: solar | solar + grid | grid | grid + generator | all three | solar + generator | generator.
    """
    random = np.random.default_rng(seed)
    hours = days * 24
    hour = HOUR[:hours]
    columns = 7 * groups
    height = np.clip(np.sin((hour - 6) / 12 * np.pi), 0, None)[:, None]
    sun = height * np.repeat(random.uniform(0, FULL_M3H, (days, columns)), 24, axis=0)
    sun[:, 2 * groups : 4 * groups] = 0.0
    sun[:, 6 * groups :] = 0.0
    draw = random.uniform(0.2, 1.2, (hours, 1)) * random.uniform(0.7, 1.3, (1, columns))
    volume = np.repeat(random.uniform(5, 60, (variants, 1)), columns, axis=1)
    start_share = random.uniform(0.05, 0.5, (variants, columns))
    stop_share = start_share + random.uniform(0.05, 0.45, (variants, columns))

    def source(columns_: slice, kwh_per_hour: float) -> tuple[TopUpSeries, FloatSwitch]:
        extra = FULL_M3H - sun[:, columns_]
        on = (random.random(extra.shape) < 0.8) * random.uniform(0.3, 1.0, extra.shape)
        per_m3 = np.divide(1.0, extra, out=np.zeros_like(extra), where=extra > 1e-9)
        series = TopUpSeries(columns_, extra * on, per_m3, kwh_per_hour * per_m3, 0 * per_m3, on)
        switch = FloatSwitch((volume * start_share)[:, columns_], (volume * stop_share)[:, columns_], minimum_run_h=0.0)
        return series, switch

    grid_columns, generator_columns = slice(groups, 5 * groups), slice(3 * groups, 7 * groups)
    generator_series, generator_switch = source(generator_columns, 2.0)
    arguments = {
        "sun_m3": sun,
        "draw_m3": draw,
        "sun_kwh_per_m3": np.full(sun.shape, 0.5),
        "volume_m3": volume,
        "start": volume * 0.5,
        "months": MONTH[:hours],
        "sources": [
            source(grid_columns, 1.5),
            (generator_series, FloatSwitch(generator_switch.start_m3, generator_switch.stop_m3, minimum_run_h)),
        ],
    }
    return Cases(arguments, grid_columns, generator_columns)
