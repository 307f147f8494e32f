"""Sizes that a search may choose from: of what is open, that which fails the fewest checks."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from planner.checks.basis import Basis, basis_of
from planner.checks.design import design_judge, series_to_try
from planner.study.cases import Case, Supply
from planner.study.context import Context

Levels = tuple[float, float]

MOST_POWER_RATIO = 4.0
"""Power of an array over the pump's input beyond which nothing is tried where modules in series are open as well as
strings: twice what is usual. Common practice, no source."""


@dataclass(frozen=True)
class Sizes:
    """An option with one number of modules in series, and strings and tank [m3] for it."""

    supply: Supply
    strings: int
    tank_m3: float

    def case(self, levels: Levels) -> Case:
        """Give them float-switch levels."""
        return self.supply.case(self.strings, self.tank_m3, levels)


def passing(context: Context, supply: Supply, strings: Sequence[int], tanks_m3: Sequence[float]) -> list[Sizes]:
    """List the sizes that fail the fewest checks, by modules in series, strings and tank.

    Parameters
    ----------
    context : Context
        What the options share.
    supply : Supply
        The option; modules in series are tried where it leaves them open.
    strings, tanks_m3 : sequence
        Numbers of strings and tanks to try, in rising order.
    """
    supplies = series_of(context, supply)
    tried = [Sizes(each, count, tank) for each in supplies for count in strings for tank in tanks_m3]
    if len(tried) == 1:
        return tried
    judge = design_judge(site_basis(context, supply))
    judged = [(sizes, judge(sizes.supply.series, sizes.strings, sizes.tank_m3)) for sizes in tried]
    if len(supplies) > 1:
        judged = [each for each in judged if each[1].power_ratio <= MOST_POWER_RATIO] or judged
    fewest = min(len(judgement.failed) for _, judgement in judged)
    return [sizes for sizes, judgement in judged if len(judgement.failed) == fewest]


def series_of(context: Context, supply: Supply) -> list[Supply]:
    """The option with each number of modules in series that its voltages allow."""
    if not supply.leaves_series_open:
        return [supply]
    return [supply.with_series(count) for count in series_to_try(site_basis(context, supply))]


def site_basis(context: Context, supply: Supply) -> Basis:
    """The site of an option as the checks see it."""
    site = context.site(supply.scenario)
    return basis_of(supply.scenario, site.place, site.weather)
