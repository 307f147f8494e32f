"""A first visit's notes read and complete: what is found, from what, and what is said of it."""

from __future__ import annotations

import copy
import time
import tomllib
from pathlib import Path
from typing import Any

import pytest

from planner.assumptions.completed import completed
from planner.assumptions.reader import check_scenario, option_scenario, read_scenario, scenario_of
from planner.checks.remedies import with_changes
from planner.scenario.errors import InputError
from planner.scenario.paths import parts_of
from planner.scenario.walk import ASSUMED, walk

VISIT = Path("scenarios/visit.toml")
RAW = tomllib.loads(VISIT.read_text(encoding="utf-8"))


def visit(**changes: Any) -> dict[str, Any]:
    """The visit's data with some keys changed, tables by double underscores; None takes one out."""
    raw = copy.deepcopy(RAW)
    for path, value in changes.items():
        table: Any = raw
        *tables, key = path.split("__")
        for name in tables:
            table = table.setdefault(name, {})
        table[key] = value
        if value is None:
            del table[key]
    return raw


def values(raw: dict[str, Any]) -> dict[str, Any]:
    return {field.key: field.value for field in walk(scenario_of(raw))}


def test_the_visit_is_short_and_says_that_it_is_invented() -> None:
    text = VISIT.read_text(encoding="utf-8")
    assert len(text.splitlines()) <= 45
    assert "invented" in text


def test_every_assumption_is_listed_with_its_reason() -> None:
    scenario = read_scenario(VISIT)
    found = {assumption.key: assumption.how for assumption in scenario.assumptions}
    assert list(found) == [
        "site.place", "site.time_zone", "weather", "demand.users[1].name", "borehole.specific_capacity_m3h_per_m",
        "borehole.safe_yield_m3h", "pump.name", "pump.kind", "controller.dc_voltage_min_v",
        "controller.dc_voltage_max_v", "pipeline.segments", "pipeline.segments[1].pipe", "pipeline.segments[2].pipe",
        "sources.solar.module", "sources.solar.modules_in_series", "sources.solar.string_fuse_a",
        "sources.solar.planes", "tank", "tank.sizes",
    ]  # fmt: skip
    assert all(found.values())
    assert "2.5 m3/h" in found["borehole.safe_yield_m3h"]
    assert not scenario.priced


def test_without_sources_the_sun_is_assumed() -> None:
    raw = {name: table for name, table in RAW.items() if name != "sources"}
    scenario = scenario_of(raw)
    assert scenario.sources.names == ("solar",)
    assert "sources.solar" in {assumption.key for assumption in scenario.assumptions}


def test_the_walk_tells_assumed_from_given_and_default() -> None:
    status = {field.key: field.status for field in walk(read_scenario(VISIT))}
    assert status["borehole.test_flow_m3h"] == "given"
    assert status["borehole.specific_capacity_m3h_per_m"] == ASSUMED
    assert status["pipeline.segments[2].length_m"] == ASSUMED
    assert status["pipeline.segments[2].fittings_k"] == "default"
    assert status["sources.solar.module.power_w"] == ASSUMED
    assert status["demand.users[1].litres_per_person_day"] == "default"
    assert status["demand.users[1].count"] == "given"
    reasons = {field.key: field.source for field in walk(read_scenario(VISIT)) if field.status == ASSUMED}
    assert all(reasons.values())
    assert "prices.pump" not in reasons


def test_the_figures_of_the_visit() -> None:
    found = values(RAW)
    assert found["borehole.specific_capacity_m3h_per_m"] == pytest.approx(2.5 / 6)
    assert found["borehole.safe_yield_m3h"] == 2.5
    assert found["site.time_zone"].startswith("Africa/")
    assert (found["controller.dc_voltage_min_v"], found["controller.dc_voltage_max_v"]) == (110, 400)
    assert (found["sources.solar.planes[1].tilt_deg"], found["sources.solar.planes[1].azimuth_deg"]) == (16, 0)
    assert found["pipeline.segments[1].length_m"] == 60
    assert found["pipeline.segments[2].length_m"] == 430
    # 400 V less the margin of a cold morning over 37 V a module; 1,500 W at no more than 8 A
    assert 7 <= found["sources.solar.modules_in_series"] <= 9
    assert found["weather.kind"] == "estimate"
    assert found["demand.users[1].litres_per_person_day"] == 25


def test_nothing_that_is_given_is_touched() -> None:
    raw = visit(borehole__safe_yield_m3h=1.8, site__place="Elsewhere", controller__dc_voltage_max_v=350.0)
    before = copy.deepcopy(raw)
    found = values(raw)
    assert raw == before
    assert (found["borehole.safe_yield_m3h"], found["site.place"]) == (1.8, "Elsewhere")
    assert (found["controller.dc_voltage_min_v"], found["controller.dc_voltage_max_v"]) == (None, 350)


