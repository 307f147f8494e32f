"""Speed of sweeps, as ratios within one run."""

from __future__ import annotations

import time
import tomllib
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from planner.money.lifecycle import life_cycle
from planner.money.quantities import bill_of_quantities
from planner.scenario.reader import check_scenario, option_scenario
from planner.scenario.scenario import Scenario
from planner.study.compare import study_scenario
from planner.study.design import designs_of, option_of
from planner.study.keys import numeric_keys, with_value
from planner.study.sweep.engine import engine_of
from planner.study.sweep.plan import plans_of
from planner.study.sweep.prices import price_line
from planner.study.sweep.run import base_of, run_plan, run_sweep
from planner.study.sweep.workers import Alone, Processes, Workers
from planner.supply.run import run_options
from tests.benchmarks.test_kernel_speed import best_of

EXAMPLES = Path("scenarios")
PRICES = (
    "pump.price", "controller.price", "tank.sizes[4].price", "sources.solar.module.price",
    "sources.solar.structure_price_per_module", "sources.grid.tariff.blocks[1].price_per_kwh",
    "sources.grid.tariff.fixed_charge_per_month", "sources.generator.fuel_price_per_l",
    "sources.generator.service_price", "costs.yearly[1].per_year",
)  # fmt: skip


def example(**tables: Any) -> dict[str, Any]:
    raw = tomllib.loads((EXAMPLES / "hill-school.toml").read_text(encoding="utf-8"))
    for name, table in tables.items():
        raw[name] = raw.get(name, {}) | table
    return raw


def test_a_million_price_variants_cost_less_than_three_bare_products() -> None:
    raw = example()
    study = study_scenario(check_scenario(raw, "test"), EXAMPLES)
    keys = [numeric_keys(study.scenario)[text] for text in PRICES]

    def priced(prices: np.ndarray) -> np.ndarray:
        changed = raw
        for key, price in zip(keys, prices, strict=True):
            changed = with_value(changed, key, float(price))
        scenario = check_scenario(changed, "test")
        costs = []
        for option in study.options:
            own = option_scenario(scenario, option.name)
            lines = bill_of_quantities(own, option.sources, strings=option.strings, tank_m3=option.tank_m3)
            costs.append(float(life_cycle(own, option.sources, lines, option.quantities).present_cost))
        return np.array(costs)

    base = np.array([key.base for key in keys], dtype=float)
    line = price_line(priced, 0.5 * base, 2 * base)
    prices = base * np.random.default_rng(1).uniform(0.5, 2.0, (1_000_000, len(keys)))
    found = line.at(prices)
    for place in range(0, 1_000_000, 125_000):
        assert found[place] == pytest.approx(priced(prices[place]), rel=1e-9)
    ours = best_of(5, lambda: line.at(prices))
    product, elementwise = best_of(5, lambda: prices @ line.slope), best_of(5, lambda: prices * base)
    theirs = min(product, elementwise)
    print(f"\n1,000,000 price variants x {len(study.options)} options x {len(keys)} prices: {ours:.3f} s")
    print(f"bare matrix product {product:.3f} s, bare product price by price {elementwise:.3f} s")
    print(f"ratio to the faster of the two {ours / theirs:.2f}")
    assert len(study.options) == 7
    assert ours < 3 * theirs


def test_ten_thousand_designs_keep_near_the_bare_recurrence() -> None:
    tanks, strings = np.linspace(5, 60, 100), range(1, 101)
    raw = example(finance={"life_years": 1}, service={"options": ["solar"]})
    raw["sweep"] = {
        "grid": [
            {"key": "sources.solar.strings", "values": [float(count) for count in strings]},
            {"key": "tank.volume_m3", "values": tanks.tolist()},
        ]
    }
    scenario = check_scenario(raw, "test")
    base = base_of(scenario, EXAMPLES)
    (plan,) = plans_of(scenario)
    (design,) = designs_of(base.ground)
    option = option_of(design, base.ground, strings, tanks.tolist(), [20.0] * 100, [40.0] * 100)
    inflow = np.random.default_rng(1).uniform(0, 2, (8760, 100))
    outflow = np.repeat(base.ground.draw_m3, 100, axis=1)

    def bare() -> None:
        level = np.full((100, 100), 2.0)
        for hour in range(8760):
            level = np.clip(level + inflow[hour] - outflow[hour], 0.0, tanks[:, None])

    def sweep() -> None:
        engine_of.cache_clear()
        results = run_plan(base, plan, Alone())
        assert results.numbers.shape[0] == 10_000
        assert np.isfinite(results.measure("present_cost")).all()

    loop, whole, theirs = best_of(3, lambda: run_options([option])), best_of(2, sweep), best_of(3, bare)
    steps = 8760 * 10_000
    for name, taken in (("hour loop", loop), ("whole sweep, money included", whole), ("bare clip recurrence", theirs)):
        print(f"\n{name}: {taken:.2f} s, {steps / taken / 1e6:.0f} million hour-steps a second")
    print(f"ratio of the hour loop {loop / theirs:.2f}, of the whole sweep {whole / theirs:.2f}")
    assert loop < max(4 * theirs, steps / 100e6)


def timed(scenario: Scenario, crew: Workers) -> tuple[float, bytes]:
    """Time of a sweep [s], and the bytes of its results."""
    base = base_of(scenario, EXAMPLES)
    (plan,) = plans_of(scenario)
    begin = time.perf_counter()
    results = run_plan(base, plan, crew)
    return time.perf_counter() - begin, results.numbers.tobytes()


def bare_hours() -> None:
    """Bare NumPy recurrence for about a second, over arrays as large as a sweep's."""
    inflow, level = np.random.default_rng(1).uniform(-1, 1, (8760, 280)), np.full(280, 2.0)
    for _ in range(8):
        for hour in range(8760):
            level = np.clip(level + inflow[hour], 0.0, 5.0)


def timed_bare(crew: Processes) -> float:
    """Time of four bare recurrences [s]."""
    begin = time.perf_counter()
    for future in [crew._ready().submit(bare_hours) for _ in range(4)]:
        future.result()
    return time.perf_counter() - begin


def test_two_processes_do_more_than_one() -> None:
    def scenario(low: int, count: int) -> Scenario:
        grid = [{"key": "demand.users[1].count", "values": [low + 2 * step for step in range(count)]}]
        return check_scenario(example(finance={"life_years": 10}, sweep={"grid": grid}), "test")

    one, two = Processes(1), Processes(2)
    sweeps: dict[int, list[float]] = {1: [], 2: []}
    bare: dict[int, list[float]] = {1: [], 2: []}
    found = set()
    try:
        for crew in (one, two):
            # The processes are started before the clock is: that takes the same few seconds however long the sweep.
            run_sweep(scenario(100, 8), EXAMPLES, workers=crew)
        for crew in (one, two, one, two):
            bare[crew.count].append(timed_bare(crew))
            taken, numbers = timed(scenario(300, 48), crew)
            sweeps[crew.count].append(taken)
            found.add(numbers)
    finally:
        one.close()
        two.close()
    gain, possible = (min(taken[1]) / min(taken[2]) for taken in (sweeps, bare))
    print(f"\n48 designs x 7 options x 10 years: one process {min(sweeps[1]):.1f} s, two {min(sweeps[2]):.1f} s")
    print(f"gain {gain:.2f}; two processes of bare NumPy loops gain {possible:.2f} on this machine at this moment")
    assert len(found) == 1
    # 1.7 on two idle cores; where other work takes a part of them, the same share of what they can give.
    assert gain > min(1.7, 0.75 * possible)
