"""Whether this borehole, pump, pipe, array, cable and supply work together here, and safely."""

from __future__ import annotations

from typing import Any

from planner.checks import (
    alternating,
    array,
    borehole,
    cables,
    generator,
    head,
    nameplate,
    pipeline,
    pumping_test,
    quality,
    sun,
    tank,
    water,
)
from planner.checks import strings as strings_in_parallel
from planner.checks.basis import Basis, basis_of
from planner.checks.design import SERIES, with_likely_design
from planner.checks.remedies import tried_out, with_changes
from planner.checks.verdict import Verdict
from planner.resource.sun import Place
from planner.resource.years import WeatherYears
from planner.scenario.operands import with_arrays
from planner.scenario.paths import parts_of
from planner.scenario.scenario import Scenario

TOPIC_MODULES = (
    sun,
    nameplate,
    head,
    borehole,
    pumping_test,
    pipeline,
    array,
    strings_in_parallel,
    alternating,
    generator,
    cables,
    tank,
    water,
    quality,
)


def site_basis(
    scenario: Scenario,
    place: Place,
    weather: WeatherYears,
    strings: int | None = None,
    tank_m3: float | None = None,
) -> Basis:
    """What the checks of `site_verdicts` share, what is open of the design filled in by rule."""
    return with_likely_design(basis_of(scenario, place, weather, strings, tank_m3))


def site_verdicts(
    scenario: Scenario,
    place: Place,
    weather: WeatherYears,
    *,
    strings: int | None = None,
    tank_m3: float | None = None,
    known: Basis | None = None,
) -> tuple[Verdict, ...]:
    """Check every pair of things that must fit, in the month of the deepest water.

    Parameters
    ----------
    scenario : Scenario
        The site; the options' overrides are left aside.
    place, weather : Place, WeatherYears
        From `planner.study.site`.
    strings, tank_m3 : int or None, float or None
        The chosen design, where the scenario says 'auto'; without it what would be chosen by rule counts, and the
        verdict says what is left open.
    known : Basis, optional
        What `site_basis` gives for all this, where it is at hand.

    Returns
    -------
    tuple of Verdict
        In the order of the topics; `verdict.worst_first` puts the failed ones first. A pump that cannot lift the water
        is a failed verdict, not an error; what depends on it then counts with the flow to plan on. Each remedy that
        can be put as changes of the scenario has been tried out: with it, its check does not fail, nor one that did
        not fail before.

    Raises
    ------
    InputError
        If a segment names a pipe that the tables do not have.
    """

    def judged(changes: dict[str, Any]) -> tuple[Verdict, ...]:
        basis = (
            known
            if known and not changes
            else site_basis(
                _changed(scenario, changes, designed=strings is not None) if changes else scenario,
                place,
                weather,
                None if "sources.solar.strings" in changes else strings,
                None if "tank.volume_m3" in changes else tank_m3,
            )
        )
        return tuple(verdict for topic in TOPIC_MODULES for verdict in topic.verdicts(basis))

    return tried_out(judged({}), judged)


def _changed(scenario: Scenario, changes: dict[str, Any], *, designed: bool) -> Scenario:
    """Carry out changes; modules in series that were chosen with the strings of a design stay with them."""
    changed, solar = with_changes(scenario, changes), scenario.sources.solar
    if not designed or solar is None or not (scenario.leaves_open(SERIES) and changed.leaves_open(SERIES)):
        return changed
    return with_arrays(changed, {parts_of(SERIES): solar.modules_in_series})
