"""Speed and memory of the sizing, and of one option's variants against the bare recurrence in the same run."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path

import numpy as np

from planner.scenario.reader import read_scenario
from planner.study.design import designs_of, ground_of, option_of
from planner.supply.run import MONTH, run_options
from planner.supply.series import sun_series
from tests.benchmarks.test_kernel_speed import best_of

HILL = Path("scenarios/hill-school.toml")
OPTION = "solar + grid"
SEARCH = """
import json, resource, sys, time
from pathlib import Path
from planner.scenario.reader import read_scenario
from planner.scenario.size import Size
from planner.study.sizing import size_scenario

file, option = Path(sys.argv[1]), sys.argv[2]
scenario = read_scenario(file)
size = Size(
    strings=list(range(1, 13)),
    tanks_m3=[float(volume) for volume in range(5, 65, 5)],
    levels_percent=[[float(start), float(start + width)] for start in range(5, 85, 10) for width in (5, 10, 15)],
)
service = scenario.service.model_copy(update={"options": [option], "reference": None})
scenario = scenario.model_copy(update={"size": size, "service": service})
told = []
begin = time.perf_counter()
sizing = size_scenario(scenario, file.parent, lambda done, total, name: told.append(done))
print(json.dumps({
    "seconds": time.perf_counter() - begin,
    "candidates": sizing.candidate_count,
    "years": scenario.finance.life_years,
    "passes": len(told),
    "megabytes": resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024,
    "best": sizing.options[0].best is not None,
}))
"""


def test_ten_thousand_candidates_over_twenty_years_stay_within_memory() -> None:
    said = subprocess.run(
        [sys.executable, "-c", SEARCH, str(HILL), OPTION], check=True, capture_output=True, text=True
    ).stdout
    found = json.loads(said)
    steps = found["candidates"] * found["years"] * 8760
    print(
        f"\n{found['candidates']} candidates x {found['years']} years: {found['seconds']:.1f} s, "
        f"{steps / found['seconds'] / 1e6:.0f} million hour-steps a second, peak memory {found['megabytes']:.0f} MB, "
        f"progress told {found['passes']} times"
    )
    assert found["best"]
    assert found["candidates"] >= 10_000
    assert found["years"] == 20
    assert found["passes"] > 20
    assert found["megabytes"] < 1500


def test_ten_thousand_variants_of_one_option_for_a_year_keep_near_the_bare_recurrence() -> None:
    scenario = read_scenario(HILL)
    finance = scenario.finance.model_copy(update={"life_years": 1})
    ground = ground_of(scenario.model_copy(update={"finance": finance}), HILL.parent)
    design = next(design for design in designs_of(ground) if design.name == "solar")
    tanks = np.linspace(5, 60, 10_000)
    option = option_of(design, ground, [2], tanks.tolist(), [20.0] * tanks.size, [40.0] * tanks.size)
    inflow, outflow = sun_series(option.sun, option.pump, MONTH, 1).pumped_m3[:, 0], option.draw_m3[:, 0]

    def bare() -> None:
        level = tanks / 2
        for hour in range(8760):
            level = np.clip(level + inflow[hour] - outflow[hour], 0.0, tanks)

    ours, theirs = best_of(3, lambda: run_options([option])), best_of(3, bare)
    million = 8760 * tanks.size / 1e6
    print(f"\n{tanks.size} variants, one year: {ours:.2f} s, {million / ours:.0f} million hour-steps a second")
    print(f"bare clip recurrence: {theirs:.2f} s, ratio {ours / theirs:.2f}")
    assert million / ours >= 100 or ours < 4 * theirs
