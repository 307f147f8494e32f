"""The bill of quantities: which lines an option has, and what they cost."""

from __future__ import annotations

from dataclasses import replace
from typing import get_args

import numpy as np
import pytest

from planner.money.quantities import Group, Line, Thing, bill_of_quantities, tank_price, with_percentages
from planner.scenario.scenario import Scenario
from planner.scenario.tank import Tank, TankSize
from planner.sources.base import SourceKind
from planner.sources.registry import GENERATOR, GRID, SOLAR, SOURCES
from planner.text import known
from tests.money.cases import make_scenario

SIZES = [TankSize(volume_m3=10.0, price=1000.0), TankSize(volume_m3=20.0, price=1600.0)]


def priced_scenario() -> Scenario:
    return make_scenario(
        borehole={"price": 9000.0},
        pump={"price": 1500.0, "life_years": 8.0, "maintenance_percent_per_year": 3.0},
        controller={"price": 700.0},
        pipeline={
            "rise_to_tank_inlet_m": 5.0,
            "segments": [{"name": "Rising pipe", "length_m": 65.0, "inner_diameter_mm": 50.0, "price": 12.0}],
        },
        tank={"volume_m3": 20.0, "price": 2500.0},
        sources={
            "solar": {"module": {"price": 120.0}, "structure_price_per_module": 80.0},
            "grid": {"price": 900.0, "line_length_m": 400.0, "line_price_per_m": 15.0},
            "generator": {"price": 4000.0},
        },
        costs={
            "items": [
                {"name": "Fence", "quantity": 120.0, "unit": "m", "unit_price": 7.0},
                {"name": "Fuel store", "unit_price": 300.0, "life_years": 10.0, "sources": ["generator"]},
                {"name": "Meter box", "unit_price": 200.0, "sources": ["grid", "generator"]},
            ],
            "installation_percent": 10.0,
            "contingency_percent": 5.0,
        },
    )


def named(lines: tuple[Line, ...], name: str) -> Line:
    return next(line for line in lines if line.label == name)


def test_only_the_sources_of_the_option_are_listed() -> None:
    scenario = priced_scenario()
    groups = {
        option: {line.group for line in bill_of_quantities(scenario, option, strings=2, tank_m3=20.0)}
        for option in [(SOLAR,), (GRID,), (GENERATOR,), (SOLAR, GENERATOR)]
    }
    always = {"borehole", "pump_and_controller", "pipeline", "tank", "other", "installation", "contingency"}
    assert groups[(SOLAR,)] == always | {"solar_array"}
    assert groups[(GRID,)] == always | {"grid_connection"}
    assert groups[(GENERATOR,)] == always | {"generator"}
    assert groups[(SOLAR, GENERATOR)] == always | {"solar_array", "generator"}


def test_quantities_and_costs_of_the_lines() -> None:
    lines = bill_of_quantities(priced_scenario(), SOURCES, strings=2, tank_m3=20.0)
    costs = {line.label: line.cost for line in lines}
    assert costs == pytest.approx(
        {
            "Borehole": 9000.0,
            "Invented pump": 1500.0,
            "Controller": 700.0,
            "Rising pipe": 65 * 12.0,
            "Tank, 20 m3": 2500.0,
            "PV modules": 12 * 120.0,
            "Stand, wiring and fixing": 12 * 80.0,
            "Connection": 900.0,
            "Line to the pump": 400 * 15.0,
            "Generator, 10 kW": 4000.0,
            "Fence": 840.0,
            "Fuel store": 300.0,
            "Meter box": 200.0,
            "Installation": 0.1 * (1500 + 700 + 780 + 1440 + 960 + 4000),
            "Contingency": 0.05 * (9000 + 2500 + 900 + 6000 + 1340 + 1.1 * 9380),
        }
    )
    assert [line.label for line in lines[-2:]] == ["Installation", "Contingency"]
    assert (named(lines, "Invented pump").life_years, named(lines, "Invented pump").maintenance_percent_per_year) == (
        8,
        3,
    )
    assert [line.label for line in lines if line.by_hours] == ["Generator, 10 kW"]
    assert (named(lines, "Fence").unit, named(lines, "Fence").life_years) == ("m", 20.0)


