"""Writing the workbook, against the simulation and the imports that it reports on, in one run."""

from __future__ import annotations

import subprocess
import sys

SEVEN_OPTIONS = "scenarios/hill-school.toml"
MEASURED = """
import sys, time
from pathlib import Path

begin = time.perf_counter()
import numpy, pandas, pvlib, openpyxl
from planner.checks.cautions import cautions
from planner.checks.of_study import study_verdicts
from planner.report.run_workbook import write_workbook
from planner.scenario.reader import read_scenario
from planner.study.compare import study_scenario

file = Path(sys.argv[1])
study = study_scenario(read_scenario(file), file.parent)
worked_out = time.perf_counter()
beware, verdicts = cautions(study), study_verdicts(study)
start = time.perf_counter()
write_workbook(study, beware, Path(sys.argv[2]), verdicts)
print(len(study.options), study.scenario.finance.life_years, worked_out - begin, time.perf_counter() - start)
"""


def test_writing_costs_less_than_simulation_and_imports(tmp_path: object) -> None:
    ratios = []
    for _ in range(3):
        command = [sys.executable, "-c", MEASURED, SEVEN_OPTIONS, f"{tmp_path}/book.xlsx"]
        said = subprocess.run(command, check=True, capture_output=True, text=True).stdout.split()
        assert said[:2] == ["7", "20"]
        worked_out_s, written_s = float(said[2]), float(said[3])
        ratios.append(written_s / worked_out_s)
        print(f"\nimports and simulation {worked_out_s:.2f} s, writing {written_s:.2f} s, ratio {ratios[-1]:.2f}")
    assert min(ratios) < 0.5
