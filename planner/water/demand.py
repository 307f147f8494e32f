"""What is drawn from the tank, day by day and hour by hour."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from planner.resource.sun import DAYS_PER_MONTH
from planner.scenario.place import Demand, User

Array = NDArray[np.float64]

MONTH_OF_HOUR = np.repeat(np.arange(12), DAYS_PER_MONTH * 24)
"""Month, 0 to 11, of each of the 8760 hours of a year."""


def _hundredths(*percent: float) -> tuple[float, ...]:
    return tuple(value / 100 for value in percent)


PROFILES: dict[str, tuple[float, ...]] = {
    # standposts and yard taps: a morning and an evening peak, little at night
    "household": _hundredths(1, 1, 1, 1, 2, 5, 9, 9, 7, 5, 4, 4, 5, 4, 4, 4, 6, 8, 8, 5, 3, 2, 1, 1),
    # school and office hours
    "school": _hundredths(0, 0, 0, 0, 0, 0, 0, 6, 12, 12, 14, 14, 14, 10, 8, 6, 4, 0, 0, 0, 0, 0, 0, 0),
    # watering after sunrise and before sunset
    "livestock": _hundredths(0, 0, 0, 0, 0, 0, 10, 15, 15, 8, 4, 3, 3, 3, 4, 8, 12, 10, 5, 0, 0, 0, 0, 0),
    # irrigation before the heat of the day
    "morning": _hundredths(0, 0, 0, 0, 0, 10, 20, 25, 20, 15, 10, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0),
    # irrigation at night, 20:00 to 04:00
    "night": tuple(0.125 if hour >= 20 or hour < 4 else 0.0 for hour in range(24)),
    "even": (1 / 24,) * 24,
}
"""Share of the day's water drawn in each hour from midnight; each sums to 1. Our own: common practice, no source."""


def _first_year_m3_day(user: User) -> Array:
    """Net daily volume of a user in the first year by month [m3/day], shape (12,)."""
    if user.kind == "people":
        return np.full(12, user.count * user.litres_per_person_day / 1000)
    if user.kind == "livestock":
        return np.full(12, user.count * user.litres_per_head_day / 1000)
    if user.kind == "irrigation":
        net_m_day = np.array(user.net_requirement_mm_day) / 1000
        return user.area_m2 * net_m_day / (user.application_efficiency_percent / 100)
    return np.array(user.m3_per_day, dtype=float)


def _by_user(demand: Demand, years: int) -> tuple[Array, Array]:
    """Daily volume in the first year with the leakage that follows it (users, 12) and growth (users, years)."""
    gross = np.array([_first_year_m3_day(user) for user in demand.users]) / (1 - demand.leakage_percent / 100)
    percent = [
        demand.growth_percent_per_year if user.growth_percent_per_year is None else user.growth_percent_per_year
        for user in demand.users
    ]
    return gross, (1 + np.array(percent)[:, np.newaxis] / 100) ** np.arange(years)


def _profile(user: User, demand: Demand) -> Array:
    """Share of the day's water in each hour; the scenario sees to it that 24 numbers make a day within rounding."""
    chosen = demand.draw_profile if user.draw_profile is None else user.draw_profile
    shares = np.array(PROFILES[chosen] if isinstance(chosen, str) else chosen, dtype=float)
    return np.asarray(shares / shares.sum())


def daily_demand_m3(demand: Demand, years: int) -> Array:
    """Water drawn from the tank per day, leakage included [m3/day].

    Parameters
    ----------
    demand : Demand
        The users, their growth and the leakage.
    years : int
        Number of life years; the first has no growth, which then compounds for each user.

    Returns
    -------
    (years, 12) array
        By life year and month.
    """
    gross, growth = _by_user(demand, years)
    return np.asarray(growth.T @ gross + demand.leakage_m3_per_day)


def hourly_demand_m3(demand: Demand, years: int) -> Array:
    """Water drawn from the tank in every hour, leakage included [m3].

    Parameters
    ----------
    demand, years
        As for `daily_demand_m3`.

    Returns
    -------
    (8760, years) array
        By hour of a year of 365 days and life year. A share of leakage follows the draw, the rest the clock.
    """
    gross, growth = _by_user(demand, years)
    profiles = np.array([_profile(user, demand) for user in demand.users])
    # the hours of one day of each month, (months, 24, years), of which the year is made
    by_day = np.einsum("um,uh,uy->mhy", gross, profiles, growth) + demand.leakage_m3_per_day / 24
    return np.repeat(by_day, DAYS_PER_MONTH, axis=0).reshape(-1, years)


def users_share(demand: Demand, draw_m3: Array) -> Array:
    """Share of the water leaving the tank that reaches users.

    Parameters
    ----------
    demand : Demand
        With its leakage.
    draw_m3 : (8760, years) array
        Water drawn from the tank in every hour, leakage included [m3].

    Returns
    -------
    (8760, years) or (1, 1) array
        One number where all leakage follows the draw. Users and leaks share an hour's shortfall alike.
    """
    kept = np.full((1, 1), 1 - demand.leakage_percent / 100)
    if not demand.leakage_m3_per_day:
        return kept
    return kept * np.maximum(1 - demand.leakage_m3_per_day / 24 / draw_m3, 0.0)
