"""One design judged by the checks that depend on it, so that a search may choose among those that pass.

No remedy is tried out: the verdicts are those of `planner.checks.site`, of the topics that depend on modules in series,
strings and tank.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import cache
from itertools import product

from planner.checks import array, cables, nameplate, tank
from planner.checks import strings as strings_in_parallel
from planner.checks.basis import Basis, with_design
from planner.checks.verdict import Verdict
from planner.scenario.operands import with_arrays
from planner.scenario.paths import parts_of

SERIES, SECTION = "sources.solar.modules_in_series", "cables.dc.section_mm2"
DESIGN_TOPICS = (array.TOPIC, cables.TOPIC, tank.TOPIC)
"""Topics in which another choice of array or tank may pass where one fails."""
_MIDDLE = sum(strings_in_parallel.POWER_RATIO) / 2
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
    section_mm2 : float or None
        Section of the array's cable with which it was judged, where the scenario leaves that open.
    """

    failed: tuple[str, ...]
    cautions: tuple[str, ...]
    power_ratio: float = 0.0
    section_mm2: float | None = None


def depends_on_design(verdict: Verdict) -> bool:
    """Tell whether another choice of array or tank may pass where this one fails."""
    return verdict.topic in DESIGN_TOPICS or "array" in verdict.supplies


Judge = Callable[[int | None, int, float], Judgement]
"""Judges modules in series (None: as the scenario gives), strings (0: no array) and tank [m3]."""


def design_judge(basis: Basis) -> Judge:
    """Make the judge of the designs of a site; what several designs share is judged once.

    Parameters
    ----------
    basis : Basis
        The site, as it holds for a supply option.
    """
    # Whether the pump suits is asked by many checks: worked out here, every design has it.
    _ = basis.shut_off_head_m, basis.flow_m3h, basis.motor_input_w

    @cache
    def by_series(series: int | None) -> tuple[Basis, list[Verdict]]:
        own = with_series(basis, series)
        return own, [*array.verdicts(own), *nameplate.verdicts(own)]

    @cache
    def by_strings(series: int | None, strings: int) -> tuple[float, float | None, list[Verdict]]:
        own = with_design(by_series(series)[0], strings=strings)
        section = cables.array_section_mm2(own) if basis.scenario.leaves_open(SECTION) else None
        if section is not None:
            own = with_design(own, scenario=with_arrays(own.scenario, {parts_of(SECTION): section}))
        verdicts = [*strings_in_parallel.verdicts(own), *cables.verdicts(own)]
        return strings_in_parallel.power_ratio(own), section, verdicts

    @cache
    def by_tank(tank_m3: float) -> list[Verdict]:
        return tank.verdicts(with_design(basis, tank_m3=tank_m3))

    def judge(series: int | None, strings: int, tank_m3: float) -> Judgement:
        if not strings:
            return _judgement(by_tank(tank_m3))
        ratio, section, of_strings = by_strings(series, strings)
        return _judgement([*by_series(series)[1], *of_strings, *by_tank(tank_m3)], ratio, section)

    return judge


def with_likely_design(basis: Basis) -> Basis:
    """Fill in what the design leaves open by rule, so that the checks do not judge what no search would choose.

    Of modules in series and strings those that fail the fewest checks, then nearest to the middle of the usual power
    ratio; modules in series are moved only where the number found before fails. Of the tanks the smallest that fails,
    and passes with caution, the fewest checks.
    """
    scenario = basis.scenario
    solar, judge = scenario.sources.solar, design_judge(basis)
    if basis.tank_m3 is None:

        def faults(tank_m3: float) -> tuple[int, int, float]:
            judged = judge(None, 0, tank_m3)
            return len(judged.failed), len(judged.cautions), tank_m3

        basis = with_design(basis, likely_tank_m3=min((size.volume_m3 for size in scenario.tank.sizes), key=faults))
    if solar is None:
        return basis
    counts = range(1, solar.strings_max + 1) if basis.strings is None else (basis.strings,)

    def off(design: tuple[int | None, int]) -> tuple[int, float]:
        judged = judge(*design, basis.tank_counted_m3)
        return len(judged.failed), abs(judged.power_ratio - _MIDDLE)

    series, strings = min(((None, count) for count in counts), key=off)
    if scenario.leaves_open(SERIES) and off((series, strings))[0]:
        series, strings = min(product(series_to_try(basis), counts), key=off)
    basis = with_design(with_series(basis, series), likely_strings=strings)
    section = cables.array_section_mm2(basis) if scenario.leaves_open(SECTION) else None
    if section is None:
        return basis
    return with_design(basis, scenario=with_arrays(basis.scenario, {parts_of(SECTION): section}))


def with_series(basis: Basis, series: int | None) -> Basis:
    """The site with another number of modules in series; None leaves it as it is."""
    if series is None:
        return basis
    return with_design(basis, scenario=with_arrays(basis.scenario, {parts_of(SERIES): series}))


def series_to_try(basis: Basis) -> tuple[int, ...]:
    """Numbers of modules in series that the voltages allow; the scenario's own where they do not tell or allow none."""
    solar = basis.scenario.sources.solar
    if solar is None:
        return ()
    fewest, most = array.series_that_fit(basis, solar)
    if fewest is None or most is None or fewest > most:
        return (solar.modules_in_series,)
    return tuple(range(max(fewest, 1), min(most, MOST_SERIES) + 1))


def _judgement(verdicts: Sequence[Verdict], ratio: float = 0.0, section_mm2: float | None = None) -> Judgement:
    failed, cautions = (
        tuple(verdict.key for verdict in verdicts if verdict.outcome == outcome) for outcome in ("fail", "caution")
    )
    return Judgement(failed, cautions, ratio, section_mm2)
