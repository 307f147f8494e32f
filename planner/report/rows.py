"""Results as tables for other programs: options, years, months and hours, columns by key with the unit in it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import asdict
from importlib.util import find_spec
from pathlib import Path
from typing import Any, Literal

import numpy as np
import pandas as pd

from planner.checks.verdict import Verdict
from planner.figures import Figure, catalogue
from planner.report.files import write_whole
from planner.study.compare import OptionResult, Study
from planner.study.hours import Array, Hours, option_hours
from planner.supply.run import HOUR, MONTH

By = Literal["hours", "months", "years"]
UNITS = "units"
"""Key of a frame's `attrs` under which the unit of each of its columns stands."""
_UNIT_OF_ENDING = {"m3": "m3", "kwh": "kWh", "l": "L", "hours": "h", "cost": "money"}


def by_month(option: OptionResult) -> dict[str, Array]:
    """Give what an option does in each month, by key, each (years, 12).

    Every top-up source has its energy as `<source>_kwh`; fuel and running hours are those of all that burn fuel.
    """
    outcome = option.outcome
    found = {
        "demand_m3": outcome.demand_m3,
        "delivered_m3": outcome.delivered_m3,
        "shortfall_m3": outcome.demand_m3 - outcome.delivered_m3,
        "pv_used_kwh": outcome.solar_kwh,
        "pv_unused_kwh": outcome.idle_kwh,
        "grid_kwh": outcome.grid_kwh.sum(axis=-1),
        "generator_kwh": outcome.generator_kwh,
        "fuel_l": outcome.fuel_l,
        "generator_hours": outcome.generator_hours,
    }
    return found | {f"{name}_kwh": source.kwh.sum(axis=-1) for name, source in outcome.top_ups.items()}


def by_year(option: OptionResult) -> dict[str, Array]:
    """Give what an option does in each life year, by key, each (years,): sums of its months, and what it costs."""
    found = {key: values.sum(axis=-1) for key, values in by_month(option).items()}
    return found | ({"cost": option.life.flows.total_cost()[1:]} if option.scenario.priced else {})


def options_frame(study: Study) -> pd.DataFrame:
    """Return every figure of the catalogue, a row an option in the order of the ranking."""
    priced = study.scenario.priced
    figures = [figure for figure in catalogue(study.further_costs) if priced or not figure.is_money]
    return figures_frame([(option.name, option) for option in study.ranked], figures, study.scenario.currency)


def figures_frame(results: Iterable[tuple[str, Any]], figures: Sequence[Figure], currency: str) -> pd.DataFrame:
    """Return figures of named results, a row each."""
    named = list(results)
    columns = {figure.key: [np.asarray(figure.read(result)).item() for _, result in named] for figure in figures}
    index = pd.Index([name for name, _ in named], name="option")
    return _with_units(pd.DataFrame(columns, index), {figure.key: figure.unit_in(currency) for figure in figures})


def years_frame(study: Study) -> pd.DataFrame:
    """Return a row for each option and life year, from 1."""
    return _laid_out(study, by_year, ("year",))


def months_frame(study: Study) -> pd.DataFrame:
    """Return a row for each option, life year and month, from 1."""
    return _laid_out(study, by_month, ("year", "month"))


def _laid_out(study: Study, read: Callable[[OptionResult], dict[str, Array]], axes: Sequence[str]) -> pd.DataFrame:
    parts = {}
    for option in study.ranked:
        columns = read(option)
        places = [range(1, count + 1) for count in columns["demand_m3"].shape]
        index = pd.MultiIndex.from_product(places, names=list(axes))
        parts[option.name] = pd.DataFrame({key: values.ravel() for key, values in columns.items()}, index)
    frame = pd.concat(parts, names=["option"])
    frame.index = frame.index.set_names(["option", *axes])
    return _with_units(frame, _units(frame, study.scenario.currency))


def hours_frame(study: Study, option: str, year: int | None = None) -> pd.DataFrame:
    """Return a row for each hour of one option, of one life year (from 1) or of all of them.

    Raises
    ------
    ValueError
        When the study has no such option or no such year.
    """
    names, years = [each.name for each in study.options], study.scenario.finance.analysis_period_years
    if option not in names:
        raise ValueError(f"there is no option {option!r}; there are: {', '.join(names)}")
    if year is not None and not 1 <= year <= years:
        raise ValueError(f"there is no year {year}; the years are 1 to {years}")
    hours = option_hours(study, option)
    frame = pd.concat([_year_of_hours(hours, each) for each in (range(1, years + 1) if year is None else [year])])
    return _with_units(frame, _units(frame, study.scenario.currency))


def _year_of_hours(hours: Hours, year: int) -> pd.DataFrame:
    place = np.arange(MONTH.size)
    index = pd.MultiIndex.from_arrays(
        [np.full(MONTH.size, year), MONTH + 1, place // 24 + 1, HOUR], names=["year", "month", "day_of_year", "hour"]
    )
    return pd.DataFrame(hours.year(year - 1), index)


def checks_frame(verdicts: Sequence[Verdict]) -> pd.DataFrame:
    """Return the site checks, a row each, by their stable keys."""
    columns = ("topic", "outcome", "compared", "value", "limit", "unit", "margin", "why", "remedy", "source")
    rows = [{name: asdict(verdict)[name] for name in columns} for verdict in verdicts]
    return pd.DataFrame(rows, pd.Index([verdict.key for verdict in verdicts], name="check"), list(columns))


def study_rows(study: Study, by: By) -> Iterator[pd.DataFrame]:
    """Yield every option's years, months or hours piece by piece, what tells them apart in columns of its own."""
    if by != "hours":
        yield (years_frame(study) if by == "years" else months_frame(study)).reset_index()
        return
    hours = [option_hours(study, option.name) for option in study.ranked]
    keys = list(dict.fromkeys(key for each in hours for key in each.series))
    for each in hours:
        for year in range(1, study.scenario.finance.analysis_period_years + 1):
            frame = _year_of_hours(each, year).reindex(columns=keys).reset_index()
            frame.insert(0, "option", each.name)
            yield frame


def has_parquet() -> bool:
    """Whether Parquet can be written here."""
    return find_spec("pyarrow") is not None


def write_frames(frames: Iterable[pd.DataFrame], path: Path) -> None:
    """Write pieces of one table as CSV, or as Parquet where the file is so named, whole or not at all."""
    write_whole(path, lambda temporary: _fill(frames, temporary))


def _fill(frames: Iterable[pd.DataFrame], path: Path) -> None:
    if path.suffix == ".parquet":
        pd.concat(list(frames), ignore_index=True).to_parquet(path, index=False)
        return
    with path.open("w", encoding="utf-8", newline="") as stream:
        for number, frame in enumerate(frames):
            frame.to_csv(stream, index=False, header=number == 0, lineterminator="\n")


def _units(frame: pd.DataFrame, currency: str) -> dict[str, str]:
    found = {key: _UNIT_OF_ENDING[str(key).rpartition("_")[-1]] for key in frame.columns}
    return {str(key): unit.replace("money", currency) for key, unit in found.items()}


def _with_units(frame: pd.DataFrame, units: dict[str, str]) -> pd.DataFrame:
    frame.attrs[UNITS] = units
    return frame
