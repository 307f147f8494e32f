"""The site checks of a finished comparison: for the design that is recommended."""

from __future__ import annotations

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
