"""The constant-rate pumping test on record: long enough, near enough to the yield, and the water back up after it."""

from __future__ import annotations

from collections.abc import Iterator

from planner.checks.basis import Basis
from planner.checks.verdict import Verdict, figure, highest, lowest, missing
from planner.scenario.records import PumpingTest
from planner.text import text

TOPIC = "borehole"
LEAST_HOURS = 24.0
"""Design manual of the Ministry of Water of Tanzania, volume IV, appendix 3, at second hand; SANS 10299-4:2003 has 24
to 72 hours."""
MOST_SHARE_PERCENT = 70.0
"""Yield to plan on, of the flow that the test bore: 60 to 70 % is common practice, from memory."""
MOST_LEFT_M = 1.0
"""How far below its rest the water may stand when the recovery ends: practice after SANS 10299-4, at second hand."""


def verdicts(basis: Basis) -> list[Verdict]:
    """Judge the test."""
    test = basis.scenario.pumping_test
    if test is None:
        return [
            missing(
                TOPIC,
                "pumping_test",
                text("check.pumping_test.compared_not"),
                text("check.pumping_test.look_for", hours=f"{LEAST_HOURS:g}"),
                why=text("check.pumping_test.why"),
                source=text("check.pumping_test.source"),
            )
        ]
    return list(_verdicts(test, basis.scenario.borehole.safe_yield_m3h))


def _verdicts(test: PumpingTest, safe_yield_m3h: float) -> Iterator[Verdict]:
    yield lowest(
        TOPIC,
        "pumping_test",
        text("check.pumping_test.compared"),
        test.duration_h,
        LEAST_HOURS,
        "h",
        why=text("check.pumping_test.why"),
        remedy=text("check.pumping_test.remedy", hours=f"{LEAST_HOURS:g}"),
        source=text("check.pumping_test.source"),
        beyond="caution",
    )
    yield highest(
        TOPIC,
        "yield_of_test",
        text("check.yield_of_test.compared", flow=figure(test.flow_m3h)),
        100 * safe_yield_m3h / test.flow_m3h,
        MOST_SHARE_PERCENT,
        "%",
        why=text("check.yield_of_test.why"),
        remedy=text("check.yield_of_test.remedy", flow=figure(MOST_SHARE_PERCENT / 100 * test.flow_m3h)),
        source=text("check.yield_of_test.source"),
        beyond="caution",
    )
    if test.static_level_m is not None and test.recovery_level_m is not None:
        yield highest(
            TOPIC,
            "recovery",
            text("check.recovery.compared"),
            max(test.recovery_level_m - test.static_level_m, 0.0),
            MOST_LEFT_M,
            "m",
            why=text("check.recovery.why"),
            remedy=text("check.recovery.remedy"),
            source=text("check.recovery.source"),
            beyond="caution",
        )
