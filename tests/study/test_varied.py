"""The inputs that a funder asks about: one list for every study."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any

import pytest

from planner.scenario.operands import value_at
from planner.scenario.scenario import Scenario
from planner.sources.registry import GENERATOR, SOLAR
from planner.study.cases import Design
from planner.study.fixed_designs import OptionSummary
from planner.study.turning import Turning
from planner.study.varied import DECIDING, UNCERTAIN, Varied, varied_inputs, with_outages
from tests.study.scenarios import changed

BAND = {"name": "day", "hours": [[6, 18]], "price_per_kwh": 0.2}
TARIFF: dict[str, Any] = {"price_per_kwh": 0.0, "bands": [BAND]}


def by_name(scenario: Scenario, *given: Any) -> dict[str, Varied]:
    return {varied.name: varied for varied in varied_inputs(scenario, *given)}


def test_run_and_worth_ask_about_the_same_inputs_in_the_same_ranges() -> None:
    uncertain, deciding = by_name(changed(), UNCERTAIN), by_name(changed(), DECIDING)
    assert set(uncertain) == UNCERTAIN.names - {"irradiation"}  # no estimate, no doubt about it
    assert set(deciding) == DECIDING.names
    assert set(deciding) - set(uncertain) == {"grid_distance", "target"}
    for name, varied in uncertain.items():
        other = deciding[name]
        assert replace(other, values=varied.values) == varied
        if name in ("demand", "outage_hours"):
            assert set(other.values) != set(varied.values)
        else:
            assert other.values == varied.values
    assert (deciding["outage_hours"].low, deciding["outage_hours"].high) == (0.0, 20.0)


def test_every_input_holds_its_base_and_changes_its_numbers_in_proportion_or_to_the_value() -> None:
    scenario = changed()
    for varied in varied_inputs(scenario, DECIDING):
        assert varied.base in varied.values
        assert list(varied.values) == sorted(set(varied.values))
        there = varied.change(scenario, varied.high)
        for path in varied.paths:
            before, after = value_at(scenario, path), value_at(there, path)
            assert after == pytest.approx(before * varied.high / varied.base if varied.is_share else varied.high)


def test_the_demand_is_tried_as_far_as_works_can_give_it() -> None:
    assert by_name(changed(), DECIDING, None, 130.0)["demand"].values == (25.0, 50.0, 75.0, 100.0, 125.0, 130.0)
    assert by_name(changed(), DECIDING, None, 60.0)["demand"].high == 100.0


def test_one_price_of_a_tariff_is_itself_and_several_are_a_share() -> None:
    one = by_name(changed(sources__grid__tariff=TARIFF), DECIDING)["tariff"]
    assert (one.base, one.unit, one.is_share) == (0.2, "USD/kWh", False)
    assert one.key == "sources.grid.tariff.bands[1].price_per_kwh"
    several = by_name(changed(sources__grid__tariff=TARIFF | {"price_per_kwh": 0.1}), DECIDING)["tariff"]
    assert (several.base, several.values, several.key) == (100.0, (0.0, 100.0, 300.0), "sources.grid.tariff")
    assert len(several.paths) == 2


def test_what_has_no_price_is_without_effect() -> None:
    free = by_name(changed(sources__grid__tariff={"price_per_kwh": 0.0}), DECIDING)["tariff"]
    assert free.without_effect == "the scenario gives no price, so there is no scale for it"


def test_a_grid_without_outages_can_be_given_some() -> None:
    scenario = changed(sources__grid__outages=None)
    assert "outage_hours" not in by_name(scenario, UNCERTAIN)
    outages = by_name(with_outages(scenario), DECIDING)["outage_hours"]
    grid = outages.change(scenario, 6.0).sources.grid
    assert grid is not None
    assert grid.outages is not None
    assert grid.outages.hours_per_day == 6.0


def test_a_value_is_written_as_it_was_given_and_others_as_they_are_known() -> None:
    distance = by_name(changed(sources__grid__line_length_m=1234.5), DECIDING)["grid_distance"]
    assert distance.with_unit(1234.5) == "1,234.5 m"
    assert distance.with_unit(4321.0) == "4,320 m"


@dataclass(frozen=True)
class Lines:
    """Two options whose costs are straight lines of a fuel price."""

    scenario: Scenario

    def at(
        self, varied: Varied, values: Sequence[float], names: Sequence[str] | None = None
    ) -> list[list[OptionSummary]]:
        return [self._options(value) for value in values]

    def in_each(self, scenarios: Sequence[Scenario], names: Sequence[str] | None = None) -> list[list[OptionSummary]]:
        generators = [each.sources.generator for each in scenarios]
        return [self._options(each.fuel_price_per_l) for each in generators if each is not None]

    def _options(self, price: float) -> list[OptionSummary]:
        costs = ("solar", (SOLAR,), 1000.0), ("generator", (GENERATOR,), 900.0 + 1000.0 * price)
        return [
            OptionSummary(Design(name, kinds, 0, 10.0, (20.0, 40.0)), 0, 1.0, 1.0, True, 0.0, cost, 0.0, 0.0)
            for name, kinds, cost in costs
        ]


def test_a_price_is_looked_at_down_to_nothing_where_works_are_chosen_anew() -> None:
    """Costs meet at 0.1, less than a quarter of the price given."""
    scenario = changed(sources__generator__fuel_price_per_l=1.0)
    fuel, lines = by_name(scenario, DECIDING)["fuel_price"], Lines(scenario)
    solar, generator = lines.at(fuel, [1.0])[0]
    found = Turning(lines, "generator", is_fixed=False).switching(fuel, (generator, solar))
    assert found.value == pytest.approx(0.1, rel=1e-3)
    assert found.turns[0].value == pytest.approx(0.1, abs=4e-3)
