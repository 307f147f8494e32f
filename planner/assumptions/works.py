"""Who draws the water, and what a pumping test of one step says of the borehole."""

from __future__ import annotations

from planner.assumptions.draft import Draft
from planner.text import text

_NAMED = ("people", "livestock", "irrigation", "volume")


def complete(draft: Draft) -> None:
    """Fill in names of the users, specific capacity and safe yield."""
    for path, user in draft.entries("demand.users"):
        kind = user.get("kind")
        if kind in _NAMED:
            draft.fill((*path, "name"), text(f"assumed.user.{kind}"), text("assumed.user"))
    flow, drawdown = draft.number("borehole.test_flow_m3h"), draft.number("borehole.drawdown_m")
    if flow and drawdown and not draft.get("borehole.step_test"):
        how = text("assumed.specific_capacity", flow=f"{flow:g}", drawdown=f"{drawdown:g}")
        draft.fill("borehole.specific_capacity_m3h_per_m", flow / drawdown, how)
    steps = [draft.number((*path, "flow_m3h")) for path, _ in draft.entries("borehole.step_test")]
    tested = max((step for step in (flow, *steps) if step), default=None)
    if tested:
        draft.fill("borehole.safe_yield_m3h", float(tested), text("assumed.safe_yield", flow=f"{tested:g}"))
