"""The brief: whole in itself, small, safe against any name, said in full, and in order."""

from __future__ import annotations

import re
from collections import Counter
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

from planner.answers.cautions import number_cautions, safety_cautions
from planner.answers.decision import Decision, decision
from planner.answers.of_study import study_verdicts
from planner.checks.safety import people_drink
from planner.checks.verdict import Verdict
from planner.report.brief.contents import brief_report, is_long
from planner.report.brief.file import write_brief
from planner.report.brief.page import html_text
from planner.report.document import Page, Report, Text
from planner.study.compare import Study, study_scenario
from planner.study.hours import option_hours
from planner.text import in_language, languages, text
from tests.report.brief.reading import Element, read
from tests.study.scenarios import EXAMPLES, studied
from tests.study.visits import visit, visit_raw

MOST_BYTES = 150_000
NAME = "\u0642\u0631\u064a\u0629 <b>\"school\"</b> & ]]> 'clinic' \u202e<script>alert(1)</script>"
PLACE = '"><img src=x onerror=alert(1)> \u0628\u0626\u0631 &lt; \u0007'
OWNER = "</p><style>*{display:none}</style>"
PRICED: dict[str, Any] = {
    "name": NAME,
    "site__place": PLACE,
    "prepared_by": OWNER,
    "finance__analysis_period_years": 3,
    "service__options": ["solar", "grid", "solar + grid"],
    "sources__solar__modules_in_series": 24,  # more than the controller bears
}
LEAST_POINTS = 7.5


@dataclass
class Made:
    """A study and its brief."""

    study: Study
    verdicts: tuple[Verdict, ...]
    decided: Decision
    path: Path

    @property
    def page(self) -> str:
        return self.path.read_text(encoding="utf-8")

    @property
    def read(self) -> Element:
        return read(self.page)

    def section(self, key: str) -> Element:
        (found,) = (element for element in self.read.all("section") if element.attributes["id"] == key)
        return found


