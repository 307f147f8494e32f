"""What is written in another language holds no English: terminal, brief, proposal and first page of the examples."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator
from functools import cache
from html import unescape
from importlib import import_module
from pathlib import Path
from typing import Any
from zipfile import ZipFile

import openpyxl
import pytest
from typer.testing import CliRunner

from planner import __version__
from planner.cli import app
from planner.scenario.scenario import Scenario
from planner.scenario.walk import walk_models
from planner.text import FIRST_LANGUAGE, languages
from planner.text.numbers import STYLES

WORD = re.compile(r"[^\W\d_]{4,}")
KEY = re.compile(r"\b[A-Z][a-z]+/[A-Z]\w+|\b[a-z]+(?:[._][a-z0-9_\[\]]+)+|--[a-z]+|\[[a-z_]+\]|https?://\S+")
"""Keys of scenarios, options of the command line and time zones, which stay as they are."""
SOURCES = re.compile(
    r"Making choices in health: WHO guide to cost-effectiveness analysis|Handbook for the Economic Analysis of Water "
    r"Supply Projects|Hicks, Handbook of Energy Engineering Calculations|NIST Handbook|Recommended Standards for Water "
    r"Works|Discounting costs and benefits in economic analysis of World Bank projects|awaits review by a native "
    r"speaker|This translation",
)
"""Titles of publications, and the English half of the note that asks for review."""
ENGLISH_NUMBER = re.compile(r"(?<![\w.,])(?:\d{1,3}(?:,\d{3})+|\d+\.\d{1,2})(?![\d.,]*\d)")
"""Thousands set apart by commas, or one or two decimals behind a point."""
SCENARIOS = ("hill-school", "visit")
OTHERS = [code for code in languages() if code != FIRST_LANGUAGE]


def words(*texts: str) -> set[str]:
    """Words of four letters and more, in small letters; what stands in braces is a slot."""
    return {word.lower() for text in texts for word in WORD.findall(re.sub(r"\{[^{}]*\}", " ", text))}


def vocabulary(code: str) -> set[str]:
    """All words of a language's package."""
    package = import_module(f"planner.text.{code}")
    texts = [*package.SENTENCES.values(), *(said for pair in package.FIGURES.values() for said in pair)]
    return words(*texts, *getattr(package, "MODEL_WORDS", {}).values())


@cache
def english_only(code: str) -> frozenset[str]:
    """English words of sentences, figures and models that the language does not have."""
    models = [
        said
        for field in walk_models(Scenario)
        for said in (field.description, field.unit, field.default_source, field.absent)
    ]
    return frozenset((vocabulary("en") | words(*models)) - vocabulary(code))


def strings_in(data: Any) -> Iterator[str]:
    """Texts that somebody entered."""
    if isinstance(data, str):
        yield data
    elif isinstance(data, dict):
        for value in data.values():
            yield from strings_in(value)
    elif isinstance(data, list):
        for value in data:
            yield from strings_in(value)


def english_in(text: str, code: str, scenario: str) -> list[str]:
    """English words of a rendered text that neither its language nor the scenario has."""
    entered = words(*strings_in(tomllib.loads(Path(f"scenarios/{scenario}.toml").read_text(encoding="utf-8"))))
    read = KEY.sub(" ", SOURCES.sub(" ", text))
    return sorted((words(read) & english_only(code)) - entered - {scenario.split("-")[0]})


def html_words(path: Path) -> str:
    """What a page says, its charts in words included."""
    page = re.sub(r"<style>.*?</style>", " ", path.read_text(encoding="utf-8"), flags=re.DOTALL)
    said = re.findall(r'(?:alt|aria-label|title)="([^"]*)"', page)
    return unescape(" ".join([re.sub(r"<[^<>]*>", " ", page), *said]))


def word_words(path: Path) -> str:
    """What a Word file says."""
    with ZipFile(path) as file:
        parts = [name for name in file.namelist() if re.fullmatch(r"word/(document|header\d*|footer\d*)\.xml", name)]
        return " ".join(
            unescape("".join(re.findall(r"<w:t(?: [^>]*)?>([^<]*)</w:t>", paragraph)))
            for name in parts
            for paragraph in re.split(r"</w:p>", file.read(name).decode("utf-8"))
        )


def sheet_words(path: Path, sheets: int) -> str:
    """What the first sheets of a workbook say."""
    book = openpyxl.load_workbook(path, data_only=True)
    cells = (cell for sheet in book.worksheets[:sheets] for row in sheet.iter_rows(values_only=True) for cell in row)
    return " ".join([*book.sheetnames, *(str(cell) for cell in cells if isinstance(cell, str))])


RUNS = [
    pytest.param((code, name), id=f"{code}-{name}", marks=[] if (code, name) == ("fr", "visit") else [pytest.mark.slow])
    for code in OTHERS
    for name in SCENARIOS
]


@pytest.fixture(scope="module", params=RUNS)
def rendered(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> tuple[str, str, Path, str]:
    """Language, scenario, folder of its outputs, and what the terminal said."""
    code, name = request.param
    folder = tmp_path_factory.mktemp(f"{code}-{name}")
    arguments = [f"scenarios/{name}.toml", "--language", code, "--outputs", str(folder)]
    run = CliRunner().invoke(app, ["run", *arguments, "--brief"])
    proposal = CliRunner().invoke(app, ["proposal", *arguments])
    assert (run.exit_code, proposal.exit_code) == (0, 0), f"{run.output}{proposal.output}"
    return code, name, folder, f"{run.output} {proposal.output}".replace(str(folder), " ")


def test_the_terminal_says_no_english(rendered: tuple[str, str, Path, str]) -> None:
    code, name, _, said = rendered
    assert english_in(said, code, name) == []


def test_the_brief_says_no_english(rendered: tuple[str, str, Path, str]) -> None:
    code, name, folder, _ = rendered
    page = folder / f"{name}.html"
    assert f'lang="{code}"' in page.read_text(encoding="utf-8")
    assert english_in(html_words(page), code, name) == []


def test_the_proposal_says_no_english(rendered: tuple[str, str, Path, str]) -> None:
    code, name, folder, _ = rendered
    assert english_in(word_words(folder / f"{name}-proposal.docx"), code, name) == []


def test_the_first_page_says_no_english(rendered: tuple[str, str, Path, str]) -> None:
    code, name, folder, _ = rendered
    assert english_in(sheet_words(folder / f"{name}.xlsx", 1), code, name) == []


def test_the_brief_has_no_number_in_the_style_of_english(rendered: tuple[str, str, Path, str]) -> None:
    code, name, folder, _ = rendered
    said = html_words(folder / f"{name}.html").replace(__version__, " ")
    assert [each for each in ENGLISH_NUMBER.findall(said) if STYLES[code].decimal == ","] == []


def test_every_output_says_that_the_translation_awaits_review(rendered: tuple[str, str, Path, str]) -> None:
    code, name, folder, said = rendered
    note = import_module(f"planner.text.{code}").SENTENCES["language.unreviewed"]
    outputs = {
        "terminal": said,
        "brief": html_words(folder / f"{name}.html"),
        "proposal": word_words(folder / f"{name}-proposal.docx"),
        "first page": sheet_words(folder / f"{name}.xlsx", 1),
    }
    assert [output for output, text in outputs.items() if note not in text] == []


def test_english_is_found() -> None:
    assert english_in("Le débit nominal; the flow that the borehole can give", "fr", "visit") != []
    assert english_in("Le débit nominal, [pumping_test], --verbose, pump.plate", "fr", "visit") == []
