"""The water's analysis and the pumping test: what is missing, what is not judged, and what is said of bad results."""

from __future__ import annotations

from typing import Any

import pytest

from planner.checks.quality import GUIDELINES, MINIMUM
from planner.report.pages.records import records_page
from planner.scenario.errors import InputError
from tests.checks.sites import GIVEN, checked, site

FULL: dict[str, Any] = GIVEN["water_quality"]
STOCK = {"demand.users": [{"kind": "livestock", "name": "Herd", "count": 100, "litres_per_head_day": 30}]}


def table(scenario: Any, key: str) -> Any:
    return next(block for block in records_page(scenario).blocks if getattr(block, "key", "") == key)


def test_what_was_not_tested_is_named() -> None:
    partly = checked(site({"water_quality": {"fluoride_mg_l": 2.4, "ph": 7.0}}))
    assert partly["quality_fluoride_mg_l"].outcome == "fail"
    assert partly["quality_ph"].outcome == "pass"
    missing = partly["water_analysis"]
    assert missing.outcome == "not given"
    assert "arsenic" in missing.remedy
    assert "fluoride" not in missing.remedy
    assert "lead" not in missing.remedy  # not of the least that is asked for
    bare = checked(site({"water_quality": None, "pumping_test": None}))
    assert bare["water_analysis"].outcome == bare["pumping_test"].outcome == "not given"
    assert not any(key.startswith("quality_") for key in bare)


def test_water_that_nobody_drinks_is_not_judged_as_drinking_water() -> None:
    found = checked(site(STOCK | {"water_quality.arsenic_mg_l": 0.3}))
    assert not any(key.startswith(("quality_", "water_analysis")) for key in found)
    rows = table(site(STOCK), "records.quality")
    assert {row.cells["verdict"].value for row in rows.data_rows()} == {"–"}


@pytest.mark.parametrize(("ph", "outcome"), [(6.4, "caution"), (6.5, "pass"), (8.5, "pass"), (8.6, "caution")])
def test_acid_and_basic_water(ph: float, outcome: str) -> None:
    found = checked(site({"water_quality.ph": ph}))["quality_ph"]
    assert (found.outcome, found.value, found.limit) == (outcome, f"{ph:g}", "6.5 to 8.5")


def test_remedies_are_safe_by_themselves() -> None:
    bad = {key: 50 * value + 9 for key, value in FULL.items() if key != "ph"}
    found = checked(site({"water_quality": bad | {"ph": 9.9}}))
    for guideline in GUIDELINES:
        verdict = found[f"quality_{guideline.key}"]
        assert verdict.outcome == ("fail" if guideline.kind == "health" else "caution"), guideline.key
        assert "health authority" in verdict.remedy
        if guideline.kind == "health":
            assert verdict.remedy.startswith("not for drinking"), guideline.key
        assert ("from memory" in verdict.source) == guideline.from_memory
    assert "boiling makes it worse" in found["quality_nitrate_mg_l"].remedy
    assert {guideline.key for guideline in GUIDELINES} >= set(MINIMUM)


def test_the_page_shows_every_guideline_value_with_its_result_or_that_there_is_none() -> None:
    rows = table(site({"water_quality": {"arsenic_mg_l": 0.012}}), "records.quality")
    arsenic, lead = (rows.row(key).cells for key in ("arsenic_mg_l", "lead_mg_l"))
    assert (arsenic["result"].value, arsenic["limit"].value, arsenic["verdict"].value) == (0.012, 0.01, "✗ fail")
    assert (lead["result"].value, lead["verdict"].value) == ("–", "? not tested")
    assert len(list(rows.data_rows())) == len(GUIDELINES)
    test = table(site(), "records.test")
    assert test.row("pumping_test.duration_h").cells["value"].value == 48


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"pumping_test.final_level_m": 40}, "above static_level_m"),
        ({"pumping_test.recovery_level_m": 65}, "below final_level_m"),
        ({"water_quality.ph": 15}, "water_quality.ph"),
    ],
)
def test_records_that_cannot_be_are_refused(changes: dict[str, Any], said: str) -> None:
    with pytest.raises(InputError, match=said):
        site(changes)
