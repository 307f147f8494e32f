"""Speed and memory of a whole run, against importing the libraries in a fresh interpreter, in one run."""

from __future__ import annotations

import subprocess
import sys
import time
import tomllib
from pathlib import Path

import pytest

from planner.scenario.writer import toml_text

IMPORTS = "import numpy, pandas, pvlib, openpyxl"
SEVEN_OPTIONS = Path("scenarios/hill-school.toml")
MEASURED_RUN = """
import sys
from planner.cli import app
try:
    app(sys.argv[1:])
except SystemExit as stop:
    assert not stop.code, stop.code
# The peak of this program's own memory; getrusage would count what the process that started it had held.
print(next(line.split()[1] for line in open("/proc/self/status") if line.startswith("VmHWM:")))
"""


def seconds(*command: str) -> tuple[float, str]:
    """Shortest of three timings of a fresh interpreter [s], and what it printed last."""
    taken, said = [], ""
    for _ in range(3):
        begin = time.perf_counter()
        said = subprocess.run([sys.executable, *command], check=True, capture_output=True, text=True).stdout
        taken.append(time.perf_counter() - begin)
    return min(taken), said


@pytest.mark.parametrize(
    ("auto", "most"),
    [((), 4.0), (("sizes",), 6.0), (("sizes", "levels"), 10.0)],
    ids=["as given", "tank and strings searched", "levels searched too, in two rounds"],
)
def test_a_run_costs_little_more_than_its_imports(auto: tuple[str, ...], most: float, tmp_path: Path) -> None:
    raw = tomllib.loads(SEVEN_OPTIONS.read_text(encoding="utf-8"))
    assert raw["finance"]["life_years"] == 20
    assert raw["weather"]["kind"] == "monthly"
    if "sizes" in auto:
        raw["tank"]["volume_m3"] = "auto"
        raw["sources"]["solar"] |= {"strings": "auto", "strings_max": 6}
    if "levels" in auto:
        raw["topup"] = {"start_level_percent": "auto", "stop_level_percent": "auto"}
    scenario = tmp_path / "seven.toml"
    scenario.write_text(toml_text(raw), encoding="utf-8")
    imports, _ = seconds("-c", IMPORTS)
    run, said = seconds("-c", MEASURED_RUN, "run", str(scenario), "--outputs", str(tmp_path), "--quiet")
    megabytes = int(said.split()[-1]) / 1024
    print(f"\nimports {imports:.2f} s, run {run:.2f} s, ratio {run / imports:.2f}; peak memory {megabytes:.0f} MB")
    assert (tmp_path / "seven.xlsx").stat().st_size > 10_000
    assert run < most * imports
    assert megabytes < 600
