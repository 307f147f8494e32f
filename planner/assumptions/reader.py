"""From a TOML file, or raw data, to a completed and checked scenario, every problem named by file, line and key."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import Any, get_args

from pydantic import ValidationError

from planner.assumptions.completed import completed, given_twice
from planner.scenario.errors import InputError, Problem, problems_of
from planner.scenario.paths import parts_of
from planner.scenario.reader import NO_LINES, Lines, merged, problem_at, read_with_lines
from planner.scenario.scenario import Scenario, option_name_of
from planner.scenario.walk import field_at
from planner.text import FIRST_LANGUAGE, in_language
from planner.text.numbers import Language

LANGUAGE = "language"


def read_scenario(path: Path, language: str | None = None) -> Scenario:
    """Read, complete and check a scenario file.

    Parameters
    ----------
    path : pathlib.Path
        The TOML file.
    language : str, optional
        Language of the answer, instead of the scenario's.

    Returns
    -------
    Scenario

    Raises
    ------
    InputError
        When the file cannot be read or anything in it is wrong; every problem found is named.
    """
    raw, lines = read_with_lines(path)
    return check_scenario(raw if language is None else {**raw, LANGUAGE: language}, str(path), lines)


def check_scenario(raw: dict[str, Any], file: str, lines: Lines = NO_LINES) -> Scenario:
    """Complete raw data as the user gave it and check it, the overrides of each option included.

    Parameters
    ----------
    raw : dict
        Data as read from a file.
    file : str
        Name of the file, for messages.
    lines : mapping
        Line of each key, for messages.
    """
    doubled = [problem_at(parts_of(key), words, lines) for key, words in given_twice(raw)]
    if not doubled:
        return scenario_of(raw, file, lines)
    try:
        scenario_of(raw, file, lines)
    except InputError as error:  # above all misspelt keys, of which a missing partner may be one
        doubled += [problem for problem in error.problems if not _is_worked_out(problem)]
    raise InputError(file, doubled)


def _is_worked_out(problem: Problem) -> bool:
    """Whether a problem is at a key that follows from others."""
    field = field_at(Scenario, parts_of(problem.key))
    return field is not None and bool(field.how)


def scenario_of(raw: dict[str, Any], file: str = "", lines: Lines = NO_LINES) -> Scenario:
    """Complete and check a scenario of which some keys were set beside what the user gave, as in a sweep."""
    scenario = _validated(raw, file, lines, ())
    for name in scenario.overrides:
        option_scenario(scenario, name, raw=raw, file=file, lines=lines)
    return scenario


def option_scenario(
    scenario: Scenario,
    option: str,
    *,
    raw: Mapping[str, Any] | None = None,
    file: str = "scenario",
    lines: Lines = NO_LINES,
) -> Scenario:
    """Return the scenario as it holds for one supply option: its overrides merged in, and what follows worked out."""
    override = next(
        (tables for name, tables in scenario.overrides.items() if option_name_of(name) == option_name_of(option)),
        None,
    )
    if override is None:
        return scenario
    base = dict(raw if raw is not None else scenario.given())
    base.pop("overrides", None)
    return _validated(merged(base, override), file, lines, ("overrides", option))


def _language_of(raw: Mapping[str, Any]) -> str:
    """Language that raw data ask for; English where they do not, or where it is none."""
    asked = raw.get(LANGUAGE)
    return next((code for code in get_args(Language) if code == asked), FIRST_LANGUAGE)


def _validated(raw: dict[str, Any], file: str, lines: Lines, prefix: tuple[str | int, ...]) -> Scenario:
    with in_language(_language_of(raw)):  # it says how what is left out was worked out
        whole, assumptions = completed(raw)
    try:
        return Scenario.model_validate(whole).resting_on(assumptions)
    except ValidationError as error:
        problems = [
            problem_at(prefix + found.path, found.text, lines, found.kind, found.keys)
            for found in problems_of(error, whole, Scenario)
        ]
        problems.sort(key=lambda problem: (problem.line is None, problem.file, problem.line or 0))
        raise InputError(file, problems) from error
