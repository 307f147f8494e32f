"""Running a sweep: right numbers, each stage once, nothing depending on chunks, interruption survived."""

from __future__ import annotations

from functools import cache
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from planner.assumptions.reader import check_scenario
from planner.report.sweep_store import ChunkFolder, run_key
from planner.scenario.errors import InputError
from planner.study import context, design, evaluate
from planner.study.compare import study_scenario
from planner.study.keys import numeric_keys, with_value
from planner.study.sweep.engine import MEASURES, engine_from
from planner.study.sweep.reasons import Reason
from planner.study.sweep.run import Results, base_of, run_sweep
from planner.water.demand import hourly_demand_m3
from tests.study.sweep.cases import EXAMPLES, FUEL, SCHOOL, random_table, school, school_raw, uniform

HALF_WRONG = {"grid": [{"key": FUEL, "values": [1, 2]}, {"key": "pump.max_head_m", "values": [100, 210]}]}
AUTO = {"volume_m3": "auto"}
MIXED = {
    "one_at_a_time": [{"key": SCHOOL, "low": 250, "high": 450}, {"key": FUEL, "change_percent": 30}],
    "grid": [
        {"key": "weather.ghi_kwh_m2_day[1]", "values": [3.5, 3.9]},
        {"key": "sources.solar.strings", "values": [1, 2]},
        {"key": "tank.volume_m3", "values": [10, 20, 30]},
        {"key": FUEL, "values": [1.0, 1.5]},
    ],
}


def at(results: Results, variant: int, option: str) -> dict[str, float]:
    """Measures of one variant and option."""
    found = results.numbers[variant, results.options.index(option)]
    return dict(zip(MEASURES, found.tolist(), strict=True))


VARIED: dict[str, float] = {
    SCHOOL: 500.0,
    FUEL: 2.0,
    "finance.discount_rate_percent": 9.0,
    "sources.grid.outages.hours_per_day": 12.0,
    "weather.ghi_kwh_m2_day[7]": 3.9,
    "finance.analysis_period_years": 3.0,
    "sources.solar.strings": 2.0,
    "tank.volume_m3": 30.0,
    "topup.start_level_percent": 30.0,
    "sources.generator.minimum_run_h": 2.0,
    "borehole.daily_limit_m3": 12.0,
    "service.demand_met_percent": 99.99,
}


def varied_raw() -> dict[str, Any]:
    """The school with a tank that costs what the table of its sizes says."""
    raw = school_raw()
    raw["tank"].pop("price", None)
    return raw


CHEAP = (SCHOOL, FUEL, "sources.solar.strings", "tank.volume_m3")
"""One key of every stage: demand, prices, array, tank."""


@cache
def varied(keys: tuple[str, ...]) -> Results:
    """Each input moved alone, all in one sweep: the scenario itself, then of each input a lower value and its own."""
    steps = [{"key": key, "low": VARIED[key] - 1, "high": VARIED[key]} for key in keys]
    return run_sweep(check_scenario(varied_raw() | {"sweep": {"one_at_a_time": steps}}, "test"), EXAMPLES).results[0]


@pytest.mark.parametrize("key", [pytest.param(key, marks=[] if key in CHEAP else [pytest.mark.slow]) for key in VARIED])
def test_a_variant_is_what_the_changed_scenario_gives(key: str) -> None:
    keys = CHEAP if key in CHEAP else tuple(VARIED)
    variant, raw = 2 + 2 * keys.index(key), varied_raw()
    known = numeric_keys(check_scenario(raw, "test"))
    study = study_scenario(check_scenario(with_value(raw, known[key], VARIED[key]), "test"), EXAMPLES)
    for option in study.options:
        found = at(varied(keys), variant, option.name)
        assert found["present_cost"] == pytest.approx(float(option.life.present_cost), rel=1e-12)
        assert found["levelised_cost_per_m3"] == pytest.approx(float(option.life.levelised_cost_per_m3), rel=1e-12)
        assert found["owner_present_cost"] == pytest.approx(float(option.life.owner_present_cost), rel=1e-12)
        assert found["delivered_share"] == pytest.approx(option.delivered_share, rel=1e-12)
        assert found["worst_year_share"] == pytest.approx(option.worst_year_share, rel=1e-12)
        assert bool(found["meets_service"]) == option.meets_service
        assert (found["tank_m3"], found["strings"]) == (option.tank_m3, option.strings)
        assert found["fuel_l_per_year"] == pytest.approx(
            float(option.quantities.fuel_l.sum()) / study.scenario.finance.analysis_period_years
        )


