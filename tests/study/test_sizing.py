"""Sizing: against brute force, chunk by chunk, and what it says."""

from __future__ import annotations

import json
import re
from functools import cache
from itertools import product
from pathlib import Path
from typing import Any

import numpy as np
import openpyxl
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.report.pages.size import size_report, size_summary
from planner.report.studies_json import sizing_as_data, write_study_json
from planner.report.workbook.book import write_book
from planner.scenario.errors import InputError
from planner.study.candidates import AS_GIVEN, common_hours
from planner.study.compare import study_scenario
from planner.study.pareto import cheapest, pareto_front
from planner.study.sizing import Sizing, size_scenario
from planner.study.sizing_words import sizing_sentences
from planner.supply.availability import share_of_hours
from tests.report.terminal import on_terminal
from tests.study.scenarios import EXAMPLES, changed, studied

YEARS = 2
SIZE: dict[str, Any] = {
    "strings": [1, 2],
    "tanks_m3": [10.0, 20.0],
    "levels_percent": [[10.0, 20.0], [50.0, 70.0]],
    "hours": [{"name": "by night only", "hours": [[18.0, 6.0]]}],
}
NIGHT = [[0.0, 6.0], [18.0, 24.0]]
SMALL = {"finance__analysis_period_years": YEARS, "tank__volume_m3": 20.0, "sources__solar__strings": 2}
MIXED = "solar + generator"


def sized(name: str, size: dict[str, Any], **changes: Any) -> Sizing:
    return size_scenario(changed(**(SMALL | changes), size=size, service__options=[name]), EXAMPLES)


@cache
def small_sizing() -> Sizing:
    return sized(MIXED, SIZE)


@pytest.mark.slow
def test_every_candidate_is_what_a_separate_run_gives_and_the_best_is_the_cheapest_that_serves() -> None:
    option = small_sizing().option(MIXED)
    # The scenario's own levels, 20/40, are always among the candidates.
    levels = [(10.0, 20.0), (20.0, 40.0), (50.0, 70.0)]
    assert option.grid.count == 2 * 2 * len(levels) * 2
    found = option.candidates
    costs: dict[tuple[Any, ...], float] = {}
    for window, strings, tank, (start, stop) in product((0, 1), (1, 2), (10.0, 20.0), levels):
        hours = [] if window == 0 else NIGHT
        alone = studied(
            finance__analysis_period_years=YEARS, service__options=[MIXED], tank__volume_m3=tank,
            sources__solar__strings=strings, sources__generator__hours=hours,
            topup={"start_level_percent": start, "stop_level_percent": stop},
        ).option(MIXED)  # fmt: skip
        place = np.flatnonzero(
            (found.setup == window)
            & (np.asarray(option.grid.strings)[found.string] == strings)
            & (np.asarray(option.grid.tanks_m3)[found.tank] == tank)
            & (found.level == option.grid.levels.index((start, stop)))
        )
        assert place.size == 1
        assert found.present_cost[place[0]] == pytest.approx(float(alone.life.present_cost), rel=1e-12)
        assert found.delivered_share[place[0]] == pytest.approx(alone.delivered_share, rel=1e-12)
        assert bool(found.meets_service[place[0]]) == alone.meets_service
        if alone.meets_service:
            costs[window, strings, tank, (start, stop)] = float(alone.life.present_cost)
    assert 1 < len(costs) < option.grid.count
    best = option.best
    assert best is not None
    by_force = min(costs, key=costs.__getitem__)
    assert (int(best.hours != AS_GIVEN), best.strings, best.tank_m3, best.levels) == by_force
    assert best.present_cost == pytest.approx(costs[by_force], rel=1e-12)
    close = sorted(cost for cost in costs.values() if cost <= 1.02 * costs[by_force])[1:]
    assert [design.present_cost for design in option.runners_up] == pytest.approx(close, rel=1e-12)


