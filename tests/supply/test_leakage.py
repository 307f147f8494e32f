"""Leakage in the hour loop: users and leaks share an empty tank, and what users get is counted apart."""

from __future__ import annotations

import numpy as np
import pytest

from planner.supply.run import run_options
from tests.supply.options import HOURS, option, sun_of


def test_users_and_leakage_by_the_hour() -> None:
    # Leakage 0.25 m3 in every hour; users draw 0.75 m3 in each hour of the day half, 8:00 to 20:00. The sun gives
    # 1 m3 an hour from 0:00 to 16:00; from 16:00 the tank of 2 m3 lasts for two hours, then users and leaks go short.
    hour = np.arange(HOURS) % 24
    draw = np.where((hour >= 8) & (hour < 20), 1.0, 0.25)[:, None]
    share = np.where((hour >= 8) & (hour < 20), 0.75, 0.0)[:, None]
    sun = sun_of(np.where(hour < 16, 650.0, 0.0), 1)
    outcome = run_options([option("solar", draw, 2.0, sun=sun, users_share=share)])[0]
    assert outcome.demand_m3.sum() == pytest.approx(9.0 * 365)
    assert outcome.delivered_m3.sum() == pytest.approx(0.75 * 10 * 365, rel=1e-6)
    # 24 h of leakage less the six hours of an empty tank; 0.25 x 18 m3 a day.
    assert outcome.leakage_m3.sum() == pytest.approx(0.25 * 18 * 365, rel=1e-6)
    assert outcome.solar_m3.sum() == pytest.approx((outcome.delivered_m3 + outcome.leakage_m3).sum(), abs=1e-6)


def test_one_share_and_the_same_by_the_hour_agree() -> None:
    hour = np.arange(HOURS) % 24
    draw, sun = np.full((HOURS, 2), 1.0), sun_of(np.where(hour < 10, 900.0, 0.0), 2)
    one, by_hour = (
        run_options([option("solar", draw, 5.0, sun=sun, users_share=np.full(shape, 0.7))])[0]
        for shape in ((1, 1), (HOURS, 2))
    )
    for name in ("demand_m3", "delivered_m3", "leakage_m3"):
        np.testing.assert_allclose(getattr(one, name), getattr(by_hour, name), rtol=1e-9)
    assert 0 < one.leakage_m3.sum() < 0.3 * draw.sum()
