"""Tables for other programs: hours add up to months, months to years, and all of them to the figures."""

from __future__ import annotations

from functools import cache
from pathlib import Path

import numpy as np
import pandas as pd
import pytest

from planner.figures import catalogue
from planner.report import rows
from planner.report.json_file import study_as_data
from planner.report.rows import (
    UNITS,
    has_parquet,
    hours_frame,
    months_frame,
    options_frame,
    study_rows,
    write_frames,
    years_frame,
)
from planner.study.compare import Study
from planner.study.hours import Hours
from tests.study.scenarios import studied

YEARS = 2


@cache
def study() -> Study:
    return studied(finance__analysis_period_years=YEARS, service__options=["solar + grid", "solar + generator"])


def test_options_have_the_figures_of_the_catalogue_best_first() -> None:
    frame = options_frame(study())
    assert list(frame.index) == list(study().ranking)
    assert list(frame.columns) == [figure.key for figure in catalogue()]
    assert frame.attrs[UNITS]["life_cycle_cost"] == study().scenario.currency
    for option in study().options:
        assert frame.loc[option.name, "life_cycle_cost"] == float(option.life.present_cost)


@pytest.mark.parametrize("name", ["solar + grid", "solar + generator"])
def test_hours_add_up_to_months_and_months_to_years(name: str) -> None:
    hours, months, years = hours_frame(study(), name), months_frame(study()).loc[name], years_frame(study()).loc[name]
    assert len(hours) == YEARS * 8760
    both = [key for key in hours.columns if key in months.columns]
    assert {"demand_m3", "delivered_m3", "shortfall_m3", "pv_used_kwh", "pv_unused_kwh"} <= set(both)
    summed = hours[both].groupby(level=["year", "month"]).sum()
    np.testing.assert_allclose(summed, months[both], rtol=1e-9, atol=1e-9)
    amounts = list(months.columns)
    np.testing.assert_allclose(months.groupby(level="year").sum()[amounts], years[amounts], rtol=1e-12, atol=1e-12)
    source = name.split(" + ")[1]
    assert months[f"{source}_kwh"].sum() > 0


def test_water_is_kept_in_every_hour() -> None:
    hours = hours_frame(study(), "solar + grid", 2)
    pumped = hours[["solar_m3", "grid_m3"]].sum(axis=1)
    change = hours["tank_level_m3"].diff().iloc[1:]
    left = (pumped - hours["delivered_m3"] - hours["leakage_m3"]).iloc[1:]
    np.testing.assert_allclose(change, left, atol=1e-9)


def test_hours_are_named_by_year_month_day_and_hour() -> None:
    frame = rows._year_of_hours(Hours("sun", {"demand_m3": np.arange(2 * 8760.0).reshape(8760, 2)}, 10.0), 2)
    places = {0: (2, 1, 1, 0), 23: (2, 1, 1, 23), 24: (2, 1, 2, 0), 31 * 24: (2, 2, 32, 0), 8759: (2, 12, 365, 23)}
    assert {at: frame.index[at] for at in places} == places
    assert frame["demand_m3"].iloc[[0, 8759]].tolist() == [1.0, 2 * 8759.0 + 1]


def test_years_and_months_are_those_of_the_option() -> None:
    for option in study().options:
        months, years = (frame(study()).loc[option.name] for frame in (months_frame, years_frame))
        assert months.loc[(2, 3), "pv_unused_kwh"] == option.outcome.idle_kwh[1, 2]
        assert months.loc[(2, 3), "pv_used_kwh"] == option.outcome.solar_kwh[1, 2]
        # construction, year 0, is no year of the rows; the second and last gives back what the works are still worth
        assert 0 < years["cost"][1] < 0.2 * float(option.life.capital_cost)
        assert years["cost"][2] < -0.2 * float(option.life.capital_cost)
        assert years.index.tolist() == [1, 2]


def test_every_column_has_a_unit() -> None:
    for frame in (years_frame(study()), months_frame(study()), hours_frame(study(), "solar + grid", 1)):
        assert set(frame.attrs[UNITS]) == set(frame.columns)
        assert frame.attrs[UNITS]["demand_m3"] == "m3"


def test_the_json_has_the_same_years_and_months() -> None:
    frame = years_frame(study())
    for option in study_as_data(study(), [], ())["options"]:
        years = pd.DataFrame(option["yearly"]).set_index("year")
        shared = list(frame.columns)
        np.testing.assert_allclose(years[shared].astype(float), frame.loc[option["name"]], rtol=1e-12)


def test_the_months_of_the_json_are_those_of_the_first_year() -> None:
    for data, option in zip(study_as_data(study(), [], ())["options"], study().options, strict=True):
        used = option.outcome.solar_kwh
        assert used[0, 4] != used[1, 4]
        assert [month["month"] for month in data["monthly"]] == list(range(1, 13))
        assert data["monthly"][4]["pv_used_kwh"] == used[0, 4]


def test_rows_are_written_whole_with_one_header(tmp_path: Path) -> None:
    file = tmp_path / "hours.csv"
    write_frames(study_rows(study(), "hours"), file)
    read = pd.read_csv(file)
    assert len(read) == 2 * YEARS * 8760
    assert list(read.columns[:5]) == ["option", "year", "month", "day_of_year", "hour"]
    only_grid = read[read["option"] == "solar + generator"]["grid_kwh"]
    assert only_grid.isna().all()
    assert read[read["option"] == "solar + grid"]["grid_kwh"].notna().all()


@pytest.mark.skipif(not has_parquet(), reason="pyarrow is not installed")
def test_parquet_holds_the_same(tmp_path: Path) -> None:
    write_frames(study_rows(study(), "months"), tmp_path / "months.parquet")
    write_frames(study_rows(study(), "months"), tmp_path / "months.csv")
    parquet, csv = pd.read_parquet(tmp_path / "months.parquet"), pd.read_csv(tmp_path / "months.csv")
    pd.testing.assert_frame_equal(parquet, csv)


@pytest.mark.parametrize(("name", "year", "says"), [("wind", 1, "no option 'wind'"), ("solar + grid", 9, "no year 9")])
def test_what_is_not_there_is_refused(name: str, year: int, says: str) -> None:
    with pytest.raises(ValueError, match=says):
        hours_frame(study(), name, year)
