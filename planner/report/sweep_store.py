"""Finished chunks of a sweep on disk, so that one that was stopped goes on where it was."""

from __future__ import annotations

import hashlib
import json
import re
import zipfile
from dataclasses import asdict
from pathlib import Path

import numpy as np

from planner.report.files import write_whole
from planner.scenario.scenario import Scenario
from planner.study.sweep.engine import MEASURES, Found
from planner.study.sweep.plan import Plan
from planner.study.sweep.reasons import Reason
from planner.study.sweep.workers import Done
from planner.version import __version__

_NAME = re.compile(r"(\d+)-(\d+)\.npz")
_LEFT = re.compile(r"\.\d+-\d+-[a-z0-9_]{8}\.npz")
"""Names that a killed run left half-written."""


class ChunkFolder:
    """A folder with one file for each finished chunk.

    Parameters
    ----------
    folder : pathlib.Path
        Folder of all runs.
    scenario : Scenario
        The scenario; a run folder's name stands for it, its weather file and the version of the planner, so that
        chunks of one sweep never serve another.
    home : pathlib.Path
        Folder of the scenario file.
    """

    def __init__(self, folder: Path, scenario: Scenario, home: Path) -> None:
        self.folder = folder / run_key(scenario, home)

    def load(self, plan: Plan) -> list[Done]:
        """Return the chunks of a plan that are there and whole."""
        found = []
        for file in sorted((self.folder / _plan_name(plan)).glob("*.npz")):
            match = _NAME.fullmatch(file.name)
            done = None if match is None else _read(file, int(match.group(1)))
            if done is not None:
                found.append(done)
        return found

    def save(self, plan: Plan, done: Done) -> None:
        """Write a chunk, whole or not at all."""
        last = done.first + len(done.found) - 1
        write_whole(
            self.folder / _plan_name(plan) / f"{done.first:07d}-{last:07d}.npz", lambda path: _write(path, done)
        )

    def clear(self) -> None:
        """Remove the chunks of this run, and nothing else."""
        for file in self.folder.glob("*/*.npz"):
            if _NAME.fullmatch(file.name) or _LEFT.fullmatch(file.name):
                file.unlink()
        for folder in (*self.folder.glob("*"), self.folder, self.folder.parent):
            if folder.is_dir() and not any(folder.iterdir()):
                folder.rmdir()


def run_key(scenario: Scenario, home: Path) -> str:
    """Name that stands for everything on which the results of a sweep depend."""
    digest = hashlib.sha256(f"{__version__} {','.join(MEASURES)} {scenario.model_dump_json()}".encode())
    if scenario.weather.kind == "file":
        file = home / scenario.weather.file
        digest.update(file.read_bytes() if file.is_file() else b"")
    return digest.hexdigest()[:16]


def _plan_name(plan: Plan) -> str:
    return plan.mode.replace("_", "-")


def _write(path: Path, done: Done) -> None:
    sizes = [len(found.numbers) for found in done.found]
    problems = [{place: asdict(why) for place, why in found.problems.items()} for found in done.found]
    with path.open("wb") as stream:
        np.savez(
            stream,
            numbers=np.concatenate([found.numbers for found in done.found]),
            sizes=np.array(sizes),
            problems=np.array(json.dumps(problems)),
        )


def _read(path: Path, first: int) -> Done | None:
    """Read a chunk; None where the file is damaged, so that its work is done again."""
    try:
        with path.open("rb") as stream, np.load(stream, allow_pickle=False) as data:
            numbers = np.split(data["numbers"], np.cumsum(data["sizes"])[:-1])
            problems = json.loads(str(data["problems"]))
        found = tuple(
            Found(part, {int(place): Reason(**why) for place, why in wrong.items()})
            for part, wrong in zip(numbers, problems, strict=True)
        )
    except (OSError, ValueError, KeyError, TypeError, EOFError, zipfile.BadZipFile):
        return None
    return Done(first, found, 0.0)
