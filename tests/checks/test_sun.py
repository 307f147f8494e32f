"""Months held against the region's climatology: within, at and beyond the limit, above and below."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import numpy as np
import pytest

from planner.checks.site import site_verdicts
from planner.checks.verdict import Verdict
from planner.resource.climatology import climatology_at
from planner.resource.sun import DAYS_PER_MONTH
from planner.study.site import weather_of
from tests.checks.sites import place_and_weather, site

SITE = site()
PLACE, WEATHER = place_and_weather(SITE)
REGION = climatology_at(PLACE.latitude_deg, PLACE.longitude_deg, PLACE.altitude_m)


def judged(ghi_share: float = 1.0, warmer_k: float = 0.0, month: int = 6) -> dict[str, Verdict]:
    """Verdicts on weather whose months are the region's but for one."""
    shares, warmer = np.ones(12), np.zeros(12)
    shares[month], warmer[month] = ghi_share, warmer_k
    months = WEATHER.sun.month
    ghi = (1000 * shares * REGION.ghi_as_tabled_kwh_m2_day / 24)[months][:, None]
    air = (REGION.temperature_c + warmer)[months][:, None]
    weather = replace(WEATHER, ghi_w_m2=np.repeat(ghi, 2, axis=1), temperature_c=np.repeat(air, 2, axis=1))
    assert weather.monthly_ghi_kwh_m2_day()[:, 0] @ DAYS_PER_MONTH > 0
    return {verdict.key: verdict for verdict in site_verdicts(SITE, PLACE, weather)}


@pytest.mark.parametrize(
    ("share", "outcome", "words"),
    [
        (1.0, "pass", ""),
        (1.4, "pass", ""),
        (1.41, "caution", "your July is 41 % above what this region has: look whether the figures are kWh/m2"),
        (0.6, "pass", ""),
        (0.59, "caution", "your July is 41 % below what this region has"),
        (1 / 3.6, "caution", "your July is 72.2 % below"),
    ],
)
def test_irradiation(share: float, outcome: str, words: str) -> None:
    verdict = judged(ghi_share=share)["irradiation"]
    assert verdict.outcome == outcome
    assert words in verdict.remedy
    assert bool(words) == bool(verdict.remedy)
    assert verdict.value == pytest.approx(100 * abs(share - 1), abs=1e-6)
    assert verdict.topic == "site"


@pytest.mark.parametrize(
    ("warmer", "outcome", "words"),
    [
        (12.0, "pass", ""),
        (12.1, "caution", "your July is 12.1 K warmer than this region"),
        (-12.0, "pass", ""),
        (-12.1, "caution", "your July is 12.1 K colder than this region"),
    ],
)
def test_temperature(warmer: float, outcome: str, words: str) -> None:
    verdict = judged(warmer_k=warmer)["air_temperature"]
    assert verdict.outcome == outcome
    assert words in verdict.remedy
    assert bool(words) == bool(verdict.remedy)
    assert verdict.value == pytest.approx(abs(warmer))


def test_a_dark_month_may_differ_much_by_share() -> None:
    """At 62 N December is dark: a share of 1.1 kWh/m2/day counts, not one of next to nothing."""
    north = replace(PLACE, latitude_deg=62.0, longitude_deg=25.0)
    usual = climatology_at(62.0, 25.0, north.altitude_m).ghi_as_tabled_kwh_m2_day
    assert usual[11] < 0.2
    given = usual.copy()
    given[11] *= 2
    ghi = np.repeat((1000 * given / 24)[WEATHER.sun.month][:, None], 2, axis=1)
    found = {v.key: v for v in site_verdicts(SITE, north, replace(WEATHER, ghi_w_m2=ghi))}
    assert found["irradiation"].value == pytest.approx(100 * usual[11] / 1.1)
    assert found["irradiation"].outcome == "pass"


def estimated(**changes: Any) -> dict[str, Verdict]:
    scenario = site({"weather": {"kind": "estimate"}, "finance.analysis_period_years": 2, **changes})
    return {v.key: v for v in site_verdicts(scenario, PLACE, weather_of(scenario, PLACE, None))}  # type: ignore[arg-type]


def test_an_estimate_is_not_held_against_itself() -> None:
    found = estimated()
    assert found["irradiation"].outcome == found["air_temperature"].outcome == "not given"
    assert "measure or fetch it before money is committed" in found["irradiation"].remedy


def test_where_the_climatology_has_nothing_another_source_is_to_be_asked() -> None:
    island = replace(PLACE, latitude_deg=15.0, longitude_deg=-23.5)
    found = {verdict.key: verdict for verdict in site_verdicts(SITE, island, WEATHER)}
    assert found["irradiation"].outcome == "not given"
    assert "compare the figures with a second source" in found["irradiation"].remedy
