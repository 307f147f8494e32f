"""What running hours cost a generating set: services, overhauls and replacement; its fuel comes from `supply`."""

from __future__ import annotations

from types import SimpleNamespace
from typing import Any, NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from planner.money.formula import Operand
from planner.money.functions import ceiling, floor, maximum, minimum, where
from planner.money.rates import by_case
from planner.money.yearly import Column
from planner.supply.generator import derated_rating_kw, fuel_l

Array = NDArray[np.float64]

__all__ = ["AGEING", "SERVICED", "Wear", "derated_rating_kw", "fuel_l", "life_left", "times_due", "wear"]

_ROUNDING = 1e-9
"""Share of an interval by which summed hours may miss its multiple and still count as having reached it."""


def _whole_intervals(run_h: Operand, interval_h: Operand) -> Operand:
    """Whole intervals that some running hours hold."""
    return floor(run_h / interval_h + _ROUNDING)


def _intervals_before(run_h: Operand, interval_h: Operand) -> Operand:
    """Whole intervals that some running hours hold, one that ends just then not counted."""
    return maximum(ceiling(run_h / interval_h - _ROUNDING) - 1, 0)


def _overhauls(run_h: Operand, w: Any) -> Operand:
    """Overhauls of machines that one after another ran some hours: none at a machine's end."""
    machines = _whole_intervals(run_h, w.life_hours)
    most = _intervals_before(w.life_hours, w.overhaul_interval_h)
    rest = maximum(run_h - machines * w.life_hours, 0)
    return machines * most + minimum(_whole_intervals(rest, w.overhaul_interval_h), most)


AGEING = (
    Column("used_h", later=lambda w: w.before.kept_h + w.hours),
    Column("age_years", later=lambda w: w.before.kept_years + 1),
    Column(
        "worn",
        later=lambda w: _whole_intervals(w.used_h, w.life_hours),
        # A machine that wears out exactly at the end is kept, worn, not replaced.
        last=lambda w: minimum(_intervals_before(w.used_h, w.life_hours), _whole_intervals(w.used_h, w.life_hours)),
    ),
    Column(
        "bought",
        later=lambda w: maximum(w.worn, where(w.age_years >= w.whole_life_years, 1, 0)),
        last=lambda w: w.worn,
    ),
    Column("kept_h", later=lambda w: where(w.bought > w.worn, 0, maximum(w.used_h - w.worn * w.life_hours, 0))),
    Column("kept_years", later=lambda w: where(w.bought > 0, 0, w.age_years)),
)
"""A generating set by year, each from the one before: hours and years of the machine at hand before any replacement,
machines worn out by hours, machines bought, hours and years of the machine kept."""
SERVICED = (
    Column("run_h", running="hours"),
    Column(
        "services",
        later=lambda w: (
            _whole_intervals(w.run_h, w.service_interval_h) - _whole_intervals(w.run_h - w.hours, w.service_interval_h)
        ),
    ),
    Column("overhauls", later=lambda w: _overhauls(w.used_h, w) - _overhauls(w.used_h - w.hours, w)),
)
"""What its hours ask for: hours run in all, services and overhauls."""


def life_left(w: Any) -> Operand:
    """Share of its life that the last machine has left, by hours or by years, whichever is less."""
    return maximum(1 - maximum(w.kept_h / w.life_hours, w.kept_years / w.whole_life_years), 0)


class Wear(NamedTuple):
    """Services, overhauls and machines bought by year (..., n), the share of life left at the end (...)."""

    services: Array
    overhauls: Array
    bought: Array
    left: Array


def wear(
    hours: ArrayLike,
    life_hours: Operand,
    whole_life_years: Operand,
    service_interval_h: Operand = np.inf,
    overhaul_interval_h: Operand = np.inf,
) -> Wear:
    """Wear a machine by running hours: replaced when its hours or its years are used up, whichever comes first.

    Parameters
    ----------
    hours : array_like, (..., n)
        Running hours of each year [h].
    life_hours : float or ndarray, (...)
        Running hours that one machine lasts [h].
    whole_life_years : float or ndarray, (...)
        Most years that one machine lasts, whole.
    service_interval_h, overhaul_interval_h : float or ndarray, (...)
        Running hours from one to the next [h]; the first falls after one interval.

    Returns
    -------
    Wear

    Notes
    -----
    A machine worn by hours is replaced in that same year and the new one runs for the rest of it; age counts from the
    year's end. A machine that would be due at the very end of year n is not replaced. Services go by all hours run,
    overhauls count anew for each machine.
    """
    run_h = np.asarray(hours, dtype=float)
    years = run_h.shape[-1]
    given = {"life_hours": life_hours, "whole_life_years": whole_life_years}
    w = SimpleNamespace(kept_h=0.0, kept_years=0.0)
    rows = []
    for year in range(1, years + 1):
        w = SimpleNamespace(**given, hours=run_h[..., year - 1], before=w)
        for column in AGEING:
            setattr(w, column.key, column.in_year(year, years, w))
        rows.append(w)

    def stacked(key: str) -> Array:
        return np.stack(np.broadcast_arrays(*(getattr(row, key) for row in rows)), axis=-1)

    intervals = {"service_interval_h": service_interval_h, "overhaul_interval_h": overhaul_interval_h}
    terms = {name: by_case(value) for name, value in (given | intervals).items()}
    y = SimpleNamespace(**terms, hours=run_h, used_h=stacked("used_h"), run_h=np.cumsum(run_h, axis=-1))
    services, overhauls = (column.later(y) for column in SERVICED if column.later)
    return Wear(services, overhauls, stacked("bought"), np.asarray(life_left(w)))


def times_due(hours: ArrayLike, interval_h: float) -> Array:
    """Count how often something due at every interval of running hours (..., n) falls in each year: (..., n)."""
    reached = _whole_intervals(np.cumsum(np.asarray(hours, dtype=float), axis=-1), interval_h)
    return np.diff(reached, axis=-1, prepend=0.0)