@pytest.fixture(scope="module", params=["priced", "technical"])
def made(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> Made:
    grid = {"solar": {}, "grid": {"outages": {"hours_per_day": 9, "mean_duration_h": 3}}}
    study = studied(**PRICED) if request.param == "priced" else study_scenario(visit(sources=grid, name=NAME), EXAMPLES)
    path = tmp_path_factory.mktemp("brief") / "brief.html"
    verdicts = study_verdicts(study)
    write_brief(study, path, verdicts)
    return Made(study, verdicts, decision(study, verdicts), path)


def test_it_is_small_has_no_script_and_fetches_nothing(made: Made) -> None:
    assert made.path.stat().st_size < MOST_BYTES
    page = made.read
    inside = {element.attributes["id"] for element in page.all() if "id" in element.attributes}
    for element in page.all():
        assert element.tag not in ("script", "link", "img", "image", "iframe", "object", "embed", "base", "form", "use")
        for name, value in element.attributes.items():
            assert name not in ("src", "srcset", "href", "xlink:href", "action", "style", "http-equiv"), element.tag
            assert not name.startswith("on")
            for target in re.findall(r"url\(([^)]*)\)", value):
                assert target.startswith("#")
                assert target[1:] in inside
    (sheet,) = page.one("style").inside
    assert isinstance(sheet, str)
    assert not re.search(r"url\(|@import|https?:|//", sheet)


def test_names_stand_as_they_are_and_never_as_tags(made: Made) -> None:
    shown = " ".join(NAME.replace("\u202e", " ").split())
    assert made.read.one("head").one("title").text == shown
    assert made.read.one("h1").text == shown
    assert "\u202e" not in made.page
    assert "\u0007" not in made.page
    if made.study.scenario.priced:
        assert " ".join(PLACE.replace("\u0007", " ").split()) in made.section("head").text
        assert OWNER in made.section("facts").text
    assert len(made.read.all("style")) == 1


def test_identities_are_unique_and_the_language_is_said(made: Made) -> None:
    counts = Counter(element.attributes["id"] for element in made.read.all() if "id" in element.attributes)
    assert set(counts.values()) == {1}
    assert made.read.one("html").attributes["lang"] == "en"


@pytest.mark.parametrize("code", languages())
def test_the_language_in_use_is_that_of_the_page(code: str, tmp_path: Path) -> None:
    study = study_scenario(visit(), EXAMPLES)
    with in_language(code):
        write_brief(study, tmp_path / "brief.html", study_verdicts(study))
    page = read((tmp_path / "brief.html").read_text(encoding="utf-8"))
    assert page.one("html").attributes["lang"] == code
    with in_language(code):
        assert text("caution.local") in page.text


def test_every_chart_has_its_title_and_what_it_shows_in_words(made: Made) -> None:
    drawn = [figure.all("svg")[0] for figure in made.read.all("figure")]
    assert len(drawn) == (3 if made.study.scenario.priced else 2)
    for svg in drawn:
        assert svg.attributes["role"] == "img"
        title, words = svg.one("title"), svg.one("desc")
        assert svg.attributes["aria-labelledby"].split() == [title.attributes["id"], words.attributes["id"]]
        assert title.text
        assert len(words.text) > len(title.text)
    others = [svg for svg in made.read.all("svg") if svg.parent is not None and svg.parent.tag != "figure"]
    assert all(svg.attributes["aria-hidden"] == "true" for svg in others)


def test_the_verdict_comes_first_and_its_conditions_stand_with_it(made: Made) -> None:
    sections = [section.attributes["id"] for section in made.read.all("section")]
    assert sections[:2] == ["head", "verdict"]
    assert sections[-1] == "cautions"
    band = made.section("verdict").text
    assert made.decided.verdict in band
    assert made.decided.conditions
    assert all(sentence in band for sentence in made.decided.conditions)
    assert all(number.value_text in made.section("large").text for number in made.decided.large)


def test_every_option_stands_with_every_figure_under_its_heading(made: Made) -> None:
    table = made.section("options").one("table")
    headings = [heading.text for heading in table.all("th")]
    assert headings == list(made.decided.options.headings.values())
    rows = table.one("tbody").all("tr")
    assert len(rows) == len(made.study.options)
    for row, option in zip(rows, made.decided.options.rows, strict=True):
        cells = row.all("td")
        assert [cell.text for cell in cells] == list(option.texts.values())
        assert [cell.attributes["data-label"] for cell in cells] == headings
        assert ("best" in row.attributes["class"]) == option.best


def test_what_fails_stands_with_its_remedy_and_what_holds_does_not(made: Made) -> None:
    facts = made.section("facts").text
    for verdict in made.verdicts:
        fails = verdict.outcome == "fail"
        assert (" ".join(verdict.compared.split()) in facts) == fails
        assert not fails or " ".join(verdict.remedy.split()) in facts
    assert any(verdict.outcome == "fail" for verdict in made.verdicts) == made.study.scenario.priced
    assert (text("brief.none_failed") in facts) != made.study.scenario.priced


def test_every_caution_is_said_once_and_local_codes_come_first_once(made: Made) -> None:
    study = made.study
    said = [paragraph.text for paragraph in made.section("cautions").all("p")]
    wanted = [*safety_cautions(study.sources, drinks=people_drink(study.scenario)), *number_cautions(study)]
    assert said == [text("caution.local"), *(" ".join(caution.split()) for caution in wanted)]
    assert made.read.text.count(text("caution.local")) == 1
    assert len(wanted) > 15


def test_nothing_speaks_of_a_sheet_of_the_workbook(made: Made) -> None:
    sheets = [text(f"page.{key}") for key in ("inputs", "method", "options", "checks", "tank", "form")]
    assert not [sheet for sheet in sheets if f"'{sheet}'" in made.read.text]
    assert not re.search(r"\bsheets?\b|\bworkbook\b", made.read.text)


def test_letters_on_paper_are_large_enough(made: Made) -> None:
    (sheet,) = made.read.one("style").inside
    assert isinstance(sheet, str)
    paper = sheet[sheet.index("@media print") :]
    points = [float(size) for size in re.findall(r"font-size: ([\d.]+)pt", paper)]
    assert len(points) > 5
    assert min(points) >= LEAST_POINTS
    assert not re.search(r"font-size: [\d.]+(?:px|em|rem|%)", paper)


def test_where_it_is_long_its_cautions_run_on() -> None:
    def report(key: str, letters: int) -> Report:
        return Report("any", (Page(key, "", "", blocks=(Text("a" * letters),)),))

    assert is_long(report("cautions", 8000))
    assert not is_long(report("cautions", 4000))
    assert not is_long(report("shown", 8000))  # what charts show takes no room of its own
    assert read(html_text(report("cautions", 1), ("cautions",), "en", dense=True)).all("body")[0].attributes["class"]
    assert not read(html_text(report("cautions", 1), ("cautions",), "en")).all("body")[0].attributes


def test_a_place_that_is_called_as_the_project_is_stands_once() -> None:
    site = visit_raw()["site"]
    named, unnamed = (
        study_scenario(visit(site=site | given, service={"options": ["solar"]}), EXAMPLES)
        for given in ({"place": "Ford (invented)"}, {})
    )
    said = [_front(study) for study in (named, unnamed)]
    assert "Ford (invented). Serves" in said[0]
    assert unnamed.scenario.name not in said[1]
    assert said[1].startswith("Serves")


def _front(study: Study) -> str:
    verdicts = study_verdicts(study)
    hours = option_hours(study, study.ranked[0].name)
    return brief_report(study, decision(study, verdicts), verdicts, hours).pages[0].under