@pytest.mark.slow
def test_the_design_stays_that_of_the_base_case_unless_it_is_to_be_chosen_anew() -> None:
    grid = [{"key": SCHOOL, "values": [380, 1500]}]
    held, anew = (
        run_sweep(school(tank=AUTO, sweep={"grid": grid, "redesign": redesign}), EXAMPLES).results[0]
        for redesign in (False, True)
    )
    raw = school_raw(tank=AUTO)
    raw["demand"]["users"][0]["count"] = 1500
    study = study_scenario(check_scenario(raw, "test"), EXAMPLES)
    for option in held.options:
        assert at(held, 1, option)["tank_m3"] == at(held, 0, option)["tank_m3"]
        assert at(anew, 0, option)["tank_m3"] == at(held, 0, option)["tank_m3"]
        assert at(anew, 1, option)["tank_m3"] == study.option(option).tank_m3
        assert at(anew, 1, option)["present_cost"] == pytest.approx(float(study.option(option).life.present_cost))
    assert at(anew, 1, "solar + grid")["tank_m3"] > at(anew, 0, "solar + grid")["tank_m3"]


def test_an_option_keeps_the_tank_that_an_override_gives_it() -> None:
    overrides = {"grid": {"tank": {"volume_m3": 15}}}
    swept = run_sweep(
        school(overrides=overrides, sweep={"grid": [{"key": "tank.volume_m3", "values": [30]}]}), EXAMPLES
    )
    assert at(swept.results[0], 0, "grid")["tank_m3"] == 15
    assert at(swept.results[0], 0, "solar")["tank_m3"] == 30


class Calls:
    """Counts how often the stages are entered."""

    def __init__(self, monkeypatch: pytest.MonkeyPatch) -> None:
        self.counts = {"weather_of": 0, "built_of": 0, "run_options": 0}
        for module, name in zip((design, context, evaluate), self.counts, strict=True):
            monkeypatch.setattr(module, name, self._counting(name, getattr(module, name)))

    def _counting(self, name: str, function: Any) -> Any:
        def counted(*args: Any, **kwargs: Any) -> Any:
            self.counts[name] += 1
            return function(*args, **kwargs)

        return counted