def test_pumps_and_pipes_are_tried_as_separate_runs_would() -> None:
    pump = changed().pump.model_dump(exclude_unset=True) | {
        "name": "Smaller", "rated_flow_m3h": 3.5, "rated_power_w": 1700.0, "max_flow_m3h": 6.0, "price": 1900.0
    }  # fmt: skip
    pipe = {"segment": "Main to the tank", "pipe": "PE100 SDR11 50", "price": 3.0}
    option = sized("solar", {"strings": [2], "tanks_m3": [30.0], "pumps": [pump], "pipes": [pipe]}).option("solar")
    assert [(setup.pump, setup.pipes) for setup in option.grid.setups] == [
        ("Invented submersible", ()),
        ("Invented submersible", ("Main to the tank: PE100 SDR11 50",)),
        ("Smaller", ()),
        ("Smaller", ("Main to the tank: PE100 SDR11 50",)),
    ]
    base = changed()
    segments = [segment.model_dump(exclude_unset=True) for segment in base.pipeline.segments]
    thin = [segments[0], segments[1] | {"pipe": "PE100 SDR11 50", "price": 3.0}]
    places = np.flatnonzero(np.asarray(option.grid.tanks_m3)[option.candidates.tank] == 30.0)
    for place, (own_pump, own_segments) in zip(
        places, product((base.pump.model_dump(exclude_unset=True), pump), (segments, thin)), strict=True
    ):
        alone = studied(
            finance__analysis_period_years=YEARS, service__options=["solar"], tank__volume_m3=30.0,
            sources__solar__strings=2, pump=own_pump, pipeline__segments=own_segments,
        ).option("solar")  # fmt: skip
        assert option.candidates.present_cost[place] == pytest.approx(float(alone.life.present_cost), rel=1e-12)
        assert option.candidates.delivered_share[place] == pytest.approx(alone.delivered_share, rel=1e-12)


@pytest.mark.parametrize(
    "columns_at_once", [pytest.param(1, marks=pytest.mark.slow), 10, pytest.param(1000, marks=pytest.mark.slow)]
)
def test_the_size_of_a_pass_changes_nothing(columns_at_once: int) -> None:
    scenario = small_sizing().scenario
    told: list[tuple[int, int]] = []
    again = size_scenario(
        scenario, EXAMPLES, lambda done, total, name: told.append((done, total)), columns_at_once=columns_at_once
    )
    for name, values in vars(small_sizing().option(MIXED).candidates).items():
        np.testing.assert_allclose(getattr(again.option(MIXED).candidates, name), values, rtol=1e-12, err_msg=name)
    best, as_before = again.option(MIXED).best, small_sizing().option(MIXED).best
    assert best is not None
    assert as_before is not None
    assert best.index == as_before.index
    assert told[-1] == (24, 24)
    assert [done for done, _ in told] == sorted({done for done, _ in told})


def test_a_target_out_of_reach_is_said_plainly_and_by_how_much_the_best_misses() -> None:
    sizing = sized("solar", {"strings": [1], "tanks_m3": [10.0]}, sources__solar__strings=1, tank__volume_m3=10.0)
    option = sizing.option("solar")
    alone = studied(
        finance__analysis_period_years=YEARS,
        service__options=["solar"],
        sources__solar__strings=1,
        tank__volume_m3=10.0,
    ).option("solar")
    assert option.best is None
    assert option.runners_up == ()
    assert option.misses_by_percent == pytest.approx(97 - 100 * alone.delivered_share, rel=1e-9)
    said = sizing_sentences(sizing)
    assert said[0].startswith("None of the 1 candidate designs meets the target")
    assert f"by {option.misses_by_percent:.1f} percentage points" in said[0]
    assert option.next_percent == (98.0, None)


def test_a_worst_year_condition_is_part_of_the_target() -> None:
    shares = small_sizing().option(MIXED).candidates.worst_year_share
    asked = 100 * float(np.quantile(shares, 0.8))
    option = sized(MIXED, SIZE, service__demand_met_worst_year_percent=asked).option(MIXED)
    serving = option.candidates.meets_service
    assert serving.sum() < small_sizing().option(MIXED).candidates.meets_service.sum()
    assert (option.candidates.worst_year_share[serving] >= asked / 100 - 1e-9).all()
    assert option.best is not None
    assert option.best.present_cost == option.candidates.present_cost[serving].min()
    # Cheaper candidates that miss the target are neither best nor runners-up.
    assert option.candidates.present_cost[~serving].min() < option.best.present_cost
    assert all(design.meets_service for design in option.runners_up)


