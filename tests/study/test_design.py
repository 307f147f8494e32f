"""From the scenario to the pump's flow table: the controller's promise, the drop cable and what cannot work."""

from __future__ import annotations

import numpy as np
import pytest

from planner.scenario.errors import InputError
from planner.study.design import pump_table
from planner.supply.cables import drop_loss_share
from planner.water.duty import flow_table
from tests.checks.sites import site


def test_every_source_is_held_to_the_rated_power_and_the_cable_comes_on_top() -> None:
    # a drive for more lets the pump take 2.5 kW on the way, its plate says 2.2 kW
    scenario = site({"pump.rated_power_w": 2200})
    assert scenario.controller.power_limit_w is None
    assert scenario.cables is not None
    assert scenario.cables.drop is not None
    share = drop_loss_share(scenario.cables.drop, 2200)
    table = pump_table(scenario, scenario.finance.analysis_period_years)
    assert table.full_power_w.max() <= 2200 / (1 - share) * (1 + 1e-9)
    given = site({"pump.rated_power_w": 2200, "controller.power_limit_w": 2200})
    assert pump_table(given, 1).full_flow_m3h[0] == pytest.approx(table.full_flow_m3h[0])


def test_cable_loss_of_a_helical_rotor_stays_with_its_torque() -> None:
    scenario = site({"pump.kind": "helical-rotor"})
    assert scenario.cables is not None
    assert scenario.cables.drop is not None
    bare = flow_table(scenario.borehole, scenario.pipeline, scenario.pump)
    lost = pump_table(scenario, 1).power_w - bare.power_w
    share = drop_loss_share(scenario.cables.drop, scenario.pump.rated_power_w)
    rated_w = share / (1 - share) * scenario.pump.rated_power_w
    assert lost == pytest.approx(rated_w * bare.torque**2)
    # slow, at less than half the power, it still loses more than half of what it loses at full power
    start, full = lost[0, 0, 0], lost[0, 0, -1]
    assert bare.power_w[0, 0, 0] < 0.5 * bare.power_w[0, 0, -1]
    assert start > 0.5 * full
    assert np.all(np.diff(pump_table(scenario, 1).power_w) >= 0)


@pytest.mark.parametrize(
    ("changes", "key", "words"),
    [
        ({"pump.plate.minimum_submergence_m": 45}, "borehole.pump_depth_m", "is not covered in"),
        ({"controller.power_limit_w": 100}, "controller.power_limit_w", "limit of 100 W is below"),
    ],
)
def test_works_that_cannot_pump_are_refused_with_their_key(changes: dict[str, float], key: str, words: str) -> None:
    scenario = site(changes)
    with pytest.raises(InputError) as caught:
        pump_table(scenario, scenario.finance.analysis_period_years)
    (problem,) = caught.value.problems
    assert problem.key == key
    assert words in problem.text
