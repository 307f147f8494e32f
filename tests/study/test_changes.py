"""What a change of each numeric key makes necessary, as its field says and as it turns out when the key is changed."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, is_dataclass
from functools import cache
from typing import Any

import numpy as np
import pytest

from planner.assumptions.reader import check_scenario
from planner.money.simulated import quantities_of
from planner.resource.sun import Sun
from planner.scenario.errors import InputError
from planner.scenario.fields import Changes
from planner.scenario.records import WaterQuality
from planner.scenario.scenario import Scenario
from planner.scenario.walk import walk_models
from planner.study import site
from planner.study.cases import Case, supplies_of
from planner.study.design import SiteContext, built_of, check_tank, option_of, site_context_of
from planner.study.keys import STAGES, Key, numeric_keys, with_value
from planner.study.results import Result, serves
from planner.supply.run import Option, Outcome, run_options
from tests.study.sweep.cases import EXAMPLES, school_raw

WITHOUT_EFFECT = {
    "sources.solar.strings_max": "bounds the choice where strings is 'auto', which these scenarios give",
    "tank.sizes.volume_m3": "tanks to choose from where volume_m3 is 'auto'; here they only set the price of another",
    "service.demand_met_worst_year_percent": "turns a verdict only where a share lies between the two values",
    "service.longest_short_days": "turns a verdict only where a run of days lies between the two values",
}
"""Keys of which a change does less here than it makes necessary, and why."""

LIFE_YEARS = 2
OPTIONS = ["generator", "solar + grid"]


def hill_school() -> dict[str, Any]:
    """The example with a short life, and with those of its optional keys that bear on it."""
    raw = school_raw(service={"options": OPTIONS})
    raw["finance"] |= {"analysis_period_years": LIFE_YEARS, "loan_years": 2, "water_price_per_m3": 0.5}
    raw["borehole"]["pump_depth_m"] = 68
    raw["tank"]["volume_m3"] = 8
    raw["site"] |= {"temperature_lowest_c": -4, "temperature_highest_c": 38}
    raw["pipeline"]["segments"][1] |= {"roughness_mm": 0.02, "pressure_class_bar": 16, "wave_speed_m_s": 320}
    raw["pipeline"]["stop_time_s"] = 2
    raw["controller"]["power_limit_w"] = 1000
    for run in raw["cables"].values():
        run |= {"ampacity_a": 30, "ambient_temperature_c": 25}
    raw["cables"]["dc"]["voltage_class_v"] = 1500
    for name in ("ac", "drop"):
        raw["cables"][name]["protective_device_a"] = 16
    raw["weather"]["monthly_spread_percent"] = 4
    raw["sources"]["solar"] |= {"strings_max": 3, "string_fuse_a": 20}
    raw["sources"]["solar"]["module"]["series_fuse_max_a"] = 25
    raw["households"] = {
        "size": 5.5, "income_per_month": 120, "lowest_income_per_month": 60, "collection_percent": 90
    }  # fmt: skip
    raw["costs"] |= {"supervision_percent": 7, "vat_percent": 18, "direct_support_per_person_year": 0.8}
    raw["controller"]["life_years"] = 1
    raw["finance"] |= {
        "renewal_fund_interest_percent": 2, "programme_currency": "EUR", "exchange_rate": 1.1,
        "usd_prices_since_2011": 1.4,
    }  # fmt: skip
    raw["pumping_test"] = {
        "flow_m3h": 3, "duration_h": 48, "static_level_m": 60, "final_level_m": 70, "recovery_h": 12,
        "recovery_level_m": 60.5,
    }  # fmt: skip
    raw["water_quality"] = {
        field: 1.0 for field, info in WaterQuality.model_fields.items() if "float" in str(info.annotation)
    }
    raw["sources"]["grid"]["outages"] |= {
        "month_weights": [1.0] * 6 + [2.0] * 6,
        "start_weights": [1.0] * 17 + [3.0] * 4 + [1.0] * 3,
    }
    return raw


def dust_by_month() -> dict[str, Any]:
    """The same with another loss to dust in each month, in place of one for the year."""
    raw = hill_school()
    raw["sources"]["solar"]["soiling_by_month_percent"] = [4.0] * 5 + [1.0] * 4 + [3.0] * 3
    return raw


def with_every_table() -> dict[str, Any]:
    """A village by another drawdown, friction, pump, tariff and kind of money, with every user, item and plane."""
    raw = hill_school()
    raw["demand"]["draw_profile"] = [0.0] * 5 + [0.1] * 10 + [0.0] * 9
    raw["demand"]["users"] = [
        {"kind": "people", "name": "Homes", "count": 60, "litres_per_person_day": 40, "growth_percent_per_year": 2},
        {"kind": "livestock", "name": "Cattle", "count": 40, "litres_per_head_day": 30,
         "draw_profile": [0.0] * 6 + [0.25, 0.25] + [0.0] * 9 + [0.25, 0.25] + [0.0] * 5},
        {"kind": "irrigation", "name": "Garden", "area_m2": 900, "application_efficiency_percent": 80,
         "net_requirement_mm_day": [3.0] * 12},
        {"kind": "volume", "name": "Clinic", "m3_per_day": [2.0] * 12},
    ]  # fmt: skip
    del raw["borehole"]["specific_capacity_m3h_per_m"]
    raw["borehole"] |= {
        "step_test": [{"flow_m3h": 1, "drawdown_m": 2.5}, {"flow_m3h": 2, "drawdown_m": 6}],
        "safe_yield_m3h": 1.5,
        "daily_limit_m3": 16,
        "flow_sleeve_diameter_mm": 110,
    }
    del raw["borehole"]["static_level_by_month_m"]
    for segment in raw["pipeline"]["segments"]:
        segment.pop("pipe")
        segment |= {"inner_diameter_mm": 38.0, "hazen_williams_c": 140.0}
    raw["pipeline"] |= {"friction": "hazen-williams", "residual_head_m": 2}
    raw["pump"] |= {
        "kind": "centrifugal", "rated_flow_m3h": 2.0, "rated_head_m": 120, "max_flow_m3h": 3.2, "max_head_m": 190,
        "rated_power_w": 1500, "speed_min_percent": 50, "motor_efficiency_percent": 80,
        "curve": [
            {"flow_m3h": 0, "head_m": 185, "power_w": 800},
            {"flow_m3h": 1, "head_m": 165, "power_w": 1200},
            {"flow_m3h": 2, "head_m": 125, "power_w": 1500},
            {"flow_m3h": 3, "head_m": 50, "power_w": 1550},
        ],
    }  # fmt: skip
    for name in ("dc_voltage", "ac_voltage", "speed"):
        unit = "rpm" if name == "speed" else "v"
        ends = [raw["pump"]["plate"].pop(f"{name}_{end}_{unit}") for end in ("min", "max")]
        raw["pump"]["plate"][f"{name}_{unit}"] = ends
    raw["controller"] |= {"power_limit_w": 1450, "dc_voltage_min_v": 150, "dc_voltage_max_v": 160}
    del raw["cables"]["dc"]
    raw["sources"]["solar"]["planes"] = [
        {"tilt_deg": 20, "azimuth_deg": 100, "share_percent": 50},
        {"tilt_deg": 20, "azimuth_deg": 260, "share_percent": 50, "shading_by_month_percent": [5.0] * 12},
    ]
    raw["sources"]["solar"].pop("soiling_percent", None)
    raw["sources"]["solar"] |= {"soiling_percent_per_day": 0.2, "cleaning_interval_days": 30}
    solar, grid = raw["sources"]["solar"], raw["sources"]["grid"]
    for bought in (
        raw["borehole"],
        *raw["pipeline"]["segments"],
        raw["pump"],
        raw["controller"],
        solar["module"],
        grid,
    ):
        bought["life_years"] = 1.6
    raw["sources"]["grid"] |= {
        "hours": [[4, 12], [14, 23]], "power_limit_w": 900, "line_length_m": 300, "line_price_per_m": 6,
        "tariff": {
            "price_per_kwh": 0.15, "fixed_charge_per_month": 2, "demand_charge_per_kw_month": 1.5,
            "levy_per_kwh": 0.01, "tax_percent": 10, "price_growth_percent_per_year": 1,
            "bands": [{"name": "Dear", "hours": [[6, 9]], "months": [1, 2, 3], "price_per_kwh": 0.3}],
        },
    }  # fmt: skip
    raw["sources"]["generator"] |= {
        "rating_kw": 1.2, "derating_from_temperature_c": 15, "fuel_price_growth_percent_per_year": 1, "life_years": 1.6,
        "service_interval_h": 200, "overhaul_interval_h": 700,
    }  # fmt: skip
    raw["tank"] |= {"price": 3000, "life_years": 2}
    raw["service"] |= {
        "demand_met_worst_year_percent": 20, "longest_short_days": 100, "demand_met_percent": 50,
        "unserved_water_value_per_m3": 1.5,
    }  # fmt: skip
    raw["costs"] |= {
        "items": [{"name": "Fence", "quantity": 100, "unit": "m", "unit_price": 8, "life_years": 1.6,
                   "maintenance_percent_per_year": 2}],
    }  # fmt: skip
    raw["finance"] |= {
        "prices": "nominal", "inflation_percent": 3, "loan_percent": 10, "loan_rate_percent": 8, "loan_years": 2,
    }  # fmt: skip
    raw["overrides"] = {"solar + grid": {"tank": {"volume_m3": 15.0}}}
    return raw


def by_short_keys() -> dict[str, Any]:
    """The hill school by a pumping test of one step, the main's length and a price list."""
    raw = hill_school()
    del raw["borehole"]["specific_capacity_m3h_per_m"]
    raw["borehole"] |= {"test_flow_m3h": 1.5, "drawdown_m": 5.0}
    raw["pipeline"] = {"rise_to_tank_inlet_m": raw["pipeline"]["rise_to_tank_inlet_m"], "length_m": 300.0}
    raw["prices"] = {
        "pv_per_kwp": 900.0, "tank_per_m3": 150.0, "pipe_per_m": 5.0, "pump": 1500.0, "controller": 400.0,
        "borehole": 9000.0, "grid_connection": 700.0, "grid_per_kwh": 0.2, "generator": 2500.0, "fuel_per_l": 1.4,
        "pipes": [{"pipe": "PE100 SDR11 32", "per_m": 3.0}, {"pipe": "PE100 SDR9 32", "per_m": 4.0}],
    }  # fmt: skip
    for table, key in (("pump", "price"), ("controller", "price"), ("borehole", "price"), ("tank", "price")):
        raw[table].pop(key, None)
    raw["tank"].pop("sizes", None)
    sources = raw["sources"]
    sources["solar"]["module"].pop("price", None)
    sources["solar"].pop("structure_price_per_module", None)
    sources["grid"].pop("price", None)
    sources["grid"].pop("tariff", None)
    for key in ("price", "fuel_price_per_l"):
        sources["generator"].pop(key, None)
    return raw


