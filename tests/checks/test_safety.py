"""The usual cautions stand where they apply, and each defers to local codes and licensed practice."""

from __future__ import annotations

import re

from planner.checks.safety import Caution, people_drink, placed_cautions
from planner.checks.verdict import TOPICS
from planner.scenario.scenario import Scenario
from planner.sources.registry import SOLAR, SOURCES
from planner.text import text
from tests.checks.sites import site
from tests.sources.test_a_source_of_ones_own import Neighbour

WORDS = {
    "cannot be switched off by day": "array",
    "Never unplug a DC connector": "array",
    "isolate every source (array, grid and generator)": "array",
    "capacitors to discharge, then prove dead": "array",
    "wet hands": "array",
    "Grid electricity at a borehole can kill": "ac",
    "residual-current device must suit an electronic drive": "ac",
    "exhaust kills": "ac",
    "store fuel where": "ac",
    "changeover switch": "ac",
    "surge protection at the array, at the controller and at the wellhead": "array",
    "lift with tripod": "borehole",
    "overhead lines": "borehole",
    "the air can lack oxygen": "borehole",
    "fall from roofs, ladders and tank towers": "tank",
    "Children drown": "tank",
    "Trench walls": "pipeline",
    "fill slowly, bleed the air at the high points, then raise the pressure by steps": "pipeline",
    "germs, arsenic, fluoride, nitrate and salinity tested before anyone drinks": "water",
    "Clean, disinfect and flush borehole, pipes and tank first, then take samples": "water",
    "Chlorine burns": "water",
    "permit": "borehole",
}


def cautions_of(scenario: Scenario) -> tuple[Caution, ...]:
    """Cautions where every source is built that the scenario describes."""
    return placed_cautions([kind for kind in SOURCES if kind.described(scenario)], drinks=people_drink(scenario))


def test_each_caution_stands_at_its_topic_and_defers() -> None:
    found = cautions_of(site())
    for words, topic in WORDS.items():
        said = [caution for caution in found if words in caution.text]
        assert [caution.topic for caution in said] == [topic], words
    for caution in found:
        assert any(words in caution.text for words in WORDS), caution.text
        assert caution.topic in TOPICS
        assert caution.text.endswith(text("caution.local"))
        assert not re.search(r"\bwells?\b|\bMains\b", caution.text), caution.text


def test_the_cautions_that_can_kill_come_first() -> None:
    topics = [caution.topic for caution in cautions_of(site())]
    assert topics.index("array") == 0
    assert topics[-1] == "borehole"


def test_only_what_is_there_is_warned_of() -> None:
    said = " ".join(caution.text for caution in cautions_of(site({"sources.solar": None, "sources.grid": None})))
    assert "PV modules" not in said
    assert "DC connector" not in said
    assert "array" not in said
    assert "Grid electricity" not in said
    assert "isolate every source (generator)" in said
    assert "surge protection at the controller and at the wellhead" in said
    assert "exhaust" in said
    herd = [{"kind": "livestock", "name": "Goats", "count": 300, "litres_per_head_day": 5}]
    assert "nobody is to drink" in " ".join(c.text for c in cautions_of(site({"demand.users": herd})))


def test_a_source_of_ones_own_is_warned_of() -> None:
    found = placed_cautions((SOLAR, Neighbour()), drinks=True)
    (own,) = [caution for caution in found if "Electricity from neighbour at a borehole can kill" in caution.text]
    assert own.topic == "ac"
    assert "changeover" in own.words
    said = " ".join(caution.words for caution in found)
    assert "isolate every source (array and neighbour)" in said
    assert "residual-current device must suit" in said
    assert "Grid electricity" not in said


def test_what_two_sources_warn_of_is_said_once() -> None:
    words = [caution.words for caution in cautions_of(site())]
    assert len(words) == len(set(words))
    assert sum("residual-current device must suit" in each for each in words) == 1
