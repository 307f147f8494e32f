"""Sun and temperature: whether what was given is like what the region has."""

from __future__ import annotations

import numpy as np

from planner.checks.basis import Basis
from planner.checks.verdict import Verdict, figure, highest, missing
from planner.resource.climatology import Array, Climatology, NoClimatology, climatology_at
from planner.resource.sun import DAYS_PER_MONTH, hours_to_months
from planner.text import text

TOPIC = "site"
FURTHEST_GHI_PERCENT = 40.0
"""How far a month may stand from the climatology: assumed, beyond the 36 months of the three typical years with which
it was compared, which stand 29 % below it to 22 % above."""
LEAST_GHI_KWH_M2_DAY = 1.1
"""In darker months the difference is taken as a share of this, for little is much of hardly anything: assumed."""
FURTHEST_TEMPERATURE_K = 12.0
"""How far a month's air may stand from the climatology: assumed, three times the 4 K found at the same places."""
LIMITS = {"irradiation": FURTHEST_GHI_PERCENT, "air_temperature": FURTHEST_TEMPERATURE_K}


def verdicts(basis: Basis) -> list[Verdict]:
    """Compare the months of the weather with a coarse climatology; an estimate made from it says so instead."""
    if basis.scenario.weather.kind == "estimate":
        return [_not_given(name, f"check.{name}.measure") for name in LIMITS]
    place = basis.place
    try:
        region = climatology_at(place.latitude_deg, place.longitude_deg, place.altitude_m)
    except NoClimatology:
        return [_not_given(name, f"check.{name}.elsewhere") for name in LIMITS]
    weather = basis.weather
    air = hours_to_months(weather.temperature_c) / (24 * DAYS_PER_MONTH[:, None])
    return [
        _irradiation(weather.monthly_ghi_kwh_m2_day().mean(axis=1), region),
        _temperature(air.mean(axis=1), region),
    ]


def _not_given(name: str, look_for: str) -> Verdict:
    return missing(
        TOPIC,
        name,
        text(f"check.{name}.compared_not"),
        text(look_for),
        why=text(f"check.{name}.why"),
        source=text(f"check.{name}.source", limit=LIMITS[name]),
    )


def _irradiation(given: Array, region: Climatology) -> Verdict:
    usual = region.ghi_as_tabled_kwh_m2_day
    apart = 100 * (given - usual) / np.maximum(usual, LEAST_GHI_KWH_M2_DAY)
    return _judged("irradiation", given, usual, apart, "%")


def _temperature(given: Array, region: Climatology) -> Verdict:
    return _judged("air_temperature", given, region.temperature_c, given - region.temperature_c, "K")


def _judged(name: str, given: Array, usual: Array, apart: Array, unit: str) -> Verdict:
    """Judge the month that stands furthest from the region's."""
    month = int(np.abs(apart).argmax())
    side = "above" if apart[month] > 0 else "below"
    return highest(
        TOPIC,
        name,
        text(
            f"check.{name}.compared",
            month=text(f"month_name.{month + 1}"),
            given=figure(float(given[month])),
            usual=figure(float(usual[month])),
        ),
        float(abs(apart[month])),
        LIMITS[name],
        unit,
        why=text(f"check.{name}.why"),
        remedy=text(
            f"check.{name}.{side}",
            month=text(f"month_name.{month + 1}"),
            apart=figure(round(float(abs(apart[month])), 1)),
        ),
        source=text(f"check.{name}.source", limit=LIMITS[name]),
        beyond="caution",
    )
