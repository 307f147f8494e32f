"""Changes of a completed scenario in the keys that its user would write."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from planner.scenario.paths import Path, parts_of
from planner.scenario.scenario import Scenario

_SEGMENTS: Path = ("pipeline", "segments")
_SHORT_PIPES = ("riser_pipe", "pipe")
"""Keys of the short form for the pipe of each run that is found, as `planner.assumptions.pipes` fills them in."""


def own_keys(scenario: Scenario, changes: Mapping[str, Any]) -> dict[Path, Any]:
    """Put changes into keys that may stand beside those which the user gave.

    Parameters
    ----------
    scenario : Scenario
        As it is.
    changes : mapping
        Dotted keys, list entries from 1 as in 'pipeline.segments[2].pipe', and their new values; None takes one away.

    Returns
    -------
    dict
        The same by path. Where the runs of pipe are worked out from one length, pipes and the main's length stand at
        the short form's keys; the riser's length follows from the depth of the pump, a pressure class from the pipe.
    """
    paths = {parts_of(key): value for key, value in changes.items()}
    if all(assumption.path != _SEGMENTS for assumption in scenario.assumptions):
        return paths
    found: dict[Path, Any] = {}
    for path, value in paths.items():
        if path[:2] != _SEGMENTS:
            found[path] = value
        elif path[3:] == ("pipe",) and isinstance(path[2], int):
            found["pipeline", _SHORT_PIPES[path[2]]] = value
        elif path[2:] == (1, "length_m"):
            found["pipeline", "length_m"] = value
    return found