def test_without_what_was_worked_out_the_data_are_those_given() -> None:
    left = scenario_of(RAW).given()
    assert {name: table for name, table in left.items() if table != {}} == RAW


@pytest.mark.parametrize(
    ("key", "value", "moved"),
    [
        ("borehole.test_flow_m3h", 4.0, "borehole.safe_yield_m3h"),
        ("borehole.drawdown_m", 3.0, "borehole.specific_capacity_m3h_per_m"),
        ("borehole.pump_depth_m", 70.0, "pipeline.segments[1].length_m"),
        ("pipeline.length_m", 200.0, "pipeline.segments[2].length_m"),
        ("pump.rated_power_w", 3000.0, "sources.solar.modules_in_series"),
        ("site.latitude_deg", -30.0, "sources.solar.planes[1].tilt_deg"),
    ],
)
def test_a_change_of_a_key_works_out_anew_what_stands_on_it(key: str, value: float, moved: str) -> None:
    scenario = scenario_of(RAW)
    before = {field.key: field.value for field in walk(scenario)}
    after = {field.key: field.value for field in walk(with_changes(scenario, {key: value}))}
    assert after[key] == value
    assert after[moved] != before[moved]


def test_a_key_that_was_worked_out_can_be_set() -> None:
    changed = with_changes(scenario_of(RAW), {"pipeline.segments[2].pipe": "PE100 SDR11 63"})
    assert [segment.pipe for segment in changed.pipeline.segments] == ["PE100 SDR9 40", "PE100 SDR11 63"]
    assert with_changes(changed, {"sources.solar.planes[1].tilt_deg": 25.0}).sources.solar.planes[0].tilt_deg == 25.0


def test_an_option_of_its_own_is_completed_by_its_own_pump() -> None:
    raw = visit(sources__grid={"hours": [[5, 20]]}, sources__solar={})
    raw["overrides"] = {"solar": {"pump": {"rated_power_w": 3000.0}}}
    scenario = scenario_of(raw)
    own = option_scenario(scenario, "solar")
    assert own.sources.solar is not None
    assert scenario.sources.solar is not None
    assert own.sources.solar.modules_in_series > scenario.sources.solar.modules_in_series
    assert scenario.option_names == ["solar", "grid", "solar + grid"]


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"borehole__specific_capacity_m3h_per_m": 0.4}, "borehole.test_flow_m3h: is given beside"),
        ({"borehole__drawdown_m": None}, "borehole.test_flow_m3h: says nothing without borehole.drawdown_m"),
        ({"pipeline__length_m": None}, "pipeline.segments: is missing"),
        ({"pump__max_head_m": "much"}, "pump.max_head_m: 'much' was given; must be a number"),
        ({"site__latitude_deg": "16 S"}, "site.latitude_deg: '16 S' was given"),
        ({"pump": 5}, "pump: 5 was given; must be a table"),
        ({"demand": [1]}, "demand: a list of 1 was given; must be a table"),
        ({"pump__price": 900}, "currency is left out, so no price can stand, as at pump.price; give the currency"),
    ],
)
def test_what_is_wrong_is_said_as_it_was_given(changes: dict[str, Any], said: str) -> None:
    with pytest.raises(InputError) as error:
        check_scenario(visit(**changes), "visit.toml")
    assert any(said in line for line in error.value.lines()), list(error.value.lines())


@pytest.mark.parametrize(
    ("changes", "cause", "consequence"),
    [
        ({"pump__rated_flow_m3h": "2,5"}, "write a decimal point", "pump.kind"),
        ({"site__latitude_deg": 128.0}, "must be at most 90", "site.time_zone"),
    ],
)
def test_what_follows_from_a_wrong_key_is_not_told_beside_it(
    changes: dict[str, Any], cause: str, consequence: str
) -> None:
    with pytest.raises(InputError) as error:
        check_scenario(visit(**changes), "visit.toml")
    said = list(error.value.lines())
    assert any(cause in line for line in said)
    assert not any(consequence in line for line in said), said


def test_misspelt_keys_are_named_beside_the_partner_that_is_missing() -> None:
    raw = visit(borehole__drawdown_m=None, borehole__drawdwn_m=6.0, pump__rated_powr_w=1500.0)
    with pytest.raises(InputError) as error:
        check_scenario(raw, "visit.toml")
    said = "\n".join(error.value.lines())
    assert "borehole.test_flow_m3h: says nothing without borehole.drawdown_m" in said
    assert "drawdwn_m: is not a known key; did you mean 'drawdown_m'?" in said
    assert "rated_powr_w: is not a known key; did you mean 'rated_power_w'?" in said


def test_it_takes_hardly_any_time() -> None:
    completed(RAW)  # unpacks the tables
    begun = time.process_time()
    for _ in range(20):
        completed(RAW)
    assert (time.process_time() - begun) / 20 < 0.02


def test_paths_of_assumptions_are_keys() -> None:
    for assumption in scenario_of(RAW).assumptions:
        assert parts_of(assumption.key) == assumption.path
