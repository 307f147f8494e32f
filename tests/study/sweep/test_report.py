"""The sweep's command, workbook, rows and sentences."""

from __future__ import annotations

import os
import re
import signal
import subprocess
import sys
import time
from pathlib import Path
from typing import Any

import numpy as np
import openpyxl
import pandas as pd
import pytest
from typer.testing import CliRunner

from planner.cli import app
from planner.report.pages.sweep.report import sweep_report
from planner.report.rows import has_parquet
from planner.report.sweep_rows import write_rows
from planner.report.workbook.book import write_book
from planner.scenario.writer import toml_text
from planner.study.sweep.reasons import Reason
from planner.study.sweep.run import SweepResult, run_sweep
from planner.study.sweep.summary import sentences
from planner.study.sweep.workers import Serial, _given_up, work_chunk
from tests.study.sweep.cases import EXAMPLES, FUEL, PUPILS, SCHOOL, random_table, school, school_raw, uniform

ALL = {
    "one_at_a_time": [
        {"key": FUEL, "change_percent": 20},
        {"key": SCHOOL, "low": 200, "high": 600},
        {"key": "pump.max_head_m", "low": 100, "high": 250},
    ],
    "grid": [{"key": "tank.volume_m3", "values": [10, 20, 30]}, {"key": SCHOOL, "values": [300, 400]}],
    "weather": {"years": 12},
} | random_table(60, uniform(FUEL, 1, 2), uniform("finance.discount_rate_percent", 2, 9))

LOST = Reason("not_done", {"status": "lost"})


@pytest.fixture(scope="module")
def swept() -> SweepResult:
    return run_sweep(school(sweep=ALL), EXAMPLES)


@pytest.fixture(scope="module")
def book(swept: SweepResult, tmp_path_factory: pytest.TempPathFactory) -> openpyxl.Workbook:
    path = tmp_path_factory.mktemp("book") / "sweep.xlsx"
    write_book(sweep_report(swept, sentences(swept)), path)
    return openpyxl.load_workbook(path)


def test_each_sweep_has_its_sheet_with_native_charts(book: openpyxl.Workbook) -> None:
    assert book.sheetnames == ["Answer", "One at a time", "Grid", "Random", "Weather years", "Left out"]
    charts = {sheet.title: len(sheet._charts) for sheet in book}
    assert charts == {"Answer": 0, "One at a time": 3, "Grid": 0, "Random": 2, "Weather years": 1, "Left out": 0}


def cells(sheet: Any) -> list[list[Any]]:
    return [[cell.value for cell in row] for row in sheet.iter_rows()]


def test_the_tornado_table_holds_the_results_in_order_of_swing(book: openpyxl.Workbook, swept: SweepResult) -> None:
    rows = cells(book["One at a time"])
    first = next(place for place, row in enumerate(rows) if row[0] == "Input") + 1
    table = rows[first : first + 3]
    results = swept.results[0]
    best = swept.base.ranking()[0]
    cost = results.measure("present_cost")[:, best]
    students = next(row for row in table if str(row[0]).startswith(PUPILS))
    assert students[1:4] == [200, 380, 600]
    assert students[4:6] == pytest.approx([cost[3], cost[4]])
    assert students[7:9] == pytest.approx([cost[3] - cost[0], cost[4] - cost[0]])
    swings = [row[6] for row in table if isinstance(row[6], int | float)]
    assert swings == sorted(swings, reverse=True)
    assert table[-1][4] == "no value" or "no value" in [row[4] for row in table]


def test_the_workbook_says_what_every_percentile_means(book: openpyxl.Workbook) -> None:
    texts = [value for row in cells(book["Random"]) for value in row if isinstance(value, str)]
    assert "P90: exceeded in 10 of 100 cases" in texts
    assert "P10: exceeded in 90 of 100 cases" in texts


def test_what_failed_is_listed_with_its_reason(book: openpyxl.Workbook) -> None:
    (row,) = cells(book["Left out"])[4:]
    assert row[0:2] == ["one at a time", 6]
    assert "pump.max_head_m = 100" in row[2]
    assert "rated_head_m 120 is not below max_head_m 100" in row[3]


