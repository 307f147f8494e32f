"""Checks that turn in steps (letters, phases, counts), the second step of graded ones, and what ties a few together."""

from __future__ import annotations

from typing import Any

import pytest

from planner.checks import array, nameplate
from planner.checks.verdict import ORDER, SYMBOL, at_least, at_most, failed, figure, reserve, room, worst_first
from tests.checks.sites import basis, checked, site

DIRECT = {"controller.starting": "direct", "controller.ac_efficiency_percent": 96, "site.altitude_m": 0}
BARE = {"site.temperature_highest_c": 20}


@pytest.mark.parametrize(
    ("key", "changes", "outcome"),
    [
        ("ingress_protection", {"pump.plate.ingress_protection": "IP68"}, "pass"),
        ("ingress_protection", {"pump.plate.ingress_protection": "IP57"}, "caution"),
        ("ingress_protection", {"pump.plate.ingress_protection": "IP69"}, "fail"),
        ("ingress_protection", {"pump.plate.ingress_protection": "IP6X"}, "not given"),
        ("dc_cable_outdoor", {"cables.dc.outdoor": "no"}, "fail"),
        ("window_hours", {"controller.dc_voltage_min_v": 320}, "fail"),
        ("speed_range", {"pump.plate.speed_min_rpm": 3000, "sources.solar": None}, "pass"),
        ("modules_in_series", {"sources.solar.modules_in_series": 5}, "pass"),
        ("modules_in_series", {"sources.solar.modules_in_series": 4}, "fail"),
        ("modules_in_series", {"sources.solar.modules_in_series": 9}, "pass"),
        ("modules_in_series", {"sources.solar.modules_in_series": 10}, "fail"),
        ("grid_phases", {"sources.grid.phases": 1}, "pass"),
        ("grid_phases", {"sources.grid.phases": 3}, "caution"),
        ("grid_phases", {"pump.plate.phases": 3}, "fail"),
        ("grid_phases", {"sources.grid.phases": 2}, "fail"),
        ("generator_phases", {"sources.generator.phases": 1}, "pass"),
        ("generator_phases", {"pump.plate.phases": 3}, "fail"),
        ("grid_frequency", {"sources.grid.frequency_hz": 51.0}, "pass"),
        ("grid_frequency", {"sources.grid.frequency_hz": 51.5}, "caution"),
        ("grid_frequency", {"sources.grid.frequency_hz": 51.6}, "fail"),
        ("grid_frequency", {"sources.grid.frequency_hz": 47.5}, "caution"),
        ("generator_frequency", {"sources.generator.frequency_hz": 60}, "fail"),
        ("casing_clearance", {"borehole.casing_inner_diameter_mm": 98}, "fail"),
        ("casing_clearance", {"borehole.casing_inner_diameter_mm": 98.5}, "caution"),
        ("below_motor", {"borehole.depth_m": 78.8}, "fail"),
        ("below_motor", {"borehole.depth_m": 79.8}, "pass"),
        ("safe_yield", {"borehole.safe_yield_m3h": 5.0}, "caution"),
        ("safe_yield", {"borehole.safe_yield_m3h": 4.99}, "fail"),
        ("safe_yield", {"borehole.safe_yield_m3h": 5.0, "pump.speed_min_percent": 99}, "fail"),
        ("daily_limit", {"borehole.daily_limit_m3": 20}, "fail"),
        ("hours_a_day", {"demand.users.0.count": 6000}, "fail"),
        ("motor_power", {"controller.power_limit_w": 2300}, "pass"),
        ("per_person", {"demand.users.0.litres_per_person_day": 15}, "caution"),
        ("per_person", {"demand.users.0.litres_per_person_day": 14.9}, "fail"),
        ("per_person", {"demand.users.0.litres_per_person_day": 3, "demand.users.0.draw_profile": "school"}, "pass"),
        ("per_person", {"demand.users.0.litres_per_person_day": 2.9, "demand.users.0.draw_profile": "school"}, "fail"),
        ("yield_through_life", {"borehole.daily_limit_m3": 20}, "fail"),
        ("power_limit", {"controller.power_limit_w": 550}, "fail"),
        ("outlet_head", {"tank.outlet_height_m": 2}, "caution"),
        ("high_points", {"pipeline.profile.1.level_m": 9}, "pass"),
        ("high_points", {"pipeline.profile.1.level_m": 13}, "caution"),
        ("high_points", {"pipeline.profile.1": {"chainage_m": 200, "level_m": 13, "air_valve": "yes"}}, "pass"),
        ("high_points", {"pipeline.profile.1": {"chainage_m": 200, "level_m": 20, "air_valve": "yes"}}, "pass"),
        ("generator_starting", DIRECT | {"sources.generator.rating_kw": 10.0}, "caution"),
        ("generator_starting", DIRECT | {"sources.generator.rating_kw": 8.0}, "fail"),
        ("pressure_at_duty", {"borehole.water_temperature_c": 40}, "pass"),
        ("pressure_at_duty", {"borehole.water_temperature_c": 41}, "fail"),
    ],
)
def test_outcome(key: str, changes: dict[str, Any], outcome: str) -> None:
    assert checked(site(BARE | changes))[key].outcome == outcome


