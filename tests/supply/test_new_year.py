"""What the tank holds at New Year: carried over, and no year is given water."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.supply.kernel import run_hours
from planner.supply.run import MONTH, run_options
from planner.supply.topup import TopUpSeries
from tests.supply.cases import make_cases
from tests.supply.options import HOURS, option, source_of, sun_of

DAY_SUN = np.clip(np.sin((np.arange(HOURS) % 24 - 6) / 12 * np.pi), 0, None)


def test_a_larger_tank_gains_nothing_from_the_water_it_begins_with() -> None:
    # The sun gives 0.5 m3 in every hour, users draw 0.75: two thirds of the demand, whatever the tank.
    draw = np.full((HOURS, 3), 0.75)
    outcome = run_options([option("solar", draw, [5.0, 50.0, 500.0], sun=sun_of(525.0, 3))])[0]
    assert outcome.solar_m3[0, 0, 0].sum() == pytest.approx(0.5 * HOURS)
    np.testing.assert_allclose(outcome.delivered_share[:, 0], 2 / 3, rtol=1e-12)
    np.testing.assert_allclose(outcome.level_start_m3, 0.0, atol=1e-9)


def test_each_year_begins_with_what_the_year_before_left() -> None:
    # Sun of no two years alike, and a tank that is filled every week or so.
    random = np.random.default_rng(4)
    watts = DAY_SUN[:, None] * np.repeat(random.uniform(300, 2600, (365, 4)), 24, axis=0)
    draw = np.full((HOURS, 4), 0.6)
    options = [
        option("solar", draw, [20.0], sun=sun_of(watts, 4)),
        option("solar + grid", draw, [20.0], sun=sun_of(watts, 4), grid=source_of(1.0, 4)),
    ]
    for outcome in run_options(options):
        np.testing.assert_allclose(outcome.new_year_loss_m3, 0.0, atol=1e-9)
        assert np.ptp(outcome.level_end_m3) > 1.0
        # Over the whole life what is pumped and not delivered is what the tank rose by.
        pumped = (outcome.solar_m3 + outcome.grid_m3).sum()
        rise = outcome.level_end_m3[..., -1] - outcome.level_start_m3[..., 0]
        assert pumped - outcome.delivered_m3.sum() == pytest.approx(float(rise.sum()), abs=1e-6)
        # The first year follows upon itself.
        assert outcome.level_start_m3[0, 0, 0] == pytest.approx(outcome.level_end_m3[0, 0, 0], abs=1e-9)


@settings(max_examples=5, deadline=None)
@given(seed=st.integers(0, 1000), tank=st.floats(10, 2000))
def test_on_sun_alone_no_year_begins_with_more_than_the_year_before_left(seed: int, tank: float) -> None:
    random = np.random.default_rng(seed)
    watts = DAY_SUN[:, None] * np.repeat(random.uniform(0, 2600, (365, 3)), 24, axis=0)
    outcome = run_options([option("solar", np.full((HOURS, 3), 0.75), [tank], sun=sun_of(watts, 3))])[0]
    assert outcome.new_year_loss_m3.min() >= -1e-9


def test_a_run_goes_on_where_another_stopped() -> None:
    arguments = make_cases(2, 2, 11, minimum_run_h=1.5, days=60).arguments
    whole, _ = run_hours(**arguments, daily_limit_m3=20.0)

    def part(hours: slice, start: object) -> dict:
        series = {name: arguments[name][hours] for name in ("sun_m3", "draw_m3", "sun_kwh_per_m3", "months")}
        sources = []
        for source, switch in arguments["sources"]:
            cut = {name: value[hours] for name, value in vars(source).items() if isinstance(value, np.ndarray)}
            sources.append((TopUpSeries(columns=source.columns, **cut), switch))
        return {**series, "volume_m3": arguments["volume_m3"], "start": start, "sources": sources}

    first, _ = run_hours(**part(slice(0, 31 * 24), arguments["start"]), daily_limit_m3=20.0)
    second, _ = run_hours(**part(slice(31 * 24, 60 * 24), first.end), daily_limit_m3=20.0)
    np.testing.assert_array_equal(second.end_m3, whole.end_m3)
    np.testing.assert_array_equal(second.end.run_left_h, whole.end.run_left_h)
    for at in (0, 1):
        np.testing.assert_allclose(
            first.top_ups[at].run_hours + second.top_ups[at].run_hours, whole.top_ups[at].run_hours, atol=1e-9
        )
    np.testing.assert_array_equal(
        np.maximum(first.longest_short_days, second.longest_short_days), whole.longest_short_days
    )
    assert MONTH[31 * 24] == 1
