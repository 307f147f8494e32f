"""The usual cautions stand where they apply, and each defers to local codes and licensed practice."""

from __future__ import annotations

from planner.checks.safety import LOCAL, placed_cautions
from planner.checks.verdict import TOPICS
from tests.checks.sites import site

WORDS = {
    "cannot be switched off by day": "Array and controller",
    "Mains at a well": "AC side",
    "exhaust kills": "AC side",
    "Lightning": "Array and controller",
    "lift with tripod": "Borehole",
    "never with air": "Pipeline",
    "before anyone drinks": "Water",
    "permit": "Borehole",
}


def test_each_caution_stands_at_its_topic_and_defers() -> None:
    found = placed_cautions(site())
    assert len(found) == len(WORDS)
    for words, topic in WORDS.items():
        said = [caution for caution in found if words in caution.text]
        assert [caution.topic for caution in said] == [topic]
    for caution in found:
        assert caution.topic in TOPICS
        assert caution.text.endswith(LOCAL)


def test_only_what_is_there_is_warned_of() -> None:
    text = " ".join(caution.text for caution in placed_cautions(site({"sources.solar": None, "sources.grid": None})))
    assert "PV modules" not in text
    assert "Mains" not in text
    assert "exhaust" in text
    herd = [{"kind": "livestock", "name": "Goats", "count": 300, "litres_per_head_day": 5}]
    assert "nobody is to drink" in " ".join(c.text for c in placed_cautions(site({"demand.users": herd})))
