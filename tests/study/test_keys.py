"""Keys by their path, and the stage that each touches."""

from __future__ import annotations

import re
from types import SimpleNamespace

import numpy as np
import pytest

from planner.assumptions.reader import check_scenario
from planner.scenario.errors import InputError
from planner.scenario.paths import parts_of
from planner.scenario.scenario import Scenario
from planner.scenario.walk import field_at
from planner.study.keys import SIZES, key_of, numeric_keys, with_value
from planner.study.site import place_of, weather_of
from tests.study.sweep.cases import EXAMPLES, school, school_raw


def test_list_entries_count_from_one() -> None:
    key = key_of(school(), "demand.users[2].count", "here")
    assert key.path == ("demand", "users", 1, "count")
    assert key.base == 95


def test_a_key_that_is_not_in_the_file_has_its_default() -> None:
    assert key_of(school(), "demand.users[1].litres_per_person_day", "here").base == 6
    assert key_of(school(), "controller.efficiency_percent", "here").base == 96


def test_a_value_within_an_override_is_a_key() -> None:
    overrides = {"solar + grid": {"tank": {"volume_m3": 30}}}
    scenario = school(overrides=overrides)
    key = key_of(scenario, "overrides.'solar + grid'.tank.volume_m3", "here")
    assert (key.base, key.changes) == (30, "run")
    changed = check_scenario(
        with_value(school_raw(overrides={"solar + grid": {"tank": {"volume_m3": 30}}}), key, 40), ""
    )
    assert changed.overrides["solar + grid"]["tank"]["volume_m3"] == 40


@pytest.mark.parametrize(
    ("text", "nearest"),
    [
        ("finance.discount_rate", "finance.discount_rate_percent"),
        ("demand.users[9].count", "demand.users[2].count"),
        ("sources.generator.fuel_price", "sources.generator.fuel_price_per_l"),
    ],
)
def test_an_unknown_path_names_the_nearest(text: str, nearest: str) -> None:
    with pytest.raises(InputError, match="is no key of this scenario") as caught:
        key_of(school(), text, "sweep.grid[1].key")
    assert f"'{nearest}'" in str(caught.value)
    assert caught.value.problems[0].key == "sweep.grid[1].key"


@pytest.mark.parametrize("text", ["site.place", "demand.users[1]", "weather.kind", "controller.mode", "sources.grid"])
def test_a_key_that_is_no_number_is_refused(text: str) -> None:
    with pytest.raises(InputError, match="is not a number; the nearest that there is: '"):
        key_of(school(), text, "here")


@pytest.mark.parametrize(
    "text", ["", "..", "a b", "[", "demand.users[0].count", "x[9999999999]", "'", "demand.users[1"]
)
def test_any_text_at_all_is_answered(text: str) -> None:
    with pytest.raises(InputError, match="the nearest that there is"):
        key_of(school(), text, "here")


def test_paths_are_read_as_they_are_written() -> None:
    for text, key in numeric_keys(school(overrides={"solar + grid": {"tank": {"volume_m3": 30}}})).items():
        assert parts_of(text) == key.path


def test_setting_a_key_changes_that_key_alone() -> None:
    raw = school_raw()
    before = school_raw()
    for key in numeric_keys(school()).values():
        changed = with_value(raw, key, 7)
        node = changed
        for part in key.path:
            node = node[part]  # type: ignore[index]
        assert node == 7
    assert raw == before


@pytest.mark.parametrize(
    ("text", "stage"),
    [
        ("site.latitude_deg", "weather"),
        ("weather.ghi_kwh_m2_day[3]", "weather"),
        ("seed", "weather"),
        ("finance.analysis_period_years", "weather"),
        ("demand.users[1].count", "run"),
        ("tank.volume_m3", "run"),
        ("sources.grid.outages.hours_per_day", "run"),
        ("sources.solar.module.power_w", "run"),
        ("sources.solar.module.price", "money"),
        ("sources.grid.tariff.blocks[1].price_per_kwh", "money"),
        ("sources.generator.life_hours", "money"),
        ("finance.discount_rate_percent", "money"),
        ("service.demand_met_percent", "money"),
        ("controller.life_years", "money"),
        ("pump.life_years", "run"),  # a new pump ends the wear of the old one
        ("pump.wear_percent_per_year", "run"),
        ("tank.sizes[2].price", "money"),
    ],
)
def test_the_stage_follows_from_the_section(text: str, stage: str) -> None:
    assert key_of(school(), text, "here").changes == stage


def test_hours_of_a_band_touch_the_hours() -> None:
    def changes(path: tuple[str | int, ...]) -> str:
        field = field_at(Scenario, path)
        assert field is not None
        return field.changes

    assert changes(("sources", "grid", "tariff", "bands", 0, "hours", 0, 1)) == "run"
    assert changes(("overrides", "grid", "pump", "price")) == "money"


def test_prices_are_told_by_their_unit() -> None:
    keys = numeric_keys(school())
    assert keys["pump.price"].is_price
    assert keys["sources.grid.tariff.fixed_charge_per_month"].is_price
    assert not keys["finance.discount_rate_percent"].is_price
    assert not keys["pump.life_years"].is_price
    assert not keys["sources.grid.line_length_m"].is_price


def test_the_weather_is_made_from_the_weather_keys_alone() -> None:
    scenario = school()
    bare = SimpleNamespace(
        site=scenario.site,
        weather=scenario.weather,
        seed=scenario.seed,
        finance=SimpleNamespace(analysis_period_years=scenario.finance.analysis_period_years),
    )
    weather = weather_of(bare, place_of(bare), EXAMPLES)  # type: ignore[arg-type]
    assert np.array_equal(weather.ghi_w_m2, weather_of(scenario, place_of(scenario), EXAMPLES).ghi_w_m2)
    read = {key.path[0] for key in numeric_keys(scenario).values() if key.changes == "weather"}
    assert read == {"site", "weather", "seed", "finance"}


def test_every_size_is_a_key() -> None:
    assert set(SIZES) <= set(numeric_keys(school()))


@pytest.mark.parametrize(
    ("key", "label"),
    [
        ("seed", "Seed of everything drawn at random"),
        ("demand.users[1].count", "Number of people in the first year (Day pupils)"),
        ("sources.generator.fuel_price_per_l", "Price of fuel at the filling station (Generator)"),
        ("sources.grid.tariff.price_per_kwh", "Energy price outside the bands (Tariff)"),
        ("tank.sizes[2].price", "Price (Tank size 2)"),
        ("weather.temperature_c[3]", "Monthly mean air temperature 3 (Weather)"),
        ("overrides.'solar + grid'.pump.price", "Price (Pump), for solar + grid alone"),
    ],
)
def test_an_input_is_called_by_its_description_and_its_part_of_the_works(key: str, label: str) -> None:
    scenario = school(overrides={"solar + grid": {"pump": {"price": 4000.0}}})
    assert key_of(scenario, key, "").label == label


def test_no_label_names_a_key() -> None:
    assert [key.label for key in numeric_keys(school()).values() if re.search(r"[a-z]_[a-z]", key.label)] == []
