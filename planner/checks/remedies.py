"""Remedies as changes of the scenario, tried out before they are proposed."""

from __future__ import annotations

import functools
from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from typing import Any

from planner.assumptions.reader import scenario_of
from planner.checks.verdict import Verdict
from planner.scenario.errors import InputError
from planner.scenario.paths import parts_of, set_path
from planner.scenario.scenario import Scenario
from planner.text import text

MOST_STEPS = 4
"""Further remedies that one remedy may draw after it."""

Judge = Callable[[dict[str, Any]], Sequence[Verdict]]


def with_changes(scenario: Scenario, changes: Mapping[str, Any]) -> Scenario:
    """Return the scenario with a remedy carried out.

    Parameters
    ----------
    scenario : Scenario
        As it is.
    changes : mapping
        Dotted keys, list entries from 1 as in 'pipeline.segments[2].pipe', and their new values; None takes one away.

    Raises
    ------
    InputError
        If what comes out is no scenario.
    """
    paths = {parts_of(key): value for key, value in changes.items()}
    raw: Any = scenario.given(keep=paths)
    for path, value in paths.items():
        raw = set_path(raw, path, value)
    return scenario_of(raw)


def tried_out(verdicts: Sequence[Verdict], judge: Judge) -> tuple[Verdict, ...]:
    """Carry out each remedy on its own and check again; keep only what passes.

    A remedy that makes another check fail takes that one's remedy with it. Where no such chain ends well, the words say
    what would fail, and there are no changes to carry out.

    Parameters
    ----------
    verdicts : sequence of Verdict
        As judged, each with the changes that its own check asks for.
    judge : callable
        Checks the scenario again with some changes.
    """
    failing = {verdict.key for verdict in verdicts if verdict.outcome == "fail"}
    return tuple(
        _tried(verdict, failing - {verdict.key}, judge) if verdict.changes else verdict for verdict in verdicts
    )


def _tried(verdict: Verdict, failing: set[str], judge: Judge) -> Verdict:
    changes, words = dict(verdict.changes), [verdict.remedy]
    worse: list[Verdict] = []
    for _ in range(MOST_STEPS):
        try:
            after = judge(changes)
        except InputError:
            return replace(verdict, changes={})
        worse = [other for other in after if other.outcome == "fail" and other.key not in failing]
        if not worse:
            return replace(verdict, remedy=functools.reduce(_with, dict.fromkeys(words)), changes=changes)
        further = next((other for other in worse if other.changes and not changes.keys() & other.changes.keys()), None)
        if further is None:
            break
        changes |= further.changes
        words.append(further.remedy)
    first = next((other for other in worse if other.key != verdict.key), worse[0])
    remedy = text("remedy.not_alone", remedy=verdict.remedy, what=first.what, further=first.remedy)
    return replace(verdict, remedy=remedy, changes={})


def _with(first: str, further: str) -> str:
    return text("remedy.with", first=first, further=further)