def _curve(last_power_w: float) -> dict[str, Any]:
    points = [(2.0, 108, 1900), (5.0, 80, 2400), (7.0, 45, last_power_w)]
    return {"pump.curve": [{"flow_m3h": q, "head_m": h, "power_w": p} for q, h, p in points]}


def test_motor_power_turns_at_five_and_fifteen_per_cent_above_the_plate() -> None:
    outcomes = []
    for power in range(2400, 6000, 120):
        found = nameplate.verdicts(basis(site(_curve(power) | {"controller.starting": "direct"})))
        verdict = next(each for each in found if each.key == "motor_power")
        share = float(verdict.value) / 2400  # type: ignore[arg-type]
        expected = "pass" if share <= 1.05 else "caution" if share <= 1.15 else "fail"
        assert verdict.outcome == expected
        outcomes.append(expected)
    assert set(outcomes) == {"pass", "caution", "fail"}
    # a drive can hold the motor to its rated power, as the hourly run takes it to do
    held = checked(site(_curve(5940)))["motor_power"]
    assert float(held.value) > 1.15 * 2400  # type: ignore[arg-type]
    assert held.outcome == "caution"
    assert "at most 2400 W" in held.remedy


def test_the_window_bites_when_its_lowest_voltage_is_that_of_noon(monkeypatch: pytest.MonkeyPatch) -> None:
    biting = {"controller.dc_voltage_min_v": 260}
    free, held = checked(site())["window_hours"], checked(site(biting))["window_hours"]
    assert (free.outcome, held.outcome) == ("pass", "caution")
    assert isinstance(held.value, float)
    monkeypatch.setattr(array, "WINDOW_HOURS", held.value)
    assert checked(site(biting))["window_hours"].outcome == "pass"
    monkeypatch.setattr(array, "WINDOW_HOURS", held.value - 1)
    assert checked(site(biting))["window_hours"].outcome == "caution"


def test_a_pump_that_contradicts_itself_is_named_and_nothing_breaks() -> None:
    verdict = checked(site({"pump.motor_efficiency_percent": 45, "pump.rated_power_w": 1300}))["rated_figures"]
    assert verdict.outcome == "fail"
    assert "more than 100 % efficient" in verdict.why


def test_the_month_of_the_deepest_water_counts() -> None:
    levels = [48.0] * 12
    levels[8] = 57.0
    found = checked(site({"borehole.static_level_by_month_m": levels}))
    assert "September" in found["rated_head"].compared
    assert found["lift"].value == pytest.approx(57 + 14)


