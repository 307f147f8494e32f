"""Remedies as changes of the scenario: tried out before they are proposed, and carried out together."""

from __future__ import annotations

import functools
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any

from planner.assumptions.own_keys import own_keys
from planner.assumptions.reader import scenario_of
from planner.checks.verdict import Verdict, failed
from planner.scenario.errors import InputError
from planner.scenario.paths import Path, with_values
from planner.scenario.scenario import Scenario
from planner.text import text

MOST_STEPS = 4
"""Further remedies that one remedy may draw after it."""

MOST_REMEDIES = 30
"""Remedies that are carried out together; each leaves fewer checks that fail."""

Judge = Callable[[dict[str, Any]], Sequence[Verdict]]


def with_changes(scenario: Scenario, changes: Mapping[str, Any]) -> Scenario:
    """Return the scenario with a remedy carried out.

    Parameters
    ----------
    scenario : Scenario
        As it is.
    changes : mapping
        Dotted keys, list entries from 1 as in 'pipeline.segments[2].pipe', and their new values; None takes one away.

    Returns
    -------
    Scenario
        What its user gave with the changes, completed anew.

    Raises
    ------
    InputError
        If what comes out is no scenario.
    """
    own = own_keys(scenario, changes)
    return scenario_of(with_values(scenario.given(keep=own), own))


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


@dataclass(frozen=True)
class CarriedOut:
    """A scenario with the remedies of its failed checks.

    Attributes
    ----------
    before, scenario : Scenario
        Without the remedies, and with them.
    remedied : tuple of Verdict
        The failed verdicts whose remedies were carried out, in that order.
    changes : dict
        What they come to, by path of the key as its user would write it; None takes a key away.
    verdicts : tuple of Verdict
        What the checks say of it now. A check that still fails has a remedy that cannot be computed.
    """

    before: Scenario
    scenario: Scenario
    remedied: tuple[Verdict, ...]
    changes: dict[Path, Any]
    verdicts: tuple[Verdict, ...]


def carried_out(
    scenario: Scenario, verdicts: Sequence[Verdict], judge: Callable[[Scenario], Sequence[Verdict]]
) -> CarriedOut:
    """Carry out the remedies of failed checks one after another, judging anew after each.

    As no remedy lets a check fail that passed, a later one that sets the same key keeps what the earlier one mended.

    Parameters
    ----------
    scenario : Scenario
        As it is.
    verdicts : sequence of Verdict
        What the checks say of it, their remedies tried out.
    judge : callable
        Checks another scenario in the same way.
    """
    before, remedied = scenario, list[Verdict]()
    changes: dict[Path, Any] = {}
    for _ in range(MOST_REMEDIES):
        first = next((verdict for verdict in failed(verdicts) if verdict.changes), None)
        if first is None:
            break
        changes |= own_keys(scenario, first.changes)
        scenario = with_changes(scenario, first.changes)
        remedied.append(first)
        verdicts = judge(scenario)
    return CarriedOut(before, scenario, tuple(remedied), changes, tuple(verdicts))
