"""Water quality, demand, storage and what supplies cost, against guideline values, handbooks and a textbook."""

from __future__ import annotations

import numpy as np
import pytest

from planner.checks import pumping_test, water
from planner.checks.quality import GUIDELINES, SOLIDS_MG_L_PER_US_CM, outcome_of, result_of
from planner.money.benchmarks import benchmarks_for
from planner.report.pages.users import HIGH_PERCENT, LOW_PERCENT
from planner.scenario.records import WaterQuality
from planner.supply.kernel import run_hours
from tests.checks.sites import checked, site

# ------------------------------------------------------------------------------------------------ water quality

_WHO = "WHO, Guidelines for drinking-water quality, 4th edition with addenda (2022)"
WHO_QUOTED = pytest.mark.published("water quality", _WHO, values=1, confirmed="at second hand")
WHO_RECALLED = pytest.mark.published("water quality", _WHO, values=1, confirmed="from memory")

# Guideline value in mg/L but for germs (per 100 mL) and turbidity (NTU), and whether it is one of health. Quoted by FAO
# (germs, nitrate, nitrite), a page on an older edition (fluoride), a page on the metals of 2022 (arsenic, lead,
# manganese, chromium, cadmium), an abstract (uranium), a water authority (chloride, sulfate, turbidity), and a page on
# WHO's background document of 1996 (dissolved solids).
WHO = [
    *(
        pytest.param(*row, marks=WHO_QUOTED)
        for row in (
            ("e_coli_per_100ml", 0, True),
            ("nitrate_mg_l", 50, True),
            ("nitrite_mg_l", 3, True),
            ("fluoride_mg_l", 1.5, True),
            ("arsenic_mg_l", 0.01, True),
            ("lead_mg_l", 0.01, True),
            ("manganese_mg_l", 0.08, True),
            ("uranium_mg_l", 0.03, True),
            ("chromium_mg_l", 0.05, True),
            ("cadmium_mg_l", 0.003, True),
            ("chloride_mg_l", 250, False),
            ("sulfate_mg_l", 250, False),
            ("dissolved_solids_mg_l", 1000, False),
            ("turbidity_ntu", 5, False),
        )
    ),
    *(
        pytest.param(*row, marks=WHO_RECALLED)
        for row in (
            ("boron_mg_l", 2.4, True),
            ("iron_mg_l", 0.3, False),
            ("sodium_mg_l", 200, False),
            ("hardness_mg_l", 200, False),
            ("ph", 8.5, False),
        )
    ),
]


@pytest.mark.parametrize(("key", "value", "health"), WHO)
def test_guideline_values(key: str, value: float, health: bool) -> None:
    guideline = next(each for each in GUIDELINES if each.key == key)
    assert guideline.limit == value
    assert outcome_of(guideline, value) == "pass"
    assert outcome_of(guideline, value + 0.001) == ("fail" if health else "caution")


@WHO_RECALLED
def test_least_ph() -> None:
    ph = next(each for each in GUIDELINES if each.key == "ph")
    assert [outcome_of(ph, value) for value in (6.49, 6.5)] == ["caution", "pass"]


@pytest.mark.published("water quality", f"{_WHO}: nitrate and nitrite together", values=1, confirmed="from memory")
def test_nitrate_and_nitrite_together() -> None:
    # chapter 12: NO3/50 + NO2/3 is at most 1
    for nitrate, outcome in ((25.0, "pass"), (25.1, "fail")):
        found = checked(site({"water_quality": {"nitrate_mg_l": nitrate, "nitrite_mg_l": 1.5}}))
        assert found["quality_nitrate_and_nitrite"].outcome == outcome


@pytest.mark.published(
    "water quality", "water criteria of stock keeping (AgriFutures): 640 mg/L for 1 dS/m", values=1, confirmed="seen"
)
def test_dissolved_solids_by_conductivity() -> None:
    assert SOLIDS_MG_L_PER_US_CM * 1000 == 640
    assert result_of(WaterQuality(conductivity_us_cm=1000), "dissolved_solids_mg_l") == pytest.approx(640)