def test_options_that_all_miss_the_target_are_ranked_as_in_every_comparison() -> None:
    # Neither has a day without want in the whole life, so that both miss the target by as many days; the array is made
    # dear, so that the cheaper of the two is the one that delivers less.
    small = SMALL | {"sources__solar__strings": 1, "tank__volume_m3": 10.0}
    changes = {
        "sources__generator__hours": [[8.0, 9.0]],
        "service__options": ["generator", "solar"],
        "service__demand_met_percent": 1.0,
        "service__longest_short_days": 0,
    }
    size = {
        "strings": [1],
        "tanks_m3": [10.0],
        "hours": [{"name": "all day", "hours": []}],
        "levels_without_sun_percent": [[90.0, 98.0]],
    }
    solar_as_given = changed().sources.solar
    assert solar_as_given is not None
    price = 10 * solar_as_given.module.price
    scenario = changed(**small, **changes, sources__solar__module__price=price, size=size)
    sizing = size_scenario(scenario, EXAMPLES)
    solar, generator = sizing.option("solar"), sizing.option("generator")
    assert solar.best is None
    assert generator.best is None
    assert solar.misses_by_days == generator.misses_by_days > 0
    assert generator.nearest.present_cost < solar.nearest.present_cost
    assert generator.nearest.delivered_share < solar.nearest.delivered_share
    assert sizing.ranking == ("solar", "generator")
    assert study_scenario(scenario, EXAMPLES).ranking == sizing.ranking


def test_a_longest_run_of_short_days_is_part_of_the_target() -> None:
    runs = small_sizing().option(MIXED).candidates.longest_short_days
    assert runs.min() < runs.max()
    allowed = int(runs.min())
    option = sized(MIXED, SIZE, service__longest_short_days=allowed, service__demand_met_percent=50.0).option(MIXED)
    np.testing.assert_array_equal(option.candidates.meets_service, runs <= allowed)
    assert option.best is not None
    assert option.best.longest_short_days <= allowed
    sunny = {"strings": [1], "tanks_m3": [10.0]}
    none = sized(
        "solar", sunny, service__longest_short_days=0, service__demand_met_percent=1.0, tank__volume_m3=10.0,
        sources__solar__strings=1,
    )  # fmt: skip
    missed = none.option("solar")
    assert missed.best is None
    assert (missed.misses_by_percent, missed.misses_by_days) == (0.0, missed.nearest.longest_short_days)
    assert f"{missed.misses_by_days:.0f} more than allowed" in sizing_sentences(none)[0]


def test_the_next_percent_is_the_step_of_the_least_cost() -> None:
    option = small_sizing().option(MIXED)
    at = {share: design for share, design in option.least_cost_at}  # noqa: C416
    dear, cheap = at[98.0], at[97.0]
    assert dear is not None
    assert cheap is not None
    assert option.next_percent == (98.0, pytest.approx(dear.present_cost - cheap.present_cost))
    for share, design in option.least_cost_at:
        enough = option.candidates.delivered_share >= share / 100 - 1e-9
        assert (design is None) == (not enough.any())
        if design is not None:
            assert design.present_cost == pytest.approx(option.candidates.present_cost[enough].min(), rel=1e-9)


def test_the_float_switch_is_a_setting_an_installer_can_use() -> None:
    best = small_sizing().option(MIXED).best
    assert best is not None
    assert best.levels is not None
    assert best.switch_m3 == (best.levels[0] / 100 * best.tank_m3, best.levels[1] / 100 * best.tank_m3)
    said = " ".join(sizing_sentences(small_sizing()))
    assert f"starts when {best.switch_m3[0]:.3g} m3 are left in the tank ({best.levels[0]:g} %" in said


def test_it_says_where_the_ordinary_run_takes_another_design() -> None:
    option = small_sizing().option(MIXED)
    run = studied(**SMALL, service__options=[MIXED]).option(MIXED)
    assert option.best is not None
    assert option.by_run_cost == pytest.approx(float(run.life.present_cost), rel=1e-12)
    assert option.by_run_cost > option.best.present_cost
    assert "which 'planner run' takes" in sizing_sentences(small_sizing())[-1]


def test_tanks_too_small_for_an_hour_are_left_out_and_named() -> None:
    option = sized("solar", {"strings": [2], "tanks_m3": [1.0, 20.0]}).option("solar")
    assert option.grid.tanks_m3 == (20.0,)
    assert option.grid.left_out[0].startswith("tanks of 1 m3: the busiest hour")


@pytest.mark.parametrize(
    ("size", "words"),
    [
        ({"pipes": [{"segment": "Nowhere", "pipe": "PE100 SDR11 63", "price": 1.0}]}, "no segment has this name"),
        ({"pipes": [{"segment": "Main to the tank", "pipe": "PE101", "price": 1.0}]}, "no pipe 'PE101'"),
        ({"tanks_m3": [0.5]}, "no tank holds"),
    ],
)
def test_candidates_that_cannot_be_are_refused(size: dict[str, Any], words: str) -> None:
    with pytest.raises(InputError, match=words):
        sized("solar", size, tank__volume_m3="auto")