def test_sentences_name_the_input_the_chances_and_the_worst_year(swept: SweepResult) -> None:
    said = " ".join(sentences(swept))
    for words in (
        "matters most",
        "Of the 6 combinations of the grid",
        "Of 100 cases drawn at random, the cheapest that meets the target is",
        "nine of ten synthetic weather years (12 were run)",
        "the works are built once",
        "1 of 73 variants could not be worked out",
    ):
        assert words in said


def test_a_single_option_has_no_second_to_compare(tmp_path: Path) -> None:
    scenario = school(service={"options": ["solar"]}, sweep={"one_at_a_time": ALL["one_at_a_time"]})
    swept = run_sweep(scenario, EXAMPLES)
    path = tmp_path / "one.xlsx"
    write_book(sweep_report(swept, sentences(swept)), path)
    assert len(openpyxl.load_workbook(path)["One at a time"]._charts) == 2
    assert "turns" not in " ".join(sentences(swept))


def test_rows_hold_every_variant_and_option(swept: SweepResult, tmp_path: Path) -> None:
    path = tmp_path / "rows.csv"
    write_rows(swept, path)
    frame = pd.read_csv(path)
    assert len(frame) == sum(results.plan.size for results in swept.results) * 4
    grid = swept.results[1]
    row = frame[(frame["sweep"] == "grid") & (frame["variant"] == 4) & (frame["option"] == "solar + grid")].iloc[0]
    assert (row["tank.volume_m3"], row[SCHOOL]) == tuple(grid.plan.values[3])
    place = grid.options.index("solar + grid")
    assert row["life_cycle_cost"] == pytest.approx(grid.measure("present_cost")[3, place])
    assert row["demand_met_percent"] == pytest.approx(100 * grid.measure("delivered_share")[3, place])
    base = frame[(frame["sweep"] == "one_at_a_time") & (frame["variant"] == 1)].iloc[0]
    assert base[SCHOOL] == 380
    failed = frame[frame["problem"].notna()]
    assert len(failed) == 4
    assert np.isnan(failed["life_cycle_cost"]).all()


def write_scenario(folder: Path, table: dict[str, Any], **tables: Any) -> Path:
    path = folder / "school.toml"
    path.write_text(toml_text(school_raw(sweep=table, **tables)), encoding="utf-8")
    return path


def test_the_command_writes_workbook_and_rows_and_clears_its_chunks(tmp_path: Path) -> None:
    scenario = write_scenario(tmp_path, {"one_at_a_time": ALL["one_at_a_time"]})
    ran = CliRunner().invoke(app, ["sweep", str(scenario), "--outputs", str(tmp_path / "out")])
    assert ran.exit_code == 0, ran.output
    assert "matters most" in " ".join(ran.stdout.split())
    assert sorted(file.name for file in (tmp_path / "out").iterdir()) == ["school-sweep.csv", "school-sweep.xlsx"]


def test_parquet_is_written_or_said_to_be_missing(tmp_path: Path) -> None:
    scenario = write_scenario(tmp_path, {"grid": [{"key": FUEL, "values": [1, 2]}]})
    ran = CliRunner().invoke(
        app, ["sweep", str(scenario), "--outputs", str(tmp_path / "out"), "--rows", "parquet", "--quiet"]
    )
    assert ran.exit_code == 0, ran.output
    if has_parquet():
        assert len(pd.read_parquet(tmp_path / "out" / "school-sweep.parquet")) == 8
    else:
        assert "Parquet needs pyarrow" in ran.stderr
        assert len(pd.read_csv(tmp_path / "out" / "school-sweep.csv")) == 8


def test_a_wrong_key_is_told_with_its_line(tmp_path: Path) -> None:
    scenario = write_scenario(tmp_path, {"grid": [{"key": "pump.prise", "values": [1]}]})
    ran = CliRunner().invoke(app, ["sweep", str(scenario), "--outputs", str(tmp_path / "out")])
    assert ran.exit_code == 2
    line = scenario.read_text(encoding="utf-8").splitlines().index('key = "pump.prise"') + 1
    assert f"school.toml:{line}: sweep.grid[1].key: 'pump.prise' was given" in ran.stderr
    assert "'pump.price'" in ran.stderr


def interrupts_heard() -> None:
    """Let a child hear Ctrl-C though the tests were started where it is ignored, as in the background of a shell."""
    signal.signal(signal.SIGINT, signal.SIG_DFL)