def test_an_open_design_counts_with_what_would_suit_and_says_so() -> None:
    auto = {"sources.solar.strings": "auto", "tank.volume_m3": "auto"}
    found = checked(site(auto))
    assert found["array_current"].value == pytest.approx(1.25 * 12.4)
    assert "the number is open" in found["array_current"].compared
    assert found["days_held"].outcome == "pass"
    assert "the volume is open" in found["days_held"].compared
    assert "the number is open" in found["power_ratio"].compared


def test_what_may_never_be_chosen_fails_no_check() -> None:
    # Twelve strings would overload controller and modules, one does not; the smallest tank would not hold an hour.
    auto: dict[str, Any] = {
        "sources.solar.strings": "auto",
        "sources.solar.strings_max": 12,
        "tank.volume_m3": "auto",
        "tank.sizes": [{"volume_m3": 0.1}, {"volume_m3": 20}, {"volume_m3": 40}],
    }
    assert failed(checked(site(auto)).values()) == ()
    assert failed(checked(site(auto | {"sources.solar.strings": 12})).values()) != ()
    assert failed(checked(site(auto | {"tank.volume_m3": 0.1})).values()) != ()
    # Where every number fails, the check says so.
    assert checked(site(auto | {"controller.dc_current_max_a": 15.4}))["array_current"].outcome == "fail"
    assert checked(site(auto | {"controller.dc_current_max_a": 15.5}))["array_current"].outcome == "pass"


def test_sorting_puts_the_failed_first_and_keeps_topics_together() -> None:
    changes = {"sources.solar.modules_in_series": 10, "pump.plate.current_a": None, "tank.volume_m3": 10}
    ordered = worst_first(checked(site(changes)).values())
    ranks = [ORDER.index(verdict.outcome) for verdict in ordered]
    assert ranks == sorted(ranks)
    assert {verdict.outcome for verdict in ordered} == set(ORDER) == set(SYMBOL)
    assert failed(ordered) == tuple(verdict for verdict in ordered if verdict.outcome == "fail") != ()
    assert all(verdict.symbol == SYMBOL[verdict.outcome] for verdict in ordered)


def test_standing_at_the_limit_passes() -> None:
    assert at_most(5.0, 5.0)
    assert at_least(5.0, 5.0)
    assert not at_most(5.0 + 1e-6, 5.0)
    assert not at_least(5.0 - 1e-6, 5.0)
    assert room(5.0, 5.0, "V") == reserve(5.0, 5.0, "V") == "at the limit"
    assert room(6.0, 5.0, "V") == "1 V above the limit"
    assert reserve(4.0, 5.0, "m") == "1 m short"
    assert [figure(value) for value in (0.1234, 12.34, 123.4, 7.0)] == ["0.12", "12.3", "123", "7"]


def test_lowest_and_highest_temperature_come_from_the_weather_unless_given() -> None:
    given, taken = basis(site()), basis(site({"site.temperature_lowest_c": None, "site.temperature_highest_c": None}))
    assert (given.coldest_c, given.hottest_c) == (8, 34)
    assert taken.coldest_c == pytest.approx(taken.weather.temperature_c.min() - 5)
    assert taken.hottest_c == pytest.approx(taken.weather.temperature_c.max())
    assert "none was given" in taken.coldest_words


def test_a_pump_that_draws_the_water_below_its_intake_fails_though_the_run_holds_it() -> None:
    # 48 m at rest, 1 m per m3/h and an intake at 52 m of which 2 m must stay covered: 2 m3/h can be drawn
    shallow = {"borehole.pump_depth_m": 52, "borehole.specific_capacity_m3h_per_m": 1.0}
    duty = basis(site(shallow)).duty
    assert duty is not None
    assert (duty.flow_m3h, duty.limited_by) == (pytest.approx(2.0), "intake level")
    found = checked(site(shallow))
    for key in ("pumping_level", "submergence"):
        assert found[key].outcome == "fail"
        assert "that the pump would draw" in found[key].compared
        assert "holds it to 2.00 m3/h" in found[key].remedy
    assert float(found["pumping_level"].value) > 52  # type: ignore[arg-type]
