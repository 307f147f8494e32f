"""The hours of one option: what each hour of its life gives, pumps, draws, misses and leaves in the tank.

A comparison keeps sums by month; whoever wants the hours has the one option run again, each of its hours stepped
through.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from planner.sources.base import TopUpSourceKind
from planner.study.cases import DEFAULT_LEVELS
from planner.study.compare import OptionResult, Study
from planner.study.design import Built, SiteContext, option_of, pump_table
from planner.supply.run import MONTH, Option, run_options
from planner.supply.series import extra_series, sun_series
from planner.water.demand import hourly_demand_m3

Array = NDArray[np.float64]

DAY = 24
FORTNIGHT_DAYS = 14
_MISSED_M3 = 1e-6
"""Less missing water than this in a fortnight is rounding."""


@dataclass(frozen=True)
class Stretch:
    """Some days of one life year: the year and the first day, both from 0, the days, and the water missing [m³]."""

    year: int
    first_day: int
    days: int
    shortfall_m3: float

    @property
    def hours(self) -> slice:
        """Its hours of the year."""
        return slice(DAY * self.first_day, DAY * (self.first_day + self.days))

    @property
    def misses_water(self) -> bool:
        """Whether any water is missing in it."""
        return self.shortfall_m3 > _MISSED_M3


@dataclass(frozen=True)
class Hours:
    """Every hour of one option.

    Attributes
    ----------
    name : str
        The option.
    series : mapping of str to ndarray, (8760, years)
        By key, with the unit in it, what each hour of a year of 365 days comes to, the label at its beginning:
        `pv_offered_kwh`, `pv_used_kwh` and `pv_unused_kwh` of the array; `<source>_kwh` taken from each top-up source
        and `<source>_m3` pumped by each source; `demand_m3`, `delivered_m3`, `shortfall_m3` and `leakage_m3`; and
        `tank_level_m3` at the end of the hour.
    tank_m3 : float
        Volume of the tank [m³].
    """

    name: str
    series: Mapping[str, Array]
    tank_m3: float

    def year(self, year: int) -> dict[str, Array]:
        """Every series of one life year, from 0, each (8760,)."""
        return {key: values[:, year] for key, values in self.series.items()}

    def worst(self, days: int = FORTNIGHT_DAYS) -> Stretch:
        """Find the days in a row with the most missing water; where none is missing, those with the lowest tank.

        They lie within one life year; of several alike the first ones are taken.
        """
        hourly = self.series["shortfall_m3"]
        missing = hourly.reshape(-1, DAY, hourly.shape[1]).sum(axis=1)
        windows = np.lib.stride_tricks.sliding_window_view(missing, days, axis=0).sum(axis=-1)
        index = np.unravel_index(np.argmax(windows), windows.shape)
        first, year = int(index[0]), int(index[1])
        if windows[first, year] <= _MISSED_M3:
            first, year = self._lowest(days)
        return Stretch(year, first, days, float(windows[first, year]))

    def _lowest(self, days: int) -> tuple[int, int]:
        """First day and year of the days in a row with the lowest level in their middle, as far as the year lets."""
        level = self.series["tank_level_m3"]
        hour, year = np.unravel_index(np.argmin(level), level.shape)
        first = min(max(int(hour) // DAY - days // 2, 0), level.shape[0] // DAY - days)
        return first, int(year)


def option_hours(study: Study, name: str) -> Hours:
    """Run one option of a finished comparison again, and keep its hours.

    Parameters
    ----------
    study : Study
        The comparison.
    name : str
        One of its options.

    Returns
    -------
    Hours
    """
    return hours_of(_as_run(study, study.option(name)))


def hours_of(option: Option) -> Hours:
    """Run an option of one number of strings and one tank through every hour of its life, and keep them.

    Parameters
    ----------
    option : Option
        The option, ready to run.

    Returns
    -------
    Hours
        Whose sums by month are those of the same option run for its sums alone.
    """
    (outcome,) = run_options([option], trace=True)
    trace = outcome.trace
    assert trace is not None
    level, short, idle = (flow[:, 0] for flow in (trace.level_m3, trace.shortfall_m3, trace.idle_m3))
    sun = sun_series(option.sun, option.pump, MONTH, option.draw_m3.shape[1])
    efficiency = option.sun.efficiency if option.sun else 1.0
    extras = [extra_series(source, sun, efficiency, option.pump, MONTH) for source in option.top_ups]
    added = trace.top_up_m3[:, :, 0]
    used_kwh = sun.used_kwh - idle * sun.kwh_per_m3
    series: dict[str, Array] = {}
    for source, extra, volume in zip(option.top_ups, extras, added, strict=True):
        series |= {f"{source.name}_m3": volume, f"{source.name}_kwh": volume * extra.kwh_per_m3}
        used_kwh = used_kwh + volume * extra.sun_kwh_per_m3
    demand = option.draw_m3 * option.users_share
    users_short = short * option.users_share
    if option.sun is not None:
        series |= {
            "pv_offered_kwh": sun.offered_kwh,
            "pv_used_kwh": used_kwh,
            "pv_unused_kwh": np.maximum(sun.offered_kwh - used_kwh, 0.0),
            "solar_m3": sun.pumped_m3 - idle,
        }
    series |= {
        "demand_m3": demand,
        "delivered_m3": demand - users_short,
        "shortfall_m3": users_short,
        "leakage_m3": option.draw_m3 - demand - (short - users_short),
        "tank_level_m3": level,
    }
    return Hours(option.name, series, float(option.tank_m3[0]))


def _as_run(study: Study, result: OptionResult) -> Option:
    """Put an option together again as it was run, from what the comparison keeps."""
    scenario, weather = result.scenario, study.weather
    years = scenario.finance.analysis_period_years
    site = SiteContext(
        study.place,
        study.altitude_given,
        weather,
        np.arange(years) % weather.ghi_w_m2.shape[1],
        hourly_demand_m3(scenario.demand, years),
        band_count=1,  # of use only where several options are laid side by side
    )
    top_ups = [source.top_up(scenario, site.around) for source in result.sources if isinstance(source, TopUpSourceKind)]
    built = Built(result.name, result.sources, scenario, pump_table(scenario, years), result.array, tuple(top_ups))
    levels = DEFAULT_LEVELS if result.levels is None else result.levels
    return option_of(built, site, [result.strings], [result.tank_m3], *([level] for level in levels))
