"""One design judged by the checks that depend on it, so that a search may choose among those that pass.

No remedy is tried out: the verdicts are those of `planner.checks.site`, of the topics that depend on modules in series,
strings and tank.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from functools import cache

from planner.checks import array, cables, nameplate, tank
from planner.checks import strings as strings_in_parallel
from planner.checks.basis import Basis
from planner.checks.verdict import Verdict
from planner.scenario.operands import with_arrays
from planner.scenario.paths import parts_of

_SERIES = parts_of("sources.solar.modules_in_series")
MOST_SERIES = 100
"""As many as a scenario may give."""


@dataclass(frozen=True)
class Judgement:
    """What the checks make of a design.

    Attributes
    ----------
    failed, cautions : tuple of str
        Keys of the checks that fail, and of those that pass with caution.
    power_ratio : float
        Power of the array over the pump's input; 0 without an array.
    """

    failed: tuple[str, ...]
    cautions: tuple[str, ...]
    power_ratio: float = 0.0


Judge = Callable[[int | None, int, float], Judgement]
"""Judges modules in series (None: as the scenario gives), strings (0: no array) and tank [m3]."""


def design_judge(basis: Basis) -> Judge:
    """Make the judge of the designs of a site; what several designs share is judged once.

    Parameters
    ----------
    basis : Basis
        The site, as it holds for a supply option.
    """

    @cache
    def by_series(series: int | None) -> tuple[Basis, list[Verdict]]:
        own = with_series(basis, series)
        return own, [*array.verdicts(own), *nameplate.verdicts(own)]

    @cache
    def by_strings(series: int | None, strings: int) -> tuple[float, list[Verdict]]:
        own = replace(by_series(series)[0], strings=strings)
        return strings_in_parallel.power_ratio(own), [*strings_in_parallel.verdicts(own), *cables.verdicts(own)]

    @cache
    def by_tank(tank_m3: float) -> list[Verdict]:
        return tank.verdicts(replace(basis, tank_m3=tank_m3))

    def judge(series: int | None, strings: int, tank_m3: float) -> Judgement:
        if not strings:
            return _judgement(by_tank(tank_m3))
        ratio, of_strings = by_strings(series, strings)
        return _judgement([*by_series(series)[1], *of_strings, *by_tank(tank_m3)], ratio)

    return judge


def with_series(basis: Basis, series: int | None) -> Basis:
    """The site with another number of modules in series; None leaves it as it is."""
    if series is None:
        return basis
    return replace(basis, scenario=with_arrays(basis.scenario, {_SERIES: series}))


def series_to_try(basis: Basis) -> tuple[int, ...]:
    """Numbers of modules in series that the voltages allow; the scenario's own where they do not tell or allow none."""
    solar = basis.scenario.sources.solar
    if solar is None:
        return ()
    fewest, most = array.series_that_fit(basis, solar)
    if fewest is None or most is None or fewest > most:
        return (solar.modules_in_series,)
    return tuple(range(max(fewest, 1), min(most, MOST_SERIES) + 1))


def _judgement(verdicts: Sequence[Verdict], power_ratio: float = 0.0) -> Judgement:
    failed, cautions = (
        tuple(verdict.key for verdict in verdicts if verdict.outcome == outcome) for outcome in ("fail", "caution")
    )
    return Judgement(failed, cautions, power_ratio)
