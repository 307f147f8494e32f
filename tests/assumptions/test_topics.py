"""Rules by which single keys are found: pipes, modules in series, prices."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from planner.assumptions.pipes import pipe_for, velocity_m_s
from planner.assumptions.reader import scenario_of
from planner.assumptions.solar import LONGEST_STRING
from planner.checks.site import site_verdicts
from planner.money.quantities import unpriced
from planner.sources.registry import SOURCES
from planner.study.site import place_of, weather_of
from tests.assumptions.test_visit import visit

PRICES = {
    "pv_per_kwp": 900, "tank_per_m3": 150, "pipe_per_m": 5, "pump": 1500, "controller": 400, "borehole": 9000,
}  # fmt: skip


@pytest.mark.parametrize("flow_m3h", [0.5, 2.5, 6.0, 12.0])
@pytest.mark.parametrize("bar", [4.0, 11.0, 15.9, 19.0, 23.0])
def test_a_pipe_is_wide_and_strong_enough_and_no_more(flow_m3h: float, bar: float) -> None:
    pipe = pipe_for(flow_m3h, bar)
    assert velocity_m_s(pipe, flow_m3h) <= 1.0
    assert pipe.pressure_class_bar is not None
    assert pipe.pressure_class_bar >= bar
    assert pipe.name.startswith("PE100" if bar <= 20 else "steel")


def test_where_no_pipe_bears_the_pressure_one_of_the_strongest_is_still_wide_enough() -> None:
    strongest = pipe_for(2.5, 24.9).pressure_class_bar
    for flow_m3h in (0.5, 2.5, 12.0):
        pipe = pipe_for(flow_m3h, 90.0)
        assert velocity_m_s(pipe, flow_m3h) <= 1.0
        assert pipe.pressure_class_bar == strongest


def test_the_pipe_of_the_visit() -> None:
    # By hand: 2.5 m3/h at 1 m/s want 29.7 mm; 40 mm of SDR 11 (ISO 4427) has 32.6 mm, of SDR 9 31.0 mm.
    # Main: 165 m at no flow less 27 m to the water are 13.5 bar: PN 16. Riser: 33 m more at the pump, 19.4 bar: PN 20.
    pipes = [segment.pipe for segment in scenario_of(visit()).pipeline.segments]
    assert pipes == ["PE100 SDR9 40", "PE100 SDR11 40"]


def test_warm_water_asks_for_a_stronger_pipe() -> None:
    assert pipe_for(2.5, 15.0, 20.0).pressure_class_bar == 16
    assert pipe_for(2.5, 15.0, 30.0).pressure_class_bar == 20  # 0.87 of 16 bar are 13.9


def test_given_pipes_are_kept() -> None:
    raw = visit(pipeline__pipe="PVC-U PN16 63", pipeline__riser_pipe="steel medium 40")
    scenario = scenario_of(raw)
    assert [segment.pipe for segment in scenario.pipeline.segments] == ["steel medium 40", "PVC-U PN16 63"]
    assert "pipeline.segments[2].pipe" not in [assumption.key for assumption in scenario.assumptions]


@pytest.mark.parametrize(
    ("latitude", "tilt", "azimuth"), [(-16.0, 16, 0), (3.0, 10, 180), (-0.5, 10, 0), (41.6, 42, 180)]
)
def test_the_array_faces_the_equator(latitude: float, tilt: float, azimuth: float) -> None:
    solar = scenario_of(visit(site__latitude_deg=latitude)).sources.solar
    assert solar is not None
    assert (solar.planes[0].tilt_deg, solar.planes[0].azimuth_deg) == (tilt, azimuth)


@pytest.mark.parametrize(("low", "high"), [(60, 120), (110, 400), (200, 450), (250, 800)])
def test_strings_stay_within_the_window_hot_and_cold(low: float, high: float) -> None:
    raw = visit(pump__plate={"dc_voltage_v": [low, high]}, sources__solar={"modules_in_series": "auto"})
    raw["site"] |= {"temperature_lowest_c": 0.0, "temperature_highest_c": 40.0}
    solar = scenario_of(raw).sources.solar
    assert solar is not None
    module, count = solar.module, solar.modules_in_series
    slope = module.voltage_oc_percent_per_k / 100 * module.voltage_oc_v
    assert count * (module.voltage_oc_v + slope * (0 - 25)) <= high
    assert count * (module.voltage_mp_v + slope * (70 - 25)) >= low


def test_a_module_of_hardly_any_voltage_costs_no_time() -> None:
    weak = {
        "power_w": 4e-7, "voltage_mp_v": 4e-8, "current_mp_a": 10, "voltage_oc_v": 4.1e-8, "current_sc_a": 11,
        "voltage_oc_percent_per_k": -0.3, "system_voltage_v": 1000,
    }  # fmt: skip
    scenario = scenario_of(visit(sources={"solar": {"module": weak}}))
    assert scenario.sources.solar is not None
    assert scenario.sources.solar.modules_in_series <= LONGEST_STRING


@pytest.mark.parametrize(("largest", "kind"), [(4.5, "centrifugal"), (3.0, "helical-rotor")])
def test_the_kind_of_pump_by_its_largest_flow(largest: float, kind: str) -> None:
    assert scenario_of(visit(pump__max_flow_m3h=largest)).pump.kind == kind


def priced(**changes: Any) -> dict[str, Any]:
    return visit(currency="USD", prices=dict(PRICES), **changes)


def test_a_price_list_prices_what_has_no_price_of_its_own() -> None:
    scenario = scenario_of(priced(pump__price=1750, pipeline__pipe="PVC-U PN16 63"))
    assert scenario.priced
    assert (scenario.pump.price, scenario.controller.price, scenario.borehole.price) == (1750, 400, 9000)
    assert scenario.sources.solar is not None
    assert scenario.sources.solar.module.price == pytest.approx(360)  # 0.4 kWp
    assert [(size.volume_m3, size.price) for size in scenario.tank.sizes][:2] == [(2, 300), (5, 750)]
    assert [segment.price for segment in scenario.pipeline.segments] == [5, 5]
    solar = [source for source in SOURCES if source == "solar"]
    assert unpriced(scenario, solar) == ()


def test_a_pipe_of_the_list_has_its_own_price() -> None:
    raw = priced(pipeline__pipe="PVC-U PN16 63")
    raw["prices"]["pipes"] = [{"pipe": "PVC-U PN16 63", "per_m": 7.5}]
    assert [segment.price for segment in scenario_of(raw).pipeline.segments] == [5, 7.5]


def test_what_has_no_price_is_named() -> None:
    raw = visit(currency="USD", prices={"pump": 1500}, sources__solar={}, sources__grid={"hours": [[5, 20]]})
    raw["sources"]["generator"] = {"rating_kw": 5.0}
    named = [thing.label() for thing in unpriced(scenario_of(raw), list(SOURCES))]
    for thing in ("Borehole", "Controller", "Riser", "Main", "Tank", "PV modules", "Energy from the grid", "Fuel"):
        assert thing in named
    assert "Pump" not in named


def test_grid_and_fuel_are_priced_by_the_list() -> None:
    raw = priced(sources__grid={"hours": [[5, 20]]}, sources__generator={"rating_kw": 5.0})
    raw["prices"] |= {"grid_per_kwh": 0.2, "fuel_per_l": 1.3, "grid_connection": 800, "generator": 3000}
    sources = scenario_of(raw).sources
    assert sources.grid is not None
    assert sources.generator is not None
    assert (sources.grid.tariff.price_per_kwh, sources.grid.price) == (0.2, 800)
    assert (sources.generator.fuel_price_per_l, sources.generator.price) == (1.3, 3000)


@pytest.mark.parametrize(
    ("given", "levels"),
    [
        ({"start_level_percent": 30.0}, (30, 50)),
        ({"stop_level_percent": 15.0}, (0, 15)),
        ({"start_level_percent": 90.0}, (90, 100)),
        ({}, ("auto", "auto")),
    ],
)
def test_a_level_given_alone_gets_its_other(given: dict[str, float], levels: tuple[object, object]) -> None:
    topup = scenario_of(visit(topup=given)).topup
    assert (topup.start_level_percent, topup.stop_level_percent) == levels


def test_a_lower_voltage_of_the_supply_asks_for_a_thicker_cable() -> None:
    def section_mm2(volts: float) -> float:
        raw = visit(sources__grid={"hours": [[5, 20]], "voltage_v": volts}, cables={"ac": {"length_m": 60.0}})
        cables = scenario_of(raw).cables
        assert cables is not None
        assert cables.ac is not None
        return cables.ac.section_mm2

    # at half the voltage twice the current loses four times the share: 4 x 2.5 mm2
    assert section_mm2(230.0) < section_mm2(115.0)
    assert section_mm2(400.0) <= section_mm2(230.0)


def test_a_generator_without_a_rating_gets_the_smallest_that_is_good_here() -> None:
    """1,500 W / 0.95 = 1.58 kW; 1.5 times that to start on a drive; 9.45 % lost above 305 m and some to 45 deg C."""
    raw = visit(sources__generator={}, site__temperature_highest_c=25.0)
    assert scenario_of(raw).sources.generator.rating_kw == 3.0  # 2.37 kW / 0.9055 = 2.6, in steps of 0.5
    direct = visit(sources__generator={}, site__temperature_highest_c=25.0, controller__starting="direct")
    assert scenario_of(direct).sources.generator.rating_kw > 3.0


def test_a_rating_that_was_found_passes_the_checks_of_the_generator() -> None:
    scenario = scenario_of(visit(sources__generator={}))
    place = place_of(scenario)
    verdicts = site_verdicts(scenario, place, weather_of(scenario, place, Path()))
    of_generator = {each.key: each.outcome for each in verdicts if each.key.startswith("generator_")}
    assert of_generator["generator_running"] == of_generator["generator_starting"] == "pass"
    assert of_generator["generator_loading"] == "pass"
