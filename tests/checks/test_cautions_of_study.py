"""Cautions that depend on the design and its prices, each seen with and without its cause."""

from __future__ import annotations

from planner.answers.cautions import cautions
from planner.answers.of_study import answer, failures, study_verdicts
from tests.study.scenarios import studied_once

SMALL = {
    "finance__analysis_period_years": 2,
    "tank__volume_m3": 30.0,
    "sources__solar__strings": 2,
    "service__options": ["solar", "generator"],
}


def said(word: str, **changes: object) -> bool:
    return any(word in caution for caution in cautions(studied_once(**SMALL, **changes)))


def test_what_has_no_price_is_named() -> None:
    assert not said("No price was entered")
    assert said("No price was entered for: Invented submersible", pump__price=None)


def test_a_price_of_nothing_is_a_price_and_is_said() -> None:
    assert not said("No price was entered", pump__price=0.0)
    assert said("a price of 0 being entered: Invented submersible", pump__price=0.0)


def test_a_nominal_interest_in_constant_prices_asks_for_inflation() -> None:
    loan = {"finance__loan_percent": 30.0, "finance__loan_rate_percent": 12.0, "finance__loan_years": 2}
    words = "enter the inflation"
    assert said(words, **loan)
    assert not said(words, **loan, finance__inflation_percent=4.0)
    assert not said(words, **loan, finance__inflation_percent=0.0)
    assert not said(words, **loan, finance__prices="nominal")
    assert not said(words)


def test_a_plane_that_faces_the_pole() -> None:
    south = {
        "site__latitude_deg": -25.0,
        "site__longitude_deg": 32.0,
        "sources__solar__planes": [{"tilt_deg": 25.0, "azimuth_deg": 180.0}],
    }
    north = south | {"sources__solar__planes": [{"tilt_deg": 25.0, "azimuth_deg": 0.0}]}
    assert said("faces the pole", **south)
    assert not said("faces the pole", **north)


def test_summer_time() -> None:
    zone = {"site__longitude_deg": 2.0, "site__time_zone": "Europe/Madrid", "site__latitude_deg": 10.0}
    assert said("run an hour ahead", **zone)
    assert not said("run an hour ahead")


def test_an_array_that_would_destroy_its_controller_is_said_in_the_answer() -> None:
    safe = studied_once(**SMALL, controller__dc_voltage_limit_v=450.0)
    assert failures(safe, study_verdicts(safe)) == ""
    deadly = studied_once(
        **SMALL, controller__dc_voltage_limit_v=450.0, sources__solar__modules_in_series=20,
        sources__solar__module__system_voltage_v=600.0,
    )  # fmt: skip
    assert deadly.best is not None
    assert "solar" in deadly.best
    sentence = answer(deadly, study_verdicts(deadly))[0]
    assert sentence.startswith(f"Least cost once these are remedied: {deadly.best}. Not to be built as it is: ")
    assert "array and controller" in sentence


def test_a_fault_of_an_array_does_not_stain_an_option_without_one() -> None:
    grid = studied_once(
        **(SMALL | {"service__options": ["solar", "generator"], "service__demand_met_percent": 99.9}),
        controller__dc_voltage_limit_v=450.0, sources__solar__strings_max=4, sources__solar__modules_in_series=20,
        sources__solar__module__price=90000.0, sources__solar__module__system_voltage_v=600.0,
    )  # fmt: skip
    verdicts = study_verdicts(grid)
    assert grid.best == "generator"
    assert any(verdict.topic == "array" and verdict.outcome == "fail" for verdict in verdicts)
    assert all("array" not in sentence for sentence in answer(grid, verdicts)[:1])
