"""Cautions that depend on the design and its prices, each seen with and without its cause."""

from __future__ import annotations

from planner.checks.cautions import cautions
from planner.checks.of_study import failures, study_verdicts
from tests.study.scenarios import studied

SMALL = {
    "finance__life_years": 2,
    "tank__volume_m3": 30.0,
    "sources__solar__strings": 2,
    "service__options": ["solar", "generator"],
}


def said(word: str, **changes: object) -> bool:
    return any(word in caution for caution in cautions(studied(**SMALL, **changes)))


def test_what_has_no_price_is_named() -> None:
    assert not said("No price was entered")
    assert said("No price was entered for: Invented submersible", pump__price=0.0)


def test_a_plane_that_faces_the_pole() -> None:
    south = {"site__latitude_deg": -25.0, "sources__solar__planes": [{"tilt_deg": 25.0, "azimuth_deg": 180.0}]}
    north = south | {"sources__solar__planes": [{"tilt_deg": 25.0, "azimuth_deg": 0.0}]}
    assert said("faces the pole", **south)
    assert not said("faces the pole", **north)


def test_summer_time() -> None:
    zone = {"site__longitude_deg": 2.0, "site__time_zone": "Europe/Madrid", "site__latitude_deg": 10.0}
    assert said("run an hour ahead", **zone)
    assert not said("run an hour ahead")


def test_an_array_that_would_destroy_its_controller_is_said_in_the_answer() -> None:
    safe = studied(**SMALL, controller__dc_voltage_limit_v=450.0)
    assert failures(study_verdicts(safe)) == []
    deadly = studied(
        **SMALL, controller__dc_voltage_limit_v=450.0, sources__solar__modules_in_series=20,
        sources__solar__module__system_voltage_v=600.0,
    )  # fmt: skip
    (sentence,) = failures(study_verdicts(deadly))
    assert sentence.startswith("Not to be built as it is")
    assert "array and controller" in sentence
