"""Complete a short scenario: every topic in turn, each building on those before it."""

from __future__ import annotations

from typing import Any

from planner.assumptions import cables, generator, pipes, place, prices, pump, solar, tank, works
from planner.assumptions.draft import Draft
from planner.scenario.assumption import Assumption

TOPICS = (place, works, pump, pipes, solar, cables, generator, tank, prices)


def completed(raw: dict[str, Any]) -> tuple[dict[str, Any], tuple[Assumption, ...]]:
    """Fill in what a scenario leaves out and can be worked out.

    Parameters
    ----------
    raw : dict
        Data as read from a file, unchecked; left as it is.

    Returns
    -------
    dict
        The data with what was worked out. Where something needed for that is missing or wrong, the key stays out.
    tuple of Assumption
        What was filled in, and how.
    """
    draft = Draft(raw)
    for topic in TOPICS:
        topic.complete(draft)
    return draft.raw, tuple(draft.assumptions)


def given_twice(raw: dict[str, Any]) -> list[tuple[str, str]]:
    """Find keys that are given beside those which are worked out from them: (key, what is wrong)."""
    draft = Draft(raw)
    found = []
    for short, long in (
        ("borehole.test_flow_m3h", "borehole.specific_capacity_m3h_per_m"),
        ("borehole.test_flow_m3h", "borehole.step_test"),
        ("pipeline.length_m", "pipeline.segments"),
        ("pipeline.pipe", "pipeline.segments"),
        ("pipeline.riser_pipe", "pipeline.segments"),
    ):
        if draft.get(short) is not None and draft.get(long):
            found.append((short, f"is given beside {long}, which stands for the same; leave one of them out"))
    pair = ("borehole.test_flow_m3h", "borehole.drawdown_m")
    for here, other in (pair, pair[::-1]):
        if draft.get(here) is not None and draft.get(other) is None:
            found.append((here, f"says nothing without {other}; give both"))
    return found
