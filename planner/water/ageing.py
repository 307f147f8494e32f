"""How the works age through the life years: a falling water table, a tiring borehole, a wearing pump."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from planner.scenario.equipment import whole_years
from planner.scenario.waterworks import Borehole, Pump

Array = NDArray[np.float64]


@dataclass(frozen=True, eq=False)
class Ageing:
    """State of the works in each life year, the first year new; (years,) arrays.

    Attributes
    ----------
    level_fall_m : array
        How much deeper the water at rest stands than in the first year [m].
    drawdown_growth : array
        Drawdown at a given flow over that of the first year.
    wear : array
        Share of the pump's rated flow that wear has taken at its rated head; nil again after each replacement.
    """

    level_fall_m: Array
    drawdown_growth: Array
    wear: Array


def ageing_of(borehole: Borehole, pump: Pump, years: int) -> Ageing:
    """State of the works in each life year.

    Parameters
    ----------
    borehole, pump
        With their yearly declines; the pump is replaced when its life, in whole years as the money counts it, is over.
    years : int
        Life years.

    Notes
    -----
    Water level and wear go straight with the years, specific capacity compound. Where drawdown comes from a step test
    the whole of it grows, as clogging does not say which part it takes.
    """
    year = np.arange(years, dtype=float)
    kept = 1 - borehole.specific_capacity_decline_percent_per_year / 100
    return Ageing(
        level_fall_m=np.asarray(borehole.level_decline_m_per_year * year),
        drawdown_growth=np.asarray(kept**-year),
        wear=np.asarray(pump.wear_percent_per_year / 100 * (year % whole_years(pump.life_years))),
    )