# ------------------------------------------------------------------------------------------- demand and storage


@pytest.mark.published(
    "storage and demand", "Sphere Handbook, water supply standard 1: domestic use", values=1, confirmed="seen"
)
@pytest.mark.published(
    "storage and demand", "Howard and Bartram, WHO 2003: basic and intermediate access", values=2,
    confirmed="at second hand",
)  # fmt: skip
@pytest.mark.published("storage and demand", "Sphere Handbook, appendix: pupils", values=1, confirmed="from memory")
def test_water_per_person() -> None:
    def judged(litres: float, **more: str) -> str:
        user = {"kind": "people", "name": "People", "count": 100, "litres_per_person_day": litres} | more
        return checked(site({"demand.users": [user]}))["per_person"].outcome

    # Sphere: at least 15 L; WHO: about 20 L is basic, about 50 L intermediate
    assert [judged(litres) for litres in (14.9, 15.0, 19.9, 20.0)] == ["fail", "caution", "caution", "pass"]
    assert water.INTERMEDIATE_L == 50
    assert [judged(litres, draw_profile="school") for litres in (2.9, 3.0)] == ["fail", "pass"]


@pytest.mark.published(
    "wells",
    "Tanzania, Ministry of Water, design manual vol. IV, appendix 3: a test of 24 h",
    values=1,
    confirmed="seen",
)
@pytest.mark.published(
    "wells", "SANS 10299-4:2003: recovery within about 1 m, a practitioner's page", values=1, confirmed="at second hand"
)
def test_length_and_recovery_of_a_pumping_test() -> None:
    assert (pumping_test.LEAST_HOURS, pumping_test.MOST_LEFT_M) == (24, 1)


def short_m3(tank_m3: float) -> float:
    """Water missing where a full tank evens out the textbook's inflow, twice over, a period a day."""
    inflow = np.repeat([1.0, 3, 3, 5, 8, 6, 7, 2, 1] * 2, 24) / 24
    draw = np.full(inflow.shape, 3.5 / 24)
    # what the hour brings and takes at once needs no tank
    drawn = np.maximum(draw - inflow, 0)[:, None]
    brought = np.maximum(inflow - draw, 0)[:, None]
    volume = np.array([[tank_m3]])
    months = np.zeros(inflow.size, dtype=np.int64)
    totals, _ = run_hours(brought, drawn, np.zeros(drawn.shape), volume, volume, months, month_count=1)
    return float(totals.shortfall_m3.sum())


@pytest.mark.published(
    "storage and demand",
    "Loucks and van Beek, Water Resources Systems Planning and Management, UNESCO 2005, table 11.2",
    values=1,
    confirmed="at second hand",
)
def test_storage_by_the_sequent_peak() -> None:
    # inflow 1 3 3 5 8 6 7 2 1, demand 3.5 in each period, the record run twice: 7.5, as a course of UC Davis prints it
    assert short_m3(7.5) == pytest.approx(0, abs=1e-9)
    assert short_m3(7.4) == pytest.approx(0.1, abs=1e-9)


# ------------------------------------------------------------------------------------------ what supplies cost


@pytest.mark.published(
    "tariffs and cost recovery",
    "IRC WASHCost, infosheet 1 (2012), piped schemes in US dollars of 2011",
    values=8,
    confirmed="at second hand",
)
def test_cost_benchmarks() -> None:
    # small and medium (up to 5000 people): 30-131 per person to build, 3-15 a year; larger: 20-152 and 3-15
    for people, capital in ((300, (30, 131)), (5000, (30, 131)), (5001, (20, 152)), (40_000, (20, 152))):
        found = [(each.low_usd, each.high_usd) for each in benchmarks_for(people)]
        assert found == [capital, (3, 15)]


@pytest.mark.published(
    "tariffs and cost recovery",
    "Fankhauser and Tepic 2005: 3 and 5 % of an income for water, a report's annex",
    values=2,
    confirmed="at second hand",
)
def test_shares_of_an_income_for_water() -> None:
    assert (LOW_PERCENT, HIGH_PERCENT) == (3, 5)
