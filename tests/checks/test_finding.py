"""The first finding: whether the pump fits the site, and which would."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from planner.assumptions.reader import read_scenario
from planner.checks.basis import basis_of
from planner.checks.finding import finding
from planner.checks.plate import plate_lines
from planner.checks.site import site_verdicts
from planner.report.checks_table import check_summary
from planner.report.console import LiteralConsole
from planner.report.terminal_writer import terminal_blocks
from planner.study.site import place_of, weather_of
from tests.checks.sites import basis, checked, site

VISIT = Path(__file__).with_name("visit.toml")
WOULD_FIT = "What would fit: a pump rated at about {head} m at {flow} m3/h, with a motor that takes about {power} kW"


def found(changes: dict[str, Any]) -> tuple[str, ...]:
    scenario = site(changes)
    return finding(basis(scenario), list(checked(scenario).values()))


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({}, "This pump fits: at 5 m3/h it reaches 80 m, the site takes 7"),
        ({"pump.rated_head_m": 145, "pump.max_head_m": 225, "pump.rated_power_w": 4500}, "This pump lifts twice what"),
        ({"pump.rated_head_m": 190, "pump.max_head_m": 280, "pump.rated_power_w": 5500}, "This pump lifts 2.6 times"),
        ({"pump.rated_head_m": 50, "pump.max_head_m": 90}, "This pump is too weak: at 5 m3/h it reaches 50 m"),
        ({"pump.rated_head_m": 70, "pump.max_head_m": 110}, "This pump is a little short: at 5 m3/h it reaches 70 m"),
        ({"pump.rated_head_m": 30, "pump.max_head_m": 45}, "This pump cannot lift the water here: it reaches 45 m at"),
        ({"borehole.safe_yield_m3h": 3}, "This pump is made for more than the borehole may give: 5 m3/h rated, 3 m3/h"),
        ({"controller.power_limit_w": 300}, "This pump gives no water here: the 300 W that the controller may give"),
        ({"pump.plate.minimum_submergence_m": 40}, "This pump gives no water here: the water at rest stands 48.0 m"),
    ],
)
def test_the_first_sentence_says_what_is_the_matter(changes: dict[str, Any], said: str) -> None:
    assert found(changes)[0].startswith(said), found(changes)


def test_where_another_pump_is_the_remedy_its_duty_and_power_are_named() -> None:
    weak = {"pump.rated_head_m": 50, "pump.max_head_m": 90}
    looked_at = basis(site(weak))
    # worked by hand: rho g Q H / 0.45
    power_kw = 1000 * 9.80665 * 5 / 3600 * looked_at.better_head_m / 0.45 / 1000
    said = WOULD_FIT.format(head=looked_at.better_head_m, flow="5", power=f"{power_kw:.1f}")
    assert found(weak)[1].startswith(said)
    assert len(found({})) == 1
    assert len(found({"pump.plate.minimum_submergence_m": 40})) == 1  # no pump gives water there


def test_the_visit_is_read_from_its_plate_at_one_hundred_columns() -> None:
    scenario = read_scenario(VISIT)
    place = place_of(scenario)
    weather = weather_of(scenario, place, VISIT.parent)
    verdicts, looked_at = site_verdicts(scenario, place, weather), basis_of(scenario, place, weather)
    said, lines = finding(looked_at, verdicts), plate_lines(looked_at, verdicts)
    # by hand: 27 m at rest, 2.5 / 0.417 = 6.0 m drawdown, 35 m rise, and friction in 490 m of pipe
    assert 68 < looked_at.needed_head_m < 78
    assert said[0].startswith("This pump lifts 1.5 times what the site needs: at 2.5 m3/h it could reach 110 m (165 m")
    printed = {line.key: line.printed for line in lines}
    assert (printed["dc_supply"], printed["ac_supply"]) == ("110-400 V", "1~ 160\u2013270 V")
    assert (printed["frequency"], printed["speed"], printed["phases"]) == ("50/60", "0-3,600 rpm", "1~")
    assert {line.key: line.outcome for line in lines}["dc_supply"] == "pass"
    console = LiteralConsole(width=100, markup=False, emoji=False, record=True, quiet=False)
    with console.capture() as capture:
        console.print(terminal_blocks(check_summary(scenario.name, said, lines, verdicts, verbose=False)))
    shown = capture.get()
    assert max(map(len, shown.splitlines())) <= 100
    assert "…" not in shown
    unmade = sum(verdict.outcome == "not given" for verdict in verdicts)
    assert f"? {unmade} checks could not be made for want of a figure" in shown
    assert "? not given: " not in shown