SCENARIOS = {
    "hill school": hill_school,
    "dust by month": dust_by_month,
    "every table": with_every_table,
    "short keys": by_short_keys,
}


@dataclass(frozen=True)
class Worked:
    """A scenario up to the hour loop: its site, and for each supply option its case and what the loop is given."""

    scenario: Scenario
    site: SiteContext
    cases: list[Case]
    options: list[Option]


def worked(raw: dict[str, Any]) -> Worked:
    scenario = check_scenario(raw, "test")
    site = site_context_of(scenario, EXAMPLES)
    cases = [
        supply.case(supply.strings_to_try[0], supply.tanks_to_try[0], supply.given_levels)
        for supply in supplies_of(scenario)
    ]
    options = []
    for case in cases:
        check_tank(case.scenario, site.draw_m3)
        design, built = case.design, built_of(case.scenario, case.design.sources, site)
        start, stop = design.levels
        options.append(option_of(built, site, [design.strings], [design.tank_m3], [start], [stop]))
    return Worked(scenario, site, cases, options)


def values_near(key: Key) -> Iterator[float]:
    """Other values of a key, of which the models and the site allow at least one."""
    assert key.base is not None
    some = (key.base + 1, key.base - 1) if key.whole else (key.base * 0.9, key.base * 1.1, key.base + 0.5)
    for value in (*some, *OF_A_LIST.get(str(key.path[-1]), ()), key.base + 0.005):
        if value != key.base:
            yield value