def test_a_stop_level_below_its_start_level_is_refused() -> None:
    with pytest.raises(InputError, match="must be above the start level"):
        changed(size={"levels_percent": [[40.0, 20.0]]})


def test_workbook_and_json_tell_the_same(tmp_path: Path) -> None:
    sizing = small_sizing()
    said = sizing_sentences(sizing)
    write_book(size_report(sizing, said), tmp_path / "a.xlsx")
    write_study_json(sizing_as_data(sizing, said), tmp_path / "a.json")
    book = openpyxl.load_workbook(tmp_path / "a.xlsx", data_only=True)
    assert book.sheetnames == ["Answer", "Best designs", "Runners-up", "Trade-off", "Cost of service"]
    data = json.loads((tmp_path / "a.json").read_text(encoding="utf-8"))
    best = sizing.option(MIXED).best
    assert best is not None
    assert data["schema"] == 3
    design = data["options"][0]["design"]
    assert design["life_cycle_cost"] == best.present_cost
    assert design["demand_met_percent"] == pytest.approx(100 * best.delivered_share, rel=1e-12)
    assert (design["start_level_percent"], design["stop_level_percent"]) == best.levels
    rows = list(book["Best designs"].iter_rows(values_only=True))
    header = next(row for row in rows if row[0] == "Supply option")
    row = next(row for row in rows if row[0] == MIXED)
    assert row[header.index("Life-cycle cost (present value, USD)")] == pytest.approx(best.present_cost)
    assert len(book["Trade-off"]._charts) == 1
    front = [row for row in book["Trade-off"].iter_rows(values_only=True) if row[0] == MIXED]
    assert len(front) == len(sizing.option(MIXED).front) > 1


def test_the_terminal_shows_what_the_workbook_shows() -> None:
    sizing = small_sizing()
    best = sizing.option(MIXED).best
    assert best is not None
    shown = on_terminal(size_summary(sizing, sizing_sentences(sizing)))
    row = next(line for line in shown.splitlines() if line.startswith(f" {MIXED}"))
    cells = re.split(r" {2,}", row.strip())
    start, stop = (f"{level:.0f}" for level in best.levels or ())
    assert cells[:2] == [MIXED, "✓ yes"]
    assert cells[3:5] == [f"{best.tank_m3:.1f}", f"{start} / {stop}"]
    assert f"{best.present_cost:,.0f}" in cells
    said = sizing_sentences(sizing)
    assert " ".join(shown.split()).endswith(" ".join(said))


costs_and_shares = st.lists(
    st.tuples(st.integers(1, 20), st.integers(0, 10)), min_size=1, max_size=30
).map(lambda pairs: (np.array([float(c) for c, _ in pairs]), np.array([s / 10 for _, s in pairs])))  # fmt: skip


@given(costs_and_shares)
def test_the_front_holds_what_no_other_beats(pair: tuple[Any, Any]) -> None:
    cost, share = pair
    front = set(pareto_front(cost, share).tolist())
    for place in range(cost.size):
        beaten = (
            (cost <= cost[place]) & (share >= share[place]) & ((cost < cost[place]) | (share > share[place]))
        ).any()
        alike = any(cost[other] == cost[place] and share[other] == share[place] for other in front)
        assert alike != beaten, place


def test_the_cheapest_of_equals_is_the_first() -> None:
    cost = np.array([5.0, 3.0 * (1 + 1e-12), 3.0, 1.0])
    assert cheapest(cost, np.array([True, True, True, False])) == 1
    assert cheapest(cost, np.zeros(4, dtype=bool)) is None


ranges = st.lists(
    st.tuples(st.integers(0, 24), st.integers(0, 24)).filter(lambda pair: pair[0] != pair[1]).map(list), max_size=3
)


@settings(max_examples=200)
@given(ranges, ranges)
def test_common_hours_cover_what_both_cover(first: list[list[int]], second: list[list[int]]) -> None:
    both = share_of_hours(first) * share_of_hours(second)
    common = common_hours(first, second)
    assert (common is None) == (both.sum() == 0)
    if common is not None:
        np.testing.assert_array_equal(share_of_hours(common), both)
