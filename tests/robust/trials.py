"""One trial of each kind: what came of it, and what is wrong with that."""

from __future__ import annotations

import json
import math
import random
import re
import resource as usage
import tempfile
import time
import zipfile
from collections.abc import Callable
from dataclasses import dataclass
from io import BytesIO
from pathlib import Path

import numpy as np

from planner.answers.of_study import study_verdicts
from planner.assumptions.reader import check_scenario
from planner.report.form.reading import check_form
from planner.report.form.sheets import write_form
from planner.report.json_file import study_as_data
from planner.resource.files import read_weather_file
from planner.resource.record import WeatherFileError
from planner.resource.sun import Place
from planner.scenario.errors import InputError, shown
from planner.study.compare import Study, study_scenario
from tests.robust.mutations import EXAMPLES, FOLDER, NASTY, example, extreme, mutated

LONGEST_MESSAGE = 300
MOST_SECONDS, MOST_BYTES = 30.0, 1e9
_CONTROL = re.compile("[\x00-\x08\x0b-\x1f\x7f-\x9f\u202a-\u202e]")
ROUNDING = 1e-6
PLACE = Place(14.2, 2.3, 240.0, 1.0)


@dataclass(frozen=True)
class Found:
    """What came of one trial: 'taken' or 'refused', and what is wrong, '' where nothing is."""

    what: str
    wrong: str = ""


def scenario_trial(seed: int) -> Found:
    """Check a mutated scenario."""
    data = mutated(seed)
    return _timed(lambda: check_scenario(data, "mutated.toml"))


def run_trial(seed: int) -> Found:
    """Run a scenario of extreme but valid numbers through, and look for nonsense."""
    data = extreme(seed)
    wrong: list[str] = []

    def run() -> None:
        study = study_scenario(check_scenario(data, "extreme.toml"), FOLDER)
        wrong.extend(nonsense(study))
        json.dumps(study_as_data(study, [], study_verdicts(study)), allow_nan=False)

    found = _timed(run)
    return found if found.wrong else Found(found.what, "; ".join(wrong[:2]))


def form_trial(seed: int) -> Found:
    """Read a form of a mutated scenario, or one whose parts are damaged."""
    draw = random.Random(seed)
    content = bytearray(_form())
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "form.xlsx"
        path.write_bytes(_damaged(draw, bytes(content)))
        return _timed(lambda: check_form(path))


def weather_trial(seed: int) -> Found:
    """Read a weather file with lines, cells or bytes that are wrong."""
    draw = random.Random(seed)
    words = (FOLDER / "dry-village-weather.csv").read_text(encoding="utf-8")
    suffix = draw.choice((".csv", ".epw", ".tm2", ".json"))
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / f"weather{suffix}"
        path.write_bytes(_broken(draw, words))
        return _timed(lambda: read_weather_file(path, PLACE), (WeatherFileError,))


def nonsense(study: Study) -> list[str]:
    """Say what cannot be: numbers that are none, water or energy from nowhere."""
    wrong = []
    for option in study.options:
        outcome = option.outcome
        for name in ("demand_m3", "delivered_m3", "solar_kwh", "idle_kwh", "grid_kwh", "generator_kwh", "fuel_l"):
            values = np.asarray(getattr(outcome, name))
            if not np.isfinite(values).all():
                wrong.append(f"{option.name}: {name} is no number")
            elif values.min(initial=0.0) < -ROUNDING * max(1.0, float(np.abs(values).max(initial=0.0))):
                wrong.append(f"{option.name}: {name} is negative: {values.min():g}")
        if (outcome.delivered_m3 > outcome.demand_m3 * (1 + ROUNDING) + ROUNDING).any():
            wrong.append(f"{option.name}: more is delivered than asked for")
        if not math.isfinite(float(option.life.present_cost)):
            wrong.append(f"{option.name}: the cost is no number")
    return wrong


