"""Hourly years made from twelve monthly means."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import get_args

import numpy as np

from planner.resource.clearness import (
    DAY_CORRELATION,
    HOUR_CORRELATION,
    LOWEST_CLEARNESS,
    DailyLaw,
    Maximum,
    autoregressive,
    bend,
    daily_quantiles,
    highest_clearness,
    hourly_clearness,
    law_exponent,
    law_in_words,
    law_warning,
)
from planner.resource.spread import chance_spread, month_anomalies, year_factors
from planner.resource.sun import (
    DAYS_PER_MONTH,
    FIRST_DAY_OF_MONTH,
    HOURS_PER_YEAR,
    MONTH_NAMES,
    MONTH_OF_DAY,
    Array,
    Place,
    Sun,
    hours_to_months,
    solar_days,
)
from planner.resource.years import WeatherYears, split_beam
from planner.text import text

HIGHEST_MEAN_CLEARNESS = 0.88
TWILIGHT_WH_M2_DAY = 300.0
MJ_PER_KWH = 3.6
ASSUMED_WIND_M_S = 1.0
"""Wind at the array where none is known; common practice, no source."""
STEEP_WINTER_LATITUDE_DEG = 40.0
"""From here on the Erbs split misses the low winter sun: measured 14 % at 43 and 32 % at 55 degrees in December."""


def synthetic_years(
    place: Place,
    sun: Sun,
    ghi_kwh_m2_day: Sequence[float] | Array,
    temperature_c: Sequence[float] | Array,
    temperature_range_k: Sequence[float] | Array | None,
    *,
    years: int,
    seed: int,
    annual_spread_percent: float = 0.0,
    monthly_spread_percent: float | None = 0.0,
    daily_law: DailyLaw = "by_latitude",
    clearness_maximum: Maximum = "clear_sky",
) -> WeatherYears:
    """Make hourly years whose months keep twelve given means.

    Parameters
    ----------
    place : Place
        Where.
    sun : Sun
        `sun_of(place)`.
    ghi_kwh_m2_day : sequence of 12 floats
        Monthly mean of daily global horizontal irradiation.
    temperature_c : sequence of 12 floats
        Monthly mean air temperature.
    temperature_range_k : sequence of 12 floats or None
        Monthly mean of daily maximum less minimum; None takes it from the clearness of the month.
    years : int
        How many years.
    seed : int
        Start of the random numbers. The weather of year k is the same however many years are asked for, save for
        its yearly factor.
    annual_spread_percent : float
        Standard deviation of the yearly irradiation. The factors are stratified normal quantiles in random order,
        so that a life of any length has its fair share of poor years; their mean is 1.
    monthly_spread_percent : float or None
        Standard deviation of a month's irradiation beside that of its year, the same in all months; None takes what
        chance makes of the month's days, `planner.resource.spread.chance_spread`. The anomalies of a month add up
        to nothing over the years, those of a year over its months.
    daily_law : {'by_latitude', 'saunier', 'bendt'}
        Law of daily clearness; see `planner.resource.clearness.law_exponent`.
    clearness_maximum : {'clear_sky', 'general'}
        Brightest day of a month; see `planner.resource.clearness.highest_clearness`.

    Returns
    -------
    WeatherYears
        Month sums are exact to the means of each year; dni cos(zenith) + dhi = ghi in each hour.

    Raises
    ------
    ValueError
        If a list is not of twelve finite numbers, a month is not possible at this latitude, or `years`, a spread,
        the law or the maximum are out of range.

    Notes
    -----
    Days: the law's values at equally spaced probabilities (Knight, Klein and Duffie 1991) in the order of a
    Gaussian autoregressive series (Graham, Hollands and Huget 1988). Hours: Graham and Hollands 1990. Split: Erbs,
    Klein and Duffie 1982. Temperature: Erbs, Klein and Beckman 1983.
    """
    means, temperatures = _twelve("ghi_kwh_m2_day", ghi_kwh_m2_day), _twelve("temperature_c", temperature_c)
    if years < 1:
        raise ValueError(f"years must be 1 or more, not {years}")
    for name, spread in (
        ("annual_spread_percent", annual_spread_percent),
        ("monthly_spread_percent", monthly_spread_percent),
    ):
        if spread is not None and not 0 <= spread <= 30:
            raise ValueError(f"{name} must be between 0 and 30, not {spread:g}")
    for name, given, allowed in (
        ("daily_law", daily_law, get_args(DailyLaw)),
        ("clearness_maximum", clearness_maximum, get_args(Maximum)),
    ):
        if given not in allowed:
            raise ValueError(f"{name} {given!r} is not one of {', '.join(map(repr, allowed))}")
    above = solar_days(sun.extraterrestrial_horizontal_wh_m2, sun)
    clear = solar_days(sun.clear_sky_ghi_w_m2, sun)
    month_above = _month_sums(above.sum(axis=1)) / DAYS_PER_MONTH  # Wh/m2/day
    month_clear = _month_sums(clear.sum(axis=1)) / DAYS_PER_MONTH
    twilight = (month_above < TWILIGHT_WH_M2_DAY) & (means < TWILIGHT_WH_M2_DAY / 2000)
    means, notes = _checked_means(means, month_above, month_clear, twilight)
    clearness = 1000 * means / np.maximum(month_above, 1e-9)

    law = _LawOfDays(
        law_exponent(daily_law, place.latitude_deg), clearness_maximum, month_clear / np.maximum(month_above, 1e-9)
    )
    base = means * DAYS_PER_MONTH
    monthly = np.full(12, 0.0 if monthly_spread_percent is None else monthly_spread_percent / 100)
    if monthly_spread_percent is None:
        for month in map(int, np.flatnonzero(~twilight)):
            monthly[month] = chance_spread(law.days(month, clearness[[month]])[0])[0]
    factors = year_factors(years, seed, annual_spread_percent / 100) + month_anomalies(years, seed, monthly, base)
    # A little inside the bounds, so that each month still has a law of daily clearness.
    lowest = np.where(twilight, 0.0, np.minimum(0.06 * month_above / 1000, means))
    year_means = np.clip(factors * means, lowest, np.maximum(0.87 * month_above / 1000, means))
    factor = year_means @ DAYS_PER_MONTH / base.sum() if base.sum() > 0 else np.ones(years)

    day_noise, hour_noise = _noise(years, seed)
    daily = _daily_clearness(year_means, above.sum(axis=1), twilight, day_noise, law)
    ghi = _hourly_ghi(daily, above, clear, sun, hour_noise)
    # Exact already unless the clock's midnight falls in the sun's day; then this shares out the days it cut in two.
    got, wanted = hours_to_months(ghi), 1000 * (year_means * DAYS_PER_MONTH).T
    ghi *= np.where(got > 0, wanted / np.where(got > 0, got, 1.0), 1.0)[sun.month]
    dni, dhi = split_beam(ghi, sun)

    if temperature_range_k is None:
        ranges = np.maximum(25.8 * clearness - 5.21, 3.0)
        notes.append(text("weather_note.temperature_range"))
    else:
        ranges = _twelve("temperature_range_k", temperature_range_k)
        if (ranges < 0).any():
            raise ValueError("temperature_range_k must not be negative")
    temperature = _temperature(temperatures, ranges, sun)
    if abs(place.latitude_deg) > STEEP_WINTER_LATITUDE_DEG:
        notes.append(text("weather_note.steep_planes", latitude=abs(place.latitude_deg)))
    if warning := law_warning(daily_law, place.latitude_deg):
        notes.append(warning)
    shape = (HOURS_PER_YEAR, years)
    return WeatherYears(
        ghi_w_m2=ghi,
        dni_w_m2=dni,
        dhi_w_m2=dhi,
        temperature_c=np.broadcast_to(temperature[:, None], shape),
        wind_m_s=np.broadcast_to(np.float64(ASSUMED_WIND_M_S), shape),
        sun=sun,
        annual_factor=factor,
        source=text(
            "weather_source.monthly_means",
            law=law_in_words(daily_law, clearness_maximum, place.latitude_deg),
            years=annual_spread_percent,
            least=100 * monthly.min(),
            most=100 * monthly.max(),
            wind=ASSUMED_WIND_M_S,
        ),
        notes=tuple(notes),
    )


def _twelve(name: str, values: Sequence[float] | Array) -> Array:
    numbers = np.asarray(values, dtype=np.float64)
    if numbers.shape != (12,) or not np.isfinite(numbers).all():
        raise ValueError(f"{name} must be twelve finite numbers, January to December")
    return numbers


def _month_sums(daily: Array) -> Array:
    return np.asarray(np.add.reduceat(daily, FIRST_DAY_OF_MONTH, axis=-1))


def _checked_means(means: Array, month_above: Array, month_clear: Array, twilight: Array) -> tuple[Array, list[str]]:
    """Refuse impossible months, remark on unlikely ones, and cut those of the polar twilight to what can be."""
    notes = []
    lowest, highest = LOWEST_CLEARNESS * month_above / 1000, HIGHEST_MEAN_CLEARNESS * month_above / 1000
    unlikely = np.maximum(1.05 * month_clear, 0.80 * month_above) / 1000
    for name, mean, low, high, much, above, dusk in zip(
        MONTH_NAMES, means, lowest, highest, unlikely, month_above / 1000, twilight, strict=True
    ):
        if mean < 0 or (not dusk and not low < mean < high):
            raise ValueError(
                f"{name}: {mean:g} kWh/m2/day is a clearness index of {mean / max(above, 1e-9):.2f}, which cannot "
                f"be; at this latitude the month allows {low:.2f} to {high:.2f} kWh/m2/day "
                f"(clearness index {LOWEST_CLEARNESS:g} to {HIGHEST_MEAN_CLEARNESS:g})"
                + ("; are these MJ/m2? 1 kWh = 3.6 MJ" if low < mean / MJ_PER_KWH < high else "")
            )
        if dusk and mean > high:
            notes.append(text("weather_note.twilight_month", month=name, given=mean, taken=high))
        elif not dusk and mean > much:
            notes.append(text("weather_note.bright_month", month=name, given=mean, clear_sky=much))
    return np.where(twilight, np.minimum(means, highest), means), notes


def _noise(years: int, seed: int) -> tuple[Array, Array]:
    """Independent normal values for days (years, 365) and hours (years, 365, 24), each year from its own stream."""
    streams = [np.random.default_rng(np.random.SeedSequence(seed, spawn_key=(1 + year,))) for year in range(years)]
    draws = np.stack([stream.standard_normal((365, 25)) for stream in streams])
    return draws[:, :, 0], draws[:, :, 1:]


@dataclass(frozen=True, eq=False)
class _LawOfDays:
    """Law of daily clearness at a place: exponent, kind of maximum, and clear-sky index of the months (12,)."""

    exponent: float
    maximum: Maximum
    clear_sky: Array

    def days(self, month: int, mean: Array) -> tuple[Array, Array]:
        """Return the rising days (n, days) and the highest index (n,) of a month with means (n,)."""
        highest = highest_clearness(mean, self.clear_sky[month], self.maximum)
        return daily_quantiles(mean, highest, int(DAYS_PER_MONTH[month]), self.exponent), highest


def _daily_clearness(year_means: Array, day_above: Array, twilight: Array, noise: Array, law: _LawOfDays) -> Array:
    """Daily clearness index, shape (years, 365), whose months keep their means."""
    order = autoregressive(noise, DAY_CORRELATION)
    daily = np.empty_like(order)
    for month in range(12):
        days = np.flatnonzero(month == MONTH_OF_DAY)
        above = day_above[days]
        energy = 1000 * year_means[:, month] * len(days)
        mean = energy / max(above.sum(), 1e-9)
        if twilight[month]:  # no law of days for so little sun
            daily[:, days] = mean[:, None]
            continue
        rising, highest = law.days(month, mean)
        rank = np.argsort(np.argsort(order[:, days], axis=1), axis=1)
        values = np.take_along_axis(rising, rank, axis=1)
        room = (highest - LOWEST_CLEARNESS)[:, None]
        bent = bend((values - LOWEST_CLEARNESS) / room, room * above, energy - LOWEST_CLEARNESS * above.sum())
        daily[:, days] = LOWEST_CLEARNESS + bent / above
    return daily


def _hourly_ghi(daily: Array, above: Array, clear: Array, sun: Sun, noise: Array) -> Array:
    """Hourly irradiance, shape (8760, years), of days with given clearness; every day's sum is kept."""
    years = len(daily)
    lit = above.any(axis=0)  # hours of the day that ever see the sun
    above, clear = above[:, lit], clear[:, lit]
    height = np.cos(np.radians(solar_days(sun.zenith_deg, sun)[:, lit]))
    wanted = daily * above.sum(axis=1)
    index = hourly_clearness(daily[:, :, None], height, autoregressive(noise[:, :, lit], HOUR_CORRELATION))
    # 1.05 times the clear sky is the cap, raised towards the extraterrestrial where a day's energy asks for more:
    # turbidity grids can be too hazy.
    cap, ceiling = np.clip(np.maximum(1.05 * clear, 0.10 * above), 0.0, 0.92 * above), 0.96 * above
    lacking = np.maximum(1.03 * wanted - cap.sum(axis=1), 0.0)
    lift = np.minimum(lacking / np.maximum((ceiling - cap).sum(axis=1), 1e-9), 1.0)
    cap = cap + lift[:, :, None] * (ceiling - cap)
    ghi = np.zeros((years, 365, 24))
    ghi[:, :, lit] = bend(index * above / np.maximum(cap, 1e-9), cap, wanted)
    local = np.roll(ghi.reshape(years, HOURS_PER_YEAR), sun.clock_ahead_h, axis=1)
    return np.ascontiguousarray(local.T)


def _temperature(means: Array, ranges: Array, sun: Sun) -> Array:
    """Hourly air temperature, shape (8760,): months keep their means, days swing by the harmonics of Erbs et al."""
    middle = FIRST_DAY_OF_MONTH + DAYS_PER_MONTH / 2
    knots = np.concatenate(([middle[-1] - 365], middle, [middle[0] + 365]))
    unit = np.eye(12)[np.arange(-1, 13) % 12]  # the year is a ring
    days = np.arange(365) + 0.5
    shape = np.stack([np.interp(days, knots, unit[:, month]) for month in range(12)], axis=1)
    month_shape = _month_sums(shape.T).T / DAYS_PER_MONTH[:, None]
    base = shape @ np.linalg.solve(month_shape, means)
    t = 2 * np.pi * ((sun.hour - sun.clock_ahead_h + 0.5) - 1) / 24
    swing = (
        0.4632 * np.cos(t - 3.805)
        + 0.0984 * np.cos(2 * t - 0.360)
        + 0.0168 * np.cos(3 * t - 0.822)
        + 0.0138 * np.cos(4 * t - 3.513)
    )
    return np.asarray(np.repeat(base, 24) + ranges[sun.month] * swing)