@pytest.mark.parametrize(
    ("table", "weather", "built", "runs"),
    [
        # the scenario as it stands is run once, where its designs are chosen; the sweep is one pass
        (random_table(20_000, uniform(FUEL, 1, 2), uniform("pump.price", 2000, 3000)), 1, 4, 2),
        pytest.param(
            random_table(300, uniform("finance.discount_rate_percent", 2, 9)), 1, 4, 2, marks=pytest.mark.slow
        ),
        ({"grid": [{"key": SCHOOL, "values": [300, 400, 500]}, {"key": FUEL, "values": [1, 2]}]}, 1, 16, 2),
        pytest.param(
            {"grid": [{"key": "tank.volume_m3", "values": [10, 15, 20, 30]}]}, 1, 4, 2, marks=pytest.mark.slow
        ),
        pytest.param(
            {"grid": [{"key": "sources.solar.strings", "values": [1, 2, 3]}]}, 1, 4, 2, marks=pytest.mark.slow
        ),
        pytest.param(
            {"grid": [{"key": "site.altitude_m", "values": [0, 1000]}, {"key": SCHOOL, "values": [300, 400, 500]}]},
            3,
            28,
            2,
            marks=pytest.mark.slow,
        ),
    ],
    ids=["prices", "discount rate", "demand and price", "tank", "strings", "altitude and demand"],
)
def test_each_stage_is_done_once_for_all_that_leaves_it_as_it_is(
    table: dict[str, Any], weather: int, built: int, runs: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    scenario = school(sweep=table)
    engine_from.cache_clear()
    calls = Calls(monkeypatch)
    swept = run_sweep(scenario, EXAMPLES)
    assert not swept.results[0].problems
    assert calls.counts == {"weather_of": weather, "built_of": built, "run_options": runs}


def test_the_size_of_the_chunks_changes_no_bit() -> None:
    scenario = school(sweep=MIXED | random_table(3000, uniform(FUEL, 1, 2), uniform("pump.price", 2000, 3000)))
    large, small = run_sweep(scenario, EXAMPLES, chunk_seconds=100), run_sweep(scenario, EXAMPLES, chunk_seconds=0)
    assert [results.plan.mode for results in large.results] == ["one_at_a_time", "grid", "random"]
    for one, other in zip(large.results, small.results, strict=True):
        assert one.numbers.tobytes() == other.numbers.tobytes()
        assert np.isfinite(one.measure("present_cost")).all()


def test_a_failing_variant_is_told_and_ends_nothing() -> None:
    table = {
        "grid": [
            {"key": "pump.max_head_m", "values": [210, 100, 125, 220]},
            {"key": "tank.volume_m3", "values": [20, 0.1]},
        ]
    }
    results = run_sweep(school(sweep=table), EXAMPLES).results[0]
    assert set(results.problems) == {1, 2, 3, 5, 7}
    assert "rated_head_m 120 is not below max_head_m 100" in results.problems[2].words
    assert "of the busiest hour" in results.problems[1].words
    assert np.isfinite(results.measure("present_cost")[[0, 6]]).all()
    assert np.isnan(results.numbers[2]).all()


def test_even_a_fault_of_our_own_loses_only_its_variant(monkeypatch: pytest.MonkeyPatch) -> None:
    scenario = school(sweep={"grid": [{"key": SCHOOL, "values": [300, 400, 500, 600]}]})
    engine_from.cache_clear()
    true = evaluate.run_options

    def faulty(options: Any, **more: Any) -> Any:
        if any(option.draw_m3.sum() > most for option in options):
            raise ZeroDivisionError("a fault")
        return true(options, **more)

    def drawn(count: int) -> float:
        raw = school_raw()
        raw["demand"]["users"][0]["count"] = count
        return float(hourly_demand_m3(check_scenario(raw, "test").demand, 2).sum())

    most = (drawn(500) + drawn(600)) / 2
    monkeypatch.setattr(evaluate, "run_options", faulty)
    results = run_sweep(scenario, EXAMPLES).results[0]
    assert results.problems == {3: Reason("failed", {"error": "ZeroDivisionError", "message": "a fault"})}
    assert np.isfinite(results.measure("present_cost")[:3]).all()


def test_a_scenario_that_cannot_work_as_it_stands_is_refused() -> None:
    with pytest.raises(InputError, match="cannot lift"):
        run_sweep(school(pipeline={"rise_to_tank_inlet_m": 400}), EXAMPLES)


def stopped_after(chunks: int) -> Any:
    """Progress that interrupts after some chunks."""
    seen: list[int] = []

    def progress(kind: str, done: int, count: int, seconds: float) -> None:
        seen.append(done)
        if len(seen) == chunks:
            raise KeyboardInterrupt

    return progress


def chunk_files(store: ChunkFolder) -> list[Path]:
    return sorted(store.folder.rglob("*.npz"))


@pytest.mark.slow
@pytest.mark.parametrize("later_seconds", [0.0, 100.0])
def test_an_interrupted_sweep_goes_on_with_the_same_numbers(
    later_seconds: float, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    scenario = school(sweep=MIXED | random_table(30_000, uniform(FUEL, 1, 2), uniform("pump.price", 2000, 3000)))
    whole = run_sweep(scenario, EXAMPLES)
    store = ChunkFolder(tmp_path, scenario, EXAMPLES)
    with pytest.raises(KeyboardInterrupt):
        run_sweep(scenario, EXAMPLES, store=store, progress=stopped_after(4), chunk_seconds=0)
    kept = chunk_files(store)
    assert len(kept) == 4
    engine_from.cache_clear()
    told: list[int] = []
    resumed = run_sweep(
        scenario,
        EXAMPLES,
        store=ChunkFolder(tmp_path, scenario, EXAMPLES),
        progress=lambda kind, done, count, seconds: told.append(done),
        chunk_seconds=later_seconds,
    )
    assert set(kept) < set(chunk_files(store))
    for one, other in zip(whole.results, resumed.results, strict=True):
        assert one.numbers.tobytes() == other.numbers.tobytes()
    engine_from.cache_clear()
    calls = Calls(monkeypatch)
    again = run_sweep(scenario, EXAMPLES, store=store)
    assert calls.counts["run_options"] == 1, "only the base case is worked out again"
    assert again.results[2].numbers.tobytes() == whole.results[2].numbers.tobytes()
    store.clear()
    assert not store.folder.exists()


def test_a_damaged_chunk_is_done_again(tmp_path: Path) -> None:
    scenario = school(
        sweep={"grid": [{"key": FUEL, "values": [1, 2]}, {"key": "pump.max_head_m", "values": [100, 210]}]}
    )
    store = ChunkFolder(tmp_path, scenario, EXAMPLES)
    first = run_sweep(scenario, EXAMPLES, store=store)
    for file in chunk_files(store):
        file.write_bytes(file.read_bytes()[:100])
    again = run_sweep(scenario, EXAMPLES, store=store)
    assert again.results[0].numbers.tobytes() == first.results[0].numbers.tobytes()
    assert again.results[0].problems == first.results[0].problems != {}


def test_problems_survive_the_file(tmp_path: Path) -> None:
    scenario = school(
        sweep={"grid": [{"key": FUEL, "values": [1, 2]}, {"key": "pump.max_head_m", "values": [100, 210]}]}
    )
    store = ChunkFolder(tmp_path, scenario, EXAMPLES)
    first, again = (run_sweep(scenario, EXAMPLES, store=store).results[0] for _ in range(2))
    assert set(again.problems) == {0, 2}
    assert again.problems == first.problems


def test_chunks_of_another_scenario_seed_or_weather_file_are_never_used(tmp_path: Path) -> None:
    one = school(sweep=MIXED)
    assert run_key(one, EXAMPLES) == run_key(school(sweep=MIXED), EXAMPLES)
    others = [school(sweep=MIXED, seed=8), school(sweep=random_table(30, uniform(FUEL, 1, 2))), school(name="Other")]
    keys = {run_key(scenario, EXAMPLES) for scenario in (one, *others)}
    assert len(keys) == 4
    raw = school_raw()
    raw["weather"] = {"kind": "file", "file": "w.csv"}
    filed = check_scenario(raw, "test")
    before = []
    for text in ("one", "other", "one"):
        (tmp_path / "w.csv").write_text(text, encoding="utf-8")
        before.append(run_key(filed, tmp_path))
    assert before[0] == before[2] != before[1]


MONEY: dict[str, tuple[float, float]] = {
    "finance.discount_rate_percent": (-3.0, 15.0),
    "finance.inflation_percent": (0.0, 8.0),
    "finance.grant_percent": (0.0, 70.0),
    "finance.loan_percent": (0.0, 60.0),
    "finance.loan_rate_percent": (0.0, 9.0),
    "pump.life_years": (1.0, 3.0),
    "pump.maintenance_percent_per_year": (0.0, 5.0),
    "costs.contingency_percent": (0.0, 20.0),
    "service.demand_met_percent": (90.0, 100.0),
    "sources.grid.tariff.blocks[1].up_to_kwh_month": (5.0, 40.0),
    "sources.grid.tariff.tax_percent": (0.0, 20.0),
    "sources.generator.life_hours": (100.0, 900.0),
    "sources.generator.service_interval_h": (20.0, 90.0),
    FUEL: (0.5, 3.0),
}


@pytest.mark.slow
def test_money_priced_in_arrays_is_what_each_variant_costs_alone() -> None:
    inputs = [uniform(key, low, high) for key, (low, high) in MONEY.items()]
    scenario = school(finance={"loan_years": 2}, sweep=random_table(12, *inputs))
    results = run_sweep(scenario, EXAMPLES).results[0]
    known, sound = numeric_keys(scenario), 0
    for variant, values in enumerate(results.plan.values):
        raw = school_raw(finance={"loan_years": 2})
        for key, value in zip(results.plan.keys, values, strict=True):
            raw = with_value(raw, known[key.text], float(value))
        if variant in results.problems:
            with pytest.raises(InputError, match="together exceed 100"):
                check_scenario(raw, "test")
            continue
        alone = base_of(check_scenario(raw, "test"), EXAMPLES)
        np.testing.assert_allclose(results.numbers[variant], alone.numbers, rtol=1e-9)
        sound += 1
    assert 3 < sound < 12
