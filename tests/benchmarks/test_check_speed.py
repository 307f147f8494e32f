"""Speed of `planner check`, against importing what it needs, in one run."""

from __future__ import annotations

from tests.benchmarks.test_run_speed import SEVEN_OPTIONS, seconds

NEEDED = "import numpy, pandas, pvlib, pydantic, typer, rich"


def test_checking_costs_little_more_than_its_imports() -> None:
    imports, _ = seconds("-c", NEEDED)
    check, _ = seconds("-m", "planner", "check", str(SEVEN_OPTIONS), "--quiet")
    print(f"\nimports {imports:.2f} s, check {check:.2f} s, ratio {check / imports:.2f}")
    # 1.5 is the aim and was met on a calm machine (1.43); a busy one shall not fail for a tenth of a second.
    assert check < 1.8 * imports
