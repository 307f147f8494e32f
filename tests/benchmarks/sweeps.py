"""Sweeps: a variant that changes the design, the prices, the discount rate; a large grid; a second process."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial
from time import perf_counter
from typing import Any

import numpy as np

from planner.assumptions.reader import check_scenario, option_scenario
from planner.money.lifecycle import life_cycle
from planner.money.quantities import bill_of_quantities
from planner.scenario.scenario import Scenario
from planner.sources.registry import SOLAR
from planner.study.compare import study_scenario
from planner.study.design import built_of, option_of
from planner.study.keys import numeric_keys, with_value
from planner.study.sweep.engine import engine_from
from planner.study.sweep.plan import plans_of
from planner.study.sweep.prices import price_line
from planner.study.sweep.run import base_of, run_plan, run_sweep
from planner.study.sweep.workers import Processes, Serial, Workers
from planner.supply.run import run_options
from tests.benchmarks.measure import EXAMPLES, Row, bare_recurrence, cpu_in_turn, cpu_s, hill, million_steps

PRICES = (
    "pump.price", "controller.price", "tank.sizes[4].price", "sources.solar.module.price",
    "sources.solar.structure_price_per_module", "sources.grid.tariff.blocks[1].price_per_kwh",
    "sources.grid.tariff.fixed_charge_per_month", "sources.generator.fuel_price_per_l",
    "sources.generator.service_price", "costs.yearly[1].per_year",
)  # fmt: skip
PUPILS = "demand.users[1].count"
DRAWS = {"design": 24, "price": 20_000, "rate": 500}
DESIGNS, BARE_PASSES = 48, 8


def scenario_of(changes: dict[str, Any]) -> Scenario:
    """Read the hill school with changes by dotted key."""
    return check_scenario(hill(changes), "benchmark")


def rows() -> Iterator[Row]:
    """Measure the sweeps."""
    study_s = cpu_s(lambda: study_scenario(scenario_of({}), EXAMPLES), 2)
    yield Row("simulating and costing the hill school once", f"{study_s:.2f} CPU s")
    design = _per_variant([{"kind": "uniform", "key": PUPILS, "low": 300, "high": 700}], DRAWS["design"])
    price = _per_variant([{"kind": "uniform", "key": "pump.price", "low": 2000, "high": 3000}], DRAWS["price"])
    rate = _per_variant(
        [{"kind": "uniform", "key": "finance.discount_rate_percent", "low": 2, "high": 9}], DRAWS["rate"]
    )
    yield Row("sweep, a variant of other design", f"{design:.3f} CPU s", f"{design / study_s:.3f} of one study")
    yield Row("sweep, a variant of other price", f"{1e3 * price:.3f} CPU ms", f"{price / design:.5f} of a design's")
    yield Row("sweep, a variant of other discount rate", f"{1e3 * rate:.3f} CPU ms", f"{rate / price:.1f} of a price's")
    yield _price_line()
    yield from _grid()
    yield _two_processes()


def _per_variant(inputs: list[dict[str, Any]], draws: int) -> float:
    """CPU time of one variant of a random sweep over seven options and twenty years [s]."""
    scenario = scenario_of({"sweep.random": {"draws": draws, "inputs": inputs}})
    base = base_of(scenario, EXAMPLES)
    (plan,) = plans_of(scenario)

    def sweep() -> None:
        engine_from.cache_clear()
        run_plan(base, plan, Serial())

    return cpu_s(sweep, 2) / draws


def _price_line() -> Row:
    """Measure a million draws of ten prices on the straight line of prices."""
    raw = hill({})
    study = study_scenario(check_scenario(raw, "benchmark"), EXAMPLES)
    keys = [numeric_keys(study.scenario)[text] for text in PRICES]

    def priced(prices: np.ndarray) -> np.ndarray:
        changed = raw
        for key, price in zip(keys, prices, strict=True):
            changed = with_value(changed, key, float(price))
        scenario = check_scenario(changed, "benchmark")
        costs = []
        for option in study.options:
            own = option_scenario(scenario, option.name)
            lines = bill_of_quantities(own, option.sources, strings=option.strings, tank_m3=option.tank_m3)
            costs.append(float(life_cycle(own, option.sources, lines, option.quantities).present_cost))
        return np.array(costs)

    base = np.array([key.base for key in keys], dtype=float)
    line = price_line(priced, 0.5 * base, 2 * base)
    prices = base * np.random.default_rng(1).uniform(0.5, 2.0, (1_000_000, len(keys)))
    ours, product, single = cpu_in_turn(5, lambda: line.at(prices), lambda: prices @ line.slope, lambda: prices * base)
    bare = min(*product, *single)
    ratio = f"{min(ours) / bare:.2f} of a bare product"
    return Row("a million price variants on the straight line", f"{min(ours):.3f} CPU s", ratio, "at most 3")


def _grid() -> Iterator[Row]:
    """Measure ten thousand designs, strings by tanks, of one option for one year."""
    tanks, strings = np.linspace(5, 60, 100), range(1, 101)
    scenario = scenario_of(
        {
            "finance.analysis_period_years": 1,
            "service.options": ["solar"],
            "sweep.grid": [
                {"key": "sources.solar.strings", "values": [float(count) for count in strings]},
                {"key": "tank.volume_m3", "values": tanks.tolist()},
            ],
        }
    )
    base = base_of(scenario, EXAMPLES)
    (plan,) = plans_of(scenario)
    design = built_of(scenario, (SOLAR,), base.site)
    option = option_of(design, base.site, strings, tanks.tolist(), [20.0] * 100, [40.0] * 100)
    inflow = np.random.default_rng(1).uniform(0, 2, (8760, 100))
    outflow, volume = np.repeat(base.site.draw_m3, 100, axis=1), np.repeat(tanks[:, None], 100, axis=1)

    def sweep() -> None:
        engine_from.cache_clear()
        run_plan(base, plan, Serial())

    loop, whole, bare = cpu_in_turn(
        2, lambda: run_options([option]), sweep, lambda: bare_recurrence(inflow, outflow, volume)
    )
    for name, taken, aim in (("hour loop", loop, "at most 4"), ("sweep with its money", whole, "")):
        ratio = f"{min(taken) / min(bare):.2f} of the bare clip"
        yield Row(f"10,000 designs, one year: {name}", million_steps(8760 * plan.size, min(taken)), ratio, aim)


def _bare_hours(passes: int) -> None:
    """Step bare NumPy, for about a second in eight passes, over arrays as large as a sweep's."""
    inflow = np.random.default_rng(1).uniform(-1, 1, (8760, 280))
    for _ in range(passes):
        bare_recurrence(inflow, np.zeros(8760), np.full(280, 5.0))


