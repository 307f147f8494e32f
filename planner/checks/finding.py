"""The first thing to know of a site: whether the pump fits it, and if not, which would."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from planner.checks.basis import Basis
from planner.checks.head import MOST_SURPLUS, better_pump
from planner.checks.verdict import Verdict, at_least, at_most
from planner.text import text
from planner.water.duty import CannotDraw, CannotLift, CannotStart

ABOUT_TWICE = (1.95, 2.05)


def finding(basis: Basis, verdicts: Sequence[Verdict]) -> tuple[str, ...]:
    """Say whether the pump fits the site and, where another pump is the remedy, which would.

    Parameters
    ----------
    basis : Basis
        The site.
    verdicts : sequence of Verdict
        What the site checks found.

    Returns
    -------
    tuple of str
        One sentence, or two.
    """
    return tuple(_sentences(basis, verdicts))


def _sentences(basis: Basis, verdicts: Sequence[Verdict]) -> Iterator[str]:
    pump, borehole, cannot = basis.scenario.pump, basis.scenario.borehole, basis.cannot
    given, needed, flow = basis.given_head_m, basis.needed_head_m, f"{basis.design_flow_m3h:.3g}"
    heads = {"flow": flow, "given": f"{given:.0f}", "needed": f"{needed:.0f}"}
    over_yield = any(verdict.key == "safe_yield" and verdict.outcome == "fail" for verdict in verdicts)
    if basis.pump_fault:
        yield text("finding.contradiction", fault=basis.pump_fault)
    elif isinstance(cannot, CannotDraw):
        # another pump at the same depth would not do either
        yield text("finding.cannot_draw", level=cannot.level_m, depth=cannot.pump_depth_m)
        return
    elif isinstance(cannot, CannotStart):
        yield text("finding.cannot_start", limit=cannot.power_limit_w)
        return
    elif isinstance(cannot, CannotLift):
        lift, most = f"{cannot.static_head_m:.0f}", f"{cannot.max_head_m:.0f}"
        yield text("finding.cannot_lift", most=most, lift=lift)
    elif basis.too_short:
        yield text("finding.too_weak", **heads)
    elif over_yield:
        yield text("finding.over_yield", rated=f"{pump.rated_flow_m3h:.3g}", safe=f"{borehole.safe_yield_m3h:.3g}")
    elif not at_least(given, needed):
        assert basis.duty is not None
        yield text("finding.short", **heads, duty=f"{basis.duty.flow_m3h:.2f}")
        return
    elif not at_most(given, MOST_SURPLUS * needed):
        times, (low, high) = given / needed, ABOUT_TWICE
        words = text("finding.twice") if low <= times <= high else text("finding.times", times=f"{times:.1f}")
        yield text("finding.over", **heads, times=words, most=f"{pump.max_head_m:.0f}")
    else:
        yield text("finding.fits", **heads)
        return
    yield better_pump(basis, "finding.would_fit")
