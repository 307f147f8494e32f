"""Whether the specific capacity may have been typed upside down, as metres of drawdown per m3/h."""

from __future__ import annotations

from planner.checks.basis import Basis
from planner.checks.cooling import TOPIC
from planner.checks.verdict import Verdict, at_least, at_most, reserve, room
from planner.text import text

LEAST_SHARE = 0.05
"""Share of the water above the intake that the safe yield seldom leaves untouched: assumed, common practice."""


def specific_capacity(basis: Basis) -> list[Verdict]:
    """Judge a specific capacity by the drawdown at the safe yield, against that of its inverse; nothing of a step test.

    It is doubted only where its inverse makes sense and it does not: next to no drawdown though the yield is given as
    the most that the borehole bears, or more drawdown than there is water above the intake.
    """
    borehole = basis.scenario.borehole
    given = borehole.specific_capacity_m3h_per_m
    if given is None:
        return []
    there_m = borehole.pump_depth_m - basis.static_level_m
    drawdown_m, inverse_m = borehole.safe_yield_m3h / given, borehole.safe_yield_m3h * given
    least_m = LEAST_SHARE * there_m
    hardly = not at_least(drawdown_m, least_m) and at_least(inverse_m, least_m) and at_most(inverse_m, there_m)
    beyond = not at_most(drawdown_m, there_m) and at_most(inverse_m, there_m)
    return [
        Verdict(
            TOPIC,
            "specific_capacity",
            text("check.specific_capacity.compared", given=given, flow=borehole.safe_yield_m3h, there_m=there_m),
            "caution" if hardly or beyond else "pass",
            drawdown_m,
            there_m if beyond else least_m,
            "m",
            room(drawdown_m, there_m, "m") if beyond else reserve(drawdown_m, least_m, "m"),
            text("check.specific_capacity.why"),
            text("check.specific_capacity.remedy", given=given, inverse=f"{1 / given:.3g}", drawdown_m=inverse_m)
            if hardly or beyond
            else "",
            text("check.specific_capacity.source", percent=100 * LEAST_SHARE),
        )
    ]
