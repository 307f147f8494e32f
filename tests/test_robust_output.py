"""Names that are no plain words, full disks, folders that cannot be written to, and what killed runs leave."""

from __future__ import annotations

import errno
import os
import re
import shutil
import subprocess
import sys
import time
import tomllib
from collections.abc import Callable
from pathlib import Path

import pytest
from rich.text import Text
from typer.testing import CliRunner

from planner.cli import app
from planner.report.console import out_console
from planner.report.files import _MACHINE, results_in, write_text
from planner.scenario.errors import InputError
from planner.scenario.writer import toml_text

HILL = Path("scenarios/hill-school.toml")
MARKED = "Well [/b] 3 [red]x[/red] :warning:"


def scenario_of(file: Path, **changes: object) -> Path:
    raw = tomllib.loads(HILL.read_text(encoding="utf-8")) | changes
    raw["finance"]["analysis_period_years"] = 2
    raw["service"]["options"] = ["solar", "grid"]
    file.write_text(toml_text(raw), encoding="utf-8")
    return file


def planner(*arguments: object) -> tuple[int, str, str]:
    result = CliRunner().invoke(app, [str(argument) for argument in arguments])
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    return result.exit_code, result.stdout, result.stderr


def results(folder: Path) -> dict[str, bytes]:
    return {path.name: path.read_bytes() for path in folder.iterdir()}


# ---------------------------------------------------------------- names


@pytest.mark.parametrize(
    "command",
    [["run", "--quick"], ["check"], ["size"], ["sweep"], pytest.param(["worth", "grid"], marks=pytest.mark.slow)],
    ids=lambda c: c[0],
)
def test_brackets_in_a_name_are_shown_as_they_are(tmp_path: Path, command: list[str]) -> None:
    file = scenario_of(tmp_path / "a.toml", name=MARKED)
    folder = [] if command[0] == "check" else ["--outputs", tmp_path / "out"]
    code, out, err = planner(command[0], file, *command[1:], *folder)
    assert code == 0, err
    assert MARKED in out


def test_weather_shows_the_place_as_it_is_written(tmp_path: Path) -> None:
    file = scenario_of(tmp_path / "a.toml")
    file.write_text(file.read_text(encoding="utf-8").replace('place = "', f'place = "{MARKED}'), encoding="utf-8")
    code, out, _ = planner("weather", file)
    assert code == 0
    assert MARKED in out


def test_nothing_in_a_name_steers_the_terminal(tmp_path: Path) -> None:
    file = scenario_of(tmp_path / "a.toml", name="Well \x1b[2J\x9b1m\x07 \u202e3")
    code, out, _ = planner("run", file, "--outputs", tmp_path / "out", "--quick")
    assert code == 0
    assert "Well [2J1m 3: supply options" in out
    assert not re.search("[\x00-\x09\x0b-\x1f\x7f-\x9f\u202e]", out)


def test_styles_of_our_own_still_reach_a_terminal(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("FORCE_COLOR", "1")
    monkeypatch.delenv("NO_COLOR", raising=False)
    monkeypatch.setenv("TERM", "xterm")
    console = out_console()
    with console.capture() as caught:
        console.print(Text("a\x1b[2Jb", style="bold"))
    assert caught.get() == "\x1b[1ma[2Jb\x1b[0m\n"


def test_a_fault_of_ours_in_one_scenario_does_not_cost_the_others(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    from planner.study import compare

    whole = compare.study_scenario

    def broken(scenario: object, folder: Path, **how: object) -> object:
        if getattr(scenario, "name", "") == "broken":
            raise RuntimeError("boom\n" + "x" * 1000)
        return whole(scenario, folder, **how)  # type: ignore[arg-type]

    monkeypatch.setattr("planner.study.compare.study_scenario", broken)
    first, second = scenario_of(tmp_path / "a.toml", name="broken"), scenario_of(tmp_path / "b.toml")
    code, _, err = planner("run", first, second, "--outputs", tmp_path / "out", "--quiet", "--quick")
    assert code == 1
    assert f"{first}: planner failed and should not have: RuntimeError: boom xxx" in err
    assert len(err) < 700
    assert sorted(results(tmp_path / "out")) == ["b.json", "b.xlsx"]


# ---------------------------------------------------------------- full disks


def no_space(*_: object, **__: object) -> None:
    raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))


@pytest.mark.slow
@pytest.mark.parametrize("suffix", [".xlsx", ".json"])
@pytest.mark.parametrize("command", [["run"], ["size"], ["worth", "grid"]], ids=lambda c: c[0])
def test_a_full_disk_is_said_plainly_and_costs_no_old_result(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, suffix: str, command: list[str]
) -> None:
    """Workbook and JSON are put in place together, whichever of them does not fit."""
    file, out = scenario_of(tmp_path / "a.toml"), tmp_path / "out"
    arguments = [command[0], file, *command[1:], "--outputs", out, "--quiet"]
    assert planner(*arguments)[0] == 0
    before = results(out)
    file.write_text(
        file.read_text(encoding="utf-8").replace("analysis_period_years = 2", "analysis_period_years = 3"),
        encoding="utf-8",
    )
    write = Path.write_bytes
    monkeypatch.setattr(
        Path, "write_bytes", lambda path, data: (no_space if path.suffix == suffix else write)(path, data)
    )
    code, _, err = planner(*arguments)
    assert (code, err) == (2, f"{out}: cannot be written: No space left on device\n")
    assert results(out) == before


