"""What checks and cautions say is in the texts of a language, as wholes, and follows the language in use."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from importlib import import_module
from pathlib import Path
from pkgutil import iter_modules
from types import SimpleNamespace
from typing import Any

import pytest

import planner.text
from planner.answers.cautions import cautions
from planner.answers.of_study import headline, not_to_build, study_verdicts
from planner.checks.safety import placed_cautions
from planner.checks.verdict import TOPICS, Verdict, reserve, room
from planner.sources.registry import SOURCES
from planner.text import en, known, listed, text
from tests.checks.sites import checked, site
from tests.study.scenarios import studied

WORKS = {"head", "borehole", "pipeline", "tank", "water"}
STRINGS = {"array_current", "string_over_current", "power_ratio"}
FAULTS: list[dict[str, Any]] = [
    {},
    {"sources.solar.strings": "auto", "tank.volume_m3": "auto"},
    {"pipeline.profile": [], "tank.outlet_height_m": None, "borehole.daily_limit_m3": None},
    {"borehole.screen_top_m": None, "borehole.depth_m": None, "borehole.casing_inner_diameter_mm": None},
    {"pump.plate.minimum_submergence_m": 42, "borehole.safe_yield_m3h": 4.5, "tank.volume_m3": 1},
    {"borehole.pump_depth_m": 52, "borehole.specific_capacity_m3h_per_m": 1.0, "tank.outlet_height_m": -3},
    {"pump.rated_head_m": 50, "borehole.screen_top_m": 60, "demand.users.0.litres_per_person_day": 10},
    {"pipeline.segments.1.pipe": "PE100 SDR17 40", "pipeline.stop_time_s": 3.0, "pipeline.profile.1.level_m": 25},
    {"borehole.water_temperature_c": 42, "demand.users.0.count": 4000, "borehole.flow_sleeve_diameter_mm": 120},
    {"controller.dc_current_max_a": 10, "sources.solar.strings": 6, "controller.power_limit_w": 900},
]


class _Marked(dict[str, str]):
    """A language in which each sentence stands between marks."""

    def __getitem__(self, key: str) -> str:
        return f"<{en.SENTENCES[key]}>"

    def __contains__(self, key: object) -> bool:
        return key in en.SENTENCES


@pytest.fixture
def marked(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(planner.text, "_module", lambda: SimpleNamespace(SENTENCES=_Marked()))


def outside(sentence: str) -> str:
    """Give what of a sentence stands outside all marks, which no text of the language holds."""
    depth, found = 0, ""
    for letter in sentence:
        depth -= letter == ">"
        found += letter if depth == 0 and letter != ">" else ""
        depth += letter == "<"
    return found.replace("<", "")


def said_by(verdict: Verdict) -> Iterator[str]:
    yield from (verdict.compared, verdict.why, verdict.remedy, verdict.source, verdict.what, verdict.topic_label)


@pytest.mark.parametrize("faults", FAULTS, ids=lambda faults: next(iter(faults), "none"))
@pytest.mark.usefixtures("marked")
def test_every_word_of_a_check_follows_the_language(faults: dict[str, Any]) -> None:
    found = [verdict for verdict in checked(site(faults)).values() if verdict.topic in WORKS or verdict.key in STRINGS]
    assert len({verdict.topic for verdict in found}) == len(WORKS) + 1
    for verdict in found:
        for sentence in said_by(verdict):
            assert outside(sentence).strip("; ") == "", (verdict.key, sentence)
        assert not verdict.margin or verdict.margin.startswith("<"), verdict.margin


@pytest.mark.usefixtures("marked")
def test_every_word_of_the_cautions_follows_the_language() -> None:
    assert all(outside(caution.text) == "" for caution in placed_cautions(SOURCES, drinks=True))
    study = studied(finance__analysis_period_years=2, tank__volume_m3=30.0, sources__solar__strings=2, pump__price=None)
    found = [sentence for sentence in cautions(study) if sentence not in study.weather.notes]
    assert any("No price was entered" in sentence for sentence in found)
    assert all(outside(sentence) == "" for sentence in found), found
    assert outside(headline(study, study_verdicts(study))) == ""


@pytest.mark.usefixtures("marked")
def test_margins_follow_the_language() -> None:
    assert room(6.0, 5.0, "%") == "<1 <percentage points> above the limit>"
    assert reserve(5.0, 5.0, "m") == "<at the limit>"


def test_every_check_and_topic_has_its_words() -> None:
    for verdict in checked(site()).values():
        assert known(f"check.{verdict.key}.what"), verdict.key
        assert known(f"topic_inside.{verdict.topic}"), verdict.topic
    assert [text(f"topic.{topic}") for topic in TOPICS][5:7] == ["Array and controller", "AC side"]


def test_a_check_that_the_texts_do_not_name_is_named_by_what_it_compares() -> None:
    own = Verdict("water", "of_a_neighbour", "Water of the neighbour", "fail", 1.0, 2.0, "m3", "", "", "", "")
    assert own.what == "Water of the neighbour"
    assert not_to_build([own]) == (
        "Not to be built as it is: one site check fails (water: Water of the neighbour); see the checks for the "
        "remedies."
    )
    some = not_to_build([own] * 6)
    assert some.count("Water of the neighbour") == 4
    assert "6 site checks fail" in some
    assert "and 2 more)" in some


def test_things_are_listed_as_the_language_does() -> None:
    assert [listed(items) for items in ([], ["a"], ["a", "b"], ["a", "b", "c"])] == ["", "a", "a and b", "a, b and c"]


def test_no_sentence_is_written_twice() -> None:
    keys = [
        key.value
        for file in Path(en.__file__).parent.glob("*.py")
        for node in ast.walk(ast.parse(file.read_text(encoding="utf-8")))
        if isinstance(node, ast.AnnAssign)
        and ast.unparse(node.target) == "SENTENCES"
        and isinstance(node.value, ast.Dict)
        for key in node.value.keys
        if isinstance(key, ast.Constant)
    ]
    assert sorted(set(keys)) == sorted(keys)
    modules = [import_module(f"{en.__name__}.{module.name}") for module in iter_modules(en.__path__)]
    assert sum(len(getattr(module, "SENTENCES", {})) for module in modules) == len(en.SENTENCES)
    assert set(keys) <= set(en.SENTENCES)