OF_A_LIST = {"section_mm2": (4.0, 10.0), "conductor_class": (2.0, 5.0), "phases": (3.0,)}


def plain(key: Key) -> str:
    """A key without the places in its lists: what stands on one field of the models."""
    return ".".join(part for part in key.path if isinstance(part, str))


def same(one: Any, other: Any) -> bool:
    """Whether two values hold the same numbers, bit for bit, however deep."""
    if one is other:
        return True
    if isinstance(one, np.ndarray):
        return isinstance(other, np.ndarray) and np.array_equal(one, other, equal_nan=one.dtype.kind == "f")
    if isinstance(one, tuple | list):
        return len(one) == len(other) and all(map(same, one, other))
    if isinstance(one, dict):
        return one.keys() == other.keys() and all(same(value, other[name]) for name, value in one.items())
    if is_dataclass(one):
        return all(same(value, getattr(other, name)) for name, value in vars(one).items())
    return bool(one == other)


@dataclass(frozen=True)
class Effect:
    """A key of one scenario, and the first of weather, run and money that a change of it changed, else nothing."""

    key: Key
    field: str
    found: Changes


def numbers_of(scenario: Scenario) -> Iterator[Key]:
    """Keys of a scenario that hold a number which another can take the place of."""
    for key in numeric_keys(scenario).values():
        if key.base is not None and not (key.base == 0 and "draw_profile" in key.path):
            yield key