@pytest.mark.slow
@pytest.mark.parametrize("crew", [[], ["--workers", "2"]], ids=["alone", "two workers"])
def test_ctrl_c_leaves_the_chunks_and_resume_gives_the_same_rows(tmp_path: Path, crew: list[str]) -> None:
    values = [300 + 10 * step for step in range(30)]
    scenario = write_scenario(
        tmp_path,
        {"grid": [{"key": SCHOOL, "values": values}, {"key": "sources.solar.albedo", "values": [0.1, 0.2, 0.3]}]},
        finance={
            "analysis_period_years": 12
        },  # enough columns for several passes, so that there is something left to stop
    )

    def command(outputs: str, *more: str) -> list[str]:
        return [
            sys.executable,
            "-m",
            "planner",
            "sweep",
            str(scenario),
            "--outputs",
            str(tmp_path / outputs),
            "--quiet",
            *more,
        ]

    environment = os.environ | {"PYTHONPATH": str(Path.cwd())}
    process = subprocess.Popen(
        command("out", *crew), env=environment, stderr=subprocess.PIPE, text=True,
        preexec_fn=interrupts_heard, start_new_session=True,
    )  # fmt: skip
    chunks = tmp_path / "out" / "school.sweep"
    deadline = time.monotonic() + 60
    while process.poll() is None and not list(chunks.rglob("[0-9]*.npz")) and time.monotonic() < deadline:
        time.sleep(0.02)
    os.killpg(process.pid, signal.SIGINT)  # as a terminal does: to every process of the command
    _, errors = process.communicate(timeout=60)
    assert process.returncode == 130
    assert errors.split("\n") == ["", "Stopped. The finished chunks are kept; --resume goes on with them.", ""]
    assert list(chunks.rglob("[0-9]*.npz"))
    assert not (tmp_path / "out" / "school-sweep.csv").exists()
    for outputs, more in (("out", ["--resume", "--workers", "2"]), ("whole", [])):
        subprocess.run(command(outputs, *more), env=environment, check=True, timeout=120)
    resumed, whole = (tmp_path / outputs / "school-sweep.csv" for outputs in ("out", "whole"))
    assert resumed.read_bytes() == whole.read_bytes()
    assert not chunks.exists()


def test_a_sweep_of_which_nothing_could_be_worked_out_is_refused(tmp_path: Path) -> None:
    scenario = write_scenario(tmp_path, {"grid": [{"key": "pump.max_head_m", "values": [10, 20]}]})
    ran = CliRunner().invoke(app, ["sweep", str(scenario), "--outputs", str(tmp_path / "out")])
    assert ran.exit_code == 2
    assert ran.stdout == ""
    assert re.search(r"school\.toml: no variant of the sweep could be worked out; the first reason: pump: ", ran.stderr)
    assert not list((tmp_path / "out").glob("school-sweep.*"))


@pytest.mark.slow
def test_variants_given_up_with_their_workers_end_with_one_and_are_done_again(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    scenario = write_scenario(tmp_path, {"redesign": True, "grid": [{"key": SCHOOL, "values": [300, 400, 500]}]})

    def losing(self: Serial, core: Any, chunks: Any) -> Any:
        for number, chunk in enumerate(chunks):
            yield work_chunk(core, chunk) if number else _given_up(core, chunk, LOST)

    command = ["sweep", str(scenario), "--outputs", str(tmp_path / "out"), "--quiet"]
    with monkeypatch.context() as patched:
        patched.setattr(Serial, "work", losing)
        ran = CliRunner().invoke(app, command)
        patched.setattr(Serial, "work", lambda self, core, chunks: (_given_up(core, chunk, LOST) for chunk in chunks))
        all_lost = CliRunner().invoke(app, [*command[:-2], str(tmp_path / "none"), "--quiet"])
    assert all_lost.exit_code == 1
    assert (
        "no variant of the sweep could be worked out; the first reason: given up: lost on the cluster"
        in all_lost.stderr
    )
    assert not list((tmp_path / "none").glob("school-sweep.*"))
    assert ran.exit_code == 1
    assert " variants were given up with their workers; --resume does them again" in ran.stderr
    assert CliRunner().invoke(app, [*command, "--resume"]).exit_code == 0
    frame = pd.read_csv(tmp_path / "out" / "school-sweep.csv")
    assert frame["life_cycle_cost"].notna().all()
    assert not (tmp_path / "out" / "school.sweep").exists()