def _elapsed(work: Callable[[], object]) -> float:
    begin = perf_counter()
    work()
    return perf_counter() - begin


def _two_processes() -> Row:
    """Measure how much sooner two processes are done than one, by the clock on the wall."""

    def scenario(low: int, count: int) -> Scenario:
        grid = [{"key": PUPILS, "values": [low + 2 * step for step in range(count)]}]
        return scenario_of({"finance.analysis_period_years": 10, "sweep.grid": grid})

    def bare(crew: Workers) -> None:
        for future in [crew._ready().submit(_bare_hours, BARE_PASSES) for _ in range(4)]:
            future.result()

    crews = (Processes(1), Processes(2))
    swept: dict[int, list[float]] = {1: [], 2: []}
    stepped: dict[int, list[float]] = {1: [], 2: []}
    try:
        for crew in crews:
            # The processes are started before the clock is: that takes the same few seconds however long the sweep.
            run_sweep(scenario(100, 8), EXAMPLES, workers=crew)
        base = base_of(scenario(300, DESIGNS), EXAMPLES)
        (plan,) = plans_of(base.scenario)
        for crew in (*crews, *crews):
            stepped[crew.count].append(_elapsed(partial(bare, crew)))
            swept[crew.count].append(_elapsed(partial(run_plan, base, plan, crew)))
    finally:
        for crew in crews:
            crew.close()
    gain, possible = (min(taken[1]) / min(taken[2]) for taken in (swept, stepped))
    figure = f"{min(swept[2]):.1f} s by the clock"
    ratio = f"gain {gain:.2f}; bare loops {possible:.2f}"
    return Row(f"{DESIGNS} designs x 7 options x 10 years, two processes", figure, ratio, "at least 1.7")