@cache
def effects(name: str, fields: frozenset[str] | None = None) -> list[Effect]:
    """Change one number on each field of a scenario, run the hours of all the changed scenarios, and price them.

    Some fields alone, if they are named.
    """
    raw = SCENARIOS[name]()
    base = worked(raw)
    tried: dict[str, tuple[Key, Worked]] = {}
    for key in numbers_of(base.scenario):
        if plain(key) in tried or (fields is not None and plain(key) not in fields):
            continue
        there = changed(base.scenario, key)
        if there is not None:
            tried[plain(key)] = key, there
    # The hour loop is a function of what it is given: where that is the same to the last bit, so is the outcome.
    anew = [base, *(there for _, there in tried.values() if not _same_hours(there, base))]
    outcomes = dict(zip(map(id, anew), hours_of(anew), strict=True))
    before = outcomes[id(base)]
    found = []
    for field, (key, there) in tried.items():
        outcome = outcomes.get(id(there), before)
        effect: Changes
        if not same(there.site.weather, base.site.weather):
            effect = "weather"
        elif not same(outcome, before):
            effect = "run"
        else:
            effect = "nothing" if same(money_of(there, outcome), money_of(base, before)) else "money"
        found.append(Effect(key, field, effect))
    return found


def _same_hours(one: Worked, other: Worked) -> bool:
    return same(one.options, other.options)


def changed(scenario: Scenario, key: Key) -> Worked | None:
    """Work out a scenario with another value of a key; None where the models or the site allow none of those tried."""
    for value in values_near(key):
        try:
            return worked(with_value(scenario.given(keep=[key.path]), key, value))
        except InputError:
            continue
    return None


def hours_of(cases: list[Worked]) -> list[list[Outcome]]:
    """Outcomes of each case's options; what the hour loop wants alike goes through it together."""
    together: dict[Any, list[int]] = {}
    for place, case in enumerate(cases):
        own = [each.scenario for each in case.cases]
        bands = [source.bands for option in case.options for source in option.top_ups]
        generators = [scenario.sources.generator for scenario in own]
        alike = (
            case.site.draw_m3.shape,
            tuple(scenario.borehole.daily_limit_m3 for scenario in own),
            tuple(generator.minimum_run_h if generator else 0 for generator in generators),
            tuple(None if each is None else each.tobytes() for each in bands),
        )
        together.setdefault(alike, []).append(place)
    found: dict[int, list[Outcome]] = {}
    for places in together.values():
        for begin in range(0, len(places), 80):
            some = places[begin : begin + 80]
            site = cases[some[0]].site
            options = [option for place in some for option in cases[place].options]
            outcomes = run_options(options, band_count=site.band_count)
            width = len(OPTIONS)
            found |= {place: outcomes[width * at : width * (at + 1)] for at, place in enumerate(some)}
    return [found[place] for place in range(len(cases))]