@pytest.mark.parametrize(
    ("option", "expected"),
    [
        ((SOLAR,), {"Fence": "all"}),
        ((GRID,), {"Fence": "all", "Meter box": "grid"}),
        ((GENERATOR,), {"Fence": "all", "Fuel store": "generator", "Meter box": "generator"}),
    ],
)
def test_items_of_some_sources(option: tuple[SourceKind, ...], expected: dict[str, str]) -> None:
    lines = bill_of_quantities(priced_scenario(), option, strings=1, tank_m3=20.0)
    assert {line.label: line.source for line in lines if line.group == "other"} == expected


def test_lines_without_price_are_kept_and_percentages_of_nothing_left_out() -> None:
    lines = bill_of_quantities(make_scenario(), (SOLAR,), strings=3, tank_m3=20.0)
    assert named(lines, "PV modules").quantity == 18
    assert named(lines, "PV modules").cost == 0
    assert not {"installation", "contingency"} & {line.group for line in lines}


def test_strings_and_tanks_as_cases() -> None:
    scenario = make_scenario(
        tank={"volume_m3": "auto", "price": None, "sizes": [size.model_dump() for size in SIZES]},
        sources={"solar": {"module": {"price": 100.0}}},
        costs={"contingency_percent": 10.0},
    )
    strings, tanks = np.array([[1, 2, 3]]), np.array([[10.0], [20.0]])
    lines = bill_of_quantities(scenario, (SOLAR,), strings=strings, tank_m3=tanks)
    np.testing.assert_allclose(
        lines[-1].cost, 0.1 * (np.array([[600.0, 1200.0, 1800.0]]) + np.array([[1000.0], [1600.0]]))
    )


def test_percentages_follow_changed_prices() -> None:
    lines = bill_of_quantities(priced_scenario(), (SOLAR,), strings=2, tank_m3=20.0)
    dearer = [replace(line, unit_price=2 * line.unit_price) if line.group == "solar_array" else line for line in lines]
    again = with_percentages(dearer, {"installation": 10.0, "contingency": 5.0}, 20.0)
    assert len(again) == len(lines)
    assert named(again, "Installation").cost == pytest.approx(named(lines, "Installation").cost + 240.0)
    assert named(again, "Contingency").cost == pytest.approx(named(lines, "Contingency").cost + 0.05 * 1.1 * 2400.0)


def test_supervision_counts_the_contingency_and_the_tax_counts_all() -> None:
    percentages: dict[Group, float] = {"vat": 18.0, "supervision": 7.0, "installation": 10.0, "contingency": 5.0}
    pump = Line(Thing("pump"), "pump_and_controller", "all", 1.0, "item", 1000.0, 8.0, 1.0)
    borehole = Line(Thing("borehole"), "borehole", "all", 1.0, "item", 9000.0, 30.0, 0.0)
    lines = with_percentages([borehole, pump], percentages, 20.0)
    # By hand: 10 % of 1000; 5 % of 10100; 7 % of 10605; 18 % of 11347.35.
    assert [line.group for line in lines[2:]] == ["installation", "contingency", "supervision", "vat"]
    assert [line.cost for line in lines[2:]] == pytest.approx([100.0, 505.0, 742.35, 2042.523])
    assert all(line.life_years == 20.0 and line.maintenance_percent_per_year == 0 for line in lines[2:])


def test_tank_price_from_sizes() -> None:
    tank = Tank(volume_m3="auto", sizes=SIZES)
    # exact, between, below the smallest (100 per m3), above the largest (80 per m3)
    np.testing.assert_allclose(tank_price(tank, [10.0, 20.0, 15.0, 5.0, 40.0]), [1000, 1600, 1300, 500, 3200])


def test_given_tank_price_holds_for_the_given_volume_only() -> None:
    tank = Tank(volume_m3=15.0, price=999.0, sizes=SIZES)
    np.testing.assert_allclose(tank_price(tank, [15.0, 16.0]), [999.0, 1360.0])
    np.testing.assert_allclose(tank_price(Tank(volume_m3=15.0, price=900.0), [15.0, 5.0, 30.0]), [900, 300, 1800])


def test_every_part_line_and_unit_of_ours_has_words() -> None:
    scenario = priced_scenario()
    assert all(known(f"bill.group.{group}") for group in get_args(Group))
    for line in bill_of_quantities(scenario, SOURCES, strings=2, tank_m3=20.0):
        assert line.thing.name or known(f"bill.line.{line.thing.key}"), line.thing
        assert line.thing.name or known(f"bill.unit.{line.unit}"), line.unit
        assert line.label != line.thing.key
    assert Line(Thing("Meter"), "other", "neighbour", 1.0, "reading", 1.0, 1.0, 0.0).label == "Meter"
