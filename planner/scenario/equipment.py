"""What every bought thing has: a price, a life and maintenance; and how its life is counted."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import numpy as np

from planner.scenario.fields import COMMON_PRACTICE, Model, assumed


def whole_years(life_years: Any, maximum: Callable[..., Any] = np.maximum, floor: Callable[..., Any] = np.floor) -> Any:
    """Round a life to whole years, halves up, at least one: replacements fall at year ends.

    Parameters
    ----------
    life_years : float or ndarray, (...)
        Service life [years].
    maximum, floor : callable
        The functions of that name, for lives that are no numbers but cells.

    Returns
    -------
    float or ndarray, (...)
        Years after which it is replaced; the cost of that and the wear that it ends both count with them.
    """
    return maximum(1, floor(life_years + 0.5))


class Equipment(Model):
    """What every bought thing has: a price, a life and maintenance."""

    price: float = assumed(
        0.0,
        "Price, without what installation adds",
        "money",
        source="no cost entered",
        changes="money",
        ge=0,
    )
    life_years: float = assumed(
        15.0, "Service life", "years", source=f"assumed, {COMMON_PRACTICE}", changes="money", gt=0, le=100
    )
    maintenance_percent_per_year: float = assumed(
        1.0,
        "Yearly maintenance as a share of the price",
        "%/year",
        source=f"assumed, {COMMON_PRACTICE}",
        changes="money",
        ge=0,
        le=50,
    )