def money_of(case: Worked, outcomes: list[Outcome]) -> list[Any]:
    """Every sum of money of each option, and whether it meets the target."""
    found: list[Any] = []
    for own, outcome in zip(case.cases, outcomes, strict=True):
        done = outcome.at(0, 0)
        worst, short = done.worst_year_share, done.longest_short_days.max(axis=-1)
        meets = bool(serves(own.scenario.service, done.delivered_share, worst, short))
        life = Result(own, done, quantities_of(done), meets, 0.0).life
        found.append((life, life.users, meets))
    return found


def found_by_field() -> dict[str, list[Effect]]:
    found: dict[str, list[Effect]] = {}
    for name in SCENARIOS:
        for effect in effects(name):
            found.setdefault(effect.field, []).append(effect)
    return found


SOME: dict[Changes, list[str]] = {
    "weather": ["weather.ghi_kwh_m2_day", "site.altitude_m"],
    "run": ["demand.users.count", "borehole.static_level_by_month_m", "tank.volume_m3", "sources.generator.rating_kw"],
    "money": ["pump.price", "finance.discount_rate_percent", "sources.grid.tariff.tax_percent"],
    "nothing": ["cables.ac.ampacity_a"],
}
"""Fields that change each stage."""


def test_a_change_of_some_fields_does_what_they_say() -> None:
    fields = [field for some in SOME.values() for field in some]
    found = {effect.field: effect for effect in effects("hill school", frozenset(fields))}
    assert {field: effect.found for field, effect in found.items()} == {
        field: stage for stage, some in SOME.items() for field in some
    }
    assert all(effect.key.changes == effect.found for effect in found.values())


@pytest.mark.slow
@pytest.mark.parametrize("name", SCENARIOS)
def test_a_change_does_no_more_than_its_field_says(name: str) -> None:
    too_much = {
        effect.key.text: (effect.key.changes, effect.found)
        for effect in effects(name)
        if STAGES.index(effect.found) < STAGES.index(effect.key.changes)
    }
    assert too_much == {}


@pytest.mark.slow
def test_a_change_does_all_that_its_field_says_somewhere_or_is_listed_with_the_reason() -> None:
    less = {field for field, found in found_by_field().items() if all(e.found != e.key.changes for e in found)}
    assert less == set(WITHOUT_EFFECT)


def numbers_of_the_models() -> set[str]:
    """Every field of the models that holds a number, and numbers that a list holds."""
    fields = [field for field in walk_models(Scenario) if field.path[0] not in ("size", "sweep", "overrides")]
    return {".".join(map(str, field.path)) for field in fields if field.takes.numeric or field.takes.number is not None}


def test_every_number_of_the_models_has_a_value_in_a_scenario() -> None:
    given = {plain(key) for make in SCENARIOS.values() for key in numbers_of(check_scenario(make(), "test"))}
    assert len(numbers_of_the_models()) > 180
    assert numbers_of_the_models() - given == set()


@pytest.mark.slow
def test_every_number_of_the_models_is_changed() -> None:
    assert numbers_of_the_models() - set(found_by_field()) == set()


@pytest.fixture(autouse=True)
def weather_made_once(monkeypatch: pytest.MonkeyPatch) -> None:
    """Make the weather anew only where what goes into it differs."""

    def kept(make: Callable[..., Any]) -> Callable[..., Any]:
        known: dict[Any, Any] = {}

        def made(*given: Any, **named: Any) -> Any:
            key = tuple(id(each) if isinstance(each, Sun) else repr(each) for each in (*given, *named.items()))
            if key not in known:
                known[key] = make(*given, **named)
            return known[key]

        return made

    monkeypatch.setattr(site, "sun_of", kept(site.sun_of))
    monkeypatch.setattr(site, "synthetic_years", kept(site.synthetic_years))
