"""The brief in a browser: no overflow on a phone or a screen, nothing asked for, one sheet of paper."""

from __future__ import annotations

import json
import re
import shutil
import subprocess
from html import unescape
from pathlib import Path

import pytest

from planner.answers.of_study import study_verdicts
from planner.commands.reading import read_with_seed
from planner.report.brief.file import write_brief
from planner.study.compare import study_scenario
from tests.report.brief.test_brief import PRICED
from tests.study.scenarios import EXAMPLES, studied

BROWSER = next(filter(None, map(shutil.which, ("chromium", "chromium-browser", "google-chrome"))), None)
NAMES = ("hill-school", "dairy-farm", "dry-village", "market-garden", "visit")
WIDTHS = (360, 800)
MEASURE = """<script>addEventListener("load", () => {
  const hidden = element => element.closest("thead") || element.closest("defs");
  const beyond = [...document.body.querySelectorAll("*")].filter(
    element => !hidden(element) && element.getBoundingClientRect().right > innerWidth + 0.5);
  const sizes = [...document.querySelectorAll("figure > svg")].map(
    svg => 11 * svg.getBoundingClientRect().width / svg.viewBox.baseVal.width);
  parent.postMessage(JSON.stringify({
    width: innerWidth, scrolls: document.documentElement.scrollWidth, beyond: beyond.map(element => element.outerHTML),
    asked: performance.getEntriesByType("resource").map(entry => entry.name), letters: sizes}), "*");
});</script></body>"""
FRAME = """<!doctype html><title></title><iframe src="{page}" style="width:{width}px;height:800px;border:0"></iframe>
<script>addEventListener("message", event => {{ document.title = event.data; }});</script>"""
"""A window of a browser has a least width of its own, so the page stands in a frame of the width that is asked."""

pytestmark = [pytest.mark.slow, pytest.mark.skipif(BROWSER is None, reason="no Chromium here")]


@pytest.fixture(scope="module", params=[*NAMES, "faulty"])
def brief(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> Path:
    path: Path = tmp_path_factory.mktemp("browser") / f"{request.param}.html"
    if request.param == "faulty":
        study = studied(**PRICED)
    else:
        scenario = read_with_seed(EXAMPLES / f"{request.param}.toml", None)
        study = study_scenario(scenario, EXAMPLES, with_effects=True)
    write_brief(study, path, study_verdicts(study))
    return path


def browse(folder: Path, *arguments: str) -> str:
    """Run the browser without a window, and return what it prints."""
    assert BROWSER is not None
    command = [
        BROWSER, "--headless", "--no-sandbox", "--disable-gpu", "--hide-scrollbars",
        f"--user-data-dir={folder}/profile", "--virtual-time-budget=5000", *arguments,
    ]  # fmt: skip
    return subprocess.run(command, capture_output=True, text=True, timeout=120, check=True).stdout


@pytest.mark.parametrize("width", WIDTHS)
def test_nothing_lies_beyond_the_screen_and_nothing_is_asked_for(brief: Path, width: int, tmp_path: Path) -> None:
    page = brief.read_text(encoding="utf-8")
    copy = tmp_path / "page.html"
    copy.write_text(page.replace("</body>", MEASURE), encoding="utf-8")
    frame = tmp_path / "frame.html"
    frame.write_text(FRAME.format(page=copy.name, width=width), encoding="utf-8")
    title = re.search("<title>(.*?)</title>", browse(tmp_path, "--dump-dom", frame.as_uri()), re.DOTALL)
    assert title is not None
    found = json.loads(unescape(title[1]))
    assert found["width"] == width
    assert found["scrolls"] <= width
    assert found["beyond"] == []
    assert found["asked"] == []
    assert min(found["letters"]) >= (14 if width == 360 else 10)  # pixels


def test_it_prints_on_one_sheet(brief: Path, tmp_path: Path) -> None:
    paper = tmp_path / "brief.pdf"
    browse(tmp_path, "--no-pdf-header-footer", f"--print-to-pdf={paper}", brief.as_uri())
    data = paper.read_bytes()
    sheets = len(re.findall(rb"/Type\s*/Page\b(?!s)", data))
    # with every check that fails laid out, the cautions have a sheet to themselves
    assert sheets == (2 if brief.stem == "faulty" else 1)
    corners = re.findall(rb"/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\]", data)
    assert {(round(float(width)), round(float(height))) for width, height in corners} == {(595, 842)}  # A4 in points
