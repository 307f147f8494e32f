"""The usual cautions stand where they apply, and each defers to local codes and licensed practice."""

from __future__ import annotations

import re

from planner.checks.safety import LOCAL, placed_cautions
from planner.checks.verdict import TOPICS
from tests.checks.sites import site

WORDS = {
    "cannot be switched off by day": "Array and controller",
    "Never unplug a DC connector": "Array and controller",
    "isolate every source (array, grid and generator)": "Array and controller",
    "capacitors to discharge, then prove dead": "Array and controller",
    "wet hands": "Array and controller",
    "Grid electricity at a borehole can kill": "AC side",
    "residual-current device must suit an electronic drive": "AC side",
    "exhaust kills": "AC side",
    "store fuel where": "AC side",
    "changeover switch": "AC side",
    "surge protection at the array, at the controller and at the wellhead": "Array and controller",
    "lift with tripod": "Borehole",
    "overhead lines": "Borehole",
    "the air can lack oxygen": "Borehole",
    "fall from roofs, ladders and tank towers": "Tank",
    "Children drown": "Tank",
    "Trench walls": "Pipeline",
    "fill slowly, bleed the air at the high points, then raise the pressure by steps": "Pipeline",
    "germs, arsenic, fluoride, nitrate and salinity tested before anyone drinks": "Water",
    "Clean, disinfect and flush borehole, pipes and tank first, then take samples": "Water",
    "Chlorine burns": "Water",
    "permit": "Borehole",
}


def test_each_caution_stands_at_its_topic_and_defers() -> None:
    found = placed_cautions(site())
    for words, topic in WORDS.items():
        said = [caution for caution in found if words in caution.text]
        assert [caution.topic for caution in said] == [topic], words
    for caution in found:
        assert any(words in caution.text for words in WORDS), caution.text
        assert caution.topic in TOPICS
        assert caution.text.endswith(LOCAL)
        assert not re.search(r"\bwells?\b|\bMains\b", caution.text), caution.text


def test_the_cautions_that_can_kill_come_first() -> None:
    topics = [caution.topic for caution in placed_cautions(site())]
    assert topics.index("Array and controller") == 0
    assert topics[-1] == "Borehole"


def test_only_what_is_there_is_warned_of() -> None:
    text = " ".join(caution.text for caution in placed_cautions(site({"sources.solar": None, "sources.grid": None})))
    assert "PV modules" not in text
    assert "DC connector" not in text
    assert "array" not in text
    assert "Grid electricity" not in text
    assert "isolate every source (generator)" in text
    assert "surge protection at the controller and at the wellhead" in text
    assert "exhaust" in text
    herd = [{"kind": "livestock", "name": "Goats", "count": 300, "litres_per_head_day": 5}]
    assert "nobody is to drink" in " ".join(c.text for c in placed_cautions(site({"demand.users": herd})))