def test_a_full_disk_under_the_standard_output(tmp_path: Path) -> None:
    if not Path("/dev/full").exists():
        pytest.skip("this machine has no device that is always full")
    file = scenario_of(tmp_path / "a.toml")
    with Path("/dev/full").open("w") as full:
        done = subprocess.run(
            [sys.executable, "-m", "planner", "check", str(file)], stdout=full, stderr=subprocess.PIPE, text=True,
            timeout=120, check=False,
        )  # fmt: skip
    assert done.returncode == 2
    assert done.stderr == "output: cannot be written: No space left on device\n"


# ---------------------------------------------------------------- folders, before the run


def never(*_: object, **__: object) -> None:
    raise AssertionError("work was begun")


@pytest.mark.parametrize(
    ("command", "study"),
    [
        (["run"], "planner.study.compare.study_scenario"),
        (["size"], "planner.study.sizing.size_scenario"),
        (["worth", "grid"], "planner.study.worth.worth_of"),
        (["sweep"], "planner.study.sweep.run.run_sweep"),
        (["proposal"], "planner.study.compare.study_scenario"),
    ],
    ids=lambda value: value[0] if isinstance(value, list) else "",
)
def test_a_folder_that_cannot_be_written_is_told_before_any_work(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, command: list[str], study: str
) -> None:
    monkeypatch.setattr(study, never)
    file, out = scenario_of(tmp_path / "a.toml"), tmp_path / "out"

    def refused() -> str:
        code, _, err = planner(command[0], file, *command[1:], "--outputs", out / "deep", "--quiet")
        assert code == 2, err
        assert err.startswith(f"{out / 'deep'}: cannot be written: "), err
        return err

    out.write_text("", encoding="utf-8")
    assert f"{out} is a file" in refused()
    out.unlink()
    with monkeypatch.context() as patched:
        patched.setattr(os, "access", lambda path, mode, **how: not mode & os.W_OK)
        assert f"no permission to write in {tmp_path}" in refused()
    with monkeypatch.context() as patched:
        patched.setattr(shutil, "disk_usage", lambda path: shutil._ntuple_diskusage(10**9, 10**9, 1_234_567))
        assert "1.2 MB are free on its disk" in refused()
    assert not out.exists()


def test_a_folder_in_the_place_of_a_result(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("planner.study.compare.study_scenario", never)
    (tmp_path / "out" / "a.json").mkdir(parents=True)
    code, _, err = planner("run", scenario_of(tmp_path / "a.toml"), "--outputs", tmp_path / "out")
    assert code == 2
    assert "a.json is a folder, in the place of a result" in err


# ---------------------------------------------------------------- what killed runs leave


def test_a_killed_runs_leavings_are_removed_by_the_next_and_nothing_else(tmp_path: Path) -> None:
    ended = subprocess.Popen([sys.executable, "-c", ""])
    ended.wait()
    gone = [f".planner-{_MACHINE}-{ended.pid}-abcdefgh", ".planner-elsewhere-1-abcdefgh", ".site-ab12_xyz.xlsx"]
    kept = [
        f".planner-{_MACHINE}-{os.getppid()}-abcdefgh", ".planner-elsewhere-2-abcdefgh", ".planner-notes",
        ".site-notes.xlsx", ".other-ab12_xyz.xlsx", ".site-ab12_xyy.xlsx", "site.xlsx", ".site-ab12_xyz.toml",
    ]  # fmt: skip
    for name in [*gone, *kept]:
        if name.startswith(".planner"):
            (tmp_path / name).mkdir()
            (tmp_path / name / "site.xlsx").touch()
        else:
            (tmp_path / name).touch()
    old = time.time() - 100_000
    for name in [*gone[1:], *kept[2:5], kept[7]]:
        os.utime(tmp_path / name, (old, old))
    with results_in(tmp_path) as folder:
        write_text(folder / "new.json", "{}")
    assert sorted(results_but_folders(tmp_path)) == sorted([*kept, "new.json"])


def results_but_folders(folder: Path) -> list[str]:
    return [path.name for path in folder.iterdir()]


def test_results_are_placed_together_or_not_at_all(tmp_path: Path) -> None:
    def fail(write: Callable[[Path], None]) -> None:
        with results_in(tmp_path) as folder:
            write_text(folder / "a.json", "new")
            write(folder / "a.xlsx")

    write_text(tmp_path / "a.json", "old")
    with pytest.raises(InputError, match="No space left"):
        fail(no_space)
    with pytest.raises(AssertionError):
        fail(never)
    assert results(tmp_path) == {"a.json": b"old"}
