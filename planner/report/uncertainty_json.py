"""How sure an answer is, as plain data for the JSON."""

from __future__ import annotations

import math
from typing import Any

from planner.answers.uncertainty import uncertainty_sentences
from planner.study.close_call import CloseCall
from planner.study.compare import Study
from planner.study.switching_values import SwitchingValue, Turn


def uncertainty_data(study: Study) -> dict[str, Any] | None:
    """Return what is uncertain about an answer as dictionaries, lists, numbers, texts and None.

    Parameters
    ----------
    study : Study
        The finished comparison.

    Returns
    -------
    dict or None
        None where that was not asked for.
    """
    found = study.uncertainty
    if found is None:
        return None
    return {
        "sentences": uncertainty_sentences(study),
        "switching": [_switching(each) for each in found.switching],
        "close_call": None if found.call is None else _call(found.call),
    }


def _switching(found: SwitchingValue) -> dict[str, Any]:
    varied = found.varied
    return {
        "input": varied.name,
        "key": varied.key,
        "unit": varied.unit,
        "value": varied.base,
        "tried": [varied.values[0], varied.values[-1]],
        "below": _turn(found.below),
        "above": _turn(found.above),
    }


def _turn(turn: Turn | None) -> dict[str, Any] | None:
    if turn is None:
        return None
    return {"value": turn.value, "first": turn.first, "meets_target": turn.meets, "first_misses_target": turn.misses}


def _call(call: CloseCall) -> dict[str, Any]:
    return {
        "first": call.first,
        "second": call.second or None,
        "gap_percent": call.gap_percent if math.isfinite(call.gap_percent) else None,
        "changes": call.changes,
        "order_turns": call.turned,
        "close": call.close,
        "too_close_to_call": call.too_close,
    }
