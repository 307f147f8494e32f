"""Sizes that a search may choose from: of what is open, that which fails the fewest checks."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from planner.checks.basis import Basis, basis_of
from planner.checks.design import Judgement, design_judge, series_to_try
from planner.study.cases import SECTION, Case, Supply
from planner.study.context import Context

Levels = tuple[float, float]

MOST_POWER_RATIO = 4.0
"""Power of an array over the pump's input beyond which none is tried: twice what is usual. Common practice, no
source."""


@dataclass(frozen=True)
class Sizes:
    """An option with one number of modules in series, strings and tank [m3], and what the checks make of them."""

    supply: Supply
    strings: int
    tank_m3: float
    judgement: Judgement

    @property
    def cautions(self) -> int:
        """Checks passed with caution; where there are prices, cost decides and they do not count."""
        return 0 if self.supply.scenario.priced else len(self.judgement.cautions)

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
    is_open = len(strings) * len(tanks_m3) > 1 or supply.leaves_series_open or supply.scenario.leaves_open(SECTION)
    if not is_open:
        return [Sizes(supply, strings[0], tanks_m3[0], Judgement((), ()))]
    tried = [sizes for one in judged(context, supply, strings, tanks_m3) for sizes in one]
    return [sizes for sizes, keep in zip(tried, admitted(tried), strict=True) if keep]


def judged(context: Context, supply: Supply, strings: Sequence[int], tanks_m3: Sequence[float]) -> list[list[Sizes]]:
    """Judge sizes: for each number of modules in series a list by strings and tank."""
    basis = site_basis(context, supply)
    judge = design_judge(basis)
    supplies = [supply.with_series(count) for count in series_to_try(basis)] if supply.leaves_series_open else [supply]
    found = []
    for each in supplies:
        by = {(count, tank): judge(each.series, count, tank) for count in strings for tank in tanks_m3}
        sections = {count: judgement.section_mm2 for (count, _), judgement in by.items()}
        cabled = each.with_sections({count: section for count, section in sections.items() if section is not None})
        found.append([Sizes(cabled, count, tank, judgement) for (count, tank), judgement in by.items()])
    return found


def admitted(tried: Sequence[Sizes]) -> list[bool]:
    """Tell which sizes are to be simulated: those that fail the fewest checks, of an array that is not far too large.

    An array beyond `MOST_POWER_RATIO` is admitted only where all are.
    """
    judgements = [each.judgement for each in tried]
    small = [each.power_ratio <= MOST_POWER_RATIO for each in judgements]
    kept = small if any(small) else [True] * len(small)
    fewest = min(len(each.failed) for each, keep in zip(judgements, kept, strict=True) if keep)
    return [keep and len(each.failed) == fewest for each, keep in zip(judgements, kept, strict=True)]


def site_basis(context: Context, supply: Supply) -> Basis:
    """The site of an option as the checks see it."""
    site = context.site(supply.scenario)
    return basis_of(supply.scenario, site.place, site.weather)