def _timed(trial: Callable[[], object], refusals: tuple[type[Exception], ...] = (InputError,)) -> Found:
    began = time.process_time()
    try:
        trial()
        found = Found("taken")
    except refusals as error:
        lines = _without_keys(error) if isinstance(error, InputError) else [str(error)]
        found = Found("refused", _ill_said(lines))
    except Exception as error:  # whatever else comes is what is looked for
        found = Found("traceback", f"{type(error).__name__}: {str(error)[:200]}")
    seconds = time.process_time() - began
    if seconds > MOST_SECONDS:
        return Found(found.what, f"took {seconds:.0f} s")
    if usage.getrusage(usage.RUSAGE_SELF).ru_maxrss * 1024 > MOST_BYTES:
        return Found(found.what, "took over 1 GB")
    return found


def _without_keys(error: InputError) -> list[str]:
    """Messages as they are printed, without the file and the key before them."""
    messages = []
    for problem, line in zip(error.problems, error.lines(), strict=True):
        key = shown(problem.key, LONGEST_MESSAGE, quoted=False)
        messages.append(line.partition(f"{key}: " if key else ": ")[2])
    return messages


def _ill_said(lines: list[str]) -> str:
    for line in lines:
        if len(line) > LONGEST_MESSAGE:
            return f"a message of {len(line)} characters: {line[:80]}"
        if _CONTROL.search(line):
            return f"a message that steers a terminal: {line[:80]!r}"
    return "" if lines and any(line.strip() for line in lines) else "no message"


_FORM: list[bytes] = []


def _form() -> bytes:
    if not _FORM:
        with tempfile.TemporaryDirectory() as folder:
            path = Path(folder) / "form.xlsx"
            write_form(path, example(EXAMPLES[0]))
            _FORM.append(path.read_bytes())
    return _FORM[0]


def _damaged(draw: random.Random, content: bytes) -> bytes:
    """Break a workbook: cut it, change bytes of it, or type something else into one of its cells."""
    if draw.random() < 0.2:
        return content[: draw.randrange(len(content))]
    if draw.random() < 0.2:
        broken = bytearray(content)
        for _ in range(draw.randint(1, 20)):
            broken[draw.randrange(len(broken))] = draw.randrange(256)
        return bytes(broken)
    made = BytesIO()
    with zipfile.ZipFile(BytesIO(content)) as archive, zipfile.ZipFile(made, "w", zipfile.ZIP_DEFLATED) as other:
        sheets = [name for name in archive.namelist() if "worksheets/sheet" in name]
        target = draw.choice(sheets)
        for name in archive.namelist():
            part = archive.read(name)
            other.writestr(name, _typed(draw, part.decode()).encode() if name == target else part)
    return made.getvalue()


def _typed(draw: random.Random, text: str) -> str:
    cells = list(re.finditer(r'<c r="[A-R]\d+"[^>]*?(?:/>|>.*?</c>)', text))
    for cell in sorted(draw.sample(cells, min(len(cells), draw.randint(1, 5))), key=lambda found: -found.start()):
        start = re.match(r'<c r="[A-Z]+\d+"( s="\d+")?', cell[0])
        value = str(draw.choice([each for each in NASTY if isinstance(each, str | int | float)]))
        clean = "".join(sign for sign in value if sign.isprintable()).replace("&", "&amp;").replace("<", "&lt;")
        kind = draw.choice(("inlineStr", "n", "b", "e", "d"))
        inner = f"<is><t>{clean}</t></is>" if kind == "inlineStr" else f"<v>{clean}</v>"
        assert start is not None
        text = text[: cell.start()] + f'{start[0]} t="{kind}">{inner}</c>' + text[cell.end() :]
    return text


def _broken(draw: random.Random, words: str) -> bytes:
    lines = words.split("\n")
    for _ in range(draw.randint(1, 6)):
        place = draw.randrange(len(lines))
        lines[place] = draw.choice((
            "", lines[place] * 2, lines[place].replace(".", ","), lines[place].replace(",", ";"), "nan,nan,nan",
            ",".join(["9" * 400] * 5), "\x00\x1b[31m", lines[draw.randrange(len(lines))],
            lines[place][: len(lines[place]) // 2], "-1e308," * 4, "بئر",
        ))  # fmt: skip
    if draw.random() < 0.2:
        draw.shuffle(lines)
    if draw.random() < 0.2:
        lines = lines[: draw.randrange(len(lines))]
    encoding = draw.choice(("utf-8", "utf-8", "utf-16", "latin-1", "utf-8-sig"))
    return "\n".join(lines).encode(encoding, errors="replace")
