"""Whole commands in fresh interpreters, against importing their libraries; writing the workbook."""

from __future__ import annotations

import json
from collections.abc import Iterator
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from planner.answers.cautions import cautions
from planner.answers.of_study import study_verdicts
from planner.assumptions.reader import read_scenario
from planner.report.run_workbook import write_workbook
from planner.study.compare import study_scenario
from tests.benchmarks.measure import HILL, Row, cpu_s, hill_file, million_steps, spent_by

VISIT = Path("scenarios", "visit.toml")
IMPORTS = ("numpy", "pandas", "pvlib", "openpyxl")
CHECK_IMPORTS = ("numpy", "pandas", "pvlib", "pydantic", "typer", "rich")
SIZES: dict[str, Any] = {
    "tank.volume_m3": "auto",
    "sources.solar.strings": "auto",
    "sources.solar.strings_max": 6,
}
LEVELS: dict[str, Any] = {"topup.start_level_percent": "auto", "topup.stop_level_percent": "auto"}
RUNS = (
    ("run, hill school as given", {}, "at most 4"),
    ("run, tank and strings searched", SIZES, "at most 6"),
    ("run, float-switch levels searched, too", SIZES | LEVELS, "at most 10"),
)
WIDE_SEARCH: dict[str, Any] = {
    "service.options": ["solar + grid"],
    "size.strings": list(range(1, 13)),
    "size.tanks_m3": [float(volume) for volume in range(5, 65, 5)],
    "size.levels_percent": [
        [float(start), float(start + width)] for start in range(5, 85, 10) for width in (5, 10, 15)
    ],
}


SEARCHES = (("size, hill school", {}), ("size, one option, thousands of candidates", WIDE_SEARCH))


def rows() -> Iterator[Row]:
    """Measure imports, `run`, `check`, `size` and the workbook."""
    imports = spent_by("import", *IMPORTS, times=3)
    yield Row("four imports: " + ", ".join(IMPORTS), f"{imports.cpu_s:.2f} CPU s, {imports.megabytes:.0f} MB")
    with TemporaryDirectory() as place:
        for name, changes, aim in RUNS:
            file = hill_file(Path(place, "hill.toml"), changes)
            spent = spent_by("run", str(file), "--outputs", place, "--quiet")
            yield Row(name, f"{spent.cpu_s:.2f} CPU s", f"{spent.cpu_s / imports.cpu_s:.2f} of the imports", aim)
            ratio = f"{spent.megabytes / imports.megabytes:.2f} of the imports"
            yield Row("  its peak memory", f"{spent.megabytes:.0f} MB", ratio, "at most 600 MB")
        needed = spent_by("import", *CHECK_IMPORTS, times=3)
        check = spent_by("check", str(HILL), "--quiet", times=3)
        ratio = f"{check.cpu_s / needed.cpu_s:.2f} of what it imports"
        yield Row("check, hill school", f"{check.cpu_s:.2f} CPU s", ratio, "at most 1.5")
        short = spent_by("check", str(VISIT), "--quiet", times=3)
        ratio = f"{short.cpu_s / needed.cpu_s:.2f} of what it imports"
        yield Row("check, the visit's short scenario", f"{short.cpu_s:.2f} CPU s", ratio, "at most 1.3")
        short = spent_by("run", str(VISIT), "--outputs", place, "--quiet", times=3)
        ratio = f"{short.cpu_s / imports.cpu_s:.2f} of the imports"
        yield Row("run, the visit's, all that may be left to it", f"{short.cpu_s:.2f} CPU s", ratio, "at most 4")
        for name, changes in SEARCHES:
            yield from _sizing(name, hill_file(Path(place, "hill.toml"), changes), Path(place), imports.cpu_s)
        yield _workbook(Path(place, "book.xlsx"), imports.cpu_s)


def _sizing(name: str, file: Path, outputs: Path, imports_s: float) -> Iterator[Row]:
    spent = spent_by("size", str(file), "--outputs", str(outputs), "--quiet", times=1)
    found = json.loads((outputs / f"{file.stem}-size.json").read_text(encoding="utf-8"))
    steps = found["candidates"] * read_scenario(file).finance.analysis_period_years * 8760
    yield Row(name, f"{spent.cpu_s:.1f} CPU s", f"{spent.cpu_s / imports_s:.1f} of the imports")
    yield Row(f"  its {found['candidates']:,} candidates", million_steps(steps, spent.cpu_s - imports_s))
    yield Row("  its peak memory", f"{spent.megabytes:.0f} MB", aim="at most 1,500 MB")


def _workbook(path: Path, imports_s: float) -> Row:
    scenario = read_scenario(HILL)
    simulated_s = cpu_s(lambda: study_scenario(scenario, HILL.parent))
    study = study_scenario(scenario, HILL.parent)
    beware, verdicts = cautions(study), study_verdicts(study)
    written_s = cpu_s(lambda: write_workbook(study, beware, path, verdicts))
    ratio = f"{written_s / (imports_s + simulated_s):.2f} of imports and simulation"
    return Row("writing the workbook of seven options", f"{written_s:.2f} CPU s", ratio, "at most 0.5")
