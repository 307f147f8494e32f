"""The site checks of a finished comparison: for the design that is recommended."""

from __future__ import annotations

from collections.abc import Sequence

from planner.checks.site import site_verdicts
from planner.checks.verdict import Verdict
from planner.study.compare import Study


def study_verdicts(study: Study) -> tuple[Verdict, ...]:
    """Check the site with the tank of the best option and the array of the best option that has one.

    Parameters
    ----------
    study : Study
        The finished comparison.

    Returns
    -------
    tuple of Verdict
        In the order of the topics.
    """
    strings = next((option.strings for option in study.ranked if option.strings), None)
    return site_verdicts(study.scenario, study.place, study.weather, strings=strings, tank_m3=study.ranked[0].tank_m3)


def failures(verdicts: Sequence[Verdict]) -> list[str]:
    """Say in a sentence that the design cannot be built as it is, where checks fail; else say nothing."""
    failed = [verdict for verdict in verdicts if verdict.outcome == "fail"]
    if not failed:
        return []
    named = "; ".join(f"{verdict.topic.lower()}: {verdict.compared.split(', against')[0]}" for verdict in failed[:4])
    more = f" and {len(failed) - 4} more" if len(failed) > 4 else ""
    count = "One site check fails" if len(failed) == 1 else f"{len(failed)} site checks fail"
    return [f"Not to be built as it is: {count} ({named}{more}); see the checks for the remedies."]
